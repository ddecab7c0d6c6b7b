"""Fryers, their controllers by capability, and their oil."""

from __future__ import annotations

from dataclasses import dataclass, field
from enum import StrEnum

from frywright.model.errors import InputError, check_text, one_of
from frywright.model.units import PSI, within

CEILING_C = 230.0
"""Highest set point accepted: commercial high-limit in European practice (from memory, EN 60335-2-37)."""


MOST_VENT_M2 = 1e-3
"""Largest opening taken for a vent (estimate: a bore of 36 mm)."""
SHORTEST_VENT_S, LONGEST_VENT_S = 2.0, 300.0
"""Vent times a watch can have told (own rule); no vent is simulated for longer than the second."""


class FryerKind(StrEnum):
    """Whether the vat can be closed under pressure."""

    OPEN = "open"
    PRESSURE = "pressure"


class ClockStyle(StrEnum):
    """How a controller's clock counts, and whether it stands still while the fryer vents."""

    ELAPSED = "elapsed"  # counts up since the drop and runs on during the vent
    LEFT = "left"  # counts down and runs on during the vent
    WAITS = "waits"  # counts down and stands still during the vent

    @property
    def counts_down(self) -> bool:
        """Whether a total is keyed, and stages by the time left."""
        return self is not ClockStyle.ELAPSED

    @property
    def runs_on(self) -> bool:
        """Whether the clock runs on while the fryer vents."""
        return self is not ClockStyle.WAITS


class UnusedStage(StrEnum):
    """What is keyed into a stage that a program does not need."""

    ZERO = "zero"
    BLANK = "blank"
    REPEAT = "repeat"


class TempUnit(StrEnum):
    """Unit that a controller shows."""

    F = "f"
    C = "c"


class SettingKind(StrEnum):
    """What a standing setting of a machine is about, in general."""

    SCALE = "scale"
    LID = "lid"
    LOAD = "load"
    CLOCK = "clock"
    ALTITUDE = "altitude"
    ALARM = "alarm"
    OTHER = "other"


MOST_SETTING_SHIFT_K = 60.0
"""Largest shift of the oil that a setting is taken to make (own rule)."""
MOST_SETTINGS = 20
"""Most standing settings of one fryer: one sheet of paper (own rule)."""
LONGEST_NAME, LONGEST_READING, LONGEST_WORDS = 60, 40, 200
"""Letters of a setting's name, of what it reads, and of what a wrong one does: they fit a card (own rule)."""
OWN_FIELDS = {"shows": SettingKind.SCALE, "clock": SettingKind.CLOCK, "lid_open": SettingKind.LID}
"""What only a wrong value of one kind can do."""


@dataclass(frozen=True, slots=True, kw_only=True)
class WrongValue:
    """Another value a setting may show, and what the machine then does, as far as the kitchen knows it.

    ``set_change_k`` is added to the oil of every set point keyed, ``time_frac`` is the share of each time
    keyed that runs; ``shows`` and ``clock`` are what the control then is; ``lid_open`` when stages under
    pressure run open.
    """

    reads: str
    does: str = ""
    set_change_k: float = 0.0
    time_frac: float = 1.0
    shows: TempUnit | None = None
    clock: ClockStyle | None = None
    lid_open: bool = False

    def __post_init__(self) -> None:
        check_text("reads", self.reads, LONGEST_READING, "wrong")
        if self.does:
            check_text("does", self.does, LONGEST_WORDS, self.reads)
        if not abs(self.set_change_k) <= MOST_SETTING_SHIFT_K:
            raise InputError(
                "set_change",
                self.set_change_k,
                "{low_k} to {high_k}",
                where=self.reads,
                unit="k",
                low_k=-MOST_SETTING_SHIFT_K,
                high_k=MOST_SETTING_SHIFT_K,
            )
        if not 0.1 <= self.time_frac <= 5.0:
            raise InputError("time", f"{100 * self.time_frac:g} %", "10 % to 500 %", where=self.reads)

    @property
    def known(self) -> bool:
        """Whether what it does can be simulated."""
        moves = self.set_change_k != 0.0 or self.time_frac != 1.0
        return moves or self.shows is not None or self.clock is not None or self.lid_open


