"""Names that no sets stand with: a machine that is taken, or one that is only passed on the way."""

from collections.abc import Sequence

from bot.notation.clauses import EDGES, part_of, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_NAMES = (Kind.NAME, Kind.WEAK)
_TAKEN = frozenset(words("busy taken occupied hogged unavailable packed crowded free rammed"))
_PASSED = frozenset(words("near beside behind opposite queue queueing queuing waiting hogging"))
_STEPS = frozenset((Kind.FILL, Kind.WAS, Kind.WORD, Kind.FOR, Kind.AT, Kind.OTHERTIME, Kind.GAP, Kind.ALL, Kind.PLATES))


def only_mentioned(marks: Sequence[Mark]) -> set[int]:
    """The places of names that tell where, or why not: `60x5 while the rack is taken`, `70x8 beside the leg press`."""
    return {
        place
        for place, mark in enumerate(marks)
        if mark.kind in _NAMES
        and (
            _is_tired(marks, place)
            or _is_taken(marks, place)
            or _is_passed(marks, place)
            or _is_of_talk(marks, place)
            or _is_leant_on(marks, place)
            or _is_of_order(marks, place)
            or _is_gear_of(marks, place)
        )
    }


def _is_taken(marks: Sequence[Mark], place: int) -> bool:
    for at in range(place + 1, min(place + 6, len(marks))):
        mark = marks[at]
        if mark.kind in EDGES or mark.kind not in _STEPS:
            return False
        following = marks[at + 1] if at + 1 < len(marks) else None
        if mark.text in _TAKEN and not (following is not None and following.kind is Kind.TO):
            return True
        if mark.text in _BROKEN and _ends_so(marks, at + 1):
            return True
        if mark.text == "use" and marks[at - 1].text.split()[-1:] == ["in"]:
            return True
    return False


_BROKEN = frozenset(words("broken bust busted kaput kaputt knackered down"))


def _ends_so(marks: Sequence[Mark], at: int) -> bool:
    """Whether nothing is told of what was done for it: `leg press is broken again.`."""
    while at < len(marks) and marks[at].text in ("again", "today", "still", "too", "lol", "now"):
        at += 1
    return at >= len(marks) or marks[at].kind in (Kind.STOP, Kind.LINE, Kind.CLOSE)


def _is_passed(marks: Sequence[Mark], place: int) -> bool:
    for at in range(place - 1, max(place - 4, -1), -1):
        said = marks[at].text.split()
        if set(said) & _PASSED or (said[-1:] == ["next"] and not marks[place].names and at == place - 1):
            return True
        if marks[at].kind not in (Kind.FILL, Kind.FOR) and said[-1:] != ["to"]:
            return False
        if said[-1:] == ["to"] and marks[at - 1].text == "next":
            return True
    return False


_ARTICLES = ("the", "my", "a", "an", "those")
_FAR = 8
"""Marks between two names of which one tells when the other was done."""


def _led_by(marks: Sequence[Mark], place: int) -> tuple[int, str]:
    """Where the words before a name start, and the last of them but articles: `before` of `before the rows`."""
    at = place - 1
    while at >= 0 and text_at(marks, at) in _ARTICLES:
        at -= 1
    said = [w for w in text_at(marks, at).split() if w not in _ARTICLES]
    two = " ".join([*text_at(marks, at - 1).split(), *said][-2:])
    return (at - 1, two) if two in _ORDERING else (at, (said or [""])[-1])


_ORDERING = ("before", "after", "ahead of", "prior to", "in front of", "following")


def _is_of_order(marks: Sequence[Mark], place: int) -> bool:
    """`did face pulls before the rows, 40x20`, `after the rows face pulls 40x20`: when the other one was done."""
    at, leads = _led_by(marks, place)
    if at < 0 or leads not in _ORDERING:
        return False
    start, _ = part_of(marks, place)
    ahead = [i for i in range(max(start, at - _FAR), at) if marks[i].kind is Kind.NAME]
    if ahead:
        return not any(m.kind in _COUNTS for m in marks[ahead[-1] : at])
    behind = marks[place + 1 : min(len(marks), place + _FAR)]
    named = next((i for i, m in enumerate(behind) if m.kind is Kind.NAME), None)
    return at == start and named is not None and not any(m.kind in _COUNTS for m in behind[:named])


