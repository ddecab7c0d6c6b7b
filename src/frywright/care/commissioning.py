"""Is a site ready for a fryer? The nameplate against what was measured; three words for each point, and the
arithmetic beside it.

It prepares the talk with the licensed electrician, gas fitter, hood and suppression contractors; it replaces
none of them. The maker's plate and manual and local codes win.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import sqrt

from frywright.model.errors import InputError, Phrase
from frywright.model.findings import Note, Outcome
from frywright.model.units import INCH

VOLTS_LOW_FRAC, VOLTS_HIGH_FRAC = 0.95, 1.05
"""Measured volts within 5 % of the plate (ANSI C84.1 range A, from memory) unless the maker's plate allows
more.
"""
MOST_VOLTS = 1000.0
"""More is no low voltage (IEC 60038, from memory), and no fryer's."""
CONTINUOUS_FRAC = 1.25
"""A breaker carries a continuous load at 125 % (US electrical code 210.20, from memory)."""
DERATE_FRAC_KM, DERATE_FROM_M = 0.04 / 0.3048, 610.0
"""Gas input falls 4 % for each 1000 ft above 2000 ft (US fuel gas code, from memory); a licensed fitter
changes orifices.
"""
FLAME_M, BAFFLED_M = 16 * INCH, 8 * INCH
"""16 in from an open flame, or an 8 in baffle (US fire code text, local rule wins)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Plate:
    """What the nameplate says."""

    fuel: str
    power_w: float
    volts_n: float = 0.0
    phases_count: int = 0
    gas: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class SiteFacts:
    """What was measured or seen; None where nobody looked."""

    volts_n: float | None = None
    phases_count: int | None = None
    breaker_amps_n: float | None = None
    gas: str | None = None
    gas_static_pa: float | None = None
    gas_flowing_pa: float | None = None
    gas_plate_pa: tuple[float, float] | None = None
    altitude_m: float = 0.0
    hood_runs: bool | None = None
    suppression_covers: bool | None = None
    flame_distance_m: float | None = None
    baffle: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Point:
    """One point of the survey; *fails* is a no-go, *unknown* must be looked at before the fryer is sent."""

    name: str
    outcome: Outcome
    note: Note


def amps(power_w: float, volts: float, phases: int) -> float:
    """Current of a resistive load: P / V, three phases P / (V sqrt 3)."""
    if not power_w > 0 or not volts > 0 or phases not in (1, 3):
        raise InputError(
            "supply",
            Phrase(
                "{watts} W, {volts} V, {phases} phases",
                {"watts": f"{power_w:g}", "volts": f"{volts:g}", "phases": phases},
            ),
            "above 0, with 1 or 3 phases",
        )
    return power_w / volts / (sqrt(3.0) if phases == 3 else 1.0)


def power_share(plate_volts: float, volts: float) -> float:
    """Share of its rated power a heater gives at another voltage: (V / V plate) squared."""
    if not plate_volts > 0 or not volts > 0:
        raise InputError(
            "volts", Phrase("{low} and {high}", {"low": f"{plate_volts:g}", "high": f"{volts:g}"}), "above 0"
        )
    return (volts / plate_volts) ** 2


def altitude_share(altitude_m: float) -> float:
    """Share of its rated input a gas burner may give at an altitude before it is changed by a licensed
    fitter.
    """
    return max(0.0, 1.0 - DERATE_FRAC_KM * max(0.0, altitude_m - DERATE_FROM_M) / 1000.0)


def survey(plate: Plate, site: SiteFacts) -> list[Point]:
    """Every point of a site against the plate. Raises InputError: a fuel that is neither electric nor gas, or
    a plate without its figures.
    """
    if plate.fuel not in ("electric", "gas"):
        raise InputError("fuel", repr(plate.fuel), "electric or gas, as the plate says")
    if not plate.power_w > 0:
        raise InputError("input", "missing", "the power printed on the plate")
    points = _electric(plate, site) if plate.fuel == "electric" else _gas(plate, site)
    yes = (
        ("hood", site.hood_runs, "The hood runs and draws over this place."),
        (
            "suppression",
            site.suppression_covers,
            "A certified contractor says that the suppression covers this appliance.",
        ),
    )
    for name, told, text in yes:
        outcome = Outcome.UNKNOWN if told is None else (Outcome.MEETS if told else Outcome.FAILS)
        points.append(Point(name=name, outcome=outcome, note=Note(kind=name, text=text)))
    least = BAFFLED_M if site.baffle else FLAME_M
    far = site.flame_distance_m
    outcome = Outcome.UNKNOWN if far is None else (Outcome.MEETS if far >= least else Outcome.FAILS)
    points.append(
        Point(
            name="clearance",
            outcome=outcome,
            note=Note(
                kind="clearance",
                text="{least_m} from an open flame, less only with a baffle; the local rule wins.",
                values={"least_m": least},
            ),
        )
    )
    return points


def _voltage(plate: Plate, site: SiteFacts) -> Point:
    """Measured volts against the plate's."""
    if site.volts_n is None:
        return Point(
            name="voltage",
            outcome=Outcome.UNKNOWN,
            note=Note(kind="voltage", text="Volts between every pair of legs were not measured."),
        )
    share = power_share(plate.volts_n, site.volts_n)
    inside = VOLTS_LOW_FRAC <= site.volts_n / plate.volts_n <= VOLTS_HIGH_FRAC
    text = (
        "{volts} V measured, {plate} V on the plate: {share_frac} of rated power, heat-up takes {longer}"
        " times as long."
        if inside
        else (
            "{volts} V measured, {plate} V on the plate: {share_frac} of rated power, heat-up takes"
            " {longer} times as long; no-go unless the maker's plate allows it."
        )
    )
    values = {
        "volts": site.volts_n,
        "plate": plate.volts_n,
        "share_frac": share,
        "longer": round(1.0 / share, 2),
    }
    return Point(
        name="voltage",
        outcome=Outcome.MEETS if inside else Outcome.FAILS,
        note=Note(kind="voltage", text=text, values=values),
    )


