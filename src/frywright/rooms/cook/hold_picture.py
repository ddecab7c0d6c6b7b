"""A hold study as a picture: how many repeats pass at each time, where one went cold, and the life found."""

from __future__ import annotations

from frywright.calibrate.hold import HoldLife
from frywright.model.tongues import Translate
from frywright.paper.small_picture import SmallPicture


def hold_picture(found: HoldLife, share_frac: float, text: str, tr: Translate) -> str:
    """The picture as SVG: filled points where every piece was hot, hollow ones where one was not."""
    rows = [(time / 60.0, 100.0 * share, hot) for time, _, share, hot in found.rows]
    last = max(rows[-1][0], 1.0)
    life = found.life_s / 60.0
    return SmallPicture(
        words=text,
        x_n=(0.0, 1.05 * last),
        y_n=(0.0, 115.0),
        points=[(x, y) for x, y, hot in rows if hot],
        hollow=[(x, y) for x, y, hot in rows if not hot],
        line=[(x, y) for x, y, _ in rows],
        limit_n=100.0 * share_frac,
        limit_words=tr("{share} % must pass").format(share=f"{100 * share_frac:g}"),
        now_n=life if life > 0 else None,
        middle=tr("{n} min").format(n=f"{life:g}"),
    ).svg()
