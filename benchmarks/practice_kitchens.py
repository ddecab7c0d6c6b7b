"""Kitchens nobody has seen before, drawn as kitchen files, and their invented sales."""

from __future__ import annotations

import datetime as dt
import io
from pathlib import Path

import numpy as np

from frywright.ledger.store import Store
from frywright.model.kitchen import Kitchen
from frywright.rooms.clock import now
from frywright.rooms.day.day import Bench, bench_for
from frywright.rooms.day.sales import keep_sales
from frywright.rooms.kitchen import remember_kitchen, remembered_kitchen

DATE = dt.date(2026, 11, 27)


def kitchen_text(seed: int) -> str:
    """A kitchen file nobody has seen before."""
    rng = np.random.default_rng(seed)
    metric = bool(rng.integers(2))
    fryers, programs = [], []
    count = int(rng.choice((1, 2, 3, 4, 5, 6), p=(0.2, 0.25, 0.2, 0.15, 0.1, 0.1)))
    products = {
        "bone_in": ("chicken_8", "dredge", 1050.0, (335.0, 1080.0), (40, 90)),
        "tenders": ("tenders", "dredge", 45.0, (345.0, 390.0), (12, 45)),
        "wedges": ("wedges", "bare", 31.0, (350.0, 420.0), (8, 25)),
    }
    sold = [key for key in products if rng.random() < 0.75] or ["tenders"]
    for n in range(count):
        pressure = "bone_in" in sold and (rng.random() < 0.4)
        fryers.append(_fryer(rng, n, pressure, metric))
        takes = ["bone_in"] if pressure else [k for k in sold if rng.random() < 0.7 or n == 0]
        if n == 0:
            takes = sold if not pressure else ["bone_in"]
        for key in takes:
            programs.append(_program(rng, n, key, products[key], (pressure, metric)))
    if "bone_in" in sold and fryers[0][1] and len(sold) > 1:  # an open fryer for the rest of the menu
        fryers.append(_fryer(rng, count, False, metric))
        programs += [_program(rng, count, k, products[k], (False, metric)) for k in sold if k != "bone_in"]
    holds = "".join(_product(key, products[key], metric) for key in sold)
    sells = "".join(_sell(rng, key) for key in sold)
    place = (
        f"altitude_m = {int(rng.integers(0, 2400))}"
        if metric
        else f"altitude_ft = {int(rng.integers(0, 7800))}"
    )
    head = f'[kitchen]\nname = "Invented kitchen {seed}"\ninvented = true\n{place}\n'
    head += 'units = "metric"\n' if metric else 'units = "us"\n'
    head += 'jurisdiction = "us_food_code_2022"\n'
    return head + "".join(text for text, _ in fryers) + holds + "".join(programs) + _day(rng, count) + sells


def _fryer(rng: np.random.Generator, n: int, pressure: bool, metric: bool) -> tuple[str, bool]:
    kg = float(rng.uniform(15, 34))
    oil = f"oil_mass_kg = {kg:.1f}" if metric else f"oil_mass_lb = {kg / 0.4536:.0f}"
    load = kg / 5.2
    most = f"capacity_kg = {load:.2f}" if metric else f"capacity_lb = {load / 0.4536:.1f}"
    lines = [
        f'key = "f{n}"',
        f'name = "Fryer {n + 1}"',
        f'kind = "{"pressure" if pressure else "open"}"',
        oil,
    ]
    lines += ['oil = "canola"', f"capacity_heads = {max(1, int(load / 1.2))}"] + ([] if pressure else [most])
    lines.append(f"heater_kw = {kg * 0.6:.1f}")
    if pressure:
        lines += ["working_gauge_psi = 12", "relief_gauge_psi = 14.5"]
    if rng.random() < 0.3:
        lines.append('fuel = "gas"')
    if rng.random() < 0.4:
        lines.append(f"min_load_{'kg' if metric else 'lb'} = 0.5")
    return "\n[[fryer]]\n" + "\n".join(lines) + "\n", pressure


Kind = tuple[str, str, float, tuple[float, float], tuple[int, int]]


def _product(key: str, kind: Kind, metric: bool) -> str:
    mass = f"unit_mass_g = {kind[2]:.0f}" if metric else f"unit_mass_lb = {kind[2] / 453.6:.3f}"
    limit = "house_core_f = 185\n" if key == "wedges" else ""
    cold = "start_temp_c = 4" if metric else "start_temp_f = 39"
    words = f'key = "{key}"\nname = "{key}"\ncut_set = "{kind[0]}"\ncoating = "{kind[1]}"'
    return f"\n[[product]]\n{words}\n{mass}\n{cold}\n{limit}"


