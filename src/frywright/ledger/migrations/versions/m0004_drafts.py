"""Drafts: what somebody is still filling in. They may change and are no entries."""

import sqlalchemy as sa
from alembic import op

revision = "0004"
down_revision = "0003"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """One table beside the entries."""
    op.create_table(
        "draft",
        sa.Column("name", sa.String(40), primary_key=True),
        sa.Column("revision", sa.Integer, nullable=False),
        sa.Column("body", sa.Text, nullable=False),
    )
