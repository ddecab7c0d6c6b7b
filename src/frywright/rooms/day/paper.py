"""The day on paper: the plan, labels for trays, and the hand-over of a shift."""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial
from math import inf

from frywright.model.errors import InputError
from frywright.model.findings import say
from frywright.model.kitchen import Kitchen
from frywright.model.tongues import Translate
from frywright.model.trade import time_of_day
from frywright.paper.paper import PAPER, Section, pdf, section
from frywright.plan.live import State
from frywright.rooms.day.board import Board
from frywright.rooms.day.board_rows import BoardView, Cooking, FryerRow, ShelfRow
from frywright.rooms.day.board_view import board_view, notes_of
from frywright.rooms.day.orders import OrderRow
from frywright.rooms.day.plan_view import PlannedDrop, PlanView, in_order


def labels_pdf(board: Board, now_s: float, language: str, tr: Translate = str) -> bytes:
    """Labels for every tray on the shelf."""
    state, bench = board.state(now_s), board.bench
    trays = sorted((t for t in state.trays if t.ends_n > state.now_n), key=lambda t: (t.lift_n, t.item))
    if not trays:
        raise InputError("shelf", "empty", "filled by a lift before labels are printed")
    slot, start = bench.trade.slot_s, bench.trade.start_s
    labels = [
        {
            "product": tr(bench.day.items[t.item].name),
            "pieces": f"{t.units_n:.0f} {tr('pieces')}",
            "lift": time_of_day(start + t.lift_n * slot),
            "ends": time_of_day(start + t.ends_n * slot),
            "note": say(
                "{fryer}, dropped {drop}",
                {
                    "fryer": board.kitchen.fryer(bench.fryers[t.fryer]).name,
                    "drop": time_of_day(start + t.drop_n * slot),
                },
                translate=tr,
            ),
        }
        for t in trays
    ]
    words = {"lifted": tr("lifted"), "discard": tr("throw away at")}
    data = {
        "title": tr("Tray labels"),
        "paper": PAPER[board.kitchen.site.units],
        "language": language,
        "labels": labels,
        "words": words,
    }
    return pdf("labels.typ", "labels", data)


def plan_pdf(
    kitchen: Kitchen, view: PlanView, promised: Sequence[OrderRow], language: str, tr: Translate = str
) -> bytes:
    """The plan to hang up: promised orders, loads and filter turns in order, fryers at heat, last drops."""
    turn = tr("filter turn")
    return pdf(
        "handover.typ",
        "handover",
        {
            "title": tr("Plan of the day"),
            "place": kitchen.site.name,
            "when": view.date,
            "language": language,
            "size_pt": 11,
            "paper": PAPER[kitchen.site.units],
            "sections": [
                *([_promised(promised, tr)] if promised else []),
                section(
                    tr("Fryers at heat"),
                    [tr("fryer"), tr("at heat")],
                    [4, 3],
                    [[f.name, f"{f.from_}–{f.to}" if f.used else tr("off")] for f in view.fryers],
                ),
                section(
                    tr("Last drops"),
                    [tr("product"), tr("last drop")],
                    [4, 3],
                    [[x.name, x.at or tr("cook to order")] for x in view.last_drops],
                ),
                section(
                    tr("Loads and filter turns in order"),
                    [tr("drop"), tr("fryer"), tr("product"), tr("load"), tr("lift"), tr("evidence")],
                    [2, 5, 5, 4, 2, 3],
                    [
                        [x.drop, x.fryer_name, x.product_name, x.amount, x.lift, tr(x.evidence_said)]
                        if isinstance(x, PlannedDrop)
                        else [x.at, x.fryer_name, turn, "", "", ""]
                        for x in in_order(view)
                    ],
                    tr("Nothing."),
                ),
            ],
            "signs": [],
            "caution": tr(
                "Hot oil burns: face shield, long gloves and apron on, heat off before draining, dry pan,"
                " one oil move at a time."
            ),
            "foot": tr(
                "Written before the day began. The live board decides anew at every tap and sale; where they"
                " differ, follow the board."
            ),
        },
    )


