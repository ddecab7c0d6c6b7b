"""Two facts, never one word: the sign of the prediction, the evidence behind it, and which rule speaks of
which food.
"""

from __future__ import annotations

import numpy as np
import pytest

from frywright.catalog import load
from frywright.model.errors import DataError
from frywright.model.food import Food
from frywright.verdicts.evidence import Evidence, EvidenceKind
from frywright.verdicts.facts import Prediction, facts_from, facts_of
from frywright.verdicts.judge import CoreCurve, judge
from frywright.verdicts.limits import HOUSE
from frywright.verdicts.place import place_named

PLACES = [j["key"] for j in load.table("standards/jurisdictions.toml")["jurisdiction"]]
SCOUTING, PROBE = Evidence(kind=EvidenceKind.SCOUTING), Evidence(kind=EvidenceKind.PROBE)
US = place_named("us_food_code_2022")


def verdict(peak_c: float, limit, evidence=SCOUTING, hold_s: float = 120.0):
    t = np.array([0.0, 480.0, 480.0 + hold_s, 660.0])
    return judge(
        CoreCurve(piece="x", time_s=t, core_c=[4.0, peak_c, peak_c, 40.0], lift_s=600.0), limit, evidence
    )


@pytest.mark.parametrize(("peak_c", "says"), [(70.0, Prediction.SHORT), (80.0, Prediction.OVER)])
@pytest.mark.parametrize("evidence", [SCOUTING, PROBE])
def test_the_sign_of_the_prediction_does_not_hang_on_the_evidence(peak_c, says, evidence):
    """Over or short is told with or without evidence; proven is told apart from it."""
    facts = facts_of(
        [
            verdict(90.0, US.cook_limit(), evidence),
            verdict(peak_c, US.cook_limit(), evidence),
        ]
    )
    assert facts.prediction is says
    assert facts.short == (says is Prediction.SHORT)
    assert facts.margin_k == pytest.approx(peak_c - (165.0 - 32.0) / 1.8)
    assert facts.proven == (evidence is PROBE)
    assert bool(facts.missing) != facts.proven


def test_evidence_of_a_short_piece_is_never_read_as_praise():
    """Proven and short stand in one word."""
    from frywright.trial.predicted import show_facts

    limit = US.cook_limit()
    assert show_facts(facts_of([verdict(70.0, limit, PROBE)]), "us").proven_word == "proven short"
    assert show_facts(facts_of([verdict(80.0, limit, PROBE)]), "us").proven_word == "proven"


def test_one_unproven_piece_leaves_the_load_unproven():
    """Proven means every piece."""
    limit = US.cook_limit()
    assert not facts_of([verdict(90.0, limit, PROBE), verdict(90.0, limit)]).proven


def test_a_food_without_a_rule_is_its_own_state():
    """No rule: no margin, the reason; with a house target a signed margin, still told as no rule."""
    bare = facts_of(
        [judge(CoreCurve(piece="x", time_s=[0, 1], core_c=[4, 90], lift_s=1), None, SCOUTING, "because")]
    )
    assert (bare.prediction, bare.margin_k, bare.why) == (Prediction.NO_RULE, None, "because")
    assert not bare.short
    for peak, short in ((80.0, True), (90.0, False)):
        facts = facts_of([verdict(peak, US.limit_of([Food.PLANT], 85.0), PROBE)])
        assert facts.prediction is Prediction.NO_RULE
        assert facts.margin_k == pytest.approx(peak - 85.0)
        assert facts.short is short
        assert facts.proven


@pytest.mark.parametrize("place", PLACES)
@pytest.mark.parametrize("food", list(Food))
def test_every_food_has_a_rule_in_every_place_or_a_reason(place, food):
    """One or the other, never both, never neither; and the rule says that it applies to the food."""
    rule, why = place_named(place).cook_limit(food), place_named(place).why_no_rule(food)
    assert (rule is None) == bool(why)
    if rule:
        assert food in rule.applies_to
    assert place_named(place).rules == {} or place_named(place).cook_limit(Food.POULTRY) is not None


