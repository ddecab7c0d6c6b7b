"""A design that follows a goal while it is dragged: sliders, the proposal, its proof where asked for."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass

from fastapi import Request, Response

from frywright.design.follow import Follower
from frywright.design.search import Candidate, Goals
from frywright.model.errors import InputError
from frywright.rooms.cook.follow import SLIDERS, Proposal, goals_at, propose, sliders, to_prove
from frywright.rooms.kitchen import kitchen_number
from frywright.web.app import Context
from frywright.web.jobs import Jobs
from frywright.web.posted import Typed
from frywright.web.routes import Routes
from frywright.web.written import view_json

PLACE = "/cook/desk/follow/{number}"


@dataclass(frozen=True, slots=True, kw_only=True)
class Followed:
    """What a search leaves to be followed: its programs, the goals it had, and the kitchen it was for."""

    follower: Follower
    goals: Goals
    stages: int | None
    kitchen_number: int


Prove = Callable[[str, Candidate, Goals], Response]
Search = Callable[[Followed, Goals], Response]


def add_follow(routes: Routes, jobs: Jobs, context: Context, prove: Prove, search: Search) -> None:
    """Routes of the page; ``prove`` begins the proof of a proposal, ``search`` a design with other goals."""

    def find(number: int) -> tuple[str, Followed]:
        """Title and search of a number."""
        job = jobs.get(number)
        found = getattr(job.result, "followed", None) if job else None
        if job is None or found is None or found.kitchen_number != kitchen_number(context.store):
            raise InputError("job", number, "a finished search in this kitchen as it is now; start it again")
        return job.title, found

    def proposal(request: Request, found: Followed, goals: Goals) -> Proposal:
        return propose(found.follower, goals, context.tr(request))

    @routes.get(PLACE)
    def page(request: Request, number: int) -> Response:
        title, found = find(number)
        goals = _asked(found, request.query_params)
        return context.render(
            request,
            "cook/follow.html",
            room="desk",
            title=title,
            number=number,
            sliders=sliders(goals, _system(found)),
            proposal=proposal(request, found, goals),
            can_press=str(found.follower.sizer.fryer.kind) == "pressure",
        )

    @routes.get(PLACE + "/view.json")
    def live(request: Request, number: int) -> Response:
        found = find(number)[1]
        told = proposal(request, found, _asked(found, request.query_params))
        return view_json(told)

    @routes.post(PLACE + "/prove")
    def proof(number: int, typed: Typed) -> Response:
        title, found = find(number)
        goals = _asked(found, typed)
        return prove(title, to_prove(found.follower, goals), goals)

    @routes.post(PLACE + "/search")
    def anew(number: int, typed: Typed) -> Response:
        found = find(number)[1]
        return search(found, _asked(found, typed))


def _system(found: Followed) -> str:
    return found.follower.sizer.kitchen.site.units


def _asked(found: Followed, typed: Mapping[str, str]) -> Goals:
    """Goals where the sliders stand; a slider that was not sent stands where the search had it."""
    system = _system(found)
    begun = {slider.name: slider.value for slider in sliders(found.goals, system)}
    return goals_at(begun | {name: typed[name] for name in SLIDERS if name in typed}, system)
