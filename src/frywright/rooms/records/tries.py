"""Wrong tries at a password or a PIN, and how long the next one waits."""

from __future__ import annotations

import datetime as dt

from frywright.model.roles import folded

FREE_TRIES, FIRST_WAIT_S, LONGEST_WAIT_S = 5, 30.0, 900.0
"""Wrong tries before a wait, the first wait, and the longest; each further try doubles it (project's own
rules).
"""
FREE_ON_DEVICE, FREE_ANYWHERE = 20, 50
"""Wrong tries on one shared device, whoever is named, and for one name from everywhere, before they wait
(project's own rules).
"""
ANYWHERE = "anywhere"
"""Place that stands for all where a name never signed in: many addresses that share the guessing of one."""
MOST_KNOWN = 10_000
TOLD_EVERY = dt.timedelta(hours=1)


LOOKS = str.maketrans("авекмнорстухіјѕһӏԁԛԝαβεηικμνορτυχil1|0", "abekmhopctyxljshldqwabehlkmnoptyxllllo")
"""Letters of Cyrillic and Greek that look like Latin ones, small or large, and of Latin that look like each
other (own list, by eye).
"""


def looks(name: str) -> str:
    """What two names that look the same have in common."""
    return folded(name).translate(LOOKS)


class Tries:
    """Wrong tries by account and by where they come from, so that a stranger's guesses lock nobody out
    elsewhere. A name is counted as people read it; one that is empty stands for everybody on a device.
    """

    def __init__(self) -> None:
        self._wrong: dict[tuple[str, str], tuple[int, dt.datetime]] = {}
        self._known: dict[tuple[str, str], None] = {}
        self._told: dict[str, dt.datetime] = {}

    def wait_s(self, name: str, place: str, moment: dt.datetime) -> float:
        """Seconds to wait before the next try."""
        count, last = self._wrong.get((folded(name), place), (0, moment))
        free = FREE_ANYWHERE if place == ANYWHERE else FREE_TRIES if name else FREE_ON_DEVICE
        if count < free:
            return 0.0
        wait = min(LONGEST_WAIT_S, FIRST_WAIT_S * 2.0 ** min(count - free, 20))
        return max(0.0, wait - (moment - last).total_seconds())

    def to_tell(self, name: str, moment: dt.datetime) -> bool:
        """Whether wrong tries at an account's name are put on record now: once an hour, so that a flood of
        them fills no store.
        """
        last = self._told.get(name)
        if last is not None and moment - last < TOLD_EVERY:
            return False
        self._told[name] = moment
        return True

    def count(self, name: str, place: str) -> int:
        """Wrong tries of a name at a place."""
        return self._wrong.get((folded(name), place), (0, None))[0]

    def wrong(self, name: str, place: str, moment: dt.datetime) -> None:
        """Count a wrong try; old ones of others are forgotten so that memory stays bounded."""
        key = folded(name), place
        count, _ = self._wrong.get(key, (0, moment))
        self._wrong[key] = (count + 1, moment)
        if len(self._wrong) > 10_000:
            old = sorted(self._wrong, key=lambda k: self._wrong[k][1])[:5000]
            for key in old:
                del self._wrong[key]

    def right(self, name: str, place: str) -> None:
        """Forget the wrong tries of a name at a place; what others guess elsewhere no longer holds it up
        here.
        """
        self._wrong.pop((folded(name), place), None)
        self._known[folded(name), place] = None
        if len(self._known) > MOST_KNOWN:
            del self._known[next(iter(self._known))]

    def counted(self, name: str, place: str, device: bool) -> list[tuple[str, str]]:
        """As what a try counts: the name there, everybody on a shared device, the name everywhere."""
        if device:
            return [(name, place), ("", place)]
        known = (folded(name), place) in self._known
        return [(name, place)] if known else [(name, place), (name, ANYWHERE)]
