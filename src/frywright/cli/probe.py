"""``frywright probe read|calibrate|sample|check``: logger files, probes and thermometers on the terminal."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import typer

from frywright.cli.cook import _value

app = typer.Typer(help="Probe logs, calibration, sampling proof, thermometers.", no_args_is_help=True)
ANSWERS = (
    "Answer to a question of the file, key=value: date_order=dmy, unit=f, unit:CH3=c, role:CH2=core,"
    " interval=2."
)
PROBED = "What a channel was in, channel=cut:weight, for example 'CH2=breast_half:240g'."


def _pairs(texts: list[str], option: str) -> dict[str, str]:
    from frywright.model.errors import InputError

    found = {}
    for text in texts:
        key, mark, value = text.rpartition("=")
        if not mark or not key:
            raise InputError(option, repr(text), "key=value")
        found[key.strip()] = value.strip()
    return found


def _asked(program: str, probed: list[str], thermometer: list[str], display: str, loss: float | None) -> Any:
    from frywright.model.errors import InputError
    from frywright.rooms.cook.probes import ProbeAsk

    cuts, masses = {}, {}
    for channel, value in _pairs(probed, "--probed").items():
        cut, _, weight = value.partition(":")
        if not weight:
            raise InputError(
                "--probed", repr(value), "cut:weight, for example breast_half:240g", where=channel
            )
        cuts[channel], masses[channel] = cut, _value(None, weight, "mass", "--probed") or 0.0
    return ProbeAsk(
        program=program,
        cuts=cuts,
        masses_kg=masses,
        thermometers=_pairs(thermometer, "--thermometer"),
        display_c=_value(None, display, "temperature", "--display"),
        loss_frac=None if loss is None else loss / 100.0,
    )


def _open(kitchen: Path, file: Path, answer: list[str], quiet: bool) -> tuple[Any, Any]:
    from frywright.cli.output import working
    from frywright.cli.shop import open_kitchen
    from frywright.rooms.cook.probes import open_log

    place = open_kitchen(kitchen)
    with working("Reading", quiet=quiet) as progress:
        log = open_log(file, _pairs(answer, "--answer"), progress)
    return place, log


@app.command()
def read(
    kitchen: Path = typer.Argument(help="Kitchen file (TOML)."),
    file: Path = typer.Argument(help="Logger's file."),
    answer: list[str] = typer.Option([], "--answer", help=ANSWERS),
    thermometer: list[str] = typer.Option([], help="Thermometer on a channel, channel=name; needs --store."),
    display: str = typer.Option("", help="What the fryer's display said while idle, for example 350F."),
    store: Path | None = typer.Option(None, help="Store with the thermometers' checks."),
    report: Path | None = typer.Option(None, help="Write a PDF report here."),
    as_json: bool = typer.Option(False, "--json", help="Print JSON."),
) -> None:
    """Read a logger's file: loads, thermostat, recovery, verdicts; says what was dropped and why."""
    from frywright.cli.output import emit_json, preparing, speaking_errors

    with speaking_errors(as_json), preparing():
        from frywright.rooms.cook.probe_json import probe_json
        from frywright.rooms.cook.probe_view import probe_view
        from frywright.rooms.cook.probes import tell

        place, log = _open(kitchen, file, answer, as_json)
        told = tell(place, log, _asked("", [], thermometer, display, None), _store(store) if store else None)
        if report:
            from frywright.rooms.cook.probe_report import report_pdf

            report.write_bytes(report_pdf(place, told, None))
        if as_json:
            emit_json(probe_json(told))
            return
        _print(probe_view(told, str(place.site.units)))


def _store(path: Path) -> Any:
    from frywright.ledger.store import Store
    from frywright.rooms.clock import now

    return Store.file(path, now)


def _print(view: dict[str, Any]) -> None:
    read_ = view["read"]
    typer.echo(f"{view['name']}  {view['started']}  {view['length']}")
    typer.echo(
        f"{read_['kept']} of {read_['lines']} lines kept, {read_['before']} before the table,"
        f" {read_['blank']} blank, {read_['dropped_count']} dropped"
    )
    for lost in read_["dropped"]:
        typer.echo(
            f"  dropped {lost['count']}: {lost['reason']} (lines"
            f" {', '.join(str(x['line']) for x in lost['lines'][:6])})"
        )
    for question in view["questions"]:
        typer.echo(
            f"  ? {question['text']} Taken as {question['guess']}; answer with --answer"
            f" '{question['key']}={question['guess']}'"
        )
    for channel in view["channels"]:
        typer.echo(
            f"  {channel['name']}: {channel['role_word']} ({channel['reason']}), {channel['low']} to"
            f" {channel['high']}"
        )
    held = view["thermostat"]
    if held:
        typer.echo(f"Thermostat: mean {held['mean']}, swing {held['swing']}, {held['cycles']} cycles")
        for line in held["lines"]:
            typer.echo(f"  {line}")
    for load in view["loads"]:
        typer.echo(
            f"Load {load['number']}: drop {load['drop']}, lift {load['lift']} ({load['length']}), dip"
            f" {load['dip']}, lowest {load['lowest']}, back at heat after {load['recovered']}"
        )
    for verdict in view["verdicts"]:
        typer.echo(f"  load {verdict['load']} {verdict['channel']}: {verdict['word']} {verdict['amount']}")
        typer.echo(f"    {verdict['proven_word']}. {verdict['sentence']}")
    for note in view["notes"]:
        typer.echo(f"  ! {note['text']}")