_COUNTS = (Kind.NUM, Kind.CLOCK, Kind.BODY, Kind.SAME, Kind.PLANNED)
_GEAR = frozenset(words(
    "bar machine landmine sled smith cable cables kettlebell kettlebells dumbbell dumbbells band bands rings log axle "
    "ball box bench rack pulley stack deck plate plates barbell sandbag bag"
))  # fmt: skip


def _is_gear_of(marks: Sequence[Mark], place: int) -> bool:
    """`did shrugs on the hex bar, 315x10`: what an exercise that the session lacks was done with."""
    at, leads = _led_by(marks, place)
    if leads not in ("on", "with", "using", "w", "off", "in"):
        return False
    at -= 1
    while at >= 0 and marks[at].text in ("today", "just", "again", "some", "but", "there"):
        at -= 1
    lacking = at >= 0 and marks[at].kind in (Kind.NAME, Kind.WEAK) and not marks[at].names
    return lacking and (leads == "on" or marks[place].text.split()[-1] in _GEAR)


_UNDER = frozenset(words("on off against over across from"))


def _is_leant_on(marks: Sequence[Mark], place: int) -> bool:
    """`push ups on the bench`: what an exercise of the session is done on, where no press is one on the bench."""
    if marks[place].names or marks[place].text != "bench":
        return False
    at = place - 1
    while at > 0 and marks[at].kind is Kind.FILL and not set(marks[at].text.split()) & _UNDER:
        at -= 1
    if at < 1 or not set(marks[at].text.split()[:1]) & _UNDER:
        return False
    start, _ = part_of(marks, place)
    return any(m.kind is Kind.NAME and m.names and "press" not in m.text for m in marks[start:at])


_ENDS = (Kind.STOP, Kind.LINE, Kind.QUERY, Kind.OPEN, Kind.CLOSE)
_TELLS = frozenset(
    (Kind.NUM, Kind.CLOCK, Kind.BAD, Kind.SAME, Kind.AGAIN, Kind.PLANNED, Kind.INSTEAD, Kind.DONE, Kind.SKIP, Kind.NO,
     Kind.SKIPPED, Kind.BODY, Kind.COLON, Kind.MEANT, Kind.SCRAP, Kind.FINISH, Kind.EXCEPT, Kind.THEREST, Kind.NOT)
)  # fmt: skip
_DOING = frozenset(
    words(
        "did done do doing used took swapped went hit replaced switched moved started starting tried managed made for"
    )
)
_LEAST = 3
"""Words of a sentence that tells of an exercise without doing it."""


def _is_of_talk(marks: Sequence[Mark], place: int) -> bool:
    """`back squat felt like flying.`: an exercise that the session lacks, in a sentence that tells no set."""
    if marks[place].names:
        return False
    start, end = part_of(marks, place, ends=_ENDS)
    part = [m for i, m in enumerate(marks[start:end], start) if i != place]
    said = {w for m in part for w in m.text.split()}
    return not any(m.kind in _TELLS for m in part) and not said & _DOING and len(said) >= _LEAST


_MUSCLES = frozenset(
    words("quads quad hams hamstrings hamstring calves calf glutes glute lats lat delts triceps tris biceps bis pecs",
          "abs adductors abductors shoulders forearms traps")
)  # fmt: skip
_TIRED = frozenset(
    words("fire fried dead sore smoked toast jelly cooked pumped wrecked stiff tired burning shaking screaming",
          "exploding explode tight wobbly shot lit toasted fresh happy")
)  # fmt: skip


def _is_tired(marks: Sequence[Mark], place: int) -> bool:
    """`quads on fire from monday`, `calves are fried`: a muscle, and how it is."""
    if marks[place].text not in _MUSCLES:
        return False
    start, end = part_of(marks, place)
    said = [w for m in marks[place + 1 : min(end, place + 6)] for w in m.text.split()]
    linked = said[:1] in (
        ["are"],
        ["is"],
        ["on"],
        ["were"],
        ["feel"],
        ["feeling"],
        ["so"],
        ["still"],
        ["absolutely"],
        ["felt"],
    )
    plain = not any(m.kind in _TELLS for m in marks[start:end])
    return plain and bool(_TIRED & set(said)) and (linked or bool(_TIRED & set(said[:1])))
