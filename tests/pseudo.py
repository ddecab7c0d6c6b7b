"""A language made by machine: every letter of the source turned into a look-alike, so that what stays plain
was never translated.
"""

from __future__ import annotations

import re
from pathlib import Path

PLAIN = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ"
ALIKE = "áþçðéſğħíĵķļµñóþœŕšťúüøžýźÁßÇÐÉŦĞĤÍĴĶĻΜÑÓÞŒŔŠŤÚÜØŽÝŹ"
KEPT = re.compile(r"({[^{}]*}|<[^<>]*>|&\w+;)")
NAME = "Pseudo"
KEY = "xx"
_TABLE = str.maketrans(PLAIN, ALIKE)


def pseudo(text: str) -> str:
    """A text in the made language; placeholders and marks of HTML stay."""
    return "".join(part if KEPT.fullmatch(part) else part.translate(_TABLE) for part in KEPT.split(text))


def write_language(home: Path, texts: list[str]) -> None:
    """One folder with two files: all that a new language takes."""
    folder = home / KEY
    folder.mkdir(parents=True)
    folder.joinpath("language.toml").write_text(f'name = "{pseudo(NAME)}"\ndecimal = "."\n', "utf-8")
    lines = [f"msgid {_quoted(t)}\nmsgstr {_quoted(pseudo(t))}\n" for t in texts]
    head = 'msgid ""\nmsgstr ""\n"Content-Type: text/plain; charset=UTF-8\\n"\n'
    folder.joinpath("frywright.po").write_text("\n".join([head, *lines]), "utf-8")


def _quoted(text: str) -> str:
    return '"' + text.replace("\\", "\\\\").replace('"', '\\"').replace("\n", "\\n") + '"'
