"""Each name as one mark."""

from collections.abc import Sequence

from bot.notation.abbreviations import singular
from bot.notation.clauses import EDGES, kind_at, part_of, text_at
from bot.notation.kinds import Kind
from bot.notation.names import Index, links, read_names, turned
from bot.notation.quick import replace
from bot.notation.spoken import NUMBER_WORDS, TENS
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_OF_LOAD = frozenset(["bodyweight", "unassisted", "unweighted"])
"""Words that say the load beside a name, where no exercise of the session is called so."""


_GEAR = frozenset(["db", "dbs", "dumbbell", "dumbbells", "kb", "kbs", "kettlebell", "kettlebells", "bell", "bells"])


_COUNTED = frozenset(["minute", "min", "hundred", "rep", "set", "left", "more", *TENS])
"""What follows a `one` that is a number, not of a name."""
_LIMBS = frozenset(["arm", "leg", "armed", "legged", "handed"])
_BOTH = ("two", "double")


def with_one_limb(marks: Sequence[Mark], index: Index) -> list[Mark]:
    """`1 arm row`, `1-leg press`: the number of a name in words; `two handed swings` are swings."""
    out = list(marks)
    for place, mark in enumerate(marks):
        at = place + 1 + (place + 1 < len(marks) and marks[place + 1].kind is Kind.DASH)
        limb = at + 1 < len(marks) and marks[at].text in _LIMBS and singular(marks[at + 1].text) in index.words
        if limb and marks[at].text == "handed" and (mark.value == len(_BOTH) or mark.text in _BOTH):
            out[place] = replace(mark, kind=Kind.FILL, value=None, parts=())
            out[at] = replace(marks[at], kind=Kind.FILL)
        if mark.kind is Kind.NUM and mark.value == 1 and limb:
            out[place] = replace(mark, kind=Kind.WORD, text="single", value=None)
            if at == place + 2:
                out[place + 1] = replace(marks[place + 1], kind=Kind.FILL)
    return out


_WARMS = frozenset(words("warm warming warmed warms"))
_VERBS = {"walked": "walk", "ran": "run", "jogged": "jog", "cycled": "cycle", "biked": "bike", "rode": "bike",
          "swam": "swim", "hiked": "hike", "walking": "walk"}  # fmt: skip
_SO_FAR = frozenset(words("for it about like just full i a good the solid easy only around of"))
_LONG = frozenset(words("min mins minute minutes sec secs second seconds m metres meters s"))
_ELSEWHERE = frozenset(words("to here home from dog dogs before first warm warmup outside round morning bus station "
                             "gym pub between after"))  # fmt: skip
"""Words behind such a verb that say that it was no exercise of the session."""


def with_verbs(marks: Sequence[Mark], index: Index) -> list[Mark]:
    """`walked 12 minutes`: the walk that the session has, where how long or how far is told, and not to where."""
    out = list(marks)
    for place, mark in enumerate(marks):
        if _VERBS.get(mark.text) not in index.words or mark.text in index.words:
            continue
        at = place + 1
        while at < len(marks) and marks[at].text in _SO_FAR:
            at += 1
        _, end = part_of(marks, place)
        measured = kind_at(marks, at) is Kind.CLOCK or any(m.text in _LONG for m in marks[at + 1 : at + 5])
        measured = measured and at < len(marks) and (marks[at].kind in _COUNTING or marks[at].text in NUMBER_WORDS)
        if measured and not _ELSEWHERE & {m.text for m in marks[place : min(end, at + 4)]}:
            out[place] = replace(mark, text=_VERBS[mark.text])
    return out


_COUNTING = (Kind.NUM, Kind.CLOCK)


_SIDED = frozenset(["side", "leg", "arm", "hand"])
_EACH = ("each", "per", "either", "every")
"""What makes of such a word how a count is told: `twelve each side pallof press` names no side press."""
_PHRASES = frozenset(
    [
        ("hang", "on"),
        *(("hanging", way) for way in ("off", "in", "around", "about", "out", "on", "with")),
        *((verb, way) for verb in ("carry", "carried", "carrying") for way in ("on", "over", "me", "us")),
        *(("back", way) for way in ("off", "offs", "down")),
    ]
)
"""Everyday talk that begins with a word of exercises."""
_AM = frozenset(words("im am were youre hes shes theyre come came got"))
"""Before `back` these tell of a return: `now im back seated row eighty for ten`."""
_OF_BACKS = frozenset(words("squat squats squatting extension extensions raise raises rack off offs down downs"))
"""Behind `back` these make it an exercise whatever stands before: `im back squatting 60x5`."""
_CHOPPED = tuple([got, "the"] for got in words("got get gets getting for"))
"""`calves got the chop`: left out, and no wood chop."""


