"""``frywright probe read|calibrate|sample|check``: logger files, probes and thermometers on the terminal."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

import typer

from frywright.cli.output import emit_json, working
from frywright.cli.shop import Shop, command, read_words, write_file
from frywright.cli.spoken import BARE
from frywright.model.plain import plain

if TYPE_CHECKING:
    from frywright.rooms.cook.logs import Log
    from frywright.rooms.cook.probe_view import ProbeView
    from frywright.rooms.cook.probes import Answer, ProbeAsk

app = typer.Typer()
ANSWERS = (
    "Answer to a question of the file, key=value: date_order=dmy, unit=f, unit:CH3=c, role:CH2=core,"
    " interval=2."
)
PROBED = (
    "What a channel was in, channel=cut:weight, for example 'CH2=breast_half:240g'. A bare number is in the"
    " kitchen's unit."
)


def _pairs(texts: list[str], option: str) -> dict[str, str]:
    from frywright.model.errors import InputError

    found = {}
    for text in texts:
        key, mark, value = text.rpartition("=")
        if not mark or not key:
            raise InputError(option, repr(text), "key=value")
        found[key.strip()] = value.strip()
    return found


def _asked(
    shop: Shop, program: str, probed: list[str], thermometer: list[str], display: str, loss_frac: float | None
) -> ProbeAsk:
    from frywright.model.errors import InputError
    from frywright.rooms.cook.probes import ProbeAsk

    cuts, masses = {}, {}
    for channel, value in _pairs(probed, "--probed").items():
        cut, _, weight = value.partition(":")
        if not weight:
            raise InputError(
                "--probed", repr(value), "cut:weight, for example breast_half:240g", where=channel
            )
        cuts[channel], masses[channel] = cut, shop.read(weight, "mass", "--probed") or 0.0
    return ProbeAsk(
        program=program,
        cuts=cuts,
        masses_kg=masses,
        thermometers=_pairs(thermometer, "--thermometer"),
        display_c=shop.read(display, "temperature", "--display"),
        loss_frac=loss_frac,
    )


def _log(shop: Shop, file: Path, answer: list[str]) -> Log:
    from frywright.rooms.cook.logs import open_log

    with working(shop.tr("Reading"), quiet=shop.as_json) as progress:
        return open_log(file, _pairs(answer, "--answer"), progress)


@command(app, kitchen=True, engine=True)
def read(
    shop: Shop,
    file: Path = typer.Argument(help="Logger's file."),
    answer: list[str] = typer.Option([], "--answer", help=ANSWERS),
    thermometer: list[str] = typer.Option([], help="Thermometer on a channel, channel=name; needs --store."),
    display: str = typer.Option(
        "", help=f"What the fryer's display said while idle, for example 350F. {BARE}"
    ),
    report: Path | None = typer.Option(None, help="Write a PDF report here."),
) -> None:
    """Read a logger's file: loads, thermostat, recovery, verdicts; says what was dropped and why."""
    from frywright.rooms.cook.probe_told import probe_told
    from frywright.rooms.cook.probe_view import probe_view
    from frywright.rooms.cook.probes import tell

    place, log = shop.kitchen, _log(shop, file, answer)
    told = tell(place, log, _asked(shop, "", [], thermometer, display, None), shop.store)
    if report:
        from frywright.rooms.cook.probe_report import report_pdf

        write_file(report, report_pdf(place, told, None, shop.language, shop.tr), "--report")
    if shop.as_json:
        emit_json(probe_told(told))
        return
    _print(shop, probe_view(told, shop.units, shop.tr))


def _print(shop: Shop, view: ProbeView) -> None:
    typer.echo(f"{view.name}  {view.started}  {view.length}")
    shop.say(
        "{kept} of {lines} lines kept, {before} before the table, {blank} blank, {dropped_count} dropped",
        view.read,
    )
    for lost in view.read.dropped:
        shop.say(
            "  dropped {count}: {reason} (lines {lines})",
            lost,
            lines=", ".join(str(x.line) for x in lost.lines[:6]),
        )
    for question in view.questions:
        shop.say("  ? {text} Taken as {guess}; answer with --answer '{key}={guess}'", question)
    for channel in view.channels:
        shop.say("  {name}: {role_word} ({reason}), {low} to {high}", channel)
    if view.thermostat:
        shop.say("Thermostat: mean {mean}, swing {swing}, cycles: {cycles}", view.thermostat)
        for line in view.thermostat.lines:
            typer.echo(f"  {line}")
    for load in view.loads:
        shop.say(
            "Load {number}: drop {drop}, lift {lift} ({length}), dip {dip}, lowest {lowest}, back at heat"
            " after {recovered}",
            load,
        )
    for verdict in view.verdicts:
        shop.say("  load {load} {channel}: {word} {amount}", verdict)
        typer.echo(f"    {verdict.proven_word}. {verdict.sentence}")
    for note in view.notes:
        typer.echo(f"  ! {note.text}")


