"""Loads that are only spoken of beside sets: `felt the same as 72.5`, `60 was a joke, 62.5x8`, `160 looks doable`.

What a set felt like, what another load was like, and what is to come: the words around a bare load say which.
"""

import re
from collections.abc import Callable, Sequence

from bot.notation.bounds import HARDEST
from bot.notation.clauses import EDGES, kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_UNITS = (Kind.KG, Kind.LB, Kind.S, Kind.HAND)
_LINKS = (Kind.X, Kind.FOR, Kind.COLON, Kind.PLUS, Kind.MINUS, Kind.SIGN, Kind.SLASH, Kind.RPE, Kind.RIR, Kind.LEADX,
          Kind.LEADAT)  # fmt: skip
_COUNTS = (*_LINKS, Kind.AT, Kind.REPS, Kind.SETS, Kind.SECONDS, Kind.MINUTES, Kind.METRES, Kind.TANK, Kind.EACH,
           Kind.TIMES, Kind.RPEPOST, Kind.RIRPOST, Kind.MORE, Kind.PLATES, Kind.NUM, Kind.CLOCK)  # fmt: skip
_TURNS = (Kind.THEN, Kind.NUM, Kind.CLOCK, Kind.COLON, Kind.NAME)
_FAR = 9
"""Marks that such words reach."""
_TIMES_REPS = 3
"""So much more than the repetitions before it is a number no repetitions of the same list (ours)."""

_ADJECTIVE = (
    r"(?:easy|hard|heavy|light|fast|quick|slow|smooth|good|bad|clean|strong|snappy|solid|rough|tough|brutal|nice"
    r"|comfy|comfortable|grindy|challenging|awful|shaky|stable|crisp|sluggish)"
)
_MORE_SO = (
    r"(?:easier|harder|heavier|lighter|faster|quicker|slower|smoother|better|worse|cleaner|stronger|snappier|rougher"
    rf"|tougher|nicer|comfier|grindier|shakier|stabler|crisper|(?:more|less) (?:\w+ )?{_ADJECTIVE})"
)
_FEEL = (
    r"(?:felt|feels|feel|feeling|moved|moves|moving|went|flew|looked|looks|speed|effort|difficulty|easy|hard|heavy"
    r"|light|smooth|fast|bar|weighed|sensation|struggle|grind)"
)
_LIKENED = (
    r"(?:same|identical|similar|equal|close|closer|near|nearer|different|difference|comparable|comparably|equivalent)"
    rf"(?: {_FEEL})?(?: \w+)? (?:as|to|than|with|from)"
)
_COMPARED = re.compile(
    rf"\b(?:as {_ADJECTIVE}(?: or \w+)? as|{_MORE_SO}(?: \w+){{0,2}} (?:than|to|with)|{_FEEL}(?: \w+)* {_LIKENED}"
    rf"|(?:same|similar|identical) {_FEEL}(?: \w+)* (?:as|to)|(?:no|not|any|zero|little) differen(?:t|ce)\w* (?:to|than|from)"
    rf"|{_FEEL}(?: \w+){{0,3}} like|(?:compared|relative|next) (?:to|with)|could (?:have|of|ve)? ?(?:sworn|guessed) (?:it|that)"
    rf"(?: was|s)|beats|unlike|versus|vs)(?: (?:a|an|the|my|those|these|what|when|lifting|doing|pressing|it|with|at|old|usual"
    rf"|just|last))*$"
)
"""What is said before a load that another set is held against."""
_JUDGED = re.compile(
    r"^(?:is|are|was|were|isnt|wasnt|s|has been|had been|felt|feels|feel|feeling|moved|moves|moving|flew|flies|went up"
    r"|just|honestly|really|actually|seemed|seems|looked|got|kept|aint|never|did not|didnt) ?"
)
"""What begins the words behind a load that is judged."""
_OPINION = re.compile(
    rf"\b(?:{_ADJECTIVE}|{_MORE_SO}|joke|nothing|flew|flying|flies|warm ?ups?|cake|piece of|breeze|childs play|baby|feather"
    r"|feathers|air|lol|enough|too|so|boring|bored|dream|butter|well|speed|rocket|cinch|doddle|walk in|chump|laughable"
    r"|trivial|toy|paper|pillow|empty bar|money|beast|killer|monster|hell|grind)\b"
)
_TIRED_OF = re.compile(r"\b(?:bored of|sick of|tired of|over|done with|no point (?:in|doing)|had enough of|fed up (?:of|with)"
                       r"|outgrown|outgrew|too strong for|didnt want(?: to do)?|dont want(?: to do)?)"
                       r"(?: (?:the|doing|using|lifting|those|another))*$")  # fmt: skip
