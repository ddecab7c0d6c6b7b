"""What a log tells, on curves drawn by hand: each figure, and each threshold at its edge and beside it."""

from __future__ import annotations

import datetime as dt
from dataclasses import replace
from types import SimpleNamespace

import numpy as np
import pytest

from frywright.calibrate import doubts
from frywright.calibrate.analyse import LoadFound, _curve_notes, _without
from frywright.calibrate.core import ProbeCurve, moves_in, scale_note, unbridged
from frywright.calibrate.cycles import OffsetPolicy, advise, control, display_mean, oil_mean
from frywright.calibrate.events import Load
from frywright.calibrate.family import _as_solved
from frywright.calibrate.gauge import Pressed, pressed_in
from frywright.calibrate.heat import HeatState, Oil, noise_of, oil_of
from frywright.calibrate.kettle import kettle_of
from frywright.calibrate.parameters import PARAMETERS, Fitted
from frywright.calibrate.parts import whitener
from frywright.calibrate.placement import _lowest
from frywright.calibrate.recovery import heat_up_in, recovery
from frywright.calibrate.thermometer import ProbeReading, ThermometerCheck, look_back
from frywright.calibrate.timeline import mend
from frywright.calibrate.trial import Headspace, Probed, _lid_spans, _modelled, thin, tracer
from frywright.model.errors import InputError
from frywright.physics.inputs import Lid, Span
from frywright.physics.plan import make_plan

NAN = float("nan")


def oil(values, step_s: float = 1.0) -> Oil:
    temp = np.asarray(values, dtype=float)
    return Oil(step_s=step_s, temp_c=temp, noise_k=0.0, read=np.isfinite(temp))


def curve(time_s, core_c, **changes) -> ProbeCurve:
    usual = {"channel": "P1", "start_c": 4.0, "lift_s": 600.0, "gaps": (), "left_s": None, "notes": ()}
    return ProbeCurve(
        time_s=np.asarray(time_s, float), core_c=np.asarray(core_c, float), **{**usual, **changes}
    )


def test_every_moment_under_pressure_of_a_trapezoid():
    """Closed at the first reading above 1.5 kPa, full from 90 % of the plateau to where it last has that,
    zero below 1.5 kPa; a minute is needed, and a log may end before.
    """
    time = np.arange(0.0, 1500.0)
    gauge = np.interp(
        time, [100, 200, 700, 720, 1000, 1020, 1080, 1100], [0, 80e3, 80e3, 0, 0, 60e3, 60e3, 0]
    )
    first, second = pressed_in(time, gauge)
    assert first == Pressed(closed_s=102.0, full_s=190.0, vent_s=702.0, zero_s=720.0, plateau_pa=80e3)
    assert (second.closed_s, second.full_s, second.vent_s, second.zero_s) == (1001.0, 1018.0, 1082.0, 1100.0)
    (ends,) = pressed_in(time[:600], gauge[:600])
    assert (ends.zero_s, ends.vent_s) == (None, 599.0)
    for length, found in ((44, 0), (46, 1)):
        short = np.where((time >= 100) & (time <= 100 + length), 50e3, 0.0)
        assert len(pressed_in(time, short)) == found
    gauge[300:310] = NAN  # readings that are not there move nothing
    assert pressed_in(time, gauge)[0] == first


def test_heater_and_loss_are_what_makes_the_oil_rise_and_fall_so(kitchen):
    """Power over heat capacity is the rise; loss to the room over heat capacity the fall."""
    fryer = replace(kitchen.fryer("alder"), oil_mass_kg=20.0, metal_heat_j_k=8000.0)
    fat = SimpleNamespace(cp_0c_j_kgk=2000.0, cp_slope_j_kgk2=2.0)
    none = np.zeros(0)
    heat = HeatState(heater_k_s=0.2, loss_k_s=0.01, kinks=(), on=none.astype(bool), drawn_k=none)
    found = kettle_of(heat, 170.0, fryer, fat, 20.0)
    takes = 20.0 * (2000.0 + 2.0 * 170.0) + 8000.0
    assert found.heater_w / takes == pytest.approx(0.2)
    assert found.loss_w_k * (170.0 - 20.0) / takes == pytest.approx(0.01)
    assert found.heater_error_w / found.heater_w == pytest.approx(0.02)
    assert found.loss_error_w_k / found.loss_w_k == pytest.approx(0.03)
    assert found.note.values == {"oil_kg": 20.0}


