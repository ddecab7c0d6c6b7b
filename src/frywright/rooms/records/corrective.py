"""Corrective action: a probe below its limit opens a case that closes only with a disposition, a cause and
every earlier load decided; complaints traced to loads.
"""

from __future__ import annotations

import datetime as dt
from collections.abc import Mapping, Sequence
from dataclasses import asdict, dataclass, replace
from itertools import islice
from typing import Any, Literal, get_args

from frywright.ledger.facts.day import BoardTap, standing
from frywright.ledger.facts.fact import Kept
from frywright.ledger.facts.probing import (
    CaseOpened,
    CaseStep,
    Decision,
    Disposition,
    Reading,
    Step,
    lower_of,
)
from frywright.ledger.store import Store
from frywright.model.business_day import business_time, local_time, usual_trade
from frywright.model.errors import InputError, one_of
from frywright.model.findings import say
from frywright.model.kitchen import Kitchen
from frywright.model.program import Program
from frywright.model.tongues import Translate
from frywright.model.units import is_count, show, show_below
from frywright.rooms.clock import now
from frywright.rooms.hall import by_name, given_words, in_turn, typed, write
from frywright.rooms.kitchen import judged_at
from frywright.rooms.readings import level_of, pieces_count, read_core, thermometer_typed
from frywright.rooms.records.case_rows import (
    CaseLine,
    CaseView,
    EarlierLoad,
    EarlierRow,
    StepRow,
    Trace,
    TracedLoad,
    TracedReading,
    case_line,
    shown_apart,
)
from frywright.rooms.records.open_cases import closed_cases, still_open
from frywright.rooms.standing import product_name
from frywright.rooms.thermometers import corrected_c

