"""Small pictures beside a figure: points, a line, a limit and a span in which something is expected."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from html import escape

WIDTH, HEIGHT, EDGE = 300.0, 104.0, 16.0
Point = tuple[float, float]


@dataclass(frozen=True, slots=True, kw_only=True)
class SmallPicture:
    """What to draw, in the units of the data. ``words`` is the whole message, for readers of screens.

    ``span`` is a stretch of x drawn at the limit; ``low``, ``middle`` and ``high`` are words under x at its
    low end, at ``now_n`` and at its high end.
    """

    words: str
    x_n: tuple[float, float]
    y_n: tuple[float, float]
    points: Sequence[Point] = ()
    hollow: Sequence[Point] = ()
    line: Sequence[Point] = ()
    limit_n: float | None = None
    limit_words: str = ""
    span: tuple[float, float] | None = None
    now_n: float | None = None
    low: str = ""
    middle: str = ""
    high: str = ""
    marks_n: Sequence[float] = field(default_factory=tuple)

    def svg(self) -> str:
        """The picture as an ``svg`` element whose looks are the style sheet's (class ``small-picture``)."""
        parts = [f'<svg class="small-picture" viewBox="0 0 {WIDTH:g} {HEIGHT:g}" role="img">']
        parts.append(f"<title>{escape(self.words)}</title>")
        parts.append(f'<path class="axis" d="M0 {HEIGHT - EDGE:g}H{WIDTH:g}"/>')
        parts += [f'<path class="moment" d="M{self._x(at):.1f} 0V{HEIGHT - EDGE:g}"/>' for at in self.marks_n]
        if self.now_n is not None:
            parts.append(f'<path class="cursor" d="M{self._x(self.now_n):.1f} 0V{HEIGHT - EDGE:g}"/>')
        if self.limit_n is not None:
            level = self._y(self.limit_n)
            parts.append(f'<path class="limit" d="M0 {level:.1f}H{WIDTH:g}"/>')
            parts.append(_text(2.0, level - 4.0, "start", self.limit_words))
            if self.span:
                left, right = (self._x(min(max(at, self.x_n[0]), self.x_n[1])) for at in self.span)
                wide = max(right - left, 3.0)
                parts.append(
                    f'<rect class="span" x="{left:.1f}" y="{level - 4:.1f}" width="{wide:.1f}" height="8"/>'
                )
        if len(self.line) > 1:
            places = "L".join(f"{self._x(x):.1f} {self._y(y):.1f}" for x, y in self.line)
            parts.append(f'<path class="oil" d="M{places}"/>')
        for kind, points in (("dot", self.points), ("dot hollow", self.hollow)):
            parts += [
                f'<circle class="{kind}" cx="{self._x(x):.1f}" cy="{self._y(y):.1f}" r="3.5"/>'
                for x, y in points
            ]
        parts.append(_text(0.0, HEIGHT - 3.0, "start", self.low))
        if self.now_n is not None:
            parts.append(_text(self._x(self.now_n), HEIGHT - 3.0, "middle", self.middle))
        parts.append(_text(WIDTH, HEIGHT - 3.0, "end", self.high))
        return "".join([*parts, "</svg>"])

    def _x(self, value: float) -> float:
        low, high = self.x_n
        return (value - low) / (high - low) * WIDTH

    def _y(self, value: float) -> float:
        low, high = self.y_n
        inside = min(max(value, low), high)
        return (HEIGHT - EDGE) * (1.0 - (inside - low) / (high - low))


def _text(x: float, y: float, anchor: str, words: str) -> str:
    return f'<text x="{x:.1f}" y="{y:.1f}" text-anchor="{anchor}">{escape(words)}</text>' if words else ""
