"""A third language is one folder and no change of code: made by machine, it leaves no English word on a page,
in an error or on paper.
"""

from __future__ import annotations

import json
import re
import time
from html.parser import HTMLParser

import pytest

from frywright.ledger.store import Store
from frywright.model.errors import AccessError, BrokenOffError, DataError, FrywrightError, InputError
from frywright.rooms.clock import now
from frywright.rooms.kitchen import remembered_kitchen
from frywright.voice.tongue import explain, translator
from tests import paper
from tests.browsers import HOST, browser
from tests.demo import keep_demo_sales, kitchen_store
from tests.house.test_words import error_texts
from tests.pseudo import KEY, OWN, english, own_words, pseudo
from tests.rooms.setup.answers import US
from tests.web.addresses import ADDRESSES
from tests.web.test_probes import FISH_AND_WEDGES

pytestmark = pytest.mark.slow
REFUSED = re.compile(r"zz|99999|start=500|/cook/card$|/setup/own$")
"""Addresses with something wrong in them."""


class Shown(HTMLParser):
    """Every text of a page that a person sees or hears."""

    HEARD = ("title", "aria-label", "aria-description", "alt", "placeholder")
    DEAF = ("script", "style", "textarea", "code")
    """What no person reads as words; a text area holds what was typed."""

    def __init__(self) -> None:
        super().__init__()
        self.texts: list[str] = []
        self.deaf, self.kept = 0, False

    def handle_starttag(self, tag, attrs):
        kept = tag == "pre" and dict(attrs).get("class") == "kept"  # an entry as it was written
        self.kept |= kept
        self.deaf += kept or tag in self.DEAF
        for name, value in attrs:
            if name in self.HEARD and value:
                self.texts.append(value)
            if name == "value" and value and dict(attrs).get("type") in ("submit", "button", "reset"):
                self.texts.append(value)
            if name.startswith("data-") and value:
                self.texts += words_of(value)

    def handle_endtag(self, tag):
        self.deaf -= tag in self.DEAF or (self.kept and tag == "pre")
        self.kept &= tag != "pre"

    def handle_data(self, data):
        if not self.deaf and data.strip():
            self.texts.append(data.strip())


def words_of(value: str) -> list[str]:
    """Texts in an attribute for the page's program: a sentence, or the values of a JSON object."""
    try:
        found = json.loads(value)
    except ValueError:
        return [value] if " " in value else []
    return [v for v in found.values() if isinstance(v, str)] if isinstance(found, dict) else []


@pytest.fixture(scope="module")
def client(made_language, tmp_path_factory):
    """The demo kitchen with eight weeks of sales, seen by somebody who chose the language."""
    store = kitchen_store(tmp_path_factory.mktemp("pseudo") / "p.db")
    found = browser(store, page=True)
    found.cookies.set("lang", KEY)
    keep_demo_sales(store)
    found.own = own_words(remembered_kitchen(store))
    return found


def read(client, address: str) -> dict[str, list[str]]:
    """English words of what stands at an address."""
    answer = client.get(address)
    assert answer.status_code == (422 if REFUSED.search(address) else 200), answer.text[:300]
    kind = answer.headers["content-type"]
    if "pdf" in kind:
        assert answer.content[:4] == b"%PDF"
        return english([paper.words(answer.content)], client.own)
    assert "json" not in kind, "a page answers a person in words"
    page = Shown()
    page.feed(answer.text)
    assert len(page.texts) > 3
    return english(page.texts, client.own)


def test_figures_in_hexadecimal_are_no_words_and_words_stay():
    """Whatever letters a key of a store draws."""
    assert english(["key d75e b159 b422 becd, deadbeef, #faceb00c"], {"key"}) == {}
    assert english(["each face"], set()) == {"each face": ["each", "face"]}


@pytest.mark.parametrize("address", ADDRESSES)
def test_no_english_word_is_left(client, address):
    """On a page, its errors or its paper."""
    assert read(client, address) == {}


def test_a_log_its_report_and_a_case_are_read(client):
    """What a person makes here is told in the language as well: probes, papers, a case and its steps."""
    log = finished(client, "/cook/probes/demo")
    assert "/report.pdf" in client.get(log).text
    assert read(client, log) == {}
    assert read(client, f"{log}/report.pdf?program=bone-in+alder") == {}
    typed = {"fryer": "alder", "product": "bone_in", "temp": "158", "thermometer": "T1", "pieces": "32"}
    case = str(client.post("/records/probing", data={**typed, "who": "Ana"}).url).removeprefix(HOST)
    assert "/records/case/" in case
    assert read(client, case) == {}
    assert read(client, f"/records/reading/{int(case.rsplit('/', 1)[1]) - 1}") == {}
    tap = {"date": "2026-11-27", "practice": "62", "fryer": "alder", "product": "bone_in", "pieces": "16"}
    for what, at in (("drop", "42000"), ("lift", "42750")):
        client.post("/day/tap", json={**tap, "key": what, "what": what, "at_s": at})
    assert read(client, "/day/labels.pdf?date=2026-11-27&practice=62&now_s=43200") == {}
    drills = re.findall(r'href="(/care/drill/[^"]+)"', client.get("/care/people").text)
    assert drills
    for drill in drills:
        assert read(client, drill) == {}
    for line in client.get("/care/calendar.ics").text.splitlines():
        if line.startswith(("SUMMARY", "DESCRIPTION")):
            assert english([line.partition(":")[2]], client.own) == {}, line


