"""A kitchen of eight fryers that is not the demo: metric, high up, long names; a fortnight of its sales."""

from __future__ import annotations

import datetime as dt
import io

from frywright.rooms.day import sales
from frywright.rooms.kitchen import remember_kitchen, remembered_kitchen

HEAD = """[kitchen]
name = "Cocina del mirador (invented)"
units = "metric"
language = "es"
altitude_m = 1600

[day]
zone = "Etc/GMT+6"
first_drop = "09:00"
opens = "10:00"
closes = "21:00"
rolls_over = "04:00"
hands_count = 4
filter_every_count = 16
filter_min = 10
warm_up_min = 20
rush = ["12:00-14:00"]
"""
FRYER = """
[[fryer]]
key = "f{n}"
name = "Freidora {n} junto a la ventana"
kind = "open"
capacity_kg = 3
oil_mass_kg = 17
heater_kw = 11
"""
PRODUCT = """
[[product]]
key = "{key}"
name = "{name}"
cut_set = "{cut_set}"
coating = "bare"
start_temp_c = 4

[[sell]]
product = "{key}"
margin_money = 2.0
cost_money = 0.5
load_shares_frac = [0.25, 0.5, 1.0]

[[menu]]
item = "{name}"
pieces = ["{key} 6"]
"""
PROGRAM = """
[[program]]
name = "{product} f{n}"
product = "{product}"
fryer = "f{n}"
hold_life_min = 25

[[program.stage]]
set_c = 175
duration = "10:30"
"""
PRODUCTS = (("alas", "Alas", "wings"), ("gajos", "Gajos de papa", "wedges"), ("pescado", "Pescado", "fish"))
TEXT = (
    HEAD
    + "".join(PRODUCT.format(key=key, name=name, cut_set=cut) for key, name, cut in PRODUCTS)
    + "".join(FRYER.format(n=n) + PROGRAM.format(n=n, product=PRODUCTS[n % 3][0]) for n in range(1, 9))
)
DAY = dt.date(2026, 11, 27)


def sold(days=14):
    """A till's lines of the days before: more of everything at one."""
    lines = ["Date;Time;Item;Qty"]
    for back in range(days, 0, -1):
        date = DAY - dt.timedelta(days=back)
        for hour in range(10, 21):
            for n, (_, name, _) in enumerate(PRODUCTS):
                many = (12 if hour in (12, 13) else 4) - n + (back + hour + n) % 3
                lines.append(f"{date.isoformat()};{hour:02}:15;{name};{many}")
    return "\n".join(lines) + "\n"


def furnish(store):
    """Put the kitchen and its sales into a store."""
    remember_kitchen(store, TEXT, "mirador.toml")
    kitchen = remembered_kitchen(store)
    _, problem = sales.take_file(store, kitchen, io.BytesIO(sold().encode()), "caja.csv")
    assert problem is None, problem