BY_HAND: tuple[Literal["hold", "thermometer", "complaint"], ...] = ("hold", "thermometer", "complaint")
STEPS: tuple[Step, ...] = get_args(Step)
DISPOSITIONS: tuple[Disposition, ...] = get_args(Disposition)
DECISIONS: tuple[Decision, ...] = get_args(Decision)
CAUSES = {
    "load": "load too large",
    "oil": "oil too cool",
    "start": "pieces colder than usual",
    "size": "pieces larger than usual",
    "program": "wrong program or keyed wrong",
    "lid": "lid closed late or no pressure",
    "probe": "probe or thermometer",
    "typed": "typed wrong: the right figure is on record",
    "hold": "cabinet or hold time",
    "other": "other",
}
EARLIER_H = 8.0
"""Loads of a fryer are looked back at over this long where no good reading stands nearer (project's own rule:
a shift).
"""
NEAR_LIFT = dt.timedelta(minutes=15)
"""A reading belongs to a load lifted this near (project's own rule)."""
IN_OIL_FRAC = 0.5
"""A reading in this first part of a load's program is of the load before; a drop may be tapped late, a load
lifted early (project's own rule).
"""
EARLIEST_YEAR, LATEST_YEAR = 2000, 2100
PACK_S, FIFO_FRAC = 300.0, 0.8
"""From shelf to guest, and how surely the oldest tray is taken first (project's own rules)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Case:
    """One deviation with what was done about it."""

    opened: Kept[CaseOpened]
    steps: tuple[Kept[CaseStep], ...]

    @property
    def found(self) -> CaseOpened:
        """What was found."""
        return self.opened.fact

    def last(self, step: str) -> CaseStep | None:
        """The newest step of a kind, or None."""
        return next((e.fact for e in reversed(self.steps) if e.fact.step == step), None)

    @property
    def decided(self) -> dict[int | None, str | None]:
        """What was decided of the earlier loads, by their entry."""
        return {e.fact.load_number: e.fact.decision for e in self.steps if e.fact.step == "earlier"}

    @property
    def closed(self) -> bool:
        """Whether it was closed."""
        return self.last("closed") is not None


def open_case(
    store: Store, kitchen: Kitchen, values: Mapping[str, Any], at: dt.datetime | None = None
) -> Kept[CaseOpened]:
    """Open a case by hand: a hold failure, a failed thermometer, a complaint. Raises InputError: an unknown
    kind, nothing said of it, or an unknown fryer or product.

    Parameters
    ----------
    values : what (hold, thermometer, complaint), words, fryer and product where known, pieces, who
    """
    words = typed(values, "words")
    what = one_of(BY_HAND, values.get("what"), "what")
    if len(words) < 5:
        raise InputError("words", repr(words), "what was found, in words")
    fryer, product = str(values.get("fryer", "") or ""), str(values.get("product", "") or "")
    if fryer:
        kitchen.fryer(fryer)
    if product:
        kitchen.product(product)
    fact = CaseOpened(
        what=what,
        reading_number=0,
        fryer=fryer,
        product=product,
        pieces_count=int(pieces_count(values.get("pieces", ""))),
        core_c=None,
        limit_c=None,
        who=str(values.get("who", "") or "")[:80],
        words=words[:400],
    )
    return write(store, fact, at)


def cases(store: Store) -> list[Case]:
    """Every case, newest first."""
    return newest_cases(store, None)


def newest_cases(store: Store, count: int | None) -> list[Case]:
    """So many of the newest cases, newest first."""
    opened = list(islice(store.facts(CaseOpened, newest_first=True), count))
    steps: dict[int, list[Kept[CaseStep]]] = {}
    for item in store.facts(CaseStep, after=opened[-1].number if opened else 0):
        steps.setdefault(item.fact.case_number, []).append(item)
    return [Case(opened=e, steps=tuple(steps.get(e.number, ()))) for e in opened]


def case_of(store: Store, number: int) -> Case:
    """One case. Raises InputError: no case has the number."""
    item = store.fact(number, CaseOpened)
    if item is None:
        raise InputError("case", number, "the number of a case")
    steps = store.facts(CaseStep, after=number)
    return Case(opened=item, steps=tuple(e for e in steps if e.fact.case_number == number))


def _meets(reading: Reading, error_k: float) -> bool:
    return reading.limit_c is not None and reading.judged_c >= reading.limit_c + error_k


def earlier_loads(store: Store, kitchen: Kitchen, case: Case) -> list[EarlierLoad]:
    """Loads of the case's fryer before it that no good reading of their product followed: each must be
    decided. A reading that was mistyped, or that came after the case was opened, clears none.
    """
    found, at = case.found, case.opened.happened_at
    if not found.fryer or found.what not in ("probe", "thermometer"):
        return []
    error_k = judged_at(store, kitchen, at).site.thermometer_error_k
    since = at - dt.timedelta(hours=EARLIER_H)
    mistyped = {e.replaces for e in store.facts_between(since, at, Reading)}
    good = [
        e
        for e in store.facts_between(since, at, Reading)
        if e.fact.fryer == found.fryer
        and _meets(e.fact, error_k)
        and e.number < case.opened.number
        and e.number not in mistyped
    ]
    trade = usual_trade(kitchen)
    loads = []
    for item in standing(store.facts_between(since, at, BoardTap)):
        if item.fact.what == "drop" and item.fact.fryer == found.fryer and not _cleared(kitchen, item, good):
            _, second = business_time(trade, item.happened_at)
            load = EarlierLoad(
                number=item.number,
                at=f"{int(second // 3600) % 24:02d}:{int(second // 60) % 60:02d}",
                product=product_name(kitchen, item.fact.product),
                pieces=item.fact.pieces_count,
            )
            loads.append(load)
    return loads


def unknown_before(store: Store, case: Case, tr: Translate = str) -> str:
    """Says that nobody knows which loads went before a case, where the board has none."""
    found, at = case.found, case.opened.happened_at
    if not found.fryer or found.what not in ("probe", "thermometer"):
        return ""
    taps = standing(store.facts_between(at - dt.timedelta(hours=EARLIER_H), at, BoardTap))
    if any(e.fact.what == "drop" and e.fact.fryer == found.fryer for e in taps):
        return ""
    text = (
        "The board has no load of this fryer in the {hours} hours before."
        " Nobody knows which loads went before."
    )
    return say(text, {"hours": f"{EARLIER_H:g}"}, translate=tr)


def _cleared(kitchen: Kitchen, load: Kept[BoardTap], good: Sequence[Kept[Reading]]) -> bool:
    """Whether a good reading of a load's product, or of one that nobody named, came after it. One that came
    while it was in the oil was of the load before.
    """
    fryer, product = load.fact.fryer, load.fact.product
    cooked = [p for p in kitchen.programs if (p.fryer, p.product) == (fryer, product)]
    in_oil_s = IN_OIL_FRAC * min((sum(p.durations_s()) for p in cooked), default=0.0)
    soonest = load.happened_at + dt.timedelta(seconds=in_oil_s)
    return any(e.happened_at > soonest and e.fact.product in (product, None, "") for e in good)


@in_turn
def tell_step(
    store: Store, kitchen: Kitchen, number: int, values: Mapping[str, Any], at: dt.datetime | None = None
) -> Kept[CaseStep]:
    """Keep what was done about a case. Raises InputError: a closed case, an unknown step, no name, served
    without a re-probe that meets the limit, or a close while something is undecided.

    Parameters
    ----------
    values : step (recook, reprobe, disposition, cause, earlier, closed), who; temp and thermometer for a
        reprobe;
        disposition (served, discarded, held); cause and words;
        load (entry number) and decision (held, discarded, released) for an earlier load
    """
    case, who = case_of(store, number), typed(values, "who")
    if case.closed:
        raise InputError("case", number, "open: this one is closed")
    step = one_of(STEPS, values.get("step"), "step")
    who = by_name(who)
    words = typed(values, "words")[:400]
    fact = CaseStep(case_number=number, step=step, who=who, words=words)
    return write(store, _with_what_was_done(store, kitchen, case, fact, values), at)


def _with_what_was_done(
    store: Store, kitchen: Kitchen, case: Case, fact: CaseStep, values: Mapping[str, Any]
) -> CaseStep:
    level = case.found.limit_c or level_of(kitchen, case.found.product, now())
    if fact.step == "reprobe":
        if case.last("recook") is None:
            raise InputError("step", fact.step, "after the load went back in the oil")
        core, thermometer = read_core(kitchen, str(values.get("temp", "")), "temp"), thermometer_typed(values)
        taken_off = corrected_c(store, thermometer, core, now())
        return replace(
            fact,
            core_c=core,
            limit_c=level,
            meets=None if level is None else lower_of(core, taken_off) >= level,
            thermometer=thermometer,
            corrected_c=taken_off,
        )
    if fact.step == "disposition":
        word = one_of(DISPOSITIONS, values.get("disposition"), "disposition")
        probe = case.last("reprobe")
        unproven = case.found.what in ("probe", "thermometer") and not (
            (probe and probe.meets) or typed_wrong(store, case)
        )
        if word == "served" and unproven:
            raise InputError(
                "disposition", word, "discarded or held: nothing is served before a probe meets the limit"
            )
        return replace(fact, disposition=word)
    if fact.step == "cause":
        return replace(fact, cause=one_of(tuple(CAUSES), values.get("cause"), "cause"))
    if fact.step == "earlier":
        loads = [load.number for load in earlier_loads(store, kitchen, case)]
        text = str(values.get("load", ""))
        if not is_count(text) or int(text) not in loads:
            raise InputError("load", repr(text), "one of the earlier loads")
        decision = one_of(DECISIONS, values.get("decision"), "decision")
        if decision == "released":
            given_words(fact.words, "words", "why it is released, in words")
        return replace(fact, load_number=int(text), decision=decision)
    if fact.step == "closed":
        missing = undecided(store, kitchen, case)
        if missing:
            raise InputError(
                "case", case.opened.number, "closed only after: {missing}", missing="; ".join(missing)
            )
    return fact


def typed_wrong(store: Store, case: Case) -> bool:
    """Whether the reading that opened a case was mistyped and the right figure meets its level."""
    newer = store.replaced_by(case.found.reading_number)
    right = store.fact(newer.number, Reading) if newer else None
    return right is not None and case.found.limit_c is not None and right.fact.judged_c >= case.found.limit_c


def _fell_short_after(case: Case) -> bool:
    """Whether a re-probe below the limit came after the last word on what becomes of the load."""
    steps = [e.fact for e in case.steps if e.fact.step in ("disposition", "reprobe")]
    return bool(steps) and steps[-1].step == "reprobe" and steps[-1].meets is False


def undecided(
    store: Store, kitchen: Kitchen, case: Case, loads: Sequence[EarlierLoad] | None = None
) -> list[str]:
    """What stands between a case and its close, in words of the steps; ``loads`` are the earlier ones, where
    they are known already.
    """
    missing = []
    loads = earlier_loads(store, kitchen, case) if loads is None else loads
    disposition = case.last("disposition")
    if disposition is not None and disposition.disposition == "served" and _fell_short_after(case):
        missing.append("what becomes of the load after the newest re-probe, which is below the limit")
    if disposition is None:
        missing.append("a disposition")
    elif disposition.disposition == "held":
        missing.append("what is held is served or discarded")
    if case.last("cause") is None:
        missing.append("a cause")
    decided = case.decided
    if any(decided.get(load.number, "held") == "held" for load in loads):
        missing.append("every earlier load is released or discarded")
    return missing


def newest_lines(
    store: Store,
    kitchen: Kitchen,
    count: int,
    tr: Translate = str,
    *,
    before: int | None = None,
    still: bool = False,
) -> list[CaseLine]:
    """The newest cases ``before`` a number as lines of a list, newest first; of the open ones with
    ``still``.
    """
    done = closed_cases(store)
    every = store.facts(CaseOpened, newest_first=True, after=before)
    if still:
        every = (item for item in still_open(store) if before is None or item.number < before)
    return [case_line(kitchen, item, item.number in done, tr) for item in islice(every, count)]


def case_view(store: Store, kitchen: Kitchen, case: Case, tr: Translate = str) -> CaseView:
    """A case as people read it."""
    found, decided = case.found, case.decided
    reading = store.fact(found.reading_number, Reading)
    loads = earlier_loads(store, kitchen, case)
    probe = case.last("reprobe")
    return CaseView(
        **asdict(case_line(kitchen, case.opened, case.closed, tr)),
        pieces=found.pieces_count,
        thermometer=reading.fact.thermometer if reading else "",
        steps=tuple(_step_view(store, kitchen, item, tr) for item in case.steps),
        who=found.who,
        author=tr(case.opened.author),
        note=found.words,
        missing=tuple(tr(m) for m in undecided(store, kitchen, case, loads)),
        earlier=tuple(EarlierRow(**asdict(load), decision=decided.get(load.number) or "") for load in loads),
        recooked=case.last("recook") is not None,
        again=probe is not None and not probe.meets,
        served_allowed=bool(probe and probe.meets)
        or found.what not in ("probe", "thermometer")
        or typed_wrong(store, case),
        reading=found.reading_number if reading else 0,
        unknown_before=unknown_before(store, case, tr),
    )


def _step_view(store: Store, kitchen: Kitchen, item: Kept[CaseStep], tr: Translate) -> StepRow:
    fact, system = item.fact, kitchen.site.units
    detail = fact.disposition or CAUSES.get(fact.cause or "", "") or fact.decision or ""
    temp = ""
    if fact.core_c is not None:
        limit = fact.core_c if fact.limit_c is None else fact.limit_c
        read = [show_below(fact.core_c, limit, "c", system)]
        if fact.corrected_c is not None and shown_apart(fact.corrected_c, fact.core_c, system):
            read.append(f"({show_below(fact.corrected_c, limit, 'c', system)} {tr('corrected')})")
        temp = " ".join([*read, fact.thermometer or ""]).strip()
    load = store.fact(fact.load_number, BoardTap) if fact.load_number else None
    if load is not None:
        name = product_name(kitchen, load.fact.product)
        temp = f"{local_time(kitchen, load.happened_at)} {load.fact.pieces_count} {name}:"
    return StepRow(
        at=local_time(kitchen, item.recorded_at),
        step=fact.step,
        words=tr(fact.step),
        who=fact.who,
        detail=f"{temp} {tr(detail) if detail else ''}".strip(),
        note=fact.words,
        author=tr(item.author),
    )


def _on_the_shelf(
    store: Store, kitchen: Kitchen, product: str, packed: dt.datetime
) -> list[tuple[dt.datetime, Kept[BoardTap], Program]]:
    """Loads of a product within their hold life at a moment, by when they were lifted."""
    programs = [
        kitchen.program(n) for n in sorted({p.name for p in kitchen.programs if p.product == product})
    ]
    longest = max((sum(p.durations_s()) + p.hold_life_s for p in programs), default=0.0) + 600.0
    found = []
    for item in standing(store.facts_between(packed - dt.timedelta(seconds=longest), packed, BoardTap)):
        program = next((p for p in programs if p.fryer == item.fact.fryer), None)
        if item.fact.what != "drop" or item.fact.product != product or program is None:
            continue
        lifted = item.happened_at + dt.timedelta(seconds=sum(program.durations_s()) + program.drain_s)
        if lifted <= packed <= lifted + dt.timedelta(seconds=program.hold_life_s):
            found.append((lifted, item, program))
    return sorted(found, key=lambda row: row[0])


def trace(store: Store, kitchen: Kitchen, product: str, bought: dt.datetime) -> Trace:
    """Loads a guest's piece may have come from, with their chances, evidence and gaps.

    A load counts when it lay on the shelf, within its hold life, when the guest's order was packed. The
    oldest tray is taken first with a chance of four in five; the rest goes by the pieces of each tray. What
    was sold and thrown away meanwhile is not known by tray, so the chances are rough, and that is said.
    Raises InputError: an unknown product.
    """
    kitchen.product(product)
    if not EARLIEST_YEAR <= bought.year <= LATEST_YEAR:
        raise InputError("bought", f"{bought:%Y-%m-%d}", "a day between 2000 and 2100")
    found = _on_the_shelf(store, kitchen, product, bought - dt.timedelta(seconds=PACK_S))
    total = sum(item.fact.pieces_count for _, item, _ in found)
    rows = []
    for n, (lifted, item, program) in enumerate(found):
        pieces = item.fact.pieces_count
        share = pieces / total if total else 1.0 / len(found)
        chance = (FIFO_FRAC if n == 0 else 0.0) + (1 - FIFO_FRAC) * share
        readings = tuple(
            TracedReading(
                number=e.number,
                core=show(e.fact.core_c, "c", kitchen.site.units),
                checked=bool(e.fact.checked),
            )
            for e in store.facts_between(lifted - NEAR_LIFT, lifted + NEAR_LIFT, Reading)
            if e.fact.fryer == item.fact.fryer
        )
        load = TracedLoad(
            number=item.number,
            fryer=kitchen.fryer(item.fact.fryer).name,
            program=f"{program.name} v{program.version}",
            pieces=pieces,
            lifted=local_time(kitchen, lifted),
            chance_frac=round(chance, 3),
            readings=readings,
        )
        rows.append(load)
    doubts = {
        "No load on record could have been on the shelf then: the board was not kept, or the time is"
        " wrong.": not rows,
        "Loads without a reading stand among them.": any(not r.readings for r in rows),
        "A thermometer had no valid check when it was read.": any(
            not x.checked for r in rows for x in r.readings
        ),
        "Which tray a piece came from is not recorded; the chances rest on first in, first out.": True,
    }
    gaps = tuple(text for text, so in doubts.items() if so)
    return Trace(product=product, bought=local_time(kitchen, bought), loads=tuple(rows), gaps=gaps)
