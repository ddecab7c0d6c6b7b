"""Reads a kitchen file (TOML) into a :class:`Kitchen`, with every problem placed in the file."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import replace
from functools import partial
from typing import Any, cast

from frywright.catalog import load
from frywright.catalog.capacity import check_load
from frywright.catalog.settings import no_heights, read_settings
from frywright.model.calibration import Calibration
from frywright.model.care import Emergency, Task
from frywright.model.codec import Source, part_of, parts_of, read, refused
from frywright.model.errors import DataError, InputError, spoken
from frywright.model.findings import Problem
from frywright.model.food import Coating, Cut, CutSet, CutShare, Product
from frywright.model.fryer import Controller, Fryer, TempUnit
from frywright.model.kitchen import Kitchen, Site, UnitSystem
from frywright.model.program import Program, Stage
from frywright.model.tongues import tongues
from frywright.model.trade import MenuItem, Sell, Trade

TABLES = (
    "kitchen",
    "fryer",
    "product",
    "program",
    "cut",
    "cut_set",
    "coating",
    "calibration",
    "day",
    "menu",
    "sell",
    "care",
    "emergency",
)


def parse_kitchen(text: str, file: str = "kitchen.toml") -> Kitchen:
    """Kitchen from the text of its file. Raises DataError: every problem found, with line, caret, remedy."""
    source = Source(text, file)
    tables = source.load()
    problems: list[Problem] = []
    for name in tables:
        if name not in TABLES:
            problems.append(
                source.problem(
                    f"{name}[0]" if isinstance(tables[name], list) else name,
                    "",
                    "unknown table [{name}]",
                    "Known: {known}",
                    known=", ".join(TABLES),
                    name=name,
                )
            )
    site = _site(tables, source, problems)
    parts = {
        "fryers": _each(tables, "fryer", source, problems, partial(_fryer, shows=_display(tables))),
        "products": _each(tables, "product", source, problems, _product),
        "cuts": _each(tables, "cut", source, problems, _cut),
        "cut_sets": _each(tables, "cut_set", source, problems, _cut_set),
        "coatings": _each(tables, "coating", source, problems, lambda *a: read(Coating, *a)),
    }
    programs = _each(tables, "program", source, problems, _program)
    calibrations = _each(tables, "calibration", source, problems, lambda *a: read(Calibration, *a))
    trade = _one_of(tables, "day", source, problems, Trade)
    menu = _each(tables, "menu", source, problems, lambda *a: read(MenuItem, *a))
    sells = _each(tables, "sell", source, problems, lambda *a: read(Sell, *a))
    care = _each(tables, "care", source, problems, _task)
    emergency = _one_of(tables, "emergency", source, problems, Emergency)
    if not parts["fryers"] and not problems:
        problems.append(source.problem("", "", "the file has no [[fryer]]", "Describe at least one fryer."))
    if problems or site is None:
        raise DataError(problems)
    kitchen = _join(site, parts, programs, source)
    kitchen = replace(kitchen, calibrations=_known_cuts(kitchen, calibrations, source))
    kitchen = _with_trade(kitchen, trade, menu, sells, source)
    return replace(kitchen, care=_known_fryers(kitchen, care, source), emergency=emergency or Emergency())


def _one_of(
    tables: Mapping[str, Any], name: str, source: Source, problems: list[Problem], kind: type[Any]
) -> Any:
    """The single table of a name as its dataclass, None where the file has none."""
    if name not in tables:
        return None
    if not isinstance(tables[name], dict):
        problems.append(
            source.problem(
                f"{name}[0]", "", "[[{name}]] is a list", "Write [{name}] with one bracket.", name=name
            )
        )
        return None
    try:
        return read(kind, tables[name], source, name)
    except DataError as error:
        problems.extend(error.problems)
        return None


def _with_trade(
    kitchen: Kitchen, trade: Trade | None, menu: list[Any], sells: list[Any], source: Source
) -> Kitchen:
    """The kitchen with its day; every menu item and product of sale is tried alone so that a problem has its
    place.
    """
    problems = []
    for path, kind, item in [*((p, "menu", m) for p, m in menu), *((p, "sells", s) for p, s in sells)]:
        try:
            replace(kitchen, menu=(item,)) if kind == "menu" else replace(kitchen, sells=(item,))
        except InputError as error:
            problems.append(
                source.problem(path, error.field, "{cause}", "Mend the entry named.", cause=error)
            )
    if problems:
        raise DataError(problems)
    try:
        return replace(kitchen, trade=trade, menu=tuple(m for _, m in menu), sells=tuple(s for _, s in sells))
    except InputError as error:
        raise DataError(
            [source.problem("menu[0]", "", "{cause}", "Mend the entry named.", cause=error)]
        ) from error


def _site(tables: Mapping[str, Any], source: Source, problems: list[Problem]) -> Site | None:
    table = tables.get("kitchen")
    if not isinstance(table, dict):
        problems.append(
            source.problem("", "", "the file has no [kitchen] table", "Start it with [kitchen] and a name.")
        )
        return None
    try:
        site = read(Site, table, source, "kitchen")
    except DataError as error:
        problems.extend(error.problems)
        return None
    known = [j["key"] for j in load.table("standards/jurisdictions.toml")["jurisdiction"]]
    if site.jurisdiction not in known:
        problems.append(
            source.problem(
                "kitchen",
                "jurisdiction",
                "unknown {kind} {key}",
                "Use one of: {known}",
                known=", ".join(known),
                kind="jurisdiction",
                key=repr(site.jurisdiction),
            )
        )
    return site


def _each(
    tables: Mapping[str, Any],
    name: str,
    source: Source,
    problems: list[Problem],
    build: Callable[[Mapping[str, Any], Source, str], Any],
) -> list[Any]:
    found = []
    try:
        parts = parts_of(tables, name, source, "")
    except DataError as error:
        problems.extend(error.problems)
        return []
    for path, table in parts:
        try:
            found.append((path, build(table, source, path)))
        except DataError as error:
            problems.extend(error.problems)
    return found


def _display(tables: Mapping[str, Any]) -> str:
    """Unit of a controller that does not say which it shows: the kitchen's own."""
    kitchen = tables.get("kitchen")
    metric = isinstance(kitchen, dict) and kitchen.get("units") == str(UnitSystem.METRIC)
    return str(TempUnit.C if metric else TempUnit.F)


