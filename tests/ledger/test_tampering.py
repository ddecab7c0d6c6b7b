"""A draw of tamperings, smaller than the script's: all found that the threat model says are found, no clean
store accused, and the rest not seen, as it says too.
"""

from __future__ import annotations

import pytest
from benchmarks.tampering import draw
from benchmarks.tamperings import FOUND


@pytest.mark.slow
def test_tamperings_drawn_at_random_are_found():
    """Every kind several times, on stores that differ."""
    drawn = draw(5 * len(FOUND), seed=7)
    assert drawn.missed == []
    assert drawn.accused == [] and drawn.clean_count >= 4
    assert set(drawn.tried.values()) == {5}
    assert (drawn.unseen_tried, drawn.unseen_found) == (16, 0)
