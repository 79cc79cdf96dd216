"""What else a number may be by its neighbours: how a machine is set, a price, a score, what was aimed at."""

from collections.abc import Sequence

from bot.notation.bounds import MOST_LEFT
from bot.notation.clauses import EDGES, part_of
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

UNITS = frozenset(
    words(
        "bpm degrees degree celsius fahrenheit percent % quid euro euros dollar dollars bucks pence cents people",
        "persons guys blokes lads girls women men kids children cars dogs cats coffees coffee espressos beers pints",
        "drinks years year yrs yr yo months month weeks week wks days day nights night km kms kilometre kilometres",
        "kilometer kilometers mile miles kcal kcals cal cals calories calorie watts rpm mph kph steps floors flights",
        "litres liters grams gram grammes mg ml c f emails calls meetings songs tracks episodes chapters likes",
        "followers mm cm inch inches feet trip trips laps holes goals points games matches tickets stops flats fans",
        "am pm oclock grand outside teenagers strangers folks fans views photos pics texts messages",
    )
)
"""Words after a number that a set does not have."""
_LED = frozenset(
    words(
        "level lvl gear lane chapter episode ep page zone aged track gate platform route bus room locker season phase",
        "week day age lv seat height hole notch setting settings position lever backrest footplate slot hr",
        "heartrate pulse pass",
    )
)
"""Words before a number that names a thing."""
_OTHER = frozenset(
    words(
        "late early long rough hard short",
        "other more new old young extra different random screaming tiny big whole full solid measly",
    )
)


def is_placed(marks: Sequence[Mark], place: int) -> bool:
    """`14 +4 +4 +3 feet on the bench`, `12 11 10 feet elevated`: where the feet were, no measure."""
    behind = marks[place + 1] if place + 1 < len(marks) else None
    if place > 1 and marks[place - 2].text.split()[-1:] in (["are"], ["is"], ["feel"]):
        return False  # `my hands are 2 feet wide`
    return marks[place].text == "feet" and behind is not None and behind.text.split()[:1] in ([w] for w in _PLACED)


_PLACED = words("on up elevated raised flat together off wide high forward in apart close narrow")


def is_described(marks: Sequence[Mark], place: int) -> bool:
    """`2 other people`, `3 whole days`."""
    said = [m.text for m in marks[place + 1 : place + 3]]
    return len(said) == 2 and said[0] in _OTHER and said[1] in UNITS


def _is_left(marks: Sequence[Mark], at: int) -> bool:
    """Whether what is counted is still to come: `2 sets of squats left to go`."""
    while (
        at < len(marks) and marks[at].kind in (Kind.NAME, Kind.WEAK, Kind.FILL) and marks[at].text not in ("left", "to")
    ):
        at += 1
    said = [w for m in marks[at : at + 3] for w in m.text.split()]
    return said[:2] == ["to", "go"] or said[:3] == ["left", "to", "go"] or said[:3] == ["left", "to", "do"]


_SOON = frozenset(words("back see there ready starting start off done leaving going home free it you ya"))


def is_in_mind(marks: Sequence[Mark], place: int) -> bool:
    """`had 105 in mind`, `95 in me`: what was thought of, or more than anybody has in reserve."""
    said = [w for m in marks[place + 1 : place + 4] for w in m.text.split()]
    value, after = marks[place].value, marks[place + 1].kind if place + 1 < len(marks) else None
    if after in (Kind.SETS, Kind.SET) and _is_left(marks, place + 2):
        return True
    soon = place > 1 and marks[place - 1].text == "in" and after in (None, Kind.STOP, Kind.COMMA, Kind.LINE, Kind.DASH)
    if soon and {w for m in marks[max(0, place - 5) : place] for w in m.text.split()} & _SOON:
        return True
    if said[:2] == ["in", "my"] and said[2:3] in (["head"], ["dreams"], ["mind"], ["prime"]):
        return True
    return said[:2] == ["in", "mind"] or (after is Kind.TANK and value is not None and value > _MOST_LEFT)


_MOST_LEFT = 20
"""More than anybody counts as repetitions in reserve."""
_PERIODS = frozenset(words("month week year day hour night session lesson class"))
_RATED = frozenset(words("energy sleep mood motivation stress front scale vibes focus hunger appetite sleepiness"))


def is_score(marks: Sequence[Mark], place: int) -> bool:
    """`4 out of 5 on the energy front`, `lost 3-1`."""
    if [m.kind for m in marks[place + 1 : place + 3]] == [Kind.DASH, Kind.NUM]:
        return not _PLAYED.isdisjoint(w for m in marks[max(0, place - 3) : place] for w in m.text.split())
    if [m.text for m in marks[place + 1 : place + 3]] != ["out", "of"]:
        return False
    _, end = part_of(marks, place)
    if place + 3 >= end or marks[place + 3].kind is not Kind.NUM:
        return False
    return not _RATED.isdisjoint(w for m in marks[place + 4 : end] for w in m.text.split())


