"""How a question opens and where it ends: which words of a message only ask."""

from collections.abc import Sequence

from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wholes import OF_SETS, is_whole, tells_sets
from bot.notation.wordlist import words

ENDS = (Kind.STOP, Kind.LINE, Kind.QUERY)
_PART_ENDS = (*ENDS, Kind.COMMA)
LONGEST = 64
"""Marks of one question: no longer one is asked, and every look for an end would cost the length of the message."""
_EDGES = (*ENDS, Kind.COMMA, Kind.BREAK, Kind.COLON, Kind.OPEN, Kind.DASH)
NO_OPENING = ("what a", "how good was", "hows", "how is", "how are")
_STATING = frozenset(words("but im i am feel feels felt was is still its thats all seems seem were feeling"))
_VERBS = frozenset(words(
    "is are was were should can could do does did will would am has have may shall what how which when where why",
    "who whats hows add go up drop raise more less increase reduce swap change keep stay",
))  # fmt: skip
_CHANGING = ("add", "increase", "reduce", "raise", "bump", "should i", "go up", "up", "go", "drop")


def end_of(marks: Sequence[Mark], place: int) -> int:
    """Where the part of a question that opens at a place ends."""
    end = place
    for mark in marks[place : place + LONGEST]:
        if mark.kind in _PART_ENDS:
            break
        end += 1
    return end


def states(marks: Sequence[Mark], place: int) -> bool:
    """`but ok to go on`, `that is the press finished`: says that it is, and asks nothing."""
    subject = marks[place - 1].text.split()[-1:] if place else []
    if subject == ["matter"]:
        return True  # `no matter how long i sit`
    if marks[place].text in ("is the", "is it", "is this") and subject and subject[0] in _SUBJECTS:
        return True
    if marks[place].text == "is the" and kind_at(marks, place + 1) is Kind.SAME and place and _closes(marks, place + 1):
        return True  # `i rest long time and is the same`
    if marks[place].text in ("is there", "are there") and place and _closes(marks, place):
        return True  # `only 20 minutes is there`
    if marks[place].text.split()[:2] in (["ok", "if"], ["okay", "if"]) and _is_felt(marks, place):
        return True
    if marks[place].text not in ("ok to", "okay to", "fine to", "is ok to", "its ok to") or place == 0:
        return False
    return bool(subject) and set(marks[place - 1].text.split()) <= _STATING


def _is_felt(marks: Sequence[Mark], place: int) -> bool:
    """`feels ok if i dont turn`, `was pretty much ok if i went slow`: how it is or was, and no leave that is asked."""
    before = [w for m in marks[max(0, place - 4) : place] for w in (m.text.split() if m.kind not in _EDGES else [""])]
    while before and before[-1] in _ROUNDLY:
        before.pop()
    return bool(before) and before[-1] in _FELT


_FELT = frozenset(words("feel feels felt feeling seems seemed was were been stays stayed"))
_ROUNDLY = frozenset(words("pretty quite mostly totally perfectly still all just kinda fairly much completely only"))
_SUBJECTS = frozenset(("that", "this", "here", "there", "it", "which"))


def _closes(marks: Sequence[Mark], place: int) -> bool:
    """Whether a part ends behind a place, with a word of address or of the day at most, and asks nothing."""
    end = place + 1
    while end < len(marks) and marks[end].text in _ADDRESS:
        end += 1
    return end >= len(marks) or (marks[end].kind in _EDGES and marks[end].kind is not Kind.QUERY)


_ADDRESS = ("sir", "coach", "today", "mam", "maam", "now", "tonight", "only")
_TO_COME = frozenset(["next", "first", "instead", "stay", "tomorrow"])
"""Words of what is still to be done, in a choice that is asked about."""


