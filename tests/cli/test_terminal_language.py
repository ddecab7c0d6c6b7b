"""What the terminal prints in a language made by machine: no English word is left, whatever is asked."""

from __future__ import annotations

import re
import shlex
from contextlib import closing

import pytest
from typer.main import get_command
from typer.testing import CliRunner

from frywright.cli.main import app
from frywright.rooms.day import day
from frywright.rooms.kitchen import remembered_kitchen
from frywright.trial.kitchens import demo_log, demo_text
from tests.demo import sold_store
from tests.pseudo import KEY, english, own_words

pytestmark = pytest.mark.slow
LINES = """\
care calendar
care card lid_seal --out card.pdf
care card boil_out --out dose.pdf --water 8gal --rate 1oz/gal
care card nothing --out x.pdf
care card-edit lid_seal Wipe. --who Ana
care card-sign lid_seal alder --who Ana --second Kim
care close
care close alder heat_off --who Ana
care done alder lid_seal --who Ana
care done alder nothing --who Ana
care drill
care drill zz
care drill bone-in_alder-v3-gauge --choice 1 --who Ana
care due
care due --soon
care emergency --out e.pdf
care energy 13 80lb 40lb
care energy x 80lb 40lb
care figure alder heat_up 12:30 --who Ana
care handover alder --out h.pdf
care measured alder vent=0:24
care people
care person Kim --born 1999-04-02
care plate alder volts=208
care plate alder
care power
care stop alder gas_smell --who Ana
care stop alder zz
care reopen alder --who Kim --role licensed --finding replaced-and-tried
care sign alder survey who=Ana
care site
care site --fuel gas --input 70000Btu/h --gas natural --measured-volts 208 --volts 240
care skill Kim lid --seen-by Ana
care skill Kim lid --seen-by Kim
care wall --out w.pdf
cook card s.db --program "wedges cedar" --out c.pdf
cook simulate s.db --program "bone-in alder"
cook simulate s.db --program "wedges cedar"
cook simulate s.db --program "bone-in alder" --heads 40
cook simulate s.db --program "bone-in alder" --chart x.png
cook simulate s.db --program "bone-in alder" --chart x.svg
cook prove s.db --program "wedges cedar" --samples 64
cook readback s.db --program "wedges cedar" --value 330 --value 4:00 --value 310 --value 8:00
cook design s.db --product wedges --fryer cedar --stages 1
cook transfer s.db --program "wedges cedar" --fryer dogwood --stages 1
cook live --source serial --seconds 1
day sales
day items
day items "Honey sauce, cup" - --who Ana
day forecast --date 2026-11-27
day forecast --date zz
day pull --date 2026-11-27
day pull --stock bone_in=20
day plan --date 2026-11-27
day plan --date 2026-11-27 --check none.csv
day replay --date 2026-11-27 --days 5
day tune --date 2026-11-27 --tries 1
day board --date 2026-11-27 --practice 3 --play
day board --date 2026-11-27 --practice 3 --at 17:00
day board --date 2026-11-27 --at 12:00 --tell drop --fryer alder --product bone_in --pieces 16
day board --date 2026-11-27 --practice 4 --at 12:00 --tell drop --fryer alder --product bone_in --pieces 16
day board --date 2026-11-27 --practice 4 --at 12:05 --tell lift --fryer alder
day board --date 2026-11-27 --practice 4 --at 12:30 --down birch
day watch . --once
oil cost 500lb
oil cost
oil fill alder
oil limit
oil limit --house 24 --who Ana --reason colour
oil log alder fill 42lb --who Ana
oil log alder polar 14.5 --who Ana
oil log alder zz
oil meter 8 9 24 23.5 --meter M1 --who Ana
oil moves
oil order 7
oil order 900
oil outlook
oil outlook alder
oil sites s.db
people list
people owner Olive --password oak-leaf-river-stone --pin 2468
people owner Bo --password oak-leaf-river-stone
people rescue Olive --password another-long-one --reason forgotten
people rescue Nobody --password another-long-one --reason forgotten
people link Olive --reason company --subject s-1 --issuer https://id.example/
people list
people remove Kim --reason left
probe check s.db --thermometer T1 --ice 32 --boil 203
probe check s.db --thermometer T1 --ice 45 --boil 203
probe read s.db log.csv --answer program="bone-in alder"
probe read s.db none.csv
probe calibrate s.db log.csv --program "bone-in alder"
probe hold s.db none.csv
probe sample s.db 175 --program "bone-in alder"
probe sample s.db 175 --program "wedges cedar" --checked
probe heat-up s.db log.csv 2026-11-02 --fryer alder
records probe alder bone_in 150F --thermometer T1 --pieces 16 --who Ana
records case
records case 1
records trace bone_in 2026-11-01
records pack 2026-11-01 2026-11-30 --out p.pdf
records pack 2026-11-30 2026-11-01 --out p.pdf
records verify s.db
records verify s.db --expect 3:abcd
records backup b.zip
records restore b.zip
records import none.jsonl
records anchor --out a.txt
records drop 3
records drop-entries
records drop-entries loads 2
records drop-entries zz 2
fleet anchors
fleet compare s.db s.db
fleet follow
fleet versions s.db s.db
fleet release "bone-in alder" east west --who Ana
fleet releases
fleet wave 1 s.db --who Ana
fleet halt 1 --who Ana --reason cold
fleet rollback 1 --out r
fleet readbacks none.csv
fleet sweep k.toml --samples 32
fleet sync http://127.0.0.1:9 --token-file none.txt
kitchen check k.toml
"""
"""Lines as people type them, right and wrong; the test adds store and language."""
NOT_READ = {
    "serve": "prints an address and serves; its pages are read elsewhere",
    "prepare": "says how long it took, in English: no kitchen is there yet",
    "kitchen demo": "prints the invented kitchen's file",
    "records export": "entries as they were kept, for programs",
}
PEOPLE = {"olive"}
KEYS = {
    "care close": r"^\s*\[.\] \w+ \w+:",
    "care drill": r"^[\w-]+: ",
    "records drop-entries": r"^\w+ +(?=\S)",
    "cook live": r"\b(?:mqtts?://host/topic|serial:/dev/name\S*|file:path)",
    "care site": r"'electric'",
}
"""Keys that are typed as they stand, by the command that lists them."""


