"""A change of the kitchen that moves a prediction: which programs it touches, and by how much their margin
moves.
"""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from frywright.design.proof import load_fractions
from frywright.model.errors import InputError
from frywright.model.findings import say
from frywright.model.kitchen import Kitchen, ProveAgain
from frywright.model.program import Program
from frywright.model.tongues import Translate
from frywright.physics.plan import make_plan, question
from frywright.trial.ask import CookRequest, ask, product_limit
from frywright.trial.evidence import evidence_for
from frywright.trial.predicted import as_keyed

CALIBRATED = "a piece was calibrated from a probe log"
AGAIN = "Prove again: the kitchen has changed ({reason})."
AGAIN_TEXTS = {
    (True, True): (
        "Prove again: the kitchen has changed ({reason}). Predicted {before_k} over before, {after_k} over"
        " now."
    ),
    (True, False): (
        "Prove again: the kitchen has changed ({reason}). Predicted {before_k} over before, {after_k} SHORT"
        " now: do not cook by this program."
    ),
    (False, True): (
        "Prove again: the kitchen has changed ({reason}). Predicted {before_k} short before, {after_k} over"
        " now."
    ),
    (False, False): (
        "Prove again: the kitchen has changed ({reason}). Predicted {before_k} short before, {after_k} SHORT"
        " now: do not cook by this program."
    ),
}


def again_text(mark: ProveAgain) -> str:
    """Template of what a mark says."""
    before, after = mark.margin_before_k, mark.margin_after_k
    return AGAIN if before is None or after is None else AGAIN_TEXTS[before >= 0.0, after >= 0.0]


def again_values(mark: ProveAgain) -> dict[str, float | str]:
    """Values of that template."""
    before, after = mark.margin_before_k, mark.margin_after_k
    margins = {} if before is None or after is None else {"before_k": abs(before), "after_k": abs(after)}
    return {"reason": mark.reason, **margins}


def again_line(kitchen: Kitchen, program: Program, translate: Translate = str) -> str:
    """That a program must be proved again, why, and by how much its margin has moved; empty where nothing
    asks for it.
    """
    mark = kitchen.mark(program)
    if mark is None:
        return ""
    reasons = "; ".join(translate(reason) for reason in mark.reason.split("; "))
    values = {**again_values(mark), "reason": reasons}
    return say(again_text(mark), values, kitchen.site.units, translate)


def moved(old: Kitchen, new: Kitchen, reason: str) -> list[ProveAgain]:
    """Marks on the programs a change touches; only their margins are simulated."""
    found = []
    for name in touched(old, new):
        before, after = lowest_margin_k(old, old.program(name)), lowest_margin_k(new, new.program(name))
        found.append(
            ProveAgain(
                name=name,
                version=new.program(name).version,
                reason=reason,
                margin_before_k=before,
                margin_after_k=after,
            )
        )
    return found


def touched(old: Kitchen, new: Kitchen) -> list[str]:
    """Names of the programs for which the engine, the limit or the evidence is asked something else; nothing
    is simulated.
    """
    common = sorted({p.name for p in old.programs} & {p.name for p in new.programs})
    same = [n for n in common if old.program(n).version == new.program(n).version]
    return [n for n in same if _inputs(old, old.program(n)) != _inputs(new, new.program(n))]


def lowest_margin_k(kitchen: Kitchen, program: Program) -> float | None:
    """Lowest predicted margin of a program as its fryer holds it, from the smallest load to the full one;
    None where no limit speaks.

    A fryer that cannot be asked, such as one without a load it takes, has no margin either.
    """
    found = []
    for units in _loads(kitchen, program):
        try:
            answer = ask(kitchen, CookRequest(program=as_keyed(kitchen, program), units_count=units))
        except InputError:
            return None
        if answer.facts.margin_k is not None:
            found.append(answer.facts.margin_k)
    return min(found, default=None)


def joined(first: ProveAgain | None, then: ProveAgain) -> ProveAgain:
    """Two changes in a row without a proof between: the margin from before the first to after the last, both
    reasons.
    """
    if first is None:
        return then
    return replace(then, margin_before_k=first.margin_before_k, reason=f"{first.reason}; {then.reason}")


def _loads(kitchen: Kitchen, program: Program) -> tuple[float, ...]:
    full = make_plan(kitchen, program)
    shares = load_fractions(full)
    return tuple(dict.fromkeys((full.units_count * shares[0], full.units_count)))


def _inputs(kitchen: Kitchen, program: Program) -> tuple[Any, ...]:
    """Everything a prediction and its verdict are made of: the engine's questions, what of a vent may count,
    the limit, the evidence.
    """
    held = as_keyed(kitchen, program)
    plans = [make_plan(kitchen, held, units_count=units) for units in _loads(kitchen, program)]
    evidence = [evidence_for(kitchen, plan, kind) for plan in plans for kind in plan.kinds]
    clocks = [(plan.runs_on, plan.vent_credit_s) for plan in plans]
    return (
        [question(plan) for plan in plans],
        clocks,
        product_limit(kitchen, kitchen.product(program.product)),
        evidence,
    )
