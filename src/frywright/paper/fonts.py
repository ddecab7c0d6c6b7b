"""The packaged typeface (Atkinson Hyperlegible, OFL) for pages, pictures and paper."""

from __future__ import annotations

from pathlib import Path


def folder() -> Path:
    """Folder with the TTF files."""
    import fontpkg_atkinson_hyperlegible as package

    return Path(package.__file__).parent / "files"
