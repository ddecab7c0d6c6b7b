"""What every test of a page looks at besides its own claim."""

from __future__ import annotations

from collections.abc import Iterator

import httpx
import pytest
from examples.postgres import cluster
from fastapi.testclient import TestClient

GOES_ON = (302, 303, 307, 308)


@pytest.fixture(scope="session", autouse=True)
def a_browser_is_sent_on() -> Iterator[None]:
    """An answer that names another page is one that a browser follows; any other leaves it where it was, as
    if the act had not been done.
    """
    own = TestClient.request

    def request(self: TestClient, *args, **kwargs) -> httpx.Response:
        answer = own(self, *args, **kwargs)
        for one in (*answer.history, answer):
            assert "location" not in one.headers or one.status_code in GOES_ON, one
        return answer

    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(TestClient, "request", request)
        yield


@pytest.fixture(scope="session")
def postgres() -> Iterator[str]:
    """A PostgreSQL server; without one the tests that need it fail."""
    with cluster() as server:
        yield server
