"""The interface for programs, version 1: JSON in and out, described by OpenAPI, a token for each device,
writes that may be sent again.

Every write takes an ``Idempotency-Key``; the same key again gives the first answer and writes nothing.
"""

from __future__ import annotations

import datetime as dt
from collections.abc import Callable
from itertools import islice
from typing import Annotated, Any

from fastapi import Header, Path, Query, Request
from pydantic import BaseModel, ConfigDict, Field

from frywright.ledger.anchors import anchor_or_why
from frywright.ledger.facts.day import PostedLine
from frywright.ledger.facts.people import as_shown
from frywright.ledger.once import once
from frywright.model.entry import Recorded, stamp
from frywright.model.errors import InputError
from frywright.rooms.care import vat as oil
from frywright.rooms.care.oil_state import vat_states
from frywright.rooms.care.upkeep import care_rows
from frywright.rooms.clock import AHEAD, here, now
from frywright.rooms.cook.desk import ProgramRow, program_rows
from frywright.rooms.cook.readbacks import tell_readback
from frywright.rooms.day.sales import post_sales
from frywright.rooms.kitchen import kitchen_name
from frywright.rooms.readings import tell_probe
from frywright.rooms.records import corrective
from frywright.rooms.records.case_rows import CaseView
from frywright.rooms.standing import CareRow
from frywright.web.app import Context
from frywright.web.posted import doer
from frywright.web.routes import Routes

MOST = 500
BEHIND = dt.timedelta(days=400)
"""How late a write may come (project's own rule)."""
Key = Annotated[
    str,
    Header(
        alias="Idempotency-Key",
        min_length=1,
        max_length=80,
        pattern=r"^[\x21-\x7e]+$",
        description="Unique to this write; sending it again writes nothing.",
    ),
]
Text = Annotated[str, Field(max_length=200)]


class _Body(BaseModel):
    model_config = ConfigDict(extra="forbid")


class ReadingIn(_Body):
    """A probe reading of a load's coldest piece."""

    fryer: Text
    product: Text
    temp_c: float = Field(ge=-5, le=130)
    thermometer: Text = Field(min_length=1)
    pieces: int = Field(default=0, ge=0, le=10_000)
    who: Text = ""
    happened_at: dt.datetime | None = Field(default=None, description="With its zone; now where left out.")


class OilIn(_Body):
    """What was done to a vat's oil."""

    vat: Text
    what: Text = Field(description="top_up, reading, filter, discard, fill, acid or colour.")
    amount: Text = ""
    after: bool = False
    how: Text = "meter"
    who: Text = ""
    happened_at: dt.datetime | None = None


class SoldIn(_Body):
    """One line of a sale."""

    line: Text = Field(default="", description="The till's number of the line; sent again it counts once.")
    at: dt.datetime = Field(description="With its zone.")
    item: Text = Field(min_length=1)
    quantity: float = Field(ge=-10_000, le=10_000, description="Below 0 for a refund.")
    order: Text = ""
    kind: Text = Field(default="", description="Such as catering.")


class SalesIn(_Body):
    """Sales as they happen."""

    till: Annotated[str, Field(min_length=1, max_length=80)]
    lines: list[SoldIn] = Field(min_length=1, max_length=500)


class ReadBackIn(_Body):
    """What a machine really holds, read by one and compared by another."""

    program: Text
    slot: int = Field(ge=1, le=1000, description="the slot that was read; none is assumed")
    values: list[Text] = Field(max_length=100)
    settings: dict[Text, Text] = Field(
        default_factory=dict, max_length=30, description="scale, clock, lid1, lid2 …"
    )
    read_by: Text
    checked_by: Text


class EntryOut(BaseModel):
    """One entry as it is kept."""

    number: int
    kind: str
    happened_at: str
    recorded_at: str
    author: str
    payload: dict[str, Any]
    replaces: int | None
    versions: dict[str, str]
    hash: str


class Written(BaseModel):
    """What a write made, and whether this call made it."""

    number: int
    new: bool
    case: int | None = None
    matches: bool | None = None


class Posted(BaseModel):
    """What a post of sales made: its entry, none where every line was known, and how many lines were new."""

    number: int | None
    new: bool
    new_lines: int


