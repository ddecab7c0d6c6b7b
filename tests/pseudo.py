"""A language made by machine: every letter of the source turned into a look-alike, so that what stays plain
was never translated.
"""

from __future__ import annotations

import dataclasses
import re
from collections.abc import Iterable
from pathlib import Path

from frywright.ledger.anchors import LINE as ANCHOR
from frywright.model.kitchen import Kitchen
from frywright.voice.tongue import singulars

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
    one = singulars()
    lines = [_entry(t, one.get(t, "")) for t in texts if t not in one.values()]
    head = 'msgid ""\nmsgstr ""\n"Content-Type: text/plain; charset=UTF-8\\n"\n'
    head += '"Plural-Forms: nplurals=2; plural=(n != 1);\\n"\n'
    folder.joinpath("frywright.po").write_text("\n".join([head, *lines]), "utf-8")


OWN = {"frywright", "english", "closing"}
"""The program's name and command, a language in its own words, a code of a kind in addresses."""
TILL = {"honey", "sauce"}
"""What the invented till sells and the menu does not know."""
CHANNELS = {"breast", "display", "gauge"}
"""Names of channels in the invented logger's file."""
CODES = re.compile(rf"(?:{pseudo('one of')}|{pseudo('Known')}): .*|{pseudo('not valid TOML')}: .*")
"""Codes of a closed list as a file or the API names them, and what Python's reader of TOML says of a line."""
HEX = re.compile(r"\b[0-9a-f]{4}(?: [0-9a-f]{4})+\b|\b[0-9a-f]{8,}\b")
"""Figures of an anchor's key and of a hash: letters alone now and then, such as "d75e b159 b422 becd"."""
FILES = re.compile(r"[\w./-]*\.(?:toml|csv|ics|pdf|svg|zip|json|png|html)\b|\b\w+=\S+|--[a-z-]+|https?://\S+")


def own_words(kitchen: Kitchen) -> set[str]:
    """Words of the kitchen's own names, which no language changes."""
    things = (kitchen.fryers, kitchen.products, kitchen.cut_sets, kitchen.cuts, kitchen.coatings)
    names = [kitchen.site.name, *(p.name for p in kitchen.programs), *(m.item for m in kitchen.menu)]
    names += [text for group in things for thing in group for text in (thing.key, getattr(thing, "name", ""))]
    for setting in (s for fryer in kitchen.fryers for s in fryer.settings):
        names += [
            setting.name,
            setting.value,
            *(w.reads for w in setting.wrong),
            *(w.does for w in setting.wrong),
        ]
    names += [t for task in kitchen.care for t in (task.title, task.parts)]
    names += [str(getattr(kitchen.emergency, f.name)) for f in dataclasses.fields(kitchen.emergency)]
    return OWN | TILL | CHANNELS | set(re.findall(r"[a-z]+", " ".join(names).lower()))


def english(texts: Iterable[str], own: set[str]) -> dict[str, list[str]]:
    """Texts with a plain word of four letters or more that is not the kitchen's own."""
    found = {}
    for text in texts:
        kept = FILES.sub(" ", HEX.sub(" ", ANCHOR.sub(" ", text)))
        bare = re.sub(r"(?<=[a-z])(?=[A-Z])", " ", CODES.sub(" ", kept))
        plain = [w for w in re.findall(r"\w+", bare) if re.fullmatch(r"[A-Za-z]{4,}", w)]
        left = sorted({w for w in plain if w.lower() not in own})
        if left:
            found[text[:160]] = left
    return found


def _entry(text: str, one: str) -> str:
    """A text and its translation, with both forms where one reads otherwise."""
    if not one:
        return f"msgid {_quoted(text)}\nmsgstr {_quoted(pseudo(text))}\n"
    forms = f"msgstr[0] {_quoted(pseudo(one))}\nmsgstr[1] {_quoted(pseudo(text))}\n"
    return f"msgid {_quoted(one)}\nmsgid_plural {_quoted(text)}\n{forms}"


def _quoted(text: str) -> str:
    return '"' + text.replace("\\", "\\\\").replace('"', '\\"').replace("\n", "\\n") + '"'
