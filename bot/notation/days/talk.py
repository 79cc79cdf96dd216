"""Days of talk beside the report: `sore from tuesday`, `slept badly last night, 60x5`."""

import re
from collections.abc import Sequence
from itertools import pairwise

from bot.notation.clauses import kind_at, part_of, text_at
from bot.notation.kinds import Kind
from bot.notation.talk.things import TALKED_OF
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_NOT_ITS_DAY = ("from", "since", "than", "like", "after", "as", "beat", "versus", "vs")
_AWAY = frozenset(
    words(
        "missed couldnt didnt cant skipped missing off sick ill busy travelling away rest couldn nothing",
    )
)
"""Words of a day without training."""
_TELLING = frozenset(
    words(
        "told tell log logging logged send sending sent report reporting write post posting forgot message update",
    )
)


_TOGETHER = frozenset(words("trained train training session workout sesh gym with we i"))
"""Words of a day that is told of the client beside others."""
_TRAINED = frozenset(words("trained train training session workout sesh did done gym with we missed skipped"))
"""Words of what was done on a day, by the client too."""
_FELT = frozenset(words("felt feel feels feeling flew snappy sore fried stiff dead smoked cooked wrecked looked moved"))
"""Words of how an exercise was, not of what was done."""
_OPENING = frozenset(
    words(
        "this is these are its late one report log logs session workout sets heres here sending catching up from for",
        "the sorry ones just numbers results a bit forgot forgotten missed missing found owe owed still unsent to i",
        "you catch catchup backfill backfilling belated entry delayed those them my dem",
    )
)
"""Words that open a report of another day."""


def is_talk(marks: Sequence[Mark], places: tuple[int, ...]) -> bool:
    """Whether the day stands in talk beside the report: `sore from tuesday`, `slept badly last night, 60x5`."""
    first, last = places[0], places[-1]
    while text_at(marks, last + 1) in _PARTS_OF_DAY:
        last += 1
    places = (*places, *range(places[-1] + 1, last + 1))
    at = first - 1
    while text_at(marks, at) in ("the", "last", "on", "my", "this"):
        at -= 1
    before = text_at(marks, at)
    if _is_owed(marks, places) or _is_sent_late(marks, first, last) or _did_them(marks, first, last):
        return False
    if _is_put_under(marks, first):
        return False
    if before.split()[-1:] in _THAN[:_OTHERS]:
        return True
    if (_is_placed(marks, first, last) or _closes_placed(marks, first, last)) and not _today_follows(marks, last + 1):
        return False
    heads = _heads(marks, at, last)
    if not heads and (
        ("up from" in before and text_at(marks, at - 1) != "catch")
        or (before == "from" and text_at(marks, at - 1) in ("up", "down", "more"))
    ):
        return True
    if before.split()[-1:] and before.split(" ")[-1] in _NOT_ITS_DAY:
        return not heads
    edges = (Kind.COMMA, Kind.STOP, Kind.LINE, Kind.BREAK, Kind.QUERY, Kind.OPEN, Kind.CLOSE)
    start = first
    while start > 0 and marks[start - 1].kind not in edges:
        start -= 1
    end = last + 1
    while end < len(marks) and marks[end].kind not in (*edges, Kind.COLON):
        end += 1
    part = [m for i, m in enumerate(marks[start:end], start) if i not in places]
    words = {w for m in part for w in m.text.split()}
    if _today_follows(marks, last + 1) or _is_of_thing(marks, last):
        return True
    if end < len(marks) and marks[end].kind is Kind.COLON:
        return bool(words & _AWAY and not words & _TELLING)
    if any(m.kind is Kind.NAME for m in part) and _place_end(marks, last + 1) == end > last + 1:
        return False
    if any(m.kind in (Kind.TALKNUM, Kind.OTHERTIME) for m in part) or words & _ELSE or _is_only_meant(part):
        return True
    if any(m.kind is Kind.OTHERPERSON for m in part) and not words & _TOGETHER:
        return True
    numbered = any(_may_be_set(marks, i) for i in range(start, end) if i not in places)
    words = {w for m in part for w in m.text.split()}
    closed = any(m.kind is Kind.NO for m in part) and bool(words & {"gym", "training", "session"})
    named = any(m.kind is Kind.NAME for m in part)
    if (words & _AWAY or closed) and not numbered and not words & _TELLING and not (named and "did" in words):
        return True
    if named and not numbered and words & _FELT and not words & (_TRAINED | _TELLING):
        return True
    if numbered and _is_story(marks, start, first):
        return True
    if named or numbered or any(m.kind is Kind.PLANNED for m in part):
        return False
    if _is_excused(words) or words - {":"} <= _OPENING:
        return False
    return any(m.kind is Kind.WORD for m in part)


