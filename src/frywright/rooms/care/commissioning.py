"""Commissioning a fryer: steps signed in a gated order, first-day figures, acceptance."""

from __future__ import annotations

import datetime as dt
from collections.abc import Mapping
from dataclasses import asdict, dataclass, replace
from typing import Any

from frywright.calibrate.sampling import SampleAim, SampleOutcome, prove_sample
from frywright.care.acceptance import APART_S, VENT_APART_S, Test, control, reckoned_s, timed
from frywright.care.commissioning import amps, go
from frywright.care.gates import Signed, Step, check, missing, steps_for, titles_of
from frywright.catalog import load as catalog
from frywright.ledger.facts.care import FigureTimed, StepSigned
from frywright.ledger.facts.fact import Kept
from frywright.ledger.store import Store
from frywright.model.business_day import local_time
from frywright.model.errors import InputError, one_of, several
from frywright.model.findings import Note, Outcome, say
from frywright.model.fryer import Fryer
from frywright.model.kitchen import Kitchen
from frywright.model.program import Program
from frywright.model.tongues import Translate
from frywright.model.units import clock, parse_clock, show
from frywright.physics.fry import FryHistory
from frywright.rooms.care.heat_check import heat_check
from frywright.rooms.care.in_order import check_sense, opens_words
from frywright.rooms.care.nameplate import Case, case_of, differences, points_of, typed_back
from frywright.rooms.care.upkeep import FIGURE_NAMES, figure_fact, first_day
from frywright.rooms.care.vat import oil_fact
from frywright.rooms.clock import now
from frywright.rooms.hall import SHORTEST_REASON, confirmed, typed, write
from frywright.rooms.readings import core_of
from frywright.rooms.standing import held_status
from frywright.trial.ask import CookRequest, ask, product_limit
from frywright.verdicts.place import place_of

LOADS = ("full", "half", "back_to_back")
FILL_FRAC = 0.25
"""How far a filling may be from what the vat takes: the cold line stands lower than the hot one, cartons are
counted whole (own estimate).
"""
LOAD_NAMES = {"full": "full load", "half": "half load", "back_to_back": "back to back"}


@dataclass(frozen=True, slots=True, kw_only=True)
class FigureAsked:
    """A figure that a step brings."""

    key: str
    title: str


@dataclass(frozen=True, slots=True, kw_only=True)
class StepRow:
    """A step of the gated order: what it asks, what it waits for, who signed it and what was passed over."""

    key: str
    title: str
    why: str
    who: str
    hard: bool
    people: int
    figures: tuple[FigureAsked, ...]
    missing: tuple[str, ...]
    done: bool
    ready: bool
    opens: str
    at: str
    by: str
    role: str
    note: str
    passed_over: tuple[str, ...]
    pass_name: str
    pass_reason: str
    early: bool  # it can be signed only with a name and a reason


@dataclass(frozen=True, slots=True, kw_only=True)
class PointRow:
    """A point of the site against the plate."""

    name: str
    outcome: str
    text: str


@dataclass(frozen=True, slots=True, kw_only=True)
class TestRow:
    """An acceptance test: what was measured, what was worked out, and the verdict with its word."""

    name: str
    measured: str
    worked_out: str
    outcome: str
    word: str
    text: str


@dataclass(frozen=True, slots=True, kw_only=True)
class CommissioningView:
    """A commissioning: plate and site as facts and as typed, steps, points, tests, what is open."""

    fryer: str
    name: str
    plate: Mapping[str, object]
    draws: str
    plate_typed: Mapping[str, str]
    site_typed: Mapping[str, str]
    site: Mapping[str, object]
    steps: tuple[StepRow, ...]
    points: tuple[PointRow, ...]
    go: str
    differences: tuple[str, ...]
    tests: tuple[TestRow, ...]
    open: tuple[str, ...]


