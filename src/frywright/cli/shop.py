"""What every command stands on: a store and its kitchen, whose language and units it speaks; and the one way
to make a command of a function.
"""

from __future__ import annotations

import inspect
from collections.abc import Callable, Mapping
from contextlib import ExitStack, nullcontext
from dataclasses import replace
from functools import cached_property, wraps
from pathlib import Path
from typing import TYPE_CHECKING, Any

import typer

from frywright.cli.output import emit_json, preparing, speaking_errors
from frywright.model.errors import FrywrightError, InputError
from frywright.model.plain import plain
from frywright.model.tongues import Translate

if TYPE_CHECKING:
    from frywright.ledger.store import Store
    from frywright.model.kitchen import Kitchen, Site

USUAL = "var/frywright.db"
WHERE = "a store (its file, or postgresql://user@host/database) or a kitchen file (TOML)"
OPTIONS: dict[str, tuple[type, Any]] = {
    "kitchen": (str, typer.Argument(help=f"Kitchen: {WHERE}.")),
    "store": (str, typer.Option("", "--store", help=f"Where it is kept: {WHERE}; without it {USUAL}.")),
    "site": (str, typer.Option("", "--site", help="Key of one of several kitchens in the store.")),
    "language": (str, typer.Option("", "--language", help="Language, such as es; without it the kitchen's.")),
    "as_json": (bool, typer.Option(False, "--json", help="Print JSON.")),
}
"""What the program adds to every command, ``kitchen`` only where it is asked for."""
EMPTY: Mapping[str, Any] = {}
SQLITE = b"SQLite format 3\0"


class Shop:
    """A store and its kitchen, opened when first asked for. Where a kitchen file and a store are both named,
    the kitchen is the file's and what is kept goes into the store.
    """

    def __init__(
        self, kitchen: str = "", store: str = "", site: str = "", language: str = "", as_json: bool = False
    ) -> None:
        self.key = site
        self._kitchen, self.named, self.where = kitchen, store, store or kitchen or USUAL
        self._language = language
        self.as_json, self.held = as_json, ExitStack()

    @property
    def both(self) -> tuple[Store, Kitchen]:
        """Store and kitchen."""
        return self.store, self.kitchen

    @cached_property
    def store(self) -> Store:
        """Where records are kept."""
        return self.pick(self.open(self.where))

    def pick(self, store: Store) -> Store:
        """A store as the kitchen sees it that was asked for; without one, as its first does."""
        from frywright.rooms.fleet.kitchens import kitchen_at

        return kitchen_at(store, self.key)

    @cached_property
    def kitchen(self) -> Kitchen:
        """The kitchen as its store knows it, with the programs saved there. Raises NoKitchenError: the store
        holds none yet: nothing is invented for it.
        """
        if self._alone is not None:
            return self._alone
        from frywright.rooms.kitchen import remembered_kitchen

        return remembered_kitchen(self._home)

    @cached_property
    def _alone(self) -> Kitchen | None:
        """The kitchen of a file, for which no store need be opened; None where a store's is asked for, or the
        file holds several versions of a program, which a store puts in order.
        """
        named = self._kitchen or self.where
        if self.key or is_store(named):
            return None
        from frywright.catalog.kitchen import parse_kitchen
        from frywright.model.business_day import business_time, usual_trade
        from frywright.rooms.clock import now
        from frywright.trial.kitchens import read_text

        made = parse_kitchen(read_text(Path(named)), named)
        business_time(usual_trade(made), now())  # a zone that is none is refused, as a store refuses it
        return made if len({p.name for p in made.programs}) == len(made.programs) else None

    @cached_property
    def _home(self) -> Store:
        """Where the kitchen is read."""
        own = self._kitchen and self._kitchen != self.where
        return self.open(self._kitchen) if own else self.store

    def open(self, where: str) -> Store:
        """The store of that name; a kitchen file is opened into a passing store that keeps nothing."""
        from frywright.ledger.store import SEALED_FILE, Store
        from frywright.rooms.clock import now
        from frywright.rooms.kitchen import open_store, remember_kitchen
        from frywright.trial.kitchens import read_text

        if is_store(where):
            return open_store(where)
        made = self.held.enter_context(Store.passing(now))
        remember_kitchen(made, read_text(Path(where)), where)
        made.sealed = SEALED_FILE
        return made

    @property
    def site(self) -> Site | None:
        """The site of a kitchen that is there to be read: errors are told in its language and units."""
        named = self._kitchen or self.where
        try:
            if not ("kitchen" in self.__dict__ or "://" in named or Path(named).exists()):
                return None
            if self._alone is None:
                from frywright.rooms.kitchen import has_kitchen

                return self.kitchen.site if has_kitchen(self._home) else None
            return self._alone.site
        except (FrywrightError, OSError):
            return None

    def beside(self, where: str) -> Shop:
        """Another shop, closed with this one."""
        other = Shop(store=where)
        other.held = self.held
        return other

    def check_language(self) -> None:
        """Refuse a language nobody knows; from then on the kitchen's is spoken."""
        from frywright.model.tongues import tongues

        if self._language and self._language not in tongues():
            wrong, self._language = self._language, ""
            raise InputError("--language", wrong, "one of: {known}", known=", ".join(tongues()))

    @property
    def language(self) -> str:
        """The language asked for, else the kitchen's."""
        from frywright.model.tongues import SOURCE

        return self._language or (self.site.language if self.site else SOURCE)

    @property
    def units(self) -> str:
        """The kitchen's system of units."""
        return self.kitchen.site.units

    @property
    def usual_units(self) -> str:
        """The kitchen's system of units, metric where no kitchen is there."""
        return self.site.units if self.site else "metric"

    @cached_property
    def tr(self) -> Translate:
        """Says a text in the language."""
        from frywright.voice.tongue import translator

        return translator(self.language)

    def read(self, text: str, dimension: str, name: str, bare: str = "") -> float | None:
        """A value typed, read as on a page; a bare number is in the kitchen's unit, or in ``bare``. None
        where empty.
        """
        return self.kitchen.site.read(text, dimension, name, bare) if text else None

    def typed(self, text: str, dimension: str, name: str, bare: str = "") -> float | None:
        """As :meth:`read`, where no kitchen is needed: without one a number needs its unit."""
        from frywright.model.units import parse

        if self.site is not None:
            return self.read(text, dimension, name, bare)
        return parse(text, dimension, name, bare=bare) if text else None

    def number(self, text: str, name: str) -> float | None:
        """A number typed, with the kitchen's decimal mark. None where empty."""
        from frywright.model.units import read_number

        if not text:
            return None
        return self.site.number(text, name) if self.site is not None else read_number(text, name)

    def seed(self, number: int, name: str = "--seed") -> int:
        """A seed of random numbers as typed. Raises InputError: it is below 0: no row of random numbers
        begins there.
        """
        if number < 0:
            raise InputError(name, number, "0 or more")
        return number

    def pause(self, seconds: float, name: str) -> float:
        """Seconds to wait as typed. Raises InputError: less than none, more than a day, or no number."""
        if not 0.0 <= seconds <= 86_400.0:
            raise InputError(name, f"{seconds:g}", "0 to {most}", most=86_400)
        return seconds

    def confirm(self, second: str) -> None:
        """Let the second of two people confirm here with a PIN or password of their own, where the store has
        accounts. Asked before the act, so that nobody waits for the record meanwhile.
        """
        from frywright.ledger.accounts import Accounts
        from frywright.rooms.clock import acting, here
        from frywright.rooms.records.people import confirm
        from frywright.rooms.records.tries import Tries

        if not second or not Accounts(self.store).accounts():
            return
        asked = self.tr("PIN or password of {name}").format(name=second)
        secret = str(typer.prompt(asked, hide_input=True, err=True))
        name = confirm(self.store, second, secret, "terminal", Tries())
        self.held.enter_context(acting(replace(here(), second=name)))

    def say(self, text: str, row: object = EMPTY, /, **values: Any) -> None:
        """Print a text in the language, filled from a row (a mapping or a view) and from values."""
        typer.echo(self.tr(text).format(**{**plain(row), **values}))

    def json(self, view: object) -> bool:
        """Whether JSON was asked for; then it is printed, a success unless it says otherwise."""
        if self.as_json:
            emit_json({"ok": True, **plain(view)})
        return self.as_json

    def kept(self, number: int, **more: Any) -> None:
        """Say which entry was kept."""
        if not self.json({"number": number, **more}):
            self.say("Entry {number} kept.", number=number)

    def written(self, out: Path, data: bytes) -> None:
        """Write a file and say so."""
        write_file(out, data)
        if not self.json({"file": str(out)}):
            self.say("{file} written.", file=out)


