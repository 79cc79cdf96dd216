"""The tables. A test holds them to be what the migrations make, on both engines; see `storage.migrations`.

`facts` is the record; the tables from `coaches` to `matters` are brought up to date from it by `storage.facts` and may
be read without it. The others are the machinery's: what came in, what goes out, what is due.
"""

from typing import Any

import sqlalchemy as sa

from storage.columns import Big, Clock, Day, Flag, Instant, Sealed, Weekdays, fixed

metadata = sa.MetaData(
    naming_convention={
        "ix": "ix_%(table_name)s_%(column_0_N_name)s",
        "uq": "uq_%(table_name)s_%(column_0_N_name)s",
        "ck": "ck_%(table_name)s_%(constraint_name)s",
        "fk": "fk_%(table_name)s_%(column_0_N_name)s",
        "pk": "pk_%(table_name)s",
    }
)

Item = sa.Column[Any] | sa.Constraint | sa.Index


def _table(name: str, *items: Item) -> sa.Table:
    return sa.Table(name, metadata, *items, sqlite_strict=True)


def _numbered(name: str, *items: Item) -> sa.Table:
    """A table whose ids only ever grow, so that order of writing is kept and no id comes back."""
    identity = sa.Column("id", Big, primary_key=True, autoincrement=True)
    return sa.Table(name, metadata, identity, *items, sqlite_strict=True, sqlite_autoincrement=True)


def _one_of(column: str, *values: str) -> sa.CheckConstraint:
    return sa.CheckConstraint(f"{column} IN ({', '.join(repr(v) for v in values)})", name=column)


def _text(name: str, *, default: str | None = None, null: bool = False) -> sa.Column[str]:
    return sa.Column(name, sa.Text, nullable=null, server_default=None if default is None else default)


def _flag(name: str) -> sa.Column[bool]:
    return sa.Column(name, Flag, nullable=False, server_default=sa.text("0"))


def _where(index: sa.Index, condition: sa.ColumnElement[bool]) -> sa.Index:
    """The index over those rows only."""
    index.dialect_options["sqlite"]["where"] = condition
    index.dialect_options["postgresql"]["where"] = condition
    return index


# --- the record

facts = _numbered(
    "facts",
    _text("kind"),
    sa.Column("version", sa.Integer, nullable=False),
    _text("client", null=True),
    _text("coach", null=True),
    _text("session", null=True),
    _text("key", null=True),
    _text("said_by"),
    sa.Column("at", Instant, nullable=False),
    _text("source"),
    sa.Column("body", Sealed, nullable=False),
)
sa.Index("ix_facts_client", facts.c.client, facts.c.id)
_where(sa.Index("ix_facts_key", facts.c.client, facts.c.key, facts.c.id), facts.c.key.is_not(None))

forgetting = _table("forgetting", sa.Column("client", sa.Text, primary_key=True))
"""Clients (or a coach) whose facts may be deleted right now, within one transaction: see `storage.erasure`."""

resealing = _table("resealing", sa.Column("id", sa.Integer, primary_key=True, autoincrement=False))
"""Has its row while facts are sealed anew, within one transaction: see `storage.resealing`."""

seals = _table(
    "seals",
    sa.Column("id", sa.Integer, primary_key=True, autoincrement=False),
    sa.Column("proof", Sealed, nullable=False),
)
"""One sealed word, to tell at the start whether the key at hand is the one that sealed the rest."""

# --- people

coaches = _table(
    "coaches",
    sa.Column("id", sa.Text, primary_key=True),
    sa.Column("chat", Big, nullable=False, unique=True),
    sa.Column("name", Sealed, nullable=False),
    _text("zone"),
    sa.Column("digest_at", Clock, nullable=False),
    sa.Column("joined_at", Instant, nullable=False),
)

invites = _table(
    "invites",
    sa.Column("token_hash", sa.Text, primary_key=True),
    sa.Column("coach", sa.Text, sa.ForeignKey("coaches.id"), nullable=True, index=True),
    sa.Column("made_at", Instant, nullable=False),
    sa.Column("expires_at", Instant, nullable=False),
    sa.Column("used_at", Instant, nullable=True),
)
"""`coach` is empty on the operator's own links, which make coaches."""

