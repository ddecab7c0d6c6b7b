"""The two facts of a program as people read them, and the lock on one that is predicted short."""

from __future__ import annotations

from dataclasses import asdict, dataclass, replace
from functools import lru_cache

from frywright.design.controller import rounded
from frywright.model.errors import InputError
from frywright.model.findings import say
from frywright.model.kitchen import Kitchen
from frywright.model.program import Answered, Program
from frywright.model.tongues import Translate
from frywright.model.units import show, to_inside
from frywright.trial.ask import CookRequest, ask
from frywright.trial.evidence import stages_mark
from frywright.verdicts.evidence import EvidenceKind
from frywright.verdicts.facts import Facts, Prediction

WORDS = {Prediction.OVER: "over", Prediction.SHORT: "short", Prediction.NO_RULE: "no rule here"}
PREDICTED = {
    (Prediction.OVER, True): "Predicted {amount} over {level_c} ({title}).",
    (Prediction.OVER, False): "Predicted {amount} over {title}.",
    (Prediction.SHORT, True): "Predicted {amount} short of {level_c} ({title}).",
    (Prediction.SHORT, False): "Predicted {amount} short of {title}.",
}
HOUSE_OVER = "No rule here for this food. House target {level_c}: predicted {amount} over it."
HOUSE_SHORT = "No rule here for this food. House target {level_c}: predicted {amount} short of it."
NO_TARGET = "No rule here for this food: {why}. No house target is set."
MEASURED = {
    PREDICTED[Prediction.OVER, True]: "Measured {amount} over {level_c} ({title}).",
    PREDICTED[Prediction.OVER, False]: "Measured {amount} over {title}.",
    PREDICTED[Prediction.SHORT, True]: "Measured {amount} short of {level_c} ({title}).",
    PREDICTED[Prediction.SHORT, False]: "Measured {amount} short of {title}.",
    HOUSE_OVER: "No rule here for this food. House target {level_c}: measured {amount} over it.",
    HOUSE_SHORT: "No rule here for this food. House target {level_c}: measured {amount} short of it.",
    NO_TARGET: NO_TARGET,
}
"""What a log's probe says in place of a prediction."""
PROVEN_BY = {
    str(EvidenceKind.CALIBRATED): "calibration from probe logs, inside its range",
    str(EvidenceKind.PROBE): "readings of a checked thermometer",
}
PARTLY = (
    "Calibrated: {known}. Only estimated, least to spare first: {open}. Probe these next, heaviest pieces"
    " first: a program is proven when every piece is."
)
UNANSWERED = (
    "{name}, version {version}: predicted {amount} short, and nobody answers for it. No card is printed"
    " without a name and a reason, and no machine is read back by it. Lengthen it until it is predicted over."
)
LOCKED = "given: {name} is predicted {amount} short, so somebody must answer for it"
REFUSED = (
    "over its limit before a machine is keyed by it: lengthen the program until it is predicted over, save"
    " it, print its card, then read back"
)


@dataclass(frozen=True, slots=True, kw_only=True)
class FactsShown:
    """Two facts in a kitchen's units and language; page, card, proof and JSON show the same words."""

    state: str  # over, short or no_rule
    short: bool
    word: str
    amount: str  # signed; empty without a rule and a house target
    predicted: str
    proven: bool
    proven_word: str
    evidence: str


@dataclass(frozen=True, slots=True, kw_only=True)
class FactsTold(FactsShown):
    """Facts for other programs: the signed margin in kelvin beside the words."""

    margin_k: float | None
    missing: list[str]


def show_facts(
    facts: Facts, system: str, translate: Translate = str, *, measured: bool = False
) -> FactsShown:
    """Facts in words; ``measured`` where the curve is a probe's."""
    amount = amount_of(facts, system)
    values = {"amount": amount, "title": facts.title, "why": facts.why}
    known = {"level_c": facts.level_c} if facts.level_c is not None else {}
    if facts.margin_k is None:
        text = NO_TARGET
    elif facts.prediction is Prediction.NO_RULE:
        text = HOUSE_SHORT if facts.short else HOUSE_OVER
    else:
        text = PREDICTED[facts.prediction, bool(known)]
    text = MEASURED[text] if measured else text
    missing = "; ".join(translate(m) for m in facts.missing)
    if facts.proven:
        evidence = say("Proven by {by}.", {"by": PROVEN_BY[facts.evidence]}, system, translate)
    else:
        evidence = say("Missing: {missing}.", {"missing": missing}, system, translate)
    if facts.to_probe:
        open_, known_cuts = _cuts(facts.to_probe), _cuts(facts.calibrated)
        named = [c for c in known_cuts if c not in open_] or known_cuts
        pieces = {"known": named, "open": open_}
        told = {key: ", ".join(translate(cut) for cut in cuts) for key, cuts in pieces.items()}
        evidence = say(PARTLY, told, system, translate)
    proven_word = ("proven short" if facts.short else "proven") if facts.proven else "not proven yet"
    signed = f"{'−' if facts.short else '+'}{amount}" if amount else ""
    predicted = say(text, {**values, **known}, system, translate)
    if facts.worst:
        predicted += " " + translate("That is the worst case simulated.")
    return FactsShown(
        state=str(facts.prediction),
        short=facts.short,
        word=translate(WORDS[facts.prediction]),
        amount=signed,
        predicted=predicted,
        proven=facts.proven,
        proven_word=translate(proven_word),
        evidence=evidence,
    )


