"""Marks that belong to a hurt, and so to no set: what counts its places, and bare numbers after it."""

from collections.abc import Sequence

from bot.notation.clauses import kind_at, part_of, text_at
from bot.notation.days.weekdays import WEEKDAYS
from bot.notation.how_often_hurt import set_that_was, told_how_often
from bot.notation.kinds import Kind
from bot.notation.segments.edges import EDGES
from bot.notation.tokens import Mark
from bot.notation.when_hurt import told_when
from bot.notation.wordlist import words


def counted_hurts(marks: Sequence[Mark], hurt: set[int]) -> set[int]:
    """What counts the places of a hurt and no sets: `145x8, both my wrists hurt`, `two of my fingers are numb`."""
    out: set[int] = set()
    for place in hurt:
        at = place - 1
        while at >= 0 and (marks[at].kind is Kind.FILL or (at in hurt and marks[at].text in _OF_MY)):
            at -= 1
        if at >= 0 and marks[at].kind in (Kind.EACH, Kind.ALL) and marks[at].text.split(" ")[0] in ("both", "all"):
            out.add(at)
        few = at >= 0 and marks[at].kind is Kind.NUM and marks[at].value in _FEW and marks[place].text in _SEVERAL
        if few and kind_at(marks, at - 1) not in (Kind.X, Kind.FOR, Kind.AT, Kind.NUM, Kind.WITH, Kind.KG, Kind.LB):
            out.add(at)
    return out


_OF_MY = ("of", "my", "the", "of my", "of the")
_FEW = range(2, 6)
_SEVERAL = frozenset(words("fingers toes knuckles nails ribs calluses blisters fingertips discs teeth"))
"""Places of which a client has several, and counts them."""
_LED_TO = frozenset(words("since started began with on during doing from"))
_OF_EXERCISE = frozenset(words("the my those these doing last set of"))


def names_since(marks: Sequence[Mark], hurt: set[int]) -> set[int]:
    """The exercise since which it hurts, which heads no set: `8 reps but my foot is numb since the deadlifts`."""
    out: set[int] = set()
    for place, mark in enumerate(marks) if hurt else ():
        numbered = kind_at(marks, place + 1) in (Kind.NUM, Kind.CLOCK, Kind.COLON)
        if mark.kind is not Kind.NAME or numbered or not _in_hurt(marks, place, hurt):
            continue
        before = [w for m in marks[max(0, place - 5) : place] for w in m.text.split()]
        while before and before[-1] in _OF_EXERCISE:
            before.pop()
        changed = bool(before) and before[-1] in _CHANGED
        while changed and before and before[-1] in _CHANGED | _BY_WHOM:
            before.pop()
        of_then = (
            before[-1:] and before[-1].removesuffix("s") in _DAYS and {"from", "after", "since"} & set(before[-3:])
        )
        if of_then or before[-1:] == ["since"] or (before[-2:-1] in (["started"], ["began"]) and before[-1] in _LED_TO):
            out.add(place)
            out |= {
                p for p in range(max(0, place - 5), place) if changed and marks[p].kind in (Kind.SKIP, Kind.SKIPPED)
            }
    return out


_DAYS = frozenset(d.removesuffix("s") for d in WEEKDAYS) | {"yesterday"}
_BY_WHOM = frozenset(words("i we you u have ive weve had just all"))


def bare_after(marks: Sequence[Mark], hurt: set[int]) -> set[int]:
    """Bare numbers in the part of a hurt, after it: `hurts on chin 3` is no set; `foot cramped so 16`, `hands numb
    after the set of 9` tell one."""
    out: set[int] = set()
    for place in sorted(hurt):
        at = place + 1
        while at < len(marks) and marks[at].kind not in EDGES and at not in hurt and marks[at].text != "but":
            after = marks[at + 1].kind if at + 1 < len(marks) else None
            before = marks[at - 1].kind
            linked = (Kind.X, Kind.FOR, Kind.AT, Kind.WITH, Kind.NUM, Kind.KG, Kind.LB, Kind.REPS, Kind.SECONDS, Kind.S,
                      Kind.MINUTES, Kind.HOURS)  # fmt: skip
            told = next((m.text for m in reversed(marks[place:at]) if m.text not in ("the", "only", "just")), "")
            done = told in ("got", "did", "managed", "so", "set of", "a set of", "other", "remaining") or _is_gone_to(
                marks, at
            )
            rates = before in _RATES and any(m.kind is Kind.X for m in marks[place:at])
            rates = rates or _heads_counts(marks, at)
            if marks[at].kind is Kind.NUM and after not in linked and before not in linked and not (done or rates):
                out.add(at)
            at += 1
    return out


