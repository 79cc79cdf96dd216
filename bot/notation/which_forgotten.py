"""A set put right, of which the client does not know which it was: `one of the rows was 7, can't remember which`."""

import re

from bot.notation.wordlist import words

_WORD = re.compile(r"[^\W\d_]+(?:['’][^\W\d_]+)?")
_KNOWING = frozenset(words("remember recall sure idea know clue tell certain"))
_NOT = frozenset(words("cant cannot couldnt dont didnt not no havent"))
_FORGOTTEN = frozenset(words("forget forgot forgotten unsure"))
_GOES_ON = frozenset(words("one set of"))
_NEAR = 5
"""Words before `which` among which stands that it is not known."""


def is_which_forgotten(text: str) -> bool:
    """Whether the text says that which one is not known; `not sure which plates to use` asks for something else."""
    said = [(m.group().lower().replace("'", "").replace("’", ""), m.span()) for m in _WORD.finditer(text)]
    for place, (word, at) in enumerate(said):
        before = {w for w, _ in said[max(0, place - _NEAR) : place]}
        unknown = bool(before & _FORGOTTEN) or bool(before & _KNOWING and before & _NOT)
        behind, to = said[place + 1] if place + 1 < len(said) else ("", (len(text), 0))
        ends = not behind or behind in _GOES_ON or any(c in ".,;!\n" for c in text[at[1] : to[0]])
        if word == "which" and unknown and ends:
            return True
    return False
