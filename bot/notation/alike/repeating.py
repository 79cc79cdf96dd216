"""A whole message that repeats a set, in the words that the reader knows: `copy of the first` is `same as set one`.

`like`, `as` and `see` say so only where nothing else is told: `felt good, like the first one` repeats nothing. Common
usage, with what is said in a second language; from memory, no source.
"""

import re
from collections.abc import Sequence

from bot.notation.alike.frames import any_of, compiled, maybe, one_of, put, said_of, some
from bot.notation.clauses import EDGES
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_ORDINALS = {
    "first": "one",
    "1 st": "one",
    "second": "two",
    "2 nd": "two",
    "third": "three",
    "3 rd": "three",
    "fourth": "four",
    "4 th": "four",
    "fifth": "five",
    "5 th": "five",
}
_NUMBERS = {"1": "one", "2": "two", "3": "three", "4": "four", "5": "five"}

_THE = maybe("the; my; that; this; teh; our")
_SET = "set; one; go; round; effort; time; turn; bout; series; serie; lot"
_WHICH = one_of("; ".join(_ORDINALS))
_NUMBER = one_of("; ".join((*_NUMBERS, *_NUMBERS.values())))
_LAST = any_of(
    one_of("the; my; that; this") + one_of("last; previous; preceding; prior; earlier; former") + maybe(_SET),
    one_of("last; previous; preceding; prior") + maybe("set; one; go; round; effort"),
    any_of(one_of("the; my") + maybe(_SET), one_of("that; this") + one_of(_SET))
    + one_of(
        "before; above; earlier; prior; just gone; just now; just done; before it; before that; "
        "just before; i just did; i have just done; i just logged; beforehand; i did before; i "
        "did last; directly before"
    ),
    one_of("before; above; earlier; just now; a moment ago; a minute ago; beforehand; just before; previously"),
)
_NTH = any_of(
    _THE + "(?P<nth>" + _WHICH + ")" + maybe(_SET) + "(?!coach |mate |boss |sir )",
    _THE + "set " + maybe("number; no; nr") + "(?P<number>" + _NUMBER + ")",
)
_OF = any_of(_LAST, "(?P<that>" + one_of("that; it; this; that one; this one; that set") + ")", _NTH)

_EXACTLY = some(
    "exactly; precisely; just; completely; totally; absolutely; literally; really; simply; "
    "also; all; actually; basically; again; still; identically; perfectly; bang on; an; a; "
    "the; in; every way; quite; exact; perfect; straight; direct; complete; true; full; "
    "once; more; yet"
)
_WAS = some(
    "was; were; is; are; went; came; came out; been; has been; turned out; ended up; will "
    "be; being; it; it was; that was; this was; they were; thats; its; did; done; go"
)
_STRONG = one_of(
    "same as; same like; same than; same with; same to; the same as; equal to; equal than; "
    "equal as; equal with; equal like; equals; equalled; equaled; equalling; identical to; "
    "identical as; identical with; identical than; copy of; repeat of; replica of; clone "
    "of; duplicate of; carbon copy of; mirror image of; repetition of; rerun of; re run of; "
    "replay of; twin of; double of; copy paste of; ditto of; ditto as; ditto to; echo of; "
    "no different from; no different to; no different than; not different from; nothing "
    "different from; nothing changed from; nothing changed since; unchanged from; unchanged "
    "since; no change from; no change to; no change since; no changes from; no changes "
    "since; no difference from; no difference to; no difference with; without change from; "
    "no deviation from; matches; matched; matching; a match for; match for; repeated; "
    "repeating; replicated; replicating; replicates; duplicated; duplicating; copied; "
    "mirrored; mirrors; cloned; redid; reran; repeat; copy; copying; replicate; on par "
    "with; level with; same load and reps as; same weight and reps as; same reps and weight "
    "as; same numbers as; the same numbers as; same result as; same thing as; same again "
    "as; same story as; a rerun of; did again"
)
_WEAK = one_of(
    "like; as; as in; as on; as per; as with; see; cf; vide; refer to; look at; like in; "
    "like on; =; :; -; like for; just like; alike"
)
_DID = (
    one_of(
        "did; i did; do; repeat; repeated; done; i have done; i made; made; got; i got; "
        "managed; i managed; hit; lifted; i lifted; i repeated; matched; i matched"
    )
    + _EXACTLY
)
_WHAT = (
    _DID
    + one_of("what; as; like; the same as; the same; same as; same; the thing; that; as many as")
    + one_of("i did; i have done; i had; i got; i had done; i made; i managed; i lifted; i hit; was done; i ve done")
    + maybe("in; on; for; with; at")
)
_OPEN = some(
    "and; ok; okay; yep; yes; yeah; then; so; now; well; done; finished; i; i have; "
    "ive; next; update; it was; that was; this was; it; this one; this; that; the next one; "
    "next set; this set; this time; next one; then i; and then; ,; again i; i did; did"
)
_SUBJECT = any_of(
    _THE + "(?P<own_nth>" + _WHICH + ")" + maybe(_SET) + maybe(":; -"),
    _THE + one_of("set; sets; round") + maybe("number") + "(?P<own_number>" + _NUMBER + ")",
)
_TAIL = maybe(",") + some(
    "to the rep; rep for rep; to a tee; to a t; to the letter; number for number; to the "
    "kilo; pound for pound; kilo for kilo; exactly; precisely; again; coach; really; mate; "
    "boss; sir; today; now; it was; i made; i have made; in everything; in weight and reps; "
    "in load and reps; in reps and weight; in every way; then; as well; too; also; weight "
    "and reps; for this one; on this one; this time; basically nothing changed; nothing "
    "changed; no change; 💪; done; complete; for me"
)
_ONE = compiled(
    _OPEN
    + maybe(",")
    + any_of(_SUBJECT, "")
    + _WAS
    + _EXACTLY
    + any_of("(?P<strong>" + _STRONG + ")", "(?P<weak>" + _WEAK + _EXACTLY + ")", "(?P<did>" + _WHAT + ")")
    + _OF
    + _TAIL
    + r"(?=[.,;!@¶]|rpe|$)"
)

