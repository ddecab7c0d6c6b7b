"""What a machine really holds, compared with its card: read back blind, with what a slip would do."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

from frywright.design.controller import Keyed, render, rounded
from frywright.design.readback import Mismatch, compare, tidy
from frywright.ledger.facts.cook import SettingRead
from frywright.model.errors import InputError
from frywright.model.kitchen import Kitchen
from frywright.model.program import Program
from frywright.model.tongues import Translate
from frywright.trial.ask import CookAnswer
from frywright.trial.effect import Effect, EffectRow, EffectView, effect_of, effect_view, worst_answer
from frywright.trial.machine import as_set, settings_of, told_settings
from frywright.trial.predicted import refuse_short

SLIPS_COUNT = 20
"""Versions of a program, the newest, that a fryer is thought to hold still (own choice)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class ReadBack:
    """Result of comparing a machine with its card, and what a mismatch would do to the food."""

    mismatches: tuple[Mismatch, ...]
    figure_read: str
    figure_card: str
    settings: tuple[SettingRead, ...]
    held: Program | None
    consequence: CookAnswer | None
    effect: Effect | None = None

    @property
    def matches(self) -> bool:
        """Whether the machine holds what the card says."""
        return not self.mismatches


def read_back(
    kitchen: Kitchen,
    program: Program,
    slot: int,
    read: Sequence[str],
    settings: Mapping[str, str] | None = None,
) -> ReadBack:
    """Compare values read from a machine, in keying order, with the card; simulate what it holds.

    ``settings`` are answers to :func:`settings_of` by their key or the kitchen's name; those not given are
    not compared. Raises InputError: the program is predicted short, more or fewer values than the card has,
    or one that cannot be read.
    """
    refuse_short(kitchen, program)
    fryer = kitchen.fryer(program.fryer)
    card = render(program, fryer.controller, slot)
    keyed = [v for v in card.values if not v.by_crew]
    if len(read) != len(keyed):
        raise InputError("values", len(read), "{count}: read every value, one by one", count=len(keyed))
    tidied = [tidy(value, text, fryer.controller) for value, text in zip(keyed, read, strict=True)]
    asked = settings_of(kitchen, program)
    told, set_wrong = told_settings(asked, settings or {}, kitchen.site)
    mismatches = _known_slips(kitchen, program, compare(keyed, tidied, fryer.controller)) + set_wrong
    texts = iter(tidied)
    as_read = tuple(v if v.by_crew else replace(v, text=next(texts)) for v in card.values)
    figure = replace(card, values=as_read).figure
    kept = tuple(SettingRead(key=s.key, name=s.name, value=told[s.key]) for s in asked if s.key in told)
    if not mismatches:
        return ReadBack(
            mismatches=(),
            figure_read=figure,
            figure_card=card.figure,
            settings=kept,
            held=None,
            consequence=None,
        )
    lids = tuple(
        replace(v, text=told.get(f"lid{v.stage}", v.text)) if v.what == "lid" else v for v in as_read
    )
    machine = as_set(kitchen, program, told)
    held = machine.holds(lids, program)
    answer = worst_answer(machine.in_kitchen(kitchen, fryer), held.programs)
    fitted = rounded(program, fryer.controller)
    effect = effect_of(kitchen, fitted, held, answer, mismatches, machine.notes)
    return ReadBack(
        mismatches=mismatches,
        figure_read=figure,
        figure_card=card.figure,
        settings=kept,
        held=answer.plan.program if answer else None,
        consequence=answer,
        effect=effect,
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class MismatchShown:
    """One value that is not as on the card, and the slip it looks like."""

    stage: int
    what: str
    card: str
    machine: str
    likely_slip: str


@dataclass(frozen=True, slots=True, kw_only=True)
class ReadBackView:
    """A read-back as people and programs read it: sentences in the kitchen's units, ``margin_k`` in
    kelvin.
    """

    matches: bool
    figure_card: str
    figure_read: str
    mismatches: tuple[MismatchShown, ...]
    clock_s: float | None
    as_keyed: tuple[EffectRow, ...]
    warnings: tuple[str, ...]
    orders: tuple[str, ...]
    margin_k: float | None


def readback_view(result: ReadBack, system: str, translate: Translate = str) -> ReadBackView:
    """A read-back with what a mismatch would do to the food."""
    effect = result.effect
    view = effect_view(effect, system, translate) if effect else EffectView()
    return ReadBackView(
        matches=result.matches,
        figure_card=result.figure_card,
        figure_read=result.figure_read,
        mismatches=tuple(
            MismatchShown(
                stage=m.stage,
                what=m.name or translate(m.what),
                card=m.wanted,
                machine=m.found,
                likely_slip=translate(m.slip),
            )
            for m in result.mismatches
        ),
        clock_s=result.held.clock_s if result.held else None,
        as_keyed=view.rows,
        warnings=view.warnings,
        orders=view.orders,
        margin_k=effect.held.margin_k if effect and effect.held else None,
    )


def _known_slips(kitchen: Kitchen, program: Program, found: tuple[Mismatch, ...]) -> tuple[Mismatch, ...]:
    """Values of an older version, or of another program on the same fryer, are named as such."""
    told = []
    for m in found:
        slip = m.slip
        for other in (*kitchen.programs, *kitchen.versions(program.name)[-SLIPS_COUNT:]):
            if other == program or other.fryer != program.fryer:
                continue
            values = render(other, kitchen.fryer(other.fryer).controller).values
            if any((v.stage, v.what, v.text) == (m.stage, m.what, m.found) for v in values):
                slip = "old version" if other.name == program.name else "another slot"
        told.append(replace(m, slip=slip))
    return tuple(told)


def value_names(kitchen: Kitchen, program: Program, slot: int) -> list[Keyed]:
    """The values to read from the machine, in order (their texts are the card's: hide them)."""
    fryer = kitchen.fryer(program.fryer)
    return [v for v in render(program, fryer.controller, slot).values if not v.by_crew]
