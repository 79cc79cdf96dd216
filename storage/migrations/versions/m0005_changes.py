"""What changed a session's plan after it was sent."""

import sqlalchemy as sa
from alembic import op

revision = "0005"
down_revision = "0004"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """One column more of sessions."""
    op.add_column("sessions", sa.Column("changes", sa.LargeBinary(), nullable=True))
