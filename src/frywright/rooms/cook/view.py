"""A cook answer as people read it: their units, their language. Page, JSON and terminal share it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import lru_cache, reduce
from itertools import accumulate

import numpy as np
from numpy.typing import NDArray

from frywright.catalog import load as catalog
from frywright.model.findings import Note, Outcome, Verdict, say
from frywright.model.food import counted
from frywright.model.kitchen import Kitchen
from frywright.model.program import LidState
from frywright.model.tongues import Translate
from frywright.model.units import SHOWN, UNITS, clock, show
from frywright.paper.curves import CookPicture, Curves, Level, Mark, PieceCurve
from frywright.physics.colour import crust_hex
from frywright.physics.fry import FryHistory, PieceHistory, vent_finding
from frywright.physics.inputs import CLOSE, Lid
from frywright.physics.plan import spans
from frywright.trial.ask import CookAnswer, CookRequest, ask
from frywright.trial.keyed_clock import clock_note_of
from frywright.trial.naming import altitude_words, crust_words
from frywright.trial.predicted import FactsShown, show_facts
from frywright.verdicts.facts import Facts, facts_of
from frywright.verdicts.judge import MOST_LOGS_SHOWN, salmonella_log
from frywright.verdicts.margin import until

CURVE_DIGITS = 2
CRUST_DIGITS = {"mm": CURVE_DIGITS, "in": 4}
"""Decimals of a curve's values: hundredths of a degree, of a percent, of a millimetre of crust."""
LID_STATES = {LidState.OPEN: "open", LidState.PRESSURE: "under pressure"}
LID_WORDS = {Outcome.FAILS: "not at zero", Outcome.UNKNOWN: "predicted at zero"}


def piece_label(piece: PieceHistory, translate: Translate) -> str:
    """Name of a class in a language."""
    title = translate(piece.kind.cut.title)
    return f"{title} ({translate('heavy end')})" if piece.kind.heavy else title


@dataclass(frozen=True, slots=True, kw_only=True)
class ProgramHead:
    """Whose cook it is, by the names people gave."""

    name: str
    version: int
    fryer: str
    product: str


@dataclass(frozen=True, slots=True, kw_only=True)
class LoadShown:
    """What is dropped."""

    count: str
    unit: str
    mass: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Sentence:
    """A sentence; empty where there is nothing to say."""

    sentence: str


@dataclass(frozen=True, slots=True, kw_only=True)
class ClockShown:
    """What is keyed, and when the lift comes by it."""

    total: str
    sentence: str


@dataclass(frozen=True, slots=True, kw_only=True)
class StripVent:
    """A vent on the strip below the curves."""

    start_s: float
    end_s: float
    lid: str
    number: str
    words: str
    left: str


@dataclass(frozen=True, slots=True, kw_only=True)
class StripStage(StripVent):
    """A stage on the strip, with its set point in people's units."""

    set: float


@dataclass(frozen=True, slots=True, kw_only=True)
class VerdictShown:
    """The verdict on one class of piece, in words; margins in kelvin and seconds."""

    piece: str
    outcome: str
    state: str
    short: bool
    word: str
    amount: str
    sentence: str
    rule: str
    edition: str
    margin_k: float | None
    margin_s: float | None
    missing: tuple[str, ...]
    source: str


@dataclass(frozen=True, slots=True, kw_only=True)
class LidShown:
    """Whether the lid can be opened at the lift."""

    outcome: str
    word: str
    sentence: str


@dataclass(frozen=True, slots=True, kw_only=True)
class SumRow:
    """A row of the sums."""

    name: str
    value: str


