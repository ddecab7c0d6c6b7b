"""Kernels written in Python for Numba, run as LLVM's text where Numba is not installed.

A module with kernels is read by people and, at development time, by Numba; ``scripts/kernels.py`` keeps what
Numba makes of it, for no processor in particular, in a text of the same name (``engine.py``, ``engine.ll``)
with the hash of the source it was made of. Where the program runs, LLVM makes code of that text in about a
second, once (:mod:`frywright.physics.machine`), and arrays are handed over by address, without Python's lock.
While somebody edits a module, its text is out of date, and Numba compiles the module as it stands.
"""

from __future__ import annotations

import ctypes
import hashlib
import json
import struct
import threading
from collections.abc import Callable, Iterator
from functools import cache
from pathlib import Path
from typing import Any

import numpy as np

from frywright.physics.folder import cache_folder
from frywright.physics.machine import loaded

making = False
"""Set by ``scripts/kernels.py`` before it imports a module with kernels: all is compiled by Numba."""
HEAD = "; Kernels of source sha256 "
SIGNATURES = "; Signatures "
Function = Callable[..., Any]
Spec = Any
"""What a kernel takes or gives: "q" whole number, "d" number, "b" yes or no, "0" nothing, [dtype, dimensions]
an array in C order, {"of": [...]} a tuple.
"""


def njit(**options: Any) -> Callable[[Function], Any]:
    """Decorator of a kernel, with the options of Numba's of that name."""

    def kernel(function: Function) -> Any:
        place = Path(function.__globals__["__file__"])
        if not making and is_fresh(place):
            return Kernel(function, place.with_suffix(".ll"))
        return _by_numba(function, options, place)

    return kernel


def _by_numba(function: Function, options: dict[str, Any], place: Path) -> Any:
    """A kernel compiled by Numba, for whoever edits it."""
    try:
        import numba
    except ImportError as gone:
        told = (
            f"{place.with_suffix('.ll').name} was not made from {place.name}: run python scripts/kernels.py"
        )
        raise ImportError(told) from gone
    numba.config.CACHE_DIR = str(cache_folder())
    return numba.njit(**options)(function)


inlined = njit(cache=True, error_model="numpy", forceinline=True, _nrt=False)
"""Decorator of a kernel that is compiled into its caller, so that arrays handed down cost no reference
counting."""


@cache
def is_fresh(place: Path) -> bool:
    """Whether the text beside a module was made from it as it stands."""
    try:
        with place.with_suffix(".ll").open(encoding="utf-8") as text:
            return text.readline().strip() == HEAD + source_hash(place)
    except OSError:
        return False


def source_hash(place: Path) -> str:
    """Hash of a source, whatever ends its lines."""
    return hashlib.sha256(place.read_text("utf-8").encode()).hexdigest()


class Kernel:
    """A kernel of a text; code is made, or fetched from where it is kept, when it is first called."""

    def __init__(self, function: Function, text: Path) -> None:
        self.__name__, self.__doc__, self.__module__ = (
            function.__name__,
            function.__doc__,
            function.__module__,
        )
        self._text = text
        self._call: Function | None = None

    def __call__(self, *given: Any) -> Any:
        call = self._call
        if call is None:
            call = self._call = _Text.of(self._text).caller(self.__name__)
        return call(given)


