"""Pictures of a day: which fryer cooks what when, and how much stands on the shelf."""

from __future__ import annotations

from typing import Any

from frywright.paper.chart import HEAT, INK, OIL, RULE

TONES = (HEAT, OIL, INK, "#8a6d1f", "#5b4a8a", "#3f6b3a")
CONFIG = {
    "font": "Atkinson Hyperlegible",
    "axis": {"labelFontSize": 12, "titleFontSize": 13},
    "legend": {"labelFontSize": 12, "labelLimit": 260},
}
SCHEMA = "https://vega.github.io/schema/vega-lite/v5.json"


def gantt_spec(view: dict[str, Any], words: dict[str, str]) -> dict[str, Any]:
    """Fryers as rows, loads as bars with their pieces, filter turns hatched by their word; ``view`` is a plan
    view.
    """
    bars = [
        {
            "fryer": d["fryer_name"],
            "from": d["drop_h"],
            "to": d["lift_h"],
            "name": d["product_name"],
            "text": str(d["pieces"]),
        }
        for d in view["drops"]
    ]
    bars += [
        {"fryer": f["fryer_name"], "from": f["from_h"], "to": f["to_h"], "name": words["filter"], "text": "▒"}
        for f in view["filters"]
    ]
    names = [*dict.fromkeys(d["product_name"] for d in view["drops"]), words["filter"]]
    tones = [*(TONES[i % len(TONES)] for i in range(len(names) - 1)), RULE]
    hours = {
        "type": "quantitative",
        "title": words["clock"],
        "scale": {"zero": False, "nice": False},
        "axis": {"tickMinStep": 1, "format": "d"},
    }
    place = {
        "field": "fryer",
        "type": "nominal",
        "title": None,
        "sort": [f["name"] for f in view["fryers"]],
        "axis": {"labelLimit": 220},
    }
    return {
        "$schema": SCHEMA,
        "description": words["about"],
        "background": "white",
        "width": 860,
        "height": {"step": 46},
        "data": {"values": bars},
        "layer": [
            {
                "mark": {"type": "bar", "height": 26, "stroke": "white"},
                "encoding": {
                    "x": {"field": "from", **hours},
                    "x2": {"field": "to"},
                    "y": place,
                    "color": {
                        "field": "name",
                        "type": "nominal",
                        "title": None,
                        "scale": {"domain": names, "range": tones},
                    },
                },
            },
            {
                "mark": {"type": "text", "align": "left", "dx": 3, "color": "white", "fontSize": 11},
                "encoding": {"x": {"field": "from", **hours}, "y": place, "text": {"field": "text"}},
            },
        ],
        "config": CONFIG,
    }


def shelf_spec(view: dict[str, Any], words: dict[str, str]) -> dict[str, Any]:
    """What stands on the shelf of each product through the day: middle and band."""
    rows = [
        {"h": h, "low": low, "mid": mid, "high": high, "name": product["name"]}
        for product in view["shelf"]
        for h, low, mid, high in zip(
            view["hours"], product["low"], product["mid"], product["high"], strict=True
        )
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
            "height": 90,
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
