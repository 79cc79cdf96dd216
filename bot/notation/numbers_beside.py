"""Numbers told beside a set that count no part of it: benches, hours of the clock, ages, money, ways, loads of others.

`60x9, 5 of the 6 racks are taken`, `18:42 on the clock`, `I'm 54 after all`, `be there in 10`. What a whole set is made
of (a link, repetitions, a unit of load) is never taken for one. Common wordings, no source.
"""

import re
from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass, replace

from bot.notation.answer import Request
from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.order.steps import is_lacking, said_in
from bot.notation.ratings import VERDICT_LINKS, verdicts
from bot.notation.seconds_compared import COMPARING, seconds_compared
from bot.notation.talk.things import TALKED_OF
from bot.notation.tokens import Mark
from bot.notation.worded import ends_clause, sentence_of
from bot.notation.wordlist import words
from bot.training.plan import Measure

_THINGS = TALKED_OF | frozenset(words(
    "benches racks platforms stations machines treadmills mirrors lights bulbs fans windows doors lockers showers "
    "screens "
    "tvs chairs mats seats lanes floors stairs steps stops members strangers men women boys ladies students tourists "
    "teens beginners influencers grandmas grandpas brothers sisters cousins neighbours children babies toddlers "
    "dogs cats "
    "arms eyes teeth heads ears fingers toes hearts euros euro quid bucks dollars pence cents rupees francs percent "
    "degrees "
    "decibels litres liters litre liter kilometres km miles blocks messages texts emails photos videos selfies phones "
    "cameras tripods pages candles cakes eggs bananas scoops cups glasses bottles cookies slices vans trucks bikes "
    "buses "
    "trams trains minutes hours days weeks months years nights squat benches"
))  # fmt: skip
_DESCRIBED = frozenset(words(
    "squat power bench free empty broken new old little small big young other more different noisy loud random "
    "massive huge "
    "hungry tired spare whole full drunk tall strong cheap good single extra of the my these those their our olympic "
    "nice young kind lovely older burly helpful friendly"
))  # fmt: skip
_LINKS = (Kind.X, Kind.FOR, Kind.KG, Kind.LB, Kind.REPS, Kind.SETS, Kind.S, Kind.HAND, Kind.EACH, Kind.RPE, Kind.RIR,
          Kind.TANK, Kind.SECONDS, Kind.LEFT, Kind.RIGHT, Kind.NUM, Kind.MORE)  # fmt: skip
_STATE = re.compile(
    r"(?:of (?:them|those|these|the \S+) )?(?:are|is|were|was|stand|stood|look)"
    r"(?: (?:all|still|already|just|both|now))* (?:broken|taken|free|"
    r"busy|full|occupied|gone|closed|"
    r"missing|working|empty|out|wrecked|wobbly|used|idle|dead|down|flickering|open|locked|dirty|reserved)\b(?! #)"
)
_STATES = frozenset(
    words("broken taken free busy full occupied gone closed missing out wrecked used reserved empty here")
)
_CLOCK_LED = frozenset(
    words("at by since until till til from around about before after its clock woke up already past is now")
)
_CLOCK_TOLD = re.compile(
    r"(?:on the (?:clock|wall|dot)|am|pm|already|now|here|in the (?:morning|evening|afternoon)|oclock|at night)\b"
)
_LAST_HOUR, _LAST_MINUTE = 24, 59
_AGE = range(14, 100)
_OF_ME = re.compile(r"\b(?:im|i am|am|turned|turning|aged|being|bad for|bad at|good for|decent for)$")
_AGED = re.compile(r"(?:after all|years?|yrs?|yo|now|ffs|this|next|and|you know|remember|not|dont|so|lol|$)")
_OTHERS = re.compile(
    r"\b(?:next to me|beside me|besides me|over there|opposite|across from me|behind me|in front of me|next door|"
    r"next bench|"
    r"next rack|to my left|to my right|not mine|"
    r"not my (?:bar|bench|set|sets|rack|weight|weights|plates|load|kit|doing))\b"
)
_GOING = re.compile(
    r"\b(?:be|im|am|get|getting|arrive|arriving|there|here|back|ready|starting|start|reach|reaching|land|landing|gym|"
    r"parking|coming|inside|begin|beginning)(?: (?:the|to|at|gym|there|here|home|in|my|you))*$"
)
_LEAVING = frozenset(words("out leave leaving go going gone finish finished done home stop"))
_WAYS = frozenset(words("ran run jogged jog walked walk cycled biked sprinted last drove rushed hurried swam next"))
_RIDES = frozenset(words("bus tram train line metro subway underground coach taxi flight ferry route tube"))
_SCALE = frozenset(words("scale scales"))
_UNDERSTOOD = re.compile(
    r"\b(?:understood|got it|will do|noted|roger|copy that|copied|makes sense|clear|all clear|ok boss|on it|"
    r"starting|i see|"
    r"sounds good|perfect|thanks|thank you|cheers|sure|okay|ok)\b"
)
_DID = re.compile(r"\b(?:did|got|made|done|hit|managed|finished|was|were|had|took|reps each|complete)\b")
_PEOPLE = frozenset(words(
    "son daughter kid boy girl nephew niece grandson granddaughter grandkid wife husband partner mum mom dad "
    "brother sister "
    "cat dog puppy baby toddler child youngest eldest oldest twins"
))  # fmt: skip


