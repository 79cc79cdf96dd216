"""Marks made ready for the grammar: each word of two meanings gets the one that its neighbours give it.

Filler words go, labels (`set 2`, `1)`) become one mark, sides stand before or after their numbers, links without two
numbers to link stand alone. What belongs to no set (masked ranges, counted things) is a `GAP`.
"""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.grammar import OPERANDS
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

TAILS = frozenset(
    (Kind.KG, Kind.LB, Kind.REPS, Kind.SECONDS, Kind.MINUTES, Kind.METRES, Kind.SETS, Kind.TIMES, Kind.S, Kind.M,
     Kind.HAND, Kind.TOTAL, Kind.EACH, Kind.ASSIST, Kind.ADDED, Kind.PLATES, Kind.LEFTPOST, Kind.RIGHTPOST, Kind.BODY)
)  # fmt: skip
"""What may stand after a number and say what it counts."""
LINKS = frozenset((Kind.X, Kind.FOR, Kind.AT, Kind.WITH))
PREFIXES = frozenset((Kind.SIGN, Kind.BODY, Kind.ADDED, Kind.ASSIST, Kind.PAIR))
SEPARATORS = frozenset(
    (Kind.COMMA, Kind.BREAK, Kind.LINE, Kind.STOP, Kind.QUERY, Kind.AND, Kind.THEN, Kind.COLON, Kind.OPEN, Kind.CLOSE,
     Kind.ARROW, Kind.PART)
)  # fmt: skip
SHORT_WORDS = ("reps", "sets", "kilo", "kilos", "each", "secs", "mins", "side", "rep", "set")
"""Words so common after a number that a slip in them is still seen."""


def is_number(mark: Mark | None) -> bool:
    """Whether a mark is a number."""
    return mark is not None and mark.kind in (Kind.NUM, Kind.CLOCK)


def _at(marks: Sequence[Mark], place: int) -> Mark | None:
    return marks[place] if 0 <= place < len(marks) else None


def _kind(marks: Sequence[Mark], place: int) -> Kind | None:
    mark = _at(marks, place)
    return None if mark is None else mark.kind


def shape_marks(marks: Sequence[Mark], two_sided: bool) -> list[Mark]:
    """The marks as the grammar takes them. `two_sided`: the session has an exercise that works each side by itself."""
    shaped = [m for m in _counts_in_words(list(marks)) if m.kind is not Kind.FILL]
    shaped = _warmed(_letters(shaped, two_sided))
    shaped = _ranges(shaped)
    shaped = _labels(shaped)
    shaped = _efforts(shaped)
    shaped = _sides(shaped, two_sided)
    shaped = _dropped(shaped)
    shaped = _counted(_either(shaped))
    shaped = _signs(shaped)
    return _links(shaped)


def _is_of_how_many(marks: Sequence[Mark], place: int) -> bool:
    """The `3` of `set 2 of 3` and `set 2/3`."""
    if marks[place].kind is not Kind.NUM or place < 3 or marks[place - 3].kind is not Kind.SET:
        return False
    between = marks[place - 1]
    return marks[place - 2].kind is Kind.NUM and (between.text == "of" or between.kind is Kind.SLASH)


def _warmed(marks: list[Mark]) -> list[Mark]:
    """`warmed up, 60x5` and `10 min to warm up` tell of no warm-up sets."""
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        kind = mark.kind
        if kind is Kind.WARMUP:
            ends = _kind(marks, place + 1) in (Kind.COMMA, Kind.STOP, Kind.AND, Kind.THEN, Kind.LINE)
            part = [m.kind for m in marks[place + 1 : place + 4]]
            before = [m.kind for m in marks[max(0, place - 2) : place]]
            timed = (
                part[:2] == [Kind.NUM, Kind.MINUTES] or part[1:3] == [Kind.NUM, Kind.MINUTES] or Kind.MINUTES in before
            )
            if timed or (ends and mark.text.startswith("warmed")) or _kind(marks, place + 1) is Kind.DONE:
                kind = Kind.GAP
        out.append(mark if kind is mark.kind else replace(mark, kind=kind))
    return out


_LOW = {"single": 1, "singles": 1, "double": 2, "doubles": 2, "triple": 3, "triples": 3}


