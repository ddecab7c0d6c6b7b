"""Tables of the store."""

from __future__ import annotations

import sqlalchemy as sa

METADATA = sa.MetaData()
WIDE = sa.BigInteger().with_variant(sa.Integer, "sqlite")

ENTRY = sa.Table(
    "entry",
    METADATA,
    sa.Column("number", WIDE, primary_key=True, autoincrement=False),
    sa.Column("kind", sa.String(60), nullable=False),
    sa.Column("happened_at", sa.String(27), nullable=False, index=True),
    sa.Column("recorded_at", sa.String(27), nullable=False),
    sa.Column("author", sa.String(120), nullable=False),
    sa.Column("payload", sa.Text, nullable=False),
    sa.Column("replaces", WIDE, sa.ForeignKey("entry.number"), nullable=True, unique=True),
    sa.Column("versions", sa.Text, nullable=False),
    sa.Column("previous_hash", sa.String(64), nullable=False),
    sa.Column("hash", sa.String(64), nullable=False, unique=True),
    sa.Index("ix_entry_kind_number", "kind", "number"),
)
