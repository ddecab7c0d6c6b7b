"""Times of the program desk, and the design against an exhaustive search of a reduced problem.

Times are of the processor, the less of two runs.
"""

from __future__ import annotations

import os
import platform
from dataclasses import replace
from time import process_time

import numpy as np

from frywright.design.offer import design
from frywright.design.proof import prove
from frywright.design.search import Effort, Goals, Sizer
from frywright.model.program import Program, Stage
from frywright.physics.plan import make_plan
from frywright.rooms.cook.desk import design_program
from frywright.trial.ask import warm_up
from frywright.trial.kitchens import demo_kitchen
from frywright.verdicts.place import place_named

LIMIT = place_named("us_food_code_2022").cook_limit()


def seconds(action) -> float:
    """Processor time of an action, the less of two runs [s]; the action is given the number of the run."""
    taken = []
    for run in (1, 2):
        start = process_time()
        action(run)
        taken.append(process_time() - start)
    return min(taken)


def with_stages(kitchen, count: int):
    """The kitchen with a pressure fryer whose controller holds so many stages."""
    fryer = kitchen.fryer("alder")
    longer = replace(fryer, controller=replace(fryer.controller, stage_count=count))
    return replace(kitchen, fryers=tuple(longer if f.key == "alder" else f for f in kitchen.fryers))


def exhaustive(kitchen, goals: Goals) -> float:
    """Lowest cost of a single-stage program on the open fryer over a fine grid, each sized to its margin."""
    base = Program(name="x", product="bone_in", fryer="cedar", stages=(Stage(set_c=160.0, duration_s=600.0),))
    sizer = Sizer(kitchen, base, LIMIT, goals)
    points = [np.array([x, 0.5, extra]) for x in np.linspace(0, 1, 19) for extra in np.linspace(0, 0.8, 9)]
    programs, by, _ = sizer.fit(points)
    return min(c.cost_n for c in sizer.judge(programs, by.min(axis=2)))


def main() -> None:
    """Print the table."""
    warm_up()
    kitchen = demo_kitchen()
    print(f"{platform.machine()}, {os.cpu_count()} cores, Python {platform.python_version()}.\n")
    print("| program desk | |\n|---|---|")
    for count, word in ((4, "four"), (6, "six")):
        asked = with_stages(kitchen, count)
        taken = seconds(lambda _, k=asked: design_program(k, "bone_in", "alder"))
        print(f"| {word}-stage pressure design with a proof over 256 samples | {taken:.1f} s |")
    plan = make_plan(kitchen, kitchen.program("bone-in alder"))
    for count in (1000, 10000):
        taken = seconds(lambda seed, n=count: prove(plan, LIMIT, 1.1, samples=n, seed=seed))
        print(f"| proof over {count} samples | {taken:.1f} s |")
    goals = Goals()
    got = design(kitchen, "bone_in", "cedar", LIMIT, goals, Effort(stages=1)).recommended.cost_n
    best = exhaustive(kitchen, goals)
    print(f"| design over the best of an exhaustive search, one stage | {100 * (got / best - 1):+.1f} % |")
    staged = design(kitchen, "bone_in", "birch", LIMIT, goals, Effort(stages=2)).recommended.cost_n
    long = min(
        design(kitchen, "bone_in", "birch", LIMIT, goals, Effort(stages=2, seed=s)).recommended.cost_n
        for s in range(2, 8)
    )
    print(f"| design over the best of six more searches, two stages | {100 * (staged / long - 1):+.1f} % |")


if __name__ == "__main__":
    main()
