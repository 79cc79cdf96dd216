"""What a message leaves out or ends: skips, a bare `done`, the end of the session."""

from collections.abc import Sequence

from bot.notation.alternatives import plan_ways
from bot.notation.answer import AskKind, Meaning, Span
from bot.notation.clauses import EDGES, kind_at
from bot.notation.draft import Draft
from bot.notation.kinds import Kind
from bot.notation.said import Doubt
from bot.notation.skips import SkipsSaid
from bot.notation.skips.endings import closes_part, read_done
from bot.notation.skips.enough import few_sets
from bot.notation.taking import take
from bot.notation.tokens import Mark


def read_bare_done(draft: Draft, marks: Sequence[Mark], *, hurts: bool) -> Span | None:
    """A bare `done`: the current set as planned, or a question. Gives the words that end the session, where they do.

    `hurts`: the message tells of pain, so that `done with swings` gives up what is left of them.
    """
    is_done, name, every = read_done(marks)
    if is_done and draft.skipped and name is None:
        left = [n for n in open_names(draft) if n not in draft.skipped]
        mark = next((m for m in marks if m.kind in (Kind.DONE, Kind.FINISH)), marks[0])
        return None if left else (mark.start, mark.end)
    if not is_done or draft.skipped or (name is not None and len(name.names) != 1):
        return None
    mark = next((m for m in marks if m.kind in (Kind.DONE, Kind.FINISH)), marks[0])
    at = (mark.start, mark.end)
    place = name.names[0] if name is not None else draft.under_way()
    if place is None:
        return at
    context = draft.record.context(place)
    if name is None and not any(draft.record.context(p).open_sets for p in range(len(draft.request.exercises))):
        return at
    if not context.open_sets:
        if name is None:
            draft.doubt(Doubt(AskKind.DONE, *at))
        whole = mark.kind is Kind.FINISH and any(m.text in ("even", "included", "including") for m in marks)
        return at if whole and not open_names(draft) else None
    if name is not None and context.worked and (hurts or _says_today(marks, mark)):
        _skip(draft, [place], at)
        return None
    number = _number_of(marks, mark)
    if number is not None and number not in context.open_sets:
        draft.doubt(Doubt(AskKind.DONE, *at))
        return None
    if name is not None and number is None and len(context.open_sets) > 1:
        ways = [plan_ways(context, n, *at) for n in (len(context.open_sets), 1)]
        bounds = [w.bound for w in ways if w.doubt is None]
        chosen = draft.doubt(Doubt(AskKind.DONE, *at), len(bounds), context.exercise.name)
        if chosen is not None:
            draft.keep(bounds[chosen], place, name)
        return None
    count = len(context.open_sets) if every else 1
    take(draft, plan_ways(context, count, *at, needs_load=True, label=number), place, name)
    return None


def read_done_behind(draft: Draft, marks: Sequence[Mark]) -> Span | None:
    """A `done` in a part of its own behind sets and skips that leave none open: the words that end the session."""
    is_done, name, _ = read_done(marks)
    ends = any(
        (m.text == "and done" or (m.kind is Kind.DONE and kind_at(marks, place - 1) is Kind.SETS))
        and closes_part(marks, place)
        for place, m in enumerate(marks)
    )
    if not (is_done or ends) or name is not None or any(n not in draft.skipped for n in open_names(draft)):
        return None
    mark = next((m for m in reversed(marks) if m.kind is Kind.DONE), None)
    return None if mark is None else (mark.start, mark.end)


def _says_today(marks: Sequence[Mark], done: Mark) -> bool:
    """`done with swings for today`, `swings done for the day`: over, though sets are left."""
    if not {Kind.WITH, Kind.FOR} & {m.kind for m in marks} and not set(done.text.split()) & _WHOLE:
        return False
    return bool({w for m in marks if m.start >= done.start for w in m.text.split()} & _WHOLE)


def _number_of(marks: Sequence[Mark], done: Mark) -> int | None:
    """The set that is named straight before it is said to be done: `set 2 done`, `second one done`."""
    place = marks.index(done) if done in marks else 0
    before = next((m for m in reversed(marks[:place]) if m.kind is not Kind.FILL), None)
    numbered = before is not None and before.kind in (Kind.LABEL, Kind.NUM) and before.value is not None
    return int(before.value) if numbered and before is not None and before.value is not None else None


_THERE = frozenset(
    (
        "stopping there",
        "stopped there",
        "leaving it there",
        "leave it there",
        "leaving it here",
        "leave it here",
        "ill leave it here",
        "stop here",
        "stopping here",
        "im stopping here",
        "thats enough",
    )
)
"""Words that end an exercise or the session."""
_ALL_DONE = frozenset(("all done", "all finished", "all complete", "all completed"))
"""Words of one exercise or of the session, where one is begun and others wait."""


def _part_after(marks: Sequence[Mark], finish: Mark) -> set[str]:
    """The words behind an end in its part: the `today` of `stopped there today`, not of `.. there, no rows today`."""
    out: set[str] = set()
    for mark in marks:
        if mark.start >= finish.end:
            if mark.kind in EDGES:
                break
            out |= set(mark.text.split())
    return out


def _is_bare(marks: Sequence[Mark], finish: Mark) -> bool:
    return all(m is finish or m.kind in (Kind.FILL, Kind.STOP, Kind.DONE) for m in marks)


_WHOLE = frozenset(("today", "tonight", "day", "session", "workout", "now", "home"))
"""Words beside them that say that it is the session."""


