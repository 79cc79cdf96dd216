"""Whole rows as JSON, opened: everything that the tables hold of a client or a coach, for a copy of it.

A test holds every table to stand in one of the lists here, so that nothing new is forgotten.
"""

import json
from collections.abc import Callable, Iterator
from datetime import date, datetime, time
from json.encoder import encode_basestring
from typing import Any

import sqlalchemy as sa

from storage.copies import Owner, Subject
from storage.ready import Row
from storage.tables import (
    clients,
    coaches,
    facts,
    inbox,
    invites,
    matters,
    outbox,
    programmes,
    schedule,
    sessions,
    sets,
    shelves,
    strengths,
    talks,
)
from storage.work import Work

PAGE = 1000
"""Facts read at once."""

OF_CLIENT: dict[sa.Table, sa.Column[Any]] = {
    clients: clients.c.id,
    facts: facts.c.client,
    sessions: sessions.c.client,
    sets: sets.c.client,
    strengths: strengths.c.client,
    matters: matters.c.client,
    schedule: schedule.c.whose,
}
"""Tables of which a client's rows go into the copy, and the column that says whose a row is."""

OF_CHAT: dict[sa.Table, sa.Column[Any]] = {talks: talks.c.chat, outbox: outbox.c.chat, inbox: inbox.c.chat}
"""Tables of which a chat's rows go into the copy: where the talk stands, and messages whose words are still kept."""

NOT_COPIED = {
    "seals": "a proof of the key",
    "forgetting": "empty but within a transaction",
    "resealing": "empty but within a transaction",
    "leases": "which process does what",
    "slots": "numbers of our own messages",
    "relays": "numbers of our own messages",
}
"""Tables that hold nothing of anybody, with what they hold."""

_text = encode_basestring
"""A text as JSON, its letters as they are."""

KEPT, LINES, PLAIN, JSON = "kept", "lines", "plain", "json"
FORMS: dict[tuple[str, str], str] = {
    ("coaches", "name"): PLAIN,
    ("clients", "name"): PLAIN,
    ("clients", "orders"): KEPT,
    ("clients", "life"): KEPT,
    ("clients", "pace"): KEPT,
    ("facts", "body"): KEPT,
    ("sessions", "plan"): KEPT,
    ("sessions", "reports"): LINES,
    ("sessions", "changes"): LINES,
    ("matters", "body"): KEPT,
    ("programmes", "body"): KEPT,
    ("talks", "data"): KEPT,
    ("outbox", "body"): JSON,
    ("outbox", "error"): PLAIN,
    ("inbox", "raw"): JSON,
    ("inbox", "error"): PLAIN,
    ("strengths", "before"): JSON,
    ("strengths", "after"): JSON,
}
"""What stands in a column that is sealed, or that holds JSON: `[form, value]` of the codec, lines of those, JSON, or
plain text."""


def client_json(work: Work, subject: Subject, *, own: bool) -> Iterator[str]:
    """All that is kept of a client, in pieces of one JSON object: a list of rows for each table. In their own copy
    (`own`) the coach's id stands as `coach`, and what their chat has waiting is in it, unless it is a coach's too."""
    say = _names(subject) if own else {}
    yield "{"
    tables = dict(OF_CLIENT)
    pieces = [(table, column == subject.id) for table, column in tables.items()]
    if own and work.first(sa.select(coaches.c.id).where(coaches.c.chat == subject.chat)) is None:
        pieces += [(table, column == subject.chat) for table, column in OF_CHAT.items()]
    for n, (table, condition) in enumerate(pieces):
        yield f'{"," if n else ""}\n"{table.name}":['
        for piece in _rows(work, table, condition, _speakers(subject)):
            yield _replaced(piece, say)
        yield "]"
    yield "\n}\n"


def coach_json(work: Work, owner: Owner) -> Iterator[str]:
    """All that is kept of a coach beside their clients: themselves, their own facts, invitations (without what makes
    them links), programmes, what their chat has waiting."""
    speakers = {f"chat:{owner.chat}": "coach"}
    invited = sa.select(invites.c.made_at, invites.c.expires_at, invites.c.used_at).where(invites.c.coach == owner.id)
    shelf = (
        sa.select(shelves.c.programme, shelves.c.at, programmes.c.body)
        .join_from(shelves, programmes, programmes.c.snapshot == shelves.c.snapshot)
        .where(shelves.c.coach == owner.id)
    )
    yield "{"
    conditions: list[tuple[sa.Table, sa.ColumnElement[bool]]] = [
        (coaches, coaches.c.id == owner.id),
        (facts, sa.and_(facts.c.coach == owner.id, facts.c.client.is_(None))),
        (schedule, schedule.c.whose == owner.id),
    ]
    conditions += [(table, column == owner.chat) for table, column in OF_CHAT.items()]
    for table, condition in conditions:
        yield f'\n"{table.name}":['
        yield from _rows(work, table, condition, speakers)
        yield "],"
    yield '\n"invites":['
    yield _joined(_plain_row(row, ("made_at", "expires_at", "used_at")) for row in work.all(invited))
    yield '],\n"programmes":['
    yield _joined(
        f'{{"programme":{_text(row.programme)},"at":{_text(row.at.isoformat())},"body":{_kept(work.unseal(row.body))}}}'
        for row in work.all(shelf)
    )
    yield "]\n}\n"


