"""Starts the pages: on loopback for anybody at this machine, on any other host only for people with
accounts. It listens first; whoever follows the address at once waits while the pages are read in, and the
kernels are warmed behind.
"""

from __future__ import annotations

import errno
import gc
import signal
import socket
import sys
import threading
import time
import webbrowser
from collections.abc import Callable
from typing import TYPE_CHECKING, Any

from frywright.ledger.accounts import Accounts
from frywright.ledger.store import Store
from frywright.model.errors import InputError, one_of
from frywright.web.door import Door
from frywright.web.several import MOST_PROCESSES, Seat, possible, run_several

if TYPE_CHECKING:
    import uvicorn

    from frywright.web.kitchens import Kitchens

HOST = "127.0.0.1"
REST_S = 2.0
"""How often connections that nobody uses are let go (own choice)."""
FIRST_STEADY_S = 4.0
"""Age of the process at which what it has loaded is first taken out of the search for garbage, then at twice
that age, and so on (own choice).
"""
AHEAD_S = 60.0
"""How often a server looks whether today and tomorrow are ready to be shown (own choice)."""
LEAVE_S = 10
"""Seconds that requests have to end when the program is stopped."""
LOOPBACK = ("127.0.0.1", "localhost", "::1")
STYLES = ("none", "plain", "json")
"""How requests are logged."""


def serve_pages(
    store: Store, port: int, open_page: bool, host: str = HOST, log: str = "none", processes: int = 1
) -> None:
    """Serve until stopped. Prints the address once the port is ours. Raises InputError: the port is taken, a
    host that others reach without an owner, or no known way to log.
    """
    one_of(STYLES, log, "--log")
    most = MOST_PROCESSES if possible() else 1
    if not 1 <= processes <= most:
        raise InputError("--processes", processes, "1 to {most}", most=most)
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
    if processes == 1:
        _run(store, door, listener, log)
    else:
        run_several(store, door, listener, log, processes, _run)


def _listening(host: str, port: int) -> socket.socket:
    """A socket that takes connections; they wait until somebody answers."""
    listener = socket.socket(socket.AF_INET6 if ":" in host else socket.AF_INET, socket.SOCK_STREAM)
    listener.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
    try:
        listener.bind((host, port))
        listener.listen(2048)
    except OverflowError:
        listener.close()
        raise InputError("--port", port, "0 to {most}", most=65_535) from None
    except OSError as error:
        listener.close()
        if isinstance(error, socket.gaierror) or error.errno == errno.EADDRNOTAVAIL:
            raise InputError("--host", host, "an address of this machine") from error
        raise InputError("--port", port, "free; something else uses it, name another one") from error
    return listener


def _run(store: Store, door: Door, listener: socket.socket, log: str, seat: Seat | None = None) -> None:
    """Read the pages in and answer until stopped, alone or as one of several processes."""
    import uvicorn

    from frywright.web.kitchens import Kitchens
    from frywright.web.sockets import BACKLOG, KEPT_S, Connection, most_connections
    from frywright.web.watch import start_log

    start_log(log)
    Connection.most = most_connections()
    pages = Kitchens(store, door)
    shown = pages if seat is None else _beside(pages, seat)
    config = uvicorn.Config(  # forwarded headers are believed from 127.0.0.1 only
        shown,
        http=Connection,
        ws="none",
        log_config=None,
        backlog=BACKLOG if seat is None else 1,
        timeout_keep_alive=int(KEPT_S),
        timeout_graceful_shutdown=LEAVE_S,
    )
    threading.Thread(target=warm, name="warming", daemon=True).start()
    if shown is pages:  # other processes find the tuned rule where it is kept
        threading.Thread(target=_ahead, args=(pages.ahead,), name="ahead", daemon=True).start()
    threading.Thread(target=_resting, args=(store.stay_open(),), name="resting", daemon=True).start()
    main = threading.current_thread() is threading.main_thread()
    before = signal.signal(signal.SIGTERM, _left) if main else None  # it comes again after the last answer
    try:
        _server(config, pages, seat).run(sockets=[listener])
    finally:
        store.close()
        if main:
            signal.signal(signal.SIGTERM, before)


def _left(_signum: int, _frame: Any) -> None:
    raise SystemExit(0)


def _beside(pages: Kitchens, seat: Seat) -> Any:
    """The pages of one of several processes."""
    from frywright.web.passing import WRITER, Passing, counts_of

    others = [number for number in range(seat.count) if number != seat.number]
    pages.home.state.watch.others = lambda: counts_of(seat.folder, others)
    return pages if seat.number == WRITER else Passing(pages, seat.folder)


def _server(config: uvicorn.Config, pages: Kitchens, seat: Seat | None) -> uvicorn.Server:
    import uvicorn

    if seat is None:
        return uvicorn.Server(config)
    from frywright.web.passing import Other, Server

    return Server(config, Other(pages, seat.folder, seat.number))


def _ahead(ready: Callable[[], None], lives: Callable[[], bool] = lambda: True) -> None:
    """Tune and plan a day before somebody opens it: after its sales came in, and before it begins."""
    while lives():
        time.sleep(AHEAD_S)
        ready()


def _resting(rest: Callable[[], None], lives: Callable[[], bool] = lambda: True) -> None:
    """Let go of connections to the store that nobody uses, so that an idle server leaves one whole file.

    What a process has loaded stays as long as it does. Python would look through all of it again and again
    for garbage, and nobody is answered meanwhile: 0.1 s for the 200,000 objects of the pages. So those are
    set aside, at ages that double: an object is looked at once, and little garbage is ever set aside with it.
    """
    age_s, steady_s = 0.0, FIRST_STEADY_S
    while lives():
        time.sleep(REST_S)
        rest()
        age_s += REST_S
        if age_s >= steady_s:
            gc.collect()
            gc.freeze()
            steady_s *= 2


def warm() -> None:
    """Load every kernel, or compile it where this machine never did."""
    from frywright.trial.warm import warm_up

    warm_up()
