"""From a kitchen's words to the engine's question: fryer, load and program as explicit inputs."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import lru_cache
from itertools import accumulate

from frywright.catalog import load as catalog
from frywright.catalog.capacity import capacity_units, most_units
from frywright.model.calibration import Calibration
from frywright.model.errors import InputError
from frywright.model.food import Coating, Cut, CutSet, Product
from frywright.model.fryer import LONGEST_VENT_S, Fryer, FryerKind, Oil
from frywright.model.kitchen import Kitchen, Site
from frywright.model.program import LidState, Program, Stage, StageEnd
from frywright.physics.inputs import Lid, PieceClass, Span, Until, Vat
from frywright.physics.properties import meat, meat_with_bone
from frywright.physics.solve import Cook
from frywright.physics.vent import area_for

NEVER_TOLD_M2 = 2e-4
"""Opening of a vent nobody described: wide, so that its short vent cooks nothing (own choice; see
FryPlan.vent_credit_s).
"""
MOST_VENT_S = 60.0
"""No more of a vent is counted, and a longer one stops a design (own rule: a clear passage vents in less)."""
TIMED_SET_C, TIMED_OPEN_S, TIMED_PRESSURE_S = 160.0, 30.0, 600.0
"""The cook on which a timed vent is taken to have been timed: a full load of eight-piece chicken (own
choice).
"""
REST_S = 180.0
TRACER_SHARE = 1e-6
OVERLOAD_N = 1.25
BONE_SHARE = 0.6
"""Most of a calibrated piece's half thickness that its bone may take (the engine stops at 0.8)."""
KERNEL_END = {
    StageEnd.OIL_ABOVE: Until.OIL_ABOVE,
    StageEnd.CORE_ABOVE: Until.CORE_ABOVE,
    StageEnd.GAUGE_ABOVE: Until.GAUGE_ABOVE,
}


@dataclass(frozen=True, slots=True, kw_only=True)
class PieceKind:
    """One class of the load in people's terms. ``heavy`` marks the heavy end of its cut."""

    cut: Cut
    heavy: bool
    piece_mass_kg: float
    class_mass_kg: float

    @property
    def scale(self) -> float:
        """Lengths of the piece over those of its cut: they grow with mass to the power 1/3."""
        return float((self.piece_mass_kg / self.cut.reference_mass_kg) ** (1.0 / 3.0))

    @property
    def half_thickness_m(self) -> float:
        """Half thickness of the piece [m]."""
        return self.cut.half_thickness_m * self.scale


@dataclass(frozen=True, slots=True, kw_only=True)
class FryPlan:
    """A question with everything it needs: where, in what, how much, by which program."""

    site: Site
    fryer: Fryer
    oil: Oil
    product: Product
    coating: Coating
    cut_set: CutSet
    program: Program
    units_count: float
    kinds: tuple[PieceKind, ...]
    oil_start_c: float
    rest_s: float = REST_S
    vent_told: bool = True

    @property
    def load_kg(self) -> float:
        """Raw mass of the load without coating [kg]."""
        return sum(k.class_mass_kg for k in self.kinds if not k.heavy)

    @property
    def most_units(self) -> float:
        """Most units the fryer takes by its plate, by count and by mass."""
        return most_units(self.fryer, self.cut_set, self.load_kg / self.units_count)

    @property
    def overloaded(self) -> bool:
        """Whether the load is above the fryer's capacity."""
        return self.units_count > 1.001 * self.most_units

    @property
    def runs_on(self) -> bool:
        """Whether the program ends on a clock that does not stop for the vent."""
        return self.fryer.controller.clock.runs_on and not self.program.has_condition

    @property
    def vent_credit_s(self) -> float:
        """Longest time of a vent that a verdict may count [s]: nothing of one that nobody described or
        timed.
        """
        if not self.vent_told:
            return 0.0
        return min(MOST_VENT_S, self.fryer.vent_s or MOST_VENT_S)


