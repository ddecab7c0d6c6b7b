"""How a kitchen without an owner is opened, and how hard it is to guess one's way in."""

from __future__ import annotations

import datetime as dt
from concurrent.futures import ThreadPoolExecutor

import pytest
import sqlalchemy as sa

from frywright.ledger.accounts import Accounts
from frywright.model.errors import BusyError, InputError
from frywright.rooms.records import people
from frywright.rooms.records.tries import (
    FIRST_WAIT_S,
    FREE_ANYWHERE,
    FREE_ON_DEVICE,
    FREE_TRIES,
    LONGEST_WAIT_S,
)
from frywright.web.app import make_app
from frywright.web.door import Door
from frywright.web.rates import KNOCKS_COUNT, KNOCKS_PER_S, OneByOne, Rates
from tests.browsers import HOST, browser

PASSWORD = "oak leaf river stone"
LOCAL = {"host": "127.0.0.1", "origin": HOST}
PAGE = {"accept": "text/html"}


def client_of(app, **cookies):
    client = browser(app, follow_redirects=False)
    for name, value in cookies.items():
        client.cookies.set(name, value)
    return client


@pytest.mark.parametrize(
    "headers",
    [
        LOCAL,
        {**LOCAL, "host": "fry.example", "origin": "http://fry.example"},
        {**LOCAL, "x-forwarded-for": "127.0.0.1"},
        {**LOCAL, "forwarded": "for=203.0.113.9"},
        {**LOCAL, "cookie": "pass="},
        {**LOCAL, "cookie": "pass=aaaa-aaaa-aaaa; session=x; device=y"},
        {**LOCAL, "authorization": "Bearer aaaa"},
    ],
)
def test_nothing_but_the_code_opens_a_kitchen_without_an_owner(store, headers):
    """A proxy that sends this machine's own name, or another user of the machine, reads and owns nothing."""
    client = client_of(make_app(store, Door()))
    before = store.last().number
    for path in ("/", "/records", "/api/v1/entries", "/records/people", "/cook"):
        assert client.get(path, headers=headers).status_code in (401, 403), path
    for path, form in (
        ("/first-owner", {"name": "Eve", "password": PASSWORD}),
        ("/care/oil", {"vat": "alder", "what": "filter"}),
        ("/records/people/device", {"name": "Eve", "role": "lead"}),
    ):
        assert client.post(path, data=form, headers=headers).status_code == 403, path
    assert not Accounts(store).any()
    assert store.last().number == before


def test_the_code_opens_once_for_a_browser_until_there_is_an_owner(store):
    """By its address or typed; a wrong one is refused; the owner's password is all that counts afterwards."""
    door = Door()
    app = make_app(store, door)
    client = client_of(app)
    assert client.get("/records", headers=PAGE).headers["location"] == "/code?next=/records"
    assert client.post("/code", data={"code": "aaaa-aaaa-aaaa"}).status_code == 422
    assert client.get("/records").status_code == 403
    opened = client.get("/code", params={"code": door.code})
    assert (opened.status_code, opened.headers["location"]) == (303, "/")
    assert "httponly" in opened.headers["set-cookie"].lower()
    assert door.code not in opened.headers["set-cookie"]
    assert client.get("/records").status_code == 200
    other = client_of(app)
    typed = {"code": f" {door.code.upper().replace('-', ' ')} ", "next": "//evil.example"}
    assert other.post("/code", data=typed).headers["location"] == "/"
    assert other.post("/first-owner", data={"name": "Olive", "password": PASSWORD}).status_code == 303
    assert other.get("/records").status_code == 200  # signed in; the code alone opens nothing more
    other.cookies.delete("session")
    for one in (client, other):
        assert one.get("/records").status_code == 403
        assert one.get("/records", headers=PAGE).headers["location"] == "/sign-in?next=/records"
    assert Door().code != door.code


