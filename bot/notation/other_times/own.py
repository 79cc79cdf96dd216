"""Where the client's own sets begin behind what is told of others: `my mate watched and 90x10`, `so i did rows`."""

from collections.abc import Sequence

from bot.notation.clauses import EDGES, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_RESUMING = ("anyway", "anyways", "anyhow")
_MY_DOING = frozenset(
    words("i im ive ill id it did started just count counting counted call calling say lets make only really put log")
)
"""Words behind `so` of what the client did, or how many count: `my spotter helped so count only 6`."""
_MINE = ("me", "mine", "myself")


def is_set_of_mine(marks: Sequence[Mark], place: int, at: int) -> bool:
    """`my mate watched and 90x10`, `they are so hard but 110x8`: a set behind somebody who lifted nothing."""
    first = at + 1
    if marks[at].kind is not Kind.AND and marks[at].text != "but":
        return False
    told = [m.kind for m in marks[first : first + 3] if m.kind not in (Kind.KG, Kind.LB)]
    entry = told[:1] == [Kind.NUM] and told[1:2] in ([Kind.X], [Kind.FOR], [Kind.NUM])
    said = {w for m in marks[place:at] for w in m.text.split()}
    return entry and not said & _LIFTED and not any(m.kind is Kind.NUM for m in marks[place:at])


def is_named(marks: Sequence[Mark], place: int, at: int) -> bool:
    """`my kid got sick and it was a quick one rows 60 10 9 8`: a named set behind what is no more told of them."""
    if marks[at].kind is not Kind.NAME or at + 1 >= len(marks) or marks[at + 1].kind not in _OF_SETS:
        return False
    turned = (i for i in range(place, at) if marks[i].kind is Kind.AND or marks[i].text in ("so", "but", "because"))
    mine = any(marks[i + 1].text.split(" ")[0] in _NOT_THEIRS for i in turned if marks[i + 1].text)
    mine = mine or marks[at - 1].text == "so"
    return mine and not any(m.kind is Kind.NUM for m in marks[place:at])


_OF_SETS = (Kind.NUM, Kind.BODY, Kind.SET, Kind.SETS, Kind.ALL, Kind.EACH, Kind.ASSIST, Kind.ADDED, Kind.PLUS,
            Kind.SIGN, Kind.MINUS, Kind.WITH, Kind.LABEL, Kind.COLON, Kind.PLANNED, Kind.WAS)  # fmt: skip
"""What the sets of a name begin with, straight behind it."""
_NOT_THEIRS = frozenset(words("it its i im ive id we were only quick short just"))
"""What is spoken of behind `and`, where no more is told of somebody else."""
_WHEN = frozenset(("before", "while", "until", "till", "when", "after", "as", "since", "whilst"))
_LIFTS = frozenset(("did", "got", "had", "hit", "put", "made", "pulled", "pushed", "lifted", "pressed", "at", "for"))


def is_told_behind(marks: Sequence[Mark], place: int, at: int) -> bool:
    """`before she woke up eight reps`: the client's own number, behind what only says when."""
    if marks[at].kind is not Kind.NUM or at < place + 2:
        return False
    when = place > 0 and marks[place - 1].text.split()[-1:] and marks[place - 1].text.split(" ")[-1] in _WHEN
    if not when:
        return False
    before = marks[at - 1]
    lifted = before.text.split()[-1:] and before.text.split(" ")[-1] in (*_LIFTS, "the", "my")
    rest = marks[at + 1].kind if at + 1 < len(marks) else None
    counted = rest in (None, Kind.REPS, Kind.X, Kind.FOR, Kind.AND, Kind.WITH, Kind.EACH, *EDGES)
    return counted and not lifted and before.kind is not Kind.NAME


_LIFTED = frozenset(
    words("benched squatted deadlifted curled rowed repped does lifts did got hit made pulled pushed lifted")
)
"""What somebody did who lifted too."""


def is_own(marks: Sequence[Mark], place: int) -> bool:
    """`someone was on it so i did rows`, `lol anyway 60x5`, `me: 60x5`: where the client's own doing starts."""
    following = marks[place + 1].kind if place + 1 < len(marks) else None
    if marks[place].kind is Kind.AND and text_at(marks, place + 1).split()[:1] in (["i"], ["im"], ["ive"], ["me"]):
        return True
    if marks[place].text in _RESUMING or (marks[place].text in _MINE and following in (Kind.NUM, Kind.COLON)):
        return True
    if marks[place].text != "so":
        return False
    doing = {w for m in marks[place + 1 : place + 2] for w in m.text.split()[:1]}
    return bool(doing & _MY_DOING)


def is_own_count(marks: Sequence[Mark], at: int) -> bool:
    """`my brother did 8 chins, i only did 6`: a bare count of the client's own, of the same exercise."""
    said = [m for m in marks[at + 1 : at + 7] if m.text not in ("only", "just", "but", "could")]
    own = [m.text for m in said[:1]] == ["i"] and {m.text for m in said[1:2]} <= {"did", "got", "managed", "hit"}
    ends = len(said) < 4 or said[3].kind in (*EDGES, Kind.REPS)
    return own and [m.kind for m in said[2:3]] == [Kind.NUM] and ends
