"""What is no time stamp, no root and no address is refused in words, before anybody is asked."""

from __future__ import annotations

import datetime as dt
import socket

import pytest
from cryptography import x509
from cryptography.hazmat.primitives import hashes, serialization
from cryptography.hazmat.primitives.asymmetric import ec
from cryptography.x509.oid import NameOID

from frywright.ledger import stamps
from frywright.ledger.anchors import anchored
from frywright.model.errors import InputError, RecordError
from frywright.rooms.clock import now


@pytest.fixture
def anchor(store):
    return anchored(store, store.last(), now())


def certificate(name):
    """One that signed itself."""
    key, whose = (
        ec.generate_private_key(ec.SECP256R1()),
        x509.Name([x509.NameAttribute(NameOID.COMMON_NAME, name)]),
    )
    begins = dt.datetime(2026, 1, 1, tzinfo=dt.UTC)
    made = x509.CertificateBuilder().subject_name(whose).issuer_name(whose).public_key(key.public_key())
    made = made.serial_number(7).not_valid_before(begins).not_valid_after(begins + dt.timedelta(days=900))
    return made.sign(key, hashes.SHA256()).public_bytes(serialization.Encoding.PEM)


def test_the_roots_of_a_file_are_all_of_its_certificates(tmp_path):
    """Two in one file; a file without one, and one that is not there, are named."""
    file = tmp_path / "roots.pem"
    file.write_bytes(certificate("one") + certificate("two"))
    assert [root.subject.rfc4514_string() for root in stamps.roots_of(file)] == ["CN=one", "CN=two"]
    (tmp_path / "none.pem").write_text("nothing")
    for name in ("none.pem", "gone.pem"):
        with pytest.raises(InputError, match=rf"{name}.*a PEM file with certificates"):
            stamps.roots_of(tmp_path / name)


def test_a_text_without_stamps_has_none_and_one_that_is_no_stamp_is_refused(anchor):
    assert stamps.check_stamps(anchor.text, [anchor], []) == []
    with pytest.raises(RecordError, match="That is no time stamp"):
        stamps.check_stamps(f"{anchor.text}\n{stamps.WORD} bm90aGluZw==\n", [anchor], [])
    for cut in (f"{stamps.WORD} bm90aGl", f"{stamps.WORD} ####"):
        with pytest.raises(RecordError, match="cut off or mistyped"):
            stamps.stamps_in(f"{anchor.text}\n{cut}\n")


def test_only_an_address_of_the_web_is_asked_and_a_silent_one_is_named(anchor):
    """Nobody listens at the port."""
    with socket.socket() as taken:
        taken.bind(("127.0.0.1", 0))
        url = f"http://127.0.0.1:{taken.getsockname()[1]}/"
        with pytest.raises(RecordError, match="cannot be reached"):
            stamps.stamp_of(anchor, url)
    for other in ("ftp://127.0.0.1/", "127.0.0.1"):
        with pytest.raises(InputError, match="starts with https"):
            stamps.stamp_of(anchor, other)
