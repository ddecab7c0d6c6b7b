"""``frywright care``, people: skills, drills, wall cards."""

from __future__ import annotations

from pathlib import Path

import typer

from frywright.cli.care import app
from frywright.cli.shop import JSON, STORE, open_shop

__all__ = ["app"]
LANGUAGE = typer.Option("en", help="Language, such as es.")


@app.command()
def people(language: str = LANGUAGE, store: str = STORE, as_json: bool = JSON) -> None:
    """Who has shown which skill, when it expires, what age rules say."""
    from frywright.cli.output import emit_json, speaking_errors

    with speaking_errors(as_json):
        from frywright.rooms.care.training import people_view
        from frywright.voice.tongue import translator

        view = people_view(*open_shop(store), language, translator(language))
        if as_json:
            emit_json({"ok": True, **view})
            return
        for row in view["people"]:
            for held in row["skills"]:
                age = "" if held["age"] == "meets" else f"; by age: {held['may']}"
                typer.echo(
                    f"{row['name']:<20} {held['words']:<16} {held['expires']:<10} {held['title']}{age}"
                )


@app.command()
def person(
    name: str = typer.Argument(help="Name."),
    born: str = typer.Option("", help="Birthday, where age rules matter."),
    left: bool = typer.Option(False, help="Has left."),
    store: str = STORE,
    as_json: bool = JSON,
) -> None:
    """Keep a person."""
    from frywright.cli.output import emit_json, speaking_errors

    with speaking_errors(as_json):
        from frywright.rooms.care.training import keep_person

        kept = keep_person(*open_shop(store), {"name": name, "born": born, "left": "1" if left else ""})
        (
            emit_json({"ok": True, "number": kept.number})
            if as_json
            else typer.echo(f"Entry {kept.number} kept.")
        )


@app.command()
def skill(
    person: str = typer.Argument(help="Who did it."),
    skill: str = typer.Argument(help="Skill, such as lid."),
    seen_by: str = typer.Option(help="Who saw it."),
    on: str = typer.Option("", help="Day, if not today."),
    store: str = STORE,
    as_json: bool = JSON,
) -> None:
    """Sign a skill as performed by one and observed by another."""
    from frywright.cli.output import emit_json, speaking_errors

    with speaking_errors(as_json):
        from frywright.rooms.care.training import sign_skill

        kept = sign_skill(
            *open_shop(store), {"person": person, "skill": skill, "observed_by": seen_by, "date": on}
        )
        (
            emit_json({"ok": True, "number": kept.number})
            if as_json
            else typer.echo(f"Entry {kept.number} kept, until {kept.fact.expires.isoformat()}.")
        )


@app.command()
def drill(
    key: str = typer.Argument("", help="Drill; without it all are listed."),
    choice: int = typer.Option(-1, help="Answer, counted from 1."),
    who: str = typer.Option("", help="Name."),
    language: str = LANGUAGE,
    store: str = STORE,
    as_json: bool = JSON,
) -> None:
    """Drills simulated on this kitchen's fryers and programs; an answer is explained, never scored."""
    from frywright.cli.output import emit_json, preparing, speaking_errors

    with speaking_errors(as_json), preparing():
        from frywright.rooms.care.training import answer_drill, drill_view, drill_views
        from frywright.voice.tongue import translator

        opened, kitchen = open_shop(store)
        tr = translator(language)
        found = [drill_view(kitchen, key, language, tr)] if key else drill_views(kitchen, language, tr)
        if choice > 0:
            answer_drill(opened, kitchen, key, choice - 1, who)
        if as_json:
            emit_json({"ok": True, "drills": found})
            return
        for one in found:
            typer.echo(f"{one['key']}: {one['question']}")
            for n, c in enumerate(one["choices"] if key else [], 1):
                mark = (
                    ("right" if c["right"] else ("injures" if c["hurts"] else "wrong")) if choice > 0 else ""
                )
                typer.echo(f"  {n}. {c['text']}" + (f"\n     {mark}: {c['why']}" if choice > 0 else ""))


@app.command()
def wall(
    out: Path = typer.Option(Path("wall.pdf"), help="PDF to write."),
    language: str = LANGUAGE,
    store: str = STORE,
    as_json: bool = JSON,
) -> None:
    """Print wall cards of the store's own values, one page a fryer."""
    from frywright.cli.output import emit_json, preparing, speaking_errors

    with speaking_errors(as_json), preparing():
        from frywright.rooms.care.training import wall_card_pdf
        from frywright.voice.tongue import translator

        out.write_bytes(wall_card_pdf(*open_shop(store), language, translator(language)))
        emit_json({"ok": True, "file": str(out)}) if as_json else typer.echo(f"{out} written.")
