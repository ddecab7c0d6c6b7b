"""Browsers on this machine at the pages of a store or of an application."""

from __future__ import annotations

from typing import Any

from fastapi.testclient import TestClient

from frywright.ledger.store import Store
from frywright.web.app import make_app

HOST = "http://127.0.0.1"


def browser(of: Any, *, page: bool = False, **more: Any) -> TestClient:
    """A browser whose writes come from these pages; ``page`` says that it asks for pages, not for JSON."""
    headers = {"origin": HOST, **({"accept": "text/html"} if page else {})}
    return TestClient(make_app(of) if isinstance(of, Store) else of, base_url=HOST, headers=headers, **more)
