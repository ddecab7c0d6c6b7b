"""What oil costs a day and a kilogram of raw product; what the food takes up stands apart from what is thrown
away.
"""

from __future__ import annotations

from dataclasses import astuple, dataclass

from frywright.model.errors import InputError, Phrase


@dataclass(frozen=True, slots=True, kw_only=True)
class OilBill:
    """Money a day by part, and all of it by raw kilogram."""

    uptake_money: float
    discard_money: float
    labour_money: float
    media_money: float
    disposal_money: float
    rebate_money: float
    raw_kg: float

    @property
    def day_money(self) -> float:
        """All parts of a day."""
        return (
            self.uptake_money
            + self.discard_money
            + self.labour_money
            + self.media_money
            + self.disposal_money
            - self.rebate_money
        )

    @property
    def per_kg_money(self) -> float:
        """Money by raw kilogram."""
        return self.day_money / self.raw_kg


@dataclass(frozen=True, slots=True, kw_only=True)
class Rates:
    """Prices of a kilogram, time and pay of a change of one vat, media a day."""

    price_kg_money: float
    change_h: float = 0.0
    hour_money: float = 0.0
    media_money: float = 0.0
    disposal_kg_money: float = 0.0
    rebate_kg_money: float = 0.0


def bill(
    raw_kg: float, vats_kg: tuple[float, ...], top_up_kg: float, days_between: float, rates: Rates
) -> OilBill:
    """The bill of a day: top-up, vats thrown away every ``days_between`` days, labour of a change by vat,
    media, disposal, rebate. Raises InputError: nothing cooked, negative amounts, or no days between changes.
    """
    if not raw_kg > 0 or not days_between > 0 or min((top_up_kg, *astuple(rates), *vats_kg)) < 0:
        raise InputError(
            "oil bill",
            Phrase("{raw_kg} raw, {days} days", {"raw_kg": raw_kg, "days": f"{days_between:g}"}),
            "raw product and days above 0, the rest 0 or more",
        )
    thrown = sum(vats_kg) / days_between
    return OilBill(
        uptake_money=top_up_kg * rates.price_kg_money,
        discard_money=thrown * rates.price_kg_money,
        labour_money=len(vats_kg) * rates.change_h * rates.hour_money / days_between,
        media_money=rates.media_money,
        disposal_money=thrown * rates.disposal_kg_money,
        rebate_money=thrown * rates.rebate_kg_money,
        raw_kg=raw_kg,
    )
