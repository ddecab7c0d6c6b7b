"""Makes the cook engine's portable code, ``src/frywright/physics/lanes/march_*.ll``, from its C++ beside it,
and ``physics/ground.ll``, on which the kernels of ``scripts/kernels.py`` stand.

    python scripts/lanes.py            write the files
    python scripts/lanes.py --check    say whether they are what the sources make

Needs clang of the package ``ziglang`` (an extra of developers); a machine that only runs the program needs no
compiler. What clang makes is told for no processor in particular: target and attributes are left out, so that
LLVM chooses where it runs.
"""

from __future__ import annotations

import hashlib
import re
import subprocess
import sys
import tempfile
from pathlib import Path

HOME = Path(__file__).parent.parent / "src/frywright/physics/lanes"
SOURCES = ("lanes.h", "steam.h", "group.h", "physics.h", "water.h", "events.h", "march.cpp")
VERSIONS = {"8": ("-DLANES=8",), "2": ("-DLANES=2",), "one": ("-DLANES=8", "-DONE_COOK=1")}
"""Lanes of eight cooks, of two, and of the piece classes of one."""
FLAGS = [
    "-std=c++20",
    "-O3",
    "-target",
    "x86_64-linux-gnu",
    "-mcpu=x86_64_v3",
    "-ffreestanding",
    "-fno-builtin",
    "-fno-exceptions",
    "-fno-rtti",
    "-fno-vectorize",
    "-fno-slp-vectorize",
    "-ffp-contract=on",
    "-fno-sanitize=all",
    "-fno-stack-protector",
    "-fomit-frame-pointer",
    "-fno-unwind-tables",
    "-fno-asynchronous-unwind-tables",
    "-g0",
    "-Wall",
    "-Werror",
    "-Wno-psabi",
    "-Wno-unused-command-line-argument",
]


GROUND = HOME.parent / "ground.cpp"
GROUND_FLAGS = [
    {"-mcpu=x86_64_v3": "-mcpu=x86_64", "-ffp-contract=on": "-ffp-contract=off"}.get(f, f) for f in FLAGS
]
"""Numbers by chance are the same on every machine: no products and sums fused."""


def source_hash() -> str:
    """Hash of the sources and of how they are compiled."""
    digest = hashlib.sha256(" ".join(FLAGS).encode())
    for name in SOURCES:
        digest.update((HOME / name).read_bytes())
    return digest.hexdigest()


def ground_hash() -> str:
    """The same of what kernels stand on."""
    return hashlib.sha256(" ".join(GROUND_FLAGS).encode() + GROUND.read_bytes()).hexdigest()


def made(version: str) -> str:
    """Portable code of a version of the march."""
    lanes = [*VERSIONS[version], f"-DNAME(x)=x##_{version}"]
    return _text_of(HOME / "march.cpp", [*FLAGS, *lanes], source_hash())


def ground() -> str:
    """Portable code of what kernels stand on."""
    return _text_of(GROUND, GROUND_FLAGS, ground_hash())


def _text_of(source: Path, flags: list[str], digest: str) -> str:
    with tempfile.TemporaryDirectory() as folder:
        out = Path(folder) / "made.ll"
        clang = [sys.executable, "-m", "ziglang", "c++", *flags, "-S", "-emit-llvm", source.name]
        subprocess.run([*clang, "-o", str(out)], cwd=source.parent, check=True)
        text = out.read_text("utf-8")
    text = re.sub(r"(?m)^(target |source_filename|; ModuleID|!llvm\.|!\d+ = !\{(i32|!\"clang)).*\n", "", text)
    text = re.sub(r"(?m)^(attributes #\d+) = .*$", r"\1 = { nounwind }", text)
    text = re.sub(r"\n{3,}", "\n\n", text).strip()
    return f"; Made by scripts/lanes.py from sources of sha256 {digest}.\n{text}\n"


def main() -> int:
    """Write the files, or compare them."""
    stale = 0
    texts = {HOME / f"march_{version}.ll": made(version) for version in VERSIONS}
    for path, text in (texts | {GROUND.with_suffix(".ll"): ground()}).items():
        if "--check" in sys.argv[1:]:
            stale += path.read_text("utf-8") != text
        else:
            path.write_text(text, "utf-8")
    if stale:
        print("march_*.ll or ground.ll is older than its sources; run python scripts/lanes.py")
    return stale


if __name__ == "__main__":
    raise SystemExit(main())