def clause_asking(marks: Sequence[Mark], query: int) -> set[int]:
    """The clause that a question mark ends, where it is worded as a question and reports no set itself."""
    start = query
    while start > 0 and (marks[start - 1].kind not in _EDGES or _is_range(marks, start - 1)):
        start -= 1
    if asks_to_change(marks, query) and any(m.kind in (Kind.SCRAP, Kind.MEANT) for m in marks[start:query]):
        return set()
    asking = (i for i in range(start + 1, query) if marks[i].kind is Kind.ASKING)
    listed = [kind_at(marks, start - n) for n in (2, 1, 0)] == [Kind.NUM, Kind.COMMA, Kind.NUM]
    begun = start - 2 if listed else start
    start = next((i for i in asking if follows_set(marks, i) or _ends_sets(marks[begun:i], marks[i])), start)
    words = [w for m in marks[start:query] for w in m.text.split()]
    kinds = [m.kind for m in marks[start:query]]
    if Kind.OR in kinds and kinds.count(Kind.NUM) > 1 and Kind.X not in kinds:
        return set(range(start, query))
    if Kind.OR in kinds and _TO_COME & set(words) and Kind.X not in kinds and Kind.FOR not in kinds:
        return set(range(start, query))
    if marks[query].text.startswith("or ") and Kind.X not in kinds:
        return set(range(start, query))
    if Kind.OTHERTIME in kinds and Kind.NAME in kinds and not set(kinds) & {Kind.NUM, Kind.SKIP, Kind.SKIPPED}:
        return set(range(start, query))
    if _is_load_to_come(marks[start:query]) and any(m.kind in (Kind.X, Kind.NUM) for m in marks[:start]):
        return set(range(start, query))
    if set(kinds) & {Kind.SAME, Kind.SAMELOAD} and _only_wonders(marks[start:query]):
        return set(range(start, query))
    if len(words) < 2 or not set(words[:3]) & _VERBS:
        last = max((i for i in range(start, query) if marks[i].kind is Kind.X), default=start)
        later = [i for i in range(last + 2, query) if marks[i].text in _CHANGING]
        return set(range(later[0], query)) if later else set()
    if words[0] == "did" and Kind.X in kinds:
        return set()
    if Kind.MEANT in kinds and Kind.NUM in kinds and Kind.SET in kinds:
        return set()
    return set(range(start, query))


def _ends_sets(told: Sequence[Mark], asking: Mark) -> bool:
    """Whether several sets, or a time, stand straight before a question: `curls 14 12 11 how long should i rest?`."""
    kinds = [m.kind for m in told if m.text.isascii()]
    while kinds and kinds[-1] in (Kind.FILL, Kind.WAS, Kind.GAP):
        kinds.pop()
    counted = kinds.count(Kind.NUM) > 1 or Kind.SECONDS in kinds
    ends = kinds[-1:] and kinds[-1] in (Kind.NUM, Kind.SECONDS, Kind.EACH, Kind.REPS, Kind.DONE, Kind.KG, Kind.LB)
    opens = asking.text.split()[0] in _OPENERS and Kind.ASKING not in kinds and Kind.OR not in kinds
    return bool(ends) and counted and opens


_OPENERS = frozenset(words("how should shall what when which why do can could is are"))


def _only_wonders(part: Sequence[Mark]) -> bool:
    """`i train the same?`, `the same weight next time?`: no number, and the client or the time to come is named."""
    plain = all(m.kind in (Kind.SAME, Kind.SAMELOAD, Kind.FILL, Kind.WORD, Kind.OTHERTIME, Kind.TO) for m in part)
    said = {w for m in part for w in m.text.split()}
    return plain and bool(said & _WONDERING) and not said & _REPORTING


_WONDERING = frozenset(words("i we me train keep stay next tomorrow continue stick go use do"))
_REPORTING = frozenset(words("did got done was managed made"))


def _is_range(marks: Sequence[Mark], place: int) -> bool:
    """The dash of `8-10`."""
    beside = [m.kind for m in marks[max(0, place - 1) : place + 2]]
    return beside == [Kind.NUM, Kind.DASH, Kind.NUM]


_AROUND = frozenset((Kind.THEN, Kind.OTHERTIME, Kind.GAP, Kind.TO, Kind.FOR, Kind.KG, Kind.LB, Kind.ALL, Kind.AT,
                     Kind.WITH))  # fmt: skip
"""Kinds that may stand around a load which is asked about."""


def _is_load_to_come(clause: Sequence[Mark]) -> bool:
    """`70 next?`: a load that is asked about."""
    kinds = [m.kind for m in clause if m.kind is not Kind.FILL]
    led = [k for k in kinds if k not in _AROUND]
    return led == [Kind.NUM] and len(kinds) > 1


