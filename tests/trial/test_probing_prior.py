"""What is believed of a program before its pieces are read: the engine's means, and what narrows them."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from frywright.calibrate.plan_probing import expected_path
from frywright.model.calibration import Calibration
from frywright.model.program import Program, Stage
from frywright.physics.inputs import ROUTINE
from frywright.trial.ask import CookRequest, ask
from frywright.trial.kitchens import demo_kitchen
from frywright.trial.probing import PLACES, Road, prior_of

LONGER = Program(
    name="tenders cedar",
    product="tenders",
    fryer="cedar",
    stages=(Stage(set_c=174.0, duration_s=375.0),),
)


@pytest.fixture(scope="module")
def prior():
    kitchen = demo_kitchen()
    return prior_of(kitchen, kitchen.program("tenders cedar"), precision=ROUTINE)


def test_the_full_loads_mean_is_what_the_cook_page_predicts(kitchen, prior):
    """Within the two settings' error: the full load's margin, the engine's and thermometer's error off."""
    full = [m for c, m in zip(prior.classes, prior.mean_k, strict=True) if c.load == "full"]
    told = ask(kitchen, CookRequest(program=kitchen.program("tenders cedar"))).facts.margin_k
    assert len(full) == len(PLACES)
    assert full == pytest.approx([told] * len(PLACES), abs=0.5)


def test_every_class_is_uncertain_and_the_covariance_is_sound(prior):
    """Positive definite; no class surer than 2 K, none looser than 10 K."""
    assert np.linalg.eigvalsh(prior.covariance_k2).min() > 0.1
    spread = np.sqrt(np.diag(prior.covariance_k2))
    assert 2.0 < spread.min() <= spread.max() < 10.0


def calibrated(kitchen, error_k, road=None):
    """The kitchen with a tender that was logged as it is in the catalog."""
    own = kitchen.cut("tender")
    made = Calibration(
        cut="tender",
        coating="dredge",
        lid="open",
        half_thickness_m=own.half_thickness_m,
        shape_n=own.shape_n,
        reference_mass_kg=own.reference_mass_kg,
        pieces_count=3,
        mass_low_kg=0.03,
        mass_high_kg=0.06,
        oil_low_c=165.0,
        oil_high_c=180.0,
        start_low_c=2.0,
        start_high_c=5.0,
        error_k=error_k,
        road=road,
    )
    return replace(kitchen, calibrations=(made,))


def test_a_loggers_calibration_takes_readings_off_the_plan(kitchen):
    """Logged to 1.5 K, a program's size is known four times better and fewer readings are needed.

    Draws are whole threes, so the number of one program changes at steps; three are counted together.
    """
    known = calibrated(kitchen, 1.5)
    counts = np.zeros(2)
    for seconds in (310.0, 330.0, 340.0):
        hotter = replace(LONGER, stages=(Stage(set_c=180.0, duration_s=seconds),))
        told, prior = (prior_of(k, hotter, precision=ROUTINE) for k in (known, kitchen))
        assert np.diag(told.covariance_k2).max() < 0.5 * np.diag(prior.covariance_k2).max()
        counts += [sum(map(len, expected_path(p, ()))) for p in (told, prior)]
    assert counts[0] < counts[1]


def test_a_logger_reads_closer_than_a_stem(kitchen, prior):
    """The road changes how far a reading lies from the coldest spot, and nothing else."""
    logged = prior_of(kitchen, kitchen.program("tenders cedar"), Road.LOGGER, ROUTINE)
    assert logged.sigma_k < prior.sigma_k
    assert logged.mean_k == pytest.approx(prior.mean_k)
    assert logged.tau_k == prior.tau_k


def test_a_food_without_rule_or_target_has_no_prior(kitchen):
    """Nothing judges its readings."""
    bare = replace(kitchen, products=tuple(replace(p, house_core_c=None) for p in kitchen.products))
    assert prior_of(bare, bare.program("wedges cedar"), precision=ROUTINE) is None
