"""Whether a message ends the session, and what a bare `done` or a thumb says."""

from collections.abc import Sequence

from bot.notation.clauses import EDGES
from bot.notation.days.weekdays import WEEKDAYS
from bot.notation.kinds import Kind
from bot.notation.skips.hindered import DENYING
from bot.notation.talk.things import TALKED_OF
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_WITH_IT = frozenset(
    (Kind.NAME, Kind.WEAK, Kind.NUM, Kind.SET, Kind.SETS, Kind.LASTSET, Kind.ORD, Kind.LASTREP, Kind.WARMUP)
)


def read_finish(marks: Sequence[Mark]) -> Mark | None:
    """The words that say that the session is over, if any: not where an exercise or a set is finished."""
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.FINISH:
            continue
        at = place + 1
        while at < len(marks) and marks[at].kind in (Kind.FILL, Kind.WITH, Kind.FOR, Kind.AT, Kind.ALL):
            at += 1
        if [m.text for m in marks[place + 1 : place + 2]] in (["those"], ["them"], ["these"]):
            continue
        if at < len(marks) and marks[at].kind in (*_WITH_IT, Kind.QUERY, Kind.EXCEPT):
            continue
        if place and marks[place - 1].kind is Kind.SETS and not any(m.kind is Kind.NUM for m in marks[:place]):
            continue  # `back offs all done`
        if _is_of_warmup(marks, place) or _is_to_come(marks, place):
            continue
        before = marks[place - 1] if place else None
        if before is not None and (before.kind in (Kind.OTHERTIME, Kind.NOT, Kind.UNDONE) or before.text in DENYING):
            continue
        if mark.text == "finish" and before is not None and before.text.split()[-1:] in (["can"], ["could"], ["to"]):
            continue
        own = mark.text.split(" ")[0] in _OWN and any(
            m.kind in (Kind.SKIP, Kind.NO) for m in marks[max(0, place - 5) : place]
        )
        if before is not None and before.kind in (Kind.NAME, Kind.WEAK) and not own:
            continue
        if (
            _is_merely(marks, place)
            or _is_of_exercise(marks, place)
            or _is_away(marks, place)
            or _is_all_there_was(marks, place)
            or _is_timed(marks, place)
            or _goes_on_today(marks, place)
            or _is_of_thing(marks, place)
            or _is_of_more(marks, place)
            or _is_of_work(marks, place)
        ):
            continue
        if any(m.kind is Kind.THEN for m in marks[max(0, place - 3) : place]) and any(
            m.kind in (Kind.ANOTHER, Kind.MORE) for m in marks[:place]
        ):
            continue
        return mark
    return None


def _is_of_more(marks: Sequence[Mark], place: int) -> bool:
    """`that's all the news`, `that's me at the gym`, `over and out of breath`: words that end nothing by themselves, of
    something else than the session.
    """
    said = marks[place].text
    if not said.startswith(_POINTING):
        return False
    behind: list[str] = []
    for mark in marks[place + 1 : place + 1 + _FAR]:
        skips = mark.kind in (Kind.SKIP, Kind.SKIPPED, Kind.NO)  # `thats me finished no time for curls`
        if mark.kind in EDGES or skips or mark.kind in (Kind.CLOSE, Kind.OPEN) or mark.text in _ONWARD:
            break
        behind += mark.text.split()
    asked = said == "finish" and "?" in behind  # `finish with what weight`
    return (
        asked
        or any(w not in _CLOSING for w in behind if w.isalpha())
        or (said == "thats me" and behind[:1] in (["at"], ["in"], ["back"], ["on"]))
    )


_ONWARD = ("and", "but", "so", "cos")
_POINTING = (
    "thats me",
    "thats it",
    "thats all",
    "thats a wrap",
    "thats the end",
    "over and out",
    "signing off",
    "finish",
)
_CLOSING = frozenset(words(
    "for from of on with at in the a an my our",
    "this that it all today todays tonight tonights day night evening morning",
    "afternoon week now then here there done finished off out away home over through complete session sesh workout wod",
    "training gym list plan sheet programme program exercises exercise",
    "sets set lot work lifting lifts early folks coach",
    "boss mate sir guys everyone thanks thank you cheers bye ta lol haha x xx pal buddy bro",
    "bruv dude lads lad man hun love team i ive got had have can could do did planned",
    "managed time left energy in me us we and really sorry",
    "please up going to gonna get give giving see soon later next",
    "tomorrow friday monday tuesday wednesday thursday saturday sunday until till one last final ever more",
    "weekend finally already just well still guess think im am is was be being todays wrapped calling quits as",
    "again afraid getting out you youre tday tdy 2day folk everybody team",
    "sweaty knackered tired dead happy shattered gassed cooked spent wiped beat battered",
    "strong high note good great nice min mins minutes hour",
    "hours half too also anyway officially feeling feel hit enough",
))  # fmt: skip


