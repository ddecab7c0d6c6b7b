"""Signing in at a company's identity provider: one in a process of its own, made for tests on the server part
of Authlib (``oidc-provider-mock``), and lies that a false one could tell.
"""

from __future__ import annotations

import re
import subprocess
import sys
import time
import urllib.parse
import urllib.request

import pytest
from fastapi.testclient import TestClient
from joserfc import jwt
from joserfc.jwk import KeySet, OctKey, RSAKey

from frywright.ledger.facts.people import AccountLinked, SignedIn
from frywright.model.errors import AccessError, InputError, RecordError
from frywright.rooms.records import people
from frywright.rooms.records.company import link_account, mark_of
from frywright.web import company as module
from frywright.web.app import make_app
from frywright.web.company import Company, Provider, provider_of
from tests.demo import kitchen_store

HOME = "http://127.0.0.1"
PASSWORD = "oak leaf river stone"
SERVE = """
import sys
import oidc_provider_mock
with oidc_provider_mock.run_server_in_thread(0, require_nonce=True) as server:
    print(server.server_port, flush=True)
    sys.stdin.read()
"""


@pytest.fixture(scope="module")
def issuer():
    """Address of the provider."""
    pipes = {"stdin": subprocess.PIPE, "stdout": subprocess.PIPE, "stderr": subprocess.DEVNULL}
    server = subprocess.Popen([sys.executable, "-W", "ignore", "-c", SERVE], text=True, **pipes)
    yield f"http://localhost:{int(server.stdout.readline())}"
    server.stdin.close()
    server.terminate()
    server.wait(timeout=20)
    server.stdout.close()


@pytest.fixture
def store(tmp_path):
    found = kitchen_store(tmp_path / "c.db")
    people.add_account(found, "Olive Zed", "owner", PASSWORD)
    people.add_account(found, "Kim Vale", "lead", PASSWORD)
    return found


@pytest.fixture
def client(store, issuer, monkeypatch):
    for field, value in (("issuer", issuer), ("client", "fry"), ("secret", "s3cret"), ("home", HOME)):
        monkeypatch.setenv(module.SETTINGS[field], value)
    headers = {"origin": HOME, "accept": "text/html"}
    return TestClient(make_app(store), base_url=HOME, headers=headers, follow_redirects=False)


def vouched(address, subject):
    """Where the provider sends the browser after somebody signed in there."""

    class Stay(urllib.request.HTTPRedirectHandler):
        def redirect_request(self, *_):
            return None

    form = urllib.parse.urlencode({"sub": subject}).encode()
    try:
        urllib.request.build_opener(Stay).open(urllib.request.Request(address, form), timeout=20)
    except urllib.error.HTTPError as error:
        with error:
            return error.headers["location"].removeprefix(HOME)
    raise AssertionError("the provider sent nobody back")


def test_whoever_is_linked_comes_in_by_their_company(client, store, issuer):
    """Without a password here, under their own name and role; the link and the sign-in are on record."""
    link_account(store, "Kim Vale", mark_of(issuer, "k-17"), "Olive Zed", "works for us")
    assert "/sign-in/company?next=/day" in client.get("/sign-in?next=/day").text
    there = client.get("/sign-in/company?next=/day")
    assert there.status_code == 303
    assert "code_challenge_method=S256" in there.headers["location"]
    page = client.get(vouched(there.headers["location"], "k-17"))
    assert page.status_code == 200
    assert 'href="/day"' in page.text
    assert client.get("/records/own").status_code == 200
    assert "Kim Vale" in client.get("/records").text
    assert [e.fact.how for e in store.facts(SignedIn)] == ["company"]
    assert [e.author for e in store.facts(SignedIn)] == ["Kim Vale"]
    assert "k-17" not in str([e.fact for e in store.facts(AccountLinked)])
    assert store.verify()[0] == store.last().number


def test_others_of_the_company_and_those_switched_off_do_not(client, store, issuer):
    """A person who is vouched for is nobody here until the owner says who; a link that was ended is none."""
    link_account(store, "Kim Vale", mark_of(issuer, "k-17"), "Olive Zed", "works for us")
    for subject in ("stranger", "K-17", "Kim Vale", "Olive Zed"):
        answer = client.get(vouched(client.get("/sign-in/company").headers["location"], subject))
        assert answer.status_code == 403
        assert "no account here is linked" in answer.text
    link_account(store, "Kim Vale", "", "Olive Zed", "left the company")
    answer = client.get(vouched(client.get("/sign-in/company").headers["location"], "k-17"))
    assert answer.status_code == 403
    link_account(store, "Kim Vale", mark_of(issuer, "k-17"), "Olive Zed", "is back")
    people.change_account(store, "Kim Vale", "Olive Zed", "on leave", active=False)
    answer = client.get(vouched(client.get("/sign-in/company").headers["location"], "k-17"))
    assert answer.status_code == 403
    assert client.get("/records").status_code == 303