programmes = _table(
    "programmes",
    sa.Column("snapshot", sa.Text, primary_key=True),
    _text("id"),
    sa.Column("workouts", sa.Integer, nullable=False),
    sa.Column("body", Sealed, nullable=False),
)
"""Programmes as they stood when they were assigned; `snapshot` names the content, so that equal ones are kept once."""

shelves = _table(
    "shelves",
    sa.Column("coach", sa.Text, sa.ForeignKey("coaches.id"), primary_key=True),
    sa.Column("programme", sa.Text, primary_key=True),
    sa.Column("snapshot", sa.Text, sa.ForeignKey("programmes.snapshot"), nullable=False),
    sa.Column("at", Instant, nullable=False),
)
"""The programmes that a coach has assigned, each as it stood last."""

clients = _table(
    "clients",
    sa.Column("id", sa.Text, primary_key=True),
    sa.Column("coach", sa.Text, sa.ForeignKey("coaches.id"), nullable=False, index=True),
    sa.Column("chat", Big, nullable=False, index=True),
    sa.Column("name", Sealed, nullable=False),
    _text("unit"),
    _text("zone"),
    sa.Column("days", Weekdays, nullable=False),
    sa.Column("hour", Clock, nullable=False),
    _text("gym"),
    _text("standing"),
    _text("consent", default=""),
    _text("programme", default=""),
    sa.Column("snapshot", sa.Text, sa.ForeignKey("programmes.snapshot"), nullable=True),
    sa.Column("workout", sa.Integer, nullable=False, server_default=sa.text("0")),
    sa.Column("workout_since", Instant, nullable=True),
    _flag("readiness_flagged"),
    sa.Column("readiness_at", Instant, nullable=True),
    _flag("confirm_in_words"),
    sa.Column("unreachable_at", Instant, nullable=True),
    sa.Column("last_day", Day, nullable=True),
    sa.Column("matters_open", sa.Integer, nullable=False, server_default=sa.text("0")),
    sa.Column("joined_at", Instant, nullable=False),
    sa.Column("orders", Sealed, nullable=True),
    sa.Column("begun", Day, nullable=True),
    _text("snapshot_before", null=True),
    sa.Column("life", Sealed, nullable=True),
    sa.Column("pace", Sealed, nullable=True),
    _one_of("unit", "kg", "lb"),
    _one_of("standing", "joining", "active", "paused", "withdrawn"),
)
"""`workout_since` is when the session was planned that moved `workout` on; `last_day` the last day with a reported set;
`matters_open` how many rows of `matters` are open; `orders` what the coach ordered (`training.orders`); `begun` the
day on which the programme was given; `snapshot_before` the one that it took the place of; `life` what stands beside the
programme (`training.life`); `pace` how fast they train (`storage.paces`)."""
_where(sa.Index("uq_clients_chat_here", clients.c.chat, unique=True), clients.c.standing != fixed("withdrawn"))

# --- training

sessions = _table(
    "sessions",
    sa.Column("id", sa.Text, primary_key=True),
    sa.Column("client", sa.Text, sa.ForeignKey("clients.id"), nullable=False),
    _text("coach"),
    sa.Column("day", Day, nullable=False),
    sa.Column("workout", sa.Integer, nullable=False),
    sa.Column("snapshot", sa.Text, nullable=True),
    sa.Column("token", sa.Text, nullable=False, unique=True),
    sa.Column("planned_at", Instant, nullable=False),
    sa.Column("plan", Sealed, nullable=False),
    sa.Column("reports", Sealed, nullable=False),
    sa.Column("revision", Big, nullable=False),
    _text("ended", null=True),
    sa.Column("minutes", sa.Integer, nullable=True),
    sa.Column("effort", sa.Integer, nullable=True),
    sa.Column("first_at", Instant, nullable=True),
    sa.Column("last_at", Instant, nullable=True),
    sa.Column("miss_at", Instant, nullable=True),
    sa.Column("handled_at", Instant, nullable=True),
    sa.Column("touched_at", Instant, nullable=False),
    sa.Column("changes", Sealed, nullable=True),
    _one_of("ended", "finished", "skipped", "missed"),
    sa.CheckConstraint("effort BETWEEN 0 AND 10", name="effort"),
)
"""`reports` are bounded by the session, and read and written whole. `revision` is random and new at every change, so
that a session once read may be kept in memory under it. `touched_at` is when something worth a digest changed;
`changes` what changed `plan` since it was sent, each with the plan before it."""
sa.Index("ix_sessions_client_day", sessions.c.client, sessions.c.day)
sa.Index("ix_sessions_coach_day", sessions.c.coach, sessions.c.day)
sa.Index("ix_sessions_coach_touched_at", sessions.c.coach, sessions.c.touched_at)
_where(
    sa.Index("ix_sessions_coach_missing", sessions.c.coach, sessions.c.miss_at),
    sa.and_(
        sessions.c.miss_at.is_not(None),
        sessions.c.handled_at.is_(None),
        sessions.c.ended.is_(None),
        sessions.c.first_at.is_(None),
    ),
)

