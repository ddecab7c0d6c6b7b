"""A log's answer in inside units with unit-suffixed names, for other programs."""

from __future__ import annotations

from dataclasses import dataclass
from math import isfinite

from frywright.calibrate.gauge import Pressed
from frywright.calibrate.parameters import Fitted
from frywright.calibrate.recovery import Recovery
from frywright.model.calibration import Calibration
from frywright.model.findings import say
from frywright.rooms.cook.probe_view import QuestionShown
from frywright.rooms.cook.probes import Answer, Calibrated
from frywright.rooms.cook.sampling import Sampled
from frywright.rooms.cook.view import NoteShown, notes_shown
from frywright.trial.predicted import FactsShown, show_facts
from frywright.verdicts.facts import facts_of


@dataclass(frozen=True, slots=True, kw_only=True)
class DroppedTold:
    """Lines left out for one reason, some by their number."""

    reason: str
    count: int
    lines: list[int]


@dataclass(frozen=True, slots=True, kw_only=True)
class ChannelTold:
    """One channel; ``open_count`` readings of it were open."""

    name: str
    role: str
    unit: str
    open_count: int


@dataclass(frozen=True, slots=True, kw_only=True)
class GapTold:
    """A stretch without readings."""

    from_s: float
    to_s: float


@dataclass(frozen=True, slots=True, kw_only=True)
class ControlTold:
    """How the oil was held; None where the display or the offset is not known."""

    mean_c: float
    swing_k: float
    cycles_count: int
    display_mean_c: float | None
    offset_k: float | None


@dataclass(frozen=True, slots=True, kw_only=True)
class LogLoadTold:
    """One load; ``lift_s`` is None where the log ends before it."""

    drop_s: float
    lift_s: float | None
    overlapping: bool
    recovery: Recovery | None
    pressed: Pressed | None


@dataclass(frozen=True, slots=True, kw_only=True)
class CurveVerdictTold:
    """The verdict on one core curve; ``row`` is the best row met, degC and seconds."""

    load: int
    channel: str
    cut: str
    outcome: str
    sentence: str
    margin_k: float | None
    salmonella_log_n: float
    row: list[float] | None
    missing: list[str]
    facts: FactsShown


@dataclass(frozen=True, slots=True, kw_only=True)
class ProbeTold:
    """What was read, found and judged."""

    ok: bool
    file: str
    started_at: str | None
    lines_count: int
    kept_count: int
    step_s: float
    dropped: list[DroppedTold]
    questions: list[QuestionShown]
    channels: list[ChannelTold]
    gaps: list[GapTold]
    control: ControlTold | None
    loads: list[LogLoadTold]
    verdicts: list[CurveVerdictTold]
    notes: tuple[NoteShown, ...]