def make_plan(
    kitchen: Kitchen,
    program: Program,
    *,
    units_count: float | None = None,
    load_kg: float | None = None,
    start_temp_c: float | None = None,
    altitude_m: float | None = None,
    oil_start_c: float | None = None,
) -> FryPlan:
    """Gather a plan; what is not given is the program's full load at the place it is for.
    Raises InputError: the load is not positive or past 1.25 times the fryer's capacity, both ways of giving
    the load are used, or a value is out of range.
    """
    kitchen.check(program)
    fryer, product = kitchen.fryer(program.fryer), kitchen.product(program.product)
    if start_temp_c is not None:
        product = replace(product, start_temp_c=start_temp_c)
    place_m = program.altitude_m if altitude_m is None else altitude_m
    site = kitchen.site if place_m is None else replace(kitchen.site, altitude_m=place_m)
    cut_set = kitchen.cut_set(product.cut_set)
    unit_kg = program.unit_mass_kg or kitchen.unit_kg(program.product)
    full = capacity_units(fryer, cut_set, unit_kg) if program.load_heads is None else program.load_heads
    if units_count is not None and load_kg is not None:
        raise InputError("load", "given twice", "either a count or a mass")
    count = full if units_count is None else units_count
    if load_kg is not None:
        count = load_kg / unit_kg
    most = OVERLOAD_N * capacity_units(fryer, cut_set, unit_kg)
    if not 0 < count <= most + 1e-9:
        raise InputError(
            "load",
            f"{count:.3g} × {cut_set.unit}",
            "above 0 and at most {most}: an overfull vat boils over and burns",
            where=fryer.name,
            most=f"{most:.3g}",
        )
    start = oil_start_c if oil_start_c is not None else program.stages[0].set_c
    if not 60.0 <= start <= 230.0:
        raise InputError("oil temperature", start, "{low_c} to {high_c}", unit="c", low_c=60.0, high_c=230.0)
    return FryPlan(
        site=site,
        fryer=replace(fryer, vent_area_m2=vent_area_m2(fryer, kitchen.site)),
        vent_told=fryer.vent_told,
        oil=catalog.oils()[fryer.oil],
        product=product,
        coating=kitchen.coating(product.coating),
        cut_set=cut_set,
        program=program.timed(),
        units_count=count,
        kinds=_kinds(kitchen, cut_set, unit_kg, count, product.coating, lid_of(program)),
        oil_start_c=start,
    )


def lid_of(program: Program) -> str:
    """State of the lid a calibration must have been made under."""
    return "pressure" if program.under_pressure else "open"


def calibrated_cut(cut: Cut, calibration: Calibration | None) -> Cut:
    """The cut with fitted geometry, brought to its own reference mass; itself without a calibration."""
    if calibration is None:
        return cut
    scale = (cut.reference_mass_kg / calibration.reference_mass_kg) ** (1.0 / 3.0)
    half = calibration.half_thickness_m * scale
    bone = min(cut.bone_radius_m, BONE_SHARE * half)
    area = cut.area_factor_n if calibration.area_factor_n is None else calibration.area_factor_n
    drip = cut.drip_frac if calibration.drip_frac is None else calibration.drip_frac
    return replace(
        cut,
        half_thickness_m=half,
        shape_n=calibration.shape_n,
        bone_radius_m=bone,
        area_factor_n=area,
        drip_frac=drip,
        geometry_origin="calibrated",
    )


def _kinds(
    kitchen: Kitchen, cut_set: CutSet, unit_kg: float, count: float, coating: str, lid: str
) -> tuple[PieceKind, ...]:
    usual, heavy = [], []
    for part in cut_set.parts:
        cut = calibrated_cut(kitchen.cut(part.cut), kitchen.calibration(part.cut, coating, lid))
        piece = unit_kg * part.mass_frac
        whole = piece * part.count * count
        usual.append(PieceKind(cut=cut, heavy=False, piece_mass_kg=piece, class_mass_kg=whole))
        heavy.append(
            PieceKind(
                cut=cut,
                heavy=True,
                piece_mass_kg=piece * cut.heavy_ratio_n,
                class_mass_kg=TRACER_SHARE * whole,
            )
        )
    return (*usual, *heavy)


def piece_class(plan: FryPlan, kind: PieceKind) -> PieceClass:
    """Engine inputs of one class: geometry scales with mass to the power 1/3."""
    return _piece_class(kind, plan.coating, plan.product.start_temp_c)


