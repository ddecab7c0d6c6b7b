"""The life of programs as the ledger tells it, and the acts that carry a version on: keyed, in service,
retired.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import Any

from frywright.ledger.facts.cook import (
    ProgramProved,
    ProgramSaved,
    ProofsAsked,
    ReadBackTaken,
    ShortCardPrinted,
)
from frywright.ledger.facts.fact import Kept
from frywright.ledger.facts.life import CardPrinted, ProgramKeyed, ProgramRetired, ServiceBegun
from frywright.ledger.facts.probing import ProgramProbed
from frywright.ledger.store import Store
from frywright.model.business_day import business_time, usual_trade
from frywright.model.errors import InputError
from frywright.model.findings import say
from frywright.model.kitchen import Kitchen
from frywright.model.program import Program
from frywright.model.tongues import Translate
from frywright.rooms.cook.cards import Approved
from frywright.rooms.hall import AUTHOR, by_name, given_words, in_turn, write
from frywright.rooms.standing import newest_readbacks, settings_read, slot_of, told_slots
from frywright.trial.life import Life, Mark, Standing, State, Step, Traces, life_of
from frywright.trial.predicted import program_facts
from frywright.verdicts.evidence import EvidenceKind


@dataclass(frozen=True, slots=True, kw_only=True)
class StepShown:
    """A step as people read it."""

    key: str
    name: str
    state: str
    state_word: str
    text: str
    who: str
    when: str
    act: str
    next: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class LifeShown:
    """A life as people read it: its steps, the next one, how it ended."""

    program: str
    version: int
    steps: tuple[StepShown, ...]
    next: StepShown | None
    serving: bool
    end: str
    ended: str


def lives(store: Store, kitchen: Kitchen) -> dict[str, Life]:
    """The life of the newest version of every program, by name."""
    told = _Told(store)
    return {
        name: life_of(told.traces(kitchen, kitchen.program(name)))
        for name in sorted({p.name for p in kitchen.programs})
    }


def life_of_program(store: Store, kitchen: Kitchen, program: Program) -> Life:
    """The life of one version of a program."""
    return life_of(_Told(store).traces(kitchen, program))


class _Told:
    """What the ledger says of all programs, read once."""

    def __init__(self, store: Store) -> None:
        self.saved = store.newest_by(ProgramSaved, version_of)
        self.proofs = store.newest_by(ProgramProved, version_of)
        self.failed = store.newest_by(ProgramProved, _failed)
        self.decided = store.newest_by(ProgramProbed, _decided)
        self.printed: tuple[Mapping[Any, Kept[Any]], ...] = (
            store.newest_by(CardPrinted, version_of),
            store.newest_by(ShortCardPrinted, version_of),
        )
        self.keyed = store.newest_by(ProgramKeyed, version_of)
        self.read = newest_readbacks(store)
        self.differed = store.newest_by(ReadBackTaken, _differed)
        self.service = store.newest_by(ServiceBegun, version_of)
        self.retired = store.newest_by(ProgramRetired, version_of)
        self.slots = told_slots(store)
        self.changed: dict[tuple[str, int], int] = {}
        for item in store.facts(ProofsAsked):
            self.changed |= {(mark.name, mark.version): item.number for mark in item.fact.programs}

    def _undone(self, program: Program) -> int:
        """The newest entry that took a version's standing away, 0 where none did."""
        key, read = (program.name, program.version), self.read.get(program.name)
        back = [found[key].number for found in (self.failed, self.differed, self.retired) if key in found]
        if read is not None and read.fact.version != program.version:
            back.append(read.number)
        return max([self.changed.get(key, 0), *back])

    def traces(self, kitchen: Kitchen, program: Program) -> Traces:
        """What is known of one version."""
        key = program.name, program.version
        facts, proof, read = program_facts(kitchen, program), self.proofs.get(key), self.read.get(key[0])
        cards = [found[key] for found in self.printed if key in found]
        card = max(cards, key=lambda item: item.number, default=None)
        retired, newest = self.retired.get(key), kitchen.program(program.name)
        saved = self.saved.get(key)
        road = "read" if facts.evidence == EvidenceKind.PROBE else "calibrated"
        later = self.saved.get((newest.name, newest.version))
        return Traces(
            saved=_mark(saved) or Mark(),
            origin=(saved.fact.origin or "") if saved else "",
            ruled=facts.margin_k is not None,
            short=facts.short,
            again=kitchen.mark(program) is not None,
            proof=_mark(proof),
            proof_holds=bool(proof and proof.fact.holds),
            samples_count=proof.fact.samples_count if proof else 0,
            measured=road if facts.proven and not facts.short else "",
            probed=_mark(self.decided.get(key)),
            card=_mark(card),
            card_slot=_slot(card, self.slots),
            keyed=_mark(self.keyed.get(key), "who"),
            read=_mark(read, "read_by"),
            read_version=read.fact.version if read else 0,
            matches=bool(read and read.fact.matches and settings_read(kitchen, program, read.fact)),
            service=_mark(self.service.get(key), "who"),
            retired=_mark(retired, "who"),
            reason=retired.fact.reason if retired else "",
            undone_number=self._undone(program),
            version=program.version,
            newer=(_mark(later) or Mark()) if newest.version > program.version else None,
        )


