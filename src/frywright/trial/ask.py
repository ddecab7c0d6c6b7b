"""What happens to every piece of this load, in this vat, under this program?"""

from __future__ import annotations

import datetime as dt
from collections.abc import Sequence
from dataclasses import dataclass, replace

from frywright.catalog import load as catalog
from frywright.model.errors import InputError
from frywright.model.findings import Note, Verdict
from frywright.model.food import Food, Product
from frywright.model.fryer import Fryer
from frywright.model.kitchen import Kitchen
from frywright.model.program import Program, Stage
from frywright.physics.fry import FryHistory, PieceHistory, simulate_many
from frywright.physics.inputs import CLOSE
from frywright.physics.plan import FryPlan, make_plan
from frywright.trial.evidence import evidence_for, range_notes
from frywright.trial.naming import named
from frywright.verdicts.facts import Facts, facts_of
from frywright.verdicts.judge import NO_RULE_KNOWN, CoreCurve, judge
from frywright.verdicts.limits import HOUSE, CookLimit
from frywright.verdicts.place import place_of
from frywright.verdicts.pressure import judge_opening


@dataclass(frozen=True, slots=True, kw_only=True)
class CookRequest:
    """A program and the conditions it is asked about; None takes the kitchen's own."""

    program: Program
    units_count: float | None = None
    load_kg: float | None = None
    start_temp_c: float | None = None
    altitude_m: float | None = None
    oil_start_c: float | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class CookAnswer:
    """The simulation, and a verdict for each class of piece (lowest margin first), lid last."""

    history: FryHistory
    verdicts: tuple[tuple[PieceHistory, Verdict], ...]
    lid: Verdict | None
    notes: tuple[Note, ...] = ()

    @property
    def plan(self) -> FryPlan:
        """The question."""
        return self.history.plan

    @property
    def facts(self) -> Facts:
        """What is predicted and what is proven of this load."""
        return facts_of(verdict for _, verdict in self.verdicts)


def edit_program(program: Program, stages: Sequence[Stage]) -> Program:
    """The same program with other stages, as a draft of the next version."""
    return replace(program, stages=tuple(stages), version=program.version + 1, total_s=None)


def program_of(kitchen: Kitchen, product: str, fryer: str) -> str | None:
    """Name of the program stored for a product on a fryer, or None."""
    return next((p.name for p in kitchen.own_programs if (p.product, p.fryer) == (product, fryer)), None)


def carry_over(kitchen: Kitchen, program: Program, product: Product, fryer: Fryer) -> Program:
    """A draft of a program's stages for another product or fryer; not matched, only tried."""
    draft = replace(
        program, product=product.key, fryer=fryer.key, load_heads=None, altitude_m=None, unit_mass_kg=None
    )
    return named(kitchen, draft)


def ask(kitchen: Kitchen, request: CookRequest) -> CookAnswer:
    """Simulate a program under conditions and judge every class of piece.

    Solved at ``CLOSE``, with what that setting may be off taken off every core beside the thermometer's
    error. A load above the fryer's capacity is judged no better than a full one: each piece by the worse of
    both. Raises InputError: the program or the conditions are impossible for this kitchen.
    """
    plan = _plan(kitchen, request)
    full = [replace(request, units_count=plan.most_units, load_kg=None)] if plan.overloaded else []
    plans = [plan, *(_plan(kitchen, asked) for asked in full)]
    histories = simulate_many(plans, CLOSE)
    history = histories[0]
    limit, why = product_limit(kitchen, plan.product), why_none(kitchen, plan.product)
    judged = []
    for same in zip(*(h.pieces for h in histories), strict=True):
        evidence = evidence_for(kitchen, plan, same[0].kind)
        evidence = replace(evidence, error_k=evidence.error_k + CLOSE.error_k)
        verdicts = [
            judge(_curve(h, piece), limit, evidence, why) for h, piece in zip(histories, same, strict=True)
        ]
        judged.append((same[0], min(verdicts, key=_spare_k)))
    judged.sort(key=lambda pair: (_spare_k(pair[1]), pair[0].core_at_lift_c))
    lid = None
    if plan.program.under_pressure:
        lid = judge_opening(history.time_s, history.gauge_pa, history.lift_s, plan.fryer.zero_gauge_pa)
    notes = (*_house_notes(plan.product, limit), *range_notes(kitchen, plan))
    return CookAnswer(history=history, verdicts=tuple(judged), lid=lid, notes=notes)