def test_an_answer_is_good_once_and_in_the_browser_that_asked(client, store, issuer):
    """Another browser that is sent somebody's answer, a second use, a state of nobody's: refused."""
    link_account(store, "Kim Vale", mark_of(issuer, "k-17"), "Olive Zed", "works for us")
    back = vouched(client.get("/sign-in/company").headers["location"], "k-17")
    other = TestClient(client.app, base_url=HOME, headers={"accept": "text/html"}, follow_redirects=False)
    assert other.get(back).status_code == 403
    state = urllib.parse.parse_qs(back.split("?")[1])["state"][0]
    other.cookies.set("company", "x" + state)
    assert other.get(back).status_code == 403
    assert client.get(back).status_code == 200
    assert client.get(back).status_code == 403
    assert client.get("/sign-in/company/back?state=&code=x").status_code == 403
    made_up = re.sub(
        "code=[^&]+", "code=made_up", vouched(client.get("/sign-in/company").headers["location"], "k-17")
    )
    assert client.get(made_up).status_code == 403


def test_one_person_of_the_company_is_one_account(store, issuer):
    """Nobody is linked twice, and nobody unknown."""
    link_account(store, "Kim Vale", mark_of(issuer, "k-17"), "Olive Zed", "works for us")
    with pytest.raises(InputError, match="no other account"):
        link_account(store, "Olive Zed", mark_of(issuer, "k-17"), "Olive Zed", "works for us")
    with pytest.raises(InputError):
        link_account(store, "Nobody", mark_of(issuer, "x"), "Olive Zed", "works for us")
    assert mark_of("https://a", "b") != mark_of("https://b", "a")


KEY = RSAKey.generate_key(2048, {"kid": "one", "use": "sig"})
PROVIDER = Provider(issuer="https://id.example", client="fry", secret="s", home="https://fry.example")


def claims(**changes):
    told = {
        "iss": PROVIDER.issuer,
        "aud": "fry",
        "sub": "k",
        "iat": int(time.time()),
        "exp": int(time.time()) + 60,
    }
    return {k: v for k, v in {**told, **changes}.items() if v is not None}


@pytest.fixture
def told(monkeypatch):
    """A sign-in there whose token is chosen."""
    chosen = {}

    def fetched(address, body=None, authorization=""):
        if address.endswith("openid-configuration"):
            names = ("authorization_endpoint", "token_endpoint", "jwks_uri")
            return {n: f"https://id.example/{n}" for n in names} | {
                "issuer": chosen.get("issuer", PROVIDER.issuer)
            }
        if address.endswith("jwks_uri"):
            return KeySet([KEY]).as_dict(private=False)
        return {"id_token": chosen["token"](chosen["nonce"])}

    monkeypatch.setattr(module, "_fetched", fetched)

    def run(token, **more):
        company = Company(PROVIDER)
        chosen.update(token=token, **more)
        address, state = company.begin("/")
        chosen["nonce"] = urllib.parse.parse_qs(address.split("?")[1])["nonce"][0]
        return company.finish(state, state, "code")

    return run


def signed(key=KEY, alg="RS256", **changes):
    return lambda nonce: jwt.encode(
        {"alg": alg, "kid": "one"}, claims(nonce=nonce, **changes), key, algorithms=[alg]
    )


def test_a_true_token_is_believed(told):
    """So that the refusals below are of the lie alone."""
    assert told(signed()) == (mark_of(PROVIDER.issuer, "k"), "/")
    assert told(signed(aud=["fry"])) == (mark_of(PROVIDER.issuer, "k"), "/")


@pytest.mark.parametrize(
    "token",
    [
        signed(iss="https://evil.example"),
        signed(aud="another"),
        signed(aud=["another"]),
        signed(exp=int(time.time()) - 3600),
        signed(exp=None),
        signed(sub=None),
        signed(azp="another"),
        signed(key=RSAKey.generate_key(2048, {"kid": "one"})),
        signed(key=OctKey.import_key("s" * 32), alg="HS256"),
        lambda nonce: jwt.encode({"alg": "RS256", "kid": "one"}, claims(nonce="another"), KEY),
        lambda nonce: jwt.encode({"alg": "RS256", "kid": "one"}, claims(), KEY),
        lambda nonce: "eyJhbGciOiJub25lIn0.e30.",
        lambda nonce: "",
    ],
)
def test_a_token_that_lies_is_refused(told, token):
    """Another issuer, audience, time, key, kind of signature, or the answer to another question."""
    with pytest.raises(AccessError, match="does not hold"):
        told(token)


def test_a_provider_that_takes_anothers_name_is_refused(told):
    """What it publishes must be under the name that was set."""
    with pytest.raises(AccessError, match="does not hold"):
        told(signed(), issuer="https://evil.example")


def test_settings_are_whole_and_by_tls():
    """Half a setting is told at the start, not at the first sign-in."""
    whole = dict(
        zip(module.SETTINGS.values(), ("https://id.example/", "fry", "s", "https://fry.example"), strict=True)
    )
    assert provider_of({}) is None
    assert provider_of(whole) == PROVIDER
    for name in whole:
        if not name.endswith("ISSUER"):
            with pytest.raises(RecordError, match=name):
                provider_of({**whole, name: ""})
    with pytest.raises(RecordError, match="https"):
        provider_of({**whole, "FRYWRIGHT_OIDC_ISSUER": "http://id.example"})