def sign_step(
    store: Store, kitchen: Kitchen, values: Mapping[str, Any], at: dt.datetime | None = None
) -> Kept[StepSigned]:
    """Sign a step of the gated order, with its figures. Raises InputError: what
    :func:`frywright.care.gates.check` refuses, a survey that is not a go, figures that are missing or cannot
    be, a plate without its photo, a look for leaks too soon, a step signed twice without a reason.

    Parameters
    ----------
    values : fryer, step, who, role, second, note; pass_name and pass_reason where a soft step goes early;
        oil, the amount filled in;
        heat_up, recovery, pressure_build, vent_down as ``m:ss``;
        from_temp and to_temp of the heat-up; set_temp, mean_temp and swing of the control; full, half,
        back_to_back as probe readings with spaces; reason to sign again
    """
    case, key = case_of(store, kitchen, str(values.get("fryer", ""))), str(values.get("step", ""))
    known = {step.key: step for step in steps_for(case.fryer)}
    one_of(known, key, "step")
    if case.plate is None:
        raise InputError(
            "step", "too early", "after the plate was typed: no plate, no program", where=case.fryer.name
        )
    names = ("who", "role", "second", "note", "pass_name", "pass_reason")
    signed = Signed(**{name: typed(values, name)[:300] for name in names})
    step, done = known[key], case.done | ({"plate"} if case.plate else set())
    needs = check(step, done, signed)
    if step.people_count > 1:
        confirmed(signed.second)
    check_sense(case, kitchen, step, values, at or now())
    needs += _deviations(store, kitchen, case, key, signed)
    reason = typed(values, "reason")
    if key in case.steps and len(reason) < SHORTEST_REASON:
        raise InputError("step", "signed", "signed once; to sign again say why", where=step.title)
    told = StepSigned(
        fryer=case.fryer.key,
        step=key,
        case_number=case.plate.fact.case_number,
        who=signed.who[:80],
        role=signed.role,
        second=signed.second[:80],
        note=signed.note,
        passed_over=tuple(needs),
        pass_name=signed.pass_name if needs else "",
        pass_reason=signed.pass_reason if needs else "",
        reason=reason[:200],
        **_figures(kitchen, case, step, values),
    )
    figures = [_first_figure(store, kitchen, told, figure, values) for figure in step.figures]
    old = case.steps.get(key)
    with store.writing():
        for figure, replaces in figures:
            write(store, figure, replaces=replaces)
        if told.oil_mass_kg is not None:
            filled = {"vat": told.fryer, "what": "fill", "amount": values.get("oil"), "who": told.who}
            write(store, oil_fact(kitchen, filled, "", at or now()), at)
        return write(store, told, at, replaces=old.number if old else None)


SITE_GO, READ_BACK = "every point of the site a go", "every program read back"
"""What a step may go without by name and reason, beside the steps before it."""


def _deviations(
    store: Store, kitchen: Kitchen, case: Case, key: str, signed: Signed | None = None
) -> tuple[str, ...]:
    """What a site that is not a go, or programs nobody read back, leave open; signed only with a name and a
    reason.
    """
    if key == "survey":
        open_points = [p.name for p in points_of(case, kitchen) if p.outcome is not Outcome.MEETS]
        found, asked, lack = "site", "a go at every point, or a deviation owned by name and reason", SITE_GO
    elif key == "programs":
        mine = {p.name for p in kitchen.programs if p.fryer == case.fryer.key}
        open_points = [r.name for r in held_status(store, kitchen) if r.name in mine and r.state != "current"]
        found, lack = "program", READ_BACK
        asked = "read back on its page in room Cook first, or passed over with a name and a reason"
    else:
        return ()
    if not open_points:
        return ()
    if signed is not None and (len(signed.pass_name) < 3 or len(signed.pass_reason) < 10):
        raise InputError(found, several(open_points), asked, where=case.fryer.name)
    return (lack,)


