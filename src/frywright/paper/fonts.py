"""The packaged typefaces (OFL) for pages, pictures and paper."""

from __future__ import annotations

from pathlib import Path

PICTURE = "Arimo, Arial, Liberation Sans, sans-serif"
"""Faces of a picture, on paper the first: it cannot take digits from another face than letters."""


def folder() -> Path:
    """Folder with the TTF files of the letters, Atkinson Hyperlegible."""
    import fontpkg_atkinson_hyperlegible as package

    return Path(package.__file__).parent / "files"


def digits_folder() -> Path:
    """Folder with the TTF files of the digits, Arimo: its zero is not slashed."""
    import fontpkg_arimo as package

    return Path(package.__file__).parent / "files"
