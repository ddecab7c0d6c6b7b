"""Where compiled code is kept, and how kernels of one file are joined.

Compiled code is kept in a cache folder named after a hash of this file and the compiler's version.
"""

from __future__ import annotations

import hashlib
import os
from pathlib import Path

import numba


def cache_folder() -> Path:
    """Folder that holds the compiled kernels."""
    base = os.environ.get("FRYWRIGHT_CACHE") or os.environ.get("XDG_CACHE_HOME")
    root = Path(base) if base else Path.home() / ".cache"
    digest = hashlib.sha256(numba.__version__.encode() + Path(__file__).read_bytes()).hexdigest()
    return root / "frywright" / f"kernels-{digest[:16]}"


numba.config.CACHE_DIR = str(cache_folder())

inlined = numba.njit(cache=True, error_model="numpy", forceinline=True, _nrt=False)
"""Decorator of a kernel that is compiled into its caller, so that arrays handed down cost no reference
counting."""