def _counts_in_words(marks: list[Mark]) -> list[Mark]:
    """`twice` as two sets; `for a triple`, `single at 70` as so many repetitions."""
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        if _is_of_how_many(marks, place):
            continue
        if mark.kind is Kind.MINUTES and [m.text for m in marks[place + 1 : place + 4]] == ["and", "a", "half"]:
            whole = out.pop().value if out and out[-1].kind is Kind.NUM else None
            out.append(replace(mark, kind=Kind.NUM, value=(whole or Decimal(1)) + Decimal("0.5")))
            out.append(replace(mark, start=mark.end))
            continue
        count = _LOW.get(mark.text)
        if mark.kind is Kind.PLATES and "bar" not in mark.text.split() and not is_number(_at(marks, place - 1)):
            out.append(replace(mark, kind=Kind.FILL))
            continue
        if mark.kind is Kind.TIMES and mark.text == "twice":
            out.append(replace(mark, kind=Kind.NUM, value=Decimal(2)))
            out.append(replace(mark, kind=Kind.SETS, start=mark.end))
        elif mark.kind is Kind.MINUTES and not is_number(_at(marks, place - 1)) and mark.text in ("minute", "min"):
            half = place > 1 and marks[place - 2].text == "half"
            out.append(replace(mark, kind=Kind.NUM, value=Decimal("0.5") if half else Decimal(1)))
            out.append(replace(mark, start=mark.end))
        elif (
            mark.kind is Kind.NUM
            and mark.value is not None
            and 2 <= mark.value <= 4
            and marks[place - 1 if place else 0].text.split()[-1:]
            in (["last"], ["next"], ["other"], ["final"], ["remaining"])
            and _kind(marks, place + 1) not in (Kind.X, Kind.REPS, Kind.SETS, Kind.SET, Kind.KG, Kind.LB)
        ):
            out.append(mark)
            out.append(replace(mark, kind=Kind.SETS, start=mark.end))
        elif count is not None and (
            (out and out[-1].kind in (Kind.FOR, Kind.X)) or _kind(marks, place + 1) in (Kind.AT, Kind.WITH)
        ):
            out.append(replace(mark, kind=Kind.NUM, value=Decimal(count)))
            out.append(replace(mark, kind=Kind.REPS, start=mark.end))
        else:
            out.append(mark)
    return out


def _letters(marks: list[Mark], two_sided: bool) -> list[Mark]:
    """`l`, `r`, `s`, `m` by what they touch: sides, repetitions, dumbbells, metres; else no bearing."""
    letters = {m.kind for m in marks}
    has_left = Kind.L in letters or Kind.LEFT in letters
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        before, after = _at(marks, place - 1), _at(marks, place + 1)
        touches = mark.tight and is_number(before)
        kind = mark.kind
        if kind is Kind.L:
            kind = (
                Kind.LEFT
                if is_number(before) or is_number(after) or _kind(marks, place + 1) is Kind.COLON
                else Kind.GAP
            )
        elif kind is Kind.R:
            if has_left or (two_sided and not touches and is_number(after)):
                kind = Kind.RIGHT
            elif is_number(before):
                kind = Kind.REPS
            else:
                kind = Kind.GAP
        elif kind in (Kind.S, Kind.M) and not is_number(before):
            labels = kind is Kind.S and is_number(after) and after is not None and after.tight
            kind = Kind.SET if labels else Kind.GAP
        elif (
            kind is Kind.WEAK
            and mark.text.startswith(("dumb", "db", "kettle"))
            and before is not None
            and (is_number(before) or before.kind in (Kind.KG, Kind.LB))
        ):
            kind = Kind.HAND
        elif kind is Kind.WORD and is_number(before):
            kind = _short(mark.text) or kind
        elif kind is Kind.SET and is_number(before) and not is_number(after):
            kind = Kind.SETS
        elif kind is Kind.LB and mark.text == "#" and not is_number(before):
            kind = Kind.SET if is_number(after) else Kind.GAP
        out.append(mark if kind is mark.kind else replace(mark, kind=kind))
    return out


def _short(word: str) -> Kind | None:
    """The kind of a short word that is one slip away from one of the commonest after a number."""
    from rapidfuzz.distance import OSA  # noqa: PLC0415

    if not 3 <= len(word) <= 6:
        return None
    near = [w for w in SHORT_WORDS if w[0] == word[0] and OSA.distance(word, w, score_cutoff=1) <= 1]
    kinds = {
        "reps": Kind.REPS,
        "rep": Kind.REPS,
        "sets": Kind.SETS,
        "set": Kind.SETS,
        "kilo": Kind.KG,
        "kilos": Kind.KG,
        "each": Kind.EACH,
        "side": Kind.EACH,
        "secs": Kind.SECONDS,
        "mins": Kind.MINUTES,
    }
    return kinds[near[0]] if near and len(word) >= 4 else None


