"""``frywright people``: the first owner, accounts and devices."""

from __future__ import annotations

import typer

from frywright.cli.shop import Shop, command

app = typer.Typer()
SECRET = typer.Option("", help="Password; without it you are asked.", hide_input=True)


def _asked(shop: Shop, password: str) -> str:
    return password or str(typer.prompt(shop.tr("Password"), hide_input=True, confirmation_prompt=True))


@command(app)
def owner(
    shop: Shop,
    name: str = typer.Argument(help="Name."),
    password: str = SECRET,
    pin: str = typer.Option("", help="PIN for shared tablets."),
) -> None:
    """Make the first owner; from then on everybody signs in."""
    from frywright.rooms.records.people import first_owner, not_owned

    opened = shop.store
    not_owned(opened)
    first_owner(opened, name, _asked(shop, password), pin)
    if not shop.json({"name": name}):
        shop.say("{name} owns this kitchen.", name=name)


@command(app, "list")
def list_(shop: Shop) -> None:
    """Who has an account, and which devices are let in."""
    from frywright.ledger.accounts import Accounts

    accounts = Accounts(shop.store)
    rows = [
        {"name": a.name, "role": a.role, "active": a.active, "device": False} for a in accounts.accounts()
    ]
    rows += [{"name": d.name, "role": d.role, "active": d.active, "device": True} for d in accounts.devices()]
    if shop.json({"accounts": rows}):
        return
    if not rows:
        shop.say("Nobody has an account yet: frywright people owner adds the first.")
    for row in rows:
        words = [row["role"], "device" if row["device"] else "", "" if row["active"] else "may not sign in"]
        typer.echo(f"{row['name']}: {', '.join(shop.tr(str(w)) for w in words if w)}")


@command(app)
def rescue(
    shop: Shop,
    name: str = typer.Argument(help="Owner."),
    password: str = SECRET,
    reason: str = typer.Option(help="Why."),
) -> None:
    """Set an owner's password from this machine, for whoever holds the store itself; it is on record."""
    from frywright.rooms.records.people import change_account

    change_account(
        shop.store, name, "at the machine itself", reason, password=_asked(shop, password), active=True
    )
    if not shop.json({"name": name}):
        shop.say("{name} may sign in with the new password.", name=name)


@command(app)
def remove(
    shop: Shop,
    name: str = typer.Argument(help="Person who has left."),
    reason: str = typer.Option(help="Why."),
) -> None:
    """Take a person's name out of the record; entries stay, and nothing brings it back."""
    from frywright.rooms.records.privacy import BEYOND, remove_name
    from frywright.voice.tongue import translator

    store, kitchen = shop.both
    remove_name(store, name, "at the machine itself", reason, translator(kitchen.site.language))
    if not shop.json({"name": name}):
        shop.say("{name} is removed.", name=name)
        typer.echo(shop.tr(BEYOND))


@command(app)
def link(
    shop: Shop,
    name: str = typer.Argument(help="Account."),
    subject: str = typer.Option("", help="The company's own key of the person (sub); empty ends the link."),
    issuer: str = typer.Option("", help="Who vouches, as in FRYWRIGHT_OIDC_ISSUER."),
    reason: str = typer.Option(help="Why."),
) -> None:
    """Say who of the company an account is, for signing in there; it is on record."""
    from frywright.rooms.records.company import link_account, mark_of

    mark = mark_of(issuer.rstrip("/"), subject) if subject else ""
    link_account(shop.store, name, mark, "at the machine itself", reason)
    if not shop.json({"name": name, "linked": bool(mark)}):
        shop.say("{name} is linked.", name=name)
