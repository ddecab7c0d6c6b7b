"""Signing in at a real OpenID provider, in a process of its own: ``oidc-provider`` of npm, which the OpenID
Foundation lists as certified. Played as a browser plays it; then with what must be refused, and with the
provider's keys changed meanwhile.
"""

from __future__ import annotations

import json
import re
import shutil
import socket
import subprocess
import urllib.parse
from contextlib import contextmanager
from pathlib import Path

import httpx
import pytest
from fastapi.testclient import TestClient
from joserfc.jwk import RSAKey

from frywright.ledger.facts.people import SignedIn
from frywright.rooms.records import people
from frywright.rooms.records.company import link_account, mark_of
from frywright.web import company as module
from frywright.web.app import make_app
from tests.demo import kitchen_store

pytestmark = pytest.mark.slow
HOME = "http://127.0.0.1"
FOLDER = Path(__file__).parents[1] / "openid"
PASSWORD = "oak leaf river stone"


def free_port():
    with socket.socket() as one:
        one.bind(("127.0.0.1", 0))
        return one.getsockname()[1]


class Provider:
    """The provider at an address of its own, with keys that may change between two starts."""

    def __init__(self, folder):
        self.port, self.keys = free_port(), folder / "keys.json"
        self.issuer = f"http://127.0.0.1:{self.port}"

    @contextmanager
    def running(self, kid="one", shift_s=0):
        """Up until the block ends; ``shift_s`` is what its clock is ahead by."""
        node = shutil.which("node")
        assert node and (FOLDER / "node_modules" / "oidc-provider").is_dir(), "run scripts/install-openid.sh"
        key = RSAKey.generate_key(2048, {"kid": kid, "use": "sig", "alg": "RS256"})
        self.keys.write_text(json.dumps({"keys": [key.as_dict(private=True)]}))
        command = [node, "serve.mjs", str(self.port), str(self.keys), str(shift_s)]
        pipes = {"stdin": subprocess.PIPE, "stdout": subprocess.PIPE, "stderr": subprocess.DEVNULL}
        server = subprocess.Popen(command, cwd=FOLDER, text=True, **pipes)
        try:
            assert "ready" in iter(server.stdout.readline, "ready\n") or server.poll() is None
            yield
        finally:
            server.stdin.close()
            server.wait(timeout=20)
            server.stdout.close()

    def vouch(self, address, subject):
        """Where it sends the browser after somebody signed in there and agreed."""
        kept: dict[str, str] = {}

        def visit(where, form=None):
            """A page, with every cookie it ever set: a browser's clock would drop those of another time."""
            sent = {"cookie": "; ".join(f"{name}={value}" for name, value in kept.items())}
            with httpx.Client(timeout=20, headers=sent) as browser:
                answer = browser.get(where) if form is None else browser.post(where, data=form)
            for line in answer.headers.get_list("set-cookie"):
                name, value = line.split(";")[0].split("=", 1)
                kept[name] = value
            return answer

        answer = visit(address)
        for _ in range(12):
            there = answer.headers.get("location", "")
            if there.startswith(HOME + "/"):
                return there.removeprefix(HOME)
            if there:
                answer = visit(urllib.parse.urljoin(str(answer.url), there))
                continue
            form = re.search(r'<form[^>]*action="([^"]+)"', answer.text)
            assert form, answer.text[:500]
            asked = "login" if 'value="login"' in answer.text else "consent"
            typed = {"prompt": asked, "login": subject, "password": "any"}
            answer = visit(urllib.parse.urljoin(str(answer.url), form[1]), typed)
        raise AssertionError("the provider sent nobody back")


@pytest.fixture(scope="module")
def provider(tmp_path_factory):
    return Provider(tmp_path_factory.mktemp("openid"))


@pytest.fixture
def store(tmp_path):
    found = kitchen_store(tmp_path / "c.db")
    people.add_account(found, "Olive Zed", "owner", PASSWORD)
    people.add_account(found, "Kim Vale", "lead", PASSWORD)
    return found


@pytest.fixture
def client(store, provider, monkeypatch):
    told = {"issuer": provider.issuer, "client": "fry", "secret": "s3cret", "home": HOME}
    for field, value in told.items():
        monkeypatch.setenv(module.SETTINGS[field], value)
    link_account(store, "Kim Vale", mark_of(provider.issuer, "k-17"), "Olive Zed", "works for us")
    headers = {"origin": HOME, "accept": "text/html"}
    return TestClient(make_app(store), base_url=HOME, headers=headers, follow_redirects=False)


def begun(client):
    """Where the browser is sent to sign in."""
    return client.get("/sign-in/company?next=/day").headers["location"]


def test_somebody_signs_in_there_and_comes_back(client, store, provider):
    """By its own pages, forms and consent; one whom nobody linked does not come in."""
    with provider.running():
        answer = client.get(provider.vouch(begun(client), "k-17"))
        assert answer.status_code == 200 and 'href="/day"' in answer.text
        assert [(e.author, e.fact.how) for e in store.facts(SignedIn)] == [("Kim Vale", "company")]
        assert client.get("/records/own").status_code == 200
        assert client.get(provider.vouch(begun(client), "k-18")).status_code == 403


def test_an_answer_to_another_question_is_refused(client, store, provider):
    """The nonce was changed on the way there, so that its token, truly signed, is for another sign-in; nor
    does a verifier of another sign-in open a code.
    """
    with provider.running():
        address = begun(client)
        other = re.sub("nonce=[^&]+", "nonce=anothers", address)
        answer = client.get(provider.vouch(other, "k-17"))
        assert answer.status_code == 403 and "does not hold" in answer.text
        weak = re.sub("code_challenge=[^&]+", "code_challenge=" + "A" * 43, begun(client))
        assert client.get(provider.vouch(weak, "k-17")).status_code == 403
        assert not list(store.facts(SignedIn))


@pytest.mark.parametrize("shift_s", [-7200, 7200])
def test_a_token_of_another_time_is_refused(client, store, provider, shift_s):
    """Its clock is two hours off: what it signs is over already, or of the future."""
    with provider.running(shift_s=shift_s):
        answer = client.get(provider.vouch(begun(client), "k-17"))
        assert answer.status_code == 403 and "does not hold" in answer.text
        assert not list(store.facts(SignedIn))


def test_keys_that_changed_are_asked_for_and_old_ones_believed_no_more(client, store, provider, monkeypatch):
    """The next sign-in after a change of keys comes in; they are not asked for at every token of no known
    key.
    """
    with provider.running(kid="one"):
        assert client.get(provider.vouch(begun(client), "k-17")).status_code == 200
    with provider.running(kid="two"):
        monkeypatch.setattr(module, "FRESH_S", 0.0)
        assert client.get(provider.vouch(begun(client), "k-17")).status_code == 200
    with provider.running(kid="three"):
        monkeypatch.setattr(module, "FRESH_S", 3600.0)
        assert client.get(provider.vouch(begun(client), "k-17")).status_code == 403
    assert len(list(store.facts(SignedIn))) == 2
