"""Shared fixtures: the demo kitchen, and cooks with round numbers."""

from __future__ import annotations

import datetime as dt
import gc
import re
import threading
import time
from collections.abc import Callable, Generator, Iterator
from contextlib import suppress
from functools import cache
from pathlib import Path
from shutil import copyfile, copytree

import pytest
from argon2 import PasswordHasher
from examples.postgres import cluster
from hypothesis import HealthCheck, settings
from typer import testing

from frywright.ledger import database
from frywright.ledger.store import Store
from frywright.model import tongues
from frywright.model.kitchen import Kitchen
from frywright.physics.inputs import Lid, PieceClass, Span, Until, Vat
from frywright.physics.solve import Cook, Prescribed
from frywright.physics.steam import boiling_temp_c
from frywright.rooms.records import people
from frywright.trial.kitchens import demo_kitchen
from frywright.voice.tongue import translator
from tests.demo import kitchen_store

settings.register_profile("any machine", deadline=None, suppress_health_check=[HealthCheck.too_slow])
settings.load_profile("any machine")
"""Drawn examples are counted, not timed: a busy machine fails no property."""

PARTS = {"slow", "browser"}


def pytest_ignore_collect(collection_path: Path, config: pytest.Config) -> bool | None:
    """A file that names no mark asked for, or whose tests all have one not asked for, is not even imported:
    each part of the tests reads its own files only.
    """
    asked = config.option.markexpr
    if collection_path.suffix != ".py" or " or " in asked or not asked:
        return None
    text, words = collection_path.read_text(encoding="utf-8"), set(asked.split(" and "))
    whole = " ".join(re.findall(r"^pytestmark = .*", text, re.MULTILINE))
    named, all_are = (set(re.findall(r"\bmark\.(\w+)", part)) for part in (text, whole))
    unwanted = {word.removeprefix("not ") for word in words if word.startswith("not ")}
    return True if not words & PARTS <= named or unwanted & all_are else None


@pytest.hookimpl(wrapper=True)
def pytest_collection() -> Generator[None, object, object]:
    """What is read in here stays to the end: the search for garbage does not walk it again and again."""
    gc.disable()
    done = yield
    gc.freeze()
    gc.set_threshold(10_000)
    gc.enable()
    return done


@pytest.hookimpl(trylast=True)
def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """The longest first, by the seconds of their mark of slow, and with them those that wait for clocks: a
    process that began one of them last would leave the other without work.
    """

    def seconds(item: pytest.Item) -> float:
        mark = item.get_closest_marker("slow")
        return mark.args[0] if mark and mark.args else 0.0

    items.sort(key=seconds, reverse=True)


@pytest.fixture(scope="session", autouse=True)
def own_hasher() -> Iterator[PasswordHasher]:
    """The program's own hasher; meanwhile secrets are hashed at the least Argon2 takes."""
    own, least = people._HASHER, PasswordHasher(time_cost=1, memory_cost=8, parallelism=1)
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(people, "_HASHER", least)
        yield own


@pytest.fixture(scope="session", autouse=True)
def one_tree_of_commands() -> Iterator[None]:
    """The commands of a program are built once, not anew for each that is run."""
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(testing, "_get_command", cache(testing._get_command))
        yield


@pytest.fixture(scope="session", autouse=True)
def new_files(tmp_path_factory: pytest.TempPathFactory) -> Iterator[None]:
    """The migrations run once; a store in a new file begins with a copy of what they made."""
    made, upgrade = tmp_path_factory.mktemp("new") / "new.db", database._upgrade
    database.opened(f"sqlite:///{made}").dispose()

    def begin(engine) -> None:
        path = Path(engine.url.database or "")
        if database.is_file(str(engine.url)) and not (path.exists() and path.stat().st_size):
            with suppress(OSError):  # what cannot be written there says so itself
                copyfile(made, path)
        upgrade(engine)

    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(database, "_upgrade", begin)
        yield


@pytest.fixture(scope="session")
def kitchen() -> Kitchen:
    return demo_kitchen()


@pytest.fixture
def store(tmp_path: Path) -> Iterator[Store]:
    """The demo kitchen in a new file."""
    found = kitchen_store(tmp_path / "demo.db")
    yield found
    found.close()


@pytest.fixture(scope="session")
def postgres() -> Iterator[str]:
    """A PostgreSQL server; without one the tests that need it fail."""
    with cluster() as server:
        yield server


