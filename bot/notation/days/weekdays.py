"""A day by its name, or by how long ago it was: `monday`, `yesterday`, `2 days ago`, `the weekend`."""

from collections.abc import Sequence
from datetime import date, timedelta

from bot.notation.clauses import kind_at, part_of, text_at
from bot.notation.days.dates import DaySaid, dated
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

WEEKDAYS = {
    "monday": 0, "mondays": 0, "mon": 0, "mons": 0, "tuesday": 1, "tuesdays": 1, "tue": 1, "tues": 1, "teusday": 1,
    "wednesday": 2, "wednesdays": 2, "wed": 2, "weds": 2, "wensday": 2, "wednesdy": 2, "wendsday": 2, "thursday": 3,
    "thursdays": 3, "thu": 3, "thur": 3, "thurs": 3, "thrusday": 3, "thursay": 3, "friday": 4, "fridays": 4, "fri": 4,
    "fris": 4, "suns": 6,
    "firday": 4, "firdays": 4, "saturday": 5, "saturdays": 5, "sat": 5, "sats": 5, "satruday": 5, "sunday": 6,
    "sundays": 6, "sun": 6, "monady": 6 - 6, "tuesdsy": 1, "moday": 0, "tusday": 1, "wednsday": 2, "saterday": 5,
}  # fmt: skip
YESTERDAY = frozenset(
    words(
        "yesterday yesterdays yest yday yesteday yestrday yesturday ystrday ysterday yestarday ystday yestday ytday",
        "ystrdy yesday yestrdy yestdy ysday yessterday yestadey yestoday yesty yestie ystd yestd yesturdays",
        "yestarvo yesterdy yeserday yestredy yestreday yesterady yesteray",
    )
)
_TO_COME = ("next", "this", "by", "until", "till", "see", "back", "for", "move", "moving", "to", "tomorrow", "before",
            "come", "every", "coming", "make", "both", "plan")  # fmt: skip
_OCCASIONS = frozenset(("turning", "birthday", "bday", "wedding", "flying", "holiday", "exam", "surgery", "appointment",
                        "interview", "competing", "comp", "race", "due"))  # fmt: skip
"""What a day before which they stand is to come for: `turning 40 on friday`."""
_WORKOUT = ("workout", "workouts", "programme", "program", "plan", "routine", "template", "day", "legs", "push", "pull",
            "upper", "lower")  # fmt: skip
_DARK = ("night", "nite", "evening", "eve")
_VAGUE = ("last week", "this week", "last weeks")
_LEADS = ("sometime", "some", "day", "earlier", "late", "back", "time", "one", "in")
_SHORT = ("mon", "sat", "sun", "wed", "fri", "thu", "tue", "mons", "sats", "fris", "suns")


_NAMING = frozenset((*YESTERDAY, *WEEKDAYS, *_DARK, *_VAGUE, "last", "couple", "few", "week", "this weekend", "other"))
"""What the name of a day begins with, but for numbers, dates and `weekend`."""


