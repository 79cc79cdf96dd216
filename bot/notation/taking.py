"""Sets kept where they read clear beside the plan, else asked about with the readings that are honest."""

import re
from collections.abc import Sequence
from dataclasses import replace

from bot.notation.alternatives import half_loads, in_reason, plan_ways, range_ways
from bot.notation.answer import AskKind, Source
from bot.notation.atoms import Atom, Effort, Sign
from bot.notation.binding import Bound
from bot.notation.draft import Draft
from bot.notation.grounds import Ground
from bot.notation.kinds import Kind
from bot.notation.order.as_planned import LIGHTER
from bot.notation.ranking import Ranked
from bot.notation.rest_planned import REST_PLANNED
from bot.notation.said import Doubt
from bot.notation.tokens import Mark
from bot.training.report import Stage


def take(draft: Draft, ranked: Ranked, place: int, name: Mark | None = None) -> None:
    """Keeps a clear reading, or asks with its alternatives."""
    if ranked.doubt is None:
        draft.keep(ranked.bound, place, name)
        return
    ways = _ways(draft, ranked, place)
    chosen = draft.doubt(ranked.doubt, len(ways), draft.request.exercises[place].name)
    if chosen is not None:
        draft.keep(ways[chosen], place, name)


def _ways(draft: Draft, ranked: Ranked, place: int) -> list[Bound]:
    """The readings that a question about these sets offers."""
    assert ranked.doubt is not None
    context = draft.record.context(place)
    match ranked.doubt.kind:
        case AskKind.RANGE:
            return range_ways(ranked.bound, context)
        case AskKind.OUT_OF_REASON:
            return in_reason(ranked.bound, context) or list(ranked.honest)
        case AskKind.PER_HAND:
            return half_loads(ranked.bound, context)
        case _:
            return list(ranked.honest)


def keep_as_planned(draft: Draft, planned: Sign, atoms: Sequence[Atom], place: int) -> None:
    """`as planned` without a name: the set that is left, or the whole session where that is said.

    Of an exercise that is begun, and with an effort, which is of one set, it is the current one.
    """
    context = draft.record.context(place)
    last = draft.record.last_exercise if draft.record.told else place
    rest = planned.text == REST_PLANNED
    if rest and last is not None and draft.record.context(last).open_sets:
        left = draft.record.context(last)
        take(draft, plan_ways(left, len(left.open_sets), planned.start, planned.end, needs_load=True), last)
        return
    whole = {"everything", "session", "workout"} & {*draft.folded.text.split(), *planned.text.split()}
    if rest or whole or _IT_ALL.search(draft.folded.text):
        _keep_session(draft, atoms)
        return
    every = any(isinstance(a, Sign) and a.kind is Kind.ALL for a in atoms)
    if every and _is_untouched(draft):
        chosen = draft.doubt(Doubt(AskKind.DONE, planned.start, planned.end), 2)
        if chosen == 1:
            _keep_session(draft, atoms)
        if chosen is None or chosen == 1:
            return
    if len(context.open_sets) == 1 or every:
        take(draft, draft.rank(atoms, context), place)
        return
    effort = next((a for a in atoms if isinstance(a, Effort) and a.failed is None and not a.beyond), None)
    if effort is not None and context.open_sets:
        take(draft, plan_ways(context, 1, planned.start, planned.end, effort=effort), place)
        return
    label = next((a.value for a in atoms if isinstance(a, Sign) and a.kind is Kind.LABEL), None)
    if label is not None and int(label) in context.open_sets:
        take(draft, plan_ways(context, 1, planned.start, planned.end, label=int(label)), place)
        return
    if context.worked and context.open_sets:
        lighter = any(isinstance(a, Sign) and a.text.startswith(LIGHTER) and not a.text.endswith(" set") for a in atoms)
        count = len(context.open_sets) if lighter else 1
        take(draft, plan_ways(context, count, planned.start, planned.end, needs_load=True), place)
        return
    ways = [plan_ways(context, n, planned.start, planned.end) for n in (1, len(context.open_sets))]
    bounds = [w.bound for w in ways if w.doubt is None]
    chosen = draft.doubt(Doubt(AskKind.DONE, planned.start, planned.end), len(bounds))
    if chosen is not None:
        draft.keep(bounds[chosen], place)


def _keep_session(draft: Draft, atoms: Sequence[Atom]) -> None:
    """Every set that is left, of every exercise that is not given up."""
    for other in range(len(draft.request.exercises)):
        beside = draft.record.context(other)
        if beside.open_sets and draft.ask is None and other not in draft.given_up:
            take(draft, draft.rank(atoms, beside), other)


def _is_untouched(draft: Draft) -> bool:
    """Whether nothing of a session of several exercises is begun: `all as planned` may be of the first, or of all."""
    request = draft.request
    return not draft.record.told and not request.done and request.current is None and len(request.exercises) > 1


_IT_ALL = re.compile(r"\b(?:it all|all of it|the lot|the whole thing)\b")
"""The whole session, where it is as planned."""


def fails_last(draft: Draft, effort: Effort) -> bool:
    """Whether what failed is the repetition after those of the set told last: `60 x 10, 9, 7. 8th didn't go`."""
    last = draft.record.last(draft.record.last_exercise) if draft.record.told else None
    return last is not None and last.stage is Stage.WORK and last.rir is None and effort.failed == last.reps + 1


def rate_last_set(draft: Draft, effort: Effort, name: Mark | None, every: bool, both: bool = False) -> None:
    """An effort with no set beside it: the last set's; of `every` set done, or of `both` that were told last."""
    record = draft.record
    place = name.names[0] if name is not None and len(name.names) == 1 else None
    if place is None and record.told:
        place = record.last_exercise
    last = record.last(place)
    if last is None or last.set is None or effort.failed is not None:
        if effort.failed is not None:
            draft.doubt(Doubt(AskKind.EFFORT, effort.start, effort.end))
        return
    if effort.beyond:
        draft.doubt(Doubt(AskKind.EFFORT, effort.start, effort.end))
        return
    keys = [(last.exercise, last.set)]
    if every:
        worked = record.context(record.place_of(last.exercise) or 0).worked
        keys = list(dict.fromkeys((p.exercise, p.set) for p in worked if p.set is not None))
        keys = keys[-2:] if both else keys
    ground = Ground(Source.SAID, (effort.start, effort.end))
    for key in keys:
        record.change(
            key,
            lambda rows: [
                replace(t, row=replace(t.row, rir=effort.rir), grounds=replace(t.grounds, effort=ground))
                if t.row.stage is Stage.WORK
                else t
                for t in rows
            ],
        )
    draft.note_replaced((effort.start, effort.end))