def _electric(plate: Plate, site: SiteFacts) -> list[Point]:
    if not 0 < plate.volts_n <= MOST_VOLTS or plate.phases_count not in (1, 3):
        raise InputError(
            "plate",
            f"{plate.volts_n:g} V, {plate.phases_count}",
            "volts up to {most} and 1 or 3 phases as printed",
            most=f"{MOST_VOLTS:g}",
        )
    draws = amps(plate.power_w, plate.volts_n, plate.phases_count)
    found = [_voltage(plate, site)]
    same = None if site.phases_count is None else site.phases_count == plate.phases_count
    found.append(
        Point(
            name="phase",
            outcome=_word(same),
            note=Note(
                kind="phase",
                text="{phases} phases on the plate.",
                values={"phases": float(plate.phases_count)},
            ),
        )
    )
    enough = None if site.breaker_amps_n is None else site.breaker_amps_n >= CONTINUOUS_FRAC * draws
    found.append(
        Point(
            name="breaker",
            outcome=_word(enough),
            note=Note(
                kind="breaker",
                text=(
                    "The fryer draws {amps} A; a breaker of at least {least} A, a licensed electrician"
                    " confirms."
                ),
                values={"amps": round(draws, 1), "least": round(CONTINUOUS_FRAC * draws, 1)},
            ),
        )
    )
    return found


def _gas(plate: Plate, site: SiteFacts) -> list[Point]:
    same = None if site.gas is None else site.gas == plate.gas
    found = [
        Point(
            name="gas type",
            outcome=_word(same),
            note=Note(
                kind="gas",
                text="The plate says {gas}; a conversion is a licensed fitter's work.",
                values={"gas": plate.gas or "nothing"},
            ),
        )
    ]
    inside = None
    if site.gas_plate_pa is not None and site.gas_static_pa is not None and site.gas_flowing_pa is not None:
        low, high = site.gas_plate_pa
        inside = low <= site.gas_flowing_pa and site.gas_static_pa <= high
    found.append(
        Point(
            name="gas pressure",
            outcome=_word(inside),
            note=Note(
                kind="pressure",
                text=(
                    "Static and flowing, with everything else running, within the plate's range; leak test by"
                    " a licensed fitter, never by flame."
                ),
            ),
        )
    )
    share = altitude_share(site.altitude_m)
    outcome = Outcome.MEETS if share >= 1.0 else Outcome.UNKNOWN
    found.append(
        Point(
            name="altitude",
            outcome=outcome,
            note=Note(
                kind="altitude",
                text="At this altitude {share_frac} of the rated input; a licensed fitter sets the orifices.",
                values={"share_frac": share},
            ),
        )
    )
    return found


def _word(told: bool | None) -> Outcome:
    return Outcome.UNKNOWN if told is None else (Outcome.MEETS if told else Outcome.FAILS)


def go(points: list[Point]) -> Outcome:
    """The whole survey: fails where any point fails, unknown where any is unknown."""
    words = [point.outcome for point in points]
    if Outcome.FAILS in words:
        return Outcome.FAILS
    return Outcome.UNKNOWN if Outcome.UNKNOWN in words else Outcome.MEETS
