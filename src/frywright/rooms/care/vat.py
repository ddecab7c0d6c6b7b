"""One vat's oil: what was told of it, when it must go, what it costs, and what a change would buy."""

from __future__ import annotations

import datetime as dt
import re
from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import Any, Literal, get_args

from frywright.ledger.facts.fact import Kept
from frywright.ledger.facts.oil import OilAct, OilDone, OilLimitSet, OilRefused
from frywright.ledger.once import kept_once
from frywright.ledger.store import Store
from frywright.model.business_day import business_time, day_typed, moment_of, usual_trade
from frywright.model.errors import InputError, one_of
from frywright.model.findings import say
from frywright.model.fryer import Fryer
from frywright.model.kitchen import Kitchen, Site
from frywright.model.tongues import Translate
from frywright.model.units import LB, show
from frywright.oil.ageing import share_for_ever
from frywright.oil.outlook import HORIZON_DAYS, LEAST_READINGS
from frywright.rooms.care.meter import split_view
from frywright.rooms.care.oil_state import CHANGES, FRESH_PCT, VatState, vat_states
from frywright.rooms.clock import now
from frywright.rooms.hall import typed, write
from frywright.rooms.standing import oil_limit_here
from frywright.verdicts.place import place_of

ACTS: tuple[OilAct, ...] = get_args(OilAct)
LOOKED_AT = {"acid": ("acid_n", 20.0), "colour": ("colour_n", 100.0)}
"""Acid value [mg KOH/g] and colour on the kitchen's own scale: kept and shown, most that is accepted; no
limit of theirs is in the catalog.
"""
CARTON_KG = 35 * LB
"""Common practice, no source."""
CARTONS = re.compile(r"(.*)(?:cartons?|jugs?|cajas?)", re.IGNORECASE)
LIKELY_READING_PCT = (0.0, 60.0)
LEAST_FRESH_PCT, DROP_PCT = 1.0, 6.0
"""Below the first is no oil, and oil gets no younger by more than the second: fresh oil has some 4 % (common
practice), two readings of a meter differ by some points (own rules). Such a reading is asked for twice.
"""
EARLIEST_DAYS = 400
"""How far back an entry may be dated (project's own rule)."""
DISCARD_CHANCE_FRAC = 0.05
Advice = Literal["discard", "keep", "unknown"]
RISE_C = 5.0


def tell_oil(
    store: Store, kitchen: Kitchen, values: Mapping[str, Any], key: str = "", at: dt.datetime | None = None
) -> tuple[Kept[OilDone], bool]:
    """Keep what was told of a vat's oil, once for each key. Raises InputError: impossible amounts; the raw
    text is kept with the reason, so that nothing is lost.

    Parameters
    ----------
    values : vat, what (top_up, reading, filter, discard, fill), amount as typed (``5 lb``, ``1 carton``,
        ``17.5``), after (the reading followed the top-up), twice (the meter read so again), who, how; date
        of an earlier business day
    """
    try:
        moment = at or told_moment(kitchen, typed(values, "date"))
        fact = oil_fact(kitchen, values, key, moment)
        if not values.get("twice"):
            check_likely(store, kitchen, fact)
    except InputError as error:
        keep_refused(store, values, error)
        raise
    if not key:
        return write(store, fact, moment), True
    return kept_once(store, OilDone, key, lambda: write(store, fact, moment))


def told_moment(kitchen: Kitchen, text: str) -> dt.datetime:
    """When an entry happened: now, or at the close of an earlier business day as it was typed.
    Raises InputError: no such day, one to come, or one of more than EARLIEST_DAYS ago.
    """
    trade, moment = usual_trade(kitchen), now()
    today = business_time(trade, moment)[0]
    if not text or text == today.isoformat():
        return moment
    first = today - dt.timedelta(days=EARLIEST_DAYS)
    day = day_typed(text)
    if not first <= day < today:
        raise InputError("date", repr(text), "a day from {first} to today", first=first.isoformat())
    return moment_of(trade, day, trade.closes_s)


