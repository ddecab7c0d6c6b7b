"""The live probe: readings in by a device's token, a load followed while it cooks, its curve kept."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Annotated, Any

from fastapi import Query, Request, Response
from fastapi.responses import RedirectResponse
from pydantic import BaseModel, ConfigDict, Field

from frywright.model.errors import FrywrightError
from frywright.model.kitchen import Kitchen
from frywright.rooms.clock import now
from frywright.rooms.cook.intake import MOST_TOGETHER, Sample, moment_of, named, temp_of
from frywright.rooms.cook.live import LiveAsk, LiveRoom, Use
from frywright.rooms.cook.live_view import channels_view, load_view, sources_view, titles_of
from frywright.web.app import Context
from frywright.web.posted import Typed
from frywright.web.routes import Routes

OIL = "oil"
MOST_DEVICE = 18
Number = Annotated[int, Query(ge=0, le=2**31)]


class LiveSample(BaseModel):
    """One reading of one probe."""

    model_config = ConfigDict(extra="forbid")
    channel: str = Field(max_length=80)
    temp: float = Field(allow_inf_nan=False)
    unit: str = Field(default="C", max_length=4, description="C or F.")
    at: str | float | None = Field(
        default=None, description="The device's own time: ISO with its zone, or seconds since 1970."
    )


class LiveIn(BaseModel):
    """Readings that a device took. The same reading sent again is kept once."""

    model_config = ConfigDict(extra="forbid")
    source: str = Field(default="", max_length=40, description="Which of the device's inputs they come from.")
    samples: list[LiveSample] = Field(max_length=MOST_TOGETHER)


class LiveOut(BaseModel):
    """How many readings were new."""

    new: int


def router(context: Context) -> Routes:
    """Routes of the live probe."""
    routes, room = Routes(), LiveRoom(context.store, _now_s)
    _add_intake(routes, room)
    _add_page(routes, context, room)
    _add_acts(routes, context, room)
    return routes


def _add_intake(routes: Routes, room: LiveRoom) -> None:
    @routes.post("/api/v1/live")
    def live(request: Request, body: LiveIn) -> LiveOut:
        """Readings of probes while a load cooks. They need no key: a reading sent twice counts once."""
        samples = [
            Sample(channel=s.channel, temp_c=temp_of(s.temp, s.unit), at_s=moment_of(s.at))
            for s in body.samples
        ]
        who = request.state.who
        source = " ".join(part for part in (who.name[:MOST_DEVICE].strip(), body.source.strip()) if part)
        return LiveOut(new=room.take(named(source, "source", may_be_empty=True), samples, _now_s()))


def _now_s() -> float:
    return now().timestamp()


def _values(context: Context, request: Request, room: LiveRoom, number: int) -> dict[str, Any]:
    """What page and part show: one load or none, and every source."""
    kitchen, moment = context.kitchen, _now_s()
    translate, system = context.tr(request), kitchen.site.units
    loads = [load_view(room, kitchen, load, moment, translate) for load in room.loads()]
    return {
        "kitchen": kitchen,
        "load": next((load for load in loads if load.number == number), None),
        "others": [load for load in loads if load.number != number],
        "sources": sources_view(room.intake.clocks(), moment, system, translate),
        "channels": channels_view(room, moment, system),
        "gone": bool(number) and all(load.number != number for load in loads),
        "not_kept": room.journal.lost,
        "room": "probes",
    }


def _form(kitchen: Kitchen, typed: Mapping[str, str]) -> dict[str, Any]:
    used = {part.cut for p in kitchen.programs for part in _cut_set(kitchen, p.product).parts}
    return {
        "programs": sorted({p.name for p in kitchen.programs}),
        "cuts": [cut for cut in kitchen.cuts if cut.key in used],
        "typed": typed,
    }


def _cut_set(kitchen: Kitchen, product: str) -> Any:
    return kitchen.cut_set(kitchen.product(product).cut_set)


def _add_page(routes: Routes, context: Context, room: LiveRoom) -> None:
    @routes.get("/cook/live")
    def page(request: Request, load: Number = 0) -> Response:
        values = _values(context, request, room, load)
        return context.render(request, "cook/live.html", **values, **_form(values["kitchen"], {}))

    @routes.get("/cook/live/part")
    def part(request: Request, load: Number = 0) -> Response:
        return context.render(request, "cook/live_part.html", **_values(context, request, room, load))


def _add_acts(routes: Routes, context: Context, room: LiveRoom) -> None:
    @routes.post("/cook/live/start")
    def start(request: Request, form: Typed) -> Response:
        form = {k: v[:200] for k, v in form.items()}
        kitchen = context.kitchen
        try:
            load = room.start(kitchen, _asked(kitchen, form), _now_s())
        except FrywrightError as error:
            values = _values(context, request, room, 0) | _form(kitchen, form)
            return context.render(request, "cook/live.html", error=error, **values)
        return RedirectResponse(f"/cook/live?load={load.number}", 303)

    @routes.post("/cook/live/{number}/drop")
    def drop(request: Request, number: int, form: Typed) -> Response:
        kitchen = context.kitchen
        try:
            room.drop(number, _ago(kitchen, form), _now_s())
        except FrywrightError as error:
            values = _values(context, request, room, number) | _form(kitchen, form)
            return context.render(request, "cook/live.html", error=error, **values)
        return RedirectResponse(f"/cook/live?load={number}", 303)

    @routes.post("/cook/live/{number}/keep")
    def keep(request: Request, number: int) -> Response:
        kitchen, load = context.kitchen, room.load(number)
        kept = room.keep(load, titles_of(kitchen))
        told = load_view(room, kitchen, load, _now_s(), context.tr(request))
        room.stop(number)
        return RedirectResponse(f"/cook/probes/{kept.number}?{told.log_query}", 303)

    @routes.post("/cook/live/{number}/stop")
    def stop(number: int) -> Response:
        room.stop(number)
        return RedirectResponse("/cook/live", 303)


def _asked(kitchen: Kitchen, form: Mapping[str, str]) -> LiveAsk:
    """What was typed about a load. Raises InputError: a value that cannot be read, with its field."""
    uses = []
    weighed = "oz" if kitchen.site.units == "us" else "g"
    for i in range(sum(key.startswith("channel_") for key in form)):
        channel, where = form.get(f"channel_{i}", ""), form.get(f"where_{i}", "").strip()
        if not channel or not where:
            continue
        mass = form.get(f"mass_{i}", "").strip()
        mass_kg = kitchen.site.read(mass, "mass", "weight", weighed) if mass else None
        uses.append(
            Use(
                channel=channel,
                cut="" if where == OIL else kitchen.cut(where).key,
                mass_kg=mass_kg,
                thermometer=form.get(f"thermo_{i}", "").strip()[:60],
            )
        )
    count = form.get("count", "").strip()
    return LiveAsk(
        program=form.get("program", ""),
        uses=tuple(uses),
        units_count=kitchen.site.number(count, "load") if count else None,
        drop_s=_drop(kitchen, form),
    )


def _drop(kitchen: Kitchen, form: Mapping[str, str]) -> float | None:
    return None if form.get("drop") == OIL else _ago(kitchen, form)


def _ago(kitchen: Kitchen, form: Mapping[str, str]) -> float:
    ago = form.get("ago", "").strip()
    return _now_s() - (kitchen.site.read(ago, "time", "since the drop") if ago else 0.0)
