"""Corrective action: a probe below its limit opens a case that closes only with a disposition, a cause and
every earlier load decided; complaints traced to loads.
"""

from __future__ import annotations

import datetime as dt
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any

from frywright.ledger.store import Store
from frywright.model.entry import Recorded
from frywright.model.errors import InputError
from frywright.model.findings import say
from frywright.model.kitchen import Kitchen
from frywright.model.units import show
from frywright.verdicts.limits import hand_level_c
from frywright.workbench.board import EVENT
from frywright.workbench.book import entry_of
from frywright.workbench.clock import now
from frywright.workbench.day import business_time, usual_trade
from frywright.workbench.thermometers import READING, check_valid

Translate = Callable[[str], str]
CASE, STEP = "deviation", "deviation_step"
KINDS = ("probe", "hold", "thermometer", "complaint")
STEPS = ("recook", "reprobe", "disposition", "cause", "earlier", "closed")
DISPOSITIONS = ("served", "discarded", "held")
CAUSES = {
    "load": "load too large",
    "oil": "oil too cool",
    "start": "pieces colder than usual",
    "size": "pieces larger than usual",
    "program": "wrong program or keyed wrong",
    "lid": "lid closed late or no pressure",
    "probe": "probe or thermometer",
    "hold": "cabinet or hold time",
    "other": "other",
}
EARLIER_H = 8.0
"""Loads of a fryer are looked back at over this long where no good reading stands nearer (project's own rule:
a shift).
"""
PACK_S, FIFO_FRAC = 300.0, 0.8
"""From shelf to guest, and how surely the oldest tray is taken first (project's own rules)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Case:
    """One deviation with what was done about it."""

    opened: Recorded
    steps: tuple[Recorded, ...]

    @property
    def facts(self) -> Mapping[str, Any]:
        """What was found."""
        return self.opened.entry.payload

    def last(self, step: str) -> Mapping[str, Any] | None:
        """The newest entry of a step, or None."""
        found = [e.entry.payload for e in self.steps if e.entry.payload["step"] == step]
        return found[-1] if found else None

    @property
    def closed(self) -> bool:
        """Whether it was closed."""
        return self.last("closed") is not None


def level_of(kitchen: Kitchen) -> float:
    """Level of a hand reading here with the thermometer's error on top [degC]."""
    return hand_level_c(kitchen.site.jurisdiction) + kitchen.site.thermometer_error_k


def _temp(kitchen: Kitchen, text: str, name: str) -> float:
    found = kitchen.site.read(text, "temperature", name)
    if not -5.0 <= found <= 130.0:
        raise InputError(
            name,
            found,
            "{low_c} to {high_c} for the core of a piece",
            unit="c",
            values={"low_c": -5.0, "high_c": 130.0},
        )
    return found


def tell_probe(
    store: Store, kitchen: Kitchen, values: Mapping[str, Any], at: dt.datetime | None = None
) -> tuple[Recorded, Recorded | None]:
    """Keep a reading of a load's coldest piece; below the limit a case opens in the same breath.

    Parameters
    ----------
    values : fryer, product, temp, thermometer, pieces, who

    Raises
    ------
    InputError
        An unknown fryer or product, an impossible reading, or no thermometer's name.
    """
    fryer, product = (
        kitchen.fryer(str(values.get("fryer", ""))),
        kitchen.product(str(values.get("product", ""))),
    )
    core = _temp(kitchen, str(values.get("temp", "")), "temp")
    thermometer, who = (str(values.get(n, "") or "").strip() for n in ("thermometer", "who"))
    if not thermometer:
        raise InputError(
            "thermometer",
            "empty",
            "the mark on the thermometer: a reading without it cannot be looked back at",
        )
    pieces = _count(values.get("pieces", ""))
    moment, level = at or now(), level_of(kitchen)
    payload = {
        "name": f"{product.name}, {fryer.name}",
        "thermometer": thermometer[:60],
        "core_c": core,
        "limit_c": level - kitchen.site.thermometer_error_k,
        "load": f"{product.key} {fryer.key}",
        "units_count": pieces,
        "fryer": fryer.key,
        "product": product.key,
        "who": who[:80],
        "checked": check_valid(store, thermometer, moment),
    }
    with store.writing() as writer:
        reading = writer.add(entry_of(READING, payload, moment))
        if core >= level:
            return reading, None
        facts = {
            "what": "probe",
            "reading_number": reading.number,
            "fryer": fryer.key,
            "product": product.key,
            "pieces_count": int(pieces),
            "core_c": core,
            "limit_c": level,
            "who": who[:80],
            "words": "",
        }
        return reading, writer.add(entry_of(CASE, facts, moment))


