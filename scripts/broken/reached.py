"""Keeps, for every test of one run, which marked places it reached, whether it passed and how long it took.

As a module it is called from the marked places, also in processes a test starts; as a pytest plugin
(``-p reached``) it writes one line a test to the file of FRYWRIGHT_REACHED.
"""

import json
import os
from pathlib import Path

import pytest

_seen: set[str] = set()


def reached(place: str) -> None:
    """Note that a marked place was passed; once a test and process."""
    if place in _seen:
        return
    _seen.add(place)
    if "FRYWRIGHT_PLACES" in os.environ:
        with open(os.environ["FRYWRIGHT_PLACES"], "a", encoding="utf-8") as file:
            file.write(place + "\n")


def pytest_configure() -> None:
    os.environ["FRYWRIGHT_PLACES"] = f"{os.environ['FRYWRIGHT_REACHED']}.{os.getpid()}"


def _take() -> list[str]:
    """What was reached since the last call; the slate is clean afterwards."""
    path = Path(os.environ["FRYWRIGHT_PLACES"])
    places = path.read_text("utf-8").split("\n") if path.exists() else []
    path.unlink(missing_ok=True)
    _seen.clear()
    return sorted({p for p in places if p})


def _write(test: str, passed: bool, seconds: float, marked: list[str]) -> None:
    line = {"test": test, "passed": passed, "seconds": seconds, "reached": marked}
    with open(os.environ["FRYWRIGHT_REACHED"], "a", encoding="utf-8") as file:
        file.write(json.dumps(line) + "\n")


def pytest_collection_finish() -> None:
    """What was reached while modules loaded: a line without a test's name."""
    _write("", False, 0.0, [f"load {place}" for place in sorted(_seen | set(_take()))])


@pytest.hookimpl(hookwrapper=True)
def pytest_runtest_protocol(item, nextitem):
    item.marked, item.passed, item.seconds = [], True, 0.0
    yield
    _write(item.nodeid, item.passed, item.seconds, item.marked)


@pytest.hookimpl(hookwrapper=True)
def pytest_runtest_makereport(item, call):
    outcome = yield
    found = outcome.get_result()
    item.passed = item.passed and not found.failed
    item.seconds += call.duration
    for place in _take():
        item.marked.append(f"{call.when} {place}")
