"""Two facts about a program, never one word: what is predicted, and what is proven by which evidence."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from enum import StrEnum

from frywright.model.findings import Verdict
from frywright.verdicts.evidence import NO_RULE, EvidenceKind
from frywright.verdicts.limits import HOUSE


class Prediction(StrEnum):
    """Over or short of a rule; or no rule here speaks of the food, whatever the house wants."""

    OVER = "over"
    SHORT = "short"
    NO_RULE = "no_rule"


@dataclass(frozen=True, slots=True, kw_only=True)
class Facts:
    """The lowest margin over all pieces, and what stands behind it.

    ``margin_k`` is signed (below 0 is short) and against the house target where no rule speaks of the food;
    None without either. ``evidence`` is the kind of evidence where every piece is proven; ``missing`` what
    else is needed.
    """

    prediction: Prediction
    margin_k: float | None = None
    level_c: float | None = None
    title: str = ""
    proven: bool = False
    evidence: str = ""
    missing: tuple[str, ...] = ()
    why: str = ""
    calibrated: tuple[str, ...] = ()  # pieces whose calibration speaks, where others still lack one
    to_probe: tuple[str, ...] = ()  # pieces that are only estimated beside them, lowest margin first
    worst: bool = False  # the worst case of a proof, not one load

    @property
    def short(self) -> bool:
        """Whether the coldest piece is short of the rule or, without one, of the house target."""
        return self.margin_k is not None and self.margin_k < 0.0


def facts_of(verdicts: Iterable[Verdict]) -> Facts:
    """Facts of the pieces of one load; the lowest margin speaks for all."""
    found = list(verdicts)
    judged = [v for v in found if v.margin_k is not None]
    if not judged:
        why = next((str(v.values["why"]) for v in found if "why" in v.values), "")
        return no_rule(why)
    lowest = min(judged, key=lambda v: v.margin_k or 0.0)
    missing = tuple(dict.fromkeys(m for v in judged for m in v.missing))
    level = lowest.values.get("level_c")
    judged.sort(key=lambda v: v.margin_k or 0.0)
    known = [str(v.values["piece"]) for v in judged if v.evidence == EvidenceKind.CALIBRATED]
    open_ = [str(v.values["piece"]) for v in judged if v.evidence == EvidenceKind.SCOUTING]
    facts = facts_from(
        lowest.margin_k or 0.0,
        house=lowest.rule == HOUSE,
        title=str(lowest.values.get("title", "")),
        level_c=level if isinstance(level, float) else None,
        evidence="" if missing else lowest.evidence,
        missing=missing,
    )
    return replace(facts, calibrated=tuple(known), to_probe=tuple(open_)) if known and open_ else facts


def no_rule(why: str) -> Facts:
    """Facts of a food without a rule and a house target."""
    return Facts(prediction=Prediction.NO_RULE, missing=(NO_RULE,), why=why)


def facts_from(
    margin_k: float,
    *,
    house: bool,
    title: str,
    level_c: float | None,
    evidence: str,
    missing: tuple[str, ...],
    worst: bool = False,
) -> Facts:
    """Facts of a signed margin against a rule or, with ``house``, a house target."""
    sign = Prediction.SHORT if margin_k < 0.0 else Prediction.OVER
    return Facts(
        prediction=Prediction.NO_RULE if house else sign,
        margin_k=margin_k,
        level_c=level_c,
        title=title,
        proven=not missing,
        evidence=evidence,
        missing=missing,
        worst=worst,
    )
