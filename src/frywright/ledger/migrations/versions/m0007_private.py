"""What is private of a person lies beside the entries, which name it by reference: it may be erased."""

import sqlalchemy as sa
from alembic import op

revision = "0007"
down_revision = "0005"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """One table beside the entries."""
    op.create_table(
        "private",
        sa.Column("ref", sa.String(64), primary_key=True),
        sa.Column("salt", sa.String(32), nullable=False),
        sa.Column("value", sa.String(200), nullable=False),
    )
