"""Judges any core curve, simulated or probed, by a limit. Knows no solver."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import TypeAlias

import numpy as np
from numpy.typing import ArrayLike

from frywright.catalog import load
from frywright.model.findings import Outcome, Verdict
from frywright.verdicts.evidence import NO_RULE, Evidence, EvidenceKind
from frywright.verdicts.lethality import TOUCH_K, Summit, above, log_reduction, longest_above_s
from frywright.verdicts.limits import CookLimit
from frywright.verdicts.margin import until
from frywright.verdicts.tables import TimeTable, fsis_poultry, uk_equivalents

MOST_LOGS_SHOWN = 12.0  # beyond this the sum says nothing more
NO_RULE_KNOWN = "no rule is known for this place and date"
NO_RULE_SENTENCE = "No rule here for this food: {why}."
LEADS = {EvidenceKind.SCOUTING: "Predicted, not proven: "}
UNCHECKED = "Not proven, the thermometer was not checked: "


@dataclass(frozen=True, slots=True, kw_only=True)
class CoreCurve:
    """Coldest-point temperature of one piece from the drop on.

    A level must be reached by the lift. What a curve does after it counts only with
    ``carry_over_counts``: a hold time may then run on. Only a probe's own log may say so; a
    simulated curve ends at the earliest lift.
    """

    piece: str
    time_s: ArrayLike
    core_c: ArrayLike
    lift_s: float
    fat_pct: float = 12.0
    carry_over_counts: bool = False


def judge(curve: CoreCurve, limit: CookLimit | None, evidence: Evidence, why: str = NO_RULE_KNOWN) -> Verdict:
    """Verdict of one curve by the limit of its food. Missing rule or missing evidence gives *unknown*;
    ``why`` says why there is no rule.

    The guard band is the thermometer's error: the curve must meet the limit with that much
    taken off every reading.
    """
    if limit is None:
        return _no_rule(why)
    time = np.asarray(curve.time_s, dtype=float)
    core = np.asarray(curve.core_c, dtype=float) - evidence.error_k
    if not curve.carry_over_counts:
        time, core = until(time, core, curve.lift_s)
    if limit.kind == "instant":
        return _instant(curve, limit, evidence, time, core)
    if limit.kind == "log_reduction":
        return _reduction(curve, limit, evidence, time, core)
    return _table(curve, limit, evidence, time, core)


def _no_rule(why: str) -> Verdict:
    return Verdict(
        outcome=Outcome.UNKNOWN,
        rule="",
        edition="",
        sentence=NO_RULE_SENTENCE,
        values={"why": why},
        missing=(NO_RULE,),
    )


def _instant(curve, limit, evidence, time, core) -> Verdict:  # type: ignore[no-untyped-def]
    level = limit.level_c
    held, reached = above(time, core, level)
    hottest = float(core[time <= curve.lift_s + 1e-6].max())
    at_lift = float(np.interp(curve.lift_s, time, core))
    met = reached is not None and reached <= curve.lift_s and held >= limit.hold_s
    margin_k = min(hottest - level, _margin_for_hold(time, core, level, limit.hold_s))
    margin_s = curve.lift_s - (reached + limit.hold_s) if reached is not None else None
    values = {
        "piece": curve.piece,
        "core_c": at_lift,
        "peak_c": hottest,
        "limit_c": level,
        "level_c": level,
        "title": limit.title,
        "hold_s": limit.hold_s,
        "margin_k": margin_k,
        "guard_k": evidence.error_k,
        "spare_s": abs(margin_s) if margin_s is not None else 0.0,
    }
    if met:
        sentence = (
            "{piece} passes {limit_c} at its coldest spot with {margin_k} to spare ({title}, guard band"
            " {guard_k} taken off)."
        )
    elif hottest < level:
        sentence = (
            "{piece} peaks at {peak_c} at its coldest spot by the lift, {margin_k} short of {limit_c}"
            " ({title}, guard band {guard_k} taken off)."
        )
    else:
        sentence = (
            "{piece} reaches {limit_c} but does not hold it for {hold_s}: {margin_k} short ({title}, guard"
            " band {guard_k} taken off)."
        )
    values["margin_k"] = abs(margin_k)
    return _conclude(met, sentence, values, limit, evidence, (margin_k, margin_s))


def _margin_for_hold(time, core, level, hold_s: float) -> float:  # type: ignore[no-untyped-def]
    """Largest shift [K] of the curve that still meets the level for the hold time."""
    if hold_s <= 0:
        return float(core.max() - level)
    bearable = _bearable_k(time, core, [level], [hold_s])
    low, high = level - 120.0, float(core.max())
    for _ in range(50):
        middle = 0.5 * (low + high)
        known = None if bearable is None else middle - level <= bearable
        met = longest_above_s(time, core, middle) >= hold_s if known is None else known
        low, high = (middle, high) if met else (low, middle)
    return float(low - level)


def _table(curve, limit, evidence, time, core) -> Verdict:  # type: ignore[no-untyped-def]
    table = uk_equivalents() if limit.rule == "uk_core" else fsis_poultry("chicken", curve.fat_pct)
    held, margin_k = _held_rows(table, time, core), _table_margin(table, time, core)
    row = _best_of(held)
    share = table.share(time, core)
    met = row is not None
    values = {
        "piece": curve.piece,
        "title": limit.title,
        "margin_k": abs(margin_k),
        "guard_k": evidence.error_k,
        "share_frac": min(share, 99.0),
        "peak_c": float(core.max()),
    }
    if row is not None:
        values |= {"limit_c": row[0], "hold_s": row[1]}
        sentence = (
            "{piece} stays above {limit_c} for {hold_s} or longer, with {margin_k} to spare ({title}, guard"
            " band {guard_k} taken off)."
        )
    else:
        sentence = (
            "{piece} reaches no row of {title}: it is {margin_k} short (peak {peak_c}, guard band {guard_k}"
            " taken off)."
        )
    return _conclude(met, sentence, values, limit, evidence, (margin_k, _spare_s(held)))


def salmonella_log(time: ArrayLike, core: ArrayLike) -> float:
    """Decimal reductions of Salmonella by D and z (Murphy 2004), without credit outside 55..74 degC."""
    t = load.table("kinetics/salmonella.toml")
    return log_reduction(
        time, core, t["d_reference_s"], t["reference_c"], t["z_k"], t["low_c"], t["credit_ceiling_c"]
    )


def _reduction(curve, limit, evidence, time, core) -> Verdict:  # type: ignore[no-untyped-def]
    reached = salmonella_log(time, core)
    met = reached >= limit.log_n
    low, high = -120.0, 120.0
    for _ in range(40):
        middle = 0.5 * (low + high)
        low, high = (middle, high) if salmonella_log(time, core - middle) >= limit.log_n else (low, middle)
    values = {
        "piece": curve.piece,
        "title": limit.title,
        "guard_k": evidence.error_k,
        "margin_k": abs(low),
        "reached": round(min(reached, MOST_LOGS_SHOWN), 1),
        "needed": limit.log_n,
    }
    if met:
        sentence = (
            "{piece} collects {reached} log of {needed}, with {margin_k} to spare ({title}, guard band"
            " {guard_k} taken off)."
        )
    else:
        sentence = (
            "{piece} collects {reached} log of {needed}: it is {margin_k} short ({title}, guard band"
            " {guard_k} taken off)."
        )
    return _conclude(met, sentence, values, limit, evidence, (low, None))


_HeldRow: TypeAlias = tuple[float, float, float]
"""A row of a table and how long a curve stood at or above its temperature: less than 0 for never."""


def best_row(table: TimeTable, time: ArrayLike, core: ArrayLike) -> tuple[float, float] | None:
    """The hottest row of a table whose time was held without a break, or None."""
    return _best_of(_held_rows(table, np.asarray(time, dtype=float), np.asarray(core, dtype=float)))


def _best_of(rows: Sequence[_HeldRow]) -> tuple[float, float] | None:
    return next(((temp, needed) for temp, needed, held in reversed(rows) if held >= needed), None)


def _held_rows(table: TimeTable, time, core) -> list[_HeldRow]:  # type: ignore[no-untyped-def]
    summit = Summit.of(time, core)
    if summit is not None and summit.low_c <= table.temp_c[0]:
        levels = np.array(table.temp_c)
        there = levels <= summit.rising_c[-1] + TOUCH_K
        found = np.where(there, summit.held_s(levels), -1.0).tolist()
    else:
        spells = [above(time, core, temp) for temp in table.temp_c]
        found = [-1.0 if first is None else held for held, first in spells]
    return list(zip(table.temp_c, table.time_s, found, strict=True))


def _spare_s(rows: Sequence[_HeldRow]) -> float:
    """Longest time held beyond a row's demand [s]; negative: the least that is lacking."""
    return float(max(max(held, 0.0) - needed for _, needed, held in rows if needed > 0))


