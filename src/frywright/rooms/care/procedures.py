"""Procedure cards: the kitchen's own step lists over general practice, with pictures, printed and signed
off.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import asdict, dataclass, replace
from itertools import islice
from typing import Any, BinaryIO

from frywright.catalog import load as catalog
from frywright.ledger.attachments import attachments_of
from frywright.ledger.facts.care import CardSigned, CardWritten
from frywright.ledger.facts.fact import Kept
from frywright.ledger.store import Store
from frywright.model.business_day import local_time
from frywright.model.errors import FrywrightError, InputError, Phrase, one_of
from frywright.model.findings import say
from frywright.model.kitchen import Kitchen
from frywright.model.roles import same_person
from frywright.model.tongues import Translate, tongues
from frywright.model.units import is_count, suffix_of, to_people
from frywright.paper.paper import PAPER, pdf, picture_type
from frywright.rooms.care.machines import boil_out_dose
from frywright.rooms.hall import by_name, confirmed, typed, write
from frywright.rooms.kitchen import has_kitchen, remembered_kitchen
from frywright.rooms.photos import keep_photo
from frywright.voice.tongue import translator

MOST_STEPS, LONGEST_LINE = 20, 200
HAZARD_MARK = "!!"
"""What parts a step from its hazard in a line typed by people."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Card:
    """A card in one language as it holds here: version 0 is general practice, others are the kitchen's
    own.
    """

    key: str
    language: str
    title: str
    gear: str
    tools: str
    steps: tuple[tuple[str, str], ...]
    pictures: Mapping[int, str]
    version: int
    who: str
    takes_min: float


def procedures() -> list[str]:
    """Keys of the cards."""
    return [path.split("/")[1].removesuffix(".toml") for path in catalog.files("procedures")]


def card_of(store: Store, key: str, language: str = "en") -> Card:
    """The card that holds here in a language. Raises InputError: an unknown procedure."""
    one_of(procedures(), key, "procedure")
    table, tr = catalog.table(f"procedures/{key}.toml"), translator(language)
    system = str(remembered_kitchen(store).site.units) if has_kitchen(store) else ""
    usual = Card(
        key=key,
        language=language,
        title=tr(table["title"]),
        gear=tr(table["gear"]),
        tools=tr(table["tools"]),
        steps=tuple((_filled(s, system, tr), _said(s.get("hazard"), tr)) for s in table["step"]),
        pictures={},
        version=0,
        who=table["who"],
        takes_min=float(table["takes_min"]),
    )
    own = _own(store, key, language)
    if own is None:
        return usual
    mine = own.fact
    pictures = {int(n): sha for n, sha in mine.pictures.items() if int(n) < len(mine.steps)}
    return replace(
        usual, gear=mine.gear, tools=mine.tools, steps=mine.steps, pictures=pictures, version=mine.version
    )


def _filled(step: Mapping[str, Any], system: str, tr: Translate) -> str:
    """The text of a step, its figures in the kitchen's units."""
    figures = {name: float(value) for name, value in step.items() if suffix_of(name)}
    return Phrase(step["text"], figures).say(tr, system)


def elsewhere(store: Store, key: str, language: str, tr: Translate) -> str:
    """Says that the kitchen's own card is written in other languages only; empty where it is not so."""
    own = {e.fact.language: e.fact.version for e in store.current_facts(CardWritten) if e.fact.key == key}
    if not own or language in own:
        return ""
    other, version = max(own.items(), key=lambda pair: pair[1])
    name = tongues()[other].name if other in tongues() else other
    return say(
        "Written in {language} only (version {version}); this is general practice.",
        {"language": name, "version": float(version)},
        translate=tr,
    )


def _own(store: Store, key: str, language: str) -> Kept[CardWritten] | None:
    """The kitchen's own newest version of a card, or None."""
    found = [e for e in store.current_facts(CardWritten) if (e.fact.key, e.fact.language) == (key, language)]
    return found[-1] if found else None


def _said(text: str | None, tr: Translate) -> str:
    return tr(text) if text else ""


def lines_of(card: Card) -> str:
    """A card's steps as people edit them: one a line, its hazard after two exclamation marks."""
    return "\n".join(f"{text} {HAZARD_MARK} {hazard}" if hazard else text for text, hazard in card.steps)


