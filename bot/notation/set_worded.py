"""Sets in everyday words: `nine lots of sixty`, `ground out the 9th at 60`, `60 kg got me 8`, `24 reps in 3 even sets`.

Each is put as the rules know it (`9 reps at 60`, `60 for 8`, `3 sets of 8`); and what only binds two exercises together
(`both first sets`, `again` before a name, why one was left for another) goes. Common wordings, no source.
"""

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, replace
from decimal import Decimal

from bot.notation.bounds import EARLIEST_FAILED, FEW_SETS, MOST_REPS
from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.order.steps import is_lacking, said_in
from bot.notation.tokens import Mark
from bot.notation.worded import ends_clause, opens_clause, sentence_of
from bot.notation.wordlist import words

_TIMES_DONE = frozenset(words("lots goes lifts pulls presses pushes strokes tries attempts efforts moves shots cycles"))
_OVER = frozenset(words("in over across through from as into within split spread divided"))
_EVEN = frozenset(words("even equal identical straight matching same like equally sized similar"))
_REACHED = frozenset(words("did got reached made hit after at finished completed ground to with on managed racked"))
_COUNTED = frozenset(words("count number tally score result total figure"))
_WENT = frozenset(
    words("went fell dropped slipped sank came down were was are now back declined reduced decreased up rose")
)
_EARNED = frozenset(words("got gave earned bought made yielded brought"))
_TAKEN = frozenset(words("taken busy occupied full free used hogged"))
_WHILE = frozenset(words("while as because since cause cos coz when"))
_TO_COME = frozenset(words("you report log coming in note"))
_MEASURES = (Kind.METRES, Kind.M, Kind.SECONDS, Kind.S, Kind.MINUTES, Kind.X, Kind.FOR)
_LOADS = (Kind.KG, Kind.LB)
_NAMES = (Kind.NAME, Kind.WEAK)


