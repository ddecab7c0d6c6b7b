"""No text that somebody types or sends takes longer than its length allows: every pattern and reader is tried
on texts that grow.
"""

from __future__ import annotations

import importlib
import itertools
import pkgutil
import re
import time
from contextlib import suppress

import pytest

import frywright
from frywright.calibrate import columns
from frywright.catalog.kitchen import parse_kitchen
from frywright.design import readback
from frywright.model import codec, program, trade, units
from frywright.model.errors import DataError, FrywrightError
from frywright.plan import sales
from frywright.rooms.care import vat
from frywright.tables import moments, table

STARTS = ("", "1", "12:00", "1/1/2026", "[", "a", "deg", '"')
FILLS = (" ", "1", "1 ", ".", "1,", "a", "a ", "-", ":", "\n")
ENDS = ("", "\nx")
SEARCHED = ("WORDS", "VOIDED", "CATERING", "TOTALS", "_SPACE", "UNIT_APART", "STAGE_PLACE", "MARKS_OF")
SMALL, LARGE = 250, 2_000
SLOWER = 30.0
"""Eight times the length may take 30 times as long: n log n is 11, n squared 64."""
LEAST_S = 0.01
"""Times below tell nothing: in squares it takes more."""


def patterns():
    """Every pattern of the package, by module and name; those in tuples too."""
    found = {}
    for module in pkgutil.walk_packages(frywright.__path__, "frywright."):
        if ".migrations" in module.name:
            continue
        inside = importlib.import_module(module.name)
        for name, value in vars(inside).items():
            several = value if isinstance(value, tuple) else (value,)
            flat = [x for one in several for x in (one if isinstance(one, tuple) else (one,))]
            for n, one in enumerate(flat):
                if isinstance(one, re.Pattern):
                    found[f"{module.name}.{name}.{n}"] = one
    return found


def taken_s(run, text, times):
    """Shortest time of a few runs on a text, of this thread's processor: others take none of it."""
    found = []
    for _ in range(times):
        begun = time.thread_time()
        run(text)
        found.append(time.thread_time() - begun)
    return min(found)


def linear(run, name):
    """A reader on every growing text; the text that grows worse is named."""
    for start, fill, end in itertools.product(STARTS, FILLS, ENDS):
        small, large = (start + (fill * size)[:size] + end for size in (SMALL, LARGE))
        assert taken_s(run, small, 1) < 10 * LEAST_S, (name, start, fill, end)
        if taken_s(run, large, 1) > LEAST_S and (long_s := taken_s(run, large, 3)) > LEAST_S:
            assert long_s < SLOWER * taken_s(run, small, 3), (name, start, fill, end)


def test_the_check_sees_what_is_not_linear():
    """The patterns that were mended would fail here: a cubic one and one in squares."""
    in_squares = re.compile(r"^\d+\s*(?:°)?\s*C?$")
    with pytest.raises(AssertionError):
        linear(in_squares.match, "in squares")


def test_every_pattern_is_linear():
    """Matched from the start, matched whole, and searched where the program searches by it."""
    found = patterns()
    assert len(found) > 35
    for name, pattern in found.items():
        searched = any(word in name for word in SEARCHED)
        for way in (pattern.match, pattern.fullmatch, *([pattern.search] if searched else [])):
            of_bytes = isinstance(pattern.pattern, bytes)
            linear((lambda text, way=way: way(text.encode())) if of_bytes else way, name)


def quiet(read):
    """A reader whose refusals are as good as answers."""

    def run(text):
        with suppress(FrywrightError):
            read(text)

    return run


READERS = {
    "number_of": columns.number_of,
    "numbers_of": lambda text: columns.numbers_of([text]),
    "is_number": table.is_number,
    "moment": moments.read_moment,
    "sales moment": sales._moment,
    "temperature": lambda text: units.parse(text, "temperature", name="x"),
    "time": lambda text: units.parse(text, "time", name="x"),
    "number": units.read_number,
    "cartons": vat.CARTONS.fullmatch,
    "name": program.name_key,
    "trade": trade.CLOCK.match,
    "unused": readback.is_unused,
}


@pytest.mark.parametrize("name", READERS)
def test_every_reader_is_linear(name):
    """Whatever it says of the text."""
    linear(quiet(READERS[name]), name)


def test_what_was_found_takes_no_time_now():
    """A cell of a log, 20,000 letters long, is read at once; so is a line of a kitchen file."""
    begun = time.thread_time()
    for n in (500, 2000, 19_000):
        assert columns.number_of("1" + " " * n + "x") is None
        assert not table.is_number("1" + " " * n + "x")
        assert moments.read_moment("1/1/2026" + " " * n + "x") is None
    assert time.thread_time() - begun < 0.5


@pytest.mark.parametrize(
    "text",
    [
        "a" + ".a" * 60_000 + " = 1",
        "x = " + "[" * 60_000,
        "x=1\n" * 100_000,
        "[" * 1_900,
    ],
)
def test_a_kitchen_file_that_would_take_minutes_is_refused_at_once(text):
    """With the line and the reason, whatever it is."""
    begun = time.thread_time()
    with pytest.raises(DataError, match="not valid TOML"):
        parse_kitchen(text, "k.toml")
    assert time.thread_time() - begun < 2.0


@pytest.mark.parametrize("text", ["²", "١٢", "9" * 23, "-1", "1 ", ""])
def test_a_count_is_a_few_plain_digits(text):
    """What other alphabets call digits is no count, nor is a number without end."""
    assert not units.is_count(text)
    assert units.is_count("0123")


def test_headers_of_a_kitchen_file_keep_their_places():
    """Spaces within the brackets are no part of the name."""
    source = codec.Source("[site]\nname = 'x'\n [[ fryers ]]\nkey = 'a'\n[[fryers]]\nkey = 'b'\n", "k")
    assert source.line_of("site", "name") == 1
    assert source.line_of("fryers[0]", "key") == 3
    assert source.line_of("fryers[1]", "key") == 5
