"""A figure has its decimal mark by the language's locale data, wherever a person reads it, and only there."""

from __future__ import annotations

import json
import re

import pytest
from babel import Locale

from frywright.model.tongues import tongues
from frywright.rooms.kitchen import remembered_kitchen
from frywright.voice.figures import mark_of, written, written_data, written_page
from tests import paper
from tests.browsers import browser
from tests.demo import kitchen_store
from tests.web.test_probes import FISH_AND_WEDGES


def test_the_mark_is_that_of_the_locale_data():
    """Unicode CLDR as Babel carries it; a kitchen of °F writes a point in every language."""
    for key, tongue in tongues().items():
        symbols = Locale.parse(key).number_symbols
        assert tongue.decimal == symbols.get("latn", symbols)["decimal"], key
        assert (mark_of(key, "metric"), mark_of(key, "us")) == (tongue.decimal, ".")
    assert (mark_of("es", "metric"), mark_of("en", "metric"), mark_of("zz", "metric")) == (",", ".", ".")


@pytest.mark.parametrize(
    ("made", "said"),
    [
        ("73.9 °C, 10.0 de margen.", "73,9 °C, 10,0 de margen."),
        ("de -1.0 a 40.0; −0.5–2.5 (3.13 kg)", "de -1,0 a 40,0; −0,5–2,5 (3,13 kg)"),
        ("$1187.38 y +6.8, pH 6.5.", "$1187,38 y +6,8, pH 6,5."),
        ("99.9\u00a0% ± 0.05", "99,9\u00a0% ± 0,05"),
        ("29 CFR 570.34, 3-401.11, § 381.1", "29 CFR 570.34, 3-401.11, § 381.1"),
        ("catálogo 2026.11, versión 0.1.0", "catálogo 2026.11, versión 0.1.0"),
        ("127.0.0.1:8400, 12:30.5, v2.5, 2.5mm", "127.0.0.1:8400, 12:30.5, v2.5, 2.5mm"),
        ("registro 2.5.csv, a1.5, 2026-11-27", "registro 2.5.csv, a1.5, 2026-11-27"),
        ("Fin. 7 piezas. 8", "Fin. 7 piezas. 8"),
    ],
)
def test_a_figure_and_nothing_else(made, said):
    """Measures and money; no law, version, address, clock, file or end of a sentence. Twice is once."""
    assert written(made, ",") == said == written(said, ",")
    assert written(made, ".") == made


def test_of_a_page_what_is_read_heard_and_typed():
    """Text, spoken attributes and boxes for figures; no program, no address, nothing sent as it reads."""
    page = (
        '<a href="/cook?start=12.5" data-x="1.5" title="a 1.5 h">1.5 h</a><script>let x = 1.5;</script>'
        '<textarea>1.5</textarea><option>1.5</option><option value="1.5">1.5</option><pre>1.5</pre>'
        '<input inputmode="decimal" value="172.5"><input inputmode="decimal" value="1.250">'
        '<input name="name" value="1.5"><svg><path d="M0 1.5"/><text x="1.5">1.5</text></svg>'
    )
    said = (
        '<a href="/cook?start=12.5" data-x="1.5" title="a 1,5 h">1,5 h</a><script>let x = 1.5;</script>'
        '<textarea>1.5</textarea><option>1.5</option><option value="1.5">1,5</option><pre>1.5</pre>'
        '<input inputmode="decimal" value="172,5"><input inputmode="decimal" value="1.250">'
        '<input name="name" value="1.5"><svg><path d="M0 1.5"/><text x="1.5">1,5</text></svg>'
    )
    assert written_page(page, ",") == said and written_page(page, ".") == page
    data = {"a": ["1.5 kg", 1.5, None, True], "b": '<svg><path d="M0 1.5"/><text>1.5</text></svg>'}
    assert written_data(data, ",") == {
        "a": ["1,5 kg", 1.5, None, True],
        "b": '<svg><path d="M0 1.5"/><text>1,5</text></svg>',
    }


@pytest.fixture(scope="module")
def client(tmp_path_factory):
    """A metric kitchen that speaks Spanish."""
    text = FISH_AND_WEDGES.replace('units = "metric"', 'units = "metric"\nlanguage = "es"\naltitude_m = 2000')
    text = text.replace("set_c = 175", "set_c = 172.5")
    store = kitchen_store(tmp_path_factory.mktemp("figures") / "f.db", text)
    found = browser(store, page=True)
    found.kitchen = remembered_kitchen(store)
    return found


COOK = "/cook?program=bird+uno"
MEASURE = re.compile(r"\d\.\d+ (?:°C|kg|kPa|%|kW|L)")


@pytest.mark.parametrize(
    "address", [COOK, "/cook/desk", "/care", "/care/energy", "/cook/chart.svg?program=bird+uno"]
)
def test_pages_of_a_metric_kitchen_in_spanish(client, address):
    """Each measure with a comma; the same page in English keeps its points."""
    page, english = client.get(address).text, client.get(address, params={"lang": "en"}).text
    client.cookies.clear()
    assert MEASURE.findall(re.sub(r"<script.*?</script>|<[^>]*>", " ", page, flags=re.DOTALL)) == []
    assert 'data-decimal=","' in page or address.startswith("/cook/chart")
    assert "data-decimal" not in english
    if address == COOK:
        assert 'value="172,5"' in page and 'value="172.5"' in english
        assert "°C" in page and re.search(r"\d,\d °C", page) and MEASURE.search(english)


def test_what_a_box_shows_is_read_back_the_same(client):
    """4,5 °C as typed and as shown; what programs read keeps the point."""
    comma, point = (
        client.get(f"/cook/view.json?program=bird+uno&start={text}").text for text in ("4,5", "4.5")
    )
    assert comma == point
    assert any("." in figure for figure in re.findall(r"\d[.,]\d+ °C", comma)) and json.loads(comma)["ok"]
    assert not re.search(r"\d,\d+ °C", comma)


@pytest.mark.parametrize(
    "address", ["/cook/card.pdf?program=bird+uno", "/records/pack.pdf", "/care/wall.pdf"]
)
def test_papers_of_that_kitchen(client, address):
    """The same papers in English keep their points."""
    spanish, english = (
        paper.words(client.get(f"{address}{'&' if '?' in address else '?'}lang={key}").content)
        for key in ("es", "en")
    )
    client.cookies.clear()
    assert MEASURE.findall(spanish) == [] and re.search(r"\d,\d", spanish)
    assert MEASURE.search(english) or address == "/records/pack.pdf"