def is_store(where: str) -> bool:
    """Whether a name is a store's: a database's URL, an SQLite file, or a new file that is not TOML."""
    path = Path(where)
    if "://" in where or path.is_dir():
        return "://" in where
    if not path.exists() or path.suffix.lower() in (".db", ".toml"):
        return path.suffix.lower() != ".toml"
    with path.open("rb") as stream:
        return stream.read(len(SQLITE)) == SQLITE


def read_file(path: Path, name: str = "file") -> bytes:
    """A file somebody named. Raises InputError: it is not there, or cannot be read."""
    try:
        return path.read_bytes()
    except OSError as error:
        raise InputError(name, str(path), "a file that can be read") from error


def read_words(path: Path, name: str = "file") -> str:
    """The text of a file somebody named. Raises InputError: it cannot be read, or is no text."""
    try:
        return read_file(path, name).decode("utf-8-sig")
    except UnicodeDecodeError as error:
        raise InputError(name, str(path), "a text file in UTF-8") from error


def write_file(out: Path, data: bytes, option: str = "--out") -> None:
    """Write a file somebody named. Raises InputError: it cannot be written there."""
    try:
        out.write_bytes(data)
    except OSError as error:
        raise InputError(
            option, str(out), "a place that can be written ({why})", why=str(error.strerror)
        ) from error


def command(
    app: typer.Typer, name: str | None = None, *, kitchen: bool = False, engine: bool = False
) -> Callable[[Callable[..., None]], Callable[..., None]]:
    """Make a command of a function whose first parameter is its shop: ``--store``, ``--language`` and
    ``--json`` are added, with ``kitchen`` also the kitchen it begins with; errors are told in the shop's
    language and units; ``engine`` says that kernels may have to be compiled first.
    """
    added = {
        key: inspect.Parameter(key, inspect.Parameter.KEYWORD_ONLY, default=default, annotation=kind)
        for key, (kind, default) in OPTIONS.items()
        if kitchen or key != "kitchen"
    }

    def mark(function: Callable[..., None]) -> Callable[..., None]:
        @wraps(function)
        def run(**given: Any) -> None:
            shop = Shop(**{key: given.pop(key) for key in added})
            with shop.held, speaking_errors(shop), preparing() if engine else nullcontext():
                shop.check_language()
                function(shop, **given)

        own = list(inspect.signature(function).parameters.values())[1:]
        first = [added["kitchen"]] if kitchen else []
        last = [p for key, p in added.items() if key != "kitchen"]
        params = [*first, *(p.replace(kind=inspect.Parameter.KEYWORD_ONLY) for p in own), *last]
        run.__dict__["__signature__"] = inspect.Signature(params)
        run.__annotations__ = {p.name: p.annotation for p in params}
        app.command(name)(run)
        return function

    return mark