def test_serving_prints_the_code_and_opens_the_page_with_it(store, monkeypatch, capsys):
    """The play stays one command; a kitchen with an owner prints none."""
    import uvicorn

    from frywright.web import serve

    made, opened = [], []

    class At:
        def __init__(self, _wait, _open, address):
            opened.append(*address)

        def start(self):
            pass

    def run(server, sockets):
        made.append(server.config.app)
        sockets[0].close()

    monkeypatch.setattr(serve, "warm", lambda: None)
    monkeypatch.setattr(serve.threading, "Timer", At)
    monkeypatch.setattr(uvicorn.Server, "run", run)
    serve.serve_pages(store, 0, True)
    said = capsys.readouterr().out
    assert "/code?code=" in opened[0]
    assert opened[0] in said
    client = client_of(made[0])
    assert client.get("/records").status_code == 403
    assert client.get(opened[0].split("/", 3)[3].join(("/", ""))).status_code == 303
    assert client.get("/records").status_code == 200
    people.add_account(store, "Olive", "owner", PASSWORD)
    serve.serve_pages(store, 0, True)
    assert "code" not in capsys.readouterr().out
    assert "code" not in opened[1]


def test_an_invented_device_does_not_forget_wrong_tries(store):
    """Forty wrong passwords, each with another device cookie, wait like forty from one address."""
    people.add_account(store, "Olive", "owner", PASSWORD)
    client = client_of(make_app(store))
    told = [
        client.post(
            "/sign-in", data={"name": "Olive", "secret": "wrong"}, headers={"cookie": f"device=x{n}"}
        ).text
        for n in range(8)
    ]
    assert ["tried again" in text for text in told] == [False] * 5 + [True] * 3


@pytest.mark.parametrize("name", ["the crew {n}", "THE crew{n}", " the  crew{n}", "\u0074he crew{n}"])
def test_a_name_written_another_way_is_the_same_name(store, name):
    """Spaces, capitals: six tries and a wait, not six for each way to write it."""
    people.add_account(store, "Olive", "owner", PASSWORD)
    people.add_account(store, "the crew", "crew", PASSWORD, "7391")
    tablet = people.add_device(store, "Wall", "crew", "Olive")
    tries = people.Tries()
    said = []
    for n in range(7):
        with pytest.raises(InputError) as error:
            people.sign_in(store, name.format(n=" " * n), "0000", "a", tries, device_token=tablet)
        said.append("tried again" in str(error.value))
    assert said == [False] * 5 + [True] * 2


def test_a_shared_device_waits_after_twenty_wrong_pins_whoever_is_named(store):
    """Going round the names of the shift buys no more tries, and a right PIN does not wipe them out."""
    people.add_account(store, "Olive", "owner", PASSWORD)
    for n in range(8):
        people.add_account(store, f"Crew {n}", "crew", PASSWORD, "7391")
    tablet = people.add_device(store, "Wall", "crew", "Olive")
    tries, count = people.Tries(), 0
    for n in range(40):
        try:
            people.sign_in(store, f"Crew {n % 8}", f"{n:04}", "a", tries, device_token=tablet)
        except InputError as error:
            if "tried again" in str(error):
                break
            count += 1
        if n == 10:
            assert people.sign_in(store, "Crew 7", "7391", "a", tries, device_token=tablet)
    assert count == FREE_ON_DEVICE
    assert people.sign_in(store, "Crew 1", PASSWORD, "elsewhere", tries)


def test_a_pin_never_opens_what_only_the_owner_may(store):
    """On the wall tablet the owner signs with the PIN and runs a shift; accounts need the password. The
    session of a PIN is worth nothing away from its tablet.
    """
    by_pin = people.Who(name="Olive", role="owner", by_pin=True, person=True)
    assert by_pin.may("machine") and not by_pin.may("owner")
    people.add_account(store, "Olive", "owner", PASSWORD, "246810")
    tablet = people.add_device(store, "Wall", "crew", "Olive")
    app = make_app(store)
    client = client_of(app, device=tablet)
    assert client.post("/sign-in", data={"name": "Olive", "secret": "246810"}).status_code == 303
    refused = client.get("/records/people")
    assert refused.status_code == 403
    assert "password" in refused.json()["message"]
    assert client.post("/records/people/device", data={"name": "x2", "role": "lead"}).status_code == 403
    assert client.post("/day/note", data={}).status_code != 403
    taken = client_of(app, session=client.cookies["session"])
    assert taken.get("/care").status_code == 403
    assert client.post("/sign-in", data={"name": "Olive", "secret": PASSWORD}).status_code == 303
    assert client.get("/records/people").status_code == 200


