"""What a day is up against, for the pages: what binds it, the rule in pieces, products that no load pays."""

from __future__ import annotations

from collections import OrderedDict
from dataclasses import dataclass
from functools import partial
from itertools import pairwise
from threading import Lock

import numpy as np

from frywright.model.findings import say
from frywright.model.kitchen import Kitchen
from frywright.model.tongues import Translate
from frywright.model.trade import money
from frywright.plan.advice import Outlook
from frywright.plan.binds import GOOD_FILL_FRAC, GOOD_WASTE_FRAC, Binds, Lever, binds, calls
from frywright.plan.replay import PARTS, Par, Rule
from frywright.rooms.day.day import Bench, tuned_day

BINDING = {
    "Hold lives half as long again": "Hold lives bind most.",
    "A smallest load half as large": "The smallest loads bind most.",
    "One more fryer, as the one asked for most": "The number of fryers binds most.",
    "One more person at the fryers": "Hands bind most.",
    "Half as many filter turns": "Filter turns bind most.",
    "Guests who come evenly, not in groups": "Guests in groups bind most.",
}
"""What binds where a change would bring most."""
FEW_FRAC = 0.5
"""A product is said to be cooked to order where planned loads hold less of what is asked for (own choice)."""
KEPT_COUNT = 8
_KEPT: OrderedDict[int, tuple[Bench, Binds]] = OrderedDict()
"""What was worked out lately, each beside its bench, so that no other takes its place in memory."""
_TURN = Lock()


@dataclass(frozen=True, slots=True, kw_only=True)
class LeverRow:
    """A change and what it brings, ready to show."""

    what: str
    says: str
    fill_points: str
    waste_points: str
    money: str


@dataclass(frozen=True, slots=True, kw_only=True)
class BindsView:
    """Whether a day is good, the sentence that says so, and what would change it."""

    good: bool
    headline: str
    rows: tuple[LeverRow, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class RuleRow:
    """A product's rule: below and up to, for each part of the day."""

    name: str
    cells: tuple[tuple[int, int], ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class RuleView:
    """The rule in pieces by part of the day."""

    parts: tuple[str, ...]
    rows: tuple[RuleRow, ...]


def binds_view(bench: Bench, kitchen: Kitchen, tr: Translate = str) -> BindsView | None:
    """What binds the day; None where its rule was not tuned."""
    if isinstance(bench.par, Par):
        return None
    return _said(_found(bench, bench.par, kitchen), bench, tr)


def _found(bench: Bench, rule: Rule, kitchen: Kitchen) -> Binds:
    """What binds a bench, tried once: it takes seconds, and two who ask at once wait for the same."""
    with _TURN:
        if id(bench) not in _KEPT:
            found = binds(bench.day, rule, partial(tuned_day, bench, kitchen))
            _KEPT[id(bench)] = bench, found
            if len(_KEPT) > KEPT_COUNT:
                _KEPT.popitem(last=False)
        _KEPT.move_to_end(id(bench))
        return _KEPT[id(bench)][1]


def _said(found: Binds, bench: Bench, tr: Translate) -> BindsView:
    values = {"fill": f"{100 * found.fill_frac:.1f}", "waste": f"{100 * found.waste_frac:.1f}"}
    aim = {"least": f"{100 * GOOD_FILL_FRAC:.0f}", "most": f"{100 * GOOD_WASTE_FRAC:.0f}"}
    text = (
        "By the rule {fill} % is served from the shelf and {waste} % is thrown away: as good as a kitchen"
        " aims at ({least} % and {most} %)."
        if found.good
        else "By the rule {fill} % is served from the shelf and {waste} % is thrown away; a kitchen aims at"
        " {least} % and {most} %. These changes would bring most:"
    )
    first = ""
    if not found.good:
        first = (
            tr(BINDING[found.levers[0].what] if found.levers else "No change tried alone would help.") + " "
        )
    currency = bench.trade.currency
    rows = tuple(
        LeverRow(
            what=tr(lever.what),
            says=_in_words(found, lever, tr),
            fill_points=f"{100 * lever.fill_frac:+.1f} ± {100 * lever.fill_half_width_frac:.1f}",
            waste_points=f"{100 * lever.waste_frac:+.1f} ± {100 * lever.waste_half_width_frac:.1f}",
            money=f"{money(-lever.money, currency)} ± {money(lever.half_width_money, currency)}",
        )
        for lever in found.levers
    )
    return BindsView(good=found.good, headline=first + say(text, values | aim, translate=tr), rows=rows)


def _in_words(found: Binds, lever: Lever, tr: Translate) -> str:
    """What a change brings, of a hundred pieces asked for and of a hundred cooked."""
    return say(
        (
            "Of 100 pieces asked for, {there} are on the shelf instead of {here}; of 100 cooked, {left} are"
            " thrown away instead of {thrown}."
        ),
        {
            "here": f"{100 * found.fill_frac:.0f}",
            "there": f"{100 * (found.fill_frac + lever.fill_frac):.0f}",
            "thrown": f"{100 * found.waste_frac:.0f}",
            "left": f"{100 * (found.waste_frac + lever.waste_frac):.0f}",
        },
        translate=tr,
    )


def rule_view(bench: Bench, tr: Translate = str) -> RuleView:
    """The rule the engine starts from, as a crew can follow it by hand."""
    day, trade = bench.day, bench.trade
    firsts = [-(-q * day.slots_count // PARTS) for q in range(PARTS + 1)]
    parts = tuple(f"{trade.clock_of(a)}–{trade.clock_of(b)}" for a, b in pairwise(firsts))
    found = calls(day, bench.par)
    rows = tuple(
        RuleRow(name=tr(item.name), cells=tuple((c.below_n, c.fill_n) for c in found if c.item == i))
        for i, item in enumerate(day.items)
    )
    return RuleView(parts=parts, rows=rows)


def unplanned(bench: Bench, kitchen: Kitchen, found: Outlook, tr: Translate = str) -> list[str]:
    """Products of which less than half is planned, and why; fryers that stay cold."""
    day, told = bench.day, []
    cooked_n = [0.0] * len(day.items)
    for drop in found.plan.drops:
        cooked_n[drop.item] += day.items[drop.item].loads[drop.load].units_count
    for i, item in enumerate(day.items):
        asked = float(day.mean_n[i].sum())
        if asked < 0.5 or cooked_n[i] >= FEW_FRAC * asked:
            continue
        hold = np.ones(min(item.hold_slots_count, day.slots_count))
        most = float(np.convolve(day.mean_n[i], hold).max())
        text = (
            "No load of {product} pays today: the smallest is {pieces} pieces, and at most about {wanted} are"
            " asked for within its hold life. Cook it to order."
        )
        if cooked_n[i]:
            text = (
                "{product}: pieces asked for: {asked}, planned in loads: {cooked}. The smallest load"
                " has {pieces}, and at most about {wanted} are asked for within its hold life: cook"
                " the rest to order."
            )
        values: dict[str, float | str] = {
            "product": item.name,
            "pieces": float(item.loads[0].units_count),
            "wanted": float(round(most)),
            "asked": float(round(asked)),
            "cooked": cooked_n[i],
        }
        told.append(say(text, values, translate=tr))
    for f, key in enumerate(bench.fryers):
        low, high = day.window(f)
        if low >= high:
            values = {"fryer": kitchen.fryer(key).name}
            told.append(say("{fryer} stays off: the others do today's loads.", values, translate=tr))
    return told
