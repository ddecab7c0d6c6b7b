"""Charts as Vega-Lite specifications, rendered to SVG offline."""

from __future__ import annotations

import re
from collections.abc import Sequence
from html import escape
from typing import Any

from frywright.paper.curves import CookPicture
from frywright.paper.fonts import PICTURE, digits_folder

Spec = dict[str, Any]
"""A document in the language of the chart library (Vega-Lite): its keys are the library's."""
INK, HEAT, OIL, RULE = "#1d1a16", "#b3401f", "#1f6f78", "#8b8478"
DASHES = ([1, 0], [6, 3], [2, 2], [8, 3, 2, 3], [4, 4], [10, 2])


def cook_spec(view: CookPicture, words: dict[str, str]) -> Spec:
    """One picture of a cook: temperatures above, pressure below. ``words`` names the axes."""
    curves = view.curves
    minutes = [t / 60 for t in curves.time_s]
    rows = [{"t": t, "y": y, "name": words["oil"]} for t, y in zip(minutes, curves.oil, strict=True)]
    for piece in curves.pieces:
        rows += [{"t": t, "y": y, "name": piece.name} for t, y in zip(minutes, piece.core, strict=True)]
    names = [words["oil"], *(p.name for p in curves.pieces)]
    colours = [OIL, *(HEAT if p.heavy else INK for p in curves.pieces)]
    temperature = {
        "width": 640,
        "height": 300,
        "layer": [
            {
                "data": {"values": rows},
                "mark": {"type": "line", "strokeWidth": 1.8},
                "encoding": {
                    "x": {"field": "t", "type": "quantitative", "title": words["minutes"]},
                    "y": {
                        "field": "y",
                        "type": "quantitative",
                        "title": curves.degree,
                        "scale": {"zero": False},
                    },
                    "color": by_name(names, colours),
                    "strokeDash": dashes(names),
                },
            },
            *_rules(view),
        ],
    }
    return {
        "$schema": "https://vega.github.io/schema/vega-lite/v5.json",
        "description": view.sentence,
        "background": "white",
        "vconcat": [temperature, _gauge(view, words)],
        "config": {
            "font": PICTURE,
            "axis": {"labelFontSize": 12, "titleFontSize": 13},
            "legend": {"labelFontSize": 12, "labelLimit": 260},
        },
    }


def by_name(names: Sequence[str], values: Sequence[object]) -> Spec:
    """A channel of a picture that tells lines apart by their name, with its own key."""
    return {
        "field": "name",
        "type": "nominal",
        "title": None,
        "scale": {"domain": list(names), "range": list(values)},
    }


def dashes(names: Sequence[str]) -> Spec:
    """Dashes by name, so that lines are told apart without colour."""
    return by_name(names, [list(DASHES[i % len(DASHES)]) for i in range(len(names))])


def _gauge(view: CookPicture, words: dict[str, str]) -> Spec:
    """The pressure below the temperatures."""
    curves = view.curves
    pairs = zip(curves.time_s, curves.gauge, strict=True)
    return {
        "width": 640,
        "height": 90,
        "data": {"values": [{"t": t / 60, "y": y} for t, y in pairs]},
        "mark": {"type": "area", "color": OIL, "opacity": 0.35, "line": {"color": OIL}},
        "encoding": {
            "x": {"field": "t", "type": "quantitative", "title": words["minutes"]},
            "y": {
                "field": "y",
                "type": "quantitative",
                "title": f"{words['pressure']} ({curves.pressure_unit})",
            },
        },
    }