"""What is said before a load that is left behind."""
_REASONED = re.compile(
    r"\b(?:since|cos|cause|because|as|figured|thought|bc|cuz|reckon|reckoned)(?: (?:the|my|those|these))*$"
)
_TO_COME = re.compile(
    r"^(?:(?:is|s|are|isnt|aint|will be|ll be|would be|should be|might be|could be|gonna be|going to be|looks?|looking|seems?"
    r"|feels?|must be|has to be|not|definitely|probably|maybe|for sure|def|surely|totally|very|so|pretty|well|really|now|only"
    r"|just|in|on|a|the|up) )*"
    r"(?:doable|possible|feasible|coming|within reach|reach|cards|(?<=is )there|(?<=be )there|soon|close|far off|far away|next|here (?:we|i) (?:come|go)"
    r"|in sight|in the bag|realistic|on the horizon|horizon|by (?:christmas|summer|easter|spring|june|july|new year|then|the end)"
    r"|attainable|achievable|waiting|calling(?: me| my name)?|watch out|inbound|incoming|(?:is )?mine|loading)\b"
)
"""What is said behind a load that is to come."""
_LATER = ("next", "tomorrow", "in future", "soon")
_LOOKED_TO = re.compile(
    r"\b(?:ready|eyeing|eying|aiming|aim|hoping|gunning|shooting|hunting|chasing|keen|excited|building|working|looking|heading"
    r"|itching|cant wait|bring on|roll on|hello|step closer|closer)"
    r"(?: (?:for|to|at|on|up|towards|try|go|do|hit|use|the|up to|forward|a|get))*$"
)
_COULD = re.compile(r"\b(?:could|should|would|might)(?:ve| have| of| a)? ?(?:ve )?(?:probably |easily |prob )?"
                    r"(?:have |of )?(?:used|done|gone|taken|loaded|started with|picked|put on|tried|managed|gone for|gone to|gone up to)"
                    r"(?: (?:for|to|up to|with|the))*$")  # fmt: skip
"""What is said before a load that was not taken: `could've used 77.5`."""


def spoken_of(marks: Sequence[Mark], may_be_set: Callable[[Mark, int], bool]) -> set[int]:
    """The places of such loads, and of the words that tell of them.

    `may_be_set`: whether a judged load may be of a set without its count, beside so many other numbers.
    """
    numbers = [i for i, m in enumerate(marks) if m.kind in (Kind.NUM, Kind.CLOCK)]
    out: set[int] = set()
    for place in numbers:
        if len(numbers) > 1 and _is_bare(marks, place):
            out |= _told_of(marks, place, may_be_set)
    return out


