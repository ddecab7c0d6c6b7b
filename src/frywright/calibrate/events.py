"""Drops and lifts, dip and recovery, from an oil curve; vents from a gauge curve; a probe in the air."""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from frywright.calibrate.heat import HeatState, Oil, drawn_of, heat_state, idle_runs, polish
from frywright.calibrate.track import Happened, Story, story_of

Array = NDArray[np.float64]
LEAST_DRAW_K = 1.5
SHORTEST_LOAD_S = 60.0
SHORTEST_TURN_S = 30.0
"""No crew lifts a load and drops the next sooner; common practice, no source."""
AROUND_S, RUSH_S, ANOTHER_DRAW_K_S = 25.0, 150.0, 0.04
"""A vent raises the draw of a full load by about 0.01 K/s, a half load dropped on top by 0.05 and more
(engine).
"""
SHORTEST_PROGRAM_S = 120.0
"""No fried product of the trade is done sooner; common practice, no source."""
LEAST_SUDDEN_K_S = 0.02
"""Fall of the oil right after a drop, less than any of 500 made logs (engine)."""
CLEARER = 3.0
"""A drop is moved where the readings then lie so many times nearer to the fit, in squares. Own choice: of
497 drops in made logs it moved four, all within 1.3 s of the truth then (they were up to 5.5 s early)."""
REACH_S, BEFORE_S, AFTER_S = 15.0, 20.0, 25.0
OUT_OF_OIL_K_S = 2.0
OUT_OF_OIL_K = 25.0
"""No load pulls the oil down this fast and far; a probe lifted into air does. Estimate."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Load:
    """One load seen in the oil. ``lift_s`` is None when the log ends first.

    ``overlapping`` says that another load was in the oil.
    """

    drop_s: float
    lift_s: float | None
    overlapping: bool
    drawn_k: float


def out_of_oil(oil: Oil) -> list[tuple[float, float]]:
    """Stretches [s] in which the oil probe was out of the oil: a fall no load can make, until it is back."""
    temp, found = oil.temp_c, []
    lag = max(1, round(5.0 / oil.step_s))
    fall = np.full(len(temp), 0.0)
    fall[lag:] = temp[:-lag] - temp[lag:]
    i = 0
    while i < len(temp):
        if fall[i] > OUT_OF_OIL_K_S * lag * oil.step_s:
            start = max(0, i - lag)
            level = temp[start]
            after = np.flatnonzero(temp[i:] > level - 0.4 * OUT_OF_OIL_K)
            end = i + int(after[0]) if len(after) else len(temp) - 1
            if level - np.nanmin(temp[start : end + 1]) > OUT_OF_OIL_K:
                found.append((start * oil.step_s, end * oil.step_s))
            i = max(end, i + 1)
        i += 1
    return found


@dataclass(frozen=True, slots=True, kw_only=True)
class Seen:
    """What an oil curve shows: heater strength, switches, loads."""

    heat: HeatState
    loads: tuple[Load, ...]


def loads_in(oil: Oil) -> Seen | None:
    """Loads of an oil curve, in order; None when the heater leaves no clear kinks to tell them by."""
    rough = heat_state(oil)
    if rough is None:
        return None
    heat = rough
    for _ in range(2):
        story = story_of(
            np.where(oil.read, oil.heat_k, np.nan),
            oil.step_s,
            oil.noise_k,
            heat.heater_k_s,
            heat.loss_k_s * oil.loss_shape,
            peak_of(oil, heat),
        )
        heat = _by_story(oil, story, heat)
        heater, loss = polish(
            oil, heat.kinks, idle_runs(oil, heat.drawn_k, heat.heater_k_s), heat.heater_k_s, heat.loss_k_s
        )
        heat = replace(heat, heater_k_s=heater, loss_k_s=loss, drawn_k=drawn_of(oil, heat.on, heater, loss))
    return Seen(heat=heat, loads=tuple(_loads(oil, heat, story)))


def peak_of(oil: Oil, heat: HeatState) -> float:
    """Heat at which the idle heater cuts out, or NaN."""
    idle = idle_runs(oil, heat.drawn_k, heat.heater_k_s)
    quiet = np.zeros(len(oil.temp_c), dtype=bool)
    for a, b in idle:
        quiet[a : b + 1] = True
    outs = [k for k, sign in heat.kinks if sign < 0 and quiet[k]]
    return float(np.nanmedian(oil.heat_k[outs])) if outs else float("nan")


def _by_story(oil: Oil, story: Story, heat: HeatState) -> HeatState:
    on = np.zeros(len(oil.temp_c), dtype=bool)
    kinks, state, last = [], story.starts_on, 0
    for place, kind in zip(story.places, story.kinds, strict=True):
        if kind in (Happened.CUT_IN, Happened.CUT_OUT):
            on[last:place] = state
            state, last = kind == Happened.CUT_IN, int(place)
            kinks.append((last, 1 if state else -1))
    on[last:] = state
    drawn = drawn_of(oil, on, heat.heater_k_s, heat.loss_k_s)
    return replace(heat, on=on, kinks=tuple(kinks), drawn_k=drawn)


def _like_a_drop(oil: Oil, heat: HeatState, start: int, place: int) -> bool:
    """Whether a jump of the draw inside a load is another load: later than the first rush, and large."""
    wide = round(AROUND_S / oil.step_s)
    if (place - start) * oil.step_s < RUSH_S or place + wide >= len(heat.drawn_k):
        return False
    before, after = (
        float(heat.drawn_k[b] - heat.drawn_k[a]) / AROUND_S
        for a, b in ((place - wide, place), (place, place + wide))
    )
    return after - before > ANOTHER_DRAW_K_S


def _settled(oil: Oil, heat: HeatState, place: int) -> int:
    """The place of a drop, looked at again: before it the oil keeps its heat but for the idle loss, after it
    the heat falls along a parabola.

    A heater that switches off shortly before the drop makes the oil sink too, and the story then sees the
    drop early: a draw that grows slowly costs it little.
    """
    reach, before, after = (round(s / oil.step_s) for s in (REACH_S, BEFORE_S, AFTER_S))
    first, last = place - reach - before, place + reach + after + 1
    if first < 0 or last > len(oil.temp_c):
        return place
    rate = np.where(heat.on, heat.heater_k_s, 0.0) - heat.loss_k_s * oil.loss_shape
    known = np.cumsum(rate[first:last]) * oil.step_s
    left = np.where(oil.read, oil.heat_k, np.nan)[first + 1 : last] - known[:-1]
    steps = np.arange(-before, after + 1)
    fallen = np.maximum(steps * oil.step_s, 0.0)
    terms = np.stack([np.ones_like(fallen), -fallen, fallen**2], axis=1)

    def off(at: int) -> tuple[float, float]:
        """Mean square off the best fit for a drop at a place, and the draw at the drop."""
        seen = left[at - first - 1 + steps]
        there = np.isfinite(seen)
        if there.sum() < 2 * terms.shape[1]:
            return np.inf, 0.0
        found = np.linalg.lstsq(terms[there], seen[there], rcond=None)[0]
        return float(np.mean((seen[there] - terms[there] @ found) ** 2)), float(found[1])

    best = min(range(place - reach + 1, place + reach + 1), key=lambda at: off(at)[0])
    square, draw = off(best)
    return best if draw > LEAST_SUDDEN_K_S and off(place)[0] > CLEARER * square else place


def _loads(oil: Oil, heat: HeatState, story: Story) -> list[Load]:
    """Stretches with a load; a break that no crew could make is taken out, as are stretches too short to be
    one.
    """
    loads = []
    for a, b, over, still in _joined(oil, _spells(oil, heat, story)):
        drawn = float(np.nanmax(heat.drawn_k[a : b + 1]) - heat.drawn_k[a])
        if drawn > LEAST_DRAW_K and (b - a) * oil.step_s > SHORTEST_LOAD_S:
            loads.append(
                Load(
                    drop_s=(a if over else _settled(oil, heat, a)) * oil.step_s,
                    lift_s=None if still else b * oil.step_s,
                    overlapping=over,
                    drawn_k=drawn,
                )
            )
    return loads


Spell = tuple[int, int, bool, bool]
"""A stretch with a load: first, last, overlapping, still in at the end."""


def _spells(oil: Oil, heat: HeatState, story: Story) -> list[Spell]:
    """From each drop to what ended it."""
    spells: list[Spell] = []
    start, overlapping = (0 if story.starts_loaded else None), False
    for place, kind in zip(story.places, story.kinds, strict=True):
        again = kind == Happened.JUMP and start is not None and _like_a_drop(oil, heat, start, int(place))
        if kind == Happened.DROP or again:
            if start is not None:
                spells.append((start, int(place), True, False))
            start, overlapping = int(place), start is not None
        elif kind == Happened.LIFT and start is not None:
            spells.append((start, int(place), overlapping, False))
            start, overlapping = None, False
    if start is not None:
        spells.append((start, len(oil.temp_c) - 1, overlapping, True))
    return spells


def _joined(oil: Oil, spells: list[Spell]) -> list[Spell]:
    """Without the breaks that no crew could make."""
    joined: list[Spell] = []
    for spell in spells:
        last = joined[-1] if joined else None
        if last and not spell[2]:
            pause, length = ((b - a) * oil.step_s for a, b in ((last[1], spell[0]), (last[0], last[1])))
            if pause < (SHORTEST_PROGRAM_S if length < SHORTEST_PROGRAM_S else SHORTEST_TURN_S):
                joined[-1] = (last[0], spell[1], last[2], spell[3])
                continue
        joined.append(spell)
    return joined
