"""The time that there is, told by what ends it or in other words, put as `only got 20 minutes`.

`my lift's coming in 20 minutes`, `in 20 min i have to be at work`, `you have me for half an hour`. What begins in that
time (`starting in 20 min`), a rest or the way there has no place in these frames. From memory, no source.
"""

import re
from collections.abc import Sequence

from bot.notation.alike.frames import Said, any_of, clause_starts, compiled, maybe, one_of, put, said_of, some
from bot.notation.clauses import EDGES
from bot.notation.kinds import Kind
from bot.notation.spoken import NUMBER_WORDS
from bot.notation.tokens import Mark

_UNIT = one_of(
    "min; mins; minute; minutes; more minutes; more mins; more min; minutes more; mins "
    "more; min more; further minutes; further mins; spare minutes; spare mins; minits; "
    "minuets; mintues; minute more"
)
_NUMBER = r"(?:[1-9]\d?\d? |" + one_of("; ".join(sorted(NUMBER_WORDS))) + "{1,2})"
_HALF = one_of(
    "half an hour; half hour; a half hour; half a hour; a half an hour; 1 / 2 hour; 1 / 2 "
    "an hour; 1 / 2 h; half of an hour; 1 / 2 hr; 1 / 2 hours; ½ hour; half hours; an half "
    "hour; a half of hour; half an hr; half hr"
)
_AMOUNT = any_of(
    "(?P<half>" + _HALF + ")",
    "(?P<minutes>" + _NUMBER + _UNIT + ")",
    "(?P<hour>"
    + one_of(
        "an hour; one hour; 1 hour; 1 h; an hour and a half; a quarter of an hour; quarter of "
        "an hour; three quarters of an hour; a quarter hour"
    )
    + "(?!and ))",
)
_IN = (
    one_of("in; within; after; inside")
    + some(
        "about; around; roughly; like; just; only; exactly; maybe; the next; less than; under; "
        "approx; a bit over; precisely"
    )
    + _AMOUNT
)
_FOR = (
    maybe("for")
    + some(
        "about; around; roughly; like; maybe; just; only; another; max; a maximum of; at most; "
        "the next; exactly; no more than; not more than; a; up to; barely; a further; a good"
    )
    + _AMOUNT
)
_NOT_WHO = (
    r"(?!(?:session|training|workout|set|sets|i|im|ive|ill|we|rest|resting|back|be|home|starting|start|warmup|next|if|"
    r"when|did|done|was|then|she|he|planks?|is|what|how|can|could|should|do|does|will) )"
)
_WHO = r"(?:" + _NOT_WHO + r"[a-z]+ ){1,4}?"
_COMES = one_of(
    "picks me up; is picking me up; pick me up; picking me up; collects me; fetches me; is "
    "collecting me; is fetching me; collecting me; fetching me; wants me back; wants me; "
    "wants me home; needs me; needs me back; needs me home; expects me; expects me back; "
    "expects me home; is expecting me; need me; need me back; want me back; want me; is "
    "coming; coming; comes; are coming; come; is due; due; are due; is here; here; is up; "
    "up; are up; runs out; run out; running out; ends; expires; expire; end; closes; close; "
    "is closing; closing; are closing; shuts; shut; is shutting; shutting; are shutting; "
    "locks up; lock up; locks; is booked; booked; are booked; starts; begins; start; begin; "
    "is starting; starting; leaves; leave; is leaving; departs; goes; go; arrives; arrive; "
    "is arriving; arriving; kicks us out; kick us out; kicks me out; kick me out; throws us "
    "out; throw us out; throws me out; throw me out; chucks us out; chuck us out; chuck me "
    "out; is over; over; finishes; is ready; is waiting; waiting; needs picking up; need "
    "picking up; lands; lands at; will be here; will be up; will be over; will pick me up; "
    "will come; will close; will be closing; is gonna be here; wakes up; wake up; calls; is "
    "calling; kicks off; takes the rack; has the rack; rings; turns up; is outside; "
    "outside; collects; pick me; ends then; need the room; needs the room; needs the rack; "
    "want the rack; wants the rack; needs the car; wants the car; need the car; picks up; "
    "drives off; is gone; want to go"
)
_MUST = one_of(
    "have to; must; need to; gotta; got to; should; am due to; im due to; am expected to; "
    "am supposed to; ought to; have got to; ive got to; will have to; has to; hafta; "
    "better; am going to have to; am to; need"
)
_AWAY = one_of(
    "be; leave; go; get; pick; catch; run; collect; fetch; drive; head; return; dash; stop; "
    "finish; shower; meet; vacate; clear; bring; take; hand; be gone; be out; be back; be "
    "away; be done; be off; wrap up; pack; pack up; get going; quit; end; disappear; "
    "vanish; bounce; shoot; shoot off; scoot; depart; hop; jump in; walk; be at; be in; "
    "start work; clock; dial; give back; give up"
)
_TO = r"(?:[a-z]+ ){0,7}?"
_ENDS = (
    r"(?=$|[,.;!¶()—-] |[^\w ?]+ |(?:and|so|but|because|cos|coz|thats|that|then|which|sorry|coach|due|as|since|before|"
    r"til|till|until|today|now|tonight|for|to) )"
)
_TAIL = some(
    "here; today; now; from now; tonight; max; tops; at most; or so; sharp; from here; at "
    "the most; ish; from now on; sadly; coach; boss; maximum; for me; for this; for today; "
    "for training; for the rest; exactly; only; anyway; and not more; flat; for now; sorry; "
    "left; for gym; for everything; to me; in total; on the clock; at latest; latest; at "
    "the latest; again"
)
_LIMIT = maybe("and; so; , so; , and; ,; so then") + maybe(
    "thats my limit; thats my time; thats the limit; that is my limit; that is my time; "
    "thats it; thats all; thats all i have; thats all ive got; thats my window; thats all "
    "the time i have; thats what i have; thats what ive got; no more; not more; not longer; "
    "no longer; im off; i am off; im out; im gone; then im off; then im out; then im gone; "
    "then im away; then i go; i must go; then i must go; then i have to go; i have to go; i "
    "have to leave; then i have to leave; i leave; then i leave; ill be off; ill be gone; "
    "then ill be off; im outta here; then im done; im away; then home; home; then off; then "
    "out; gone; then gone; out; then off home; im leaving; then im leaving; im history; i "
    "need to go; then i need to go; i gotta go; then i gotta go; im off home; then im off "
    "home"
)
_OPEN = some(
    "ok; so; and; right then; well; coach; sorry; just; only; hey; hi; but; also; fyi; "
    "heads up; warning; note; the clocks ticking; clocks ticking; the clock is ticking; "
    "clock is ticking; ,; now; today; quick one; bad news; hurry; time is tight; times "
    "tight; in a rush; short on time; tight on time; pushed for time; be quick; -; tonight; "
    "listen; as; because; cos; afraid"
)
_AWAY = maybe("home; again; up; from here; at the gym; here; from the gym; back; out; off")
_WANTED = one_of(
    "wants me back; wants me; needs me; needs me back; expects me back; expects me; picks me up; needs me home; "
    "wants me home; collects me; fetches me"
)
"""With its subject left out: `wants me home in 20 minutes`."""
_THERE = maybe("home; at work; there; at my desk; in the office")
_SOON = _IN + _TAIL + _LIMIT + _ENDS
_FRAMES = (
    compiled(_OPEN + _WHO + _COMES + _AWAY + _SOON),
    compiled(_OPEN + _WANTED + _THERE + _SOON),
    compiled(
        _OPEN
        + one_of("i; ill; i will; we; im; ive")
        + one_of(
            "turn into; leave; go; vanish; disappear; am gone; am out; am off; gone; out; off; am "
            "away; away; have a; have my; have an; have the; got a; got my; am due at; due at; "
            "catch; head; be gone; be off; leaving; heading out; am leaving; need to; must"
        )
        + _TO
        + _IN
        + _TAIL
        + _LIMIT
        + _ENDS
    ),
    compiled(_OPEN + one_of("i; ive; im; we; i will; ill") + _MUST + _AWAY + _TO + _IN + _TAIL + _LIMIT + _ENDS),
    compiled(
        _OPEN
        + _IN
        + maybe(",")
        + one_of("i; we; im; ill; i will; ive")
        + any_of(
            _MUST + _AWAY,
            one_of(
                "turn into; leave; am gone; am out; am off; am away; gone; out; off; be gone; be off; "
                "be out; go; need to; must; have a; have my; have the; have another; got a; have an; "
                "got my; vanish; disappear; am due; due; am due at; due at; am expected; head; pick; "
                "collect; meet; catch; drive"
            ),
        )
        + _TO
        + _LIMIT
        + _ENDS
    ),
    compiled(
        _OPEN
        + _IN
        + maybe(",")
        + _WHO
        + one_of(
            "picks me up; collects me; fetches me; wants me back; needs me; expects me; is coming; "
            "coming; comes; is due; closes; close; shuts; ends; leaves; arrives; is here; here; is "
            "up; expires; runs out; starts; begins; goes; wants me; is over; over; needs me back; "
            "will be here; is booked; booked; kicks us out; kick us out"
        )
        + _TAIL
        + _LIMIT
        + _ENDS
    ),
    compiled(
        _OPEN
        + one_of(
            "you have me; youve got me; you got me; you have got me; u have me; you can have me; im "
            "yours; i am yours; im all yours; im free; i am free; im available; i am available; im "
            "here; i am here; im here only; i can stay; i can only stay; i could stay; i can train; "
            "i can only train; i could train; i can be here; i can give it; i can spare; i can only "
            "spare; i can spend; i can do; i can only do; i can lift; i may stay; im allowed; i am "
            "allowed; im allowed to stay; i stay; im staying; ill stay; i will stay; i train; my "
            "window is; my limit is; the limit is; my time is; time is; my budget is; my time "
            "budget is; time budget; time limit; hard limit; i dispose of; there remain; there "
            "remains; there are; there is; remaining time; time remaining; time left; i am left "
            "with; im left with; im down to; we have; weve got; it gives me; leaves me; leaves me "
            "with; that leaves me; that leaves me with; that gives me; my slot is; slot of; window "
            "of; a window of; remaining; remain; i am good for; im good for; im around for; i can "
            "hang; theres; theres only; there is only; therere; gives me; hard stop in; hard stop; hard out; "
            "curfew; deadline; cut off; cutoff; hard cutoff; a hard stop; finishing line; i get; i "
            "only get; i will get; i wont get more than; i only have; i do not have more than; i "
            "dont have more than; i have not more than; i have no more than; no time for more than; "
            "cant stay longer than; cannot stay longer than; i cant stay more than; cant do more "
            "than; i cant do more than; i cannot do more than; i cant stay longer than"
        )
        + maybe(":; -; =; only; is")
        + _FOR
        + _TAIL
        + _LIMIT
        + _ENDS
    ),
    compiled(
        _OPEN
        + maybe("a; another; about; around; roughly; max; only; just; maybe; say; barely; exactly; the")
        + _AMOUNT
        + one_of(
            "stays; stay; remains; remain; is left; are left; left; to go; is all; is "
            "all i have; is all ive got; is what i have; is what ive got; is my limit; is the "
            "limit; is my max; to spare; on the clock; on the meter; on the parking; and counting; "
            "left on the clock; left on the meter; left on the parking; till closing; until "
            "closing; to closing; till close; until close; tops; max; maximum; at most; at the "
            "most; and no more; and not more; no more; not more; from now; remaining; is available; "
            "are available; is possible; are possible; thats all; before they close; till they "
            "close; until they close; before closing; free; available; spare; is it; more; more "
            "max; more tops; more at most; still; yet"
        )
        + some(
            "for me; to me; today; now; from here; from now; here; tonight; then; for training; for "
            "this; for everything; for today; to train; for the gym; coach; max; tops"
        )
        + _LIMIT
        + _ENDS
    ),
    compiled(
        _OPEN
        + one_of(
            "no longer than; not longer than; no more than; not more than; at most; at the most; "
            "maximum; max; maximal; maximally; a maximum of; a max of; up to; barely; hardly more "
            "than; less than; a bit less than; under; just under; not even; only; tops; only about; "
            "only around; just; just about; only another; another; only more; still; yet; still "
            "only"
        )
        + _AMOUNT
        + some(
            "now; today; left; for me; tonight; from now; from here; to go; here; for this; for "
            "training; for today; more; coach; remaining; then; to train; for the session; "
            "available; for the gym; for the workout; on the clock; max; tops"
        )
        + _LIMIT
        + _ENDS
    ),
    compiled(
        _OPEN
        + _AMOUNT
        + maybe("more; max; tops")
        + maybe(",")
        + one_of("and; then; and then; , then; before; till; until")
        + one_of(
            "im off; im out; im gone; im away; im done; i am off; i am out; i am gone; i am away; i "
            "am done; ill be off; ill be gone; ill be out; im leaving; i leave; i go; im outta "
            "here; im out of here; off home; off; home; gone; i have to go; i have to leave; i must "
            "go; i must leave; i need to go; i need to leave; i gotta go; gotta go; gotta run; "
            "gotta dash; must dash; must run; must go; i vanish; i disappear; im history; i bounce; "
            "i head off; im heading off; i turn into a pumpkin; my lift comes; my lift leaves; they "
            "close; it closes; the gym closes; closing; they shut; it shuts; im toast; ill have to "
            "go; ill have to leave; ill be leaving"
        )
        + some("home; now; coach; then; today; to work; for work; back; again; here; for good")
        + _ENDS
    ),
)


