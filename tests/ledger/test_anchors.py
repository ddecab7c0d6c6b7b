"""Anchors find what the chain cannot: an end cut off, an older copy, a chain written anew. Keys are made
once, for their owner alone; a QR code reads back as its text.
"""

from __future__ import annotations

import base64
import json
import shutil
import sqlite3
import stat
import subprocess
from dataclasses import replace
from pathlib import Path

import pytest
from cryptography.hazmat.primitives.asymmetric.ed25519 import Ed25519PrivateKey
from typer.testing import CliRunner

from frywright.cli.main import app
from frywright.ledger import anchors
from frywright.ledger.checking import checked, guarded
from frywright.ledger.facts.probing import Reading
from frywright.ledger.store import Point, Store
from frywright.model.entry import row_hash
from frywright.model.errors import RecordError
from frywright.paper.code import code_svg
from frywright.rooms import hall
from frywright.rooms.clock import now

FIRST_FORM = (
    "frywright-anchor-1 66 89ef3b718fd65e5d903dcb19fad49ea76ceced65868a49d66ba171b9fecbf66c"
    " 2026-11-26T20:41:20Z rM6Cy9rK3LDW5ydxv9FznozRahT80-iKR3ksMcx2dQ8"
    " 0Msuyxn3EPmeU13K8IUW2OUngtGgwUsRQhIspX15ZyIz5Okli2CQqEKXngLsOP3QRpTDeKiDlB73ieQWyNyRBw"
)
"""An anchor that names no kitchen, signed for ``stores/4c855ef.db`` by the last program that wrote such."""


def reading(core_c=80.0):
    """A reading to keep."""
    return Reading(name="x", thermometer="T1", core_c=core_c, limit_c=73.9, load="x", units_count=1.0)


@pytest.fixture
def path(tmp_path):
    store = Store.file(tmp_path / "a.db", now)
    for core in (80.0, 70.0, 81.0):
        hall.write(store, reading(core))
    return tmp_path / "a.db"


def anchor_of(store):
    """An anchor of the head as it is."""
    return anchors.anchored(store, store.last(), now())


def raw(path, *statements):
    """Statements behind the program's back."""
    with sqlite3.connect(path) as connection:
        connection.execute("DROP TRIGGER IF EXISTS entry_no_update")
        connection.execute("DROP TRIGGER IF EXISTS entry_no_delete")
        for statement in statements:
            connection.execute(*statement)
    connection.close()


def rewrite(path, change):
    """Write the whole chain anew with right hashes after ``change`` had its way with the rows."""
    connection = sqlite3.connect(path)
    names = "number, kind, happened_at, recorded_at, author, payload, replaces, versions"
    rows = connection.execute(f"SELECT {names} FROM entry ORDER BY number").fetchall()
    connection.close()
    raw(path, ("DELETE FROM entry",))
    previous = "0" * 64
    for n, row in enumerate(change(rows), 1):
        _, kind, happened, recorded, author, payload, replaces, versions = row
        link = row_hash(previous, n, (kind, author, replaces), (happened, recorded), (payload, versions))
        values = (n, kind, happened, recorded, author, payload, replaces, versions, previous, link)
        raw(path, ("INSERT INTO entry VALUES ('',?,?,?,?,?,?,?,?,?,?)", values))
        previous = link


def test_a_clean_store_agrees_with_its_anchors(path):
    """Also after more was written."""
    store = Store.file(path, now)
    kept = [anchor_of(store)]
    hall.write(store, reading())
    kept.append(anchor_of(store))
    anchors.compare(store, kept)
    assert [a.number for a in kept] == [3, 4]


def test_a_tail_cut_off_passes_the_chain_and_not_the_anchor(path):
    """What verify cannot see is found by an anchor kept elsewhere."""
    anchor = anchor_of(Store.file(path, now))
    raw(path, ("DELETE FROM entry WHERE number > 1",))
    store = Store.file(path, now)
    assert store.verify()[0] == 1
    with pytest.raises(RecordError, match=r"Entry 3, anchored at .* is gone: the newest here is 1"):
        anchors.compare(store, [anchor])


def test_a_chain_written_anew_passes_the_chain_and_not_the_anchor(path):
    """The failing reading is made a good one, every hash after it is right."""
    anchor = anchor_of(Store.file(path, now))
    rewrite(path, lambda rows: [(*r[:5], r[5].replace("70.0", "85.0"), *r[6:]) for r in rows])
    store = Store.file(path, now)
    assert store.verify()[0] == 3
    with pytest.raises(RecordError, match="written anew"):
        anchors.compare(store, [anchor])