def _piece_class(kind: PieceKind, coating: Coating, start_temp_c: float) -> PieceClass:
    cut = kind.cut
    food = meat_with_bone(
        meat(catalog.compositions()[cut.composition]), 0.0 if cut.bone_radius_m else cut.bone_mass_frac
    )
    surface, coat = catalog.table("kinetics/surface.toml"), catalog.table("kinetics/coat.toml")
    solids = solids_kg_m2(coating)
    return PieceClass(
        name=cut.key,
        mass_kg=kind.class_mass_kg,
        half_thickness_m=kind.half_thickness_m,
        shape_n=cut.shape_n,
        start_temp_c=start_temp_c,
        density_kg_m3=food.density_kg_m3,
        conductivity_w_mk=food.conductivity_w_mk,
        heat_capacity_j_kgk=food.heat_capacity_j_kgk,
        water_kg_m3=food.water_kg_m3 * cut.evaporable_frac,
        area_factor_n=cut.area_factor_n,
        film_kg_m2=coating.film_kg_m2,
        crust_conductivity_w_mk=coating.crust_conductivity_w_mk,
        crust_heat_j_m3k=coating.crust_heat_j_m3k,
        still_h_w_m2k=surface["still_w_m2k"],
        still_reference_k=surface["still_reference_k"],
        gain_h_j_kgk=surface["gain_j_kgk"],
        cap_h_w_m2k=surface["cap_w_m2k"],
        lag_h_s=surface["lag_s"],
        vapour_cp_j_kgk=surface["vapour_cp_j_kgk"],
        vapour_diffusivity_m2_s=surface["vapour_diffusivity_m2_s"],
        bone_radius_m=cut.bone_radius_m * kind.scale,
        coat_thickness_m=solids / coat["solids_density_kg_m3"],
        coat_conductivity_w_mk=coating.crust_conductivity_w_mk,
        coat_wet_conductivity_w_mk=coat["wet_conductivity_w_mk"],
        coat_heat_j_m2k=solids * coat["solids_heat_j_kgk"],
        **drip_of(cut),
    )


def solids_kg_m2(coating: Coating) -> float:
    """Dry solids of a coat on a square metre of piece [kg/m2]."""
    whole = coating.pickup_frac / catalog.table("kinetics/coat.toml")["pickup_area_m2_kg"]
    return float(max(whole - coating.film_kg_m2, 0.0))


def drip_of(cut: Cut) -> dict[str, float]:
    """Drip of a cut as engine inputs; nothing for what is not meat.

    The catalog's share counts all the water of the meat, as measured; the engine's counts what can evaporate.
    """
    table = catalog.table("kinetics/drip.toml")
    if cut.drip_kind == "none":
        return {}
    row = table[cut.drip_kind]
    most = row["most_frac"] if cut.drip_frac is None else cut.drip_frac
    return {
        "drip_frac": min(most / cut.evaporable_frac, 1.0),
        "drip_mid_c": row["mid_c"],
        "drip_steep_per_k": row["steep_per_k"],
        "drip_lag_s": table["lag_s"],
    }


def vat(plan: FryPlan) -> Vat:
    """Engine inputs of the fryer. The working valve holds the pressure; the relief valve stays shut."""
    fryer, site = plan.fryer, plan.site
    surface = catalog.table("kinetics/surface.toml")
    return Vat(
        oil_mass_kg=fryer.oil_mass_kg,
        oil_start_c=plan.oil_start_c - fryer.offset_k,
        heater_w=fryer.heater_w,
        oil_cp_j_kgk=(plan.oil.cp_0c_j_kgk, plan.oil.cp_slope_j_kgk2),
        metal_heat_j_k=fryer.metal_heat_j_k,
        swing_k=fryer.swing_k,
        band_k=fryer.proportional_k,
        loss_w_k=fryer.loss_w_k,
        room_temp_c=site.room_temp_c,
        atmosphere_pa=site.atmosphere_pa,
        head_volume_m3=fryer.head_volume_m3,
        relief_gauge_pa=fryer.working_gauge_pa,
        relief_slope_kg_spa=fryer.relief_slope_kg_spa,
        leak_area_m2=fryer.leak_area_m2,
        vent_area_m2=fryer.vent_area_m2 or NEVER_TOLD_M2,
        breather_area_m2=fryer.breather_area_m2,
        lid_ua_w_k=fryer.lid_ua_w_k,
        lid_heat_j_k=fryer.lid_heat_j_k,
        lid_room_ua_w_k=fryer.lid_room_ua_w_k,
        lid_start_c=min(80.0, plan.oil_start_c),
        air_h_w_m2k=surface["air_w_m2k"],
        air_temp_c=site.room_temp_c,
        air_vapour_kg_m3=surface["air_vapour_kg_m3"],
        air_transfer_m_s=surface["air_w_m2k"] / surface["air_transfer_j_m3k"],
    )


