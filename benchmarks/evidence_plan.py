"""python -m benchmarks.evidence_plan [KITCHENS]

Invented kitchens with a hidden truth: how rarely a probing plan says *meets* of a program that does not, and
how many readings it takes beside a fixed plan of equal risk that shows as many good programs. Half of the
kitchens are drawn as the plan believes kitchens to be, half wider and otherwise: heavy tails, uniform
spreads, pieces with a long cold tail, places that are only colder.

What the plan does not know: cut sizes and shapes, thermostat, surface, heater, meat and oil at each drop,
places, loads, pieces, a stem off the coldest spot (never colder), a thermometer wrong by up to its error.
Truth comes from the engine with those changed and what it does not know on top; every spread is an own
estimate.
"""

from __future__ import annotations

import sys
from collections import Counter
from collections.abc import Iterator, Sequence
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from frywright.calibrate.belief import COVERAGE, PieceClass, Prior, Seen
from frywright.calibrate.plan_probing import (
    ENOUGH,
    MOST_IN_LOAD,
    RISK,
    Decision,
    expected_path,
    next_load,
    standing,
)
from frywright.calibrate.sampling import tolerance_factor
from frywright.design.proof import FACTORS, HEAVY_QUANTILE_Z, cores_at_lift_c
from frywright.model.kitchen import Kitchen
from frywright.model.program import Program
from frywright.physics.inputs import ROUTINE
from frywright.physics.plan import FryPlan, make_plan
from frywright.trial.ask import hand_limit_c
from frywright.trial.kitchens import demo_kitchen
from frywright.trial.predicted import as_keyed
from frywright.trial.probing import (
    CLASS_SD_K,
    OIL,
    PLACE_SD_K,
    PLACES,
    READ_SD_K,
    SIZE_SD,
    STEPS,
    Road,
    load_rows,
    prior_of,
)

Array = NDArray[np.float64]
PROGRAMS = ("bone-in alder", "bone-in birch", "bone-in cedar", "tenders cedar")
LOADS_COUNT, PIECES_COUNT, MOST_FIXED = 24, 4000, 60
WIDER_N = 1.5
OFF_SPOT_K = {Road.HAND: 0.7, Road.LOGGER: 0.2}


@dataclass(frozen=True, kw_only=True)
class World:
    """One invented kitchen: what is believed of its program, and what nobody sees."""

    prior: Prior
    margins_k: Array  # class, load: the heaviest piece, before pieces differ by more than size
    piece_sd_k: float
    wide: bool
    bias_k: float
    guard_k: float
    good: bool


def kitchen_of(rng: np.random.Generator) -> tuple[Kitchen, Program]:
    """A kitchen of its own altitude, birds and walk-in, and a program of its own length."""
    base = demo_kitchen()
    site = replace(base.site, altitude_m=float(rng.uniform(0.0, 2200.0)))
    products = tuple(
        replace(
            product,
            unit_mass_kg=base.unit_kg(product.key) * float(rng.uniform(0.9, 1.12)),
            start_temp_c=float(rng.uniform(1.0, 5.0)),
        )
        for product in base.products
    )
    program, longer = base.program(str(rng.choice(PROGRAMS))), float(rng.uniform(0.85, 1.3))

    def stretched(value: float | None) -> float | None:
        return None if value is None else value * longer

    stages = tuple(
        replace(s, duration_s=stretched(s.duration_s), until_elapsed_s=stretched(s.until_elapsed_s))
        for s in program.stages
    )
    program = replace(program, stages=stages)
    return replace(base, site=site, products=products, programs=(program,)), program


def true_plan(plan: FryPlan, rng: np.random.Generator, wide: bool) -> FryPlan:
    """The plan with the cuts as they really are: size and shape of each a draw."""
    sizes, shapes = {}, {}
    for key in dict.fromkeys(kind.cut.key for kind in plan.kinds):
        sizes[key] = float(np.exp(SIZE_SD * (rng.standard_t(3) if wide else rng.standard_normal())))
        shapes[key] = float(rng.normal(0.0, 0.1 * (WIDER_N if wide else 1.0)))
    kinds = []
    for kind in plan.kinds:
        cut, size = kind.cut, sizes[kind.cut.key]
        half = float(np.clip(cut.half_thickness_m * size, 0.004, 0.044))
        shape = float(np.clip(cut.shape_n + shapes[cut.key], 0.0, 2.0))
        bone = cut.bone_radius_m * min(size, 1.0)
        kinds.append(
            replace(kind, cut=replace(cut, half_thickness_m=half, shape_n=shape, bone_radius_m=bone))
        )
    return replace(plan, kinds=tuple(kinds))


