"""How many pieces prove it? Tolerance bounds and zero-failure claims, from the distributions themselves.

One-sided tolerance limits: NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.6.3 (from memory).
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum

import numpy as np

from frywright.model.errors import InputError
from frywright.model.findings import Note

MOST_PIECES = 2000


def tolerance_factor(count: int, coverage: float = 0.95, confidence: float = 0.95) -> float:
    """Factor k: with ``confidence``, ``coverage`` of all pieces lie above mean - k s.

    k = t'(confidence; n - 1, z_coverage sqrt(n)) / sqrt(n) with the noncentral t distribution.
    Raises InputError: fewer than 2 readings, or a share outside 0.5 to 1.
    """
    from scipy.stats import nct, norm

    if not 2 <= count <= 10 * MOST_PIECES:
        raise InputError("readings", count, "2 or more")
    for name, share in (("coverage", coverage), ("confidence", confidence)):
        if not 0.5 <= share < 1.0:
            raise InputError(
                name, share, "{low_frac} to below {high_frac}", unit="frac", low_frac=0.5, high_frac=1.0
            )
    return float(nct.ppf(confidence, count - 1, norm.ppf(coverage) * math.sqrt(count)) / math.sqrt(count))


def zero_failure_coverage(count: int, confidence: float = 0.95) -> float:
    """Share of pieces that comply at least, when ``count`` were read and none failed: (1 - C)^(1/n)."""
    if count < 1:
        raise InputError("readings", count, "1 or more")
    return float((1.0 - confidence) ** (1.0 / count))


def count_without_failure(coverage: float = 0.95, confidence: float = 0.95) -> int:
    """Readings, none of them below, that show a share of pieces: the smallest n with coverage^n <= 1 - C."""
    return math.ceil(math.log(1.0 - confidence) / math.log(coverage))


def count_needed(
    mean: float, sd: float, limit: float, coverage: float = 0.95, confidence: float = 0.95
) -> int | None:
    """Readings needed for the bound to reach the limit if mean and spread stay as they are; None where
    ``MOST_PIECES`` would not do.
    """
    from scipy.stats import norm

    if mean - float(norm.ppf(coverage)) * sd <= limit:
        return None
    low, high = 2, MOST_PIECES
    if mean - tolerance_factor(high, coverage, confidence) * sd < limit:
        return None
    while low < high:
        middle = (low + high) // 2
        low, high = (
            (low, middle)
            if mean - tolerance_factor(middle, coverage, confidence) * sd >= limit
            else (middle + 1, high)
        )
    return low


class SampleOutcome(StrEnum):
    """Result of a sampling proof."""

    PASSES = "passes"
    FAILS = "fails"
    NO_EVIDENCE = "no_evidence"


@dataclass(frozen=True, slots=True, kw_only=True)
class SampleProof:
    """A sampling proof of the coldest pieces, in the words a manager needs."""

    outcome: SampleOutcome
    sentence: Note
    count: int
    mean_c: float
    sd_k: float
    factor_n: float
    bound_c: float
    limit_c: float
    coverage_frac: float
    confidence_frac: float
    needed_count: int | None
    zero_failure_frac: float
    notes: tuple[Note, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class SampleAim:
    """What is to be shown: limit, share of pieces, confidence, and what the thermometer takes off."""

    limit_c: float
    coverage_frac: float = 0.95
    confidence_frac: float = 0.95
    guard_k: float = 0.0


def prove_sample(readings_c: Sequence[float], aim: SampleAim, *, thermometer_checked: bool) -> SampleProof:
    """Judge readings of the coldest pieces.

    Any reading below the limit fails whatever the bound says; without a thermometer check it is no evidence.
    The guard band is taken off every reading first. Raises InputError: fewer than 2 readings, or one that no
    thermometer in a piece can show.
    """
    _check(readings_c)
    read = np.asarray(readings_c, dtype=float) - aim.guard_k
    mean, sd, count = float(read.mean()), float(read.std(ddof=1)), len(read)
    factor = tolerance_factor(count, aim.coverage_frac, aim.confidence_frac)
    bound = mean - factor * sd
    below = int(np.sum(read < aim.limit_c))
    needed = count_needed(mean, sd, aim.limit_c, aim.coverage_frac, aim.confidence_frac)
    values = {
        "count": float(count),
        "coverage_frac": aim.coverage_frac,
        "confidence_frac": aim.confidence_frac,
        "bound_c": bound,
        "limit_c": aim.limit_c,
        "guard_k": aim.guard_k,
        "below": float(below),
        "needed": float(needed or 0),
    }
    outcome, text = _judged(thermometer_checked, below > 0, bound >= aim.limit_c, needed is not None)
    return SampleProof(
        outcome=outcome,
        sentence=Note(kind=str(outcome), text=text, values=values),
        count=count,
        mean_c=mean,
        sd_k=sd,
        factor_n=factor,
        bound_c=bound,
        limit_c=aim.limit_c,
        coverage_frac=aim.coverage_frac,
        confidence_frac=aim.confidence_frac,
        needed_count=needed,
        zero_failure_frac=zero_failure_coverage(count, aim.confidence_frac) if not below else 0.0,
        notes=tuple(_doubts(list(readings_c))),
    )


def _check(readings_c: Sequence[float]) -> None:
    if len(readings_c) < 2:
        raise InputError("readings", len(readings_c), "2 or more")
    for value in readings_c:
        if not -5.0 <= value <= 130.0:
            raise InputError(
                "reading",
                value,
                "{low_c} to {high_c} for the core of a piece",
                unit="c",
                low_c=-5.0,
                high_c=130.0,
            )


def _judged(
    checked: bool, any_below: bool, bound_holds: bool, more_would_do: bool
) -> tuple[SampleOutcome, str]:
    """Outcome and its template; the first reason that speaks decides."""
    if not checked:
        text = "No evidence: the thermometer had no valid check when these were read."
        return SampleOutcome.NO_EVIDENCE, text
    if any_below:
        text = (
            "Fails. Pieces below {limit_c}, the thermometer's error of {guard_k} taken off:"
            " {below} of {count}, whatever the bound says. Cook on, probe again, find the cause."
        )
    elif bound_holds:
        text = (
            "Meets {limit_c}: with {confidence_frac} confidence at least {coverage_frac} of the pieces are"
            " above {bound_c}, on {count} readings with the thermometer's error of {guard_k} taken off."
        )
    elif more_would_do:
        text = (
            "Not shown: every piece read above {limit_c}, but the bound is {bound_c} with the thermometer's"
            " error of {guard_k} taken off. With this mean and spread {needed} readings would do."
        )
    else:
        text = (
            "Not shown: the bound is {bound_c} with the thermometer's error of {guard_k} taken off, and with"
            " this mean and spread no number of readings would reach {limit_c}. Cook longer or make the"
            " pieces more alike."
        )
    passes = bound_holds and not any_below
    return SampleOutcome.PASSES if passes else SampleOutcome.FAILS, text


def _doubts(readings: list[float]) -> list[Note]:
    """Neutral remarks on readings that look alike."""
    same = max(readings.count(value) for value in readings)
    if same >= 4 and same > 0.5 * len(readings):
        return [
            Note(
                kind="alike",
                text=(
                    "{count} readings are the same number. Read to the tenth of a degree if the thermometer"
                    " shows it."
                ),
                values={"count": float(same)},
            )
        ]
    return []
