"""Kernels written for Numba run as LLVM's text: it is made of the sources as they stand, and answers as
Numba's own code does.
"""

from __future__ import annotations

import ctypes
import importlib.util
import os
import resource
import subprocess
import sys
import threading
from pathlib import Path

import numpy as np
import pytest

from frywright.oil import filter_kernel
from frywright.physics import kernels, machine
from frywright.plan import advice, engine
from frywright.plan.model import Day, Item, LoadSize
from frywright.plan.replay import Par, given, unknown
from frywright.plan.stock import first_out

ROOT = Path(__file__).parent.parent.parent
HOME = ROOT / "src/frywright"
RUN_IT = "{}: run python scripts/kernels.py and commit what it writes (after {} also scripts/lanes.py)"


def script(name):
    """A script as a module."""
    spec = importlib.util.spec_from_file_location(f"{name}_script", ROOT / f"scripts/{name}.py")
    found = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(found)
    return found


MODULES = tuple(script("kernels").CALLED)


@pytest.mark.parametrize("module", MODULES)
def test_the_text_was_made_of_the_source_as_it_stands(module):
    """The hash in the head of the text; another end of lines is no change."""
    assert kernels.is_fresh(HOME / f"{module}.py"), RUN_IT.format(f"{module}.ll is old", "ground.cpp")


def test_what_kernels_stand_on_was_made_of_its_source():
    """The hash in the head of ``ground.ll``."""
    text = (HOME / "physics/ground.ll").read_text("utf-8")
    assert f"sha256 {script('lanes').ground_hash()}.\n" in text, (
        "run python scripts/lanes.py, then kernels.py"
    )


@pytest.mark.parametrize("module", MODULES)
def test_the_text_knows_no_processor_and_no_numba(module):
    """Nothing of one processor, nothing that only Numba's library has, no words and no folders."""
    text = (HOME / f"{module}.ll").read_text("utf-8")
    assert ' c"' not in text
    assert "target-cpu" not in text and "target triple" not in text and "llvm.x86" not in text
    asked = {line.split("@")[1].split("(")[0] for line in text.splitlines() if line.startswith("declare")}
    assert not {name for name in asked if name.startswith(("numba", "NRT", "_Z"))}


def in_a_process(program, **more):
    """What a fresh process prints."""
    ran = subprocess.run(
        [sys.executable, "-c", program],
        capture_output=True,
        text=True,
        env={**os.environ, "PYTHONPATH": f"{ROOT}/src:{ROOT}", **more},
    )
    assert ran.returncode == 0, ran.stderr
    return ran.stdout.strip()


@pytest.mark.slow
def test_numba_makes_the_same_text_again(tmp_path):
    """Letter by letter; another Numba than the one it was made with may word it anew."""
    pytest.importorskip("numba")
    ran = subprocess.run(
        [sys.executable, str(ROOT / "scripts/kernels.py"), "--check"],
        capture_output=True,
        text=True,
        env={**os.environ, "PYTHONPATH": f"{ROOT}/src:{ROOT}"},
    )
    assert ran.returncode == 0, ran.stdout + ran.stderr


SAME = "import tests.physics.test_kernels as t; print(t.answers())"


def bank(seed=3):
    """A day of two fryers, three products and 24 slots, drawn."""
    rng = np.random.default_rng(seed)
    items = tuple(
        Item(
            name=f"item {n}",
            loads=tuple(
                LoadSize(units_count=u, cook_slots_count=1 + n, batch_money=0.3 + 0.1 * n, fryers=(0, 1))
                for u in (6, 12)
            ),
            hold_slots_count=4 + n,
            short_money=1.5,
            waste_money=0.8,
        )
        for n in range(3)
    )
    return Day(items=items, fryers_count=2, slots_count=24, mean_n=rng.uniform(0.0, 14.0, (3, 24)))


def answers():
    """Every bit of what kernels of all modules answer, as a hash."""
    import hashlib

    from frywright.calibrate.track import story_of
    from frywright.oil.outlook import Vats, crossing, learn
    from frywright.plan.model import Day
    from frywright.plan.replay import Look, draw_days, replay_par

    day, told, rng = bank(), [], np.random.default_rng(4)
    assert isinstance(day, Day)
    days = draw_days(day, 4, 1)
    look = Look(paths_count=24, horizon_slots_count=8)
    told += [days, replay_par(day, days, Par()), advice.outlook(day, None, Par(), look, paths=6)]
    size = (3, 20)
    seen = np.where(rng.random(size) < 0.6, rng.uniform(5.0, 25.0, size), np.nan)
    share, gone = rng.uniform(0.0, 0.1, size), rng.random(size) < 0.05
    vats = Vats(
        heat_n=np.ones(size),
        share_frac=share,
        discard=gone,
        reading=seen,
        noise=np.ones(size),
        fresh=np.full(3, 4.0),
    )
    for belief in learn(vats):
        told += [belief.mean, belief.cover, belief.weight, belief.tomorrow, crossing(belief, 24.0, 0.1)]
    heat = 170.0 + np.cumsum(rng.normal(0.0, 0.3, 300))
    told.append(story_of(heat, 1.0, 0.1, 0.05, np.full(300, 0.01), 171.0))
    told.append(first_out(rng.integers(0, 5, 20), rng.integers(0, 4, (5, 20)), 3))
    np.set_printoptions(threshold=10**9, floatmode="unique")
    return hashlib.sha256("".join(map(repr, told)).encode()).hexdigest()


