"""Programs belong to a place, a fryer and a bird; a kitchen that changes asks for a reason and marks what
must be proved again.
"""

from __future__ import annotations

from dataclasses import replace

import pytest

from frywright.design.transfer import Target
from frywright.ledger.facts.cook import ProgramProved
from frywright.ledger.store import Store
from frywright.model.entry import Entry
from frywright.model.errors import InputError
from frywright.model.program import Program, Stage, name_key
from frywright.model.units import to_inside
from frywright.physics.plan import make_plan
from frywright.rooms import hall
from frywright.rooms.clock import now
from frywright.rooms.cook.cards import card_data, card_pdf, site_cards_pdf
from frywright.rooms.cook.desk import transfer_program
from frywright.rooms.cook.programs import program_json, save_program
from frywright.rooms.day.loads import load_facts
from frywright.rooms.kitchen import kitchen_number, remember_kitchen, remembered_kitchen
from frywright.rooms.standing import held_status
from frywright.trial import prove_again
from frywright.trial.ask import CookRequest, ask, program_of
from frywright.trial.kitchens import demo_text
from frywright.trial.naming import away_words, called, chosen, follows, named, new_name
from frywright.trial.predicted import Answerer
from frywright.trial.proof import prove_program
from frywright.voice.tongue import translator
from tests.demo import kitchen_store

OWN = """[kitchen]
name = "Valley bench (invented)"
altitude_m = 40
jurisdiction = "uk"
units = "metric"
language = "es"

[[fryer]]
key = "uno"
name = "Uno"
kind = "open"
capacity_kg = 3
oil_mass_kg = 17
heater_kw = 11

[[product]]
key = "ala_entera"
name = "Alas"
cut_set = "wings"
coating = "bare"
start_temp_c = 4

[[program]]
name = "alas uno"
product = "ala_entera"
fryer = "uno"

[[program.stage]]
set_c = 175
duration = "11:00"
"""
WHO = Answerer(by="Kim Vale", reason="a trial, nothing is served")
SEVEN_M = to_inside(7200.0, "ft")


@pytest.fixture
def own(tmp_path):
    return kitchen_store(tmp_path / "own.db", OWN)


def carried(kitchen, name="bone-in alder", **away):
    """A program of the kitchen as another place, bird or load gets it, under the name it is given."""
    return named(kitchen, replace(kitchen.program(name), **away))


@pytest.mark.parametrize(
    ("one", "other"),
    [
        ("bone-in alder", "bone_in alder"),
        ("bone-in alder", "Bone in  ALDER"),
        ("bone-in alder, 7,200 ft", "bone in alder 7200 ft"),
        ("jamón uno", "jamon-uno"),
        ("bone\N{NON-BREAKING HYPHEN}in alder", "bone-in alder"),
    ],
)
def test_names_that_read_alike_have_one_key(one, other):
    """Dash, underscore, blanks, capitals, accents and thousands marks do not tell two names apart."""
    assert name_key(one) == name_key(other)


@pytest.mark.parametrize(
    ("one", "other"), [("bone-in alder", "bone-in alder 2"), ("wings 7200", "wings 720"), ("a", "b")]
)
def test_names_that_differ_keep_their_own(one, other):
    """A word or a number more is another name."""
    assert name_key(one) != name_key(other)


def test_a_program_carried_up_gets_a_name_of_its_own(store, kitchen):
    """It is simulated at its own place, starts at version 1 and leaves the home program where it was; its
    card says where it is for.
    """
    up = carried(kitchen, altitude_m=SEVEN_M)
    assert (up.name, up.version) == ("bone-in alder, 7,200 ft", 1)
    assert make_plan(kitchen, up).site.altitude_m == pytest.approx(SEVEN_M)
    assert make_plan(kitchen, up, altitude_m=0.0).site.altitude_m == 0.0
    save_program(store, kitchen, up)
    after = remembered_kitchen(store)
    assert after.program("bone-in alder").version == 3
    assert after.program(up.name) == up
    assert carried(after, altitude_m=SEVEN_M).version == 2
    place = card_data(after, up, 1, "en", str).place
    assert place == "For 7,200 ft. Not for Juniper Ridge Chicken (invented), 5,420 ft."
    assert "No para" in card_data(after, up, 1, "es", translator("es")).place
    assert (
        card_data(after, after.program("bone-in alder"), 1, "en", str).place
        == "Juniper Ridge Chicken (invented), 5,420 ft"
    )
    rows = {r.name: r.place for r in held_status(store, after)}
    assert rows[up.name] == "7,200 ft"
    assert rows["bone-in alder"] == ""


