"""Compiles every kernel once, so that nobody waits for it at the fryer."""

from __future__ import annotations

from time import perf_counter

import numpy as np

from frywright.oil.outlook import Vats, learn
from frywright.plan.advice import advise, outlook
from frywright.plan.live import state_of
from frywright.plan.model import Day, Item, LoadSize
from frywright.plan.replay import Look, Par, draw_days, replay_par
from frywright.trial import ask as cook


def warm_up() -> float:
    """Run a small cook, a small day and a small vat through the functions people use; seconds it took."""
    start = perf_counter()
    cook.warm_up()
    load = LoadSize(units_count=4, cook_slots_count=1, batch_money=0.1, fryers=(0,))
    item = Item(name="warm-up", loads=(load,), hold_slots_count=3, short_money=1.0, waste_money=1.0)
    day = Day(items=(item,), fryers_count=1, slots_count=8, mean_n=np.ones((1, 8)))
    look = Look(paths_count=2, horizon_slots_count=4)
    replay_par(day, draw_days(day, 2, 1), Par())
    outlook(day, None, Par(), look, paths=2)
    advise(day, state_of(day, [], 2.0), Par(), look)
    one = np.ones((1, 1))
    learn(Vats(heat_n=one, share_frac=0 * one, discard=one > 2, reading=one, noise=one, fresh=np.ones(1)))
    return perf_counter() - start
