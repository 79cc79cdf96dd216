"""Reads a client's message as a coach who knows the plan would; what is doubtful is asked about, never stored.

The way of a message: plain letters (`script`), marks (`tokens`), kinds (`tagging`, with `names`, `spoken`, `spelling`);
then what is not a set is taken out (`pain`, `days`, `minutes`, `questions`, `clauses`, `skips`); what is left is cut
into pieces (`corrections`) and by exercise (`segments`), shaped (`shaping`), parsed (`grammar`, `atoms`), and each
reading is ranked beside the plan (`roles`, `costs`, `binding`, `ranking`). `message` goes this way.
"""

from bot.notation.answer import Ask, AskKind, Choice, Evidence, Meaning, Reading, Request, Source
from bot.notation.message import Reader

__all__ = ["Ask", "AskKind", "Choice", "Evidence", "Meaning", "Reading", "Request", "Source", "read_message"]


def read_message(request: Request) -> Reading:
    """What the message says. Never raises; the same request always gives the same reading."""
    return Reader(request).read()
