"""Pictures of a probe log: the curves with what was found in them, and what a fit leaves over."""

from __future__ import annotations

from collections.abc import Sequence

from frywright.model.units import UNITS, to_people
from frywright.paper.chart import HEAT, INK, OIL, RULE, Spec, by_name, dashes
from frywright.paper.curves import LogCurves, ResidualCurve
from frywright.paper.fonts import PICTURE

LIGHT = {
    "font": PICTURE,
    "axis": {"labelFontSize": 12, "titleFontSize": 13},
    "legend": {"labelFontSize": 12, "labelLimit": 260},
}
SCHEMA = "https://vega.github.io/schema/vega-lite/v5.json"
COLOURS = {"oil": OIL, "core": HEAT, "display": RULE}


def log_spec(curves: LogCurves, words: dict[str, str], width: int = 720) -> Spec:
    """Curves of a log over minutes, a rule at every event. ``words`` names axes and events."""
    minutes = [t / 60 for t in curves.time_s]
    rows = [
        {"t": t, "y": y, "name": c.name}
        for c in curves.channels
        for t, y in zip(minutes, c.values, strict=True)
        if y is not None
    ]
    names = [c.name for c in curves.channels]
    marks = [{"t": m.time_s / 60, "text": words.get(m.kind, m.kind)} for m in curves.marks]
    axis = {"field": "t", "type": "quantitative", "title": words["minutes"]}
    return {
        "$schema": SCHEMA,
        "description": words["title"],
        "background": "white",
        "width": width,
        "height": 300,
        "layer": [
            {
                "data": {"values": rows},
                "mark": {"type": "line", "strokeWidth": 1.6},
                "encoding": {
                    "x": axis,
                    "y": {
                        "field": "y",
                        "type": "quantitative",
                        "title": curves.degree,
                        "scale": {"zero": False},
                    },
                    "color": by_name(names, [COLOURS.get(c.role, INK) for c in curves.channels]),
                    "strokeDash": dashes(names),
                },
            },
            *_events(marks),
        ],
        "config": LIGHT,
    }


def _events(marks: list[Spec]) -> list[Spec]:
    """A rule and a word at every event."""
    at = {"x": {"field": "t", "type": "quantitative"}}
    data = {"values": marks}
    rule = {"type": "rule", "color": RULE, "strokeDash": [3, 3]}
    word = {"type": "text", "angle": 270, "align": "right", "dy": -6, "y": 4, "color": INK}
    return [
        {"data": data, "mark": rule, "encoding": at},
        {"data": data, "mark": word, "encoding": {**at, "text": {"field": "text"}}},
    ]


def residual_spec(residuals: Sequence[ResidualCurve], words: dict[str, str], width: int = 720) -> Spec:
    """Measured minus model over time for every fitted curve."""
    rows = [
        {"t": t / 60, "y": to_people(y, r.shown_in), "name": r.name}
        for r in residuals
        for t, y in zip(r.time_s, r.left_k, strict=True)
        if len(r.time_s) > 1
    ]
    names = sorted({r.name for r in residuals if len(r.time_s) > 1})
    degree = UNITS[residuals[0].shown_in].sign
    return {
        "$schema": SCHEMA,
        "description": words["residual"],
        "background": "white",
        "width": width,
        "height": 140,
        "data": {"values": rows},
        "mark": {"type": "line", "strokeWidth": 1.4, "color": INK},
        "encoding": {
            "x": {"field": "t", "type": "quantitative", "title": words["since_drop"]},
            "y": {"field": "y", "type": "quantitative", "title": f"{words['residual']} ({degree})"},
            "strokeDash": dashes(names),
        },
        "config": LIGHT,
    }