def _ranges(marks: list[Mark]) -> list[Mark]:
    """`rpe 8-9`, `2 to 3 left`: a range of effort is its middle, to the nearest half (halves between round up)."""
    out: list[Mark] = []
    at = 0
    effort: tuple[Kind, ...] = (Kind.RPE, Kind.RIR, Kind.TANK, Kind.FEELS, Kind.COULD, Kind.MORE)
    if not any(m.kind is Kind.RIGHT for m in marks):
        effort = (*effort, Kind.LEFT)
    while at < len(marks):
        mark = marks[at]
        joined = _kind(marks, at + 1) in (Kind.DASH, Kind.TO, Kind.OR, Kind.AND)
        second = _at(marks, at + 2)
        if mark.kind is Kind.NUM and _kind(marks, at + 1) is Kind.SLASH and second is not None and second.value == 10:
            rated = [m.kind for m in (*out[-1:], *marks[at + 3 : at + 4])]
            if Kind.RPE in rated and mark.value is not None and mark.value <= 10:
                out.append(replace(mark, end=second.end))
                at += 3
                continue
        if mark.kind is Kind.NUM and joined and second is not None and second.kind is Kind.NUM:
            low, high = mark.value, second.value
            before = _at(out, len(out) - 1)
            said = before is not None and before.kind in (*effort, Kind.AT)
            said = said or _kind(marks, at + 3) in effort
            if said and low is not None and high is not None and low < high <= low + 2 and high <= 10:
                is_at = before is not None and before.kind is Kind.AT
                if not (is_at and _kind(marks, at + 3) in (Kind.KG, Kind.LB, Kind.REPS)):
                    middle = ((low + high) * 1).quantize(Decimal(1)) / 2
                    out.append(replace(mark, end=second.end, value=middle, parts=()))
                    at += 3
                    continue
        out.append(mark)
        at += 1
    return out


def _labels(marks: list[Mark]) -> list[Mark]:
    """`set 2`, `2nd set`, `first` before numbers, `1)` and `1.` at a line's start: which set it is."""
    out: list[Mark] = []
    at = 0
    while at < len(marks):
        mark, after = marks[at], _at(marks, at + 1)
        starts = not out or out[-1].kind in (Kind.LINE, Kind.PART)
        if mark.kind is Kind.SET and is_number(after) and after is not None and _is_count(after):
            out.append(replace(after, kind=Kind.LABEL, start=mark.start))
            at += 2
        elif mark.kind is Kind.ORD and _kind(marks, at + 1) in (Kind.SET, Kind.LASTSET, Kind.WORKSET):
            out.append(replace(mark, kind=Kind.LABEL, end=marks[at + 1].end))
            at += 2
        elif (
            mark.kind is Kind.ORD
            and (starts or out[-1].kind in SEPARATORS or mark.text.isalpha())
            and (is_number(after) or _kind(marks, at + 1) in (Kind.COLON, Kind.WAS))
        ):
            out.append(replace(mark, kind=Kind.LABEL))
            at += 1
        else:
            out.append(mark)
            at += 1
    return out


def _is_count(mark: Mark) -> bool:
    return mark.value is not None and mark.value == int(mark.value) and 1 <= mark.value <= 12


_BULLETS = frozenset((Kind.STOP, Kind.COLON, Kind.DASH, Kind.CLOSE, Kind.BREAK))


def number_lines(marks: Sequence[Mark]) -> list[Mark]:
    """The message with the numbers of its list taken as labels: `1) 60x10 2) 60x9`, or lines numbered from 1 on.

    Before a name they number the exercises and have no bearing.
    """
    starts = [i for i, m in enumerate(marks) if m.kind is Kind.NUM and (i == 0 or marks[i - 1].kind is Kind.LINE)]
    firsts = [i for i in starts if _kind(marks, i + 1) in _BULLETS]
    listed = len(firsts) >= 2 and [marks[i].value for i in firsts] == [Decimal(n) for n in range(1, len(firsts) + 1)]
    out: list[Mark] = []
    at = 0
    opened = 0
    while at < len(marks):
        mark = marks[at]
        opened += {Kind.OPEN: 1, Kind.CLOSE: -1}.get(mark.kind, 0) if opened or mark.kind is Kind.OPEN else 0
        closed = not opened and mark.kind is Kind.NUM and _is_count(mark) and _kind(marks, at + 1) is Kind.CLOSE
        if (listed and at in firsts) or (closed and is_number(_next_said(marks, at + 2))):
            named = _next_said(marks, at + 2)
            numbers_exercises = named is not None and named.kind in (Kind.NAME, Kind.WEAK)
            out.append(replace(mark, kind=Kind.GAP if numbers_exercises else Kind.LABEL))
            at += 2
            continue
        out.append(mark)
        at += 1
    return out


