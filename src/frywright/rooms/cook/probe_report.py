"""A probe log on paper, for the file."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from frywright.model.kitchen import Kitchen
from frywright.model.tongues import Translate
from frywright.paper.chart import svg
from frywright.paper.paper import pdf
from frywright.paper.probe_chart import log_spec, residual_spec
from frywright.rooms.cook.probe_view import FitView, ProbeView, fit_view, log_curves, probe_view
from frywright.rooms.cook.probes import Answer, Calibrated

FOOT = (
    "Readings as logged; nothing was invented. The maker's manual, local codes and licensed technicians win."
)
EVENTS = ("drop", "lift", "vent", "probe out of the oil")


@dataclass(frozen=True, slots=True, kw_only=True)
class ReportTable:
    """A table of the report, and lines below it."""

    title: str
    header: list[str]
    rows: list[list[str]]
    lines: list[str]


@dataclass(frozen=True, slots=True, kw_only=True)
class FitTable(ReportTable):
    """A calibration with the picture of what it leaves over."""

    curve: str
    alt: str


def chart_words(translate: Translate) -> dict[str, str]:
    """Words of the pictures."""
    return {
        "minutes": translate("minutes since the start"),
        "since_drop": translate("minutes since the drop"),
        "title": translate("Curves of the log"),
        "residual": translate("measured minus model"),
        **{name: translate(name) for name in EVENTS},
    }


def log_picture(answer: Answer, system: str, translate: Translate) -> str:
    """Curves of a log as SVG, events marked; empty when no channel has a curve."""
    curves = log_curves(answer, system)
    return svg(log_spec(curves, chart_words(translate))) if curves.channels else ""


def residual_picture(view: FitView, translate: Translate) -> str:
    """What a fit leaves over, as SVG; empty when there is no curve."""
    return svg(residual_spec(view.residuals, chart_words(translate))) if view.residuals else ""


def report_pdf(
    kitchen: Kitchen,
    answer: Answer,
    made: Sequence[Calibrated] | None,
    language: str = "en",
    translate: Translate = str,
    sha: str = "",
) -> bytes:
    """The report as a PDF."""
    system = kitchen.site.units
    view = probe_view(answer, system, translate)
    data = {
        "title": f"{translate('Probe log')} {view.name}",
        "language": language,
        "paper": "us-letter" if system == "us" else "a4",
        "under": (
            f"{kitchen.site.name} · {view.started} · {view.length}" + (f" · SHA-256 {sha}" if sha else "")
        ),
        "questions": [f"{q.text} {translate('Taken as')} {q.guess}." for q in view.questions],
        "curve": log_picture(answer, system, translate),
        "alt": translate("Curves of the log"),
        "foot": translate(FOOT),
        "tables": _tables(view, translate),
        "fits": [_fit(m, system, translate) for m in made or ()],
    }
    return pdf("probe.typ", "probe", data)


def _words(texts: tuple[str, ...], translate: Translate) -> list[str]:
    return [translate(text) for text in texts]


def _judged(view: ProbeView, translate: Translate) -> list[ReportTable]:
    """Verdicts, and the loads they are about."""
    judged = ("load", "channel", "verdict", "best row of the table", "Salmonella, log")
    loads = ("load", "drop", "lift", "dip", "lowest", "back at heat after", "heat debt", "vent")
    return [
        ReportTable(
            title=translate("Verdicts"),
            header=_words(judged, translate),
            rows=[
                [str(v.load), v.channel, f"{v.predicted} {v.evidence}", v.row, v.logs] for v in view.verdicts
            ],
            lines=[],
        ),
        ReportTable(
            title=translate("Loads"),
            header=_words(loads, translate),
            rows=[
                [str(x.number), x.drop, x.lift, x.dip, x.lowest, x.recovered, x.debt, x.vent]
                for x in view.loads
            ],
            lines=[],
        ),
    ]


def _tables(view: ProbeView, translate: Translate) -> list[ReportTable]:
    read, held = view.read, view.thermostat
    lost = [f"{d.count} × {d.reason}: {', '.join(str(x.line) for x in d.lines)}" for d in read.dropped]
    counts = translate(
        "{kept} of {lines} lines kept, {before} before the table, {blank} blank, {dropped} dropped"
    ).format(
        kept=read.kept, lines=read.lines, before=read.before, blank=read.blank, dropped=read.dropped_count
    )
    columns = ("channel", "part", "unit", "lowest", "highest", "missing")
    tables = [
        ReportTable(
            title=translate("Read"),
            header=_words(columns, translate),
            rows=[[c.name, c.role_word, c.unit, c.low, c.high, c.missing] for c in view.channels],
            lines=[counts, *lost],
        ),
        *_judged(view, translate),
    ]
    if held:
        line = (
            f"{translate('control mean')} {held.mean} · {translate('swing')} {held.swing} ·"
            f" {translate('cycles')} {held.cycles}"
        )
        lines = [line, *held.lines]
        tables.append(ReportTable(title=translate("Thermostat"), header=["–"], rows=[], lines=lines))
    notes = [n.text for n in view.notes]
    return [*tables, ReportTable(title=translate("Notes"), header=["–"], rows=[], lines=notes)]


def _fit(made: Calibrated, system: str, translate: Translate) -> FitTable:
    view = fit_view(made, system, translate)
    return FitTable(
        title=f"{translate('Calibration')} {view.cut}",
        header=_words(("parameter", "value", "95 % from", "95 % to"), translate),
        rows=[[p.name, p.value, p.low, p.high] for p in view.parameters],
        lines=[
            f"{translate('misfit')} {view.rms}",
            *view.warnings,
            *view.refused,
            *(p.text for p in view.placements),
        ],
        curve=residual_picture(view, translate),
        alt=chart_words(translate)["residual"],
    )