@pytest.mark.parametrize(
    ("start", "high", "boiling", "said"),
    [
        (4.0, 99.0, 95.0, ""),
        (4.0, 99.1, 95.0, "above boiling water"),
        (-3.0, 80.0, 95.0, ""),
        (40.0, 80.0, 95.0, ""),
        (40.1, 80.0, 95.0, "no piece is dropped"),
        (39.2, 170.0, 95.0, "°F read as °C"),
        (39.2, 211.0, 95.0, "above boiling water"),
        (24.0, 170.0, 95.0, "above boiling water"),
        (-15.6, 26.7, 95.0, "°C read as °F"),
        (-25.0, 26.7, 95.0, "no piece is dropped"),
        (-15.6, 50.0, 95.0, "no piece is dropped"),
    ],
)
def test_a_scale_that_cannot_be_is_named(start, high, boiling, said):
    """Above boiling and 4 K, or outside -3 to 40 degC at the drop; the other unit where it would fit."""
    note = scale_note(curve([0.0, 600.0], [start, high], start_c=start), boiling)
    assert (said in note.text) if said else note is None
    if note:
        assert note.values == {"channel": "P1", "start_c": start, "high_c": high}


def test_under_pressure_water_boils_hotter_and_so_may_a_core():
    """At 80 kPa over a sea-level kitchen water boils at 116.9 degC (IAPWS-IF97): 118 is no fault there."""
    hot = curve([0.0, 600.0], [4.0, 118.0])
    load = Load(drop_s=0.0, lift_s=600.0, overlapping=False, drawn_k=5.0)
    shut = Pressed(closed_s=1.0, full_s=2.0, vent_s=500.0, zero_s=510.0, plateau_pa=80e3)
    for pressed, kinds in ((shut, []), (None, ["scale"])):
        found = LoadFound(load=load, recovery=None, pressed=pressed, curves=(hot,))
        assert [n.kind for n in _curve_notes(found, 101325.0)] == kinds


def test_oil_is_left_out_from_five_seconds_before_to_twenty_after_a_probe_was_out_of_it():
    found = _without(oil(np.full(200, 170.0)), [(50.0, 60.0), (100.0, 101.0)])
    gone = np.zeros(200, dtype=bool)
    gone[45:81] = gone[95:122] = True
    assert (np.isnan(found.temp_c) == gone).all() and (found.read == ~gone).all()


def test_a_gap_is_credited_nothing_and_all_readings_stay():
    told = curve(
        [0.0, 10.0, 60.0, 70.0, 200.0], [4.0, 5.0, 6.0, 7.0, 8.0], gaps=((10.0, 60.0), (70.0, 200.0))
    )
    time, core = unbridged(told)
    assert time.tolist() == pytest.approx([0.0, 10.0, 10.001, 59.999, 60.0, 70.0, 70.001, 199.999, 200.0])
    assert core.tolist() == [4.0, 5.0, -40.0, -40.0, 6.0, 7.0, -40.0, -40.0, 8.0]


@pytest.mark.parametrize(
    ("core", "found"),
    [
        ([4.0] * 10 + [10.1] * 10, [6.0]),  # 6.1 K within 4 s: faster than 1.5 K/s, more than 5 K
        ([4.0] * 10 + [9.9] * 10, []),  # 5.9 K in 4 s is 1.475 K/s
        ([20.0] * 10 + [13.0] * 10, [6.0]),
        ([4.0] * 10 + [NAN] * 3 + [20.0] * 10, [6.0]),
        ([4.0] * 10 + [NAN] * 16 + [90.0] * 10, []),  # a gap of more than 15 s is no move
        ([4.0] * 9 + [30.0] * 12 + [4.0] * 10, [5.0, 17.0]),
        ([4.0, 90.0], []),
    ],
)
def test_a_probe_moved_where_its_reading_changes_faster_than_meat_can(core, found):
    assert moves_in(np.arange(float(len(core))), np.array(core)) == found