def _next_said(marks: Sequence[Mark], place: int) -> Mark | None:
    while place < len(marks) and marks[place].kind in (Kind.FILL, Kind.GAP):
        place += 1
    return _at(marks, place)


def _efforts(marks: list[Mark]) -> list[Mark]:
    """Efforts before or after their number; `2 left` is one where no side is meant; `had` only with `more`."""
    sided = any(m.kind is Kind.RIGHT for m in marks)
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        before, after = _at(out, len(out) - 1), _at(marks, place + 1)
        kind = mark.kind
        if kind is Kind.REPS and is_number(before) and _kind(marks, place + 1) is Kind.TANK:
            continue
        if kind in (Kind.RPE, Kind.RIR) and not is_number(after):
            reaches = after is not None and after.kind in (Kind.COLON, Kind.AT, Kind.WAS, Kind.DASH)
            if reaches and is_number(_at(marks, place + 2)):
                out.append(mark)
                continue
            post = Kind.RPEPOST if kind is Kind.RPE else Kind.RIRPOST
            kind = post if is_number(before) else Kind.GAP
        elif kind is Kind.AT and before is not None and before.kind is Kind.LASTSET and _rates_last(marks, place, out):
            kind = Kind.RPE
        elif kind in (Kind.COLON, Kind.AT, Kind.WAS, Kind.DASH) and before is not None:
            if before.kind in (Kind.RPE, Kind.RIR) and is_number(after):
                continue
            if kind is Kind.AT and after is not None and after.kind in (Kind.RPE, Kind.RIR):
                continue
        elif kind is Kind.LEFT and is_number(before) and not sided and not mark.tight:
            kind = Kind.TANK if mark.text == "left" and _small(before) else kind
        elif kind is Kind.EMPTY and mark.text.endswith("failed") and after is not None and after.kind is Kind.ORD:
            kind = Kind.FAILED
        elif kind is Kind.FEELS and not (is_number(after) and after is not None and _is_scale(after)):
            kind = Kind.GAP
        elif kind is Kind.COULD:
            more = _kind(marks, place + 2) in (Kind.MORE, Kind.TANK, Kind.LEFT)
            more = more and is_number(after)
            if not (more or _kind(marks, place + 1) is Kind.ANOTHER):
                kind = Kind.GAP if is_number(after) is False else Kind.FILL
        elif kind is Kind.TANK and not (before is not None and before.kind in (Kind.NUM, Kind.ANOTHER)):
            kind = Kind.GAP
        if kind is not Kind.FILL:
            out.append(mark if kind is mark.kind else replace(mark, kind=kind))
    return out


def _rates_last(marks: Sequence[Mark], place: int, before: Sequence[Mark]) -> bool:
    """`70: 6 6 5, last one at 9`: the effort of the last set, where its repetitions were said before."""
    after = _at(marks, place + 1)
    ends = _at(marks, place + 2) is None or _kind(marks, place + 2) in SEPARATORS
    said = sum(is_number(m) for m in before) >= 2
    return ends and said and after is not None and after.kind is Kind.NUM and _is_scale(after)


def _guesses(marks: Sequence[Mark], place: int) -> bool:
    """Whether a guess stands before a number: `maybe 2 more`."""
    return any(m.text in _GUESSING for m in marks[max(0, place - 1) : place])


_GUESSING = ("maybe", "probably", "easily", "about", "possibly", "perhaps")


def _small(mark: Mark | None) -> bool:
    return mark is not None and mark.value is not None and mark.value <= 10


def _is_scale(mark: Mark) -> bool:
    return mark.value is not None and 5 <= mark.value <= 10


