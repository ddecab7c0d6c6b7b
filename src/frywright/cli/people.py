"""``frywright care``, people: skills, drills, wall cards."""

from __future__ import annotations

from pathlib import Path

import typer

from frywright.cli.care import app
from frywright.cli.shop import Shop, command

__all__ = ["app"]


@command(app)
def people(shop: Shop) -> None:
    """Who has shown which skill, when it expires, what age rules say."""
    from frywright.rooms.care.training import people_view

    view = people_view(*shop.both, shop.language, shop.tr)
    if shop.json(view):
        return
    if not view.people:
        shop.say("Nobody is entered yet: frywright care person adds somebody.")
    for row in view.people:
        for held in row.skills:
            age = "" if held.age == "meets" else shop.tr("; by age: {may}").format(may=held.may)
            typer.echo(f"{row.name:<20} {held.words:<16} {held.expires:<10} {held.title}{age}")


@command(app)
def person(
    shop: Shop,
    name: str = typer.Argument(help="Name."),
    born: str = typer.Option("", help="Birthday, where age rules matter."),
    left: bool = typer.Option(False, help="Has left."),
) -> None:
    """Keep a person."""
    from frywright.rooms.care.training import keep_person

    kept = keep_person(*shop.both, {"name": name, "born": born, "left": "1" if left else ""})
    shop.kept(kept.number)


@command(app)
def skill(
    shop: Shop,
    person: str = typer.Argument(help="Who did it."),
    skill: str = typer.Argument(help="Skill, such as lid."),
    seen_by: str = typer.Option(help="Who saw it."),
    on: str = typer.Option("", help="Day, if not today."),
) -> None:
    """Sign a skill as performed by one and observed by another."""
    from frywright.rooms.care.training import sign_skill

    kept = sign_skill(*shop.both, {"person": person, "skill": skill, "observed_by": seen_by, "date": on})
    if not shop.json({"number": kept.number}):
        shop.say("Entry {number} kept, until {day}.", number=kept.number, day=kept.fact.expires.isoformat())


@command(app, engine=True)
def drill(
    shop: Shop,
    key: str = typer.Argument("", help="Drill; without it all are listed."),
    choice: int | None = typer.Option(None, help="Answer, counted from 1."),
    who: str = typer.Option("", help="Name."),
) -> None:
    """Drills simulated on this kitchen's fryers and programs; an answer is explained, never scored."""
    from frywright.model.errors import InputError
    from frywright.rooms.care.training import answer_drill, drill_view, drill_views

    opened, kitchen = shop.both
    found = (
        [drill_view(kitchen, key, shop.language, shop.tr)]
        if key
        else drill_views(kitchen, shop.language, shop.tr)
    )
    if choice is not None:
        if not key:
            raise InputError("--choice", choice, "an answer to one drill: name it before --choice")
        most = len(found[0].choices)
        if not 1 <= choice <= most:
            raise InputError("--choice", choice, "1 to {most}", most=most)
        answer_drill(opened, kitchen, key, choice - 1, who)
    if shop.json({"drills": found}):
        return
    for one in found:
        typer.echo(f"{one.key}: {one.question}")
        for n, c in enumerate(one.choices if key else [], 1):
            mark = shop.tr("right" if c.right else "this injures" if c.hurts else "wrong")
            typer.echo(f"  {n}. {c.text}" + (f"\n     {mark}: {c.why}" if choice else ""))


@command(app, engine=True)
def wall(shop: Shop, out: Path = typer.Option(Path("wall.pdf"), help="PDF to write.")) -> None:
    """Print wall cards of the store's own values, one page a fryer."""
    from frywright.rooms.care.training import wall_card_pdf

    shop.written(out, wall_card_pdf(*shop.both, shop.language, shop.tr))
