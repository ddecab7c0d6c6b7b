"""Whether the cook engine was made ready on this machine before."""

from __future__ import annotations

from frywright.physics.folder import cache_folder


def prepared() -> bool:
    """Whether anything was compiled on this machine before."""
    return cache_folder().exists()