sets = _table(
    "sets",
    sa.Column("session", sa.Text, sa.ForeignKey("sessions.id"), primary_key=True),
    sa.Column("place", sa.Integer, primary_key=True, autoincrement=False),
    _text("client"),
    _text("exercise"),
    sa.Column("day", Day, nullable=False),
    sa.Column("set_number", sa.Integer, nullable=True),
    _text("stage"),
    sa.Column("thousandths", Big, nullable=True),
    _text("unit", null=True),
    sa.Column("reps", sa.Integer, nullable=False),
    _text("rir", null=True),
    _text("side", null=True),
    _one_of("stage", "work", "drop", "mini", "warmup"),
    _one_of("unit", "kg", "lb"),
    _one_of("side", "left", "right"),
)
"""The sets that count, as reported; `place` is their order within the session."""
sa.Index("ix_sets_client_exercise", sets.c.client, sets.c.exercise, sets.c.day)

strengths = _table(
    "strengths",
    sa.Column("client", sa.Text, sa.ForeignKey("clients.id"), primary_key=True),
    sa.Column("exercise", sa.Text, primary_key=True),
    _text("session"),
    sa.Column("day", Day, nullable=False),
    _text("before"),
    _text("after"),
)

matters = _numbered(
    "matters",
    sa.Column("client", sa.Text, sa.ForeignKey("clients.id"), nullable=False),
    _text("coach"),
    _text("kind"),
    _text("key"),
    _text("session", null=True),
    sa.Column("body", Sealed, nullable=False),
    _flag("holds"),
    sa.Column("at", Instant, nullable=False),
    sa.Column("closed_at", Instant, nullable=True),
    sa.Column("handled_at", Instant, nullable=True),
    sa.UniqueConstraint("client", "kind", "key"),
    _one_of("kind", "pain", "question", "doubt"),
)
"""What waits for somebody: pain that is not settled, questions, doubts. `holds` marks pain that holds its exercise."""
_where(sa.Index("ix_matters_client_open", matters.c.client), matters.c.closed_at.is_(None))
_where(sa.Index("ix_matters_coach_open", matters.c.coach), matters.c.closed_at.is_(None))
sa.Index("ix_matters_coach_key", matters.c.coach, matters.c.key)

# --- the machinery

inbox = _numbered(
    "inbox",
    sa.Column("bot", Big, nullable=False),
    sa.Column("update_id", Big, nullable=False),
    sa.Column("chat", Big, nullable=False),
    sa.Column("raw", Sealed, nullable=False),
    sa.Column("received_at", Instant, nullable=False),
    _text("state", default="waiting"),
    sa.Column("attempts", sa.Integer, nullable=False, server_default=sa.text("0")),
    _text("worker", default=""),
    sa.Column("lease_until", Instant, nullable=True),
    sa.Column("error", Sealed, nullable=True),
    sa.Column("done_at", Instant, nullable=True),
    sa.UniqueConstraint("bot", "update_id"),
    _one_of("state", "waiting", "done", "aside"),
)
_where(sa.Index("ix_inbox_waiting", inbox.c.chat, inbox.c.update_id, inbox.c.id), inbox.c.state == fixed("waiting"))
_where(sa.Index("ix_inbox_aside", inbox.c.id), inbox.c.state == fixed("aside"))
sa.Index("ix_inbox_done_at", inbox.c.done_at)

