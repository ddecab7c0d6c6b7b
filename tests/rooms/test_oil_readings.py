"""Readings of oil without history, over the limit, or that no oil has: what is advised, and what is asked."""

from __future__ import annotations

import datetime as dt
from dataclasses import replace

import pytest

from frywright.catalog.kitchen import parse_kitchen
from frywright.ledger.facts.oil import OilRefused
from frywright.model.errors import InputError
from frywright.rooms.care import meter, oil_money, oil_state, vat
from frywright.rooms.care.now import now_lines
from frywright.rooms.care.oil_picture import oil_picture
from frywright.rooms.clock import now
from frywright.rooms.hall import write
from frywright.rooms.kitchen import remembered_kitchen
from frywright.trial.kitchens import demo_text
from tests.rooms.test_vat import TODAY, check_of, tell
from tests.web.test_probes import FISH_AND_WEDGES


@pytest.fixture
def kitchen(store):
    return remembered_kitchen(store)


@pytest.mark.parametrize(
    ("off", "amount", "how", "right", "said"),
    [
        ("+4", "24.5", "meter", 20.5, "The last reading, 24.5 %, is 20.5 % by the meter's check."),
        ("-2", "22.5", "meter", 24.5, "the last reading, 22.5 %, is 24.5 % by the meter's check, over 24 %"),
        ("+2", "25", "strip", 25.0, "Discard tonight: the last reading, 25 %, is over 24 %."),
        ("+2", "26.5", "meter", 24.5, "is 24.5 % by the meter's check, over 24 %"),
    ],
)
@pytest.mark.parametrize("checked", [20, 24])
def test_a_reading_is_judged_as_the_meters_check_puts_it_right(
    store, kitchen, off, amount, how, right, said, checked
):
    """Of a vat with one reading: a meter two points high throws no oil away, one two points low keeps none; a
    strip is no meter. A check of days ago counts as one of the same day.
    """
    read = {"low_read": f"{4 + int(off):d}", "high_read": f"{24 + int(off):d}", "high_known": "24"}
    kept, _ = meter.keep_check(store, kitchen, check_of(**read), "k")
    write(store, replace(kept.fact, date=dt.date(2026, 11, checked), key="k2"), replaces=kept.number)
    tell(store, kitchen, 24, what="reading", amount=amount, how=how)
    view = vat.vat_view(store, kitchen, "alder", dt.date(2026, 11, 24))
    assert said in view.text
    assert (view.advice == "discard") is (right >= 24.0)
    assert view.last_reading_pct == float(amount), "shown as it was read"
    assert oil_state.vat_states(store, kitchen, TODAY)["alder"].right_pct == pytest.approx(right)


def test_few_readings_below_the_limit_throw_no_oil_away(store, kitchen):
    """18, 19.5 and 20.5 % against a limit of 24: an estimate without history says read it, not discard; a
    reading that one usual day carries over the limit still says discard, and the list of what is due agrees.
    """
    for n, amount in enumerate(("18", "19.5", "20.5")):
        tell(store, kitchen, 22 + n, what="reading", amount=amount)
        view = vat.vat_view(store, kitchen, "alder", dt.date(2026, 11, 22 + n))
        assert (view.advice, view.text[:8]) == ("unknown", "Unknown:"), amount
    assert "read it tomorrow" in view.text
    tell(store, kitchen, 24, vat="birch", what="reading", amount="23.5")
    assert vat.vat_view(store, kitchen, "birch", dt.date(2026, 11, 24)).advice == "discard"
    states = oil_state.vat_states(store, kitchen, dt.date(2026, 11, 24))
    said = {s.fryer.key: vat.advised(s, dt.date(2026, 11, 24)) for s in states.values()}
    assert (said["alder"], said["birch"], said["cedar"]) == ("unknown", "discard", "unknown")


