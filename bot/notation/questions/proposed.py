"""Steps that are only proposed, and the choice between two: `keep 35 for the last one?`, `160 again or drop to 150`."""

from collections.abc import Iterator, Sequence

from bot.notation.clauses import EDGES, kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.questions.asked import ENDS, LONGEST
from bot.notation.tokens import Mark
from bot.notation.wholes import has_entry
from bot.notation.wordlist import words

_STEPS = frozenset(words(
    "bump up add put try raise increase lower drop take go stay stick keep move load jump push repeat hold hang use "
    "leave reduce do redo run down step throw pile strip"
))  # fmt: skip
_STEPPING = frozenset(words(
    "bumping upping adding putting trying raising increasing lowering dropping taking going staying sticking keeping "
    "moving loading jumping pushing repeating holding hanging using leaving reducing doing redoing running stepping "
    "throwing piling chucking having attempting"
))  # fmt: skip
_JUDGED = frozenset(words(
    "ambitious greedy soon early much silly daft dumb stupid foolish mad crazy nuts insane risky cheeky bold brave "
    "wise smart clever sensible better best safe ok okay fine alright good reasonable realistic fair overkill "
    "pointless worthwhile optimistic reckless dangerous bad wrong cocky keen hasty"
))  # fmt: skip
_BEFORE = frozenset(words("so then and ok okay or maybe just next coach should i we shall can could"))
_BEFORE_JUDGED = frozenset(words("too is it that a bit would be am i so and a an it's not really"))
_DONE = frozenset(words("got did managed hit made went done was were felt moved flew had"))
_TO_COME = frozenset(words("last final next third fourth 2nd 3rd 4th again remaining rest"))
_OPENED = (*EDGES, Kind.DASH, Kind.COLON)
_COUNTS = (Kind.X, Kind.REPS, Kind.RPE, Kind.RIR, Kind.SECONDS, Kind.METRES, Kind.M)
_OF_ENTRY = (Kind.KG, Kind.LB, Kind.S, Kind.REPS, Kind.EACH)


def proposed(marks: Sequence[Mark], query: int) -> set[int]:
    """The clause before a question mark that proposes a step: `bump it to 215 for set 2?`, `worth adding 5 next?`."""
    for start in _starts(marks, query):
        part = marks[start:query]
        opens = kind_at(marks, start - 1) in (None, *ENDS)
        told = has_entry(part) or any(m.kind is Kind.WAS for m in part)
        if not told and (_opens_step(part) if opens else _opens_step(part) and _is_to_come(part)):
            return set(range(start, query))
    return set()


def _starts(marks: Sequence[Mark], query: int) -> Iterator[int]:
    """Where a clause may start that a question mark ends: with its sentence, behind a comma or behind a whole set."""
    start = query
    while start > 0 and marks[start - 1].kind not in ENDS:
        start -= 1
    yield start
    for at in range(start + 1, query):
        if kind_at(marks, at - 1) in _OPENED or _is_behind_set(marks, at):
            yield at


def _is_behind_set(marks: Sequence[Mark], at: int) -> bool:
    """Whether a load with its repetitions ends straight before a place, with a face between at most."""
    before = at - 1
    while kind_at(marks, before) in _OF_ENTRY or (
        kind_at(marks, before) is Kind.FILL and not text_at(marks, before).isalpha()
    ):
        before -= 1
    linked = kind_at(marks, before) is Kind.NUM and kind_at(marks, before - 1) in (Kind.X, Kind.FOR)
    return linked and kind_at(marks, at) not in _OF_ENTRY


