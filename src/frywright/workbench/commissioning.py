"""Commissioning a fryer: its nameplate with a photo, the site against it, steps signed in a gated order,
first-day figures, acceptance.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any, BinaryIO

from frywright.calibrate.sampling import SampleAim, SampleOutcome, prove_sample
from frywright.care.acceptance import Test, control, reckoned_s, timed
from frywright.care.commissioning import Plate, Point, SiteFacts, amps, go, survey
from frywright.care.gates import Signed, Step, check, missing, steps_for
from frywright.catalog import load as catalog
from frywright.ledger.store import Store
from frywright.model.entry import Recorded
from frywright.model.errors import InputError
from frywright.model.findings import Note, Outcome, say
from frywright.model.fryer import Fryer
from frywright.model.kitchen import Kitchen, Site
from frywright.model.units import UNITS, clock, parse_clock, show, to_people
from frywright.physics.fry import FryHistory
from frywright.verdicts.limits import cook_limit
from frywright.workbench.book import entry_of, record
from frywright.workbench.cook import CookRequest, ask
from frywright.workbench.photos import keep_photo
from frywright.workbench.upkeep import FIGURE_NAMES, figure_entry, first_day

Translate = Callable[[str], str]
PLATE, SITE, STEP = "nameplate", "site_survey", "commission_step"
PLATE_TEXTS = ("maker", "model", "serial", "fuel", "gas", "year")
COUNTED = {"volts": "volts_n", "phases": "phases_count", "hz": "hz_n", "breaker_amps": "breaker_amps_n"}
MEASURED = {
    "power": ("power_w", "power"),
    "gas_low": ("gas_low_pa", "pressure"),
    "gas_high": ("gas_high_pa", "pressure"),
    "oil": ("oil_mass_kg", "mass"),
    "gas_static": ("gas_static_pa", "pressure"),
    "gas_flowing": ("gas_flowing_pa", "pressure"),
    "altitude": ("altitude_m", "length"),
    "flame": ("flame_distance_m", "length"),
}
"""Typed field: the name it is kept by, and its dimension."""
PLATE_NUMBERS = ("volts", "phases", "hz", "power", "gas_low", "gas_high", "oil")
SITE_NUMBERS = ("volts", "phases", "breaker_amps", "gas_static", "gas_flowing", "altitude", "flame")
TYPED_UNIT = {
    "us": {
        "power": "kw",
        "gas_low": "inh2o",
        "gas_high": "inh2o",
        "oil": "lb",
        "gas_static": "inh2o",
        "gas_flowing": "inh2o",
        "altitude": "ft",
        "flame": "in",
    },
    "metric": {
        "power": "kw",
        "gas_low": "mbar",
        "gas_high": "mbar",
        "oil": "kg",
        "gas_static": "mbar",
        "gas_flowing": "mbar",
        "altitude": "m",
        "flame": "cm",
    },
}
"""Unit taken where a number is typed alone; any other unit may be typed with it, as plates print them."""
YES_NO = {"": None, "yes": True, "no": False}
DIFFERS_FRAC = 0.05
LOADS = ("full", "half", "back_to_back")
LOAD_NAMES = {"full": "full load", "half": "half load", "back_to_back": "back to back"}


@dataclass(frozen=True, slots=True, kw_only=True)
class Case:
    """One commissioning of one fryer as the store holds it; the newest plate that is not a correction begins
    it.
    """

    fryer: Fryer
    plate: Recorded | None
    site: Recorded | None
    steps: dict[str, Recorded]

    @property
    def done(self) -> set[str]:
        """Keys of the steps signed."""
        return set(self.steps)


def case_of(store: Store, kitchen: Kitchen, fryer: str) -> Case:
    """The newest commissioning of a fryer."""
    found = kitchen.fryer(fryer)
    plates = [e for e in store.current(PLATE) if e.entry.payload["fryer"] == fryer]
    plate = plates[-1] if plates else None
    number = plate.entry.payload["case_number"] if plate else -1

    def of(kind: str) -> list[Recorded]:
        return [
            e
            for e in store.current(kind)
            if e.entry.payload["fryer"] == fryer and e.entry.payload["case_number"] == number
        ]

    site = of(SITE)
    return Case(
        fryer=found,
        plate=plate,
        site=site[-1] if site else None,
        steps={e.entry.payload["step"]: e for e in of(STEP)},
    )


def _number(values: Mapping[str, Any], name: str, site: Site) -> tuple[str, float | None]:
    """A typed number by the name it is kept by; None where nothing was typed."""
    text = str(values.get(name, "") or "").strip()
    kept, dimension = MEASURED[name] if name in MEASURED else (COUNTED[name], "")
    if not text:
        return kept, None
    bare = TYPED_UNIT[str(site.units)].get(name, "")
    value = site.read(text, dimension, name, bare) if dimension else site.number(text, name)
    if not 0 <= value <= 1e7:
        raise InputError(name, text, "0 to ten million")
    return kept, value


# ---------------------------------------------------------------- plate and site


def keep_plate(
    store: Store, kitchen: Kitchen, values: Mapping[str, Any], photo: BinaryIO | None = None
) -> Recorded:
    """Keep what a fryer's nameplate says, with its photo. A second plate of the same serial corrects the
    first; another serial is a new fryer.

    Parameters
    ----------
    values : fryer; maker, model, serial, fuel, gas, year as printed; volts, phases, hz, power, gas_low,
        gas_high, oil, with units where not the kitchen's; reason for a correction

    Raises
    ------
    InputError
        No serial or fuel, figures the survey needs missing, a picture that is none or too large, a correction
        without its reason.
    """
    fryer = kitchen.fryer(str(values.get("fryer", "")))
    told: dict[str, Any] = {name: str(values.get(name, "") or "").strip()[:80] for name in PLATE_TEXTS}
    told |= dict(_number(values, name, kitchen.site) for name in PLATE_NUMBERS)
    if not told["serial"]:
        raise InputError("serial", "empty", "the number on the plate: no plate, no program", where=fryer.name)
    survey(_plate(told), SiteFacts())
    case = case_of(store, kitchen, fryer.key)
    same = case.plate is not None and case.plate.entry.payload["serial"] == told["serial"]
    reason = str(values.get("reason", "") or "").strip()
    if same and len(reason) < 4:
        raise InputError(
            "reason",
            repr(reason),
            "why the plate is typed anew: the first one stays on record",
            where=fryer.name,
        )
    sha = (
        keep_photo(store, photo)
        if photo is not None
        else (case.plate.entry.payload["photo"] if same and case.plate else "")
    )
    number = case.plate.entry.payload["case_number"] if case.plate else 0
    payload = {
        **told,
        "fryer": fryer.key,
        "photo": sha,
        "reason": reason[:200],
        "case_number": number if same else number + 1,
    }
    return record(store, PLATE, payload, replaces=case.plate.number if same and case.plate else None)


def _plate(told: Mapping[str, Any]) -> Plate:
    phases = int(told["phases_count"] or 0)
    return Plate(
        fuel=told["fuel"],
        power_w=told["power_w"] or 0.0,
        volts_n=told["volts_n"] or 0.0,
        phases_count=phases,
        gas=told["gas"],
    )


def keep_site(store: Store, kitchen: Kitchen, values: Mapping[str, Any]) -> Recorded:
    """Keep what was measured at the site; what nobody measured stays unknown.

    Raises
    ------
    InputError
        No plate yet, or figures that cannot be.
    """
    case = case_of(store, kitchen, str(values.get("fryer", "")))
    if case.plate is None:
        raise InputError(
            "site", "without a plate", "measured against a plate: type the plate first", where=case.fryer.name
        )
    told: dict[str, Any] = dict(_number(values, name, kitchen.site) for name in SITE_NUMBERS)
    for name in ("hood", "suppression"):
        word = str(values.get(name, "") or "")
        if word not in YES_NO:
            raise InputError(name, repr(word), "yes, no or left out")
        told[name] = word
    told |= {
        "gas": str(values.get("gas", "") or "").strip(),
        "baffle": bool(values.get("baffle")),
        "who": str(values.get("who", "") or "")[:80],
    }
    payload = {**told, "fryer": case.fryer.key, "case_number": case.plate.entry.payload["case_number"]}
    return record(store, SITE, payload, replaces=case.site.number if case.site else None)


def points_of(case: Case, kitchen: Kitchen) -> list[Point]:
    """Every point of the site against the plate; empty before there is a plate."""
    if case.plate is None:
        return []
    plate, told = case.plate.entry.payload, dict(case.site.entry.payload) if case.site else {}
    limits = (plate["gas_low_pa"], plate["gas_high_pa"])
    given = {
        name: told.get(name)
        for name in ("volts_n", "breaker_amps_n", "gas_static_pa", "gas_flowing_pa", "flame_distance_m")
    }
    phases, altitude = told.get("phases_count"), told.get("altitude_m")
    return survey(
        _plate(plate),
        SiteFacts(
            phases_count=int(phases) if phases else None,
            gas=told.get("gas") or None,
            gas_plate_pa=limits if None not in limits else None,
            altitude_m=kitchen.site.altitude_m if altitude is None else altitude,
            hood_runs=YES_NO[told.get("hood", "")],
            suppression_covers=YES_NO[told.get("suppression", "")],
            baffle=bool(told.get("baffle")),
            **given,
        ),
    )


def differences(case: Case) -> list[Note]:
    """Where the plate and the kitchen file say different things; the programs were designed with the kitchen
    file's.
    """
    if case.plate is None:
        return []
    told, fryer, found = case.plate.entry.payload, case.fryer, []
    if told["fuel"] != fryer.fuel:
        found.append(
            Note(kind="fuel", text="The kitchen file says another fuel: {fuel}.", values={"fuel": fryer.fuel})
        )
    if told["oil_mass_kg"] and abs(told["oil_mass_kg"] / fryer.oil_mass_kg - 1) > DIFFERS_FRAC:
        found.append(
            Note(
                kind="oil",
                text="The kitchen file says {oil_kg} of oil.",
                values={"oil_kg": fryer.oil_mass_kg},
            )
        )
    if told["fuel"] == "electric" and abs(told["power_w"] / fryer.heater_w - 1) > DIFFERS_FRAC:
        found.append(
            Note(
                kind="power",
                text=(
                    "The kitchen file says {power} kW into the oil: programs and proofs were reckoned"
                    " with it."
                ),
                values={"power": fryer.heater_w / 1000},
            )
        )
    return found


def typed_back(payload: Mapping[str, Any], system: str) -> dict[str, str]:
    """Numbers of a plate or site as they would be typed again in a kitchen's units."""
    found = {}
    for name, kept in COUNTED.items():
        if payload.get(kept) is not None:
            found[name] = f"{payload[kept]:g}"
    for name, (kept, _) in MEASURED.items():
        if payload.get(kept) is not None:
            found[name] = f"{to_people(payload[kept], TYPED_UNIT[system][name]):.4g}"
    return found | {name: str(payload[name]) for name in (*PLATE_TEXTS, "who") if payload.get(name)}


