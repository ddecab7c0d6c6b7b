"""Age rules by place and day: the law fails, advice is told, nothing known is unknown."""

from __future__ import annotations

import datetime as dt

import pytest

from frywright.model.errors import InputError
from frywright.model.findings import Outcome
from frywright.verdicts.age import judge_age, years_on

DAY = dt.date(2026, 11, 26)


@pytest.mark.parametrize(
    ("born", "restricted", "outcome"),
    [
        ("2010-11-27", "pressure_fryer", Outcome.FAILS),
        ("2010-11-26", "pressure_fryer", Outcome.MEETS),
        ("2009-01-01", "hot_oil", Outcome.MEETS),
        ("2012-01-01", "", Outcome.MEETS),
    ],
)
def test_the_sixteenth_birthday_decides(born, restricted, outcome):
    """29 CFR 570.34 as summarised: under 16 no pressure fryers; a day makes the difference."""
    assert judge_age("us", restricted, dt.date.fromisoformat(born), DAY).outcome is outcome


def test_advice_is_told_and_unknown_stays_unknown():
    """Seventeen may by law, with the advice beside it; no birthday, no rule of the place, a day before the
    rules: unknown.
    """
    young = judge_age("us", "hot_oil", dt.date(2009, 1, 1), DAY)
    assert young.keys == ("advice_hot_oil",)
    assert judge_age("us", "hot_oil", None, DAY).outcome is Outcome.UNKNOWN
    assert judge_age("uk", "hot_oil", dt.date(2000, 1, 1), DAY).outcome is Outcome.UNKNOWN
    assert judge_age("us", "hot_oil", dt.date(1990, 1, 1), dt.date(2009, 1, 1)).outcome is Outcome.UNKNOWN
    assert years_on(dt.date(2008, 2, 29), dt.date(2026, 2, 28)) == 17
    with pytest.raises(InputError):
        judge_age("us", "hot_oil", dt.date(2027, 1, 1), DAY)