outbox = _numbered(
    "outbox",
    sa.Column("key", sa.Text, nullable=False, unique=True),
    sa.Column("chat", Big, nullable=False),
    _text("kind"),
    sa.Column("body", Sealed, nullable=False),
    sa.Column("urgency", sa.Integer, nullable=False),
    sa.Column("lane", sa.Integer, nullable=False),
    _text("repeat"),
    _text("slot", default=""),
    _flag("fresh"),
    _text("about", default=""),
    _flag("silent"),
    _text("state", default="waiting"),
    _flag("maybe_sent"),
    sa.Column("tries", sa.Integer, nullable=False, server_default=sa.text("0")),
    sa.Column("next_at", Instant, nullable=False),
    sa.Column("expires_at", Instant, nullable=True),
    _text("worker", default=""),
    sa.Column("lease_until", Instant, nullable=True),
    sa.Column("message", Big, nullable=True),
    _text("body_hash", default=""),
    sa.Column("error", Sealed, nullable=True),
    sa.Column("made_at", Instant, nullable=False),
    sa.Column("closed_at", Instant, nullable=True),
    _one_of("kind", "send", "react", "strip", "relay", "menu", "leave", "file", "fetch"),
    _one_of("state", "waiting", "sending", "sent", "dead", "unknown", "superseded"),
    _one_of("repeat", "resend", "again", "drop"),
)
"""`lane` is 0 for what goes before everything else of its chat, else 1. `maybe_sent` marks what may have arrived."""
_WAITING = outbox.c.state == fixed("waiting")
_SENDING = outbox.c.state == fixed("sending")
_where(sa.Index("ix_outbox_chat_waiting", outbox.c.chat, outbox.c.lane, outbox.c.id), _WAITING)
_where(sa.Index("ix_outbox_urgency_waiting", outbox.c.urgency, outbox.c.id), _WAITING)
_where(sa.Index("uq_outbox_chat_sending", outbox.c.chat, unique=True), _SENDING)
_where(sa.Index("ix_outbox_about_waiting", outbox.c.about), _WAITING)
sa.Index("ix_outbox_closed_at", outbox.c.closed_at)

slots = _table(
    "slots",
    sa.Column("chat", Big, primary_key=True, autoincrement=False),
    sa.Column("slot", sa.Text, primary_key=True),
    sa.Column("message", Big, nullable=False),
    _text("body_hash"),
    sa.Column("at", Instant, nullable=False, index=True),
)

relays = _table(
    "relays",
    sa.Column("chat", Big, primary_key=True, autoincrement=False),
    sa.Column("message", Big, primary_key=True, autoincrement=False),
    sa.Column("about", sa.Text, nullable=False, index=True),
    sa.Column("other_message", Big, nullable=True),
    sa.Column("at", Instant, nullable=False, index=True),
)

talks = _table(
    "talks",
    sa.Column("chat", Big, primary_key=True, autoincrement=False),
    _text("name"),
    _text("step"),
    sa.Column("data", Sealed, nullable=False),
    sa.Column("expires_at", Instant, nullable=True),
)

schedule = _numbered(
    "schedule",
    _text("whose"),
    _text("kind"),
    _text("ref", default=""),
    _text("zone"),
    sa.Column("hour", Clock, nullable=True),
    sa.Column("days", Weekdays, nullable=False),
    sa.Column("once_at", Instant, nullable=True),
    sa.Column("next_due_at", Instant, nullable=True),
    sa.Column("last_day", Day, nullable=True),
    sa.Column("last_at", Instant, nullable=True),
    sa.UniqueConstraint("whose", "kind", "ref"),
    _one_of("kind", "session", "cutoff", "week", "pain_check", "nudge", "digest", "resume", "rest"),
    sa.CheckConstraint("(hour IS NULL) = (once_at IS NOT NULL)", name="daily_or_once"),
)
"""`next_due_at` is empty on a rule that has ended; `last_day` is the local date on which it last came due."""
_where(sa.Index("ix_schedule_due", schedule.c.next_due_at, schedule.c.id), schedule.c.next_due_at.is_not(None))

leases = _table(
    "leases", sa.Column("name", sa.Text, primary_key=True), _text("holder"), sa.Column("until", Instant, nullable=False)
)
