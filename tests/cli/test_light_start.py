"""What a start loads: counted in modules, not in seconds, so that it holds on any machine."""

from __future__ import annotations

import subprocess
import sys

import pytest

from frywright.cli.main import ROOMS
from frywright.cli.shop import Shop
from frywright.model.errors import FrywrightError
from frywright.rooms.kitchen import remembered_kitchen
from frywright.rooms.records import people
from frywright.trial.kitchens import demo_text

HEAVY = ("numba", "scipy", "numpy", "pydantic", "sqlalchemy", "alembic", "fastapi", "uvicorn", "argon2")
HEAVY += ("rich",)
TOLD = "import sys; sys.stderr.write(' '.join({m.split('.')[0] for m in sys.modules}))"


def loaded(program, *words, where=None):
    """Heavy packages that a fresh process has loaded after a program; it may have ended by itself."""
    code = f"import atexit\natexit.register(lambda: exec({TOLD!r}))\n{program}"
    ran = subprocess.run([sys.executable, "-c", code, *words], capture_output=True, text=True, cwd=where)
    assert ran.returncode == 0, ran.stderr
    return set(ran.stderr.split("\n")[-1].split()) & set(HEAVY)


RUN = "from frywright.cli.main import run; run()"


@pytest.mark.parametrize(
    ("program", "words", "may"),
    [
        (RUN, ("--help",), set()),
        ("import frywright.web.serve", (), {"sqlalchemy", "pydantic", "numpy"}),
        ("import frywright.trial.ask, frywright.rooms.cook.view", (), {"sqlalchemy", "pydantic", "numpy"}),
    ],
)
def test_a_start_loads_only_what_it_needs(program, words, may, tmp_path):
    """Help needs no numbers and draws no boxes; listening needs no pages and no compiler; a cook needs
    neither Numba nor SciPy.
    """
    assert loaded(program, *words, where=tmp_path) <= may


@pytest.mark.parametrize(
    ("words", "read"),
    [
        (("--help",), set()),
        ((), set()),
        (("cook", "--help"), {"cook", "desk"}),
        (("records", "--help"), {"records", "dropping"}),
    ],
)
def test_help_reads_in_the_commands_of_the_room_asked_for(words, read, tmp_path):
    """Counted modules of commands; the list of rooms needs none."""
    told = (
        "sys.stderr.write(' '.join(m.split('.')[2] for m in sys.modules if m.startswith('frywright.cli.')))"
    )
    program = f"import atexit, sys\natexit.register(lambda: {told})\n{RUN}"
    ran = subprocess.run(
        [sys.executable, "-c", program, *words], capture_output=True, text=True, cwd=tmp_path
    )
    rooms = {module for modules, _ in ROOMS.values() for module in modules}
    assert set(ran.stderr.split("\n")[-1].split()) & rooms == read
    assert "fleet" in ran.stdout or words[:1] != ("--help",)


def test_a_first_verdict_loads_no_numba_and_takes_no_steps_of_the_schema(tmp_path):
    """From a kitchen file to its verdict."""
    path = tmp_path / "k.toml"
    path.write_text(demo_text(), "utf-8")
    words = ("cook", "simulate", str(path), "--program", "bone-in alder")
    assert loaded(RUN, *words, where=tmp_path) <= {"pydantic", "numpy", "rich"}


def test_a_kitchen_file_read_without_a_store_is_the_kitchen_a_store_gives(tmp_path):
    """All of it, and its site; two versions of a program, a zone that is none and a key go a store's way."""
    path = tmp_path / "k.toml"
    path.write_text(demo_text(), "utf-8")
    shop = Shop(kitchen=str(path))
    with shop.held:
        assert shop.kitchen == remembered_kitchen(shop.store)
        assert shop.site == remembered_kitchen(shop.store).site
    first = demo_text().index("[[program]]")
    later = demo_text().find("[[program]]", first + 1)
    again = demo_text()[first:later].replace("version = 3", "version = 7")
    path.write_text(demo_text() + again, "utf-8")
    shop = Shop(kitchen=str(path))
    with shop.held:
        assert shop.kitchen == remembered_kitchen(shop.store)
        assert 7 in [p.version for p in shop.kitchen.programs]
    path.write_text(demo_text().replace('zone = "Etc', 'zone = "Nowhere'), "utf-8")
    shop = Shop(kitchen=str(path))
    with shop.held, pytest.raises(FrywrightError, match="zone"):
        assert shop.kitchen
    path.write_text(demo_text(), "utf-8")
    shop = Shop(kitchen=str(path), site="elsewhere")
    with shop.held, pytest.raises(FrywrightError, match="elsewhere"):
        assert shop.kitchen


def test_a_proof_loads_no_statistics_of_scipy(tmp_path):
    """They took 46 MB and a third of a second; bound, quantiles and ranks need special functions only."""
    path = tmp_path / "k.toml"
    path.write_text(demo_text(), "utf-8")
    told = "sys.stderr.write(str('scipy.stats' in sys.modules))"
    program = f"import atexit, sys\natexit.register(lambda: {told})\n{RUN}"
    words = ("cook", "prove", str(path), "--program", "bone-in alder", "--samples", "16", "--json")
    ran = subprocess.run(
        [sys.executable, "-c", program, *words], capture_output=True, text=True, cwd=tmp_path
    )
    assert '"samples_count": 16' in ran.stdout, ran.stderr
    assert ran.stderr.endswith("False")


def test_nothing_is_hashed_before_somebody_signs_in():
    """A fresh process: the hash of nobody's password is made when it is first asked for."""
    told = "from frywright.rooms.records import people; assert people._nobody.cache_info().currsize == 0"
    assert "argon2" in loaded(told)
    assert people._nobody() is people._nobody()