def true_rows(plan: FryPlan, rng: np.random.Generator, wide: bool) -> Iterator[Array]:
    """Conditions of LOADS_COUNT loads of each kind, in a kitchen whose thermostat, surface, heater and
    walk-in are what they are.
    """
    more = WIDER_N if wide else 1.0
    always = {name: rng.normal(0.0, sd * more) for name, (_, sd) in STEPS.items()}
    for row in load_rows(plan).values():
        for _ in range(LOADS_COUNT):
            one = row.copy()
            for name, off in always.items():
                one[FACTORS.index(name)] += off
            one[FACTORS.index("start_temp_k")] += rng.normal(0.0, more)
            one[FACTORS.index(OIL)] -= rng.exponential(3.0 * more)
            one[FACTORS.index("late_lid_s")] = rng.uniform(0.0, 30.0)
            for name in ("surface_frac", "heater_frac"):
                one[FACTORS.index(name)] = np.clip(one[FACTORS.index(name)], 0.5, 1.6)
            yield one


def heaviest(plan: FryPlan, row: Array, rng: np.random.Generator) -> Array:
    """Weights of the heaviest piece of each cut among those of a load, as multiples of the mean."""
    counts = {part.cut: part.count for part in plan.cut_set.parts}
    found = []
    for kind in (k for k in plan.kinds if k.heavy):
        many = max(1, round(counts[kind.cut.key] * plan.units_count * row[FACTORS.index("load_frac")]))
        most = rng.standard_normal(many).max()
        found.append(np.exp(np.log(kind.cut.heavy_ratio_n) / HEAVY_QUANTILE_Z * most))
    return np.array(found)


def piece_off_k(rng: np.random.Generator, sd: float, wide: bool, count: int) -> Array:
    """By how much pieces differ otherwise than by size: normal, or with a long cold tail; mean 0."""
    if wide:
        return np.asarray(sd * (4.0 - rng.gamma(4.0, size=count)) / 2.0)
    return np.asarray(sd * rng.standard_normal(count))


def world(seed: int, wide: bool) -> World | None:
    """A kitchen with its truth; None where its program is predicted short, so that nobody probes it."""
    rng = np.random.default_rng(seed)
    kitchen, program = kitchen_of(rng)
    prior = prior_of(kitchen, program, precision=ROUTINE)
    if prior is None or prior.mean_k.min() < 0.0:
        return None
    plan = replace(make_plan(kitchen, as_keyed(kitchen, program)), rest_s=1.0)
    truth = true_plan(plan, rng, wide)
    drawn = [(row, heaviest(plan, row, rng)) for row in true_rows(plan, rng, wide)]
    rows, weights = (np.array(found) for found in zip(*drawn, strict=True))
    cores = cores_at_lift_c(truth, rows, weights, ROUTINE)
    cores = cores.reshape(-1, LOADS_COUNT, cores.shape[1])  # kind of load, load, cut
    cores += np.expand_dims(load_off_k(rng, cores.shape[:2], wide), 2)
    place = -np.abs(rng.normal(0.0, 2.0, len(PLACES))) if wide else rng.normal(0.0, PLACE_SD_K, len(PLACES))
    level_c = hand_limit_c(kitchen, kitchen.product(program.product)) or 0.0
    at = [_indices(prior.classes, one) for one in prior.classes]
    own = rng.normal(0.0, CLASS_SD_K * (WIDER_N if wide else 1.0), len(at))
    margins = np.array([cores[i, :, j] + place[p] + off for (i, j, p), off in zip(at, own, strict=True)])
    sd = float(rng.uniform(0.5, 3.0) if wide else np.exp(rng.normal(0.1, 0.3)))
    pieces = piece_off_k(rng, sd, wide, PIECES_COUNT)
    covers = min(float(np.mean(row[:, None] + pieces >= level_c)) for row in margins)
    guard = kitchen.site.thermometer_error_k
    return World(
        prior=prior,
        margins_k=margins - level_c,
        piece_sd_k=sd,
        wide=wide,
        bias_k=float(rng.uniform(-guard, guard)),
        guard_k=guard,
        good=covers >= COVERAGE,
    )


def load_off_k(rng: np.random.Generator, shape: tuple[int, ...], wide: bool) -> Array:
    """By how much loads differ otherwise than by oil and meat at the drop [K]."""
    if wide:
        return np.asarray(float(rng.uniform(0.3, 2.0)) * rng.standard_t(4, shape))
    return np.asarray(float(np.exp(rng.normal(0.0, 0.4))) * rng.standard_normal(shape))


