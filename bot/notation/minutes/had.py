"""Whether a duration is the time that the client has: by the words of its part, or by what stands around it."""

from collections.abc import Sequence
from itertools import pairwise

from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.minutes.all_there_is import UNTIL, all_behind
from bot.notation.minutes.alone import is_told_alone
from bot.notation.minutes.clock import words_of
from bot.notation.minutes.elapsed import AT_MOST, is_elapsed, since_had
from bot.notation.minutes.parts import GOING, HAVING, MUST, RUNNING, part_of, part_words
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_NOT_HAVING = frozenset(
    words(
        "sat sit sitting lay lying stood standing rest rested resting rests late drive driving walk walked",
        "walking bike biked cycle cycled cycling treadmill run ran running cardio warm warmed warming warmup took",
        "takes taking ago sleep slept plus extra longer over between queue queued waited waiting wait waits",
        "commute commuting arriving away traffic stretch stretched stretching foam mobility break rower rowing",
        "elliptical jog jogged jogging early behind swim swam hold held holding after in be each per every total",
        "duration lasted lasting elapsed spent steady amrap emom intervals sauna stairclimber stepper skipping",
        "skipped skip drove nap napped gained here hiked hike hiking queuing chatted nattered napping saved",
    )
)
_SLEPT = frozenset(words("slept sleep insomnia awake nap napped asleep sleepless overslept kip jetlag jetlagged"))
"""Words of a message whose hours are those of a night: `insomnia again, five hours max`."""
_APPOINTMENTS = frozenset(words("meetings calls lessons classes shifts appointments clients patients jobs"))
_ENOUGH = (["enough"], ["ok"], ["okay"], ["possible"], ["doable"], ["realistic"], ["is"], ["will"])
_CATCHING = frozenset(words(
    "bus train tram ferry metro half quarter past oclock class shift meeting appointment lift back"
))  # fmt: skip
"""Words of what a client has to be away for, behind which the minutes until then are told: `bus at 11, so 35 min`."""
_COMING = frozenset(words(
    "ends end ending expires leaves arrives starts begins closes shuts comes due back meeting call pickup class bus",
    "train tram ferry shift appointment lesson lift taxi cab uber delivery kickoff landing kicks dentist doctor",
    "doctors physio haircut interview exam lecture pickup nursery",
))  # fmt: skip
"""Before `in 40 min` these say what the client has to be done for: `parking ends in 40 min`, `call in 20 min`."""
_TRAINING = frozenset(words(
    "training session gym this it that workout lifting working sets set bed sleep me bench i bar rack there here floor"
))  # fmt: skip
"""Behind `20 min before` these tell of something else than what the client has to be away for."""
_OTHER_DAY = frozenset(words("tomorrow tmrw monday tuesday wednesday thursday friday saturday sunday"))


def _is_of_others(before: list[str], after: list[str]) -> bool:
    """`he only has 20 minutes`, `20 minutes left in the match`, `yesterday I only had 20 minutes`: not the time that
    the client has today.
    """
    others = bool(set(before) & _OTHERS) and not set(before) & _MINE and not set(after[:4]) & _MINE
    other_day = bool(set(before) & _PAST_OR_TO_COME) or after[:1] == ["yesterday"] or after[:2] == ["a", "day"]
    thing = after[:1] == ["left"] and after[1:2] in (["of"], ["in"], ["on"]) and not set(after[2:]) & _OF_SESSION
    return others or other_day or thing or before[:3] == ["do", "i", "have"]


def _is_in_thought(before: list[str]) -> bool:
    """`what if I only have`, `if I had`, `wish I had`; not `if I've only the 20 minutes, what first?`"""
    said = set(before)
    return "wish" in said or ("if" in said and bool(said & {"had", "what"}))


_OTHERS = frozenset(words("he she mate mates wife husband phone roast dinner oven match film"))
_MINE = frozenset(words("i im me we us ill ive lift ride picks"))
_PAST_OR_TO_COME = frozenset(words("yesterday tomorrow tmrw"))
_OF_SESSION = frozenset(words(
    "session gym it here parking clock me lunch break today this meter my booking slot window childcare ticket workout",
    "training us lunchbreak tonight",
))  # fmt: skip