def save_card(store: Store, values: Mapping[str, Any], photo: BinaryIO | None = None) -> Kept[CardWritten]:
    """Keep the kitchen's own card as its next version; a hazard of general practice may be moved to another
    step, never dropped. Raises InputError: no steps, too many or too long ones, no name, a hazard lost, a
    version saved meanwhile, or a picture that is none.

    Parameters
    ----------
    values : key, language, gear, tools, steps (one a line, hazard after ``!!``), who, version (the one that
        was edited), picture_step (from 1, with a photo)
    """
    key, language = str(values.get("key", "")), str(values.get("language", "en"))
    now_card = card_of(store, key, language)
    who, gear, tools = (typed(values, n) for n in ("who", "gear", "tools"))
    steps = _steps(str(values.get("steps", "")))
    who = by_name(who, "the name of the person who changes it", where=now_card.title)
    if len(gear) < 3:
        raise InputError("gear", repr(gear), "what is worn first", where=now_card.title)
    lost = _lost_hazards(key, language, steps)
    if lost:
        raise InputError(
            "hazard",
            lost[0],
            "kept with a step: {mark} and the hazard after it",
            where=now_card.title,
            mark=HAZARD_MARK,
        )
    if str(values.get("version", now_card.version)) != str(now_card.version):
        raise InputError(
            "version",
            str(values.get("version")),
            "{newest}: someone saved it meanwhile; compare both",
            where=now_card.title,
            newest=now_card.version,
        )
    pictures = {str(n): sha for n, sha in now_card.pictures.items()}
    if photo is not None:
        text = str(values.get("picture_step", ""))
        if not is_count(text) or not 1 <= int(text) <= len(steps):
            raise InputError("picture_step", repr(text), "1 to {most}", where=now_card.title, most=len(steps))
        pictures[str(int(text) - 1)] = keep_photo(store, photo)
    old = _own(store, key, language)
    card = CardWritten(
        key=key,
        language=language,
        gear=gear[:300],
        tools=tools[:300],
        steps=tuple(steps),
        pictures=pictures,
        version=now_card.version + 1,
        who=who,
    )
    return write(store, card, replaces=old.number if old else None)


def _steps(text: str) -> list[tuple[str, str]]:
    steps = []
    for line in text.splitlines():
        told, _, hazard = (part.strip() for part in line.partition(HAZARD_MARK))
        if told:
            steps.append((told, hazard))
    if not 1 <= len(steps) <= MOST_STEPS or any(
        len(t) > LONGEST_LINE or len(h) > LONGEST_LINE for t, h in steps
    ):
        raise InputError("steps", len(steps), "1 to 20 lines of up to 200 letters")
    return steps


def _lost_hazards(key: str, language: str, steps: list[tuple[str, str]]) -> list[str]:
    tr = translator(language)
    kept = {hazard.lower() for _, hazard in steps}
    usual = [tr(s["hazard"]) for s in catalog.table(f"procedures/{key}.toml")["step"] if "hazard" in s]
    return [h for h in usual if h.lower() not in kept]


def sign_card(
    store: Store, kitchen: Kitchen, values: Mapping[str, Any], photo: BinaryIO | None = None
) -> Kept[CardSigned]:
    """Sign a procedure as done on a fryer, by one person and checked by another, with a photo where one was
    taken. Raises InputError: an unknown card or fryer, not two people, or a picture that is none.

    Parameters
    ----------
    values : key, language, fryer, who, second, note
    """
    card = card_of(store, str(values.get("key", "")), str(values.get("language", "en")))
    fryer = kitchen.fryer(str(values.get("fryer", "")))
    applies = catalog.table(f"procedures/{card.key}.toml").get("applies", "")
    if applies not in ("", str(fryer.kind)):
        raise InputError(
            "fryer", fryer.name, "a pressure fryer: an open one has no lid seal", where=card.title
        )
    who, second, note = (typed(values, n) for n in ("who", "second", "note"))
    if len(who) < 2 or len(second) < 2 or same_person(who, second):
        raise InputError(
            "people",
            Phrase("{one} and {other}", {"one": who or "nobody", "other": second or "nobody"}),
            "two different people: one does it, one checks",
            where=card.title,
        )
    confirmed(second)
    sha = keep_photo(store, photo) if photo is not None else ""
    signed = CardSigned(
        key=card.key,
        version=card.version,
        language=card.language,
        fryer=fryer.key,
        who=who[:80],
        second=second[:80],
        note=note[:300],
        photo=sha,
    )
    return write(store, signed)


@dataclass(frozen=True, slots=True, kw_only=True)
class StepShown:
    """A step of a card: its text, its hazard and its picture, empty where it has none."""

    text: str
    hazard: str
    picture: str