def _sides(marks: list[Mark], two_sided: bool) -> list[Mark]:
    """Sides before their numbers, or after: whichever the first one is holds for the message."""
    places = [i for i, m in enumerate(marks) if m.kind in (Kind.LEFT, Kind.RIGHT)]
    if not places:
        return marks
    if not two_sided:
        return [replace(m, kind=Kind.GAP) if m.kind in (Kind.LEFT, Kind.RIGHT) else m for m in marks]
    first = places[0]
    before, after = _at(marks, first - 1), _at(marks, first + 1)
    numbered = is_number(after) or (after is not None and after.kind in (Kind.COLON, Kind.DASH))
    follows = before is not None and (is_number(before) or before.kind in TAILS)
    end = _at(marks, places[-1] + 1)
    trailing = end is None or not (is_number(end) or end.kind in (Kind.COLON, Kind.DASH))
    is_post = follows and (not numbered or (trailing and len(places) > 1) or marks[first].tight)
    out = []
    for place, mark in enumerate(marks):
        if place in places and is_post:
            kind = Kind.LEFTPOST if mark.kind is Kind.LEFT else Kind.RIGHTPOST
            out.append(replace(mark, kind=kind))
        else:
            out.append(mark)
    return out


def _dropped(marks: list[Mark]) -> list[Mark]:
    """`8 on the drop` becomes `drop 8`; `4 4 3 minis` becomes `minis 4 4 3`."""
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        kind = mark.kind
        counted = len(out) < 2 or out[-2].kind not in LINKS
        if kind is Kind.MINI and mark.text.endswith(" of") and out and out[-1].kind is Kind.NUM and counted:
            count = out.pop()
            out += [mark, count, replace(mark, kind=Kind.SETS, start=count.end, end=count.end)]
            continue
        leads = (
            kind in (Kind.DROP, Kind.MINI)
            and not any(is_number(m) for m in out)
            and _kind(marks, place + 1) is Kind.COMMA
            and is_number(_at(marks, place + 2))
        )
        trailing = kind in (Kind.DROP, Kind.MINI) and not _reaches(marks, place + 1) and not leads
        if trailing and kind is Kind.DROP and mark.text.split()[0] not in ("drop", "drops", "dropset", "dropsets"):
            out.append(replace(mark, kind=Kind.GAP))
            continue
        if kind is Kind.DROPPED or (trailing and out and (is_number(out[-1]) or out[-1].kind in TAILS)):
            start = len(out)
            while start > 0 and out[start - 1].kind not in SEPARATORS and out[start - 1].kind is not Kind.NAME:
                if start < len(out) and is_number(out[start]) and is_number(out[start - 1]):
                    break
                if kind is not Kind.MINI and start < len(out) and out[start - 1].kind in (Kind.PLUS, Kind.SLASH):
                    break
                if kind is Kind.MINI and start < len(out) and out[start - 1].kind in (Kind.X, *TAILS):
                    break
                start -= 1
            if kind is not Kind.MINI:
                kind = Kind.DROP
            out.insert(
                start,
                replace(mark, kind=kind, start=out[start].start, end=out[start].start) if start < len(out) else mark,
            )
            joins = (Kind.AND, Kind.THEN, Kind.COMMA, Kind.PLUS, Kind.SLASH)
            if kind is Kind.DROP and start > 0 and out[start - 1].kind in joins:
                out.pop(start - 1)
            continue
        out.append(mark)
    return out


def _reaches(marks: Sequence[Mark], place: int) -> bool:
    """Whether a number follows, with at most a link or a colon before it."""
    for mark in marks[place : place + 3]:
        if is_number(mark) or mark.kind in (Kind.BODY, Kind.SAMELOAD):
            return True
        if mark.kind not in (
            Kind.COLON,
            Kind.AT,
            Kind.WITH,
            Kind.FOR,
            Kind.WAS,
            Kind.DASH,
            Kind.TO,
            Kind.PLUS,
            Kind.X,
            Kind.SIGN,
        ):
            return False
    return False


def _either(marks: list[Mark]) -> list[Mark]:
    """`twelve or thirteen`: not known which."""
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        if mark.kind is Kind.OR and is_number(_at(marks, place - 1)) and is_number(_at(marks, place + 1)):
            out.append(replace(mark, kind=Kind.SLIP))
        else:
            out.append(mark)
    return out