def is_had(marks: Sequence[Mark], place: int, end: int, timed: bool) -> bool:
    """Whether a duration is what the client has, by the words of its part. `timed`: the exercise counts seconds."""
    start, stop = part_of(marks, place)
    start, stop = max(start, place - 8), min(stop, end + 5)
    before = [w for m in marks[start:place] for w in words_of(m)]
    after = [w for m in marks[end:stop] for w in words_of(m)]
    of_night = kind_at(marks, end - 1) is Kind.HOURS and any(set(words_of(m)) & _SLEPT for m in marks)
    if (of_night and not {"got", "have"} & set(before)) or "since" in before[-2:]:
        return False
    if after[:1] in (["later"], ["earlier"]) or ("last" in before[-2:] and set(before[-4:]) & _OVER):
        return False
    if _is_of_others(before, after) or _is_in_thought(before):
        return False
    if _then_away(marks, end) and not set(before) & _NOT_HAVING:
        return True
    if before[-1:] == ["with"] and set(before[-5:-1]) & _ARRIVING and after[:1] != ["of"]:
        return True
    if not timed and (_is_for_all(marks, end, after) or (all_behind(marks, end) > end and set(before) <= _PLAIN)):
        return True
    named = any(m.kind is Kind.NAME or (m.kind is Kind.WEAK and m.names) for m in marks[max(start, place - 3) : place])
    if named and after[:1] != ["till"]:
        return False
    if _is_other_day(before) or before[-2:] == ["back", "in"]:
        return False
    so, before = before, _since_so(before)
    if _is_until_something(marks, before, end) or _comes_in(before, after) or _is_given(before, after):
        return True
    if (
        is_back_by(before)
        or after[:2] in (["lunch", "break"], ["is", "all"], ["thats", "all"])
        or out_behind(marks, end) > end
    ):
        return True
    if after[:1] in (["out"], ["away"], ["off"]) and len(after) == 1 and not set(before) & HAVING:
        return False
    near = before[-4:]
    leaving = "in" in near and (bool(set(before) & GOING) or (bool(set(near) & RUNNING) and bool(set(before) & MUST)))
    ended = bool(set(near) & {"done", "finished", "finish"}) and not set(before) & MUST
    leaving = leaving and not ended
    gone = ({"in", "be", "here"} | RUNNING) if leaving else set()
    blocked = set(since_had(near)) & _NOT_HAVING - gone
    if after[:1] and (after[0] in AT_MOST or after[:2] == ["from", "now"]):
        blocked -= {"late", "early", "after", "in", "behind", "between"}
    if is_elapsed(before, after, marks):
        return False
    if after[:1] == ["between"] and (set(after) & _APPOINTMENTS or (before[-1:] == ["got"] and "and" in after)):
        return True
    if blocked or set(after[:3]) & (_NOT_HAVING - {"in", "over", "each", "skip", "skipping"}):
        return False
    if after[:1] == ["of"] and set(after[1:2]) & _APPOINTMENTS:
        return False
    if after[:1] == ["in"] and after[1:2] in ([], ["and"], ["to"], ["already"]):
        return False
    if after[:1] in (["gone"], ["lost"], ["wasted"], ["already"]):
        return False
    if not before and not after and [m.text for m in marks[end + 1 : end + 2]] in _ENOUGH:
        return kind_at(marks, end) is Kind.COMMA and any(m.kind is Kind.QUERY for m in marks[end + 1 : end + 4])
    if so in (["so"], ["so", "thats"], ["thats"], ["gives", "me"]) and not after and start > 0:
        return bool(set(part_words(marks, start - 1)) & _CATCHING)
    having = set(before) & HAVING - _ROUGHLY or set(before[-3:]) & _ROUGHLY
    at_most = before[-3:] in _NO_MORE_THAN or after[after[:1] == ["and"] :][:2] in _NO_MORE
    soon = before == ["in"] and bool(set(after[:4]) & MUST) and bool(set(after) & GOING)
    if leaving or after[:2] == ["from", "now"] or having or set(after) & HAVING or at_most or soon:
        return True
    return is_told_alone(marks, place, end, timed=timed, away=_NOT_HAVING)