@dataclass(frozen=True, slots=True, kw_only=True)
class CardView:
    """A card: what to wear and have ready, its steps, its text to edit, who signed it lately (the newest
    first, each as its entry holds it and with its time).
    """

    key: str
    elsewhere: str
    title: str
    gear: str
    tools: str
    version: int
    lines: str
    steps: tuple[StepShown, ...]
    signed: tuple[Mapping[str, object], ...]


def card_view(store: Store, kitchen: Kitchen, key: str, language: str = "en") -> CardView:
    """A card as a page shows it: steps with hazards and pictures, its text to edit, who signed it lately, by
    the kitchen's clock.
    """
    names = {f.key: f.name for f in kitchen.fryers}
    card = card_of(store, key, language)
    signed = islice((e for e in store.facts(CardSigned, newest_first=True) if e.fact.key == key), 10)
    return CardView(
        key=key,
        elsewhere=elsewhere(store, key, language, translator(language)),
        title=card.title,
        gear=card.gear,
        tools=card.tools,
        version=card.version,
        lines=lines_of(card),
        steps=tuple(
            StepShown(text=t, hazard=h, picture=card.pictures.get(n, ""))
            for n, (t, h) in enumerate(card.steps)
        ),
        signed=tuple(
            asdict(e.fact)
            | {"at": local_time(kitchen, e.recorded_at), "name": names.get(e.fact.fryer, e.fact.fryer)}
            for e in signed
        ),
    )


def procedure_pdf(
    store: Store,
    kitchen: Kitchen,
    key: str,
    language: str,
    tr: Translate = str,
    *,
    water_m3: float = 0.0,
    rate_kg_m3: float = 0.0,
) -> bytes:
    """A procedure as one page, the kitchen's own where it has one. A boil-out needs the water and the rate
    from the cleaner's label. Raises InputError: an unknown procedure, or a boil-out without its dose.
    """
    card, dose = card_of(store, key, language), ""
    if key == "boil_out":
        mass = boil_out_dose(water_m3, rate_kg_m3)
        dose = _dose_text(kitchen.site.units, mass, water_m3, rate_kg_m3, tr)
    files: dict[str, bytes] = {}
    steps = [
        {"text": text, "hazard": hazard, "picture": _file(store, card.pictures.get(n, ""), files)}
        for n, (text, hazard) in enumerate(card.steps)
    ]
    words = {
        "minutes": say("{minutes} minutes", {"minutes": card.takes_min}, translate=tr),
        "who": tr({"crew": "trained crew, age rules apply", "lead": "shift lead"}[card.who]),
        "gear": tr("Wear first"),
        "tools": tr("Have ready"),
        "signs": [tr("done by"), tr("checked by a second person")],
        "version": (
            say("version {version}, this kitchen's own", {"version": float(card.version)}, translate=tr)
            if card.version
            else elsewhere(store, key, language, tr)
        ),
        "foot": tr(
            "Written from general practice. The maker's manual for this fryer, local codes and licensed"
            " technicians win."
        ),
    }
    return pdf(
        "procedure.typ",
        "procedure",
        {
            "title": card.title,
            "paper": PAPER[kitchen.site.units],
            "language": language,
            "place": kitchen.site.name,
            "gear": card.gear,
            "tools": card.tools,
            "dose": dose,
            "steps": steps,
            "words": words,
        },
        files,
    )


def _dose_text(system: str, mass_kg: float, water_m3: float, rate_kg_m3: float, tr: Translate) -> str:
    if system == "us":
        return say(
            "{oz} oz of cleaner into {gal} gal of cold water, by its label at {rate} oz/gal.",
            {
                "oz": round(to_people(mass_kg, "oz"), 1),
                "gal": round(to_people(water_m3, "gal"), 1),
                "rate": round(to_people(rate_kg_m3, "oz_gal"), 2),
            },
            translate=tr,
        )
    return say(
        "{grams} g of cleaner into {litres} L of cold water, by its label at {rate} g/L.",
        {"grams": round(1000 * mass_kg), "litres": round(1000 * water_m3, 1), "rate": round(rate_kg_m3, 1)},
        translate=tr,
    )


def _file(store: Store, sha: str, files: dict[str, bytes]) -> str:
    """Name of a step's picture for the page, read into ``files``; a slot stays empty where the file is lost
    or was swapped.
    """
    if not sha:
        return ""
    try:
        with attachments_of(store).open(sha) as stream:
            content = stream.read()
    except FrywrightError:
        return ""
    name = f"{sha[:16]}.{picture_type(content)}"
    files[name] = content
    return name
