"""The first tables."""

import sqlalchemy as sa
from alembic import op

revision = "0001"
down_revision = None
branch_labels = None
depends_on = None

BIG = sa.BigInteger().with_variant(sa.Integer(), "sqlite")

SQLITE = (
    "CREATE TRIGGER facts_never_changed BEFORE UPDATE ON facts "
    "BEGIN SELECT RAISE(ABORT, 'facts are added, never edited'); END",
    "CREATE TRIGGER facts_never_deleted BEFORE DELETE ON facts "
    "WHEN NOT EXISTS (SELECT 1 FROM forgetting WHERE forgetting.client = OLD.client) "
    "BEGIN SELECT RAISE(ABORT, 'facts are added, never edited'); END",
)

POSTGRESQL = (
    "CREATE FUNCTION facts_guard() RETURNS trigger LANGUAGE plpgsql AS $$ BEGIN "
    "IF TG_OP = 'DELETE' THEN "
    "IF EXISTS (SELECT 1 FROM forgetting WHERE forgetting.client = OLD.client) THEN RETURN OLD; END IF; "
    "END IF; RAISE EXCEPTION 'facts are added, never edited'; END $$",
    "CREATE TRIGGER facts_never_changed BEFORE UPDATE OR DELETE ON facts FOR EACH ROW EXECUTE FUNCTION facts_guard()",
    "CREATE TRIGGER facts_never_truncated BEFORE TRUNCATE ON facts EXECUTE FUNCTION facts_guard()",
)
"""The guard over the facts as it stood in this version; today's is in `storage.triggers`."""


