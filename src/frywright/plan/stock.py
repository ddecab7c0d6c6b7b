"""What is on the shelf: first out, a hold life, lost sales. Exact without following single pieces.

With A_t the units made available up to slot t and o_t the units gone (sold or thrown away): at every slot
what is older than the hold life goes first, ``o = max(o, A[t - hold])``, then ``sale = min(D_t, A_t - o)``.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from frywright.model.errors import InputError
from frywright.physics.kernels import njit

Counts = NDArray[np.int64]


@dataclass(frozen=True, slots=True, kw_only=True)
class Shelf:
    """Outcome of slots under demand: arrays (scenario, slot), sums a scenario."""

    sold: Counts
    short: Counts
    wasted: Counts
    left: Counts  # on the shelf at the end of every slot


def first_out(made: ArrayLike, demand: ArrayLike, hold_slots: int) -> Shelf:
    """Serve demand from stock, oldest first; what is held ``hold_slots`` slots is thrown away.

    Units made in slot t may be sold in slots t to t + hold_slots - 1. What is left after the last slot is
    waste.

    Parameters
    ----------
    made : (slots,) or (scenarios, slots) units that become available
    demand : (scenarios, slots) units asked for
    hold_slots : hold life, 1 or more

    Raises
    ------
    InputError
        Negative counts, shapes that do not fit, or no hold life.
    """
    asked = np.atleast_2d(np.asarray(demand, dtype=np.int64))
    ready = np.atleast_2d(np.asarray(made, dtype=np.int64))
    ready = np.ascontiguousarray(np.broadcast_to(ready, asked.shape))
    if hold_slots < 1:
        raise InputError("hold", hold_slots, "1 slot or more")
    if asked.min(initial=0) < 0 or ready.min(initial=0) < 0:
        raise InputError("units", "negative", "0 or more")
    sold, wasted, left = np.zeros_like(asked), np.zeros_like(asked), np.zeros_like(asked)
    _serve(ready, np.ascontiguousarray(asked), hold_slots, sold, wasted, left)
    return Shelf(sold=sold, short=asked - sold, wasted=wasted, left=left)


@njit(cache=True)
def _serve(made, asked, hold, sold, wasted, left):  # type: ignore[no-untyped-def]
    for s in range(asked.shape[0]):
        available = gone = expired = 0
        for t in range(asked.shape[1]):
            available += made[s, t]
            if t >= hold:
                expired += made[s, t - hold]
            if expired > gone:
                wasted[s, t] = expired - gone
                gone = expired
            sale = min(asked[s, t], available - gone)
            sold[s, t] = sale
            gone += sale
            left[s, t] = available - gone
        wasted[s, -1] += available - gone