def _cuts(pieces: tuple[str, ...]) -> list[str]:
    """Cuts of pieces, each once, heavy end or not."""
    return list(dict.fromkeys(piece.removesuffix(" (heavy end)") for piece in pieces))


def amount_of(facts: Facts, system: str) -> str:
    """How much over or short, without sign; short is never shown as nothing."""
    if facts.margin_k is None:
        return ""
    least_k = to_inside(0.1, "f_diff" if system == "us" else "k") if facts.short else 0.0
    return show(max(abs(facts.margin_k), least_k), "k", system)


def facts_told(facts: Facts, system: str = "metric", translate: Translate = str) -> FactsTold:
    """Facts with their figures beside the words."""
    return FactsTold(
        **asdict(show_facts(facts, system, translate)), margin_k=facts.margin_k, missing=list(facts.missing)
    )


def as_keyed(kitchen: Kitchen, program: Program) -> Program:
    """The program as its controller holds it; one that no controller holds stays as it is."""
    try:
        return rounded(program, kitchen.fryer(program.fryer).controller)
    except InputError:
        return program


def program_facts(kitchen: Kitchen, program: Program) -> Facts:
    """What is predicted and proven of a program as keyed, at its full load in its own kitchen; a proof of
    this version that failed speaks too, and readings that decided it. Raises InputError: the kitchen cannot
    run it.
    """
    facts = _full_load(_predicting(kitchen), program)
    return with_probing(kitchen, program, with_failed_proof(kitchen, program, facts))


def with_failed_proof(kitchen: Kitchen, program: Program, facts: Facts) -> Facts:
    """Facts of a program, short by its newest proof where that one failed and is the shorter."""
    failed = kitchen.failed_proof(program)
    if failed is None or facts.margin_k is None or facts.margin_k <= failed.margin_k:
        return facts
    short = Prediction.SHORT if facts.prediction is Prediction.OVER else facts.prediction
    return replace(facts, prediction=short, margin_k=failed.margin_k, worst=True)


def with_probing(kitchen: Kitchen, program: Program, facts: Facts) -> Facts:
    """Facts of a program with what readings of its pieces have decided: proven over its limit, or short of it
    whatever is predicted.
    """
    probed = kitchen.probed_as(program, stages_mark(program))
    if probed is None or facts.margin_k is None:
        return facts
    known = replace(
        facts, proven=True, evidence=str(EvidenceKind.PROBE), missing=(), calibrated=(), to_probe=()
    )
    if probed.outcome == "meets":
        return facts if facts.short else known
    if probed.outcome == "fails":
        sign = Prediction.SHORT if facts.prediction is Prediction.OVER else facts.prediction
        return replace(known, prediction=sign, margin_k=min(facts.margin_k, probed.low_k), worst=False)
    return facts


@lru_cache(maxsize=32)
def _predicting(kitchen: Kitchen) -> Kitchen:
    """A kitchen without what only proofs, readings and people have said of its programs."""
    return replace(kitchen, marks=(), failed=(), retired=(), probed=())


@lru_cache(maxsize=256)
def _full_load(kitchen: Kitchen, program: Program) -> Facts:
    return ask(kitchen, CookRequest(program=as_keyed(kitchen, program))).facts


def short_programs(kitchen: Kitchen) -> list[tuple[Program, Facts]]:
    """The newest version of every program that is predicted short, wherever it came from."""
    names = sorted({p.name for p in kitchen.programs})
    found = [(p, program_facts(kitchen, p)) for p in map(kitchen.program, names)]
    return [(program, facts) for program, facts in found if facts.short]


def unanswered_line(kitchen: Kitchen, program: Program, facts: Facts, translate: Translate = str) -> str:
    """That a program is predicted short and nobody answers for it."""
    system = kitchen.site.units
    values = {"name": program.name, "version": f"{program.version}", "amount": amount_of(facts, system)}
    return say(UNANSWERED, values, system, translate)


@dataclass(frozen=True, slots=True, kw_only=True)
class Answerer:
    """Who answers for a program that is predicted short, and why it is wanted all the same."""

    by: str = ""
    reason: str = ""


NOBODY = Answerer()


def answered(kitchen: Kitchen, program: Program, who: Answerer, *seen: Facts) -> Answered | None:
    """What an entry keeps of the lock: None for a program over its limit, else amount, name and reason.
    Raises InputError: it is predicted short, and the name or the reason is missing.

    Parameters
    ----------
    seen : further facts of it, such as its proof's; the shortest speaks
    """
    short = [facts for facts in (program_facts(kitchen, program), *seen) if facts.short]
    if not short:
        return None
    worst = min(short, key=lambda facts: facts.margin_k or 0.0)
    values = {"name": program.name, "amount": amount_of(worst, kitchen.site.units)}
    for field, text, least in (("name of who answers", who.by, 2), ("reason", who.reason, 4)):
        if len(text.strip()) < least:
            raise InputError(field, "empty", LOCKED, **values)
    return Answered(margin_k=worst.margin_k or 0.0, by=who.by.strip()[:80], reason=who.reason.strip()[:200])


def refuse_short(kitchen: Kitchen, program: Program) -> None:
    """Refuse to key a machine by a program that is predicted short. Raises InputError: it is."""
    facts = program_facts(kitchen, program)
    if facts.short:
        told = show_facts(facts, kitchen.site.units)
        raise InputError("prediction", f"{told.amount} ({told.word})", REFUSED, where=program.name)