def _opens_step(part: Sequence[Mark]) -> bool:
    """`keep 35`, `so then bump it`, `worth hanging 5 on`, `too ambitious to do`."""
    told = [m for m in part if m.kind is not Kind.COMMA]
    said = [
        w
        for m in told
        for w in (["#"] if m.kind is Kind.NAME and m.names else m.text.split())
        if w[0].isalnum() or w == "#"
    ]
    at = 0
    while at < len(said) and said[at] in _BEFORE:
        at += 1
    if said[at : at + 1] and said[at] in _STEPS:
        return True
    while at < len(said) and said[at] in _BEFORE_JUDGED:
        at += 1
    if said[at : at + 1] == ["worth"]:
        following = said[at + 1 : at + 2]
        return bool(following) and (following[0] in _STEPPING or following == ["a"])
    if not said[at : at + 1] or said[at] not in _JUDGED:
        return False
    rest = said[at + 1 : at + 6]
    verb = next((rest[i + 1] for i, w in enumerate(rest[:-1]) if w in ("to", "i", "and")), "")
    return verb in _STEPS


def _is_to_come(part: Sequence[Mark]) -> bool:
    """Whether a clause behind a set names the set that is to come, and tells no repetitions of it."""
    counted = any(m.kind in _COUNTS for m in part)
    counted = counted or any(m.kind is Kind.FOR and kind_at(part, i + 1) is Kind.NUM for i, m in enumerate(part))
    said = {w for m in part for w in m.text.split()}
    which = any(m.kind in (Kind.SET, Kind.LASTSET, Kind.ORD, Kind.AGAIN) for m in part) or bool(said & _TO_COME)
    return which and not counted and not said & _DONE


_CHOSEN = frozenset(words(
    "go stay stick keep drop bump add raise lower hold up down back move jump push take use increase reduce leave"
))  # fmt: skip
"""What opens one of two steps."""
_AGAIN = frozenset(words("again more next another repeat once same"))
_UNSURE = frozenset(words(
    "maybe think thought sure remember forgot forget dunno idk perhaps lost count guess not cant might either whatever "
    "was were did got felt prob probably something so"
))  # fmt: skip
_LIGHTEST = 20
"""A number that is less may be repetitions: `5 again or 6`."""
_MOST = 14
"""Words of a choice."""


def chooses(marks: Sequence[Mark], place: int) -> int | None:
    """Where a choice of two steps that opens at a place ends, with no question mark: `160 again or drop back to 150`.

    None where there is none, or where it may be a doubt of what was done (`8 or 9`).
    """
    if place and marks[place - 1].kind not in _OPENED and not _is_behind_set(marks, place):
        return None
    end, either = place, None
    for mark in marks[place : place + LONGEST]:
        goes_on = mark.kind is Kind.COMMA and kind_at(marks, end + 1) is Kind.OR
        if (mark.kind in _OPENED and not goes_on) or (mark.kind is Kind.LINE):
            break
        if mark.kind is Kind.OR and either is None:
            either = end
        end += 1
    if either is None or either == place or either + 1 >= end:
        return None
    one, other, whole = marks[place:either], marks[either + 1 : end], marks[place:end]
    said = [w for m in whole for w in m.text.split()]
    plain = len(said) <= _MOST and not _UNSURE & set(said) and not any(m.kind in _COUNTS for m in whole)
    to_count = any(m.kind is Kind.FOR and kind_at(whole, i + 1) is Kind.NUM for i, m in enumerate(whole))
    told = any(m.kind in (Kind.NUM, Kind.SAME, Kind.AGAIN) for m in one)
    return end if plain and told and not to_count and _are_steps(one, other) else None


def _are_steps(one: Sequence[Mark], other: Sequence[Mark]) -> bool:
    """Whether two ways to go on are told: the second as a step, or as another load where the first is one again."""
    first = [w for m in one for w in m.text.split()]
    second = [w for m in other for w in m.text.split() if w not in ("just", "should", "i", "to", "do")]
    if second[:1] and second[0] in _CHOSEN:
        return True
    load = next((m for m in other if m.kind is Kind.NUM), None)
    heavy = load is not None and load.value is not None and load.value >= _LIGHTEST
    return heavy and (bool(_AGAIN & set(first)) or (first[0] in _CHOSEN and _is_to_come([*one, *other])))
