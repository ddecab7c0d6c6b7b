"""Many sites: the sweep says the same on a cluster, waves stop by their rule, unknown stays unknown,
comparison by control limits.
"""

from __future__ import annotations

import json
import threading
from dataclasses import replace

import pytest

from frywright.model.errors import InputError
from frywright.rooms.care import nameplate
from frywright.rooms.care.upkeep import today_of
from frywright.rooms.cook.compare import value_names
from frywright.rooms.cook.programs import save_program
from frywright.rooms.cook.readbacks import readbacks_from, tell_readback
from frywright.rooms.fleet import fleet, release
from frywright.rooms.fleet.swept import SiteProof
from frywright.rooms.kitchen import remember_kitchen, remembered_kitchen
from frywright.rooms.readings import tell_probe
from frywright.trial.kitchens import demo_text
from tests.demo import kitchen_store


def site_text(altitude_ft):
    """The demo at another altitude with one program, so that a sweep is quick."""
    text = demo_text().replace("altitude_ft = 5420", f"altitude_ft = {altitude_ft}")
    head, *programs = text.split("[[program]]\n")
    tail = programs[-1][programs[-1].index("# The day") :]
    kept = next(p for p in programs if 'name = "tenders cedar"' in p)
    return head + "[[program]]\n" + kept + tail


@pytest.fixture
def shops(tmp_path):
    """Six sites with stores of their own."""
    found = []
    for n in range(6):
        store = kitchen_store(tmp_path / f"s{n}.db")
        found.append((f"s{n}", store, remembered_kitchen(store)))
    return found


@pytest.fixture
def office(tmp_path):
    """The office's store with a newer version of the tenders' program."""
    from dataclasses import replace

    store = kitchen_store(tmp_path / "office.db")
    kitchen = remembered_kitchen(store)
    save_program(store, kitchen, replace(kitchen.program("tenders dogwood"), version=2, drain_s=40.0))
    return store, remembered_kitchen(store)


def probe(store, kitchen, temp, count=1):
    """Readings of tenders in Dogwood."""
    for _ in range(count):
        tell_probe(
            store, kitchen, {"fryer": "dogwood", "product": "tenders", "temp": temp, "thermometer": "T"}
        )


def test_a_sweep_in_this_process():
    """Every program of every site; a broken kitchen file is a row with its reason; a name twice is
    refused.
    """
    sites = [
        fleet.Site(name="low", text=site_text(0)),
        fleet.Site(name="bad", text="nonsense"),
        fleet.Site(name="high", text=site_text(9000)),
    ]
    seen = []
    rows = fleet.sweep(sites, samples=32, progress=seen.append)
    assert [r.site for r in rows] == ["low", "bad", "high"]
    assert rows[1].problem
    assert rows[2].worst_margin_k < rows[0].worst_margin_k
    assert seen[-1] == 1.0
    with pytest.raises(InputError):
        fleet.sweep([sites[0], sites[0]])


def test_a_stopped_sweep_goes_on_where_it_was(tmp_path, monkeypatch):
    """What is proved is not proved again, a line cut by the stop is; another kitchen or number of loads is
    new; a file of something else is refused and left alone.
    """
    sites = [fleet.Site(name=f"n{k}", text=site_text(1000 * k)) for k in range(3)]
    path, asked, prove = tmp_path / "sweep.jsonl", [], fleet.prove_site

    def counted(name, text, samples, few):
        asked.append(name)
        return prove(name, text, samples, few)

    def stop(share):
        if share > 0.5:
            raise KeyboardInterrupt

    monkeypatch.setattr(fleet, "prove_site", counted)
    with pytest.raises(KeyboardInterrupt):
        fleet.sweep(sites, samples=16, keep=path, progress=stop)
    assert path.read_text("utf-8").count("\n") == 2 and {"n0", "n1"} <= set(asked)
    asked.clear()
    path.write_text(path.read_text("utf-8")[:-20], "utf-8")
    whole = fleet.sweep(sites, samples=16, keep=path)
    assert sorted(asked) == ["n1", "n2"]
    assert whole == fleet.sweep(sites, samples=16, keep=path)
    assert len(asked) == 2
    assert whole == fleet.sweep(sites, samples=16)
    fleet.sweep([sites[0], replace(sites[1], text=site_text(1500))], samples=16, keep=path)
    fleet.sweep(sites[:1], samples=8, keep=path)
    assert asked[5:] == ["n1", "n0"]
    other = tmp_path / "letter.txt"
    for text in ("Dear all,\n", "no end of line", "[1]\n", '{"mark": "a", "rows": [1]}\n'):
        other.write_text(text, "utf-8")
        with pytest.raises(InputError, match="a file that a sweep wrote"):
            fleet.sweep(sites, samples=16, keep=other)
        assert other.read_text("utf-8") == text
    other.write_bytes(b"\xff\xfe\x00")
    with pytest.raises(InputError, match="a file that a sweep wrote"):
        fleet.sweep(sites, samples=16, keep=other)
    with pytest.raises(InputError, match="can be written"):
        fleet.sweep(sites, samples=16, keep=tmp_path / "nowhere" / "sweep.jsonl")


