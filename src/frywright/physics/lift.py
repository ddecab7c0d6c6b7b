"""When the crew lifts: the simulated moment, and the earliest one a keyed program lets them."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from frywright.physics.engine import COOK_FIELDS, Marched
from frywright.physics.inputs import Lid
from frywright.physics.plan import FryPlan
from frywright.physics.solve import Cook, RawHistory
from frywright.physics.vent import stretch_of


@dataclass(frozen=True, slots=True, kw_only=True)
class Lift:
    """Times since the drop [s]. ``earliest_s`` is the moment that verdicts look at."""

    lift_s: float
    earliest_s: float
    vent_s: float
    vent_start_s: float | None


def lift_of(plan: FryPlan, cook: Cook, raw: RawHistory) -> Lift:
    """Lift, earliest lift and vent of a simulated cook.

    The earliest lift counts no more of the vent than was described or timed (``FryPlan.vent_credit_s``),
    however long it is simulated. A clock that runs on ends at its own time, so there only a vent that
    outlasts it can count at all. The rest, in air, is the last span.
    """
    inside = raw.span < len(cook.spans) - 1
    end = float(raw.time_s[inside].max())
    vent = stretch_of(raw, cook, Lid.VENT)
    if vent is None:
        return Lift(lift_s=end, earliest_s=end, vent_s=0.0, vent_start_s=None)
    start, vent_s = vent[0], vent[1] - vent[0]
    counted = min(vent_s, plan.vent_credit_s)
    earliest = max(plan.program.clock_s, start + counted) if plan.runs_on else end - (vent_s - counted)
    return Lift(lift_s=end, earliest_s=min(end, earliest), vent_s=vent_s, vent_start_s=start)


@dataclass(frozen=True, slots=True)
class Lifts:
    """:class:`Lift` of many cooks, as arrays."""

    lift_s: NDArray[np.float64]
    earliest_s: NDArray[np.float64]


def lifts_of(
    done: Marched,
    vent_span: NDArray[np.int64],
    *,
    credit_s: float,
    clock_s: NDArray[np.float64],
    runs_on: NDArray[np.bool_],
) -> Lifts:
    """:func:`lift_of` of a march's cooks at once; ``vent_span`` is the number of the vent, -1 without."""
    time, span = done.trace[:, 0], done.trace[:, COOK_FIELDS.index("span")]
    first = done.first_row[:-1]
    cook = np.repeat(np.arange(len(first)), np.diff(done.first_row))

    def count(where: NDArray[np.bool_]) -> NDArray[np.int64]:
        return np.asarray(np.add.reduceat(where.astype(np.int64), first))

    end = time[first + count(span < done.packed.span_count[cook] - 1.0) - 1]
    before, inside = count(span < vent_span[cook]), count(span == vent_span[cook])
    start = time[first + np.maximum(before - 1, 0)]
    vent = np.where(inside > 0, time[first + before + inside - 1] - start, 0.0)
    counted = np.minimum(vent, credit_s)
    earliest = np.where(runs_on, np.maximum(clock_s, start + counted), end - (vent - counted))
    return Lifts(end, np.where(inside > 0, np.minimum(end, earliest), end))
