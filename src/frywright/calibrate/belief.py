"""What readings at the lift say of a program: how far over its limit the slowest pieces come, cut by cut,
place by place, load by load.

A *class* of piece is the heaviest piece of a cut, in one place of the basket, in one kind of load. Margins of
all classes are normal together: the engine gives their means, and their covariance from what it does not know
of a kitchen through its own sensitivities. Loads differ by ``tau`` and pieces of a load by ``sigma``, which
are learned on a grid.
A program is over its limit where in every class at least COVERAGE of such pieces is.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]
COVERAGE = 0.95
LOW_Z = 1.88
"""How many spreads below the mean COVERAGE of the pieces end: the 95 % point of pieces with a long cold tail
(gamma of shape 4, skew -1; 1.645 were they normal). Own choice, to the cold side."""
SIGMA_N, TAU_N = np.geomspace(0.4, 2.5, 7), np.geomspace(0.25, 3.0, 5)
SIGMA_LOG_SD, TAU_LOG_SD = 0.5, 0.7
"""Grid of the spreads as multiples of what is expected, and how surely that is expected (own estimates)."""
DRAWS_N = 512
LEAST_WEIGHT = 1e-3


@dataclass(frozen=True, slots=True, kw_only=True)
class PieceClass:
    """The heaviest piece of a cut, in a place of the basket, in a kind of load."""

    cut: str
    place: str
    load: str


@dataclass(frozen=True, kw_only=True)
class Prior:
    """What the engine predicts of every class: margin at the lift and what it may be off, together [K]."""

    classes: tuple[PieceClass, ...]
    mean_k: Array
    covariance_k2: Array
    sigma_k: float
    tau_k: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Seen:
    """One reading: its class by number, the load it came from, and its margin: corrected, the thermometer's
    error and the limit taken off [K].
    """

    number: int
    load: int
    margin_k: float


@dataclass(frozen=True, kw_only=True)
class Belief:
    """Margins of all classes after readings, for each pair of spreads of the grid that is still likely."""

    prior: Prior
    weights: Array  # node
    means_k: Array  # node, class
    covariances_k2: Array  # node, class, class
    sigma_k: Array  # node
    tau_k: Array  # node

    @cached_property
    def lows_k(self) -> Array:
        """Draws of each class's low end, the margin that COVERAGE of its pieces reach: (draw, class)."""
        rng = np.random.default_rng(1)
        counts = np.maximum(1, np.round(self.weights * DRAWS_N)).astype(int)
        found = []
        for i, count in enumerate(counts):
            root = _root(self.covariances_k2[i])
            drawn = self.means_k[i] + rng.standard_normal((count, root.shape[1])) @ root.T
            found.append(drawn - LOW_Z * self.total_k[i])
        return np.vstack(found)

    @property
    def total_k(self) -> Array:
        """Spread of single pieces over all loads, by node [K]."""
        return np.hypot(self.sigma_k, self.tau_k)

    @property
    def chance_frac(self) -> float:
        """Chance that COVERAGE of the pieces of every class are over the limit."""
        return float(np.mean(self.lows_k.min(axis=1) >= 0.0))

    @property
    def binding(self) -> Array:
        """Chance of each class to have the lowest low end."""
        worst = np.argmin(self.lows_k, axis=1)
        return np.bincount(worst, minlength=len(self.prior.classes)) / len(worst)

    @property
    def mean_k(self) -> Array:
        """Expected margin of each class [K]."""
        return np.asarray(self.weights @ self.means_k)

    @property
    def low_k(self) -> float:
        """Margin that COVERAGE of the pieces of the lowest class are expected to reach [K]."""
        return float(np.mean(self.lows_k.min(axis=1)))


def _root(covariance: Array) -> Array:
    values, vectors = np.linalg.eigh(covariance)
    return np.asarray(vectors * np.sqrt(np.maximum(values, 0.0)))


