"""Signing in at the company's own identity provider: OpenID Connect Core 1.0, the code flow with PKCE (RFC
7636). The settings come from the environment; without them there is no such way in.
"""

from __future__ import annotations

import base64
import hashlib
import json
import secrets
import urllib.error
import urllib.parse
import urllib.request
from collections import OrderedDict
from collections.abc import Mapping
from dataclasses import dataclass
from hmac import compare_digest
from threading import Lock
from time import monotonic
from typing import Any

from frywright.model.errors import AccessError, RecordError
from frywright.rooms.records.company import mark_of

SETTINGS = {
    "issuer": "FRYWRIGHT_OIDC_ISSUER",
    "client": "FRYWRIGHT_OIDC_CLIENT",
    "secret": "FRYWRIGHT_OIDC_SECRET",
    "home": "FRYWRIGHT_OIDC_HOME",
}
"""Environment variables: who vouches, our name and secret there, and our own address, such as
``https://fry.example``.
"""
BACK = "/sign-in/company/back"
SIGNED_BY = ["RS256", "PS256", "ES256", "EdDSA"]
"""Signatures that are believed: no shared secret, never none."""
ASKED_COUNT, ASKED_S, KNOWN_S, WAIT_S, LEEWAY_S = 1000, 600.0, 3600.0, 10.0, 60
"""Sign-ins begun at once and how long one may take; how long the provider's keys are believed; how long an
answer is waited for; how far clocks may differ (project's own rules).
"""
FRESH_S = 60.0
"""Keys that are older are asked for again where a token fits none of them: the provider may have changed them
(project's own rule).
"""


@dataclass(frozen=True, slots=True, kw_only=True)
class Provider:
    """Who vouches for people, and what we are to them."""

    issuer: str
    client: str
    secret: str
    home: str


@dataclass(frozen=True, slots=True, kw_only=True)
class _Asked:
    """A sign-in that was begun, and what nobody else can know of it."""

    nonce: str
    verifier: str
    following: str
    at_s: float


def provider_of(settings: Mapping[str, str]) -> Provider | None:
    """The provider that the environment names, None without one. Raises RecordError: a setting is missing, or
    an address that is neither TLS nor this machine.
    """
    told = {field: settings.get(name, "").strip().rstrip("/") for field, name in SETTINGS.items()}
    if not told["issuer"]:
        return None
    for field, name in SETTINGS.items():
        if not told[field]:
            raise RecordError("{name} is not set: signing in at the company needs it.", name=name)
    for field in ("issuer", "home"):
        if not told[field].startswith(("https://", "http://127.0.0.1", "http://localhost")):
            raise RecordError("{name} must begin with https://.", name=SETTINGS[field])
    return Provider(**told)


