"""What stands beside a client's programme, their pace, and two more kinds of rules: ends of a pause and of a rest."""

import sqlalchemy as sa
from alembic import op

revision = "0006"
down_revision = "0005"
branch_labels = None
depends_on = None

BIG = sa.BigInteger().with_variant(sa.Integer(), "sqlite")
KINDS = "kind IN ('session', 'cutoff', 'week', 'pain_check', 'nudge', 'digest', 'resume', 'rest')"


def upgrade() -> None:
    """Two columns more of clients; the check on a rule's kind takes two kinds more."""
    op.add_column("clients", sa.Column("life", sa.LargeBinary(), nullable=True))
    op.add_column("clients", sa.Column("pace", sa.LargeBinary(), nullable=True))
    if op.get_bind().dialect.name == "sqlite":
        _schedule_anew()
    else:
        op.drop_constraint(op.f("ck_schedule_kind"), "schedule")
        op.create_check_constraint(op.f("ck_schedule_kind"), "schedule", KINDS)


def _schedule_anew() -> None:
    """SQLite can't change a check: a new table with the old one's rows, its numbers going on where they were."""
    _create_schedule("schedule_new")
    op.execute("INSERT INTO schedule_new SELECT * FROM schedule")
    op.execute("DELETE FROM sqlite_sequence WHERE name = 'schedule_new'")
    op.execute(
        "INSERT INTO sqlite_sequence (name, seq) "
        "SELECT 'schedule_new', seq FROM sqlite_sequence WHERE name = 'schedule'"
    )
    op.drop_table("schedule")
    op.rename_table("schedule_new", "schedule")
    op.create_index(
        "ix_schedule_due", "schedule", ["next_due_at", "id"], sqlite_where=sa.text("next_due_at IS NOT NULL")
    )


def _create_schedule(name: str) -> None:
    op.create_table(
        name,
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
        sa.CheckConstraint("(hour IS NULL) = (once_at IS NOT NULL)", name=op.f("ck_schedule_daily_or_once")),
        sa.CheckConstraint(KINDS, name=op.f("ck_schedule_kind")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_schedule")),
        sa.UniqueConstraint("whose", "kind", "ref", name=op.f("uq_schedule_whose_kind_ref")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
