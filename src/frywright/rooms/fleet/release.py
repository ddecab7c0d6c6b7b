"""A program released to many sites in waves, with a rule that stops it and the card to go back to."""

from __future__ import annotations

import datetime as dt
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from frywright.ledger.facts.cook import ProgramText, ReadBackTaken
from frywright.ledger.facts.fact import Kept
from frywright.ledger.facts.fleet import ProgramReleased, WaveTold
from frywright.ledger.facts.probing import Reading
from frywright.ledger.store import Store
from frywright.model.errors import InputError
from frywright.model.kitchen import Kitchen
from frywright.model.tongues import Translate
from frywright.rooms.cook.cards import card_data, card_pdf
from frywright.rooms.fleet.fleet import group_of
from frywright.rooms.hall import by_name, given_words, write
from frywright.rooms.kitchen import remembered_kitchen
from frywright.rooms.standing import slot_of
from frywright.trial.predicted import refuse_short

LEAST_READINGS = 10
"""Readings of a wave from which its share below the limit is judged (project's own rule)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Release:
    """A release as the office's store holds it."""

    opened: Kept[ProgramReleased]
    waves: tuple[Kept[WaveTold], ...]

    @property
    def told(self) -> ProgramReleased:
        """Program, waves of sites and the stop rule."""
        return self.opened.fact

    @property
    def started(self) -> int:
        """Waves begun so far."""
        return sum(w.fact.what == "started" for w in self.waves)

    @property
    def halted(self) -> bool:
        """Whether the stop rule tripped or somebody halted it."""
        return any(w.fact.what == "halted" for w in self.waves)


