"""The names that stand before what skips them: `calves and rows skipped`, `both pallof sets and the hangs skipped`."""

from collections.abc import Sequence

from bot.notation.clauses import kind_at, part_of, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

LISTED = frozenset((Kind.AND, Kind.COMMA, Kind.OR, Kind.FILL, Kind.PLUS, Kind.SLASH))
_PASSIVE = frozenset((Kind.FILL, Kind.WAS, Kind.COLON, Kind.DASH, Kind.COMMA, Kind.ALL, Kind.AND, Kind.PLUS, Kind.SLASH,
                      Kind.OR))  # fmt: skip


def names_before(marks: Sequence[Mark], place: int, far: bool) -> tuple[list[Mark], set[int], bool]:
    """Names straight before `skipped`: `calves and rows skipped`."""
    found: list[Mark] = []
    used = {place}
    rest = False
    at = place - 1
    while at >= 0:
        mark = marks[at]
        if mark.kind in (Kind.NAME, Kind.WEAK):
            if found and mark.kind is Kind.WEAK and _is_talk(marks, at):
                break
            if found and at + 1 < len(marks) and marks[at + 1].kind is Kind.NAME and marks[at].kind is Kind.NAME:
                pass
            elif found and not any(
                m.kind in (Kind.AND, Kind.COMMA, Kind.SLASH, Kind.PLUS, Kind.OR) for m in marks[at + 1 : at + 3]
            ):
                break
            found.append(mark)
        elif mark.text in ("yes", "yep", "yeah", "yup") or (found and _is_of_sets(marks, at)):
            break
        elif mark.kind is Kind.THEREST:
            rest = not found
        elif found and mark.kind is Kind.COMMA and _is_done(marks, at):
            break
        elif (not found and not rest and _counts_sets(marks, at)) or _is_small(marks, at):
            pass
        elif mark.kind not in _PASSIVE or (mark.kind is Kind.COMMA and not (far or found)):
            break
        used.add(at)
        at -= 1
    if not found and not rest:
        return [], set(), False
    return found, used, rest


_DOING = frozenset(words("do did make made doing making only just keep kept keeping have had got will"))


def _is_done(marks: Sequence[Mark], at: int) -> bool:
    """The first half of `i make thrusts and hacks, calves and planks i leave`: what is done stands there."""
    start, end = part_of(marks, at - 1)
    return any(m.kind is Kind.NAME for m in marks[start:end]) and any(
        set(m.text.split()) & _DOING for m in marks[start:end]
    )


def _is_talk(marks: Sequence[Mark], at: int) -> bool:
    """The `legs` of `ran out of legs, squats i skip`: it stands in a clause of its own."""
    return (at > 0 and marks[at - 1].kind not in (*LISTED, Kind.NAME, Kind.WEAK)) or text_at(marks, at - 1) == "of"


def _is_of_sets(marks: Sequence[Mark], at: int) -> bool:
    """The `on all four` of `70 for 6 on all four and curls skipped`: it is of the sets told before it."""
    of_all = marks[at].kind in (Kind.ALL, Kind.EACH)
    return of_all and kind_at(marks, at - 1) in (Kind.NUM, Kind.REPS, Kind.KG, Kind.LB)


def _is_small(marks: Sequence[Mark], at: int) -> bool:
    """The `sets` of `both pallof sets and the hangs skipped`, the `r` of `burpees r not happening`."""
    sets = marks[at].kind in (Kind.SETS, Kind.SET) and at > 0 and marks[at - 1].kind in (Kind.NAME, Kind.WEAK)
    return sets or (marks[at].kind is Kind.R and not marks[at].tight)


def _counts_sets(marks: Sequence[Mark], at: int) -> bool:
    """`3 sets of them`, `curls and planks both`: how many of what stands before."""
    numbered = marks[at].kind is Kind.NUM and marks[at + 1].kind is Kind.SETS
    return marks[at].kind is Kind.SETS or numbered or marks[at].text == "both"