def check_likely(store: Store, kitchen: Kitchen, fact: OilDone) -> None:
    """Whether a reading can be of the oil that is in the vat, as far as one reading can say.
    Raises InputError: less polar than fresh oil, or far below the last reading of oil that nobody changed.
    """
    reading, name = fact.reading_pct, kitchen.fryer(fact.vat).name
    if reading is None:
        return
    if reading < LEAST_FRESH_PCT:
        raise InputError(
            "amount",
            f"{reading:g} %",
            "more: fresh oil has about {fresh} %. Look at the meter; if it reads so again, say that it was"
            " read twice",
            where=name,
            fresh=f"{FRESH_PCT:g}",
        )
    last, share = _last_reading(store, kitchen, fact)
    least = None if last is None else last - share * (last - FRESH_PCT) - DROP_PCT
    if least is not None and reading < least:
        raise InputError(
            "amount",
            f"{reading:g} %",
            "about {last} %, as it was read last: oil gets no younger. If it was changed, enter that first;"
            " if the meter reads so again, say that it was read twice",
            where=name,
            last=f"{last:g}",
        )


def _last_reading(store: Store, kitchen: Kitchen, fact: OilDone) -> tuple[float | None, float]:
    """The last reading of the oil in a vat up to the day of a new one, and the share topped up since."""
    mass_kg = 0.0
    for item in store.facts(OilDone, newest_first=True):
        old = item.fact
        if old.vat != fact.vat:
            continue
        if old.what in CHANGES or old.date > fact.date:
            return None, 0.0
        if old.reading_pct is not None:
            return old.reading_pct, min(1.0, mass_kg / kitchen.fryer(fact.vat).oil_mass_kg)
        mass_kg += old.mass_kg or 0.0
    return None, 0.0


def keep_refused(store: Store, values: Mapping[str, Any], error: InputError) -> None:
    """Keep what was refused as it was typed, with the reason."""
    typed = {k: str(v)[:200] for k, v in values.items()}
    write(store, OilRefused(raw=typed, reason=str(error)))


def oil_fact(kitchen: Kitchen, values: Mapping[str, Any], key: str, moment: dt.datetime) -> OilDone:
    """What was told of a vat's oil, for whoever writes it, alone or together with others.
    Raises InputError: as :func:`tell_oil`.
    """
    fryer = kitchen.fryer(str(values.get("vat", "")))
    text, what = typed(values, "amount"), one_of(ACTS, values.get("what"), "what")
    fact = OilDone(
        vat=fryer.key,
        what=what,
        raw=text[:80],
        who=str(values.get("who", ""))[:80],
        how=str(values.get("how", "meter"))[:20],
        key=key,
        date=business_time(usual_trade(kitchen), moment)[0],
    )
    return replace(fact, **_figures(kitchen, fryer, what, text, bool(values.get("after"))))


def _figures(kitchen: Kitchen, fryer: Fryer, what: str, text: str, after: bool) -> dict[str, Any]:
    """Figures of an act by the fact's fields; an impossible one is refused."""
    if what == "top_up":
        mass = _mass(text, kitchen.site)
        if not 0 < mass <= fryer.oil_mass_kg:
            raise InputError(
                "amount",
                text,
                "above 0, up to the oil of the vat: {most}",
                where=fryer.name,
                most=show(fryer.oil_mass_kg, "kg", kitchen.site.units),
            )
        return {"mass_kg": mass}
    if what == "reading":
        value = _plain(
            kitchen.site, fryer, text.removesuffix("%"), "polar compounds in per cent, such as 17.5"
        )
        low, high = LIKELY_READING_PCT
        if not low <= value <= high:
            raise InputError(
                "amount", text, "0 to 60 % polar compounds; look at the meter again", where=fryer.name
            )
        return {"reading_pct": value, "peak": not after}
    if what in LOOKED_AT:
        name, most = LOOKED_AT[what]
        value = _plain(kitchen.site, fryer, text, "a number from 0 to {most}", most=most)
        if not 0 <= value <= most:
            raise InputError("amount", repr(text), "a number from 0 to {most}", where=fryer.name, most=most)
        return {name: value}
    return {}


