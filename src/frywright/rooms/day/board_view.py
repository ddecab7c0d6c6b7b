"""What the board shows at a time: advice, fryers in floor order, the shelf, what is cooked to order."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import asdict, replace

import numpy as np

from frywright.model.findings import say
from frywright.model.tongues import Translate
from frywright.model.trade import time_of_day
from frywright.model.units import clock
from frywright.plan.advice import Advice, bank_now, last_drops, level_of
from frywright.plan.live import InOil, State
from frywright.rooms.day.board import REASONS, Board
from frywright.rooms.day.board_rows import (
    Act,
    Advised,
    BoardView,
    Cooking,
    DropNow,
    Empty,
    FryerLine,
    FryerRow,
    Into,
    LastDrop,
    LoadTime,
    LoadWords,
    Reason,
    ShelfRow,
    TrayRow,
    TurnOrWait,
)
from frywright.rooms.day.day import Bench
from frywright.rooms.day.loads import LoadFact
from frywright.rooms.day.orders import order_rows
from frywright.rooms.standing import everyone_out, heat_off, stopped

STAGGER_S, LONGEST_WAIT_S = 60.0, 240.0
"""Acts stand this far apart where there are no more hands (common practice, no source), and none waits longer
for it (own choice).
"""
NOTE_S = 900.0
"""What does not fit together is said so long on the board (own choice); the hand-over has it all day."""


def lift_s(bench: Bench, load: InOil) -> float:
    """When a load is due, by its card: seconds of the day."""
    drop_s = bench.trade.start_s + load.drop_n * bench.trade.slot_s
    return drop_s + bench.loads[load.item][load.load].lift_s


def stagger(
    advice: Sequence[Advice], state: State, bench: Bench, now_s: float, people: int = 1
) -> list[float]:
    """Seconds of the day at which to start each advised action, so that drops and lifts do not need more
    hands than there are.
    """
    busy = [lift_s(bench, load) for load in state.in_oil]
    found = []

    def taken(second: float) -> bool:
        return sum(abs(second - x) < STAGGER_S for x in busy) >= people

    for item in advice:
        if item.kind == "wait":
            found.append(now_s)
            continue
        cook = bench.loads[item.item][item.load].lift_s if item.kind == "drop" else 0.0
        start = now_s
        while start < now_s + LONGEST_WAIT_S and (taken(start) or taken(start + cook)):
            start += 15.0
        found.append(start)
        busy += [start, start + cook] if cook else [start]
    return found


def amount(bench: Bench, fact: LoadFact, tr: Translate) -> str:
    """A load in the words of the crew: heads or pieces."""
    per_unit = fact.pieces_count / fact.units_n
    if per_unit > 1:
        return say(
            "{heads} heads ({pieces} pieces)",
            {"heads": fact.units_n, "pieces": float(fact.pieces_count)},
            translate=tr,
        )
    return _pieces(fact.pieces_count, tr)


def _pieces(count: float, tr: Translate) -> str:
    return say("{pieces} pieces", {"pieces": float(count)}, translate=tr)


def board_view(board: Board, now_s: float, tr: Translate = str) -> BoardView:
    """Everything the board shows at a time."""
    bench, state = board.bench, board.state(now_s)
    open_now, people = 0 <= state.now_n < bench.day.slots_count, board.people(state)
    leave = everyone_out(board.store) if board.practice is None else None
    advice = board.advice(state) if open_now and leave is None else []
    starts, level = stagger(advice, state, bench, now_s, people), level_of(bench.day, state)
    names = {f.key: f.name for f in board.kitchen.fryers}
    acts = tuple(_advice(board, a, s, names, tr) for a, s in zip(advice, starts, strict=True))
    first = {act.fryer: act for act in reversed(acts)}
    fryers = tuple(
        _fryer(board, state, f, names[key], first.get(key), tr) for f, key in enumerate(bench.fryers)
    )
    return BoardView(
        date=bench.date.isoformat(),
        now_s=now_s,
        clock=time_of_day(now_s),
        practice=board.practice,
        open=open_now,
        people=people,
        advice=acts,
        fryers=fryers,
        shelf=tuple(_shelf(board, state, i, fryers, tr) for i in range(len(bench.products))),
        orders=order_rows(board.store, bench, state, tr),
        last_drops=_last(bench, level),
        level_n=round(level, 2),
        notes=notes_of(board, state, tr),
        alarm=f"{names[leave[0]]}: {tr(leave[1])} {tr(leave[2])}" if leave else "",
        estimated=board.practice is None and not np.isfinite(state.sold_n).any(),
        loads=tuple(
            tuple(LoadWords(fryer=x.fryer, pieces=x.pieces_count, text=amount(bench, x, tr)) for x in loads)
            for loads in bench.loads
        ),
        times=tuple(
            LoadTime(
                fryer=x.fryer,
                product=x.product,
                name=tr(bench.day.items[i].name),
                pieces=x.pieces_count,
                lift_s=x.lift_s,
                vent_s=x.vent_start_s,
            )
            for i, loads in enumerate(bench.loads)
            for x in loads
        ),
        reasons=tuple(Reason(value=r, text=tr(r)) for r in REASONS),
    )


def _advice(board: Board, advice: Advice, start_s: float, names: Mapping[str, str], tr: Translate) -> Act:
    bench, key = board.bench, board.bench.fryers[advice.fryer]
    base = Advised(
        kind=advice.kind,
        fryer=key,
        fryer_name=names[key],
        start_s=start_s,
        start=time_of_day(start_s),
        reason=" ".join(say(n.text, n.values, translate=tr) for n in (advice.reason, *advice.also)),
        gain_money=round(advice.gain_money, 2),
    )
    if advice.kind == "drop":
        fact = bench.loads[advice.item][advice.load]
        name, much = tr(bench.day.items[advice.item].name), amount(bench, fact, tr)
        caution = tr(
            "Shake off ice and water, lower slowly, gloves and sleeves on: wet product makes hot oil boil"
            " over."
        )
        base = replace(base, product=fact.product, pieces=fact.pieces_count, caution=caution)
        words = {"product": name, "amount": much, "fryer": names[key]}
        return DropNow(
            **asdict(base),
            program=fact.program,
            name=name,
            amount=much,
            headline=say("Drop {product}: {amount} into {fryer}", words, translate=tr),
            in_service=board.serves(fact.program),
        )
    if advice.kind == "filter":
        caution = tr(
            "Hot oil burns: face shield, long gloves and apron on, heat off before draining, dry pan, one oil"
            " move at a time."
        )
        headline = say("Filter turn: {fryer}", {"fryer": names[key]}, translate=tr)
        return TurnOrWait(**asdict(replace(base, caution=caution)), headline=headline)
    return TurnOrWait(**asdict(base), headline=say("Wait: {fryer}", {"fryer": names[key]}, translate=tr))


def _fryer(board: Board, state: State, f: int, name: str, act: Act | None, tr: Translate) -> FryerRow:
    bench, key = board.bench, board.bench.fryers[f]
    held = board.practice is None and key in stopped(board.store)
    cold = board.practice is None and key in heat_off(board.store, bench.date)
    out_text = tr("Heat off for the night") if cold else tr("Out of use")
    line = FryerLine(
        key=key,
        number=f + 1,
        name=name,
        state="idle",
        since_filter=state.since[f],
        filter_every=bench.day.filter_every_count,
        pressure=str(board.kitchen.fryer(key).kind) == "pressure",
        text=tr("At heat, ready"),
        held=held or cold,
        down=f in state.down,
        down_text=tr("Stop-use: only a named qualified person releases it.") if held else out_text,
    )
    load = next((x for x in state.in_oil if x.fryer == f), None)
    if load is not None:
        return _cooking(bench, line, load, act, tr)
    low, high = bank_now(bench.day, state).window(f)
    turn = bench.day.filter_slots_count
    if line.down:
        line = replace(line, state="down", text=line.down_text)
    elif high <= low:
        line = replace(line, state="off", text=tr("Stays off today by the plan"))
    elif not low <= state.now_n < high:
        hours = {"from": bench.trade.clock_of(low), "to": bench.trade.clock_of(high)}
        line = replace(line, state="off", text=say("Planned at heat {from} to {to}", hours, translate=tr))
    elif any(g == f and at + turn > state.now_n for g, at in state.filters):
        line = replace(line, state="filter", text=tr("Filter turn running: hot oil, keep clear"))
    return Empty(**asdict(line), act=act)


def _cooking(bench: Bench, line: FryerLine, load: InOil, act: Act | None, tr: Translate) -> Cooking:
    fact, lift = bench.loads[load.item][load.load], lift_s(bench, load)
    drop, pieces = lift - fact.lift_s, round(load.units_n)
    text = amount(bench, fact, tr) if pieces == fact.pieces_count else _pieces(pieces, tr)
    return Cooking(
        **asdict(replace(line, state="cooking", text=text)),
        product=tr(bench.day.items[load.item].name),
        pieces=pieces,
        drop=time_of_day(drop),
        drop_s=drop,
        lift_s=lift,
        lift=time_of_day(lift),
        vent_s=drop + fact.vent_start_s if fact.vent_start_s is not None else None,
        vent_text=tr(
            "Pressure is being let go. Stand back, wait for zero on the gauge and a silent vent, then open"
            " away from you. No clock runs here."
        ),
        act=act,
    )


def _shelf(board: Board, state: State, i: int, fryers: Sequence[FryerRow], tr: Translate) -> ShelfRow:
    bench, slot = board.bench, board.bench.trade.slot_s
    trays = []
    for tray in sorted((t for t in state.trays if t.item == i), key=lambda t: t.ends_n):
        lift, ends = bench.trade.start_s + tray.lift_n * slot, bench.trade.start_s + tray.ends_n * slot
        row = TrayRow(
            left=round(tray.left_n),
            lift=time_of_day(lift),
            ends=time_of_day(ends),
            ends_s=ends,
            expired=tray.ends_n <= state.now_n,
        )
        trays.append(row)
    count, coming = round(state.shelf(i)), round(sum(x.units_n for x in state.in_oil if x.item == i))
    return ShelfRow(
        product=bench.products[i],
        name=tr(bench.day.items[i].name),
        out=i in state.out,
        count=count,
        coming=coming,
        hold_s=(bench.day.items[i].life_n or bench.day.items[i].hold_slots_count) * slot,
        ends_s=next((t.ends_s for t in trays if not t.expired), None),
        trays=tuple(trays),
        expired=round(sum(t.left_n for t in state.expired if t.item == i)),
        to_order=not count and not coming and i not in state.out,
        into=_into(bench, i, fryers),
    )


def _into(bench: Bench, i: int, fryers: Sequence[FryerRow]) -> tuple[Into, ...]:
    found = []
    for row in fryers:
        sizes = [x for x in bench.loads[i] if x.fryer == row.key]
        if sizes:
            fryer = Into(
                fryer=row.key,
                number=row.number,
                name=row.name,
                free=row.state in ("idle", "off") and not row.down,
                off=row.text if row.state == "off" else "",
                least=min(x.pieces_count for x in sizes),
                most=max(x.pieces_count for x in sizes),
                takes=clock(min(sizes, key=lambda x: x.pieces_count).lift_s),
            )
            found.append(fryer)
    return tuple(found)


def _last(bench: Bench, level: float) -> tuple[LastDrop, ...]:
    slots = last_drops(bench.day, level)
    return tuple(
        LastDrop(name=item.name, at=bench.trade.clock_of(t) if t >= 0 else "")
        for item, t in zip(bench.day.items, slots, strict=True)
    )


def notes_of(board: Board, state: State, tr: Translate, age_s: float = NOTE_S) -> tuple[str, ...]:
    """What does not fit together in what was told lately, and what is past its hold life."""
    names = dict(enumerate(board.bench.fryers))
    found, since_n = [], state.now_n - age_s / board.bench.trade.slot_s
    for note in [n for n in state.notes if n.at_n >= since_n][-6:]:
        values = dict(note.values)
        if "fryer" in values:
            values["fryer"] = board.kitchen.fryer(names[int(values["fryer"])]).name
        found.append(say(note.text, values, translate=tr))
    for tray in state.expired:
        found.append(
            say(
                "{count} {product} are past their hold life: throw them away and say so.",
                {"count": tray.left_n, "product": board.bench.day.items[tray.item].name},
                translate=tr,
            )
        )
    return tuple(found)
