"""Languages the program speaks: one folder each under ``voice/locales``, read once."""

from __future__ import annotations

import tomllib
from collections.abc import Callable
from dataclasses import dataclass
from functools import cache
from importlib import resources
from importlib.resources.abc import Traversable

Translate = Callable[[str], str]
"""Says a text of the sources in a language."""
SOURCE = "en"
"""Language of the texts in code and catalog."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Tongue:
    """A language: its own name, and its decimal mark in a kitchen that uses metric units."""

    key: str
    name: str
    decimal: str


def home() -> Traversable:
    """The folder of the languages: each is a folder of its own, named by its key."""
    return resources.files("frywright").joinpath("voice/locales")


@cache
def tongues() -> dict[str, Tongue]:
    """Every language by its key, the source language first."""
    found = {}
    for folder in home().iterdir():
        about = folder.joinpath("language.toml")
        if about.is_file():
            told = tomllib.loads(about.read_text("utf-8"))
            found[folder.name] = Tongue(key=folder.name, name=told["name"], decimal=told["decimal"])
    return {key: found[key] for key in sorted(found, key=lambda k: (k != SOURCE, k))}
