"""What the page of the live probe shows, in a person's language and units."""

from __future__ import annotations

import math
from dataclasses import dataclass
from itertools import pairwise
from urllib.parse import urlencode

import numpy as np

from frywright.calibrate.ahead import Outlook
from frywright.calibrate.thermometer import corrected
from frywright.calibrate.timeline import GAP_S
from frywright.model.findings import Outcome, say
from frywright.model.kitchen import Kitchen
from frywright.model.tongues import Translate
from frywright.model.units import clock, show
from frywright.rooms.cook.intake import ClockState, gaps_of
from frywright.rooms.cook.live import LiveLoad, LiveRoom, Use, Watched, column_of
from frywright.trial.ask import needed_limit
from frywright.verdicts.evidence import Evidence, EvidenceKind
from frywright.verdicts.judge import CoreCurve, judge

SURE_FRAC, LATE_FRAC = 0.95, 0.5
"""A load makes it where 95 of 100 pieces that could be this one do, and is late where half do not."""
SILENT_S, CLOCK_OFF_S = 5.0, 2.0
STEP_S = 15.0
WIDE, HIGH = 400.0, 180.0
DROPPED = {
    "repeated": "Repeated readings from {source}, left out: {count}.",
    "impossible": "Impossible readings from {source}, left out: {count}.",
    "too_many": "Readings from {source} that came faster than 20 a second, left out: {count}.",
}


@dataclass(frozen=True, slots=True, kw_only=True)
class Curve:
    """A curve as a picture: the measured core, the limit, the lift, and when the limit is expected."""

    measured: tuple[str, ...]  # polylines; a gap ends one and begins the next
    limit_y: str
    limit_text_y: str
    lift_x: str
    band_x: str
    band_width: str
    limit: str
    label: str


@dataclass(frozen=True, slots=True, kw_only=True)
class PieceView:
    """One probed piece."""

    name: str
    channel: str
    state: str  # reads, sure, doubt, late, wait, silent, moved
    word: str
    mark: str
    measured: str
    silent: str
    expected: str
    left: str
    between: str
    chance: str
    advice: str
    notes: tuple[str, ...]
    curve: Curve | None


@dataclass(frozen=True, slots=True, kw_only=True)
class LoadView:
    """A load under way."""

    number: int
    title: str
    fryer: str
    since: str
    lift_left: str
    waits: bool
    went_on: bool
    works: bool
    over: bool
    oil: str
    limit: str
    problem: str
    caution: str
    pieces: tuple[PieceView, ...]
    log_number: int
    log_query: str
    loud: str