def _is_weighed(before: Sequence[Mark]) -> bool:
    """Whether a load stands straight before: what follows in `20kg dbs x 10` is what was held."""
    units = ("kg", "kgs", "kilo", "kilos", "lb", "lbs", "pound", "pounds", "s")
    if not before:
        return False
    return before[-1].kind is Kind.NUM or (len(before) > 1 and before[-1].text in units and before[-2].kind is Kind.NUM)


def _is_inside_name(marks: Sequence[Mark], place: int, index: Index) -> bool:
    """The `and` of `clean and press`, the `of` and `of the` of `curl of the leg`: between two words of one name."""
    text = marks[place].text
    if text != "the" and text not in _LINKING:
        return False
    first = place - 1 - (text == "the" and place > 1)
    linked = marks[first + 1].text
    article = linked not in _ANDS and place == first + 1 and [m.text for m in marks[place + 1 :][:1]] == ["the"]
    last = place + 1 + article
    if linked not in _LINKING or last >= len(marks):
        return False
    one, two = marks[first].text, marks[last].text
    if linked in _ANDS:
        return links(one, two, index)
    ways = linked == "to" and singular(two) in _WAYS
    return (linked == "of" or ways or (linked in _ON and singular(two) in _GEAR_ON)) and turned(one, two, index)


def _is_bracketed(marks: Sequence[Mark], place: int, index: Index) -> bool:
    """The brackets of `row (seated)`: around one word of the session's names, behind another."""
    first = place if marks[place].kind is Kind.OPEN else place - 2
    words_there = [m for m in marks[max(0, first + 1) : first + 2] if m.kind is Kind.WORD]
    closed = first >= 0 and [m.kind for m in marks[first : first + 3 : 2]] == [Kind.OPEN, Kind.CLOSE]
    return closed and any(singular(m.text) in index.words for m in words_there)


_WAYS = frozenset(["side", "front", "rear", "back"])
"""Ways in which a limb is raised: `raises to the side`."""
_ANDS = ("and", "&", "n")
_ON = ("on", "at", "in", "with")
_LINKING = frozenset((*_ANDS, "of", "to", *_ON))
"""Words that stand between two words of a name."""
_GEAR_ON = frozenset(words("cable machine smith dumbbell dumbell barbell kettlebell wall floor landmine ring band"))


def _of_bands(marks: Sequence[Mark], place: int, index: Index) -> int | None:
    """The one exercise of the session that `the bands` are; none where they help or load another: `with the bands`."""
    if marks[place].text != "bands":
        return None
    beside = [m.text for m in marks[max(0, place - 2) : place]]
    if not set(beside[-1:]) <= {"the", "my", "and", ",", ".", "then"}:
        return None
    fits = {one.exercise for one in index.variants if "band" in one.words}
    held = beside[:1] != beside[-1:] and set(beside[:1]) & _HOLDING
    return next(iter(fits)) if len(fits) == 1 and not held else None


_HOLDING = frozenset(words("with w using use used on off of in from by without around against between no took had"))


def with_names(marks: Sequence[Mark], index: Index) -> list[Mark]:
    """The marks with each name as one mark."""
    out: list[Mark] = []
    run: list[Mark] = []

    def flush() -> None:
        hits = {hit.start: hit for hit in read_names([m.text for m in run], index)}
        at = 0
        while at < len(run):
            hit = hits.get(at)
            if hit is None:
                out.append(run[at])
                at += 1
                continue
            first, last = run[hit.start], run[hit.end - 1]
            text = " ".join(m.text for m in run[hit.start : hit.end])
            kind = Kind.NAME if not hit.weak else Kind.WEAK
            if text in _GEAR and _is_weighed(out):
                kind = Kind.FILL
            out.append(replace(first, kind=kind, text=text, end=last.end, names=hit.exercises))
            at = hit.end
        run.clear()

    for place, mark in enumerate(marks):
        hyphen = (
            mark.kind is Kind.DASH
            and bool(run)
            and mark.start == run[-1].end
            and place + 1 < len(marks)
            and marks[place + 1].kind is Kind.WORD
            and marks[place + 1].tight
        )
        if mark.kind is Kind.DASH and out and not run:
            hyphen = (out[-1].text, "".join(m.text for m in marks[place + 1 : place + 2])) in _PHRASES
        after = marks[place + 1].text if place + 1 < len(marks) else ""
        if after == "-" and mark.text == "back" and place + 2 < len(marks):
            after = marks[place + 2].text
        banded = _of_bands(marks, place, index)
        if banded is not None:
            flush()
            out.append(replace(mark, kind=Kind.NAME, names=(banded,)))
        elif (
            (mark.text == "row" and [m.text for m in marks[max(0, place - 2) : place]] == ["in", "a"])
            or (mark.text == "chop" and [m.text for m in marks[max(0, place - 2) : place]] in _CHOPPED)
            or (mark.text in _OF_LOAD and mark.text not in index.words)
            or (mark.text == "up" and place > 0 and marks[place - 1].text in _WARMS)
            or (mark.text, after) in _PHRASES
            or (mark.text == "back" and place > 0 and marks[place - 1].text in _AM and after not in _OF_BACKS)
            or (mark.text == "one" and run and after in _COUNTED)
            or (mark.text in _SIDED and place > 0 and marks[place - 1].text in _EACH)
        ):
            flush()
            out.append(mark)
        elif run and (
            _is_bracketed(marks, place, index)
            if mark.kind in (Kind.OPEN, Kind.CLOSE)
            else _is_inside_name(marks, place, index)
        ):
            continue
        elif mark.kind is Kind.WORD and (mark.text.isalpha() or mark.text in index.coded):
            run.append(mark)
        elif not hyphen:
            flush()
            out.append(mark)
    flush()
    return _with_kinds_of(_banded(_spent(_merged(out)), index))