@command(app, kitchen=True, engine=True)
def calibrate(
    shop: Shop,
    file: Path = typer.Argument(help="Logger's file."),
    program: str = typer.Option(..., help="Program that was run."),
    probed: list[str] = typer.Option([], help=PROBED),
    free: str = typer.Option("half_thickness_m,shape_n", help="Parameters to fit, with commas."),
    loss: str = typer.Option("", help="Moisture lost of the breaded weight, weighed; a bare number is in %."),
    answer: list[str] = typer.Option([], "--answer", help=ANSWERS),
    report: Path | None = typer.Option(None, help="Write a PDF report here."),
) -> None:
    """Fit a cut's geometry to the log; prints a table for the kitchen file."""
    from frywright.rooms.cook.probe_told import calibrated_told
    from frywright.rooms.cook.probe_view import fit_view
    from frywright.rooms.cook.probes import calibrate as fit_cut
    from frywright.rooms.cook.probes import calibration_toml, tell

    place, log = shop.kitchen, _log(shop, file, answer)
    asked = _asked(shop, program, probed, [], "", shop.read(loss, "fraction", "--loss", "pct"))
    told = tell(place, log, asked)
    if not asked.cuts:
        _lid(shop, told, asked, free)
        return
    made = [
        fit_cut(place, told, asked, cut, tuple(free.split(","))) for cut in sorted(set(asked.cuts.values()))
    ]
    if report:
        from frywright.rooms.cook.probe_report import report_pdf

        write_file(report, report_pdf(place, told, made, shop.language, shop.tr), "--report")
    if shop.as_json:
        emit_json({"ok": all(m.draft for m in made), "calibrations": [calibrated_told(m) for m in made]})
        return
    for m in made:
        view = fit_view(m, shop.units, shop.tr)
        shop.say("{cut}: misfit {rms}", view)
        for p in view.parameters:
            shop.say("  {name}: {value} (95 %: {low} to {high}; was {before})", p)
        for line in [*view.warnings, *view.refused, *(p.text for p in view.placements)]:
            typer.echo(f"  ! {line}")
        if m.draft:
            typer.echo("\n" + calibration_toml(m.draft))


def _lid(shop: Shop, told: Answer, asked: ProbeAsk, free: str) -> None:
    """Without probed pieces: lid and kettle of the fryer."""
    from frywright.rooms.cook.probe_told import calibrated_told
    from frywright.rooms.cook.probe_view import fit_view, kettle_lines
    from frywright.rooms.cook.probes import Calibrated, calibrate_lid, kettle_found

    place = shop.kitchen
    names = tuple(free.split(",")) if "shape_n" not in free else ("working_gauge_pa",)
    lid = Calibrated(
        cut="lid", fit=calibrate_lid(place, told, asked, names), placements=(), draft=None, notes=()
    )
    kettle = kettle_found(place, told, asked.program)
    if shop.as_json:
        values = {"heater_w": kettle.heater_w, "loss_w_k": kettle.loss_w_k} if kettle else None
        emit_json({**plain(calibrated_told(lid)), "ok": lid.fit.usable, "kettle": values})
        return
    for p in fit_view(lid, shop.units, shop.tr).parameters:
        shop.say("{name}: {value} (95 %: {low} to {high}; was {before})", p)
    for line in kettle_lines(kettle, shop.units, shop.tr):
        typer.echo(line)


@command(app, "heat-up", kitchen=True)
def heat_up(
    shop: Shop,
    file: Path = typer.Argument(help="Log of a heat-up."),
    first_day: Path = typer.Argument(help="Log of the heat-up on the fryer's first day."),
    fryer: str = typer.Option(..., help="Key of the fryer; its oil mass is used."),
    low: str = typer.Option("150F", "--from", show_default="150F = 66C", help=f"Lower mark. {BARE}"),
    high: str = typer.Option("325F", "--to", show_default="325F = 163C", help=f"Upper mark. {BARE}"),
) -> None:
    """Compare a timed heat-up with the first day's; hints only, a licensed technician confirms."""
    from frywright.rooms.cook.heat_up import heat_up_check

    place = shop.kitchen
    ratio, text = heat_up_check(
        place,
        fryer,
        (file, first_day),
        (shop.read(low, "temperature", "--from") or 0.0, shop.read(high, "temperature", "--to") or 0.0),
    )
    if not shop.json({"ratio": ratio, "hint": text}):
        typer.echo(f"×{ratio:.2f}: {shop.tr(text)}")