def with_numbers_beside(marks: Sequence[Mark], request: Request) -> list[Mark]:
    """The marks with such numbers without bearing."""
    said = said_in(marks)
    if said.isdisjoint((Kind.NUM, Kind.CLOCK, Kind.PLATES, Kind.ALL)):
        return list(marks)
    gone = {place for one in _BESIDE if not is_lacking(one.needs, said) for place in one.find(marks)}
    if not gone and is_lacking(_COMPARED.needs, said):
        return list(marks)
    if any(e.measure is Measure.METRES for e in request.exercises):
        gone -= set(_ways(marks))
    if any(e.measure is Measure.SECONDS for e in request.exercises):
        gone -= {i for i in gone if marks[i].kind is Kind.CLOCK and marks[i].text.startswith(("0:", "1:", "2:"))}
        if not is_lacking(_COMPARED.needs, said):
            gone |= set(_COMPARED.find(marks))
    gone |= set(_said_again(marks, gone))
    return [replace(m, kind=Kind.GAP, value=None, parts=()) if i in gone else m for i, m in enumerate(marks)]


def without_ages_and_ways(marks: Sequence[Mark]) -> list[Mark]:
    """The marks without how long it is until the session begins, which is no time that it has, and without ages and
    numbers of rides, which later readings would tear from their words.
    """
    said = said_in(marks)
    gone = {place for one in _BEFORE if not is_lacking(one.needs, said) for place in one.find(marks)}
    if not said.isdisjoint(_THINGS):
        gone |= set(_said_again(marks, set(_things(marks))))
    if not gone:
        return list(marks)
    return [replace(m, kind=Kind.GAP, value=None, parts=()) if i in gone else m for i, m in enumerate(marks)]


def _noughts(marks: Sequence[Mark]) -> Iterator[int]:
    """`zero out of ten on the ankle`, `0 out of 10, would not recommend`: a score, and nobody lifts none of ten."""
    for place, mark in enumerate(marks):
        if (
            mark.kind is Kind.NUM
            and mark.value == 0
            and [m.text for m in marks[place + 1 : place + 3]] == ["out", "of"]
        ):
            yield from range(place, min(place + 4, len(marks)))


def _bare(marks: Sequence[Mark]) -> Iterator[int]:
    """The places of numbers that no link makes a set's."""
    for place, mark in enumerate(marks):
        before = kind_at(marks, place - 1)
        linked = before in (Kind.X, Kind.RPE, Kind.RIR, Kind.PLUS) or text_at(marks, place - 1) == "@"
        if mark.kind is Kind.NUM and not linked and kind_at(marks, place + 1) not in _LINKS:
            yield place


def _describes(mark: Mark) -> bool:
    """Whether a mark says what kind of thing is counted, or counts them once more."""
    said = mark.text.split()
    return mark.kind is Kind.NUM or (bool(said) and set(said) <= _DESCRIBED)


def _things(marks: Sequence[Mark]) -> Iterator[int]:
    """`all 3 squat racks`, `5 of the 6 benches`: a count of things."""
    by = (i + 1 for i, mark in enumerate(marks[:-1]) if mark.text == "by" and marks[i + 1].kind is Kind.NUM)
    for place in (*_bare(marks), *by):  # `lowered by two nice young men`
        at = place + 1
        seen = [place]
        while at < min(len(marks), place + 5) and _describes(marks[at]):
            if marks[at].kind is Kind.NUM:
                seen.append(at)
            at += 1
        said = text_at(marks, at).split()
        plain = kind_at(marks, at) in (Kind.WORD, Kind.FILL, Kind.TALKNUM, Kind.OTHERPERSON, Kind.SKIP)
        behind = {w for m in marks[at + 1 : at + 6] for w in m.text.split()}
        plain = plain or (text_at(marks, at) == "benches" and (len(seen) > 1 or bool(behind & _STATES)))
        lifted = len(seen) == 1 and at == place + 1 and _is_count_of(marks, at)
        if said[:1] and said[0] in _THINGS and plain and not lifted:
            yield from seen
            if kind_at(marks, place - 1) is Kind.ALL:
                yield place - 1


