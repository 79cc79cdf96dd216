"""Another exercise or other equipment in place of what the session has, though no word names an exercise that it lacks.

`the machine row has a problem so i took the t-bar, 50x12`, `used the smith instead`, `calves on the leg press`.
"""

from collections.abc import Iterator, Sequence

from bot.notation.abbreviations import singular
from bot.notation.bounds import SEVERAL
from bot.notation.clauses import parts_between
from bot.notation.kinds import Kind
from bot.notation.order.steps import said_in
from bot.notation.segments.edges import NUMBERS
from bot.notation.tokens import Mark
from bot.notation.wordlist import words
from bot.training.plan import LoadStyle, PlannedExercise

_EQUIPMENT = frozenset(
    words(
        "t tbar smith barbell dumbbell db kb kettlebell cable machine landmine hex trap ez rings trx hack pulley bosu",
        "band multigym sandbag prowler swiss preacher",
    )
)
"""Words for what an exercise is done with (singular)."""
_DOING = frozenset(
    words("took take used use using did do went hopped jumped moved switched grabbed tried had over swapped borrowed")
)
_TROUBLE = frozenset(
    words(
        "problem broken broke busted taken busy occupied hogged closed faulty jammed kaputt kaput unavailable missing",
        "queue crowded packed defect defective repair use snapped rammed bust",
    )
)
_ENDS = (Kind.STOP, Kind.LINE, Kind.QUERY)
_NAMES = (Kind.NAME, Kind.WEAK)
_DENIED = frozenset(words("didnt couldnt cant wont not dont havent cannot skip skipped skipping binned missed"))
"""With these nothing was done: `didn't do calves because the machine was taken`."""


def substituted(marks: Sequence[Mark], exercises: Sequence[PlannedExercise], told: frozenset[str]) -> Mark | None:
    """The first word of such equipment. `told`: the names of the exercises whose sets are kept."""
    names = [m for m in marks if m.kind in _NAMES]
    paired = len(names) >= SEVERAL or any(not m.names for m in names)
    if not paired and _CUES.isdisjoint(said_in(marks)):
        return None
    own = {word for e in exercises if e.name in told for word in _own(e)}
    for start, end in parts_between(marks, _ENDS):
        part = marks[start:end]
        swapped = any(m.kind is Kind.INSTEAD for m in part) or _is_in_trouble(part)
        if swapped:
            found = next(_other_gear(part, own), None)
            if found is not None:
                return found
        posed = _other_posture(part, own, swapped=swapped)
        if posed is not None:
            return posed
        other = _on_other_gear(part, own)
        if other is not None:
            return other
        placed = _is_on_another(part) or _is_used_for(part) or _is_taken_up(part)
        if placed is not None:
            return placed
        straight = _straight_bar(part) if own & _OTHER_BARS else None
        if straight is not None:
            return straight
    return None


_POSTURES = (frozenset(["seated", "lying", "standing", "kneeling", "prone"]),
             frozenset(["incline", "decline", "flat"]))  # fmt: skip
_VERSIONS = frozenset(words(
    "one ones version versions machine variation variant kind instead only ok now today because bc cos coz cause since"
))  # fmt: skip


def _other_posture(part: Sequence[Mark], own: set[str], *, swapped: bool) -> Mark | None:
    """`did the seated one instead`, `i make the leg curl seated`, where the session has the lying leg curl."""
    doing = swapped
    for place, mark in enumerate(part):
        doing = doing or bool(set(mark.text.split()) & (_DOING | _MADE))
        posed = next((p & own for p in _POSTURES if mark.text in p and p & own), frozenset[str]())
        if not posed or mark.text in posed or not doing:
            continue
        after = part[place + 1] if place + 1 < len(part) else None
        if after is None or after.kind in (*NUMBERS, Kind.COMMA, Kind.COLON, Kind.OPEN, Kind.DASH, Kind.INSTEAD):
            return mark
        if set(after.text.split()) & _VERSIONS:
            return mark
    return None


_MADE = frozenset(words("make made making with"))
_OTHER_BARS = frozenset(["trap", "hex", "tbdl", "hexagonal"])
_STRAIGHT = frozenset(words("straight normal regular standard ordinary olympic barbell conventional plain"))


def _straight_bar(part: Sequence[Mark]) -> Mark | None:
    """`deads with a straight bar` where the session has the trap bar's."""
    said = [(w, m) for m in part if m.kind not in NUMBERS for w in m.text.split()]
    for at, (word, mark) in enumerate(said):
        after = said[at + 1][0] if at + 1 < len(said) else ""
        if word in _STRAIGHT and (after in ("bar", "barbell") or word in ("barbell", "conventional")):
            return mark
    return None


def _own(exercise: PlannedExercise) -> Iterator[str]:
    """The words that an exercise's equipment may be called."""
    for name in (exercise.name, *exercise.aliases):
        yield from (singular(w) for w in name.lower().replace("-", " ").split())
    if exercise.load_style is LoadStyle.PER_HAND or "goblet" in exercise.name.lower().split():
        yield from ("dumbbell", "db", "kb", "kettlebell")
    elif exercise.load_style is LoadStyle.TOTAL and not {"trap", "hex"} & set(exercise.name.lower().split()):
        yield "barbell"