def test_a_control_mean_is_of_switches_while_the_oil_is_idle():
    """Cut-outs at the peaks, cut-ins at the valleys, each the middle of three readings; a drift is the last
    third of the peaks less the first, of six and more.
    """
    places = np.arange(10, 130, 10)
    temp = np.full(150, 170.0)
    peaks, valleys = places[::2], places[1::2]
    for n, at in enumerate(peaks):
        temp[at - 1 : at + 2] = [172.0, 174.0 + 0.3 * n, 190.0]  # the middle of the three by size
    temp[valleys - 1], temp[valleys], temp[valleys + 1] = 165.0, 166.0, 150.0
    kinks = tuple((int(at), -1 if at in peaks else 1) for at in places)
    none = np.zeros(150)
    heat = HeatState(heater_k_s=0.2, loss_k_s=0.01, kinks=kinks, on=none.astype(bool), drawn_k=none)
    told = 174.0 + 0.3 * np.arange(6)
    found = control(oil(temp, 2.0), heat, [(0.0, 260.0)])
    assert found.peaks_c == pytest.approx(told) and found.valleys_c == (165.0,) * 6
    assert found.mean_c == pytest.approx(0.5 * (told.mean() + 165.0))
    assert found.swing_k == pytest.approx(told.mean() - 165.0)
    assert found.error_k == pytest.approx(0.5 * told.std(ddof=1) / np.sqrt(6))
    assert found.drift_k == pytest.approx(told[-2:].mean() - told[:2].mean())
    assert found.peak_times_s == tuple(2.0 * peaks) and found.valley_times_s == tuple(2.0 * valleys)
    part = control(oil(temp, 2.0), heat, [(20.0, 100.0)])
    assert (part.cycles_count, len(part.peaks_c), part.drift_k, part.enough) == (2, 3, 0.0, False)
    none_seen = control(oil(temp, 2.0), heat, [(262.0, 298.0)])
    assert (none_seen.mean_c, none_seen.cycles_count) == (170.0, 0) and np.isnan(none_seen.error_k)
    assert oil_mean(oil(temp, 2.0), [(262.0, 298.0)]) == 170.0
    shown = np.where(np.arange(150) % 2, 340.0, NAN)
    assert display_mean(2.0 * np.arange(150), shown, [(0.0, 100.0)]) == 340.0
    assert np.isnan(oil_mean(oil(temp, 2.0), []))


@pytest.mark.parametrize(
    ("cycles", "offset", "other", "drift", "said"),
    [
        (2, 0.0, None, 0.0, "not_enough"),
        (3, 2.7, None, 0.0, "fine"),
        (3, -2.8, None, 0.0, "enter"),
        (3, 5.5, None, 0.0, "enter"),
        (3, -5.6, None, 0.0, "service"),
        (3, 0.0, None, 1.6, "fine"),
        (3, 0.0, None, -1.7, "drift"),
        (3, 1.0, -1.2, 0.0, "fine"),
        (3, 1.0, -1.3, 0.0, "slope"),
    ],
)
def test_what_to_do_about_an_offset_at_each_edge(cycles, offset, other, drift, said):
    """5, 10 and 2 degF are 2.78, 5.56 and 1.11 K; a drift of 3 degF is 1.67 K, a slope of 4 degF 2.22 K."""
    found = SimpleNamespace(enough=cycles >= 3, cycles_count=cycles, drift_k=drift)
    _, note = advise(found, offset, None, other)
    assert note.kind == said
    policy = OffsetPolicy()
    values = {
        "not_enough": {"count": 2, "least": 3},
        "fine": {"fine_k": policy.fine_k},
        "enter": {"verify_k": policy.verify_k},
        "service": {"offset_k": abs(offset)},
        "drift": {"drift_k": drift},
        "slope": {"change_k": pytest.approx(2.3)},
    }
    assert note.values == values[said]


