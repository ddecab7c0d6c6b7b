"""The rules a kitchen's records are judged by, by name and edition, with their levels in its units."""

from __future__ import annotations

import datetime as dt

from frywright.catalog import load
from frywright.ledger.store import Store
from frywright.model.findings import say
from frywright.model.kitchen import Kitchen
from frywright.model.tongues import Translate
from frywright.rooms.kitchen import judged_on
from frywright.rooms.local_rules import HOT_HOLD, answered_ages, source_of
from frywright.rooms.standing import answers_of, oil_limit_here, place_here
from frywright.trial.ask import hand_limit_c, product_limit, why_none
from frywright.verdicts.limits import HOUSE

NO_HOLD_RULE = (
    "the rule of this place is not in this catalog: ask your inspector, then enter the answer under Local"
    " rules"
)


def rule_rows(store: Store, kitchen: Kitchen, day: dt.date, tr: Translate = str) -> list[list[str]]:
    """What is judged, by which rule in which edition, at which level: each product's core, hot holding,
    oil.
    """
    kitchen = judged_on(store, kitchen, day)
    place, answers = place_here(store, kitchen, day), answers_of(store, kitchen, day)
    system = kitchen.site.units

    def level(limit_c: float | None) -> str:
        if limit_c is None:
            return "–"
        values = {"limit_c": limit_c, "with_c": limit_c + kitchen.site.thermometer_error_k}
        return say("{limit_c} ({with_c} with the thermometer's error)", values, system, tr)

    rows = []
    for product in kitchen.products:
        limit = product_limit(kitchen, product, day)
        rule = tr(why_none(kitchen, product)) if limit is None else tr(limit.title)
        if limit is not None and limit.rule != HOUSE:
            table = load.table(f"standards/{limit.rule}.toml")
            rule = f"{tr(table['title'])}: {rule}; {tr('in force from')} {limit.valid_from.isoformat()}"
        rows.append([product.name, rule, level(hand_limit_c(kitchen, product, day))])
    hold_c = place.hot_hold_c()
    hold = tr(place.title) if hold_c is not None else tr(NO_HOLD_RULE)
    if (answer := answers.get(HOT_HOLD)) and answer.fact.hold_c == hold_c:
        hold = source_of(answer.fact, tr)
    rows.append([tr("Hot holding"), hold, level(hold_c)])
    oil_pct, title = oil_limit_here(store, kitchen, day)
    rows.append([tr("Oil, polar compounds"), title.say(tr), f"{oil_pct:g} %"])
    return [*rows, *answered_ages(answers, tr)]
