"""Reads a client's message as a coach who knows the plan would; what is doubtful is asked about, never stored.

The way of a message: what says nothing at its ends taken off (`little_words`), the commas that it lacks
(`unpunctuated`, `separators`), sentences that cannot stand by themselves joined (`sentences`), a hurt parted from a
report (`hurt_apart`); plain letters (`script`), marks (`tokens`) without greetings and thanks (`courtesies`), words
that say the same put as one (`alike`), kinds (`tagging`, with `names`, `spoken`, `spelling`), what whole clauses tell
of sets put in plain words (`in_plain_words`, with `worded`);
then what is not a set is taken out (`beside_sets` with `days`, `minutes`, `questions`; `left_out` with `skips`,
`other_times`; `talk`); what is left is put plainly (`keeping`) and cut into pieces (`pieces`), which change what was
said (`corrections`) or report. A report is cut by exercise (`segments`), shaped (`shaping`), parsed (`grammar`,
`atoms`); its readings (`roles`) are bound to a plan (`binding`, `reason`), ranked (`ranking`); a clear one is kept,
else asked about (`taking`, `choosing`, `alternatives`). `message` goes this way; `draft` holds what it has made so far;
`grounds` and `evidence` say which words gave which value.
"""

from dataclasses import replace

from bot.notation.answer import Ask, AskKind, Choice, Evidence, Meaning, Reading, Request, Source
from bot.notation.little_words import without_little_words
from bot.notation.message import Reader, prepared
from bot.notation.unmarked import Seams, with_seams_by_plan
from bot.notation.unpunctuated import punctuated

__all__ = ["Ask", "AskKind", "Choice", "Evidence", "Meaning", "Reading", "Request", "Source", "read_message"]

LONGEST = 4096
"""Characters that are read: the chat's longest message."""


def read_message(request: Request) -> Reading:
    """What the message says. Never raises; the same request always gives the same reading."""
    said = punctuated(without_little_words(request.text[:LONGEST], request.exercises))
    return said.as_typed(_read(request if said.text == request.text else replace(request, text=said.text)))


def _read(request: Request) -> Reading:
    """What a message says that has its marks."""
    start = prepared(request)
    first = Reader(request, start).read()

    def read(seams: Seams) -> Reading:
        return Reader(request, start, seams=seams).read(offers=False)

    return with_seams_by_plan(request, first, start.kinds.marks, read)
