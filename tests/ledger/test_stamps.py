"""Time stamps (RFC 3161) asked of and answered by OpenSSL's own responder over HTTP, and checked against its
root certificate; forged, swapped and foreign ones are refused.
"""

from __future__ import annotations

import base64
import datetime as dt
import json
import subprocess
import threading
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer

import pytest
from typer.testing import CliRunner

from frywright.cli.main import app
from frywright.ledger import stamps
from frywright.ledger.anchors import anchored, read_anchors
from frywright.ledger.facts.probing import Reading
from frywright.ledger.store import Store
from frywright.model.errors import InputError, RecordError
from frywright.rooms import hall
from frywright.rooms.clock import now

pytestmark = pytest.mark.slow
CONFIG = """
[tsa]
default_tsa = one
[one]
serial = {folder}/serial
crypto_device = builtin
signer_cert = {folder}/tsa.pem
signer_key = {folder}/tsa.key
signer_digest = sha256
default_policy = 1.2.3.4.1
digests = sha256, sha384, sha512
accuracy = secs:1
ess_cert_id_alg = sha256
"""


def run(folder, *command, given=None):
    """OpenSSL, which must be there."""
    done = subprocess.run(["openssl", *command], cwd=folder, input=given, capture_output=True, check=False)
    assert done.returncode == 0, done.stderr.decode()
    return done.stdout


def authority(folder, name):
    """A root, a certificate for time stamps below it, and the responder's settings."""
    folder.mkdir()
    root = "req -x509 -newkey rsa:2048 -nodes -days 30 -keyout root.key -out root.pem -subj"
    run(folder, *root.split(), f"/CN={name} root")
    request = "req -newkey rsa:2048 -nodes -keyout tsa.key -out tsa.csr -subj"
    run(folder, *request.split(), f"/CN={name}")
    (folder / "ext").write_text(
        "extendedKeyUsage=critical,timeStamping\nkeyUsage=critical,digitalSignature\n"
    )
    sign = "x509 -req -in tsa.csr -CA root.pem -CAkey root.key -CAcreateserial -days 30"
    run(folder, *sign.split(), "-extfile", "ext", "-out", "tsa.pem")
    (folder / "serial").write_text("01\n")
    (folder / "config").write_text(CONFIG.format(folder=folder))
    return folder


@pytest.fixture(scope="module")
def service(tmp_path_factory):
    """The address of a responder, and its folder."""
    folder = authority(tmp_path_factory.mktemp("tsa") / "a", "An invented time service")

    class Responder(BaseHTTPRequestHandler):
        def do_POST(self):
            asked = self.rfile.read(int(self.headers["Content-Length"]))
            assert self.headers["Content-Type"] == "application/timestamp-query"
            (folder / "query").write_bytes(asked)
            answer = run(folder, *["ts", "-reply", "-queryfile", "query", "-config", "config"])
            if self.path == "/other":
                answer = (folder / "older").read_bytes()
            (folder / "older").write_bytes(answer)
            self.send_response(200)
            self.send_header("Content-Type", "application/timestamp-reply")
            self.end_headers()
            self.wfile.write(b"not a stamp" if self.path == "/bad" else answer)

        def log_message(self, *_):
            pass

    server = ThreadingHTTPServer(("127.0.0.1", 0), Responder)
    thread = threading.Thread(target=server.serve_forever)
    thread.start()
    yield f"http://127.0.0.1:{server.server_address[1]}", folder
    server.shutdown()
    thread.join()
    server.server_close()


@pytest.fixture
def path(tmp_path):
    store = Store.file(tmp_path / "s.db", now)
    reading = Reading(name="x", thermometer="T1", core_c=80.0, limit_c=73.9, load="x", units_count=1.0)
    hall.write(store, reading)
    return tmp_path / "s.db"


def anchor_of(path):
    """An anchor of the head."""
    store = Store.file(path, now)
    return anchored(store, store.last(), now())


