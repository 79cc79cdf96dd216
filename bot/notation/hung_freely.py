"""A load hung on the body, told in free words: `6 pull ups carrying a 10 kg dumbbell`, `chucked 10 kg on the belt, got
6`, `6 reps plus 10 kilos` as `pull ups +10 kg x 6`.
"""

from collections.abc import Sequence

from bot.notation.answer import Request
from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.session_place import name_of, place_spoken_of
from bot.notation.tokens import Mark
from bot.notation.wordlist import words
from bot.training.plan import LoadStyle

_PLAIN = (Kind.FILL, Kind.WORD, Kind.COMMA, Kind.AND, Kind.COLON, Kind.WITH, Kind.AT, Kind.NUM, Kind.KG, Kind.LB,
          Kind.NAME, Kind.REPS, Kind.FOR, Kind.STOP, Kind.DONE, Kind.PLUS, Kind.ADDED, Kind.SKIP, Kind.TO, Kind.PLATES,
          Kind.R, Kind.OPEN, Kind.CLOSE, Kind.WAS, Kind.X)  # fmt: skip
_UNITS = (Kind.KG, Kind.LB)
_LESS = frozenset(words(
    "assist assisted assistance band help helped helping off lighter without no not skip skipped skipping drop dropped",
    "next will gonna should tomorrow rest instead warm more left set sets then and weigh weighed weight bodyweight",
))  # fmt: skip
_BOTH = 2
"""Numbers of a set: its load and its count."""


def with_hung_freely(marks: Sequence[Mark], request: Request) -> list[Mark]:
    """The marks of a message that tells one set with a load hung on the body, in plain order."""
    names = [m for m in marks if m.kind is Kind.NAME and m.names]
    numbers = [i for i, m in enumerate(marks) if m.kind is Kind.NUM]
    place = place_spoken_of(names, request)
    if place is None or request.exercises[place].load_style is not LoadStyle.BODYWEIGHT or len(numbers) != _BOTH:
        return list(marks)
    loads = [i for i in numbers if kind_at(marks, i + 1) in _UNITS]
    counts = [i for i in numbers if i not in loads]
    said = {w for m in marks for w in m.text.split()}
    gear = any(m.kind in (Kind.PLUS, Kind.ADDED, Kind.WITH) for m in marks) or said & _HUNG
    chucked = all(m.text in _PUT for m in marks if m.kind is Kind.SKIP)
    plain = all(m.kind in _PLAIN or (m.kind is Kind.NAME and not m.names) for m in marks)
    spoken = {w for m in marks if m.kind in _TALK for w in m.text.split()}
    if len(loads) != 1 or not gear or not plain or not chucked or said & _LESS or spoken - _OF_SET - _HUNG:
        return list(marks)
    load, count = loads[0], counts[0]
    if kind_at(marks, count - 1) in (Kind.X, Kind.FOR) and count - load <= _BOTH + 1:
        return list(marks)
    value = marks[count].value
    if value is None or value != int(value):
        return list(marks)
    at = marks[load].start
    plus, cross = Mark(Kind.PLUS, "+", at, at), Mark(Kind.X, "x", marks[count].start, marks[count].start)
    return [name_of(place, names, request, marks[0].start), plus, *marks[load : load + 2], cross, marks[count]]


_HUNG = frozenset(words(
    "belt vest dumbbell kettlebell plate disc chain feet knees legs ankles waist hanging hung carrying holding",
    "strapped",
    "mit met extra erbij added dazu con avec wearing backpack rucksack between",
))  # fmt: skip
_PUT = frozenset(words("chucked threw slung binned"))
_TALK = (Kind.FILL, Kind.WORD)
_OF_SET = frozenset(words(
    "i ive im a an the my and with w on of for at in",
    "up en et me it was were got did made hit went managed done so just",
    "only about around off from under between another one two felt heavy hard tough easy good great solid strict clean",
    "slow sir coach boss mate lol haha today here ones two hand each plus additional clipped dangled dangling chained",
    "fait hecho gemacht geschafft gedaan el la le de der die das ein eine een un une cinturon weste gurtel riem gilet",
    "dip dips weighted kilos kg kilograms harness band-free added loaded hooked attached tied slung chucked threw put",
    "sat resting squeezed held gripped pinched foot leg legs feet ankle my body reps rep set sets then finally legged",
)) - {"then"}  # fmt: skip
"""Words of the telling of such a set; with any other (`10 kg in 6 weeks`, `since may`) it may tell of something else.
"""
