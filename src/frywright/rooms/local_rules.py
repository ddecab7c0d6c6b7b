"""What a local authority answered where the catalog knows no rule of the place, with who said it and when. An
answer may ask for more than a rule that is known, never for less.
"""

from __future__ import annotations

import datetime as dt
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from frywright.catalog import load as catalog
from frywright.ledger.facts.fact import Kept
from frywright.ledger.facts.people import RuleAnswered
from frywright.ledger.store import Store
from frywright.model.business_day import business_time, day_typed, usual_trade
from frywright.model.errors import Amount, InputError, one_of
from frywright.model.findings import say
from frywright.model.kitchen import Kitchen
from frywright.model.tongues import Translate
from frywright.model.units import is_count, show
from frywright.rooms.clock import now
from frywright.rooms.hall import by_name, given_words, in_turn, typed, write
from frywright.rooms.standing import answers_of
from frywright.verdicts.place import Place, place_of

WORK = {
    "pressure_fryer": "Work at a pressure fryer",
    "fryer": "Work at a fryer",
    "hot_oil": "Filter and move hot oil",
}
HOT_HOLD = "hot_hold"
SUBJECTS = {**WORK, HOT_HOLD: "Hot holding"}
LEAST_YEARS, MOST_YEARS = 16, 25
"""No authority lets people do hazardous work below 16: ILO Convention 138 (1973), article 3. The upper bound
is the project's own, against slips.
"""
LEAST_HOLD_C, MOST_HOLD_C = 54.0, 90.0
"""The lowest hot-holding limit of the FDA Food Code is 130 °F, for roasts (3-501.16, from memory). The upper
bound is the project's own, against slips.
"""


@dataclass(frozen=True, slots=True, kw_only=True)
class SubjectRow:
    """One thing an authority may be asked about: the rules known, and its answer."""

    subject: str
    title: str
    known: tuple[str, ...]
    answer: str
    number: int


def place_title(kitchen: Kitchen) -> str:
    """Name of the kitchen's place."""
    return place_of(kitchen).title


def rule_subjects(store: Store, kitchen: Kitchen, tr: Translate = str) -> tuple[SubjectRow, ...]:
    """What is known here of each subject, and what the authority said."""
    place, answers = place_of(kitchen), answers_of(store, kitchen)
    return tuple(
        SubjectRow(
            subject=key,
            title=tr(title),
            known=tuple(_known(place, key, kitchen.site.units, tr)),
            answer=_answer(answers[key].fact, kitchen.site.units, tr) if key in answers else "",
            number=answers[key].number if key in answers else 0,
        )
        for key, title in SUBJECTS.items()
    )


def _known(place: Place, subject: str, system: str, tr: Translate) -> list[str]:
    if subject != HOT_HOLD:
        return [tr(rule["text"]) for rule in _age_rules(place, subject)]
    level = place.hot_hold_c()
    return [] if level is None else [f"{show(level, 'c', system)} ({tr(place.title)})"]


def _age_rules(place: Place, subject: str) -> list[Mapping[str, Any]]:
    rules = catalog.table("standards/age_rules.toml")["rule"]
    return [rule for rule in rules if (rule["place"], rule["restricted"]) == (place.age, subject)]


def _answer(answer: RuleAnswered, system: str, tr: Translate) -> str:
    if answer.hold_c is not None:
        return f"{show(answer.hold_c, 'c', system)}, {source_of(answer, tr)}"
    return say(
        "from {years} years on, {source}",
        {"years": str(answer.years_count), "source": source_of(answer, tr)},
        translate=tr,
    )


def source_of(answer: RuleAnswered, tr: Translate = str) -> str:
    """Who said it, when, and where it can be read again."""
    values = {"said_by": answer.said_by, "said_on": answer.said_on.isoformat(), "words": answer.words}
    return tr("said by {said_by} on {said_on}: {words}").format(**values)


def age_answers(answers: Mapping[str, Kept[RuleAnswered]], tr: Translate = str) -> dict[str, str]:
    """Answers about ages in words, by kind of work."""
    found = {key: item.fact for key, item in answers.items() if key in WORK}
    return {key: f"{tr(WORK[key])}: {_answer(fact, '', tr)}" for key, fact in found.items()}


def answered_ages(answers: Mapping[str, Kept[RuleAnswered]], tr: Translate = str) -> list[list[str]]:
    """Answers about ages as rows of the rules that a record is judged by."""
    return [
        [tr(WORK[key]), source_of(item.fact, tr), tr("{years} years").format(years=item.fact.years_count)]
        for key, item in answers.items()
        if key in WORK
    ]


@in_turn
def keep_answer(store: Store, kitchen: Kitchen, values: Mapping[str, Any]) -> Kept[RuleAnswered]:
    """Keep what the authority said, or take its answer back. ``values`` has subject, figure (years, or a
    temperature; empty takes the answer back), said_by, said_on, words (where it can be read again), who.
    Raises InputError: nobody who said it, a day to come, a figure out of range or below a rule that is known,
    or nothing to take back.
    """
    subject = one_of(tuple(SUBJECTS), values.get("subject"), "subject")
    figure, said_by, words, who = (typed(values, n) for n in ("figure", "said_by", "words", "who"))
    if len(said_by) < 2:
        raise InputError("said_by", repr(said_by), "the office and the person who said it")
    given_words(words, "words", "where it can be read again: a letter, its number, its day")
    old = answers_of(store, kitchen).get(subject)
    if not figure and old is None:
        raise InputError("figure", "empty", "given: there is no answer to take back")
    fact = RuleAnswered(
        subject=subject,
        jurisdiction=kitchen.site.jurisdiction,
        years_count=_years(kitchen, subject, figure) if figure and subject in WORK else None,
        hold_c=_hold_c(kitchen, figure) if figure and subject == HOT_HOLD else None,
        said_by=said_by[:120],
        said_on=_said_on(kitchen, typed(values, "said_on")),
        words=words[:200],
        who=by_name(who, "the name of the person who enters it"),
    )
    return write(store, fact, replaces=old.number if old else None)


def _years(kitchen: Kitchen, subject: str, text: str) -> int:
    laws = [rule for rule in _age_rules(place_of(kitchen), subject) if rule["law"]]
    least = max([LEAST_YEARS, *(int(rule["under_years"]) for rule in laws)])
    if not is_count(text) or not least <= int(text) <= MOST_YEARS:
        raise InputError(
            "figure",
            repr(text),
            "at least {low} and at most {high}: an answer cannot go below a rule that is known",
            low=least,
            high=MOST_YEARS,
        )
    return int(text)


def _hold_c(kitchen: Kitchen, text: str) -> float:
    found, known = kitchen.site.read(text, "temperature", "figure"), place_of(kitchen).hot_hold_c()
    least = max(LEAST_HOLD_C, known or LEAST_HOLD_C)
    if not least - 1e-9 <= found <= MOST_HOLD_C:
        raise InputError(
            "figure",
            Amount(found, "c"),
            "{low_c} to {high_c}: an answer cannot go below a rule that is known",
            low_c=least,
            high_c=MOST_HOLD_C,
        )
    return found


def _said_on(kitchen: Kitchen, text: str) -> dt.date:
    today, found = business_time(usual_trade(kitchen), now())[0], day_typed(text, "said_on")
    if found > today:
        raise InputError("said_on", text, "today or earlier")
    return found