def _first_figure(
    store: Store, kitchen: Kitchen, step: StepSigned, figure: str, values: Mapping[str, Any]
) -> tuple[FigureTimed, int | None]:
    """A figure timed in a step, as the fryer's first day, and the entry it replaces."""
    told = {
        "fryer": step.fryer,
        "figure": figure,
        "time": values.get(figure),
        "who": step.who,
        "note": str(list(step.marks_c)) if step.marks_c else "",
        "reason": step.reason or "new commissioning",
    }
    return figure_fact(store, kitchen, told, first=True)


def _filled_kg(kitchen: Kitchen, case: Case, step: Step, text: str) -> float:
    """Oil filled in as typed, about what plate or kitchen file says this vat takes."""
    plate = case.plate.fact.oil_mass_kg if case.plate else None
    takes = plate or case.fryer.oil_mass_kg
    if not text:
        raise InputError("oil", "empty", "weighed or counted: how much went in", where=step.title)
    found = kitchen.site.read(text, "mass", "oil")
    if abs(found - takes) > FILL_FRAC * takes:
        raise InputError(
            "oil",
            found,
            "{least_kg} to {most_kg}: this vat takes {takes_kg}. Too little bares the heat surfaces, too much"
            " boils over",
            where=step.title,
            least_kg=(1 - FILL_FRAC) * takes,
            most_kg=(1 + FILL_FRAC) * takes,
            takes_kg=takes,
            unit="kg",
        )
    return found


def _figures(kitchen: Kitchen, case: Case, step: Step, values: Mapping[str, Any]) -> dict[str, Any]:
    """Figures a step must bring, read whole before anything is written."""
    found: dict[str, Any] = {}
    for figure in step.figures:
        text = typed(values, figure)
        if not text:
            raise InputError(FIGURE_NAMES[figure], "empty", "timed as minutes:seconds", where=step.title)
        parse_clock(text)
    site = kitchen.site

    def temp(name: str) -> float:
        return site.read(typed(values, name), "temperature", name)

    if step.key == "fill":
        text = typed(values, "oil")
        found["oil_mass_kg"] = _filled_kg(kitchen, case, step, text)
    if step.key == "first_heat":
        found["marks_c"] = (temp("from_temp"), temp("to_temp"))
        if typed(values, "set_temp"):
            swing = site.read(str(values.get("swing", "") or "0"), "temperature_difference", "swing")
            found |= {"set_c": temp("set_temp"), "mean_c": temp("mean_temp"), "swing_k": swing}
    if step.key == "calibration":
        found |= asdict(heat_check(kitchen, values, step.title))
    if step.key == "proof":
        for load in LOADS:
            read = site.read_list(str(values.get(load, "") or ""), "temperature", LOAD_NAMES[load])
            found[f"{load}_c"] = tuple(core_of(c, LOAD_NAMES[load]) for c in read)
            if len(read) < 2:
                raise InputError(
                    LOAD_NAMES[load],
                    len(read),
                    "two or more readings of the coldest pieces, with spaces",
                    where=step.title,
                )
    return found


# ---------------------------------------------------------------- acceptance


def acceptance(store: Store, kitchen: Kitchen, case: Case, tr: Translate = str) -> tuple[TestRow, ...]:
    """Every acceptance test of a commissioning in words."""
    system, fryer = kitchen.site.units, case.fryer
    firsts = {figure: e.fact.value_s for (key, figure), e in first_day(store).items() if key == fryer.key}
    heat = case.steps["first_heat"].fact if "first_heat" in case.steps else None
    marks = (heat.marks_c if heat else None) or (kitchen.site.room_temp_c, 175.0)
    oil = catalog.oils()[fryer.oil]
    expected = reckoned_s(fryer, oil, _full_load(kitchen, fryer), marks, kitchen.site.room_temp_c)
    wanted = [f for step in steps_for(fryer) for f in step.figures]
    tests = []
    for figure in wanted:
        measured = firsts.get(figure)
        shown = (clock(measured) if measured else "", clock(expected[figure]) if figure in expected else "")
        apart = VENT_APART_S if figure == "vent_down" else APART_S
        tests.append(timed(FIGURE_NAMES[figure], measured, expected.get(figure), shown, apart))
    tests += _control(heat, fryer, system)
    tests += _proofs(kitchen, case, system)
    return tuple(
        TestRow(
            name=tr(t.name),
            measured=t.measured,
            worked_out=t.reckoned,
            outcome=str(t.outcome),
            word=tr(str(t.outcome)),
            text=say(t.note.text, t.note.values, system, tr),
        )
        for t in tests
    )