def _heads_counts(marks: Sequence[Mark], place: int) -> bool:
    """The first of the counts of an exercise that hurt: `tore a callus on chins (bw 9, 8)`, `hurt doing chins: 9 8`."""
    at = place - 1
    while kind_at(marks, at) in (Kind.OPEN, Kind.COLON, Kind.BODY, Kind.DASH):
        at -= 1
    if kind_at(marks, at) is not Kind.NAME:
        return False
    end = place + 1
    while kind_at(marks, end) in (Kind.COMMA, Kind.AND) and kind_at(marks, end + 1) is Kind.NUM:
        end += 2
    closed = kind_at(marks, end) in (None, Kind.CLOSE, *EDGES)
    return end > place + 1 and closed


_RATES = (Kind.RPE, Kind.RIR, Kind.FEELS)
"""Behind a set, these lead its effort: `no pain anymore 65x8 rir 2`."""


def _is_gone_to(marks: Sequence[Mark], at: int) -> bool:
    """`so dropped it to 55`, `so went down to 55`: a load that was changed for."""
    said = [w for m in marks[max(0, at - 4) : at] for w in m.text.split()]
    return said[-1:] == ["to"] and bool(_CHANGED & set(said))


_CHANGED = frozenset(
    words(
        "dropped drop went lowered reduced cut backed down stripped moved switched changed swapped binned ditched",
        "stopped started added removed skipped",
    )
)
_TIMES = (Kind.MINUTES, Kind.HOURS, Kind.SECONDS)
_LASTED = frozenset(words("been lasted lasting lasts took takes within since"))
_SINCE = frozenset(words("ago later since afterwards now"))
_FOR = frozenset(words("for after"))
_ABOUT = frozenset(words("about like only around maybe"))


def lasting(marks: Sequence[Mark], hurt: set[int]) -> set[int]:
    """How long it has hurt, which is no hold: `arm wont lift, been 5 min`, `10 minutes after the bike no breath`."""
    out: set[int] = set()
    for place in range(len(marks) - 1) if hurt else ():
        if marks[place].kind is not Kind.NUM or marks[place + 1].kind not in _TIMES or place in hurt:
            continue
        start, end = part_of(marks, place)
        before = [w for m in marks[max(start, place - 3) : place] for w in m.text.split()]
        after = [w for m in marks[place + 2 : place + 3] for w in m.text.split()]
        told = bool(_LASTED & set(before[-3:])) or bool(_SINCE & set(after[:1]))
        led = [w for w in before if w not in _ABOUT][-1:]
        opens = place == start and after[:1] in _PAST and any(p in hurt for p in range(place, end))
        of_it = opens or (bool(_FOR & set(led)) and any(p in hurt for p in range(start, place)))
        named = any(m.kind is Kind.NAME for m in marks[start:end])
        if (of_it or (told and not named)) and kind_at(marks, place - 1) is not Kind.X:
            out |= {place, place + 1}
    return out


_PAST = (["after"], ["into"], ["off"], ["since"], ["out"], ["past"], ["later"])
"""What tells how long after an exercise it hurts: `ten minutes off the bike and no breath`."""


def told_of_hurts(marks: Sequence[Mark], hurt: set[int]) -> set[int]:
    """What tells when or where it hurts: `droopy on one side`, `rep 5 my back went`, `pinches every time i brace`."""
    out: set[int] = set()
    for place, mark in enumerate(marks) if hurt else ():
        side = mark.kind is Kind.NUM and mark.text == "one" and text_at(marks, place + 1) == "side"
        if side and kind_at(marks, place - 1) not in (Kind.NUM, Kind.REPS) and _in_hurt(marks, place, hurt):
            out |= {place, place + 1}
        if mark.kind is Kind.NUM and text_at(marks, place - 1) == "rep" and place + 1 in hurt:
            out |= {place - 1, place}
        aged = mark.kind is Kind.NUM and kind_at(marks, place + 1) is Kind.S
        if aged and text_at(marks, place - 1).split()[-1:] in _OF_AGE:
            out |= {place, place + 1}
        if mark.kind is Kind.SAME and place + 1 in hurt and kind_at(marks, place + 1) is not Kind.NAME:
            out.add(place)
        if mark.kind is Kind.WAS and _leads_into(marks, place, hurt):
            out.add(place)
        if mark.kind is Kind.OTHERTIME and mark.text in _HARDLY and place + 1 in hurt:
            out.add(place)
        again = mark.kind is Kind.ALL and mark.text.endswith(" time")
        if again and text_at(marks, place + 1).split()[:1] in _DOERS and _in_hurt(marks, place, hurt):
            out.add(place)
    out |= told_when(marks, hurt) | told_how_often(marks, hurt)
    return out | set_that_was(marks, hurt | out)


