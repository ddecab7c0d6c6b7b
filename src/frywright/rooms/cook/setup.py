"""The set-up: a kitchen, a fryer or a product described screen by screen. What is typed is a draft until it
is kept; then it becomes the same kitchen that its file describes.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field, replace
from typing import Any, BinaryIO

from frywright.catalog import load
from frywright.catalog.kitchen import parse_kitchen
from frywright.ledger.attachments import attachments_of
from frywright.ledger.drafts import Draft, change_draft, drop_draft, read_draft
from frywright.ledger.facts.care import PlateTyped
from frywright.ledger.facts.cook import KitchenSet
from frywright.ledger.facts.fact import Kept
from frywright.ledger.store import Store
from frywright.model.errors import InputError, NoKitchenError, RecordError, one_of
from frywright.model.fryer import FryerKind
from frywright.model.kitchen import Kitchen, Site, UnitSystem
from frywright.model.plain import plain
from frywright.rooms.cook import plate_photo
from frywright.rooms.cook import setup_read as reads
from frywright.rooms.cook import setup_text as text
from frywright.rooms.cook.setup_read import Asked
from frywright.rooms.hall import write
from frywright.rooms.kitchen import kitchen_text, remember_kitchen, remembered_kitchen
from frywright.rooms.photos import keep_photo
from frywright.rooms.premises import STATED, name_place

PLACE, FRYER, FOOD = ("place", "altitude"), ("kind", "plate", "lid", "control"), ("food", "birds")
SUBJECTS = {"kitchen": PLACE + FRYER + FOOD, "fryer": FRYER, "product": FOOD}
"""What is described, and its screens in their order."""
BOXES = {
    "place": ("name", "jurisdiction", "language", "units", *STATED),
    "altitude": ("altitude", "boiled"),
    "kind": ("kind",),
    "plate": ("name", "fuel", "power", "oil_mass", "oil", "birds", "weight", "serial", "from_photo", "seen"),
    "lid": ("working_gauge", "relief_gauge", "vent", "gap", "width", "length", "from_photo", "seen"),
    "control": ("shows", "stages", "temp_step", "time_step", "clock", "lid", "slots", "swing"),
    "food": ("cut_set",),
    "birds": ("name", "mean", "ten", "coating", "start_temp", "house_core"),
}
LONGEST_ANSWER, FILE = 400, "kitchen.toml"
MAY_WAIT = FOOD
"""Screens that may be left for later."""


class Overtaken(RecordError):
    """Another page changed these answers since this one was opened."""

    TEXT = (
        "Another page changed this screen while you had it open. Below stands what you typed; it is not kept"
        " yet. Go on to keep yours, or open the screen again to see the other."
    )

    def __init__(self) -> None:
        super().__init__(self.TEXT)


@dataclass(frozen=True, slots=True, kw_only=True)
class Screen:
    """One screen as it stands: what was typed, what is wrong with it."""

    key: str
    typed: Mapping[str, str]
    done: bool
    skipped: bool
    wrong: Mapping[str, InputError] = field(default_factory=dict)


@dataclass(frozen=True, slots=True, kw_only=True)
class Setup:
    """A draft as it stands, with the screens that it takes."""

    what: str
    revision: int
    site: Site
    screens: tuple[Screen, ...]
    photo: str = ""
    found: Mapping[str, str] = field(default_factory=dict)

    def screen(self, key: str) -> Screen:
        """A screen by its key. Raises InputError: there is no such screen here."""
        known = tuple(s.key for s in self.screens)
        one_of(known, key, "screen")
        return self.screens[known.index(key)]

    def typed(self, screen: str, box: str) -> str:
        """What stands in a box; empty where the screen is none of these."""
        return next((s.typed.get(box, "") for s in self.screens if s.key == screen), "")

    @property
    def next(self) -> str:
        """Key of the first screen that is not done; ``check`` after the last."""
        return next((s.key for s in self.screens if not s.done and not s.skipped), "check")

    @property
    def missing(self) -> tuple[str, ...]:
        """Screens without which nothing can be kept."""
        return tuple(
            s.key
            for s in self.screens
            if not s.done and s.key not in (MAY_WAIT if self.what == "kitchen" else ())
        )

    def after(self, key: str) -> str:
        """The screen that follows one."""
        keys = [s.key for s in self.screens]
        at = keys.index(key) + 1
        return keys[at] if at < len(keys) else "check"


def setup_of(store: Store, what: str, language: str = "") -> Setup:
    """The draft of what is being described. Raises InputError: nothing of that name is described here, or a
    kitchen where one's own is kept already. Raises NoKitchenError: a fryer or a product before there is a
    kitchen.
    """
    one_of(SUBJECTS, what, "set-up")
    own = _own_kitchen(store)
    if what == "kitchen" and own is not None and not own.site.invented:
        raise InputError("set-up", "a second kitchen", "a fryer or a product: this store has its kitchen")
    if what != "kitchen" and own is None:
        raise NoKitchenError
    return _setup(
        read_draft(store, f"setup {what}"), what, own.site if own and what != "kitchen" else None, language
    )


def _own_kitchen(store: Store) -> Kitchen | None:
    try:
        return remembered_kitchen(store)
    except NoKitchenError:
        return None


def _setup(draft: Draft, what: str, site: Site | None, language: str = "") -> Setup:
    kept: Mapping[str, Any] = draft.body.get("screens", {})

    def typed(key: str) -> Mapping[str, str]:
        found: Mapping[str, str] = kept.get(key, {}).get("typed", {})
        return found

    here = site or _site(typed("place"), language)
    screens, closed = [], typed("kind").get("kind") == FryerKind.PRESSURE
    for key in SUBJECTS[what]:
        if key == "lid" and not closed:
            continue
        state = kept.get(key, {})
        screens.append(
            Screen(
                key=key, typed=typed(key), done=bool(state.get("done")), skipped=bool(state.get("skipped"))
            )
        )
    return Setup(
        what=what,
        revision=draft.revision,
        site=here,
        screens=tuple(screens),
        photo=str(draft.body.get("photo", "")),
        found=draft.body.get("found", {}),
    )


def _site(typed: Mapping[str, str], language: str) -> Site:
    """Whose units and marks the answers are read by, as far as they are known."""
    metric = typed.get("units") == UnitSystem.METRIC
    return Site(
        name=typed.get("name", ""),
        units=UnitSystem.METRIC if metric else UnitSystem.US,
        language=typed.get("language") or language or "en",
        jurisdiction=typed.get("jurisdiction", ""),
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Seen:
    """What a page had seen when it sent something: the draft's revision, which page it is, its how manieth
    sending this is.
    """

    revision: int
    page: str = ""
    turn_count: int = 0


def answer(
    store: Store, what: str, key: str, typed: Mapping[str, str], seen: Seen, how: str = "next"
) -> Setup:
    """Keep what was typed on a screen. ``how`` is ``next``, ``skip`` or ``stay`` (keep it as it is typed).
    Raises InputError: there is no such screen. Raises Overtaken: another page changed the screen after this
    one was opened; nothing is written.
    """
    before = setup_of(store, what)
    before.screen(key)
    told = {box: typed[box][:LONGEST_ANSWER] for box in BOXES[key] if typed.get(box)}
    if how == "stay" and before.screen(key).typed == told:
        return before
    right = how == "next" and not _wrong(before, key, told)

    def change(draft: Draft) -> Mapping[str, Any]:
        screens = dict(draft.body.get("screens", {}))
        old = screens.get(key, {})
        mine = bool(seen.page) and old.get("page") == seen.page
        if mine and how == "stay" and seen.turn_count <= old.get("turn", 0):
            return draft.body  # sent before what is kept already, and come later
        if not mine and old.get("revision", 0) > seen.revision and old.get("typed", {}) != told:
            raise Overtaken
        for other in _shaken(key, old.get("typed", {}), told):
            if other in screens:
                screens[other] = {**screens[other], "done": False}
        screens[key] = {
            "typed": told,
            "done": right or (how == "stay" and bool(old.get("done")) and old.get("typed") == told),
            "skipped": how == "skip",
            "revision": draft.revision + 1,
            "page": seen.page,
            "turn": seen.turn_count,
        }
        return {**draft.body, "screens": screens}

    change_draft(store, f"setup {what}", change)
    return setup_of(store, what)


def _shaken(key: str, old: Mapping[str, str], new: Mapping[str, str]) -> tuple[str, ...]:
    """Screens whose answers read otherwise once this one changed: they are asked again, what was typed
    stands.
    """
    moved = {box for box in BOXES[key] if old and old.get(box, "") != new.get(box, "")}
    if key == "place" and moved & {"units", "language"}:
        return tuple(BOXES)
    if (key == "place" and "jurisdiction" in moved) or (key == "food" and moved):
        return ("birds",)
    return ("lid",) if key == "plate" and "oil_mass" in moved else ()


def keep_plate_photo(store: Store, what: str, photo: BinaryIO) -> None:
    """Keep the photo of a plate, and what can be read off it, until somebody compares it.
    Raises InputError: it is no picture, or too large.
    """
    setup_of(store, what).screen("plate")
    sha = keep_photo(store, photo)
    with attachments_of(store).open(sha) as kept:
        found = plate_photo.figures(plate_photo.text_of(kept.read()))
    change_draft(store, f"setup {what}", lambda draft: {**draft.body, "photo": sha, "found": found})


def checked(setup: Setup, key: str) -> Mapping[str, InputError]:
    """What is wrong on a screen, box by box, with what is typed there."""
    return _wrong(setup, key, setup.screen(key).typed)


def _wrong(setup: Setup, key: str, typed: Mapping[str, str]) -> Mapping[str, InputError]:
    asked = Asked(setup.site, typed)
    _read(setup, key, asked)
    return asked.wrong


def _read(setup: Setup, key: str, asked: Asked) -> tuple[reads.ScreenRead, set[str]]:
    """Values of a screen, and which of them are estimates."""
    none: set[str] = set()
    if key == "lid":
        oil = reads.read_plate(Asked(setup.site, setup.screen("plate").typed)).oil_mass_kg
        return reads.read_lid(asked, oil or reads.USUAL_OIL_KG)
    if key == "control":
        found = reads.read_control(asked)
        if found.swing_k is None:
            return replace(found, swing_k=float(reads.usual("swing_k")["taken"])), {"swing"}
        return found, none
    if key == "birds":
        cut_set = setup.typed("food", "cut_set")
        known = cut_set if cut_set in load.cut_sets() else "chicken_8"
        return reads.read_birds(asked, load.cut_sets()[known], setup.site.jurisdiction), none
    simple: Mapping[str, Callable[[Asked], reads.ScreenRead]] = {
        "place": reads.read_place,
        "altitude": reads.read_altitude,
        "kind": reads.read_kind,
        "plate": reads.read_plate,
        "food": reads.read_food,
    }
    return simple[key](asked), {"heater"} if key == "plate" else none


@dataclass(frozen=True, slots=True, kw_only=True)
class Described:
    """What the answers come to, in the names and units of the model."""

    values: Mapping[str, reads.ScreenRead]
    estimates: tuple[str, ...]


def described(setup: Setup) -> Described:
    """Everything answered so far."""
    values, estimates = dict[str, reads.ScreenRead](), set[str]()
    for screen in setup.screens:
        if screen.done:
            values[screen.key], more = _read(setup, screen.key, Asked(setup.site, screen.typed))
            estimates |= more
    return Described(values=values, estimates=tuple(sorted(estimates)))


@dataclass(frozen=True, slots=True, kw_only=True)
class Made:
    """What was added to the kitchen."""

    kitchen: Kept[KitchenSet]
    fryer: str
    product: str


def keep(store: Store, what: str, seen: int) -> Made:
    """Make the draft part of the kitchen. Raises InputError: a screen that is needed is not answered, or
    another page changed the draft since. Raises DataError: the kitchen's own file would not read it: nothing
    is kept.
    """
    with store.writing():
        setup = setup_of(store, what)
        if setup.revision != seen:
            raise Overtaken
        if setup.missing:
            raise InputError("set-up", "not finished", "answered on each screen that is needed")
        told = described(setup)
        for screen in setup.screens:
            wrong = next(iter(checked(setup, screen.key).values()), None) if screen.done else None
            if wrong is not None:
                raise wrong
        known = remembered_kitchen(store) if what != "kitchen" else None
        file, fryer, product = _file(setup, told, known, kitchen_text(store) if known else "")
        parse_kitchen(file, FILE)
        made = remember_kitchen(store, file, FILE)
        if fryer and (setup.photo or setup.typed("plate", "serial")):
            write(store, _plate(setup, told, fryer))
        if what == "kitchen" and any(setup.typed("place", box) for box in STATED):
            name_place(store, {box: setup.typed("place", box) for box in STATED})
        drop_draft(store, f"setup {what}")
        if what == "kitchen" and not product:
            _leave_product(store, setup)
    return Made(kitchen=made, fryer=fryer, product=product)


def _leave_product(store: Store, setup: Setup) -> None:
    """A product that was begun and not finished goes on as a draft of its own."""
    begun = {
        s.key: {"typed": dict(s.typed), "done": s.done, "skipped": False, "revision": 1}
        for s in setup.screens
        if s.key in FOOD and s.typed
    }
    if begun:
        change_draft(store, "setup product", lambda draft: {"screens": begun})


def _file(setup: Setup, told: Described, known: Kitchen | None, old: str) -> tuple[str, str, str]:
    """The kitchen's file with what was described, and the keys of the fryer and the product in it."""
    parts, system = [old.rstrip("\n") + "\n"] if old else [], setup.site.units
    values = plain(told.values)
    fryer = product = ""
    if "place" in values:
        parts.append(text.kitchen_table({**values["place"], **values["altitude"]}))
    if "plate" in values:
        taken = {f.key for f in known.fryers} if known else set()
        fryer = text.key_for(values["plate"]["name"], "fryer", taken)
        control = dict(values["control"])
        own = {
            **values["plate"],
            **values["kind"],
            **values.get("lid", {}),
            "swing_k": control.pop("swing_k"),
        }
        parts.append(text.fryer_tables(fryer, {**own, "estimates": told.estimates or None}, control, system))
    if "birds" in values and "food" in values:
        taken = {p.key for p in known.products} if known else set()
        product = text.key_for(values["birds"]["name"], "product", taken)
        parts.append(text.product_tables(product, {**values["food"], **values["birds"]}, system))
    return "\n".join(parts), fryer, product


def _plate(setup: Setup, told: Described, fryer: str) -> PlateTyped:
    """The plate as it was read, with its photo; Care goes on from it."""
    plate = told.values["plate"]
    assert isinstance(plate, reads.PlateRead)
    assert plate.heater_w is not None  # a draft is kept only when each answer was read
    return PlateTyped(
        fryer=fryer,
        case_number=1,
        maker="",
        model="",
        serial=setup.typed("plate", "serial")[:80],
        fuel=plate.fuel,
        gas="",
        year="",
        volts_n=None,
        phases_count=None,
        hz_n=None,
        power_w=plate.heater_w / float(reads.usual(f"{plate.fuel}_share_frac")["taken"]),
        gas_low_pa=None,
        gas_high_pa=None,
        oil_mass_kg=plate.oil_mass_kg,
        photo=setup.photo,
        reason="",
    )


def unfinished(store: Store) -> tuple[str, ...]:
    """What somebody began to describe and has not kept."""
    return tuple(what for what in SUBJECTS if read_draft(store, f"setup {what}").revision)