@app.command()
def calibrate(
    kitchen: Path = typer.Argument(help="Kitchen file (TOML)."),
    file: Path = typer.Argument(help="Logger's file."),
    program: str = typer.Option(..., help="Program that was run."),
    probed: list[str] = typer.Option([], help=PROBED),
    free: str = typer.Option("half_thickness_m,shape_n", help="Parameters to fit, with commas."),
    loss: float | None = typer.Option(None, help="Moisture lost, % of breaded weight, weighed."),
    answer: list[str] = typer.Option([], "--answer", help=ANSWERS),
    report: Path | None = typer.Option(None, help="Write a PDF report here."),
    as_json: bool = typer.Option(False, "--json", help="Print JSON."),
) -> None:
    """Fit a cut's geometry to the log; prints a table for the kitchen file."""
    from frywright.cli.output import emit_json, preparing, speaking_errors

    with speaking_errors(as_json), preparing():
        from frywright.rooms.cook.probe_json import calibrated_json
        from frywright.rooms.cook.probe_view import fit_view
        from frywright.rooms.cook.probes import calibrate as fit_cut
        from frywright.rooms.cook.probes import calibration_toml, tell

        place, log = _open(kitchen, file, answer, as_json)
        asked = _asked(program, probed, [], "", loss)
        told = tell(place, log, asked)
        if not asked.cuts:
            _lid(place, told, asked, free, as_json)
            return
        made = [
            fit_cut(place, told, asked, cut, tuple(free.split(",")))
            for cut in sorted(set(asked.cuts.values()))
        ]
        if report:
            from frywright.rooms.cook.probe_report import report_pdf

            report.write_bytes(report_pdf(place, told, made))
        if as_json:
            emit_json({"ok": all(m.draft for m in made), "calibrations": [calibrated_json(m) for m in made]})
            return
        for m in made:
            view = fit_view(m, str(place.site.units))
            typer.echo(f"{view['cut']}: misfit {view['rms']}")
            for p in view["parameters"]:
                typer.echo(
                    f"  {p['name']}: {p['value']} (95 %: {p['low']} to {p['high']}; was {p['before']})"
                )
            for line in [*view["warnings"], *view["refused"], *(p["text"] for p in view["placements"])]:
                typer.echo(f"  ! {line}")
            if m.draft:
                typer.echo("\n" + calibration_toml(m.draft))


def _lid(place: Any, told: Any, asked: Any, free: str, as_json: bool) -> None:
    """Without probed pieces: lid and kettle of the fryer."""
    from frywright.cli.output import emit_json
    from frywright.rooms.cook.probe_json import calibrated_json
    from frywright.rooms.cook.probe_view import fit_view, kettle_lines
    from frywright.rooms.cook.probes import Calibrated, calibrate_lid, kettle_found

    names = tuple(free.split(",")) if "shape_n" not in free else ("working_gauge_pa",)
    lid = Calibrated(
        cut="lid", fit=calibrate_lid(place, told, asked, names), placements=(), draft=None, notes=()
    )
    kettle = kettle_found(place, told, asked.program)
    if as_json:
        values = {"heater_w": kettle.heater_w, "loss_w_k": kettle.loss_w_k} if kettle else None
        emit_json({**calibrated_json(lid), "ok": lid.fit.usable, "kettle": values})
        return
    for p in fit_view(lid, str(place.site.units))["parameters"]:
        typer.echo(f"{p['name']}: {p['value']} (95 %: {p['low']} to {p['high']}; was {p['before']})")
    for line in kettle_lines(kettle, str(place.site.units)):
        typer.echo(line)


@app.command("heat-up")
def heat_up(
    kitchen: Path = typer.Argument(help="Kitchen file (TOML)."),
    file: Path = typer.Argument(help="Log of a heat-up."),
    first_day: Path = typer.Argument(help="Log of the heat-up on the fryer's first day."),
    fryer: str = typer.Option(..., help="Key of the fryer; its oil mass is used."),
    low: str = typer.Option("150F", "--from", help="Lower mark."),
    high: str = typer.Option("325F", "--to", help="Upper mark."),
    as_json: bool = typer.Option(False, "--json", help="Print JSON."),
) -> None:
    """Compare a timed heat-up with the first day's; hints only, a licensed technician confirms."""
    from frywright.cli.output import emit_json, speaking_errors

    with speaking_errors(as_json):
        from frywright.cli.shop import open_kitchen
        from frywright.rooms.cook.heat_up import heat_up_check

        place = open_kitchen(kitchen)
        ratio, text = heat_up_check(
            place,
            fryer,
            (file, first_day),
            (
                _value(place, low, "temperature", "--from") or 0.0,
                _value(place, high, "temperature", "--to") or 0.0,
            ),
        )
        if as_json:
            emit_json({"ok": True, "ratio": ratio, "hint": text})
        else:
            typer.echo(f"×{ratio:.2f}: {text}")


