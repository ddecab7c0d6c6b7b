"""People at the fryers: skills performed and observed, expiring; age rules; drills run on the simulator; wall
cards.
"""

from __future__ import annotations

import datetime as dt
import hashlib
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import lru_cache
from typing import Any

from frywright.care.drills import NESTED, drills_for
from frywright.care.lid_drills import Drill
from frywright.catalog import load as catalog
from frywright.ledger.facts.fact import Kept
from frywright.ledger.facts.people import DrillAnswered, PersonListed, SkillShown
from frywright.ledger.private import Private
from frywright.ledger.store import Store
from frywright.model.business_day import day_typed
from frywright.model.errors import InputError, one_of
from frywright.model.findings import Outcome, say
from frywright.model.fryer import Fryer
from frywright.model.kitchen import Kitchen
from frywright.model.program import Program
from frywright.model.roles import SIGNERS, same_person
from frywright.model.tongues import Translate
from frywright.model.units import clock, show
from frywright.paper.paper import PAPER, Section, pdf, section
from frywright.rooms.care.upkeep import today_of
from frywright.rooms.hall import in_turn, typed, write
from frywright.rooms.kitchen import judged_on
from frywright.rooms.local_rules import age_answers
from frywright.rooms.standing import answers_of, figure_of, oil_limit_here, place_here
from frywright.trial.ask import CookRequest, ask
from frywright.verdicts.age import ADULT_YEARS, years_on

AHEAD_DAYS = 30
STANDING = {"holds": "holds", "expiring": "expires soon", "expired": "expired", "missing": "not shown yet"}
MAY = {"meets": "may", "fails": "may not", "unknown": "not known"}


@in_turn
def keep_person(store: Store, kitchen: Kitchen, values: Mapping[str, Any]) -> Kept[PersonListed]:
    """Keep a person by name; the birthday only where age rules matter, outside the chain. A second entry of
    the same name replaces the first, and its birthday with it: without one, or of somebody who left, it is
    erased. Raises InputError: no name, or a birthday that cannot be.
    """
    name, born = typed(values, "name"), typed(values, "born")
    if not 2 <= len(name) <= 80:
        raise InputError("name", repr(name), "2 to 80 letters")
    if born:
        years_on(day_typed(born, "born"), today_of(kitchen))
    old, left = people(store).get(name.lower()), bool(values.get("left"))
    if old is not None and old.fact.born_ref:
        Private(store).erase(old.fact.born_ref)
    ref = Private(store).keep(born) if born and not left else None
    person = PersonListed(name=name, born="", left=left, born_ref=ref)
    return write(store, person, replaces=old.number if old else None)


def _born(store: Store, person: PersonListed) -> dt.date | None:
    """The birthday where it is kept; of somebody who left it is not looked at."""
    text = person.born or Private(store).value(person.born_ref or "")
    return dt.date.fromisoformat(text) if text and not person.left else None


def people(store: Store) -> dict[str, Kept[PersonListed]]:
    """People by lower-case name, those who left among them."""
    return {e.fact.name.lower(): e for e in store.current_facts(PersonListed)}


def skills_of(kitchen: Kitchen) -> list[Mapping[str, Any]]:
    """Skills this kitchen's fryers need."""
    kinds = {"", *(str(f.kind) for f in kitchen.fryers)}
    return [s for s in catalog.table("care/skills.toml")["skill"] if s.get("applies", "") in kinds]