_PLAYED = frozenset(words("score lost won losing winning drew leading beat beaten"))


def is_price(marks: Sequence[Mark], place: int) -> bool:
    """`45 a month`; `6 of us`, who lift beside the client."""
    said = [w for m in marks[place + 1 : place + 3] for w in m.text.split()][:2]
    if said[:2] == ["of", "us"]:
        return True
    return len(said) == 2 and said[0] in ("a", "per", "an") and said[1] in _PERIODS


_GOALS = frozenset(words("plan target goal aim idea intention prescription dream ambition hope"))


def is_goal(marks: Sequence[Mark], place: int) -> bool:
    """`100 was the plan`; `could have gone 105`, which is no number of repetitions left."""
    said = [w for m in marks[place + 1 : place + 5] for w in m.text.split()]
    value, after = marks[place].value, marks[place + 1].kind if place + 1 < len(marks) else None
    at = place - 1
    while at >= 0 and marks[at].kind is Kind.FILL:
        at -= 1
    could = at >= 0 and marks[at].kind is Kind.COULD and value is not None and value > _MOST_LEFT
    could = could and marks[at].text not in ("had", "i had")
    could = could or _is_thought(marks, place, at)
    could = could and after not in (Kind.X, Kind.FOR, Kind.TANK, Kind.MORE, Kind.NUM)
    return (
        could
        or _is_on_paper(said)
        or (said[:1] in (["was"], ["is"]) and said[1:3] != [] and bool(set(said[1:3]) & _GOALS))
    )


def _is_thought(marks: Sequence[Mark], place: int, at: int) -> bool:
    """`got 7 at 155, thought I had 8`: more than anybody has in reserve, behind what was done."""
    value = marks[place].value
    thought = at >= 0 and marks[at].kind is Kind.COULD and marks[at].text.split()[0] in _THINKING
    return thought and value is not None and value > MOST_LEFT and any(m.kind is Kind.NUM for m in marks[:at])


_THINKING = ("thought", "think", "reckon")


_COMING = frozenset(words(
    "come came coming arrive arriving arrived there here home make making leave leaving left start starts started "
    "opens open closes close shuts shut meeting meet work finish finished train bus be back free pickup appointment "
    "until til till "
    "school kids bed up class lesson gym shift"
))  # fmt: skip
_WHEN = frozenset(words("before until till til by around past from"))


def is_clock(marks: Sequence[Mark], place: int) -> bool:
    """`can not come before 7 on thursday`, `work until 6`: a time of day."""
    value, led = marks[place].value, [w for m in marks[max(0, place - 6) : place] for w in m.text.split()]
    hour = value is not None and 1 <= value <= _LAST_HOUR and value == int(value)
    if not hour or led[-1:] == [] or led[-1] not in _WHEN or marks[place - 1].kind is Kind.NUM:
        return False
    after = marks[place + 1] if place + 1 < len(marks) else None
    ends = (
        after is None
        or after.kind in (*EDGES, Kind.AT, Kind.GAP)
        or after.text in ("today", "tonight", "so", "on", "and")
    )
    return ends and bool(set(led) & _COMING)


_LAST_HOUR = 24


def is_body_change(marks: Sequence[Mark], place: int) -> bool:
    """`down 2 kilos since january`, `up 1kg this month`: the body's weight."""
    led = place > 0 and marks[place - 1].text in ("down", "up", "lost", "gained")
    unit = place + 1 < len(marks) and marks[place + 1].kind in (Kind.KG, Kind.LB)
    said = [w for m in marks[place + 2 : place + 4] for w in m.text.split()]
    since = said[:1] == ["since"] and said[1:2] != ["last"]
    return led and unit and (since or (said[:1] == ["this"] and said[1:2] in (["month"], ["year"], ["summer"])))


_WANTED = frozenset(words("wanted want planned hoped fancied intended said prescribed aimed asked expected"))
_PAPERS = frozenset(words("sheet plan paper programme program app board card menu spreadsheet"))


def is_wanted(marks: Sequence[Mark], place: int) -> bool:
    """`135 is what i wanted`."""
    said = [m.text for m in marks[place + 1 : place + 3]]
    return said in (["is", "what"], ["was", "what"]) and bool(
        _WANTED & {w for m in marks[place + 2 : place + 7] for w in m.text.split()}
    )


def _is_on_paper(said: Sequence[str]) -> bool:
    """`95 on the sheet`: what was planned."""
    return said[:2] == ["on", "the"] and bool(_PAPERS & set(said[2:3]))


