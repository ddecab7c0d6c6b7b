"""Verdicts on curves whose every figure can be worked out by hand: what a sentence says is a number here."""

from __future__ import annotations

import datetime as dt
from math import exp, log

import numpy as np
import pytest

from frywright.model.errors import InputError
from frywright.model.findings import Outcome
from frywright.model.food import Food
from frywright.verdicts.age import judge_age, years_on
from frywright.verdicts.evidence import Evidence, EvidenceKind
from frywright.verdicts.facts import Prediction, facts_of
from frywright.verdicts.judge import CoreCurve, judge
from frywright.verdicts.lethality import (
    Summit,
    equivalent_time_s,
    first_above_s,
    log_reduction,
    longest_above_s,
)
from frywright.verdicts.limits import CookLimit, edition_on, house_limit
from frywright.verdicts.margin import Curves, held_level_c, margin_k, margins_k, until
from frywright.verdicts.patterns import Told, patterns
from frywright.verdicts.place import place_named
from frywright.verdicts.pressure import judge_opening
from frywright.verdicts.tables import TimeTable, fsis_poultry, log_mean, uk_equivalents

PROBE = Evidence(kind=EvidenceKind.PROBE, error_k=0.5)
TENT = (np.array([0.0, 300.0, 600.0, 700.0]), np.array([10.0, 80.0, 80.0, 70.0]))
LIMIT = CookLimit(
    rule="x",
    kind="instant",
    edition="e",
    title="T",
    valid_from=dt.date.min,
    applies_to=(),
    source="s",
    level_c=75.0,
    hold_s=0.0,
)
FSIS = place_named("us_fsis_inspected").cook_limit()


def held(level: float, hold_s: float, kind: str = "instant", rule: str = "x") -> CookLimit:
    return CookLimit(
        rule=rule,
        kind=kind,
        edition="e",
        title="T",
        valid_from=dt.date.min,
        applies_to=(),
        source="s",
        level_c=level,
        hold_s=hold_s,
    )


def tent(lift_s: float, counts: bool = False) -> CoreCurve:
    return CoreCurve(piece="wing", time_s=TENT[0], core_c=TENT[1], lift_s=lift_s, carry_over_counts=counts)


@pytest.mark.parametrize(
    ("lift_s", "level", "hold_s", "counts", "outcome", "margin", "says"),
    [
        (600.0, 75.0, 0.0, False, Outcome.MEETS, 4.5, "passes"),
        (150.0, 75.0, 0.0, False, Outcome.FAILS, -30.5, "peaks"),
        (600.0, 75.0, 300.0, False, Outcome.MEETS, 4.5, "passes"),
        (600.0, 79.0, 300.0, False, Outcome.MEETS, 0.5, "passes"),
        (600.0, 79.0, 310.0, False, Outcome.FAILS, -1.83, "does not hold"),
        (600.0, 79.0, 310.0, True, Outcome.FAILS, -0.2, "does not hold"),
        (600.0, 75.0, 360.0, True, Outcome.MEETS, None, "passes"),
    ],
)
def test_a_level_and_a_time_are_judged_with_every_figure_of_the_sentence(
    lift_s, level, hold_s, counts, outcome, margin, says
):
    """A core of 10 degC that rises by 7/30 K/s to 80 and falls by 0.1 K/s after the lift, half a kelvin taken
    off. A hold of t s in a rise to the lift costs 7/30 K for each second past the plateau.
    """
    verdict = judge(tent(lift_s, counts), held(level, hold_s), PROBE)
    values, reads = verdict.values, TENT[1] - 0.5
    assert verdict.outcome is outcome and says in verdict.sentence
    assert (verdict.margin_k < 0.0) == (outcome is Outcome.FAILS)
    if margin is not None:
        assert verdict.margin_k == pytest.approx(margin, abs=0.01)
    assert values["margin_k"] == pytest.approx(abs(verdict.margin_k))
    assert values["core_c"] == pytest.approx(np.interp(lift_s, TENT[0], reads))
    assert values["peak_c"] == pytest.approx(min(79.5, np.interp(lift_s, TENT[0], reads)))
    assert (values["limit_c"], values["level_c"], values["hold_s"]) == (level, level, hold_s)
    assert (values["piece"], values["title"], values["guard_k"]) == ("wing", "T", 0.5)
    if "peaks" in verdict.sentence:
        assert verdict.margin_s is None and values["spare_s"] == 0.0
    else:
        assert verdict.margin_s == pytest.approx(lift_s - ((level + 0.5 - 10.0) * 30.0 / 7.0 + hold_s))
        assert values["spare_s"] == pytest.approx(abs(verdict.margin_s))
    assert verdict.missing == () and (verdict.rule, verdict.edition, verdict.source) == ("x", "e", "s")