def router(context: Context) -> Routes:
    """Routes of the interface."""
    routes = Routes(prefix="/api/v1")
    _add_reads(routes, context)
    _add_writes(routes, context)
    _add_sales(routes, context)
    return routes


def _entry(item: Recorded) -> EntryOut:
    entry = item.entry
    return EntryOut(
        number=item.number,
        kind=entry.kind,
        happened_at=stamp(entry.happened_at),
        recorded_at=stamp(item.recorded_at),
        author=entry.author,
        payload=as_shown(item),
        replaces=entry.replaces,
        versions=dict(entry.versions),
        hash=item.hash,
    )


REFUSED = {
    "401": "Who asks does not say who they are, or shows a token that nobody gave out.",
    "403": "Whoever asks may not do this.",
    "409": "There is no kitchen here yet.",
    "411": "The request does not say how large it is.",
    "413": "The request is too large.",
    "422": "Something in it cannot be: the message, or each part of the body, says what.",
    "429": "Too much at once; again after the seconds of Retry-After.",
    "500": "A fault of this program; it is in its log.",
    "503": "Nothing was kept: the store cannot be used now. The same again later, with the same key.",
}
"""Answers that any route may give, and what each means."""
PROBLEM = {
    "type": "object",
    "properties": {
        "ok": {"type": "boolean", "const": False},
        "error": {"type": "string"},
        "message": {"type": "string"},
        "detail": {"type": "array", "items": {"type": "object"}},
    },
}
"""What an answer says that is no success: words, or what is wrong with each part of a body."""


def described_whole(whole: dict[str, Any]) -> dict[str, Any]:
    """The interface as it is: its own routes, who may ask, and every answer they give."""
    found = {p: v for p, v in whole["paths"].items() if p.startswith("/api/v1/")}
    told = {"content": {"application/json": {"schema": {"$ref": "#/components/schemas/Problem"}}}}
    refused = {code: {"description": words, **told} for code, words in REFUSED.items()}
    paths = {
        path: {m: {**o, "responses": {**o["responses"], **refused}} for m, o in methods.items()}
        for path, methods in found.items()
    }
    parts = whole.get("components", {})
    schemas = {**parts.get("schemas", {}), "Problem": PROBLEM}
    token = {"token": {"type": "http", "scheme": "bearer", "description": "The token of a device."}}
    components = {**parts, "schemas": schemas, "securitySchemes": token}
    return {**whole, "paths": paths, "components": components, "security": [{"token": []}]}


class ChainOut(BaseModel):
    """The end of the chain; the anchor is null without a key of the store."""

    number: int
    hash: str
    anchor: str | None


def _add_reads(routes: Routes, context: Context) -> None:
    @routes.get("/openapi.json", include_in_schema=False)
    def described(request: Request) -> dict[str, Any]:
        return described_whole(request.app.openapi())

    @routes.get("/entries")
    def entries(
        kind: Annotated[str, Query(max_length=60, pattern=r"^\w*$")] = "",
        after: Annotated[int, Query(ge=0, le=2**53)] = 0,
        limit: Annotated[int, Query(ge=1, le=MOST)] = 100,
    ) -> list[EntryOut]:
        """Entries in order, from after a number on; ask again from the last one for more."""
        told = context.store.entries(kind or None, after=after, named=True, block=limit)
        return [_entry(item) for item in islice(told, limit)]

    @routes.get("/entries/{number}")
    def entry(number: Annotated[int, Path(ge=1, le=2**53)]) -> EntryOut:
        """One entry."""
        item = context.store.entry(number, named=True)
        if item is None:
            raise InputError("entry", number, "a number up to {last}", last=context.store.last().number)
        return _entry(item)

    @routes.get("/chain")
    def chain() -> ChainOut:
        """The newest entry, its hash and its anchor, signed with the store's key: keep it elsewhere, and
        nobody can shorten or rewrite the chain unseen. Without a key of the store the anchor is null.
        """
        end = context.store.last()
        anchor, _ = anchor_or_why(context.store, end, now(), kitchen_name(context.store))
        return ChainOut(number=end.number, hash=end.hash, anchor=anchor.text if anchor else None)

    @routes.get("/programs")
    def programs() -> list[ProgramRow]:
        """Every program, its version, what its fryer is known to hold, what is predicted and what is proven
        of it.
        """
        return program_rows(context.store, context.kitchen)

    @routes.get("/oil")
    def vats() -> list[oil.VatView]:
        """Every vat's oil: level, growth, days to the limit, advice."""
        kitchen = context.kitchen
        states = vat_states(context.store, kitchen)
        return [oil.vat_view(context.store, kitchen, f.key, states=states) for f in kitchen.fryers]

    @routes.get("/care")
    def care() -> list[CareRow]:
        """Care that is due."""
        return care_rows(context.store, context.kitchen)

    @routes.get("/cases")
    def open_cases(limit: Annotated[int, Query(ge=1, le=MOST)] = 100) -> list[CaseView]:
        """Corrective actions, newest first."""
        kitchen = context.kitchen
        cases = corrective.newest_cases(context.store, limit)
        return [corrective.case_view(context.store, kitchen, c) for c in cases]


