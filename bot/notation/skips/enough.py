"""What is left of one exercise, given up in words of enough: `two sets of rows was plenty`, `no more of those`.

How many sets there were is told again and is no new set: the record has as many, or the message tells them.
"""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.answer import Span
from bot.notation.bounds import FEW_SETS
from bot.notation.clauses import EDGES, kind_at, part_of, text_at
from bot.notation.kinds import Kind
from bot.notation.record import Record
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_NAMES = (Kind.NAME, Kind.WEAK)
_SETS = (Kind.SET, Kind.SETS)
_BESIDE = (*_NAMES, Kind.COLON, Kind.DASH)
_FAR = 24
"""Marks of a part that are looked at."""
_ENOUGH = frozenset(words("enough plenty sufficient ample"))
_ONLY = frozenset(words("only just"))
_LITTLE = frozenset(words(
    "only just doing did do done managed manage got had the of today tonight im i ill ive gonna this time for me in so "
    "a one them those these that it is was then and ok right well going to be session"
))  # fmt: skip
"""Words beside `only two sets`, which say nothing else."""
_KEEPING = frozenset(words(
    "keep keeping kept stay stays stayed staying stop stops stopped stopping leave leaves leaving left calling call "
    "called cap capped capping limit limited limiting hold holding held ends ended ending finish finished stick "
    "sticking stuck settle settled settling quit quitting"
))  # fmt: skip
_DENIED = frozenset(words("not isnt wasnt never arent werent more left remaining"))
_DOERS = (["i"], ["im"], ["ive"], ["you"], ["youre"], ["ill"], ["for"], ["today"], ["they"], ["my"])


def with_enough(marks: Sequence[Mark], record: Record, under: int | None) -> list[Mark]:
    """The marks with such words as those that skip. `under`: the exercise under way."""
    out = list(marks)
    for place, mark in enumerate(marks):
        if mark.kind in _SETS and kind_at(marks, place - 1) in (Kind.NUM, *_NAMES):
            _limit(out, marks, place, record, under, number=place - 1 - (kind_at(marks, place - 1) in _NAMES))
        elif mark.kind is Kind.NUM and _counts_done(marks, place, record, under):
            for at in range(*part_of(marks, place, _FAR)):
                if marks[at].kind not in _NAMES:
                    out[at] = replace(marks[at], kind=Kind.FILL, value=None)
        elif (
            mark.kind is Kind.NUM
            and text_at(marks, place - 1).split()[-1:] == ["at"]
            and kind_at(marks, place + 1) in (None, *EDGES)
        ):
            _limit(out, marks, place, record, under, number=place)
        elif mark.text in ("those", "them", "these") or mark.text.endswith((" those", " them", " these")):
            _of_those(out, marks, place)
        elif mark.kind is Kind.ORD or (mark.kind in (Kind.LASTREP, Kind.LASTSET) and "rep" not in mark.text.split()):
            _of_open(out, marks, place, record, under)
    return out


def _limit(
    out: list[Mark], marks: Sequence[Mark], place: int, record: Record, under: int | None, *, number: int
) -> None:
    """`two sets of rows is enough`, `keeping rows to two sets`: as many as are done, or told before."""
    count = marks[number].value if kind_at(marks, number) is Kind.NUM else None
    start, end = part_of(marks, place, _FAR)
    end = next((i for i in range(place, end) if marks[i].kind in (Kind.THEN, Kind.AND, Kind.PART)), end)
    start = next((i + 1 for i in range(place, start - 1, -1) if marks[i].kind is Kind.PART), start)
    named = [i for i in range(start, end) if marks[i].kind in _NAMES]
    numbers = [i for i in range(start, end) if marks[i].kind is Kind.NUM]
    if count is None or not 0 < count <= FEW_SETS or len(named) > 1 or numbers != [number]:
        return
    if kind_at(marks, end) is Kind.QUERY or not _is_limit(marks, start, number, place, end):
        return
    fit = marks[named[0]].names if named else () if under is None else (under,)
    told = any(m.kind is Kind.NUM for m in marks[:start])
    stored = [len({p.set for p in record.context(one).worked}) for one in fit]
    if len(fit) != 1 and not (told and not named):
        return
    if not (told and (not named or count > stored[0])) and stored != [count]:
        return
    for at in range(start, end):
        if at not in named:
            out[at] = replace(marks[at], kind=Kind.FILL, value=None, parts=())
    at = min(named[0] - 1, number) if named else number - (number == place)
    if at >= start:
        out[at] = replace(out[at], kind=Kind.SKIP, text="stopping")
    else:
        out[named[0] + 1] = replace(out[named[0] + 1], kind=Kind.SKIPPED, text="skipped")
    if not named:
        out[place] = replace(marks[place], kind=Kind.THEREST, text="of it")
    if kind_at(marks, end) in (Kind.COMMA, Kind.STOP, Kind.AND):
        _, stop = part_of(marks, end + 1, _FAR)
        left = {w for m in marks[end + 1 : stop] for w in m.text.split()}
        if left & _LEAVING and left <= _LEAVING | _OTHERS:
            out[end + 1 : stop] = [replace(m, kind=Kind.FILL, value=None, parts=()) for m in marks[end + 1 : stop]]


