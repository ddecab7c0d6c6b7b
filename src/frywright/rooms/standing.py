"""What more than one room asks of the ledger: fryers out of use, what they hold, the oil limit in force."""

from __future__ import annotations

from collections.abc import Callable

from frywright.ledger.facts.care import Reopened, StopUse
from frywright.ledger.facts.cook import ReadBackTaken
from frywright.ledger.facts.fact import Kept
from frywright.ledger.facts.oil import OilLimitSet
from frywright.ledger.store import Store
from frywright.model.kitchen import Kitchen
from frywright.model.units import clock
from frywright.trial.naming import away_words
from frywright.trial.prove_again import again_line
from frywright.verdicts.limits import oil_limit

HOUSE_LIMIT_PCT = 24.0
"""House limit of polar compounds where no law is known: common practice, no source."""


def stopped(store: Store) -> dict[str, Kept[StopUse]]:
    """Fryers in stop-use and the entry that stopped each; nothing but a qualified person's release takes one
    off.
    """
    released = {e.fact.fryer: e.number for e in store.facts(Reopened)}
    return {e.fact.fryer: e for e in store.facts(StopUse) if e.number > released.get(e.fact.fryer, 0)}


def held_status(
    store: Store, kitchen: Kitchen, translate: Callable[[str], str] = str
) -> list[dict[str, str]]:
    """What each fryer is known to hold of each program: by its newest read-back, else unknown."""
    newest = {item.fact.name: item for item in store.facts(ReadBackTaken)}
    rows = []
    for name in sorted({p.name for p in kitchen.programs}):
        program = kitchen.program(name)
        item = newest.get(name)
        if item is None:
            state = "unknown"
        elif not item.fact.matches:
            state = "differs"
        else:
            state = "current" if item.fact.version == program.version else "old version"
        rows.append(
            {
                "name": name,
                "place": ", ".join(away_words(kitchen, program, translate)),
                "again": again_line(kitchen, program, translate),
                "fryer": kitchen.fryer(program.fryer).name,
                "version": str(program.version),
                "state": state,
                "clock": clock(program.clock_s),
                "read_at": item.recorded_at.strftime("%Y-%m-%d %H:%M UTC") if item else "",
                "read_version": str(item.fact.version) if item else "",
            }
        )
    return rows


def oil_limit_here(store: Store) -> tuple[float, str]:
    """The limit that holds here: the place's where one is chosen, tightened by the house where it says so;
    else the house limit.
    """
    chosen = store.current_facts(OilLimitSet)
    if not chosen:
        return oil_limit("us", HOUSE_LIMIT_PCT)
    return oil_limit(chosen[-1].fact.place, chosen[-1].fact.house_pct)
