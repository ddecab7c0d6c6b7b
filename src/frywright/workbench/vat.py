"""One vat's oil: what was told of it, when it must go, what it costs, and what a change would buy."""

from __future__ import annotations

import datetime as dt
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any

import numpy as np

from frywright.catalog import load as catalog
from frywright.model.entry import Recorded
from frywright.model.errors import InputError
from frywright.model.findings import say
from frywright.model.fryer import Fryer
from frywright.model.kitchen import Kitchen
from frywright.model.trade import Trade
from frywright.model.units import LB, parse, show
from frywright.oil.ageing import heat_factor, share_for_ever
from frywright.oil.cost import Rates, bill
from frywright.oil.filling import fill
from frywright.oil.outlook import LEAST_READINGS, Belief, Crossing, Vats, crossing, learn
from frywright.records.store import Store
from frywright.verdicts.limits import oil_limit
from frywright.workbench.book import record
from frywright.workbench.clock import now
from frywright.workbench.day import business_time

KIND, REFUSED, SETTING = "oil_event", "oil_refused", "oil_setting"
EVENTS = ("top_up", "reading", "filter", "discard", "fill")
HOUSE_LIMIT_PCT, FRESH_PCT, CARTON_KG = 24.0, 4.0, 35 * LB
"""House limit where no law is known, fresh oil, carton: common practice, no source; the kitchen's own words win."""
READING_SD_PCT, STRIP_SD_PCT = 1.5, 2.5
"""Error of a meter and of a strip: 1 to 2 points by published comparisons, a strip more (estimate)."""
LIKELY_READING_PCT = (0.0, 60.0)
DISCARD_CHANCE_FRAC, RECENT_DAYS = 0.05, 14
RISE_C = 5.0


@dataclass(frozen=True, slots=True, kw_only=True)
class VatState:
    """A vat today: belief of its oil, when it passes the limit, and the figures behind it."""

    fryer: Fryer
    belief: Belief
    crossing: Crossing
    limit_pct: float
    limit_title: str
    share_frac: float
    readings_count: int
    age_days_count: int
    days_count: int
    top_up_kg: float
    last_reading_pct: float | None


def _trade(kitchen: Kitchen) -> Trade:
    return kitchen.trade or Trade()


def tell_oil(
    store: Store, kitchen: Kitchen, values: Mapping[str, Any], key: str = "", at: dt.datetime | None = None
) -> tuple[Recorded, bool]:
    """Keep what was told of a vat's oil, once for each key.

    Parameters
    ----------
    values : vat, what (top_up, reading, filter, discard, fill), amount as typed (``5 lb``, ``1 carton``, ``17.5``), after (the reading followed the top-up), who, how

    Raises
    ------
    InputError
        Impossible amounts; the raw text is kept with the reason, so that nothing is lost.
    """
    if key:
        known = next((e for e in store.entries(KIND, newest_first=True) if e.entry.payload["key"] == key), None)
        if known is not None:
            return known, False
    try:
        payload = _read(kitchen, values)
    except InputError as error:
        record(store, REFUSED, {"raw": {k: str(v)[:200] for k, v in values.items()}, "reason": str(error)})
        raise
    moment = at or now()
    date, _ = business_time(_trade(kitchen), moment)
    return record(store, KIND, {**payload, "key": key, "date": date.isoformat()}, moment), True


def _read(kitchen: Kitchen, values: Mapping[str, Any]) -> dict[str, Any]:
    fryer = kitchen.fryer(str(values.get("vat", "")))
    what, text = str(values.get("what", "")), str(values.get("amount", "") or "").strip()
    if what not in EVENTS:
        raise InputError("what", repr(what), "one of: {known}", values={"known": ", ".join(EVENTS)})
    out: dict[str, Any] = {
        "vat": fryer.key,
        "what": what,
        "raw": text[:80],
        "who": str(values.get("who", ""))[:80],
        "how": str(values.get("how", "meter"))[:20],
    }
    if what == "top_up":
        mass = _mass(text, str(kitchen.site.units))
        if not 0 < mass <= fryer.oil_mass_kg:
            raise InputError(
                "amount",
                text,
                "above 0, up to the oil of the vat: {most}",
                where=fryer.name,
                values={"most": show(fryer.oil_mass_kg, "kg", str(kitchen.site.units))},
            )
        out["mass_kg"] = mass
    if what == "reading":
        try:
            value = float(text.replace(",", ".").removesuffix("%").strip())
        except ValueError as error:
            raise InputError(
                "amount", repr(text), "polar compounds in per cent, such as 17.5", where=fryer.name
            ) from error
        low, high = LIKELY_READING_PCT
        if not low <= value <= high:
            raise InputError("amount", text, "0 to 60 % polar compounds; look at the meter again", where=fryer.name)
        out |= {"reading_pct": value, "peak": not values.get("after")}
    return out


