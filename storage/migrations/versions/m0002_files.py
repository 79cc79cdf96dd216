"""Files in the outbox, both ways; the door for sealing facts anew; a coach's own facts may be forgotten."""

import sqlalchemy as sa
from alembic import op

revision = "0002"
down_revision = "0001"
branch_labels = None
depends_on = None

BIG = sa.BigInteger().with_variant(sa.Integer(), "sqlite")
KINDS = "kind IN ('send', 'react', 'strip', 'relay', 'menu', 'leave', 'file', 'fetch')"

SAME = (
    "NEW.id IS OLD.id AND NEW.kind IS OLD.kind AND NEW.version IS OLD.version AND NEW.client IS OLD.client "
    "AND NEW.coach IS OLD.coach AND NEW.session IS OLD.session AND NEW.key IS OLD.key "
    "AND NEW.said_by IS OLD.said_by AND NEW.at IS OLD.at AND NEW.source IS OLD.source"
)
SQLITE_GUARD = (
    "DROP TRIGGER facts_never_changed",
    "DROP TRIGGER facts_never_deleted",
    "CREATE TRIGGER facts_never_changed BEFORE UPDATE ON facts "
    f"WHEN NOT (EXISTS (SELECT 1 FROM resealing) AND {SAME}) "
    "BEGIN SELECT RAISE(ABORT, 'facts are added, never edited'); END",
    "CREATE TRIGGER facts_never_deleted BEFORE DELETE ON facts "
    "WHEN NOT EXISTS (SELECT 1 FROM forgetting WHERE forgetting.client = coalesce(OLD.client, OLD.coach)) "
    "BEGIN SELECT RAISE(ABORT, 'facts are added, never edited'); END",
)
POSTGRESQL_GUARD = (
    "CREATE OR REPLACE FUNCTION facts_guard() RETURNS trigger LANGUAGE plpgsql AS $$ BEGIN "
    "IF TG_OP = 'DELETE' THEN "
    "IF EXISTS (SELECT 1 FROM forgetting WHERE forgetting.client = coalesce(OLD.client, OLD.coach)) "
    "THEN RETURN OLD; END IF; "
    "ELSIF TG_OP = 'UPDATE' THEN "
    "IF EXISTS (SELECT 1 FROM resealing) AND to_jsonb(NEW) - 'body' = to_jsonb(OLD) - 'body' "
    "THEN RETURN NEW; END IF; "
    "END IF; RAISE EXCEPTION 'facts are added, never edited'; END $$",
)
INDEXES = (
    ("ix_outbox_about_waiting", ["about"], "state = 'waiting'", False),
    ("ix_outbox_chat_waiting", ["chat", "lane", "id"], "state = 'waiting'", False),
    ("ix_outbox_closed_at", ["closed_at"], "", False),
    ("ix_outbox_urgency_waiting", ["urgency", "id"], "state = 'waiting'", False),
    ("uq_outbox_chat_sending", ["chat"], "state = 'sending'", True),
)


def upgrade() -> None:
    """The check on what a parcel is takes two kinds more; `resealing`; the guard anew."""
    op.create_table(
        "resealing",
        sa.Column("id", sa.Integer(), autoincrement=False, nullable=False),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_resealing")),
        sqlite_strict=True,
    )
    if op.get_bind().dialect.name == "sqlite":
        _outbox_anew()
    else:
        op.drop_constraint(op.f("ck_outbox_kind"), "outbox")
        op.create_check_constraint(op.f("ck_outbox_kind"), "outbox", KINDS)
    for statement in SQLITE_GUARD if op.get_bind().dialect.name == "sqlite" else POSTGRESQL_GUARD:
        op.execute(statement)


def _outbox_anew() -> None:
    """SQLite can't change a check: a new table with the old one's rows, its numbers going on where they were."""
    _create_outbox("outbox_new")
    op.execute("INSERT INTO outbox_new SELECT * FROM outbox")
    op.execute("DELETE FROM sqlite_sequence WHERE name = 'outbox_new'")
    op.execute(
        "INSERT INTO sqlite_sequence (name, seq) SELECT 'outbox_new', seq FROM sqlite_sequence WHERE name = 'outbox'"
    )
    op.drop_table("outbox")
    op.rename_table("outbox_new", "outbox")
    for name, columns, where, is_unique in INDEXES:
        op.create_index(name, "outbox", columns, unique=is_unique, sqlite_where=sa.text(where) if where else None)


def _create_outbox(name: str) -> None:
    op.create_table(
        name,
        sa.Column("id", BIG, autoincrement=True, nullable=False),
        sa.Column("key", sa.Text(), nullable=False),
        sa.Column("chat", BIG, nullable=False),
        sa.Column("kind", sa.Text(), nullable=False),
        sa.Column("body", sa.LargeBinary(), nullable=False),
        sa.Column("urgency", sa.Integer(), nullable=False),
        sa.Column("lane", sa.Integer(), nullable=False),
        sa.Column("repeat", sa.Text(), nullable=False),
        sa.Column("slot", sa.Text(), server_default="", nullable=False),
        sa.Column("fresh", sa.Integer(), server_default=sa.text("0"), nullable=False),
        sa.Column("about", sa.Text(), server_default="", nullable=False),
        sa.Column("silent", sa.Integer(), server_default=sa.text("0"), nullable=False),
        sa.Column("state", sa.Text(), server_default="waiting", nullable=False),
        sa.Column("maybe_sent", sa.Integer(), server_default=sa.text("0"), nullable=False),
        sa.Column("tries", sa.Integer(), server_default=sa.text("0"), nullable=False),
        sa.Column("next_at", BIG, nullable=False),
        sa.Column("expires_at", BIG, nullable=True),
        sa.Column("worker", sa.Text(), server_default="", nullable=False),
        sa.Column("lease_until", BIG, nullable=True),
        sa.Column("message", BIG, nullable=True),
        sa.Column("body_hash", sa.Text(), server_default="", nullable=False),
        sa.Column("error", sa.LargeBinary(), nullable=True),
        sa.Column("made_at", BIG, nullable=False),
        sa.Column("closed_at", BIG, nullable=True),
        sa.CheckConstraint(KINDS, name=op.f("ck_outbox_kind")),
        sa.CheckConstraint("repeat IN ('resend', 'again', 'drop')", name=op.f("ck_outbox_repeat")),
        sa.CheckConstraint(
            "state IN ('waiting', 'sending', 'sent', 'dead', 'unknown', 'superseded')", name=op.f("ck_outbox_state")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_outbox")),
        sa.UniqueConstraint("key", name=op.f("uq_outbox_key")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
