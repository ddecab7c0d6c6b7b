"""Sampling proofs of a program: hand readings of its coldest pieces, judged by the rule of its food here."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from frywright.calibrate.sampling import SampleAim, SampleProof, prove_sample
from frywright.ledger.facts.probing import SampleProved
from frywright.ledger.store import Store
from frywright.model.errors import InputError
from frywright.model.findings import say
from frywright.model.kitchen import Kitchen
from frywright.model.program import Program
from frywright.model.tongues import Translate
from frywright.model.units import show
from frywright.rooms.hall import write
from frywright.trial.ask import hand_limit_c, why_none

MOST_READINGS = 500
NO_RULE = (
    "No rule here for this food: {why}. No house target is set, so nothing judges the"
    " readings. Readings: {count}."
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Sampled:
    """Readings of one version of a program, and their proof; no proof where neither a rule nor the house
    speaks of its food, and ``why``.
    """

    program: Program
    readings_c: tuple[float, ...]
    checked: bool
    proof: SampleProof | None
    why: str = ""

    @property
    def outcome(self) -> str:
        """passes, fails, no_evidence; or no_rule."""
        return str(self.proof.outcome) if self.proof else "no_rule"


def sample_program(
    kitchen: Kitchen,
    name: str,
    readings_c: Sequence[float],
    *,
    checked: bool,
    coverage_frac: float = 0.95,
    confidence_frac: float = 0.95,
) -> Sampled:
    """Judge readings of the coldest pieces of a program, the kitchen's thermometer error taken off each.
    Raises InputError: no such program, or as :func:`frywright.calibrate.sampling.prove_sample`.
    """
    program, readings = kitchen.program(name), tuple(readings_c)
    if len(readings) > MOST_READINGS:
        raise InputError("readings", len(readings), "at most {most} at a time", most=MOST_READINGS)
    product = kitchen.product(program.product)
    limit_c = hand_limit_c(kitchen, product)
    if limit_c is None:
        why = why_none(kitchen, product)
        return Sampled(program=program, readings_c=readings, checked=checked, proof=None, why=why)
    aim = SampleAim(
        limit_c=limit_c,
        coverage_frac=coverage_frac,
        confidence_frac=confidence_frac,
        guard_k=kitchen.site.thermometer_error_k,
    )
    proof = prove_sample(readings, aim, thermometer_checked=checked)
    return Sampled(program=program, readings_c=readings, checked=checked, proof=proof)


def keep_sample(store: Store, kitchen: Kitchen, found: Sampled) -> None:
    """Keep a sampling proof with the program, version and fryer it is of."""
    program, proof = found.program, found.proof
    fact = SampleProved(
        name=program.name,
        version=program.version,
        fryer=program.fryer,
        product=program.product,
        readings=" ".join(f"{core_c:.2f}" for core_c in found.readings_c),
        outcome=found.outcome,
        bound_c=proof.bound_c if proof else None,
        limit_c=proof.limit_c if proof else None,
        count=len(found.readings_c),
        checked=found.checked,
    )
    write(store, fact)


@dataclass(frozen=True, slots=True, kw_only=True)
class SampledView:
    """A sampling proof as people read it; no figures where no rule speaks of the food."""

    program: str
    version: int
    fryer: str
    outcome: str
    sentence: str
    figures: str = ""
    notes: tuple[str, ...] = ()


def sampled_view(kitchen: Kitchen, found: Sampled, translate: Translate = str) -> SampledView:
    """A sampling proof in the kitchen's units and a language."""
    system, proof, program = kitchen.site.units, found.proof, found.program
    values: dict[str, float | str] = {"why": found.why, "count": float(len(found.readings_c))}
    told = SampledView(
        program=program.name,
        version=program.version,
        fryer=kitchen.fryer(program.fryer).name,
        outcome=found.outcome,
        sentence=say(NO_RULE, values, system, translate),
    )
    if proof is None:
        return told
    figures = {
        "n": f"{proof.count}",
        "k": f"{proof.factor_n:.3f}",
        translate("mean"): show(proof.mean_c, "c", system),
        "s": show(proof.sd_k, "k", system),
        translate("bound"): show(proof.bound_c, "c", system),
    }
    return replace(
        told,
        sentence=say(proof.sentence.text, proof.sentence.values, system, translate),
        figures=" · ".join(f"{name} {value}" for name, value in figures.items()),
        notes=tuple(say(n.text, n.values, system, translate) for n in proof.notes),
    )