@pytest.mark.slow
def test_sign_ins_of_strangers_are_counted_by_their_address_whatever_they_send(store):
    """Fresh names and cookies make no fresh client: after the burst they are told to wait."""
    people.add_account(store, "Olive", "owner", PASSWORD)
    app = make_app(store)
    app.state.knocks = Rates(5, 0.01)
    client = client_of(app)
    codes = [
        client.post(
            "/sign-in",
            data={"name": f"n{n}", "secret": "x" * (people.MOST_PASSWORD + 1)},
            headers={"cookie": f"session=s{n}", "authorization": f"Basic {n}"},
        ).status_code
        for n in range(8)
    ]
    assert codes == [422] * 5 + [429] * 3
    opened = []
    sa.event.listen(store.engine, "connect", lambda *_: opened.append(1))
    assert client.post("/sign-in", data={"name": "n", "secret": "x"}).status_code == 429
    assert opened == []
    assert KNOCKS_COUNT >= 40 > KNOCKS_PER_S


def test_what_is_costly_for_strangers_is_done_one_at_a_time_and_the_rest_is_sent_away():
    """Two at once never run together; more than wait are refused, and places come free again."""
    import asyncio
    import time

    running, most = [], []

    def work():
        running.append(1)
        most.append(len(running))
        time.sleep(0.02)
        running.pop()
        return 1

    async def flood(turns):
        return await asyncio.gather(*(turns.run(work) for _ in range(6)), return_exceptions=True)

    async def both():
        turns = OneByOne(4)
        return await flood(turns), await flood(turns)

    for found in asyncio.run(both()):
        assert sum(one == 1 for one in found) == 4
        assert sum(isinstance(one, BusyError) for one in found) == 2
    assert max(most) == 1


def test_hashing_runs_alone_and_behind_everything_else(store, monkeypatch):
    """Whoever asks: one secret at a time, in a thread that stands back."""
    import os
    import threading
    import time

    here, most, nice = [], [], []

    class Slow:
        def verify(self, *_):
            here.append(1)
            most.append(len(here))
            nice.append(os.getpriority(os.PRIO_PROCESS, threading.get_native_id()))
            time.sleep(0.02)
            here.pop()
            return True

    monkeypatch.setattr(people, "_HASHER", Slow())
    with ThreadPoolExecutor(6) as pool:
        assert all(pool.map(lambda _: people.fits("kept", "x"), range(6)))
    assert max(most) == 1
    assert min(nice) == min(19, os.getpriority(os.PRIO_PROCESS, 0) + people.LOW_PRIORITY)


def test_a_flood_of_knocks_waits_for_its_answers(store, monkeypatch):
    """Each that is turned away waits a moment, a few at once; others are sent off with the connection. The
    moment lasts here until the others are gone, so that all six are there together on any machine.
    """
    import anyio

    from frywright.web import rates

    sleep, slept, gone = anyio.sleep, [], []

    async def until_the_others_are_gone(seconds):
        slept.append(seconds)
        for _ in range(3000):
            if len(gone) == 4:
                break
            await sleep(0.01)

    monkeypatch.setattr(anyio, "sleep", until_the_others_are_gone)
    monkeypatch.setattr(rates, "PAUSED_COUNT", 2)
    app = make_app(store)
    app.state.knocks = Rates(0, 0.001)
    with browser(app) as client:

        def knock(_):
            answer = client.post("/sign-in", data={"name": "n", "secret": "x"})
            closed = answer.headers.get("connection", "") == "close"
            gone.extend([1] * closed)
            return answer.status_code, closed

        with ThreadPoolExecutor(6) as pool:
            told = list(pool.map(knock, range(6)))
        assert client.get("/sign-in").status_code == 200
    assert {status for status, _ in told} == {429}
    assert slept == [rates.PAUSE_S] * 2
    assert sum(closed for _, closed in told) == 4


def test_an_ipv6_household_is_one_place(store):
    """Its network has more addresses than tries could count."""
    from frywright.web.rates import place

    assert place("2001:db8:1:2:3::4") == place("2001:db8:1:2:ffff::1") != place("2001:db8:1:3::1")
    assert place("203.0.113.9") == "203.0.113.9"