def sign_skill(store: Store, kitchen: Kitchen, values: Mapping[str, Any]) -> Kept[SkillShown]:
    """Sign a skill as performed by one person and observed by another. Raises InputError: an unknown person
    or skill, nobody else as observer, a day to come, an age for which the law forbids the work, or a minor
    where no rule of the place is known.

    Parameters
    ----------
    values : person, skill, observed_by, date (ISO, today where empty)
    """
    today, known = today_of(kitchen), {s["key"]: s for s in skills_of(kitchen)}
    who, key, seen = (typed(values, n) for n in ("person", "skill", "observed_by"))
    person = people(store).get(who.lower())
    if person is None:
        raise InputError("person", repr(who), "one who is on the list: add the person first")
    one_of(known, key, "skill")
    if len(seen) < 2 or same_person(seen, who):
        raise InputError("observed_by", repr(seen), "another person, who saw it done")
    date = day_typed(str(values.get("date", "") or "") or today.isoformat(), "date")
    if date > today:
        raise InputError("date", date.isoformat(), "today or earlier")
    place = place_here(store, judged_on(store, kitchen, date), date)
    born = _born(store, person.fact)
    verdict = place.judge_age(known[key].get("restricted", ""), born, date)
    if verdict.minor:
        raise InputError(
            "person",
            who,
            "{years} or older: no age rule of this place is in the catalog. Ask the local authority, then"
            " enter its answer under Records, Local rules",
            where=known[key]["title"],
            years=ADULT_YEARS,
        )
    if verdict.outcome is Outcome.FAILS:
        raise InputError(
            "person",
            who,
            "older: the law of this place forbids this work at that age",
            where=known[key]["title"],
        )
    expires = date + dt.timedelta(days=known[key]["expires_days"])
    shown = SkillShown(person=person.fact.name, skill=key, observed_by=seen[:80], date=date, expires=expires)
    return write(store, shown)