def day_at(marks: Sequence[Mark], place: int, today: date) -> DaySaid | None:
    word = text_at(marks, place)
    if word not in _NAMING and not word.startswith("weekend") and marks[place].kind is not Kind.NUM:
        return dated(marks, place, today)
    following, second = text_at(marks, place + 1), text_at(marks, place + 2)
    said = word.split()
    if word in YESTERDAY:
        ahead = text_at(marks, place - 1), text_at(marks, place - 2)
        back = 2 if "before" in (ahead[0], *ahead[0].split()) and ("day" in ahead[1] or "day" in ahead[0]) else 1
        places = (place,) if back == 1 else (place - 2, place - 1, place)
        return DaySaid(today - timedelta(days=back), places)
    if word == "last" and following in ("night", "nights", "nite", "nyt"):
        return DaySaid(today - timedelta(days=1), (place, place + 1))
    if word in _DARK and (following, second) == ("before", "last"):
        return DaySaid(today - timedelta(days=2), (place, place + 1, place + 2))
    if following in ("days", "day", "d") and second in ("ago", "back", "prior") and marks[place].kind is Kind.NUM:
        return _ago(marks, place, 3, today)
    if word in ("couple", "few") and "days" in (second, text_at(marks, place + 2)):
        end = place + 2
        if text_at(marks, end + 1) == "ago":
            exact = today - timedelta(days=2) if word == "couple" else None
            return DaySaid(exact, (place, place + 1, end, end + 1), _last(today, 4) if exact is None else ())
    if _is_vague(marks, place):
        led = text_at(marks, place - 1).split()[-1:]
        first = place - 1 if led and led[0] in _LEADS else place
        return DaySaid(None, tuple(range(first, place + 1)), _last(today, 7))
    if word == "this weekend" and _was_at(marks, place):
        return _weekend(marks, place, today)
    if word == "other" and following == "day":
        return DaySaid(None, (place, place + 1), _last(today, 3))
    if said[:1] == ["weekend"] or word == "weekend":
        return _weekend(marks, place, today)
    if word in WEEKDAYS:
        return _weekday(marks, place, today)
    return dated(marks, place, today)


def _is_vague(marks: Sequence[Mark], place: int) -> bool:
    """`sometime last week`, `last week: swings 24x15`: one of several days."""
    if marks[place].text not in _VAGUE and not (marks[place].text == "week" and text_at(marks, place - 1) == "this"):
        return False
    before = place - 1
    if text_at(marks, before) == "this":
        before -= 1
    led = text_at(marks, before).split()[-1:]
    heads = before < 0 or marks[before].kind in (Kind.LINE, Kind.FILL)
    following = marks[place + 1] if place + 1 < len(marks) else None
    opens = following is not None and (following.kind is Kind.COLON or following.text in ("session", "workout", "sesh"))
    return bool(led and led[0] in _LEADS) or (heads and opens and "last" in marks[place].text)


def _was_at(marks: Sequence[Mark], place: int) -> bool:
    """`this weekend i did rows`, `this weekend: rows 3x8`: over, not to come."""
    start, end = part_of(marks, place)
    said = {w for m in marks[start:end] for w in m.text.split()}
    heads = place == 0 and kind_at(marks, place + 1) is Kind.COLON
    return heads or bool(said & {"did", "done", "trained", "sometime", "managed", "was"})


def _ago(marks: Sequence[Mark], place: int, size: int, today: date) -> DaySaid | None:
    value = marks[place].value
    if value is None or value != int(value) or not 1 <= value <= 60:
        return None
    return DaySaid(today - timedelta(days=int(value)), tuple(range(place, place + size)))


def _last(today: date, days: int) -> tuple[date, ...]:
    return tuple(today - timedelta(days=n) for n in range(1, days + 1))


_WISHING = ("this", "next", "good", "nice", "great", "happy", "lovely", "wonderful", "fab", "the good", "enjoy", "your")
"""Words before a weekend that is wished for, or to come."""


def _weekend(marks: Sequence[Mark], place: int, today: date) -> DaySaid | None:
    led = text_at(marks, place - 1).split()[-1:] + text_at(marks, place - 2).split()[-1:]
    if (
        text_at(marks, place - 1) in _WISHING
        or set(led) & {"for", "til", "till", "until", "to", "by"}
        or text_at(marks, place + 1) in ("plans", "coming")
    ):
        return None
    saturday = today - timedelta(days=(today.weekday() - 5) % 7 or 7)
    sunday = today - timedelta(days=(today.weekday() - 6) % 7 or 7)
    return DaySaid(None, (place,), tuple(sorted((saturday, sunday))))


