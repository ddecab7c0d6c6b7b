"""What the heater and the loads did, read from the oil temperature alone.

Heat balance of the vat without knowing its size: ``dT/dt = p u - l - d``, with ``p`` the rise the
heater alone makes [K/s], ``u`` whether it is on, ``l`` the idle loss and ``d`` the draw of the load.
``p`` shows as kinks of equal size at every cut-in and cut-out; ``d`` is what then remains.
"""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]
Places = NDArray[np.int64]
ARM_S = 12.0
BLOCK_STEPS = 2000
ENOUGH_STEPS = 6000
SHORTEST_LOG_S = 120.0
LEAST_KINK_SIGMA = 6.0
OIL_CP_SHARE_K = 0.0011
"""Growth of the heat capacity of frying oil near 165 degC, a share for each kelvin (catalog, canola: 2.55 of
2353).
"""
ROOM_C = 25.0
IDLE_WINDOW_S = 100.0
IDLE_DRAW_SHARE = 0.025
LONG_LOAD_S = 1000.0
IDLE_S = 150.0
LEAST_HEATER_K_S = 0.03
"""A full vat heats faster than this on any heater of the trade (5 kW on 60 kg). Estimate."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Oil:
    """Oil temperature on even steps; NaN where the log has none. Short gaps are bridged; ``read`` says where
    it was read.
    """

    step_s: float
    temp_c: Array
    noise_k: float
    read: NDArray[np.bool_]

    @property
    def heat_k(self) -> Array:
        """Heat in the oil as kelvin at its usual temperature: the heat capacity grows with temperature."""
        middle = float(np.nanmedian(self.temp_c))
        off = self.temp_c - middle
        return np.asarray(middle + off * (1.0 + 0.5 * OIL_CP_SHARE_K * off), dtype=float)

    @property
    def loss_shape(self) -> Array:
        """Loss to the room relative to that at the usual temperature."""
        middle = float(np.nanmedian(self.temp_c))
        return np.asarray(np.nan_to_num((self.temp_c - ROOM_C) / (middle - ROOM_C), nan=1.0), dtype=float)

    @property
    def time_s(self) -> Array:
        """Times of the steps [s]."""
        return np.asarray(self.step_s * np.arange(len(self.temp_c)), dtype=float)


@dataclass(frozen=True, slots=True, kw_only=True)
class HeatState:
    """Heater and load in turn. ``kinks`` are places of cut-ins (+1) and cut-outs (-1)."""

    heater_k_s: float
    loss_k_s: float
    kinks: tuple[tuple[int, int], ...]
    on: NDArray[np.bool_]
    drawn_k: Array  # heat the loads have drawn so far, in kelvin of the vat


def oil_of(time_s: Array, values: Array, longest_gap_s: float) -> Oil:
    """An oil curve on even steps; gaps up to ``longest_gap_s`` are bridged and marked, longer ones are
    NaN.
    """
    known = np.isfinite(values)
    time, temp = time_s[known], values[known]
    if len(time) < 3:
        return Oil(step_s=1.0, temp_c=np.full(2, np.nan), noise_k=0.0, read=np.zeros(2, dtype=bool))
    step = max(1.0, float(np.round(np.median(np.diff(time)))))
    grid = np.arange(0.0, time_s[-1] + 0.5 * step, step)
    out = np.interp(grid, time, temp)
    out[(grid < time[0]) | (grid > time[-1])] = np.nan
    read = np.isfinite(out)
    for i in np.flatnonzero(np.diff(time) > 1.5 * step):
        inside = (grid > time[i]) & (grid < time[i + 1])
        read[inside] = False
        if time[i + 1] - time[i] > longest_gap_s:
            out[inside] = np.nan
    return Oil(step_s=step, temp_c=out, noise_k=noise_of(np.where(read, out, np.nan)), read=read)


def noise_of(values: Array) -> float:
    """White noise of a smooth curve [K], from third differences, robust against kinks."""
    third = np.diff(values, n=3)
    third = third[np.isfinite(third)]
    return float(1.4826 * np.median(np.abs(third)) / np.sqrt(20.0)) if len(third) else 0.0


def kink_curve(temp: Array, step: float, arm_s: float) -> tuple[Array, float]:
    """Change of slope [K/s] at every step between a line before and one after that meet there.

    Also its standard deviation for noise of 1 K. NaN near ends and gaps.
    """
    arm = max(3, round(arm_s / step))
    x = step * np.arange(-arm, arm + 1)
    basis = np.stack([np.ones_like(x), x, np.maximum(x, 0.0)], axis=1)
    weights = np.linalg.pinv(basis)[2]
    out = np.full(len(temp), np.nan)
    if len(temp) > 2 * arm:
        out[arm : len(temp) - arm] = np.convolve(temp, weights[::-1], mode="valid")
    return out, float(np.sqrt(np.sum(weights**2)))


def peaks_of(curve: Array, step: float, arm_s: float, least: float) -> Places:
    """Places of single kinks in a kink curve, largest first taken and its shape subtracted.

    A kink spreads over an arm to both sides; without subtracting, its flanks look like more kinks.
    """
    arm = max(3, round(arm_s / step))
    line = step * np.maximum(np.arange(-3 * arm, 3 * arm + 1), 0).astype(float)
    shape = kink_curve(line, step, arm_s)[0][arm : 5 * arm + 1]
    left = np.nan_to_num(curve)
    found: list[int] = []
    for start in range(0, len(left), BLOCK_STEPS):
        block = left[start : start + BLOCK_STEPS]  # a view: subtracting reaches over its edges
        taken = np.zeros(len(block), dtype=bool)
        while len(block):
            size = np.where(taken, 0.0, np.abs(block))
            i = start + int(np.argmax(size))
            if size[i - start] < least:
                break
            found.append(i)
            near = round(0.4 * arm)
            taken[max(0, i - start - near) : i - start + near + 1] = True
            a, b = max(0, i - 2 * arm), min(len(left), i + 2 * arm + 1)
            left[a:b] -= left[i] * shape[a - i + 2 * arm : b - i + 2 * arm]
    return np.array(sorted(found), dtype=np.int64)


def _refine(temp: Array, i: int, left: int, right: int) -> int:
    """Place of a kink by least squares of two meeting lines between two neighbours."""
    best, place = np.inf, i
    y = temp[left : right + 1]
    if not np.isfinite(y).all() or len(y) < 7:
        return i
    x = np.arange(left, right + 1, dtype=float)
    for j in range(max(left + 2, i - 6), min(right - 1, i + 7)):
        basis = np.stack([np.ones_like(x), x - j, np.maximum(x - j, 0.0)], axis=1)
        rest = y - basis @ np.linalg.lstsq(basis, y, rcond=None)[0]
        if (error := float(rest @ rest)) < best:
            best, place = error, j
    return place


def heat_state(oil: Oil) -> HeatState | None:
    """Heater state, heater rise, idle loss and the heat drawn; None when the heater leaves no clear kinks."""
    if np.isfinite(oil.temp_c).sum() * oil.step_s < SHORTEST_LOG_S:
        return None
    step, temp = oil.step_s, oil.heat_k
    curve, unit_sd = kink_curve(temp, step, ARM_S)
    sd = unit_sd * max(oil.noise_k, 0.02)
    rough = peaks_of(curve, step, ARM_S, max(LEAST_KINK_SIGMA * sd, 0.5 * LEAST_HEATER_K_S))
    if len(rough) < 2:
        return None
    edges = [0, *rough.tolist(), len(temp) - 1]
    reach = round(25.0 / step)
    places = sorted(
        {
            _refine(temp, k, max(edges[n], k - reach), min(edges[n + 2], k + reach))
            for n, k in enumerate(rough.tolist())
        }
    )
    segments = _segments(temp, [0, *places, len(temp) - 1], step)
    rise = _heater_rise(segments)
    if rise is None:
        return None
    heater, loss = rise
    on, kinks = _assign(segments, places, heater, loss, sd)
    bounds = list(zip([0, *places], [*places, len(temp) - 1], strict=True))
    for _ in range(3):
        state = np.zeros(len(temp), dtype=bool)
        for (a, b), flag in zip(bounds, on, strict=True):
            state[a : b + 1] = flag
        drawn = drawn_of(oil, state, heater, loss)
        heater, loss = polish(oil, kinks, idle_runs(oil, drawn, heater), heater, loss)
        on, kinks = _assign(segments, places, heater, loss, sd)
    return HeatState(heater_k_s=heater, loss_k_s=loss, kinks=kinks, on=state, drawn_k=drawn)


@dataclass(frozen=True, slots=True)
class _Segment:
    """Between two kinks: slope at its start, at its end, over all, and its length [s]."""

    first_k_s: float
    last_k_s: float
    mean_k_s: float
    length_s: float


def _segments(temp: Array, edges: list[int], step: float) -> list[_Segment]:
    found = []
    for a, b in pairwise(edges):
        y = temp[a : b + 1]
        x = step * np.arange(len(y))
        known = np.isfinite(y)
        if known.sum() < 3:
            found.append(_Segment(np.nan, np.nan, np.nan, step * (b - a)))
            continue
        near = max(5, min(round(30.0 / step), len(y)))

        def slope(part: slice, x: Array = x, y: Array = y, known: Array = known) -> float:  # type: ignore[assignment]
            keep = known[part]
            if keep.sum() < 3:
                return float("nan")
            return float(np.polyfit(x[part][keep], y[part][keep], 1)[0])

        found.append(
            _Segment(slope(slice(0, near)), slope(slice(-near, None)), slope(slice(None)), step * (b - a))
        )
    return found


def _heater_rise(segments: list[_Segment]) -> tuple[float, float] | None:
    """Rise of the heater alone and idle loss [K/s] from pairs of neighbouring segments.

    Idle oil falls by the same slope again and again and rises by the same slope beside it; a load's
    slope changes all the time.
    """
    falls = [
        s for s in segments if s.mean_k_s < 0 and s.length_s >= 60.0 and abs(s.first_k_s - s.last_k_s) < 0.02
    ]
    idle_off = _densest(falls)
    if not idle_off:
        return None
    loss = _mean(idle_off)
    rises = []
    for before, on, after in zip([None, *segments[:-1]], segments, [*segments[1:], None], strict=True):
        if on.mean_k_s > LEAST_HEATER_K_S and any(s is not None and s in idle_off for s in (before, after)):
            rises.append(on)
    return (_mean(_densest(rises)) + -loss, -loss) if rises else None


def _densest(segments: list[_Segment]) -> list[_Segment]:
    """Segments around the slope on which most time is spent: idle slopes repeat, loaded ones do not."""
    best: list[_Segment] = []
    for middle in segments:
        near = [
            s for s in segments if abs(s.mean_k_s - middle.mean_k_s) <= 0.1 * abs(middle.mean_k_s) + 0.0007
        ]
        if sum(s.length_s for s in near) > sum(s.length_s for s in best):
            best = near
    return best


def _mean(segments: list[_Segment]) -> float:
    sizes = np.array([s.length_s for s in segments])
    return float(sizes @ np.array([s.mean_k_s for s in segments]) / sizes.sum())


def polish(
    oil: Oil, kinks: tuple[tuple[int, int], ...], idle: list[tuple[int, int]], heater: float, loss: float
) -> tuple[float, float]:
    """Heater rise and idle loss by least squares over whole stretches without a load.

    Every switch may lie up to about a step beside its place, so that slopes count and not places.
    """
    rows, right = [], []
    weight = max(oil.noise_k, 0.02)
    idle = _enough(idle)
    inside = [(k, sign) for k, sign in kinks if any(a < k < b for a, b in idle)]
    heat, shape = oil.heat_k, oil.loss_shape
    for a, b in idle:
        own = [(k, sign) for k, sign in kinks if a < k < b]
        if not own or (b - a) * oil.step_s < IDLE_S:
            continue
        state = np.zeros(b - a, dtype=float)
        on = own[0][1] < 0
        for first, last, flag in zip(
            [a, *(k for k, _ in own)], [*(k for k, _ in own), b], [on, *(g > 0 for _, g in own)], strict=True
        ):
            state[first - a : last - a] = flag
        x = np.arange(a, b + 1)
        basis = np.zeros((b - a + 1, 2 + len(inside)))
        basis[1:, 0] = oil.step_s * np.cumsum(state)
        basis[1:, 1] = -oil.step_s * np.cumsum(shape[a:b])
        for n, (k, _) in enumerate(inside):
            if a < k < b:
                basis[:, 2 + n] = heater * (x > k)
        known = np.isfinite(heat[a : b + 1])
        rows.append((basis[known] - basis[known].mean(axis=0)) / weight)
        right.append((heat[a : b + 1][known] - heat[a : b + 1][known].mean()) / weight)
    if not rows:
        return heater, loss
    ridge = np.hstack([np.zeros((len(inside), 2)), np.eye(len(inside)) / (0.7 * oil.step_s)])
    found = np.linalg.lstsq(
        np.concatenate([*rows, ridge]), np.concatenate([*right, np.zeros(len(inside))]), rcond=None
    )[0]
    close = 0.7 * heater < found[0] < 1.4 * heater and 0.0 < found[1] < heater
    return (float(found[0]), float(found[1])) if close else (heater, loss)


def _enough(idle: list[tuple[int, int]]) -> list[tuple[int, int]]:
    """The first stretches, up to ENOUGH_STEPS of them together: more would not make slopes surer."""
    kept: list[tuple[int, int]] = []
    for a, b in idle:
        if sum(d - c for c, d in kept) > ENOUGH_STEPS:
            break
        kept.append((a, b))
    return kept


def idle_runs(oil: Oil, drawn: Array, heater: float) -> list[tuple[int, int]]:
    """Stretches in which nothing draws heat: the drawn heat stays level over a wide window."""
    slope = np.abs(smooth_slope(drawn, oil.step_s, IDLE_WINDOW_S))
    quiet = slope < max(IDLE_DRAW_SHARE * heater, 0.002)
    trim = round(0.5 * IDLE_WINDOW_S / oil.step_s)
    edges = np.flatnonzero(np.diff(np.r_[False, quiet, False].astype(int)))
    runs = [(int(a) + trim // 2, int(b) - 1 - trim) for a, b in zip(edges[::2], edges[1::2], strict=True)]
    return [(a, b) for a, b in runs if (b - a) * oil.step_s > IDLE_S]


def smooth_slope(values: Array, step: float, window_s: float) -> Array:
    """Slope over a centred window [units/s], NaN where the window is not whole."""
    half = max(2, round(0.5 * window_s / step))
    x = step * np.arange(-half, half + 1)
    weights = x / np.sum(x**2)
    out = np.full(len(values), np.nan)
    if len(values) > 2 * half:
        out[half : len(values) - half] = np.convolve(values, weights[::-1], mode="valid")
    return out


def drawn_of(oil: Oil, on: NDArray[np.bool_], heater: float, loss: float) -> Array:
    """Heat the loads have drawn since the start [K]."""
    supplied = np.r_[0.0, np.cumsum(oil.step_s * (heater * on[:-1] - loss * oil.loss_shape[:-1]))]
    heat = oil.heat_k
    return np.asarray(supplied - (heat - heat[np.isfinite(heat)][0]))


def _assign(
    segments: list[_Segment], places: list[int], heater: float, loss: float, sd: float
) -> tuple[list[bool], tuple[tuple[int, int], ...]]:
    """Heater state of every segment: cheapest path where the draw is never negative and rarely jumps."""
    slack = max(4.0 * sd, 0.06 * heater)
    cost = np.zeros((len(segments), 2))
    back = np.zeros((len(segments), 2), dtype=np.int64)

    def own(s: _Segment, u: int) -> float:
        if np.isnan(s.mean_k_s):
            return 0.0
        ends = [x for x in (s.first_k_s, s.last_k_s, s.mean_k_s) if np.isfinite(x)]
        lowest = min(heater * u - loss - x for x in ends)
        negative = max(0.0, -lowest - 0.25 * slack) * min(3.0, 1.0 + s.length_s / 30.0)
        drawing = heater * min(1.0, s.length_s / LONG_LOAD_S) if lowest > slack else 0.0
        return negative + drawing

    for u in (0, 1):
        cost[0, u] = own(segments[0], u)
    for k in range(1, len(segments)):
        a, b = segments[k - 1], segments[k]
        for u in (0, 1):
            paths = []
            for v in (0, 1):
                jump = (
                    (heater * (u - v)) - (b.first_k_s - a.last_k_s)
                    if np.isfinite(a.last_k_s) and np.isfinite(b.first_k_s)
                    else 0.0
                )
                paths.append(cost[k - 1, v] + abs(jump))
            back[k, u] = int(np.argmin(paths))
            cost[k, u] = min(paths) + own(b, u)
    path = [int(np.argmin(cost[-1]))]
    for k in range(len(segments) - 1, 0, -1):
        path.append(int(back[k, path[-1]]))
    path.reverse()
    kinks = tuple((place, path[n + 1] - path[n]) for n, place in enumerate(places) if path[n + 1] != path[n])
    return [bool(u) for u in path], kinks