@pytest.mark.parametrize("over", [-2.0, -0.3, 0.3, 2.0])
def test_a_row_of_a_table_is_met_with_its_own_figures(over):
    """Held for the 120 s that 70 degC needs and longer for none: the row is 70 degC, two minutes; the margin
    is what it is above it (UK equivalents).
    """
    limit = place_named("uk").cook_limit()
    core = 70.5 + over
    curve = CoreCurve(piece="leg", time_s=[0.0, 120.0], core_c=[core, core], lift_s=120.0)
    verdict = judge(curve, limit, PROBE)
    assert verdict.margin_k == pytest.approx(over, abs=1e-3)
    assert verdict.values["margin_k"] == pytest.approx(abs(over), abs=1e-3)
    assert verdict.values["peak_c"] == pytest.approx(70.0 + over)
    table = uk_equivalents()
    assert verdict.values["share_frac"] == pytest.approx(120.0 / table.time_at(70.0 + over), rel=1e-3)
    assert verdict.margin_s == pytest.approx(
        max(
            (120.0 if 70.0 + over >= temp else 0.0) - needed
            for temp, needed in zip(table.temp_c, table.time_s, strict=True)
        )
    )
    if over > 0:
        assert verdict.outcome is Outcome.MEETS
        row = verdict.values["limit_c"], verdict.values["hold_s"]
        assert row in list(zip(table.temp_c, table.time_s, strict=True)) and row[1] <= 120.0
        assert row[0] == max(t for t, s in zip(table.temp_c, table.time_s, strict=True) if t <= 70.0 + over)
    else:
        assert verdict.outcome is Outcome.FAILS and "limit_c" not in verdict.values
    both = verdict.values["title"], verdict.values["piece"], verdict.values["guard_k"]
    assert both == (limit.title, "leg", 0.5)


def test_the_fast_margin_is_the_slow_one_on_drawn_curves():
    """Of a rise to one summit, for each kind of rule, one by one and all at once."""
    rng = np.random.default_rng(3)
    limits = [held(75.0, 0.0), held(72.0, 15.0), held(0.0, 0.0, "equivalent", "uk_core"), FSIS]
    time, first, lifts, cores = [], [0], [], []
    for _ in range(4):
        t = np.r_[0.0, np.sort(rng.uniform(10.0, 600.0, 20))]
        top = rng.integers(8, 21)
        core = 4.0 + np.cumsum(np.r_[0.0, rng.uniform(1.0, 8.0, 20)])
        core[top:] = core[top] - 0.4 * np.arange(21 - top)
        time.append(t)
        cores.append(np.column_stack([core, core + 2.0]))
        lifts.append(float(t[-1] - rng.uniform(0.0, 60.0)))
        first.append(first[-1] + 21)
    curves = Curves(np.concatenate(time), np.vstack(cores), np.array(first), np.array(lifts))
    for limit in limits:
        found = margins_k(curves, limit, 0.7, (5.0, 12.0))
        for k, (t, core, lift) in enumerate(zip(time, cores, lifts, strict=True)):
            for piece, fat in enumerate((5.0, 12.0)):
                alone = margin_k(t, core[:, piece], lift, limit, 0.7, fat)
                exact = Evidence(kind=EvidenceKind.PROBE, error_k=0.7)
                slow = judge(
                    CoreCurve(piece="x", time_s=t, core_c=core[:, piece], lift_s=lift, fat_pct=fat),
                    limit,
                    exact,
                )
                assert found[k, piece] == pytest.approx(alone, abs=1e-6)
                assert alone == pytest.approx(slow.margin_k, abs=2e-3)
    with pytest.raises(InputError, match="instant, table or equivalent"):
        margin_k(time[0], cores[0][:, 0], 300.0, held(1.0, 0.0, "log_reduction"), 0.0)