def version_of(fact: Any) -> tuple[str, int] | None:
    """Name and version that a fact of a program speaks of."""
    return None if fact.version is None else (fact.name, fact.version)


def _failed(proof: ProgramProved) -> tuple[str, int] | None:
    return None if proof.holds else version_of(proof)


def _decided(probed: ProgramProbed) -> tuple[str, int] | None:
    return version_of(probed) if probed.outcome == "meets" else None


def _differed(read: ReadBackTaken) -> tuple[str, int] | None:
    return None if read.matches else version_of(read)


def _mark(item: Kept[Any] | None, who: str = "") -> Mark | None:
    if item is None:
        return None
    return Mark(
        number=item.number,
        at=item.happened_at,
        who=str(getattr(item.fact, who, "") or "") if who else item.author,
    )


def _slot(card: Kept[Any] | None, told: dict[str, int]) -> int:
    if card is None:
        return 0
    return int(getattr(card.fact, "slot", 0)) or told.get(card.fact.name, 1)


def approvals(store: Store, kitchen: Kitchen) -> dict[str, Approved]:
    """Who stands behind the newest version of each program, by name: who put it in service, else who saved it
    under a name; programs nobody did are left out.
    """
    trade = usual_trade(kitchen)
    served, saved = store.newest_by(ServiceBegun, version_of), store.newest_by(ProgramSaved, version_of)
    found = {}
    for name in {p.name for p in kitchen.programs}:
        key = name, kitchen.program(name).version
        item: Kept[Any] | None = served.get(key) or saved.get(key)
        by = served[key].fact.who if key in served else item.author if item else AUTHOR
        if item is None or by == AUTHOR:
            continue
        at = business_time(trade, item.happened_at)[0].isoformat()
        found[name] = Approved(by=by, at=at, in_service=key in served)
    return found


# ---------------------------------------------------------------- acts


def keep_card(store: Store, program: Program, slot: int) -> Kept[CardPrinted]:
    """Keep that the card of a program was printed for a slot."""
    fact = CardPrinted(name=program.name, version=program.version, fryer=program.fryer, slot=slot)
    return write(store, fact, versions={"program": str(program.version)})


def keep_cards(store: Store, kitchen: Kitchen, names: Iterable[str]) -> None:
    """Keep that the newest cards of programs were printed, each for the slot it has here."""
    found = [
        (kitchen.program(name), slot_of(store, kitchen, kitchen.program(name))) for name in sorted(names)
    ]
    with store.writing():
        for program, slot in found:
            keep_card(store, program, slot)


@in_turn
def tell_keyed(store: Store, kitchen: Kitchen, name: str, who: str) -> Kept[ProgramKeyed]:
    """Keep that the newest version of a program was keyed into its fryer. Raises InputError: no such program,
    no name, or no card of it: nothing is keyed from memory.
    """
    program, who = kitchen.program(name), by_name(who)
    life = life_of_program(store, kitchen, program)
    if _standing(life, Step.CARD).state is not State.DONE:
        raise InputError("card", "not printed", "printed first: a program is keyed from its card", where=name)
    fact = ProgramKeyed(
        name=program.name,
        version=program.version,
        fryer=program.fryer,
        slot=slot_of(store, kitchen, program),
        who=who,
    )
    return write(store, fact, versions={"program": str(program.version)})


