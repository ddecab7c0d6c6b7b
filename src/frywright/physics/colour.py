"""A patch of colour for a browning of the crust: from raw breading to the end colour, in a straight line."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from frywright.catalog import load as catalog

D65 = np.array([0.95047, 1.0, 1.08883])
"""White point of sRGB (IEC 61966-2-1)."""
FROM_XYZ = np.array([[3.2406, -1.5372, -0.4986], [-0.9689, 1.8758, 0.0415], [0.0557, -0.2040, 1.0570]])
"""XYZ to linear sRGB (IEC 61966-2-1, as printed)."""
DELTA = 6 / 29  # CIE 15: where the cube root of L*a*b* gives way to a line


def crust_hex(difference_n: float) -> str:
    """Colour ``#rrggbb`` of a crust whose colour difference from raw is ``difference_n`` (dE, 0 to the end
    colour's).

    Zanoni 1995 measured how far the colour moves, not which way: both ends are our estimate
    (kinetics/browning).
    """
    t = catalog.table("kinetics/browning.toml")
    share = min(max(difference_n / t["end_n"], 0.0), 1.0)
    raw, end = np.array(t["raw_lab"]), np.array(t["end_lab"])
    return lab_hex(raw + share * (end - raw))


def lab_hex(lab: NDArray[np.float64]) -> str:
    """``#rrggbb`` of a colour (L*, a*, b*) under D65 (CIE 15, IEC 61966-2-1); what a screen cannot show is
    clipped.
    """
    middle = (lab[0] + 16.0) / 116.0
    f = np.array([middle + lab[1] / 500.0, middle, middle - lab[2] / 200.0])
    xyz = D65 * np.where(f > DELTA, f**3, 3.0 * DELTA**2 * (f - 4.0 / 29.0))
    linear = np.clip(FROM_XYZ @ xyz, 0.0, 1.0)
    shown = np.where(linear <= 0.0031308, 12.92 * linear, 1.055 * linear ** (1 / 2.4) - 0.055)
    return "#" + "".join(f"{round(255 * v):02x}" for v in shown)