@pytest.mark.slow
def test_a_day_and_oil_need_no_numba():
    """A process in which Numba cannot be had answers."""
    barred = "import sys; sys.modules['numba'] = None; "
    assert len(in_a_process(barred + SAME)) == 64


@pytest.mark.slow
def test_answers_are_those_of_numbas_own_code(tmp_path):
    """Bit by bit, over days, oil, a curve and a shelf."""
    pytest.importorskip("numba")
    by_numba = "from frywright.physics import kernels; kernels.making = True; " + SAME
    fresh = {"FRYWRIGHT_CACHE": str(tmp_path)}
    assert in_a_process(by_numba, **fresh) == in_a_process(SAME, **fresh)


def test_draws_are_those_of_the_twister_of_numpy():
    """Seeded alike, large Poisson numbers are those of NumPy's frozen legacy generator."""
    code = machine.loaded("ground", (HOME / "physics/ground.ll").read_text("utf-8"))
    state = ctypes.create_string_buffer(4096)
    begin = ctypes.CFUNCTYPE(None, ctypes.c_void_p, ctypes.c_uint)(
        code.get_function_address("numba_rnd_init")
    )
    draw = ctypes.CFUNCTYPE(ctypes.c_int64, ctypes.c_void_p, ctypes.c_double)(
        code.get_function_address("numba_poisson_ptrs")
    )
    for seed, mean in ((1, 10.0), (2, 33.3), (4_000_000_000, 900.0)):
        begin(state, seed)
        assert [draw(state, mean) for _ in range(2000)] == list(
            np.random.RandomState(seed).poisson(mean, 2000)
        )


def imagined(seed):
    """Rests of a day that a kernel draws."""
    day = bank()
    return engine.imagine(0, 24, 40, unknown(day), np.ascontiguousarray(day.mean_n), given(day, Par()), seed)


def test_threads_draw_each_for_itself():
    """Kernels hold no lock of Python's: four threads at once draw what each would draw alone."""
    alone, got, gate = [imagined(seed) for seed in range(4)], {}, threading.Barrier(4)

    def work(seed):
        gate.wait()
        got[seed] = [imagined(seed) for _ in range(20)]

    threads = [threading.Thread(target=work, args=(seed,)) for seed in range(4)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert not np.array_equal(alone[0], alone[1])
    assert all(np.array_equal(alone[seed], one) for seed in range(4) for one in got[seed])


def test_arrays_of_kernels_are_given_back():
    """What a kernel has made is copied and freed: 3,000 answers of 23 kB leave less than 20 MB behind."""
    imagined(1)
    before = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
    day = bank()
    rest = (unknown(day), np.ascontiguousarray(day.mean_n), given(day, Par()), 1)
    for _ in range(3000):
        engine.imagine(23, 24, 40, *rest)
    assert resource.getrusage(resource.RUSAGE_SELF).ru_maxrss - before < 20_000


def test_what_does_not_fit_is_refused():
    """Another kind of number, another order, too few values, a kernel that is not called from outside."""
    day = bank()
    rules, mean = given(day, Par()), np.ascontiguousarray(day.mean_n)
    for wrong in (mean.astype(np.float32), np.asfortranarray(mean), mean[0]):
        with pytest.raises(TypeError, match=r"imagine: .* in C order"):
            engine.imagine(0, 24, 4, unknown(day), wrong, rules, 1)
    with pytest.raises(ValueError, match="zip"):
        engine.imagine(0, 24, 4, unknown(day), mean, rules[:-1], 1)
    with pytest.raises(NotImplementedError, match=r"scripts/kernels\.py"):
        engine.close(1)
    assert filter_kernel.bent(4, 4, np.float64(0.5)) == 1.0
    assert np.array_equal(first_out([1, 0], [[0, 2]], 2).sold, [[0, 1]])


def test_a_source_that_was_changed_is_not_answered_by_its_old_text(tmp_path, monkeypatch):
    """Numba compiles it as it stands; without Numba it says what to do, and never runs the old code."""
    module = tmp_path / "shop.py"
    module.write_text("def twice(x):\n    return 2 * x\n", "utf-8")
    (tmp_path / "shop.ll").write_text(f"{kernels.HEAD}{kernels.source_hash(module)}\n", "utf-8")
    space = {"__file__": str(module), "__name__": "shop"}
    exec(module.read_text("utf-8"), space)
    assert isinstance(kernels.njit()(space["twice"]), kernels.Kernel)
    kernels.is_fresh.cache_clear()
    module.write_text("def twice(x):\n    return 3 * x\n", "utf-8")
    monkeypatch.setitem(sys.modules, "numba", None)
    with pytest.raises(ImportError, match=r"shop\.ll was not made from shop\.py"):
        kernels.njit()(space["twice"])
    module.write_bytes(b"def twice(x):\r\n    return 2 * x\r\n")
    kernels.is_fresh.cache_clear()
    assert kernels.is_fresh(module)
