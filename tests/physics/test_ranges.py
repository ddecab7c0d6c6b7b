"""The façade refuses nonsense and says which field, and takes everything that makes sense."""

from __future__ import annotations

import math
from dataclasses import fields, replace

import pytest

from frywright.model.errors import InputError
from frywright.physics import ranges
from frywright.physics.inputs import CLOSE, FINE, ROUTINE, PieceClass, Precision, Span, Vat
from frywright.physics.solve import Cook, Prescribed, run
from tests.conftest import piece, vat

KINDS = {
    "piece": (piece, ranges.PIECE, {"name", "conductivity_w_mk", "heat_capacity_j_kgk"}, PieceClass),
    "vat": (vat, ranges.VAT, {"oil_cp_j_kgk"}, Vat),
    "span": (
        lambda **c: Span(**{"duration_s": 60.0, "set_c": 165.0, **c}),
        ranges.SPAN,
        {"lid", "until"},
        Span,
    ),
    "precision": (Precision, ranges.PRECISION, set(), Precision),
}
FIELDS = [
    (kind, f.name)
    for kind, (_, _, others, made) in KINDS.items()
    for f in fields(made)
    if f.name not in others
]


@pytest.mark.parametrize(("kind", "name"), FIELDS)
def test_every_number_has_a_range_and_refuses_what_lies_outside(kind, name):
    """NaN, infinity, a string and a step past either end are refused by name; the reason is said."""
    make, table, _, _ = KINDS[kind]
    low, high, why = table[name]
    assert low < high and len(why) > 5
    step = max(abs(low), abs(high), 1.0)
    for wrong in (
        math.nan,
        math.inf,
        -math.inf,
        "warm",
        low - step,
        high + step,
        low - 1e-3 * step,
        1e12,
        -1e12,
    ):
        with pytest.raises(InputError, match=name.replace("_", " ")):
            make(**{name: wrong})


@pytest.mark.parametrize(
    ("make", "changes"),
    [
        (piece, {"still_h_w_m2k": -300.0}),
        (piece, {"still_h_w_m2k": 1e12}),
        (piece, {"cap_h_w_m2k": 1e12}),
        (piece, {"film_kg_m2": -1.0}),
        (piece, {"conductivity_w_mk": 0.0}),
        (piece, {"conductivity_w_mk": (0.5, -0.01)}),
        (piece, {"conductivity_w_mk": math.nan}),
        (piece, {"conductivity_w_mk": "wood"}),
        (piece, {"conductivity_w_mk": [(0.0, 0.5), (100.0, -0.5)]}),
        (piece, {"conductivity_w_mk": [(0.0, math.nan), (9.0, 1.0)]}),
        (piece, {"heat_capacity_j_kgk": 0.0}),
        (piece, {"heat_capacity_j_kgk": (3500.0, math.inf)}),
        (piece, {"water_kg_m3": 1e-6}),
        (piece, {"water_kg_m3": 990.0, "density_kg_m3": 700.0}),
        (vat, {"oil_mass_kg": 0.0}),
        (vat, {"oil_cp_j_kgk": (0.0, 0.0)}),
        (vat, {"oil_cp_j_kgk": (2000.0, -30.0)}),
        (vat, {"atmosphere_pa": 101.3}),
        (vat, {"atmosphere_pa": 0.0}),
        (vat, {"relief_gauge_pa": 12.0}),
        (vat, {"vent_area_m2": 30.0}),
    ],
)
def test_slips_of_unit_and_sign_are_refused(make, changes):
    """Values that once passed silently, and slips of a unit (kPa for Pa, psi for Pa, mm2 for m2), name their
    field.
    """
    with pytest.raises(InputError, match=next(iter(changes)).replace("_", " ")):
        make(**changes)


@pytest.mark.parametrize(
    ("name", "curve"),
    [
        ("oil_temp_c", [(0.0, 338.0)]),
        ("oil_temp_c", [(0.0, 160.0), (10.0, -270.0)]),
        ("pressure_pa", [(0.0, 12.0)]),
        ("curve", [(0.0, math.nan)]),
        ("curve", [(math.nan, 160.0)]),
        ("curve", [(0.0, 160.0), (0.0, 161.0)]),
    ],
)
def test_prescribed_curves_are_checked(name, curve):
    """A curve in °F, in psi, with holes or with a time twice is refused."""
    key = "pressure_pa" if name == "pressure_pa" else "oil_temp_c"
    with pytest.raises(InputError, match=name.replace("_", " ")):
        run(
            Cook(
                vat=vat(),
                pieces=[piece()],
                spans=[Span(duration_s=5.0, set_c=160.0)],
                prescribed=Prescribed(**{key: curve}),
            )
        )


def test_a_coefficient_at_the_top_of_its_range_keeps_the_core_below_the_oil():
    """At 1e7 W/(m2 K), the largest allowed, the surface is the oil and nothing passes it (0.01 K)."""
    p = piece(still_h_w_m2k=1e7, cap_h_w_m2k=1e7, gain_h_j_kgk=0.0, film_kg_m2=0.0)
    got = run(
        Cook(
            vat=vat(),
            pieces=[p],
            spans=[Span(duration_s=900.0, set_c=160.0)],
            prescribed=Prescribed(oil_temp_c=[(0.0, 170.0)]),
        )
    )
    for curve in (got.core_temp_c, got.surface_temp_c, got.crust_temp_c):
        assert curve.max() <= 170.01


def test_everything_the_catalog_and_the_references_use_is_taken(kitchen):
    """Every demo program at sea level and at 3000 m, an egg, a crisp and all three precisions pass."""
    from frywright.physics.plan import make_plan, question

    for program in kitchen.programs:
        for altitude in (0.0, 3000.0):
            question(make_plan(kitchen, program, altitude_m=altitude))
    piece(a=0.025, n=2.0, conductivity_w_mk=0.627, still_h_w_m2k=1200.0, cap_h_w_m2k=1200.0)
    piece(a=0.75e-3, n=0.0, film_kg_m2=0.0)
    for precision in (ROUTINE, CLOSE, FINE):
        replace(precision)