def probe_told(answer: Answer) -> ProbeTold:
    """A log's answer for other programs; sentences in English and metric units."""
    log, found = answer.log, answer.analysis
    held = found.control
    return ProbeTold(
        ok=True,
        file=log.name,
        started_at=log.start_at.isoformat() if log.start_at else None,
        lines_count=log.lines_count,
        kept_count=len(log.time_s),
        step_s=log.step_s,
        dropped=[
            DroppedTold(reason=d.reason, count=d.count, lines=[n for n, _ in d.examples]) for d in log.dropped
        ],
        questions=[
            QuestionShown(key=q.key, text=say(q.text, q.values), choices=list(q.choices), guess=q.guess)
            for q in log.questions
        ],
        channels=[
            ChannelTold(name=c.name, role=str(c.role), unit=c.unit, open_count=c.open_count)
            for c in log.channels
        ],
        gaps=[GapTold(from_s=a, to_s=b) for a, b in log.gaps],
        control=(
            None
            if held is None or not isfinite(held.mean_c)
            else ControlTold(
                mean_c=held.mean_c,
                swing_k=held.swing_k,
                cycles_count=held.cycles_count,
                display_mean_c=found.display_mean_c,
                offset_k=found.offset_k,
            )
        ),
        loads=[
            LogLoadTold(
                drop_s=load.load.drop_s,
                lift_s=load.load.lift_s,
                overlapping=load.load.overlapping,
                recovery=load.recovery,
                pressed=load.pressed,
            )
            for load in found.loads
        ],
        verdicts=[
            CurveVerdictTold(
                load=j.load_number,
                channel=j.curve.channel,
                cut=j.cut,
                outcome=str(j.verdict.outcome),
                sentence=j.verdict.say(),
                margin_k=j.verdict.margin_k,
                salmonella_log_n=j.logs_n,
                row=list(j.row) if j.row else None,
                missing=list(j.verdict.missing),
                facts=show_facts(facts_of([j.verdict]), "metric", measured=True),
            )
            for j in answer.judged
        ],
        notes=notes_shown(answer.notes, "metric"),
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class CorrelationTold:
    """How much two fitted values lean on each other, -1 to 1."""

    first: str
    second: str
    correlation: float


@dataclass(frozen=True, slots=True, kw_only=True)
class PlacementTold:
    """Where a probe sat, 0 at the surface and 1 in the core."""

    kind: str
    place_frac: float | None
    text: str


@dataclass(frozen=True, slots=True, kw_only=True)
class CalibratedTold:
    """A calibration with intervals and reasons."""

    ok: bool
    cut: str
    parameters: list[Fitted]
    correlations: list[CorrelationTold]
    rms_k: float | None
    warnings: tuple[NoteShown, ...]
    refused: tuple[NoteShown, ...]
    placements: list[PlacementTold]
    calibration: Calibration | None


def calibrated_told(made: Calibrated) -> CalibratedTold:
    """A calibration for other programs."""
    found = made.fit
    return CalibratedTold(
        ok=made.draft is not None,
        cut=made.cut,
        parameters=list(found.parameters),
        correlations=[CorrelationTold(first=a, second=b, correlation=r) for a, b, r in found.correlations],
        rms_k=found.rms_k if found.parameters else None,
        warnings=notes_shown(found.warnings, "metric"),
        refused=notes_shown(found.refused, "metric"),
        placements=[
            PlacementTold(kind=p.note.kind, place_frac=p.place_frac, text=say(p.note.text, p.note.values))
            for p in made.placements
        ],
        calibration=made.draft,
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class SampleUnjudged:
    """A sampling proof of a food that no rule speaks of, and why."""

    ok: bool
    program: str
    version: int
    fryer: str
    outcome: str
    why: str
    count: int
    limit_c: None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class SampleTold:
    """A sampling proof with the program it is of."""

    ok: bool
    program: str
    version: int
    fryer: str
    outcome: str
    sentence: str
    count: int
    mean_c: float
    sd_k: float
    factor_n: float
    bound_c: float
    limit_c: float
    coverage_frac: float
    confidence_frac: float
    needed_count: int | None
    zero_failure_frac: float
    notes: list[str]


def sample_told(found: Sampled) -> SampleTold | SampleUnjudged:
    """A sampling proof for other programs."""
    program, proof = found.program, found.proof
    if proof is None:
        return SampleUnjudged(
            ok=True,
            program=program.name,
            version=program.version,
            fryer=program.fryer,
            outcome=found.outcome,
            why=found.why,
            count=len(found.readings_c),
        )
    return SampleTold(
        ok=True,
        program=program.name,
        version=program.version,
        fryer=program.fryer,
        outcome=found.outcome,
        sentence=say(proof.sentence.text, proof.sentence.values),
        count=proof.count,
        mean_c=proof.mean_c,
        sd_k=proof.sd_k,
        factor_n=proof.factor_n,
        bound_c=proof.bound_c,
        limit_c=proof.limit_c,
        coverage_frac=proof.coverage_frac,
        confidence_frac=proof.confidence_frac,
        needed_count=proof.needed_count,
        zero_failure_frac=proof.zero_failure_frac,
        notes=[say(n.text, n.values) for n in proof.notes],
    )