def told(name: str, value: float, sd: float = 0.0) -> Fitted:
    return Fitted(name=name, value=value, sd=sd, low=value - 2 * sd, high=value + 2 * sd, before=value)


def test_doubts_of_a_fit_begin_just_past_their_thresholds():
    """Correlation 0.9, sensor three times off, a quarter of the value, the last ten-thousandth of a range."""
    quiet = np.array([3.0, -3.0])
    middle = [told(n, 0.5 * (p.low + p.high)) for n, p in PARAMETERS.items()]
    assert doubts.warnings(middle, [("a", "b", 0.9), ("a", "c", -0.9)], quiet, 9.0) == []
    (note,) = doubts.warnings(middle, [("a", "b", -0.9012)], quiet, 9.0)
    assert (note.kind, note.values) == ("alike", {"first": "a", "second": "b", "share": -0.901})
    (note,) = doubts.warnings(middle, [], np.array([0.0, -3.14]), 9.0)
    assert (note.kind, note.values) == ("sensor", {"times": 3.1})
    for p in middle:
        bound = PARAMETERS[p.name]
        span = bound.high - bound.low
        share = 0.25 * max(abs(p.value), 0.02 * bound.high)
        assert doubts._ends(replace(p, sd=0.99 * share), 9.0) == []
        assert [n.kind for n in doubts._ends(replace(p, sd=1.01 * share), 9.0)] == ["weak"]
        more = ["shape_at_bound"] if p.name == "shape_n" else []
        for edge in (bound.low + 0.9e-4 * span, bound.high - 0.9e-4 * span):
            assert [n.kind for n in doubts._ends(told(p.name, edge), 0.71)] == ["at_bound", *more]
            assert [n.kind for n in doubts._ends(told(p.name, edge), 0.7)] == ["at_bound"]
        assert doubts._ends(told(p.name, bound.high - 1.1e-4 * span), 9.0) == []
    assert doubts.misfit(1.5) == [] and doubts.misfit(1.51)[0].values == {"rms_k": 1.51}
    assert doubts.blind(["shape_n", "film"]).values == {"names": "shape_n, film"}


def probed(kitchen, core: ProbeCurve, mass_kg: float = 0.3):
    plan = make_plan(kitchen, kitchen.program("bone-in alder"))
    return plan, Probed(cut=plan.kinds[0].cut.key, piece_mass_kg=mass_kg, curve=core)


def test_a_curve_carries_a_fit_with_25_k_of_rise_and_gaps_of_three_tenths(kitchen):
    time = np.arange(0.0, 601.0)
    for high, gap_s, kinds in (
        (29.0, 0.0, []),
        (28.9, 0.0, ["short"]),
        (80.0, 180.0, []),
        (80.0, 181.0, ["holes"]),
    ):
        gaps = ((100.0, 100.0 + gap_s), (650.0, 900.0))
        rising = curve(time, np.linspace(4.0, high, 601), gaps=gaps)
        trial = SimpleNamespace(lift_s=600.0)
        notes = doubts._holes(trial, probed(kitchen, rising)[1])
        assert [n.kind for n in notes] == kinds
    assert notes[0].values == {"channel": "P1", "gap_s": 181.0}
    late = curve(np.arange(0.0, 1001.0), np.interp(np.arange(0.0, 1001.0), [0, 700, 1000], [4, 4, 90]))
    assert doubts._holes(trial, probed(kitchen, late)[1])[0].kind == "short"  # what rises after the lift


def test_a_size_fits_its_weight_between_a_fifth_of_a_ball_and_the_ball(kitchen):
    """A ball of 0.3 kg and 1050 kg/m3 has a radius of 40.9 mm."""
    plan, one = probed(kitchen, curve([0.0, 1.0], [4.0, 5.0]))
    mass = plan.kinds[0].cut.reference_mass_kg
    trial = SimpleNamespace(plan=plan, probes=[one])
    ball = (3.0 * 0.3 / (4.0 * np.pi * 1050.0)) ** (1.0 / 3.0)
    assert ball == pytest.approx(0.0409, abs=1e-4)
    for share, kinds in ((0.19, 1), (0.21, 0), (0.99, 0), (1.01, 1)):
        size = share * ball * (mass / 0.3) ** (1.0 / 3.0)  # as a piece of the cut's usual weight would have
        notes = doubts.implausible([trial], {"half_thickness_m": size})
        assert len(notes) == kinds
    assert notes[0].values == {"channel": "P1", "size_m": pytest.approx(1.01 * ball), "mass_kg": 0.3}
    assert doubts.implausible([trial], {"shape_n": 9.0}) == []


