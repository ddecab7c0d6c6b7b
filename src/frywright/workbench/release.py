"""A program released to many sites in waves, with a rule that stops it and the card to go back to."""

from __future__ import annotations

import datetime as dt
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from frywright.ledger.facts.probing import Reading
from frywright.ledger.store import Store
from frywright.model.entry import Recorded
from frywright.model.errors import InputError
from frywright.model.kitchen import Kitchen
from frywright.workbench.book import program_payload, record, remembered_kitchen
from frywright.workbench.cards import card_pdf
from frywright.workbench.facts import refuse_short
from frywright.workbench.fleet import group_of
from frywright.workbench.slots import slot_of

RELEASE, WAVE = "release", "release_wave"
LEAST_READINGS = 10
"""Readings of a wave from which its share below the limit is judged (project's own rule)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Release:
    """A release as the office's store holds it."""

    opened: Recorded
    waves: tuple[Recorded, ...]

    @property
    def facts(self) -> Mapping[str, Any]:
        """Program, waves of sites and the stop rule."""
        return self.opened.entry.payload

    @property
    def started(self) -> int:
        """Waves begun so far."""
        return sum(w.entry.payload["what"] == "started" for w in self.waves)

    @property
    def halted(self) -> bool:
        """Whether the stop rule tripped or somebody halted it."""
        return any(w.entry.payload["what"] == "halted" for w in self.waves)


def waves_of(sites: Sequence[str]) -> list[list[str]]:
    """The usual waves: one, two, a tenth, the rest (common practice of the trade, no source)."""
    left, found = list(sites), []
    for size in (1, 2, max(1, len(sites) // 10), len(sites)):
        if left:
            found.append(left[:size])
            left = left[size:]
    return found


def open_release(
    store: Store, kitchen: Kitchen, name: str, sites: Sequence[str], who: str, most_below_frac: float = 0.02
) -> Recorded:
    """Release the newest version of a program to sites in waves.

    Raises
    ------
    InputError
        An unknown program or one predicted short, no sites or one twice, no name, or a rule outside 0 to 20
        %.
    """
    program = kitchen.program(name)
    refuse_short(kitchen, program)
    if not sites or len(set(sites)) != len(sites):
        raise InputError("sites", f"{len(sites)}", "one or more, each named once")
    if len(who.strip()) < 2:
        raise InputError("who", repr(who), "the name of the person who releases it")
    if not 0.0 <= most_below_frac <= 0.2:
        raise InputError("stop rule", most_below_frac, "0 to 0.2 of the readings below the limit")
    payload = {
        "program": program.name,
        "version": program.version,
        "payload": program_payload(program),
        "waves": waves_of(sites),
        "most_below_frac": most_below_frac,
        "who": who.strip()[:80],
    }
    return record(store, RELEASE, payload)


def release_of(store: Store, number: int) -> Release:
    """A release by its number.

    Raises
    ------
    InputError
        No release has the number.
    """
    item = store.entry(number)
    if item is None or item.entry.kind != RELEASE:
        raise InputError("release", number, "the number of a release")
    return Release(
        opened=item,
        waves=tuple(e for e in store.entries(WAVE) if e.entry.payload["release_number"] == number),
    )


def results(release: Release, sites: Mapping[str, Store]) -> dict[str, Any]:
    """What the sites of the waves begun so far read back and probed since: readings, share below, who holds
    the version, who is silent.
    """
    begun = {
        site: w.entry
        for w in release.waves
        if w.entry.payload["what"] == "started"
        for site in w.entry.payload["sites"]
    }
    count = below = 0
    held: list[str] = []
    silent: list[str] = []
    product, fryer = release.facts["payload"]["product"], release.facts["payload"]["fryer"]
    for site, entry in begun.items():
        store = sites.get(site)
        if store is None:
            silent.append(site)
            continue
        since, until = entry.happened_at, entry.happened_at + dt.timedelta(days=3650)
        read = [
            e.fact
            for e in store.facts_between(since, until, Reading)
            if e.fact.product == product and e.fact.fryer == fryer
        ]
        count, below = count + len(read), below + sum(r.core_c < r.limit_c for r in read)
        backs = [
            e.entry.payload
            for e in store.entries("readback", newest_first=True)
            if e.entry.payload["name"] == release.facts["program"]
        ]
        (
            held
            if backs and backs[0]["matches"] and backs[0]["version"] == release.facts["version"]
            else silent
        ).append(site)
    share = below / count if count else None
    trips = count >= LEAST_READINGS and share is not None and share > release.facts["most_below_frac"]
    return {
        "readings": count,
        "below": below,
        "below_frac": share,
        "held": held,
        "unknown": silent,
        "trips": trips,
    }


def next_wave(store: Store, number: int, sites: Mapping[str, Store], who: str) -> Recorded:
    """Begin the next wave; the stop rule is looked at first and halts the release by itself.

    Raises
    ------
    InputError
        A halted release, no wave left, no name, or a wave before whose read-backs are not all in.
    """
    release = release_of(store, number)
    told = results(release, sites)
    if told["trips"] and not release.halted:
        halt(
            store,
            number,
            who or "the stop rule",
            f"{told['below']} of {told['readings']} readings below the limit",
        )
        release = release_of(store, number)
    if release.halted:
        raise InputError("release", number, "going on: this one is halted; print the card to go back to")
    if release.started >= len(release.facts["waves"]):
        raise InputError("release", number, "one with a wave left")
    if told["unknown"]:
        raise InputError(
            "release",
            number,
            "read back by every site of the waves before: {sites}",
            values={"sites": ", ".join(told["unknown"][:8])},
        )
    if len(who.strip()) < 2:
        raise InputError("who", repr(who), "the name of the person who lets it go on")
    wave = release.facts["waves"][release.started]
    _one_group(release, wave, sites)
    return record(
        store,
        WAVE,
        {"release_number": number, "what": "started", "sites": wave, "who": who.strip()[:80], "reason": ""},
    )


def _one_group(release: Release, wave: Sequence[str], sites: Mapping[str, Store]) -> None:
    """A program is released within one group of sites; another altitude, fuel or voltage needs a program of
    its own.
    """
    begun = [site for w in release.waves for site in w.entry.payload["sites"]]
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
            values={"group": first},
        )


def halt(store: Store, number: int, who: str, reason: str) -> Recorded:
    """Stop a release; nothing starts it again, a new version is released instead.

    Raises
    ------
    InputError
        An unknown release, or no reason.
    """
    release_of(store, number)
    if len(reason.strip()) < 4:
        raise InputError("reason", repr(reason), "why, in words")
    return record(
        store,
        WAVE,
        {
            "release_number": number,
            "what": "halted",
            "sites": [],
            "who": who.strip()[:80],
            "reason": reason.strip()[:200],
        },
    )


def rollback_card(
    store: Store, kitchen: Kitchen, number: int, language: str, tr: Callable[[str], str] = str
) -> bytes:
    """The card of the version before, for every site of a halted release.

    Raises
    ------
    InputError
        A release without a version before it.
    """
    facts = release_of(store, number).facts
    older = [p for p in kitchen.programs if p.name == facts["program"] and p.version < facts["version"]]
    if not older:
        raise InputError("release", number, "one with a version before it to go back to")
    program = max(older, key=lambda p: p.version)
    return card_pdf(kitchen, program, slot_of(store, kitchen, program), language, tr)
