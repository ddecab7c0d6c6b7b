"""Answers to the screens of the set-up, in two systems of units."""

from __future__ import annotations

from frywright.rooms.cook import setup

US = {
    "place": {"name": "Ford End", "jurisdiction": "us_food_code_2022", "language": "en", "units": "us"},
    "altitude": {"altitude": "1,150"},
    "kind": {"kind": "pressure"},
    "plate": {
        "name": "Left",
        "fuel": "electric",
        "power": "10",
        "oil_mass": "45",
        "oil": "canola",
        "birds": "3",
    },
    "lid": {"working_gauge": "11", "relief_gauge": "14.5", "vent": "0:21"},
    "control": {
        "shows": "f",
        "stages": "3",
        "temp_step": "5",
        "time_step": "10",
        "clock": "waits",
        "lid": "tied",
        "slots": "8",
    },
    "food": {"cut_set": "chicken_8"},
    "birds": {"name": "Bone-in", "mean": "2.4", "coating": "dredge", "start_temp": "38"},
}

METRIC = {
    "place": {"name": "Peña Alta", "jurisdiction": "germany", "language": "es", "units": "metric"},
    "altitude": {"boiled": "94,2"},
    "kind": {"kind": "open"},
    "plate": {
        "name": "Nº 1",
        "fuel": "gas",
        "power": "16",
        "oil_mass": "18,5",
        "oil": "sunflower_ho",
        "weight": "3",
    },
    "control": {
        "shows": "c",
        "stages": "1",
        "temp_step": "2",
        "time_step": "15",
        "clock": "elapsed",
        "lid": "hand",
    },
    "food": {"cut_set": "tenders"},
    "birds": {
        "name": "Tiras",
        "ten": "44 47 51 40 46 43 49 45 48 42",
        "coating": "batter",
        "start_temp": "4",
        "house_core": "75",
    },
}

DAY = {
    "zone": "Europe/Madrid",
    "first_drop": "11:30",
    "opens": "12:00",
    "closes": "23:30",
    "rush": "13:00 – 15:30, 20:30-22:00",
    "hands": "2",
    "filter_every": "10",
    "currency": "€",
}


def told(store, what, answers):
    for key, typed in answers.items():
        here = setup.setup_of(store, what)
        here = setup.answer(store, what, key, typed, setup.Seen(revision=here.revision))
        assert here.screen(key).done, (key, {b: str(e) for b, e in setup.checked(here, key).items()})
    return here


def kept(store, what, answers):
    return setup.keep(store, what, told(store, what, answers).revision)
