"""Who comes in before a kitchen has an owner: whoever shows the code printed where Frywright runs.

Nothing is guessed from an address or a header: a proxy on the same machine, another user of it and a name
that points here all look like this machine.
"""

from __future__ import annotations

import secrets
from hmac import compare_digest

LETTERS = "abcdefghjkmnpqrstuvwxyz23456789"
"""Letters of a code: none that is read as another."""
GROUPS, GROUP_LETTERS = 3, 4
"""Twelve letters of 31: one in 8e17, far beyond what the waits between tries allow."""


class Door:
    """A code for this run of the program, and the pass that a browser keeps once it has shown it."""

    def __init__(self) -> None:
        self.code = "-".join(
            "".join(secrets.choice(LETTERS) for _ in range(GROUP_LETTERS)) for _ in range(GROUPS)
        )
        self._pass = secrets.token_urlsafe(32)

    def open_with(self, typed: str) -> str:
        """The pass for the right code, else nothing."""
        plain = typed.strip().lower().replace("-", "").replace(" ", "")
        right = compare_digest(plain.encode(), self.code.replace("-", "").encode())
        return self._pass if right else ""

    def passed(self, shown: str) -> bool:
        """Whether a browser has the pass."""
        return compare_digest(shown.encode(), self._pass.encode())
