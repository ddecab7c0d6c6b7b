"""Probe next as people read it: page, terminal and clipboard sheet share it."""

from __future__ import annotations

from dataclasses import dataclass

from frywright.calibrate.belief import COVERAGE, PieceClass
from frywright.calibrate.plan_probing import RISK
from frywright.calibrate.sampling import count_without_failure, zero_failure_coverage
from frywright.model.findings import say
from frywright.model.kitchen import Kitchen
from frywright.model.tongues import Translate
from frywright.model.units import show, signed
from frywright.paper.paper import PAPER, pdf
from frywright.rooms.cook.next_probing import PlanRow, Probing, Used

PLACE_WORDS = {
    "middle": "in the middle of the basket",
    "wall": "near the wall of the vat",
    "bottom": "at the bottom of the basket",
}
LOAD_WORDS = {
    "smallest": "smallest load",
    "half": "half load",
    "full": "full load",
    "back to back": "full load straight after another",
}
STATES = {
    "open": "{read} of about {expected} read. Chance to meet {limit_c}: {chance}.",
    "meets": (
        "Meets {limit_c} on {read} readings: in every place and every kind of load at least {coverage_frac}"
        " of the heaviest pieces are over it. Of programs that are not, at most {risk_frac} are said to meet"
        " it."
    ),
    "fails": (
        "Fails {limit_c}: a piece was read {short_k} below it with the thermometer's error taken off. Do not"
        " cook by this program. Lengthen it, save it, then probe the new version."
    ),
    "not shown": (
        "Not shown. Readings: {read}. They are enough to say that this program will not show"
        " {limit_c}. Lengthen it or make the pieces more alike, save it, then probe the new"
        " version."
    ),
    "short": "Predicted short of {limit_c}. Lengthen the program first: there is nothing to probe yet.",
    "no rule": "No rule here for this food, and no house target is set. Nothing judges its readings.",
}
BY_COUNT = (
    "Pieces read: {read}, none below. That alone shows {shown_frac} of such pieces at 95"
    " % confidence. Without the simulation it takes {each} readings of every cut, none"
    " below."
)
UNDER_A_LID = (
    "Hot oil burns, steam scalds. Wait for zero on the gauge and open the lid as the maker's manual says"
    " before you reach in."
)
OPEN_VAT = "Hot oil burns, steam scalds. Use long tongs and let the piece drain before you take it out."
CAUTIONS = (
    "Lift the piece onto a tray and read it there within a minute. Never probe over the vat.",
    "Push the stem into the thickest part, beside the bone, and draw it back slowly: the lowest figure"
    " counts.",
    "Clean and sanitise the stem before every piece.",
)


@dataclass(frozen=True, slots=True, kw_only=True)
class RowShown:
    """Pieces to read, in words, and as the form sends them."""

    count: int
    piece: str
    place: str
    key: PieceClass