def test_a_stamp_is_asked_for_and_checked(service, path, tmp_path):
    """OpenSSL answers; its root vouches for the time; OpenSSL itself finds the same answer good."""
    address, folder = service
    anchor = anchor_of(path)
    line = stamps.stamp_of(anchor, address)
    text = f"{anchor.text}\n{line}\n"
    (found,) = stamps.check_stamps(text, read_anchors(text), stamps.roots_of(folder / "root.pem"))
    assert found.number == 1 and "An invented time service" in found.by
    assert abs(found.at - now()) < dt.timedelta(minutes=2)
    (tmp_path / "answer").write_bytes(base64.b64decode(line.split()[1]))
    (tmp_path / "data").write_text(anchor.text)
    verify = "ts -verify -data data -in answer -CAfile"
    said = run(tmp_path, *verify.split(), str(folder / "root.pem"))
    assert b"Verification: OK" in said


def test_a_stamp_of_another_service_is_not_believed(service, path, tmp_path):
    """Whoever is no root of ours may stamp what they like."""
    address, _ = service
    other = authority(tmp_path / "b", "A stranger")
    anchor = anchor_of(path)
    text = f"{anchor.text}\n{stamps.stamp_of(anchor, address)}"
    with pytest.raises(RecordError, match="does not hold"):
        stamps.check_stamps(text, [anchor], stamps.roots_of(other / "root.pem"))


def test_a_stamp_of_another_anchor_is_refused(service, path):
    """A stamp belongs to the hash it was asked for; one byte of it changed breaks it."""
    address, folder = service
    roots = stamps.roots_of(folder / "root.pem")
    anchor = anchor_of(path)
    line = stamps.stamp_of(anchor, address)
    hall.write(
        Store.file(path, now),
        Reading(name="x", thermometer="T1", core_c=81.0, limit_c=73.9, load="x", units_count=1.0),
    )
    other = anchor_of(path)
    with pytest.raises(RecordError, match="none of the anchors"):
        stamps.check_stamps(f"{other.text}\n{line}", [other], roots)
    content = bytearray(base64.b64decode(line.split()[1]))
    content[-20] ^= 1
    forged = f"{stamps.WORD} {base64.b64encode(bytes(content)).decode()}"
    with pytest.raises(RecordError):
        stamps.check_stamps(f"{anchor.text}\n{forged}", [anchor], roots)
    with pytest.raises(RecordError, match="cut off"):
        stamps.stamps_in(f"{anchor.text}\n{stamps.WORD} ???")


def test_an_answer_that_was_not_asked_for_is_refused(service, path):
    """An older answer sent again, something that is no stamp, nobody there, an address that is none."""
    address, _ = service
    anchor = anchor_of(path)
    stamps.stamp_of(anchor, address)
    with pytest.raises(RecordError, match="did not stamp"):
        stamps.stamp_of(anchor, f"{address}/other")
    with pytest.raises(RecordError, match="no time stamp"):
        stamps.stamp_of(anchor_of(path), f"{address}/bad")
    with pytest.raises(RecordError, match="cannot be reached"):
        stamps.stamp_of(anchor_of(path), "http://127.0.0.1:9")
    with pytest.raises(InputError, match="https"):
        stamps.stamp_of(anchor_of(path), "file:///etc/passwd")


def test_commands_stamp_and_verify(service, path, tmp_path):
    """Anchor and stamp in one file kept elsewhere; without the roots the stamp is said to be unchecked."""
    address, folder = service
    runner, kept = CliRunner(), tmp_path / "kept.txt"
    made = ["records", "anchor", "--store", str(path), "--out", str(kept), "--time-service", address]
    assert runner.invoke(app, made).exit_code == 0
    verify = ["records", "verify", str(path), "--anchor", str(kept)]
    assert "not checked" in runner.invoke(app, verify).output
    done = runner.invoke(app, [*verify, "--roots", str(folder / "root.pem"), "--json"])
    assert [s["number"] for s in json.loads(done.output)["stamps"]] == [1]
    assert "was there at" in runner.invoke(app, [*verify, "--roots", str(folder / "root.pem")]).output