def _names(subject: Subject) -> dict[str, str]:
    """In a client's own copy nobody else's id stands."""
    return {f'"{subject.coach}"': '"coach"', f'"chat:{subject.coach_chat}"': '"coach"'}


def _speakers(subject: Subject) -> dict[str, str]:
    """Who said a fact, in a word."""
    return {f"chat:{subject.coach_chat}": "coach", f"chat:{subject.chat}": "client"}


def _replaced(piece: str, names: dict[str, str]) -> str:
    for old, new in names.items():
        piece = piece.replace(old, new)
    return piece


def _rows(work: Work, table: sa.Table, condition: sa.ColumnElement[bool], speakers: dict[str, str]) -> Iterator[str]:
    """The rows as JSON objects: facts, of which there may be many, some at a time; else all at once."""
    shown = _shows(work, table, speakers)
    if table is not facts:
        yield _joined(_row(row, shown) for row in work.all(sa.select(table).where(condition)))
        return
    after = 0
    page = sa.select(facts).where(condition, facts.c.id > sa.bindparam("after")).order_by(facts.c.id).limit(PAGE)
    while rows := work.all(page, {"after": after}):
        text = _joined(_row(row, shown) for row in rows)
        yield f",{text}" if after else text
        after = rows[-1].id


def _row(row: Row, shown: list[tuple[str, Callable[[Any], str]]]) -> str:
    parts = [f"{name}{show(row[place])}" for place, (name, show) in enumerate(shown)]
    return f"{{{','.join(parts)}}}"


def _shows(work: Work, table: sa.Table, speakers: dict[str, str]) -> list[tuple[str, Callable[[Any], str]]]:
    """How each column of a table is written."""

    def opened(read: Callable[[str], str]) -> Callable[[Any], str]:
        return lambda value: "null" if not value else read(work.unseal(value))

    def said_by(value: str) -> str:
        return _text(speakers.get(value, value if ":" not in value else "somebody"))

    forms: dict[str, Callable[[str], str]] = {KEPT: _kept, LINES: _lines, PLAIN: _text, JSON: _same}
    out: list[tuple[str, Callable[[Any], str]]] = []
    for column in table.columns:
        form = FORMS.get((table.name, column.name))
        show: Callable[[Any], str] = _simple(column)
        if form is not None:
            read = forms[form]
            show = opened(read) if isinstance(column.type, sa.LargeBinary) else read
        elif (table.name, column.name) == ("facts", "said_by"):
            show = said_by
        elif (table.name, column.name) == ("facts", "source"):
            show = _source
        out.append((f'"{column.name}":', show))
    return out


def _plain_row(row: Row, names: tuple[str, ...]) -> str:
    return f"{{{','.join(f'{_text(name)}:{_value(getattr(row, name))}' for name in names)}}}"


def _joined(rows: Iterator[str]) -> str:
    return ",\n".join(rows)


def _same(text: str) -> str:
    return text or "null"


def _kept(text: str) -> str:
    """The value within `[form, value]`."""
    return text.partition(",")[2][:-1]


def _lines(text: str) -> str:
    return f"[{','.join(_kept(part) for part in text.split(chr(10)) if part)}]"


def _source(text: str) -> str:
    """`m<chat>:<message>` without the chat; taps and the clock are machinery."""
    return _text(f"message {text.partition(':')[2]}" if text.startswith("m") else "")


def _simple(column: sa.Column[Any]) -> Callable[[Any], str]:
    """How a column that is not sealed is written: its own way for texts and numbers, of which there are most."""
    if isinstance(column.type, sa.Text):
        return lambda value: "null" if value is None else _text(value)
    if isinstance(column.type, sa.Integer):
        return lambda value: "null" if value is None else str(value)
    return _value


def _value(value: Any) -> str:
    match value:
        case None:
            return "null"
        case bool():
            return "true" if value else "false"
        case int():
            return str(value)
        case datetime() | date() | time():
            return f'"{value.isoformat()}"'
        case tuple():
            return json.dumps(value)
        case _:
            return _text(str(value))