def with_time_left(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with such a clause said plainly."""
    if not any(m.text in _UNITS for m in marks) or len(marks) > _MOST:
        return list(marks)
    said = said_of(marks)
    for place in clause_starts(marks):
        for frame in _FRAMES:
            found = frame.match(said.text, said.letter(place))
            if found is None or found.end() not in said.starts:
                continue
            amount, end = _amount(marks, said, found), said.place(found.end())
            if not amount or [m.text for m in marks[place + len(amount) : end]] == ["left"]:
                continue  # `20 min left` is plain
            before, behind = marks[:place], _without_sorry(marks[end:])
            apart = bool(before) and before[-1].kind not in EDGES
            close = Mark(Kind.COMMA, ",", marks[end - 1].end, marks[end - 1].end)
            opening = put(marks[place : place + 1], ", only got" if apart else "only got")
            return [*before, *opening, *amount, *([close] if behind and behind[0].kind not in EDGES else []), *behind]
    return list(marks)


def _without_sorry(behind: Sequence[Mark]) -> Sequence[Mark]:
    """What follows a time, without the `sorry` that ends its clause: it takes nothing back."""
    ends = len(behind) == 1 or (len(behind) > 1 and behind[1].kind in (*EDGES, Kind.DASH))
    return behind[1:] if ends and behind[0].text == "sorry" else behind


_UNITS = frozenset(("min", "mins", "minute", "minutes", "hour", "hours", "hr", "h", "minits", "minuets", "mintues"))
_MOST = 60
"""Words of a message that is looked through."""


def _amount(marks: Sequence[Mark], said: Said, found: re.Match[str]) -> list[Mark]:
    """The words of the time itself; `1/2 hour` as `half an hour`, and without the `more` of `15 more minutes`."""
    name = next(n for n in ("half", "minutes", "hour") if found[n] is not None)
    start, end = found.span(name)
    if start not in said.starts or end not in said.starts:
        return []
    own = marks[said.place(start) : said.place(end)]
    if name == "half":
        return put(own, "half an hour")
    return [m for m in own if m.text not in ("more", "further", "spare")]