def test_a_load_that_is_followed_is_read(client):
    """Readings of a clock that is wrong, one of them impossible; a load that waits, one that cooks."""
    for second in range(3):
        samples = [
            {"channel": name, "temp": temp, "unit": "F", "at": 1000.0 + second}
            for name, temp in (("1", 40.0), ("2", 335.0), ("3", 9999.0))
        ]
        assert client.post("/api/v1/live", json={"source": "7", "samples": samples}).status_code == 200
    form = {"program": "bone-in alder", "drop": "oil", "channel_0": "7/1", "channel_1": "7/2"}
    form |= {"where_0": "breast_half", "where_1": "oil"}
    assert client.post("/cook/live/start", data=form).url.query == b"load=1"
    assert read(client, "/cook/live?load=1") == {}
    assert client.post("/cook/live/start", data={**form, "drop": "now", "ago": "1:00"}).url.query == b"load=2"
    assert read(client, "/cook/live?load=2") == {}


def test_a_second_kitchen_with_rules_of_another_place_is_read(made_language, tmp_path):
    """Metric, high up, fish and wedges, a national limit for the oil."""
    text = FISH_AND_WEDGES.replace(
        'units = "metric"',
        f'units = "metric"\njurisdiction = "germany"\nlanguage = "{KEY}"\naltitude_m = 1600',
    )
    store = kitchen_store(tmp_path / "s.db", text)
    found = browser(store, page=True)
    found.own = own_words(remembered_kitchen(store)) | {"mbar"}
    assert pseudo("Germany") in found.get("/care").text
    pages = (
        "/",
        "/cook/desk",
        "/care",
        "/care/new?fryer=uno",
        "/care/people",
        "/records",
        "/records/pack.pdf",
    )
    for address in (
        *pages,
        "/care/card/boil_out.pdf?water_l=12&g_l=20",
        "/care/oil-map.pdf",
        "/care/wall.pdf",
    ):
        assert read(found, address) == {}, address


def test_the_set_up_is_read_screen_by_screen(made_language, tmp_path):
    """From an empty store: each screen empty, wrong and answered, the check, and the way to the first
    program.
    """
    store = Store.file(tmp_path / "e.db", now)
    found = browser(store, page=True)
    found.cookies.set("lang", KEY)
    typed = {word.lower() for answers in US.values() for text in answers.values() for word in text.split()}
    found.own = OWN | typed | {"ford", "left", "bone"}
    assert read(found, "/setup") == {}
    for key, answers in US.items():
        address = f"/setup/kitchen/{key}"
        assert read(found, address) == {}, key
        wrong = Shown()
        wrong.feed(found.post(address, data={"revision": "0"}).text)
        assert english(wrong.texts, found.own) == {}, key
        seen = re.search(r'name="revision" value="(\d+)"', found.get(address).text)[1]
        found.post(address, data={**answers, "revision": seen})
    assert read(found, "/setup/kitchen/check") == {}
    seen = re.search(r'name="revision" value="(\d+)"', found.get("/setup/kitchen/check").text)[1]
    assert found.post("/setup/kitchen/keep", data={"revision": seen}).url.path == "/setup/first"
    for address in ("/setup/first", "/cook/kitchen", "/setup/fryer/kind"):
        assert read(found, address) == {}, address


def finished(client, path: str, **form: str) -> str:
    """Address of work that a form began, once it is done."""
    address = str(client.post(path, data=form).url).removeprefix(HOST)
    deadline = time.monotonic() + 300
    while "http-equiv" in client.get(address).text and time.monotonic() < deadline:
        time.sleep(0.5)
    assert "http-equiv" not in client.get(address).text
    return address


@pytest.mark.parametrize(
    ("path", "form"),
    [("/cook/desk/prove", {}), ("/cook/desk/transfer", {"fryer": "dogwood"})],
)
def test_work_of_the_desk_is_read_when_it_is_done(client, path, form):
    """A proof and a transfer; a design, which searches for minutes, has the same page."""
    job = finished(client, path, program="wedges cedar", **form)
    assert "/cook/desk/job/" in job
    assert read(client, job) == {}


def test_a_followed_search_is_read(client):
    """Sliders, the proposal, a goal out of reach, a search that is not there."""
    job = finished(client, "/cook/desk/follow", product="wedges", fryer="cedar", stages="1")
    follow = str(client.get(job).url).removeprefix(HOST)
    assert "/cook/desk/follow/" in follow
    assert read(client, follow) == {}
    assert read(client, f"{follow}?longest_s=3") == {}
    gone = client.get("/cook/desk/follow/zz99999")
    page = Shown()
    page.feed(gone.text)
    assert gone.status_code in (404, 422) and english(page.texts, client.own) == {}


