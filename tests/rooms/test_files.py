"""What people hand in has bounds: for each person and day, and for each kitchen; errors say what to do."""

from __future__ import annotations

import io

import pytest
from PIL import Image

from frywright.ledger.attachments import attachments_of
from frywright.ledger.quota import held
from frywright.ledger.store import Store
from frywright.model.errors import InputError
from frywright.rooms import files
from frywright.rooms.clock import Hall, acting, now
from frywright.rooms.photos import keep_photo


@pytest.fixture
def store(tmp_path):
    return Store.file(tmp_path / "f.db", now)


@pytest.fixture
def kim():
    with acting(Hall(author="Kim Vale")):
        yield


def hand_in(store, n, size=1000, **how):
    """A file of its own content."""
    return files.keep_file(store, io.BytesIO(f"{n:06}".encode() + bytes(size - 6)), "photo", **how)


def test_a_person_hands_in_so_many_files_a_day(store, kim, monkeypatch):
    """The next is refused and not kept; another person, and a site that sends its record, go on."""
    monkeypatch.setattr(files, "MOST_FILES_A_DAY", 3)
    for n in range(3):
        hand_in(store, n)
    with pytest.raises(InputError, match="3 files today; it must be 3 a day by one person") as told:
        hand_in(store, 4)
    assert told.value.field == "photo"
    assert len(list(attachments_of(store).folder.iterdir())) == 3
    hand_in(store, 0)  # it is here already and takes no room
    hand_in(store, 5, by_person=False)
    with acting(Hall(author="Lee Ford")):
        hand_in(store, 6)
    assert held(store).kitchen_bytes == 5000


def test_a_person_hands_in_so_many_bytes_a_day(store, kim, monkeypatch):
    """Also in few files."""
    monkeypatch.setattr(files, "MOST_BYTES_A_DAY", 5_000_000)
    hand_in(store, 1, 3_000_000)
    with pytest.raises(InputError, match="3 MB today; it must be 5 MB a day by one person"):
        hand_in(store, 2, 2_000_001)
    hand_in(store, 3, 2_000_000)


def test_a_kitchen_has_its_room_and_its_neighbour_another(store, kim, monkeypatch):
    """Whoever hands it in; whoever runs the server may give it more."""
    monkeypatch.setenv(files.KITCHEN_SETTING, "0.000003")
    hand_in(store, 1, 2500)
    for by_person in (True, False):
        with pytest.raises(InputError, match=r"GB are used; it must be kept once whoever runs this server"):
            hand_in(store, 2, 1000, by_person=by_person)
    hand_in(store.at("east"), 3, 2500)
    room = files.room_of(store)
    assert (room.held_bytes, room.most_bytes, room.words["held"]) == (2500, 3000, "0.00")
    monkeypatch.setenv(files.KITCHEN_SETTING, "0.000004")
    hand_in(store, 2, 1000)


def test_an_act_that_fails_counts_nothing(store, kim):
    """The count stands or falls with the block it is written in."""
    with pytest.raises(ZeroDivisionError), store.writing():
        hand_in(store, 1)
        raise ZeroDivisionError
    assert held(store, "Kim Vale", now().date().isoformat()).day_count == 0


def test_photos_are_counted(store, kim):
    """By the one door that all photos take."""
    picture = io.BytesIO()
    Image.new("RGB", (8, 8)).save(picture, "PNG")
    picture.seek(0)
    keep_photo(store, picture)
    assert held(store, "Kim Vale", now().date().isoformat()).day_count == 1
