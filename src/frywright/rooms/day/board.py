"""The live board: what happened today as entries, what to drop now, timers, shelf, and a new plan when the
day changes.

Every tap is one entry with an id given where it was tapped, so that a tablet which lost the server can send
it again and it is kept once. A practice day has invented guests and its own kind of entries; it is never
evidence.
"""

from __future__ import annotations

import datetime as dt
from bisect import insort
from collections.abc import Collection, Mapping
from dataclasses import asdict, dataclass, field, replace
from itertools import takewhile
from typing import Any, NamedTuple

import numpy as np

from frywright.ledger.facts.day import UNDO, BoardTap, PracticeTap, standing
from frywright.ledger.facts.fact import Kept
from frywright.ledger.store import Store
from frywright.model.business_day import moment_of
from frywright.model.errors import InputError, one_of
from frywright.model.kitchen import Kitchen
from frywright.model.trade import MOST_HANDS
from frywright.plan.advice import Advice, Outlook, expected_path, outlook
from frywright.plan.explain import Waste, explain, total
from frywright.plan.live import Happening, Played, State, What, played_on, state_of, until, when
from frywright.plan.model import Day
from frywright.rooms.clock import AHEAD, now
from frywright.rooms.day.advised import advised
from frywright.rooms.day.day import Bench
from frywright.rooms.day.lifting import lifts_of
from frywright.rooms.day.practice import guests
from frywright.rooms.day.twice import take_back, thrown_after, twin_of
from frywright.rooms.hall import write
from frywright.rooms.standing import heat_off, stopped

PEOPLE = "people"
"""What a tap says of the people on the line; the plan's own happenings do not know it."""
AMOUNTS = (What.SOLD, What.COUNT, What.DISCARD)
"""What is nothing without an amount."""
REASONS = ("expired", "close", "dropped on the floor", "burnt", "wrong product", "undercooked", "other")


@dataclass(frozen=True, slots=True, kw_only=True)
class Tap:
    """One thing told at the board. ``key`` makes it unique; ``at_s`` is the time of the business day."""

    key: str
    what: str
    at_s: float
    fryer: str = ""
    product: str = ""
    pieces_count: int = 0
    reason: str = ""
    who: str = ""
    undoes: str = ""
    """Key of the tap that this one takes back."""


class Told(NamedTuple):
    """Everything told of a day up to an entry, and what of it stands, oldest first."""

    date: dt.date
    up_to: int
    entries: list[Kept[BoardTap]]
    taps: list[Kept[BoardTap]]


