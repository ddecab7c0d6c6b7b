"""Help and refusals of the terminal in a person's language: asked for, the kitchen's, else the machine's."""

from __future__ import annotations

import os
import re
from collections.abc import Iterator, Sequence
from inspect import cleandoc
from pathlib import Path
from typing import Any

import typer
import typer.core as printing

from frywright.model.tongues import Translate

UsageError: type[Exception] = typer.BadParameter.__bases__[0]
"""What a mistyped command raises before any of our code runs."""
REFUSED = (
    (re.compile(r"No such option: (?P<name>\S+?)\.?(?:\s.*)?$"), "There is no option {name}."),
    (re.compile(r"No such command '(?P<name>.*?)'\."), "There is no command {name}."),
    (re.compile(r"Missing (?:option|argument|parameter):? '?(?P<name>[^'.]+)"), "{name} is missing."),
    (re.compile(r"Option '(?P<name>.*?)' requires"), "{name} needs a value."),
    (re.compile(r"Invalid value for '?(?P<name>.*?)'?:"), "{name} cannot be read as it is typed."),
    (re.compile(r"Got unexpected extra argument.*? \((?P<name>.*)\)"), "{name} is not expected here."),
)
"""What the parser says, in its words, and how we say it."""
BARE = "A bare number is in the kitchen's unit."
"""What ends the help of an option whose number may come without a unit."""
USAGE = ("Usage:", "[OPTIONS]", "COMMAND [ARGS]...")
"""What the parser writes in the line that says how a command is typed, besides its own names."""
SEE = "See: {command} --help"
HEADS = ("Arguments", "Options", "Commands", "default: {default}", "env var: {var}", "required")
"""Words around a command's help, as the library that prints them has them."""
OWN = (*USAGE, "Show this message and exit.", SEE, BARE, *HEADS, *(text for _, text in REFUSED))
"""Every text of the terminal that stands in no command."""


def language_of(words: Sequence[str]) -> str:
    """Language of whoever types: asked for, that of the kitchen named or of the usual store, else that of the
    environment; English where none of them is known.
    """
    from frywright.cli.shop import USUAL, Shop
    from frywright.model.tongues import SOURCE, tongues

    asked = [_value(words, "--language")]
    named = [_value(words, "--store"), *(word for word in words if word.endswith((".toml", ".db"))), USUAL]
    for where in named:
        if where and Path(where).is_file():
            shop = Shop(store=where)
            with shop.held:
                asked.append(shop.site.language if shop.site else "")
            break
    asked += [os.environ.get(name, "")[:2] for name in ("LC_ALL", "LC_MESSAGES", "LANG")]
    return next((language for language in asked if language in tongues()), SOURCE)


def _value(words: Sequence[str], option: str) -> str:
    """What was typed for an option; empty where nothing was."""
    for word, after in zip(words, [*words[1:], ""], strict=False):
        name, given, value = word.partition("=")
        if name == option:
            return value if given else after
    return ""


def asks_help(command: Any, words: Sequence[str]) -> bool:
    """Whether what is typed only asks what can be done."""
    if "--help" in words:
        return True
    for word in words:
        command = getattr(command, "commands", {}).get(word)
        if command is None:
            return False
    return hasattr(command, "commands")


def help_texts(command: Any) -> Iterator[str]:
    """Every text of a command and of those below it that a person reads, on one line each; the sentence that
    many options end with is not among them.
    """
    if command.help:
        yield one_line(command.help)
    for param in command.params:
        if getattr(param, "help", None):
            yield one_line(param.help).removesuffix(BARE).strip()
    for below in getattr(command, "commands", {}).values():
        yield from help_texts(below)


def one_line(text: str) -> str:
    """A text of the code as it stands in the catalogues."""
    return " ".join(cleandoc(text).split())


def speak(command: Any, translate: Translate) -> None:
    """Put every help text of a command and of those below it into a language."""
    said = {text: translate(text) for text in HEADS}
    vars(printing)["_"] = lambda text: said.get(text, text)
    _speak(command, translate)


def _speak(command: Any, translate: Translate) -> None:
    help_option = command.get_help_option

    def spoken_usage(ctx: Any, formatter: Any) -> None:
        pieces = [translate(p) if p in USAGE else p for p in command.collect_usage_pieces(ctx)]
        formatter.write_usage(ctx.command_path, " ".join(pieces), prefix=f"{translate(USAGE[0])} ")

    def spoken_option(ctx: Any) -> Any:
        option = help_option(ctx)
        if option is not None:
            option.help = translate("Show this message and exit.")
        return option

    command.format_usage, command.get_help_option = spoken_usage, spoken_option
    for item in (command, *command.params):
        if getattr(item, "help", None):
            text = one_line(item.help)
            said = [text.removesuffix(BARE).strip(), *([BARE] if text.endswith(BARE) else [])]
            item.help = " ".join(translate(part) for part in said)
    command.short_help = command.help  # whole in a list of commands, not cut off at the edge
    for below in getattr(command, "commands", {}).values():
        _speak(below, translate)


def refusal(error: Any, translate: Translate) -> str:
    """What is wrong with what was typed, and where the help is."""
    said = error.format_message()
    for pattern, text in REFUSED:
        if found := pattern.match(said):
            said = translate(text).format(**found.groupdict())
            break
    path = error.ctx.command_path if error.ctx else "frywright"
    return f"{said}\n{translate(SEE).format(command=path)}"
