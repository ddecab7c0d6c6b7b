"""What a page shows of its acts: only those that whoever looks may do; of the others, whose they are."""

from __future__ import annotations

from collections.abc import Callable

from frywright.model.roles import RIGHTS as ROLES
from frywright.model.tongues import Translate
from frywright.rooms.records.people import Who
from frywright.web.rights import OPEN, right_to_post


def only_allowed(page: str, who: Who | None, translate: Translate) -> str:
    """A page without the forms and buttons that would be refused."""
    if who is None or who.may("owner"):
        return page

    def refused(address: str) -> str:
        """Whose act it is; empty where this person may do it."""
        right = right_to_post(address) if address else OPEN
        if right is None or right == OPEN or who.may(right):
            return ""
        role = next((role for role, rights in ROLES.items() if right in rights), "owner")
        return translate("For the {role}.").format(role=translate(role))

    page = _without(page, "form", "action", refused)
    return _without(page, "button", "formaction", refused)


def _without(page: str, tag: str, name: str, refused: Callable[[str], str]) -> str:
    """A page in which elements of a tag that lead to a refused address are a word on whose they are."""
    first, *rest = page.split(f"<{tag} ")
    kept = [first]
    for piece in rest:
        head, _, body = piece.partition(">")
        posts = 'method="post"' in head or tag == "button"
        whose = refused(_value(head, name)) if posts else ""
        if whose:
            kept.append(f'<p class="help">{whose}</p>{body.partition(f"</{tag}>")[2]}')
        else:
            kept.append(f"<{tag} {piece}")
    return "".join(kept)


def _value(head: str, name: str) -> str:
    """Value of an attribute, empty where it is not there."""
    return f" {head}".partition(f' {name}="')[2].partition('"')[0]