def _counts_done(marks: Sequence[Mark], place: int, record: Record, under: int | None) -> bool:
    """`only managed 2 of rows, skip the third`, `2 rows done, no third`: how many are stored, beside the next one."""
    start, end = part_of(marks, place, _FAR)
    named = [m for m in marks[start:end] if m.kind in _NAMES]
    fit = named[0].names if named else () if under is None else (under,)
    count = marks[place].value
    if len(named) > 1 or len(fit) != 1 or len({p.set for p in record.context(fit[0]).worked}) != count:
        return False
    others = [m for m in marks[start:end] if m.kind not in (*_NAMES, *_SETS, Kind.DONE, Kind.FINISH) and m.text != "of"]
    plain = all(m is marks[place] or set(m.text.split()) <= _LITTLE for m in others)
    stop = part_of(marks, end + 1, _FAR)[1] if end + 1 < len(marks) else end
    following = marks[end + 1 : stop]
    next_one = any(m.kind is Kind.ORD and m.value == count + 1 for m in following)
    denies = any(m.kind in (Kind.SKIP, Kind.SKIPPED, Kind.NO, Kind.NOT) for m in following)
    return plain and next_one and (denies or not {w for m in following for w in m.text.split()}.isdisjoint(_DENYING))


_DENYING = frozenset(words("not didnt dont wont cant couldnt havent leave left let nope nah"))


_LEAVING = frozenset(words("leaving left leave leaves skipping skipped skip binned binning dropped dropping"))
_OTHERS = frozenset(words("the other others two three 2 3 rest last final one ones third second out so and then i im"))
"""Words of the sets that are left, told behind it: `one set was plenty, leaving the other two`."""


def few_sets(marks: Sequence[Mark], record: Record, under: int | None) -> list[tuple[Span, int]]:
    """`only two sets of rows: 60x10 9`, `40x12, just the one`: the words, and the exercise whose sets are so many."""
    out: list[tuple[Span, int]] = []
    if any(set(m.text.split()) & _BROKEN_OFF or m.text in _CUT_OFF for m in marks):
        return out
    for place, mark in enumerate(marks):
        one = mark.text == "one" and text_at(marks, place - 1) in ("the", "just", "only")
        one = one and kind_at(marks, place + 1) in (None, *EDGES)
        counted = mark.kind in _SETS and kind_at(marks, place - 1) is Kind.NUM
        if not (one or counted):
            continue
        said = {w for m in marks[max(0, place - 4) : place] for w in m.text.split()}
        behind = {w for m in marks[place + 1 : place + 4] for w in m.text.split()}
        alone = text_at(marks, place + 1) == "only" or bool(said & _ONLY)
        if not alone or behind & _MORE or said & _DENIED:
            continue
        count = 1 if one else marks[place - 1].value
        after = next((m for m in marks[place + 1 : place + 3] if m.kind is Kind.NAME), None)
        name = after or next((m for m in reversed(marks[:place]) if m.kind is Kind.NAME), None)
        at = under if name is None else name.names[0] if len(name.names) == 1 else None
        if at is not None and count == len({p.set for p in record.context(at).worked}):
            out.append(((mark.start, mark.end), at))
    return out


_BROKEN_OFF = frozenset(words("alarm blackout outage evacuated evacuation powercut flood interrupted"))
_CUT_OFF = ("power cut", "electricity cut", "electric cut", "power cut out", "electricity cut out", "water cut")
"""What breaks a session off from outside: the client gives nothing up."""
_MORE = frozenset(words("left go far more remaining yet down now since already"))