class Company:
    """Sign-ins at one provider."""

    def __init__(self, provider: Provider) -> None:
        self.provider, self._lock = provider, Lock()
        self._asked: OrderedDict[str, _Asked] = OrderedDict()
        self._known: tuple[float, dict[str, Any], Any] | None = None

    def begin(self, following: str) -> tuple[str, str]:
        """Where to send the browser, and the state it keeps to show that it was this one."""
        known, _ = self._discovered()
        state, nonce, verifier = (secrets.token_urlsafe(32) for _ in range(3))
        with self._lock:
            asked = _Asked(nonce=nonce, verifier=verifier, following=following, at_s=monotonic())
            self._asked[state] = asked
            while len(self._asked) > ASKED_COUNT:
                self._asked.popitem(last=False)
        challenge = base64.urlsafe_b64encode(hashlib.sha256(verifier.encode()).digest()).rstrip(b"=").decode()
        query = {
            "response_type": "code",
            "client_id": self.provider.client,
            "redirect_uri": self.provider.home + BACK,
            "scope": "openid",
            "state": state,
            "nonce": nonce,
            "code_challenge": challenge,
            "code_challenge_method": "S256",
        }
        return f"{known['authorization_endpoint']}?{urllib.parse.urlencode(query)}", state

    def finish(self, state: str, kept: str, code: str, issuer: str = "") -> tuple[str, str]:
        """The mark of who signed in, and where they wanted to go. Raises AccessError: the browser is another
        one, the sign-in was not begun here, or what the provider says does not hold.
        """
        with self._lock:
            asked = self._asked.pop(state, None) if state and compare_digest(state, kept) else None
        if asked is None or monotonic() - asked.at_s > ASKED_S or not code:
            raise AccessError("This sign-in was not begun here, or took too long. Begin again.")
        if issuer and issuer.rstrip("/") != self.provider.issuer:
            raise _doubted()
        token = self._token(code, asked.verifier)
        claims = self._claims(token)
        if not compare_digest(str(claims.get("nonce", "")), asked.nonce):
            raise _doubted()
        return mark_of(self.provider.issuer, str(claims["sub"])), asked.following

    def _token(self, code: str, verifier: str) -> str:
        known, _ = self._discovered()
        ours = (urllib.parse.quote(text, safe="") for text in (self.provider.client, self.provider.secret))
        body = {
            "grant_type": "authorization_code",
            "code": code,
            "redirect_uri": self.provider.home + BACK,
            "code_verifier": verifier,
        }
        basic = base64.b64encode(":".join(ours).encode()).decode()
        found = _fetched(known["token_endpoint"], urllib.parse.urlencode(body).encode(), f"Basic {basic}")
        return str(found.get("id_token", ""))

    def _claims(self, token: str) -> dict[str, Any]:
        """What a token says of a person, after its signature, issuer, audience and times were checked."""
        from joserfc import jwt
        from joserfc.errors import JoseError

        try:
            found = self._decoded(token)
            rules = jwt.JWTClaimsRegistry(
                leeway=LEEWAY_S,
                iss={"essential": True, "value": self.provider.issuer},
                aud={"essential": True, "value": self.provider.client},
                sub={"essential": True},
                exp={"essential": True},
                iat={"essential": True},
                azp={"value": self.provider.client},
            )
            rules.validate({**found.claims, "iss": str(found.claims.get("iss", "")).rstrip("/")})
        except (JoseError, ValueError) as error:
            raise _doubted() from error
        return dict(found.claims)

    def _decoded(self, token: str) -> Any:
        """A token whose signature is by one of the provider's keys; those it has now, where it fits none that
        it had.
        """
        from joserfc import jwt
        from joserfc.errors import JoseError

        _, keys = self._discovered()
        try:
            return jwt.decode(token, keys, algorithms=SIGNED_BY)
        except (JoseError, ValueError):
            _, newer = self._discovered(FRESH_S)
            if newer is keys:
                raise
            return jwt.decode(token, newer, algorithms=SIGNED_BY)

    def _discovered(self, longest_s: float = KNOWN_S) -> tuple[dict[str, Any], Any]:
        """The provider's addresses and keys, as it publishes them under its own name, not older than that."""
        from joserfc.jwk import KeySet

        with self._lock:
            if self._known is None or monotonic() - self._known[0] > longest_s:
                told = _fetched(f"{self.provider.issuer}/.well-known/openid-configuration")
                if str(told.get("issuer", "")).rstrip("/") != self.provider.issuer:
                    raise _doubted()
                keys = KeySet.import_key_set(_fetched(str(told["jwks_uri"])))  # type: ignore[arg-type]
                self._known = monotonic(), told, keys
            return self._known[1], self._known[2]


def _doubted() -> AccessError:
    return AccessError("What your company's sign-in says does not hold. Begin again, or ask the owner.")


def _opener() -> urllib.request.OpenerDirector:
    """Opens an address and no other: no answer sends us elsewhere."""
    found = urllib.request.OpenerDirector()
    for handler in (
        urllib.request.HTTPHandler(),
        urllib.request.HTTPSHandler(),
        urllib.request.HTTPDefaultErrorHandler(),
        urllib.request.HTTPErrorProcessor(),
    ):
        found.add_handler(handler)
    return found


def _fetched(address: str, body: bytes | None = None, authorization: str = "") -> dict[str, Any]:
    headers = {"Accept": "application/json"} | ({"Authorization": authorization} if authorization else {})
    asked = urllib.request.Request(address, body, headers)
    try:
        with _opener().open(asked, timeout=WAIT_S) as answer:
            found = json.loads(answer.read(1_000_000))
    except urllib.error.HTTPError as error:
        error.close()
        raise _doubted() from error
    except (OSError, ValueError) as error:
        raise RecordError("Your company's sign-in cannot be reached now. Try again later.") from error
    return dict(found)
