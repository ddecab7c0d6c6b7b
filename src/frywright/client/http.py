"""A small client of the interface, version 1: for scripts, tills and chain offices. It needs nothing but
Python.
"""

from __future__ import annotations

import http.client
import json
import time
import urllib.error
import urllib.parse
import urllib.request
import uuid
from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any, BinaryIO

from frywright.model.errors import AccessError, FrywrightError, InputError, RecordError

AGAIN = (429, 502, 503, 504)
TRIES_COUNT, FIRST_WAIT_S = 4, 0.5


@dataclass(frozen=True, slots=True, kw_only=True)
class Client:
    """A kitchen's server by its address, and the token of a device.

    ``write`` sends the same key again when the line breaks, so that a write happens once whatever the line
    does.
    """

    address: str
    token: str
    timeout_s: float = 30.0

    def read(self, path: str, **query: Any) -> Any:
        """A GET below ``/api/v1``, for example ``read("oil")``. Raises AccessError, InputError,
        RecordError: as the server says.
        """
        text = urllib.parse.urlencode({k: v for k, v in query.items() if v is not None})
        return self._call("GET", f"{path}?{text}" if text else path, None, "")

    def entries(self, kind: str = "", after: int = 0) -> Iterator[dict[str, Any]]:
        """Every entry from a number on, in blocks."""
        while True:
            block = self.read("entries", kind=kind, after=after, limit=500)
            yield from block
            if len(block) < 500:
                return
            after = block[-1]["number"]

    def write(self, path: str, body: dict[str, Any], key: str = "") -> dict[str, Any]:
        """A POST below ``/api/v1``, once, however often it must be sent. Raises AccessError, InputError,
        RecordError: as the server says; a server that cannot be reached after several tries is a RecordError
        and may be tried again with the same key.
        """
        found = self._call("POST", path, body, key or uuid.uuid4().hex)
        return dict(found)

    def send(self, path: str, stream: BinaryIO) -> dict[str, Any]:
        """A POST of a file's bytes below ``/api/v1``; the receiver knows it by its content.
        Raises AccessError, InputError, RecordError: as the server says.
        """
        size = stream.seek(0, 2)
        headers = {"Content-Type": "application/octet-stream", "Content-Length": str(size)}
        return dict(self._asked("POST", path, stream, headers, path))

    def _call(self, method: str, path: str, body: dict[str, Any] | None, key: str) -> Any:
        headers = {}
        if body is not None:
            headers = {"Content-Type": "application/json", "Idempotency-Key": key}
        data = json.dumps(body).encode() if body is not None else None
        return self._asked(method, path, data, headers, key)

    def _asked(
        self, method: str, path: str, data: bytes | BinaryIO | None, headers: dict[str, str], key: str
    ) -> Any:
        headers = {"Authorization": f"Bearer {self.token}", "Accept": "application/json", **headers}
        url = f"{self.address.rstrip('/')}/api/v1/{path.lstrip('/')}"
        if not url.startswith(("http://", "https://")):
            raise InputError("address", repr(self.address), "one that starts with https:// or http://")
        for turn in range(TRIES_COUNT):
            if data is not None and not isinstance(data, bytes):
                data.seek(0)
            asked = urllib.request.Request(url, data=data, headers=headers, method=method)
            try:
                with urllib.request.urlopen(asked, timeout=self.timeout_s) as answer:
                    return json.loads(answer.read())
            except urllib.error.HTTPError as error:
                if error.code not in AGAIN:
                    raise _told(error) from error
            except (urllib.error.URLError, http.client.HTTPException, OSError, ValueError) as error:
                if turn == TRIES_COUNT - 1:
                    raise RecordError(
                        "{address} cannot be reached: {cause}. Send it again with the key {key}.",
                        address=self.address,
                        cause=error,
                        key=repr(key),
                    ) from error
            time.sleep(FIRST_WAIT_S * 2**turn)
        raise RecordError(
            "{address} is overloaded. Send it again with the key {key}.", address=self.address, key=repr(key)
        )


def _told(error: urllib.error.HTTPError) -> FrywrightError:
    try:
        body = json.loads(error.read())
        message = str(body.get("message") or body.get("detail"))
    except ValueError:
        message = f"HTTP {error.code}"
    if error.code in (401, 403):
        return AccessError(message)
    return RecordError(message) if error.code == 409 else FrywrightError(message)
