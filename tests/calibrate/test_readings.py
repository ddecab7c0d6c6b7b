"""Logger files in every layout: what is read, what is said, and that nothing vanishes."""

from __future__ import annotations

import io
import tomllib
from pathlib import Path

import numpy as np
import pytest
from hypothesis import HealthCheck, example, given, settings
from hypothesis import strategies as st

import frywright
from frywright.calibrate.channels import guess_unit
from frywright.calibrate.core import MOVE_WINDOW_S, curve_of
from frywright.calibrate.readings import read_log
from frywright.model.errors import DataError, FrywrightError, InputError
from frywright.tables.moments import date_order, day_number
from tests.calibrate.synthetic import make, write

UGLY = Path(__file__).parent / "ugly"
CASES = tomllib.loads((UGLY / "cases.toml").read_text("utf-8"))["case"]


def read(data: bytes, name: str = "log.csv", **answers):
    return read_log(io.BytesIO(data), name, answers)


def test_there_are_enough_ugly_files():
    """At least forty, every file has its case and every case its file."""
    files = {p.name for p in UGLY.iterdir() if p.name != "cases.toml"}
    assert files == {case["file"] for case in CASES}
    assert len(CASES) >= 40


def accounted(log) -> bool:
    """Every line of the file is before the table, blank, kept or dropped with a reason."""
    before = log.shape.first_line_number - 1
    return log.lines_count == before + log.blank_count + len(log.time_s) + sum(d.count for d in log.dropped)


@pytest.mark.parametrize("case", CASES, ids=lambda c: c["file"])
def test_ugly_file(case):
    """Each ugly file gives what its case says: kept lines, notes, questions, drops, start, units, or an
    error.
    """
    data = (UGLY / case["file"]).read_bytes()
    if "error" in case:
        with pytest.raises(DataError) as caught:
            read(data, case["file"])
        assert case["error"] in str(caught.value)
        return
    log = read(data, case["file"])
    assert len(log.time_s) == case["kept"]
    assert np.all(np.diff(log.time_s) > 0)
    assert accounted(log)
    assert set(case.get("notes", [])) <= {n.kind for n in log.notes}
    assert [q.key for q in log.questions] == case.get("questions", [])
    for reason, count in case.get("dropped", {}).items():
        assert {d.reason: d.count for d in log.dropped}[reason] == count
    if "before" in case:
        assert log.shape.first_line_number - 1 == case["before"]
    if "start" in case:
        assert log.start_at.strftime("%Y-%m-%d %H:%M:%S") == case["start"]
    if "unit" in case:
        assert {c.unit for c in log.channels} == {case["unit"]}
    if "length_s" in case:
        assert log.time_s[-1] == pytest.approx(case["length_s"], abs=0.02)
    if "channels" in case:
        assert [c.name for c in log.channels] == case["channels"]
    if "roles" in case:
        assert [str(c.role) for c in log.channels] == case["roles"]
    assert list(log.ignored) == case.get("ignored", [])


def test_fahrenheit_and_celsius_files_agree():
    """The same readings in degF and degC give the same channel inside."""
    by_name = {
        c["file"]: read((UGLY / c["file"]).read_bytes())
        for c in CASES
        if "fahrenheit-header" in c["file"] or c["file"].startswith("01-")
    }
    f, c = by_name.values()
    assert np.allclose(f.channels[0].values, c.channels[0].values, atol=0.03)


def test_answers_settle_questions():
    """An answered question is not asked again and changes what is read."""
    data = (UGLY / "13-date-ambiguous.csv").read_bytes()
    first, second = read(data, date_order="mdy"), read(data, date_order="dmy")
    assert not first.questions
    assert (first.start_at.month, first.start_at.day) == (2, 3)
    assert (second.start_at.month, second.start_at.day) == (3, 2)
    with pytest.raises(InputError, match="ymd, dmy"):
        read(data, date_order="sideways")


def test_an_interval_is_an_answer():
    """A file without times is read at the interval given; nonsense is refused."""
    data = next(p for p in UGLY.iterdir() if "no-time" in p.name).read_bytes()
    assert read(data, interval="5").time_s[-1] == pytest.approx(145.0)
    with pytest.raises(InputError, match="seconds between two lines"):
        read(data, interval="never")


def test_nothing_is_invented():
    """Open-circuit marks stay missing; no value appears in their place."""
    log = read(next(p for p in UGLY.iterdir() if "open-marks" in p.name).read_bytes())
    assert np.isnan(log.channels[1].values[::5]).all()
    assert np.isfinite(log.channels[1].values[1::5]).all()


@pytest.mark.parametrize(
    ("dates", "separator", "choices"),
    [
        ([("03", "25", "2026")], "/", ("mdy",)),
        ([("25", "03", "2026")], "/", ("dmy",)),
        ([("03", "02", "2026")], "/", ("mdy", "dmy")),
        ([("2026", "03", "02")], "-", ("ymd",)),
        ([("03", "02", "2026")], ".", ("dmy",)),
        (
            [("01", "02", "2026"), ("02", "02", "2026"), ("03", "02", "2026"), ("04", "02", "2026")],
            "/",
            ("dmy",),
        ),
        ([("26", "03", "02")], "-", ("dmy", "ymd")),
    ],
)
def test_date_orders(dates, separator, choices):
    """Orders that are impossible or scatter a log over months fall out; the rest is asked."""
    assert date_order(dates, separator).choices == choices


def test_day_numbers():
    """Day numbers are ordinals of the proleptic Gregorian calendar; impossible days are None."""
    assert day_number(("2", "3", "2026"), "dmy") - day_number(("2", "2", "2026"), "dmy") == 28
    assert day_number(("31", "02", "2026"), "dmy") is None