@dataclass(slots=True)
class Followed:
    """What was read of a day's taps and the day as it was played, so that the next look reads and plays only
    what is new. Every value here is replaced whole, never changed: several may look at once.
    """

    told: Told | None = None
    meant: tuple[Bench, list[Kept[BoardTap]], list[Happening]] | None = None
    """What taps say to a bench, in order of time."""
    played: tuple[Day, Played] | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Board:
    """A day's board over its bench; ``practice`` is the seed of a practice day or None."""

    store: Store
    kitchen: Kitchen
    bench: Bench
    practice: int | None = None
    serving: Collection[str] | None = None
    """Programs in service; None where nobody asks, as on a practice day."""
    followed: Followed | None = field(default=None, compare=False, repr=False)
    """Shared by all who ask for the same board."""

    def serves(self, program: str) -> bool:
        """Whether the board may advise a program."""
        return self.serving is None or self.practice is not None or program in self.serving

    @property
    def told_as(self) -> type[BoardTap]:
        """The fact its taps become."""
        return BoardTap if self.practice is None else PracticeTap

    # ------------------------------------------------------------ entries

    def entries(self) -> list[Kept[BoardTap]]:
        """Everything told today, oldest first: also what was taken back, and that it was."""
        return self._told().entries

    def taps(self) -> list[Kept[BoardTap]]:
        """Today's entries that stand, oldest first."""
        return self._told().taps

    def _told(self) -> Told:
        date, newest = self.bench.date, self.store.newest(self.told_as.KIND)
        followed = None if self.store.has_unkept() else self.followed
        known = followed.told if followed else None
        if known is None or known.date != date or known.up_to > newest:
            entries = [e for e in self._read() if e.number <= newest]
        elif known.up_to < newest:
            new = takewhile(lambda e: e.number <= newest, self.store.facts(self.told_as, after=known.up_to))
            entries = known.entries + [e for e in new if self._today(e.fact)]
        else:
            return known
        found = Told(date, newest, entries, standing(entries))
        if followed is not None:
            followed.told = found
        return found

    def _today(self, fact: BoardTap) -> bool:
        return fact.date == self.bench.date and fact.practice_count == self.practice

    def _read(self) -> list[Kept[BoardTap]]:
        found = []
        for item in self.store.facts(self.told_as, newest_first=True):
            if self._today(item.fact):
                found.append(item)
            elif item.fact.date < self.bench.date - dt.timedelta(days=2):
                break
        return found[::-1]

    def knows_drops(self) -> bool:
        """Whether the day has a load for everything that was dropped."""
        known = {(load.product, load.fryer) for loads in self.bench.loads for load in loads}
        drops = (item.fact for item in self.taps() if item.fact.what == What.DROP)
        return all((drop.product, drop.fryer) in known for drop in drops)

    def tell(self, tap: Tap) -> tuple[Kept[BoardTap], bool]:
        """Keep a tap once; the entry, and whether it is new. One that another tablet told already is that
        one's. Raises InputError: a fryer, product, load or time that the day does not have; a tap that cannot
        be taken back. Raises LiftAskedError: a lift that came early or late, and nothing is said of it.
        """
        self._check(tap)
        with self.store.writing():
            same = next((item for item in self.entries() if item.fact.key == tap.key), None)
            if same is not None and not _again(same.fact, tap):
                raise InputError("key", repr(tap.key), "one that no other tap of the day has")
            known = same or twin_of(self, tap)
            if known is not None:
                if (thrown := thrown_after(self, tap, known)) is not None:
                    self.keep(thrown)
                return known, False
            if tap.what == UNDO:
                return take_back(self, tap), True
            taps = lifts_of(self, tap) if tap.what == What.LIFT else [tap]
            kept = [self.keep(one) for one in taps]
            return kept[0], True

    def keep(self, tap: Tap, replaces: int | None = None) -> Kept[BoardTap]:
        """Write a tap that was checked."""
        told = {name: value for name, value in asdict(tap).items() if name != "undoes"}
        fact = self.told_as(**told, date=self.bench.date, practice_count=self.practice)
        return write(self.store, fact, self._moment(tap.at_s), replaces=replaces)

    def _moment(self, at_s: float) -> dt.datetime:
        """The moment of a time of this business day."""
        return moment_of(self.bench.trade, self.bench.date, at_s)

    def _check(self, tap: Tap) -> None:
        if not tap.key or len(tap.key) > 80:
            raise InputError("key", repr(tap.key), "a text of up to 80 letters that no other tap has")
        one_of([*What, UNDO, PEOPLE], tap.what, "what")
        if not 0 <= tap.at_s <= 2 * 86400.0:
            raise InputError("at", tap.at_s, "a time of the business day")
        if self.practice is None and self._moment(tap.at_s) > now() + AHEAD:
            raise InputError("at", tap.at_s, "a time that has come")
        if not 0 <= tap.pieces_count <= 10_000:
            raise InputError("pieces", tap.pieces_count, "0 to 10,000")
        if tap.what == PEOPLE and not 1 <= tap.pieces_count <= MOST_HANDS:
            raise InputError("people", tap.pieces_count, "1 to {most}", most=MOST_HANDS)
        if tap.what in (UNDO, PEOPLE):
            return
        if tap.what == What.DROP:
            self._check_amount(tap)
        if tap.what in (What.SOLD, What.DISCARD) and not tap.pieces_count:
            raise InputError("pieces", 0, "1 or more")
        _ = self._fact(tap.what, tap.at_s, tap.fryer, tap.product, (tap.pieces_count, tap.reason, 0))

    def _check_amount(self, tap: Tap) -> None:
        """A drop of no piece, or of more than the fryer's largest load, is none."""
        bench = self.bench
        i = bench.products.index(tap.product) if tap.product in bench.products else -1
        sizes = [x.pieces_count for x in bench.loads[i] if x.fryer == tap.fryer] if i >= 0 else []
        if sizes and not 1 <= tap.pieces_count <= max(sizes):
            raise InputError(
                "pieces",
                tap.pieces_count,
                "1 to {most}, the largest load of this fryer",
                where=self.kitchen.fryer(tap.fryer).name,
                most=max(sizes),
            )

    def _fact(
        self, what: str, at_s: float, fryer: str, product: str, rest: tuple[int, str, int]
    ) -> Happening:
        bench, (pieces, reason, number) = self.bench, rest
        f = bench.fryers.index(fryer) if fryer in bench.fryers else -1
        i = bench.products.index(product) if product in bench.products else -1
        if what in (What.DROP, What.LIFT, What.FILTER, What.DOWN, What.UP):
            one_of(bench.fryers, fryer, "fryer")
        if what in (What.DROP, What.SOLD, What.COUNT, What.DISCARD, What.OUT, What.IN):
            one_of(bench.products, product, "product")
        load = -1
        if what == What.DROP:
            sizes = [
                (abs(x.pieces_count - pieces), n) for n, x in enumerate(bench.loads[i]) if x.fryer == fryer
            ]
            if not sizes:
                raise InputError("product", repr(product), "one with a program for {fryer}", fryer=fryer)
            load = min(sizes)[1]
        units = float(pieces) if what != What.UP else bench.trade.warm_up_s / bench.trade.slot_s
        at = (at_s - bench.trade.start_s) / bench.trade.slot_s
        return Happening(
            what=What(what),
            at_n=at,
            fryer=f,
            item=i,
            load=load,
            units_n=units,
            reason=reason,
            entry_number=number,
        )

    # ------------------------------------------------------------ state

    def state(self, now_s: float) -> State:
        """The day at a time of the business day."""
        now = (now_s - self.bench.trade.start_s) / self.bench.trade.slot_s
        return self._held(self._played(self._happened(), now))

    def _happened(self) -> list[Happening]:
        """What the taps that stand say to the plan, in order of time."""
        taps, followed = self.taps(), self.followed
        before, happened = followed.meant if followed else None, list[Happening]()
        known = 0
        if before is not None and before[0] is self.bench and taps[: len(before[1])] == before[1]:
            known, happened = len(before[1]), list(before[2])
        for item in taps[known:]:
            tap, rest = item.fact, (item.fact.pieces_count, item.fact.reason, item.number)
            if tap.what != PEOPLE:
                insort(happened, self._fact(tap.what, tap.at_s, tap.fryer, tap.product, rest), key=when)
        if followed is not None:
            followed.meant = self.bench, taps, happened
        return happened

    def _held(self, state: State) -> State:
        """Fryers in stop-use are down whatever the board was told, and those whose heat is signed off for the
        night; only a qualified person's release takes the first back.
        """
        if self.practice is not None:
            return state
        for key in {*stopped(self.store), *heat_off(self.store, self.bench.date)}:
            if key in self.bench.fryers:
                state.down[self.bench.fryers.index(key)] = state.now_n
        return state

    def _played(self, facts: list[Happening], now: float) -> State:
        day, followed = self.bench.day, self.followed
        if self.practice is not None:
            return state_of(day, facts, now, guests(day, self.practice))
        if not any(fact.what is What.SOLD for fact in facts):
            return state_of(day, facts, now, expected_path(day), told=False)
        before = followed.played if followed else None
        played = played_on(day, until(facts, now), before[1] if before and before[0] is day else None)
        if followed is not None:
            followed.played = day, played
        return replace(played.state.copy(), now_n=now)

    def people(self, state: State) -> int:
        """How many work the line: as told last, else as the kitchen says."""
        trade = self.bench.trade
        now_s = trade.start_s + state.now_n * trade.slot_s + 1e-6
        told = (e.fact for e in self.taps()[::-1] if e.fact.what == PEOPLE and e.fact.at_s <= now_s)
        last = next(told, None)
        return last.pieces_count if last else trade.hands_count

    def _day(self, state: State) -> Day:
        """The day with the people who are there."""
        return replace(self.bench.day, hands_count=self.people(state))

    def advice(self, state: State) -> list[Advice]:
        """What to do now in every idle fryer."""
        return advised(self.bench, state, self._day(state), self.practice)

    def rest_of_day(self, state: State, paths: int = 100) -> Outlook:
        """The plan from now on."""
        return outlook(self._day(state), state, self.bench.par, paths=paths)

    def waste(self, state: State, planned: Outlook | None = None) -> tuple[list[Waste], dict[str, float]]:
        """What was thrown away, by tray and by cause."""
        found = explain(self.bench.day, state, planned.plan.drops if planned else (), self.bench.mix_n)
        return found, total(found)


def _again(told: BoardTap, tap: Tap) -> bool:
    """Whether a tap is one that was told before and is sent again."""
    pairs = ((told.fryer, tap.fryer), (told.product, tap.product))
    return told.what == tap.what and all(not (a and b) or a == b for a, b in pairs)


def tap_of(values: Mapping[str, Any]) -> Tap:
    """A tap from a form or JSON; InputError names what cannot be read."""

    def number(name: str, default: str = "0") -> float:
        text = str(values.get(name, default) or default)
        try:
            found = float(text)
        except ValueError as error:
            raise InputError(name, repr(text), "a number") from error
        if not np.isfinite(found):
            raise InputError(name, repr(text), "a number")
        return found

    words = {
        name: str(values.get(name, "") or "")[:120]
        for name in ("key", "what", "fryer", "product", "reason", "who", "undoes")
    }
    if words["what"] in AMOUNTS and values.get("pieces", "") in (None, ""):
        raise InputError("pieces", "missing", "a whole number")
    pieces = number("pieces")
    if pieces != int(pieces):
        raise InputError("pieces", repr(str(values["pieces"])[:20]), "a whole number")
    return Tap(at_s=number("at_s", "-1"), pieces_count=int(pieces), **words)
