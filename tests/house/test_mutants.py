"""Whether ``make mutants`` says the truth of changes whose fate is known."""

from __future__ import annotations

import json
import subprocess
import sys
from argparse import Namespace
from importlib import import_module
from pathlib import Path

import pytest

ROOT = Path(__file__).parent.parent.parent
OIL = "tests/oil/test_oil.py::test_"
NEAR, FAR = f"{OIL}days_to_the_limit[0.0-8.0]", f"{OIL}the_bill_by_hand"
HEAT = f"{OIL}published_discard_times_fall_with_temperature"
BY_DAY, LOADED = "return (limit - level) / growth", "EA_J_MOL, GAS_J_MOLK = 33e3"
CHANGES = [
    (BY_DAY, "return (limit + level) / growth", NEAR, "killed"),
    (BY_DAY, "return (limit + level) / growth", FAR, "survived"),
    (BY_DAY, "return (limit - level) * 1.0 / growth", NEAR, "survived"),
    (LOADED, "EA_J_MOL, GAS_J_MOLK = 66e3", HEAT, "killed"),
    (LOADED, "EA_J_MOL, GAS_J_MOLK = nothing", FAR, "killed"),
    (BY_DAY, "import ctypes; ctypes.string_at(0)", NEAR, "killed"),
    (BY_DAY, "while True: pass", NEAR, "no answer"),
]
"""What stands in the module of the oil's age, what instead, the test that runs, and what comes of it."""
ASKED = """
import json, sys
from argparse import Namespace
from pathlib import Path
from breaking import ROOT, Function, Mutant
from mutants import Test, outcomes

path = Path("frywright/oil/ageing.py")
place = Function(path=path, name="days_to", first_line=1, last_line=99)
whole, drawn, tests = (ROOT / "src" / path).read_text("utf-8"), [], []
for old, new, test, _ in json.loads(sys.stdin.read()):
    assert whole.count(old) == 1, old
    inner = Function(path=path, name=f"{len(drawn)}", first_line=1, last_line=99)
    near = frozenset({inner.place})
    tests.append(Test(name=test, passed=True, seconds=1.0, reached=near, set_up=frozenset()))
    drawn.append(Mutant(function=place, text=whole.replace(old, new), change=new, line=1, inner=inner))
asked = Namespace(budget=40.0, seconds=500.0, processor=20, workers=2)
print(json.dumps([o.state for o in outcomes(drawn, tests, asked)]))
"""


@pytest.mark.slow(40)
def test_changes_whose_fate_is_known():
    """A day's sum turned is killed where a test works it out, and survives where none does, as does the same
    sum otherwise; a constant and a mistake act while the module loads. What breaks the process down is
    killed; a loop without end has no answer.
    """
    done = subprocess.run(
        [sys.executable, "-c", ASKED],
        cwd=ROOT / "scripts",
        input=json.dumps(CHANGES),
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 0, done.stderr
    assert json.loads(done.stdout) == [state for *_, state in CHANGES]


@pytest.fixture
def mutants(monkeypatch):
    monkeypatch.syspath_prepend(ROOT / "scripts")
    yield import_module("mutants")
    for name in ("mutants", "breaking"):
        sys.modules.pop(name)


def ran(mutants, monkeypatch, failing: dict[str, str]):
    """One change against tests a, b and c of 1, 2 and 3 s, of which these fail broken and unbroken."""
    function = mutants.Function(path=Path("frywright/x.py"), name="f", first_line=1, last_line=3)
    broken = mutants.Mutant(function=function, text="", change="", line=1, inner=function)
    near = {"reached": frozenset({function.place}), "set_up": frozenset()}
    tests = [
        mutants.Test(name=f"{name}.py::t", passed=True, seconds=s, **near) for s, name in enumerate("abc", 1)
    ]

    def first(texts, names, asked):
        return next((n for n in names if n[0] in failing["broken" if texts else "unbroken"]), "")

    monkeypatch.setattr(mutants, "first_failed", first)
    return mutants.run(broken, tests, Namespace(budget=40.0))


@pytest.mark.parametrize(
    ("broken", "unbroken", "state", "by"),
    [
        ("", "", "survived", "3 tests reach it"),
        ("bc", "", "killed", "b.py::t"),
        ("bc", "b", "killed", "c.py::t"),
        ("bc", "abc", "survived", "no quick test reaches it and passes unbroken"),
        ("b", "b", "survived", "3 tests reach it"),
        ("c", "a", "killed", "c.py::t"),
    ],
)
def test_what_fails_unbroken_has_killed_nothing(mutants, monkeypatch, broken, unbroken, state, by):
    found = ran(mutants, monkeypatch, {"broken": broken, "unbroken": unbroken})
    assert (found.state, found.by) == (state, by)


def test_the_nearest_tests_run_first_within_the_budget(mutants):
    """Of tests of 30, 20 and 15 s the two that reach least run in 40 s; one at least always runs. What loads
    with the module is seen by all that reach its file, what a fixture reaches by all tests of their file.
    """
    x, y, other = (f"frywright/{name}" for name in ("x.py f", "x.py g", "z.py h"))

    def test(name, seconds, reached, set_up=(), passed=True):
        return mutants.Test(
            name=name,
            passed=passed,
            seconds=seconds,
            reached=frozenset({*reached, *set_up}),
            set_up=frozenset(set_up),
        )

    def names(place, tests, budget=40.0):
        path, name = place.split()
        function = mutants.Function(path=Path(path), name=name, first_line=1, last_line=3)
        return mutants.chosen(function, tests, budget)

    three = [test("a::1", 30.0, [x, y, other]), test("b::1", 20.0, [x, y]), test("c::1", 15.0, [x])]
    assert names(x, three) == (["c::1", "b::1"], 3)
    assert names(x, three, 1.0) == (["c::1"], 3)
    assert names(x, [test("a::1", 1.0, [x], passed=False), test("b::1", 1.0, [y])]) == ([], 0)
    assert names(x, [test("a::1", 1.0, [], [x]), test("a::2", 2.0, [other]), test("b::2", 1.0, [other])]) == (
        ["a::1", "a::2"],
        2,
    )
    loaded = test("", 0.0, [x], passed=False)
    assert names(x, [loaded, test("a::1", 1.0, [y]), test("b::1", 1.0, [other])]) == (["a::1"], 1)


def test_a_rate_says_how_sure_it_is(mutants):
    """24 of 27 by the closed form of Wilson (1927) with z = 1.96: 0.7194 to 0.9615."""
    low = mutants.Function(path=Path("frywright/oil/x.py"), name="f", first_line=1, last_line=3)
    broken = mutants.Mutant(function=low, text="", change="", line=1, inner=low)
    states = ["killed"] * 24 + ["survived"] * 3 + ["no answer"] * 2
    assert mutants.rates([mutants.Outcome(mutant=broken, state=s) for s in states]) == [
        "* **levels 1 and 2**: 24 of 27 killed, 89 % (95 %: 72 to 96 %); counted neither way: 2",
        "* **above**: none counted",
    ]