def _is_of_work(marks: Sequence[Mark], place: int) -> bool:
    """`work is done for today`, `finished for the day at work so heading in`: a job is over."""
    before = [m.text for m in marks[max(0, place - 2) : place] if m.kind is not Kind.FILL]
    behind = [m.text for m in marks[place + 1 : place + 3]]
    job = behind in (["at", "work"], ["with", "work"])
    return job or (before[-1:] in (["is"], ["was"], ["s"]) and before[-2:-1] == ["work"])


def _is_of_thing(marks: Sequence[Mark], place: int) -> bool:
    """`finished my book on the bus`, `all done with exams`, `the ice cream is finished`: a thing of talk is over, not
    the session."""
    if marks[place].text.split()[-1] not in _OVER:
        return False
    said = [w for m in marks[place + 1 : place + _NEAR] for w in m.text.split()]
    thing = next((i for i, w in enumerate(said) if w not in _OWNED), None)
    owned = bool(thing) or (marks[place].text == "finished" and "time" not in said)
    was = place > 1 and marks[place - 1].kind is Kind.WAS and marks[place - 2].kind is Kind.WORD
    led = place > 0 and marks[place - 1].text in TALKED_OF
    led = led or (place > 1 and marks[place - 1].kind is Kind.WORD and marks[place - 2].text in ("my", "his", "her"))
    others = next((m for m in marks[place + 1 : place + 2] if m.kind is Kind.THEREST), None)
    sets = others is not None and not others.text.endswith("rest")
    if marks[place].text == "finished" and sets and any(m.kind is Kind.NUM for m in marks[place:]):
        return True  # `finished the other two, 90x9, 8`
    return was or led or (owned and thing is not None and said[thing] in TALKED_OF)


_OVER = ("done", "finished", "finish", "complete", "completed")
_OWNED = frozenset(
    words("with my the a an all this these that our of his her their last final finally for another some")
)
_NEAR = 5
"""Marks behind an end that say what is over."""


def _is_timed(marks: Sequence[Mark], place: int) -> bool:
    """`cleans 62.5x3x5 all done in 9 minutes`: how long the sets of one exercise took."""
    timed = [m for m in marks[place + 1 : place + 5] if m.text not in _ABOUT]
    within = [m.text for m in timed[:1]] in (["in"], ["inside"], ["within"], ["under"])
    minutes = any(m.kind is Kind.MINUTES or m.text in _MINUTES for m in timed[1:3])
    sets = place > 0 and marks[place - 1].kind is Kind.NUM
    return within and minutes and sets and sum(m.kind is Kind.NAME for m in marks[:place]) <= 1


_ABOUT = ("about", "around", "like", "roughly", "just", "only")
_MINUTES = ("min", "mins", "minutes", "minute")


def _goes_on_today(marks: Sequence[Mark], place: int) -> bool:
    """`so I stopped there, floor press tonight`: a pause, and what is done later that day."""
    pause = bool(set(marks[place].text.split()) & _PAUSING)
    behind = marks[place + 1 : place + 1 + _FAR]
    named = next((i for i, m in enumerate(behind) if m.kind in (Kind.NAME, Kind.THEREST)), None)
    if not pause or named is None or any(m.kind in (Kind.NUM, Kind.SKIP, Kind.SKIPPED, Kind.NO) for m in behind):
        return False
    said = [w for m in behind[named + 1 :] for w in m.text.split()]
    return bool(said) and (said[0] in _LATER or said[:2] in (["this", "evening"], ["this", "afternoon"]))


_PAUSING = frozenset(words("stopped stopping stop leaving leave left"))
_LATER = ("tonight", "later", "tonite", "2nite")