_PUT_UNDER = re.compile(
    r"""(?:^|\ )(?:
    (?:it|this|that|these|those|they|them|all\ of\ (?:it|this))\ (?:is|was|were|are)
    (?:\ (?:all|actually|really|done|in\ fact))?(?:\ (?:from|on|for|of))?
    |(?:put|book|log|file|count|enter|save|record|store|note)\ (?:it|this|that|these|those|them)(?:\ all)?(?:\ down)?
    \ (?:under|for|on|as|to|against|in)
    )(?:\ the)?$""",
    re.VERBOSE,
)
_WORDS_AHEAD = 7
"""Words before a day that may say that it is the report's."""
_ACHES = frozenset(words("soreness doms ache aches achy aching hurts hurt hurting pain tired tight tightness bruise"))


def _is_put_under(marks: Sequence[Mark], first: int) -> bool:
    """`… but it was from the day before yesterday`, `put this under two days ago`: the report's own day."""
    start = max(0, first - _WORDS_AHEAD)
    ahead = " ".join(m.text for m in marks[start:first])
    felt = {w for m in marks[:first] for w in m.text.split()} & (_FELT | _ACHES)
    return not felt and _PUT_UNDER.search(ahead) is not None


def _is_story(marks: Sequence[Mark], start: int, first: int) -> bool:
    """`90x10 my niece got engaged last night`, `90x10 worked a double shift yesterday`: told behind a set of another
    thing that happened; not `90x10 at my sister's gym yesterday`, `90x10 did these yesterday`."""
    at = next((i + 1 for i in range(first - 1, start - 1, -1) if _may_be_set(marks, i)), start)
    while at < first and (marks[at].kind not in _OF_TALK or marks[at].text in _LEADING):
        if marks[at].kind in (Kind.AT, Kind.WITH, Kind.TO):
            return False
        at += 1
    told = marks[at:first]
    said = [w for m in told for w in m.text.split()]
    if not said or set(said) & (_TRAINED | _TELLING | _FELT | _THEM | {"i", "we"} | set(_NOTED) | set(_AT)):
        return False
    opens = (
        told[0].kind in (Kind.OTHERPERSON, Kind.TALKNUM)
        or said[0] in _OWNERS
        or bool(set(said) & (_HAPPENED | TALKED_OF))
    )
    return opens and any(m.kind in (Kind.WORD, Kind.OTHERPERSON, Kind.TALKNUM) for m in told)


_OF_TALK = (Kind.WORD, Kind.FILL, Kind.OTHERPERSON, Kind.TALKNUM, Kind.SKIP)
_LEADING = frozenset(words("also and btw oh plus so reps rep kg lb lbs"))
_AT = ("in", "at", "from", "during", "late", "here", "there")
_OWNERS = ("my", "our", "the", "his", "her", "wife", "husband")
_HAPPENED = frozenset(words(
    "worked shift overtime drove flew travelled flight party pub drank beers engaged married birthday born baby",
    "wedding",
    "payday leaving flying curry takeaway met watched slept holiday moved hate hates woke cooked ate dinner exam exams",
    "interview meeting funeral dentist",
))  # fmt: skip


def _is_owed(marks: Sequence[Mark], places: tuple[int, ...]) -> bool:
    """`thursday's session i never sent`, `did friday's in the hotel gym`: a session whose report comes now."""
    start, _ = part_of(marks, places[0])
    _, end = part_of(marks, places[-1])
    said = {w for m in marks[start:end] for w in m.text.split()}
    owned = any(marks[i].text.endswith("days") and marks[i].text != "days" for i in places)
    session = bool(said & {"session", "workout", "sesh", "training"})
    forgot = bool(said & _TELLING) and bool(said & {"never", "forgot", "didnt", "forgotten", "havent", "late"})
    noted = any(text_at(marks, i + 1) in _NOTED for i in places)
    return (forgot and (session or owned)) or (owned and "did" in said) or noted or bool(said & {"owe", "owed"})