def test_what_a_vat_knows_of_its_log_follows_the_log(store, kitchen):
    """Days read, days the oil was changed, the last acid and colour, and three weeks on the picture: after
    each entry, and as another day sees them.
    """
    known = []
    for day, told in (
        (1, {"what": "reading", "amount": "9"}),
        (2, {"what": "discard"}),
        (3, {"what": "acid", "amount": "1.5"}),
        (20, {"what": "reading", "amount": "11"}),
        (23, {"what": "colour", "amount": "3"}),
    ):
        tell(store, kitchen, day, **told)
        known.append(oil_state.vat_states(store, kitchen, dt.date(2026, 11, day))["alder"])
    last, on = known[-1], [dt.date(2026, 11, day) for day in (1, 20)]
    assert [sorted(state.read_on) for state in known] == [on[:1], on[:1], on[:1], on, on]
    assert known[0].changed_on == () and last.changed_on == (dt.date(2026, 11, 2),)
    assert (known[1].acid_n, known[3].acid_n, known[3].colour_n) == (None, 1.5, None)
    assert (last.acid_n, last.colour_n) == (1.5, 3.0)
    pictures = [oil_picture(last, dt.date(2026, 11, day), "oil", str) for day in (20, 22, 24)]
    assert [picture.count("<circle") for picture in pictures] == [2, 2, 1]


def test_what_is_due_names_a_reading_over_the_limit(store, kitchen):
    """One spike over the limit, which the outlook doubts: the vat's page and the list say the same."""
    for back, amount in ((3, "12"), (2, "14"), (0, "30")):
        day = now() - dt.timedelta(days=back)
        vat.tell_oil(store, kitchen, {"vat": "alder", "what": "reading", "amount": amount}, at=day)
    assert vat.vat_view(store, kitchen, "alder").advice == "discard"
    lines = [line for line in now_lines(store, kitchen) if line.about == "alder" and line.act == "oil"]
    assert [(line.text[:30], line.values["reading"]) for line in lines] == [
        ("{fryer}: the oil was read at {", "30")
    ]


def test_a_spike_over_the_limit_counts_whatever_the_history_says(store, kitchen):
    """Ten quiet readings and one of 30 %: the outlook sees an outlier, the advice is to discard."""
    tell(store, kitchen, 14, what="discard")
    for day in range(15, 25):
        tell(store, kitchen, day, what="reading", amount=f"{5 + 0.5 * (day - 15):.1f}")
    tell(store, kitchen, 25, what="reading", amount="30")
    state = oil_state.vat_states(store, kitchen, TODAY)["alder"]
    assert state.crossing.tomorrow_frac < vat.DISCARD_CHANCE_FRAC
    assert vat.advised(state, TODAY) == "discard"


def test_a_reading_that_no_oil_has_is_asked_for_twice(store, kitchen):
    """0.1 % is below fresh oil, 9 % after 20 % is oil grown younger: refused with what to do, and kept when
    the meter says so twice, the oil was changed, or enough was topped up.
    """
    with pytest.raises(InputError, match="fresh oil has about 4 %"):
        tell(store, kitchen, 20, what="reading", amount="0.1")
    tell(store, kitchen, 20, what="reading", amount="0.4", twice="1")
    tell(store, kitchen, 21, what="reading", amount="20")
    with pytest.raises(InputError, match="about 20 %, as it was read last"):
        tell(store, kitchen, 22, what="reading", amount="9")
    tell(store, kitchen, 22, what="reading", amount="15")
    tell(store, kitchen, 23, what="top_up", amount="22 lb")
    tell(store, kitchen, 23, what="reading", amount="6", after="1")
    tell(store, kitchen, 24, what="reading", amount="20")
    tell(store, kitchen, 25, what="discard")
    tell(store, kitchen, 25, what="reading", amount="4")
    refused = [e.fact.raw["amount"] for e in store.facts(OilRefused)]
    assert refused == ["0.1", "9"]


def test_oil_that_nobody_saw_filled_has_no_age(store, kitchen):
    """A first reading is no filling: the page says that nobody entered one, not that it is 0 days old."""
    tell(store, kitchen, 24, what="reading", amount="12")
    assert not vat.vat_view(store, kitchen, "alder", TODAY).filled
    tell(store, kitchen, 25, what="discard")
    assert vat.vat_view(store, kitchen, "alder", TODAY).filled


def test_more_top_up_is_a_round_amount_in_the_kitchens_unit(store):
    """Five pounds here, two kilograms there; never 2.27 kg."""
    for text, amount in ((demo_text(), "5.00 lb"), (FISH_AND_WEDGES, "2.00 kg")):
        kitchen = parse_kitchen(text)
        first = kitchen.fryers[0].key
        rows = oil_money.changes_view(kitchen, oil_state.vat_states(store, kitchen, TODAY), first).changes
        assert rows[1].what.startswith(f"{amount} more")