def unit_signs(system: str) -> dict[str, str]:
    """Sign of the unit taken for each typed number."""
    return {name: UNITS[unit].sign for name, unit in TYPED_UNIT[system].items()}


# ---------------------------------------------------------------- steps


def sign_step(store: Store, kitchen: Kitchen, values: Mapping[str, Any]) -> Recorded:
    """Sign a step of the gated order, with its figures.

    Parameters
    ----------
    values : fryer, step, who, role, second, note; pass_name and pass_reason where a soft step goes early;
        heat_up, recovery, pressure_build, vent_down as ``m:ss``;
        from_temp and to_temp of the heat-up; set_temp, mean_temp and swing of the control; full, half,
        back_to_back as probe readings with spaces; reason to sign again

    Raises
    ------
    InputError
        What :func:`frywright.care.gates.check` refuses, a survey that is not a go, figures that are missing,
        a step signed twice without a reason.
    """
    case, key = case_of(store, kitchen, str(values.get("fryer", ""))), str(values.get("step", ""))
    known = {step.key: step for step in steps_for(case.fryer)}
    if key not in known:
        raise InputError("step", repr(key), "one of: {known}", values={"known": ", ".join(known)})
    if case.plate is None:
        raise InputError(
            "step", key, "after the plate was typed: no plate, no program", where=case.fryer.name
        )
    names = ("who", "role", "second", "note", "pass_name", "pass_reason")
    signed = Signed(**{name: str(values.get(name, "") or "").strip()[:300] for name in names})
    step, done = known[key], case.done | ({"plate"} if case.plate else set())
    needs = check(step, done, signed)
    whole = go(points_of(case, kitchen))
    if key == "survey" and whole is not Outcome.MEETS:
        if len(signed.pass_name) < 3 or len(signed.pass_reason) < 10:
            raise InputError(
                "survey",
                str(whole),
                "a go at every point, or a deviation owned by name and reason",
                where=case.fryer.name,
            )
        needs = (*needs, "site go")
    reason = str(values.get("reason", "") or "").strip()
    if key in case.steps and len(reason) < 4:
        raise InputError("step", key, "signed once; to sign again say why", where=step.title)
    told = _figures(kitchen, case, step, values)
    payload = {
        "fryer": case.fryer.key,
        "step": key,
        "case_number": case.plate.entry.payload["case_number"],
        "who": signed.who[:80],
        "role": signed.role,
        "second": signed.second[:80],
        "note": signed.note,
        "passed_over": list(needs),
        "pass_name": signed.pass_name if needs else "",
        "pass_reason": signed.pass_reason if needs else "",
        "reason": reason[:200],
        **told,
    }
    figures = [
        figure_entry(
            store,
            kitchen,
            {
                "fryer": case.fryer.key,
                "figure": figure,
                "time": values.get(figure),
                "who": signed.who,
                "note": str(told.get("marks_c", "")),
                "reason": reason or "new commissioning",
            },
            first=True,
        )
        for figure in step.figures
    ]
    old = case.steps.get(key)
    with store.writing() as writer:
        for entry in figures:
            writer.add(entry)
        return writer.add(entry_of(STEP, payload, replaces=old.number if old else None))


