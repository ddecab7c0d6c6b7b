"""What every test of a page looks at besides its own claim."""

from __future__ import annotations

from collections.abc import Iterator

import httpx
import pytest
from fastapi.testclient import TestClient

from frywright.ledger.store import Store
from frywright.web.app import make_app
from tests.browsers import HOST

GOES_ON = (302, 303, 307, 308)
DONE = (200, 206, 304, *GOES_ON)
REFUSED = (400, 401, 403, 404, 405, 406, 409, 411, 413, 422, 429, 500, 503)
"""The answers that this program gives (RFC 9110); a browser or a till knows no others of it."""


def well_answered(answer: httpx.Response) -> None:
    """An answer that names another page is one that a browser follows; any other leaves it where it was, as
    if the act had not been done. JSON holds something, and says that it is well exactly where its status
    does.
    """
    assert "location" not in answer.headers or answer.status_code in GOES_ON, answer
    assert answer.status_code in (*DONE, *REFUSED), answer
    kind = answer.headers.get("content-type", "").partition(";")[0]
    if kind == "application/json":
        told = answer.json()
        assert told is not None, answer
        if isinstance(told, dict) and "ok" in told:
            assert told["ok"] is (answer.status_code in DONE), (answer, told)


@pytest.fixture(scope="session", autouse=True)
def a_browser_is_sent_on() -> Iterator[None]:
    """Whatever a test asks for, the answer is one of the program's own."""
    own = TestClient.request

    def request(self: TestClient, *args, **kwargs) -> httpx.Response:
        answer = own(self, *args, **kwargs)
        for one in (*answer.history, answer):
            well_answered(one)
        return answer

    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(TestClient, "request", request)
        yield


@pytest.fixture
def client(store: Store) -> TestClient:
    """A browser on this machine at its pages."""
    return TestClient(make_app(store), base_url=HOST, headers={"origin": HOST})