def _fryer(table: Mapping[str, Any], source: Source, path: str, shows: str) -> Fryer:
    told = {"shows": shows, **part_of(table, "controller", source, path)}
    if not any(key.startswith("temp_step") for key in told):
        told["temp_step_c" if told["shows"] == TempUnit.C else "temp_step_f"] = 1  # a degree of its display
    controller = read(Controller, told, source, f"{path}.controller")
    settings = read_settings(table, source, path)
    fryer = read(Fryer, table, source, path, controller=controller, settings=settings)
    if fryer.oil not in load.oils():
        raise DataError(
            [
                source.problem(
                    path,
                    "oil",
                    "unknown {kind} {key}",
                    "Use one of: {known}",
                    known=", ".join(load.oils()),
                    kind="oil",
                    key=repr(fryer.oil),
                )
            ]
        )
    return fryer


def _product(table: Mapping[str, Any], source: Source, path: str) -> Product:
    return read(Product, table, source, path)


def _cut(table: Mapping[str, Any], source: Source, path: str) -> Cut:
    cut = read(Cut, table, source, path)
    if cut.composition not in load.compositions():
        known = ", ".join(load.compositions())
        raise DataError(
            [
                source.problem(
                    path,
                    "composition",
                    "unknown {kind} {key}",
                    "Use one of: {known}",
                    kind="composition",
                    key=repr(cut.composition),
                    known=known,
                )
            ]
        )
    return cut


def _cut_set(table: Mapping[str, Any], source: Source, path: str) -> CutSet:
    parts = tuple(read(CutShare, part, source, at) for at, part in parts_of(table, "part", source, path))
    return read(CutSet, table, source, path, parts=parts)


def _program(table: Mapping[str, Any], source: Source, path: str) -> Program:
    stages = tuple(read(Stage, stage, source, at) for at, stage in parts_of(table, "stage", source, path))
    return read(Program, table, source, path, stages=stages)


