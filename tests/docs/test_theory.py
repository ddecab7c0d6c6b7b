"""Figures that the pages of theory name are those the program counts with."""

from __future__ import annotations

from pathlib import Path

import pytest

from frywright.calibrate import ahead, belief, family, placement, plan_probing
from frywright.design import break_even
from frywright.model import calibration
from frywright.trial import at_lift, probing

DOCS = Path(__file__).parents[2] / "docs"
SIZE, PIECE, SHOWN = family.SCOUTING, family.CALIBRATED, break_even.LEAST_SHARE
CLAIMS = {
    "theory/live.md": (
        f"{family.SOLVED} draws of what is not known",
        f"{family.ABOVE_K:g} K above the limit is fitted",
        f"one for each of {len(family.LEVELS)} shares",
        f"{ahead.DRAWS} draws, each a piece ({len(family.NAMES)} numbers)".replace(
            "5 numbers", "five numbers"
        ),
        f"({ahead.MISFIT_K:g} K, forgotten over {ahead.MISFIT_S:g} s)",
        f"`e` noise of {ahead.NOISE_K:g} K",
        f"fewer than {100 * ahead.LEAST_SHARE:g} % of the draws still count",
        f"({ahead.WIDER_N:g} times as wide, a tenth from the prior)",
        f"again as {ahead.AGAIN_COUNT} means",
        f"an offset of {ahead.OIL_OFFSET_K:g} K and a misfit of {ahead.OIL_MISFIT_K:g} K",
        f"| size | {100 * SIZE.size_ln:g} %; calibrated {100 * PIECE.size_ln:g} %;"
        f" not weighed {100 * family.UNWEIGHED_LN:g} % more;",
        f"| shape | {SIZE.shape_n:g}; calibrated {PIECE.shape_n:g} |",
        f"| start temperature | {SIZE.start_k:g} K around",
        f"| coating water | {100 * SIZE.film_ln:g} % |",
        f"| oil | {SIZE.oil_k:g} K |",
        f"half normal, {100 * ahead.PLACE_SD:g} % of the way to the surface",
        f"| lag of the probe | {ahead.LAG_S:g} s, by a factor of 1.6 |",
        f"| moment of the drop | {ahead.LATE_SD_S:g} s |",
        "within five standard deviations is left out (a knock, a spike); eight in a row",
        f"{ahead.VENT_REST_S:g} s before to {ahead.VENT_REST_S:g} s after, are left out",
    ),
    "theory/evidence.md": (
        f"at least {100 * belief.COVERAGE:g} % of such pieces are over it",
        f"taken {belief.LOW_Z:g} spreads below the mean",
        f"the half thickness of each cut ({100 * probing.SIZE_SD:g} %, or",
        f"lie {probing.PLACE_SD_K:g}, {probing.LOAD_SD_K:.1f} and {probing.CLASS_SD_K:g} K beside it",
        f"*Meets*: chance {100 * plan_probing.ENOUGH:g} %",
        f"a chance under {100 * plan_probing.HOPELESS:g} %, or {plan_probing.MOST_READINGS} readings",
        "readings at eight depths",
    ),
    "theory/break-even.md": (
        f"{break_even.FIRST} of 50,000 drawn loads are solved at eight changes",
        f"{break_even.NEAR} loads whose side is least sure",
        "a quarter of such loads fails and a quarter passes, six times at most",
        f"{break_even.COUNTED} loads are drawn, by how unsure their side is, a tenth of them as they come",
        f"fewer than {break_even.SEVERAL} of the {break_even.COUNTED} fail",
    ),
    "how-to/probe-logs.md": (
        f"(weights ± {100 * calibration.MASS_SHARE:g} %, oil ± {calibration.OIL_K:g} K,"
        f" start ± {calibration.START_K:g} K",
    ),
    "how-to/program-desk.md": (f"for any share from {100 * SHOWN:g} to 50 %",),
}
WORDS = {
    "five": ahead.SURPRISE_SD,
    "five numbers": len(family.NAMES),
    "eight in a row": ahead.MOVED_COUNT,
    "eight depths": len(placement.PLACES),
    "eight changes": break_even.LEVELS,
    "six times": break_even.ROUNDS,
}
"""Counts that the pages write as words."""


@pytest.mark.parametrize("page", CLAIMS)
def test_a_page_names_the_figures_of_the_code(page):
    """Each sentence with its figure filled in from the code, however the lines are broken."""
    text = " ".join((DOCS / page).read_text("utf-8").split())
    assert [claim for claim in CLAIMS[page] if claim not in text] == []


def test_counts_in_words_are_those_of_the_code():
    """And the factor of a lag, the tenths, and the size known for readings at the lift."""
    numbers = {"five": 5, "six": 6, "eight": 8}
    assert {words: numbers[words.split()[0]] for words in WORDS} == WORDS
    assert round(2.718281828**ahead.LAG_LN, 1) == 1.6
    assert ahead.PRIOR_SHARE == break_even.PLAIN_SHARE == 0.1
    assert break_even.DRAWN == 50_000
    assert family.SCOUTING.shape_n == at_lift.SHAPE_SD