def _banded(marks: list[Mark], index: Index) -> list[Mark]:
    """`Band: 20, 20`, `the bands i skipped`: the one exercise named after it, where its sets or a skip follow."""
    named = {v.exercise for v in index.variants if v.rank == 0 and "band" in v.words}
    if len(named) != 1:
        return marks
    out = list(marks)
    for place, mark in enumerate(marks):
        opens = place == 0 or marks[place - 1].kind in EDGES or marks[place - 1].text in _LEADS
        if not opens or singular(mark.text) != "band" or mark.kind is not Kind.WORD:
            continue
        headed = mark.text == "bands" or kind_at(marks, place + 1) is Kind.COLON or not index.on_body
        at = place + 1 + (kind_at(marks, place + 1) is Kind.COLON)
        sets = headed and (kind_at(marks, at) is Kind.NUM or text_at(marks, at) in NUMBER_WORDS)
        if sets or {text_at(marks, at), text_at(marks, at + 1)} & _SKIPPED:
            out[place] = replace(mark, kind=Kind.NAME, names=tuple(named))
    return out


_SKIPPED = frozenset(words("skipped skip skipping"))


def _spent(marks: list[Mark]) -> list[Mark]:
    """`90x10 dead after that`: behind a set the short word for a deadlift is how the client feels."""
    out = list(marks)
    for place, mark in enumerate(marks):
        if mark.text != "dead" or mark.kind not in (Kind.WEAK, Kind.NAME):
            continue
        behind = any(m.kind is Kind.NUM for m in marks[max(0, place - 4) : place])
        after = marks[place + 1] if place + 1 < len(marks) else None
        ends = after is None or after.kind in _ENDS_SPENT
        if behind and (ends if mark.kind is Kind.WEAK else after is not None and after.text.split()[:1] in _SPENT):
            out[place] = replace(mark, kind=Kind.FILL, names=())
    return out


_SPENT = (["now"], ["after"], ["today"], ["lol"], ["haha"], ["inside"], ["tired"])
_ENDS_SPENT = (Kind.FILL, Kind.THEN, Kind.WORD, Kind.STOP, Kind.COMMA, Kind.LINE)


def _merged(marks: list[Mark]) -> list[Mark]:
    """`pec fly`, `bulgarian squat`, `carried the sandbag`: two names of one exercise side by side as one."""
    out: list[Mark] = []
    for mark in marks:
        linked = len(out) > 1 and out[-1].text in _ARTICLES and out[-2].kind is mark.kind is Kind.NAME
        if linked and len(set(out[-2].names) & set(mark.names)) == 1 < len(mark.names):
            out.pop()
        before = out[-1] if out else None
        both = before is not None and before.kind is mark.kind is Kind.NAME
        common = tuple(n for n in before.names if n in mark.names) if both and before is not None else ()
        if before is not None and common:
            out[-1] = replace(before, text=f"{before.text} {mark.text}", end=mark.end, names=common)
        else:
            out.append(mark)
    return out


_ARTICLES = ("the", "my", "those")
_LEADS = (*_ARTICLES, "then", "and", "next", "did", "also", "plus")


def _with_kinds_of(marks: list[Mark]) -> list[Mark]:
    """`the cable ones`, `the seated one`: a word that tells exercises apart, as the name of those that have it."""
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        before = out[-1] if out else None
        if mark.text in ("one", "ones") and before is not None and before.kind is Kind.WEAK and before.names:
            led = place < 2 or marks[place - 2].text in _LEADS or marks[place - 2].kind in (*EDGES, Kind.NUM)
            parted = place + 1 < len(marks) and marks[place + 1].kind in (Kind.COMMA, Kind.COLON, Kind.CLOSE)
            at = place + 1 + parted
            numbered = at < len(marks) and marks[at].kind is Kind.NUM
            if led and (numbered or (place > 1 and marks[place - 2].text in _ARTICLES)):
                out[-1] = replace(before, kind=Kind.NAME, text=f"{before.text} {mark.text}", end=mark.end)
                continue
        out.append(mark)
    return out
