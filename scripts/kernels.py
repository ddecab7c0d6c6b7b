"""Makes the portable code of kernels written in Python: ``engine.ll`` beside ``plan/engine.py``, and so on.

    python scripts/kernels.py            write the files
    python scripts/kernels.py --check    say whether they are what the sources make

Needs Numba (an extra of developers). A machine that only runs the program does not: LLVM, which comes with
llvmlite, makes code of the text there. Numba is asked for code of no processor in particular and for no
vectors; attributes are left out, so that LLVM chooses where it runs.
"""

from __future__ import annotations

import json
import os
import re
import subprocess
import sys
import tempfile
from importlib import import_module
from pathlib import Path
from typing import Any

HOME = Path(__file__).parent.parent / "src/frywright"
CALLED = {
    "plan/engine": (
        "fresh",
        "imagine",
        "rollout",
        "play",
        "play_rule",
        "believe",
        "start",
        "needs",
        "may_filter",
        "may_drop",
        "rule_action",
    ),
    "plan/stock": ("_serve",),
    "oil/filter_kernel": ("bent", "run", "futures"),
    "calibrate/track": ("_track",),
}
"""Modules with kernels, and those of their kernels that are called from outside of a kernel."""
GROUND = HOME / "physics/ground.ll"
"""What kernels stand on, made by ``scripts/lanes.py``."""
LEFT_OUT = r"(?m)^(target |source_filename|; ModuleID|!llvm\.|![\w.]+ = |declare void @llvm\.dbg).*\n"
ALSO_CALLED = ("NRT_decref", "chance_of_threads", "chance_bytes")


def exercise() -> None:
    """Call every kernel once as the program does, so that Numba sees what it is called with."""
    import numpy as np

    from frywright.calibrate.track import story_of
    from frywright.oil import filter_kernel, outlook
    from frywright.plan.stock import first_out
    from frywright.trial.warm import warm_up

    warm_up()
    first_out([1, 2], [[1, 1]], 1)
    one = np.ones((1, 1))
    vats = outlook.Vats(
        heat_n=one, share_frac=0 * one, discard=one > 2, reading=one, noise=one, fresh=np.ones(1)
    )
    outlook.crossing(outlook.learn(vats)[0], 24.0, 0.1)
    filter_kernel.bent(1.0, 2.0, 0.5)
    story_of(np.linspace(170.0, 171.0, 20), 1.0, 0.1, 0.05, np.full(20, 0.01), 171.0)


def spec_of(kind: Any) -> Any:
    """A type of Numba's in the words of ``physics/kernels.py``."""
    from numba import types
    from numba.np.numpy_support import as_dtype

    if isinstance(kind, types.BaseTuple):
        return {"of": [spec_of(part) for part in kind]}
    if isinstance(kind, types.Array):
        if kind.layout != "C":
            raise TypeError(f"{kind}: arrays come in C order")
        return [as_dtype(kind.dtype).str, kind.ndim]
    words = {types.int64: "q", types.float64: "d", types.boolean: "b", types.none: "0"}
    return words[types.unliteral(kind)]


def plain_overload(dispatcher: Any) -> tuple[Any, Any]:
    """The one way in which a kernel is called from outside, and what Numba made of it."""
    from numba import types

    found = [
        (k, o) for k, o in dispatcher.overloads.items() if not any(isinstance(t, types.Literal) for t in k)
    ]
    if len(found) != 1:
        raise TypeError(f"{dispatcher.__name__} is called in {len(found)} ways, one is asked for")
    return found[0]


def entry(name: str, native: Any) -> str:
    """A function that takes the address of a kernel's numbers, 8 bytes each, and that of its answer."""
    lines, words = (
        [f"define i32 @call_{name}(ptr %given, ptr %answer) {{", "%failed = alloca ptr, align 8"],
        [],
    )
    for n, argument in enumerate(list(native.arguments)[2:]):
        kind = str(argument.type)
        lines.append(f"%at{n} = getelementptr i64, ptr %given, i64 {n}")
        wide = "i64" if kind in ("i1", "i8") else kind
        lines.append(f"%in{n} = load {wide}, ptr %at{n}, align 8")
        if wide != kind:
            lines.append(f"%cut{n} = trunc i64 %in{n} to {kind}")
        words.append(f"{kind} %{'cut' if wide != kind else 'in'}{n}")
    lines.append(f"%status = call i32 @{native.name}(ptr %answer, ptr %failed, {', '.join(words)})")
    return "\n".join([*lines, "ret i32 %status", "}"])