def believe(prior: Prior, seen: Sequence[Seen]) -> Belief:
    """The belief after readings, exact for normal margins given the spreads."""
    log_n = np.log(SIGMA_N)[:, None] / SIGMA_LOG_SD, np.log(TAU_N)[None, :] / TAU_LOG_SD
    logs = (-0.5 * (log_n[0] ** 2 + log_n[1] ** 2)).ravel()
    sigma = np.repeat(prior.sigma_k * SIGMA_N, len(TAU_N))
    tau = np.tile(prior.tau_k * TAU_N, len(SIGMA_N))
    precision, pull, misfit = _summed(prior, seen, sigma, tau)
    gain = np.eye(len(prior.classes)) + prior.covariance_k2 @ precision
    shift = np.linalg.solve(gain, (pull @ prior.covariance_k2)[..., None])[..., 0]
    logs = logs - 0.5 * (misfit + np.linalg.slogdet(gain)[1] - np.einsum("ni,ni->n", pull, shift))
    weights = np.exp(logs - logs.max())
    weights /= weights.sum()
    keep = weights > LEAST_WEIGHT
    spread = np.linalg.solve(gain[keep], np.broadcast_to(prior.covariance_k2, gain[keep].shape))
    return Belief(
        prior=prior,
        weights=weights[keep] / weights[keep].sum(),
        means_k=prior.mean_k + shift[keep],
        covariances_k2=0.5 * (spread + spread.swapaxes(1, 2)),
        sigma_k=sigma[keep],
        tau_k=tau[keep],
    )


def _summed(prior: Prior, seen: Sequence[Seen], sigma: Array, tau: Array) -> tuple[Array, Array, Array]:
    """What readings say of the classes' means, summed load by load, so that it costs no more the more there
    are: their precision (node, class, class), what they pull to (node, class), and by how much they disagree
    with the prior's means and are spread (node), as twice a log likelihood.

    Readings of a load share its ``tau``: their covariance is ``sigma**2 * eye + tau**2``, its inverse
    ``(eye - w) / sigma**2`` with ``w = tau**2 / (sigma**2 + count * tau**2)``.
    """
    loads = {load: n for n, load in enumerate(dict.fromkeys(one.load for one in seen))}
    counts, sums = np.zeros((2, len(loads), len(prior.classes)))
    squares = 0.0
    for one in seen:
        left_k, at = one.margin_k - prior.mean_k[one.number], (loads[one.load], one.number)
        counts[at] += 1.0
        sums[at] += left_k
        squares += left_k**2
    of_load, sum_k = counts.sum(axis=1), sums.sum(axis=1)
    part = tau[:, None] ** 2 / (sigma[:, None] ** 2 + of_load * tau[:, None] ** 2)
    pairs = (counts[:, :, None] * counts[:, None, :]).reshape(len(loads), len(prior.classes) ** 2)
    shared = (part @ pairs).reshape(len(sigma), len(prior.classes), len(prior.classes))
    own_2 = sigma**2
    precision = (np.diag(counts.sum(axis=0)) - shared) / own_2[:, None, None]
    pull = (sums.sum(axis=0) - (part * sum_k) @ counts) / own_2[:, None]
    spread = len(seen) * np.log(own_2) + np.log1p(of_load * tau[:, None] ** 2 / own_2[:, None]).sum(axis=1)
    return precision, pull, (squares - part @ sum_k**2) / own_2 + spread


def gain_k2(belief: Belief, load: Sequence[int] = ()) -> Array:
    """How much one more reading of each class lowers the variance of those classes that may bind [K2].

    Parameters
    ----------
    load : classes that the same load will be read for already
    """
    sigma, tau = float(belief.weights @ belief.sigma_k), float(belief.weights @ belief.tau_k)
    spread = np.einsum("n,nij->ij", belief.weights, belief.covariances_k2)
    shared, own = spread, np.diag(spread) + tau**2 + sigma**2
    if load:
        at = list(load)
        cross = spread[:, at]
        gram = cross[at] + tau**2 + sigma**2 * np.eye(len(at))
        known = np.linalg.solve(gram, (cross + tau**2).T)
        shared = spread - cross @ known
        own = own - np.einsum("ij,ji->i", cross + tau**2, known)
    return np.asarray(belief.binding @ shared**2 / own)