def test_an_older_copy_in_its_place_is_found(path, tmp_path):
    """Whole and genuine, but of yesterday."""
    shutil.copy(path, tmp_path / "old.db")
    store = Store.file(path, now)
    hall.write(store, reading(60.0))
    anchor = anchor_of(store)
    with pytest.raises(RecordError, match="older copy"):
        anchors.compare(Store.file(tmp_path / "old.db", now), [anchor])


def test_an_anchor_that_was_altered_does_not_fit(path):
    """Number, hash, time, key or signature: any of them changed, and the signature does not fit."""
    store = Store.file(path, now)
    text = anchor_of(store).text
    word, kitchen, name, number, head, at, key, signature = text.split()
    first = f"{word} {kitchen} {name}"
    other = anchors.public_key(Ed25519PrivateKey.generate())
    for changed in (
        f"{first} 2 {head} {at} {key} {signature}",
        f"{word} - Other {number} {head} {at} {key} {signature}",
        f"{word} other {name} {number} {head} {at} {key} {signature}",
        f"{first} {number} {'0' * 64} {at} {key} {signature}",
        f"{first} {number} {head} 2026-01-01T00:00:00Z {key} {signature}",
        f"{first} {number} {head} {at} {other} {signature}",
        f"{first} {number} {head} {at} {key} {'A' * 86}",
    ):
        with pytest.raises(RecordError, match="altered"):
            anchors.compare(store, anchors.read_anchors(changed))


def test_an_anchor_of_the_first_form_still_holds(tmp_path):
    """It names no kitchen; its signature and its entry are checked as ever."""
    shutil.copy(Path(__file__).parent / "stores" / "4c855ef.db", tmp_path / "old.db")
    store = Store.file(tmp_path / "old.db", now)
    (old,) = anchors.read_anchors(f"on paper: {FIRST_FORM}")
    assert old.kitchen is None and old.text == FIRST_FORM
    anchors.compare(store, [old])
    anchors.compare_each(store, [old])
    with pytest.raises(RecordError, match="altered"):
        anchors.compare(store, anchors.read_anchors(FIRST_FORM.replace(" 66 ", " 65 ")))


def test_a_name_with_letters_that_nobody_sees_is_read_back(path):
    """As they come along where a name is copied from elsewhere: a soft hyphen, an escape, a turned line."""
    store = Store.file(path, now)
    made = anchors.anchored(store, store.last(), now(), "East\u00ad\x1b[1m\u202eGate\nSouth")
    assert anchors.read_anchors(made.text) == [made]
    assert made.name == "East [1m Gate South"


@pytest.mark.parametrize("name", ["East Gate", "Pollo frito «Ñandú» 24/7", "鶏" * 40, "-", ""])
def test_an_anchor_names_its_kitchen(path, name):
    """Whatever its letters; a long one is cut so that paper keeps it on one line."""
    store = Store.file(path, now)
    made = anchors.anchored(store.at(""), store.last(), now(), name)
    (read,) = anchors.read_anchors(made.text)
    assert read == made or name == "-"
    assert read.signed and name.startswith(read.name) and (read.name or name in ("", "-"))
    assert max(len(word) for word in made.text.split()) <= 86


def test_an_anchor_is_compared_with_its_own_kitchen(path):
    """In a store of several; one of a kitchen that is not there is no proof of anything."""
    store = Store.file(path, now)
    hall.write(store.at("east"), reading(99.0))
    east = anchors.anchored(store.at("east"), store.at("east").last(), now(), "East Gate")
    anchors.compare_each(store, [east, anchor_of(store)])
    with pytest.raises(RecordError, match=r"anchored at .* for East Gate: .* another kitchen's"):
        anchors.compare(store, [east])
    with pytest.raises(RecordError, match="West Gate, a kitchen that this store does not hold"):
        anchors.compare_each(store, [replace(east, kitchen="west", name="West Gate")])


def test_anchors_are_read_from_any_text(path):
    """Copied from paper with its lines broken, between other words, several at once; a cut one is told."""
    store = Store.file(path, now)
    anchor = anchor_of(store)
    found = anchors.read_anchors(f"kept on Monday:\n{anchor.text.replace(' ', chr(10))}\nand {anchor.text}.")
    assert found == [anchor, anchor]
    with pytest.raises(RecordError, match="cut off"):
        anchors.read_anchors(f"{anchor.text}\n{anchor.text[:-5]}")
    with pytest.raises(RecordError, match="no anchor"):
        anchors.read_anchors("a shopping list")
    with pytest.raises(RecordError, match="mistyped"):
        anchors.read_anchors(anchor.text.replace(f"{anchor.at:%Y-%m}", "2026-77"))
    with pytest.raises(RecordError, match="mistyped"):
        anchors.read_anchors(anchor.text.replace(" - - ", " - %1B%5B2J "))


