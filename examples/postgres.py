"""A PostgreSQL cluster of one's own without a container: made with initdb, on a socket in a temporary folder,
stopped at the end.
"""

from __future__ import annotations

import os
import shutil
import subprocess
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path


def binaries() -> Path:
    """Folder of initdb and postgres; a missing server is a failure, never a skip."""
    found = shutil.which("initdb")
    places = [Path(found).resolve().parent] if found else sorted(Path("/usr/lib/postgresql").glob("*/bin"))
    whole = [p for p in places if (p / "initdb").exists() and (p / "postgres").exists()]
    assert whole, "PostgreSQL is missing: run scripts/install-postgres.sh"
    return whole[-1]


@contextmanager
def cluster() -> Iterator[str]:
    """The URL of an empty server, without the database's name; its owner is not root."""
    place, folder = binaries(), Path(tempfile.mkdtemp(prefix="frywright-pg-"))
    user = "postgres" if os.getuid() == 0 else None
    if user:
        shutil.chown(folder, user, user)
    folder.chmod(0o700)
    data = folder / "data"

    def run(*command: str) -> None:
        done = subprocess.run(
            command,
            user=user,
            group=user,
            cwd="/",
            capture_output=True,
            text=True,
            env={**os.environ, "HOME": str(folder)},
        )
        assert done.returncode == 0, done.stdout + done.stderr

    run(
        str(place / "initdb"),
        "-D",
        str(data),
        "-U",
        "fry",
        "-A",
        "trust",
        "--no-sync",
        "-E",
        "UTF8",
        "--locale=C",
    )
    options = f"-k {folder} -c listen_addresses='' -c max_connections=300"
    run(str(place / "pg_ctl"), "-D", str(data), "-w", "-l", str(folder / "log"), "-o", options, "start")
    try:
        yield f"postgresql://fry@/{{name}}?host={folder}"
    finally:
        run(str(place / "pg_ctl"), "-D", str(data), "-w", "-m", "fast", "stop")
        shutil.rmtree(folder, ignore_errors=True)


def new_database(server: str, name: str) -> str:
    """URL of a fresh database on a server."""
    import psycopg

    with psycopg.connect(server.format(name="postgres"), autocommit=True) as connection:
        connection.execute(f'DROP DATABASE IF EXISTS "{name}" WITH (FORCE)')
        connection.execute(f'CREATE DATABASE "{name}"')
    return server.format(name=name)