def _counted(marks: list[Mark]) -> list[Mark]:
    """A bare number that counts something outside the lexicon (`2 coffees`), or sets to come, is no set's."""
    out = list(marks)
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.NUM:
            continue
        before, after = _kind(marks, place - 1), _kind(marks, place + 1)
        weighed = mark.value is not None and (mark.value >= 40 or mark.value != int(mark.value))
        if before is Kind.BODY and weighed and after not in LINKS:
            out[place] = replace(mark, kind=Kind.COUNTED)
            out[place - 1] = replace(marks[place - 1], kind=Kind.GAP)
            continue
        if before in LINKS or before in PREFIXES or before in (Kind.SIGN, Kind.DROP, Kind.MINI, Kind.PLUS):
            continue
        if after is Kind.WORD or (after is Kind.SETS and _kind(marks, place + 2) in (Kind.TANK, Kind.LEFT, Kind.MORE)):
            out[place] = replace(mark, kind=Kind.SLIP if before in (Kind.KG, Kind.LB) else Kind.COUNTED)
    return out


def _signs(marks: list[Mark]) -> list[Mark]:
    """A `+` or `-` that touches the number after it, or `minus`, at the start of an entry is its sign."""
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        after = _at(marks, place + 1)
        before = out[-1] if out else None
        if mark.kind is Kind.MINUS:
            out.append(replace(mark, kind=Kind.SIGN if is_number(after) else Kind.GAP, text="-"))
            continue
        if (
            mark.kind is Kind.PLUS
            and not out
            and [_kind(marks, place + n) for n in (1, 2, 3)] == [Kind.NUM, Kind.PLUS, Kind.NUM]
        ):
            out.append(replace(mark, kind=Kind.MINI))
            continue
        if mark.kind in (Kind.PLUS, Kind.DASH) and after is not None and is_number(after):
            free = before is None or not (is_number(before) or before.kind in TAILS) or before.kind is Kind.BODY
            loose = before is not None and is_number(before) and not mark.tight and after.tight
            if (
                after.tight
                and (free or (mark.kind is Kind.DASH and loose))
                and not (before is not None and before.kind is Kind.BODY and mark.kind is Kind.PLUS)
            ):
                out.append(replace(mark, kind=Kind.SIGN))
                continue
        out.append(mark)
    return out


def _links(marks: list[Mark]) -> list[Mark]:
    """Links that join two amounts stay; an `x` that leads a number is `LEADX`; others have no bearing."""
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        kind = mark.kind
        if kind in LINKS:
            ends = _ends_amount(out)
            starts = _kind(marks, place + 1) in OPERANDS or (
                _kind(marks, place + 1) in PREFIXES and is_number(_at(marks, place + 2))
            )
            rated = _kind(marks, place + 2) in (Kind.TANK, Kind.RPEPOST, Kind.RIRPOST) and kind is not Kind.X
            if rated or not (ends and starts):
                lead = kind is Kind.X and is_number(_at(marks, place + 1))
                at = not rated and kind is Kind.AT and mark.text.startswith("@") and is_number(_at(marks, place + 1))
                kind = Kind.LEADX if lead else Kind.LEADAT if at else Kind.GAP
                if kind is Kind.GAP and mark.kind is not Kind.X:
                    continue
        elif (kind is Kind.PLUS and out and out[-1].kind is Kind.BODY and not is_number(_at(marks, place + 1))) or (
            kind is Kind.SIGN and out and out[-1].kind is Kind.BODY and not is_number(_at(marks, place + 1))
        ):
            continue
        elif kind in _UNREAD:
            kind = Kind.GAP
        out.append(mark if kind is mark.kind else replace(mark, kind=kind))
    return out


def _ends_amount(out: list[Mark]) -> bool:
    """Whether an amount ends here: a number or body weight, with what may stand after it."""
    place = len(out) - 1
    while place >= 0 and out[place].kind in TAILS and out[place].kind not in OPERANDS:
        place -= 1
    rated = place > 0 and out[place - 1].kind in (Kind.RPE, Kind.RIR, Kind.FEELS, Kind.FAILED)
    return place >= 0 and out[place].kind in OPERANDS and not rated


_UNREAD = frozenset(
    (Kind.WORD, Kind.WEAK, Kind.HOURS, Kind.L, Kind.R, Kind.AGAIN, Kind.FINISH, Kind.UNDONE, Kind.SKIP, Kind.SKIPPED,
     Kind.NO, Kind.THEREST, Kind.EXCEPT, Kind.INSTEAD, Kind.OTHERTIME, Kind.TALKNUM, Kind.ASKING, Kind.UNITALL,
     Kind.COUNTED, Kind.MINUS, Kind.FILL)
)  # fmt: skip