@pytest.mark.slow
def test_a_program_of_another_place_serves_neither_day_nor_site_cards(store, kitchen):
    """The plan, the Cook room's pair and the site's cards take the kitchen's own."""
    save_program(store, kitchen, carried(kitchen, "tenders dogwood", altitude_m=SEVEN_M))
    after = remembered_kitchen(store)
    assert "tenders dogwood, 7,200 ft" not in {p.name for p in after.own_programs}
    assert program_of(after, "tenders", "dogwood") == "tenders dogwood"
    sell = next(s for s in after.sells if s.product == "tenders")
    assert len(load_facts(after, sell)) == len(load_facts(kitchen, sell))
    assert site_cards_pdf(after, {"en": str}).count(b"/Type/Page/") == len({p.name for p in kitchen.programs})


def test_another_bird_or_load_is_another_program(kitchen):
    """Bird size and load are part of the name, and of what is simulated; the kitchen's own bird is no other
    bird.
    """
    heavy = carried(kitchen, unit_mass_kg=1.4)
    assert heavy.name == "bone-in alder, 3.09 lb"
    assert (
        make_plan(kitchen, heavy).kinds[0].piece_mass_kg
        > 1.3 * make_plan(kitchen, kitchen.program("bone-in alder")).kinds[0].piece_mass_kg
    )
    assert not kitchen.belongs(heavy)
    assert carried(kitchen, "tenders cedar", unit_mass_kg=0.0567).name == "tenders cedar, 2.0 oz"
    two = carried(kitchen, load_heads=2.0)
    assert two.name == "bone-in alder, 2 × head"
    assert away_words(kitchen, two, translator("es")) == ["2 × pollo"]
    assert card_data(kitchen, two, 1, "es", translator("es")).place.endswith("2 × pollo")
    same = carried(kitchen, unit_mass_kg=kitchen.unit_kg("bone_in"))
    assert (same.name, same.version) == ("bone-in alder", 4)
    assert carried(kitchen, altitude_m=kitchen.site.altitude_m + 3.0).version == 4
    with pytest.raises(InputError, match="bird size"):
        carried(kitchen, unit_mass_kg=40.0)


@pytest.mark.parametrize(
    ("name", "heads", "most"),
    [("bone-in alder", 3.5, "3"), ("tenders dogwood", 400.0, "80"), ("bone-in alder", 0.0, "3")],
)
def test_a_load_above_the_fryer_is_refused_at_saving_and_proof(store, kitchen, name, heads, most):
    """A program's own load is at most what the fryer takes, counted or by mass."""
    draft = replace(carried(kitchen, name, load_heads=2.0), load_heads=heads)
    for act in (
        lambda: save_program(store, kitchen, draft),
        lambda: prove_program(kitchen, draft, samples=16),
        lambda: transfer_program(
            kitchen,
            kitchen.program(name),
            Target(kitchen=kitchen, fryer=draft.fryer, product=draft.product, load_heads=heads),
        ),
    ):
        with pytest.raises(InputError, match=f"at most {most}.* which is what .* takes: give a smaller load"):
            act()
    assert store.current("program") == []


def test_a_new_program_is_named_as_the_kitchen_says_it(own):
    """The words come from other programs, else product key and fryer name; metric altitudes; taken names
    count on.
    """
    kitchen = remembered_kitchen(own)
    up = carried(kitchen, "alas uno", altitude_m=1210.0)
    assert (up.name, up.version) == ("alas uno, 1210 m", 1)
    assert carried(kitchen, "alas uno", unit_mass_kg=0.09).name == "alas uno, 90 g"
    save_program(own, kitchen, up)
    after = remembered_kitchen(own)
    assert follows(after, after.program("alas uno")) == [after.program("alas uno")]
    assert new_name(after, after.program("alas uno")) == "alas uno, 2"
    bare = replace(kitchen, programs=())
    assert new_name(bare, kitchen.program("alas uno")) == "ala-entera Uno"
    assert away_words(after, up) == ["1210 m"]


def test_a_twin_is_refused_and_the_known_one_offered(store, kitchen):
    """A name that reads like another is neither a second program nor silently the first."""
    draft = replace(kitchen.program("bone-in alder"), name="bone_in alder", version=1, drain_s=60.0)
    with pytest.raises(InputError, match="reads like bone-in alder"):
        save_program(store, kitchen, draft)
    with pytest.raises(InputError, match="is there already"):
        chosen(kitchen, draft, "", "bone-in alder")
    assert [p.name for p in follows(kitchen, draft)] == ["bone-in alder"]
    made, base = chosen(kitchen, draft, "3 bone-in alder", "")
    save_program(store, kitchen, made, based_on=base)
    assert remembered_kitchen(store).program("bone-in alder").version == 4
    for bad in ("", "  ", "-_-", "x" * 81):
        with pytest.raises(InputError, match="a few words"):
            called(kitchen, draft, bad)


