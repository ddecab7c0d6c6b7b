"""A probe log on paper, for the file."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any

from frywright.model.kitchen import Kitchen
from frywright.paper.chart import svg
from frywright.paper.paper import pdf
from frywright.paper.probe_chart import log_spec, residual_spec
from frywright.rooms.cook.probe_view import curves_json, fit_view, probe_view
from frywright.rooms.cook.probes import Answer, Calibrated

Translate = Callable[[str], str]
FOOT = (
    "Readings as logged; nothing was invented. The maker's manual, local codes and licensed technicians win."
)
EVENTS = ("drop", "lift", "vent", "probe out of the oil")


def chart_words(translate: Translate) -> dict[str, str]:
    """Words of the pictures."""
    return {
        "minutes": translate("minutes since the start"),
        "since_drop": translate("minutes since the drop"),
        "title": translate("Curves of the log"),
        "residual": translate("measured minus model (K)"),
        **{name: translate(name) for name in EVENTS},
    }


def log_picture(answer: Answer, system: str, translate: Translate) -> str:
    """Curves of a log as SVG, events marked."""
    return svg(log_spec(curves_json(answer, system), chart_words(translate)))


def residual_picture(view: dict[str, Any], translate: Translate) -> str:
    """What a fit leaves over, as SVG; empty when there is no curve."""
    return svg(residual_spec(view["residuals"], chart_words(translate))) if view["residuals"] else ""


def report_pdf(
    kitchen: Kitchen,
    answer: Answer,
    made: Sequence[Calibrated] | None,
    language: str = "en",
    translate: Translate = str,
    sha: str = "",
) -> bytes:
    """The report as a PDF."""
    system = str(kitchen.site.units)
    view = probe_view(answer, system, translate)
    data = {
        "title": f"{translate('Probe log')} {view['name']}",
        "language": language,
        "paper": "us-letter" if system == "us" else "a4",
        "under": (
            f"{kitchen.site.name} · {view['started']} · {view['length']}"
            + (f" · SHA-256 {sha}" if sha else "")
        ),
        "questions": [f"{q['text']} {translate('Taken as')} {q['guess']}." for q in view["questions"]],
        "curve": log_picture(answer, system, translate),
        "alt": translate("Curves of the log"),
        "foot": translate(FOOT),
        "tables": _tables(view, translate),
        "fits": [_fit(m, system, translate) for m in made or ()],
    }
    return pdf("probe.typ", "probe", data)


def _judged(view: dict[str, Any], translate: Translate) -> list[dict[str, Any]]:
    """Verdicts, and the loads they are about."""
    return [
        {
            "title": translate("Verdicts"),
            "header": [
                translate(w)
                for w in ("load", "channel", "verdict", "best row of the table", "Salmonella, log")
            ],
            "rows": [
                [
                    str(v["load"]),
                    v["channel"],
                    f"{v['predicted']} {v['evidence']}",
                    v["row"],
                    v["logs"],
                ]
                for v in view["verdicts"]
            ],
            "lines": [],
        },
        {
            "title": translate("Loads"),
            "header": [
                translate(w)
                for w in ("load", "drop", "lift", "dip", "lowest", "back at heat after", "heat debt", "vent")
            ],
            "rows": [
                [
                    str(x["number"]),
                    x["drop"],
                    x["lift"],
                    x["dip"],
                    x["lowest"],
                    x["recovered"],
                    x["debt"],
                    x["vent"],
                ]
                for x in view["loads"]
            ],
            "lines": [],
        },
    ]


def _tables(view: dict[str, Any], translate: Translate) -> list[dict[str, Any]]:
    read, held = view["read"], view["thermostat"]
    lost = [
        f"{d['count']} × {d['reason']}: {', '.join(str(x['line']) for x in d['lines'])}"
        for d in read["dropped"]
    ]
    counts = translate(
        "{kept} of {lines} lines kept, {before} before the table, {blank} blank, {dropped} dropped"
    ).format(
        kept=read["kept"],
        lines=read["lines"],
        before=read["before"],
        blank=read["blank"],
        dropped=read["dropped_count"],
    )
    tables = [
        {
            "title": translate("Read"),
            "header": [translate(w) for w in ("channel", "part", "unit", "lowest", "highest", "missing")],
            "rows": [
                [c["name"], c["role_word"], c["unit"], c["low"], c["high"], c["missing"]]
                for c in view["channels"]
            ],
            "lines": [counts, *lost],
        },
        *_judged(view, translate),
    ]
    if held:
        line = (
            f"{translate('control mean')} {held['mean']} · {translate('swing')} {held['swing']} ·"
            f" {translate('cycles')} {held['cycles']}"
        )
        tables.append(
            {"title": translate("Thermostat"), "header": ["–"], "rows": [], "lines": [line, *held["lines"]]}
        )
    tables.append(
        {
            "title": translate("Notes"),
            "header": ["–"],
            "rows": [],
            "lines": [n["text"] for n in view["notes"]],
        }
    )
    return tables


def _fit(made: Calibrated, system: str, translate: Translate) -> dict[str, Any]:
    view = fit_view(made, system, translate)
    words = chart_words(translate)
    return {
        "title": f"{translate('Calibration')} {view['cut']}",
        "header": [translate(w) for w in ("parameter", "value", "95 % from", "95 % to")],
        "rows": [[p["name"], p["value"], p["low"], p["high"]] for p in view["parameters"]],
        "lines": [
            f"{translate('misfit')} {view['rms']}",
            *view["warnings"],
            *view["refused"],
            *(p["text"] for p in view["placements"]),
        ],
        "curve": residual_picture(view, translate),
        "alt": words["residual"],
    }
