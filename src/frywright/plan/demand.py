"""How many will be asked for: over-dispersed counts, and the quantity that balances too few against too
many.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray

from frywright.model.errors import InputError

Array = NDArray[np.float64]
TAIL_FRAC = 1e-12


@dataclass(frozen=True, slots=True, kw_only=True)
class Demand:
    """A count with a mean and a ratio of variance to mean: 1 is Poisson, above it negative binomial."""

    mean_n: float
    spread_n: float = 1.0

    def __post_init__(self) -> None:
        if not self.mean_n >= 0:
            raise InputError("mean", self.mean_n, "0 or more")
        if not 1.0 <= self.spread_n <= 1e4:
            raise InputError("variance over mean", self.spread_n, "1 (Poisson) or more")

    def frozen(self) -> Any:
        """The distribution as a SciPy object."""
        from scipy.stats import nbinom, poisson

        if self.mean_n == 0 or self.spread_n <= 1.0 + 1e-9:
            return poisson(self.mean_n)
        return nbinom(self.mean_n / (self.spread_n - 1.0), 1.0 / self.spread_n)

    def probabilities(self) -> Array:
        """Probability of 0, 1, 2, ... up to a tail of TAIL_FRAC."""
        law = self.frozen()
        return np.asarray(law.pmf(np.arange(int(law.isf(TAIL_FRAC)) + 2)), dtype=float)

    def quantile(self, share: float) -> int:
        """Smallest count that is not passed with probability ``share``."""
        return int(self.frozen().ppf(share)) if self.mean_n > 0 else 0


def newsvendor(demand: Demand, short_cost: float, waste_cost: float) -> int:
    """Smallest q with F(q) >= c_s / (c_s + c_w): the best quantity for one period without a batch cost.

    Parameters
    ----------
    short_cost, waste_cost : money lost for each unit too few, too many; above 0
    """
    if not short_cost > 0 or not waste_cost > 0:
        raise InputError(
            "costs", f"{short_cost} and {waste_cost}", "above 0 for a unit too few and a unit too many"
        )
    return demand.quantile(short_cost / (short_cost + waste_cost))


def expected_sold(demand: Demand, stock: int) -> float:
    """E[min(D, stock)]."""
    p = demand.probabilities()
    return float(np.minimum(np.arange(len(p)), stock) @ p)


def batches_worth(demand: Demand, unit: int, short_cost: float, waste_cost: float, batch_cost: float) -> int:
    """Batches of ``unit`` pieces worth cooking for one period.

    The n-th pays iff (c_s + c_w) E[min(u, (D - u(n-1))+)] - c_w u > K; gains fall with n, so the first that
    does not pay ends it.
    """
    if unit < 1:
        raise InputError("batch", unit, "1 piece or more")
    p = demand.probabilities()
    counts, batches = np.arange(len(p)), 0
    while True:
        extra = np.minimum(unit, np.maximum(counts - unit * batches, 0)) @ p
        if (short_cost + waste_cost) * float(extra) - waste_cost * unit <= batch_cost:
            return batches
        batches += 1