def _mass(text: str, system: str) -> float:
    word = text.lower().replace(",", ".")
    for name in ("cartons", "carton", "jugs", "jug", "cajas", "caja"):
        if word.endswith(name):
            return (
                float(word.removesuffix(name).strip() or 1) * CARTON_KG
                if _plain(word.removesuffix(name))
                else parse(text, "mass", "amount")
            )
    return parse(f"{text} {'lb' if system == 'us' else 'kg'}" if _plain(text) else text, "mass", "amount")


def _plain(text: str) -> bool:
    return text.strip().replace(",", ".").replace(".", "", 1).isdigit() or not text.strip()


def limit_of(store: Store) -> tuple[float, str]:
    """The limit that holds here: the place's where one is chosen, tightened by the house where it says so; else the house limit."""
    chosen = store.current(SETTING)
    payload: Mapping[str, Any] = chosen[-1].entry.payload if chosen else {"place": "us", "house_pct": HOUSE_LIMIT_PCT}
    return oil_limit(payload["place"], float(payload["house_pct"]))


def set_limit(store: Store, place: str, house_pct: float, who: str, reason: str) -> Recorded:
    """Choose the place and a house limit; a looser house limit than before needs a name and a reason, and never passes the place's.

    Raises
    ------
    InputError
        An unknown place, a limit out of range, or looser without name and reason.
    """
    oil_limit(place, house_pct)
    if not 5.0 <= house_pct <= 30.0:
        raise InputError("house limit", house_pct, "5 to 30 % polar compounds")
    if house_pct > limit_of(store)[0] and not (who.strip() and reason.strip()):
        raise InputError("house limit", house_pct, "tighter than before, or given with a name and a reason")
    old = store.current(SETTING)
    return record(
        store,
        SETTING,
        {"place": place, "house_pct": house_pct, "who": who[:80], "reason": reason[:200]},
        replaces=old[-1].number if old else None,
    )


def vat_state(store: Store, kitchen: Kitchen, vat: str, today: dt.date | None = None) -> VatState:
    """A vat's oil today.

    Raises
    ------
    InputError
        An unknown vat.
    """
    fryer = kitchen.fryer(vat)
    day = today or business_time(_trade(kitchen), now())[0]
    events = [e.entry.payload for e in store.entries(KIND) if e.entry.payload["vat"] == vat]
    first = dt.date.fromisoformat(events[0]["date"]) if events else day
    count = max(1, (day - first).days + 1)
    vats = _days(events, fryer, first, count)
    belief, (limit, title) = learn(vats), limit_of(store)
    recent = vats.share_frac[0, -RECENT_DAYS:]
    share = float(min(recent.mean(), 0.95))
    discards = np.flatnonzero(vats.discard[0])
    readings = [e["reading_pct"] for e in events if e["what"] == "reading"]
    return VatState(
        fryer=fryer, belief=belief, crossing=crossing(belief.mean[0], belief.cover[0], limit, share, FRESH_PCT), limit_pct=limit, limit_title=title,
        share_frac=share, readings_count=len(readings), age_days_count=count - 1 - (int(discards[-1]) if len(discards) else 0), days_count=count,
        top_up_kg=float(recent.mean()) * fryer.oil_mass_kg, last_reading_pct=readings[-1] if readings else None,
    )  # fmt: skip


def _days(events: list[Any], fryer: Fryer, first: dt.date, count: int) -> Vats:
    """Entries as days; a reading after the top-up is put back to the peak by that day's share."""
    shape = (1, count)
    share, discard, reading, noise = (
        np.zeros(shape),
        np.zeros(shape, dtype=bool),
        np.full(shape, np.nan),
        np.full(shape, READING_SD_PCT),
    )
    for event in events:
        n = (dt.date.fromisoformat(event["date"]) - first).days
        if not 0 <= n < count:
            continue
        if event["what"] == "top_up":
            share[0, n] = min(1.0, share[0, n] + event["mass_kg"] / fryer.oil_mass_kg)
        elif event["what"] in ("discard", "fill"):
            discard[0, n] = True
        elif event["what"] == "reading":
            value = event["reading_pct"]
            reading[0, n] = (
                value
                if event["peak"] or share[0, n] >= 1
                else min(100.0, max(0.0, (value - share[0, n] * FRESH_PCT) / (1.0 - share[0, n])))
            )
            noise[0, n] = STRIP_SD_PCT if event["how"] == "strip" else READING_SD_PCT
    return Vats(
        heat_n=np.ones(shape),
        share_frac=share,
        discard=discard,
        reading=reading,
        noise=noise,
        fresh=np.array([FRESH_PCT]),
    )


