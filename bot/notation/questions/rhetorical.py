"""Questions that want no answer: `what was i thinking`, `who invented these`, `is it friday yet`."""

from collections.abc import Sequence

from bot.notation.kinds import Kind
from bot.notation.questions.answered import answered
from bot.notation.questions.asked import ENDS
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_FORMS = """
you know what; ya know what; know what $; guess what;
what was i thinking/expecting; what was i doing $; what have i done/become/started $; what have i done to deserve;
what did i do to deserve; what can/could/else i/can say/i $; what can i say; what more could/can i/you say/want/ask;
what is/was the point of living/life/anything; whats the point of living/life; what could go wrong;
what could possibly go; what else is new; what are the odds/chances; whats not to love/like; what year is; what planet;
why do i do this/that/these/it; why do i bother; why did i agree/ever/sign; why am i like/doing this $;
why do you hate me/us; why do you do this/that; why must you; why me $; why oh why; why would anyone; why is life;
who needs/knew/cares/hurt/invented/designed/created/decided; who came up; who am i kidding; who would have/of thought;
who doesnt love; who in their; can/could/would you believe/imagine; can you hear that; would you look at;
how good/hard/tough/brutal/fun/grim/lovely/nice/mad/crazy is/was/are/were that/those/this/these $;
how about that $; where did that come; what am i even doing/thinking; what am i doing here;
 how many times $; how many times have/do/must;
no idea how i did/managed/got/survived; no clue how i did/managed/got;
how light/easy/smooth/quick/fast/heavy/slow/awful/ugly/boring/long is/was/are/were that/those/this/these $;
how is it only/already; how is it not; how am i still/not alive/dead/here/standing; how are these so; how dare;
how hard can; how did i ever; am i a joke; am i the problem/joke; am i dying/dead/right $; am i getting old;
are you trying to kill/murder/end/break; are you kidding/serious/mad/insane/proud $; are you having a laugh;
are we having fun; are we there; you trying to kill/murder/end/break; do you even lift; do you hate me/us;
do you want me dead; do i look like; do i get a medal/prize/badge/sticker/cookie/biscuit; do i win;
did somebody/someone say; does anyone actually/like/enjoy; is it friday/saturday/sunday/bedtime/lunch/lunchtime;
is it christmas/summer/over/hometime yet; is it the weekend; is this what dying/death/heaven/hell; is this how i die;
is this the real; is it just me; isnt it great/lovely/funny; does/do/did my head/nut/box/nerves; does me in;
why do i even; is it me or; do people not/even; who took/stole/turned;
do/does love/like/miss/hate; where has the time; where does the time; where did the time
"""
"""Openings that want no answer: a blank parts words, a stroke words of which one stands, `$` ends the clause.

Gathered by us.
"""


def _forms() -> dict[str, list[tuple[frozenset[str], ...]]]:
    out: dict[str, list[tuple[frozenset[str], ...]]] = {}
    for form in _FORMS.replace("/\n", "/").split(";"):
        parts = tuple(frozenset(part.split("/")) for part in form.split())
        for first in parts[0]:
            out.setdefault(first, []).append(parts[1:])
    return out


_BY_FIRST = _forms()
_FAR = 8
"""Marks that a form is looked for in."""
_LAUGHS = frozenset(words("lol haha hahaha lmao rofl")) | {"😂", "🤣", "😅", "😭", "💀"}
_LAUGHED_AT = frozenset(words("why who"))


def idle_questions(marks: Sequence[Mark]) -> frozenset[int]:
    """The places of the clauses that ask and want no answer, the question mark behind them with them."""
    out = answered(marks)
    for place, mark in enumerate(marks):
        first = mark.text.split(" ", 1)[0]
        if place in out or not (first in _BY_FIRST or first in _LAUGHED_AT):
            continue
        if first not in _LAUGHED_AT and not _is_form(marks, place):
            continue
        end = place
        while end < len(marks) and marks[end].kind not in ENDS:
            end += 1
        if _is_form(marks, place) or _is_laughed(marks, place, end):
            out |= set(range(place, min(end + 1, len(marks))))
    return frozenset(out)


def _is_form(marks: Sequence[Mark], place: int) -> bool:
    end = place
    while end < len(marks) and marks[end].kind not in (*ENDS, Kind.COMMA, Kind.NUM) and end - place < _FAR:
        end += 1
    said = [w for m in marks[place:end] if m.text not in _LAUGHS for w in m.text.split()]
    rest = [*said[1:], "$"]
    return any(
        len(rest) >= len(form) and all(word in part for word, part in zip(rest, form, strict=False))
        for form in _BY_FIRST.get(said[0], ())
    )


def _is_laughed(marks: Sequence[Mark], place: int, end: int) -> bool:
    """`why are dips so hard lol`: laughter, and no question mark."""
    asks = end < len(marks) and marks[end].text == "?"
    return not asks and any(m.text in _LAUGHS for m in marks[place:end])