def _count(text: Any) -> float:
    word = str(text or "0").strip()
    if not word.isdigit() or int(word) > 10_000:
        raise InputError("pieces", repr(word), "a whole number up to 10,000")
    return float(word)


def open_case(
    store: Store, kitchen: Kitchen, values: Mapping[str, Any], at: dt.datetime | None = None
) -> Recorded:
    """Open a case by hand: a hold failure, a failed thermometer, a complaint.

    Parameters
    ----------
    values : what (hold, thermometer, complaint), words, fryer and product where known, pieces, who

    Raises
    ------
    InputError
        An unknown kind, nothing said of it, or an unknown fryer or product.
    """
    what, words = str(values.get("what", "")), str(values.get("words", "") or "").strip()
    if what not in KINDS[1:]:
        raise InputError("what", repr(what), "one of: {known}", values={"known": ", ".join(KINDS[1:])})
    if len(words) < 5:
        raise InputError("words", repr(words), "what was found, in words")
    fryer, product = str(values.get("fryer", "") or ""), str(values.get("product", "") or "")
    if fryer:
        kitchen.fryer(fryer)
    if product:
        kitchen.product(product)
    facts = {
        "what": what,
        "reading_number": 0,
        "fryer": fryer,
        "product": product,
        "pieces_count": int(_count(values.get("pieces", ""))),
        "core_c": None,
        "limit_c": None,
        "who": str(values.get("who", "") or "")[:80],
        "words": words[:400],
    }
    with store.writing() as writer:
        return writer.add(entry_of(CASE, facts, at))


def cases(store: Store) -> list[Case]:
    """Every case, newest first."""
    steps: dict[int, list[Recorded]] = {}
    for item in store.entries(STEP):
        steps.setdefault(item.entry.payload["case_number"], []).append(item)
    return [
        Case(opened=e, steps=tuple(steps.get(e.number, ()))) for e in store.entries(CASE, newest_first=True)
    ]


def case_of(store: Store, number: int) -> Case:
    """One case.

    Raises
    ------
    InputError
        No case has the number.
    """
    item = store.entry(number)
    if item is None or item.entry.kind != CASE:
        raise InputError("case", number, "the number of a case")
    return Case(
        opened=item, steps=tuple(e for e in store.entries(STEP) if e.entry.payload["case_number"] == number)
    )


def earlier_loads(store: Store, kitchen: Kitchen, case: Case) -> list[dict[str, Any]]:
    """Loads of the case's fryer since its last good reading before it: each must be decided."""
    facts, at = case.facts, case.opened.entry.happened_at
    if not facts["fryer"] or facts["what"] not in ("probe", "thermometer"):
        return []
    good = [
        e
        for e in store.between(at - dt.timedelta(hours=EARLIER_H), at, READING)
        if e.entry.payload.get("fryer") == facts["fryer"]
        and e.entry.payload["core_c"] >= e.entry.payload["limit_c"] + kitchen.site.thermometer_error_k
    ]
    since = good[-1].entry.happened_at if good else at - dt.timedelta(hours=EARLIER_H)
    trade = usual_trade(kitchen)
    found = []
    for item in store.between(since, at, EVENT):
        payload = item.entry.payload
        if payload["what"] == "drop" and payload["fryer"] == facts["fryer"]:
            _, second = business_time(trade, item.entry.happened_at)
            found.append(
                {
                    "number": item.number,
                    "at": f"{int(second // 3600) % 24:02d}:{int(second // 60) % 60:02d}",
                    "product": payload["product"],
                    "pieces": payload["pieces_count"],
                }
            )
    return found