@dataclass(frozen=True, slots=True, kw_only=True)
class SourceView:
    """One source: when it last spoke, and what is wrong with its clock or its readings."""

    name: str
    last: str
    silent: bool
    lines: tuple[str, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class ChannelView:
    """One channel heard lately, for choosing where it sits."""

    key: str
    now: str
    silent: bool


WORDS = {
    "reads": ("✔", "The probe reads the limit"),
    "sure": ("●", "On course: expected to reach the limit before the program ends"),
    "doubt": ("◐", "In doubt: may not reach the limit before the program ends"),
    "late": ("✖", "Short: will not reach the limit before the program ends"),
    "wait": ("…", "Waiting for readings"),
    "silent": ("✖", "No readings"),
    "moved": ("✖", "The probe moved, or is not in this piece"),
}
NOT_EARLY = "Do not lift early. Let the program end."
MORE_OPEN = (
    "Then keep the last set point and give it about {more_s} more. Probe the coldest pieces with a checked"
    " thermometer before anything goes out."
)
MORE_LID = (
    "Then keep it under pressure at the last set point for about {more_s} more before you vent, if the card"
    " and the maker's manual allow it. Probe the coldest pieces with a checked thermometer before anything"
    " goes out."
)
LID = (
    "Never open the lid to look at a probe. Open it only when the gauge reads zero and the vent is silent."
    " Steam burns."
)
OIL = "Hot oil burns. Keep wires clear of hands and tongs, and never reach over the vat for a probe."


def load_view(
    room: LiveRoom, kitchen: Kitchen, load: LiveLoad, now_s: float, translate: Translate = str
) -> LoadView:
    """A load as it stands now; it reads what has come in first."""
    room.tend(load, now_s)
    system, program = kitchen.site.units, load.plan.program
    since = None if load.drop_s is None else now_s - load.drop_s
    pieces = tuple(
        _piece(room, kitchen, load, watched, outlook, now_s, translate)
        for watched, (_, outlook) in zip(load.pieces, room.outlooks(load, now_s), strict=True)
    )
    limit = needed_limit(kitchen, load.plan.product)
    told = say(
        "{title}, guard band {guard_k} added",
        {"title": limit.title, "guard_k": load.goal.guard_k},
        system,
        translate,
    )
    loud = [p for p in pieces if p.state in ("silent", "moved", "late")]
    return LoadView(
        number=load.number,
        title=f"{program.name}, {translate('version')} {program.version}",
        fryer=load.plan.fryer.name,
        since="" if since is None else clock(max(since, 0.0)),
        lift_left="" if since is None else clock(max(load.lift_s - since, 0.0)),
        waits=load.drop_s is None,
        went_on=load.went_on,
        works=load.drop_s is not None and load.course is None and load.problem is None,
        over=since is not None and since >= load.lift_s,
        oil=_now(room, load.oil, now_s, system),
        limit=told,
        problem="" if load.problem is None else load.problem.say(translate, system),
        caution=translate(LID) if load.under_pressure else translate(OIL),
        pieces=pieces,
        log_number=load.log_number,
        log_query=_query(kitchen, load, translate),
        loud=f"{loud[0].name}: {loud[0].word}" if loud else "",
    )


def _now(room: LiveRoom, use: Use | None, now_s: float, system: str) -> str:
    told = room.intake.readings(use.channel, now_s - 60.0) if use is not None else []
    return show(told[-1][1], "c", system) if told else ""


def _piece(
    room: LiveRoom,
    kitchen: Kitchen,
    load: LiveLoad,
    watched: Watched,
    outlook: Outlook | None,
    now_s: float,
    translate: Translate,
) -> PieceView:
    system, use = kitchen.site.units, watched.use
    drop = load.drop_s if load.drop_s is not None else now_s
    read = [
        (t - drop, float(corrected(np.array([c]), watched.correction)[0]))
        for t, c in room.intake.readings(use.channel, drop - 60.0)
    ]
    silent_s = now_s - drop - read[-1][0] if read else math.inf
    state = _state(kitchen, load, read, silent_s, outlook)
    mark, word = WORDS[state]
    since = now_s - drop
    gaps = gaps_of([t for t, _ in read if t >= 0.0])
    notes = [
        say(
            "No readings for {gap_s} from {from_s} after the drop; the gap is not bridged.",
            {"gap_s": b - a, "from_s": a},
            system,
            translate,
        )
        for a, b in gaps[-3:]
    ]
    return PieceView(
        name=translate(kitchen.cut(use.cut).title),
        channel=use.channel,
        state=state,
        word=translate(word),
        mark=mark,
        measured=show(read[-1][1], "c", system) if read else "–",
        silent=clock(silent_s) if SILENT_S < silent_s < math.inf else "",
        expected=_between(outlook, system),
        left="" if outlook is None else clock(max(outlook.limit_s - since, 0.0)),
        between=""
        if outlook is None
        else f"{clock(max(outlook.low_s - since, 0.0))} – {clock(max(outlook.high_s - since, 0.0))}",
        chance="" if outlook is None else f"{100 * min(max(outlook.makes_it_frac, 0.01), 0.99):.0f} %",
        advice=_advice(load, state, outlook, system, translate),
        notes=tuple(notes),
        curve=_curve(load, read, outlook, since, system, translate),
    )


def _between(outlook: Outlook | None, system: str) -> str:
    if outlook is None:
        return ""
    low, middle, high = (
        show(c, "c", system) for c in (outlook.core_low_c, outlook.core_c, outlook.core_high_c)
    )
    return f"{middle} ({low} – {high})"


def _state(
    kitchen: Kitchen,
    load: LiveLoad,
    read: list[tuple[float, float]],
    silent_s: float,
    outlook: Outlook | None,
) -> str:
    if load.drop_s is not None and (not read or silent_s > GAP_S):
        return "silent"
    if outlook is None:
        return "wait"
    if outlook.moved:
        return "moved"
    if _reads(kitchen, load, read):
        return "reads"
    if outlook.makes_it_frac >= SURE_FRAC:
        return "sure"
    return "doubt" if outlook.makes_it_frac >= LATE_FRAC else "late"


def _reads(kitchen: Kitchen, load: LiveLoad, read: list[tuple[float, float]]) -> bool:
    """Whether the readings themselves meet the limit by now, guard band taken off and no gap bridged."""
    inside = [(t, c) for t, c in read if t >= 0.0]
    if len(inside) < 2:
        return False
    last = max([0, *(i + 1 for i, (a, b) in enumerate(pairwise(inside)) if b[0] - a[0] > GAP_S)])
    time, core = np.array(inside[last:]).T
    curve = CoreCurve(piece="", time_s=time, core_c=core, lift_s=float(time[-1]))
    evidence = Evidence(kind=EvidenceKind.PROBE, error_k=load.goal.guard_k, checked=True)
    return judge(curve, needed_limit(kitchen, load.plan.product), evidence).outcome is Outcome.MEETS


def _advice(load: LiveLoad, state: str, outlook: Outlook | None, system: str, translate: Translate) -> str:
    if state not in ("doubt", "late") or outlook is None:
        return ""
    more = max(STEP_S * math.ceil((outlook.high_s - load.lift_s) / STEP_S), STEP_S)
    last_closed = load.under_pressure and str(load.plan.program.stages[-1].lid) == "pressure"
    text = say(MORE_LID if last_closed else MORE_OPEN, {"more_s": float(more)}, system, translate)
    return f"{translate(NOT_EARLY)} {text}"


def _curve(
    load: LiveLoad,
    read: list[tuple[float, float]],
    outlook: Outlook | None,
    since: float,
    system: str,
    translate: Translate,
) -> Curve | None:
    inside = [(t, c) for t, c in read if t >= 0.0]
    if len(inside) < 2:
        return None
    last_s = max(load.lift_s, since, outlook.high_s if outlook is not None else 0.0) * 1.05
    low, high = min(c for _, c in inside) - 2.0, max(load.goal.level_c, max(c for _, c in inside)) + 5.0

    def x(t: float) -> str:
        return f"{WIDE * t / last_s:.1f}"

    def y(c: float, lower: float = 0.0) -> str:
        return f"{HIGH * (high - c) / (high - low) - lower:.1f}"

    step = max(1, len(inside) // 300)
    lines, points = [], [f"{x(inside[0][0])},{y(inside[0][1])}"]
    for (before, _), (t, c) in pairwise(inside[::step]):
        if t - before > GAP_S + step:
            lines.append(" ".join(points))
            points = []
        points.append(f"{x(t)},{y(c)}")
    lines.append(" ".join(points))
    told = {"from_c": inside[0][1], "to_c": inside[-1][1], "since_s": since, "limit_c": load.goal.level_c}
    return Curve(
        measured=tuple(lines),
        limit_y=y(load.goal.level_c),
        limit_text_y=y(load.goal.level_c, 4.0),
        lift_x=x(load.lift_s),
        band_x="" if outlook is None else x(outlook.low_s),
        band_width="" if outlook is None else x(max(outlook.high_s - outlook.low_s, 0.005 * last_s)),
        limit=show(load.goal.level_c, "c", system),
        label=say(
            "Core from {from_c} to {to_c} in {since_s}; the limit with its guard band is {limit_c}.",
            told,
            system,
            translate,
        ),
    )


def _query(kitchen: Kitchen, load: LiveLoad, translate: Translate) -> str:
    """Answers for the log's page: what each channel was in, its weight and thermometer."""
    titles = titles_of(kitchen)
    told = {"program": load.ask.program}
    if load.oil is not None:
        told[f"q_role:{column_of(load.oil, titles)}"] = "oil"
    for i, watched in enumerate(load.pieces):
        use = watched.use
        told[f"q_role:{column_of(use, titles)}"] = "core"
        told[f"cut_{i}"] = use.cut
        if use.mass_kg is not None:
            told[f"mass_{i}"] = f"{1e3 * use.mass_kg:.0f} g"
        if use.thermometer:
            told[f"thermo_{i}"] = use.thermometer
    return urlencode(told)


def titles_of(kitchen: Kitchen) -> dict[str, str]:
    """Names of cuts for the columns of a log."""
    return {cut.key: cut.title for cut in kitchen.cuts}


def sources_view(
    states: list[ClockState], now_s: float, system: str, translate: Translate = str
) -> tuple[SourceView, ...]:
    """Every source heard of."""
    out = []
    for state in states:
        name, lines = state.source or translate("unnamed source"), []
        if state.told and abs(state.off_s) > CLOCK_OFF_S:
            text = (
                "The clock of {source} is {off_s} fast; its times are corrected."
                if state.off_s > 0
                else "The clock of {source} is {off_s} slow; its times are corrected."
            )
            lines.append(_long(text, name, abs(state.off_s), system, translate))
        if state.set_count:
            lines.append(
                say(
                    "The clock of {source} was set while it reported. Times: {count}.",
                    {"source": name, "count": state.set_count},
                    system,
                    translate,
                )
            )
        if not state.told:
            lines.append(
                say(
                    "{source} sends no times; the moment of arrival counts.",
                    {"source": name},
                    system,
                    translate,
                )
            )
        lines += [
            say(DROPPED[kind], {"source": name, "count": count}, system, translate)
            for kind, count in sorted(state.dropped.items())
        ]
        silent = now_s - state.last_got_s
        out.append(
            SourceView(
                name=name,
                last=clock(silent) if silent >= 60 else f"{silent:.0f} s",
                silent=silent > SILENT_S,
                lines=tuple(lines),
            )
        )
    return tuple(out)


def _long(text: str, source: str, off_s: float, system: str, translate: Translate) -> str:
    if off_s > 48 * 3600.0:
        days = say("{days} days", {"days": round(off_s / 86400.0)}, system, translate)
        return translate(text).format(source=source, off_s=days)
    return say(text, {"source": source, "off_s": off_s}, system, translate)


def channels_view(room: LiveRoom, now_s: float, system: str) -> tuple[ChannelView, ...]:
    """Channels that spoke within the last five minutes."""
    out = []
    for key in room.intake.channels():
        told = room.intake.readings(key, now_s - 300.0)
        if told:
            out.append(
                ChannelView(
                    key=key, now=show(told[-1][1], "c", system), silent=now_s - told[-1][0] > SILENT_S
                )
            )
    return tuple(out)
