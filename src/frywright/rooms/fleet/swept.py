"""Rows of a sweep kept in a file, so that a sweep that was stopped goes on where it was.

One line of JSON a site, written as soon as it is proved. A site counts as proved where its kitchen file, the
number of loads and the program that proves are what they were.
"""

from __future__ import annotations

import hashlib
import json
from collections.abc import Sequence
from dataclasses import asdict, dataclass, field
from importlib.metadata import version
from pathlib import Path

from frywright.model.errors import InputError
from frywright.physics.inputs import CLOSE, SCAN

BEGINS = '{"mark": "'


@dataclass(frozen=True, slots=True, kw_only=True)
class SiteProof:
    """Proof of one program of one site, or the problem that kept it from being proved."""

    site: str
    program: str = ""
    version: int = 0
    fryer: str = ""
    altitude_m: int = 0
    problem: str = ""
    outcome: str = ""
    meets_frac: float | None = None
    failed_count: int | None = None
    samples_count: int | None = None
    fitted_count: int = 0
    bound_frac: float | None = None
    confidence_frac: float | None = None
    worst_cut: str = ""
    worst_margin_k: float | None = None
    breaks_first: str = ""


def mark(name: str, text: str, samples: int, few: bool) -> str:
    """What must be the same for a site's rows to hold."""
    told = [version("frywright"), str(SCAN), str(CLOSE), samples, few, name, text]
    return hashlib.sha256(json.dumps(told).encode()).hexdigest()


@dataclass(frozen=True, slots=True)
class Swept:
    """Rows by the marks of their sites; ``path`` is the file that keeps them, None for none."""

    path: Path | None
    rows: dict[str, list[SiteProof]] = field(default_factory=dict)

    def add(self, of: str, rows: Sequence[SiteProof]) -> None:
        """Keep the rows of a site."""
        if self.path is None:
            return
        with self.path.open("a", encoding="utf-8") as file:
            file.write(json.dumps({"mark": of, "rows": [asdict(row) for row in rows]}) + "\n")


def opened(path: Path | None) -> Swept:
    """What a file keeps; a last line that was cut short is dropped, as its site was not done.
    Raises InputError: the file holds something else, or cannot be written.
    """
    if path is None:
        return Swept(path)
    try:
        path.open("a").close()
        whole, _, cut = path.read_text("utf-8").rpartition("\n")
    except OSError as error:
        raise InputError("--keep", path.name, "a file that can be written") from error
    except UnicodeDecodeError as error:
        raise InputError("--keep", path.name, "a file that a sweep wrote") from error
    found: dict[str, list[SiteProof]] = {}
    for number, line in enumerate(whole.splitlines(), 1):
        try:
            kept = json.loads(line)
            found[kept["mark"]] = [SiteProof(**row) for row in kept["rows"]]
        except (ValueError, KeyError, TypeError) as error:
            raise InputError(
                "--keep", path.name, "a file that a sweep wrote; line {line} is not", line=str(number)
            ) from error
    if cut and not (cut.startswith(BEGINS) or BEGINS.startswith(cut)):
        raise InputError("--keep", path.name, "a file that a sweep wrote")
    if cut:
        path.write_text(whole + "\n" if whole else "", "utf-8")
    return Swept(path, found)
