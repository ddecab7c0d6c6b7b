"""Which probing would decide a program soonest, and when it is decided.

After every load the next one is chosen anew: the kind of load, and the pieces in it, whose readings lower the
variance of the classes that may bind the most. A program *meets* when the chance that COVERAGE of the pieces
of every class are over the limit reaches ENOUGH, every cut was read LEAST_OF_CUT times, LEAST_READINGS were
read in all, and nothing was read below. One reading below its limit *fails* it.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum

import numpy as np

from frywright.calibrate.belief import Belief, Prior, Seen, believe, gain_k2

RISK = 0.05
"""Of programs that are not over their limit, at most this share is said to meet it (``python -m
benchmarks.evidence_plan`` counts it)."""
ENOUGH = 0.98
"""Chance asked for. Above 1 - RISK, because it is looked at after every load and kitchens are less alike than
the engine takes them to be; own choice, by that count."""
HOPELESS = 0.02
MOST_READINGS, MOST_IN_LOAD = 48, 3
"""Readings after which a program is not shown; readings one thermometer takes at a lift. Own choices."""
LEAST_OF_CUT, LEAST_READINGS = 2, 6
"""One reading of a cut may be a slip; fewer in all say little of how pieces and loads differ. Own choices."""


class Decision(StrEnum):
    """What readings have decided."""

    MEETS = "meets"
    FAILS = "fails"
    NOT_SHOWN = "not shown"
    OPEN = "open"


@dataclass(frozen=True, kw_only=True)
class Standing:
    """Where a probing stands; ``lacking`` says how often each cut must still be read."""

    decision: Decision
    belief: Belief
    read_count: int
    lacking: dict[str, int]


def standing(prior: Prior, seen: Sequence[Seen]) -> Standing:
    """What the readings say so far."""
    belief = believe(prior, seen)
    read = Counter(prior.classes[one.number].cut for one in seen)
    cuts = dict.fromkeys(c.cut for c in prior.classes)
    lacking = {cut: LEAST_OF_CUT - read[cut] for cut in cuts if read[cut] < LEAST_OF_CUT}
    if any(one.margin_k < 0.0 for one in seen):
        decision = Decision.FAILS
    elif not lacking and len(seen) >= LEAST_READINGS and belief.chance_frac >= ENOUGH:
        decision = Decision.MEETS
    elif len(seen) >= MOST_READINGS or (not lacking and belief.chance_frac < HOPELESS):
        decision = Decision.NOT_SHOWN
    else:
        decision = Decision.OPEN
    return Standing(decision=decision, belief=belief, read_count=len(seen), lacking=lacking)


def next_load(now: Standing, most: int = MOST_IN_LOAD) -> tuple[int, ...]:
    """Classes to read in the next load, most telling first.

    Once the chance is there, only cuts that must still be read are asked for, then as many as lack in all.
    """
    classes, sure = now.belief.prior.classes, now.belief.chance_frac >= ENOUGH
    if sure and not now.lacking:
        most = min(most, LEAST_READINGS - now.read_count)
    best: tuple[float, tuple[int, ...]] = (-1.0, ())
    for load in dict.fromkeys(c.load for c in classes):
        wanted = dict(now.lacking) if sure else {}
        total = 0.0
        chosen: list[int] = []
        while len(chosen) < most:
            asked = np.array([c.load == load and (not wanted or c.cut in wanted) for c in classes])
            gains = np.where(asked, gain_k2(now.belief, chosen), -1.0)
            pick = int(np.argmax(gains))
            chosen.append(pick)
            total += float(gains[pick])
            if wanted:
                cut = classes[pick].cut
                wanted = {c: n - (c == cut) for c, n in wanted.items() if n > (c == cut)}
                if not wanted:
                    break
        if (len(chosen), total) > (len(best[1]), best[0]):
            best = (total, tuple(chosen))
    return best[1]


def expected_path(prior: Prior, seen: Sequence[Seen], most: int = MOST_IN_LOAD) -> list[tuple[int, ...]]:
    """Loads still to probe if every reading comes as it is expected to, or just at the limit if that is below
    it.
    """
    path: list[tuple[int, ...]] = []
    told, now = list(seen), standing(prior, seen)
    load = 1 + max((one.load for one in told), default=0)
    while now.decision is Decision.OPEN:
        picks, expected = next_load(now, most), now.belief.mean_k
        path.append(picks)
        told += [Seen(number=i, load=load, margin_k=max(float(expected[i]), 0.0)) for i in picks]
        load, now = load + 1, standing(prior, told)
    return path