def _plain(site: Site, fryer: Fryer, text: str, allowed: str, **values: Any) -> float:
    """A number without a unit; a text that is none is told what is wanted, one with two readings both."""
    try:
        return site.number(text, "amount")
    except InputError as error:
        if error.values:
            raise
        raise InputError("amount", repr(text), allowed, where=fryer.name, **values) from error


def _mass(text: str, site: Site) -> float:
    found = CARTONS.fullmatch(text.strip())
    if found:
        return site.number(found[1].strip() or "1", "amount") * CARTON_KG
    return site.read(text, "mass", "amount")


def set_limit(store: Store, kitchen: Kitchen, house_pct: float, who: str, reason: str) -> Kept[OilLimitSet]:
    """Set a house limit; a looser one than before needs a name and a reason, and never passes the place's.
    Raises InputError: a limit out of range, or looser without name and reason.
    """
    if not 5.0 <= house_pct <= 30.0:
        raise InputError("house limit", house_pct, "5 to 30 % polar compounds")
    if house_pct > oil_limit_here(store, kitchen)[0] and not (who.strip() and reason.strip()):
        raise InputError("house limit", house_pct, "tighter than before, or given with a name and a reason")
    old = store.current_facts(OilLimitSet)
    chosen = OilLimitSet(place=place_of(kitchen).oil, house_pct=house_pct, who=who[:80], reason=reason[:200])
    return write(store, chosen, replaces=old[-1].number if old else None)


FEW = (
    "Unknown: fewer than four readings of this vat. By default figures the limit would be reached about"
    " {when}; read it."
)
FEW_LATER = (
    "Unknown: fewer than four readings of this vat. By default figures the limit would not be reached within"
    " {days} days; read it."
)
KEEP = "Keep: the limit is reached about {when}, most likely between {first} and {last}."
KEEP_OPEN = (
    "Keep: the limit is reached about {when}, most likely not before {first}; it may take over {days} days."
)
KEEP_LATER = (
    "Keep: the limit is most likely not reached within {days} days. Taste, colour, smoke and foam still"
    " decide."
)


OVER = (
    "Discard tonight: the last reading, {reading} %, is over {limit} %. In doubt of the meter, check it and"
    " read again."
)
OVER_CHECKED = (
    "Discard tonight: the last reading, {reading} %, is {right} % by the meter's check, over {limit} %. In"
    " doubt read it again."
)
LOWER = "The last reading, {reading} %, is {right} % by the meter's check."


def read_over(state: VatState) -> bool:
    """Whether the last reading of the oil in a vat, put right by the meter's check, is at its limit or over
    it.
    """
    return state.right_pct is not None and state.right_pct >= state.limit_pct


def advised(state: VatState, day: dt.date) -> Advice:
    """What to do with a vat's oil tonight. Where few readings say how it grows, an estimate alone throws none
    away: only a reading that one usual day carries to the limit does.
    """
    few = state.readings_count < LEAST_READINGS
    known = state.right_pct if day in state.read_on else None
    tomorrow = (state.belief.level[0] if known is None else known) + state.belief.growth[0]
    near = tomorrow >= state.limit_pct if few else state.crossing.tomorrow_frac > DISCARD_CHANCE_FRAC
    if near or read_over(state):
        return "discard"
    return "unknown" if few else "keep"


def _advice(state: VatState, day: dt.date, tr: Translate) -> tuple[Advice, str]:
    """What to do with a vat's oil (discard, keep, unknown) and why, in words. A last reading over the limit
    wins over every outlook.
    """
    _, middle, high = state.crossing.days_n
    limit, advice = state.limit_pct, advised(state, day)
    if read_over(state):
        over = OVER if state.right_pct == state.last_reading_pct else OVER_CHECKED
        values = {"reading": state.last_reading_pct, "right": round(state.right_pct or 0.0, 1)}
        return "discard", say(over, {**values, "limit": limit}, translate=tr)
    if advice == "discard":
        near = "Discard tonight: the chance that tomorrow's peak passes {limit} % is {chance_frac}."
        chance = {"limit": limit, "chance_frac": state.crossing.tomorrow_frac}
        return "discard", say(near, chance, translate=tr)
    if advice == "unknown" and state.crossing.tomorrow_frac > DISCARD_CHANCE_FRAC:
        soon = (
            "Unknown: fewer than four readings of this vat. By default figures the chance that tomorrow's"
            " peak passes {limit} % is {chance_frac}: read it tomorrow before the rush."
        )
        chance = {"limit": limit, "chance_frac": state.crossing.tomorrow_frac}
        return "unknown", say(soon, chance, translate=tr)
    if advice == "unknown":
        text = FEW_LATER if middle > HORIZON_DAYS else FEW
        return "unknown", say(text, _dates(day, state), translate=tr)
    dated = KEEP_OPEN if high > HORIZON_DAYS else KEEP
    text = KEEP_LATER if middle > HORIZON_DAYS else dated
    return "keep", say(text, _dates(day, state), translate=tr)