def _is_limit(marks: Sequence[Mark], start: int, number: int, place: int, end: int) -> bool:
    """Whether the words beside `two sets` say that there are no more."""
    ahead = [w for m in marks[start:number] if m.kind not in _BESIDE for w in m.text.split()]
    behind = [w for m in marks[place + 1 : end] if m.kind not in _BESIDE for w in m.text.split()]
    said = {*ahead, *behind}
    if said & _DENIED - {"left"} or {"to", "go"} <= said or "left" in behind:
        return False
    if said & _ENOUGH or " ".join(behind).rstrip().endswith(("will do", "have to do", "thatll do", "that will do")):
        return True
    if said & _ONLY and said <= _LITTLE:
        return True
    if ahead[-1:] in (["at"], ["to"], ["with"], ["after"]) and set(ahead) & _KEEPING and set(behind) <= _LITTLE:
        return True
    every = next((i for i in range(place + 1, end) if marks[i].kind is Kind.ALL or marks[i].text == "all"), end)
    return bool(set(behind[:1]) & {"is", "was", "are", "were"}) and text_at(marks, every + 1).split()[:1] in _DOERS


_TO_THOSE = frozenset(words(
    "of on with for from i am im doing do did the got in today tonight me any to going gonna ive ill will be is was it "
    "all more"
))  # fmt: skip
"""Words between an end and the sets that it is of: `that's all i am doing of those`."""


def _of_those(out: list[Mark], marks: Sequence[Mark], place: int) -> None:
    """`that's all i am doing of those`, `no more of them today`, `done with those`: the exercise told last."""
    start, end = part_of(marks, place, _FAR)
    led = text_at(marks, place - 1).split()[-1:] in (["of"], ["on"], ["with"], ["for"])
    led = led or marks[place].text.split()[:-1][-1:] in (["of"], ["on"], ["with"], ["for"])
    at = next((i for i in range(start, place) if _ends_those(marks[i])), None)
    if at is None or not led or kind_at(marks, end) is Kind.QUERY:
        return
    between = {w for m in marks[at + 1 : place] for w in m.text.split()}
    after = {w for m in marks[place + 1 : end] for w in m.text.split()}
    ahead = {w for m in marks[start:at] for w in m.text.split()}
    if between <= _TO_THOSE and after <= _LITTLE and not ahead & _NOT_ENDED:
        out[at] = replace(marks[at], kind=Kind.SKIP, text="stopping")
        for i in range(at + 1, end):
            out[i] = replace(marks[i], kind=Kind.FILL)
        out[place] = replace(marks[place], kind=Kind.THEREST, text="of it")


_NOT_ENDED = frozenset(words("not havent hasnt never almost nearly when once til till until after not quite isnt"))


def _ends_those(mark: Mark) -> bool:
    """What ends the sets of `those`, behind it."""
    whole = mark.kind is Kind.FINISH and mark.text.startswith(("that", "done", "finished", "im done", "im finished"))
    return whole or mark.text in ("no more", "enough", "done", "finished", "thats enough", "thats all", "had enough")


_CUTTING = frozenset(words("bin binned ditch ditched drop dropped cut scrap scrapped chuck chucked lose sack cancel"))


def _of_open(out: list[Mark], marks: Sequence[Mark], place: int, record: Record, under: int | None) -> None:
    """`had to drop the last set`, `bailed on the third`, `bin the third row set`: one that is still to be done."""
    at = place - 1
    while kind_at(marks, at) is Kind.FILL and text_at(marks, at) in ("the", "my", "that"):
        at -= 1
    named = kind_at(marks, place + 1) in _NAMES
    fit = marks[place + 1].names if named else () if under is None else (under,)
    opens = record.context(fit[0]).open_sets if len(fit) == 1 else ()
    which = marks[place].value
    if at < 0 or not opens or (which is not None and which not in opens) or any(m.kind is Kind.NUM for m in marks[:at]):
        return
    end = place + 1 + named
    whole = kind_at(marks, end) in _SETS or text_at(marks, end) in ("one", "ones")
    whole = whole or bool({"set", "one"} & set(marks[place].text.split()))
    bails = marks[at].kind is Kind.FAILED and marks[at].text.startswith("bail")
    bails = bails and not any(m.kind is Kind.NUM for m in marks)
    cuts = bool(set(marks[at].text.split()[:1]) & _CUTTING) and (
        (which is not None and whole) or text_at(marks, at - 1).split()[-1:] == ["to"]
    )
    closes = kind_at(marks, end + (kind_at(marks, end) in _SETS or text_at(marks, end) == "one"))
    if (bails and (closes is None or closes in EDGES)) or (cuts and whole):
        out[at] = replace(marks[at], kind=Kind.SKIP, text="skip")