@pytest.fixture(scope="module")
def own(made_language, tmp_path_factory):
    """The demo with eight weeks of sales in this folder, its rule not tuned: the words of its own names."""
    folder = tmp_path_factory.mktemp("terminal")
    with pytest.MonkeyPatch.context() as patch, closing(sold_store(folder / "s.db")) as store:
        patch.chdir(folder)
        patch.setattr(day, "_tuned_bench", lambda bench, kitchen: bench)
        (folder / "k.toml").write_text(demo_text(), "utf-8")
        (folder / "log.csv").write_bytes(demo_log())
        yield own_words(remembered_kitchen(store))


def test_every_command_is_read_here_or_says_why_not():
    """A new command joins the lines."""

    def named(command, path=()):
        inner = getattr(command, "commands", None)
        return (
            {" ".join(path)} if inner is None else {n for k, c in inner.items() for n in named(c, (*path, k))}
        )

    read = {" ".join(shlex.split(line)[:2]) for line in LINES.splitlines()}
    assert named(get_command(app)) == read | set(NOT_READ)


@pytest.mark.parametrize("line", LINES.splitlines())
def test_no_english_word_is_printed(own, line):
    """Nor is any line answered by a fault of ours."""
    typed = shlex.split(line)
    more = [] if {"s.db", "k.toml"} & set(typed[2:3]) else ["--store", "s.db"]
    got = CliRunner().invoke(app, [*typed, *more, "--language", KEY])
    assert got.exception is None or isinstance(got.exception, SystemExit), line
    keys = KEYS.get(" ".join(typed[:2]), r"(?!)")
    texts = [re.sub(keys, " ", text) for text in got.output.splitlines()]
    values = " ".join(w for w in typed[2:] if not w.startswith("--")).lower()
    assert english(texts, own | PEOPLE | set(re.findall("[a-z]+", values))) == {}
