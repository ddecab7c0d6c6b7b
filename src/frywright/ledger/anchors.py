"""Anchors: heads of the chain, signed with the store's own key, to be kept where nobody who has the store
can reach them. They find what the chain cannot: an end that was cut off, an older copy put in its place, a
chain written anew.

An anchor is one line of text: a word that says what it is, the kitchen's key and name, the number and the
hash of an entry, when it was signed, the public key and the signature (Ed25519, RFC 8032; bytes as base64url,
RFC 4648; the name in percent-encoding, RFC 3986). All but the signature itself is signed. Anchors of the
first form name no kitchen.
"""

from __future__ import annotations

import base64
import binascii
import datetime as dt
import hashlib
import os
import re
import stat
import tempfile
from collections.abc import Iterable
from dataclasses import dataclass, replace
from pathlib import Path
from urllib.parse import quote, unquote

from cryptography.exceptions import InvalidSignature
from cryptography.hazmat.primitives import serialization
from cryptography.hazmat.primitives.asymmetric.ed25519 import Ed25519PrivateKey, Ed25519PublicKey

from frywright.ledger.store import Point, Store
from frywright.model.errors import FrywrightError, NotKeptError, Phrase, RecordError

FIRST_WORD, WORD = "frywright-anchor-1", "frywright-anchor-2"
LONGEST_NAME, NONE = 80, "-"
"""Letters of a kitchen's name on an anchor, so that paper keeps it on one line; and what stands for none."""
KEY_SETTING = "FRYWRIGHT_KEY"
"""Environment variable: file of the key that signs anchors."""
MOMENT = "%Y-%m-%dT%H:%M:%SZ"
LINE = re.compile(
    rf"(?:{FIRST_WORD}|{WORD}\s+([a-z0-9_]{{1,40}}|-)\s+((?:[A-Za-z0-9_.~-]|%[0-9A-F]{{2}}){{1,{LONGEST_NAME}}}))"
    r"\s+([0-9]{1,16})\s+([0-9a-f]{64})\s+([0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9:]{8}Z)"
    r"\s+([A-Za-z0-9_-]{43})\s+([A-Za-z0-9_-]{86})(?![A-Za-z0-9_-])"
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Anchor:
    """A signed head: the chain had this entry, with this hash, at this moment. ``kitchen`` is its key in its
    own store, empty for the first one there and None for an anchor of the first form, which names none.
    """

    kitchen: str | None
    name: str
    number: int
    hash: str
    at: dt.datetime
    key: str
    signature: str = ""

    @property
    def said(self) -> str:
        """What is signed."""
        whose = (
            FIRST_WORD
            if self.kitchen is None
            else f"{WORD} {self.kitchen or NONE} {quote(self.name, safe='') or NONE}"
        )
        return f"{whose} {self.number} {self.hash} {self.at.astimezone(dt.UTC).strftime(MOMENT)} {self.key}"

    @property
    def text(self) -> str:
        """The line that is kept elsewhere."""
        return f"{self.said} {self.signature}"

    @property
    def key_mark(self) -> str:
        """A short mark of the public key, to compare by eye."""
        digest = hashlib.sha256(_bytes(self.key)).hexdigest()
        return " ".join(digest[n : n + 4] for n in range(0, 16, 4))

    @property
    def signed(self) -> bool:
        """Whether the signature fits the line and its key."""
        try:
            key = Ed25519PublicKey.from_public_bytes(_bytes(self.key))
            key.verify(_bytes(self.signature), self.said.encode())
        except (InvalidSignature, ValueError, binascii.Error):
            return False
        return True


def _bytes(text: str) -> bytes:
    return base64.urlsafe_b64decode(text + "=" * (-len(text) % 4))


def _text(content: bytes) -> str:
    return base64.urlsafe_b64encode(content).decode().rstrip("=")


def key_file(store: Store) -> Path:
    """Where a store's key lies: the file that ``FRYWRIGHT_KEY`` names, else beside an SQLite store.
    Raises RecordError: a PostgreSQL store, and no file is named.
    """
    named = os.environ.get(KEY_SETTING)
    if named:
        return Path(named)
    if store.sqlite:
        return Path(f"{store.engine.url.database}.key")
    raise RecordError(
        "Say where the key that signs anchors lies: set {name} to a file that only this program reads.",
        name=KEY_SETTING,
    )


def signing_key(store: Store) -> Ed25519PrivateKey:
    """The store's key, made at its first use, for its owner alone. Raises RecordError: no file is named for
    it, others may read it, or it is no key.
    """
    path = key_file(store)
    try:
        if not path.exists():
            _make(path)
        if os.name == "posix" and stat.S_IMODE(path.stat().st_mode) & 0o077:
            raise RecordError(
                "Others may read the key {file}: whoever has it can sign for this store. Let only its owner"
                " read it (chmod 600), or take it away and a new one is made.",
                file=path,
            )
        found = serialization.load_pem_private_key(path.read_bytes(), password=None)
    except ValueError as error:
        raise RecordError("{file} is no key: {cause}", file=path, cause=error) from error
    except OSError as error:
        raise NotKeptError(error.strerror or error) from error
    if not isinstance(found, Ed25519PrivateKey):
        raise RecordError("{file} is no Ed25519 key.", file=path)
    return found


def _make(path: Path) -> None:
    """A new key under its name, whole or not at all; one that another program made meanwhile stays."""
    content = Ed25519PrivateKey.generate().private_bytes(
        serialization.Encoding.PEM, serialization.PrivateFormat.PKCS8, serialization.NoEncryption()
    )
    handle, part = tempfile.mkstemp(dir=path.parent, prefix=".key-")  # readable by its owner only
    try:
        with os.fdopen(handle, "wb") as stream:
            stream.write(content)
            stream.flush()
            os.fsync(stream.fileno())
        os.link(part, path)
    except FileExistsError:
        pass
    finally:
        Path(part).unlink()


def public_key(key: Ed25519PrivateKey) -> str:
    """The public half as anchors carry it."""
    raw = key.public_key().public_bytes(serialization.Encoding.Raw, serialization.PublicFormat.Raw)
    return _text(raw)


def anchored(store: Store, head: Point, at: dt.datetime, name: str = "") -> Anchor:
    """A head of a kitchen's chain, signed together with the name the kitchen has now. Raises RecordError: the
    store has no entry yet, or its key cannot be used.
    """
    if not head.number:
        raise RecordError("The store has no entry yet: there is nothing to anchor.")
    key = signing_key(store)
    unsigned = Anchor(
        kitchen=store.site,
        name=_short(" ".join("".join(c if c.isprintable() else " " for c in name).split())),
        number=head.number,
        hash=head.hash,
        at=at.replace(microsecond=0),
        key=public_key(key),
    )
    return replace(unsigned, signature=_text(key.sign(unsigned.said.encode())))


def _short(name: str) -> str:
    """As much of a name as an anchor has room for."""
    while len(quote(name, safe="")) > LONGEST_NAME:
        name = name[:-1]
    return name


def anchor_or_why(
    store: Store, head: Point, at: dt.datetime, name: str = ""
) -> tuple[Anchor | None, FrywrightError | None]:
    """A head of a kitchen's chain, signed; or why there is none."""
    try:
        return anchored(store, head, at, name), None
    except (RecordError, NotKeptError) as error:
        return None, error


def read_anchors(text: str) -> list[Anchor]:
    """Every anchor of a text, wherever its lines were broken. Raises RecordError: there is none, or one is
    cut off or mistyped.
    """
    found = []
    for match in LINE.finditer(text):
        kitchen, name, number, head, moment, key, signature = match.groups()
        try:
            at = dt.datetime.strptime(moment, MOMENT).replace(tzinfo=dt.UTC)
            name = "" if name in (None, NONE) else unquote(name, errors="strict")
            if not name.isprintable():
                raise ValueError(name)
        except ValueError as error:
            raise RecordError("The anchor of entry {number} is mistyped.", number=number) from error
        found.append(
            Anchor(
                kitchen="" if kitchen == NONE else kitchen,
                name=name,
                number=int(number),
                hash=head,
                at=at,
                key=key,
                signature=signature,
            )
        )
    if text.count(FIRST_WORD) + text.count(WORD) != len(found):
        raise RecordError("An anchor of the text is cut off or mistyped; copy its whole line.")
    if not found:
        raise RecordError("There is no anchor in the text: its line begins with {word}.", word=WORD)
    return found


def compare_each(store: Store, anchors: Iterable[Anchor]) -> None:
    """Whether each kitchen of a store still has every entry that its anchors name; one that names no kitchen
    is of the kitchen that ``store`` shows. Raises RecordError: as :func:`compare`; or an anchor is of a
    kitchen that is not in this store.
    """
    known = store.sites()
    for anchor in anchors:
        if anchor.kitchen is not None and anchor.kitchen not in known:
            raise RecordError(
                "The anchor of entry {number} is of {name}, a kitchen that this store does not hold.",
                number=anchor.number,
                name=anchor.name or anchor.kitchen,
            )
        compare(store if anchor.kitchen is None else store.at(anchor.kitchen), [anchor])


def compare(store: Store, anchors: Iterable[Anchor]) -> None:
    """Whether a chain still has every entry that anchors name, as it was. Raises RecordError: an anchor was
    altered, its entry is gone, or the entry is another one now.
    """
    for anchor in anchors:
        told = {
            "number": anchor.number,
            "at": f"{anchor.at:%Y-%m-%d %H:%M} UTC",
            "kitchen": anchor.name or Phrase("a kitchen that it does not name"),
        }
        if not anchor.signed:
            raise RecordError("The anchor of entry {number} was altered: its signature does not fit.", **told)
        item = store.entry(anchor.number)
        if item is None:
            raise RecordError(
                "Entry {number}, anchored at {at} for {kitchen}, is gone: the newest here is {last}. The end"
                " was cut off, or an older copy stands in place of the store.",
                last=store.last().number,
                **told,
            )
        if item.hash != anchor.hash:
            raise RecordError(
                "Entry {number} is not the one anchored at {at} for {kitchen}: the chain was written anew, or"
                " is another kitchen's.",
                **told,
            )