def _indices(known: Sequence[PieceClass], one: PieceClass) -> tuple[int, int, int]:
    loads, cuts = list(dict.fromkeys(c.load for c in known)), list(dict.fromkeys(c.cut for c in known))
    return loads.index(one.load), cuts.index(one.cut), PLACES.index(one.place)


def worlds(count: int, wide: bool, first: int = 0) -> list[World]:
    """Kitchens whose program is predicted over its limit."""
    with ThreadPoolExecutor(2) as pool:
        found = pool.map(lambda seed: world(seed, wide), range(first, first + count))
        return [one for one in found if one is not None]


def readings(one: World, rng: np.random.Generator, picks: Sequence[int], load: int, road: Road) -> list[Seen]:
    """What a thermometer shows of pieces of one load, as margins with its error taken off."""
    which = int(rng.integers(one.margins_k.shape[1]))
    off = piece_off_k(rng, one.piece_sd_k, one.wide, len(picks))
    off += np.abs(rng.normal(0.0, OFF_SPOT_K[road], len(picks)))
    read = one.margins_k[list(picks), which] + off + one.bias_k - one.guard_k
    return [Seen(number=i, load=load, margin_k=float(y)) for i, y in zip(picks, read, strict=True)]


def by_plan(one: World, seed: int, road: Road) -> tuple[Decision, int]:
    """Follow the plan to its decision."""
    rng, seen, load = np.random.default_rng(seed), list[Seen](), 0
    now = standing(one.prior, seen)
    while now.decision is Decision.OPEN:
        load += 1
        seen += readings(one, rng, next_load(now), load, road)
        now = standing(one.prior, seen)
    return now.decision, len(seen)


def balanced(prior: Prior, load: int) -> list[int]:
    """Pieces of a load of the fixed plan: cuts, places and kinds of load in turn."""
    number = {(c.cut, c.place, c.load): i for i, c in enumerate(prior.classes)}
    cuts, kinds = (list(dict.fromkeys(getattr(c, f) for c in prior.classes)) for f in ("cut", "load"))
    return [
        number[cuts[(MOST_IN_LOAD * load + m) % len(cuts)], PLACES[(load + m) % 3], kinds[load % len(kinds)]]
        for m in range(MOST_IN_LOAD)
    ]


