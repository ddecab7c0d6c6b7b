"""Tables of the store."""

from __future__ import annotations

import sqlalchemy as sa

METADATA = sa.MetaData()

ENTRY = sa.Table(
    "entry",
    METADATA,
    sa.Column("number", sa.Integer, primary_key=True, autoincrement=False),
    sa.Column("kind", sa.String(60), nullable=False, index=True),
    sa.Column("happened_at", sa.String(27), nullable=False, index=True),
    sa.Column("recorded_at", sa.String(27), nullable=False),
    sa.Column("author", sa.String(120), nullable=False),
    sa.Column("payload", sa.Text, nullable=False),
    sa.Column("replaces", sa.Integer, sa.ForeignKey("entry.number"), nullable=True, unique=True),
    sa.Column("versions", sa.Text, nullable=False),
    sa.Column("previous_hash", sa.String(64), nullable=False),
    sa.Column("hash", sa.String(64), nullable=False, unique=True),
)
