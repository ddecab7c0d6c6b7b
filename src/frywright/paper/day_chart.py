"""Pictures of a day: which fryer cooks what when, and how much stands on the shelf."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from frywright.paper.chart import HEAT, INK, OIL, RULE, Spec
from frywright.paper.fonts import PICTURE

TONES = (HEAT, OIL, INK, "#8a6d1f", "#5b4a8a", "#3f6b3a")
HOUR_PX = 110
"""An hour of the plan: numbers of loads ten minutes apart stand beside each other."""
CONFIG = {
    "font": PICTURE,
    "axis": {"labelFontSize": 12, "titleFontSize": 13},
    "legend": {"labelFontSize": 12, "labelLimit": 260},
}
SCHEMA = "https://vega.github.io/schema/vega-lite/v5.json"


@dataclass(frozen=True, slots=True, kw_only=True)
class Bar:
    """A span of a row of the day, in hours: a load or a filter turn, and what is written above it."""

    row: str
    from_h: float
    to_h: float
    name: str
    text: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Band:
    """Pieces of a product on the shelf, slot by slot: the middle and its band."""

    name: str
    low: Sequence[float]
    mid: Sequence[float]
    high: Sequence[float]


def gantt_spec(
    loads: Sequence[Bar], turns: Sequence[Bar], rows: Sequence[str], words: Mapping[str, str]
) -> Spec:
    """Loads as bars with their pieces in their row, filter turns by their own tone."""
    drawn = (*loads, *turns)
    bars = [{"row": b.row, "from": b.from_h, "to": b.to_h, "name": b.name, "text": b.text} for b in drawn]
    span_h = max((b.to_h for b in drawn), default=0.0) - min((b.from_h for b in drawn), default=0.0)
    names = [*dict.fromkeys(bar.name for bar in loads), words["filter"]]
    tones = [*(TONES[i % len(TONES)] for i in range(len(names) - 1)), RULE]
    hours = {
        "type": "quantitative",
        "title": words["clock"],
        "scale": {"zero": False, "nice": False},
        "axis": {"tickMinStep": 1, "format": "d"},
    }
    place = {
        "field": "row",
        "type": "nominal",
        "title": None,
        "sort": list(rows),
        "scale": {"domain": list(rows)},
        "axis": {"labelLimit": 330, "grid": True},
    }
    return {
        "$schema": SCHEMA,
        "description": words["about"],
        "background": "white",
        "width": max(860, round(HOUR_PX * span_h)),
        "height": {"step": 38},
        "data": {"values": bars},
        "layer": [
            {
                "mark": {"type": "bar", "height": 16, "stroke": "white"},
                "encoding": {
                    "x": {"field": "from", **hours},
                    "x2": {"field": "to"},
                    "y": place,
                    "color": {
                        "field": "name",
                        "type": "nominal",
                        "title": None,
                        "legend": {"orient": "top"},
                        "scale": {"domain": names, "range": tones},
                    },
                },
            },
            {
                "mark": {"type": "text", "align": "left", "dy": -16, "color": INK, "fontSize": 12},
                "encoding": {"x": {"field": "from", **hours}, "y": place, "text": {"field": "text"}},
            },
        ],
        "config": CONFIG,
    }


def shelf_spec(hours_h: Sequence[float], bands: Sequence[Band], words: Mapping[str, str]) -> Spec:
    """What stands on the shelf of each product through the day: middle and band."""
    rows = [
        {"h": h, "low": low, "mid": mid, "high": high, "name": band.name}
        for band in bands
        for h, low, mid, high in zip(hours_h, band.low, band.mid, band.high, strict=True)
    ]
    hours = {
        "field": "h",
        "type": "quantitative",
        "title": words["clock"],
        "scale": {"zero": False, "nice": False},
        "axis": {"format": "d"},
    }
    return {
        "$schema": SCHEMA,
        "description": words["about_shelf"],
        "background": "white",
        "data": {"values": rows},
        "facet": {
            "row": {
                "field": "name",
                "type": "nominal",
                "title": None,
                "header": {"labelFontSize": 13, "labelAngle": 0, "labelAlign": "left", "labelOrient": "top"},
            }
        },
        "spec": {
            "width": 860,
            "height": 60,
            "layer": [
                {
                    "mark": {"type": "area", "color": OIL, "opacity": 0.25},
                    "encoding": {
                        "x": hours,
                        "y": {"field": "low", "type": "quantitative", "title": words["pieces"]},
                        "y2": {"field": "high"},
                    },
                },
                {
                    "mark": {"type": "line", "color": OIL, "strokeWidth": 2},
                    "encoding": {"x": hours, "y": {"field": "mid", "type": "quantitative"}},
                },
            ],
        },
        "resolve": {"scale": {"y": "independent"}},
        "config": CONFIG,
    }