def fixed(one: World, seed: int, road: Road) -> list[tuple[int, bool, bool, bool]]:
    """Along a fixed plan, after each load: readings, whether one was below, and whether a plan of that many
    would say *meets*, by the exact tolerance bound of every cut alone and by the same belief as the plan.
    """
    rng, seen, found = np.random.default_rng(seed), list[Seen](), []
    for load in range(MOST_FIXED // MOST_IN_LOAD):
        seen += readings(one, rng, balanced(one.prior, load), load, road)
        below = any(s.margin_k < 0.0 for s in seen)
        belief = not below and standing(one.prior, seen).decision is Decision.MEETS
        found.append((len(seen), below, not below and tolerated(one.prior, seen), belief))
    return found


def tolerated(prior: Prior, seen: Sequence[Seen]) -> bool:
    """Whether the one-sided 95/95 tolerance bound of every cut is over the limit (noncentral t)."""
    for cut in dict.fromkeys(c.cut for c in prior.classes):
        read = np.array([s.margin_k for s in seen if prior.classes[s.number].cut == cut])
        if len(read) < 2 or read.mean() < tolerance_factor(len(read)) * read.std(ddof=1):
            return False
    return True


@dataclass(frozen=True, kw_only=True)
class Tally:
    """How a plan did: share of good programs shown, false *meets* among bad ones, mean readings."""

    name: str
    shown_frac: float
    false_count: int
    bad_count: int
    readings_n: float

    @property
    def at_most_frac(self) -> float:
        """Upper bound of the share of bad programs said to meet (Clopper-Pearson, 95 %)."""
        from scipy.stats import beta

        k, n = self.false_count, self.bad_count
        return float(beta.ppf(0.95, k + 1, n - k)) if n > k else 1.0

    @property
    def p_value(self) -> float:
        """Chance of so few false *meets* if each bad program had RISK of one: one-sided exact test."""
        from scipy.stats import binom

        return float(binom.cdf(self.false_count, self.bad_count, RISK))

    def line(self) -> str:
        """One line for people."""
        return (
            f"{self.name}: {self.shown_frac:.1%} of good programs shown, {self.false_count} false of"
            f" {self.bad_count} bad (at most {self.at_most_frac:.1%}; exact test against {RISK:.0%}:"
            f" p {self.p_value:.3g}), {self.readings_n:.1f} readings\n"
        )


@dataclass(frozen=True, kw_only=True)
class Followed:
    """What came of one kitchen: the truth, the plan's result (said to meet, readings), the fixed plans'."""

    good: bool
    plan: tuple[bool, int]
    fixed: list[tuple[int, bool, bool, bool]]


def follow(found: Sequence[World], road: Road) -> list[Followed]:
    """Follow the plan and the fixed plans in every kitchen."""
    told = []
    for seed, one in enumerate(found):
        if road is not Road.HAND:
            one = replace(one, prior=replace(one.prior, sigma_k=sharper(one.prior, road)))
        decision, count = by_plan(one, seed, road)
        path = fixed(one, 10_000 + seed, road)
        told.append(Followed(good=one.good, plan=(decision is Decision.MEETS, count), fixed=path))
    return told


def sharper(prior: Prior, road: Road) -> float:
    """Spread of pieces within a load as another road reads them [K]."""
    return float(np.sqrt(prior.sigma_k**2 - READ_SD_K[Road.HAND] ** 2 + READ_SD_K[road] ** 2))


def tally(name: str, told: Sequence[Followed], results: Sequence[tuple[bool, int]]) -> Tally:
    """Count results (said to meet, readings) against the truth."""
    good = np.array([one.good for one in told])
    meets = np.array([r[0] for r in results])
    return Tally(
        name=name,
        shown_frac=float(np.mean(meets[good])),
        false_count=int(np.sum(meets & ~good)),
        bad_count=int(np.sum(~good)),
        readings_n=float(np.mean([r[1] for r in results])),
    )


def compared(told: Sequence[Followed], road: Road) -> tuple[Tally, Tally | None, Tally | None]:
    """The plan, and the smallest fixed plans that show as many good programs: by tolerance bounds, by belief.
    A fixed plan too stops at a reading below.
    """
    plan = tally(f"plan, {road}", told, [one.plan for one in told])
    best: list[Tally | None] = [None, None]
    for number, name, column in ((0, "tolerance bound of each cut", 2), (1, "same belief", 3)):
        for step, row in enumerate(told[0].fixed):
            paths = [one.fixed for one in told]
            stops = [next((r[0] for r in p[: step + 1] if r[1]), p[step][0]) for p in paths]
            results = [(bool(p[step][column]), stop) for p, stop in zip(paths, stops, strict=True)]
            other = tally(f"fixed {row[0]}, {name}, {road}", told, results)
            if other.shown_frac >= plan.shown_frac:
                best[number] = other
                break
    return plan, best[0], best[1]


def demo_counts() -> Iterator[str]:
    """Readings that each road is expected to take for the demo's programs."""
    kitchen = demo_kitchen()
    for name in sorted({p.name for p in kitchen.programs}):
        counts = []
        for road in Road:
            prior = prior_of(kitchen, kitchen.program(name), road)
            if prior is None:
                continue
            path, chance = expected_path(prior, ()), standing(prior, ()).belief.chance_frac
            read = Counter(prior.classes[i].cut for picks in path for i in picks)
            each = ", ".join(f"{n} {cut}" for cut, n in sorted(read.items()))
            counts.append(f"{road} {sum(read.values())} in {len(path)} loads ({each}; chance {chance:.0%})")
        yield f"{name}: {'; '.join(counts)}\n"


def main() -> None:
    """Print every figure."""
    count = int(sys.argv[1]) if len(sys.argv) > 1 else 350
    sys.stdout.writelines(demo_counts())
    sys.stdout.write(f"asked of the belief: {ENOUGH:.0%}; stated risk: {RISK:.0%}\n")
    groups = {
        "as believed": worlds(count, wide=False, first=200_000),
        "wider": worlds(count, wide=True, first=300_000),
    }
    for road in Road:
        told = {name: follow(found, road) for name, found in groups.items()}
        every = [one for group in told.values() for one in group]
        for name, part in {**told, "all": every}.items():
            sys.stdout.write(f"{name}: {len(part)} kitchens, {sum(one.good for one in part)} good\n")
            report(part, road)


def report(told: Sequence[Followed], road: Road) -> None:
    """Print the plan beside the fixed plans."""
    plan, *others = compared(told, road)
    sys.stdout.write(plan.line())
    for other in others:
        if other is None:
            sys.stdout.write(f"no fixed plan of up to {MOST_FIXED} shows as many\n")
            continue
        less = 1.0 - plan.readings_n / other.readings_n
        sys.stdout.write(f"{other.line().rstrip()}; the plan takes {less:.0%} fewer\n")
    sys.stdout.flush()


if __name__ == "__main__":
    main()
