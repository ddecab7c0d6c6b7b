"""The small pictures of oil and hold: what is drawn stands where the figures say, and nothing is drawn of
nothing.
"""

from __future__ import annotations

import re
import xml.etree.ElementTree as ET

import pytest

from frywright.calibrate.hold import HoldAim, HoldReading, hold_life
from frywright.paper.chart import labels
from frywright.paper.curves import ResidualCurve
from frywright.paper.probe_chart import residual_spec
from frywright.paper.small_picture import EDGE, HEIGHT, WIDTH, SmallPicture
from frywright.rooms.care import vat
from frywright.rooms.care.oil_picture import AHEAD_DAYS, BACK_DAYS, oil_picture
from frywright.rooms.cook.hold_picture import hold_picture
from frywright.voice.tongue import translator
from tests.rooms.test_vat import TODAY, kitchen, tell, week  # noqa: F401

NS = "{http://www.w3.org/2000/svg}"


def places(svg: str, kind: str) -> list[tuple[float, float]]:
    """Centres of the circles of a class."""
    found = re.findall(rf'<circle class="{kind}" cx="([-\d.]+)" cy="([-\d.]+)"', svg)
    return [(float(x), float(y)) for x, y in found]


def test_points_and_limit_stand_where_the_scales_put_them():
    """Corners of the data are corners of the picture; words are escaped; it is well-formed."""
    drawn = SmallPicture(
        words="a < b & c",
        x_n=(0.0, 10.0),
        y_n=(0.0, 20.0),
        points=[(0.0, 0.0), (10.0, 20.0), (5.0, 99.0)],
        limit_n=10.0,
        limit_words='"limit"',
        span=(4.0, 6.0),
    ).svg()
    assert places(drawn, "dot") == [(0.0, HEIGHT - EDGE), (WIDTH, 0.0), (WIDTH / 2, 0.0)]
    assert f'<path class="limit" d="M0 {(HEIGHT - EDGE) / 2:.1f}H' in drawn
    assert ET.fromstring(drawn).find("title").text == "a < b & c"
    span = ET.fromstring(drawn).find("rect").attrib
    assert (float(span["x"]), float(span["width"])) == (0.4 * WIDTH, pytest.approx(0.2 * WIDTH))


def test_oil_shows_its_readings_and_runs_up_to_the_limit(store, kitchen):  # noqa: F811
    """Nine readings after a change: nine points, newest at today, the change marked, the line from today to
    the limit; a reading after the top-up is hollow; another vat shows nothing.
    """
    week(store, kitchen)
    tell(store, kitchen, 25, what="reading", amount="19", after="1")
    states = vat.vat_states(store, kitchen, TODAY)
    drawn = oil_picture(states["alder"], TODAY, "words", translator("es"))
    points = places(drawn, "dot")
    assert len(points) == 9
    today = BACK_DAYS / (BACK_DAYS + AHEAD_DAYS) * WIDTH
    assert points[-1][0] == pytest.approx(today, abs=0.1)
    assert [y for _, y in points] == sorted((y for _, y in points), reverse=True)
    assert len(places(drawn, "dot hollow")) == 1
    assert drawn.count('class="moment"') == 1
    line = re.search(r'class="oil" d="M([^"]+)"', drawn).group(1).split("L")
    first, last = (tuple(float(v) for v in part.split()) for part in (line[0], line[-1]))
    level = float(re.search(r'class="limit" d="M0 ([\d.]+)', drawn).group(1))
    assert first[0] == pytest.approx(today, abs=0.1)
    assert last[1] <= level < first[1]
    assert 'class="span"' in drawn
    assert "hace 21 días" in drawn
    assert oil_picture(states["cedar"], TODAY, "words", str) == ""


def test_a_hold_study_shows_where_a_piece_went_cold():
    """Three times, two repeats: shares as heights, the cold time hollow, the life as a line."""
    readings = [
        HoldReading(repeat=r, after_s=60.0 * minute, core_c=core, scores={"crunch": score})
        for minute, core, score in ((10.0, 70.0, 9.0), (20.0, 65.0, 8.0), (30.0, 50.0, 8.0))
        for r in ("a", "b")
    ]
    found = hold_life(readings, HoldAim(hot_c=57.2, least_scores={"crunch": 7.0}))
    drawn = hold_picture(found, 0.9, "words", str)
    assert len(places(drawn, "dot")) == 2
    (cold,) = places(drawn, "dot hollow")
    assert cold[0] == pytest.approx(WIDTH / 1.05, abs=0.1)
    cursor = float(re.search(r'class="cursor" d="M([\d.]+)', drawn).group(1))
    assert cursor == pytest.approx(20.0 / 31.5 * WIDTH, abs=0.1)
    assert "20 min" in drawn
    assert "90 % must pass" in drawn


@pytest.mark.parametrize(("unit", "drawn", "sign"), [("f_diff", 1.8, "°F"), ("k", 1.0, "°C")])
def test_what_a_fit_leaves_over_is_drawn_in_the_kitchens_degrees(unit, drawn, sign):
    """No kelvin for a cook who set °F."""
    curve = ResidualCurve(name="K1", time_s=[0.0, 60.0], left_k=[1.0, 1.0], shown_in=unit, rms=1.0)
    spec = residual_spec([curve], {"residual": "left over", "since_drop": "minutes"})
    assert [row["y"] for row in spec["data"]["values"]] == pytest.approx([drawn, drawn])
    assert spec["encoding"]["y"]["title"] == f"left over ({sign})"


def test_marks_of_one_moment_share_a_label():
    """The vent opens and, unmeasured, the lift stands at the same second: one label, both words; marks apart
    keep their own.
    """
    marks = [{"t": 1.3, "text": "full pressure"}, {"t": 11.0, "text": "vent"}, {"t": 11.1, "text": "lift"}]
    assert [m["text"] for m in labels(marks, 14.0)] == ["full pressure", "vent · lift"]
    assert [m["text"] for m in labels(marks, 2.0)] == ["full pressure", "vent", "lift"]
    assert marks[1]["text"] == "vent"