def test_a_signature_is_one_that_others_can_check(path, tmp_path):
    """OpenSSL, which shares no code with us here, verifies it as Ed25519 (RFC 8032)."""
    anchor = anchor_of(Store.file(path, now))
    (tmp_path / "said").write_text(anchor.said)
    (tmp_path / "signature").write_bytes(base64.urlsafe_b64decode(anchor.signature + "=="))
    # SubjectPublicKeyInfo of an Ed25519 key is twelve fixed bytes and the key (RFC 8410, section 4)
    spki = bytes.fromhex("302a300506032b6570032100") + base64.urlsafe_b64decode(anchor.key + "=")
    (tmp_path / "public.der").write_bytes(spki)
    command = (
        "openssl pkeyutl -verify -pubin -keyform DER -inkey public.der -rawin -in said -sigfile signature"
    )
    done = subprocess.run(command.split(), cwd=tmp_path, capture_output=True, text=True, check=False)
    assert "Verified Successfully" in done.stdout, done.stderr
    (tmp_path / "said").write_text(anchor.said.replace(" 3 ", " 2 "))
    assert subprocess.run(command.split(), cwd=tmp_path, capture_output=True, check=False).returncode != 0


def test_the_key_is_made_once_and_for_its_owner_alone(path, tmp_path, monkeypatch):
    """0600 beside the store, or where the environment says; one that others may read is refused."""
    store = Store.file(path, now)
    first = anchor_of(store)
    file = tmp_path / "a.db.key"
    assert stat.S_IMODE(file.stat().st_mode) == 0o600
    assert anchor_of(store).key == first.key
    assert not list(tmp_path.glob(".key-*"))
    file.chmod(0o644)
    with pytest.raises(RecordError, match="chmod 600"):
        anchor_of(store)
    file.chmod(0o600)
    file.write_text("no key")
    with pytest.raises(RecordError, match="is no key"):
        anchor_of(store)
    monkeypatch.setenv(anchors.KEY_SETTING, str(tmp_path / "other.key"))
    assert anchor_of(store).key != first.key
    assert (tmp_path / "other.key").exists()


def test_an_empty_store_has_nothing_to_anchor(tmp_path):
    """An anchor of nothing would fit every store."""
    with pytest.raises(RecordError, match="no entry"):
        anchors.anchored(Store.file(tmp_path / "e.db", now), Point(), now())


def test_a_qr_code_reads_back_as_its_text(path):
    """Read by another library than the one that drew it."""
    from io import BytesIO

    import numpy as np
    import vl_convert
    import zxingcpp
    from PIL import Image

    text = anchor_of(Store.file(path, now)).text
    png = vl_convert.svg_to_png(code_svg(text), scale=2)
    picture = Image.open(BytesIO(png)).convert("RGBA")
    white = Image.new("RGBA", picture.size, "white")
    grey = np.asarray(Image.alpha_composite(white, picture).convert("L"))
    found = zxingcpp.read_barcodes(grey, formats=zxingcpp.BarcodeFormat.QRCode)
    assert [code.text for code in found] == [text]


def test_a_database_without_its_triggers_is_told(path):
    """Nothing changed yet, but something may."""
    assert guarded(Store.file(path, now))
    raw(path)
    assert not checked(Store.file(path, now), now()).guarded


def test_commands_anchor_and_verify(path, tmp_path):
    """A growing file of anchors kept elsewhere; a cut tail ends with the code of broken records."""
    runner, kept = CliRunner(), tmp_path / "elsewhere.txt"
    for _ in range(2):
        done = runner.invoke(app, ["records", "anchor", "--store", str(path), "--out", str(kept)])
        assert done.exit_code == 0, done.output
        hall.write(Store.file(path, now), reading())
    assert len(anchors.read_anchors(kept.read_text())) == 2
    verify = ["records", "verify", str(path), "--anchor", str(kept)]
    done = runner.invoke(app, [*verify, "--json"])
    assert [a["number"] for a in json.loads(done.output)["anchors"]] == [3, 4]
    assert "as it was" in runner.invoke(app, verify).output
    raw(path, ("DELETE FROM entry WHERE number > 3",))
    done = runner.invoke(app, verify)
    assert done.exit_code == 5
