"""Most likely story of heater and loads behind an oil curve: many hypotheses, one Kalman filter each.

A hypothesis says at every step whether the heater is on and whether a load is in the oil. Between
events the oil follows ``dT/dt = p u - l - d`` and the draw ``d`` of a load wanders slowly; events
(cut-in, cut-out, drop, lift, a jump of the draw) cost what they are unlikely. The best hypotheses
of each state are kept, so evidence that comes later than an event still decides its moment
(multiple hypothesis tracking; Bar-Shalom and Li, Multitarget-Multisensor Tracking, 1995, from memory).
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import IntEnum

import numpy as np
from numpy.typing import NDArray

from frywright.physics.kernels import inlined, njit

Array = NDArray[np.float64]
KEPT = 40
EVENT_COST = (5.0, 10.0, 10.0, 12.0)
"""Minus log likelihood of a switch, a drop, a lift and a jump of the draw at a given second. Estimate."""
DRAW_WANDER = (0.03, 25.0, 2e-4, 0.002, 0.01)
"""Wandering of a load's draw [K/s per root s]: at the drop, its decay time [s], and late in a cook. Estimate
from cooks of the engine, whose draw falls by a few parts in a thousand each second."""
JUMP_K_S = 0.02
LEAST_DRAW_K_S = 0.003
MOST_SURPRISE = 30.0
LOSS_ERROR_K_S = 7e-4
"""Size of a jump of the draw, least draw of a load, most a single reading may count, error of the idle loss.
Estimates.
"""


class Happened(IntEnum):
    """Kinds of event."""

    CUT_IN = 0
    CUT_OUT = 1
    DROP = 2
    LIFT = 3
    JUMP = 4


@dataclass(frozen=True, slots=True, kw_only=True)
class Story:
    """Events in order: place in the curve and kind; and whether the heater was on and a load in at the
    start.
    """

    places: NDArray[np.int64]
    kinds: NDArray[np.int64]
    starts_on: bool
    starts_loaded: bool


def story_of(
    heat_k: Array, step_s: float, noise_k: float, heater_k_s: float, loss_k_s: Array, peak_k: float
) -> Story:
    """The most likely story.

    Parameters
    ----------
    heat_k : (n,) heat in the oil on even steps, in kelvin at its usual temperature; NaN where unknown
    step_s : step of the curve [s]
    noise_k : standard deviation of the readings [K]
    heater_k_s : rise by the heater alone [K/s]
    loss_k_s : (n,) fall of idle oil at every step [K/s]
    peak_k : heat at which the heater usually cuts out; a drop at that very moment is unlikely. NaN if unknown
    """
    given = np.array(
        [
            step_s,
            max(noise_k, 0.02) ** 2,
            heater_k_s,
            *EVENT_COST,
            *DRAW_WANDER,
            JUMP_K_S,
            LEAST_DRAW_K_S,
            MOST_SURPRISE,
            LOSS_ERROR_K_S,
            peak_k,
        ]
    )
    places, kinds, first = _track(np.ascontiguousarray(heat_k), np.ascontiguousarray(loss_k_s), given, KEPT)
    return Story(places=places, kinds=kinds, starts_on=first % 2 == 1, starts_loaded=first >= 2)


# Places in the vector of given numbers, and in a hypothesis.
STEP, NOISE2, HEATER, COSTS, WANDER = 0, 1, 2, 3, 7
JUMP, LEAST_DRAW, SURPRISE, LOSS_ERROR, PEAK = 12, 13, 14, 15, 16
TEMP, DRAW, P_TEMP, P_BOTH, P_DRAW, SINCE_LOAD, SINCE_SWITCH = 0, 1, 2, 3, 4, 5, 6
FIRST_KIND = 10


@inlined
def _follow(h, on, loaded, read, loss, given):  # type: ignore[no-untyped-def]
    """One Kalman step of a hypothesis; what it costs."""
    dt, noise2, heater = given[STEP], given[NOISE2], given[HEATER]
    h[TEMP] += dt * ((heater if on else 0.0) - loss - h[DRAW])
    h[SINCE_LOAD] += dt
    h[SINCE_SWITCH] += dt
    wander = 1e-5
    if loaded:
        wander = given[WANDER] * np.exp(-h[SINCE_LOAD] / given[WANDER + 1]) + given[WANDER + 2]
    h[P_TEMP] += dt * (dt * h[P_DRAW] - 2.0 * h[P_BOTH])
    h[P_BOTH] -= dt * h[P_DRAW]
    h[P_DRAW] += wander * wander * dt
    h[P_TEMP] += dt * (given[WANDER + 3] ** 2 + ((given[WANDER + 4] * heater) ** 2 if on else 0.0))
    price = 0.0
    if np.isfinite(read):
        spread = h[P_TEMP] + noise2
        off = read - h[TEMP]
        price = min(0.5 * off * off / spread, given[SURPRISE]) + 0.5 * np.log(spread / noise2)
        g1, g2 = h[P_TEMP] / spread, h[P_BOTH] / spread
        h[TEMP] += g1 * off
        h[DRAW] += g2 * off
        h[P_DRAW] -= g2 * h[P_BOTH]
        h[P_BOTH] *= 1.0 - g1
        h[P_TEMP] *= 1.0 - g1
    if loaded and h[SINCE_LOAD] > 20.0 and h[DRAW] < given[LEAST_DRAW]:
        price += dt * (0.06 + 20.0 * max(0.0, -h[DRAW]))
    return price


@inlined
def _change(h, event, on, loaded, given):  # type: ignore[no-untyped-def]
    """Put an event into a hypothesis; its price, or infinity where it cannot be."""
    price = given[COSTS + event]
    if event == 0:
        if h[SINCE_SWITCH] < 8.0:
            price += 8.0
        h[SINCE_SWITCH] = 0.0
        h[P_TEMP] += (given[HEATER] * given[STEP]) ** 2 / 12.0  # the switch lies somewhere inside the step
    elif event == 1:
        if loaded and h[SINCE_LOAD] < 60.0:
            return np.inf
        if loaded:
            price += 25.0
        elif h[SINCE_LOAD] < 45.0:
            price += 15.0
        if on and abs(h[TEMP] - given[PEAK]) < 0.4:
            price += 15.0  # more likely the usual cut-out, and the drop after it
        h[P_DRAW] += (given[WANDER] * 3.0) ** 2
        h[SINCE_LOAD] = 0.0
    elif event == 2:
        if not loaded or h[SINCE_LOAD] < 45.0:
            return np.inf
        h[DRAW], h[P_BOTH], h[P_DRAW], h[SINCE_LOAD] = 0.0, 0.0, given[LOSS_ERROR] ** 2, 0.0
    else:
        if not loaded or h[SINCE_LOAD] < 30.0:
            return np.inf
        h[P_DRAW] += given[JUMP] ** 2
    return price


@njit(cache=True, error_model="numpy")
def _track(temp, loss, given, kept):  # type: ignore[no-untyped-def]
    """States: heater off/on (+1), idle/loaded (+2); ``kept`` hypotheses each; events chained by parent."""
    n = len(temp)
    score = np.full((4, kept), np.inf)
    x = np.zeros((4, kept, 7))
    record = np.full((4, kept), -1, dtype=np.int64)
    parent = np.empty(16 * n + 4, dtype=np.int64)
    place, kind = np.empty_like(parent), np.empty_like(parent)
    count, first = 4, 0
    while first < n and not np.isfinite(temp[first]):
        first += 1
    for s in range(4):
        score[s, 0] = 0.0 if s < 2 else 4.0
        x[s, 0, TEMP], x[s, 0, P_TEMP] = temp[min(first, n - 1)], given[NOISE2]
        x[s, 0, P_DRAW] = 0.05**2 if s >= 2 else given[LOSS_ERROR] ** 2
        x[s, 0, SINCE_LOAD] = x[s, 0, SINCE_SWITCH] = 1e3
        parent[s], place[s], kind[s], record[s, 0] = -1, 0, FIRST_KIND + s, s
    h = np.empty(7)
    before, states, chains = np.empty(4), np.empty((4, 7)), np.empty(4, dtype=np.int64)  # best of every state
    for i in range(first + 1, n):
        for s in range(4):
            for k in range(kept):
                if score[s, k] < np.inf:
                    score[s, k] += _follow(x[s, k], s % 2 == 1, s >= 2, temp[i], loss[i], given)
            b = np.argmin(score[s])
            before[s], chains[s] = score[s, b], record[s, b]
            states[s] = x[s, b]
        for s in range(4):
            for event in range(4 if before[s] < np.inf else 0):
                on, loaded = s % 2, s // 2
                to = (2 * loaded + 1 - on, 2 + on, on, s)[event]
                h[:] = states[s]
                price = before[s] + _change(h, event, on == 1, loaded == 1, given)
                worst = np.argmax(score[to])
                if price < score[to, worst]:
                    score[to, worst], record[to, worst] = price, count
                    x[to, worst] = h
                    parent[count], place[count], kind[count] = chains[s], i, on if event == 0 else event + 1
                    count += 1
    s = np.argmin(np.array([score[k].min() for k in range(4)]))
    r = record[s, np.argmin(score[s])]
    chain = []
    while r >= 4:
        chain.append(r)
        r = parent[r]
    order = np.array(chain[::-1], dtype=np.int64) if len(chain) else np.empty(0, dtype=np.int64)
    return place[order], kind[order], kind[r] - FIRST_KIND