@dataclass(frozen=True, slots=True, kw_only=True)
class MachineSetting:
    """A standing setting of one machine that must match machine and place, in the kitchen's own words.

    ``value`` is what it must read. A control that corrects its oil by an altitude setting ``lowers_k`` it for
    each ``each_m``; set points are meant with the setting right, so only a difference counts.
    """

    name: str
    kind: SettingKind
    value: str
    lowers_k: float | None = None
    each_m: float | None = None
    wrong: tuple[WrongValue, ...] = ()

    def __post_init__(self) -> None:
        check_text("name", self.name, LONGEST_NAME, "setting")
        check_text("value", self.value, LONGEST_READING, self.name)
        self._check_correction()
        read = [plain_reading(self.value), *(plain_reading(w.reads) for w in self.wrong)]
        double = next((w.reads for w in self.wrong if read.count(plain_reading(w.reads)) > 1), None)
        if double is not None:
            raise InputError("reads", repr(double), "another reading than the right one", where=self.name)
        for wrong in self.wrong:
            for field_name, kind in OWN_FIELDS.items():
                if getattr(wrong, field_name) and self.kind is not kind:
                    raise InputError(
                        field_name,
                        "given",
                        "left out: only a setting of kind {kind} can do that",
                        where=self.name,
                        kind=str(kind),
                    )

    def _check_correction(self) -> None:
        if self.lowers_k is None and self.each_m is None:
            return
        if self.kind is not SettingKind.ALTITUDE:
            raise InputError("lowers", "given", "left out: only an altitude setting has it", where=self.name)
        if self.lowers_k is None or self.each_m is None:
            raise InputError("lowers, each", "one of them", "both given, or neither", where=self.name)
        if not 0 < self.lowers_k <= 20.0:
            raise InputError(
                "lowers",
                self.lowers_k,
                "above 0 and at most {most_k}",
                where=self.name,
                unit="k",
                most_k=20.0,
            )
        if not 50.0 <= self.each_m <= 3000.0:
            raise InputError(
                "each",
                self.each_m,
                "{low_m} to {high_m}",
                where=self.name,
                unit="m",
                low_m=50.0,
                high_m=3000.0,
            )

    @property
    def tells_scale(self) -> bool:
        """Whether it is the setting of the scale that the display shows."""
        return any(wrong.shows is not None for wrong in self.wrong)

    @property
    def tells_clock(self) -> bool:
        """Whether it is the setting of how the clock counts."""
        return any(wrong.clock is not None for wrong in self.wrong)


def plain_reading(text: str) -> str:
    """What a setting reads whatever its capitals and blanks."""
    return " ".join(text.casefold().split())


