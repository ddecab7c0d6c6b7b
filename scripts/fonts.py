"""Make the pages' typeface from the packaged one: the same letters, packed as WOFF2 (W3C), without the hints
that only old screens use. For developers; needs fonttools and brotli.

python scripts/fonts.py
"""

from __future__ import annotations

import shutil
from pathlib import Path

from fontTools.subset import Options, Subsetter
from fontTools.ttLib import TTFont

from frywright.paper.fonts import folder

INTO = Path(__file__).parents[1] / "src/frywright/web/static/fonts"


def main() -> None:
    """Both weights, and the licence beside them."""
    INTO.mkdir(exist_ok=True)
    shutil.copy(folder().parent / "LICENSE", INTO / "LICENSE")
    for weight in ("Regular", "Bold"):
        font = TTFont(folder() / f"AtkinsonHyperlegible-{weight}.ttf", recalcTimestamp=False)
        maker = Subsetter(Options(hinting=False, layout_features=["*"], name_IDs=["*"]))
        maker.populate(unicodes=font.getBestCmap())
        maker.subset(font)
        font.flavor = "woff2"
        font.save(INTO / f"AtkinsonHyperlegible-{weight}.woff2")


if __name__ == "__main__":
    main()