def _is_merely(marks: Sequence[Mark], place: int) -> bool:
    """`hammy feels a bit tight, thats all`: nothing more than what was said before, and no end."""
    if marks[place].text not in ("thats all", "that is all", "that was all"):
        return False
    end = place - (place > 0 and marks[place - 1].kind is Kind.COMMA)
    start = end
    while start > 0 and marks[start - 1].kind not in EDGES and end - start < _FAR:
        start -= 1
    told = [i for i in range(start, end) if marks[i].kind in _WITH_IT]
    part = marks[max([start, *(i + 1 for i in told)]) : end]
    return any(set(m.text.split()) & _SLIGHT for m in part)


def _is_all_there_was(marks: Sequence[Mark], place: int) -> bool:
    """`8, that was everything i had, nothing left`: of strength; not `that was all i had planned`, `.. time for`."""
    had = place + 1 < len(marks) and marks[place + 1].text in ("i had", "i had left")
    behind = marks[place + 2] if place + 2 < len(marks) else None
    ends = behind is None or behind.kind in (*EDGES, Kind.EMPTY, Kind.TANK) or behind.text in ("left", "in")
    return marks[place].text.startswith("that") and had and ends


_SLIGHT = frozenset(["bit", "just", "little", "only", "slightly", "tad", "touch", "slight", "merely", "need", "mild"])
_FAR = 12
"""Marks that are looked back at."""


def _is_away(marks: Sequence[Mark], place: int) -> bool:
    """`im out of town till friday`, `going home for christmas`, `calling it heavy`: something else than the end."""
    said = marks[place].text
    behind = " ".join(m.text for m in marks[place + 1 : place + _FAR])
    if said in ("im out", "i am out"):
        return behind.split()[:1] in ([w] for w in _OUT_OF) and not behind.startswith("of here")
    if said == "calling it":
        return behind.split()[:1] in (["heavy"], ["light"], ["hard"], ["easy"], ["a"], ["an"], ["about"])
    if said.endswith("home") and behind.startswith(("to train", "to lift", "to the gym")):
        return True
    return said.endswith(("home", "off")) and bool(set(behind.split()) & {*WEEKDAYS, "tomorrow", "christmas", "next"})


_OUT_OF = words("of sick tonight tomorrow until till til for with next on ill")


def _is_of_exercise(marks: Sequence[Mark], place: int) -> bool:
    """`squat is finish`, `my energy was finished`: an exercise or a strength is over, not the session."""
    said = marks[max(0, place - 2) : place]
    mine = bool(said) and said[0].text.split()[-1:] in ([w] for w in _USED_UP)
    return [m.kind for m in said] in ([Kind.NAME, Kind.WAS], [Kind.WEAK, Kind.WAS]) or (
        mine and said[-1].kind is Kind.WAS
    )


_USED_UP = ("energy", "grip", "legs", "arms", "strength", "power", "force", "breath", "shoulders", "motivation")


_OWN = ("and", "im", "i", "thats", "that", "were", "we", "calling", "ive")
"""Words that open an end of their own, behind the name of what is skipped: `skipped the carries I'm done`."""


def _is_to_come(marks: Sequence[Mark], place: int) -> bool:
    """`outta here at 7:30`, `gotta be packed up in 20 min`, `20 min then home`: the time until then is read, and this
    is no end yet.
    """
    at = place + 1
    while at < len(marks) and marks[at].kind is Kind.FILL:
        at += 1
    timed = at < len(marks) and marks[at].kind is Kind.GAP
    due = any(set(m.text.split()) & _DUE for m in marks[max(0, place - 5) : place])
    if timed and (marks[at].text.split(" ")[-1] in _BY or (due and marks[at - 1].text in _WITHIN)):
        return True
    at = place - 1
    while at >= 0 and (marks[at].kind is Kind.FILL or marks[at].text in ("im", "i am")):
        at -= 1
    joined = at > 0 and marks[at].kind in (Kind.THEN, Kind.AND)
    while joined and at > 0 and marks[at].kind in (Kind.THEN, Kind.AND, Kind.FILL):
        at -= 1
    return (
        joined
        and marks[at].kind is Kind.GAP
        and any(c.isdigit() for m in marks[max(0, at - 2) : at + 1] for c in m.text)
    )


_BY = ("at", "by", "before", "until", "till", "til")
_DUE = frozenset(words("gotta need needs have must got want wanna should be im ill hafta"))
_WITHIN = ("in", "within", "inside", "under")


