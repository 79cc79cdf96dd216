"""The words for how far a client is: `three down two to go`, `3 of 5 done`, `the third one in the bag`, `2 left`.

Each is found from the mark on that counts; `progress` makes something of it beside what is stored.
"""

from collections.abc import Sequence
from dataclasses import dataclass

from bot.notation.bounds import MOST_SETS, SEVERAL
from bot.notation.clauses import EDGES, is_entry, kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.order.near import past
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_DONE = frozenset(words("down in complete completed finished done behind banked ready made"))
_BAGGED = tuple(
    phrase.split()
    for phrase in (
        "in the bag", "in the bank", "in the books", "in the can", "in the tank now", "out of the way", "on the board",
        "under my belt", "wrapped up", "ticked off", "all done", "done and dusted", "done with", "now", "so far",
    )
)  # fmt: skip
"""What is done with is said to be there (common usage, no source)."""
_TO_GO = tuple(
    phrase.split()
    for phrase in (
        "to go", "left to go", "more to go", "to do", "to come", "remaining", "left to do", "still to go",
        "still to do", "more to do", "togo",
    )
)  # fmt: skip
_LONGEST = max(map(len, _BAGGED))
"""Words of the longest of them."""
_SETS = (Kind.SETS, Kind.SET)
_ENDING = (Kind.COLON, Kind.AND, Kind.THEN, Kind.FILL, Kind.AT, Kind.WITH, Kind.NAME, Kind.UNDONE)
_TIED = (Kind.X, Kind.FOR, Kind.NUM, Kind.RPE, Kind.RIR, Kind.COULD, Kind.SLASH, Kind.PLUS, Kind.WITH)


@dataclass(frozen=True, slots=True)
class HowFar:
    """What the words say, up to `end`: how many sets are `done`, or how many are `left` (each `None`: not said)."""

    end: int
    done: int | None = None
    left: int | None = None


@dataclass(frozen=True, slots=True)
class Session:
    """What words are read beside: how many sets the plan has (0: may be repetitions), and the next set's number."""

    planned: int
    next_number: int


def small(marks: Sequence[Mark], place: int) -> int | None:
    """A number that may count sets."""
    value = marks[place].value if 0 <= place < len(marks) and marks[place].kind is Kind.NUM else None
    return int(value) if value is not None and value == int(value) and 1 <= value <= MOST_SETS else None


def how_far(marks: Sequence[Mark], place: int, beside: Session) -> HowFar | None:
    """What is said from a place on of how far one is."""
    if marks[place].kind not in (Kind.NUM, Kind.ORD, Kind.ALL):
        return None
    if is_entry(marks, place - 3 - (kind_at(marks, place - 1) in (Kind.COMMA, Kind.FILL))) and _in_bank(marks, place):
        return None
    bracketed = kind_at(marks, place - 1) is Kind.OPEN and _words(marks, place + 1, 1) == ["left"]
    if bracketed and is_entry(marks, place - 4):
        return None  # `90x9 (1 left)`
    if kind_at(marks, place - 1) is Kind.REPS and kind_at(marks, place + 1) is Kind.SETS:
        return None  # `40 kg 12 reps 2 sets done`
    looks = (_done(marks, place, beside), _rest(marks, place), _nth(marks, place))
    return next((found for found in looks if found is not None), _among(marks, place))


def _in_bank(marks: Sequence[Mark], place: int) -> bool:
    """`95x6, one in the bank`: straight behind a whole set, one or two repetitions that were left."""
    few = small(marks, place) in (1, 2)
    return (
        few and _words(marks, place + 1, 3)[:3] == ["in", "the", "bank"] and kind_at(marks, place + 2) in (None, *EDGES)
    )


def _among(marks: Sequence[Mark], place: int) -> HowFar | None:
    """`last of the three: 110x9`, `first of 3`: one of so many is told."""
    at = place - 1 - (_words(marks, place - 1, 1) in (["the"], ["my"]))
    one = kind_at(marks, at - 1) in (Kind.ORD, Kind.LASTSET, Kind.LASTREP) and _words(marks, at, 1) == ["of"]
    ends = kind_at(marks, place + 1) in (None, *EDGES, Kind.COLON, Kind.DONE) or is_entry(marks, place + 1)
    return HowFar(place + 1) if one and ends and small(marks, place) is not None else None


def _words(marks: Sequence[Mark], at: int, count: int) -> list[str]:
    return [w for m in marks[max(at, 0) : at + count] for w in m.text.split()]


def _is_free(marks: Sequence[Mark], place: int) -> bool:
    """Whether no link ties a number to the one before."""
    return kind_at(marks, place - 1) not in _TIED


