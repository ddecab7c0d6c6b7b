"""Entries: append-only, chained by hash; the database itself refuses changes."""

import sqlalchemy as sa
from alembic import op

revision = "0001"
down_revision = None
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Create the entry table and, on SQLite, triggers that refuse update and delete."""
    op.create_table(
        "entry",
        sa.Column("number", sa.Integer, primary_key=True, autoincrement=False),
        sa.Column("kind", sa.String(60), nullable=False),
        sa.Column("happened_at", sa.String(27), nullable=False),
        sa.Column("recorded_at", sa.String(27), nullable=False),
        sa.Column("author", sa.String(120), nullable=False),
        sa.Column("payload", sa.Text, nullable=False),
        sa.Column("replaces", sa.Integer, sa.ForeignKey("entry.number"), nullable=True, unique=True),
        sa.Column("versions", sa.Text, nullable=False),
        sa.Column("previous_hash", sa.String(64), nullable=False),
        sa.Column("hash", sa.String(64), nullable=False, unique=True),
    )
    op.create_index("ix_entry_kind", "entry", ["kind"])
    op.create_index("ix_entry_happened_at", "entry", ["happened_at"])
    if op.get_bind().dialect.name == "sqlite":
        for what in ("UPDATE", "DELETE"):
            op.execute(
                f"CREATE TRIGGER entry_no_{what.lower()} BEFORE {what} ON entry "
                "BEGIN SELECT RAISE(ABORT, 'entries are never altered, only superseded'); END"
            )
