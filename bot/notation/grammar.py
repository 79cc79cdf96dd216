"""The language of sets, as an LALR grammar over the kinds of mark; built once, when first needed.

Every sequence of marks is a message of it: what forms no amount, entry or effort stands by itself. Which number of an
entry is the load is not the grammar's to say; `ranking` decides beside the plan.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from functools import lru_cache

from lark import Lark, Token, Tree, UnexpectedInput
from lark.lexer import Lexer, LexerState

from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

GRAMMAR = r"""
start: item*

?item: entry | effort | loose

entry: (amount | lead) (link amount)*
link: X | FOR | AT | WITH

amount: operand tail*
operand: NUM
    | CLOCK
    | SIGN NUM
    | BODY
    | BODY PLUS NUM
    | BODY SIGN NUM
    | ADDED NUM
    | ASSIST NUM
    | PAIR NUM
    | SAMELOAD
    | SAMEREPS
tail: KG | LB | REPS | SECONDS | MINUTES | METRES | SETS | TIMES | S | M | HAND | TOTAL | EACH | ASSIST | ADDED | PLATES
    | LEFTPOST | RIGHTPOST | BODY

lead: LEADX NUM tail* | LEADAT NUM tail*

effort: RPE NUM | NUM RPEPOST
    | RIR NUM | NUM RIRPOST
    | NUM TANK | ANOTHER TANK
    | COULD NUM MORE | COULD NUM TANK | COULD ANOTHER | COULD ANOTHER TANK
    | EMPTY
    | FAILED ORD | FAILED ORD REPS | FAILED NUM | FAILED NUM REPS | FAILED LASTREP
    | FEELS NUM

loose: COMMA | BREAK | LINE | STOP | QUERY | SLASH | PLUS | DASH | ARROW | COLON | OPEN | CLOSE | AND
    | THEN | OR | TO | GAP | PART | NAME | LABEL | LEFT | RIGHT | DROP | MINI | WARMUP | WORKSET | ALL
    | SAME | LASTSET | ORD | BAD | SORRY | MEANT | WAS | NOT | SCRAP | SET | MORE | ANOTHER | TANK
    | LASTREP | FAILED | COULD | RPE | RIR | FEELS | RPEPOST | RIRPOST | SLIP | BAND | EFFORT
    | PLANNED | DONE | EACH | HAND | TOTAL | KG | LB | REPS | SECONDS | MINUTES | METRES | SETS | S
    | M | ASSIST | ADDED | PAIR | SIGN | LEADX | TIMES | PLATES | LEFTPOST | RIGHTPOST | WROTE
    | DROPPED

%declare NUM CLOCK X FOR AT WITH SIGN BODY PLUS ADDED ASSIST PAIR SAMELOAD SAMEREPS KG LB REPS SECONDS MINUTES METRES
%declare SETS TIMES S M HAND TOTAL EACH PLATES LEFTPOST RIGHTPOST LEADX RPE RPEPOST RIR RIRPOST TANK ANOTHER COULD MORE
%declare EMPTY FAILED ORD LASTREP FEELS COMMA BREAK LINE STOP QUERY SLASH DASH ARROW COLON OPEN CLOSE AND THEN OR TO GAP
%declare PART NAME LABEL LEFT RIGHT DROP MINI WARMUP WORKSET ALL SAME LASTSET BAD SORRY MEANT WAS NOT SCRAP SET EFFORT
%declare PLANNED DONE WROTE DROPPED LEADAT SLIP BAND
"""
OPERANDS = frozenset((Kind.NUM, Kind.CLOCK, Kind.BODY, Kind.SAMELOAD, Kind.SAMEREPS))
"""Marks that an amount starts with (or is signed by what stands before)."""


@dataclass(frozen=True, slots=True)
class Node:
    """A rule's name with its marks and parts, in order."""

    rule: str
    parts: tuple["Node | Mark", ...]


class _Marks(Lexer):
    """Hands the marks to the parser: the lexing is done, the kinds are the terminals."""

    __future_interface__ = 1

    def __init__(self, lexer_conf: object) -> None:
        """Takes the parser's settings; none of them concern marks that are read already."""

    def lex(self, lexer_state: LexerState, parser_state: object) -> Iterator[Token]:  # noqa: ARG002
        """One token a mark, which remembers the mark's place."""
        for place, kind in enumerate(lexer_state.text.text.split()):
            yield Token(kind, "", start_pos=place)


@lru_cache(maxsize=1)
def parser() -> Lark:
    """The parser, built on first use (some tens of milliseconds)."""
    return Lark(GRAMMAR, parser="lalr", lexer=_Marks, maybe_placeholders=False)


def read_items(marks: Sequence[Mark]) -> tuple[Node | Mark, ...]:
    """The items of a message: entries, efforts and loose marks, in order.

    Marks that are no sentence of the grammar become one mark that is asked about.
    """
    if not marks:
        return ()
    kinds = " ".join(m.kind for m in marks)
    tree = _known(kinds) if len(marks) <= _SHORT else _parsed(kinds)
    if tree is None:
        return (replace(marks[0], kind=Kind.SLIP, end=marks[-1].end),)
    return tuple(_shape(child, marks) for child in tree.children)


_SHORT = 16
"""Marks of a message whose form is remembered: those come again and again."""


@lru_cache(maxsize=512)
def _known(kinds: str) -> Tree[Token] | None:
    return _parsed(kinds)


def _parsed(kinds: str) -> Tree[Token] | None:
    """The tree over a sequence of kinds; `None` where it is no sentence of the grammar."""
    try:
        return parser().parse(kinds)
    except UnexpectedInput:
        return None


def _shape(child: Tree[Token] | Token, marks: Sequence[Mark]) -> Node | Mark:
    if isinstance(child, Token):
        return marks[child.start_pos or 0]
    parts = tuple(_shape(part, marks) for part in child.children)
    if child.data in ("loose", "link", "tail"):
        return parts[0]
    return Node(str(child.data), parts)
