"""What a list says as JSON for programs, its lines say to people."""

from __future__ import annotations

import json
from collections.abc import Iterator

import pytest
from typer.testing import CliRunner

from frywright.cli.main import app


def sentences(found: object) -> Iterator[str]:
    """Every text of three words or more."""
    if isinstance(found, dict):
        found = list(found.values())
    if isinstance(found, list):
        for part in found:
            yield from sentences(part)
    elif isinstance(found, str) and len(found.split()) >= 3:
        yield " ".join(found.split())


@pytest.mark.parametrize(
    "typed", ["care due", "care power", "oil fill alder", "oil limit", "oil moves", "oil outlook"]
)
def test_every_sentence_of_the_json_is_printed(place, typed):
    """Whole, in the kitchen's units."""
    lines, whole = (
        CliRunner().invoke(app, [*typed.split(), *more, "--store", place]).stdout for more in ([], ["--json"])
    )
    texts, printed = list(sentences(json.loads(whole))), " ".join(lines.split())
    assert texts and [text for text in texts if text not in printed] == []