@in_turn
def put_in_service(
    store: Store, kitchen: Kitchen, name: str, who: str, translate: Translate = str
) -> Kept[ServiceBegun]:
    """Decide that guests' food is cooked by the newest version of a program. Raises InputError: no such
    program, no name, or a step before that does not stand; the message names them all.
    """
    program, who = kitchen.program(name), by_name(who)
    life = life_of_program(store, kitchen, program)
    if life.missing:
        missing = "; ".join(translate(s.step) for s in life.missing)
        raise InputError(
            "program", "not ready", "put in service after: {missing}", where=name, missing=missing
        )
    proof, probed = _standing(life, Step.PROVEN), _standing(life, Step.PROBED)
    read = _standing(life, Step.READ_BACK)
    fact = ServiceBegun(
        name=program.name,
        version=program.version,
        fryer=program.fryer,
        who=who,
        proof_number=proof.mark.number if proof.mark else 0,
        readback_number=read.mark.number if read.mark else 0,
        evidence=probed.text,
    )
    return write(store, fact, versions={"program": str(program.version)})


@in_turn
def retire(store: Store, kitchen: Kitchen, name: str, who: str, reason: str) -> Kept[ProgramRetired]:
    """Take the newest version of a program out of use for good. Raises InputError: no such program, it is
    retired already, no name or no reason.
    """
    program, who = kitchen.program(name), by_name(who)
    reason = given_words(reason, wanted="a few words: why it is not used any more", where=name)
    if life_of_program(store, kitchen, program).end == "retired":
        raise InputError("program", "retired", "one that is in use", where=name)
    fact = ProgramRetired(
        name=program.name, version=program.version, fryer=program.fryer, who=who, reason=reason[:200]
    )
    return write(store, fact, versions={"program": str(program.version)})


def _standing(life: Life, step: Step) -> Standing:
    return next(s for s in life.steps if s.step is step)


# ---------------------------------------------------------------- views


def life_shown(kitchen: Kitchen, program: Program, life: Life, tr: Translate = str) -> LifeShown:
    """A life in people's words."""
    steps = tuple(_shown(kitchen, s, s is life.next, tr) for s in life.steps)
    ended = ""
    if life.end == "retired":
        values = {"reason": life.reason, "who": _who(life.ended), "when": _when(kitchen, life.ended)}
        ended = tr("Retired by {who} on {when}: {reason}").format(**values)
    elif life.end == "changed":
        ended = tr("A later version took its place.")
    return LifeShown(
        program=program.name,
        version=program.version,
        steps=steps,
        next=next((s for s in steps if s.next), None),
        serving=life.serving,
        end=life.end,
        ended=ended,
    )


def serving(store: Store, kitchen: Kitchen) -> frozenset[str]:
    """Names of the programs in service."""
    return frozenset(name for name, life in lives(store, kitchen).items() if life.serving)


def lives_shown(store: Store, kitchen: Kitchen, tr: Translate = str) -> dict[str, LifeShown]:
    """The lives of the newest versions in people's words, by name."""
    return {
        name: life_shown(kitchen, kitchen.program(name), life, tr)
        for name, life in lives(store, kitchen).items()
    }


def _shown(kitchen: Kitchen, standing: Standing, is_next: bool, tr: Translate) -> StepShown:
    return StepShown(
        key=standing.step.name.lower(),
        name=tr(standing.step),
        state=str(standing.state).replace(" ", "_"),
        state_word=tr(standing.state),
        text=say(standing.text, standing.values, kitchen.site.units, tr),
        who=tr(_who(standing.mark)) if standing.mark else "",
        when=_when(kitchen, standing.mark),
        act=standing.act,
        next=is_next,
    )


def _who(mark: Mark | None) -> str:
    return mark.who if mark else ""


def _when(kitchen: Kitchen, mark: Mark | None) -> str:
    if mark is None or mark.at is None:
        return ""
    return business_time(usual_trade(kitchen), mark.at)[0].isoformat()