FUELS, LONGEST_CALLED = ("electric", "gas"), 200
ESTIMATES = ("vent", "head_volume", "swing", "heater", "relief_gauge")
"""Values of a fryer that nobody can read off it; each is an estimate until it is measured."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Controller:
    """What a controller can hold, in general terms."""

    stage_count: int = 1
    temp_step_k: float = 1.0
    time_step_s: float = 1.0
    clock: ClockStyle = ClockStyle.LEFT
    lid_control: bool = False
    slot_count: int = 1
    shows: TempUnit = TempUnit.F
    unused: UnusedStage = UnusedStage.ZERO
    lowest_c: float = 60.0
    highest_c: float = CEILING_C
    longest_s: float = 5999.0

    def __post_init__(self) -> None:
        if not 1 <= self.stage_count <= 20:
            raise InputError("stage_count", self.stage_count, "1 to 20", where="controller")
        if not self.temp_step_k > 0 or not self.time_step_s > 0:
            raise InputError("temp_step and time_step", "not positive", "above 0", where="controller")
        within(self, "controller", temp_step_k=(0.0, 30.0), time_step_s=(0.0, 600.0), slot_count=(1, 200))


@dataclass(frozen=True, slots=True, kw_only=True)
class Oil:
    """Frying oil: density and heat capacity, both linear in temperature."""

    key: str
    title: str
    density_20c_kg_m3: float
    density_slope_kg_m3k: float
    cp_0c_j_kgk: float
    cp_slope_j_kgk2: float
    smoke_low_c: float | None = None

    def density_kg_m3(self, temp_c: float) -> float:
        """Density at ``temp_c``."""
        return self.density_20c_kg_m3 + self.density_slope_kg_m3k * (temp_c - 20.0)


POSSIBLE = {
    "capacity_heads": (0, 500),
    "capacity_kg": (0.0, 200.0),
    "min_load_kg": (0.0, 200.0),
    "proportional_k": (0.0, 60.0),
    "relief_gauge_pa": (0.0, 250e3),
    "head_volume_m3": (0.0005, 0.5),
    "lid_heat_j_k": (0.0, 1e6),
    "metal_heat_j_k": (0.0, 1e6),
    "lid_ua_w_k": (0.0, 1e3),
    "lid_room_ua_w_k": (0.0, 1e3),
    "loss_w_k": (0.0, 500.0),
    "offset_k": (-30.0, 30.0),
}
"""What a fryer can be at all: wide bounds against a slip of the pen (own rule)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Fryer:
    """One fryer. Defaults are estimates that a first-day log replaces (docs/theory/engine.md)."""

    key: str
    name: str
    kind: FryerKind
    oil_mass_kg: float
    heater_w: float
    capacity_heads: int = 0
    capacity_kg: float = 0.0
    min_load_kg: float = 0.0
    oil: str = "canola"
    solid_fat: bool = False
    oil_area_m2: float = 0.0
    upper_line_m: float = 0.0
    fuel: str = "electric"
    swing_k: float = 4.0
    proportional_k: float = 0.0
    working_gauge_pa: float = 12 * PSI
    relief_gauge_pa: float = 15 * PSI
    relief_slope_kg_spa: float = 2e-6
    vent_area_m2: float | None = None
    vent_s: float | None = None  # timed with a watch: full load, from working pressure to zero on the gauge
    leak_area_m2: float = 0.0
    breather_area_m2: float = 1e-4
    zero_gauge_pa: float = 1 * PSI  # a person reads zero from here down: gauge resolution, an estimate
    head_volume_m3: float = 0.02
    lid_ua_w_k: float = 60.0
    lid_heat_j_k: float = 5000.0
    lid_room_ua_w_k: float = 2.0
    metal_heat_j_k: float = 8000.0
    loss_w_k: float = 3.0
    offset_k: float = 0.0
    estimates: tuple[str, ...] = ()  # which of its values are estimates still, of ESTIMATES
    controller: Controller = field(default_factory=Controller)
    settings: tuple[MachineSetting, ...] = ()

    def __post_init__(self) -> None:
        self._check_settings()
        check_text("name", self.name, LONGEST_CALLED, self.key)
        one_of(FUELS, self.fuel, "fuel")
        within(self, self.key, **POSSIBLE)
        if not 2.0 <= self.oil_mass_kg <= 200.0:
            raise InputError(
                "oil_mass",
                self.oil_mass_kg,
                "{low_kg} to {high_kg}",
                where=self.name,
                unit="kg",
                low_kg=2.0,
                high_kg=200.0,
            )
        if not 500.0 <= self.heater_w <= 200e3:
            raise InputError(
                "heater",
                self.heater_w,
                "{low_w} to {high_w} into the oil",
                where=self.name,
                unit="w",
                low_w=500.0,
                high_w=200e3,
            )
        if self.capacity_heads <= 0 and self.capacity_kg <= 0:
            raise InputError("capacity", "missing", "given as capacity_heads or capacity_kg", where=self.name)
        if not 0.0 <= self.swing_k <= 30.0:
            raise InputError(
                "swing",
                self.swing_k,
                "{low_k} to {high_k}",
                where=self.name,
                unit="k",
                low_k=0.0,
                high_k=30.0,
            )
        if not 0.0 <= self.oil_area_m2 <= 2.0 or not 0.0 <= self.upper_line_m <= 1.0:
            raise InputError(
                "oil_area, upper_line",
                f"{self.oil_area_m2:g} m2, {self.upper_line_m:g} m",
                "up to 2 m2 and 1 m, or left out",
                where=self.name,
            )
        for name in self.estimates:
            one_of(ESTIMATES, name, "estimates")
        if self.kind == FryerKind.PRESSURE:
            self._check_pressure()

    @property
    def vent_told(self) -> bool:
        """Whether anybody described the vent: its opening, or its time by a watch."""
        return self.vent_area_m2 is not None or self.vent_s is not None

    def _check_settings(self) -> None:
        names = [plain_reading(s.name) for s in self.settings]
        if len(names) > MOST_SETTINGS:
            raise InputError("setting", len(names), "at most {most}", where=self.name, most=MOST_SETTINGS)
        double = next((n for n in names if names.count(n) > 1), None)
        if double:
            raise InputError("name", repr(double), "used once among a fryer's settings", where=self.name)
        for setting in self.settings:
            for wrong in setting.wrong:
                if wrong.shows is self.controller.shows or wrong.clock is self.controller.clock:
                    raise InputError(
                        "shows" if wrong.shows else "clock",
                        str(wrong.shows or wrong.clock),
                        "other than what the controller of this fryer does when it is set right",
                        where=setting.name,
                    )

    def _check_pressure(self) -> None:
        if not 10e3 <= self.working_gauge_pa <= 110e3:
            raise InputError(
                "working_gauge",
                self.working_gauge_pa,
                "{low_pa} to {high_pa}",
                where=self.name,
                unit="pa",
                low_pa=10e3,
                high_pa=110e3,
            )
        if self.relief_gauge_pa <= self.working_gauge_pa:
            raise InputError(
                "relief_gauge",
                self.relief_gauge_pa,
                "above the working gauge; never set or test a relief valve yourself, read the plate",
                where=self.name,
                unit="pa",
            )
        if self.vent_area_m2 is not None and not 0 < self.vent_area_m2 <= MOST_VENT_M2:
            raise InputError(
                "vent_area",
                f"{1e6 * self.vent_area_m2:g} mm2",
                "above 0 and at most 1000 mm2",
                where=self.name,
            )
        if self.vent_s is not None and not SHORTEST_VENT_S <= self.vent_s <= LONGEST_VENT_S:
            raise InputError(
                "vent",
                f"{self.vent_s:g} s",
                "2 s to 5 min, timed with a watch on a full load, from opening the valve until the gauge"
                " reads zero; never open a lid before the gauge reads zero",
                where=self.name,
            )
        if not 0 < self.zero_gauge_pa <= 3 * PSI:
            raise InputError(
                "zero_gauge",
                self.zero_gauge_pa,
                "above 0 and at most {most_pa}",
                where=self.name,
                unit="pa",
                most_pa=3 * PSI,
            )