def _figures(kitchen: Kitchen, case: Case, step: Step, values: Mapping[str, Any]) -> dict[str, Any]:
    """Figures a step must bring, read whole before anything is written."""
    found: dict[str, Any] = {}
    for figure in step.figures:
        text = str(values.get(figure, "") or "").strip()
        if not text:
            raise InputError(FIGURE_NAMES[figure], "empty", "timed as minutes:seconds", where=step.title)
        parse_clock(text)
    site = kitchen.site

    def temp(name: str, default: float | None = None) -> float:
        text = str(values.get(name, "") or "").strip()
        if not text and default is not None:
            return default
        return site.read(text, "temperature", name)

    if step.key == "first_heat":
        found["marks_c"] = [temp("from_temp", kitchen.site.room_temp_c), temp("to_temp", 175.0)]
        if str(values.get("set_temp", "") or "").strip():
            swing = site.read(str(values.get("swing", "") or "0"), "temperature_difference", "swing")
            found |= {"set_c": temp("set_temp"), "mean_c": temp("mean_temp"), "swing_k": swing}
    if step.key == "proof":
        for load in LOADS:
            found[f"{load}_c"] = site.read_list(
                str(values.get(load, "") or ""), "temperature", LOAD_NAMES[load]
            )
            if len(found[f"{load}_c"]) < 2:
                raise InputError(
                    LOAD_NAMES[load],
                    len(found[f"{load}_c"]),
                    "two or more readings of the coldest pieces, with spaces",
                    where=step.title,
                )
    return found


