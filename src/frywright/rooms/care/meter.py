"""The kitchen's oil meter: how far it is off, how much of an outlook's doubt is its own, and its check on two
oils of known level, asked for when it pays.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import asdict, dataclass
from math import inf, sqrt

from frywright.ledger.facts.fact import Kept
from frywright.ledger.facts.oil import MeterChecked
from frywright.ledger.once import kept_once
from frywright.ledger.store import Store
from frywright.model.business_day import business_time, usual_trade
from frywright.model.errors import InputError
from frywright.model.findings import say
from frywright.model.kitchen import Kitchen
from frywright.model.tongues import Translate
from frywright.oil.cost import Rates
from frywright.oil.outlook import LEAST_READINGS
from frywright.oil.worth import change_money, life_days
from frywright.rooms.care.oil_state import FRESH_PCT, VatState
from frywright.rooms.clock import now
from frywright.rooms.hall import write

KNOWN_PCT, LEAST_APART_PCT = (0.0, 40.0), 8.0
"""Levels of the two oils, and how far they must lie apart to show a meter's gain (own choice)."""
FAR_PCT = 8.0
"""A meter this far off on an oil of known level is broken, or it was another oil (own choice)."""
SERVICE_PCT = 3.0
"""From here on the meter's own manual should be asked (own choice: twice its usual error)."""
CHECK_H, HOLDS_DAYS = 0.25, 30.0
"""Time of a check, two oils read four times each, and how long its figures serve (estimates, no source)."""
LEAST_DAYS = 0.5
"""Days of life gained from which a check is asked where no pay by hour is known (own choice)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class CheckTyped:
    """A check as it was typed."""

    low_known: str
    low_read: str
    high_known: str
    high_read: str
    meter: str = ""
    who: str = ""


def keep_check(
    store: Store, kitchen: Kitchen, typed: CheckTyped, key: str = ""
) -> tuple[Kept[MeterChecked], bool]:
    """Keep a check of the meter, once for each key; from its day on the outlook takes the meter as it was
    found. Raises InputError: a figure that is none, oils too near each other, or a meter so far off that it
    must not be used.
    """
    number, (least, most) = kitchen.site.number, KNOWN_PCT
    low, low_read, high, high_read = (
        number(text.strip().removesuffix("%").strip(), field)
        for field, text in asdict(typed).items()
        if field not in ("meter", "who")
    )
    for field, value in (("low_known", low), ("high_known", high)):
        if not least <= value <= most:
            raise InputError(field, value, "{low} to {high} % polar compounds", low=least, high=most)
    if high - low < LEAST_APART_PCT:
        raise InputError(
            "high_known", high, "at least {apart} points above the fresh oil", apart=LEAST_APART_PCT
        )
    for field, known, read in (("low_read", low, low_read), ("high_read", high, high_read)):
        if abs(read - known) > FAR_PCT or read < 0:
            raise InputError(
                field,
                read,
                "within {far} points of the known level; else do not use this meter, or look at the oil",
                far=FAR_PCT,
            )
    fact = MeterChecked(
        date=business_time(usual_trade(kitchen), now())[0],
        low_known_pct=low,
        low_read_pct=low_read,
        high_known_pct=high,
        high_read_pct=high_read,
        meter=typed.meter.strip()[:80],
        who=typed.who.strip()[:80],
        key=key,
    )
    if not key:
        return write(store, fact), True
    return kept_once(store, MeterChecked, key, lambda: write(store, fact))


@dataclass(frozen=True, slots=True, kw_only=True)
class SplitView:
    """How much sooner a vat's limit may come, in words, and the days of it that are the meter's and the oil's
    doubt; None where it does not matter.
    """

    text: str = ""
    meter_days_n: float | None = None
    oil_days_n: float | None = None


def split_view(state: VatState, tr: Translate = str) -> SplitView:
    """How much sooner than expected a vat's limit may come, and how much of that is the oil's own doubt and
    how much the meter's, in days: the early side is the one that throws oil away.
    """
    if state.readings_count < LEAST_READINGS or state.crossing.never_frac > 0.5:
        return SplitView()
    sure = state.outlook(belief=state.belief.meter_known())
    whole = state.crossing.days_n[1] - state.crossing.soonest_days_n
    own = min(max(sure.days_n[1] - sure.soonest_days_n, 0.0), whole)
    meter = sqrt(whole**2 - own**2)
    text = say(
        "It may come {whole} days sooner: {oil} by doubt of the oil alone, {meter} by doubt of the meter.",
        {"whole": f"{whole:.1f}", "oil": f"{own:.1f}", "meter": f"{meter:.1f}"},
        translate=tr,
    )
    return SplitView(text=text, meter_days_n=round(meter, 1), oil_days_n=round(own, 1))


@dataclass(frozen=True, slots=True, kw_only=True)
class CheckWorth:
    """What a check of the meter would bring: days of life of the vat that gains most, money a month over all
    vats, what it costs, and whether it pays.
    """

    days_n: float
    gain_money: float
    cost_money: float
    pays: bool


def check_worth(kitchen: Kitchen, states: Mapping[str, VatState], rates: Rates) -> CheckWorth:
    """What is gained if the meter were known as a check leaves it: the day on which oil is thrown away is the
    early end of its interval, and that moves out as the interval narrows.
    """
    best, money = 0.0, 0.0
    for state in states.values():
        if state.readings_count < LEAST_READINGS:
            continue
        checked = state.outlook(belief=state.belief.meter_known(state.belief.prior.check_sd_pct))
        gain = max(0.0, checked.soonest_days_n - state.crossing.soonest_days_n)
        life = life_days(FRESH_PCT, state.belief.life_growth, state.share_frac, FRESH_PCT, state.limit_pct)
        best = max(best, gain)
        if life < inf:
            changes = HOLDS_DAYS / max(life, 1.0)
            money += changes * gain / max(life + gain, 1.0) * change_money(state.fryer.oil_mass_kg, rates)
    cost = CHECK_H * rates.hour_money
    pays = money > cost if rates.hour_money > 0 else best >= LEAST_DAYS
    return CheckWorth(days_n=best, gain_money=money, cost_money=cost, pays=pays)


def meter_view(
    store: Store, kitchen: Kitchen, states: Mapping[str, VatState], rates: Rates, tr: Translate = str
) -> dict[str, object]:
    """The meter in words: its last check, how far it is off, and whether another one would pay."""
    worth, currency = check_worth(kitchen, states, rates), usual_trade(kitchen).currency
    last = max((e.fact for e in store.facts(MeterChecked)), key=lambda c: c.date, default=None)
    found: dict[str, object] = {"worth": asdict(worth), "ask": "", "last": "", "service": ""}
    if last:
        low, high = last.low_read_pct - last.low_known_pct, last.high_read_pct - last.high_known_pct
        found["last"] = say(
            "Checked {date}: {low} points off on fresh oil, {high} on worn oil. Readings are put right"
            " by it.",
            {"date": last.date.isoformat(), "low": f"{low:+.1f}", "high": f"{high:+.1f}"},
            translate=tr,
        )
        if max(abs(low), abs(high)) >= SERVICE_PCT:
            found["service"] = tr(
                "That is a lot. Adjust it by its manual or send it in, then check it again."
            )
    if worth.pays:
        gain = {"days": f"{worth.days_n:.1f}", "money": f"{currency}{worth.gain_money:.2f}"}
        found["ask"] = say(
            "Check the meter on two oils: oil could be kept up to {days} days longer, worth about {money} a"
            " month."
            if worth.gain_money > 0
            else "Check the meter on two oils: oil could be kept up to {days} days longer.",
            gain,
            translate=tr,
        )
    return found
