"""What crosses a module's border has names, types and units; payloads stay below the facts."""

from __future__ import annotations

import ast
import re

from tests.house.source import FILES, ROOT, functions

READS_PAYLOADS: set[str] = set()
"""What still takes an entry's payload apart: may only shrink. An entry shown or sent whole is not meant."""


def test_a_payload_is_taken_apart_only_in_the_facts_of_the_ledger():
    """A fact is what everything above the ledger reads and writes; templates too."""
    apart = re.compile(r"\bpayload(\)?\[|\.)")
    found = {
        str(path.relative_to(ROOT))
        for path in (*FILES, *ROOT.rglob("*.html"))
        if "ledger/facts" not in path.as_posix() and apart.search(path.read_text("utf-8"))
    }
    assert found == READS_PAYLOADS


LOOSE = re.compile(r"dict\[str, Any\]")

TYPED = (
    "rooms/cook/",
    "rooms/day/",
    "rooms/fleet/",
    "rooms/care/oil_money.py",
    "rooms/care/oil_moves.py",
    "rooms/care/training.py",
    "rooms/care/upkeep.py",
    "rooms/records/case_rows.py",
    "rooms/records/corrective.py",
    "rooms/records/pack.py",
    "rooms/records/pack_paper.py",
    "rooms/readings.py",
    "rooms/standing.py",
    "rooms/thermometers.py",
    "paper/",
    "trial/",
    "calibrate/",
    "design/",
    "verdicts/",
)


def test_no_room_hands_out_a_dict_of_anything():
    """What is asked and shown crosses a module's border as a frozen dataclass whose fields have names, types
    and units; here no function takes or gives a dict of anything.
    """
    found = [
        f"{path}:{node.name}"
        for path, node in functions()
        if str(path).startswith(TYPED)
        for part in (*(a.annotation for a in (*node.args.args, *node.args.kwonlyargs)), node.returns)
        if part is not None and LOOSE.search(ast.unparse(part))
    ]
    assert found == []


LOOSE_AT_THE_BORDER = {
    "catalog/load.py:table": "a TOML table of the catalog: its keys are the file's",
    "model/codec.py:load": "a TOML file as it was written",
    "model/codec.py:write": "what becomes a TOML file",
    "ledger/facts/fact.py:payload": "a payload, below the facts",
    "ledger/facts/people.py:as_shown": "a payload of any kind, for who may read all of it",
    "ledger/once.py:once": "a JSON body at the wire, kept to answer its repeat",
    "client/http.py:entries": "JSON at the wire",
    "client/http.py:write": "JSON at the wire",
    "client/http.py:send": "JSON at the wire",
    "web/saving.py:save_choices": "names that a template reads, joined to those of its page",
    "web/pages/kitchens.py:rows": "names that a template reads",
    "rooms/records/privacy.py:own_data": "lines of JSON for the person they are about",
}
"""What may cross a module's border without names and types, and why."""

LOOSE_INSIDE = {
    "names that a template reads": (
        "web/saving.py web/pages/day.py web/pages/now.py web/pages/desk.py web/pages/probes.py"
        " web/pages/live.py web/pages/setup.py web/pages/kitchens.py web/pages/probing.py"
        " web/pages/releases.py web/pages/records.py"
    ),
    "JSON at the wire or in a file": (
        "web/app.py web/watch.py web/company.py web/pages/sync.py web/pages/api.py ledger/once.py"
        " ledger/backup.py ledger/writer.py client/http.py client/replicate.py client/forward.py cli/day.py"
        " cli/records.py rooms/records/privacy.py"
    ),
    "a TOML table, its keys the file's": ("catalog/kitchen.py catalog/load.py model/codec.py rooms/demo.py"),
    "a payload, below the facts": "ledger/facts/fact.py ledger/facts/people.py",
    "fields of a fact, passed on to it by name": (
        "rooms/care/nameplate.py rooms/care/commissioning.py rooms/care/vat.py"
    ),
    "values of a message, by the names in its template": "model/errors.py",
    "options of a compiler, passed on to it by name": "physics/kernels.py",
    "a picture's specification, as its renderer reads it": "paper/chart.py",
}
"""Where a dict of anything still stands inside a module, and why it is none of ours to name."""


def test_a_dict_of_anything_has_a_reason():
    """No other module holds one, and every module of the list still does."""
    there = {f"{path.relative_to(ROOT)}" for path in FILES if LOOSE.search(path.read_text("utf-8"))}
    listed = [path for paths in LOOSE_INSIDE.values() for path in paths.split()]
    assert len(listed) == len(set(listed))
    assert there == set(listed)


def public(tree: ast.Module):
    """Functions of a module and methods of its classes that others may name."""
    for node in tree.body:
        for one in node.body if isinstance(node, ast.ClassDef) else [node]:
            if isinstance(one, ast.FunctionDef | ast.AsyncFunctionDef) and not one.name.startswith("_"):
                yield one


def test_nothing_loose_crosses_a_border():
    """A public function that another module names takes and gives no dict of anything, but for a short list
    with a reason each; the list holds nothing that is no longer so.
    """
    texts = {path.relative_to(ROOT): path.read_text("utf-8") for path in FILES}
    found = set()
    for path, text in texts.items():
        for node in public(ast.parse(text)):
            parts = (*(a.annotation for a in (*node.args.args, *node.args.kwonlyargs)), node.returns)
            loose = any(part is not None and LOOSE.search(ast.unparse(part)) for part in parts)
            named = re.compile(rf"\b{node.name}\b")
            if loose and any(named.search(other) for where, other in texts.items() if where != path):
                found.add(f"{path}:{node.name}")
    assert found == set(LOOSE_AT_THE_BORDER)


def test_a_helper_type_is_named_once():
    """A type that stands for a function or a pair has one name in one module; the others import it, and
    write it out nowhere.
    """
    written = re.compile(r"(?:Callable|Mapping|Sequence|dict|list|tuple)\[.+\]")
    homes: dict[str, list[str]] = {}
    for path in FILES:
        for node in ast.parse(path.read_text("utf-8")).body:
            text = ast.unparse(node.value) if isinstance(node, ast.Assign) else ""
            if written.fullmatch(text):
                homes.setdefault(text, []).append(f"{path.relative_to(ROOT)}")
    assert {text: where for text, where in homes.items() if len(where) > 1} == {}
    said = re.compile(r"\b(?:tr|translate): Callable\[\[str\], str\]")
    assert [str(path) for path in FILES if said.search(path.read_text("utf-8"))] == []