@dataclass(frozen=True, slots=True, kw_only=True)
class LoadShown:
    """A load to probe."""

    number: int
    title: str
    rows: tuple[RowShown, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class ReadShown:
    """A reading: its entry, what it was of, its margin, and why it does not count."""

    number: int
    load: str
    piece: str
    core: str
    margin: str
    left_out: str


@dataclass(frozen=True, slots=True, kw_only=True)
class ProbingShown:
    """The whole of a probing in people's words and units."""

    program: str
    version: int
    fryer: str
    product: str
    limit: str
    state: str
    sentence: str
    by_count: str
    loads: tuple[LoadShown, ...]
    readings: tuple[ReadShown, ...]
    cuts: dict[str, str]
    places: dict[str, str]
    kinds: dict[str, str]
    cautions: tuple[str, ...]
    last: int


def percent(share_frac: float) -> str:
    """A chance in whole percent, never none or all."""
    return f"{min(99, max(1, round(100.0 * share_frac)))} %"


def probing_view(kitchen: Kitchen, found: Probing, translate: Translate = str) -> ProbingShown:
    """A probing as people read it."""
    system, program = kitchen.site.units, found.program
    cuts = {p.cut: translate(kitchen.cut(p.cut).title) for p in found.pieces}
    values: dict[str, float | str] = {
        "read": f"{found.read_count}",
        "expected": f"{found.expected_count}",
        "chance": percent(found.chance_frac),
        "limit_c": found.limit_c if found.limit_c is not None else "",
        "coverage_frac": COVERAGE,
        "risk_frac": RISK,
        "short_k": max(-found.low_k, 0.1),
    }
    loads = (found.rows, *found.later) if found.rows else ()
    return ProbingShown(
        program=program.name,
        version=program.version,
        fryer=kitchen.fryer(program.fryer).name,
        product=kitchen.product(program.product).name,
        limit=show(found.limit_c, "c", system) if found.limit_c is not None else "",
        state=found.state,
        sentence=say(STATES[found.state], values, system, translate),
        by_count=_by_count(found, system, translate),
        loads=tuple(_load(found.load_number + i, rows, cuts, translate) for i, rows in enumerate(loads)),
        readings=tuple(_reading(used, cuts, system, translate) for used in found.readings),
        cuts=cuts,
        places={key: translate(PLACE_WORDS[key]) for key in dict.fromkeys(p.place for p in found.pieces)},
        kinds={key: translate(LOAD_WORDS[key]) for key in dict.fromkeys(p.load for p in found.pieces)},
        cautions=tuple(
            translate(text) for text in (UNDER_A_LID if program.under_pressure else OPEN_VAT, *CAUTIONS)
        ),
        last=found.readings[-1].kept.number if found.readings else 0,
    )


def _by_count(found: Probing, system: str, translate: Translate) -> str:
    """What the readings show by their count alone; empty before the first."""
    if not found.read_count or found.state not in ("open", "meets"):
        return ""
    values: dict[str, float | str] = {
        "read": f"{found.read_count}",
        "shown_frac": zero_failure_coverage(found.read_count),
        "each": f"{count_without_failure(COVERAGE)}",
    }
    return say(BY_COUNT, values, system, translate)


def _load(number: int, rows: tuple[PlanRow, ...], cuts: dict[str, str], translate: Translate) -> LoadShown:
    return LoadShown(
        number=number,
        title=translate(LOAD_WORDS[rows[0].piece.load]),
        rows=tuple(
            RowShown(
                count=row.count,
                piece=cuts[row.piece.cut],
                place=translate(PLACE_WORDS[row.piece.place]),
                key=row.piece,
            )
            for row in rows
        ),
    )


def _reading(used: Used, cuts: dict[str, str], system: str, translate: Translate) -> ReadShown:
    fact = used.kept.fact
    piece = cuts.get(fact.cut or "", fact.cut or "–")
    place = translate(PLACE_WORDS[fact.place]) if fact.place in PLACE_WORDS else "–"
    kind = translate(LOAD_WORDS[fact.load_kind]) if fact.load_kind in LOAD_WORDS else "–"
    return ReadShown(
        number=used.kept.number,
        load=f"{fact.load_number or '–'}: {kind}",
        piece=f"{piece}, {place}",
        core=show(fact.core_c, "c", system),
        margin=signed(used.margin_k, "k", system),
        left_out=translate(used.left_out) if used.left_out else "",
    )


def sheet_pdf(kitchen: Kitchen, found: Probing, language: str, translate: Translate = str) -> bytes:
    """The plan on paper for a clipboard: a line for each piece, cautions, room to write."""
    view = probing_view(kitchen, found, translate)
    lines = [
        [f"{load.number}", load.title, f"{row.piece}, {row.place}", "", "", "", ""]
        for load in view.loads
        for row in load.rows
        for _ in range(row.count)
    ]
    words = ("load", "kind of load", "heaviest piece", "core", "thermometer", "weight", "name")
    under = (kitchen.site.name, view.product, view.fryer, f"{translate('version')} {view.version}")
    data = {
        "title": f"{translate('Probe next')}: {view.program}",
        "paper": PAPER[kitchen.site.units],
        "language": language,
        "under": " · ".join(under),
        "limit": view.sentence
        if found.limit_c is None
        else say(
            "Every piece must read over {limit_c} with the thermometer's error of {error_k} taken off.",
            {"limit_c": found.limit_c, "error_k": kitchen.site.thermometer_error_k},
            kitchen.site.units,
            translate,
        ),
        "header": [translate(word) for word in words],
        "lines": lines,
        "cautions": view.cautions,
        "note": translate("After each load type the readings in: the plan may need fewer than this."),
    }
    return pdf("probing.typ", "probing", data)
