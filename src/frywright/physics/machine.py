"""LLVM's text made into code of this processor, and kept.

LLVM comes with llvmlite. The text is for no processor in particular (``scripts/lanes.py``,
``scripts/kernels.py``); what it became on this machine is kept in the cache folder.
"""

from __future__ import annotations

import hashlib
import os
from contextlib import suppress
from typing import Any

from frywright.physics.folder import cache_folder


def loaded(name: str, text: str) -> Any:
    """Code of a text, ready to be called by address; it must not be let go while it may be called."""
    import llvmlite.binding as llvm

    llvm.initialize_native_target()
    llvm.initialize_native_asmprinter()
    target = llvm.Target.from_default_triple().create_target_machine(
        cpu=llvm.get_host_cpu_name(), features=llvm.get_host_cpu_features().flatten(), opt=3, jit=True
    )
    code = llvm.create_mcjit_compiler(llvm.parse_assembly(""), target)
    code.add_object_file(llvm.ObjectFileRef.from_data(_machine_code(name, text, target)))
    code.finalize_object()
    return code


def _machine_code(name: str, text: str, target: Any) -> bytes:
    """Code of this processor, from the cache folder where it was made before."""
    import llvmlite
    import llvmlite.binding as llvm

    told = (
        f"{llvmlite.__version__} {llvm.get_host_cpu_name()} {llvm.get_host_cpu_features().flatten()} {text}"
    )
    kept = cache_folder() / f"{name}-{hashlib.sha256(told.encode()).hexdigest()[:16]}.o"
    with suppress(OSError):
        return kept.read_bytes()
    module = llvm.parse_assembly(text)
    module.triple, module.data_layout = target.triple, str(target.target_data)
    made = bytes(target.emit_object(module))
    with suppress(OSError):  # a machine that keeps nothing compiles again
        kept.parent.mkdir(parents=True, exist_ok=True)
        begun = kept.with_suffix(f".{os.getpid()}")
        begun.write_bytes(made)
        begun.replace(kept)
    return made