def _when(moment: dt.datetime | None) -> dt.datetime | None:
    if moment is not None and moment.tzinfo is None:
        raise InputError(
            "happened_at", moment.isoformat(), "a time with its zone, such as 2026-11-25T18:40:00-07:00"
        )
    if moment is not None and not -AHEAD <= now() - moment <= BEHIND:
        raise InputError("happened_at", moment.isoformat(), "within the last 400 days, and not in the future")
    return moment


def _once(
    context: Context, what: str, key: str, body: Any, write: Callable[[], dict[str, Any]]
) -> tuple[dict[str, Any], bool]:
    """A write by the key of whoever sends it: two tills that number alike are no repeats of each other."""
    return once(context.store, what, key, body, write, here().author)


def _add_writes(routes: Routes, context: Context) -> None:
    @routes.post("/readings")
    def reading(request: Request, body: ReadingIn, key: Key) -> Written:
        """Keep a probe reading; below the limit a case opens."""
        told = {
            "fryer": body.fryer,
            "product": body.product,
            "temp": f"{body.temp_c} C",
            "thermometer": body.thermometer,
            "pieces": str(body.pieces),
            "who": doer(request, body.who),
        }

        def write() -> dict[str, Any]:
            kept, case = tell_probe(context.store, context.kitchen, told, _when(body.happened_at))
            return {"number": kept.number, "case": case.number if case else None}

        answer, new = _once(context, "readings", key, body.model_dump(mode="json"), write)
        return Written(new=new, **answer)

    @routes.post("/oil")
    def tell_oil(request: Request, body: OilIn, key: Key) -> Written:
        """Keep what was done to a vat's oil."""
        told = {**body.model_dump(exclude={"happened_at", "after"}), "after": "1" if body.after else ""}
        told["who"] = doer(request, body.who)

        def write() -> dict[str, Any]:
            kept, _ = oil.tell_oil(context.store, context.kitchen, told, at=_when(body.happened_at))
            return {"number": kept.number}

        answer, new = _once(context, "oil", key, body.model_dump(mode="json"), write)
        return Written(new=new, **answer)

    @routes.post("/read-backs")
    def read_back(request: Request, body: ReadBackIn, key: Key) -> Written:
        """Keep a read-back and compare it with the card."""

        def write() -> dict[str, Any]:
            kept, matches = tell_readback(
                context.store,
                context.kitchen,
                body.program,
                body.slot,
                body.values,
                (doer(request, body.read_by), body.checked_by),
                body.settings,
            )
            return {"number": kept.number, "matches": matches}

        answer, new = _once(context, "read-backs", key, body.model_dump(mode="json"), write)
        return Written(new=new, **answer)


def _add_sales(routes: Routes, context: Context) -> None:
    @routes.post("/sales")
    def sold(body: SalesIn, key: Key) -> Posted:
        """Keep what a till sold; today's board is told."""
        lines = [
            PostedLine(
                line=line.line,
                at=_when(line.at) or line.at,
                item=line.item,
                quantity_n=line.quantity,
                order=line.order,
                kind=line.kind,
            )
            for line in body.lines
        ]

        def write() -> dict[str, Any]:
            kept, new = post_sales(context.store, context.kitchen, body.till, lines)
            return {"number": kept.number if kept else None, "new_lines": new}

        answer, new = _once(context, "sales", key, body.model_dump(mode="json"), write)
        return Posted(new=new, **answer)
