"""The day of a late report told in a clause of its own, put as that day before its sets or behind them.

`late entry for yesterday, rows 50x11` is `yesterday: rows 50x11`, `rows 50x11, belongs to yesterday` is
`rows 50x11, yesterday`; a weekday of the week before is `monday last week`. Where the message tells of today as well,
it stays as it is. From memory, no source.
"""

import re
from collections.abc import Sequence

from bot.notation.alike.frames import Said, any_of, compiled, maybe, one_of, put, said_of, some
from bot.notation.clauses import EDGES, kind_at
from bot.notation.days.weekdays import WEEKDAYS, YESTERDAY
from bot.notation.kinds import Kind
from bot.notation.spoken import NUMBER_WORDS
from bot.notation.tokens import Mark

_WEEKDAY = "(?P<weekday>" + one_of("; ".join(sorted(WEEKDAYS))) + ")"
_BEFORE = one_of(
    "last week; a week ago; a week back; of last week; from last week; the week before; one "
    "week ago; one week back; of the week before; from the week before; the previous week; "
    "of the previous week; week before; a week before; 1 week ago; in the last week; in "
    "last week"
)
_PART = maybe("arvo; morning; afternoon; evening; night; lunchtime; noon; pm; am; lunch; early; late")
_DAY = (
    any_of(
        "(?P<week>"
        + any_of(
            maybe("on; last; this") + _WEEKDAY + _BEFORE,
            one_of("last week; the last week") + maybe("on; the; at") + _WEEKDAY.replace("?P<weekday>", "?P<weekday2>"),
        )
        + ")",
        "(?P<day>"
        + any_of(
            one_of("; ".join(sorted(YESTERDAY))),
            one_of("the day before yesterday; last night"),
            maybe("on; last; this past; past; this") + one_of("; ".join(d for d in sorted(WEEKDAYS) if len(d) > 3)),
        )
        + ")",
    )
    + _PART
)
_OF_DAY = maybe(
    "session; sessions; workout; training; log; sesh; entry; report; sets; numbers; gym; "
    "results; set; lifting; gym session; training session; account; page; programme; plan"
)
_LEAD = some(
    "a; an; the; my; another; late; belated; delayed; missing; missed; forgotten; overdue; "
    "quick; one; heres; here is; here are; this is; these are; this; these; thats; that is; "
    "just; sorry; still; only; and; now; it is; its; here; all; some; please; can you; "
    "coach; add; put; file; book; note; log; enter; to; tiny; small; hi; hello; hey; ,; "
    "should; must; it; those; that; was; last; late late; ok; so; also; i owe you; owe you; "
    "owed; finally; with delay; got; i have; unsent; unlogged"
)
_NOUN = one_of(
    "entry; log; report; update; set; sets; numbers; session; workout; results; result; "
    "stuff; catch up; catching up; catchup; belongs; belonging; belong; data; note; notes; "
    "record; line; post; logging; reporting; writing up; filling in; backfilling; backfill; "
    "adding; score; details; goes; go; counts; count; training; message; bit; one; ones; "
    "reporting in; leftovers; leftover; report back; is; are; it; this; these; those; "
    "playing catch up; retro log; backlog; addition; addendum; supplement; omission; "
    "postscript; correction; entries; logs; reports; lines; under; down; filed; it down; "
    "belated"
)
_PREP = one_of(
    "for; from; of; to; about; on; under; into; dated; in; with; against; for the; from "
    "the; to the; from my; for my; to my; on the; of the"
)
_PLACE = r"(?:(?:in|at|on|outside|near|over|down) (?:(?!my|with|so|but)[a-z]+ ){0,3}?)?"
_FOLLOWS = (
    r"(?!say |says |said |left |helped |was |were |is |made |had |i |my |still |and )"
    r"(?=[:,;.>→¶(-]|(?:[a-z]+ ){1,3}\d|\d)"
)
_WHAT = r"(?P<what>(?:[a-z]+ ){1,3}?" + one_of("set; sets; numbers; results") + ")"
_END_OF_HEAD = r"(?P<sep>(?:[:,.;¶()>→-] |-> |> )*)"
_GADGET = maybe("my; the; our") + one_of(
    "phone; battery; phone battery; signal; wifi; internet; app; mobile; charger; watch; "
    "network; reception; data; tablet; cell; the phone; phones; phone screen; handy"
)
_ANY = r"(?:[a-z]+ )"
_HEADS = tuple(
    compiled(frame + _END_OF_HEAD)
    for frame in (
        _LEAD + _NOUN + _PREP + _DAY + _OF_DAY + _FOLLOWS,
        _WHAT + one_of("from; for; of") + _DAY + _OF_DAY + r"(?=[,:-])",
        some("sorry; coach; ,; hi; hey; and; this is; these are")
        + one_of("for; from; re; about; regarding; dated; concerning")
        + _DAY
        + _OF_DAY,
        _GADGET
        + _ANY
        + "{1,4}?"
        + _DAY
        + maybe(",")
        + one_of("so; when; and; while; as; hence; therefore; ,")
        + some(
            "heres; here is; here are; that; the; this; my; is; i did; i; it; comes; done; did; "
            "only; we; only now; late; sending; logging; now; are; were; these; those; the log; my "
            "log; i log it now; i send it now"
        ),
        _DAY
        + maybe(",")
        + one_of("so; when; and so; hence; therefore")
        + one_of(
            "heres; here is; here are; i did; i had done; i was doing; heres the; heres that; heres "
            "my; here is my; here is the; here is that; only now; sending now; logging now; this is "
            "it; here it is; here they are; i made; i have done"
        ),
        some("sorry; coach; ,; hi; hey; and; oh; i; ive; i have; we; still; also; completely; totally; just")
        + one_of(
            "never; forgot to; forgotten to; didnt; havent; did not; have not; meant to; was going "
            "to; should have; failed to; clean forgot to; completely forgot to; forgot; had no time "
            "to; had no chance to; couldnt; hadnt"
        )
        + one_of(
            "tell; told; send; sent; log; logged; report; reported; write; wrote; enter; entered; "
            "mention; mentioned; post; posted; note; noted; write up; type; typed; type up; submit; "
            "submitted; say; said; share; shared; record; recorded; send in; write down; put in; "
            "add; added"
        )
        + some(
            "you; in; about; of; the; my; up; down; to you; it; this; on; yet; anything; anything "
            "about; these; what i did; for; from; that; a thing about; everything; all"
        )
        + _DAY
        + _OF_DAY,
        some("i; we; was; all; have; had; it; this; were; these; that; sets; ,; all this; just")
        + one_of(
            "done; did; trained; lifted; performed; worked out; did it; did this; did these; did "
            "them; done it; made; was in; was at the gym; went; came; trained at home; squeezed in; "
            "managed; got in; was training; exercised; session was"
        )
        + _PLACE
        + _DAY
        + maybe(",")
        + one_of(
            "typed; logged; written; sent; entered; reported; posted; noted; typing; logging; "
            "sending; writing; but typed; but logged; but only logged; only logged; only sent; only "
            "typed; writing it; reporting; but sent; but only sent"
        )
        + some(
            "only; today; now; just; late; up; down; it; this; here; tonight; just now; in; the; morning; this morning"
        ),
        some("i; we")
        + one_of(
            "trained; lifted; worked out; exercised; was training; did a session; did my session; "
            "got a session in; did some training; snuck a session in; squeezed a session in"
        )
        + _PLACE
        + _DAY
        + r"(?=[:,;¶-])(?!, so |, but |, and )",
    )
)
_WEEK_BEFORE = compiled(
    _DAY + maybe(",") + "(?P<done>" + maybe("i have done; i did; i have made; i made; i had; i had done; we did") + ")"
)
_TAILS = (
    compiled(
        some(
            "that; this; it; these; those; which; thats; its; all; all of it; all of this; sorry; "
            "and; is; was; are; were; should be; must be; a; late; coach; the; my; please; all that"
        )
        + one_of(
            "from; for; belongs to; belong to; belonging to; belongs in; goes to; goes under; goes "
            "into; go to; counts for; count for; date; dated; done; entry for; log for; report for; "
            "late entry for; late log for; late report for; of; to log for; to log under; to go "
            "under; under; put it under; put them under; put this under; put that under; log it "
            "under; file under; file it under; for the log of; performed; was from; is from; was "
            "for; is for; to be logged for; to be logged under; day; the day was; the date was; "
            "happened; took place; stems from; date is; logged for; meant for; for your log; "
            "catching up on"
        )
        + maybe(":; -; =; the; my; was; is")
        + _DAY
        + _OF_DAY
        + r"(?P<tail>(?:[.!)] |[^\w ]+ |coach |sorry |thanks |late )*)$"
    ),
)
_SAYING = compiled(
    one_of(
        "better late than never; late but here; late as ever; late again; better late then "
        "never; late to the party; better late"
    )
    + r"(?:[:,.;!…-] )+"
)
_TODAY = re.compile(
    r"(?<!typed )(?<!logged )(?<!sent )(?<!written )(?<!entered )(?<!logging )(?<!typing )(?<!now )"
    r"\b(?:today|tonight|tomorrow|next|will|gonna|than|vs|versus)\b"
)