def read_stop(draft: Draft, marks: Sequence[Mark], finish: Mark, *, hurts: bool, leaves: bool) -> Span | None:
    """The words that end the session; asked about where they may end the exercise that was begun, and others wait.

    `hurts`: the message tells of pain, so that `stopped there` ends the set, or its exercise. `leaves`: it says itself
    which sets are left out, `stopped there, skipping the other two`.
    """
    at = (finish.start, finish.end)
    place = draft.under_way()
    if finish.text in _ALL_DONE and place is not None and not draft.reports and not leaves and _is_bare(marks, finish):
        opens = [len(draft.record.context(p).open_sets) for p in range(len(draft.request.exercises))]
        if draft.record.context(place).worked and opens[place] and sum(opens) > opens[place]:
            draft.doubt(Doubt(AskKind.DONE, *at))
            return None
    if finish.text not in _THERE or _part_after(marks, finish) & _WHOLE or place is None:
        return at
    context = draft.record.context(place)
    others = [p for p in range(len(draft.request.exercises)) if p != place and draft.record.context(p).open_sets]
    if (hurts or leaves) and draft.reports and others:
        return None
    if not (context.worked and context.open_sets and others):
        return at
    chosen = draft.doubt(Doubt(AskKind.STOP, *at), 2, context.exercise.name)
    if chosen == 0:
        _skip(draft, [place], at)
    return at if chosen == 1 else None


def cuts_open_set(draft: Draft, piece: Sequence[Mark]) -> bool:
    """`rows 50x10 9, cut the last set`: whether a set that is still open is given up, not one that was told."""
    at = next((i for i, m in enumerate(piece) if m.kind is Kind.SCRAP), None)
    place = draft.record.last_exercise
    if at is None or place is None or piece[at].text.split(" ")[0] not in _CUTTING or not draft.record.told:
        return False
    opens = draft.record.context(place).open_sets
    said = [m for m in piece[at + 1 :] if m.kind not in (Kind.FILL, Kind.STOP, Kind.LINE, Kind.COMMA)]
    last = [m.kind for m in said] in ([Kind.LASTSET], [Kind.LASTREP], [Kind.LASTSET, Kind.SET])
    numbered = [m.kind for m in said] in ([Kind.ORD], [Kind.ORD, Kind.SET]) and said[0].value in opens
    if not opens or not (last or numbered):
        return False
    _skip(draft, [place], (piece[at].start, piece[-1].end))
    return True


_CUTTING = frozenset(
    ["cut", "ditch", "ditched", "bin", "binned", "drop", "dropped", "lose", "cancel", "cancelled", "chuck", "kill"]
)
"""Words that take back a set that is stored, and give up one that is open."""


def open_names(draft: Draft) -> list[str]:
    """The exercises with sets left."""
    exercises = draft.request.exercises
    return [e.name for place, e in enumerate(exercises) if draft.record.context(place).open_sets]


def keep_skips(draft: Draft, skips: SkipsSaid) -> None:
    """Keeps the exercises with sets left that are given up; asks where a name fits several, or none."""
    plain = {m.names[0] for m in skips.names if len(m.names) == 1}
    for mark in skips.names:
        if len(mark.names) > 1 and plain & set(mark.names):
            continue  # `no calves today, standing or seated`
        opens = [p for p in mark.names if draft.record.context(p).open_sets]
        at = (mark.start, mark.end)
        if not mark.names:
            if mark.kind is Kind.NAME and mark not in skips.denied:
                draft.doubt(Doubt(AskKind.UNKNOWN_EXERCISE, *at))
            continue
        if len(mark.names) > 1 and len(opens) != 1 and mark not in skips.every:
            if opens:
                chosen = draft.doubt(Doubt(AskKind.WHICH_SKIP, *at), len(opens) + 1)
                if chosen is not None:
                    _skip(draft, opens if chosen == len(opens) else [opens[chosen]], at)
            continue
        _skip(draft, opens, at)
    for words, name in skips.partly:
        place = draft.under_way() if name is None else name.names[0]
        if place is not None and draft.record.context(place).open_sets:
            _skip(draft, [place], words)
    places = [p for p in range(len(draft.request.exercises)) if draft.record.context(p).open_sets]
    if skips.since is not None and skips.since.names:
        at = (skips.since.start, skips.since.end)
        _skip(draft, [p for p in places if p > max(skips.since.names)], at)
    own = draft.under_way() if skips.counted_of is None else skips.counted_of.names[0]
    spoken_of = own is not None and any(place == own for _, place in draft.mentions)
    if (
        skips.rest is not None
        and skips.counted is not None
        and _are_sets(draft, own, skips.counted, 0 if spoken_of else len(places))
    ):
        _skip(draft, [] if own is None else [own], skips.rest)
    elif skips.rest is not None:
        kept = {p for m in skips.kept for p in m.names}
        _skip(draft, [p for p in places if p not in kept], skips.rest)


def keep_few(draft: Draft, marks: Sequence[Mark]) -> None:
    """Gives up what is left of exercises whose sets are told to be few: `curls 40x12, only one set`."""
    for at, place in few_sets(marks, draft.record, draft.under_way()) if not draft.record.replaces else ():
        if draft.record.context(place).open_sets:
            _skip(draft, [place], at)


def _are_sets(draft: Draft, place: int | None, count: int, exercises: int) -> bool:
    """Whether `the other two` are sets of an exercise that was begun, and not exercises that are left."""
    worked = place is not None and draft.record.context(place).worked
    opens = 0 if place is None else len(draft.record.context(place).open_sets)
    return bool(worked) and opens == count and (draft.reports or count != exercises)


def _skip(draft: Draft, places: Sequence[int], at: Span) -> None:
    for place in places:
        name = draft.request.exercises[place].name
        if name not in draft.skipped:
            draft.skipped.append(name)
            draft.note(at, Meaning.SKIP, name)