def tell_step(
    store: Store, kitchen: Kitchen, number: int, values: Mapping[str, Any], at: dt.datetime | None = None
) -> Recorded:
    """Tell what was done about a case.

    Parameters
    ----------
    values : step (recook, reprobe, disposition, cause, earlier, closed), who; temp for a reprobe; disposition
        (served, discarded, held); cause and words;
        load (entry number) and decision (held, discarded, released) for an earlier load

    Raises
    ------
    InputError
        A closed case, an unknown step, no name, served without a re-probe that meets the limit, or a close
        while something is undecided.
    """
    case, step, who = (
        case_of(store, number),
        str(values.get("step", "")),
        str(values.get("who", "") or "").strip(),
    )
    if case.closed:
        raise InputError("case", number, "open: this one is closed")
    if step not in STEPS:
        raise InputError("step", repr(step), "one of: {known}", values={"known": ", ".join(STEPS)})
    if len(who) < 2:
        raise InputError("who", repr(who), "the name of the person who did it")
    payload: dict[str, Any] = {
        "case_number": number,
        "step": step,
        "who": who[:80],
        "words": str(values.get("words", "") or "").strip()[:400],
    }
    payload |= _step_facts(store, kitchen, case, step, values)
    with store.writing() as writer:
        return writer.add(entry_of(STEP, payload, at))


def _step_facts(
    store: Store, kitchen: Kitchen, case: Case, step: str, values: Mapping[str, Any]
) -> dict[str, Any]:
    level = case.facts["limit_c"] or level_of(kitchen)
    if step == "reprobe":
        if case.last("recook") is None:
            raise InputError("step", step, "after the load went back in the oil")
        core = _temp(kitchen, str(values.get("temp", "")), "temp")
        return {"core_c": core, "limit_c": level, "meets": core >= level}
    if step == "disposition":
        word = str(values.get("disposition", ""))
        if word not in DISPOSITIONS:
            raise InputError(
                "disposition", repr(word), "one of: {known}", values={"known": ", ".join(DISPOSITIONS)}
            )
        probe = case.last("reprobe")
        if (
            word == "served"
            and case.facts["what"] in ("probe", "thermometer")
            and not (probe and probe["meets"])
        ):
            raise InputError(
                "disposition", word, "discarded or held: nothing is served before a probe meets the limit"
            )
        return {"disposition": word}
    if step == "cause":
        cause = str(values.get("cause", ""))
        if cause not in CAUSES:
            raise InputError("cause", repr(cause), "one of: {known}", values={"known": ", ".join(CAUSES)})
        return {"cause": cause}
    if step == "earlier":
        loads = [load["number"] for load in earlier_loads(store, kitchen, case)]
        text, decision = str(values.get("load", "")), str(values.get("decision", ""))
        if not text.isdigit() or int(text) not in loads:
            raise InputError("load", repr(text), "one of the earlier loads")
        if decision not in ("held", "discarded", "released"):
            raise InputError("decision", repr(decision), "held, discarded or released")
        return {"load_number": int(text), "decision": decision}
    if step == "closed":
        missing = undecided(store, kitchen, case)
        if missing:
            raise InputError(
                "case",
                case.opened.number,
                "closed only after: {missing}",
                values={"missing": "; ".join(missing)},
            )
    return {}


def undecided(store: Store, kitchen: Kitchen, case: Case) -> list[str]:
    """What stands between a case and its close, in words of the steps."""
    missing = []
    disposition = case.last("disposition")
    if disposition is None:
        missing.append("a disposition")
    elif disposition["disposition"] == "held":
        missing.append("what is held is served or discarded")
    if case.last("cause") is None:
        missing.append("a cause")
    decided = {
        e.entry.payload["load_number"]: e.entry.payload["decision"]
        for e in case.steps
        if e.entry.payload["step"] == "earlier"
    }
    open_loads = [
        load for load in earlier_loads(store, kitchen, case) if decided.get(load["number"], "held") == "held"
    ]
    if open_loads:
        missing.append("every earlier load is released or discarded")
    return missing


