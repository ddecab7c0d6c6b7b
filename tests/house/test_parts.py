"""The parts of the tests: a run of one reads the files that have some of it, and no others."""

from __future__ import annotations

from pathlib import Path
from types import SimpleNamespace

import pytest

from tests.conftest import pytest_collection_modifyitems, pytest_ignore_collect

QUICK, SLOW, BROWSER = "not slow and not browser", "slow and not browser", "browser"
SOME, NONE = "@pytest.mark.slow\ndef test_a(): ...\n\n\ndef test_b(): ...\n", "def test_a(): ...\n"
ALL, BOTH = "pytestmark = pytest.mark.slow\n", "pytestmark = [pytest.mark.browser, pytest.mark.slow]\n"


@pytest.mark.parametrize(
    ("text", "read_for"),
    [
        (SOME, {QUICK, SLOW, "slow", ""}),
        (NONE, {QUICK, ""}),
        (ALL, {SLOW, "slow", ""}),
        (BOTH, {BROWSER, "slow", ""}),
    ],
)
def test_a_file_is_read_for_the_marks_it_names(tmp_path, text, read_for):
    """Also where some of its tests have a mark, or the run asks for none; a choice of two is never cut."""
    path = tmp_path / "test_a.py"
    path.write_text(text)

    def ignored(asked: str) -> bool | None:
        return pytest_ignore_collect(path, SimpleNamespace(option=SimpleNamespace(markexpr=asked)))

    assert {asked for asked in (QUICK, SLOW, BROWSER, "slow", "") if not ignored(asked)} == read_for
    assert ignored("slow or browser") is None


def test_a_mark_stands_in_the_file_of_its_test(request: pytest.FixtureRequest):
    """What is collected here has its marks by name in its own file, where the rule looks."""
    for item in request.session.items:
        text = Path(item.path).read_text(encoding="utf-8")
        for mark in {"slow", "browser"} & {m.name for m in item.iter_markers()}:
            assert f"mark.{mark}" in text, item.nodeid


def test_the_longest_run_first_and_the_others_as_they_stand():
    """By the seconds of their mark; those that say none keep the order of their files."""

    def item(name: str, *seconds: float, marked: bool = True) -> SimpleNamespace:
        mark = SimpleNamespace(args=seconds) if marked else None
        return SimpleNamespace(name=name, get_closest_marker={"slow": mark}.get)

    items = [item("a"), item("b", 5), item("c", marked=False), item("d", 75), item("e", 5), item("f")]
    pytest_collection_modifyitems(items)
    assert [x.name for x in items] == ["d", "b", "e", "a", "c", "f"]
