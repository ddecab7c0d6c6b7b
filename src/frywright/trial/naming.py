"""What a program is called: one name for a product on a fryer at a place, and no two names that read
alike.
"""

from __future__ import annotations

from dataclasses import replace

from frywright.model.errors import InputError
from frywright.model.kitchen import SAME_BIRD_FRAC, SAME_PLACE_M, Kitchen, key_of
from frywright.model.program import Program, name_key
from frywright.model.tongues import Translate
from frywright.model.units import show, to_people

LONGEST_NAME, LIGHT_KG = 80, 0.25


def altitude_words(altitude_m: float, system: str) -> str:
    """An altitude as a kitchen says it: 7,200 ft, or 2195 m."""
    return f"{to_people(altitude_m, 'ft'):,.0f} ft" if system == "us" else f"{altitude_m:.0f} m"


def mass_words(mass_kg: float, system: str) -> str:
    """Mass of one head or piece; a light piece in ounces or grams."""
    if mass_kg >= LIGHT_KG:
        return show(mass_kg, "kg", system)
    return f"{to_people(mass_kg, 'oz'):.1f} oz" if system == "us" else f"{1e3 * mass_kg:.0f} g"


def crust_words(crust_m: float, system: str) -> str:
    """Depth of a crust, to a tenth of a millimetre or a hundredth of an inch."""
    return f"{to_people(crust_m, 'in'):.2f} in" if system == "us" else f"{1e3 * crust_m:.1f} mm"


def away_words(kitchen: Kitchen, program: Program, translate: Translate = str) -> list[str]:
    """In what a program's place, bird and load differ from this kitchen's own."""
    system = kitchen.site.units
    words = []
    if not kitchen.belongs(replace(program, unit_mass_kg=None)):
        words.append(altitude_words(program.altitude_m or 0.0, system))
    if program.unit_mass_kg is not None and not kitchen.belongs(replace(program, altitude_m=None)):
        words.append(mass_words(program.unit_mass_kg, system))
    if program.load_heads is not None:
        unit = kitchen.cut_set(kitchen.product(program.product).cut_set).unit
        words.append(f"{program.load_heads:g} × {translate(unit)}")
    return words


def same_use(kitchen: Kitchen, one: Program, other: Program) -> bool:
    """Whether two programs are for the same product, fryer, place, bird and load, so that one may follow the
    other.
    """
    if (one.product, one.fryer, one.load_heads) != (other.product, other.fryer, other.load_heads):
        return False
    here_m, own_kg = kitchen.site.altitude_m, kitchen.unit_kg(one.product)
    metres = [here_m if p.altitude_m is None else p.altitude_m for p in (one, other)]
    masses = [p.unit_mass_kg or own_kg for p in (one, other)]
    return abs(metres[0] - metres[1]) < SAME_PLACE_M and abs(masses[0] - masses[1]) < SAME_BIRD_FRAC * own_kg


def follows(kitchen: Kitchen, program: Program) -> list[Program]:
    """Newest versions of the programs it may be the next version of, the one last changed first."""
    found = {p.name: kitchen.program(p.name) for p in kitchen.programs if same_use(kitchen, p, program)}
    return sorted(found.values(), key=lambda p: (-p.version, p.name))


def new_name(kitchen: Kitchen, program: Program) -> str:
    """A name of its own for a program: product and fryer as this kitchen says them, and what sets it
    apart.
    """
    own = replace(program, altitude_m=None, unit_mass_kg=None, load_heads=None)
    home = follows(kitchen, own)
    stem = (
        home[0].name
        if home
        else f"{_product_words(kitchen, program.product)} {_fryer_words(kitchen, program.fryer)}"
    )
    wanted = ", ".join([stem, *away_words(kitchen, program)])
    taken = {name_key(p.name) for p in kitchen.programs}
    name, count = wanted, 2
    while name_key(name) in taken:
        name, count = f"{wanted}, {count}", count + 1
    return name


def named(kitchen: Kitchen, program: Program) -> Program:
    """The program as next version of the one it follows, or under a name of its own."""
    known = follows(kitchen, program)
    if known:
        return replace(program, name=known[0].name, version=known[0].version + 1)
    return replace(program, name=new_name(kitchen, program), version=1)


def chosen(kitchen: Kitchen, program: Program, answer: str, name: str) -> tuple[Program, int | None]:
    """The program as a person wants it saved, and the version it was based on.

    ``answer`` is a version and a name, such as ``3 bone-in alder``: the next version of that one. Empty,
    ``name`` is a new name. Raises InputError: the new name is no new name.
    """
    version, _, known = answer.partition(" ")
    if known and version.isascii() and version.isdigit():
        return replace(program, name=known, version=int(version) + 1), int(version)
    made = called(kitchen, program, name)
    if made.version > 1:
        raise InputError(
            "name",
            repr(name),
            "a new name: {known} is there already. Save as its next version, or choose another name",
            known=made.name,
        )
    return made, None


def called(kitchen: Kitchen, program: Program, name: str) -> Program:
    """The program under a name a person chose: the next version of a known one, or new. Raises InputError: no
    name, one that reads like another, or one of a program for something else.
    """
    name = " ".join(name.split())
    if not name_key(name) or len(name) > LONGEST_NAME:
        raise InputError("name", repr(name), "a few words, such as the product and the fryer")
    spelled = [p.name for p in kitchen.programs if name_key(p.name) == name_key(name)]
    if not spelled:
        return replace(program, name=name, version=1)
    if name not in spelled:
        raise InputError(
            "name",
            repr(name),
            "a name of its own: it reads like {known}. Save as the next version of that one, or choose"
            " another name",
            known=spelled[0],
        )
    known = kitchen.program(name)
    if not same_use(kitchen, known, program):
        raise InputError(
            "name",
            repr(name),
            "a name of its own: {known} is for another product, fryer, place, bird or load, and goes on"
            " unchanged",
            known=name,
        )
    return replace(program, name=name, version=known.version + 1)


def _product_words(kitchen: Kitchen, product: str) -> str:
    for p in kitchen.programs:
        if p.product == product and p.name.endswith(f" {p.fryer}"):
            return p.name.removesuffix(f" {p.fryer}")
    return _said(kitchen.product(product).name, product) or product.replace("_", "-")


def _fryer_words(kitchen: Kitchen, fryer: str) -> str:
    return _said(kitchen.fryer(fryer).name, fryer) or fryer


def _said(name: str, key: str) -> str:
    """The name where the key is the same in small letters, as the set-up makes it; else nothing."""
    return name if key and key_of(name) == key else ""
