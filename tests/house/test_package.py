"""The Debian package, installed into a folder and updated there over a kitchen's store."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
import time
import urllib.request
from pathlib import Path

import pytest

from frywright.ledger.store import Store
from frywright.rooms.clock import now
from frywright.rooms.kitchen import remember_kitchen
from frywright.trial.kitchens import demo_text

HERE = Path(__file__).parents[2]
UNITS = ("frywright.service", "frywright-backup.service", "frywright-backup.timer")
FORCED = ("--force-not-root", "--force-script-chrootless", "--force-depends", "--force-confold")

pytestmark = pytest.mark.slow


def run(*command: object, **settings: str) -> str:
    """What a command said; one that fails is a failure of the test."""
    env = {**os.environ, **settings}
    env.pop("PYTHONPATH", None)
    done = subprocess.run([str(c) for c in command], capture_output=True, text=True, env=env)
    assert done.returncode == 0, done.stdout + done.stderr
    return done.stdout


@pytest.fixture(scope="module")
def packages(tmp_path_factory):
    """The package now, and the same as an earlier version."""
    folder = tmp_path_factory.mktemp("deb")
    for version in ("0.0.9", "0.1.0"):
        run(sys.executable, HERE / "scripts/build_deb.py", folder / f"{version}.deb", "--version", version)
    return folder


@pytest.fixture
def root(tmp_path):
    """An empty system that knows of no package."""
    for part in ("var/lib/dpkg/info", "var/lib/dpkg/updates", "var/lib/dpkg/triggers", "var/log"):
        (tmp_path / part).mkdir(parents=True)
    (tmp_path / "var/lib/dpkg/status").touch()
    return tmp_path


def dpkg(root: Path, *what: object) -> str:
    """Install into or remove from that system; its dependencies are this environment's."""
    log = f"--log={root}/var/log/dpkg.log"
    return run("dpkg", f"--root={root}", log, *FORCED, *what, FRYWRIGHT_ENVIRONMENT=sys.prefix)


def settings_of(root: Path) -> dict[str, str]:
    """What the unit hands on, within that system."""
    lines = (root / "etc/frywright/frywright.conf").read_text().splitlines()
    told = dict(line.split("=", 1) for line in lines if line and not line.startswith("#"))
    told |= {k: f"{root}{v}" for k, v in told.items() if v.startswith("/")}
    return {**told, "FRYWRIGHT_CACHE": f"{root}/var/cache/frywright"}


def test_it_is_installed_updated_rolled_back_and_removed(packages, root):
    """Settings that were changed stay; before the update there is a backup that the older program opens; what
    was recorded outlives the package.
    """
    dpkg(root, "-i", packages / "0.0.9.deb")
    store = root / "var/lib/frywright/frywright.db"
    store.parent.mkdir(parents=True)
    remember_kitchen(Store.file(store, now), demo_text(), "demo.toml")
    conf = root / "etc/frywright/frywright.conf"
    conf.write_text(conf.read_text().replace("FRYWRIGHT_PORT=8377", "FRYWRIGHT_PORT=0"))
    command, named = root / "usr/bin/frywright", settings_of(root)
    assert "unbroken" in run(command, "records", "verify", "--store", store, **named)
    dpkg(root, "-i", packages / "0.1.0.deb")
    kept = Path(named["FRYWRIGHT_BACKUPS"]) / "before-0.1.0.zip"
    assert kept.stat().st_size > 1000
    assert kept.stat().st_mode & 0o077 == 0 == kept.parent.stat().st_mode & 0o077
    assert "FRYWRIGHT_PORT=0" in conf.read_text()
    assert "unbroken" in run(command, "records", "verify", "--store", store, **named)
    serves(root, named)
    for n in (1, 2, 3):
        run(root / "usr/lib/frywright/backup", f"2026-11-0{n}", **{**named, "FRYWRIGHT_BACKUPS_KEPT": "2"})
    assert sorted(p.name for p in kept.parent.iterdir()) == ["2026-11-02.zip", "2026-11-03.zip", kept.name]
    dpkg(root, "-i", packages / "0.0.9.deb")
    back = root / "var/lib/frywright/back.db"
    assert "unbroken" in run(command, "records", "restore", kept, "--store", back, **named)
    dpkg(root, "--purge", "frywright")
    assert store.exists() and kept.exists()
    assert not command.exists() and not (root / "opt/frywright").exists()


def serves(root: Path, named: dict[str, str]) -> None:
    """The command of the unit, as it stands there, answers that it is ready."""
    unit = (root / "usr/lib/systemd/system/frywright.service").read_text()
    line = next(x for x in unit.splitlines() if x.startswith("ExecStart=")).removeprefix("ExecStart=")
    for name, value in named.items():
        line = line.replace(f"${{{name}}}", value)
    env = {**os.environ, **named}
    env.pop("PYTHONPATH", None)
    server = subprocess.Popen(f"{root}{line}".split(), stdout=subprocess.PIPE, text=True, env=env)
    try:
        assert server.stdout
        address = server.stdout.readline().split(" is at ")[1].split(" ")[0]
        with urllib.request.urlopen(f"{address}health/ready", timeout=30) as answer:
            assert answer.status == 200
        begun = time.monotonic()
    finally:
        server.terminate()
        server.wait(timeout=30)
        server.stdout.close()
    assert time.monotonic() - begun < 30


def test_the_units_are_sound_and_hardened(packages, root):
    """As systemd itself reads them; its own measure of exposure, 0 to 100, stays below 20."""
    assert shutil.which("systemd-analyze"), "systemd is missing: run scripts/install-debian.sh"
    run("dpkg-deb", "-x", packages / "0.1.0.deb", root)
    for unit in UNITS:
        place = root / "usr/lib/systemd/system" / unit
        text = place.read_text().replace("=/usr/", f"={root}/usr/")
        place.write_text(text)
    said = run("systemd-analyze", "verify", "--man=no", *(root / "usr/lib/systemd/system" / u for u in UNITS))
    assert said.strip() == ""
    for unit in UNITS[:2]:
        place = root / "usr/lib/systemd/system" / unit
        run("systemd-analyze", "security", "--offline=true", "--threshold=20", "--no-pager", place)
