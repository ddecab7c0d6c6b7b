"""Accounts, sessions, devices and answers to repeated writes: they may change and are no entries; what is
done with them is.
"""

import sqlalchemy as sa
from alembic import op

revision = "0003"
down_revision = "0002"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Tables beside the entries."""
    op.create_table(
        "account",
        sa.Column("name", sa.String(80), primary_key=True),
        sa.Column("role", sa.String(20), nullable=False),
        sa.Column("password_hash", sa.String(200), nullable=False),
        sa.Column("pin_hash", sa.String(200), nullable=False),
        sa.Column("active", sa.Boolean, nullable=False),
    )
    op.create_table(
        "device",
        sa.Column("token_hash", sa.String(64), primary_key=True),
        sa.Column("name", sa.String(80), nullable=False),
        sa.Column("role", sa.String(20), nullable=False),
        sa.Column("active", sa.Boolean, nullable=False),
    )
    op.create_table(
        "session",
        sa.Column("token_hash", sa.String(64), primary_key=True),
        sa.Column("name", sa.String(80), nullable=False),
        sa.Column("device_hash", sa.String(64), nullable=False),
        sa.Column("begun_at", sa.String(27), nullable=False),
        sa.Column("seen_at", sa.String(27), nullable=False),
    )
    op.create_table(
        "answered",
        sa.Column("mark", sa.String(64), primary_key=True),
        sa.Column("body", sa.String(64), nullable=False),
        sa.Column("answer", sa.Text, nullable=False),
    )