def _program(rng: np.random.Generator, n: int, key: str, kind: Kind, how: tuple[bool, bool]) -> str:
    pressure, metric = how
    set_f, long_s = kind[3]
    hold = int(rng.integers(*kind[4]))
    set_at = f"set_c = {(set_f - 32) / 1.8:.0f}" if metric else f"set_f = {set_f:.0f}"
    lid = 'lid = "pressure"\n' if pressure else ""
    long_s *= 0.85 if pressure else 1.0
    return (
        f'\n[[program]]\nname = "{key} f{n}"\nproduct = "{key}"\nfryer = "f{n}"\nversion = 1\n'
        f"hold_life_min = {hold}\n\n[[program.stage]]\n{set_at}\n{lid}"
        f'duration = "{int(long_s // 60)}:{int(long_s % 60):02d}"\n'
    )


def _sell(rng: np.random.Generator, key: str) -> str:
    margin = {"bone_in": 2.6, "tenders": 2.0, "wedges": 0.6}[key] * rng.uniform(0.6, 1.5)
    shares = "" if rng.random() < 0.4 else "load_shares_frac = [0.1, 0.25, 0.5, 1.0]\n"
    money = f"margin_money = {margin:.2f}\ncost_money = {0.35 * margin:.2f}"
    return (
        f'\n[[sell]]\nproduct = "{key}"\n{money}\n{shares}'
        f'\n[[menu]]\nitem = "{key} dish"\npieces = ["{key} 1"]\n'
    )


def _day(rng: np.random.Generator, fryers: int) -> str:
    opens, hours = int(rng.integers(9, 13)), int(rng.integers(6, 13))
    lines = [f'first_drop = "{opens - 1:02d}:30"', f'opens = "{opens:02d}:00"']
    lines.append(f'closes = "{min(23, opens + hours):02d}:00"')
    lines.append(f"hands_count = {max(1, int(rng.integers(1, fryers + 2)))}")
    if rng.random() < 0.6:
        lines.append(f"filter_every_count = {int(rng.integers(5, 16))}")
    if rng.random() < 0.5:
        lines.append(f"filter_min = {int(rng.integers(6, 14))}")
    if rng.random() < 0.5:
        lines.append(f'rush = ["{opens + 1:02d}:00-{opens + 2:02d}:30"]')
    if rng.random() < 0.3:
        lines.append(f"cap_kw = {max(22, fryers * 13)}")
    return "\n[day]\n" + "\n".join(lines) + "\n"


def sales_text(kitchen: Kitchen, seed: int, weeks: int = 4) -> bytes:
    """Invented sales, about half of what the fryers can do."""
    rng, trade = np.random.default_rng(seed), kitchen.trade
    assert trade is not None
    times = np.arange(trade.opens_s, trade.closes_s, 900.0)
    share = (times - trade.opens_s) / (trade.closes_s - trade.opens_s)
    shape = np.exp(-(((share - 0.2) / 0.1) ** 2)) + 1.5 * np.exp(-(((share - 0.7) / 0.12) ** 2)) + 0.2
    hours = (trade.closes_s - trade.opens_s) / 3600.0
    rows = ["Date;Time;Item;Quantity"]
    # full loads of each product a day
    loads = hours * 2.0 * len(kitchen.fryers) * rng.uniform(0.3, 0.55) / len(kitchen.sells)
    usual = {s.product: loads * _full(kitchen, s.product) for s in kitchen.sells}
    for back in range(7 * weeks, 0, -1):
        date = DATE - dt.timedelta(days=back)
        level = rng.gamma(80, 1 / 80) * (1.0, 1.0, 1.0, 1.05, 1.25, 1.2, 0.95)[date.weekday()]
        for n, second in enumerate(times):
            for sell in kitchen.sells:
                mean = level * usual[sell.product] * shape[n] / shape.sum()
                count = rng.poisson(rng.gamma(max(mean / 0.8, 1e-9), 0.8))
                if count:
                    clock = f"{int(second // 3600) % 24:02d}:{int(second % 3600 // 60):02d}"
                    rows.append(f"{date.isoformat()};{clock};{sell.product} dish;{count}")
    return ("\n".join(rows) + "\n").encode()


def _full(kitchen: Kitchen, product: str) -> float:
    """Pieces of a full load of the kitchen's smallest vat."""
    kg = min(f.capacity_kg or 1.2 * f.capacity_heads for f in kitchen.fryers)
    unit = kitchen.product(product).unit_mass_kg or 1.0
    return kg / unit * kitchen.pieces_per_unit(product)


def bench_of(seed: int, folder: Path) -> tuple[Kitchen, Bench]:
    """A kitchen of its own, its sales read in, and its day ready to plan."""
    store = Store.file(folder / f"{seed}.db", now)
    remember_kitchen(store, kitchen_text(seed), f"{seed}.toml")
    kitchen = remembered_kitchen(store)
    keep_sales(store, kitchen, io.BytesIO(sales_text(kitchen, seed)), "sales.csv", "ymd")
    return kitchen, bench_for(store, kitchen, DATE)