_ELSE = frozenset(words(
    "football yoga pilates hike hiked match swim swam tennis climbing rugby cricket golf boxing sparring netball",
    "hockey basketball party wedding marathon parkrun climbed bouldered bouldering surfed surfing skied skiing played "
    "danced sparred boxed golfed",
))  # fmt: skip
"""What was done on a day beside training."""


def _is_only_meant(part: Sequence[Mark]) -> bool:
    """`meant to come yesterday`."""
    return any(m.kind is Kind.MEANT for m in part) and any(m.text in ("come", "train", "go", "be in") for m in part)


def _did_them(marks: Sequence[Mark], first: int, last: int) -> bool:
    """`i did them in the park yesterday evening, 20, 19 and 17`: what was done on that day, then its sets."""
    start, end = part_of(marks, last)
    said = [w for m in marks[start:first] for w in m.text.split()]
    done = any(one in _DID and two in _THEM for one, two in pairwise(said))
    behind = marks[last + 1 : end]
    told = kind_at(marks, end) in (Kind.COMMA, Kind.COLON, Kind.STOP) and kind_at(marks, end + 1) is Kind.NUM
    return done and told and all(m.text in _PARTS_OF_DAY for m in behind) and not _today_follows(marks, last + 1)


_DID = frozenset(words("did done had"))
_THEM = frozenset(words("them these it this those all everything mine"))
_SENDING = frozenset(
    words("send sending sent log logged post posted report text texted message upload write type enter entered")
)
_FORGOT = frozenset(words("forgot asleep never forgotten havent didnt meant should shouldve late couldnt"))
_REACH = 12
"""Marks beside a day that may tell why it is told only now."""


def _is_sent_late(marks: Sequence[Mark], first: int, last: int) -> bool:
    """`did this yesterday arvo, forgot to log it: 60x5`, `two days ago (forgot my phone) rows 60x10`."""
    start, end = first, last + 1
    while start > max(0, first - _REACH) and marks[start - 1].kind not in _OF_SETS:
        start -= 1
    while end < min(len(marks), last + _REACH) and marks[end].kind not in _OF_SETS:
        end += 1
    said = {w for i, m in enumerate(marks[start:end], start) if not first <= i <= last for w in m.text.split()}
    found = bool(said & {"found", "find"}) and bool(said & {"notes", "notebook", "diary", "pocket", "log", "paper"})
    phoneless = bool(said & _GADGETS) and bool(said & {"forgot", "dead", "died", "no", "lost", "flat"})
    here = {w for m in marks[slice(*part_of(marks, first))] for w in m.text.split()}
    phoneless = phoneless and not (here & _GADGETS and not here & _TRAINED)
    return (bool(said & _SENDING and said & _FORGOT) or phoneless or found) and not _today_follows(marks, last + 1)


_OF_SETS = (Kind.NUM, Kind.NAME, Kind.CLOCK)
_NOTED = ("notes", "note", "log", "numbers", "figures", "entry", "entries", "dump", "recap", "catch", "catchup",
          "backlog", "roundup", "summary", "writeup", "results")  # fmt: skip


def _may_be_set(marks: Sequence[Mark], place: int) -> bool:
    """Whether a number may be a set's: not that of `home at 11`, of `3 pints`."""
    if marks[place].kind not in (Kind.NUM, Kind.CLOCK):
        return False
    before = marks[place - 1] if place else None
    after = marks[place + 1].kind if place + 1 < len(marks) else None
    timed = before is not None and before.kind is Kind.AT and before.text == "at" and after is not Kind.X
    counts = after in (Kind.WORD, Kind.OTHERPERSON, Kind.TALKNUM, Kind.HOURS) and (
        before is None or before.kind is not Kind.X
    )
    return not counts and not (timed and not any(m.kind is Kind.X for m in marks[max(0, place - 4) : place + 2]))


_BEING = frozenset(words("was trained train went came come did there here gym in"))
_GADGETS = frozenset(words("phone battery signal wifi app internet charger reception data"))
_LATE = _GADGETS | {"dead", "forgot", "forgotten"}