def case_view(store: Store, kitchen: Kitchen, case: Case, tr: Translate = str) -> dict[str, Any]:
    """A case as people read it: what was found, what was done, what is next and what is missing."""
    system, facts = str(kitchen.site.units), case.facts
    decided = {
        e.entry.payload["load_number"]: e.entry.payload["decision"]
        for e in case.steps
        if e.entry.payload["step"] == "earlier"
    }
    told = []
    for item in case.steps:
        payload = item.entry.payload
        detail = (
            payload.get("disposition")
            or CAUSES.get(payload.get("cause", ""), "")
            or payload.get("decision", "")
        )
        temp = show(payload["core_c"], "c", system) if payload.get("core_c") is not None else ""
        told.append(
            {
                "at": f"{item.recorded_at:%Y-%m-%d %H:%M} UTC",
                "step": payload["step"],
                "words": tr(payload["step"]),
                "who": payload["who"],
                "detail": tr(detail) if detail else temp,
                "note": payload["words"],
            }
        )
    found = facts["words"]
    if facts["core_c"] is not None:
        found = say(
            "The coldest piece read {core_c}; the limit with the thermometer's error is {limit_c}.",
            {"core_c": facts["core_c"], "limit_c": facts["limit_c"]},
            system,
            tr,
        )
    probe = case.last("reprobe")
    again = probe is not None and not probe["meets"]
    return {
        "number": case.opened.number,
        "what": facts["what"],
        "fryer": kitchen.fryer(facts["fryer"]).name if facts["fryer"] else "",
        "product": kitchen.product(facts["product"]).name if facts["product"] else "",
        "pieces": facts["pieces_count"],
        "found": found,
        "at": f"{case.opened.entry.happened_at:%Y-%m-%d %H:%M} UTC",
        "steps": told,
        "closed": case.closed,
        "missing": [tr(m) for m in undecided(store, kitchen, case)],
        "earlier": [
            {**load, "decision": decided.get(load["number"], "")}
            for load in earlier_loads(store, kitchen, case)
        ],
        "recooked": case.last("recook") is not None,
        "again": again,
        "served_allowed": bool(probe and probe["meets"]) or facts["what"] not in ("probe", "thermometer"),
    }


def trace(store: Store, kitchen: Kitchen, product: str, bought: dt.datetime) -> dict[str, Any]:
    """Loads a guest's piece may have come from, with their chances, evidence and gaps.

    A load counts when it lay on the shelf, within its hold life, when the guest's order was packed. The
    oldest tray is taken first with a chance of four in five; the rest goes by the pieces of each tray. What
    was sold and thrown away meanwhile is not known by tray, so the chances are rough, and that is said.

    Raises
    ------
    InputError
        An unknown product.
    """
    kitchen.product(product)
    packed = bought - dt.timedelta(seconds=PACK_S)
    programs = [
        kitchen.program(n) for n in sorted({p.name for p in kitchen.programs if p.product == product})
    ]
    longest = max((sum(p.durations_s()) + p.hold_life_s for p in programs), default=0.0) + 600.0
    found = []
    for item in store.between(packed - dt.timedelta(seconds=longest), packed, EVENT):
        payload = item.entry.payload
        program = next((p for p in programs if p.fryer == payload["fryer"]), None)
        if payload["what"] != "drop" or payload["product"] != product or program is None:
            continue
        lifted = item.entry.happened_at + dt.timedelta(seconds=sum(program.durations_s()) + program.drain_s)
        if lifted <= packed <= lifted + dt.timedelta(seconds=program.hold_life_s):
            found.append((lifted, item, program))
    found.sort(key=lambda row: row[0])
    total = sum(item.entry.payload["pieces_count"] for _, item, _ in found)
    rows = []
    for n, (lifted, item, program) in enumerate(found):
        pieces = item.entry.payload["pieces_count"]
        chance = (FIFO_FRAC if n == 0 else 0.0) + (1 - FIFO_FRAC) * pieces / total
        readings = [
            e
            for e in store.between(
                lifted - dt.timedelta(minutes=15), lifted + dt.timedelta(minutes=15), READING
            )
            if e.entry.payload.get("fryer") == item.entry.payload["fryer"]
        ]
        rows.append(
            {
                "number": item.number,
                "fryer": kitchen.fryer(item.entry.payload["fryer"]).name,
                "program": f"{program.name} v{program.version}",
                "pieces": pieces,
                "lifted": f"{lifted:%Y-%m-%d %H:%M} UTC",
                "chance_frac": round(chance, 3),
                "readings": [
                    {
                        "number": e.number,
                        "core": show(e.entry.payload["core_c"], "c", str(kitchen.site.units)),
                        "checked": e.entry.payload.get("checked", False),
                    }
                    for e in readings
                ],
            }
        )
    gaps = []
    if not rows:
        gaps.append(
            "No load on record could have been on the shelf then: the board was not kept, or the time is"
            " wrong."
        )
    if any(not r["readings"] for r in rows):
        gaps.append("Loads without a reading stand among them.")
    if any(not x["checked"] for r in rows for x in r["readings"]):
        gaps.append("A thermometer had no valid check when it was read.")
    gaps.append("Which tray a piece came from is not recorded; the chances rest on first in, first out.")
    return {"product": product, "bought": f"{bought:%Y-%m-%d %H:%M} UTC", "loads": rows, "gaps": gaps}