def test_a_probed_cut_must_be_in_the_load_and_next_to_massless(kitchen):
    plan, one = probed(kitchen, curve([0.0, 1.0], [4.0, 5.0]))
    made = tracer(plan, one, 3.0)
    assert (made.name, made.start_temp_c) == ("P1", 3.0)
    assert made.mass_kg < 1e-3 * plan.load_kg
    with pytest.raises(InputError, match="one of: "):
        tracer(plan, replace(one, cut="tender"), 3.0)


def test_spans_of_a_lid_follow_what_the_gauge_said():
    """Open, shut while it builds and while it is full, vent, open; cut to the lift, and none of no time."""
    shut = Pressed(closed_s=30.0, full_s=90.0, vent_s=400.0, zero_s=430.0, plateau_pa=8e4)

    def seen(pressed, lift_s):
        return [(s.lid, s.duration_s) for s in _lid_spans(pressed, lift_s, 165.0)]

    both = [(Lid.OPEN, 30.0), (Lid.PRESSURE, 60.0), (Lid.PRESSURE, 310.0)]
    assert seen(shut, 500.0) == [*both, (Lid.VENT, 30.0), (Lid.OPEN, 70.0)]
    assert seen(replace(shut, zero_s=None), 500.0) == [*both, (Lid.VENT, 100.0)]
    assert seen(replace(shut, full_s=None), 410.0) == [
        (Lid.OPEN, 30.0),
        (Lid.PRESSURE, 370.0),
        (Lid.VENT, 10.0),
    ]
    assert seen(replace(shut, closed_s=-5.0), 300.0) == [(Lid.PRESSURE, 90.0), (Lid.PRESSURE, 210.0)]
    assert seen(None, 300.0) == [(Lid.OPEN, 300.0)]
    assert {s.set_c for s in _lid_spans(shut, 500.0, 165.0)} == {165.0}


def raw_of(lids: list[Lid], seconds: int = 10) -> SimpleNamespace:
    """A march of ten seconds a span, pressure 1 kPa more each second."""
    time = np.arange(0.0, seconds * len(lids) + 1.0)
    span = np.minimum(np.maximum(np.ceil(time / seconds) - 1, 0).astype(int), len(lids) - 1)
    return SimpleNamespace(time_s=time, span=span, pressure_pa=1e5 + 1e3 * time)


def test_what_a_simulated_lid_did_is_read_from_its_spans():
    lids = [Lid.OPEN, Lid.PRESSURE, Lid.PRESSURE, Lid.VENT, Lid.OPEN]
    spans = [Span(duration_s=10.0, set_c=165.0, lid=lid) for lid in lids]
    found = _modelled(raw_of(lids), spans)
    assert found == Pressed(closed_s=10.0, full_s=None, vent_s=30.0, zero_s=40.0, plateau_pa=30e3)
    assert _modelled(raw_of(lids[:3]), spans[:3]) is None
    assert _modelled(raw_of([Lid.OPEN]), spans[:1]) is None


def test_spans_as_solved_take_the_time_they_took():
    """One that was over before it began is left out; the others keep set point and lid."""
    spans = [
        Span(duration_s=99.0, set_c=150.0 + n, lid=lid)
        for n, lid in enumerate((Lid.OPEN, Lid.PRESSURE, Lid.OPEN))
    ]
    raw = SimpleNamespace(time_s=np.array([0.0, 20.0, 50.0, 70.0, 95.0]), span=np.array([0, 0, 0, 2, 2]))
    found = _as_solved(raw, spans)
    assert [(s.duration_s, s.set_c, s.lid) for s in found] == [
        (50.0, 150.0, Lid.OPEN),
        (45.0, 152.0, Lid.OPEN),
    ]