def _told_of(marks: Sequence[Mark], place: int, may_be_set: Callable[[Mark, int], bool]) -> set[int]:
    """The places of a load that is only spoken of; none where it may be a set's."""
    after = place + 1
    while kind_at(marks, after) in _UNITS:
        after += 1
    start, end = _before(marks, place), _behind(marks, after)
    led, said = _words(marks[start:place]), _words(marks[after:end])
    heavy = (marks[place].value or 0) > HARDEST or after > place + 1
    others = sum(m.kind is Kind.NUM for m in marks) - 1
    compared = _COMPARED.search(led)
    if compared and (heavy or not compared.group().rstrip().endswith("like")):
        first = _place_of(marks, start, place, compared.start())
        lone = others == 1 and first == start and kind_at(marks, start - 1) is Kind.NUM and _is_bare(marks, start - 1)
        return set(range(first - lone, end))
    if not heavy:
        return set()
    if _LOOKED_TO.search(led) or _COULD.search(led) or _TIRED_OF.search(led):
        return set(range(place, end))
    later = any(m.kind is Kind.OTHERTIME and m.text.startswith(_LATER) for m in marks[after:end])
    if (later or _TO_COME.search(said)) and _opens(marks, place):
        return set(range(place, end))
    reasoned = bool(_REASONED.search(led)) and kind_at(marks, after) is not None
    judged = bool(_JUDGED.search(said)) and bool(_OPINION.search(said))
    if judged and (reasoned or _opens(marks, place)) and (reasoned or not may_be_set(marks[place], others)):
        return set(range(place, end)) if reasoned or _is_set_elsewhere(marks, place, end) else set()
    return set()


def _is_bare(marks: Sequence[Mark], place: int) -> bool:
    """Whether nothing makes a set of a number: no sign before it, no count behind it."""
    after = place + 1
    while kind_at(marks, after) in _UNITS:
        after += 1
    put_off = kind_at(marks, after) is Kind.FOR and kind_at(marks, after + 1) is Kind.OTHERTIME
    free = put_off or kind_at(marks, after) not in _COUNTS
    return kind_at(marks, place - 1) not in _LINKS and free and not marks[place].parts


def _opens(marks: Sequence[Mark], place: int) -> bool:
    """Whether a number begins what is told: behind an edge or a word, or behind a set that is told whole."""
    before = place - 1
    while kind_at(marks, before) in (*_UNITS, Kind.REPS):
        before -= 1
    if kind_at(marks, before) is not Kind.NUM:
        free = (None, *EDGES, Kind.FILL, Kind.WORD, Kind.DASH, Kind.AND, Kind.GAP)
        return kind_at(marks, place - 1) in free and not set(text_at(marks, place - 1).split()) & _DOING
    whole = kind_at(marks, before - 1) in (Kind.X, Kind.FOR, Kind.COMMA, Kind.COLON)
    return whole and (marks[place].value or 0) > _TIMES_REPS * (marks[before].value or 0)


_DOING = frozenset(("got", "did", "made", "hit", "managed", "only", "just", "for", "x", "at"))


def _is_set_elsewhere(marks: Sequence[Mark], place: int, end: int) -> bool:
    """Whether another load is told with its repetitions."""
    others = (i for i, m in enumerate(marks) if m.kind is Kind.NUM and not place <= i < end)
    return any(
        kind_at(marks, i + 1 + (kind_at(marks, i + 1) in _UNITS)) in (Kind.X, Kind.FOR, Kind.COLON, Kind.NUM)
        and marks[i].value != marks[place].value
        for i in others
    )


def _before(marks: Sequence[Mark], place: int) -> int:
    at = place
    while at > max(0, place - _FAR) and marks[at - 1].kind not in (*EDGES, *_TURNS):
        at -= 1
    return at


def _behind(marks: Sequence[Mark], place: int) -> int:
    at = place
    while at < min(len(marks), place + _FAR) and marks[at].kind not in (*EDGES, *_TURNS, Kind.AND):
        if text_at(marks, at).split()[:1] in (["so"], ["but"]):
            break
        at += 1
    return at


def _words(marks: Sequence[Mark]) -> str:
    return " ".join(m.text for m in marks)


def _place_of(marks: Sequence[Mark], start: int, end: int, offset: int) -> int:
    """The mark at an offset of the words between two places."""
    length = 0
    for place in range(start, end):
        length += len(marks[place].text) + 1
        if length > offset:
            return place
    return end
