"""Compiled kernels of the cook engine.

Compiled code is kept in a cache folder named after a hash of these sources, because a
compiled function does not notice when a function or constant of *another* file changes.
"""

import hashlib
import os
from pathlib import Path

import numba


def _source_hash() -> str:
    digest = hashlib.sha256(numba.__version__.encode())
    for path in sorted(Path(__file__).parent.glob("*.py")):
        digest.update(path.read_bytes())
    return digest.hexdigest()[:16]


def cache_folder() -> Path:
    """Folder that holds the compiled kernels of exactly these sources."""
    base = os.environ.get("FRYWRIGHT_CACHE") or os.environ.get("XDG_CACHE_HOME")
    root = Path(base) if base else Path.home() / ".cache"
    return root / "frywright" / f"kernels-{_source_hash()}"


numba.config.CACHE_DIR = str(cache_folder())

inlined = numba.njit(cache=True, error_model="numpy", forceinline=True, _nrt=False)
"""Decorator of every kernel but the march: compiled into its caller, so that arrays handed
down cost no reference counting."""