def _is_count_of(marks: Sequence[Mark], place: int) -> bool:
    """Whether what a number names alone is lifted so many times: the `bag` of `the 30 bag for 5`."""
    return (
        not text_at(marks, place).endswith("s")
        and kind_at(marks, place + 1) in (Kind.FOR, Kind.X)
        and kind_at(marks, place + 2) is Kind.NUM
        and kind_at(marks, place + 3) in (None, Kind.STOP, Kind.COMMA, Kind.LINE, Kind.REPS, Kind.FILL, Kind.EACH)
    )


def _drinks(marks: Sequence[Mark]) -> Iterator[int]:
    """`1.5 l of water gone`."""
    for place, mark in enumerate(marks):
        if mark.kind is Kind.NUM and text_at(marks, place + 1) in ("l", "ml") and text_at(marks, place + 2) == "of":
            yield from (place, place + 1)


def _every_thing(marks: Sequence[Mark]) -> Iterator[int]:
    """The `all 3` of `all 3 squat racks are full`."""
    for place, mark in enumerate(marks):
        at = place + 1
        while at < place + 3 and set(text_at(marks, at).split()) & _DESCRIBED:
            at += 1
        thing = text_at(marks, at).split()[:1]
        if (
            mark.kind is Kind.ALL
            and len(mark.text.split()) > 1
            and thing
            and thing[0] in _THINGS
            and thing[0].endswith("s")
            and kind_at(marks, at) is not Kind.NAME
        ):
            yield place


def _years(marks: Sequence[Mark]) -> Iterator[int]:
    """`since 2021`."""
    for place in _bare(marks):
        value = marks[place].value
        year = value is not None and _FIRST_YEAR <= value <= _LAST_YEAR
        if year and set(text_at(marks, place - 1).split()[-1:]) & {"since", "in", "from", "until", "till"}:
            yield place


_FIRST_YEAR, _LAST_YEAR = 1950, 2100


def _states(marks: Sequence[Mark]) -> Iterator[int]:
    """`5 are broken`, `2 of them were taken`; not `only the 35 was free`, which is a load."""
    for place in _bare(marks):
        if text_at(marks, place - 1).split()[-1:] == ["the"]:
            continue
        line = " ".join("#" if m.kind is Kind.NUM else m.text for m in marks[place + 1 : place + 8])
        if _STATE.match(line):
            yield place


def _clocks(marks: Sequence[Mark]) -> Iterator[int]:
    """`18:42 on the clock`, `on the floor by 5:30`: a time of day."""
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.CLOCK or mark.parts[0] > _LAST_HOUR or mark.parts[1] > _LAST_MINUTE:
            continue
        led = {w for m in marks[max(0, place - 2) : place] for w in m.text.split()} & _CLOCK_LED
        behind = " ".join(m.text for m in marks[place + 1 : place + 5])
        if kind_at(marks, place + 1) not in _LINKS and (_CLOCK_TOLD.match(behind) or led):
            yield place


def _ages(marks: Sequence[Mark]) -> Iterator[int]:
    """`I'm 54 after all`, `not bad for 52`, `my 2 year old`."""
    for place in _bare(marks):
        value = marks[place].value
        before = " ".join(m.text for m in marks[max(0, place - 3) : place])
        behind = " ".join(m.text for m in marks[place + 1 : place + 4])
        old = behind.startswith(("year old", "years old", "yr old", "yo ", "years of age", "years young"))
        aged = value is not None and value in _AGE and bool(_AGED.match(behind))
        of_me = aged and _OF_ME.search(before)
        if old or (aged and of_me and kind_at(marks, place + 1) not in _LINKS):
            yield place


def _others(marks: Sequence[Mark]) -> Iterator[int]:
    """`the bar next to me has 100 on it`, `lads beside me load 5 plates a side`: what others lift."""
    if not _OTHERS.search(" ".join(m.text for m in marks)):
        return
    for place in range(len(marks)):
        if marks[place].kind not in (Kind.NUM, Kind.PLATES):
            continue
        start, end = place, place + 1
        while start > 0 and not (ends_clause(marks, start - 1)):
            start -= 1
        while end < len(marks) and not ends_clause(marks, end):
            end += 1
        line = " ".join(m.text for m in marks[start:end])
        own = re.search(r"\b(?:i|ive|we|my set|mine was)\b", line)
        linked = kind_at(marks, place - 1) in (Kind.X, Kind.FOR) or kind_at(marks, place + 1) in (
            Kind.X,
            Kind.FOR,
            Kind.REPS,
        )
        if _OTHERS.search(line) and not own and not linked:
            yield place
            if kind_at(marks, place + 1) is Kind.PLATES:
                yield place + 1
            yield from (i for i in range(place, min(end, place + 4)) if marks[i].kind in (Kind.HAND, Kind.EACH))