def test_no_program_is_saved_as_next_version_of_another_use(store, kitchen):
    """Another altitude, fryer, bird or load cannot take the name of the home program."""
    home = kitchen.program("bone-in alder")
    for away in ({"altitude_m": SEVEN_M}, {"fryer": "birch"}, {"unit_mass_kg": 1.4}, {"load_heads": 2.0}):
        with pytest.raises(InputError, match="goes on unchanged"):
            save_program(
                store,
                kitchen,
                replace(home, version=4, drain_s=60.0, stages=home.stages[:2], **away),
                WHO,
                based_on=3,
            )
    assert not list(store.entries("program"))


def test_old_entries_without_a_place_still_load(store, kitchen):
    """What was saved before places were kept is for the kitchen's own altitude and bird."""
    payload = program_json(replace(kitchen.program("bone-in cedar"), version=2))
    for key in ("altitude_m", "unit_mass_kg"):
        del payload[key]
    with store.writing() as writer:
        writer.add(Entry(kind="program", happened_at=now(), author="x", payload=payload))
    after = remembered_kitchen(store)
    assert after.belongs(after.program("bone-in cedar"))
    assert after.program("bone-in cedar").version == 2


def margin(kitchen, name):
    """Lowest margin over the smallest and the full load, asked of the Cook room's own answer."""
    program = kitchen.program(name)
    full = make_plan(kitchen, program).units_count
    small = max(1.0, kitchen.fryer(program.fryer).min_load_kg / kitchen.unit_kg(program.product))
    return min(
        v.margin_k
        for units in (small, full)
        for _, v in ask(kitchen, CookRequest(program=program, units_count=units)).verdicts
    )


MOVES = {
    "altitude": ("altitude_ft = 5420", "altitude_ft = 7200", 7),
    "vent": ('vent = "0:20"', 'vent = "0:45"', 1),
    "oil": ("oil_mass_lb = 45", "oil_mass_lb = 38", 1),
    "heater": ("heater_kw = 10\n", "heater_kw = 7\n", 1),
    "offset": ("swing_f = 7\n", "swing_f = 7\noffset_f = 6\n", 1),
    "bird": ("unit_mass_lb = 2.3", "unit_mass_lb = 2.9", 3),
    "thermometer": ("thermometer_error_f = 2", "thermometer_error_f = 3", 7),
    "clock": ('clock = "left"', 'clock = "waits"', 1),
    "program in place": ('duration = "15:30"', 'duration = "14:30"', 1),
}
STILL = {
    "name": ("Alder, three-head pressure vat", "The left one"),
    "emergency": ("Flagpole at the parking lot", "The oak"),
    "money": ("cost_money = 0.95", "cost_money = 0.99"),
    "slots": ("slot_count = 10", "slot_count = 8"),
    "hours": ('closes = "22:00"', 'closes = "21:30"'),
    "language": ('language = "en"', 'language = "es"'),
    "comment": ("# Invented scenario.", "# An invented scenario."),
}


@pytest.mark.parametrize("what", MOVES)
def test_a_change_that_moves_a_prediction_needs_a_reason_and_marks_its_programs(store, what):
    """Refused without one and nothing written; kept with one, the programs it touches and no others are
    marked.
    """
    old, new, count = MOVES[what]
    text = demo_text().replace(old, new)
    assert text != demo_text()
    with pytest.raises(InputError, match="must be proved again"):
        remember_kitchen(store, text, "demo.toml", "no")
    assert len(list(store.entries())) == 1
    remember_kitchen(store, text, "demo.toml", "because it is so")
    kitchen = remembered_kitchen(store)
    assert len(kitchen.marks) == count
    assert all("because it is so" in r.again for r in held_status(store, kitchen) if r.again)


@pytest.mark.parametrize("what", STILL)
def test_a_change_that_moves_nothing_asks_and_simulates_nothing(store, what, monkeypatch):
    """Names, numbers of the day and comments are kept at once."""
    monkeypatch.setattr(prove_again, "lowest_margin_k", lambda *a: pytest.fail("simulated for nothing"))
    old, new = STILL[what]
    text = demo_text().replace(old, new)
    assert text != demo_text()
    remember_kitchen(store, text, "demo.toml")
    assert remembered_kitchen(store).marks == ()


