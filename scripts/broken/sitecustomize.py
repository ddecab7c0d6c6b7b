"""Put first on the path, it hands out other code for the modules that stand in FRYWRIGHT_BROKEN.

Everything else of the program is imported from where it is: no copy, and compiled kernels stay compiled.
A test that starts the program as a process of its own starts the broken one.
"""

import json
import marshal
import os
import sys
from importlib.abc import MetaPathFinder
from importlib.machinery import SourceFileLoader
from importlib.util import spec_from_file_location
from pathlib import Path


class _Loader(SourceFileLoader):
    def get_code(self, fullname):
        return marshal.loads(Path(CODE[fullname]["code"]).read_bytes())


class _Finder(MetaPathFinder):
    def find_spec(self, fullname, path=None, target=None):
        if fullname not in CODE:
            return None
        source = CODE[fullname]["source"]
        inside = [str(Path(source).parent)] if source.endswith("__init__.py") else None
        return spec_from_file_location(
            fullname, source, loader=_Loader(fullname, source), submodule_search_locations=inside
        )


CODE = json.loads(Path(os.environ["FRYWRIGHT_BROKEN"]).read_text("utf-8"))
"""For each module its own file (``source``) and the file with the compiled code to run (``code``)."""
sys.meta_path.insert(0, _Finder())
