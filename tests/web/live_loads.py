"""A load that reports: its probes' readings from the engine, sent as a device would, on its own clock."""

from __future__ import annotations

import datetime as dt
from dataclasses import replace

import numpy as np

from frywright.calibrate.family import course_of
from frywright.physics.inputs import CLOSE
from frywright.physics.plan import TRACER_SHARE, make_plan, piece_class, vat
from frywright.physics.solve import Cook, Prescribed, run
from frywright.rooms.kitchen import remember_kitchen, remembered_kitchen
from frywright.web.pages import live as page
from tests.browsers import browser

DROP = dt.datetime(2026, 11, 26, 19, 0, tzinfo=dt.UTC).timestamp()


class Fryer:
    """A kitchen's server with one load whose probes report every second; ``off_s`` sets their clock."""

    def __init__(
        self, store, text: str, program: str, sizes: dict[str, tuple[str, float]], monkeypatch
    ) -> None:
        remember_kitchen(store, text, "kitchen.toml")
        self.store, self.second, self.off_s = store, -60.0, 0.0
        monkeypatch.setattr(page, "now", lambda: dt.datetime.fromtimestamp(DROP + self.second, dt.UTC))
        self.client = browser(store)
        kitchen = remembered_kitchen(store)
        self.program = program
        plan = make_plan(kitchen, kitchen.program(program))
        course = course_of(plan)
        self.oil = np.array(course.oil_c).T
        self.cuts, self.cores = {name: cut for name, (cut, _) in sizes.items()}, {}
        for name, (cut, size) in sizes.items():
            kind = next(k for k in plan.kinds if k.cut.key == cut and not k.heavy)
            base = piece_class(plan, replace(kind, class_mass_kg=TRACER_SHARE))
            piece = replace(base, half_thickness_m=base.half_thickness_m * size)
            told = Prescribed(oil_temp_c=course.oil_c, pressure_pa=course.pressure_pa)
            raw = run(Cook(vat=vat(plan), pieces=[piece], spans=course.spans, prescribed=told), CLOSE)
            self.cores[name] = (raw.time_s, raw.core_temp_c[:, 0])

    def sample(self, channel: str, temp_c: float) -> dict:
        """A reading as the device sends it, in degF to a tenth."""
        at = DROP + self.second + self.off_s
        return {"channel": channel, "temp": round(32 + 1.8 * temp_c, 1), "unit": "F", "at": at}

    def report(self, until: float, silent: tuple[str, ...] = ()) -> None:
        """Let time run, a reading a second of every probe that is not silent."""
        while self.second < until:
            self.second += 1.0
            t = max(self.second, 0.0)
            found = [self.sample("T1", float(np.interp(t, *self.oil)))]
            found += [self.sample(n, float(np.interp(t, *curve))) for n, curve in self.cores.items()]
            body = {"source": "box", "samples": [s for s in found if s["channel"] not in silent]}
            answer = self.client.post("/api/v1/live", json=body)
            assert answer.status_code == 200, answer.text

    def form(self, **changes: str) -> dict[str, str]:
        """What a person fills in at the drop."""
        told = {"program": self.program, "drop": "oil"}
        for i, (name, cut) in enumerate({**self.cuts, "T1": "oil"}.items()):
            told |= {f"channel_{i}": f"box/{name}", f"where_{i}": cut}
        return told | changes

    def start(self, **changes: str):
        """Follow the load."""
        return self.client.post("/cook/live/start", data=self.form(**changes), follow_redirects=False)

    def part(self, number: int = 1, language: str = "en") -> str:
        """What the page shows now."""
        return self.client.get(f"/cook/live/part?load={number}&lang={language}").text