def _join(site: Site, parts: dict[str, list[Any]], programs: list[Any], source: Source) -> Kitchen:
    bundled: dict[str, dict[str, Any]] = {
        "cuts": load.cuts(),
        "cut_sets": load.cut_sets(),
        "coatings": load.coatings(),
    }
    items: dict[str, tuple[Any, ...]] = {}
    problems: list[Problem] = []
    for kind, found in parts.items():
        own = {item.key for _, item in found}
        for path, item in found:
            if item.key in bundled.get(kind, {}):
                problems.append(
                    source.problem(
                        path,
                        "key",
                        "{key} is already in the catalog",
                        "Choose another key, so that nothing is shadowed.",
                        key=repr(item.key),
                    )
                )
        rest = [v for k, v in bundled.get(kind, {}).items() if k not in own]
        items[kind] = tuple(item for _, item in found) + tuple(rest)
    if problems:
        raise DataError(problems)
    try:
        kitchen = Kitchen(site=site, programs=(), **cast(Any, items))
    except InputError as error:
        raise DataError(
            [source.problem("kitchen", "", "{cause}", "Mend the entry named.", cause=error)]
        ) from error
    problems = no_heights(kitchen, source)
    if problems:
        raise DataError(problems)
    return replace(kitchen, programs=_checked(kitchen, programs, source))


def _known_cuts(kitchen: Kitchen, calibrations: list[Any], source: Source) -> tuple[Calibration, ...]:
    problems = []
    for path, calibration in calibrations:
        for kind, key in (("cut", calibration.cut), ("coating", calibration.coating)):
            known = [item.key for item in getattr(kitchen, f"{kind}s")]
            if key not in known:
                problems.append(
                    source.problem(
                        path,
                        kind,
                        "unknown {kind} {key}",
                        "Use one of: {known}",
                        known=", ".join(known),
                        kind=spoken(kind),
                        key=repr(key),
                    )
                )
    if problems:
        raise DataError(problems)
    return tuple(calibration for _, calibration in calibrations)


def _task(table: Mapping[str, Any], source: Source, path: str) -> Task:
    """A task; its title and parts may be given in other languages too: ``title_es``, ``parts_es``."""
    foreign = {f"{field}_{language}" for field in ("title", "parts") for language in tongues()}
    told = tuple((k, v) for k, v in table.items() if k in foreign)
    for key, text in told:
        if not isinstance(text, str):
            error = InputError(key, repr(text), "text in quotes")
            raise DataError([refused(source, path, key, error)])
    own = {k: v for k, v in table.items() if k not in foreign}
    return read(Task, own, source, path, in_languages=told)


def _known_fryers(kitchen: Kitchen, care: list[Any], source: Source) -> tuple[Task, ...]:
    known = [f.key for f in kitchen.fryers]
    wrong = [(path, task) for path, task in care if task.fryer and task.fryer not in known]
    if wrong:
        raise DataError(
            [
                source.problem(
                    p,
                    "fryer",
                    "unknown {kind} {key}",
                    "Use one of: {known}",
                    known=", ".join(known),
                    kind="fryer",
                    key=repr(t.fryer),
                )
                for p, t in wrong
            ]
        )
    return tuple(task for _, task in care)


def _checked(kitchen: Kitchen, programs: list[Any], source: Source) -> tuple[Program, ...]:
    problems = []
    for product in kitchen.products:
        try:
            cut_set = kitchen.cut_set(product.cut_set)
            kitchen.coating(product.coating)
            for part in cut_set.parts:
                kitchen.cut(part.cut)
        except InputError as error:
            path = next(p for p in _paths("product", kitchen.products, product))
            problems.append(
                source.problem(
                    path,
                    error.field,
                    "unknown {kind} {key}",
                    "It must be {allowed}.",
                    kind=spoken(error.field),
                    key=error.value,
                    allowed=error.allowed,
                )
            )
    for path, program in programs:
        try:
            kitchen.check(program)
            check_load(kitchen, program)
        except InputError as error:
            key = "load_heads" if error.field == "load" else error.field
            problems.append(
                source.problem(path, key, "{cause}", "Mend the program or the fryer.", cause=error)
            )
    if problems:
        raise DataError(problems)
    return tuple(program for _, program in programs)


def _paths(name: str, items: tuple[Any, ...], wanted: Any) -> list[str]:
    return [f"{name}[{n}]" for n, item in enumerate(items) if item is wanted]
