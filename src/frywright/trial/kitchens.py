"""Opening a kitchen: from a file, or the invented demo."""

from __future__ import annotations

from importlib import resources
from pathlib import Path
from typing import Any

from frywright.catalog.kitchen import parse_kitchen
from frywright.model.errors import DataError
from frywright.model.findings import Problem
from frywright.model.kitchen import Kitchen

LARGEST_FILE_BYTES = 2_000_000


def read_text(path: Path) -> str:
    """Text of a kitchen file. Raises DataError: it is missing, a folder, too large, or not UTF-8 text."""

    def refuse(what: str, remedy: str, /, **values: Any) -> DataError:
        return DataError([Problem(what=what, remedy=remedy, values=values, file=str(path))])

    try:
        if path.is_dir():
            raise refuse("this is a folder", "Name the kitchen file itself, for example kitchen.toml.")
        if path.stat().st_size > LARGEST_FILE_BYTES:
            raise refuse(
                "the file is larger than 2 MB", "A kitchen file is a few pages of text; check the name."
            )
        return path.read_bytes().decode("utf-8-sig")
    except FileNotFoundError as error:
        raise refuse(
            "no such file", "Check the name, or copy the demo with: frywright kitchen demo > kitchen.toml"
        ) from error
    except UnicodeDecodeError as error:
        raise refuse(
            "not UTF-8 text (byte {start})", "Save the file as UTF-8 text.", start=error.start
        ) from error
    except OSError as error:
        raise refuse(
            "cannot be read: {cause}", "Check the permissions of the file.", cause=error.strerror
        ) from error


def demo_text() -> str:
    """Text of the invented demo kitchen's file."""
    return resources.files("frywright.catalog").joinpath("demo/kitchen.toml").read_text("utf-8")


def demo_kitchen() -> Kitchen:
    """The invented demo kitchen."""
    return parse_kitchen(demo_text(), "demo/kitchen.toml")


def demo_log() -> bytes:
    """The invented probe log of the demo kitchen (scripts/demo_log.py wrote it)."""
    return resources.files("frywright.catalog").joinpath("demo/probe-log.csv").read_bytes()