@pytest.fixture(scope="module")
def made_language(tmp_path_factory: pytest.TempPathFactory) -> Iterator[None]:
    """The folder of the languages with one more in it; nothing else is told of it."""
    from tests.house.test_words import error_texts
    from tests.house.words import source_strings, translations
    from tests.pseudo import write_language

    place = tmp_path_factory.mktemp("languages") / "locales"
    copytree(tongues.home(), place)
    texts = source_strings() | {text for _, text in error_texts() if text} | set(translations("es"))
    write_language(place, sorted(texts))
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(tongues, "home", lambda: place)
        tongues.tongues.cache_clear()
        translator.cache_clear()
        yield
    tongues.tongues.cache_clear()
    translator.cache_clear()


@pytest.fixture
def instead_of_sleep(monkeypatch: pytest.MonkeyPatch) -> Callable[[Callable[[float], object]], None]:
    """Puts something in the place of this thread's sleep. Threads that a server of an earlier test left there
    go on sleeping: they would take its turns.
    """
    mine, sleep = threading.get_ident(), time.sleep

    def put(act: Callable[[float], object]) -> None:
        monkeypatch.setattr(time, "sleep", lambda s: act(s) if threading.get_ident() == mine else sleep(s))

    return put


@pytest.fixture
def any_hour(monkeypatch: pytest.MonkeyPatch) -> None:
    """The board takes taps of the whole day, whatever the hour at which the tests run."""
    monkeypatch.setattr("frywright.rooms.day.board.AHEAD", dt.timedelta(days=3))


def piece(
    name: str = "breast", mass_kg: float = 1.95, a: float = 0.0155, n: float = 0.4, **changes
) -> PieceClass:
    values = {
        "name": name,
        "mass_kg": mass_kg,
        "half_thickness_m": a,
        "shape_n": n,
        "start_temp_c": 4.0,
        "density_kg_m3": 1050.0,
        "conductivity_w_mk": (0.47, 0.0012),
        "heat_capacity_j_kgk": 3500.0,
        "water_kg_m3": 650.0,
        "film_kg_m2": 0.3,
    }
    return PieceClass(**{**values, **changes})


def four_classes() -> list[PieceClass]:
    """Breast, thigh, drum, wing of four 1.19 kg heads."""
    return [
        piece(),
        piece("thigh", 1.45, 0.015, 0.5),
        piece("drum", 0.8, 0.019, 1.1),
        piece("wing", 0.56, 0.0125, 0.9),
    ]


def vat(**changes) -> Vat:
    values = {
        "oil_mass_kg": 29.0,
        "oil_start_c": 170.0,
        "heater_w": 12500.0,
        "lid_ua_w_k": 60.0,
        "lid_heat_j_k": 5000.0,
        "loss_w_k": 3.0,
        "metal_heat_j_k": 8000.0,
    }
    return Vat(**{**values, **changes})


def open_cook(seconds: float = 900.0, pieces=None, **changes) -> Cook:
    return Cook(
        vat=vat(**changes), pieces=pieces or four_classes(), spans=[Span(duration_s=seconds, set_c=165.0)]
    )


def boiling_slab(seconds: float, a: float, water_kg_m3: float) -> Cook:
    """A slab at boiling whose crust stores nothing, in oil kept at 180 degC, of half thickness ``a`` [m]."""
    p = piece(
        a=a,
        n=0.0,
        start_temp_c=boiling_temp_c(101325.0) - 1e-4,
        film_kg_m2=0.0,
        still_h_w_m2k=400.0,
        gain_h_j_kgk=0.0,
        crust_conductivity_w_mk=0.10,
        crust_heat_j_m3k=10.0,
        vapour_cp_j_kgk=0.0,
        water_kg_m3=water_kg_m3,
    )
    told = Prescribed(oil_temp_c=[(0.0, 180.0)], pressure_pa=[(0.0, 101325.0)])
    return Cook(vat=vat(), pieces=[p], spans=[Span(duration_s=seconds, set_c=160.0)], prescribed=told)


def pressure_cook(seconds: float = 660.0, rest_s: float = 120.0, pieces=None, **changes) -> Cook:
    vent = Span(duration_s=300.0, set_c=165.0, lid=Lid.VENT, until=Until.GAUGE_BELOW, value=2000.0)
    return Cook(
        vat=vat(**changes),
        pieces=pieces or four_classes(),
        spans=[
            Span(duration_s=seconds, set_c=165.0, lid=Lid.PRESSURE),
            vent,
            Span(duration_s=rest_s, set_c=165.0, lid=Lid.REST),
        ],
    )
