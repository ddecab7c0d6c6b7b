"""A dragged goal: what a proposal costs in the application, and how near it comes to a search for its goals.

python -m benchmarks.follow
"""

from __future__ import annotations

import tempfile
import time
from dataclasses import replace
from pathlib import Path
from statistics import median, quantiles

from fastapi.testclient import TestClient

from frywright.design.follow import Follower
from frywright.design.offer import sizer_for
from frywright.design.search import Effort, Goals, binding, search
from frywright.ledger.store import Store
from frywright.rooms.clock import now
from frywright.rooms.cook.follow import SLIDERS, sliders
from frywright.rooms.kitchen import remember_kitchen
from frywright.trial.ask import needed_limit, warm_up
from frywright.trial.kitchens import demo_kitchen, demo_text
from frywright.web.app import make_app

FRYERS = ("alder", "birch", "cedar")
GOALS = Goals()
MOVED = [
    {"margin_k": 0.5},
    {"margin_k": 6.0},
    {"margin_k": 9.0},
    {"colour_low_n": 9.0},
    {"colour_high_n": 9.0},
]
MOVED += [{"hottest_c": 172.0}, {"crust_low_m": 1.8e-3}, {"crust_high_m": 1.6e-3}, {"core_low_c": 86.0}]
HOST, PLACES = "http://127.0.0.1", 20


def near(follower: Follower) -> list[tuple[dict[str, float], float, str, str]]:
    """Each moved goal: how much dearer its proposal is than a whole search for it, and what either misses."""
    found, base = [], follower.sizer
    for moved in MOVED:
        goals = replace(GOALS, **moved)
        sizer = sizer_for(base.kitchen, base.base.product, base.base.fryer, base.limit, goals)
        best, here = search(sizer, Effort())[0], follower.propose(goals)
        dearer = here.cost_n / best.cost_n - 1.0
        found.append((moved, dearer, binding(here, goals), binding(best, goals)))
    return found


def drag(client: TestClient, fryer: str) -> list[float]:
    """Processor time of each answer while every slider goes through its places [ms]."""
    begun = client.post(
        "/cook/desk/follow", data={"product": "bone_in", "fryer": fryer}, follow_redirects=False
    )
    page = begun.headers["location"]
    while client.get(page, follow_redirects=False).status_code != 303:
        time.sleep(0.2)
    view, taken = page.replace("/job/", "/follow/") + "/view.json", []
    for slider in sliders(GOALS, "us"):
        low, high = SLIDERS[slider.name][2][1:3]
        for place in range(PLACES):
            goal = {slider.name: f"{low + (high - low) * place / (PLACES - 1):g}"}
            begun_s = time.process_time()
            answer = client.get(view, params=goal)
            taken.append(1000 * (time.process_time() - begun_s))
            assert answer.status_code in (200, 422), answer.text  # ends of a band that cross are refused
    return taken


def main() -> None:
    """Each fryer's rows."""
    warm_up()
    kitchen, limit = demo_kitchen(), needed_limit(demo_kitchen(), demo_kitchen().product("bone_in"))
    print(
        "| a dragged goal | processor time, ms: median, 95 %, worst | dearer than a search | goals missed |"
    )
    print("|---|---|---|---|")
    for fryer in FRYERS:
        follower = Follower(sizer_for(kitchen, "bone_in", fryer, limit, GOALS), Effort())
        with tempfile.TemporaryDirectory() as folder:
            store = Store.file(Path(folder) / "f.db", now)
            remember_kitchen(store, demo_text(), "demo.toml")
            taken = drag(TestClient(make_app(store), base_url=HOST, headers={"origin": HOST}), fryer)
        rows = near(follower)
        ms = f"{median(taken):.0f}, {quantiles(taken, n=20)[-1]:.0f}, {max(taken):.0f}"
        both = [row for row in rows if not row[3]]
        dearer = [100 * row[1] for row in both]
        print(f"| {fryer} | {ms} | median {median(dearer):+.1f} %, worst {max(dearer):+.1f} %", end=" ")
        print(f"| {sum(bool(row[2]) for row in both)} of {len(both)} that a search meets |")


if __name__ == "__main__":
    main()
