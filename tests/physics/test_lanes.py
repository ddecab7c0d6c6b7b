"""The march is what its sources say, and a cook's answer does not depend on the cooks beside it."""

from __future__ import annotations

import importlib.util
import re
from dataclasses import fields, replace
from pathlib import Path

import numpy as np
import pytest

from frywright.physics import engine, pack, steam
from frywright.physics.inputs import CLOSE, ROUTINE, Lid, Span, Until
from frywright.physics.solve import Cook, Prescribed, RawHistory, run, run_many
from tests.conftest import four_classes, open_cook, piece, pressure_cook, vat

ROOT = Path(__file__).parent.parent.parent
HOME = ROOT / "src/frywright/physics/lanes"


def script():
    """The script that makes the portable code."""
    spec = importlib.util.spec_from_file_location("lanes_script", ROOT / "scripts/lanes.py")
    found = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(found)
    return found


def mixed() -> list[Cook]:
    """Twenty-two cooks that share little: open, pressure, vent, rest, conditions, bones, drip, curves."""
    wet = {"drip_frac": 0.3, "coat_thickness_m": 1e-3, "coat_heat_j_m2k": 1600.0, "still_reference_k": 65.0}
    moist = [replace(p, **wet, vapour_diffusivity_m2_s=3e-6) for p in four_classes()]
    boned = [replace(p, bone_radius_m=0.3 * p.half_thickness_m) for p in four_classes()]
    until = [
        Span(duration_s=300.0, set_c=175.0, until=Until.OIL_ABOVE, value=172.0),
        Span(duration_s=900.0, set_c=165.0, lid=Lid.PRESSURE, until=Until.CORE_ABOVE, value=60.0),
        Span(duration_s=300.0, set_c=165.0, lid=Lid.VENT, until=Until.GAUGE_BELOW, value=1000.0),
        Span(duration_s=60.0, set_c=175.0, lid=Lid.REST),
    ]
    told = Prescribed(oil_temp_c=[(0.0, 170.0), (200.0, 160.0)], pressure_pa=[(0.0, 101325.0), (90.0, 15e4)])
    cooks = [
        open_cook(420.0),
        pressure_cook(380.0, 60.0),
        pressure_cook(380.0, 60.0, pieces=moist),
        open_cook(300.0, pieces=boned),
        Cook(vat=vat(oil_start_c=160.0), pieces=four_classes(), spans=until),
        Cook(vat=vat(), pieces=moist, spans=[Span(duration_s=240.0, set_c=170.0)], prescribed=told),
        open_cook(200.0, pieces=[piece(a=0.003, film_kg_m2=0.05)]),
    ]
    colder = [replace(c, vat=replace(c.vat, oil_start_c=c.vat.oil_start_c - 7.0)) for c in cooks]
    smaller = [replace(c, vat=replace(c.vat, heater_w=6e3, band_k=5.0)) for c in cooks]
    return [*cooks, *colder, *smaller, pressure_cook(5.0, 1.0)]


def same(one: RawHistory, other: RawHistory) -> bool:
    """Whether two histories agree in every bit."""
    return all(
        np.array_equal(np.asarray(getattr(one, f.name)), np.asarray(getattr(other, f.name)))
        for f in fields(RawHistory)
        if f.name != "report"
    ) and (one.report == other.report)


@pytest.mark.parametrize("precision", [ROUTINE, CLOSE], ids=["routine", "close"])
def test_an_answer_is_the_same_alone_and_in_any_batch(precision):
    """To the bit: alone, where its classes or two cooks march; among others, where eight do; in any order."""
    cooks = mixed()
    together = run_many(cooks, precision)
    backwards = run_many(cooks[::-1], precision)[::-1]
    for cook, one, other in zip(cooks, together, backwards, strict=True):
        assert same(one, other)
        assert same(one, run(cook, precision))
    assert not same(together[0], together[1])


@pytest.mark.parametrize("count", [1, 2, 3, 5, 8])
@pytest.mark.parametrize("precision", [ROUTINE, CLOSE], ids=["routine", "close"])
def test_classes_side_by_side_are_those_in_a_row(precision, count, monkeypatch):
    """To the bit, for one to eight classes, under pressure and open, one cook after another: whoever chooses
    the version of the march chooses no answer.
    """
    wet = {"drip_frac": 0.3, "coat_thickness_m": 1e-3, "coat_heat_j_m2k": 1600.0, "still_reference_k": 65.0}
    moist = [replace(p, **wet, vapour_diffusivity_m2_s=3e-6) for p in four_classes()]
    parts = [*four_classes(), moist[0], piece(a=0.003, film_kg_m2=0.05), *moist[1:3]][:count]
    cooks = [open_cook(240.0, pieces=parts), pressure_cook(380.0, 60.0, pieces=parts)]
    cooks += [replace(c, vat=replace(c.vat, heater_w=7e3, oil_start_c=160.0)) for c in cooks]
    found = {}
    for version in (engine.ONE, engine.NARROW, engine.WIDE):
        monkeypatch.setattr(engine, "_version", lambda _, v=version: v)
        found[version] = run_many(cooks, precision)
    for others in (engine.NARROW, engine.WIDE):
        assert all(same(a, b) for a, b in zip(found[engine.ONE], found[others], strict=True))