def _is_excused(said: set[str]) -> bool:
    """`i was on tuesday here but phone was empty`: trained on that day, and why it is told only now."""
    return "i" in said and bool(said & _BEING) and bool(said & _LATE)


def _today_follows(marks: Sequence[Mark], end: int) -> bool:
    """`last monday i had 50, today 55x8`, `flying saturday so squats now: 100x5`: what is reported is today's."""
    named = (i for i in range(end, len(marks)) if marks[i].text in ("today", "now") and not _is_reason(marks, i))
    today = next(named, len(marks))
    if text_at(marks, end) == "but" and text_at(marks, today) == "today":
        return any(m.kind is Kind.X for m in marks[end:])  # `felt ill on sunday but 90x10 today`
    start = 0 if text_at(marks, today) == "now" else end
    told = any(marks[i].kind is Kind.X or marks[i].text in _TELLING for i in range(start, min(today, len(marks))))
    return not told and any(m.kind is Kind.X for m in marks[today:])


def _is_of_thing(marks: Sequence[Mark], last: int) -> bool:
    """`last night's pasta`, `monday's bus`: the day of a thing of talk; not `friday's work`."""
    thing = text_at(marks, last + 1)
    return marks[last].text.endswith("s") and thing in TALKED_OF and thing != "work"


def _is_reason(marks: Sequence[Mark], place: int) -> bool:
    """`did rows yesterday cuz the gym closes early today`: why it was another day."""
    start, _ = part_of(marks, place)
    return any(m.text in _BECAUSE for m in marks[start:place])


_BECAUSE = ("because", "cause", "cus", "cos", "coz", "cuz", "bc", "bcs", "since", "as", "so as", "due")


def _is_placed(marks: Sequence[Mark], first: int, last: int) -> bool:
    """`yesterday in the garage, rows 60x5`: where or when on that day, before the sets."""
    _, end = part_of(marks, last)
    said = [w for m in marks[last + 1 : end] for w in m.text.split()]
    opens = all(m.kind in (Kind.FILL, Kind.SORRY, Kind.COMMA) for m in marks[:first])
    leads = said[:1] in (["in"], ["at"], ["before"], ["after"], ["during"], ["over"]) and 1 < len(said) <= _PLACE
    told = [m.kind for m in marks[end + 1 : end + 3] if m.kind is not Kind.FILL]
    sets = kind_at(marks, end) is Kind.COMMA and told[:1] in ([Kind.NAME], [Kind.NUM])
    return opens and leads and sets and not set(said) & _ELSEWHERE


def _closes_placed(marks: Sequence[Mark], first: int, last: int) -> bool:
    """`chins 8 8 7 6, yesterday at the park`, `(tuesday in the garage)`: where on that day, behind the sets."""
    start, end = part_of(marks, last)
    told = first == start and any(m.kind in (Kind.NUM, Kind.BODY) for m in marks[:first])
    return told and _place_end(marks, last + 1) == end and end > last + 1


def _place_end(marks: Sequence[Mark], at: int) -> int:
    """Where the place that is told behind a day ends: `at my sister's house`; `at` itself where none is."""
    end = min(part_of(marks, at)[1] if at < len(marks) else at, at + _PLACE + 1)
    end = next((i for i in range(at, end) if marks[i].kind is Kind.COLON), end)
    said = [w for m in marks[at:end] for w in m.text.split()]
    plain = all(m.kind in _OF_PLACES for m in marks[at:end])
    leads = bool(said) and said[0] in _WHERE and (len(said) > 1 or said[0] in _ALONE)
    return end if leads and plain and len(said) <= _PLACE and not set(said) & _ELSEWHERE else at


_WHERE = frozenset(words("in at on outside outdoors down over with before after during away round up from near by"))
_ALONE = ("outside", "outdoors", "away")
_OF_PLACES = (Kind.FILL, Kind.WORD, Kind.AT, Kind.WITH, Kind.OTHERPERSON, Kind.TO, Kind.WEAK, Kind.FOR, Kind.TALKNUM)
_PLACE = 5
"""Words of a place: `at my sister's house`."""
_ELSEWHERE = frozenset(words("physio doctor doctors dentist hospital therapist party wedding football match i you"))