def _weekday(marks: Sequence[Mark], place: int, today: date) -> DaySaid | None:
    word, before, after = text_at(marks, place), text_at(marks, place - 1), text_at(marks, place + 1)
    last_before = (before.split() or [""])[-1]
    headed = _is_headed(marks, place)
    if (
        (last_before in _TO_COME or before in _TO_COME)
        and not _is_over(marks, place, today)
        and not (
            headed
            and (last_before in ("for", "back") or (last_before == "this" and "did" in text_at(marks, place - 2)))
        )
    ):
        return None
    told = after.split()[:1] in (["i"], ["we"])
    if before == "on" and not (headed or told) and text_at(marks, place - 2) == "back" and _is_edge(marks, place - 3):
        return None
    if _is_remarked(marks, place, today):
        return None
    if {w for m in marks[max(0, place - 6) : place] for w in m.text.split()} & _OCCASIONS:
        return None
    at = place - 1 - (last_before == "on")
    seen = text_at(marks, at).split()[-1:] in _YOU and bool(
        _MEETING & {*text_at(marks, at).split(), text_at(marks, at - 1)}
    )
    near = {m.text for m in marks[max(0, place - 3) : place]}
    put_off = bool({"do", "make"} & near and {"them", "it", "that", "those"} & near)
    if seen or put_off or {"doing", "starting", "come", "coming"} & {m.text for m in marks[max(0, place - 2) : place]}:
        return None
    if after in ("are", "were") or _is_next(marks, place):
        return None
    possessive = word.endswith("s") and word not in ("tues", "weds", "thurs")
    if after in _WORKOUT and (not possessive or after in ("programme", "program", "plan", "routine", "template")):
        return None
    if possessive and "today" in {m.text for m in marks[place + 1 : place + 4]}:
        return None  # `did mondays session today`
    if after == "workout" and any(m.text == "today" for m in marks):
        return None
    if word in _SHORT:
        at_start = place == 0 or marks[place - 1].kind in (Kind.LINE, Kind.STOP, Kind.OPEN)
        if not (
            before in ("on", "last", "from", "for", "was", "this was", "that was")
            or "on" in before.split()
            or (at_start and _starts_report(marks, place))
            or headed
        ):
            return None
    back = (today.weekday() - WEEKDAYS[word]) % 7 or 7
    places = [place]
    if after == "last week":
        back = today.weekday() - WEEKDAYS[word] + 7
        places.append(place + 1)
    if before in ("last", "on", "on last", "past"):
        places.insert(0, place - 1)
    return DaySaid(today - timedelta(days=back), tuple(places))


_YOU = (["u"], ["you"], ["ya"], ["yas"], ["ye"], ["yous"])
_MEETING = frozenset(("see", "catch", "meet", "cya", "call", "ping", "ring", "text", "message"))
"""Words of a farewell until a day to come: `catch you thursday`."""


def _is_next(marks: Sequence[Mark], place: int) -> bool:
    """`next one is tuesday`, `next training is on saturday`, `tuesday is the next one`, `tuesday next`: to come."""
    start, end = part_of(marks, place)
    before = [w for m in marks[max(start, place - 2) : place] for w in m.text.split()]
    lead = [w for m in marks[start:place] for w in m.text.split()]
    behind = [w for m in marks[place + 1 : end] for w in m.text.split()][:3]
    while behind and behind[0] in ("is", "the", "its"):
        behind.pop(0)
    to_come = "next" in lead and set(lead[lead.index("next") + 1 :]) <= _NEXT_ONE
    return "next" in before or to_come or behind[:1] == ["next"]


_NEXT_ONE = frozenset(words("one session training workout time gym day is will be on for me its the my that"))


def _is_over(marks: Sequence[Mark], place: int, today: date) -> bool:
    """`this monday` said on a Thursday, beside sets and with no word of what is to come."""
    start, end = part_of(marks, place)
    said = {w for m in marks[start:end] for w in m.text.split()}
    earlier = WEEKDAYS[marks[place].text] < today.weekday() and text_at(marks, place - 1) == "this"
    return earlier and not said & _AHEAD and any(m.kind in (Kind.NUM, Kind.BODY) for m in marks)


