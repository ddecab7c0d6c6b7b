"""Prints docs/theory/validation.md from the rows in tests/reference/rows and the engine."""

from __future__ import annotations

from tests.reference.rows import inside, rows, value_of

HEADS = {
    "untouched": (
        """## Untouched

Rows that moved nothing: no constant, no equation and no choice was made with an eye on them."""
    ),
    "developed": (
        """## Developed on

Rows that were looked at while the model was built, whose source gave one of its constants, or that changed
sides when something was mended. They show what the model was made to do, not what it foresees. Where a
constant was taken from a row, the row says so."""
    ),
    "tuned": (
        """## Tuned to

The effective geometry of breast, thigh, drum and wing was set so that these times come out
(`python -m benchmarks.cut_geometry`). They prove nothing and are not counted."""
    ),
}
KIND_WORDS = {
    "analytic": "closed forms and identities",
    "textbook": "printed examples, tables and correlations",
    "experiment": "published experiments",
    "practice": "trade practice and surveys",
}


def number(value: float) -> str:
    """Four figures, no exponent."""
    return f"{value:.4g}" if abs(value) < 1e4 else f"{value:.0f}"


def table(chosen: list[dict]) -> None:
    print(
        "\n| row | inputs | expected | band | engine | | source, place | why this band"
        " |\n|---|---|---|---|---|---|---|---|"
    )
    for row in chosen:
        found = value_of(row)
        mark = "in" if inside(row, found) else "**misses**"
        print(
            f"| {row['title']} | {row['inputs']} | {row['expected']} | {number(row['low'])} to"
            f" {number(row['high'])} {row['unit']} | {number(found)} | {mark} | {row['source']};"
            f" {row['place']} | {row['why']} |"
        )


def rate(chosen: list[dict]) -> str:
    """Hits of rows."""
    return f"{sum(inside(row, value_of(row)) for row in chosen)} of {len(chosen)} in band"


def section(use: str) -> None:
    mine = [row for row in rows() if row["use"] == use]
    print(f"\n{HEADS[use]}\n")
    if use != "tuned":
        print(f"**{rate(mine)}.**")
    for kind, words in KIND_WORDS.items():
        chosen = [row for row in mine if row["kind"] == kind]
        if chosen:
            count = "" if use == "tuned" else f": {rate(chosen)}"
            print(f"\n### {use.capitalize()}, {words}{count}")
            table(chosen)


def main() -> None:
    every = rows()
    print("# Validation against outside figures\n")
    print(
        f"Made by `make validation` from the {len(every)} rows of `tests/reference/rows`, each with its"
        " inputs, what is expected, the band and its reason,"
    )
    print(
        "and the source with the place in it. All piece geometry is uncalibrated. What misses says so and is"
        " not tuned away;"
    )
    print("nothing was tuned to a row without the row saying so.\n")
    print("| | closed forms and tables | experiments | practice |\n|---|---|---|---|")
    for use in ("untouched", "developed"):
        mine = [row for row in every if row["use"] == use]
        sums = [
            rate([r for r in mine if r["kind"] in kinds])
            for kinds in (("analytic", "textbook"), ("experiment",), ("practice",))
        ]
        print(f"| {use} | {' | '.join(sums)} |")
    for use in ("untouched", "developed", "tuned"):
        section(use)
    print("\n## What misses, and why\n")
    for row in every:
        if "miss" in row:
            print(f"* **{row['title']}.** {row['miss']}")
    print("""
## What no row can show

No published measured dataset of bone-in pressure frying with full conditions was found. Until a kitchen
calibrates with its own probe logs every result is a scouting estimate. Contact between pieces, true
three-dimensional shape and shrinkage are not resolved; no surface coefficient for chicken under pressure was
found.""")


if __name__ == "__main__":
    main()
