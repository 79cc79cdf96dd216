"""What the words of a piece or of its atoms tell: a report, a header, a substitute, an effort that leads."""

from collections.abc import Sequence

from bot.notation.atoms import Amount, Atom, Effort, Join, Sign
from bot.notation.bounds import SEVERAL
from bot.notation.kinds import Kind
from bot.notation.segments.edges import NUMBERS
from bot.notation.tokens import Mark


def is_unknown(name: Mark, *, swapped: bool, reports: bool, alone: bool) -> bool:
    """Whether sets are told of an exercise that the session lacks, or of one in place of another.

    `swapped`: its piece tells of a substitute; `alone`: the name is all of its piece.
    """
    return (not name.names and (reports or swapped)) or (swapped and (reports or not alone))


def is_all(sign: Sign) -> bool:
    return sign.kind is Kind.ALL or (sign.kind is Kind.EACH and sign.text == "both")


def is_report(atom: Atom) -> bool:
    if not isinstance(atom, Sign):
        return isinstance(atom, Effort) and atom.failed is not None and atom.failed > 0
    return atom.kind in (Kind.SAME, Kind.PLANNED)


def continues(atoms: Sequence[Atom]) -> bool:
    """Whether the sets start with a drop or a mini: they belong to the set said last, whatever the chat is on."""
    for atom in atoms:
        if isinstance(atom, Amount):
            return atom.join in (Join.PLUS, Join.ARROW)
        if isinstance(atom, Sign) and atom.kind in (Kind.DROP, Kind.MINI, Kind.ARROW, Kind.PLUS):
            return True
    return False


def is_substitute(piece: Sequence[Mark]) -> bool:
    """Whether the piece tells of one exercise in place of another: `dips instead of bench`."""
    for place, mark in enumerate(piece):
        if mark.kind is Kind.INSTEAD:
            following = [m.kind for m in piece[place + 1 : place + 3]]
            if following[:1] != [Kind.NUM] and following not in ([Kind.PLUS, Kind.NUM], [Kind.DASH, Kind.NUM]):
                return any(m.kind is Kind.NAME for m in piece) and not _is_of_load(piece, place)
        elif mark.text == "no" and _is_lacking(piece, place):
            return True
    return False


def _is_of_load(piece: Sequence[Mark], place: int) -> bool:
    """`skulls felt bad so did 50 for 12 instead`: another load of the one exercise that is named."""
    start = place
    while start and piece[start - 1].kind in _OF_SET:
        start -= 1
    names = [m for m in piece if m.kind in (Kind.NAME, Kind.WEAK)]
    ends = place + 1 == len(piece) or piece[place + 1].kind in (Kind.STOP, Kind.LINE, Kind.COMMA, Kind.QUERY)
    did = {w for m in piece[start:place] for w in m.text.split()} & {"did", "got", "went", "took", "used"}
    lacked = any(set(m.text.split()) & _NOT_THERE for m in piece)
    linked = any(m.kind in (Kind.FOR, Kind.X) for m in piece[start:place])
    own = len(names) == 1 and len(names[0].names) == 1
    return own and ends and linked and bool(did) and not lacked


_OF_SET = (Kind.NUM, Kind.FOR, Kind.X, Kind.KG, Kind.LB, Kind.REPS, Kind.S, Kind.FILL)
_NOT_THERE = frozenset(["taken", "busy", "broken", "occupied", "full", "gone", "missing", "no", "closed"])


def _is_lacking(piece: Sequence[Mark], place: int) -> bool:
    """`no hex bar free so i pulled regular deads`: what is not there, and what was done for it."""
    named = piece[place + 1] if place + 1 < len(piece) else None
    if named is None or not named.names:
        return False
    so = next((i for i, m in enumerate(piece[place + 2 :], place + 2) if m.text == "so"), None)
    done = next((m for m in piece[so:] if m.kind in (Kind.NAME, Kind.WEAK)), None) if so is not None else None
    return done is not None and (not done.names or bool(set(done.names) & set(named.names)))


def is_header(piece: Sequence[Mark]) -> bool:
    """Whether a piece is a name and nothing else that says something."""
    plain = (
        Kind.NAME,
        Kind.FILL,
        Kind.COLON,
        Kind.DASH,
        Kind.LINE,
        Kind.STOP,
        Kind.X,
        Kind.COMMA,
        Kind.OPEN,
        Kind.CLOSE,
        Kind.LABEL,
        Kind.DONE,
        Kind.GAP,
        Kind.THEN,
        Kind.AND,
    )
    piece = _behind_another(piece)
    if _starts(piece):
        return True
    shouted = any(m.kind is Kind.STOP and m.text == "!" for m in piece)
    told = [m for m in piece if m.text not in _ON_TO]
    return not shouted and all(m.kind in plain for m in told) and sum(m.kind is Kind.NAME for m in piece) == 1


_ON_TO = ("on", "to", "onto", "on to")
_LINKS = (Kind.COMMA, Kind.THEN, Kind.DASH)


def _behind_another(piece: Sequence[Mark]) -> Sequence[Mark]:
    """The last part of a piece that names an exercise, and another one before it: `enough rows, on to the wheel`."""
    names = [i for i, m in enumerate(piece) if m.kind is Kind.NAME]
    if len(names) < SEVERAL or any(m.kind is Kind.NUM for m in piece):
        return piece
    between = range(names[-2] + 1, names[-1])
    cut = next((i for i in between if piece[i].kind in _LINKS or piece[i].text in ("so", "now")), None)
    return piece if cut is None else piece[cut + 1 :]


_STARTED = frozenset(["started", "starting", "start", "moved", "switched", "began", "jumped", "gone", "going"])


def _starts(piece: Sequence[Mark]) -> bool:
    """`so i started with rows!!`: the name of what follows, at the end of its sentence."""
    ending = (Kind.STOP, Kind.LINE, Kind.COLON, Kind.GAP)
    last = next((m for m in reversed(piece) if m.kind not in ending), None)
    if last is None or last.kind is not Kind.NAME:
        return False
    said = [m for m in piece if m.kind not in ending]
    led = said[-3:-1]
    if len(led) < 2 or said[-1].kind is not Kind.NAME or sum(m.kind is Kind.NAME for m in said) != 1:
        return False
    return led[0].text.split(" ")[-1] in _STARTED and led[1].kind in (Kind.WITH, Kind.TO, Kind.AT)


def is_led(piece: Sequence[Mark], effort: Effort) -> bool:
    """Whether a name with sets follows an effort in its piece: `rpe 8 both, curls 8 and 8`."""
    names = [i for i, m in enumerate(piece) if m.kind is Kind.NAME and m.start >= effort.end]
    return bool(names) and any(m.kind in NUMBERS for m in piece[names[0] :])