def with_days(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with such a clause said plainly."""
    if not any(m.text in _NAMING for m in marks) or not any(_counts(m) for m in marks):
        return list(marks)
    said = said_of(marks)
    saying = _SAYING.match(said.text)
    if saying is not None and saying.end() in said.starts:
        return with_days(marks[said.place(saying.end()) :])
    if any(m.kind is Kind.QUERY for m in marks) or _TODAY.search(said.text) is not None:
        return list(marks)
    return _headed(marks, said) or _closed(marks, said) or _of_week_before(marks, said) or list(marks)


_NAMING = frozenset((*WEEKDAYS, *YESTERDAY, "night"))


def _counts(mark: Mark) -> bool:
    return mark.kind is Kind.NUM or mark.text in NUMBER_WORDS


def _headed(marks: Sequence[Mark], said: Said) -> list[Mark] | None:
    """`late entry for yesterday, ...` as `yesterday: ...`."""
    for frame in _HEADS:
        found = frame.match(said.text)
        if found is None or found.end() not in said.starts:
            continue
        end = said.place(found.end())
        day = _day(marks, said, found)
        if day and any(_counts(m) for m in marks[end:]):
            what = found.groupdict().get("what")
            told = [] if not what else list(marks[: said.place(found.end("what"))])
            return (
                [*day, _sign(marks[end - 1], Kind.COLON, ":"), *told, *marks[end:]]
                if told
                else [*day, _sign(marks[end - 1], Kind.COLON, ":"), *marks[end:]]
            )
    return None


def _closed(marks: Sequence[Mark], said: Said) -> list[Mark] | None:
    """`..., that belongs to yesterday` as `..., yesterday`."""
    for place in range(1, len(marks)):
        if kind_at(marks, place - 1) not in (*EDGES, Kind.DASH):
            continue
        for frame in _TAILS:
            found = frame.match(said.text, said.letter(place))
            day = [] if found is None else _day(marks, said, found)
            if day and any(_counts(m) for m in marks[:place]):
                return [*marks[: place - 1], _sign(marks[place - 1], Kind.COMMA, ","), *day]
    return None


def _of_week_before(marks: Sequence[Mark], said: Said) -> list[Mark] | None:
    """`last week monday i have done ...` as `monday last week: ...`."""
    for place in range(len(marks)):
        found = _WEEK_BEFORE.match(said.text, said.letter(place))
        if found is None or found["week"] is None or found.end() not in said.starts:
            continue
        end = said.place(found.end())
        day = _day(marks, said, found)
        opens = place == 0 and kind_at(marks, end) is not Kind.COLON
        return [*marks[:place], *day, *([_sign(marks[end - 1], Kind.COLON, ":")] if opens else []), *marks[end:]]
    return None


def _day(marks: Sequence[Mark], said: Said, found: re.Match[str]) -> list[Mark]:
    """The day that a clause names, as its own marks, or as `monday last week`."""
    start, end = found.span("week" if found["week"] is not None else "day")
    if start not in said.starts or end not in said.starts:
        return []
    own = list(marks[said.place(start) : said.place(end)])
    if found["week"] is None:
        return [m for m in own if m.text != "on"]
    weekday = found["weekday"] or found["weekday2"]
    return put(own, f"{weekday.strip()} last week")


def _sign(mark: Mark, kind: Kind, text: str) -> Mark:
    """A sign behind a mark."""
    return Mark(kind, text, max(mark.start, mark.end - 1), mark.end)