def _owned(marks: Sequence[Mark]) -> Iterator[int]:
    """`his was 11`, `her last set was 11`, `the first of my kids is 11`, `make it 9 for dinner`: of others, and what
    else there is.
    """
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.NUM:
            continue
        start = end = place
        while start > 0 and not ends_clause(marks, start - 1):
            start -= 1
        while end < len(marks) and not ends_clause(marks, end):
            end += 1
        led = [w for m in marks[start:place] if m.kind is not Kind.WAS for w in m.text.split()]
        was = any(m.kind is Kind.WAS for m in marks[start:place])
        alone = sum(m.kind is Kind.NUM for m in marks[start : end + 2]) == 1  # not of `kids are 4 and 6`
        others = was and bool(led) and (led[0] in _WHOSE or led[-1] in TALKED_OF)
        behind = [w for m in marks[place + 1 : end] for w in m.text.split()]
        used = len(behind) == _USED and behind[0] == "for" and behind[1] in TALKED_OF
        if (others and alone) or used:
            yield place


_USED = 2
_WHOSE = frozenset(words("his her hers their theirs mates buddys friends wifes husbands brothers sisters mums dads"))


def _on_the_way(marks: Sequence[Mark]) -> Iterator[int]:
    """`be there in 10`, `reaching the gym in 15 minutes`: how long it is until the session begins."""
    for place in range(1, len(marks)):
        timed = kind_at(marks, place + 1) in (Kind.MINUTES, Kind.M, Kind.HOURS)
        end = place + 1 + timed
        if marks[place].kind is not Kind.NUM or text_at(marks, place - 1).split()[-1:] != ["in"]:
            continue
        before = " ".join(m.text for m in marks[max(0, place - 5) : place])
        ends = end >= len(marks) or ends_clause(marks, end) or text_at(marks, end) in ("only", "max", "ish", "or")
        if ends and not _LEAVING & set(before.split()) and _GOING.search(before.removesuffix(" in")):
            yield from range(place, end)


def _ways(marks: Sequence[Mark]) -> Iterator[int]:
    """`jogged the last 800 m`: a way to the gym."""
    for place, mark in enumerate(marks):
        led = {w for m in marks[max(0, place - 3) : place] for w in m.text.split()} & _WAYS
        if mark.kind is Kind.NUM and led and kind_at(marks, place + 1) in (Kind.M, Kind.METRES):
            yield from (place, place + 1)


def _rides(marks: Sequence[Mark]) -> Iterator[int]:
    """`on the bus, number 48`, `tram 3`, `on bench number 4`: which one of several."""
    for place in _bare(marks):
        numbered = text_at(marks, place - 1) in ("number", "no", "nr", "num")
        near = {w for m in marks[max(0, place - 4) : place] for w in m.text.split()}
        before = text_at(marks, place - 2).split()[-1:]
        on_kit = (
            numbered
            and kind_at(marks, place - 2) in (Kind.NAME, Kind.WEAK, Kind.WORD)
            and before not in (["rep"], ["set"])
        )
        on_kit = on_kit and text_at(marks, place - 3) in ("on", "at", "on the") and _told(marks, place) > 1
        if (numbered and near & _RIDES) or set(text_at(marks, place - 1).split()[-1:]) & _RIDES or on_kit:
            yield from (place - 1, place) if numbered else (place,)


def _told(marks: Sequence[Mark], place: int) -> int:
    """How many numbers its sentence tells before a place."""
    start, _ = sentence_of(marks, place)
    return sum(m.kind is Kind.NUM for m in marks[start:place])


def _scales(marks: Sequence[Mark]) -> Iterator[int]:
    """`the scale is off by 4 kilos`."""
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.NUM or _is_led(marks, place):
            continue
        led = {w for m in marks[max(0, place - 9) : place] for w in m.text.split()}
        start, _ = sentence_of(marks, place)
        first = not any(m.kind in (Kind.NUM, Kind.COMMA) for m in marks[start:place])
        unit = kind_at(marks, place + 1) in (Kind.KG, Kind.LB)
        linked = kind_at(marks, place + 1 + unit) in (Kind.X, Kind.FOR, Kind.REPS)
        if led & _SCALE and first and not linked:
            yield from (place, place + 1) if unit else (place,)


