"""The parent of several processes of a server, its processes put aside: who is started, when it gives up, and
who ends first.
"""

from __future__ import annotations

from types import SimpleNamespace

import pytest

from frywright.model.errors import RecordError
from frywright.web import several


class Process:
    """One that lives, dies, or does not listen."""

    def __init__(self, number, told, deaf=False):
        self.number, self.told, self.deaf, self.exitcode, self.lives = number, told, deaf, None, True

    def is_alive(self):
        return self.lives

    def die(self, code=1):
        self.lives, self.exitcode = False, code

    def start(self):
        self.told.append(f"start {self.number}")

    def terminate(self):
        self.told.append(f"end {self.number}")
        self.lives = self.deaf

    def join(self, seconds=None):
        self.told.append(f"wait {self.number}" + (f" {seconds:g}" if seconds is not None else ""))

    def kill(self):
        self.told.append(f"kill {self.number}")
        self.lives = False


@pytest.fixture
def parent(monkeypatch):
    """A parent of three whose clock stands at ``at[0]``; it tells what it does."""
    told, made, at = [], {}, [100.0]

    def process(target, args, name):
        assert target is several._one and name == f"frywright {args[1]}"
        made[args[1]] = Process(args[1], told)
        return made[args[1]]

    monkeypatch.setattr(several, "get_context", lambda kind: SimpleNamespace(Process=process))
    monkeypatch.setattr(several.time, "monotonic", lambda: at[0])
    found = several._Parent(SimpleNamespace(count=3), run=None)
    for number in range(3):
        found._start(number)
    yield SimpleNamespace(parent=found, told=told, made=made, at=at)
    several.os.close(found._bell)
    several.os.close(found._ring)


def test_what_died_is_started_anew_and_nothing_else(parent):
    parent.at[0] = 200.0
    parent.made[1].die()
    parent.parent._mend()
    assert parent.told == ["start 0", "start 1", "start 2", "start 1"]
    parent.parent._mend()
    assert len(parent.told) == 4


def test_a_server_whose_processes_die_at_once_five_times_in_a_row_gives_up(parent):
    """4.9 s is at once, 5 s is not: one that lived as long begins the count anew."""
    for lived_s in (4.9, 4.9, 4.9, 4.9, 5.0, 0.0, 0.0, 0.0, 0.0):
        parent.at[0] += lived_s
        parent.made[2].die()
        parent.parent._mend()
    parent.made[2].die()
    with pytest.raises(RecordError, match="end as soon as they begin"):
        parent.parent._mend()


def test_readers_end_before_the_writer_and_a_deaf_one_is_killed(parent):
    """Each has fifteen seconds."""
    parent.told.clear()
    parent.made[2].deaf = True
    parent.parent._end()
    assert parent.told == [
        "end 1",
        "end 2",
        "wait 1 15",
        "wait 2 15",
        "kill 2",
        "wait 2",
        "end 0",
        "wait 0 15",
    ]
