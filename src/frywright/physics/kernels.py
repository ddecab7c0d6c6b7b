"""Where Numba keeps compiled code, and how kernels of one file are joined."""

from __future__ import annotations

import numba

from frywright.physics.folder import cache_folder

numba.config.CACHE_DIR = str(cache_folder())

inlined = numba.njit(cache=True, error_model="numpy", forceinline=True, _nrt=False)
"""Decorator of a kernel that is compiled into its caller, so that arrays handed down cost no reference
counting."""