def vat_view(
    store: Store, kitchen: Kitchen, vat: str, today: dt.date | None = None, tr: Callable[[str], str] = str
) -> dict[str, Any]:
    """A vat's outlook in words and figures: keep or discard, by when, and what changes would buy."""
    day = today or business_time(_trade(kitchen), now())[0]
    state, system = vat_state(store, kitchen, vat, day), str(kitchen.site.units)
    level, growth = (float(x) for x in state.belief.mean[0])
    low, middle, high = state.crossing.days_n
    advice = "discard" if state.crossing.tomorrow_frac > DISCARD_CHANCE_FRAC else "keep"
    if advice == "discard":
        text = say(
            "Discard tonight: the chance that tomorrow's peak passes {limit} % is {chance_frac}.",
            {"limit": state.limit_pct, "chance_frac": state.crossing.tomorrow_frac},
            translate=tr,
        )
    elif state.readings_count < LEAST_READINGS:
        advice = "unknown"
        text = say(
            "Unknown: fewer than four readings of this vat. By default figures the limit would be reached about {when}; read it.",
            {"when": _on(day, middle)},
            translate=tr,
        )
    elif state.crossing.never_frac > 0.5:
        text = tr("Keep: at this top-up the oil settles below the limit. Taste, colour, smoke and foam still decide.")
    else:
        text = say("Keep: the limit is reached about {when}, most likely between {first} and {last}.", {
            "when": _on(day, middle), "first": _on(day, low), "last": _on(day, high)}, translate=tr)  # fmt: skip
    ever = share_for_ever(state.limit_pct, max(growth, 0.0), FRESH_PCT, at_peak=True)
    return {
        "vat": vat, "name": state.fryer.name, "advice": advice, "text": text, "level_pct": round(level, 1), "growth_pct": round(growth, 2),
        "growth_sd_pct": round(float(np.sqrt(state.belief.cover[0, 1, 1])), 2), "limit_pct": state.limit_pct, "limit_title": tr(state.limit_title),
        "days_n": [round(d, 1) for d in state.crossing.days_n], "tomorrow_frac": state.crossing.tomorrow_frac, "never_frac": state.crossing.never_frac,
        "readings_count": state.readings_count, "default": state.readings_count < LEAST_READINGS, "age_days_count": state.age_days_count,
        "top_up": show(state.top_up_kg, "kg", system), "for_ever": show(min(ever, 1.0) * state.fryer.oil_mass_kg, "kg", system) if ever < 1 else "",
        "last_reading_pct": state.last_reading_pct, "oil": state.fryer.oil, "changes": _changes(state, level, tr, system),
    }  # fmt: skip


def _on(day: dt.date, days: float) -> str:
    return (day + dt.timedelta(days=int(days))).isoformat() if days <= 90 else "later than 90 days"


def _changes(state: VatState, level: float, tr: Callable[[str], str], system: str) -> list[dict[str, Any]]:
    """Middle days to the limit if something were changed."""
    mean, cover = state.belief.mean[0], state.belief.cover[0]

    def days(share: float, heat: float = 1.0) -> float:
        return crossing(mean, cover, state.limit_pct, min(max(share, 0.0), 0.95), FRESH_PCT, heat=heat).days_n[1]

    extra = 5 * LB
    cooler = heat_factor(175.0 - RISE_C, 175.0)
    rows = [
        (tr("as now"), days(state.share_frac)),
        (
            say("{mass_kg} more top-up a day", {"mass_kg": extra}, system, tr),
            days(state.share_frac + extra / state.fryer.oil_mass_kg),
        ),
        (say("oil {cooler_k} cooler all day", {"cooler_k": RISE_C}, system, tr), days(state.share_frac, cooler)),
    ]
    return [{"what": what, "days_n": round(n, 1)} for what, n in rows]


