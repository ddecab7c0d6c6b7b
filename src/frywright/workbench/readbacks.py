"""A read-back as a program sends it: compared with the card and kept."""

from __future__ import annotations

from collections.abc import Sequence

from frywright.model.entry import Recorded
from frywright.model.kitchen import Kitchen
from frywright.records.store import Store
from frywright.workbench.book import record_readback
from frywright.workbench.cards import read_back
from frywright.workbench.clock import now


def tell_readback(store: Store, kitchen: Kitchen, name: str, slot: int, values: Sequence[str], people: tuple[str, str]) -> tuple[Recorded, bool]:  # fmt: skip
    """Keep what a machine really holds and say whether it is what the card says.

    Raises
    ------
    InputError
        An unknown program, more or fewer values than its card, or not two people.
    """
    program = kitchen.program(name)
    result = read_back(kitchen, program, slot, values)
    return record_readback(store, program, slot, result, people, now().isoformat()), result.matches