def test_the_change_of_margin_is_what_the_cook_room_says(store, kitchen):
    """Before and after on the mark are the lowest margins of the smallest and the full load under the old and
    the new kitchen.
    """
    text = demo_text().replace("unit_mass_lb = 2.3", "unit_mass_lb = 3.4")
    remember_kitchen(store, text, "demo.toml", "another supplier")
    after = remembered_kitchen(store)
    mark = after.mark(after.program("bone-in cedar"))
    assert mark.margin_before_k == pytest.approx(margin(kitchen, "bone-in cedar"), abs=0.05)
    assert mark.margin_after_k == pytest.approx(margin(after, "bone-in cedar"), abs=0.05)
    assert mark.margin_after_k < 0 < mark.margin_before_k
    (told,) = [r.again for r in held_status(store, after) if r.name == "bone-in cedar"]
    assert f"{1.8 * -mark.margin_after_k:.1f} °F SHORT now" in told
    card = card_data(after, after.program("bone-in cedar"), 1, "es", translator("es"), WHO)
    assert "FALTAN" in card.again
    assert (
        card_pdf(card_data(after, after.program("bone-in cedar"), 1, "es", translator("es"), WHO)).count(
            b"/Type/Page/"
        )
        == 1
    )


def test_two_changes_in_a_row_are_told_from_before_the_first(store, kitchen):
    """Until a proof comes between, the margin is compared with the one last relied on, and both reasons
    stand.
    """
    first = demo_text().replace("altitude_ft = 5420", "altitude_ft = 7200")
    remember_kitchen(store, first, "demo.toml", "first reason")
    remember_kitchen(
        store, first.replace("heater_kw = 10\n", "heater_kw = 7\n"), "demo.toml", "second reason"
    )
    after = remembered_kitchen(store)
    mark = after.mark(after.program("bone-in alder"))
    assert mark.margin_before_k == pytest.approx(margin(kitchen, "bone-in alder"), abs=0.05)
    assert mark.reason == "first reason; second reason"
    assert after.mark(after.program("bone-in birch")).reason == "first reason"


def test_a_mark_outlives_a_restart_and_ends_with_a_proof_or_a_new_version(tmp_path):
    """A proof that holds, made for the kitchen in force, ends it; one that fails, or was made before the
    change, does not.
    """
    path = tmp_path / "r.db"
    store = kitchen_store(path, OWN)
    before = kitchen_number(store)
    remember_kitchen(store, OWN.replace("oil_mass_kg = 17", "oil_mass_kg = 14"), "own.toml", "vaciado menor")
    store.close()
    store = Store.file(path, now)
    kitchen = remembered_kitchen(store)
    program = kitchen.program("alas uno")
    (told,) = [r.again for r in held_status(store, kitchen, translator("es"))]
    assert "vaciado menor" in told
    assert "°F" not in told
    for number, holds, stands in (
        (before, True, True),
        (kitchen_number(store), False, True),
        (kitchen_number(store), True, False),
    ):
        proof = ProgramProved(
            name="alas uno",
            version=1,
            kitchen_number=number,
            holds=holds,
            outcome="unknown",
            samples_count=128,
            lowest_k=1.0 if holds else -1.0,
        )
        hall.write(store, proof)
        assert bool(remembered_kitchen(store).mark(program)) is stands
    remember_kitchen(store, OWN, "own.toml", "otra vez como antes")
    kitchen = remembered_kitchen(store)
    assert kitchen.mark(program)
    longer = replace(program, stages=(Stage(set_c=175.0, duration_s=720.0),), version=2)
    save_program(store, kitchen, longer)
    kitchen = remembered_kitchen(store)
    assert kitchen.mark(kitchen.program("alas uno")) is None


def test_the_demo_gives_way_and_a_saved_program_of_a_lost_fryer_rests(store, kitchen):
    """A kitchen of one's own replaces the demo without a reason; a program saved for a fryer it lacks breaks
    nothing.
    """
    save_program(store, kitchen, carried(kitchen, "tenders dogwood", altitude_m=SEVEN_M))
    remember_kitchen(store, OWN, "own.toml")
    after = remembered_kitchen(store)
    assert {p.name for p in after.programs} == {"alas uno"}


def test_a_program_file_may_name_its_place(own):
    """altitude_ft and unit_mass of a program are read in people's units; nonsense is refused."""
    text = (
        OWN + '\n[[program]]\nname = "alas arriba"\nproduct = "ala_entera"\nfryer = "uno"\naltitude_ft ='
        ' 7200\n\n[[program.stage]]\nset_c = 175\nduration = "12:00"\n'
    )
    remember_kitchen(own, text, "own.toml")
    assert remembered_kitchen(own).program("alas arriba").altitude_m == pytest.approx(SEVEN_M)
    with pytest.raises(InputError, match=r"5000 m \(16404 ft\)"):
        Program(
            name="x", product="y", fryer="z", stages=(Stage(set_c=170.0, duration_s=60.0),), altitude_m=9000.0
        )