def test_pressure_is_let_go_until_it_stays_at_what_it_ends_with():
    time = np.arange(0.0, 601.0)
    pressure = np.interp(time, [0, 300, 340, 600], [1.8e5, 1.8e5, 1.03e5, 1.03e5])
    shut = Pressed(closed_s=10.0, full_s=20.0, vent_s=300.0, zero_s=330.0, plateau_pa=8e4)
    began, ended = Headspace(np.column_stack([time, pressure]), shut).let_go()
    assert began == 300.0 and 338.0 <= ended <= 340.0
    assert Headspace(None, shut).let_go() is None and Headspace(np.array([[0.0, 1e5]]), None).let_go() is None
    calm_air = Headspace(np.column_stack([time, np.full(601, 1e5)]), shut)
    assert calm_air.let_go() == (300.0, 300.0)


def test_thinned_readings_are_means_and_lose_none():
    time, read = np.arange(0.0, 100.0, 0.5), np.sin(np.arange(200))
    read[50] = NAN
    t, y = thin(time, read)
    counts = np.bincount(np.floor(time[np.isfinite(read)] / (t[1] - t[0])).astype(int))
    assert counts @ t == pytest.approx(time[np.isfinite(read)].sum())
    assert counts @ y == pytest.approx(np.nansum(read))


def test_residuals_that_hang_together_are_made_independent():
    """The whitener turns the covariance (misfit that fades over 120 s, noise) into the unit matrix."""
    time = np.array([0.0, 5.0, 40.0, 300.0])
    cover = 0.5**2 * np.exp(-np.abs(np.subtract.outer(time, time)) / 120.0) + 0.2**2 * np.eye(4)
    white = whitener(time, 0.2, 0.5)
    assert white @ cover @ white.T == pytest.approx(np.eye(4), abs=1e-9)


def test_the_lowest_misfit_lies_at_the_bottom_of_a_parabola():
    """Of squares 4 + (i - 4.3)^2 the bottom is 4 between two of the tries; never below three tenths of the
    lowest try, nor beyond the ends.
    """
    at = np.arange(10.0)
    assert _lowest(np.sqrt(4.0 + (at - 4.3) ** 2)) == pytest.approx(2.0)
    assert _lowest(np.sqrt(1e-6 + (at - 4.5) ** 2)) == pytest.approx(0.3 * 0.5, rel=1e-3)
    assert _lowest(np.full(10, 1.5)) == 1.5


def test_white_noise_is_found_beneath_a_curve():
    """Of third differences the variance is 20 (1 + 9 + 9 + 1) times the noise's; a parabola has none."""
    rng = np.random.default_rng(1)
    time = np.arange(4000.0)
    assert noise_of(0.3 * rng.standard_normal(4000) + 1e-3 * time**2) == pytest.approx(0.3, rel=0.05)
    assert noise_of(1e-3 * time**2) == pytest.approx(0.0, abs=1e-8)
    assert noise_of(np.array([1.0, 2.0, NAN])) == 0.0


def test_oil_on_even_steps_bridges_short_gaps_and_marks_them():
    time = np.array([2.0, 4.0, 6.0, 8.0, 20.0, 22.0, 24.0, 60.0, 62.0])
    found = oil_of(np.r_[0.0, time], np.r_[NAN, 160.0 + time], 15.0)
    assert found.step_s == 2.0 and found.time_s[-1] == 62.0
    bridged = (found.time_s >= 2.0) & ~((found.time_s > 24.0) & (found.time_s < 60.0))
    assert found.temp_c[bridged] == pytest.approx(160.0 + found.time_s[bridged])
    assert np.isnan(found.temp_c[~bridged]).all()
    gone = (found.time_s > 8.0) & (found.time_s < 20.0)
    assert (found.read == (bridged & ~gone)).all()
    assert not oil_of(np.arange(2.0), np.ones(2), 15.0).read.any()