def check_asked(kitchen: Kitchen, request: CookRequest) -> None:
    """Refuse conditions that a program cannot meet, without simulating them. Raises InputError: as
    :func:`ask`.
    """
    _plan(kitchen, request)


def foods_of(kitchen: Kitchen, product: Product) -> list[Food]:
    """The foods of a product's pieces, as rules speak of them."""
    found = {kitchen.cut(part.cut).food for part in kitchen.cut_set(product.cut_set).parts}
    return [food for food in Food if food in found]


def product_limit(kitchen: Kitchen, product: Product, day: dt.date | None = None) -> CookLimit | None:
    """What judges a product here, now or on a day: a rule of the place, else its house target, else None."""
    return place_of(kitchen).limit_of(foods_of(kitchen, product), product.house_core_c, day)


def hand_limit_c(kitchen: Kitchen, product: Product, day: dt.date | None = None) -> float | None:
    """What a hand reading of a product is judged by here, now or on a day [degC]; None where neither rule nor
    house speaks.
    """
    return place_of(kitchen).hand_level_c(foods_of(kitchen, product), product.house_core_c, day)


def why_none(kitchen: Kitchen, product: Product) -> str:
    """Why no rule of the place speaks of a product."""
    return place_of(kitchen).why_no_rule(foods_of(kitchen, product)[0]) or NO_RULE_KNOWN


def needed_limit(kitchen: Kitchen, product: Product) -> CookLimit:
    """What a program of a product is designed for or proven against. Raises InputError: no rule of the place
    speaks of it, and the kitchen set no house target.
    """
    limit = product_limit(kitchen, product)
    if limit is None:
        raise InputError(
            "house_core",
            "missing",
            "given in the kitchen file: no rule here covers this food, so the core you want is the target",
            where=product.name,
        )
    return limit


def _house_notes(product: Product, limit: CookLimit | None) -> tuple[Note, ...]:
    if product.house_core_c is None or limit is None or limit.rule == HOUSE:
        return ()
    text = "The house target {house_c} of {product} is not used: {title} judges it."
    values: dict[str, float | str] = {
        "house_c": product.house_core_c,
        "product": product.name,
        "title": limit.title,
    }
    return (Note(kind="house", text=text, values=values),)


def _plan(kitchen: Kitchen, request: CookRequest) -> FryPlan:
    return make_plan(
        kitchen,
        request.program,
        units_count=request.units_count,
        load_kg=request.load_kg,
        start_temp_c=request.start_temp_c,
        altitude_m=request.altitude_m,
        oil_start_c=request.oil_start_c,
    )


def _spare_k(verdict: Verdict) -> float:
    return verdict.margin_k if verdict.margin_k is not None else float("inf")


def _curve(history: FryHistory, piece: PieceHistory) -> CoreCurve:
    food = catalog.compositions()[piece.kind.cut.composition]
    return CoreCurve(
        piece=piece_name(piece),
        time_s=history.time_s,
        core_c=piece.core_c,
        lift_s=history.earliest_lift_s,
        fat_pct=100.0 * food.fractions["fat"],
    )


def piece_name(piece: PieceHistory) -> str:
    """Name of a class for people, in English (a template value, translated on display)."""
    title = piece.kind.cut.title
    return f"{title} (heavy end)" if piece.kind.heavy else title


def warm_up() -> float:
    """Run a small cook so that the kernels are compiled and cached; seconds it took."""
    from time import perf_counter

    from frywright.physics.inputs import PieceClass, Span, Vat
    from frywright.physics.solve import Cook, run_many

    start = perf_counter()
    piece = PieceClass(
        name="warm-up",
        mass_kg=1.0,
        half_thickness_m=0.01,
        shape_n=0.0,
        start_temp_c=5.0,
        density_kg_m3=1000.0,
        conductivity_w_mk=0.5,
        heat_capacity_j_kgk=3500.0,
        water_kg_m3=600.0,
    )
    vat = Vat(oil_mass_kg=20.0, oil_start_c=170.0, heater_w=10e3)
    cook = Cook(vat=vat, pieces=[piece, piece], spans=[Span(duration_s=5.0, set_c=170.0)])
    for count in (1, 8):  # the engine for a cook alone, and the one for many
        run_many([cook] * count)
    return perf_counter() - start