# ---------------------------------------------------------------- acceptance


def acceptance(store: Store, kitchen: Kitchen, case: Case, tr: Translate = str) -> list[dict[str, str]]:
    """Every acceptance test of a commissioning in words."""
    system, fryer = str(kitchen.site.units), case.fryer
    firsts = {figure: e.entry.payload for (key, figure), e in first_day(store).items() if key == fryer.key}
    heat = case.steps["first_heat"].entry.payload if "first_heat" in case.steps else {}
    marks = tuple(heat.get("marks_c", (kitchen.site.room_temp_c, 175.0)))
    oil = catalog.oils()[fryer.oil]
    expected = reckoned_s(
        fryer, oil, _full_load(kitchen, fryer), (marks[0], marks[1]), kitchen.site.room_temp_c
    )
    wanted = [f for step in steps_for(fryer) for f in step.figures]
    tests = []
    for figure in wanted:
        measured = firsts[figure]["value_s"] if figure in firsts else None
        shown = (clock(measured) if measured else "", clock(expected[figure]) if figure in expected else "")
        tests.append(timed(FIGURE_NAMES[figure], measured, expected.get(figure), shown))
    if "set_c" in heat:
        shown3 = (
            show(heat["mean_c"], "c", system),
            show(heat["set_c"], "c", system),
            show(heat["swing_k"], "k", system),
        )
        tests += control(heat["set_c"], heat["mean_c"], heat["swing_k"], fryer, shown3)
    tests += _proofs(kitchen, case, system)
    return [
        {
            "name": tr(t.name),
            "measured": t.measured,
            "reckoned": t.reckoned,
            "outcome": str(t.outcome),
            "word": tr(str(t.outcome)),
            "text": say(t.note.text, t.note.values, system, tr),
        }
        for t in tests
    ]


