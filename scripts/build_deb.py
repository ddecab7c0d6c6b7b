"""Build the Debian package: python scripts/build_deb.py OUT.deb [--version 1.2.3]

It holds the program and how to run it; its dependencies are installed by the lock file when it is configured.
"""

from __future__ import annotations

import argparse
import shutil
import subprocess
import tempfile
import tomllib
from pathlib import Path

ROOT = Path(__file__).parent.parent
FROM = ROOT / "packaging"
PLACES = {
    "frywright": ("usr/bin/frywright", 0o755),
    "backup": ("usr/lib/frywright/backup", 0o755),
    "frywright.service": ("usr/lib/systemd/system/frywright.service", 0o644),
    "frywright-backup.service": ("usr/lib/systemd/system/frywright-backup.service", 0o644),
    "frywright-backup.timer": ("usr/lib/systemd/system/frywright-backup.timer", 0o644),
    "frywright.conf": ("etc/frywright/frywright.conf", 0o644),
}
BESIDE = {
    "requirements.lock": "usr/lib/frywright/requirements.lock",
    "LICENSE": "usr/share/doc/frywright/copyright",
    "docs/how-to/run-a-server.md": "usr/share/doc/frywright/run-a-server.md",
    "examples/least_rights.sql": "usr/share/doc/frywright/least_rights.sql",
}
CONTROL = """Package: frywright
Version: {version}
Section: misc
Priority: optional
Architecture: all
Depends: python3 (>= 3.11), python3-venv, adduser
Maintainer: The Frywright maintainers <maintainers@frywright.invalid>
Description: workbench for the fryers of a fried-chicken kitchen
 Cook programs simulated and proved, the day's drops, care of oil and fryers,
 and records that survive, as pages on a server of the kitchen's own.
"""


def lay(tree: Path, version: str) -> None:
    """Everything the package holds, at its place."""
    app = tree / "usr/lib/frywright/app"
    ignored = shutil.ignore_patterns("__pycache__", "*.pyc", "*.nbi", "*.nbc")
    shutil.copytree(ROOT / "src/frywright", app / "frywright", ignore=ignored)
    for name, (place, mode) in PLACES.items():
        put(FROM / name, tree / place, mode)
    for name, place in BESIDE.items():
        put(ROOT / name, tree / place, 0o644)
    for name in ("postinst", "prerm", "postrm"):
        put(FROM / name, tree / "DEBIAN" / name, 0o755)
    (tree / "DEBIAN/control").write_text(CONTROL.format(version=version), "utf-8")
    (tree / "DEBIAN/conffiles").write_text("/etc/frywright/frywright.conf\n", "utf-8")


def put(source: Path, place: Path, mode: int) -> None:
    """One file with its rights."""
    place.parent.mkdir(parents=True, exist_ok=True)
    shutil.copyfile(source, place)
    place.chmod(mode)


def build(out: Path, version: str = "") -> None:
    """The package, at ``out``."""
    known = tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))["project"]["version"]
    with tempfile.TemporaryDirectory() as folder:
        tree = Path(folder) / "tree"
        lay(tree, version or known)
        for path in (tree, *(p for p in tree.rglob("*") if p.is_dir())):
            path.chmod(0o755)
        done = ["dpkg-deb", "--build", "--root-owner-group", "-Zgzip", str(tree), str(out)]
        subprocess.run(done, check=True, stdout=subprocess.DEVNULL)


if __name__ == "__main__":
    parser = argparse.ArgumentParser()
    parser.add_argument("out", type=Path)
    parser.add_argument("--version", default="")
    asked = parser.parse_args()
    build(asked.out, asked.version)