def test_as_many_sites_at_a_time_as_cores_and_none_after_a_stop(monkeypatch):
    """Two sites wait for each other; rows come in order; what was not begun when it was stopped never is."""
    monkeypatch.setattr(fleet.os, "cpu_count", lambda: 2)
    together, over, begun = threading.Barrier(2), threading.Event(), []

    class Pool(fleet.ThreadPoolExecutor):
        def shutdown(self, wait=True, *, cancel_futures=False):
            super().shutdown(wait=False, cancel_futures=cancel_futures)
            over.set()
            super().shutdown()

    def prove(name, text, samples, few):
        begun.append(name)
        together.wait(20.0)
        assert name in ("n0", "n1") or over.wait(20.0)
        return [SiteProof(site=name)]

    def stop(share):
        raise KeyboardInterrupt

    monkeypatch.setattr(fleet, "prove_site", prove)
    monkeypatch.setattr(fleet, "ThreadPoolExecutor", Pool)
    sites = [fleet.Site(name=f"n{k}", text="") for k in range(40)]
    over.set()
    assert [row.site for row in fleet.sweep(sites)] == [site.name for site in sites]
    begun.clear()
    over.clear()
    with pytest.raises(KeyboardInterrupt):
        fleet.sweep(sites, progress=stop)
    assert len(begun) <= 4


@pytest.mark.slow
def test_a_cluster_says_the_same():
    """Two Dask workers give the rows of one process, in the same order; an address that does not answer is
    said in words.
    """
    from distributed import LocalCluster

    sites = [fleet.Site(name=f"n{k}", text=site_text(1000 * k)) for k in range(4)]
    alone = fleet.sweep(sites, samples=32)
    with LocalCluster(n_workers=2, threads_per_worker=1, dashboard_address=None) as cluster:
        assert fleet.sweep(sites, samples=32, address=cluster.scheduler_address) == alone
    with pytest.raises(InputError, match="scheduler that answers"):
        fleet.sweep(sites, samples=32, address="tcp://127.0.0.1:1")


def test_waves_begin_only_after_every_site_read_back(shops, office):
    """One, two, the rest; the next wave waits for the read-backs; unknown is unknown; the last wave ends
    it.
    """
    store, kitchen = office
    number = release.open_release(store, kitchen, "tenders dogwood", [n for n, _, _ in shops], "Olive").number
    assert [len(w) for w in release.release_of(store, number).told.waves] == [1, 2, 1, 2]
    sites = {name: s for name, s, _ in shops}
    for nobody in ("", "  ", " O "):
        with pytest.raises(InputError, match="the name of the person"):
            release.next_wave(store, number, sites, nobody)
    assert release.release_of(store, number).started == 0
    release.next_wave(store, number, sites, "Olive")
    with pytest.raises(InputError, match="read back by every site of the waves before: s0"):
        release.next_wave(store, number, sites, "Olive")
    assert release.results(release.release_of(store, number), {}).unknown == ["s0"]
    held(shops[0], kitchen)
    probe(shops[0][1], shops[0][2], "180", 12)
    assert release.next_wave(store, number, sites, "Olive").fact.sites == ("s1", "s2")
    rows = fleet.versions(shops[:2])
    assert {r.state for r in rows if r.site == "s1"} == {"unknown"}
    assert [r.held for r in rows if (r.site, r.program) == ("s0", "tenders dogwood")] == ["2"]


def held(shop, office_kitchen):
    """A site saves the new version and reads it back."""
    _, store, kitchen = shop
    save_program(store, kitchen, office_kitchen.program("tenders dogwood"))
    newer = remembered_kitchen(store)
    values = [v.text for v in value_names(newer, newer.program("tenders dogwood"), 1)]
    _, matches = tell_readback(store, newer, "tenders dogwood", 1, values, ("Ana", "Ben"))
    assert matches