def test_dip_return_and_debt_of_a_drawn_load():
    """170 degC, 20 K down over 100 s, back over 200 s: 2.78 K below the target it counts as back, and the
    debt up to there is what lies below the target.
    """
    time = np.arange(0.0, 700.0)
    temp = np.interp(time, [0, 100, 200, 400, 700], [170, 170, 150, 170, 170])
    load = Load(drop_s=100.0, lift_s=500.0, overlapping=False, drawn_k=9.0)
    found = recovery(oil(temp), load, 170.0, 650.0)
    assert (found.dip_k, found.lowest_c, found.lowest_after_s) == (20.0, 150.0, 100.0)
    back = 100.0 + 200.0 * (1.0 - 25.0 / 9.0 / 20.0)
    assert found.recovered_s == pytest.approx(np.ceil(back))
    left = 170.0 - temp[100 + int(found.recovered_s)]
    assert found.debt_k_s == pytest.approx(0.5 * 20.0 * 300.0 - 0.5 * left * (300.0 - found.recovered_s))
    assert recovery(oil(temp), load, 170.0, 350.0).recovered_s is None
    assert recovery(oil(temp), load, 152.0, 650.0).recovered_s == 0.0
    with pytest.raises(InputError, match="readings"):
        recovery(oil(temp), load, 170.0, 103.0)


def test_a_heat_up_runs_from_its_last_pass_of_the_first_mark_to_the_first_of_the_second():
    """A line of 0.5 K/s from 20 degC passes 60 and 160 in 200 s, between readings of 7 s as well."""
    for step in (1.0, 7.0):
        time = np.arange(0.0, 400.0, step)
        found = heat_up_in(time, 20.0 + 0.5 * time, 60.0, 160.0, 20.0)
        assert (found.duration_s, found.start_c) == (pytest.approx(200.0), 20.0)
    twice = np.interp(np.arange(800.0), [0, 100, 200, 400, 500, 700], [20, 70, 20, 170, 20, 170])
    assert heat_up_in(np.arange(800.0), twice, 60.0, 160.0, 20.0).duration_s == pytest.approx(200 * 100 / 150)
    assert heat_up_in(np.arange(100.0), np.full(100, 170.0), 60.0, 160.0, 20.0) is None
    assert heat_up_in(np.arange(100.0), np.linspace(170.0, 20.0, 100), 60.0, 160.0, 20.0) is None


def test_readings_since_the_last_good_check_are_read_again():
    """Two kelvin too high at ice: what was read as 75 was 73. Others' readings, older and later ones stay."""
    day = dt.datetime(2026, 11, 20, 12, tzinfo=dt.UTC)

    def check(days, ice_c, name="P1"):
        return ThermometerCheck(thermometer=name, at=day + dt.timedelta(days=days), ice_c=ice_c, boil_c=None)

    def reading(number, days, name="P1", core_c=75.0):
        at = day + dt.timedelta(days=days)
        return ProbeReading(number=number, at=at, thermometer=name, core_c=core_c, limit_c=73.9)

    readings = [
        reading(5, 3),
        reading(1, -1),
        reading(2, 0),
        reading(3, 1, "P2"),
        reading(4, 2, core_c=77.0),
        reading(6, 4),
    ]
    failed = check(3, 2.0)
    checks = [check(-5, 0.0), check(0, 0.5), check(1, 0.0, "P2"), check(3.5, 0.0), check(2, 3.0)]
    found = look_back(readings, checks, failed)
    assert [(d.reading.number, d.corrected_c, d.in_doubt) for d in found] == [
        (4, 75.0, False),
        (5, 73.0, True),
    ]
    assert [d.reading.number for d in look_back(readings, [], failed)] == [1, 2, 4, 5]


def test_whole_minutes_are_spread_and_a_first_minute_begun_late_ends_its_minute():
    """Four readings a minute, two in the first: 15 s apart."""
    minutes = np.array([0.0] * 2 + [60.0] * 4 + [120.0] * 4 + [180.0] * 3)
    line = mend(minutes, np.arange(13.0)[:, None], dated=True)
    assert line.time_s == pytest.approx(30.0 + 15.0 * np.arange(13))
    assert (line.spread_count, line.step_s) == (13, 15.0)