WANTED = {  # place: rule of poultry, fish, potato
    "us_food_code_2013": ("us_food_code", "us_food_code_fish", None),
    "us_food_code_2017": ("us_food_code", "us_food_code_fish", None),
    "us_food_code_2022": ("us_food_code", "us_food_code_fish", None),
    "us_fsis_inspected": ("fsis_poultry", None, None),
    "uk": ("uk_core", "uk_core", "uk_core"),
}


@pytest.mark.parametrize("place", PLACES)
def test_every_cut_of_the_catalog_is_looked_up_in_every_place(place):
    """The table above, cut by cut; nothing by accident."""
    names = {cut.key for cut in load.cuts().values()}
    assert {"fillet", "wedge", "breast_half"} <= names
    for cut in load.cuts().values():
        rule = place_named(place).cook_limit(cut.food)
        wanted = WANTED.get(place, (None, None, None))[[Food.POULTRY, Food.FISH, Food.PLANT].index(cut.food)]
        assert (rule.rule if rule else None) == wanted, cut.key
    assert {c.key for c in load.cuts().values() if c.food is not Food.POULTRY} == {"fillet", "wedge"}


@pytest.mark.parametrize("place", ["us_food_code_2013", "us_food_code_2017", "us_food_code_2022"])
def test_fish_is_judged_by_63_degrees_for_15_seconds(place):
    """Food Code 3-401.11(A)(1): 63 degC (145 degF) for 15 s, as adopters print it (South Dakota
    44:02:07:28).
    """
    limit = place_named(place).cook_limit(Food.FISH)
    assert limit.level_c == pytest.approx((145.0 - 32.0) / 1.8)
    assert limit.hold_s == 15.0
    for peak, hold, met in ((63.0, 16.0, True), (63.0, 5.0, False), (62.5, 60.0, False)):
        t = np.array([0.0, 300.0, 300.0 + hold, 300.0 + hold + 0.1])
        curve = CoreCurve(piece="fillet", time_s=t, core_c=[4.0, peak, peak, 20.0], lift_s=300.0 + hold)
        assert (judge(curve, limit, PROBE).margin_k >= 0.0) == met


def test_a_mixed_product_is_judged_by_its_strictest_food():
    """Chicken among potatoes is chicken; a house target replaces no rule."""
    assert US.limit_of([Food.PLANT, Food.POULTRY], 60.0) == US.cook_limit()
    assert US.limit_of([Food.FISH, Food.POULTRY]) == US.cook_limit()
    assert US.limit_of([Food.PLANT], 60.0).rule == HOUSE
    assert US.limit_of([Food.PLANT]) is None


def test_a_house_target_out_of_reach_is_refused():
    """Water boils at 100 degC: no core of a fried piece passes it."""
    from frywright.catalog.kitchen import parse_kitchen
    from frywright.trial.kitchens import demo_text

    with pytest.raises(DataError, match="house_core"):
        parse_kitchen(demo_text().replace("house_core_f = 185", "house_core_f = 285"))


@pytest.mark.parametrize(
    ("margin_k", "house", "prediction"),
    [
        (0.0, False, Prediction.OVER),
        (0.4, False, Prediction.OVER),
        (-0.01, False, Prediction.SHORT),
        (-0.01, True, Prediction.NO_RULE),
        (5.0, True, Prediction.NO_RULE),
    ],
)
def test_a_margin_is_over_at_nothing_and_short_below_it(margin_k, house, prediction):
    """Half a kelvin to spare is not short; a house target is no rule of the place."""
    told = {"title": "rule", "level_c": 74.0, "evidence": "probe", "missing": ()}
    found = facts_from(margin_k, house=house, **told)
    assert (found.prediction, found.margin_k, found.proven) == (prediction, margin_k, True)
    assert not facts_from(margin_k, house=house, **{**told, "missing": ("a check",)}).proven