def test_one_name_guessed_from_many_addresses_waits_but_not_where_it_signed_in(store):
    """Fifty wrong ones from fifty places; the person works on at her own."""
    people.add_account(store, "Olive", "owner", PASSWORD)
    people.add_account(store, "Kim", "crew", PASSWORD)
    tries = people.Tries()
    assert people.sign_in(store, "Olive", PASSWORD, "home", tries)
    for n in range(FREE_ANYWHERE):
        with pytest.raises(InputError, match="not known"):
            people.sign_in(store, "Olive", "wrong", f"10.0.0.{n}", tries)
    with pytest.raises(InputError, match="tried again"):
        people.sign_in(store, " OLIVE", "wrong", "10.0.1.1", tries)
    assert people.sign_in(store, "Olive", PASSWORD, "home", tries)
    assert people.sign_in(store, "Kim", PASSWORD, "10.0.1.1", tries)


def test_names_that_people_cannot_tell_apart_are_refused(store):
    """Letters that are not seen, two alphabets in a word, the same name in capitals; composed and decomposed
    letters are one name.
    """
    people.add_account(store, "Jose\u0301", "owner", PASSWORD)
    assert people.sign_in(store, "Jos\u00e9", PASSWORD, "a", people.Tries())
    assert people.sign_in(store, "Jose\u0301 ", PASSWORD, "a", people.Tries())
    for bad in ("Ol\u202eive", "Oli\u200bve", "Oli\x00ve", "\u041elive", "JOS\u00c9", "Jose\u0301"):
        with pytest.raises(InputError):
            people.add_account(store, bad, "crew", PASSWORD)
    people.add_account(store, "\u041e\u043b\u044c\u0433\u0430", "crew", PASSWORD)
    people.add_account(store, "Coca", "crew", PASSWORD)
    people.add_account(store, "Ida", "crew", PASSWORD)
    whole_word, small_l, fillers = "\u0421\u043e\u0441\u0430", "lda", "\u115f\u115f"
    for bad in (whole_word, small_l, fillers, "Bo\u3164b", "Bo\ufe0fb"):
        with pytest.raises(InputError):
            people.add_account(store, bad, "crew", PASSWORD)
    people.add_device(store, "Wall 1", "crew", "Jos\u00e9")
    with pytest.raises(InputError):
        people.add_device(store, "Wall l", "lead", "Jos\u00e9")
    with pytest.raises(InputError):  # its entries would bear a person's name
        people.add_device(store, "Ida", "lead", "Jos\u00e9")
    with pytest.raises(InputError):
        people.add_account(store, "wall 1", "crew", PASSWORD)
    people.add_account(store, "\u5c71\u7530\u3055\u304f\u3089", "crew", PASSWORD)


def test_a_password_that_is_taken_signs_in(store):
    """The longest too; one letter more is refused when it is chosen."""
    people.add_account(store, "Olive", "owner", "x" * people.MOST_PASSWORD)
    assert people.sign_in(store, "Olive", "x" * people.MOST_PASSWORD, "a", people.Tries())
    with pytest.raises(InputError, match="200 letters at most"):
        people.add_account(store, "Kim", "crew", "x" * (people.MOST_PASSWORD + 1))


def test_two_who_sign_in_at_once_both_do(store):
    """The turns give everybody a place."""
    people.add_account(store, "Olive", "owner", PASSWORD)
    with browser(store) as client:

        def sign(_):
            form = {"name": "Olive", "secret": PASSWORD}
            return client.post("/sign-in", data=form, follow_redirects=False).status_code

        with ThreadPoolExecutor(3) as pool:
            assert list(pool.map(sign, range(3))) == [303] * 3


def test_the_wait_grows_and_ends():
    """Half a minute, then twice as long each time up to a quarter of an hour, by the clock."""
    tries, moment = people.Tries(), dt.datetime(2026, 11, 1, tzinfo=dt.UTC)
    for _ in range(FREE_TRIES):
        tries.wrong("Olive", "a", moment)
    assert tries.wait_s("olive", "a", moment) == FIRST_WAIT_S
    tries.wrong("Olive", "a", moment)
    assert tries.wait_s("olive ", "a", moment) == 2 * FIRST_WAIT_S
    for _ in range(2000):
        tries.wrong("Olive", "a", moment)
    assert tries.wait_s("Olive", "a", moment) == LONGEST_WAIT_S
    assert tries.wait_s("Olive", "a", moment + dt.timedelta(hours=1)) == 0.0
    assert tries.wait_s("Olive", "b", moment) == 0.0
