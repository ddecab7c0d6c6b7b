"""Many sites: proofs swept over all of them, who runs which version, and what survives their size compared
with control limits.
"""

from __future__ import annotations

import datetime as dt
import os
from collections.abc import Callable, Generator, Sequence
from concurrent.futures import ThreadPoolExecutor
from contextlib import closing
from dataclasses import dataclass, replace
from pathlib import Path
from statistics import median

from frywright.catalog.kitchen import parse_kitchen
from frywright.ledger.facts.care import PlateTyped
from frywright.ledger.facts.day import BoardTap, standing
from frywright.ledger.facts.oil import OilDone
from frywright.ledger.facts.probing import Reading
from frywright.ledger.store import Store
from frywright.model.errors import FrywrightError, InputError
from frywright.model.kitchen import Kitchen
from frywright.rooms.care.oil_money import SiteBill, site_rows
from frywright.rooms.fleet.swept import SiteProof, mark, opened
from frywright.rooms.standing import held_status
from frywright.trial.proof import ProofAnswer, proof_view, prove_program

Proved = Generator[list[SiteProof], None, None]
SWEEP_SAMPLES = 128
LEAST_SITES, LEAST_READINGS = 5, 30
"""Sites from which limits are drawn, and readings from which a share is compared (project's own rules)."""
LIMIT_SIGMA, ROBUST = 3.0, 1.4826
"""Control limits: three standard deviations about the middle, the deviation from the median of absolute
deviations (normal consistency).
"""
RATIOS = {
    "below_frac": "probe readings below the limit",
    "lift_core_c": "mean core of probe readings",
    "oil_by_hundred_n": "oil by 100 of raw product",
    "filters_by_ten_n": "filter turns by ten loads",
    "waste_frac": "pieces thrown away by pieces dropped",
}


@dataclass(frozen=True, slots=True, kw_only=True)
class Site:
    """One site of a sweep: its name and its kitchen file's text."""

    name: str
    text: str


def prove_site(name: str, text: str, samples: int = SWEEP_SAMPLES, few: bool = False) -> list[SiteProof]:
    """Proof of every program of one site; what cannot be proved says why. Another machine can send them
    back.
    """
    try:
        kitchen = parse_kitchen(text, f"{name}.toml")
    except FrywrightError as error:
        return [SiteProof(site=name, problem=str(error))]
    rows = []
    for program in (kitchen.program(n) for n in sorted({p.name for p in kitchen.programs})):
        row = SiteProof(
            site=name,
            program=program.name,
            version=program.version,
            fryer=program.fryer,
            altitude_m=round(kitchen.site.altitude_m),
        )
        try:
            rows.append(_proved(row, prove_program(kitchen, program, samples=samples, few=few)))
        except FrywrightError as error:
            rows.append(replace(row, problem=str(error)))
    return rows


def _proved(row: SiteProof, told: ProofAnswer) -> SiteProof:
    """A row with its proof; without a rule, with the sentence that says so."""
    if not told.ruled:
        return replace(row, outcome=str(told.outcome), problem=proof_view(told).sentence)
    proof = told.proof
    worst = min(proof.cuts, key=lambda cut: cut.worst_margin_k)
    return replace(
        row,
        outcome=str(told.outcome),
        meets_frac=proof.meets_frac,
        failed_count=proof.failed_count,
        samples_count=proof.samples_count,
        fitted_count=proof.fitted_count,
        bound_frac=proof.bound_frac,
        confidence_frac=proof.confidence_frac,
        worst_cut=worst.cut,
        worst_margin_k=round(worst.worst_margin_k, 2),
        breaks_first=proof.breaks_first,
    )


def sweep(
    sites: Sequence[Site],
    *,
    samples: int = SWEEP_SAMPLES,
    few: bool = False,
    address: str = "",
    progress: Callable[[float], None] = lambda share: None,
    keep: Path | None = None,
) -> list[SiteProof]:
    """Proofs of all programs of all sites, in this process or on a Dask cluster by its address; the same rows
    in the same order. Sites that the file ``keep`` holds are not proved again. With ``few`` loads far above
    the limit are counted by a fit (:mod:`frywright.design.fewer`): a look, no certificate.
    Raises InputError: two sites of one name, a file that no sweep wrote, or a cluster that does not answer.
    """
    names = [s.name for s in sites]
    if len(set(names)) != len(names):
        raise InputError("sites", "a name twice", "named once each")
    marks, kept = [mark(s.name, s.text, samples, few) for s in sites], opened(keep)
    left = [site for site, of in zip(sites, marks, strict=True) if of not in kept.rows]
    rows = list[SiteProof]()
    with closing(
        _on_cluster(left, samples, few, address) if address else _here(left, samples, few)
    ) as proved:
        for n, of in enumerate(marks, 1):
            if of in kept.rows:
                rows += kept.rows[of]
            else:
                found = next(proved)
                kept.add(of, found)
                rows += found
            progress(n / len(sites))
    return rows


def _here(sites: Sequence[Site], samples: int, few: bool) -> Proved:
    """As many sites at a time as there are cores: one is read and packed while another is marched."""
    pool = ThreadPoolExecutor(os.cpu_count())
    try:
        yield from pool.map(lambda site: prove_site(site.name, site.text, samples, few), sites)
    finally:
        pool.shutdown(cancel_futures=True)


