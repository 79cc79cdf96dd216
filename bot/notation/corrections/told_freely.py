"""A correction of one stored set in free words, put plainly: `knock one off that`, `he counted 8 so put 8`, `typed a 9,
meant an 8`, `set 1 should say 10, leave set 2 alone`, `five kilos lighter than i told you, 55`.

Which set, what it was and what it was not are looked for wherever they stand; the words between may be any, as people
tell why they miscounted. So much must hold instead: one new value that differs from what is stored and lies near it,
a sign that something told before is put right (the old value, a named stored set, a word of mistake or of change), and
nothing of what else a message may tell: an exercise of its own, a set with its load, an effort, what is to come. Then
the message is put as `sorry, set 1 was 10 reps`.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from decimal import Decimal
from itertools import pairwise

from bot.notation.answer import Request
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words
from bot.training.report import Performed, Stage
from bot.training.units import Unit

_SHORT = 5
_LONGEST = 30
"""Marks of a message that is read so."""
_EDGES = (Kind.COMMA, Kind.STOP, Kind.DASH, Kind.BREAK, Kind.LINE, Kind.OPEN, Kind.CLOSE)
_OF_MORE = (Kind.RPE, Kind.RIR, Kind.TANK, Kind.EACH, Kind.SECONDS, Kind.METRES, Kind.CLOCK,
            Kind.BAD, Kind.BODY, Kind.EMPTY, Kind.SAME, Kind.SAMELOAD, Kind.SAMEREPS, Kind.MINI, Kind.WARMUP,
            Kind.ANOTHER, Kind.SLASH, Kind.PLUS, Kind.QUERY, Kind.MINUTES, Kind.HOURS, Kind.PLANNED,
            Kind.SKIPPED, Kind.FINISH, Kind.ASSIST, Kind.LEADX, Kind.SLIP)  # fmt: skip
"""Kinds of what tells more than one number of one set."""
_TO_COME = frozenset(words(
    "will would gonna tomorrow should could maybe if when until next then going wanna want try trying planning",
    "yesterday",
    "warm warmup warming failed fail missed both sets all each per drop dropping skip skipping rest rested resting",
    "easy hard tough heavy harder brutal tired killed dying today finish finished done side sides leg arm hand",
    "might sure unsure probably perhaps think guess or either whole entire throughout every always",
    "night evening morning week weekend month year time times oclock too",
))  # fmt: skip
_ONES = frozenset(words("set sets one ones serie satz round entry go lot attempt bench bout"))
_FIRSTS = frozenset(words("opener opening starter"))
_LASTS = frozenset(words("last previous prev latest letzter letzte"))
_THAT = frozenset(words("that this it them those"))
_STAYING = frozenset(words("stays stay stands stand remains remain alone fine ok okay unchanged untouched good"))
_DENYING = frozenset(words("not isnt wasnt ipv statt instead nicht"))
_TOLD = frozenset(words("said wrote typed told logged entered put tapped written sent reported gave"))
_WRONG = frozenset(words("wrong wishful mistake typo incorrect error lie generous optimistic kidding dreaming rubbish"))
_WAS = frozenset(words("was is were its be read reads say says should only did managed had got made equals war"))
_CHANGING = frozenset(words(
    "put write make change correct fix amend edit update call drop turn switch swap note log record mark adjust go",
    "lower raise reduce downgrade upgrade knock bring",
))  # fmt: skip
_MISTAKEN = frozenset(words(
    "miscounted undercounted overcounted counted recounted rounded mistake typo autocorrect wrong truth honest",
    "honestly",
    "sorry oops whoops bugger meant wishful generous unrack cheated lied ego mistyped misread lighter heavier forgot",
    "stripped ignore count brain dunno thumb finger fibbed optimistic kidding exaggerated exaggerating oversold",
    "rewatched watched replay shows correction amend corrected",
))  # fmt: skip
_SPOKEN = frozenset(words("he she says said reckons counted down weight load for with instead"))
"""Words beside a verb of change that make it one of what was told."""
_ADDING = {"add": 1, "plus": 1, "give": 1, "up": 1, "bump": 1, "knock": -1, "take": -1, "minus": -1, "drop": -1,
           "shave": -1, "deduct": -1, "subtract": -1, "remove": -1, "lop": -1, "lose": -1, "dock": -1}  # fmt: skip
_AWAY = frozenset(words("off from away on to onto for"))
_TOO = {"many": -1, "much": -1, "few": 1, "little": 1, "short": 1}
_FEW = {"a": 1, "one": 1, "two": 2, "1": 1, "2": 2}
_NEAR_REPS = 3
_NEAR_LOAD = Decimal("0.34")
"""Repetitions, and part of the load, by which people put a set right (common practice, no source)."""


@dataclass(slots=True)
class _Said:
    """The words of a message, each with the place of its mark, and what was found in them."""

    words: list[str]
    places: list[int]
    clauses: list[int]
    numbers: dict[int, Decimal]
    """By the place of the word."""
    ordinals: dict[int, Decimal]
    loads: frozenset[int]
    counts: frozenset[int]


def told_freely(marks: Sequence[Mark], request: Request) -> list[Mark]:
    """The marks of a message that puts one stored set right in free words; as they are in any other."""
    last = request.done[-1] if request.done else None
    if last is None or last.set is None or not 1 < len(marks) <= _LONGEST or _is_known(marks, last, request):
        return list(marks)
    stored = [p for p in request.done if p.exercise == last.exercise and p.set is not None]
    rows: dict[int | None, Performed] = {p.set: p for p in stored}
    scraps = any(m.kind is Kind.SCRAP and "ignore" not in m.text for m in marks)
    scraps = scraps or any(a.kind is Kind.ORD and b.kind is Kind.NAME for a, b in pairwise(marks))
    whole = all(p.stage is Stage.WORK and p.side is None for p in stored) and len(stored) == len(rows)
    said = _read(marks)
    to_come = any(w in _TO_COME and not _is_passed(said, i) for i, w in enumerate(said.words))
    if scraps or not whole or to_come or _is_of_some_set(said) or not _is_of_sets_only(marks, said):
        return list(marks)
    planned = next((len(e.sets) for e in request.exercises if e.name == last.exercise), 0)
    return _plainly(marks, said, rows, last, planned - len(rows)) or list(marks)


def _is_known(marks: Sequence[Mark], last: Performed, request: Request) -> bool:
    """Whether a message is one for the other rooms: in plain order, of several sets, of another exercise, of sides."""
    plain = [m.kind for m in marks if m.kind not in (Kind.FILL, Kind.COMMA)][:2]
    if any(m.text == "@" for m in marks) or (plain in _PLAINLY and len(marks) <= _SHORT):
        return True
    if any(m.kind in _OF_MORE or (m.kind is Kind.ASKING and m.text.split()[-1:] == ["i"]) for m in marks):
        return True
    if any(m.kind in (Kind.NAME, Kind.WEAK) and not _is_of(m, last, request) and m.text != "carried" for m in marks):
        return True
    changing = any(set(m.text.split()) & _CHANGING for m in marks[:3])
    links = (Kind.X, Kind.AT) if changing else (Kind.X, Kind.FOR, Kind.AT, Kind.WITH)
    entries = (i for i in range(1, len(marks)) if marks[i].kind in links and marks[i - 1].kind in _BEFORE_X)
    if any(_is_number(marks, i + 1) for i in entries):
        return True
    sides = next((e.sides for e in request.exercises if e.name == last.exercise), 1)
    if sides > 1 and any(m.kind in (Kind.LEFT, Kind.RIGHT, Kind.L, Kind.R) for m in marks):
        return True
    hung = last.load is not None and last.load.amount <= 0
    return hung and any(set(m.text.split()) & _HUNG for m in marks)


_HUNG = frozenset(words("on with belt vest added extra"))
_PLAINLY = ([Kind.SORRY, Kind.NUM], [Kind.WAS, Kind.NUM], [Kind.MEANT, Kind.NUM])
"""How a correction begins that stands in plain order already: `sorry 4 reps`, `that was 62.5 not 60`."""
_BEFORE_X = (Kind.NUM, Kind.KG, Kind.LB, Kind.REPS)


def _is_number(marks: Sequence[Mark], place: int) -> bool:
    return place < len(marks) and marks[place].kind is Kind.NUM


def _is_of(mark: Mark, last: Performed, request: Request) -> bool:
    names = [request.exercises[p].name for p in mark.names]
    return names == [last.exercise] or (mark.kind is Kind.WEAK and last.exercise in names)


def _is_of_some_set(said: _Said) -> bool:
    """`one bench set was lighter, 55`, `one of them`: which one is not told."""
    ones = (i for i, w in enumerate(said.words) if w in ("one", "some", "a") or (w == "1" and i in said.numbers))
    led = _LASTS | _THAT | {"the", "my", "first", "second", "third", "set", "number", "this"}
    return any(
        ("of" in said.words[i + 1 : i + 2] or set(said.words[i + 1 : i + 3]) & {"set", "sets", "one"})
        and not set(said.words[i + 1 : i + 2]) & _AWAY
        and not set(said.words[max(0, i - 1) : i]) & led
        for i in ones
    )


def _is_of_sets_only(marks: Sequence[Mark], said: _Said) -> bool:
    """Whether every word may be about a set and how it was told; others only count it: `my mate says 8`.

    `put 9 in the oven`, `my last place had 9 racks`, `honestly 9 people in here` tell of something else.
    """
    named = {i for i, m in enumerate(marks) if m.kind in (Kind.NAME, Kind.WEAK)}
    plain = [
        (at, w)
        for at, w in enumerate(said.words)
        if at not in said.numbers and at not in said.ordinals and said.places[at] not in named
    ]
    if any(w not in _OF_SETS for _, w in plain if w.isalpha()):
        return False
    people = [at for at, w in plain if w in _PEOPLE]
    counting = [at for at, w in plain if w in _COUNTING]
    return all(any(at < by <= at + _FAR for by in counting) for at in people)


_FAR = 4
"""Words from one who counts to the word that says so: `my training partner was counting`."""
_PEOPLE = frozenset(words(
    "he she they mate partner spotter bloke lad lady guy wife husband son daughter kid brother sister pal buddy friend",
    "coach trainer gf bf girlfriend boyfriend missus training",
)) - {"coach", "training"}  # fmt: skip
_COUNTING = frozenset(
    words(
        "counted counts counting count says say said reckons reckoned thinks told saw tells swears", "shouting filmed"
    )
)
_ABOUT_SETS = frozenset(words(
    # what joins
    "the i it that this is a an of to for in on at by as and but so than with from out up down off my me mine you your",
    "youve its thats theres there them those these one ones s im ive id ill am be been being was were are has have had",
    "no nope nah yes yeah yep do did didnt dont does not isnt wasnt werent only just actually really basically",
    "literally",
    "now then again before after earlier already still also well ok okay right fine good oh ah ha haha lol tbh pls",
    "please plz",
    "kindly dear sir boss coach mate hey hi thanks thank ta cheers or both what which why how can could would should",
    "must need let lets id want wanted going has got get getting gave give gimme go goes make makes made take took",
    "come coming",
    "hang wait hold second sec moment actually bit little very terribly so more less fewer too many much few extra",
    "about over under like same other alone each rest end total all in whole number numbers figure under per into",
    "instead rather back halfway mid way",
    # a set and its parts
    "set sets rep reps repetition repetitions load loads weight weights kilo kilos kg kgs lb lbs pound pounds bar",
    "plate plates",
    "disc discs pair side bench round entry attempt opener opening starter go lot bout serie satz last previous prev",
    "latest letzter letzte first second third fourth erste premier record log note list sheet diary",
    # how it was told and put right
    "sorry apologies apologise apologize pardon excuse oops whoops whoopsie",
    "damn dang bugger bloody doh argh ugh my bad",
    "correction correct corrected correcting change changed changing fix edit edited amend adjust update updated",
    "replace swap mark",
    "put write written wrote type typed typing tap tapped hit press pressed enter entered send sent log logged report",
    "reported record recorded mean meant say says said tell told mention mentioned show shows showed read reads",
    "reading call",
    "turn turns switch drop bring knock shave lop dock deduct subtract remove minus plus add lower raise reduce",
    "downgrade",
    "upgrade bump scrap ignore disregard forget forgot forgotten leave leaves stay stays stand stands remain remains",
    "keep unchanged untouched wrong mistake mistaken mistakenly mistyped typo typos error slip slipped slips misread",
    "miscounted miscount overcounted undercounted recounted recount counted counting count counts countdown rounded",
    "rounding",
    "cheekily generous optimistic optimism wishful thinking kidding dreaming rubbish nonsense lie lied lying fib",
    "fibbed truth honest honestly actual confused confusion mixed muddled lost brain fog head ego math maths sum added",
    "subtracted",
    "thumb thumbs finger fingers fat sweaty fumbled autocorrect phone keyboard key keypad glasses screen app",
    "video filmed film footage clip camera recording replay watched rewatched watch watching checked check checking",
    "looked look",
    "realise realised realize realized notice noticed remember remembered believe flattered sold oversold exaggerated",
    "freebie bonus unrack unracked rack stripped stripping strip loaded lighter heavier light heavy dunno ever tad",
    "myself next re dropped shouting distracted chatting talking carried",
    "away love partway short one off error overstated understated",
    # in a second language
    "ipv statt nicht war waren scusa scusami entschuldigung excuus perdon pardon desole niet maar nur nein non era",
    "equals equal number wrongly accidentally accident clearly obviously definitely certainly exactly fact reality",
    "reckons reckoned thinks saw tells swears seems seemed turned out says apparently says trust",
))  # fmt: skip
_OF_SETS = (
    _ABOUT_SETS | _PEOPLE | _COUNTING | _MISTAKEN | _CHANGING | _TOLD | _WRONG | _WAS | _STAYING | _ONES | _FIRSTS
    | _LASTS | _THAT | _DENYING | _AWAY | _SPOKEN | _HUNG | frozenset(_ADDING) | frozenset(_TOO) | frozenset(_FEW)
    | {"training"}
)  # fmt: skip


def _is_passed(said: _Said, at: int) -> bool:
    """`should be`, `going back to`, `drop that 10 to a 9`: words of what is to come that are none here."""
    word, after = said.words[at], said.words[at + 1 : at + 3]
    if word == "sure":
        return "not" not in said.words[max(0, at - 2) : at]
    if word in ("could", "would", "will"):
        return after[:1] == ["you"]
    if word == "next":
        return after[:1] == ["to"]
    if word == "too":
        return bool(set(after[:1]) & _TOO.keys())
    if word == "all":
        return bool({"up", "in", "told"} & set(after[:1]))
    if word == "should":
        return bool({"be", "say", "read", "have", "been"} & set(after))
    return word in ("going", "drop") and bool({"back", "that", "the", "it"} & set(after[:1]))


def _read(marks: Sequence[Mark]) -> _Said:
    said = _Said([], [], [], {}, {}, frozenset(), frozenset())
    clause, loads, counts = 0, set(), set()
    for place, mark in enumerate(marks):
        if mark.kind in _EDGES:
            clause += 1
            continue
        if mark.kind is Kind.NUM and mark.value is not None:
            said.numbers[len(said.words)] = mark.value
        elif mark.kind is Kind.ORD and mark.value is not None:
            said.ordinals[len(said.words)] = mark.value
        elif mark.kind in (Kind.KG, Kind.LB, Kind.S):
            loads.add(len(said.words) - 1)
        elif mark.kind is Kind.REPS:
            counts.add(len(said.words) - 1)
        single = mark.kind in (Kind.NUM, Kind.ORD)
        for word in [mark.text] if single else mark.text.split():
            clause += word in ("but", "so")
            said.words.append(word)
            said.places.append(place)
            said.clauses.append(clause)
    said.loads, said.counts = frozenset(loads), frozenset(counts)
    return said


def _plainly(
    marks: Sequence[Mark], said: _Said, rows: Mapping[int | None, Performed], last: Performed, open_sets: int
) -> list[Mark] | None:
    """The message as `sorry, set 1 was 10 reps`; none where it is not clear that it says so."""
    named, used = _named_sets(said, rows, last)
    kept = _kept(said, named, rows)
    aimed = {n for at, n in named if at not in kept}
    numbers = [at for at in said.numbers if at not in used and at not in kept and not _is_difference(said, at)]
    if not said.ordinals.keys() <= {at for at, _ in named}:
        return None
    less = _differences(said, used)
    target = _target(said, aimed, numbers, rows, last)
    if target is None or (aimed and None in aimed):
        return None
    row = rows[target]
    olds = [at for at in numbers if _is_stored(said, at, row) and _is_denied(said, at, numbers)]
    news = [at for at in numbers if at not in olds and at not in less]
    value, loads, place = _new(said, news, row)
    if value is None and less and not news:
        value, loads, place = Decimal(row.reps + sum(less.values())), False, min(less)
    if open_sets == 1 and _is_bare_last(said, named) and not olds and not set(said.words) & (_MISTAKEN | _CHANGING):
        return None  # `last one of deads, only got 4`: the set that is still open
    denied = bool(olds or less)
    if value is None or place is None or not (denied or _is_put_right(said, named, kept, place)):
        return None
    if less and value != row.reps + sum(less.values()):
        return None
    told = next((marks[i].kind for i in range(len(marks)) if marks[i].kind in (Kind.KG, Kind.LB)), None)
    pounds = told is Kind.LB if told is not None else row.load is not None and row.load.unit is Unit.LB
    return _put(marks, said, target, value, place, loads=loads, pounds=pounds)


def _named_sets(
    said: _Said, rows: Mapping[int | None, Performed], last: Performed
) -> tuple[list[tuple[int, int | None]], set[int]]:
    """Each set that is named, by the place of its word (`None`: one that is not stored), and the numbers that name."""
    named: list[tuple[int, int | None]] = []
    used: set[int] = set()
    for at, word in enumerate(said.words):
        before, after = said.words[max(0, at - 2) : at], said.words[at + 1 : at + 4]
        number: int | None = None
        if word == "set" and at + 1 in said.numbers:
            number = int(said.numbers[at + 1])
            used.add(at + 1)
        elif at in said.ordinals and _names_set(said, at):
            number = int(said.ordinals[at])
            used |= {i for i in (at + 2, at + 3) if after[:1] == ["of"] and i in said.numbers and said.numbers[i] <= 3}
        elif word in _FIRSTS:
            number = 1
        elif word in _LASTS or (word == "earlier" and set(after[:1]) & _ONES):
            number = (last.set or 0) - (before[-1:] == ["before"] or word == "earlier")
        elif word in _ONES and after[:1] == ["before"] and set(after[1:2]) <= {"this", "that"}:
            number = (last.set or 0) - 1
        elif word in ("that", "this") and set(after[:1]) & _ONES:
            number = last.set if word == "that" else None
        else:
            continue
        named.append((at, number if number in rows else None))
    sets = {n for _, n in named}
    if last.set in sets and len(sets) > 1:
        named = [(at, n) for at, n in named if said.words[at] != "that"]  # `set 1 was 10, correct that one`
    return named, used


def _is_bare_last(said: _Said, named: Sequence[tuple[int, int | None]]) -> bool:
    """Whether only `last` says which set: it may be the last one planned."""
    lasts = [at for at, _ in named if said.words[at] in ("last", "latest", "prev", "previous")]
    return any(not set(said.words[max(0, at - 1) : at]) & {"that", "my", "re"} for at in lasts)


def _names_set(said: _Said, at: int) -> bool:
    """Whether an ordinal is of a set: `the first one`, `my first was`, `1st = 10`; not `the second backoff`."""
    after = said.words[at + 1 : at + 2]
    opens = at == 0 or said.clauses[at - 1] != said.clauses[at]
    led = opens or said.words[at - 1] in ("the", "my", "very", "for", "on", "in")
    alone = not after or at + 1 in said.numbers or said.clauses[at + 1] != said.clauses[at]
    return bool(set(after) & _ONES) or (led and (alone or bool(set(after) & (_WAS | _BEHIND | _STAYING))))


_BEHIND = frozenset(words("of i a to as please and serie"))


def _kept(said: _Said, named: Sequence[tuple[int, int | None]], rows: Mapping[int | None, Performed]) -> set[int]:
    """The sets and numbers that are named only to be left as they are: `leave set 2 alone`, `8 is fine`."""
    out: set[int] = set()
    for clause in set(said.clauses):
        inside = [i for i, c in enumerate(said.clauses) if c == clause]
        stays = {said.words[i] for i in inside} & (_STAYING | {"right", "correct", "leave", "keep"})
        numbers = [i for i in inside if i in said.numbers]
        sets = [(at, n) for at, n in named if at in inside]
        stored = {rows[n].reps for _, n in sets if n is not None} if sets else {r.reps for r in rows.values()}
        others = [i for i in said.numbers if i not in inside]
        opens = bool(others) or any(m not in sets for m in named)
        if (
            stays
            and opens
            and all(said.numbers[i] in stored for i in numbers if said.words[i - 1] != "set")
            and (sets or numbers)
        ):
            out |= {*numbers, *(at for at, _ in sets)}
    return out


def _is_difference(said: _Said, at: int) -> bool:
    """`lighter by 5`, `stripped 5 off`, `five kilos lighter`, `the 15 kg bar`, `a pair of 2.5s`: no value of a set."""
    before = said.words[max(0, at - 3) : at]
    after = said.words[at + 1 : at + 3]
    behind = after[1:2] if at in said.loads or after[:1] in (["reps"], ["rep"]) else after[:1]
    return "by" in before[-1:] or bool(set(behind) & _NO_VALUE) or {"pair", "of"} <= set(before)


_NO_VALUE = frozenset(words("off lighter heavier less more bar bars plates short"))


def _differences(said: _Said, used: set[int]) -> dict[int, int]:
    """Repetitions more or fewer than told, by their place: `knock one off`, `add a rep`, `one rep too many`."""
    out: dict[int, int] = {}
    for at, word in enumerate(said.words):
        few = _FEW.get(str(said.numbers[at])) if at in said.numbers and at not in used else _FEW.get(word)
        if few is None:
            continue
        rep = said.words[at + 1 : at + 2] in (["rep"], ["reps"])
        after = said.words[at + 1 + rep : at + 4 + rep]
        verb = next((said.words[i] for i in range(at - 1, max(-1, at - 4), -1) if said.words[i] in _ADDING), None)
        if verb == "add" and "last" in after:
            return {}  # of the set that is still to come, it may be
        away = after[:1] and after[0] in _AWAY
        if verb is not None and (rep or (away and word != "a")) and said.words[at - 1] not in ("to", "by"):
            out[at] = few * _ADDING[verb]
        elif after[:1] == ["too"] and after[1:2] and after[1] in _TOO:
            out[at] = few * _TOO[after[1]]
        elif after[:1] and after[0] in ("less", "fewer", "more") and "than" in after:
            out[at] = few * (1 if after[0] == "more" else -1)
    return out


def _target(
    said: _Said,
    aimed: set[int | None],
    numbers: Sequence[int],
    rows: Mapping[int | None, Performed],
    last: Performed,
) -> int | None:
    """The set that is put right: the one that is named, else the only one with an old value, else the last."""
    if len(aimed) > 1:
        return None
    if aimed:
        return next(iter(aimed))
    olds = [at for at in numbers if _is_denied(said, at, numbers)]
    with_old = [n for n, r in rows.items() if any(_is_stored(said, at, r) for at in olds)]
    if olds and last.set not in with_old:
        return with_old[0] if len(with_old) == 1 else None
    return last.set


def _is_stored(said: _Said, at: int, row: Performed) -> bool:
    value = said.numbers[at]
    load = None if row.load is None else row.load.amount
    return (value == row.reps and at not in said.loads) or (value == load and at not in said.counts)


def _is_denied(said: _Said, at: int, numbers: Sequence[int]) -> bool:
    """Whether a number is what was told wrongly: `not 9`, `typed a 9`, `nine was wishful`, `change 9 to 8`."""
    before = said.words[max(0, at - 4) : at]
    if set(before[-2:]) & _DENYING or {"instead", "rather"} & set(before[-3:]):
        return True
    if any(w in _TOLD for w in before) and len({said.numbers[i] for i in numbers}) > 1:
        return True
    clause = {w for i, w in enumerate(said.words) if said.clauses[i] == said.clauses[at] and i > at}
    if clause & _WRONG and not set(before) & {"was", "its", "is"}:
        return True
    after = next((i for i in numbers if i > at), None)
    between = set() if after is None else set(said.words[at + 1 : after])
    turned = bool(between & {"to", "into", "for"} and set(before) & _CHANGING)
    yours = bool(set(before) & {"you", "youve", "ive"} and set(before) & {"got", "have", "youve", "ive"})
    return turned or (yours and after is not None) or (len(between) == 1 and bool(between & {"no", "nope", "nah"}))


def _new(said: _Said, news: Sequence[int], row: Performed) -> tuple[Decimal | None, bool, int | None]:
    """The new value, whether it is a load, and its place: one that differs from what is stored and lies near it."""
    values = {said.numbers[i] for i in news}
    if len(values) != 1:
        return None, False, None
    at, value = news[-1], values.pop()
    load = None if row.load is None else row.load.amount
    whole = value == int(value) and value > 0
    counts = whole and abs(value - row.reps) <= _NEAR_REPS and value != row.reps and not said.loads & set(news)
    loads = bool(load) and load is not None and load != value and abs(value - load) <= _NEAR_LOAD * abs(load)
    loads = loads and not said.counts & set(news)
    if counts == loads:
        return None, False, None
    return value, loads, at


def _is_put_right(said: _Said, named: Sequence[tuple[int, int | None]], kept: set[int], place: int) -> bool:
    """Whether a sign stands that what was told before is put right."""
    spoken = set(said.words)
    clause = {w for i, w in enumerate(said.words) if said.clauses[i] == said.clauses[place]}
    aims = any(at not in kept for at, _ in named)
    heads = {said.clauses[at] for at, _ in named if at not in kept}
    beside = any(c == said.clauses[place] or _only_names(said, c) for c in heads)
    mistaken = spoken & _MISTAKEN
    changes = bool(clause & _CHANGING)
    stored = (beside and bool(clause & _WAS)) or (aims and changes)
    compared = "than" in spoken and bool(spoken & _TOLD)
    summed = "so" in spoken and bool({"total", "up", "really", "told"} & clause) and "it" in spoken
    counted = compared or summed or ({"there", "of"} <= clause and bool(clause & {"only", "were", "was"}))
    return bool(mistaken or stored or counted or (changes and spoken & (_THAT | _SPOKEN)))


def _only_names(said: _Said, clause: int) -> bool:
    """`re my last set, the load was 55`: a clause that says no more than which set."""
    spoken = [w for w, c in zip(said.words, said.clauses, strict=True) if c == clause]
    return len(spoken) < _SHORT and not set(spoken) & _WAS


def _put(
    marks: Sequence[Mark], said: _Said, number: int, value: Decimal, place: int, *, loads: bool, pounds: bool
) -> list[Mark]:
    """`sorry, set 1 was 10 reps`, in the place of the message."""
    first, at = marks[0], marks[said.places[place]]
    start, end = at.start, at.end
    sorry = replace(first, kind=Kind.SORRY, text="sorry", value=None, parts=(), names=(), end=max(first.start, start))
    label = Mark(Kind.LABEL, "set", start, start, value=Decimal(number))
    was = Mark(Kind.WAS, "was", start, start)
    unit = Mark((Kind.LB if pounds else Kind.KG) if loads else Kind.REPS, "", end, end)
    return [sorry, label, was, Mark(Kind.NUM, at.text, start, end, value=value), unit]