def question_end(marks: Sequence[Mark], place: int) -> int:
    """Where a question that opens at a place ends: with its sentence, or before sets told after a comma."""
    end = place
    while end < len(marks) and marks[end].kind not in ENDS:
        end += 1
    query = end < len(marks) and marks[end].kind is Kind.QUERY
    for at in range(place + 1, end):
        rest = [m.kind for m in marks[at + 1 : end] if m.kind not in (Kind.FILL, Kind.NAME)]
        told = rest[:3] in ([Kind.NUM, Kind.X, Kind.NUM], [Kind.NUM, Kind.FOR, Kind.NUM]) or rest[:4] == [
            Kind.NUM, Kind.KG, Kind.X, Kind.NUM]  # fmt: skip
        asks = query and at > place + 1  # `please advise, 60x5 again, should i add?`: behind the opening alone
        if marks[at].kind is Kind.COMMA and told and not asks and not any(m.kind is Kind.NUM for m in marks[place:at]):
            return at
    return end


def asks_to_change(marks: Sequence[Mark], query: int) -> bool:
    """Whether the clause before a question mark politely corrects: `can you make that 9?`."""
    start = query
    while start > 0 and marks[start - 1].kind not in ENDS:
        start -= 1
    polite = bool({"can", "could", "would", "please", "pls"} & {w for m in marks[start:query] for w in m.text.split()})
    return polite and any(
        (m.kind is Kind.MEANT and m.text.split()[:1] in (["can"], ["could"]))
        or m.kind is Kind.SCRAP
        or (m.kind is Kind.MEANT and any(n.kind is Kind.NUM for n in marks[place:query]))
        for place, m in enumerate(marks[start:query], start)
    )


def opens(marks: Sequence[Mark], place: int) -> bool:
    """Whether a question can open here: after an edge, with only fillers and names of talk between."""
    at = place - 1
    if marks[place].text.split()[:1] in (["is"], ["could"]) and at >= 0 and marks[at].text in _LAUGHS:
        return True  # `pee like cola lol is that the beets`: in a hurt, laughter parts too
    nearest = max(-1, place - 1 - _FAR)
    while at > nearest and marks[at].kind in (Kind.FILL, Kind.AND, Kind.THEN, Kind.SORRY):
        at -= 1
    return at < 0 or marks[at].kind in _EDGES or follows_set(marks, place)


_FAR = 40
"""More marks than a part has that tells a set before a question, or than talk has that leads to one."""


_LAUGHS = ("lol", "haha", "hahaha", "lmao", "hehe")
_BE = ("is", "are", "was", "were")
_LOAD = 3
"""Marks of a load alone: `the 15s`."""


def follows_set(marks: Sequence[Mark], place: int) -> bool:
    """Whether nothing but a whole set stands before a place in its part: `10 reps should i`."""
    start = place
    if kind_at(marks, place - 1) is Kind.FILL:
        return False
    while start > 0 and marks[start - 1].kind not in _EDGES:
        start -= 1
        if marks[start].kind not in OF_SETS or place - start > _FAR:
            return False
    told = marks[start:place]
    if marks[place].text in _BE and told and told[-1].kind is Kind.S and len(told) <= _LOAD:
        return False  # `the 15s are too light`
    return bool(told) and tells_sets(told) and is_whole(told)


_GREETING = frozenset(words("hi hey hello hiya morning evening coach boss mate so ok okay and also btw quick question"))


def starts_asking(marks: Sequence[Mark], place: int) -> bool:
    """Whether nothing but a greeting stands before what may open a question: `is 60 ok`, not `my number is 60`."""
    at = place - 1
    while at >= 0 and marks[at].kind in (Kind.FILL, Kind.AND, Kind.COMMA) and marks[at].text in (*_GREETING, ","):
        at -= 1
    return at < 0 or marks[at].kind in _EDGES


CHANGED = (Kind.NUM, Kind.SET, Kind.SETS, Kind.LASTSET, Kind.ORD, Kind.CLOCK, Kind.BODY, Kind.REPS)
"""What is changed in a correction; an exercise is changed by the coach."""


def is_request_to_change(marks: Sequence[Mark]) -> bool:
    """`can you change set 2 to 9`: asks for a correction, not for advice."""
    polite = marks[0].text in ("can you", "could you", "would you", "can we", "could we", "will you", "do you")
    told = any(m.kind in CHANGED for m in marks)
    return polite and any(
        m.kind in (Kind.MEANT, Kind.SCRAP) or (told and m.text in ("change", "fix", "correct")) for m in marks[1:5]
    )