FORMS = [
    ("/cook/save", {"program": "bone-in alder"}),
    ("/cook/keep", {"program": "bone-in alder", "start": "hot"}),
    ("/cook/readback", {"program": "bone-in alder"}),
    ("/cook/settings", {"fryer": "alder", "number": "zz"}),
    ("/cook/kitchen", {"text": "zz = 1"}),
    ("/cook/kitchen", {"text": "zz"}),
    ("/cook/desk/design", {"product": "bone_in", "fryer": "alder", "margin": "99"}),
    ("/cook/live/start", {"program": "bone-in alder"}),
    ("/cook/live/9/drop", {"ago": "zz"}),
    ("/cook/live/9/keep", {}),
    ("/cook/probes/check", {"thermometer": "", "ice": "9"}),
    ("/cook/probes/sample", {"readings": "1 2"}),
    (
        "/cook/probing",
        {"program": "bone-in alder", "cut": "drum", "place": "wall", "load_kind": "half", "temp": "1"},
    ),
    ("/cook/probing", {"program": "bone-in alder", "cut": "zz"}),
    ("/cook/service", {"program": "bone-in alder", "who": "zz"}),
    ("/cook/keyed", {"program": "bone-in alder", "who": "zz"}),
    ("/cook/retire", {"program": "bone-in alder", "who": "zz", "reason": ""}),
    ("/records/gaps", {"date": "2020-01-01", "lack": "close", "who": "zz", "words": "zz zz"}),
    ("/records/gaps", {"date": "zz", "lack": "zz"}),
    ("/day/note", {"date": "zz"}),
    ("/day/orders", {"date": "zz"}),
    ("/day/orders", {"pieces": "zz"}),
    ("/day/orders/end", {"number": "99"}),
    ("/day/tap", {"what": "zz"}),
    ("/care/oil", {"vat": "alder", "what": "reading", "amount": "99"}),
    ("/care/limit", {"limit": "99"}),
    ("/care/close", {"step": "zz"}),
    ("/care/fryers/done", {"fryer": "alder", "task": "zz"}),
    ("/care/fryers/figure", {"fryer": "alder", "figure": "zz"}),
    ("/care/stop", {"fryer": "alder", "reason": "zz"}),
    ("/care/reopen", {"fryer": "alder"}),
    ("/care/new/plate", {"fryer": "alder"}),
    ("/care/new/step", {"fryer": "alder", "step": "zz"}),
    ("/care/people/person", {"name": ""}),
    ("/care/people/skill", {"person": "zz", "skill": "zz"}),
    ("/records/probing", {"fryer": "alder", "temp": "zz"}),
    ("/records/people/account", {"name": "", "role": "zz"}),
    ("/records/people/device", {"name": ""}),
    ("/first-owner", {"name": "", "password": "short"}),
    ("/code", {"code": "zz"}),
    ("/records/own", {"old": "zz"}),
    ("/sign-in", {"name": "zz", "password": "zz"}),
]
"""A form of each room with something wrong in it."""


@pytest.mark.parametrize(("address", "form"), FORMS)
def test_a_refused_form_says_so_in_the_language(client, address, form):
    """The page that comes back, its message and its marked boxes."""
    answer = client.post(address, data=form)
    assert 400 <= answer.status_code < 500
    page = Shown()
    page.feed(answer.text)
    assert english(page.texts, client.own) == {}


def test_every_class_of_error_speaks_the_language(made_language):
    """Each template of the source, filled with figures, by whoever raises it."""
    for kind in (InputError, AccessError, BrokenOffError, DataError):
        assert issubclass(kind, FrywrightError)
    said = translator(KEY)
    texts = sorted({text for _, text in error_texts() if text and re.search("[a-z]{4}", text)})
    assert len(texts) > 400
    assert english([re.sub(r"{\w+}", "1", said(text)) for text in texts], OWN) == {}
    error = InputError("oil_mass", 1.0, "{low_kg} to {high_kg}", low_kg=2.0, high_kg=9.0, unit="kg")
    assert english([explain(error, KEY, "us"), explain(AccessError("Sign in first."), KEY)], OWN) == {}
    assert english([explain(BrokenOffError(ValueError()), KEY)], OWN | {"value", "error"}) == {}


def test_a_word_left_in_english_is_found():
    """The reader itself can fail: text, attribute, the page's program, and a name kept."""
    page = Shown()
    page.feed(
        '<p title="Open the lid">áß</p><script>Hidden word</script>'
        '<b data-words=\'{"k": "more oil"}\'>Alder</b><a data-say="drop it now">kitchen.toml</a>'
    )
    found = english(page.texts, {"alder"})
    assert found == {"Open the lid": ["Open"], "more oil": ["more"], "drop it now": ["drop"]}
    assert pseudo("Oil {most_c} <b>hot</b>") == "Óíļ {most_c} <b>ħóť</b>"