@dataclass(frozen=True, slots=True, kw_only=True)
class SkillStanding:
    """Where a person stands with a skill, and what age rules say of its work."""

    skill: str
    title: str
    standing: str  # holds, expiring, expired or missing
    words: str
    expires: str
    observed_by: str
    age: str
    may: str
    rules: tuple[str, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class PersonRow:
    """A person with every skill of the kitchen."""

    name: str
    skills: tuple[SkillStanding, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class DueSkill:
    """A skill that has expired or soon will."""

    date: str
    name: str
    title: str


@dataclass(frozen=True, slots=True, kw_only=True)
class WorkRow:
    """A work, and who may do it."""

    title: str
    who: str


@dataclass(frozen=True, slots=True, kw_only=True)
class SkillChoice:
    """A skill to sign."""

    key: str
    title: str


@dataclass(frozen=True, slots=True, kw_only=True)
class PeopleView:
    """Everybody with every skill: holds, expires soon, expired or never shown; and what age rules say."""

    people: tuple[PersonRow, ...]
    due: tuple[DueSkill, ...]
    work: tuple[WorkRow, ...]
    rules: tuple[str, ...]
    skills: tuple[SkillChoice, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class ChoiceView:
    """An answer to choose, and what it leads to."""

    text: str
    why: str
    right: bool
    hurts: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class DrillView:
    """A drill in words."""

    key: str
    about: str
    question: str
    simulated: bool
    choices: tuple[ChoiceView, ...]


def people_view(
    store: Store, kitchen: Kitchen, language: str = "en", tr: Translate = str, today: dt.date | None = None
) -> PeopleView:
    """Everybody as they are shown."""
    day = today or today_of(kitchen)
    newest: dict[tuple[str, str], SkillShown] = {}
    for item in store.current_facts(SkillShown):
        key = (item.fact.person.lower(), item.fact.skill)
        if key not in newest or item.fact.date >= newest[key].date:
            newest[key] = item.fact
    place = place_here(store, kitchen)
    rules = {
        r["key"]: tr(r["text"])
        for r in catalog.table("standards/age_rules.toml")["rule"]
        if r["place"] == place.age
    } | age_answers(answers_of(store, kitchen), tr)
    rows = []
    for name, person in sorted(people(store).items()):
        if person.fact.left:
            continue
        held, born = [], _born(store, person.fact)
        for skill in skills_of(kitchen):
            told = newest.get((name, skill["key"]))
            verdict = place.judge_age(skill.get("restricted", ""), born, day)
            standing = _standing(told, day)
            row = SkillStanding(
                skill=skill["key"],
                title=tr(skill["title"]),
                standing=standing,
                words=tr(STANDING[standing]),
                expires=told.expires.isoformat() if told else "",
                observed_by=told.observed_by if told else "",
                age=str(verdict.outcome),
                may=tr(MAY[str(verdict.outcome)]),
                rules=tuple(rules[k] for k in verdict.keys),
            )
            held.append(row)
        rows.append(PersonRow(name=person.fact.name, skills=tuple(held)))
    due = sorted(
        (h.expires, r.name, h.title) for r in rows for h in r.skills if h.standing in ("expiring", "expired")
    )
    table = catalog.table("care/skills.toml")
    return PeopleView(
        people=tuple(rows),
        due=tuple(DueSkill(date=d, name=n, title=t) for d, n, t in due),
        work=tuple(WorkRow(title=tr(w["title"]), who=tr(SIGNERS[w["who"]])) for w in table["work"]),
        rules=tuple(rules.values()),
        skills=tuple(SkillChoice(key=s["key"], title=tr(s["title"])) for s in skills_of(kitchen)),
    )


def _standing(told: SkillShown | None, day: dt.date) -> str:
    if told is None:
        return "missing"
    left = (told.expires - day).days
    return "expired" if left < 0 else ("expiring" if left <= AHEAD_DAYS else "holds")


# ---------------------------------------------------------------- drills


@lru_cache(maxsize=8)
def _simulated(kitchen: Kitchen) -> tuple[Drill, ...]:
    try:
        return drills_for(kitchen)
    except InputError:
        return ()  # a kitchen without a poultry program still has its hazards


def _filled(template: str, values: Mapping[str, Any], system: str, tr: Translate) -> str:
    """A template whose nested templates are filled first."""
    whole = dict(values)
    for name in NESTED:
        if isinstance(whole.get(name), str):
            whole[name] = say(whole[name], values, system, tr)
    return say(template, whole, system, lambda text: tr(text))


def drill_views(kitchen: Kitchen, language: str = "en", tr: Translate = str) -> list[DrillView]:
    """Every drill in words: simulated ones by program, then hazards at this store's fryers."""
    system = kitchen.site.units
    found = [
        DrillView(
            key=d.key,
            about=f"{d.program} v{d.version}",
            question=_filled(d.question.text, d.question.values, system, tr),
            simulated=True,
            choices=tuple(
                ChoiceView(
                    text=_filled(c.text, c.values, system, tr),
                    why=_filled(c.why, c.values, system, tr),
                    right=c.right,
                    hurts=c.hurts,
                )
                for c in d.choices
            ),
        )
        for d in _simulated(kitchen)
    ]
    for n, table in enumerate(catalog.table("care/hazard_drills.toml")["drill"]):
        fryer, key = kitchen.fryers[n % len(kitchen.fryers)], table["key"]
        choices = [
            ChoiceView(text=tr(text), why=tr(why), right=k == 0, hurts=mark == "hurts")
            for k, (text, why, mark) in enumerate(table["choices"])
        ]
        order = sorted(range(len(choices)), key=lambda k: hashlib.sha256(f"{key}{k}".encode()).hexdigest())
        drill = DrillView(
            key=f"hazard-{key}",
            about=fryer.name,
            question=tr(table["question"]).format(fryer=fryer.name),
            simulated=False,
            choices=tuple(choices[k] for k in order),
        )
        found.append(drill)
    return found


def drill_view(kitchen: Kitchen, key: str, language: str = "en", tr: Translate = str) -> DrillView:
    """One drill. Raises InputError: a key no drill has; its program may have changed since."""
    found = next((d for d in drill_views(kitchen, language, tr) if d.key == key), None)
    if found is None:
        raise InputError("drill", repr(key), "one of today's: a changed program gives other drills")
    return found


def answer_drill(store: Store, kitchen: Kitchen, key: str, choice: int, who: str) -> Kept[DrillAnswered]:
    """Keep an answer; it is explained, never scored. Raises InputError: an unknown drill or choice."""
    drill = drill_view(kitchen, key)
    if not 0 <= choice < len(drill.choices):
        raise InputError("choice", choice, "one of the answers shown")
    picked = drill.choices[choice]
    answer = DrillAnswered(
        drill=key, who=who.strip()[:80], choice_number=choice, right=picked.right, hurts=picked.hurts
    )
    return write(store, answer)


# ---------------------------------------------------------------- wall cards


def wall_card_pdf(store: Store, kitchen: Kitchen, language: str = "en", tr: Translate = str) -> bytes:
    """Wall cards of a store's own values, one page a fryer: programs with version and check figure, loads,
    vent time, hold, oil limit, what never to do.
    """
    limit = oil_limit_here(store, kitchen)[0]
    pages = [
        {"title": fryer.name, "sections": _wall_sections(store, kitchen, fryer, limit, tr)}
        for fryer in kitchen.fryers
    ]
    return pdf(
        "wall.typ",
        "wall",
        {
            "place": kitchen.site.name,
            "language": language,
            "paper": PAPER[kitchen.site.units],
            "pages": pages,
            "date": today_of(kitchen).isoformat(),
            "foot": tr(
                "A changed program makes this card void: compare version and check figure. The maker's manual"
                " and local codes win."
            ),
        },
    )


def _wall_sections(
    store: Store, kitchen: Kitchen, fryer: Fryer, limit_pct: float, tr: Translate
) -> list[Section]:
    """What hangs beside one fryer."""
    programs = [
        kitchen.program(n) for n in sorted({p.name for p in kitchen.own_programs if p.fryer == fryer.key})
    ]
    rows = [
        [
            p.name,
            *(str(told) for told in figure_of(store, kitchen, p)),
            str(p.version),
            clock(sum(p.durations_s())),
            f"{p.hold_life_s / 60.0:.4g}\u00a0min",
        ]
        for p in programs
    ]
    never = [
        tr("Never water or ice near hot oil."),
        tr("Never move, filter or top up hot oil alone or in a rush."),
        tr("Never serve by colour: probe the coldest piece."),
    ]
    if fryer.kind == "pressure":
        never.insert(
            0, tr("Never force, lever or hit a lid. Zero on the gauge and a silent vent, then open.")
        )
    header = [tr(word) for word in ("program", "slot", "check figure", "version", "time", "hold")]
    facts = _wall_facts(kitchen, fryer, programs, limit_pct, tr)
    return [
        section(tr("Programs"), header, [5, 2, 2, 2, 2, 3], rows),
        section(tr("This fryer"), [], [3, 4], facts),
        section(tr("Never"), [], [1], [[f"⚠ {line}"] for line in never]),
    ]


def _wall_facts(
    kitchen: Kitchen, fryer: Fryer, programs: Sequence[Program], limit_pct: float, tr: Translate
) -> list[list[str]]:
    """Oil, loads and vent of a fryer, in its kitchen's units."""
    system = kitchen.site.units
    facts = [
        [tr("oil to the line"), show(fryer.oil_mass_kg, "kg", system)],
        [tr("change the oil at"), tr("{pct} % polar compounds").format(pct=f"{limit_pct:g}")],
    ]
    if fryer.min_load_kg:
        facts.append([tr("smallest load"), show(fryer.min_load_kg, "kg", system)])
    if fryer.capacity_heads:
        facts.append([tr("largest load"), f"{fryer.capacity_heads} {tr('heads')}"])
    elif fryer.capacity_kg:
        facts.append([tr("largest load"), show(fryer.capacity_kg, "kg", system)])
    closed = next((p for p in programs if p.under_pressure), None)
    if closed is not None:
        vent = ask(kitchen, CookRequest(program=closed)).history.told_vent_s
        text = tr("not timed yet; gauge at zero and vent silent decide")
        if vent is not None:
            text = tr("about {time}; gauge at zero and vent silent decide").format(time=clock(vent))
        facts.append([tr("vent to zero, full load"), text])
    return facts
