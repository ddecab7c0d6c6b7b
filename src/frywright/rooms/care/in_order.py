"""Whether a step of a commissioning can be true: the plate has its photo, a heat-up takes its energy, and a
leak is looked for a day after the first heat.
"""

from __future__ import annotations

import datetime as dt
from collections.abc import Mapping
from typing import Any

from frywright.care.gates import Step
from frywright.catalog import load as catalog
from frywright.model.business_day import business_time, usual_trade
from frywright.model.errors import InputError
from frywright.model.findings import say
from frywright.model.kitchen import Kitchen
from frywright.model.tongues import Translate
from frywright.model.trade import time_of_day
from frywright.model.units import clock, parse_clock
from frywright.rooms.care.nameplate import Case
from frywright.rooms.clock import now
from frywright.rooms.hall import typed

LEAK_WAIT = dt.timedelta(hours=24)
"""A leak shows when the vat has stood hot and cold again (common practice, no source)."""
LEAST_RISE_K = 50.0
"""Less says nothing of the heaters (own rule)."""
MARKS = {"from_temp": "heated from", "to_temp": "heated to"}
SLACK_FRAC = 0.85
"""What a plate's power, a watch and the amount of oil may be off by together (own estimate)."""


def check_sense(
    case: Case, kitchen: Kitchen, step: Step, values: Mapping[str, Any], moment: dt.datetime
) -> None:
    """Whether what is signed can be so. Raises InputError: a plate without a photo, a heat-up without its
    marks or faster than its power allows, a leak looked for too soon.
    """
    if step.key == "plate" and case.plate and not case.plate.fact.photo:
        raise InputError("photo", "missing", "kept with the plate: take one, then sign", where=step.title)
    if step.key == "leak" and "first_heat" in case.steps:
        since = moment - case.steps["first_heat"].happened_at
        if since < LEAK_WAIT:
            raise InputError(
                "leak",
                say("{hours} h after the first heat", {"hours": round(since.total_seconds() / 3600, 1)}),
                "24 hours after it or later: a leak shows when it has stood hot and cold",
                where=step.title,
            )
    if step.key == "first_heat":
        _heat_up(case, kitchen, step, values)


def _heat_up(case: Case, kitchen: Kitchen, step: Step, values: Mapping[str, Any]) -> None:
    """The heat-up that was timed against the energy it takes, all of the plate's power going into the oil."""
    power_w = case.plate.fact.power_w if case.plate else None
    text = typed(values, "heat_up")
    marks = {name: typed(values, name) for name in ("from_temp", "to_temp")}
    for name, found in marks.items():
        if not found:
            raise InputError(
                MARKS[name], "empty", "the oil's temperature when the watch was pressed", where=step.title
            )
    oil, site = catalog.oils()[case.fryer.oil], kitchen.site
    low_c, high_c = (site.read(found, "temperature", MARKS[name]) for name, found in marks.items())
    if high_c - low_c < LEAST_RISE_K:
        raise InputError(
            MARKS["to_temp"],
            high_c,
            "{least_c} or more: a heat-up is timed from cold oil to the set point",
            where=step.title,
            least_c=low_c + LEAST_RISE_K,
            unit="c",
        )
    if not power_w or not text:
        return
    cp = oil.cp_0c_j_kgk + oil.cp_slope_j_kgk2 * 0.5 * (low_c + high_c)
    least_s = SLACK_FRAC * case.fryer.oil_mass_kg * cp * (high_c - low_c) / power_w
    if parse_clock(text) < least_s:
        raise InputError(
            "heat-up",
            text,
            "{least} or more: at its plate's power no less heats this oil so far",
            where=step.title,
            least=clock(least_s),
        )


def opens_words(case: Case, kitchen: Kitchen, step: Step, tr: Translate) -> str:
    """From when a step that waits can be signed; empty where it waits for nothing."""
    if step.key != "leak" or "first_heat" not in case.steps:
        return ""
    opens = case.steps["first_heat"].happened_at + LEAK_WAIT
    if now() >= opens:
        return ""
    day, second_s = business_time(usual_trade(kitchen), opens)
    return say(
        "Opens on {day} at {at}: 24 hours after the first heat.",
        {"day": day.isoformat(), "at": time_of_day(second_s)},
        translate=tr,
    )