def upgrade() -> None:
    """Makes every table, its indexes, and the guard over the facts."""
    op.create_table(
        "coaches",
        sa.Column("id", sa.Text(), nullable=False),
        sa.Column("chat", BIG, nullable=False),
        sa.Column("name", sa.LargeBinary(), nullable=False),
        sa.Column("zone", sa.Text(), nullable=False),
        sa.Column("digest_at", sa.Text(), nullable=False),
        sa.Column("joined_at", BIG, nullable=False),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_coaches")),
        sa.UniqueConstraint("chat", name=op.f("uq_coaches_chat")),
        sqlite_strict=True,
    )
    op.create_table(
        "facts",
        sa.Column("id", BIG, autoincrement=True, nullable=False),
        sa.Column("kind", sa.Text(), nullable=False),
        sa.Column("version", sa.Integer(), nullable=False),
        sa.Column("client", sa.Text(), nullable=True),
        sa.Column("coach", sa.Text(), nullable=True),
        sa.Column("session", sa.Text(), nullable=True),
        sa.Column("key", sa.Text(), nullable=True),
        sa.Column("said_by", sa.Text(), nullable=False),
        sa.Column("at", BIG, nullable=False),
        sa.Column("source", sa.Text(), nullable=False),
        sa.Column("body", sa.LargeBinary(), nullable=False),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_facts")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_index("ix_facts_client", "facts", ["client", "id"], unique=False)
    op.create_index(
        "ix_facts_key",
        "facts",
        ["client", "key", "id"],
        unique=False,
        sqlite_where=sa.text("key IS NOT NULL"),
        postgresql_where=sa.text("key IS NOT NULL"),
    )
    op.create_table(
        "forgetting",
        sa.Column("client", sa.Text(), nullable=False),
        sa.PrimaryKeyConstraint("client", name=op.f("pk_forgetting")),
        sqlite_strict=True,
    )
    op.create_table(
        "inbox",
        sa.Column("id", BIG, autoincrement=True, nullable=False),
        sa.Column("bot", BIG, nullable=False),
        sa.Column("update_id", BIG, nullable=False),
        sa.Column("chat", BIG, nullable=False),
        sa.Column("raw", sa.LargeBinary(), nullable=False),
        sa.Column("received_at", BIG, nullable=False),
        sa.Column("state", sa.Text(), server_default="waiting", nullable=False),
        sa.Column("attempts", sa.Integer(), server_default=sa.text("0"), nullable=False),
        sa.Column("worker", sa.Text(), server_default="", nullable=False),
        sa.Column("lease_until", BIG, nullable=True),
        sa.Column("error", sa.LargeBinary(), nullable=True),
        sa.Column("done_at", BIG, nullable=True),
        sa.CheckConstraint("state IN ('waiting', 'done', 'aside')", name=op.f("ck_inbox_state")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_inbox")),
        sa.UniqueConstraint("bot", "update_id", name=op.f("uq_inbox_bot_update_id")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_index(
        "ix_inbox_aside",
        "inbox",
        ["id"],
        unique=False,
        sqlite_where=sa.text("state = 'aside'"),
        postgresql_where=sa.text("state = 'aside'"),
    )
    op.create_index("ix_inbox_done_at", "inbox", ["done_at"], unique=False)
    op.create_index(
        "ix_inbox_waiting",
        "inbox",
        ["chat", "update_id", "id"],
        unique=False,
        sqlite_where=sa.text("state = 'waiting'"),
        postgresql_where=sa.text("state = 'waiting'"),
    )
    op.create_table(
        "leases",
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("holder", sa.Text(), nullable=False),
        sa.Column("until", BIG, nullable=False),
        sa.PrimaryKeyConstraint("name", name=op.f("pk_leases")),
        sqlite_strict=True,
    )
    op.create_table(
        "outbox",
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
        sa.CheckConstraint("kind IN ('send', 'react', 'strip', 'relay', 'menu', 'leave')", name=op.f("ck_outbox_kind")),
        sa.CheckConstraint("repeat IN ('resend', 'again', 'drop')", name=op.f("ck_outbox_repeat")),
        sa.CheckConstraint(
            "state IN ('waiting', 'sending', 'sent', 'dead', 'unknown', 'superseded')", name=op.f("ck_outbox_state")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_outbox")),
        sa.UniqueConstraint("key", name=op.f("uq_outbox_key")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_index(
        "ix_outbox_about_waiting",
        "outbox",
        ["about"],
        unique=False,
        sqlite_where=sa.text("state = 'waiting'"),
        postgresql_where=sa.text("state = 'waiting'"),
    )
    op.create_index(
        "ix_outbox_chat_waiting",
        "outbox",
        ["chat", "lane", "id"],
        unique=False,
        sqlite_where=sa.text("state = 'waiting'"),
        postgresql_where=sa.text("state = 'waiting'"),
    )
    op.create_index("ix_outbox_closed_at", "outbox", ["closed_at"], unique=False)
    op.create_index(
        "ix_outbox_urgency_waiting",
        "outbox",
        ["urgency", "id"],
        unique=False,
        sqlite_where=sa.text("state = 'waiting'"),
        postgresql_where=sa.text("state = 'waiting'"),
    )
    op.create_index(
        "uq_outbox_chat_sending",
        "outbox",
        ["chat"],
        unique=True,
        sqlite_where=sa.text("state = 'sending'"),
        postgresql_where=sa.text("state = 'sending'"),
    )
    op.create_table(
        "programmes",
        sa.Column("snapshot", sa.Text(), nullable=False),
        sa.Column("id", sa.Text(), nullable=False),
        sa.Column("workouts", sa.Integer(), nullable=False),
        sa.Column("body", sa.LargeBinary(), nullable=False),
        sa.PrimaryKeyConstraint("snapshot", name=op.f("pk_programmes")),
        sqlite_strict=True,
    )
    op.create_table(
        "relays",
        sa.Column("chat", BIG, autoincrement=False, nullable=False),
        sa.Column("message", BIG, autoincrement=False, nullable=False),
        sa.Column("about", sa.Text(), nullable=False),
        sa.Column("other_message", BIG, nullable=True),
        sa.Column("at", BIG, nullable=False),
        sa.PrimaryKeyConstraint("chat", "message", name=op.f("pk_relays")),
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_relays_about"), "relays", ["about"], unique=False)
    op.create_index(op.f("ix_relays_at"), "relays", ["at"], unique=False)
    op.create_table(
        "schedule",
        sa.Column("id", BIG, autoincrement=True, nullable=False),
        sa.Column("whose", sa.Text(), nullable=False),
        sa.Column("kind", sa.Text(), nullable=False),
        sa.Column("ref", sa.Text(), server_default="", nullable=False),
        sa.Column("zone", sa.Text(), nullable=False),
        sa.Column("hour", sa.Text(), nullable=True),
        sa.Column("days", sa.Text(), nullable=False),
        sa.Column("once_at", BIG, nullable=True),
        sa.Column("next_due_at", BIG, nullable=True),
        sa.Column("last_day", sa.Text(), nullable=True),
        sa.Column("last_at", BIG, nullable=True),
        sa.CheckConstraint(
            "kind IN ('session', 'cutoff', 'week', 'pain_check', 'nudge', 'digest')", name=op.f("ck_schedule_kind")
        ),
        sa.CheckConstraint("(hour IS NULL) = (once_at IS NOT NULL)", name=op.f("ck_schedule_daily_or_once")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_schedule")),
        sa.UniqueConstraint("whose", "kind", "ref", name=op.f("uq_schedule_whose_kind_ref")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_index(
        "ix_schedule_due",
        "schedule",
        ["next_due_at", "id"],
        unique=False,
        sqlite_where=sa.text("next_due_at IS NOT NULL"),
        postgresql_where=sa.text("next_due_at IS NOT NULL"),
    )
    op.create_table(
        "seals",
        sa.Column("id", sa.Integer(), autoincrement=False, nullable=False),
        sa.Column("proof", sa.LargeBinary(), nullable=False),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_seals")),
        sqlite_strict=True,
    )
    op.create_table(
        "slots",
        sa.Column("chat", BIG, autoincrement=False, nullable=False),
        sa.Column("slot", sa.Text(), nullable=False),
        sa.Column("message", BIG, nullable=False),
        sa.Column("body_hash", sa.Text(), nullable=False),
        sa.Column("at", BIG, nullable=False),
        sa.PrimaryKeyConstraint("chat", "slot", name=op.f("pk_slots")),
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_slots_at"), "slots", ["at"], unique=False)
    op.create_table(
        "talks",
        sa.Column("chat", BIG, autoincrement=False, nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("step", sa.Text(), nullable=False),
        sa.Column("data", sa.LargeBinary(), nullable=False),
        sa.Column("expires_at", BIG, nullable=True),
        sa.PrimaryKeyConstraint("chat", name=op.f("pk_talks")),
        sqlite_strict=True,
    )
    op.create_table(
        "clients",
        sa.Column("id", sa.Text(), nullable=False),
        sa.Column("coach", sa.Text(), nullable=False),
        sa.Column("chat", BIG, nullable=False),
        sa.Column("name", sa.LargeBinary(), nullable=False),
        sa.Column("unit", sa.Text(), nullable=False),
        sa.Column("zone", sa.Text(), nullable=False),
        sa.Column("days", sa.Text(), nullable=False),
        sa.Column("hour", sa.Text(), nullable=False),
        sa.Column("gym", sa.Text(), nullable=False),
        sa.Column("standing", sa.Text(), nullable=False),
        sa.Column("consent", sa.Text(), server_default="", nullable=False),
        sa.Column("programme", sa.Text(), server_default="", nullable=False),
        sa.Column("snapshot", sa.Text(), nullable=True),
        sa.Column("workout", sa.Integer(), server_default=sa.text("0"), nullable=False),
        sa.Column("workout_since", BIG, nullable=True),
        sa.Column("readiness_flagged", sa.Integer(), server_default=sa.text("0"), nullable=False),
        sa.Column("readiness_at", BIG, nullable=True),
        sa.Column("confirm_in_words", sa.Integer(), server_default=sa.text("0"), nullable=False),
        sa.Column("unreachable_at", BIG, nullable=True),
        sa.Column("last_day", sa.Text(), nullable=True),
        sa.Column("matters_open", sa.Integer(), server_default=sa.text("0"), nullable=False),
        sa.Column("joined_at", BIG, nullable=False),
        sa.CheckConstraint(
            "standing IN ('joining', 'active', 'paused', 'withdrawn')", name=op.f("ck_clients_standing")
        ),
        sa.CheckConstraint("unit IN ('kg', 'lb')", name=op.f("ck_clients_unit")),
        sa.ForeignKeyConstraint(["coach"], ["coaches.id"], name=op.f("fk_clients_coach")),
        sa.ForeignKeyConstraint(["snapshot"], ["programmes.snapshot"], name=op.f("fk_clients_snapshot")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_clients")),
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_clients_chat"), "clients", ["chat"], unique=False)
    op.create_index(op.f("ix_clients_coach"), "clients", ["coach"], unique=False)
    op.create_index(
        "uq_clients_chat_here",
        "clients",
        ["chat"],
        unique=True,
        sqlite_where=sa.text("standing != 'withdrawn'"),
        postgresql_where=sa.text("standing != 'withdrawn'"),
    )
    op.create_table(
        "invites",
        sa.Column("token_hash", sa.Text(), nullable=False),
        sa.Column("coach", sa.Text(), nullable=True),
        sa.Column("made_at", BIG, nullable=False),
        sa.Column("expires_at", BIG, nullable=False),
        sa.Column("used_at", BIG, nullable=True),
        sa.ForeignKeyConstraint(["coach"], ["coaches.id"], name=op.f("fk_invites_coach")),
        sa.PrimaryKeyConstraint("token_hash", name=op.f("pk_invites")),
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_invites_coach"), "invites", ["coach"], unique=False)
    op.create_table(
        "shelves",
        sa.Column("coach", sa.Text(), nullable=False),
        sa.Column("programme", sa.Text(), nullable=False),
        sa.Column("snapshot", sa.Text(), nullable=False),
        sa.Column("at", BIG, nullable=False),
        sa.ForeignKeyConstraint(["coach"], ["coaches.id"], name=op.f("fk_shelves_coach")),
        sa.ForeignKeyConstraint(["snapshot"], ["programmes.snapshot"], name=op.f("fk_shelves_snapshot")),
        sa.PrimaryKeyConstraint("coach", "programme", name=op.f("pk_shelves")),
        sqlite_strict=True,
    )
    op.create_table(
        "matters",
        sa.Column("id", BIG, autoincrement=True, nullable=False),
        sa.Column("client", sa.Text(), nullable=False),
        sa.Column("coach", sa.Text(), nullable=False),
        sa.Column("kind", sa.Text(), nullable=False),
        sa.Column("key", sa.Text(), nullable=False),
        sa.Column("session", sa.Text(), nullable=True),
        sa.Column("body", sa.LargeBinary(), nullable=False),
        sa.Column("holds", sa.Integer(), server_default=sa.text("0"), nullable=False),
        sa.Column("at", BIG, nullable=False),
        sa.Column("closed_at", BIG, nullable=True),
        sa.Column("handled_at", BIG, nullable=True),
        sa.CheckConstraint("kind IN ('pain', 'question', 'doubt')", name=op.f("ck_matters_kind")),
        sa.ForeignKeyConstraint(["client"], ["clients.id"], name=op.f("fk_matters_client")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_matters")),
        sa.UniqueConstraint("client", "kind", "key", name=op.f("uq_matters_client_kind_key")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_index(
        "ix_matters_client_open",
        "matters",
        ["client"],
        unique=False,
        sqlite_where=sa.text("closed_at IS NULL"),
        postgresql_where=sa.text("closed_at IS NULL"),
    )
    op.create_index("ix_matters_coach_key", "matters", ["coach", "key"], unique=False)
    op.create_index(
        "ix_matters_coach_open",
        "matters",
        ["coach"],
        unique=False,
        sqlite_where=sa.text("closed_at IS NULL"),
        postgresql_where=sa.text("closed_at IS NULL"),
    )
    op.create_table(
        "sessions",
        sa.Column("id", sa.Text(), nullable=False),
        sa.Column("client", sa.Text(), nullable=False),
        sa.Column("coach", sa.Text(), nullable=False),
        sa.Column("day", sa.Text(), nullable=False),
        sa.Column("workout", sa.Integer(), nullable=False),
        sa.Column("snapshot", sa.Text(), nullable=True),
        sa.Column("token", sa.Text(), nullable=False),
        sa.Column("planned_at", BIG, nullable=False),
        sa.Column("plan", sa.LargeBinary(), nullable=False),
        sa.Column("reports", sa.LargeBinary(), nullable=False),
        sa.Column("revision", BIG, nullable=False),
        sa.Column("ended", sa.Text(), nullable=True),
        sa.Column("minutes", sa.Integer(), nullable=True),
        sa.Column("effort", sa.Integer(), nullable=True),
        sa.Column("first_at", BIG, nullable=True),
        sa.Column("last_at", BIG, nullable=True),
        sa.Column("miss_at", BIG, nullable=True),
        sa.Column("handled_at", BIG, nullable=True),
        sa.Column("touched_at", BIG, nullable=False),
        sa.CheckConstraint("ended IN ('finished', 'skipped', 'missed')", name=op.f("ck_sessions_ended")),
        sa.CheckConstraint("effort BETWEEN 0 AND 10", name=op.f("ck_sessions_effort")),
        sa.ForeignKeyConstraint(["client"], ["clients.id"], name=op.f("fk_sessions_client")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_sessions")),
        sa.UniqueConstraint("token", name=op.f("uq_sessions_token")),
        sqlite_strict=True,
    )
    op.create_index("ix_sessions_client_day", "sessions", ["client", "day"], unique=False)
    op.create_index("ix_sessions_coach_day", "sessions", ["coach", "day"], unique=False)
    op.create_index(
        "ix_sessions_coach_missing",
        "sessions",
        ["coach", "miss_at"],
        unique=False,
        sqlite_where=sa.text("miss_at IS NOT NULL AND handled_at IS NULL AND ended IS NULL AND first_at IS NULL"),
        postgresql_where=sa.text("miss_at IS NOT NULL AND handled_at IS NULL AND ended IS NULL AND first_at IS NULL"),
    )
    op.create_index("ix_sessions_coach_touched_at", "sessions", ["coach", "touched_at"], unique=False)
    op.create_table(
        "strengths",
        sa.Column("client", sa.Text(), nullable=False),
        sa.Column("exercise", sa.Text(), nullable=False),
        sa.Column("session", sa.Text(), nullable=False),
        sa.Column("day", sa.Text(), nullable=False),
        sa.Column("before", sa.Text(), nullable=False),
        sa.Column("after", sa.Text(), nullable=False),
        sa.ForeignKeyConstraint(["client"], ["clients.id"], name=op.f("fk_strengths_client")),
        sa.PrimaryKeyConstraint("client", "exercise", name=op.f("pk_strengths")),
        sqlite_strict=True,
    )
    op.create_table(
        "sets",
        sa.Column("session", sa.Text(), nullable=False),
        sa.Column("place", sa.Integer(), autoincrement=False, nullable=False),
        sa.Column("client", sa.Text(), nullable=False),
        sa.Column("exercise", sa.Text(), nullable=False),
        sa.Column("day", sa.Text(), nullable=False),
        sa.Column("set_number", sa.Integer(), nullable=True),
        sa.Column("stage", sa.Text(), nullable=False),
        sa.Column("thousandths", BIG, nullable=True),
        sa.Column("unit", sa.Text(), nullable=True),
        sa.Column("reps", sa.Integer(), nullable=False),
        sa.Column("rir", sa.Text(), nullable=True),
        sa.Column("side", sa.Text(), nullable=True),
        sa.CheckConstraint("side IN ('left', 'right')", name=op.f("ck_sets_side")),
        sa.CheckConstraint("stage IN ('work', 'drop', 'mini', 'warmup')", name=op.f("ck_sets_stage")),
        sa.CheckConstraint("unit IN ('kg', 'lb')", name=op.f("ck_sets_unit")),
        sa.ForeignKeyConstraint(["session"], ["sessions.id"], name=op.f("fk_sets_session")),
        sa.PrimaryKeyConstraint("session", "place", name=op.f("pk_sets")),
        sqlite_strict=True,
    )
    op.create_index("ix_sets_client_exercise", "sets", ["client", "exercise", "day"], unique=False)
    for statement in SQLITE if op.get_bind().dialect.name == "sqlite" else POSTGRESQL:
        op.execute(statement)