def with_sets_worded(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with sets so worded in plain ones."""
    out = list(marks)
    said = said_in(out)
    if Kind.NUM not in said:
        return out
    for one in _PUT:
        if is_lacking(one.needs, said):
            continue
        before, place, put = list(out), 0, one.put
        while place < len(out):
            put(out, place)
            place += 1
        said = said if out == before else said_in(out)
    return out


def _gap(mark: Mark) -> Mark:
    return replace(mark, kind=Kind.GAP, value=None, parts=(), names=())


def _lots(out: list[Mark], at: int) -> None:
    """`nine lots of sixty`, `11 pulls at 50`, `11 rows done at 50`."""
    link = at + 2
    if out[at].kind is Kind.NUM and kind_at(out, at + 1) in _NAMES and text_at(out, link).split()[:1] == ["done"]:
        led = text_at(out, link).split()[-1] in ("at", "with", "on")
        if led and kind_at(out, link + 1) is Kind.NUM:
            out[link] = replace(out[link], kind=Kind.AT, text="at")
            return
    named = kind_at(out, at + 1) in _NAMES and text_at(out, link) == "done"
    counted = set(text_at(out, at + 1).split()) & _TIMES_DONE
    if out[at].kind is not Kind.NUM or kind_at(out, at - 1) in (Kind.X, Kind.FOR) or not (named or counted):
        return
    leads = link + named
    linked = text_at(out, leads) in ("of", "using") or kind_at(out, leads) in (Kind.AT, Kind.WITH)
    if not linked or kind_at(out, leads + 1) is not Kind.NUM or kind_at(out, leads + 2) in _MEASURES:
        return
    if any(m.text.split()[:1] == ["every"] for m in out[:at]):  # `18 every push, four pushes at 90`: four sets
        return
    if text_at(out, leads) == "of" and (out[leads + 1].value or 0) <= MOST_REPS:  # `3 lots of 10` are three sets
        return
    if kind_at(out, leads + 2) is Kind.WORD and not ends_clause(out, leads + 2):  # `5 tries at 60 levels`
        return
    if named:
        out[link] = _gap(out[link])
    else:
        out[at + 1] = replace(out[at + 1], kind=Kind.REPS, text="reps", names=())
        out[leads] = replace(out[leads], kind=Kind.AT, text="at")


def _nth(out: list[Mark], at: int) -> None:
    """`ground out the 9th at 60`, `racked it after rep nine, 60 on there`: how many were done."""
    value = out[at].value
    start, end = sentence_of(out, at)
    numbers = [i for i in range(start, end) if out[i].kind is Kind.NUM and i != at]
    led = {w for m in out[max(start, at - 4) : at] for w in m.text.split()}
    nth = out[at].kind is Kind.ORD or (out[at].kind is Kind.NUM and text_at(out, at - 1) == "rep")
    if not nth or value is None or value <= EARLIEST_FAILED or len(numbers) != 1 or not led & _REACHED:
        return
    behind = at + 1 + (kind_at(out, at + 1) is Kind.REPS)
    whole = kind_at(out, behind) in (Kind.AT, Kind.WITH, Kind.COMMA, None) and text_at(out, behind) not in ("on the",)
    failed = any(m.kind in (Kind.FAILED, Kind.SKIP) or "set" in m.text.split() for m in out[start:at])
    if not whole or failed or kind_at(out, behind + 1) is not Kind.NUM or (out[behind + 1].value or 0) <= value:
        return
    out[at] = replace(out[at], kind=Kind.NUM)
    if text_at(out, at - 1) == "rep":
        out[at - 1] = _gap(out[at - 1])
    if behind == at + 1:
        out.insert(at + 1, Mark(Kind.REPS, "reps", out[at].end, out[at].end))


def _count(out: list[Mark], at: int) -> None:
    """`9 was the count for set two`: repetitions."""
    end = at + 1
    while end < at + 5 and (kind_at(out, end) is Kind.WAS or text_at(out, end) in ("the", "my", "rep")):
        end += 1
    said = [m.text for m in out[at + 1 : end]]
    if out[at].kind is Kind.NUM and len(said) > 1 and text_at(out, end) in _COUNTED and opens_clause(out, at):
        out[at + 1 : end + 1] = [Mark(Kind.REPS, "reps", out[at + 1].start, out[end].end)]


def _reps_went(out: list[Mark], at: int) -> None:
    """`reps went to 9`."""
    if out[at].kind is not Kind.REPS or kind_at(out, at - 1) is Kind.NUM:
        return
    start = end = at + 1 + (kind_at(out, at + 1) is Kind.COMMA)
    while end < at + 5 and set(text_at(out, end).split()) & _WENT and kind_at(out, end) is not Kind.NUM:
        end += 1
    to = kind_at(out, end) is Kind.TO or text_at(out, end - 1).endswith(" to")
    number = end + (kind_at(out, end) is Kind.TO)
    if end > start and to and kind_at(out, number) is Kind.NUM and kind_at(out, number + 1) not in (Kind.X, *_LOADS):
        reps = replace(out[at], start=out[number].end, end=out[number].end)
        out[at : number + 1] = [out[number], reps]


def _earned(out: list[Mark], at: int) -> None:
    """`60 kg got me 8`."""
    verb = at + 1 + (kind_at(out, at + 1) in _LOADS)
    said = [w for m in out[verb : verb + 2] for w in m.text.split()][:2]
    if out[at].kind is not Kind.NUM or len(said) < 2 or said[0] not in _EARNED or said[1] != "me":
        return
    end = verb + (1 if len(text_at(out, verb).split()) > 1 else 2)
    end += text_at(out, end) in ("a", "an", "about", "only", "just")
    behind = end + 1 + (kind_at(out, end + 1) is Kind.REPS)
    if kind_at(out, end) is Kind.NUM and (ends_clause(out, behind) or kind_at(out, behind) is not Kind.WORD):
        out[verb:end] = [Mark(Kind.FOR, "for", out[verb].start, out[end - 1].end)]


def _in_all(out: list[Mark], at: int) -> None:
    """`26 reps over three sets: 9, 9, 8`, `24 reps in three even sets`: the sum of the sets."""
    link = at + 1 + (kind_at(out, at + 1) is Kind.REPS)
    count = link
    while count < link + 3 and set(text_at(out, count).split()) <= _OVER and text_at(out, count).split():
        count += 1
    sets = count + 1
    while set(text_at(out, sets).split()) & _EVEN:
        sets += 1
    total, few = out[at].value, out[count].value if kind_at(out, count) is Kind.NUM else None
    if out[at].kind is not Kind.NUM or count == link or not total or not few or kind_at(out, sets) is not Kind.SETS:
        return
    if few > FEW_SETS or few != int(few) or kind_at(out, at - 1) in (Kind.X, Kind.FOR, Kind.AT):
        return
    listed = [m.value or Decimal(0) for m in out[sets + 1 :] if m.kind is Kind.NUM]
    if any(sum(listed[i : i + int(few)]) == total for i in range(len(listed))):
        out[at : sets + 1] = [_gap(m) for m in out[at : sets + 1]]
        return
    each = total / few
    counted = kind_at(out, at + 1) is Kind.REPS
    if each == int(each) and (sets > count + 1 or (counted and total > MOST_REPS // 2)):
        reps = replace(out[at], value=each, text=str(each), parts=())
        number, word = replace(out[count], start=out[at].start), out[sets]
        out[at : sets + 1] = [number, replace(word, text="sets of"), reps, Mark(Kind.REPS, "reps", reps.end, reps.end)]


def _evenly(out: list[Mark], at: int) -> None:
    """`3 identical sets of row`: alike, and the same as none before."""
    if (
        kind_at(out, at - 1) is Kind.NUM
        and kind_at(out, at + 1) is Kind.SETS
        and out[at].text in _EVEN | {"exact same"}
    ):
        del out[at]


def _arrow(out: list[Mark], at: int) -> None:
    """`bench → 60x9`: its sets."""
    if out[at].kind is Kind.ARROW and kind_at(out, at - 1) is Kind.NAME and kind_at(out, at + 1) is Kind.NUM:
        out[at] = replace(out[at], kind=Kind.COLON, text=":")


def _both_nth(out: list[Mark], at: int) -> None:
    """`bench 60x9, row 50x12, both first sets`: which ones they were, where two exercises are told."""
    if text_at(out, at).split()[:1] not in (["both"], ["each"]) or not opens_clause(out, at):
        return
    end = at + 1
    while end < len(out) and (not ends_clause(out, end)) and end < at + 5:
        end += 1
    said = {w for m in out[at:end] for w in m.text.split()}
    numbered = any(
        m.kind is Kind.NUM and text_at(out, i - 1) in ("set", "round") for i, m in enumerate(out[:end]) if i > at
    )
    nth = numbered or any(m.kind in (Kind.ORD, Kind.LASTSET) for m in out[at:end])
    named = {m.names for m in out[:at] if m.kind is Kind.NAME}
    told = len(named) > 1 and {"set", "sets", "round", "rounds", "ones", "one"} & said
    if nth and told and (end == len(out) or ends_clause(out, end)):
        out[at:end] = [_gap(m) for m in out[at:end]]


def _again_before_name(out: list[Mark], at: int) -> None:
    """`bench 60 for 9 and again row 50 for 12`."""
    name = at + 1 + (text_at(out, at + 1) == "the")
    told = kind_at(out, name) is Kind.NAME and kind_at(out, name + 1) is Kind.NUM
    if told and out[at].kind is Kind.SAME and out[at].text == "and again":
        out[at] = replace(out[at], kind=Kind.AND, text="and")
    before = kind_at(out, at - 1) in (Kind.AND, Kind.THEN, Kind.COMMA)
    if out[at].kind is Kind.AGAIN and before and told:
        out[at] = _gap(out[at])


def _while_taken(out: list[Mark], at: int) -> None:
    """`went to the row while the bench was taken, 50x12`: why, and no set of the bench."""
    if text_at(out, at) not in _WHILE:
        return
    name = at + 1 + (text_at(out, at + 1) in ("the", "my"))
    end = name + 1
    while end < name + 5 and end < len(out) and not ends_clause(out, end):
        end += 1
    said = {w for m in out[name + 1 : end] for w in m.text.split()}
    if kind_at(out, name) in _NAMES and said & _TAKEN and not any(m.kind is Kind.NUM for m in out[at:end]):
        del out[at : end + (at > 0 and kind_at(out, end) is Kind.COMMA)]


def _announced(out: list[Mark], at: int) -> None:
    """`two more sets for you, bench 60 for 9 plus row 50 for 12`."""
    more = at + 1 + (text_at(out, at + 1) in ("more", "new", "quick", "further", "extra"))
    if at or out[at].kind not in (Kind.NUM, Kind.ANOTHER) or kind_at(out, more) is not Kind.SETS:
        return
    end = more + 1
    while end < len(out) and not ends_clause(out, end) and kind_at(out, end) is not Kind.COLON and end < more + 5:
        end += 1
    said = {w for m in out[more + 1 : end] for w in m.text.split()}
    pairs = sum(m.kind in (Kind.X, Kind.FOR, Kind.AT) and kind_at(out, i + 1) is Kind.NUM for i, m in enumerate(out))
    if said & _TO_COME and pairs == out[at].value:
        out[at : end + 1] = [_gap(m) for m in out[at : end + 1]]


def _as_before(out: list[Mark], at: int) -> None:
    """`weight like before`, `repeated the weight`, `load the same`: the same load."""
    word = at + 1 + (text_at(out, at + 1) in ("the", "my", "was", "is", "stayed"))
    end = None
    if text_at(out, at) in _WEIGHTS and opens_clause(out, at):
        word += text_at(out, word) == "the"
        end = word + 1 if kind_at(out, word) is Kind.SAME else None
    elif out[at].kind is Kind.SAME and out[at].text in _REPEATED and text_at(out, word) in _WEIGHTS:
        end = word + 1
    if end is not None and (end == len(out) or ends_clause(out, end)):
        out[at:end] = [Mark(Kind.SAMELOAD, "same weight", out[at].start, out[end - 1].end)]


_WEIGHTS = frozenset(words("weight load kilos poundage weights"))
_REPEATED = frozenset(words("repeated repeat repeating matched same"))


def _rested(out: list[Mark], at: int) -> None:
    """`with full rest`: no rest of the session."""
    if out[at].kind is Kind.THEREST and text_at(out, at - 1).split()[-1:] and text_at(out, at - 1).split()[-1] in _LONG:
        out[at] = replace(out[at], kind=Kind.FILL)


_LONG = frozenset(
    words("full long longer good proper more enough extra short shorter decent complete little some big solid")
)


def _spoken_times(out: list[Mark], at: int) -> None:
    """`moved sixty nine times`: nine repetitions with sixty."""
    times = out[at].kind is Kind.TIMES and out[at].text == "times"
    if times and kind_at(out, at - 1) is Kind.NUM and len(out[at - 1].parts) > 1:
        out[at] = replace(out[at], kind=Kind.REPS, text="reps")


def _twice(out: list[Mark], at: int) -> None:
    """`40x12, then twice for 10`: two sets of as many repetitions."""
    led = at - 1
    while kind_at(out, led) in (Kind.FILL, Kind.COMMA):
        led -= 1
    number = at + 1 + (kind_at(out, at + 1) in (Kind.FOR, Kind.X) or text_at(out, at + 1) == "at")
    told = kind_at(out, number) is Kind.NUM and (out[number].value or MOST_REPS + 1) <= MOST_REPS
    ends = text_at(out, number + 1) == "@" or kind_at(out, number + 1) in _ENDED
    before = [m.kind for m in out[max(0, led - 3) : led] if m.kind not in (Kind.REPS, Kind.COMMA)]
    follows = kind_at(out, led) is Kind.THEN and before[-1:] == [Kind.NUM]
    if out[at].text != "twice" or not (follows and told and ends):
        return
    two = replace(out[at], kind=Kind.NUM, value=Decimal(2), parts=())
    out[at:number] = [two, replace(out[at], kind=Kind.SETS, text="sets of", start=two.end)]


_ENDED = (None, Kind.REPS, Kind.COMMA, Kind.STOP, Kind.LINE, Kind.RPE, Kind.RIR)


def _loaded(out: list[Mark], at: int) -> None:
    """`60 loaded, nine in the books`, `nine reps, 60 on there`: the load by its number alone."""
    end = at + 1 + (kind_at(out, at + 1) in _LOADS)
    start = end
    while end < at + 4 and text_at(out, end) in _ON_BAR:
        end += 1
    said = " ".join(m.text for m in out[start:end])
    whole = end == len(out) or kind_at(out, end) in (Kind.COMMA, Kind.STOP, Kind.DASH)
    others = sum(m.kind is Kind.NUM for m in out) == 2
    if out[at].kind is not Kind.NUM or not others or not whole or not opens_clause(out, at):
        return
    if said in _BEING_ON:
        out[start:end] = []
    elif said == "in the books" or text_at(out, start) == "in the books":
        out[start : max(end, start + 1)] = [Mark(Kind.REPS, "reps", out[start].start, out[start].start)]


_ON_BAR = frozenset(
    (
        *words("loaded on there it bar board up the in books"),
        "on the",
        "the bar",
        "on the bar",
        "in the",
        "in the books",
    )
)
_BEING_ON = ("loaded", "on there", "on it", "on the bar", "on board", "loaded up", "on bar")


def _as_written(out: list[Mark], at: int) -> None:
    """`nine reps. Sixty as written`, `nine. Load the same`: the load of the repetitions told just before."""
    start, end = sentence_of(out, at)
    lone = out[at].kind is Kind.SAMELOAD and (start, end) == (at, at + 1)
    planned = out[at].kind is Kind.PLANNED and [m.kind for m in out[start:end]] == [Kind.NUM, Kind.PLANNED]
    if not (lone or planned) or kind_at(out, start - 1) is not Kind.STOP:
        return
    before, _ = sentence_of(out, start - 2)
    told = [m.kind for m in out[before : start - 1] if m.kind in (Kind.NUM, Kind.X, Kind.FOR, Kind.AT, Kind.WITH)]
    if told[:1] == [Kind.NUM] and told.count(Kind.NUM) == 1 and Kind.X not in told:
        out[start - 1] = replace(out[start - 1], kind=Kind.COMMA, text=",")
        if planned:
            out[at] = _gap(out[at])


def _sets_of_name(out: list[Mark], at: int) -> None:
    """`3 sets of row: 50kg x 10`: so many sets of it."""
    few = at == 0 and out[at].kind is Kind.NUM and (out[at].value or 0) <= FEW_SETS
    name = at + 2
    while kind_at(out, name) in (Kind.GAP, Kind.FILL) or text_at(out, name) in ("on the", "on", "of"):
        name += 1
    if not few or kind_at(out, at + 1) is not Kind.SETS or kind_at(out, name) is not Kind.NAME:
        return
    rest = out[name + 1 :]
    while rest and rest[-1].kind is Kind.STOP:
        rest = rest[:-1]
    linked = [m.kind for m in rest if m.kind not in (*_LOADS, Kind.COLON, Kind.REPS, Kind.FILL, Kind.COMMA, Kind.STOP)]
    if linked in ([Kind.NUM, Kind.X, Kind.NUM], [Kind.NUM, Kind.FOR, Kind.NUM]) and rest[-1].kind in (
        Kind.NUM,
        Kind.REPS,
    ):
        times = Mark(Kind.X, "x", rest[-1].end, rest[-1].end)
        shown = [m for m in rest if m.kind is not Kind.REPS]
        out[:] = [out[name], *shown, times, out[at]]


def _off_chest(out: list[Mark], at: int) -> None:
    """`pushed 60 kg off my chest nine times`: nine repetitions."""
    start = end = at + 1 + (kind_at(out, at + 1) in _LOADS)
    while end < at + 7 and set(text_at(out, end).split()) <= _WHERE_TO and text_at(out, end).split():
        end += 1
    said = {w for m in out[start:end] for w in m.text.split()} & _ABOVE
    times = bool(said) and text_at(out, end + 1) == "times"
    if out[at].kind is Kind.NUM and end > start and kind_at(out, end) is Kind.NUM and times:
        out[start:end] = []


_ABOVE = frozenset(words("chest up overhead head lockout floor ground"))
_WHERE_TO = frozenset(
    words("off my the chest up overhead over head to lockout from floor ground and down all way the up")
)


@dataclass(frozen=True, slots=True)
class _Wording:
    """One wording put plainly by `put`, place by place; nothing changes unless something of each of `needs` is said."""

    put: Callable[[list[Mark], int], None]
    needs: tuple[frozenset[str], ...]


def _wording(put: Callable[[list[Mark], int], None], *needs: Iterable[str]) -> _Wording:
    return _Wording(put, tuple(frozenset(need) for need in needs))


_PUT = (
    _wording(_lots, {"done", *_TIMES_DONE}),
    _wording(_nth, {Kind.ORD, "rep"}, _REACHED),
    _wording(_count, _COUNTED),
    _wording(_reps_went, {Kind.REPS}, _WENT),
    _wording(_earned, _EARNED, {"me"}),
    _wording(_in_all, {Kind.SETS}, _OVER),
    _wording(_evenly, {Kind.SETS}, {"exact", *_EVEN}),
    _wording(_arrow, {Kind.ARROW}),
    _wording(_both_nth, {"both", "each"}),
    _wording(_again_before_name, {Kind.SAME, Kind.AGAIN}, {Kind.NAME}),
    _wording(_while_taken, _WHILE, _TAKEN),
    _wording(_announced, {Kind.SETS}, _TO_COME),
    _wording(_as_before, {Kind.SAME}, _WEIGHTS),
    _wording(_rested, {Kind.THEREST}, _LONG),
    _wording(_spoken_times, {Kind.TIMES}),
    _wording(_twice, {"twice"}, {Kind.THEN}),
    _wording(_loaded, {"loaded", "there", "it", "bar", "board", "books"}),
    _wording(_as_written, {Kind.SAMELOAD, Kind.PLANNED}, {Kind.STOP}),
    _wording(_sets_of_name, {Kind.SETS}, {Kind.NAME}),
    _wording(_off_chest, _ABOVE, {"times"}),
)