LOG = write(make(3, loads=1), 3)


@pytest.mark.slow
@settings(max_examples=150, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(st.data())
def test_mangled_logs_never_crash_nor_lose_a_line(data):
    """Cut, flipped, repeated and doctored bytes give a log that accounts for every line, or a clear error."""
    lines = LOG.split(b"\n")[:120]
    for _ in range(data.draw(st.integers(1, 6))):
        i = data.draw(st.integers(0, len(lines) - 1))
        kind = data.draw(st.sampled_from(["drop", "swap", "noise", "cut", "double", "text"]))
        if kind == "drop" and len(lines) > 2:
            del lines[i]
        elif kind == "swap":
            j = data.draw(st.integers(0, len(lines) - 1))
            lines[i], lines[j] = lines[j], lines[i]
        elif kind == "noise":
            lines[i] = data.draw(st.binary(max_size=60))
        elif kind == "cut":
            lines[i] = lines[i][: data.draw(st.integers(0, len(lines[i])))]
        elif kind == "double":
            lines.insert(i, lines[i])
        else:
            lines[i] = data.draw(st.text(max_size=40)).encode("utf-8", "replace")
    try:
        log = read(b"\n".join(lines))
    except FrywrightError:
        return
    assert accounted(log)
    assert np.all(np.diff(log.time_s) > 0)
    assert all(len(c.values) == len(log.time_s) for c in log.channels)


@settings(max_examples=150, deadline=None)
@given(
    st.binary(max_size=3000) | st.text(alphabet='0123456789:;,.-/ \t\n°CF"abT', max_size=1500).map(str.encode)
)
@example(b'x","a"\n1;2;3\n' * 5)
@example(b"0:00;1\n0:00;1\n")
def test_any_bytes_never_crash(data):
    """Whatever the bytes, reading ends in a log that accounts for its lines or in a clear error."""
    try:
        log = read(data)
    except FrywrightError as error:
        assert str(error)
        return
    assert accounted(log)


@pytest.mark.parametrize(
    ("low", "high", "unit"),
    [
        (4.0, 80.0, "c"),  # from the refrigerator to cooked
        (4.0, 70.0, ""),  # a cold start that ends where either unit is possible
        (40.0, 80.0, ""),  # no cold start
        (120.0, 170.0, "c"),  # frying oil
        (70.0, 350.0, "f"),  # oil that would burn if this were degC
    ],
)
def test_a_unit_is_guessed_only_where_the_other_cannot_be(low, high, unit):
    """By what is physically possible in the readings; open where both are."""
    assert guess_unit(np.linspace(low, high, 500))[0] == unit


def test_a_probe_that_leaves_the_meat_is_timed_from_the_drop():
    """Dropped at 100 s, pulled out at 500 s into air at 25 degC: left at 400 s after the drop, at most the
    window of the search before, and nothing after that is used.
    """
    time = np.arange(0.0, 1000.0)
    core = np.interp(time, [0.0, 100.0, 499.0, 501.0, 1000.0], [4.0, 4.0, 70.0, 25.0, 25.0])
    curve = curve_of("Core", time, core, 100.0, 700.0, 1000.0)
    assert 400.0 - MOVE_WINDOW_S <= curve.left_s <= 400.0
    assert curve.time_s[-1] <= curve.left_s


def test_a_log_whose_newest_line_stands_first_is_the_same_log():
    """The demo's log turned round: the same times and readings, no clock set back, every line accounted for;
    and so is a file of whole minutes.
    """
    demo = (Path(frywright.__file__).parent / "catalog/demo/probe-log.csv").read_text("utf-8").splitlines()
    minutes = ["time,oil (C)", *(f"2026-03-02 08:{n // 4:02d},{160 + n % 7}" for n in range(80))]
    for lines, head in ((demo, 4), (minutes, 1)):
        plain = read("\n".join(lines).encode())
        turned = read("\n".join(lines[:head] + lines[head:][::-1]).encode())
        assert np.array_equal(turned.time_s, plain.time_s)
        for one, other in zip(turned.channels, plain.channels, strict=True):
            assert np.array_equal(one.values, other.values, equal_nan=True)
        assert "clock_set" not in {n.kind for n in turned.notes}
        assert [n.text for n in turned.notes if "newest line" in n.text]
        assert not [n.text for n in plain.notes if "newest line" in n.text]
        assert accounted(turned)


def test_lines_left_out_of_a_log_turned_round_are_named_where_they_stand():
    """A line given twice and one that differs from another of its second: the same ones are left out."""
    rows = [f"2026-03-02 08:00:{n:02d},{160 + n % 7}" for n in range(40)]
    rows[20:20] = [rows[19], "2026-03-02 08:00:19,200"]
    plain = read("\n".join(["time,oil (C)", *rows]).encode())
    turned = read("\n".join(["time,oil (C)", *rows[::-1]]).encode())
    assert {d.reason: d.count for d in turned.dropped} == {d.reason: d.count for d in plain.dropped}
    for one, other in zip(turned.dropped, plain.dropped, strict=True):
        assert [(len(rows) + 3 - n, text) for n, text in one.examples] == list(other.examples)


def test_a_year_that_no_clock_shows_is_no_date():
    """Years 1 and 9999 broke off where a business day was sought."""
    for year in ("0001", "9999", "1969", "2200"):
        assert day_number((year, "12", "31"), "ymd") is None
    assert day_number(("1970", "01", "01"), "ymd") and day_number(("2199", "12", "31"), "ymd")