def card_spec(view: CookPicture, words: dict[str, str]) -> Spec:
    """The picture of a card: oil and the coldest piece only, type large enough for a wall."""
    curves, coldest = view.curves, view.coldest
    minutes = [t / 60 for t in curves.time_s]
    piece = next(p for p in curves.pieces if p.name == coldest)
    lines = ((words["oil"], curves.oil), (coldest, piece.core))
    rows = [
        {"t": t, "y": y, "name": name} for name, values in lines for t, y in zip(minutes, values, strict=True)
    ]
    ends = [
        {"t": minutes[len(minutes) // 4], "y": values[len(minutes) // 4], "name": name}
        for name, values in lines
    ]
    axis = {
        "x": {"field": "t", "type": "quantitative", "title": words["minutes"]},
        "y": {"field": "y", "type": "quantitative", "title": curves.degree, "scale": {"zero": False}},
    }
    marks = [{"t": m.time_s / 60, "text": m.text} for m in view.marks]
    return {
        "$schema": "https://vega.github.io/schema/vega-lite/v5.json",
        "description": view.sentence,
        "background": "white",
        "width": 980,
        "height": 330,
        "layer": [
            {
                "data": {"values": rows},
                "mark": {"type": "line", "strokeWidth": 3.5, "color": "black"},
                "encoding": {**axis, "strokeDash": {"field": "name", "type": "nominal", "legend": None}},
            },
            {
                "data": {"values": marks},
                "mark": {"type": "rule", "strokeDash": [4, 4], "strokeWidth": 1.5},
                "encoding": {"x": {"field": "t", "type": "quantitative"}},
            },
            *_on_white(
                {
                    "data": {"values": ends},
                    "mark": {"type": "text", "align": "left", "dy": -14, "fontSize": 26},
                    "encoding": {**axis, "text": {"field": "name"}},
                }
            ),
            *_on_white(
                {
                    "data": {"values": labels(marks, minutes[-1])},
                    "mark": {
                        "type": "text",
                        "angle": 270,
                        "align": "right",
                        "dy": -16,
                        "y": 6,
                        "fontSize": 24,
                    },
                    "encoding": {"x": {"field": "t", "type": "quantitative"}, "text": {"field": "text"}},
                }
            ),
        ],
        "config": {
            "font": PICTURE,
            "axis": {"labelFontSize": 24, "titleFontSize": 26, "titleFontWeight": "normal"},
        },
    }


def _on_white(text: Spec) -> tuple[Spec, Spec]:
    """A layer of text on its own shape in white, so that no curve strikes a word through."""
    return {**text, "mark": {**text["mark"], "stroke": "white", "strokeWidth": 10}}, text


NEAR_FRAC = 0.03
"""Marks nearer than this share of the time share one label: two over each other cannot be read."""


def labels(marks: Sequence[Spec], span: float) -> list[Spec]:
    """Labels of marks, those that would stand on each other in one."""
    found: list[Spec] = []
    for mark in sorted(marks, key=lambda m: float(m["t"])):
        if found and mark["t"] - found[-1]["t"] < NEAR_FRAC * span:
            found[-1] = {**found[-1], "text": f"{found[-1]['text']} · {mark['text']}"}
        else:
            found.append(dict(mark))
    return found


def _rules(view: CookPicture) -> list[Spec]:
    marks = [{"t": m.time_s / 60, "text": m.text} for m in view.marks]
    out: list[Spec] = [
        {
            "data": {"values": marks},
            "mark": {"type": "rule", "color": RULE, "strokeDash": [3, 3]},
            "encoding": {"x": {"field": "t", "type": "quantitative"}},
        },
        {
            "data": {"values": labels(marks, view.curves.time_s[-1] / 60)},
            "mark": {"type": "text", "angle": 270, "align": "right", "dy": -6, "y": 4, "color": INK},
            "encoding": {"x": {"field": "t", "type": "quantitative"}, "text": {"field": "text"}},
        },
    ]
    if view.limit:
        out.append(
            {
                "data": {"values": [{"y": view.limit.value}]},
                "mark": {"type": "rule", "color": HEAT, "strokeWidth": 1.5, "strokeDash": [2, 2]},
                "encoding": {"y": {"field": "y", "type": "quantitative"}},
            }
        )
    return out


MARKS_OF_READERS = re.compile(r' (?:role|aria-[a-z]+)="[^"]*"')
"""What the chart library says to readers of screens, piece by piece and in English only."""


def svg(spec: Spec) -> str:
    """The picture of a specification. Rendered without network; fonts from the package. Its description is
    what a reader of screens says; the library's own labels are in English only.
    """
    import vl_convert

    vl_convert.register_font_directory(str(digits_folder()))
    drawn = MARKS_OF_READERS.sub("", vl_convert.vegalite_to_svg(spec))
    words = spec.get("description")
    named = f'role="img" aria-label="{escape(words)}"' if words else 'aria-hidden="true"'
    return drawn.replace("<svg ", f"<svg {named} ", 1)