class _Text:
    """The kernels of one text, compiled."""

    _all: dict[Path, _Text] = {}
    _turn = threading.Lock()

    @classmethod
    def of(cls, place: Path) -> _Text:
        """Those of a text, compiled once a process."""
        with cls._turn:
            if place not in cls._all:
                cls._all[place] = cls(place)
            return cls._all[place]

    def __init__(self, place: Path) -> None:
        text = place.read_text("utf-8")
        self.place = place
        self.signatures = json.loads(text.split("\n", 2)[1].removeprefix(SIGNATURES))
        self.code = loaded(place.stem, text)
        self.chance = _Chance(self.code)

    def caller(self, name: str) -> Function:
        """The function that hands Python's values to a kernel and takes its answer."""
        if name not in self.signatures:
            raise NotImplementedError(
                f"{name} is not called from outside of {self.place.stem}: see scripts/kernels.py"
            )
        takes, gives = self.signatures[name]
        entry = ctypes.CFUNCTYPE(ctypes.c_int32, ctypes.c_void_p, ctypes.c_void_p)(
            self.code.get_function_address(f"call_{name}")
        )
        fill, packed = _filler({"of": takes}, name), struct.Struct(_letters({"of": takes}))
        room = 8 * max(len(list(_leaves(gives))), 1)
        owner, ready = self, self.chance.ready

        def call(given: tuple[Any, ...]) -> Any:
            flat: list[Any] = []
            fill(given, flat)
            asked, answer = packed.pack(*flat), ctypes.create_string_buffer(room)
            ready()
            status = entry(asked, answer)
            if status:
                raise ArithmeticError(f"{name} stopped: {status}")
            return owner.taken(gives, answer.raw)

        return call

    def taken(self, gives: Spec, raw: bytes) -> Any:
        """The answer of a kernel as Python's values; arrays are copied and given back."""
        if gives == "b":
            return raw[0] != 0
        numbers = iter(struct.unpack(_letters(gives), raw[: struct.calcsize(_letters(gives))]))
        free = ctypes.CFUNCTYPE(None, ctypes.c_void_p)(self.code.get_function_address("NRT_decref"))
        return _taken(gives, numbers, free)


def _taken(gives: Spec, numbers: Iterator[Any], free: Function) -> Any:
    if isinstance(gives, dict):
        return tuple(_taken(part, numbers, free) for part in gives["of"])
    if isinstance(gives, list):
        owner, _, count, _, data = (next(numbers) for _ in range(5))
        shape = tuple(next(numbers) for _ in range(gives[1]))
        for _ in shape:
            next(numbers)
        made = np.empty(shape, dtype=gives[0])
        ctypes.memmove(made.ctypes.data, data, count * made.itemsize)
        free(owner)
        return made
    return None if gives == "0" else next(numbers)


def _leaves(spec: Spec) -> Iterator[Spec]:
    """Letters of the numbers by which a value is handed over; an array is owner, parent, count, size of
    one, address, lengths, strides.
    """
    if isinstance(spec, dict):
        for part in spec["of"]:
            yield from _leaves(part)
    elif isinstance(spec, list):
        yield from "q" * (5 + 2 * spec[1])
    elif spec != "0":
        yield "d" if spec == "d" else "q"


def _letters(spec: Spec) -> str:
    return "=" + "".join(_leaves(spec))


def _filler(spec: Spec, name: str) -> Callable[[Any, list[Any]], None]:
    """The function that appends a value's numbers to a list."""
    if isinstance(spec, dict):
        parts = [_filler(part, name) for part in spec["of"]]

        def several(value: Any, flat: list[Any]) -> None:
            for fill, part in zip(parts, value, strict=True):
                fill(part, flat)

        return several
    if isinstance(spec, list):
        dtype, dimensions = np.dtype(spec[0]), spec[1]

        def array(value: Any, flat: list[Any]) -> None:
            if value.dtype != dtype or value.ndim != dimensions or not value.flags.c_contiguous:
                raise TypeError(
                    f"{name}: {value.dtype}, {value.shape} is no {dtype} of {dimensions} in C order"
                )
            flat += (0, 0, value.size, value.itemsize, value.__array_interface__["data"][0])
            flat += value.shape
            flat += value.strides

        return array
    number: Function = float if spec == "d" else int
    return lambda value, flat: flat.append(number(value))


class _Chance:
    """Where kernels of a text draw from: one generator a thread, which a kernel seeds before it draws."""

    def __init__(self, code: Any) -> None:
        self.local = threading.local()
        self.bytes = 0
        address = code.get_function_address("chance_of_threads")
        if not address:
            return
        python = ctypes.pythonapi
        python.PyThread_tss_alloc.restype = ctypes.c_void_p
        self.key = ctypes.c_void_p(python.PyThread_tss_alloc())
        if python.PyThread_tss_create(self.key):
            raise MemoryError("no place for a number a thread")
        ctypes.CFUNCTYPE(None, ctypes.c_void_p)(address)(self.key)
        self.bytes = ctypes.CFUNCTYPE(ctypes.c_size_t)(code.get_function_address("chance_bytes"))()

    def ready(self) -> None:
        """Give this thread its generator."""
        if self.bytes and not hasattr(self.local, "state"):
            self.local.state = ctypes.create_string_buffer(self.bytes)
            ctypes.pythonapi.PyThread_tss_set(self.key, self.local.state)