@app.command()
def sample(
    kitchen: Path = typer.Argument(help="Kitchen file (TOML)."),
    readings: str = typer.Argument(help="Readings of the coldest pieces, for example '178F 176F 181F'."),
    program: str = typer.Option(..., help="Program they were read under; its food's rule judges them."),
    coverage: float = typer.Option(95.0, help="Share of pieces, %."),
    confidence: float = typer.Option(95.0, help="Confidence, %."),
    checked: bool = typer.Option(False, "--checked/--unchecked", help="The thermometer had a valid check."),
    as_json: bool = typer.Option(False, "--json", help="Print JSON."),
) -> None:
    """Tolerance bound and zero-failure claim of a program from probe readings."""
    from frywright.cli.output import emit_json, speaking_errors

    with speaking_errors(as_json):
        from frywright.cli.shop import open_kitchen
        from frywright.rooms.cook.probe_json import sample_json
        from frywright.rooms.cook.sampling import sample_program, sampled_view

        place = open_kitchen(kitchen)
        found = sample_program(
            place,
            program,
            place.site.read_list(readings, "temperature", "readings"),
            checked=checked,
            coverage_frac=coverage / 100,
            confidence_frac=confidence / 100,
        )
        if as_json:
            emit_json(sample_json(found))
            return
        told = sampled_view(place, found)
        typer.echo(f"{told['program']}, version {told['version']}, {told['fryer']}")
        typer.echo(told["sentence"])
        if found.proof is not None:
            typer.echo(
                f"{told['figures']}; no failure among them would show at least"
                f" {100 * found.proof.zero_failure_frac:.1f} %"
            )
        for note in told["notes"]:
            typer.echo(f"! {note}")


@app.command()
def check(
    kitchen: Path = typer.Argument(help="Kitchen file (TOML)."),
    thermometer: str = typer.Option(..., help="Mark on the thermometer."),
    ice: str = typer.Option("", help="Reading in ice slush, for example 32.5F."),
    boil: str = typer.Option("", help="Reading in boiling water."),
    store: Path = typer.Option(Path("var/frywright.db"), help="File that remembers."),
    as_json: bool = typer.Option(False, "--json", help="Print JSON."),
) -> None:
    """Record an ice or boiling check; a failed one lists every load in doubt since the last good one."""
    from frywright.cli.output import emit_json, speaking_errors

    with speaking_errors(as_json):
        from frywright.cli.shop import open_kitchen
        from frywright.model.units import show
        from frywright.rooms.thermometers import record_check

        place = open_kitchen(kitchen)
        made, doubts = record_check(
            _store(store),
            place,
            thermometer,
            _value(place, ice, "temperature", "--ice"),
            _value(place, boil, "temperature", "--boil"),
        )
        system = str(place.site.units)
        if as_json:
            emit_json(
                {
                    "ok": True,
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
            )
            return
        typer.echo(
            f"{made.thermometer}: {made.outcome} (water boils here at"
            f" {show(made.boiling_point_c, 'c', system)}), next check by {made.due_at:%Y-%m-%d}"
        )
        for d in doubts:
            word = "IN DOUBT" if d.in_doubt else "clear"
            typer.echo(
                f"  {word}: entry {d.reading.number}, {d.reading.load}, read"
                f" {show(d.reading.core_c, 'c', system)}, true {show(d.corrected_c, 'c', system)}"
            )


@app.command()
def hold(
    kitchen: Path = typer.Argument(help="Kitchen file (TOML)."),
    file: Path = typer.Argument(
        help="CSV with columns repeat, minute, core_f or core_c, and one column for each score."
    ),
    least: float = typer.Option(7.0, help="Least score that passes."),
    share: float = typer.Option(90.0, help="Share of repeats that must pass, %."),
    as_json: bool = typer.Option(False, "--json", help="Print JSON."),
) -> None:
    """Hold life from a hold study; the safety limit wins over every score."""
    from frywright.cli.output import emit_json, speaking_errors

    with speaking_errors(as_json):
        from frywright.cli.shop import open_kitchen
        from frywright.model.findings import say
        from frywright.trial.hold_study import study

        place = open_kitchen(kitchen)
        found = study(place, file.read_text("utf-8-sig"), file.name, least, share / 100.0)
        if as_json:
            emit_json(
                {
                    "ok": True,
                    "life_s": found.life_s,
                    "ended_by": found.ended_by,
                    "rows": [list(r) for r in found.rows],
                }
            )
        else:
            typer.echo(say(found.note.text, found.note.values, str(place.site.units)))
