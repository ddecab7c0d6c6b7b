"""Starts the pages on loopback."""

from __future__ import annotations

import socket
import sys
import threading
import webbrowser

from frywright.model.errors import InputError
from frywright.web.app import make_app
from frywright.workbench.book import open_store
from frywright.workbench.warm import warm_up

HOST = "127.0.0.1"


def serve_pages(path: str, kitchen_file: str, port: int, open_page: bool) -> None:
    """Serve until stopped. Prints the address once the port is ours.

    Raises
    ------
    InputError
        The port is taken.
    """
    import uvicorn

    store = open_store(path, kitchen_file)
    warm_up()
    listener = socket.socket(socket.AF_INET, socket.SOCK_STREAM)
    listener.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
    try:
        listener.bind((HOST, port))
    except OSError as error:
        raise InputError("--port", port, "free; something else uses it, name another one") from error
    address = f"http://{HOST}:{listener.getsockname()[1]}/"
    sys.stdout.write(f"Frywright is at {address} (Ctrl+C stops it)\n")
    sys.stdout.flush()
    if open_page:
        threading.Timer(0.5, webbrowser.open, (address,)).start()
    server = uvicorn.Server(uvicorn.Config(make_app(store), log_level="warning"))
    server.run(sockets=[listener])