def _is_led(marks: Sequence[Mark], place: int) -> bool:
    """Whether a link stands before a number: not the `by` of `off by 4`."""
    off = text_at(marks, place - 1) == "by" and text_at(marks, place - 2).split()[-1:] == ["off"]
    return kind_at(marks, place - 1) in (Kind.X, Kind.FOR) and not off


def _understood(marks: Sequence[Mark]) -> Iterator[int]:
    """`8 till 10 reps, understood`: the plan said after the coach."""
    line = " ".join(m.text for m in marks)
    done = line.replace("got it", "")
    numbers = [i for i, m in enumerate(marks) if m.kind is Kind.NUM]
    if not _RANGED.search(line) or not _UNDERSTOOD.search(line) or _DID.search(done):
        return
    ranged = [i for i in numbers if text_at(marks, i + 1) in _TILL and kind_at(marks, i + 2) is Kind.NUM]
    ranged = [i for i in ranged if (marks[i].value or 0) < (marks[i + 2].value or 0)]
    counted = {i for i in numbers if kind_at(marks, i + 1) is Kind.SETS}
    if len(ranged) == 1 and set(numbers) <= counted | {ranged[0], ranged[0] + 2}:
        start = min(numbers)
        yield from range(start, ranged[0] + 3 + (kind_at(marks, ranged[0] + 3) is Kind.REPS))


_TILL = ("to", "till", "til", "until", "-")
_RANGED = re.compile(r"\S (?:to|till|til|until|-) \S")


def _in_brackets(marks: Sequence[Mark]) -> Iterator[int]:
    """`my daughter (5)`: how old somebody is."""
    for place in _bare(marks):
        bracketed = kind_at(marks, place - 1) is Kind.OPEN and kind_at(marks, place + 1) is Kind.CLOSE
        if bracketed and set(text_at(marks, place - 2).split()[-1:]) & _PEOPLE:
            yield from range(place - 1, place + 2)


def _said_again(marks: Sequence[Mark], gone: set[int]) -> Iterator[int]:
    """The `Eight!` of `parking was 8 euros! Eight!`: all that its sentence says."""
    values = {marks[i].value for i in gone if marks[i].kind is Kind.NUM}
    if not values:
        return
    first = min(gone)
    for place in _bare(marks):
        if marks[place].value in values and place > first and sentence_of(marks, place) == (place, place + 1):
            yield place


@dataclass(frozen=True, slots=True)
class _Finding:
    """What finds numbers of one kind: it finds none unless something of each of `needs`, a kind or a word, is said."""

    find: Callable[[Sequence[Mark]], Iterator[int]]
    needs: tuple[frozenset[str], ...]


def _finding(find: Callable[[Sequence[Mark]], Iterator[int]], *needs: Iterable[str]) -> _Finding:
    return _Finding(find, tuple(frozenset(need) for need in needs))


_BESIDE = (
    _finding(_things, {Kind.NUM}, _THINGS),
    _finding(_states, {Kind.NUM}, words("are is were was stand stood look")),
    _finding(_clocks, {Kind.CLOCK}),
    _finding(_ages, {Kind.NUM}, words("year years yr yo im am turned turning aged being for at")),
    _finding(_others, {Kind.NUM, Kind.PLATES}),
    _finding(_ways, {Kind.NUM}, {Kind.M, Kind.METRES}, _WAYS),
    _finding(_understood, {Kind.NUM}, _TILL),
    _finding(_drinks, {Kind.NUM}, {"l", "ml"}, {"of"}),
    _finding(_every_thing, {Kind.ALL}, _THINGS),
    _finding(verdicts, {Kind.NUM}, VERDICT_LINKS),
    _finding(_years, {Kind.NUM}, words("since in from until till")),
)
_COMPARED = _finding(seconds_compared, {Kind.NUM}, {Kind.SECONDS, Kind.S}, COMPARING)
_BEFORE = (
    _finding(_on_the_way, {Kind.NUM}, {"in"}),
    _finding(_in_brackets, {Kind.NUM}, {Kind.OPEN}, _PEOPLE),
    _finding(_rides, {Kind.NUM}, {"number", "no", "nr", "num", *_RIDES}),
    _finding(_scales, {Kind.NUM}, _SCALE),
    _finding(_noughts, {Kind.NUM}, {"out"}),
    _finding(_owned, {Kind.NUM}, _WHOSE | TALKED_OF),
)