def test_the_stop_rule_halts_by_itself_and_gives_the_card_to_go_back_to(shops, office):
    """Two of twelve readings below the limit with a rule of two per cent: halted, nothing starts it again,
    the old version's card prints.
    """
    store, kitchen = office
    number = release.open_release(store, kitchen, "tenders dogwood", [n for n, _, _ in shops], "Olive").number
    sites = {name: s for name, s, _ in shops}
    release.next_wave(store, number, sites, "Olive")
    held(shops[0], kitchen)
    probe(shops[0][1], shops[0][2], "180", 10)
    probe(shops[0][1], shops[0][2], "150", 2)
    with pytest.raises(InputError, match="halted"):
        release.next_wave(store, number, sites, "Olive")
    assert release.release_of(store, number).halted
    with pytest.raises(InputError, match="halted"):
        release.next_wave(store, number, sites, "Olive")
    assert release.rollback_card(store, kitchen, number, "en").startswith(b"%PDF")
    for bad in (
        ("nothing", ["a"], "Olive"),
        ("tenders dogwood", [], "Olive"),
        ("tenders dogwood", ["a", "a"], "Olive"),
        ("tenders dogwood", ["a"], ""),
    ):
        with pytest.raises(InputError):
            release.open_release(store, kitchen, *bad)


def test_releases_are_listed_and_one_version_is_released_once_at_a_time(shops, office):
    """Open, halted by hand with a reason, and then released anew."""
    store, kitchen = office
    names = [n for n, _, _ in shops]
    number = release.open_release(store, kitchen, "tenders dogwood", names, "Olive").number
    assert [(r.number, r.started, r.state) for r in release.releases(store)] == [(number, 0, "open")]
    with pytest.raises(InputError, match=f"{number} releases this version"):
        release.open_release(store, kitchen, "tenders dogwood", names, "Olive")
    with pytest.raises(InputError, match="why"):
        release.halt(store, number, "Olive", "")
    release.halt(store, number, "Olive", "crust too dark")
    again = release.open_release(store, kitchen, "tenders dogwood", names, "Olive").number
    assert [(r.number, r.state) for r in release.releases(store)] == [
        (again, "open"),
        (number, "halted"),
    ]


def test_a_release_stays_within_one_group(shops, office):
    """A site at another altitude or on another voltage is refused with its group: it needs a program of its
    own.
    """
    store, kitchen = office
    remember_kitchen(
        shops[1][1], demo_text().replace("altitude_ft = 5420", "altitude_ft = 20"), "demo.toml", "at the sea"
    )
    number = release.open_release(store, kitchen, "tenders dogwood", [n for n, _, _ in shops], "Olive").number
    sites = {name: s for name, s, _ in shops}
    release.next_wave(store, number, sites, "Olive")
    held(shops[0], kitchen)
    with pytest.raises(InputError, match=r"s1 \(electric\+gas, 0 to 500 m\)"):
        release.next_wave(store, number, sites, "Olive")
    nameplate.keep_plate(
        shops[0][1],
        shops[0][2],
        {"fryer": "alder", "serial": "1", "fuel": "electric", "volts": "208", "phases": "3", "power": "12"},
    )
    assert fleet.group_of(shops[0][1], shops[0][2]) == "electric+gas, 1500 to 2000 m, 208 V"


def test_read_backs_come_by_file_once(shops):
    """Good lines are kept whatever the others say; the same file again adds nothing."""
    _, store, kitchen = shops[0]
    values = [v.text for v in value_names(kitchen, kitchen.program("wedges dogwood"), 1)]
    good = {"program": "wedges dogwood", "slot": 1, "values": values, "read_by": "Ana", "checked_by": "Ben"}
    lines = [
        json.dumps(good),
        "",
        "{",
        json.dumps({**good, "checked_by": "ana"}),
        json.dumps([1]),
        json.dumps({**good, "program": "pie"}),
        json.dumps({k: v for k, v in good.items() if k != "slot"}),
    ]
    rows = readbacks_from(store, kitchen, lines)
    assert [bool(r.problem) for r in rows] == [False, True, True, True, True, True]
    assert rows[0].matches
    before = store.last().number
    assert not readbacks_from(store, kitchen, lines)[0].new
    assert store.last().number == before


def test_sites_are_compared_by_control_limits(shops):
    """Five that agree and one that reads low: outside; a site with too little behind it is told as such;
    groups by fuel and altitude.
    """
    for n, (_, store, kitchen) in enumerate(shops):
        with store.writing():
            probe(store, kitchen, f"{176 + n}" if n < 5 else "168", 31 if n != 4 else 3)
    rows = [r for r in fleet.compare(shops, today_of(shops[0][2])) if r.ratio == "lift_core_c"]
    states = {r.site: r.state for r in rows}
    assert states["s5"] == "outside"
    assert states["s4"] == "too few"
    assert states["s0"] == "within"
    assert rows[0].group == "electric+gas, 1500 to 2000 m"
    waste = [r for r in fleet.compare(shops, today_of(shops[0][2])) if r.ratio == "waste_frac"]
    assert {r.state for r in waste} == {"unknown"}