def _is_in_trouble(part: Sequence[Mark]) -> bool:
    """`machine row has a problem so`, `no bench free so`: what was not to be had, then what was done."""
    said = [w for m in part for w in m.text.split()]
    so = next((i for i, w in enumerate(said) if w in ("so", "therefore", "hence")), None)
    before = said if so is None else said[:so]
    return bool(set(before) & _TROUBLE) and any(m.kind in (*_NAMES, Kind.GAP) for m in part)


def _other_gear(part: Sequence[Mark], own: set[str]) -> Iterator[Mark]:
    """Equipment that is not the exercise's own, behind a word of doing."""
    doing = False
    for mark in part:
        said = mark.text.split()
        doing = doing or (bool(set(said) & _DOING) and not set(said) & _DENIED)
        if doing and mark.kind not in NUMBERS:
            gear = [w for w in (singular(w) for w in said) if w in _EQUIPMENT]
            if gear and not set(gear) <= own:
                yield mark


_FREE = frozenset(words("smith dumbbell db kettlebell kb barbell trx"))


def _on_other_gear(part: Sequence[Mark], own: set[str]) -> Mark | None:
    """`incline on the smith`, `used dumbbells for incline`: an exercise done with what is not its own."""
    said = {singular(w) for m in part for w in m.text.split()}
    if said & _DENIED:
        return None
    if said.isdisjoint(_FREE - own):
        return None
    for place, mark in enumerate(part):
        gear = {singular(w) for w in mark.text.split()} & _FREE - own
        if not gear:
            continue
        used = bool({w for m in part[max(0, place - 3) : place] for w in m.text.split()} & {"used", "using", "use"})
        behind = [m.kind for m in part[place + 1 : place + 6]]
        if mark.kind not in (*NUMBERS, *_NAMES) and ("smith" in gear or (used and Kind.FOR in behind)):
            return mark
    return None


def _is_used_for(part: Sequence[Mark]) -> Mark | None:
    """`used hack squats for the squats`, `did squats as leg press`: one that the session lacks for one of it."""
    kept = [m for m in part if m.kind is not Kind.FILL or m.text == "as" or m.text.split(" ")[-1] in _DOING]
    for done, one, link, two in zip(kept, kept[1:], kept[2:], kept[3:], strict=False):
        doing = bool(set(done.text.split()) & _DOING)
        named = one.kind in _NAMES and two.kind in _NAMES and bool(one.names) != bool(two.names)
        if doing and named and (link.kind is Kind.FOR or link.text == "as"):
            return two if one.names else one
    return None


_CUES = (
    _TROUBLE | _STRAIGHT | _FREE | {f"{one}s" for one in _FREE} | frozenset[str]().union(*_POSTURES) | {Kind.INSTEAD}
)
"""Kinds and words of which one stands wherever other equipment is told, but for other exercises by their names."""


def taken_up(marks: Sequence[Mark]) -> set[int]:
    """Where such a name stands, whoever it was that praised it."""
    found = [one for start, end in parts_between(marks, _ENDS) if (one := _is_taken_up(marks[start:end])) is not None]
    return {i for i, m in enumerate(marks) if any(m is one for one in found)} if found else set()


def _is_taken_up(part: Sequence[Mark]) -> Mark | None:
    """`told me the leg press is better so i did that one`: one that the session lacks, done with no other name."""
    lacking = next((i for i, m in enumerate(part) if m.kind is Kind.NAME and not m.names), None)
    if lacking is None:
        return None
    so = next((i for i in range(lacking, len(part)) if part[i].text in _SO), len(part))
    told = next((i for i in range(so, len(part)) if part[i].kind in NUMBERS), len(part))
    said = [w for m in part[so:told] for w in m.text.split()]
    taken = bool(set(said) & _DOING) and bool(set(said) & _THAT) and not set(said) & _DENIED
    return part[lacking] if taken and not any(m.kind is Kind.NAME and m.names for m in part[lacking:]) else None


_SO = ("so", "so i", "and so", "therefore", "hence")
_THAT = frozenset(["that", "it", "this", "those", "them"])


def _is_on_another(part: Sequence[Mark]) -> Mark | None:
    """`calves on the leg press`: one exercise of the session, done where another is."""
    kept = [m for m in part if m.kind is not Kind.FILL]
    for one, link, two in zip(kept, kept[1:], kept[2:], strict=False):
        on = link.kind in (Kind.AT, Kind.WITH) and link.text.split()[:1] in (["on"], ["with"], ["using"], ["at"])
        if (
            on
            and one.kind in _NAMES
            and two.kind is Kind.NAME
            and one.names
            and two.names
            and not set(one.names) & set(two.names)
        ):
            return two
    return None
