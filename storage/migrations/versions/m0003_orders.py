"""The coach's standing orders for a client, and the day on which the programme was given."""

import sqlalchemy as sa
from alembic import op

revision = "0003"
down_revision = "0002"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Two columns more of clients."""
    op.add_column("clients", sa.Column("orders", sa.LargeBinary(), nullable=True))
    op.add_column("clients", sa.Column("begun", sa.Text(), nullable=True))
