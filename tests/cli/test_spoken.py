"""Help and refusals of the terminal in a person's language."""

from __future__ import annotations

import sys

import pytest

from frywright.cli.main import run
from frywright.cli.spoken import language_of
from frywright.trial.kitchens import demo_text


@pytest.fixture(autouse=True)
def nowhere(tmp_path, monkeypatch):
    """A folder without a store, on a machine that speaks English."""
    monkeypatch.chdir(tmp_path)
    for name in ("LC_ALL", "LC_MESSAGES", "LANG"):
        monkeypatch.delenv(name, raising=False)


@pytest.fixture
def typed(monkeypatch, capsys):
    """What a line typed prints, with its code."""

    def ran(line: str) -> tuple[int, str]:
        monkeypatch.setattr(sys, "argv", ["frywright", *line.split()])
        with pytest.raises(SystemExit) as left:
            run()
        told = capsys.readouterr()
        return left.value.code or 0, " ".join((told.out + told.err).split())

    return ran


def spanish_kitchen(folder):
    path = folder / "cocina.toml"
    path.write_text(demo_text().replace('language = "en"', 'language = "es"'), "utf-8")
    return path.name


@pytest.mark.parametrize(
    ("line", "says"),
    [
        ("--help", "Workbench for the fryers"),
        ("cook", "Simulate a program on a load"),
        ("cook prove --help", "[required] --heads"),
    ],
)
def test_help_is_english_where_nobody_asks_for_more(typed, line, says):
    """No kitchen, no environment: the language of the sources; a group alone asks what it holds."""
    code, told = typed(line)
    assert says in told
    assert code in (0, 2)
    assert "Usage: frywright" in told


def test_help_speaks_the_language_of_the_kitchen_and_of_the_machine(typed, tmp_path, monkeypatch):
    """Named kitchen first, else the environment; titles, options and their defaults too."""
    kitchen = spanish_kitchen(tmp_path)
    _, told = typed(f"cook prove {kitchen} --help")
    for text in (
        "Uso: frywright cook prove [OPCIONES]",
        "Demostrar un programa en los peores casos de una tienda",
        "Opciones",
        "Argumentos",
        "Cargas simuladas. [si falta: 1024]",
        "[hace falta]",
        "Mostrar esta ayuda y salir.",
    ):
        assert text in told
    assert "[OPTIONS]" not in told
    monkeypatch.setenv("LANG", "es_MX.UTF-8")
    whole = typed("--help")[1]
    assert "Uso: frywright [OPCIONES] ORDEN [ARGUMENTOS]..." in whole
    assert "Programas de cocción: simular y juzgar." in whole


@pytest.mark.parametrize(
    ("line", "says"),
    [
        ("cook prove {kitchen}", "Falta --program."),
        ("cook prove {kitchen} --progam x", "No existe la opción --progam."),
        ("cooc --language es", "No existe la orden cooc."),
        ("cook prove {kitchen} --program x --samples many", "--samples no se puede leer como está escrito."),
        ("care stop alder gas_smell more --language=es", "more no se espera aquí."),
        ("care stop alder gas_smell --language es --who", "--who necesita un valor."),
    ],
)
def test_what_is_mistyped_is_said_in_the_language_with_the_way_on(typed, tmp_path, line, says):
    """The parser's own refusals: what is wrong, and where the help is; code 2."""
    code, told = typed(line.format(kitchen=spanish_kitchen(tmp_path)))
    assert code == 2
    assert told.startswith(says)
    assert "Vea: frywright" in told


def test_what_is_asked_for_comes_before_the_kitchen_and_that_before_the_machine(tmp_path, monkeypatch):
    """A language nobody knows asks for nothing; a kitchen that cannot be read says nothing."""
    kitchen = spanish_kitchen(tmp_path)
    assert language_of(["cook", "check", kitchen]) == "es"
    assert language_of(["cook", "check", kitchen, "--language", "en"]) == "en"
    assert language_of(["cook", "check", kitchen, "--language=xx"]) == "es"
    (tmp_path / "torn.toml").write_text("[", "utf-8")
    assert language_of(["cook", "check", "torn.toml"]) == "en"
    monkeypatch.setenv("LC_ALL", "es_ES")
    assert language_of(["cook", "check", "torn.toml"]) == "es"