def _is_done(marks: Sequence[Mark], at: int) -> int:
    """How many marks say that something is done: `done`, `in the bag`; 0 where none does."""
    first = _words(marks, at, _LONGEST)[:1]
    for phrase in _BAGGED:
        if phrase[:1] != first:
            continue
        end = at
        while end < at + len(phrase) and len(_words(marks, at, end - at)) < len(phrase):
            end += 1
        if _words(marks, at, end - at) == phrase:
            return end - at
    return int(at < len(marks) and (marks[at].kind in (Kind.DONE, Kind.FINISH) or marks[at].text in _DONE))


def _done(marks: Sequence[Mark], place: int, beside: Session) -> HowFar | None:
    """`three down two to go`, `3 of 5 done`, `set 3 of 5`."""
    count = small(marks, place)
    if count is None or not _is_free(marks, place):
        return None
    whole, at = _of(marks, place + 1)
    if whole is not None and whole < count:
        return None
    slashed = whole is not None and kind_at(marks, place + 1) is Kind.SLASH
    if slashed and (
        kind_at(marks, place - 1) in (Kind.COLON, Kind.MINI, Kind.DROP) or beside.planned not in (0, whole)
    ):
        return None  # `hammers 14s: 11/11 ✅`: two sets
    named = kind_at(marks, at) is Kind.NAME and (kind_at(marks, at + 1) in _SETS or _is_done(marks, at + 1) > 0)
    if named and kind_at(marks, place - 1) in (Kind.AND, Kind.COMMA) and kind_at(marks, place - 2) is Kind.NUM:
        return None  # `10, 9 and 10 chins ✅`
    at += named and kind_at(marks, at + 1) in _SETS
    counts = kind_at(marks, at) in _SETS or named
    if counts and marks[at].text.startswith("round") and beside.next_number == 1:
        return None
    at += counts
    said = _is_done(marks, at)
    if said and whole is None and not counts and _is_of_list(marks, place):
        return None
    at += said
    if whole is None and not said and _words(marks, at, 2) in (["of", "them"], ["of", "em"]):
        at += 2
    rest = _following_rest(marks, at) if said or whole is not None else None
    if rest is not None:
        return HowFar(rest, done=count)
    ends = at >= len(marks) or marks[at].kind in (*EDGES, *_ENDING)
    if whole is not None:
        label = kind_at(marks, place - 1) is Kind.SET
        if said or (ends and whole == beside.planned) or kind_at(marks, at) is Kind.COLON:
            return HowFar(at, done=None if label else count)
        told = any(is_entry(marks, i) for i in range(at, len(marks)))
        return HowFar(at) if told and count == beside.next_number and (ends or is_entry(marks, at)) else None
    opened = _opening(marks, place, at, count) if said and beside.next_number == 1 else None
    if opened is not None:
        return HowFar(opened, done=count)
    told = ends and _is_told(marks, place, at, bool(counts and said), beside)
    return HowFar(at, done=count) if told or (ends and said and _is_own_count(marks, place, beside)) else None


def _is_of_list(marks: Sequence[Mark], place: int) -> bool:
    """The last of `10, 9, 3 ✅` and of `minis 5, 4, 3 done`: a count of the list, which a tick or a `done` ends."""
    start = place
    while kind_at(marks, start - 1) in (Kind.COMMA, Kind.AND, Kind.NUM):
        start -= 1
    told = sum(m.kind is Kind.NUM for m in marks[start:place])
    ticked = not text_at(marks, place + 1).isascii()
    return (told >= SEVERAL and ticked) or (told > 0 and kind_at(marks, start - 1) is Kind.MINI)


def _opening(marks: Sequence[Mark], place: int, at: int, count: int) -> int | None:
    """Where the words of `2 down, both 155 for 5` end that open a sentence and count the sets that follow."""
    start = place
    while kind_at(marks, start - 1) in (Kind.FILL, Kind.NAME) or text_at(marks, start - 1) == "first":
        start -= 1
    end = past(marks, at, Kind.COMMA, Kind.COLON, Kind.FILL)
    every = kind_at(marks, end) in (Kind.ALL, Kind.EACH)
    all_of = text_at(marks, end) == "both" or kind_at(marks, end) is Kind.ALL
    if every and (not all_of or (text_at(marks, end).startswith("both") and count != SEVERAL)):
        return None
    set_at = past(marks, end + every, Kind.AT, Kind.WITH, Kind.WAS, Kind.FILL)
    opens = kind_at(marks, start - 1) in (None, Kind.STOP, Kind.LINE) and count > 1
    return end + every if opens and is_entry(marks, set_at) and (every or set_at == at) else None


def _is_own_count(marks: Sequence[Mark], place: int, beside: Session) -> bool:
    """Whether a number in a part of its own is that of the set told before it: `110x10, three down`, `. three done`."""
    start = place
    while kind_at(marks, start - 1) in (Kind.FILL, Kind.WAS, Kind.AND):
        start -= 1
    told = max(sum(is_entry(marks, i) for i in range(start)), any(m.kind is Kind.NUM for m in marks[:start]))
    parted = start > 0 and kind_at(marks, start - 1) in EDGES
    spoken = any(m.kind is Kind.WAS for m in marks[start:place])
    here = small(marks, place) in (beside.next_number + told - 1, beside.planned if spoken else None)
    return parted and told > 0 and here