NO_ERRORS = (
    (r"({ ptr, i32, ptr, ptr, i32 } { ptr @[^,]+, i32) \d+", r"\1 1"),
    (r"(%([\w.]+) = getelementptr [^\n]*, i64 8\n\s+store i32 )\d+(, ptr %\2, align 8)", r"\g<1>0\3"),
)
"""What else is said of an error: how long its words are, and its line, which Numba counts now so, now so."""


def plain(text: str) -> str:
    """A text without what it says of the machine it was made on."""
    text = re.sub(r"(?m)^; .*\n| +; preds = .*$", "", text)
    text = re.sub(LEFT_OUT, "", re.sub(r", ![\w.]+ !\d+", "", text))
    text = re.sub(r'constant \[\d+ x i8\] c"[^"]*"', "constant [1 x i8] zeroinitializer", text)
    for found, instead in NO_ERRORS:
        text = re.sub(found, instead, text)
    return re.sub(r"(?m)^(attributes #\d+) = .*$", r"\1 = { nounwind }", text)


def renamed(text: str) -> str:
    """A text with short names for what nobody calls by name; Numba's own differ from run to run."""
    made: dict[str, str] = {}

    def short(found: re.Match[str]) -> str:
        return "@" + made.setdefault(found[1], f"n{len(made)}")

    text = re.sub(r'@("[^"]+"|_Z[\w.$-]+|\.[\w.$-]+|__excinfo[\w.$-]+)', short, text)
    places: dict[str, str] = {}
    return re.sub(r"_ZN[\w$]+", lambda found: places.setdefault(found[0], f"in{len(places)}."), text)


def made(module: str, base: str) -> str:
    """The text of a module."""
    import llvmlite.binding as llvm

    from frywright.physics import kernels

    source = import_module("frywright." + module.replace("/", "."))
    signatures, whole, entries = {}, llvm.parse_assembly(base), []
    for name in CALLED[module]:
        kinds, overload = plain_overload(getattr(source, name))
        gives = overload.signature.return_type
        signatures[name] = [[spec_of(kind) for kind in kinds], spec_of(gives)]
        part = llvm.parse_assembly(overload.library.get_llvm_str())
        native = part.get_function(overload.fndesc.llvm_func_name)
        entries.append(entry(name, native))
        head = "declare i32 @{}({})".format(
            native.name, ", ".join(str(argument.type) for argument in native.arguments)
        )
        whole.link_in(part)
        whole.link_in(llvm.parse_assembly(f"{head}\n{entries[-1]}"))
    stay = {*ALSO_CALLED, *(f"call_{name}" for name in CALLED[module])}
    for value in (*whole.functions, *whole.global_variables):
        if not value.is_declaration and value.name not in stay:
            value.linkage = "internal"
    swept(whole)
    told = renamed(plain(str(whole)))
    head = kernels.HEAD + kernels.source_hash(HOME / f"{module}.py")
    return (
        f"{head}\n{kernels.SIGNATURES}{json.dumps(signatures)}\n"
        + re.sub(r"\n{3,}", "\n\n", told).strip()
        + "\n"
    )


def swept(whole: Any) -> None:
    """Leave out what nobody calls."""
    import llvmlite.binding as llvm

    machine = llvm.Target.from_default_triple().create_target_machine(opt=2)
    builder = llvm.create_pass_builder(machine, llvm.create_pipeline_tuning_options(speed_level=2))
    passes = llvm.create_new_module_pass_manager()
    passes.add_global_dead_code_eliminate_pass()
    passes.run(whole, builder)


def main() -> int:
    """Write the files, or compare them, with hashes of words that are the same in every run."""
    if os.environ.get("PYTHONHASHSEED") != "0":
        return subprocess.run(
            [sys.executable, *sys.argv], env={**os.environ, "PYTHONHASHSEED": "0"}
        ).returncode
    with tempfile.TemporaryDirectory() as folder:
        plainly = {"CPU_NAME": "generic", "CPU_FEATURES": "", "LOOP_VECTORIZE": "0", "SLP_VECTORIZE": "0"}
        os.environ.update({f"NUMBA_{name}": value for name, value in plainly.items()}, FRYWRIGHT_CACHE=folder)
        from frywright.physics import kernels

        kernels.making = True
        import llvmlite.binding as llvm

        llvm.initialize_native_target()
        llvm.initialize_native_asmprinter()
        exercise()
        base, stale = GROUND.read_text("utf-8"), []
        for module in CALLED:
            path, text = HOME / f"{module}.ll", made(module, base)
            if "--check" not in sys.argv[1:]:
                path.write_text(text, "utf-8")
            elif path.read_text("utf-8") != text:
                stale.append(path.name)
    if stale:
        print(f"{', '.join(stale)}: older than the sources; run python scripts/kernels.py")
    return len(stale)


if __name__ == "__main__":
    raise SystemExit(main())