_OVER = frozenset(words("from for since over during"))
"""Before `the last half hour` these tell what was."""
_NO_MORE = (["no", "more"], ["not", "more"], ["no", "longer"], ["not", "longer"])
_NO_MORE_THAN = (["no", "more", "than"], ["not", "more", "than"], ["no", "longer", "than"])
"""Words that bound the time there is: `so 35 min no more`."""


def _then_away(marks: Sequence[Mark], end: int) -> bool:
    """`25 more min then ive got to get the kids`: the time until the client has to be elsewhere."""
    end += kind_at(marks, end) is Kind.AND and kind_at(marks, end + 1) is Kind.THEN
    if kind_at(marks, end) is not Kind.THEN:
        return False
    _, stop = part_of(marks, end + 1)
    said = [w for m in marks[end + 1 : stop] for w in words_of(m)]
    told = any(m.kind in (Kind.NUM, Kind.NAME, Kind.WEAK) for m in marks[end + 1 : stop])
    called = said[said[:1] in (["the"], ["my"]) :][:1]
    away = said[:1] == ["home"] or " ".join(said[:2]) in _OFF or called in [[word] for word in _CALLS]
    return not told and (said[1:4] in _HAVE_TO or said[:3] in _HAVE_TO or away)


_CALLS = frozenset(
    words("dentist doctor doctors appointment meeting bus train school pickup shift interview work exam")
)
"""What a client is called away to: `10 more minutes and then the dentist`."""
_OFF = frozenset((
    "off home", "heading home", "outta here", "out of",
    "gotta go", "im off", "im out", "im gone", "im away", "im done", "i turn", "i vanish", "i leave", "i disappear",
    "i run", "i bolt", "i dash", "i head", "i bounce", "must run", "must dash", "must leave", "have to",
))  # fmt: skip
"""How what a client does then begins: `35 min then i turn into a pumpkin`."""


_HAVE_TO = tuple(
    phrase.split()
    for phrase in (
        *("got to get", "got to go", "got to be", "have to get", "have to go", "have to be", "have to leave"),
        *("have to pick", "need to go", "need to get", "need to leave", "must go to"),
    )
)


def _since_so(before: list[str]) -> list[str]:
    """The words since the last `so`, which tells what follows from the rest: `was sick all night so` 30 min."""
    at = max((i for i, w in enumerate(before) if w == "so"), default=-1)
    tells = at >= 0 and len(before) - at <= _SHORT and before[at + 1 : at + 2] not in (["far"], ["much"])
    return [*(["got"] if at > 0 else []), *before[at + 1 :]] if tells else before


_ROUGHLY = frozenset(words("maybe about roughly"))
"""Words of having time straight before it alone: not those of `messed about on my phone for` 10 minutes."""
_SHORT = 5
"""Words between `so` and the time that it gives: `so i guess maybe 30 min`."""


def _is_until_something(marks: Sequence[Mark], before: list[str], end: int) -> bool:
    """`1 hr 15 till school pickup`, `20 mins before my lift arrives`; not `ate 30 min before training`."""
    if text_at(marks, end) not in UNTIL or set(before[-4:]) & (_NOT_HAVING - {"in", "be", "over"}):
        return False
    _, stop = part_of(marks, end)
    said = [w for m in marks[end + 1 : stop] for w in words_of(m)]
    told = any(m.kind in (Kind.WORD, Kind.OTHERPERSON, Kind.NAME, Kind.WEAK) for m in marks[end + 1 : stop])
    told = told or bool(set(said) & _CATCHING) or said[-1:] in (["work"], ["bed"], ["lunch"], ["dinner"])
    mine = not any(m.kind in (Kind.WORD, Kind.TALKNUM) for m in marks[max(0, end - 6) : end]) or bool(
        set(before) & HAVING
    )
    return told and mine and not set(said[:2]) & _TRAINING


