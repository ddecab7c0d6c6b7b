"""Which right each route asks for. A route that is not listed is refused to everybody, and a test fails."""

from __future__ import annotations

OPEN = "open"
"""Reachable without signing in."""
_BY_RIGHT = {
    OPEN: ["GET /sign-in", "POST /sign-in", "POST /sign-out", "GET /first-owner", "POST /first-owner", "GET /api/v1/openapi.json"],
    "read": [
        "GET /", "GET /cook", "GET /cook/view.json", "GET /cook/chart.svg", "GET /cook/desk", "GET /cook/desk/job/{number}", "GET /cook/card", "GET /cook/card.pdf", "GET /cook/cards.pdf",
        "GET /cook/changes", "GET /cook/readback", "GET /cook/kitchen", "GET /cook/probes", "GET /cook/probes/{number}", "GET /cook/probes/{number}/report.pdf",
        "GET /day", "GET /day/plan.json", "GET /day/{picture}.svg", "GET /day/pull", "GET /day/replay", "GET /day/board", "GET /day/board/part", "GET /day/board.json",
        "GET /day/board/down", "GET /day/board/promise", "GET /day/close", "GET /day/worker.js", "GET /day/labels.pdf", "GET /day/handover.pdf",
        "GET /care", "GET /care/oil.json", "GET /care/oil-map.pdf", "GET /care/close", "GET /care/close.json", "GET /care/energy", "GET /care/energy.json",
        "GET /care/fryers", "GET /care/fryers.json", "GET /care/calendar.ics", "GET /care/new", "GET /care/new/{fryer}.json", "GET /care/new/{fryer}.pdf",
        "GET /care/new/photo/{name}", "GET /care/emergency.pdf", "GET /care/card/{key}", "GET /care/card/{key}.pdf", "GET /care/card/{key}.json", "GET /care/people",
        "GET /care/people.json", "GET /care/wall.pdf", "GET /care/drill/{key}",
        "GET /records", "POST /records/check", "GET /records/entry/{number}", "GET /records/probing", "GET /records/case/{number}", "GET /records/pack",
        "GET /records/pack.json", "GET /records/pack.pdf", "GET /records/pack.zip",
        "GET /api/v1/entries", "GET /api/v1/entries/{number}", "GET /api/v1/programs", "GET /api/v1/oil", "GET /api/v1/care", "GET /api/v1/cases", "GET /api/v1/chain",
    ],
    "floor": [
        "POST /day/tap", "POST /care/oil", "POST /care/close", "POST /care/fryers/done", "POST /care/fryers/figure", "POST /care/stop", "POST /care/card/{key}/sign",
        "POST /care/drill/{key}", "POST /records/probing", "POST /records/case", "POST /records/case/{number}", "POST /cook/readback", "POST /cook/probes/check",
        "POST /cook/probes/reading", "POST /cook/probes/hold", "POST /cook/probes/sample",
        "POST /api/v1/readings", "POST /api/v1/oil", "POST /api/v1/read-backs",
    ],
    "shift": [
        "POST /cook/keep", "POST /cook/card", "POST /cook/card.pdf", "POST /cook/cards.pdf", "POST /cook/desk/design", "POST /cook/desk/job/{number}/row/{row}", "POST /cook/desk/transfer", "POST /cook/desk/prove", "POST /cook/desk/job/{number}/cancel", "POST /cook/probes/upload",
        "POST /cook/probes/demo", "POST /day/sales", "POST /day/sales/demo", "POST /day/note", "POST /care/people/{what}",
    ],
    "machine": [
        "POST /care/reopen", "POST /care/new/plate", "POST /care/new/site", "POST /care/new/step", "POST /cook/probes/{number}/keep",
    ],
    "owner": [
        "POST /cook/save", "POST /cook/desk/job/{number}/save", "POST /cook/kitchen", "POST /care/limit", "POST /care/card/{key}/save", "GET /records/people",
        "POST /records/people/account", "POST /records/people/change", "POST /records/people/device", "POST /records/people/revoke",
    ],
}  # fmt: skip
RIGHTS = {route: right for right, routes in _BY_RIGHT.items() for route in routes}


def right_for(method: str, path: str) -> str | None:
    """The right a route asks for by its method and template; None refuses it."""
    return RIGHTS.get(f"{'GET' if method == 'HEAD' else method} {path}")