def _is_of_warmup(marks: Sequence[Mark], place: int) -> bool:
    """`warm ups all done`: the warm-up is over, not the session."""
    at = place - 1
    while at >= 0 and marks[at].kind in (Kind.FILL, Kind.WAS, Kind.ALL, Kind.SETS, Kind.SET):
        at -= 1
    return at >= 0 and marks[at].kind is Kind.WARMUP


def _is_of_other(part: Sequence[Mark]) -> bool:
    """`so done with this machine`, `haven't done planks yet`: not said of a set."""
    done = next(i for i, m in enumerate(part) if m.kind in (Kind.DONE, Kind.FINISH))
    denied = any(m.text in _NOT_YET for m in part[:done])
    rest = part[done + 1 :]
    named = any(m.kind in (Kind.NAME, Kind.SET, Kind.SETS, Kind.LASTSET, Kind.ALL) for m in rest)
    about = len(rest) > 1 and rest[0].kind is Kind.WITH and not named
    return denied or about


def _is_unsaid(mark: Mark) -> bool:
    """Whether a mark is of a question or of a hurt, which parts the rest as a full stop does."""
    return mark.kind is Kind.GAP and mark.text == "?"


def _closes(part: Sequence[Mark], mark: Mark) -> bool:
    """`done 💪 legs wasted`: a picture behind the word that tells a set, which parts it from the rest."""
    picture = bool(mark.text) and all(ord(c) > _SIGNS for c in mark.text)
    return picture and any(m.kind is Kind.DONE for m in part)


def closes_part(marks: Sequence[Mark], place: int) -> bool:
    """Whether a part ends behind a place, but for words that change nothing: `and done, shower time`."""
    at = place + 1
    while at < len(marks) and marks[at].kind is Kind.FILL:
        at += 1
    return at >= len(marks) or marks[at].kind in EDGES


def closing(marks: Sequence[Mark]) -> frozenset[int]:
    """The place of the client's own end that closes a message, whose reason may stand before it: `no planks bc the kids
    are asleep done for today`; not `my mate is done for today`.
    """
    place = next(
        (i for i in range(len(marks) - 1, -1, -1) if marks[i].kind not in (Kind.FILL, Kind.STOP, Kind.FOR)), None
    )
    if place is None or marks[place].kind is not Kind.FINISH:
        return frozenset()
    at = place - 1
    while at >= 0 and marks[at].kind is Kind.FILL:
        at -= 1
    hinders = at >= 0 and (marks[at].kind in _UNENDED or bool(set(marks[at].text.split()) & DENYING))
    return frozenset() if hinders else frozenset([place])


_UNENDED = (Kind.WAS, Kind.OTHERPERSON, Kind.OTHERTIME, Kind.NOT, Kind.UNDONE, Kind.NO, Kind.TALKNUM, Kind.TO)


_SIGNS = 0x2600
"""From here on stand the pictures."""


_NOT_YET = frozenset([*DENYING, "havent", "hasnt", "hadnt", "not", "aint"])


def read_done(marks: Sequence[Mark]) -> tuple[bool, Mark | None, bool]:
    """Whether a part of the message is a bare `done` or thumb; with the exercise that it names, if any,
    and whether it says `all`."""
    part: list[Mark] = []
    for mark in [*marks, Mark(Kind.STOP, "", 0, 0)]:
        if mark.kind not in (Kind.STOP, Kind.LINE, Kind.BREAK, Kind.COMMA, Kind.QUERY) and not (
            _is_unsaid(mark) or _closes(part, mark)
        ):
            if not (mark.kind is Kind.NUM and part and part[-1].kind is Kind.SET):
                part.append(mark)
            continue
        kinds = {m.kind for m in part if m.kind is not Kind.DASH}
        if kinds & {Kind.DONE, Kind.FINISH} and kinds <= {
            Kind.DONE,
            Kind.FILL,
            Kind.NAME,
            Kind.SET,
            Kind.LABEL,
            Kind.ALL,
            Kind.LASTSET,
            Kind.FINISH,
            Kind.WAS,
            Kind.AND,
            Kind.WITH,
            Kind.FOR,
            Kind.SETS,
        }:
            names = [m for m in part if m.kind is Kind.NAME]
            if _is_of_other(part):
                part = []
                continue
            if Kind.FINISH in kinds and Kind.DONE not in kinds and not names:
                part = []
                continue
            if len(names) <= 1:
                return True, names[0] if names else None, Kind.ALL in kinds
        part = []
    return False, None, False
