"""Starts the pages: on loopback for anybody at this machine, on any other host only for people with
accounts. It listens first; whoever follows the address at once waits while the pages are read in, and the
kernels are warmed behind.
"""

from __future__ import annotations

import socket
import sys
import threading
import time
import webbrowser
from collections.abc import Callable

from frywright.ledger.accounts import Accounts
from frywright.ledger.store import Store
from frywright.model.errors import InputError, one_of
from frywright.web.door import Door

HOST = "127.0.0.1"
REST_S = 2.0
"""How often connections that nobody uses are let go (own choice)."""
LEAVE_S = 10
"""Seconds that requests have to end when the program is stopped."""
LOOPBACK = ("127.0.0.1", "localhost", "::1")
STYLES = ("none", "plain", "json")
"""How requests are logged."""


def serve_pages(store: Store, port: int, open_page: bool, host: str = HOST, log: str = "none") -> None:
    """Serve until stopped. Prints the address once the port is ours.

    Raises
    ------
    InputError
        The port is taken, a host that others reach without an owner, or no known way to log.
    """
    one_of(STYLES, log, "--log")
    if host not in LOOPBACK and not Accounts(store).owners():
        raise InputError(
            "--host",
            host,
            "127.0.0.1 until this kitchen has an owner: frywright people owner NAME, then start again behind"
            " a proxy with TLS",
        )
    listener = _listening(host, port)
    address = f"http://{host}:{listener.getsockname()[1]}/"
    sys.stdout.write(f"Frywright is at {address} (Ctrl+C stops it)\n")
    door, first = Door(), address
    if not Accounts(store).any():
        first = f"{address}code?code={door.code}"
        sys.stdout.write(f"This kitchen has no owner yet. Open it here: {first}\n")
    sys.stdout.flush()
    if open_page:
        threading.Timer(0.5, webbrowser.open, (first,)).start()
    _run(store, door, listener, log)


def _listening(host: str, port: int) -> socket.socket:
    """A socket that takes connections; they wait until somebody answers."""
    listener = socket.socket(socket.AF_INET6 if ":" in host else socket.AF_INET, socket.SOCK_STREAM)
    listener.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
    try:
        listener.bind((host, port))
        listener.listen(2048)
    except OSError as error:
        listener.close()
        raise InputError("--port", port, "free; something else uses it, name another one") from error
    return listener


def _run(store: Store, door: Door, listener: socket.socket, log: str) -> None:
    """Read the pages in and answer until stopped."""
    import uvicorn

    from frywright.web.kitchens import Kitchens
    from frywright.web.sockets import BACKLOG, KEPT_S, Connection, most_connections
    from frywright.web.watch import start_log

    start_log(log)
    Connection.most = most_connections()
    config = uvicorn.Config(  # forwarded headers are believed from 127.0.0.1 only
        Kitchens(store, door),
        http=Connection,
        ws="none",
        log_config=None,
        backlog=BACKLOG,
        timeout_keep_alive=int(KEPT_S),
        timeout_graceful_shutdown=LEAVE_S,
    )
    threading.Thread(target=warm, name="warming", daemon=True).start()
    threading.Thread(target=_resting, args=(store.stay_open(),), name="resting", daemon=True).start()
    try:
        uvicorn.Server(config).run(sockets=[listener])
    finally:
        store.close()


def _resting(rest: Callable[[], None]) -> None:
    """Let go of connections to the store that nobody uses, so that an idle server leaves one whole file."""
    while True:
        time.sleep(REST_S)
        rest()


def warm() -> None:
    """Load every kernel, or compile it where this machine never did."""
    from frywright.trial.warm import warm_up

    warm_up()
