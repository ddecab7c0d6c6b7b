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