def test_a_curve_ends_where_it_is_cut_and_holds_what_it_holds():
    """A tent of 1 K/s up and 2 K/s down holds 60 s where it is 60 * 2/3 below its summit."""
    time, core = np.array([0.0, 100.0, 150.0]), np.array([0.0, 100.0, 0.0])
    cut = until(time, core, 120.0)
    assert [list(x) for x in cut] == [[0.0, 100.0, 120.0], [0.0, 100.0, 60.0]]
    assert [list(x) for x in until(time, core, 100.0)] == [[0.0, 100.0], [0.0, 100.0]]
    assert until(time, core, 151.0)[0] is time
    assert held_level_c(time, core, 60.0) == pytest.approx(60.0, abs=1e-6)
    assert held_level_c(time, core, 0.0) == 100.0
    assert held_level_c(time, core, 150.0) == pytest.approx(0.0, abs=1e-6)
    assert longest_above_s(time, core, 60.0) == pytest.approx(60.0)
    assert first_above_s(time, core, 60.0) == pytest.approx(60.0) and first_above_s(time, core, 101.0) is None
    twice = np.array([0.0, 80.0, 80.0, 10.0, 90.0, 90.0, 90.0])
    assert longest_above_s(np.arange(0.0, 70.0, 10.0), twice, 80.0) == pytest.approx(21.25)


def test_lethality_of_a_straight_rise_is_its_integral():
    """10^((T - 70) / 10) over a rise of 0.1 K/s from 50 to 80 degC: z / (r ln 10) times the difference; no
    credit below 60, none more above 75.
    """
    rise, scale = np.array([0.0, 300.0]), 10.0 / (0.1 * log(10.0))
    core = np.array([50.0, 80.0])
    assert equivalent_time_s(rise, core, 70.0, 10.0) == pytest.approx(scale * (10.0 - 0.01))
    some = scale * (10.0**0.5 - 0.1) + 50.0 * 10.0**0.5
    assert equivalent_time_s(rise, core, 70.0, 10.0, 60.0, 75.0) == pytest.approx(some)
    assert log_reduction(rise, core, 4.0, 70.0, 10.0, 60.0, 75.0) == pytest.approx(some / 4.0)
    assert equivalent_time_s([0.0, 10.0], [70.0, 70.0], 70.0, 10.0) == pytest.approx(10.0)


def test_a_table_between_its_cells_and_the_rate_it_earns():
    """Halfway between 60 s and 15 s it is the 30 s of their geometric mean; an instant row earns a second."""
    table = TimeTable("x", (60.0, 70.0, 80.0, 90.0), (240.0, 60.0, 15.0, 0.0), 1.0)
    for temp, time in (
        (59.9, None),
        (60.0, 240.0),
        (65.0, 120.0),
        (75.0, 30.0),
        (80.0, 15.0),
        (85.0, exp(0.5 * log(15.0))),
        (90.0, 0.0),
        (99.0, 0.0),
    ):
        found = table.time_at(temp)
        assert (found is None) if time is None else found == pytest.approx(time)
    rate = table.rate(np.array([59.9, 60.0, 65.0, 80.0, 95.0]))
    assert rate == pytest.approx([0.0, 1 / 240.0, 1 / 120.0, 1 / 15.0, 1.0])
    ends = TimeTable("x", (60.0, 70.0), (240.0, 60.0), 1.0)
    assert ends.time_at(75.0) == 60.0
    assert table.share(np.array([0.0, 60.0]), np.array([65.0, 65.0])) == pytest.approx(0.5)
    ramp = table.share(np.array([0.0, 100.0]), np.array([60.0, 70.0]))
    assert ramp == pytest.approx((1 / 60 - 1 / 240) / log(4.0) * 100.0, rel=1e-6)
    flat = np.array([2.0, 2.0, 0.0, 3.0, 1.0])
    other = np.array([2.0, 2.0 + 1e-7, 5.0, 0.0, np.e])
    assert log_mean(flat, other) == pytest.approx([2.0, 2.0 + 5e-8, 0.0, 0.0, np.e - 1.0])
    assert log_mean(np.array([1.0]), np.array([1.0 + 2e-6]))[0] == pytest.approx(1.0 + 1e-6, abs=1e-9)
    assert log_mean(np.array([1.0]), np.array([1.5]))[0] == pytest.approx(0.5 / log(1.5))
    for fat, column in ((0.2, 1), (1.0, 1), (1.1, 2), (11.5, 12), (99.0, 12)):
        assert (
            fsis_poultry.__wrapped__("chicken", fat).time_s == fsis_poultry("chicken", float(column)).time_s
        )