def _promised(rows: Sequence[OrderRow], tr: Translate) -> Section:
    """Orders still to be handed over."""
    return section(
        tr("Promised orders"),
        [tr("ready at"), tr("ticket"), tr("product"), tr("pieces"), tr("in the oil by"), tr("now")],
        [2, 3, 4, 2, 2, 4],
        [[x.at, x.ticket or "–", x.name, str(x.pieces), x.in_by, _stands(x)] for x in rows],
        tr("Nothing."),
    )


def _stands(row: OrderRow) -> str:
    return f"{row.text}. {row.warning}" if row.warning else row.text


def handover_pdf(
    board: Board, now_s: float, language: str, tr: Translate = str, due: Sequence[str] = ()
) -> bytes:
    """The shift hand-over page; ``due`` is what the kitchen wants done besides, in words."""
    view = board_view(board, now_s, tr)
    practice = tr("Practice day with invented guests. Never evidence.") if board.practice is not None else ""
    return pdf(
        "handover.typ",
        "handover",
        {
            "title": tr("Shift hand-over"),
            "place": board.kitchen.site.name,
            "when": f"{view.date} {view.clock} {practice}",
            "language": language,
            "paper": PAPER[board.kitchen.site.units],
            "sections": [*_shift(board, view, board.state(now_s), tr), _due(due, tr)],
            "signs": [tr("handed over by"), tr("taken over by")],
            "caution": tr(
                "Never move, filter or top up hot oil in a rush or alone; a lid opens only at zero on the"
                " gauge and a silent vent."
            ),
            "foot": tr("The maker's manual, local codes and licensed technicians win."),
        },
    )


def _due(due: Sequence[str], tr: Translate) -> Section:
    """What is due in the kitchen besides the board, such as fryers out of use, oil, care and open cases."""
    return section(tr("Due in the kitchen"), [], [1], [[text] for text in due], tr("Nothing."))


def _in_fryer(fryer: FryerRow, now_s: float, tr: Translate) -> str:
    """A fryer's state in words; a load that should be out says for how long."""
    if not isinstance(fryer, Cooking):
        return fryer.text
    lift, over_s = f"{tr('lift')} {fryer.lift}", now_s - fryer.lift_s
    words = f"{fryer.product} · {fryer.text} · {lift}"
    if over_s < 60.0:
        return words
    return f"{words} · {say('{minutes} min overdue', {'minutes': float(over_s // 60.0)}, translate=tr)}"


def _throw_away(row: ShelfRow, tr: Translate) -> str:
    """When the next tray goes; now where one is past its hold life already."""
    times = [tr("now")] if row.expired else []
    return ", ".join([*times, *[t.ends for t in row.trays if not t.expired][:1]])


def _shift(board: Board, view: BoardView, state: State, tr: Translate) -> list[Section]:
    """What the next shift must know."""
    table = partial(section, empty=tr("Nothing."))
    return [
        table(
            tr("Fryers"),
            [tr("fryer"), tr("state"), tr("loads since filter")],
            [3, 4, 2],
            [
                [f.name, _in_fryer(f, view.now_s, tr), f"{f.since_filter}/{f.filter_every}"]
                for f in view.fryers
            ],
        ),
        table(
            tr("Shelf"),
            [tr("product"), tr("pieces"), tr("first to throw away"), tr("last drop")],
            [4, 2, 3, 3],
            [
                [s.name, str(s.count), _throw_away(s, tr), x.at or tr("cook to order")]
                for s, x in zip(view.shelf, view.last_drops, strict=True)
            ],
        ),
        _promised(view.orders, tr),
        table(
            tr("Thrown away so far"),
            [tr("product"), tr("pieces"), tr("reason")],
            [4, 2, 3],
            [
                [tr(board.bench.day.items[t.tray.item].name), f"{t.units_n:.0f}", tr(t.reason or "other")]
                for t in state.thrown[-12:]
            ],
        ),
        table(tr("To look at"), [tr("note")], [1], [[note] for note in notes_of(board, state, tr, inf)]),
    ]