def waves_of(sites: Sequence[str]) -> tuple[tuple[str, ...], ...]:
    """The usual waves: one, two, a tenth, the rest (common practice of the trade, no source)."""
    left, found = tuple(sites), []
    for size in (1, 2, max(1, len(sites) // 10), len(sites)):
        if left:
            found.append(left[:size])
            left = left[size:]
    return tuple(found)


def open_release(
    store: Store, kitchen: Kitchen, name: str, sites: Sequence[str], who: str, most_below_frac: float = 0.02
) -> Kept[ProgramReleased]:
    """Release the newest version of a program to sites in waves. Raises InputError: an unknown program or one
    predicted short, no sites or one twice, no name, or a rule outside 0 to 20 %.
    """
    program = kitchen.program(name)
    refuse_short(kitchen, program)
    if not sites or len(set(sites)) != len(sites):
        raise InputError("sites", f"{len(sites)}", "one or more, each named once")
    who = by_name(who, "the name of the person who releases it")
    if not 0.0 <= most_below_frac <= 0.2:
        raise InputError("stop rule", most_below_frac, "0 to 0.2 of the readings below the limit")
    same = [
        row.number
        for row in releases(store)
        if (row.program, row.version, row.state) == (program.name, program.version, "open")
    ]
    if same:
        raise InputError(
            "program",
            program.name,
            "not in an open release already: {number} releases this version",
            number=same[0],
        )
    fact = ProgramReleased(
        program=program.name,
        version=program.version,
        text=ProgramText.of(program),
        waves=waves_of(sites),
        most_below_frac=most_below_frac,
        who=who,
    )
    return write(store, fact)


def release_of(store: Store, number: int) -> Release:
    """A release by its number. Raises InputError: no release has the number."""
    item = store.fact(number, ProgramReleased)
    if item is None:
        raise InputError("release", number, "the number of a release")
    return Release(
        opened=item, waves=tuple(w for w in store.facts(WaveTold) if w.fact.release_number == number)
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class ReleaseRow:
    """A release with how far it is."""

    number: int
    program: str
    version: int
    waves: int
    started: int
    state: str  # open, halted or every wave begun
    who: str


def releases(store: Store) -> list[ReleaseRow]:
    """Every release, newest first."""
    found = [release_of(store, item.number) for item in store.facts(ProgramReleased, newest_first=True)]
    return [
        ReleaseRow(
            number=r.opened.number,
            program=r.told.program,
            version=r.told.version,
            waves=len(r.told.waves),
            started=r.started,
            state=state_of(r),
            who=r.told.who,
        )
        for r in found
    ]


def state_of(release: Release) -> str:
    """Whether a release is halted, done or open."""
    if release.halted:
        return "halted"
    return "every wave begun" if release.started >= len(release.told.waves) else "open"


@dataclass(frozen=True, slots=True, kw_only=True)
class Results:
    """What the waves begun so far show; ``unknown`` sites are silent or hold another version."""

    readings: int
    below: int
    below_frac: float | None
    held: list[str]
    unknown: list[str]
    trips: bool  # whether the stop rule does


def results(release: Release, sites: Mapping[str, Store]) -> Results:
    """What the sites of the waves begun so far read back and probed since: readings, share below, who holds
    the version, who is silent.
    """
    told = release.told
    begun = {site: w.happened_at for w in release.waves if w.fact.what == "started" for site in w.fact.sites}
    count = below = 0
    held: list[str] = []
    silent: list[str] = []
    for site, since in begun.items():
        store = sites.get(site)
        if store is None:
            silent.append(site)
            continue
        read = [
            e.fact
            for e in store.facts_between(since, since + dt.timedelta(days=3650), Reading)
            if e.fact.product == told.text.product and e.fact.fryer == told.text.fryer
        ]
        count, below = count + len(read), below + sum(r.below for r in read)
        backs = (e.fact for e in store.facts(ReadBackTaken, newest_first=True))
        newest = next((back for back in backs if back.name == told.program), None)
        holds = newest is not None and newest.matches and newest.version == told.version
        (held if holds else silent).append(site)
    share = below / count if count else None
    trips = count >= LEAST_READINGS and share is not None and share > told.most_below_frac
    return Results(readings=count, below=below, below_frac=share, held=held, unknown=silent, trips=trips)


def next_wave(store: Store, number: int, sites: Mapping[str, Store], who: str) -> Kept[WaveTold]:
    """Begin the next wave; the stop rule is looked at first and halts the release by itself.
    Raises InputError: a halted release, no wave left, no name, or a wave before whose read-backs are not all
    in.
    """
    release = release_of(store, number)
    told = results(release, sites)
    if told.trips and not release.halted:
        halt(
            store, number, who or "the stop rule", f"{told.below} of {told.readings} readings below the limit"
        )
        release = release_of(store, number)
    if release.halted:
        raise InputError("release", number, "going on: this one is halted; print the card to go back to")
    if release.started >= len(release.told.waves):
        raise InputError("release", number, "one with a wave left")
    if told.unknown:
        raise InputError(
            "release",
            number,
            "read back by every site of the waves before: {sites}",
            sites=", ".join(told.unknown[:8]),
        )
    who = by_name(who, "the name of the person who lets it go on")
    wave = release.told.waves[release.started]
    _one_group(release, wave, sites)
    return write(store, WaveTold(release_number=number, what="started", sites=wave, who=who, reason=""))


def _one_group(release: Release, wave: Sequence[str], sites: Mapping[str, Store]) -> None:
    """A program is released within one group of sites; another altitude, fuel or voltage needs a program of
    its own.
    """
    begun = [site for w in release.waves for site in w.fact.sites]
    groups = {
        site: group_of(sites[site], remembered_kitchen(sites[site]))
        for site in (*begun, *wave)
        if site in sites
    }
    if len(set(groups.values())) > 1:
        first = next(iter(groups.values()))
        odd = ", ".join(f"{site} ({group})" for site, group in groups.items() if group != first)
        raise InputError(
            "sites",
            odd,
            "of the group {group}: carry the program over for others and release that",
            group=first,
        )


def halt(store: Store, number: int, who: str, reason: str) -> Kept[WaveTold]:
    """Stop a release; nothing starts it again, a new version is released instead. Raises InputError: an
    unknown release, or no reason.
    """
    release_of(store, number)
    reason = given_words(reason)
    return write(
        store,
        WaveTold(
            release_number=number, what="halted", sites=(), who=who.strip()[:80], reason=reason.strip()[:200]
        ),
    )


def rollback_card(store: Store, kitchen: Kitchen, number: int, language: str, tr: Translate = str) -> bytes:
    """The card of the version before, for every site of a halted release. Raises InputError: a release
    without a version before it.
    """
    told = release_of(store, number).told
    older = [p for p in kitchen.versions(told.program) if p.version < told.version]
    if not older:
        raise InputError("release", number, "one with a version before it to go back to")
    program = max(older, key=lambda p: p.version)
    return card_pdf(card_data(kitchen, program, slot_of(store, kitchen, program), language, tr))