def test_the_version_that_answers_soonest():
    """Fewer cooks than classes: its classes side by side; not where bones differ, nor past eight classes."""

    def version(cooks, parts):
        return engine._version(pack.pack([open_cook(60.0, pieces=parts)] * cooks, ROUTINE, [4000] * cooks))

    four, boned = four_classes(), [replace(four_classes()[0], bone_radius_m=0.004), *four_classes()[1:]]
    assert [version(n, four) for n in (1, 3, 4, 9)] == [engine.ONE, engine.ONE, engine.WIDE, engine.WIDE]
    assert [version(n, boned) for n in (1, 3)] == [engine.NARROW, engine.WIDE]
    assert version(1, [*four, *four]) == engine.ONE
    assert version(1, [*four, *four, four[0]]) == engine.NARROW
    assert version(1, four[:1]) == engine.NARROW


def test_a_long_queue_is_the_same_as_its_cooks(monkeypatch):
    """Lanes that take the next cook, and a trace that runs out of room on the way, change no bit."""
    cooks = [open_cook(60.0 + 7.0 * i) for i in range(40)]
    plain = run_many(cooks)
    monkeypatch.setattr(engine, "BLOCK_STEPS", 3)
    assert all(same(a, b) for a, b in zip(plain, run_many(cooks), strict=True))


def packed(cooks):
    """Cooks of one structure, ready for the march."""
    return pack.pack(cooks, ROUTINE, [4000] * len(cooks))


def test_a_lane_takes_cooks_of_other_shapes():
    """Slabs, cylinders and spheres one after another in the lanes: each by its own grid."""
    cooks = [open_cook(60.0, pieces=[piece(n=float(i % 3))]) for i in range(24)]
    for cook, got in zip(cooks[:3], run_many(cooks)[-3:], strict=True):
        assert same(run(cook), got)


def test_the_longest_cooks_begin_first():
    """By their spans and their load, where there are more than lanes; what each answers does not move."""
    few, many = ([replace(p, mass_kg=mass) for p in four_classes()] for mass in (1.0, 2.0))
    cooks = [
        open_cook(seconds, pieces=load)
        for seconds in (60.0, 300.0, 120.0, 200.0, 90.0)
        for load in (few, many)
    ]
    assert engine._longest_first(packed(cooks)).tolist() == [3, 2, 7, 6, 5, 9, 4, 8, 1, 0]
    for number, got in enumerate(run_many(cooks)):
        assert same(run(cooks[number]), got)


def test_a_short_march_has_the_cores_of_a_full_one():
    """The same rows; books and cells, which are not written, are no numbers that could be taken for some."""
    asked = packed([open_cook(60.0), open_cook(90.0)])
    short, full = engine.march(asked, full=False), engine.march(asked)
    assert np.array_equal(short.trace, full.trace[:, : short.trace.shape[1]])
    assert np.array_equal(short.cook, full.cook)
    assert np.isnan(short.piece).all()
    assert np.isfinite(full.piece).all() and full.cells.any() and not short.cells.any()


def test_the_portable_code_is_made_from_its_sources():
    """Each file names the hash of the sources it was made from; both have the march."""
    made = script()
    for version in made.VERSIONS:
        text = (HOME / f"march_{version}.ll").read_text("utf-8")
        assert text.startswith(f"; Made by scripts/lanes.py from sources of sha256 {made.source_hash()}.")
        assert f"@march_{version}(" in text
    assert set(made.VERSIONS) == {engine.WIDE, engine.NARROW, engine.ONE}


@pytest.mark.slow
def test_clang_makes_the_portable_code_again():
    """What is stored is what the compiler makes of the sources, letter by letter."""
    pytest.importorskip("ziglang")
    made = script()
    for version in made.VERSIONS:
        assert (HOME / f"march_{version}.ll").read_text("utf-8") == made.made(version)


def test_rows_follow_the_structs():
    """Columns are packed in the order in which the march reads them."""
    text = (HOME / "group.h").read_text("utf-8")
    for name, rows in (("PieceGiven", pack.PIECE_ROW), ("CookGiven", pack.COOK_ROW)):
        body = re.sub(r"//.*", "", re.search(rf"struct {name} \{{(.*?)\}};", text, re.S)[1])
        assert tuple(re.findall(r"\w+", re.sub(r"\bV\b", "", body))) == rows
    job = re.sub(r"//.*", "", re.search(r"struct Job \{(.*?)\};", text, re.S)[1])
    words = re.findall(r"\w+", re.sub(r"\b(Count|double|const)\b", "", job))
    assert [name for name, _ in engine._Job._fields_] == words


def test_steam_is_one_set_of_numbers():
    """The march and its Python neighbours use the same coefficients."""
    text = (HOME / "steam.h").read_text("utf-8")
    told = dict(re.findall(r"\b([A-Z][A-Z_]*\d*) = (-?[\d.]+(?:e-?\d+)?)", text))
    names = [*(f"N{i}" for i in range(1, 11)), *(f"LATENT_{i}" for i in range(3)), "KELVIN"]
    assert {name: float(told[name]) for name in names} == {name: getattr(steam, name) for name in names}
    assert float(told["GAS_STEAM"]) == steam.GAS_STEAM_J_KGK
    assert float(told["GAS_AIR"]) == 287.053  # ISO 2533