def _control(heat: StepSigned | None, fryer: Fryer, system: str) -> list[Test]:
    """How the first heat's control held its set point; empty where it was not read."""
    if heat is None or heat.set_c is None or heat.mean_c is None or heat.swing_k is None:
        return []
    shown = show(heat.mean_c, "c", system), show(heat.set_c, "c", system), show(heat.swing_k, "k", system)
    return control(heat.set_c, heat.mean_c, heat.swing_k, fryer, shown)


def _program(kitchen: Kitchen, fryer: Fryer) -> Program | None:
    """The program a fryer is tried with: one under pressure, else its first."""
    names = sorted({p.name for p in kitchen.programs if p.fryer == fryer.key})
    programs = [kitchen.program(name) for name in names]
    return next((p for p in programs if p.under_pressure), programs[0] if programs else None)


def _full_load(kitchen: Kitchen, fryer: Fryer) -> FryHistory | None:
    chosen = _program(kitchen, fryer)
    return ask(kitchen, CookRequest(program=chosen)).history if chosen else None


NO_RULE_HERE = "No rule here for this food, and no house target: nothing judges these readings."
NEEDS_TIME = "This place's rule needs a time with the temperature: judge it from a probe log."


def _proofs(kitchen: Kitchen, case: Case, system: str) -> list[Test]:
    proof_step = case.steps["proof"].fact if "proof" in case.steps else None
    told = (
        {"full": proof_step.full_c, "half": proof_step.half_c, "back_to_back": proof_step.back_to_back_c}
        if proof_step
        else {}
    )
    tried, tests = _program(kitchen, case.fryer), []
    goods = kitchen.product(tried.product) if tried else None
    limit = product_limit(kitchen, goods) if goods else place_of(kitchen).cook_limit()
    for load in LOADS:
        readings = told.get(load) or ()
        shown = ", ".join(show(c, "c", system) for c in readings)
        if not readings or limit is None or limit.level_c is None:
            unjudged = NO_RULE_HERE if limit is None else NEEDS_TIME
            text = unjudged if readings else "Not measured."
            tests.append(
                Test(
                    name=LOAD_NAMES[load],
                    measured=shown,
                    reckoned="",
                    outcome=Outcome.UNKNOWN,
                    note=Note(kind="proof", text=text),
                )
            )
            continue
        guard = kitchen.site.thermometer_error_k
        proof = prove_sample(
            readings, SampleAim(limit_c=limit.level_c, guard_k=guard), thermometer_checked=True
        )
        below = min(readings) - guard < limit.level_c
        outcome = (
            Outcome.FAILS
            if below
            else (Outcome.MEETS if proof.outcome is SampleOutcome.PASSES else Outcome.UNKNOWN)
        )
        note = Note(
            kind="proof",
            text=(
                "Lowest reading {lowest_c}, thermometer error {guard_k} taken off, limit {limit_c}; {count}"
                " readings are a start, the proof by sampling stands in room Cook."
            ),
            values={
                "lowest_c": min(readings),
                "guard_k": guard,
                "limit_c": limit.level_c,
                "count": float(len(readings)),
            },
        )
        tests.append(Test(name=LOAD_NAMES[load], measured=shown, reckoned="", outcome=outcome, note=note))
    return tests


# ---------------------------------------------------------------- view