def _on_cluster(sites: Sequence[Site], samples: int, few: bool, address: str) -> Proved:
    try:
        from distributed import Client
    except ModuleNotFoundError as error:
        raise InputError(
            "--cluster", address, "used with the extra: pip install 'frywright[fleet]'"
        ) from error
    try:
        client = Client(address, timeout="10s", set_as_default=False)
    except OSError as error:
        raise InputError("--cluster", address, "the address of a Dask scheduler that answers") from error
    with client:
        names, texts = [s.name for s in sites], [s.text for s in sites]
        same = [samples] * len(sites), [few] * len(sites)
        for future in client.map(prove_site, names, texts, *same, pure=False, batch_size=16):
            yield future.result()


@dataclass(frozen=True, slots=True, kw_only=True)
class VersionHeld:
    """Which version of a program a site is known to hold."""

    site: str
    place: str
    program: str
    newest: str
    held: str
    state: str
    read_at: str


def versions(shops: Sequence[tuple[str, Store, Kitchen]]) -> list[VersionHeld]:
    """Which version of which program each site is known to hold, by its newest read-back; what nobody read
    back is unknown.
    """
    rows = []
    for name, store, kitchen in shops:
        for row in held_status(store, kitchen):
            known = {"current": row.version, "old version": row.read_version}
            held = VersionHeld(
                site=name,
                place=kitchen.site.name,
                program=row.name,
                newest=row.version,
                held=known.get(row.state, "unknown" if row.state == "unknown" else "differs"),
                state=row.state,
                read_at=row.read_at,
            )
            rows.append(held)
    return rows


def group_of(store: Store, kitchen: Kitchen) -> str:
    """Group of a site: its fuels, its altitude by 500 m and the volts of its fryers' plates, where plates are
    kept.

    Programs travel within a group as they are, between groups by a transfer.
    """
    fuels = "+".join(sorted({f.fuel for f in kitchen.fryers}))
    low = int(kitchen.site.altitude_m // 500 * 500)
    volts = sorted({round(e.fact.volts_n) for e in store.current_facts(PlateTyped) if e.fact.volts_n})
    return f"{fuels}, {low} to {low + 500} m" + (f", {'/'.join(map(str, volts))} V" if volts else "")


def ratios_of(
    store: Store, kitchen: Kitchen, today: dt.date, days: int = 28
) -> dict[str, tuple[float | None, int]]:
    """What survives a site's size, each with how much stands behind it; None where nothing does."""
    until = dt.datetime.combine(today + dt.timedelta(days=1), dt.time(12), tzinfo=dt.UTC)
    since = until - dt.timedelta(days=days)
    readings = [e.fact for e in store.facts_between(since, until, Reading)]
    taps = [e.fact for e in standing(store.facts_between(since, until, BoardTap))]
    drops = [tap for tap in taps if tap.what == "drop"]
    thrown = sum(tap.pieces_count for tap in taps if tap.what == "discard")
    filters = sum(tap.what == "filter" for tap in taps) or sum(
        e.fact.what == "filter" for e in store.facts_between(since, until, OilDone)
    )
    (oil,) = site_rows([("x", store, kitchen)], today)
    count, pieces = len(readings), sum(tap.pieces_count for tap in drops)
    return {
        "below_frac": (sum(r.below for r in readings) / count if count else None, count),
        "lift_core_c": (sum(r.core_c for r in readings) / count if count else None, count),
        "oil_by_hundred_n": (oil.per_hundred_n if isinstance(oil, SiteBill) else None, len(drops)),
        "filters_by_ten_n": (10.0 * filters / len(drops) if drops else None, len(drops)),
        "waste_frac": (thrown / pieces if pieces else None, len(drops)),
    }


@dataclass(frozen=True, slots=True, kw_only=True)
class RatioRow:
    """One ratio of one site against the limits of all; None where nothing is known or too few sites are."""

    site: str
    group: str
    ratio: str
    title: str
    value: float | None
    count: int
    low: float | None
    high: float | None
    state: str  # unknown, too few, no limits, within or outside


def compare(shops: Sequence[tuple[str, Store, Kitchen]], today: dt.date) -> list[RatioRow]:
    """Every ratio of every site against robust control limits of all; a site with too little behind it is
    told as such and draws no limits.
    """
    told = {name: ratios_of(store, kitchen, today) for name, store, kitchen in shops}
    groups = {name: group_of(store, kitchen) for name, store, kitchen in shops}
    rows = []
    for ratio, title in RATIOS.items():
        values = [found[ratio] for found in told.values()]
        known = [value for value, count in values if value is not None and count >= LEAST_READINGS]
        low, high = _limits(known) or (None, None)
        for name, found in told.items():
            value, count = found[ratio]
            row = RatioRow(
                site=name,
                group=groups[name],
                ratio=ratio,
                title=title,
                value=value,
                count=count,
                low=low,
                high=high,
                state=_state(value, count, low, high),
            )
            rows.append(row)
    return rows


def _state(value: float | None, count: int, low: float | None, high: float | None) -> str:
    if value is None:
        return "unknown"
    if count < LEAST_READINGS:
        return "too few"
    if low is None or high is None:
        return "no limits"
    return "within" if low <= value <= high else "outside"


def _limits(values: Sequence[float]) -> tuple[float, float] | None:
    if len(values) < LEAST_SITES:
        return None
    middle = median(values)
    spread = ROBUST * median(abs(v - middle) for v in values)
    return middle - LIMIT_SIGMA * spread, middle + LIMIT_SIGMA * spread