@dataclass(frozen=True, slots=True, kw_only=True)
class CutShown:
    """A row of the table of pieces: a cut, each figure for its usual piece and its heavy one."""

    name: str
    cells: tuple[str, ...]
    swatches: tuple[str, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class PieceShown:
    """One class of piece at the lift, in people's units."""

    name: str
    mass: str
    core_at_lift: str
    core_peak: str
    crust: str
    colour: str
    swatch: str
    logs: str
    yield_: str


@dataclass(frozen=True, slots=True, kw_only=True)
class NoteShown:
    """A note and its kind."""

    kind: str
    text: str


@dataclass(frozen=True, slots=True, kw_only=True)
class SolvedBy:
    """How the engine solved it."""

    steps: int
    energy_gap_frac: float
    setting: str
    setting_error_k: float
    catalog_version: str


@dataclass(frozen=True, slots=True, kw_only=True)
class SavedView:
    """The saved version under what is typed, to draw behind it."""

    time_s: list[float]
    oil: list[float]
    cores: list[list[float]]
    sentence: str


@dataclass(frozen=True, slots=True, kw_only=True)
class CookView:
    """Everything a screen shows of an answer; numbers of curves in people's units."""

    program: ProgramHead
    load: LoadShown
    altitude: str
    system: str
    curves: Curves
    marks: tuple[Mark, ...]
    strip: tuple[StripVent, ...]
    limit: Level | None
    facts: FactsShown
    headline: VerdictShown
    verdicts: tuple[VerdictShown, ...]
    lid: LidShown | None
    clock: ClockShown
    vent: Sentence
    summary: tuple[SumRow, ...]
    pieces: tuple[PieceShown, ...]
    cuts: tuple[CutShown, ...]
    darkest: str
    notes: tuple[NoteShown, ...]
    report: SolvedBy
    locked: bool = False  # whether somebody must answer for the program before it is kept
    saved: SavedView | None = None

    @property
    def picture(self) -> CookPicture:
        """What is drawn of it."""
        return CookPicture(
            sentence=self.headline.sentence,
            coldest=self.headline.piece,
            curves=self.curves,
            marks=self.marks,
            limit=self.limit,
        )


def cook_view(
    answer: CookAnswer, system: str, translate: Translate = str, facts: Facts | None = None
) -> CookView:
    """An answer as people read it; ``facts`` where more is known of the program than what is simulated."""
    history, plan, facts = answer.history, answer.plan, facts or answer.facts
    judged = [(piece, replace(v, lead="") if facts.proven else v) for piece, v in answer.verdicts]
    verdicts = tuple(_verdict(piece, verdict, system, translate) for piece, verdict in judged)
    pieces = tuple(_piece(history, p, system, translate) for p in history.pieces)
    return CookView(
        program=ProgramHead(
            name=plan.program.name,
            version=plan.program.version,
            fryer=plan.fryer.name,
            product=plan.product.name,
        ),
        load=LoadShown(
            count=counted(plan.units_count, plan.cut_set.unit),
            unit=translate(plan.cut_set.unit),
            mass=show(plan.load_kg, "kg", system),
        ),
        altitude=altitude_words(plan.site.altitude_m, system),
        system=system,
        curves=_curves(history, system, translate),
        marks=_marks(history, translate),
        strip=_strip(history, system, translate),
        limit=_limit(answer, system),
        facts=show_facts(facts, system, translate),
        headline=verdicts[0],
        verdicts=verdicts,
        lid=_lid(answer.lid, system, translate),
        clock=ClockShown(
            total=clock(plan.program.clock_s), sentence=_said(clock_note_of(history), system, translate)
        ),
        vent=Sentence(sentence=_said(vent_finding(plan, history.vent_s), system, translate)),
        summary=_summary(history, system, translate),
        pieces=pieces,
        cuts=_cuts(history, pieces, translate),
        darkest=f"{catalog.table('kinetics/browning.toml')['end_n']:.0f}",
        notes=notes_shown([*history.notes, *answer.notes], system, translate),
        report=SolvedBy(
            steps=history.report.steps,
            energy_gap_frac=history.report.energy_gap_frac,
            setting="close",
            setting_error_k=CLOSE.error_k,
            catalog_version=history.catalog_version,
        ),
    )


def notes_shown(notes: Sequence[Note], system: str, translate: Translate = str) -> tuple[NoteShown, ...]:
    """Notes in a kitchen's units and language."""
    return tuple(NoteShown(kind=n.kind, text=_said(n, system, translate)) for n in notes)


def _said(note: Note | None, system: str, translate: Translate) -> str:
    return say(note.text, note.values, system, translate) if note else ""


def _people(values: NDArray[np.float64], suffix: str, system: str) -> tuple[list[float], str]:
    wanted, _ = SHOWN[system].get(UNITS[suffix].dimension, (suffix, 0))
    unit = UNITS[wanted]
    return np.round(values / unit.factor - unit.offset, CURVE_DIGITS).tolist(), unit.sign


def _curves(history: FryHistory, system: str, translate: Translate) -> Curves:
    oil, degree = _people(history.oil_c, "c", system)
    gauge, pressure = _people(history.gauge_pa, "pa", system)
    thin = "in" if system == "us" else "mm"
    pieces = tuple(
        PieceCurve(
            name=piece_label(piece, translate),
            cut=piece.kind.cut.key,
            heavy=piece.kind.heavy,
            core=_people(piece.core_c, "c", system)[0],
            surface=_people(piece.surface_c, "c", system)[0],
            crust=np.round(piece.crust_m / UNITS[thin].factor, CRUST_DIGITS[thin]).tolist(),
            loss_pct=np.round(100 * piece.water_lost_frac, CURVE_DIGITS).tolist(),
        )
        for piece in history.pieces
    )
    return Curves(
        time_s=np.round(history.time_s, 1).tolist(),
        degree=degree,
        pressure_unit=pressure,
        crust_unit=UNITS[thin].sign,
        oil=oil,
        gauge=gauge,
        pieces=pieces,
    )


def _marks(history: FryHistory, translate: Translate) -> tuple[Mark, ...]:
    moments = (
        (history.full_pressure_s, "full pressure"),
        (history.vent_start_s, "vent"),
        (history.lift_s, "lift"),
    )
    return tuple(Mark(time_s=at, text=translate(text)) for at, text in moments if at is not None)


def _strip(history: FryHistory, system: str, translate: Translate) -> tuple[StripVent, ...]:
    """Stages and vents in the order of the clock, with what is left on a clock keyed with the total."""
    program, out = history.plan.program, list[StripVent]()
    stages = zip(program.stages, accumulate(program.durations_s(), initial=0.0), strict=False)
    start = 0.0
    for span, end in zip(spans(history.plan), history.span_ends_s, strict=True):
        if span.lid is Lid.REST:
            break
        if span.lid is Lid.VENT:
            words = translate("vent")
            out.append(StripVent(start_s=start, end_s=end, lid="vent", number="", words=words, left=""))
        else:
            stage, gone = next(stages)
            left = "" if program.has_condition else clock(program.clock_s - gone)
            row = StripStage(
                start_s=start,
                end_s=end,
                lid=str(stage.lid),
                number=str(sum(isinstance(row, StripStage) for row in out) + 1),
                words=f"{show(stage.set_c, 'c', system)} · {translate(LID_STATES[stage.lid])}",
                set=_people(np.array([stage.set_c]), "c", system)[0][0],
                left=left and translate("{time} left").format(time=left),
            )
            out.append(row)
        start = end
    return tuple(out)


def saved_view(answer: CookAnswer, system: str, translate: Translate = str) -> SavedView:
    """The saved version under what is typed: its curves, its margin."""
    history, program = answer.history, answer.plan.program
    text = translate("Dotted behind it: version {version} as saved, {amount}.")
    return SavedView(
        time_s=np.round(history.time_s, 2).tolist(),
        oil=_people(history.oil_c, "c", system)[0],
        cores=[_people(p.core_c, "c", system)[0] for p in history.pieces if p.kind.heavy],
        sentence=text.format(
            version=program.version, amount=show_facts(answer.facts, system, translate).amount
        ),
    )


@lru_cache(maxsize=128)
def saved_beside(kitchen: Kitchen, request: CookRequest, translate: Translate) -> SavedView:
    """What :func:`saved_view` shows of a saved version, kept: it stands beside every edit of it.
    Raises InputError: the kitchen cannot run it on that load.
    """
    return saved_view(ask(kitchen, request), kitchen.site.units, translate)


def _limit(answer: CookAnswer, system: str) -> Level | None:
    level = answer.verdicts[0][1].values.get("limit_c")
    if not isinstance(level, float):
        return None
    return Level(value=_people(np.array([level]), "c", system)[0][0], text=show(level, "c", system))


def _verdict(piece: PieceHistory, verdict: Verdict, system: str, translate: Translate) -> VerdictShown:
    named = replace(verdict, values={**verdict.values, "piece": piece_label(piece, translate)})
    facts = show_facts(facts_of([verdict]), system, translate)
    return VerdictShown(
        piece=piece_label(piece, translate),
        outcome=str(verdict.outcome),
        state=facts.state,
        short=facts.short,
        word=facts.word,
        amount=facts.amount,
        sentence=named.say(system, translate),
        rule=verdict.rule,
        edition=verdict.edition,
        margin_k=_round(verdict.margin_k),
        margin_s=_round(verdict.margin_s),
        missing=tuple(translate(m) for m in verdict.missing),
        source=verdict.source,
    )


def _round(value: float | None) -> float | None:
    return None if value is None else round(value, 2)


def _lid(verdict: Verdict | None, system: str, translate: Translate) -> LidShown | None:
    if verdict is None:
        return None
    return LidShown(
        outcome=str(verdict.outcome),
        word=translate(LID_WORDS[verdict.outcome]),
        sentence=verdict.say(system, translate),
    )


def _summary(history: FryHistory, system: str, translate: Translate) -> tuple[SumRow, ...]:
    rows = [
        ("Clock as keyed", clock(history.plan.program.clock_s)),
        ("Drop to lift", show(history.lift_s, "s", system)),
        ("Earliest lift, which verdicts look at", show(history.earliest_lift_s, "s", system)),
        ("Vent", show(history.vent_s, "s", system) if history.vent_s and history.plan.vent_told else "–"),
        (
            "Full pressure after",
            show(history.full_pressure_s, "s", system) if history.full_pressure_s else "–",
        ),
        (
            "Lowest oil",
            f"{show(history.lowest_oil_c, 'c', system)} ({show(history.lowest_oil_at_s, 's', system)})",
        ),
        ("Moisture lost, of breaded weight", show(history.moisture_loss_frac, "frac", system)),
        ("Oil taken up, of breaded weight", show(history.uptake_frac, "frac", system)),
        ("Yield, of breaded weight", show(history.yield_frac, "frac", system)),
        ("Heat into the oil", f"{history.heat_kwh:.2f} kWh"),
    ]
    return tuple(SumRow(name=translate(name), value=value) for name, value in rows)


def _piece(history: FryHistory, piece: PieceHistory, system: str, translate: Translate) -> PieceShown:
    return PieceShown(
        name=piece_label(piece, translate),
        mass=show(piece.kind.piece_mass_kg, "kg", system),
        core_at_lift=show(piece.core_at_lift_c, "c", system),
        core_peak=show(piece.core_peak_c, "c", system),
        crust=crust_words(piece.crust_at_lift_m, system),
        colour=f"{piece.browning_n:.0f}",
        swatch=crust_hex(piece.browning_n),
        logs=_logs(history, piece),
        yield_=show(piece.yields.yield_frac, "frac", system),
    )


def _cuts(history: FryHistory, pieces: Sequence[PieceShown], translate: Translate) -> tuple[CutShown, ...]:
    """The pieces by their cut: usual and heavy one side by side."""
    found: dict[str, list[PieceShown]] = {}
    for piece, shown in zip(history.pieces, pieces, strict=True):
        found.setdefault(translate(piece.kind.cut.title), []).append(shown)
    return tuple(
        CutShown(
            name=name,
            cells=tuple(
                reduce(_both, texts)
                for texts in zip(
                    *(
                        (p.mass, p.core_at_lift, p.core_peak, p.crust, p.colour, p.logs, p.yield_)
                        for p in shown
                    ),
                    strict=True,
                )
            ),
            swatches=tuple(dict.fromkeys(p.swatch for p in shown)),
        )
        for name, shown in found.items()
    )


def _both(usual: str, heavy: str) -> str:
    """Two figures in one cell: 181 / 174 °F; one where they are alike."""
    number, _, unit = usual.rpartition(" ")
    same_unit = number and heavy.endswith(f" {unit}")
    return usual if usual == heavy else f"{number if same_unit else usual} / {heavy}"


def _logs(history: FryHistory, piece: PieceHistory) -> str:
    if not piece.kind.cut.poultry:
        return "–"
    reached = logs_by_lift(history, piece)
    return f"> {MOST_LOGS_SHOWN:.0f}" if reached > MOST_LOGS_SHOWN else f"{reached:.1f}"


def logs_by_lift(history: FryHistory, piece: PieceHistory) -> float:
    """Decimal reductions of Salmonella that a core collects by the earliest lift."""
    return salmonella_log(*until(history.time_s, piece.core_c, history.earliest_lift_s))
