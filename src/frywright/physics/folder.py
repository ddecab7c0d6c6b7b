"""The folder in which compiled code is kept, named after the compiler's version."""

from __future__ import annotations

import hashlib
import os
from pathlib import Path

import llvmlite


def cache_folder() -> Path:
    """Folder that holds compiled code of this compiler."""
    base = os.environ.get("FRYWRIGHT_CACHE") or os.environ.get("XDG_CACHE_HOME")
    root = Path(base) if base else Path.home() / ".cache"
    digest = hashlib.sha256(llvmlite.__version__.encode()).hexdigest()
    return root / "frywright" / f"kernels-{digest[:16]}"
