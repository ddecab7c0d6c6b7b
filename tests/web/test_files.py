"""What a first view weighs, and what a browser keeps."""

from __future__ import annotations

import re
from urllib.parse import urljoin

import pytest
from fastapi.testclient import TestClient

from frywright.web import files
from frywright.web.app import HERE, LEAST_PACKED_BYTES, make_app
from frywright.web.files import FOR_GOOD, mark_of
from tests.demo import kitchen_store

FIRST_VIEW_BYTES = 120_000


@pytest.fixture(scope="module")
def client(tmp_path_factory):
    store = kitchen_store(tmp_path_factory.mktemp("f") / "f.db")
    headers = {"accept": "text/html", "accept-encoding": "gzip"}
    return TestClient(make_app(store), base_url="http://127.0.0.1", headers=headers)


def sent(client, path):
    """Bytes of an answer as they go over the line."""
    with client.stream("GET", path) as answer:
        assert answer.status_code == 200, path
        return sum(len(part) for part in answer.iter_raw())


@pytest.mark.parametrize("page", ["/", "/cook"])
def test_a_first_view_is_light(client, page):
    """The page, its styles, programs and both fonts, all compressed as a browser asks."""
    html = client.get(page).text
    loaded = re.findall(r'(?:href|src)="(/static/[^"]+)"', html)
    assert any(path.endswith(".css") for path in loaded)
    style = next(path for path in loaded if path.endswith(".css"))
    fonts = [urljoin(style, name) for name in re.findall(r'url\("([^"]+)"\)', client.get(style).text)]
    assert len(fonts) == 2 and all(client.get(font).headers["cache-control"] == FOR_GOOD for font in fonts)
    programs = sorted({urljoin(path, name) for path in loaded for name in imported(client, path)})
    assert sum(sent(client, path) for path in {page, *loaded, *fonts, *programs}) <= FIRST_VIEW_BYTES


def imported(client, path):
    """Programs that a program of ours loads."""
    return re.findall(r'from "(\./[^"]+)"', client.get(path).text) if path.endswith(".js") else []


def test_files_are_packed_once_and_only_for_who_asks(client, monkeypatch):
    """The packed file is the same file, by the same mark; a part of one is never packed."""
    made = []
    compress = files.gzip.compress
    monkeypatch.setattr(files.gzip, "compress", lambda *args, **kw: made.append(1) or compress(*args, **kw))
    path = f"/static/{mark_of(HERE / 'static')}/board.js"
    packed = [client.get(path) for _ in range(3)]
    plain = client.get(path, headers={"accept-encoding": "identity"})
    assert len(made) == 1
    assert all(one.headers["content-encoding"] == "gzip" for one in packed)
    assert all(
        one.content == plain.content and one.headers["etag"] == plain.headers["etag"] for one in packed
    )
    assert "content-encoding" not in plain.headers
    again = client.get(path, headers={"if-none-match": plain.headers["etag"]})
    assert again.status_code == 304 and not again.content
    part = client.get(path, headers={"range": "bytes=0-99"})
    assert part.status_code == 206 and "content-encoding" not in part.headers


def test_files_under_their_mark_are_kept_for_good_and_others_asked_again(client):
    """Every address a page names carries the mark; a mark of yesterday is not found; headers stay strict."""
    mark = mark_of(HERE / "static")
    for path in re.findall(r'(?:href|src)="(/static/[^"]+)"', client.get("/cook").text):
        assert path.startswith(f"/static/{mark}/")
        answer = client.get(path)
        assert answer.headers["cache-control"] == FOR_GOOD
        assert answer.headers["x-content-type-options"] == "nosniff"
    assert client.get("/static/cook.js").headers["cache-control"] == "no-cache"
    assert client.get("/static/000000000000/cook.js").status_code == 404
    assert client.get(f"/static/{mark}/../app.py").status_code == 404


def test_a_changed_file_has_another_mark(tmp_path):
    """Content or name."""
    (tmp_path / "a.js").write_text("one")
    first = mark_of(tmp_path)
    assert mark_of(tmp_path) == first
    (tmp_path / "a.js").write_text("two")
    second = mark_of(tmp_path)
    (tmp_path / "a.js").rename(tmp_path / "b.js")
    assert len({first, second, mark_of(tmp_path)}) == 3


def test_small_answers_and_browsers_that_do_not_ask_get_them_plain(client):
    """Nothing is compressed for whoever did not ask, nor what is too small to win by it."""
    assert "content-encoding" not in client.get("/cook", headers={"accept-encoding": "identity"}).headers
    small = client.get("/static/worker.js", headers={"accept-encoding": "gzip", "range": "bytes=0-99"})
    assert len(small.content) < LEAST_PACKED_BYTES
    assert "content-encoding" not in small.headers