_AHEAD = frozenset(words("will can see back train come coming next gonna be plan could should may"))
_TODAY = ("is", "its", "it is", "today is", "happy", "another", "todays")
_STRUCK = frozenset(["left", "killed", "wrecked", "ruined", "destroyed", "broke", "smashed", "finished", "did"])


_WILL = (["am"], ["will"], ["can"], ["cant"], ["wont"])


def _is_remarked(marks: Sequence[Mark], place: int, today: date) -> bool:
    """`its monday`, `monday is squat day`, `tuesday left me sore`: said of a day, with no report of it."""
    before, after = text_at(marks, place - 1), text_at(marks, place + 1)
    named = today.weekday() == WEEKDAYS[marks[place].text]
    number = place + 2 < len(marks) and marks[place + 2].kind is Kind.NUM
    is_so = after in ("is", "=") and not number
    struck = after in _STRUCK and text_at(marks, place + 2).split()[:1] in (["me"], ["my"])
    ahead = after in ("im", "ill") or (after == "i" and text_at(marks, place + 2).split()[:1] in _WILL)
    cried = _is_cried(marks, place)
    return cried or is_so or struck or ahead or (named and (before in _TODAY or after.split()[:1] == ["again"]))


def _is_cried(marks: Sequence[Mark], place: int) -> bool:
    """`what a monday`, `happy friday coach`, `friday feeling`, `thank god its friday`, `roll on saturday`, `how is it
    only tuesday`."""
    led = [w for m in marks[max(0, place - _CRY) : place] for w in m.text.split()][-_CRY:]
    mood = set(text_at(marks, place + 1).split()[:1]) & _MOODS
    article = led[-1:] == ["a"] and bool(set(led[-2:-1]) & _OF_A)
    return bool(mood) or article or bool(set(led[-1:]) & _CRIES) or " ".join(led[-2:]) in _CRIED


_CRY = 4
"""Words before a day that it is cried out with."""
_MOODS = frozenset(words("feeling feelings feels blues vibes vibe mood brain motivation energy"))
_OF_A = frozenset(words("what such some for quite"))
_CRIES = frozenset(
    words("happy hate love loathe despise hating loving typical manic only already yay finally ugh another")
)
_CRIED = frozenset(("roll on", "god its", "god it", "fuck its", "yay its", "feels like", "sounds like", "for a",
                    "bring on", "done with",
                    "sick of", "tired of", "same time", "same again", "cant be", "god for"))  # fmt: skip


def _is_headed(marks: Sequence[Mark], place: int) -> bool:
    """Whether the day ends the head of a report: `late report for thursday: 60x5`, `mon evening: 60x5`."""
    at = place + 1
    while text_at(marks, at) in ("evening", "morning", "night", "afternoon", "session", "sesh", "training", "pm", "am"):
        at += 1
    first = next((i for i, m in enumerate(marks) if m.kind in (Kind.NUM, Kind.CLOCK, Kind.BODY)), len(marks))
    return at < len(marks) and marks[at].kind is Kind.COLON and first > at


def _is_edge(marks: Sequence[Mark], place: int) -> bool:
    """Whether a part ends here: `all done, back on friday`."""
    return place < 0 or marks[place].kind in (Kind.STOP, Kind.LINE, Kind.COMMA, Kind.BREAK) or "be" in marks[place].text


def _starts_report(marks: Sequence[Mark], place: int) -> bool:
    following = marks[place + 1].kind if place + 1 < len(marks) else None
    if text_at(marks, place + 1) in (
        "session",
        "sessions",
        "workout",
        "training",
        "gym",
        "sesh",
        *_HOURS,
        "i",
        "i did",
    ):
        return True
    return following in (Kind.COLON, Kind.DASH, Kind.NAME, Kind.NUM, Kind.COMMA, Kind.LINE, Kind.OPEN)


_HOURS = ("morning", "evening", "afternoon", "night")
