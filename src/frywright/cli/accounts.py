"""``frywright people``: the first owner, accounts and devices."""

from __future__ import annotations

import typer

from frywright.cli.shop import JSON, STORE, open_shop

app = typer.Typer(help="Accounts of people and devices.", no_args_is_help=True)
SECRET = typer.Option("", help="Password; without it you are asked.", hide_input=True)


def _asked(password: str) -> str:
    return password or str(typer.prompt("Password", hide_input=True, confirmation_prompt=True))


@app.command()
def owner(
    name: str = typer.Argument(help="Name."),
    password: str = SECRET,
    pin: str = typer.Option("", help="PIN for shared tablets."),
    store: str = STORE,
    as_json: bool = JSON,
) -> None:
    """Make the first owner; from then on everybody signs in."""
    from frywright.cli.output import emit_json, speaking_errors

    with speaking_errors(as_json):
        from frywright.ledger.accounts import Accounts
        from frywright.model.errors import AccessError
        from frywright.rooms.records.people import add_account

        opened, _ = open_shop(store)
        if Accounts(opened).any():
            raise AccessError("This kitchen has an owner already; sign in on the page to add people.")
        add_account(opened, name, "owner", _asked(password), pin)
        emit_json({"ok": True, "name": name}) if as_json else typer.echo(f"{name} owns this kitchen.")


@app.command("list")
def list_(store: str = STORE, as_json: bool = JSON) -> None:
    """Who has an account, and which devices are let in."""
    from frywright.cli.output import emit_json, speaking_errors

    with speaking_errors(as_json):
        from frywright.ledger.accounts import Accounts

        accounts = Accounts(open_shop(store)[0])
        rows = [
            {"name": a.name, "role": a.role, "active": a.active, "device": False} for a in accounts.accounts()
        ]
        rows += [
            {"name": d.name, "role": d.role, "active": d.active, "device": True} for d in accounts.devices()
        ]
        if as_json:
            emit_json({"ok": True, "accounts": rows})
            return
        for row in rows:
            words = [
                row["role"],
                "device" if row["device"] else "",
                "" if row["active"] else "may not sign in",
            ]
            typer.echo(f"{row['name']}: {', '.join(str(w) for w in words if w)}")


@app.command()
def rescue(
    name: str = typer.Argument(help="Owner."),
    password: str = SECRET,
    reason: str = typer.Option(help="Why."),
    store: str = STORE,
    as_json: bool = JSON,
) -> None:
    """Set an owner's password from this machine, for whoever holds the store itself; it is on record."""
    from frywright.cli.output import emit_json, speaking_errors

    with speaking_errors(as_json):
        from frywright.rooms.records.people import change_account

        change_account(
            open_shop(store)[0], name, "at the machine itself", reason, password=_asked(password), active=True
        )
        (
            emit_json({"ok": True, "name": name})
            if as_json
            else typer.echo(f"{name} may sign in with the new password.")
        )