def is_setting(marks: Sequence[Mark], place: int) -> bool:
    """`level 8`, `seat on 5, back on 3`: how a machine is set, or which of several it is."""
    at = place - 1
    while at >= 0 and (marks[at].text in _SET_TO or marks[at].kind is Kind.COLON):
        at -= 1
    colon = any(m.kind is Kind.COLON for m in marks[at + 1 : place])
    kinds = (Kind.WORD, Kind.FILL, Kind.TALKNUM, Kind.HOURS)
    led = at >= 0 and marks[at].kind in kinds and marks[at].text in _LED
    back = at >= 0 and marks[at].text == "back" and any(m.text in ("seat", "pad") for m in marks[:at])
    seated = _is_led_by_seat(marks, place)
    dated = led and marks[at].text in ("week", "day") and at == place - 1
    dated = dated and [m.kind for m in marks[place + 1 : place + 2]] != [Kind.X]  # `easy day 40x8`
    pinned = at >= 0 and marks[at].text in ("pin", "pins") and _is_load_told(marks, place)
    pinned = pinned and [m.kind for m in marks[place + 1 : place + 2]] != [Kind.FOR]
    led = led and not (colon and marks[at].text in ("week", "day", "level", "room"))
    return dated or ((led or back or pinned or seated or bool(set_up(marks, place))) and _ends(marks, place))


def _is_led_by_seat(marks: Sequence[Mark], place: int) -> bool:
    """`seat was too low at 3 so moved to 5 after`."""
    if place < 1 or marks[place - 1].text not in ("at", "to", "on", "in"):
        return False
    start, _ = part_of(marks, place)
    return any(m.text in _SEATS for m in marks[start:place])


_SEATS = ("seat", "backrest", "footplate", "pad", "stopper", "pulley", "safeties")


def set_up(marks: Sequence[Mark], place: int) -> range:
    """The name of `bench set to 2`, `incline at 30 degrees` before the number, where the session has none so called."""
    at = place - 1
    while at >= 0 and marks[at].text in _SET_TO and marks[at].kind is not Kind.COLON:
        at -= 1
    furniture = 0 <= at < place - 1 and marks[at].text in _FURNITURE
    turned = place + 1 < len(marks) and marks[place + 1].text in ("degrees", "degree", "deg")
    return range(at, at + 1) if furniture and (turned or not marks[at].names) else range(0)


_FURNITURE = ("bench", "incline", "decline", "rack", "adjustable bench", "incline bench")
_SET_TO = frozenset(words("on at is was no number to the set up down still = in"))


def _is_load_told(marks: Sequence[Mark], place: int) -> bool:
    """Whether another number is told as a load: with its unit, or with its repetitions."""
    tells = (Kind.KG, Kind.LB, Kind.X, Kind.FOR, Kind.COLON)
    others = (i for i, m in enumerate(marks) if m.kind is Kind.NUM and i != place)
    return any(i + 1 < len(marks) and marks[i + 1].kind in tells for i in others)


def _ends(marks: Sequence[Mark], place: int) -> bool:
    """Whether nothing that makes sets of it follows a number."""
    following = marks[place + 1].kind if place + 1 < len(marks) else None
    return following not in (Kind.X, Kind.KG, Kind.LB, Kind.REPS, Kind.S, Kind.SETS, Kind.NUM, Kind.COLON)


_AGED = (["i", "am"], ["im"], ["turned"], ["turning"], ["being"], ["aged"], ["age"], ["happy"], *(
    [who, "of"] for who in words("man woman lady lad girl bloke guy age")
))  # fmt: skip
_AGE_ENDS = frozenset(words("today now tomorrow years yrs this and but so to old young soon next"))
_FOR_AGE = (Kind.FOR, Kind.AT)
_PRAISE = frozenset(words("bad good decent shabby impressive alright great ok okay strong"))
_YOUNGEST, _OLDEST = 13, 99
"""Years of age that a client tells: the youngest who trains by a chat of their own (ours), and two digits."""


def is_age(marks: Sequence[Mark], place: int) -> bool:
    """`I am 66 today. 115x6`, `115x6, not bad for 66`: how old the client is, beside a whole set."""
    value, before = marks[place].value, marks[max(0, place - 4) : place]
    after = marks[place + 1] if place + 1 < len(marks) else None
    if value is None or not _YOUNGEST <= value <= _OLDEST or value != int(value):
        return False
    ends = after is None or after.kind in EDGES or after.kind in (Kind.COLON, Kind.NOT)
    said = [w for m in before for w in m.text.split()]
    told = any(said[-len(form) :] == form for form in _AGED) and (ends or after is None or after.text in _AGE_ENDS)
    praised = bool(before) and before[-1].kind in _FOR_AGE and said[-2:-1] != [] and said[-2] in _PRAISE and ends
    if not told and not praised:
        return False
    return any(
        m.kind in (Kind.X, Kind.FOR, Kind.COLON) and i and marks[i - 1].kind is Kind.NUM
        for i, m in enumerate(marks[:-1])
    )