def verdict(peak_c: float, evidence, limit=LIMIT, piece="x"):
    curve = CoreCurve(piece=piece, time_s=[0.0, 600.0], core_c=[4.0, peak_c], lift_s=600.0)
    return judge(curve, limit, evidence)


def test_the_lowest_margin_speaks_for_a_load_and_what_is_missing_is_said_once():
    scouting = Evidence(kind=EvidenceKind.SCOUTING)
    calibrated = Evidence(kind=EvidenceKind.CALIBRATED)
    found = facts_of(
        [
            verdict(80.0, calibrated, piece="thigh"),
            verdict(77.0, scouting, piece="wing"),
            verdict(76.0, calibrated, piece="drum"),
            verdict(79.0, scouting, piece="breast"),
        ]
    )
    assert found.prediction is Prediction.OVER and found.margin_k == pytest.approx(1.0)
    assert (found.level_c, found.title, found.proven, found.short) == (75.0, "T", False, False)
    assert found.missing == scouting.missing() and found.evidence == ""
    assert (found.calibrated, found.to_probe) == (("drum", "thigh"), ("wing", "breast"))
    proven = facts_of([verdict(74.0, PROBE), verdict(90.0, PROBE)])
    assert (proven.prediction, proven.proven, proven.short) == (Prediction.SHORT, True, True)
    assert proven.evidence == EvidenceKind.PROBE and proven.calibrated == ()
    house = facts_of([verdict(76.0, PROBE, house_limit(75.0))])
    assert (house.prediction, house.title) == (Prediction.NO_RULE, "house target")
    none = facts_of([verdict(76.0, PROBE, None)])
    assert none.margin_k is None and none.why and not none.short


@pytest.mark.parametrize("gauge", [1049.0, 1051.0])
def test_a_lid_may_open_within_a_twentieth_above_its_zero_at_the_lift(gauge):
    found = judge_opening([0.0, 100.0, 200.0], [5e4, gauge, 0.0], 100.0, 1000.0)
    assert found.values == {"gauge_pa": gauge}
    assert (found.outcome is Outcome.FAILS) == (gauge > 1050.0) == (found.missing == ())
    assert ("must stay shut" in found.sentence) == (gauge > 1050.0)


def test_a_curve_of_one_summit_is_known_as_one():
    """12 degC at 2 s, 70 at 60 s, 40 at 90 s: 55 or more from 45 to 75 s, 70 for a moment, never 71. Warm is
    the first reading more than 1 K up. A curve of two summits is judged reading by reading.
    """
    time = np.array([0.0, 1.0, 2.0, 60.0, 90.0])
    found = Summit.of(time, np.array([10.0, 11.0, 12.0, 70.0, 40.0]))
    assert found is not None and found.low_c == 12.0
    assert found.held_s(np.array([55.0, 70.0, 71.0])) == pytest.approx([30.0, 0.0, 0.0])
    assert Summit.of(time, np.array([10.0, 60.0, 20.0, 70.0, 40.0])) is None
    rising = Summit.of(time, np.array([10.0, 20.0, 30.0, 50.0, 70.0]))
    assert rising is not None and rising.held_s(np.array([50.0])) == pytest.approx([30.0])


def test_a_birthday_counts_on_its_day():
    born = dt.date(2008, 3, 15)
    assert [years_on(born, dt.date(2026, 3, d)) for d in (14, 15)] == [17, 18]
    assert [years_on(born, dt.date(2026, m, 15)) for m in (2, 4)] == [17, 18]
    assert years_on(dt.date(1926, 3, 15), dt.date(2026, 3, 15)) == 100
    assert years_on(dt.date(2026, 3, 15), dt.date(2026, 3, 15)) == 0
    for wrong in (dt.date(2026, 3, 16), dt.date(1925, 3, 15)):
        with pytest.raises(InputError, match="birthday"):
            years_on(wrong, dt.date(2026, 3, 15))
    assert judge_age("us_federal", "", None, dt.date(2026, 1, 1)).outcome is Outcome.MEETS
    assert judge_age("us_federal", "fryer", None, dt.date(2026, 1, 1)).outcome is Outcome.UNKNOWN
    assert judge_age("atlantis", "fryer", born, dt.date(2026, 1, 1)).outcome is Outcome.UNKNOWN
    assert judge_age("us_federal", "fryer", born, dt.date(1900, 1, 1)).outcome is Outcome.UNKNOWN
    assert [judge_age("atlantis", "fryer", born, dt.date(2026, 3, d)).minor for d in (14, 15)] == [
        True,
        False,
    ]
    assert not judge_age("atlantis", "fryer", None, dt.date(2026, 3, 14)).minor