def _ends(marks: Sequence[Mark], last: int) -> bool:
    """Whether the message ends here, but for a bracket or a full stop."""
    return all(m.kind in _ENDING for m in marks[last + 1 :])


_ENDING = (Kind.CLOSE, Kind.STOP, Kind.FILL, Kind.LINE, Kind.SORRY, Kind.COMMA)


_EXCUSE = frozenset(words(
    "late i know sorry bit little its it is better than never forgot to send log sending post this them didnt get "
    "round only just now overdue belated again my bad apologies for the delay so very super"
))  # fmt: skip


def _is_excuse(marks: Sequence[Mark], at: int) -> bool:
    """`squats from monday, late i know: 100x5`: why it is told only now, and then the sets."""
    if kind_at(marks, at) not in (Kind.COMMA, Kind.OPEN, Kind.DASH):
        return False
    end = next((i for i in range(at, min(len(marks), at + _REACH)) if marks[i].kind is Kind.COLON), at)
    said = {w for m in marks[at + 1 : end] for w in m.text.split() if w.isalpha()}
    return bool(said) and said <= _EXCUSE


_PARTS_OF_DAY = ("night", "nite", "evening", "morning", "afternoon", "arvo", "lunchtime", "lunch", "noon", "pm", "am")
_ADDRESSED = ("coach", "boss", "mate", "sorry", "btw", "pal", "chief")
_THAN = (["than"], ["vs"], ["versus"], ["beat"], ["beats"], ["like"], ["as"], ["since"])
_OTHERS = 5
"""So many of them always compare with another day: `heavier than monday: 65x5`."""


def _heads(marks: Sequence[Mark], first: int, last: int) -> bool:
    """Whether the report follows straight after, as in `from yesterday: 60x5`."""
    ends = (Kind.COLON, Kind.DASH, Kind.LINE)
    first = max(first, 0)
    if last + 1 < len(marks) and marks[last + 1].text in ("session", "workout", "training"):
        last += 1
    ahead = {w for m in marks[:first] if m.kind is not Kind.COLON for w in m.text.split()}
    opening = first == 0 or ahead <= _OPENING
    while last + 1 < len(marks) and marks[last + 1].text in (*_PARTS_OF_DAY, *_ADDRESSED):
        last += 1
    if kind_at(marks, _place_end(marks, last + 1)) is Kind.COLON:
        last = _place_end(marks, last + 1) - 1
    if opening and last + 1 < len(marks) and marks[last + 1].kind is Kind.COMMA:
        return True
    if opening and text_at(marks, first) == "from" and kind_at(marks, last + 1) in (Kind.NAME, Kind.NUM):
        return True
    dated = [m.kind for m in marks[max(0, first - 1) : first]] == [Kind.NAME] and text_at(marks, first) == "from"
    behind = last + 1 + (kind_at(marks, last + 1) in (Kind.STOP, Kind.COMMA, Kind.COLON, Kind.LINE))
    if dated and kind_at(marks, behind) is Kind.NUM:
        return True
    if dated and _is_excuse(marks, last + 1):
        return True
    behind = first - 1 - (first > 0 and marks[first - 1].kind in (Kind.COMMA, Kind.DASH, Kind.OPEN, Kind.STOP))
    compares = text_at(marks, first).split()[:1] in (["up"], ["down"]) or text_at(marks, first).split()[-1:] in _THAN
    if (
        behind >= 0
        and not compares
        and _ends(marks, last)
        and marks[behind].kind in (Kind.NUM, Kind.REPS, Kind.KG, Kind.LB)
    ):
        return True
    if last + 1 < len(marks) and marks[last + 1].kind is Kind.COMMA:
        told = {w for m in marks[last + 2 : last + 9] for w in m.text.split()}
        return bool(told & _TELLING) and any(m.kind is Kind.COLON for m in marks[last + 2 : last + 9])
    headed = opening or bool({w for m in marks[:first] for w in m.text.split()} & (_TELLING | _TRAINED))
    return last + 1 < len(marks) and marks[last + 1].kind in (
        (*ends, Kind.STOP) if opening else ends if headed else (Kind.COLON,)
    )
