"""Tamperings drawn at random over entries, tails, times, files and accounts of a store: each is tried on a
copy, then verify and the anchors that were kept elsewhere look at it. Clean stores are looked at as well.

python -m benchmarks.tampering [--draws 1000] [--seed 1]

What the threat model (SECURITY.md) says is found must be found, no clean store may be accused, and what it
says nobody can find is drawn too and counted apart.
"""

from __future__ import annotations

import argparse
import datetime as dt
import random
import shutil
import tempfile
from collections import Counter
from dataclasses import dataclass, field
from pathlib import Path

from argon2 import PasswordHasher

from benchmarks.tampered import Copy, Home, accused, make, reading
from benchmarks.tamperings import FOUND, UNSEEN, Change
from frywright.ledger.backup import backup, restore
from frywright.ledger.store import Store
from frywright.rooms.clock import now, played
from frywright.rooms.hall import write
from frywright.rooms.records import people


@dataclass
class Drawn:
    """What came of the draws, by kind."""

    tried: Counter[str] = field(default_factory=Counter)
    missed: list[str] = field(default_factory=list)
    unseen_tried: int = 0
    unseen_found: int = 0
    clean_count: int = 0
    accused: list[str] = field(default_factory=list)


def tampered(home: Home, change: Change, rng: random.Random, folder: Path) -> str:
    """What is said against a copy after somebody had a go at it."""
    copy = Copy(home, folder / "c.db", list(home.anchors))
    shutil.copy(home.path, copy.path)
    shutil.copytree(f"{home.path}.files", f"{copy.path}.files")
    change(copy, rng)
    found = accused(copy.path, copy.anchors, home.end)
    for path in folder.iterdir():
        shutil.rmtree(path) if path.is_dir() else path.unlink()
    return found


def clean(home: Home, folder: Path, drawn: Drawn) -> None:
    """A clean store as it is, used on, and brought back from its backup."""
    new = folder / "restored.db"
    backup(Store.file(home.path, now), folder / "b.zip")
    restore(folder / "b.zip", Store.file(new, now))
    with played(home.end + dt.timedelta(minutes=1)):
        write(Store.file(new, now), reading(80.0))
    for path in (home.path, new):
        drawn.clean_count += 1
        if said := accused(path, home.anchors, home.end + dt.timedelta(minutes=2)):
            drawn.accused.append(said)
    shutil.rmtree(f"{new}.files")
    for path in (new, folder / "b.zip"):
        path.unlink()


def draw(count: int, seed: int = 1) -> Drawn:
    """So many tamperings, each kind in turn, on a new store every fifty."""
    rng, drawn, home = random.Random(seed), Drawn(), None
    hasher = people._HASHER
    people._HASHER = PasswordHasher(
        time_cost=1, memory_cost=8, parallelism=1
    )  # how hard they are is not tried
    people._nobody.cache_clear()
    try:
        with tempfile.TemporaryDirectory() as place:
            work = Path(place) / "work"
            work.mkdir()
            for n in range(count):
                if home is None or n % 50 == 0:
                    home = make(Path(place) / f"home{n}", rng)
                    clean(home, work, drawn)
                change = FOUND[n % len(FOUND)]
                drawn.tried[change.__name__] += 1
                if not tampered(home, change, rng, work):
                    drawn.missed.append(f"{n}: {change.__name__}")
                if n % 10 == 0:
                    drawn.unseen_tried += 1
                    other = UNSEEN[n // 10 % len(UNSEEN)]
                    drawn.unseen_found += bool(tampered(home, other, rng, work))
    finally:
        people._HASHER = hasher
        people._nobody.cache_clear()
    return drawn


def main() -> None:
    """Draw, and say what came of it."""
    parser = argparse.ArgumentParser()
    parser.add_argument("--draws", type=int, default=1000)
    parser.add_argument("--seed", type=int, default=1)
    asked = parser.parse_args()
    drawn = draw(asked.draws, asked.seed)
    for kind, count in sorted(drawn.tried.items()):
        missed = sum(text.endswith(f": {kind}") for text in drawn.missed)
        print(f"{kind}: {count - missed} of {count} found")
    print(
        f"{asked.draws - len(drawn.missed)} of {asked.draws} tamperings found that must be;"
        f" {len(drawn.accused)} of {drawn.clean_count} clean stores accused; of {drawn.unseen_tried} that"
        f" nobody can see by the threat model {drawn.unseen_found} were seen"
    )
    if drawn.missed or drawn.accused:
        raise SystemExit(f"missed: {drawn.missed}; accused: {drawn.accused}")


if __name__ == "__main__":
    main()