def cost_view(store: Store, kitchen: Kitchen, raw_kg_day: float, today: dt.date | None = None, *, change_h: float = 0.75, hour_money: float = 0.0) -> dict[str, Any]:  # fmt: skip
    """The oil bill of the last four weeks by day and raw kilogram; vats without entries are named first.

    Raises
    ------
    InputError
        No raw product.
    """
    day = today or business_time(_trade(kitchen), now())[0]
    since = (day - dt.timedelta(days=27)).isoformat()
    events = [e.entry.payload for e in store.entries(KIND) if e.entry.payload["date"] >= since]
    gaps = [f.name for f in kitchen.fryers if not any(e["vat"] == f.key for e in events)]
    span = max(1, (day - dt.date.fromisoformat(min((e["date"] for e in events), default=day.isoformat()))).days + 1)
    top_up = sum(e["mass_kg"] for e in events if e["what"] == "top_up") / span
    thrown = [kitchen.fryer(e["vat"]).oil_mass_kg for e in events if e["what"] == "discard"]
    told = bill(
        raw_kg_day,
        tuple(thrown),
        top_up,
        float(span),
        Rates(price_kg_money=_trade(kitchen).oil_kg_money, change_h=change_h, hour_money=hour_money),
    )
    return {
        "days_count": span, "log_gaps": gaps, "uptake_money": round(told.uptake_money, 2), "discard_money": round(told.discard_money, 2),
        "labour_money": round(told.labour_money, 2), "day_money": round(told.day_money, 2), "per_raw_kg_money": round(told.per_kg_money, 4),
        "per_raw_lb_money": round(told.per_kg_money * LB, 4), "top_up_kg_day": round(top_up, 3),
    }  # fmt: skip


def fill_view(kitchen: Kitchen, vat: str) -> dict[str, Any]:
    """How a vat is filled: mass, cold and hot volume, cartons, and what too much and too little lead to."""
    fryer, system = kitchen.fryer(vat), str(kitchen.site.units)
    found = fill(
        catalog.oils()[fryer.oil], fryer.oil_mass_kg, cold_c=min(kitchen.site.room_temp_c, 40.0), carton_kg=CARTON_KG
    )
    litres = ("gal", 3.785411784) if system == "us" else ("L", 1.0)
    return {
        "vat": vat, "name": fryer.name, "mass": show(fryer.oil_mass_kg, "kg", system), "cartons": found.cartons_count, "swells_frac": round(found.swells_frac, 3),
        "cold": f"{found.cold_m3 * 1000 / litres[1]:.1f} {litres[0]}", "hot": f"{found.hot_m3 * 1000 / litres[1]:.1f} {litres[0]}",
    }  # fmt: skip


def order_view(
    store: Store, kitchen: Kitchen, days: int, on_hand_cartons: float, today: dt.date | None = None
) -> dict[str, Any]:
    """Cartons to order to the next delivery: top-up, planned changes, one vat as safety, less what is on hand."""
    if not 1 <= days <= 60 or on_hand_cartons < 0:
        raise InputError("order", f"{days} days, {on_hand_cartons:g} cartons", "1 to 60 days, 0 or more cartons")
    states = [vat_state(store, kitchen, f.key, today) for f in kitchen.fryers]
    top_up = sum(s.top_up_kg for s in states) * days
    changes = sum(s.fryer.oil_mass_kg for s in states if s.crossing.days_n[1] <= days)
    safety = max(s.fryer.oil_mass_kg for s in states)
    need = (top_up + changes + safety) / CARTON_KG
    return {"cartons": max(0, int(np.ceil(need - on_hand_cartons - 1e-9))), "top_up_cartons": round(top_up / CARTON_KG, 1), "change_cartons": round(changes / CARTON_KG, 1),
            "safety_cartons": round(safety / CARTON_KG, 1)}  # fmt: skip


def rotation_notes(kitchen: Kitchen, source: str, target: str, store: Store, today: dt.date | None = None) -> list[str]:
    """Why oil may not go from one vat into another; empty when nothing speaks against it.

    Older oil never goes into fresher; oil that carried another coating carries its proteins along.
    """
    old, new = (vat_state(store, kitchen, v, today) for v in (source, target))
    found = []
    if float(old.belief.mean[0, 0]) > float(new.belief.mean[0, 0]):
        found.append("Older oil never goes into fresher: the fresh oil would age at once.")
    carried = {
        c
        for p in kitchen.programs
        if p.fryer == source
        for c in kitchen.coating(kitchen.product(p.product).coating).contains
    }
    held = {
        c
        for p in kitchen.programs
        if p.fryer == target
        for c in kitchen.coating(kitchen.product(p.product).coating).contains
    }
    if carried - held:
        found.append(
            "The oil carries "
            + ", ".join(sorted(carried - held))
            + " into a vat that had none; claim nothing free of them."
        )
    if old.fryer.oil != new.fryer.oil:
        found.append("The two vats hold different oils.")
    return found