def counted_sides(marks: Sequence[Mark]) -> set[int]:
    """What each side did behind a hurt: `hamstring cramped so L6 R9 with 14s`; not the scores of `left 3, right 5`."""
    out: set[int] = set()
    for place in range(len(marks) - 3):
        kinds = [m.kind for m in marks[place : place + 4]]
        told = kinds in _BY_SIDE and text_at(marks, place - 1) in ("so", "then", "so only", "so just")
        if told or (kinds in _BY_SIDE and kind_at(marks, place + 4) in (Kind.WITH, Kind.AT)):
            out |= set(range(place, place + 4))
    return out


_BY_SIDE = (
    [Kind.LEFT, Kind.NUM, Kind.RIGHT, Kind.NUM],
    [Kind.RIGHT, Kind.NUM, Kind.LEFT, Kind.NUM],
    [Kind.NUM, Kind.LEFT, Kind.NUM, Kind.RIGHT],
    [Kind.NUM, Kind.RIGHT, Kind.NUM, Kind.LEFT],
)


def _leads_into(marks: Sequence[Mark], place: int, hurt: set[int]) -> bool:
    """`i was dizzy`, `was a bit faint`: what was, is the hurt; `that was 80x5` corrects."""
    at = place + 1
    while kind_at(marks, at) is Kind.FILL and at not in hurt:
        at += 1
    return at in hurt and kind_at(marks, place - 1) is not Kind.NUM


def _in_hurt(marks: Sequence[Mark], place: int, hurt: set[int]) -> bool:
    """Whether a hurt is told in the part of a place."""
    start, end = part_of(marks, place)
    return any(p in hurt for p in range(start, end))


_HARDLY = ("nearly", "almost", "about to", "thought id", "thought i would")
"""Before a hurt these tell that it came near: `nearly passed out after bench 60x5`."""
_OF_AGE = (["my"], ["early"], ["mid"], ["late"])
"""Before `20s`, `twenties` these tell an age: `had a bad shoulder in my twenties`."""
_DOERS = (["i"], ["it"], ["my"], ["the"], ["we"], ["when"])


def sides_of_hurts(marks: Sequence[Mark], hurt: set[int]) -> set[int]:
    """`elbow 2/10 and shoulder 4/10, both the left side`, `wrists ouchy, both of them`: a part behind a hurt."""
    out: set[int] = set()
    for place, mark in enumerate(marks) if hurt else ():
        one = mark.kind is Kind.NUM and mark.text == "one" and text_at(marks, place + 1) in ("side", "leg", "arm")
        if not one and (mark.kind not in (Kind.EACH, Kind.ALL) or mark.text.split(" ")[0] != "both"):
            continue
        start, end = part_of(marks, place)
        before = start - 1
        while before >= 0 and marks[before].kind in (Kind.FILL, Kind.COMMA, Kind.STOP):
            before -= 1
        own = all(m.kind in _OF_BOTH or m.text in _THEM for m in marks[start:end] if m is not mark)
        if own and (before in hurt or _is_of_pair(marks, place, before, hurt)):
            out |= set(range(start, end))
    return out


def _is_of_pair(marks: Sequence[Mark], place: int, before: int, hurt: set[int]) -> bool:
    """Whether what hurts is a pair, in a part before that tells a set too: `hands numb after the set of 9, both of
    them`."""
    first = part_of(marks, before)[0] if before >= 0 else 0
    return marks[place].text.endswith(("them", "em")) and any(
        p in hurt and marks[p].text in _THEM for p in range(first, before)
    )


_OF_BOTH = (Kind.FILL, Kind.LEFT, Kind.RIGHT, Kind.AT, Kind.WITH)
_THEM = frozenset(words("em them sides side knees hips shoulders elbows wrists ankles hands feet legs arms"))