def test_an_edition_holds_from_its_day_on():
    """And an older one on an older day, never a newer than the place adopted."""
    old, new = (edition_on("us_food_code", dt.date(y, 1, 1)) for y in (2014, 2023))
    assert old.valid_from < new.valid_from
    assert edition_on("us_food_code", new.valid_from) == new
    assert edition_on("us_food_code", new.valid_from - dt.timedelta(days=1)) != new
    place = place_named("us_food_code_2013")
    assert place.cook_limit(Food.POULTRY, dt.date(2026, 1, 1)).edition == place.cook_limit().edition
    us = place_named("us_food_code_2022")
    assert us.cook_limit(Food.POULTRY, dt.date(2014, 1, 1)).edition == old.edition


def entry(number: int, happened_s: float, recorded_s: float, who: str = "Ana", reading: float | None = None):
    start = dt.datetime(2026, 11, 1, 10, 0, tzinfo=dt.UTC)
    return Told(
        number=number,
        happened_at=start + dt.timedelta(seconds=happened_s),
        recorded_at=start + dt.timedelta(seconds=recorded_s),
        who=who,
        reading_n=reading,
    )


def test_late_early_and_block_entries_at_their_edges():
    """Half an hour, a minute, five within two minutes over more than an hour; with numbers and names."""
    edge = [entry(1, 0, 1800), entry(2, 60, 0), entry(3, 0, 1801), entry(4, 61, 0), entry(5, 100, 0)]
    early, late = patterns(edge)
    assert (early.kind, early.values) == ("early", {"count": 2.0, "first": 4.0})
    assert (late.kind, late.values) == ("late", {"count": 1.0, "all": 5.0})

    def blocks(count, apart_s, within_s, who="Ana"):
        step = within_s / (count - 1)
        made = [entry(7 + n, n * apart_s / (count - 1), 3600 + n * step, who) for n in range(count)]
        return [n for n in patterns(made) if n.kind == "block"]

    (block,) = blocks(5, 5400.0, 120.0)
    assert block.values == {"count": 5.0, "who": "Ana", "within_s": 120.0, "hours": 1.5, "first": 7.0}
    assert blocks(5, 5400.0, 120.0, "")[0].values["who"] == "nobody named"
    assert not blocks(4, 5400.0, 120.0) and not blocks(5, 3600.0, 120.0) and blocks(5, 3601.0, 120.0)
    assert not blocks(5, 5400.0, 121.0)
    two = [entry(n, n * 1000.0, 7200.0 + n, "Ana" if n % 2 else "Bo") for n in range(8)]
    assert not [n for n in patterns(two) if n.kind == "block"]


def test_repeated_readings_and_last_digits_at_their_edges():
    """Three in ten of twenty and more; digits only of readings that spread over ten and more."""
    spread = [150.0 + 0.7 * n for n in range(40)]

    def kinds(values):
        return {n.kind: n.values for n in patterns([entry(n, n, n, "", v) for n, v in enumerate(values)])}

    assert kinds([165.04] * 6 + spread[:14]) == {"repeats": {"times": 6.0, "count": 20.0, "value": 165.0}}
    assert kinds([165.0] * 5 + spread[:15]) == {} and kinds([165.0] * 6 + spread[:13]) == {}
    fives = [155.0 + 10.0 * (n % 2) + 0.1 * (n % 4) for n in range(20)]
    found = kinds(fives)["digits"]
    assert (found["times"], found["count"], found["digit"]) == (20.0, 20.0, 5.0)
    assert found["once"] == round(1 / max(10 * 0.1**20, 1e-12))
    near = [155.0 + 0.1 * (n % 4) for n in range(20)]
    assert "digits" not in kinds(near) and "digits" not in kinds(fives[:19])
