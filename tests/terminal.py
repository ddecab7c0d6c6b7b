"""Commands as people type them, run here: a process of its own for each would read the program anew."""

from __future__ import annotations

import sys
from contextlib import redirect_stderr, redirect_stdout
from io import BytesIO, TextIOWrapper
from subprocess import CompletedProcess

import pytest

from frywright.cli.main import run


def frywright(*words: str) -> CompletedProcess[str]:
    """What a command answers and says, with its code. What it leaves behind as it ends is a matter for a real
    process: ``tests/cli/test_start.py``, ``test_light_start.py`` and the first tests of ``test_commands.py``.
    """
    out, err = (TextIOWrapper(BytesIO(), "utf-8", write_through=True) for _ in range(2))
    with pytest.MonkeyPatch.context() as patch, redirect_stdout(out), redirect_stderr(err):
        patch.setattr(sys, "argv", ["frywright", *words])
        with pytest.raises(SystemExit) as left:
            run()
    told, refused = (stream.buffer.getvalue().decode("utf-8") for stream in (out, err))
    return CompletedProcess(list(words), left.value.code or 0, told, refused)