_SAME = "same; the same; equal; the equal; identical; the identical; equals; like that; alike; just alike"
_AGAIN = one_of(
    "again; once more; one more time; once again; over again; over; another time; a second "
    "time; anew; one time more; a further time; yet again"
)
_SAME_SET = any_of(
    one_of("the; that; this; my; a; an; another; one more; yet one; yet another")
    + one_of("same; equal; identical; last; previous; very same; exact same; matching; duplicate; exact")
    + maybe(_SET + "; thing; set exactly; number; numbers"),
    one_of("that; the; this") + one_of("set; one; lot; thing"),
    one_of("that last; the very last; this last") + one_of("set; one"),
)
_TWICE_SET = compiled(
    _OPEN
    + maybe("did; repeated; i did; done; made; i made; repeat; redid; i repeated; went for")
    + any_of(
        _SAME_SET + _EXACTLY + _AGAIN,
        _AGAIN + _EXACTLY + any_of(_SAME_SET, one_of(_SAME)),
        any_of(_LAST, _NTH) + _EXACTLY + _AGAIN,
        one_of("another; one more; yet one; a further; one further; an additional; a second; one additional")
        + some("set; one; which was; that was; exactly; just; precisely; ,; was")
        + one_of(
            "equal; identical; matching; of equal; of identical; equal to it; identical to it; "
            "alike; as equal; exact same; like this one; like this; like the one before; as before"
        )
        + maybe("set; one; round"),
    )
    + _TAIL
    + r"(?=[.,;!@¶]|rpe|$)"
)

_COUNT = "(?P<count>" + one_of("two; 2; three; 3; a couple; a couple of; a pair; a pair of; both") + ")"
_MORE = one_of("more; further; extra; additional; other; others; remaining; last; next; following; left; yet")
_SETS = one_of("sets; ones; series; rounds; set; goes; times; repeats; lots; of them; of those; of these; efforts")
_SEVERAL = any_of(
    some(
        "and; then; another; yet; also; the; my; a; further; i did; did; i have done; i made; "
        "made; have; done; other; others; last; remaining; next; of; in; for; on; both; all"
    )
    + _COUNT
    + some("of; the; my; such; them")
    + _MORE
    + "*"
    + _SETS
    + "?"
    + _MORE
    + "*",
    one_of("sets; set; series; rounds")
    + "(?P<from>"
    + _NUMBER
    + ")"
    + one_of("and; &; +; n; to; -; ,")
    + maybe("set; sets")
    + "(?P<to>"
    + _NUMBER
    + ")",
)
_ALIKE = any_of(
    one_of(
        "equal; identical; the same; all the same; same; all same; alike; matching; exactly "
        "alike; the equal; all equal; all identical; no change; no changes; unchanged; nothing "
        "changed; carbon copies; copies; exact copies; duplicates; clones; ditto; just the "
        "same; exactly the same; exactly equal; exactly identical"
    ),
    _EXACTLY
    + any_of(
        _STRONG,
        _WEAK,
        one_of(
            "like; of; as; the same as; copies of; repeats of; replicas of; clones of; repeats; copies; duplicates of"
        ),
    )
    + _EXACTLY
    + _OF.replace("?P<", "?P<b_"),
)
_MANY = compiled(
    _OPEN
    + any_of(
        _SEVERAL
        + some(
            ",; :; -; exactly; just; were; was; are; is; came; went; done; i have made; i made; "
            "all; which were; that were; both"
        )
        + _ALIKE
        + maybe("sets; ones; series; set; rounds"),
        _SEVERAL.replace("?P<", "?P<a_")
        + some("such; exactly; completely; totally; absolutely")
        + one_of("equal; identical; same; matching")
        + one_of("sets; ones; series; rounds")
        + some("exactly; more; further; again"),
    )
    + _TAIL
    + r"(?=[.,;!@¶]|rpe|$)"
)
_AND_TWICE = compiled(
    _OPEN
    + maybe(
        "did; i did; repeated; i repeated; copied; i copied; replicated; duplicated; done; "
        "made; i made; redid; matched; ran; i have done; i have repeated; mirrored; cloned; "
        "went for"
    )
    + any_of(_SAME_SET, _OF.replace("?P<", "?P<c_"), one_of("the same; same; the same thing; same thing; it all"))
    + some("exactly; for; over; another; again; ,")
    + one_of(
        "twice more; twice again; twice over again; two more times; 2 more times; two times "
        "more; 2 times more; two further times; another two times; another 2 times; a further "
        "two times; a further twice; two extra times; a couple more times; a couple of times "
        "more; a couple of times again; twice"
    )
    + _TAIL
    + r"(?=[.,;!@¶]|rpe|$)"
)

