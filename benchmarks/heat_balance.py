"""Why a load dips the oil as little, or as much, as it does: a heat balance by hand beside the engine.

Run ``python -m benchmarks.heat_balance``; docs/theory/engine.md tells what follows from it.
"""

from __future__ import annotations

import numpy as np
from tests.reference.lines import solve
from tests.reference.rows.loads import FULL_HEADS, Load, load, most_heat_j_m2, slab_heat_j_m2

from frywright.physics.inputs import Span
from frywright.physics.plan import piece_class, vat
from frywright.physics.solve import Cook

FULL_KW = 11.8  # 1.95 kW a kilogram of chicken
SHARES = (1.0, 0.5, 0.35, 0.05)  # all of it; a good gas fryer; a conventional one; nearly nothing


def by_hand_dip_k(full: Load, heater_w: float, scale: float = 1.0) -> tuple[float, float]:
    """Largest dip of an oil whose heater runs from the drop on, and when; heat taken as the engine says, or
    scaled.
    """
    times = np.arange(5.0, 840.0, 5.0)
    debt = [scale * full.heat_j(t) - heater_w * t for t in times]
    worst = int(np.argmax(debt))
    return max(debt[worst], 0.0) / full.capacity_j_k, float(times[worst])


def fluxes(full: Load) -> None:
    print("First minute, heat a square metre takes up [MJ/m2]; 60 s mean flux [kW/m2]")
    rows = [
        ("bound: face at boiling at once, coat boiled dry", most_heat_j_m2(60.0, full.plan)),
        ("breast slab, oil 170 degC (Kassama & Ngadi 2017)", slab_heat_j_m2(0.65)),
        ("breast slab, oil 190 degC (the same)", slab_heat_j_m2(0.50)),
        ("engine, dredged eight pieces, oil 165 degC", full.heat_j(60.0) / full.area_m2),
    ]
    for name, heat in rows:
        print(f"  {name:52s} {1e-6 * heat:5.2f} {1e-3 * heat / 60.0:5.1f}")
    print("  largest flux published, potato 180 degC (Hubbard & Farkas 1999): 88 kW/m2 for a moment")


def reference(full: Load) -> None:
    """The same load by the independent lines, first two minutes."""
    plan = full.plan
    pieces = [piece_class(plan, plan.kinds[i]) for i in full.lanes]
    room = vat(plan)
    cook = Cook(vat=replace_band(room), pieces=pieces, spans=[Span(duration_s=120.0, set_c=165.0)])
    got = solve(cook, 48, 10)
    taken = got["heat_in_j_m2"] @ np.array([p.area_m2 for p in pieces])
    for t in (60.0, 120.0):
        print(
            f"  lines: {np.interp(t, got['time_s'], taken) / 1e6:.3f} MJ at {t:.0f} s, engine"
            f" {full.heat_j(t) / 1e6:.3f}"
        )


def replace_band(room):  # type: ignore[no-untyped-def]
    from dataclasses import replace

    return replace(room, band_k=max(room.band_k, 4.0))


def dips(full: Load) -> None:
    print(
        f"\nFull load, {full.plan.load_kg:.2f} kg in {full.plan.fryer.oil_mass_kg:.0f} kg of oil; dip below"
        " 165 degC"
    )
    print("heat into the oil | by hand, engine's demand | by hand, 1.5 times that | engine: lowest oil, at")
    for share in SHARES:
        kw = share * FULL_KW
        one, more, got = (
            by_hand_dip_k(full, 1e3 * kw),
            by_hand_dip_k(full, 1e3 * kw, 1.5),
            load(FULL_HEADS, kw).history,
        )
        print(
            f"{kw:5.1f} kW ({share:4.0%}) | {one[0]:5.1f} K at {one[1]:3.0f} s | {more[0]:5.1f} K at"
            f" {more[1]:3.0f} s | {got.lowest_oil_c:5.1f} degC at {got.lowest_oil_at_s:3.0f} s"
        )


def loads() -> None:
    print("\nheat into the oil, heads | lowest oil | heavy breast at 12 min, heavy drum | crust of breast")
    for share in SHARES:
        for heads in (1, 2, 3, 5, 6):
            got = load(heads, share * FULL_KW)
            breast = next(
                p for p in got.history.pieces if p.kind.cut.key == "breast_half" and not p.kind.heavy
            )
            print(
                f"{share * FULL_KW:5.1f} kW {heads} | {got.history.lowest_oil_c:5.1f} |"
                f" {got.core_c('breast_half', 720.0):5.2f} {got.core_c('drum', 720.0):5.2f} |"
                f" {1e3 * breast.crust_at_lift_m:4.2f} mm"
            )


def main() -> None:
    full = load(FULL_HEADS, FULL_KW)
    print(
        f"area {full.area_m2 / full.plan.load_kg:.3f} m2/kg, oil and metal {full.capacity_j_k / 1e3:.0f} kJ/K"
    )
    print(
        "heat a kilogram raw [kJ]:",
        {t: round(full.heat_j(t) / full.plan.load_kg / 1e3) for t in (60, 120, 300, 840)},
    )
    fluxes(full)
    reference(full)
    dips(full)
    loads()


if __name__ == "__main__":
    main()
