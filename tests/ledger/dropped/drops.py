"""Loads, readings and care of four years ago, and what somebody does behind the program."""

from __future__ import annotations

import datetime as dt
import sqlite3

import psycopg

from frywright.ledger.facts.care import CareDone
from frywright.ledger.facts.cook import KitchenSet
from frywright.ledger.facts.day import BoardTap
from frywright.ledger.facts.probing import Reading
from frywright.rooms.clock import now, played
from frywright.rooms.hall import write
from frywright.trial.kitchens import demo_text

PASSWORD = "oak leaf river stone"

LONG_AGO = dt.timedelta(days=4 * 366)

TOLD = {
    "term": "loads",
    "years": "2",
    "who": "Ana Vale",
    "second": "Ben Ford",
    "reason": "the time of these is over",
}


def tap(store, number):
    """A load dropped on the line."""
    fact = BoardTap(
        key=f"k{number}",
        date=now().date(),
        what="drop",
        at_s=40000.0 + number,
        fryer="alder",
        product="bone_in",
        pieces_count=8,
        reason="",
        who="Ana Vale",
        practice_count=None,
    )
    return write(store, fact)


def reading(store, load_number):
    """A probe reading of a load."""
    fact = Reading(
        name="alder 11:04",
        thermometer="T1",
        core_c=80.0,
        limit_c=74.0,
        load="alder 11:04",
        units_count=8.0,
        who="Ana Vale",
        load_number=load_number,
    )
    return write(store, fact)


def filled(store):
    """Loads and readings of four years ago, one load named by a reading of now; care, and a kitchen file."""
    with played(now() - LONG_AGO):
        write(store, KitchenSet(file="k.toml", text=demo_text()))
        first = [tap(store, n) for n in range(6)]
        reading(store, first[0].number)
        done = {"note": "", "date": now().date(), "role": "crew", "who": "Ana Vale"}
        write(store, CareDone(fryer="alder", task="boil_out", **done))
        write(store, CareDone(fryer="alder", task="boil_out", **done))
    reading(store, first[5].number)
    tap(store, 9)
    return store


def behind(store, *statements):
    """What somebody with the database does to it without the program, triggers taken away."""
    if not store.sqlite:
        url = store.engine.url.set(drivername="postgresql").render_as_string(hide_password=False)
        with psycopg.connect(url, autocommit=True) as there:
            there.execute("ALTER TABLE entry DISABLE TRIGGER USER")
            for text, values in statements:
                there.execute(text.replace("?", "%s"), values)
        return
    there = sqlite3.connect(store.engine.url.database)
    for (name,) in there.execute("SELECT name FROM sqlite_master WHERE type = 'trigger'").fetchall():
        there.execute(f"DROP TRIGGER {name}")
    for text, values in statements:
        there.execute(text, values)
    there.commit()
    there.close()


EMPTY = (
    "UPDATE entry SET payload = '{\"kind\":\"' || kind || '\"}', kind = 'dropped', author = '',"
    " versions = '{}' WHERE number = ?"
)
