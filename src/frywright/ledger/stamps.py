"""Time stamps of anchors by a service of somebody else (RFC 3161): that a head was there at a time which
nobody at the kitchen sets. A stamp is one more line beside its anchor; the service's root certificates say
whom to believe.
"""

from __future__ import annotations

import base64
import binascii
import datetime as dt
import hashlib
import re
import urllib.error
import urllib.request
from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from frywright.ledger.anchors import Anchor
from frywright.model.errors import InputError, RecordError

WORD = "frywright-stamp-1"
LINE = re.compile(rf"{WORD}\s+([A-Za-z0-9+/]+={{0,2}})(?![A-Za-z0-9+/=])")
LARGEST_ANSWER_BYTES = 100_000
WAIT_S = 30.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Stamped:
    """An anchor's time stamp that was checked: the service's time, and who signed it."""

    number: int
    at: dt.datetime
    by: str


def _tools() -> Any:
    try:
        import rfc3161_client
    except ModuleNotFoundError as error:
        raise RecordError("Time stamps need the extra: pip install 'frywright[timestamps]'.") from error
    return rfc3161_client


def stamp_of(anchor: Anchor, url: str) -> str:
    """Ask a service for a time stamp of an anchor; the line that is kept beside it.

    Only the anchor's hash is sent. Raises InputError: the address is none of the web. Raises RecordError: the
    service cannot be reached, refuses, or answers something else than what was asked.
    """
    tools = _tools()
    if not url.startswith(("https://", "http://")):
        raise InputError("--time-service", repr(url), "an address that starts with https:// or http://")
    builder = tools.TimestampRequestBuilder().data(anchor.text.encode())
    asked = builder.hash_algorithm(tools.HashAlgorithm.SHA256).cert_request(cert_request=True).build()
    request = urllib.request.Request(
        url,
        data=asked.as_bytes(),
        headers={"Content-Type": "application/timestamp-query", "Accept": "application/timestamp-reply"},
    )
    try:
        with urllib.request.urlopen(request, timeout=WAIT_S) as answer:
            content = answer.read(LARGEST_ANSWER_BYTES)
    except (urllib.error.URLError, TimeoutError, ConnectionError) as error:
        raise RecordError("{url} cannot be reached: {cause}", url=url, cause=error) from error
    found = _decoded(content)
    if not _granted(found) or _imprint(found) != _hash(anchor) or found.tst_info.nonce != asked.nonce:
        raise RecordError("{url} did not stamp what it was asked to.", url=url)
    return f"{WORD} {base64.b64encode(content).decode()}"


def _granted(found: Any) -> bool:
    return int(found.status) == 0  # PKIStatus granted (RFC 3161, 2.4.2)


def _hash(anchor: Anchor) -> bytes:
    return hashlib.sha256(anchor.text.encode()).digest()


def _imprint(found: Any) -> bytes:
    return bytes(found.tst_info.message_imprint.message)


def _decoded(content: bytes) -> Any:
    try:
        return _tools().decode_timestamp_response(content)
    except ValueError as error:
        raise RecordError("That is no time stamp: {cause}", cause=error) from error


def stamps_in(text: str) -> list[bytes]:
    """Every stamp of a text, as the services sent them. Raises RecordError: one is cut off or mistyped."""
    try:
        found = [base64.b64decode(match[1], validate=True) for match in LINE.finditer(text)]
    except binascii.Error as error:
        raise RecordError("A time stamp of the text is cut off or mistyped.") from error
    if text.count(WORD) != len(found):
        raise RecordError("A time stamp of the text is cut off or mistyped.")
    return found


def roots_of(file: Path) -> list[Any]:
    """Certificates of a PEM file. Raises InputError: it cannot be read, or holds none."""
    from cryptography import x509

    try:
        return list(x509.load_pem_x509_certificates(file.read_bytes()))
    except (OSError, ValueError) as error:
        raise InputError("--roots", str(file), "a PEM file with certificates") from error


def check_stamps(text: str, anchors: Sequence[Anchor], roots: Sequence[Any]) -> list[Stamped]:
    """Every stamp of a text against the anchors beside it and the roots that are believed.
    Raises RecordError: a stamp belongs to none of the anchors, or its signature leads to none of the roots.
    """
    by_hash, stamped = {_hash(anchor): anchor for anchor in anchors}, []
    contents = stamps_in(text)
    if not contents:
        return []
    tools = _tools()
    for content in contents:
        found = _decoded(content)
        anchor = by_hash.get(_imprint(found)) if _granted(found) else None
        if anchor is None:
            raise RecordError("A time stamp belongs to none of the anchors beside it.")
        builder = tools.VerifierBuilder(roots=list(roots))
        try:
            builder.build().verify(found, _hash(anchor))
        except (tools.VerificationError, ValueError) as error:
            raise RecordError(
                "The time stamp of entry {number} does not hold: {cause}", number=anchor.number, cause=error
            ) from error
        info = found.tst_info
        stamped.append(Stamped(number=anchor.number, at=info.gen_time, by=_signer(found)))
    return stamped


def _signer(found: Any) -> str:
    """Name of the certificate that signed a stamp."""
    from cryptography import x509

    (signer,) = found.signed_data.signer_infos
    for content in found.signed_data.certificates:
        certificate = x509.load_der_x509_certificate(content)
        if (certificate.serial_number, certificate.issuer) == (signer.serial_number, signer.issuer):
            return certificate.subject.rfc4514_string()
    return ""