def commissioning_view(
    store: Store, kitchen: Kitchen, fryer: str, language: str = "en", tr: Translate = str
) -> CommissioningView:
    """A commissioning as a page, JSON and the handover pack show it."""
    case, system = case_of(store, kitchen, fryer), kitchen.site.units
    lacks = {key: _deviations(store, kitchen, case, key) for key in ("survey", "programs")}
    rows = (_step_row(case, kitchen, step, tr) for step in steps_for(case.fryer))
    steps = tuple(replace(row, early=row.early or bool(lacks.get(row.key))) for row in rows)
    points = points_of(case, kitchen)
    plate, site = case.plate.fact if case.plate else None, case.site.fact if case.site else None
    draws = ""
    if plate and plate.power_w and plate.volts_n and plate.phases_count and plate.fuel == "electric":
        draws = f"{amps(plate.power_w, plate.volts_n, int(plate.phases_count)):.1f} A"
    return CommissioningView(
        fryer=case.fryer.key,
        name=case.fryer.name,
        plate=asdict(plate) if plate else {},
        draws=draws,
        plate_typed=typed_back(plate, system),
        site_typed=typed_back(site, system),
        site=asdict(site) if site else {},
        steps=steps,
        points=tuple(
            PointRow(
                name=tr(p.name), outcome=str(p.outcome), text=say(p.note.text, p.note.values, system, tr)
            )
            for p in points
        ),
        go=str(go(points)) if points else "unknown",
        differences=tuple(say(n.text, n.values, system, tr) for n in differences(case)),
        tests=acceptance(store, kitchen, case, tr) if case.plate else (),
        open=tuple(s.key for s in steps if not s.done),
    )


def _step_row(case: Case, kitchen: Kitchen, step: Step, tr: Translate) -> StepRow:
    """A step of the gated order as it stands."""
    done = case.done | ({"plate"} if case.plate else set())
    entry = case.steps.get(step.key)
    signed = entry.fact if entry else None
    return StepRow(
        key=step.key,
        title=tr(step.title),
        why=tr(step.why),
        who=step.who,
        hard=step.hard,
        people=step.people_count,
        figures=tuple(FigureAsked(key=f, title=tr(FIGURE_NAMES[f])) for f in step.figures),
        missing=tuple(missing(step, done)),
        done=bool(entry),
        ready=bool(case.plate) and not missing(step, done),
        opens=opens_words(case, kitchen, step, tr),
        at=local_time(kitchen, entry.happened_at) if entry else "",
        by=", ".join(x for x in (signed.who, signed.second) if x) if signed else "",
        role=signed.role if signed else "",
        note="; ".join(x for x in (signed.note, _brought(kitchen, signed, tr)) if x) if signed else "",
        passed_over=_passed_over(signed, tr) if signed else (),
        pass_name=signed.pass_name if signed else "",
        pass_reason=signed.pass_reason if signed else "",
        early=bool(missing(step, done)),
    )


def _passed_over(signed: StepSigned, tr: Translate) -> tuple[str, ...]:
    """What a step went without, by the titles of the steps."""
    titles = titles_of(signed.passed_over) | {"site go": SITE_GO}
    return tuple(tr(titles.get(key, key)) for key in signed.passed_over)


def _brought(kitchen: Kitchen, signed: StepSigned, tr: Translate) -> str:
    """The figures that a step brought and no acceptance test shows."""
    system, told = kitchen.site.units, dict[str, Any]()
    if signed.oil_mass_kg is not None:
        text, told = "{oil_kg} of oil filled in", {"oil_kg": signed.oil_mass_kg}
    elif signed.marks_c is not None:
        text = "heated from {low_c} to {high_c}"
        told = {"low_c": signed.marks_c[0], "high_c": signed.marks_c[1]}
    elif signed.thermometer is not None:
        text = "by {thermometer}, set to {set_c}: {before_c}"
        told = {"thermometer": signed.thermometer, "set_c": signed.set_c, "before_c": signed.before_c}
        if signed.after_c is not None:
            text, told["after_c"] = (
                "by {thermometer}, set to {set_c}: {before_c}, after {after_c}",
                signed.after_c,
            )
    else:
        return ""
    return say(text, told, system, tr)