def _put_right(state: VatState, tr: Translate) -> str:
    """Says that the meter's check takes a reading over the limit below it; empty where it does not."""
    reading, right = state.last_reading_pct, state.right_pct
    if reading is None or right is None or not right < state.limit_pct <= reading:
        return ""
    return say(LOWER, {"reading": reading, "right": round(right, 1)}, translate=tr)


def _dates(day: dt.date, state: VatState) -> dict[str, str]:
    """The three days of an outlook; what lies beyond those simulated has none."""
    names = zip(("first", "when", "last"), state.crossing.days_n, strict=True)
    return {
        name: (day + dt.timedelta(days=int(days))).isoformat() for name, days in names if days <= HORIZON_DAYS
    } | {"days": str(HORIZON_DAYS)}


@dataclass(frozen=True, slots=True, kw_only=True)
class VatView:
    """A vat's outlook in words and figures: keep or discard, by when, and what it rests on."""

    vat: str
    name: str
    advice: Advice
    text: str
    level_pct: float
    growth_pct: float
    growth_sd_pct: float
    limit_pct: float
    limit_title: str
    days_n: tuple[float, ...]
    tomorrow_frac: float
    never_frac: float
    readings_count: int
    default: bool
    age_days_count: int
    filled: bool  # whether anybody entered when this oil came in
    top_up: str
    for_ever: str
    acid_n: float | None
    colour_n: float | None
    last_reading_pct: float | None
    oil: str
    split: str
    meter_days_n: float | None
    oil_days_n: float | None


def vat_view(
    store: Store,
    kitchen: Kitchen,
    vat: str,
    today: dt.date | None = None,
    tr: Translate = str,
    states: Mapping[str, VatState] | None = None,
) -> VatView:
    """A vat's outlook as it is shown."""
    day = today or business_time(usual_trade(kitchen), now())[0]
    fryer = kitchen.fryer(vat)
    state, system = (states or vat_states(store, kitchen, day))[fryer.key], kitchen.site.units
    level, (growth, growth_sd) = state.belief.level[0], state.belief.growth
    advice, text = _advice(state, day, tr)
    ever = share_for_ever(state.limit_pct, state.belief.life_growth, FRESH_PCT, at_peak=True)
    split = split_view(state, tr)
    return VatView(
        vat=vat,
        name=state.fryer.name,
        advice=advice,
        text=f"{text} {_put_right(state, tr)}".rstrip(),
        level_pct=round(level, 1),
        growth_pct=round(growth, 2),
        growth_sd_pct=round(growth_sd, 2),
        limit_pct=state.limit_pct,
        limit_title=state.limit_title.say(tr),
        days_n=tuple(round(d, 1) for d in state.crossing.days_n),
        tomorrow_frac=state.crossing.tomorrow_frac,
        never_frac=state.crossing.never_frac,
        readings_count=state.readings_count,
        default=state.readings_count < LEAST_READINGS,
        age_days_count=state.age_days_count,
        filled=bool(state.changed_on),
        top_up=show(state.top_up_kg, "kg", system),
        for_ever=show(min(ever, 1.0) * state.fryer.oil_mass_kg, "kg", system) if ever < 1 else "",
        acid_n=state.acid_n,
        colour_n=state.colour_n,
        last_reading_pct=state.last_reading_pct,
        oil=state.fryer.oil,
        split=split.text,
        meter_days_n=split.meter_days_n,
        oil_days_n=split.oil_days_n,
    )