@command(app, kitchen=True)
def sample(
    shop: Shop,
    readings: str = typer.Argument(
        help=f"Readings of the coldest pieces, for example '178F 176F 181F'. {BARE}"
    ),
    program: str = typer.Option(..., help="Program they were read under; its food's rule judges them."),
    coverage: str = typer.Option("95%", help="Share of pieces; a bare number is in %."),
    confidence: str = typer.Option("95%", help="Confidence; a bare number is in %."),
    checked: bool = typer.Option(False, "--checked/--unchecked", help="The thermometer had a valid check."),
) -> None:
    """Tolerance bound and zero-failure claim of a program from probe readings."""
    from frywright.model.units import at_least
    from frywright.rooms.cook.probe_told import sample_told
    from frywright.rooms.cook.sampling import sample_program, sampled_view

    place = shop.kitchen
    found = sample_program(
        place,
        program,
        place.site.read_list(readings, "temperature", "readings"),
        checked=checked,
        coverage_frac=shop.read(coverage, "fraction", "--coverage", "pct") or 0.0,
        confidence_frac=shop.read(confidence, "fraction", "--confidence", "pct") or 0.0,
    )
    if shop.as_json:
        emit_json(sample_told(found))
        return
    told = sampled_view(place, found, shop.tr)
    shop.say("{program}, version {version}, {fryer}", told)
    typer.echo(told.sentence)
    if found.proof is not None:
        shop.say(
            "{figures}; no failure among them would show at least {zero_failure} %",
            told,
            zero_failure=f"{100 * at_least(found.proof.zero_failure_frac):.1f}",
        )
    for note in told.notes:
        typer.echo(f"! {note}")


@command(app, kitchen=True)
def check(
    shop: Shop,
    thermometer: str = typer.Option(..., help="Mark on the thermometer."),
    ice: str = typer.Option("", help=f"Reading in ice slush, for example 32.5F. {BARE}"),
    boil: str = typer.Option("", help=f"Reading in boiling water. {BARE}"),
) -> None:
    """Record an ice or boiling check; a failed one lists every load in doubt since the last good one."""
    from frywright.model.units import show
    from frywright.rooms.thermometers import record_check

    place = shop.kitchen
    made, doubts = record_check(
        shop.store,
        place,
        thermometer,
        shop.read(ice, "temperature", "--ice"),
        shop.read(boil, "temperature", "--boil"),
    )
    system = place.site.units
    if shop.json(
        {
            "thermometer": made.thermometer,
            "outcome": str(made.outcome),
            "errors_k": list(made.errors_k),
            "boiling_point_c": made.boiling_point_c,
            "due_at": made.due_at.isoformat(),
            "doubts": [
                {
                    "entry": d.reading.number,
                    "corrected_c": d.corrected_c,
                    "in_doubt": d.in_doubt,
                    "load": d.reading.load,
                }
                for d in doubts
            ],
        }
    ):
        return
    shop.say(
        "{thermometer}: {outcome} (water boils here at {boiling_point_c}), next check by {due_at}",
        thermometer=made.thermometer,
        outcome=shop.tr(str(made.outcome)),
        boiling_point_c=show(made.boiling_point_c, "c", system),
        due_at=f"{made.due_at:%Y-%m-%d}",
    )
    for d in doubts:
        word = shop.tr("IN DOUBT" if d.in_doubt else "clear")
        shop.say(
            "  {word}: entry {number}, {load}, read {core_c}, true {corrected_c}",
            word=word,
            number=d.reading.number,
            load=d.reading.load,
            core_c=show(d.reading.core_c, "c", system),
            corrected_c=show(d.corrected_c, "c", system),
        )


@command(app, kitchen=True)
def hold(
    shop: Shop,
    file: Path = typer.Argument(
        help="CSV with columns repeat, minute, core_f or core_c, and one column for each score."
    ),
    least: str = typer.Option("7", help="Least score that passes."),
    share: str = typer.Option("90%", help="Share of repeats that must pass; a bare number is in %."),
) -> None:
    """Hold life from a hold study; the safety limit wins over every score."""
    from frywright.model.findings import say
    from frywright.rooms.standing import place_here
    from frywright.trial.hold_study import study

    place = shop.kitchen
    limit = shop.number(least, "--least") or 0.0
    part = shop.read(share, "fraction", "--share", "pct") or 0.0
    hot_hold_c = place_here(shop.store, place).hot_hold_c()
    found = study(place, read_words(file), file.name, limit, part, hot_hold_c)
    if not shop.json(
        {"life_s": found.life_s, "ended_by": found.ended_by, "rows": [list(r) for r in found.rows]}
    ):
        typer.echo(say(found.note.text, found.note.values, shop.units, shop.tr))
