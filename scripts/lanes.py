"""Makes the cook engine's portable code, ``src/frywright/physics/lanes/march_*.ll``, from its C++ beside it.

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
SOURCES = ("lanes.h", "steam.h", "group.h", "physics.h", "events.h", "march.cpp")
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


def source_hash() -> str:
    """Hash of the sources and of how they are compiled."""
    digest = hashlib.sha256(" ".join(FLAGS).encode())
    for name in SOURCES:
        digest.update((HOME / name).read_bytes())
    return digest.hexdigest()


def made(version: str) -> str:
    """Portable code of a version."""
    with tempfile.TemporaryDirectory() as folder:
        out = Path(folder) / "march.ll"
        lanes = [*VERSIONS[version], f"-DNAME(x)=x##_{version}"]
        clang = [sys.executable, "-m", "ziglang", "c++", *FLAGS, *lanes, "-S", "-emit-llvm", "march.cpp"]
        subprocess.run([*clang, "-o", str(out)], cwd=HOME, check=True)
        text = out.read_text("utf-8")
    text = re.sub(r"(?m)^(target |source_filename|; ModuleID|!llvm\.|!\d+ = !\{(i32|!\"clang)).*\n", "", text)
    text = re.sub(r"(?m)^(attributes #\d+) = .*$", r"\1 = { nounwind }", text)
    text = re.sub(r"\n{3,}", "\n\n", text).strip()
    return f"; Made by scripts/lanes.py from sources of sha256 {source_hash()}.\n{text}\n"


def main() -> int:
    """Write the files, or compare them."""
    stale = 0
    for version in VERSIONS:
        path, text = HOME / f"march_{version}.ll", made(version)
        if "--check" in sys.argv[1:]:
            stale += path.read_text("utf-8") != text
        else:
            path.write_text(text, "utf-8")
    if stale:
        print("march_*.ll is older than its sources; run python scripts/lanes.py")
    return stale


if __name__ == "__main__":
    raise SystemExit(main())