def _is_told(marks: Sequence[Mark], place: int, at: int, counted: bool, beside: Session) -> bool:
    """Whether a number alone says how many are done: `2 sets in`, `that makes 4`, `thats two. 100x5`."""
    if counted:
        return kind_at(marks, at) is not Kind.FILL
    led = _words(marks, place - 2, 2)[-2:]
    if led in (["thats", "my"], ["thats", "the"], ["its", "my"]) and _is_own_count(marks, place, beside):
        return True
    if led[-1:] == ["makes"] or led in (
        ["makes", "it"],
        ["making", "it"],
        ["that", "is"],
        ["thats", "all"],
        ["was", "all"],
    ):
        return True
    if led[-1:] not in (["number"], ["#"], ["="], ["thats"], ["its"]):
        return False
    before = sum(is_entry(marks, i) for i in range(place))
    if before and led[-1:] in (["number"], ["#"]) and _is_joined(marks, place - 1):
        return True
    if before and led[-1:] == ["="] and _is_done(marks, at - 1):
        return True
    here = small(marks, place) == beside.next_number + before - 1
    if before and led[-1:] == ["thats"] and (here or _is_done(marks, at - 1)):
        return True
    thats = kind_at(marks, place - 1) is Kind.WAS and led[-1:] in (["thats"], ["its"])
    return thats and is_entry(marks, at + 1) and small(marks, place) == beside.next_number


def _is_joined(marks: Sequence[Mark], place: int) -> bool:
    """Whether `number` opens its part, or `that was` leads to it: `80x5 and that was number three`."""
    at = place - 1
    while kind_at(marks, at) in (Kind.FILL, Kind.WAS, Kind.AND):
        at -= 1
    return at < place - 1 or kind_at(marks, at) in (*EDGES, Kind.NUM)


def _of(marks: Sequence[Mark], at: int) -> tuple[int | None, int]:
    """The number in `of 5`, `out of the 5`, `/5`, and where it ends; `None` where none is said."""
    joined = 1 if _words(marks, at, 1) == ["of"] or kind_at(marks, at) is Kind.SLASH else 0
    joined = 2 if _words(marks, at, 2) == ["out", "of"] else joined
    place = at + joined
    place += joined and _words(marks, place, 1) in (["the"], ["my"])
    whole = small(marks, place)
    return (whole, place + 1) if joined and whole is not None else (None, at)


def _following_rest(marks: Sequence[Mark], at: int) -> int | None:
    """Where `two to go` behind what is done ends."""
    while kind_at(marks, at) in (Kind.FILL, Kind.AND, Kind.COMMA):
        at += 1
    found = _rest(marks, at, follows=True)
    return None if found is None else found.end


def _rest(marks: Sequence[Mark], place: int, *, follows: bool = False) -> HowFar | None:
    """`two to go`, `2 sets left`: what is still to come."""
    count = small(marks, place)
    if count is None or not _is_free(marks, place):
        return None
    sets = kind_at(marks, place + 1) in _SETS
    at = place + 1 + sets
    few = [_words(marks, at, many) for many in range(4)]
    for phrase in _TO_GO:
        if few[len(phrase)] == phrase:
            return HowFar(at + len(phrase), left=count)
    if _words(marks, at, 1) != ["left"]:
        return None
    led, name = kind_at(marks, at + 1), kind_at(marks, at + 2)
    named = led in (Kind.WITH, Kind.AT, Kind.FOR) and name is Kind.NAME
    alone = all(m.kind is Kind.FILL for m in marks[:place]) and led is Kind.STOP
    timed = any(m.kind in (Kind.SECONDS, Kind.METRES) for m in marks[:place]) and led in (None, *EDGES)
    timed = timed and not any(m.kind is Kind.RIGHT for m in marks)
    return HowFar(at + 1, left=count) if sets or follows or named or alone or timed else None


def _nth(marks: Sequence[Mark], place: int) -> HowFar | None:
    """`that's the third one in the bag`, `second set done`: how many are done with the set that is told."""
    mark, at = marks[place], place + 1
    if mark.kind is not Kind.ORD or mark.value is None:
        return None
    called = kind_at(marks, at) is Kind.DONE and marks[at].text.startswith("set")
    if not called and kind_at(marks, at) is not Kind.SET and _words(marks, at, 1) != ["one"]:
        return None
    at += not called
    said = _is_done(marks, at)
    end = at + max(said, 1)
    while kind_at(marks, end) is Kind.FILL:
        end += 1
    start = place
    while kind_at(marks, start - 1) in (Kind.FILL, Kind.WAS):
        start -= 1
    whole = kind_at(marks, start - 1) in (None, *EDGES) and kind_at(marks, end) in (None, *EDGES)
    return HowFar(end, done=int(mark.value)) if whole and said else None