_DENIED = compiled(
    _OPEN
    + one_of("not; isnt; wasnt; was not; is not; nothing; nowhere near; far from; hardly; never; not quite; no longer")
    + _EXACTLY
    + one_of("same; equal; identical; like; a copy; a repeat")
    + maybe("as; to; like; of; than; with")
    + _OF
)


def with_repeats(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with a set that is repeated told plainly; as they are where it is not all that they tell."""
    if any(m.kind is Kind.QUERY for m in marks) or len(marks) > _MOST:
        return list(marks)
    text = said_of(marks)
    denied = _DENIED.match(text.text)
    if denied is not None and denied.end() in text.starts:
        return [*put(marks[: text.place(denied.end())], "different"), *marks[text.place(denied.end()) :]]
    for frame, plainly in ((_MANY, _many), (_AND_TWICE, _twice), (_TWICE_SET, _again), (_ONE, _one)):
        found = frame.match(text.text)
        if found is None or found.end() not in text.starts:
            continue
        end = text.place(found.end())
        behind = marks[end:]
        if any(m.kind is Kind.NUM for m in behind) and not (behind[0].text in ("@", "rpe", ",") and _rates(behind)):
            continue
        plain = plainly(found)
        vague = bool(found.groupdict().get("weak"))
        alone = marks[0].start < _FIRST and all(m.kind in EDGES for m in behind)
        understood = alone and found.groupdict().get("that") and (found["strong"] or "").strip() == "copy"
        once = vague and found["nth"] is not None and f"{found['nth']}time " in found.group(0)
        if plain is None or understood or once or (vague and (found["that"] or not alone)):
            continue
        return [*put(marks[:end], plain), *behind]
    return list(marks)


_FIRST = 4
"""Letters of blanks that may stand before it: of `felt good, like the first one` the rest was put as blanks."""
_MOST = 24
"""Words of a message that does nothing but repeat."""


def _rates(behind: Sequence[Mark]) -> bool:
    """Whether what stands behind is an effort: `@8`, `, rpe 8`."""
    said = [m.text for m in behind if m.text != ","]
    return said[:1] in (["@"], ["rpe"], ["rir"]) and sum(m.kind is Kind.NUM for m in behind) == 1


def _which(found: re.Match[str], lead: str = "") -> str:
    """The set that is repeated: `set one`, `the last set`."""
    said = found.groupdict()
    nth, number = said.get(f"{lead}nth"), said.get(f"{lead}number")
    if nth is not None:
        return f"set {_ORDINALS[nth.strip()]}"
    if number is not None:
        return f"set {_NUMBERS.get(number.strip(), number.strip())}"
    return "the last set"


def _one(found: re.Match[str]) -> str | None:
    """`set 3 = set 2` as `set three same as set two`."""
    own, number = found.group("own_nth"), found.group("own_number")
    sign = (found.group("weak") or "").split()[:1]
    if sign in (["="], [":"], ["-"]) and own is None and number is None:
        return None
    if own is not None:
        return f"set {_ORDINALS[own.strip()]} same as {_which(found)}"
    if number is not None:
        return f"set {_NUMBERS.get(number.strip(), number.strip())} same as {_which(found)}"
    return f"same as {_which(found)}"


def _again(found: re.Match[str]) -> str:
    """`that last set again` as `same again`, `set one again` as what it repeats."""
    return "same again" if found["nth"] is None and found["number"] is None else f"same as {_which(found)}"


def _twice(_found: re.Match[str]) -> str:
    """`copied that two more times` as `the same twice`."""
    return "two more the same"


def _many(found: re.Match[str]) -> str | None:
    """`two further sets exactly as the first` as `two more the same`."""
    said = found.groupdict()
    first, last = said.get("from") or said.get("a_from"), said.get("to") or said.get("a_to")
    if first is not None and last is not None:
        start, end = (_NUMBERS.get(one.strip(), one.strip()) for one in (first, last))
        return f"sets {start} and {end} same as {_which(found, 'b_')}"
    count = (said.get("count") or said.get("a_count") or "two").strip()
    return f"{'three' if count in ('three', '3') else 'two'} more the same"