def _comes_in(before: list[str], after: list[str]) -> bool:
    """`parking ends in 40 min`, `can you fit it in 30 minutes`."""
    if before[-1:] not in (["in"], ["into"]) or after[:1] in (["ago"], ["late"]):
        return False
    fits = bool(set(before[-5:]) & _FITTING) and not set(before) & {"did", "fitted"}
    turned = after[:1] in (["comes"], ["goes"], ["leaves"], ["starts"]) and after[1:2] in (["my"], ["the"])
    return fits or bool(set(before[-3:-1]) & _COMING) or (turned and bool(set(after[2:4]) & _COMING))


_FITTING = frozenset(words("fit squeeze cram squeezing cramming fitting"))


def out_behind(marks: Sequence[Mark], end: int) -> int:
    """Where `and im out` ends behind a duration: `15 minutes and im out` is no end of the session yet."""
    then = kind_at(marks, end) in (Kind.AND, Kind.THEN) and text_at(marks, end + 1) in _OUT
    return end + 2 if then else end


_ARRIVING = frozenset(words("in up here there arrived door gym came rocked rolled pitched strolled landed"))
"""Before `with 35 min` these say that it is what there is: `walked in with 35 min`."""
_PLAIN = frozenset(words("i have ive got only just about gym closes closing shuts in its so like"))
_WHOLE = frozenset(words("everything all whats it whatever session whole workout"))


def _is_for_all(marks: Sequence[Mark], end: int, after: list[str]) -> bool:
    """`15 min for the rest`, `20 minutes for everything`, `half an hour to do the lot`."""
    for_rest = kind_at(marks, end) is Kind.FOR and kind_at(marks, end + 1) in (Kind.THEREST, Kind.ALL)
    to_do = after[:2] in (["to", "do"], ["to", "fit"], ["to", "get"]) and kind_at(marks, end + 2) in (
        Kind.ALL, Kind.THEREST, Kind.FILL)  # fmt: skip
    whole = after[:1] == ["for"] and bool(set(after[1:3]) & {"everything", "whats", "whatever"})
    return whole or for_rest or (to_do and bool(set(after[2:5]) & (_WHOLE | {"lot", "rest"})))


_OUT = ("im out", "im off", "im gone", "im outta here", "im out of here", "im outta")


def is_back_by(before: Sequence[str]) -> bool:
    """`back on the ward in` ten minutes, `got to be at my desk in` 10, `lunch is over in` 10: the time until then.

    Not `back in` ten minutes, `be there in` ten minutes: these tell when training goes on, or begins.
    """
    if before[-1:] != ["in"]:
        return False
    said = [w for w in before[:-1] if w not in ("like", "about", "just", "maybe")]
    ends = bool(set(said[-2:]) & {"over", "up"}) and bool(set(said) & _PAUSES)
    at = max((i for i, w in enumerate(said) if w == "back" or (w == "be" and set(said[:i]) & MUST)), default=None)
    where = [] if at is None else said[at + 1 :]
    where = where[1:] if where[:1] == ["back"] else where
    return ends or (len(where) > 1 and where[0] in ("on", "at", "to", "in", "on the") and not set(where) & _TRAINING)


_PAUSES = frozenset(words("break lunch lunchtime breaktime nap naptime class babysitting parking meter"))


def _is_given(before: list[str], after: list[str]) -> bool:
    """`boss gave me 45 mins`; not `gave me 20 minutes of stretching`."""
    given = before[-2:] in (["gave", "me"], ["gives", "me"], ["allowed", "me"], ["given", "me"], ["leaves", "me"])
    return given and after[:1] not in (["of"], ["grief"])


def _is_other_day(before: list[str]) -> bool:
    """`next week ill have 90 minutes`."""
    return bool(set(before) & _OTHER_DAY) or any(
        one == "next" and two in ("week", "time", "session", "month") for one, two in pairwise(before)
    )
