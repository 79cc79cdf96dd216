"""The programme that somebody had before the one they have, for an undo."""

import sqlalchemy as sa
from alembic import op

revision = "0004"
down_revision = "0003"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """One column more of clients."""
    op.add_column("clients", sa.Column("snapshot_before", sa.Text(), nullable=True))