def _full_load(kitchen: Kitchen, fryer: Fryer) -> FryHistory | None:
    names = sorted({p.name for p in kitchen.programs if p.fryer == fryer.key})
    programs = [kitchen.program(name) for name in names]
    chosen = next((p for p in programs if p.under_pressure), programs[0] if programs else None)
    return ask(kitchen, CookRequest(program=chosen)).history if chosen else None


def _proofs(kitchen: Kitchen, case: Case, system: str) -> list[Test]:
    told = case.steps["proof"].entry.payload if "proof" in case.steps else {}
    limit, tests = cook_limit(kitchen.site.jurisdiction), []
    for load in LOADS:
        readings = told.get(f"{load}_c", [])
        shown = ", ".join(show(c, "c", system) for c in readings)
        if not readings or limit.level_c is None:
            text = (
                "Not measured."
                if not readings
                else "This place's rule needs a time with the temperature: judge it from a probe log."
            )
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
) -> dict[str, Any]:
    """A commissioning as a page, JSON and the handover pack show it."""
    case, system = case_of(store, kitchen, fryer), str(kitchen.site.units)
    steps = []
    for step in steps_for(case.fryer):
        done = case.done | ({"plate"} if case.plate else set())
        entry = case.steps.get(step.key)
        payload = entry.entry.payload if entry else {}
        steps.append(
            {
                "key": step.key,
                "title": tr(step.title),
                "why": tr(step.why),
                "who": step.who,
                "hard": step.hard,
                "people": step.people_count,
                "figures": [{"key": f, "title": tr(FIGURE_NAMES[f])} for f in step.figures],
                "missing": list(missing(step, done)),
                "done": bool(entry),
                "ready": bool(case.plate) and not missing(step, done),
                "at": f"{entry.recorded_at:%Y-%m-%d %H:%M} UTC" if entry else "",
                "by": ", ".join(x for x in (payload.get("who", ""), payload.get("second", "")) if x),
                "role": payload.get("role", ""),
                "note": payload.get("note", ""),
                "passed_over": payload.get("passed_over", []),
                "pass_name": payload.get("pass_name", ""),
                "pass_reason": payload.get("pass_reason", ""),
            }
        )
    points = points_of(case, kitchen)
    plate = dict(case.plate.entry.payload) if case.plate else {}
    draws = ""
    if plate and plate["fuel"] == "electric":
        draws = f"{amps(plate['power_w'], plate['volts_n'], int(plate['phases_count'])):.1f} A"
    return {
        "fryer": case.fryer.key,
        "name": case.fryer.name,
        "plate": plate,
        "draws": draws,
        "plate_typed": typed_back(plate, system),
        "site_typed": typed_back(case.site.entry.payload if case.site else {}, system),
        "site": dict(case.site.entry.payload) if case.site else {},
        "steps": steps,
        "points": [
            {
                "name": tr(p.name),
                "outcome": str(p.outcome),
                "text": say(p.note.text, p.note.values, system, tr),
            }
            for p in points
        ],
        "go": str(go(points)) if points else "unknown",
        "differences": [say(n.text, n.values, system, tr) for n in differences(case)],
        "tests": acceptance(store, kitchen, case, tr) if case.plate else [],
        "open": [s["key"] for s in steps if not s["done"]],
    }