def spans(plan: FryPlan) -> list[Span]:
    """Stages as spans: a vent down to zero gauge follows the last pressure stage, rest the lift.

    On a clock that runs on, the stages after the vent end where the clock says, and the controller has
    moved to the next set point; on one that waits the whole stage follows the vent.
    """
    out: list[Span] = []
    stages, durations = plan.program.stages, plan.program.durations_s()
    vented = False
    for number, (stage, length, end) in enumerate(zip(stages, durations, accumulate(durations), strict=True)):
        out.append(_span(plan, stage, length, end if vented and plan.runs_on else None))
        following = stages[number + 1] if number + 1 < len(stages) else None
        if stage.lid is LidState.PRESSURE and (following is None or following.lid is LidState.OPEN):
            aim = following if following is not None and plan.runs_on else stage
            out.append(
                Span(
                    duration_s=LONGEST_VENT_S,
                    set_c=aim.set_c - plan.fryer.offset_k,
                    lid=Lid.VENT,
                    until=Until.GAUGE_BELOW,
                    value=plan.fryer.zero_gauge_pa,
                )
            )
            vented = True
    last = out[-1].set_c
    return [*out, Span(duration_s=plan.rest_s, set_c=last, lid=Lid.REST)]


def _span(plan: FryPlan, stage: Stage, length: float, ends_at_s: float | None = None) -> Span:
    closed = stage.lid is LidState.PRESSURE and plan.fryer.kind is FryerKind.PRESSURE
    timed = stage.end not in KERNEL_END
    return Span(
        duration_s=length,
        set_c=stage.set_c - plan.fryer.offset_k,
        lid=Lid.PRESSURE if closed else Lid.OPEN,
        until=Until.TIME if timed else KERNEL_END[stage.end],
        value=0.0 if timed else stage.end_value,
        ends_at_s=ends_at_s,
    )


def question(plan: FryPlan) -> Cook:
    """The engine's question for a plan."""
    pieces = _piece_classes(plan.kinds, plan.coating, plan.product.start_temp_c)
    return Cook(vat=vat(plan), pieces=list(pieces), spans=spans(plan))


@lru_cache(maxsize=64)
def _piece_classes(
    kinds: tuple[PieceKind, ...], coating: Coating, start_temp_c: float
) -> tuple[PieceClass, ...]:
    """Engine inputs of a load, which stays the same while stages are edited."""
    return tuple(_piece_class(kind, coating, start_temp_c) for kind in kinds)


@lru_cache(maxsize=256)
def vent_area_m2(fryer: Fryer, site: Site) -> float:
    """Opening of a fryer's vent [m2]: as described, else worked out from its timed vent, else a wide one."""
    if fryer.vent_area_m2 is not None:
        return fryer.vent_area_m2
    if fryer.vent_s is None or fryer.kind is FryerKind.OPEN:
        return NEVER_TOLD_M2
    return area_for(question(timed_load(fryer, site)), fryer.vent_s)


def timed_load(fryer: Fryer, site: Site) -> FryPlan:
    """The cook a timed vent was timed on: a full load of eight-piece chicken that ends under pressure."""
    bird = catalog.cut_sets()["chicken_8"]
    product = Product(key="timed", name="timed", cut_set=bird.key, coating="dredge", start_temp_c=4.0)
    program = Program(
        name="timed",
        product=product.key,
        fryer=fryer.key,
        stages=(
            Stage(set_c=TIMED_SET_C, duration_s=TIMED_OPEN_S),
            Stage(set_c=TIMED_SET_C, lid=LidState.PRESSURE, duration_s=TIMED_PRESSURE_S),
        ),
    )
    kitchen = Kitchen(
        site=site,
        fryers=(fryer,),
        products=(product,),
        programs=(),
        cuts=tuple(catalog.cuts().values()),
        cut_sets=tuple(catalog.cut_sets().values()),
        coatings=tuple(catalog.coatings().values()),
    )
    count = capacity_units(fryer, bird, bird.unit_mass_kg)
    return FryPlan(
        site=site,
        fryer=fryer,
        oil=catalog.oils()[fryer.oil],
        product=product,
        coating=kitchen.coating("dredge"),
        cut_set=bird,
        program=program,
        units_count=count,
        kinds=_kinds(kitchen, bird, bird.unit_mass_kg, count, "dredge", "pressure"),
        oil_start_c=TIMED_SET_C,
        rest_s=1.0,
    )