def _table_margin(table: TimeTable, time, core) -> float:  # type: ignore[no-untyped-def]
    """Shift [K] that the curve can bear (positive) or lacks (negative) for some row."""
    bearable = _bearable_k(time, core, table.temp_c, table.time_s)
    low, high = -120.0, 120.0
    for _ in range(40):
        middle = 0.5 * (low + high)
        met = bool(best_row(table, time, core - middle)) if bearable is None else middle <= bearable
        low, high = (middle, high) if met else (low, middle)
    return low


def _bearable_k(time, core, levels: Sequence[float], held: Sequence[float]) -> float | None:  # type: ignore[no-untyped-def]
    summit = Summit.of(time, core)
    return summit.bearable_k(np.array(levels), np.array(held)) if summit else None


def _conclude(met, sentence, values, limit, evidence: Evidence, margins) -> Verdict:  # type: ignore[no-untyped-def]
    missing = evidence.missing()
    outcome = Outcome.UNKNOWN if missing else (Outcome.MEETS if met else Outcome.FAILS)
    return Verdict(
        outcome=outcome,
        rule=limit.rule,
        edition=limit.edition,
        sentence=sentence,
        values=values,
        lead=LEADS.get(evidence.kind, UNCHECKED) if missing else "",
        evidence=str(evidence.kind),
        margin_k=margins[0],
        margin_s=margins[1],
        missing=missing,
        source=limit.source,
    )
