"""Tables of the store."""

from __future__ import annotations

import sqlalchemy as sa

METADATA = sa.MetaData()
WIDE = sa.BigInteger().with_variant(sa.Integer, "sqlite")

ENTRY = sa.Table(
    "entry",
    METADATA,
    sa.Column("site", sa.String(40), primary_key=True),
    sa.Column("number", WIDE, primary_key=True, autoincrement=False),
    sa.Column("kind", sa.String(60), nullable=False),
    sa.Column("happened_at", sa.String(27), nullable=False),
    sa.Column("recorded_at", sa.String(27), nullable=False),
    sa.Column("author", sa.String(120), nullable=False),
    sa.Column("payload", sa.Text, nullable=False),
    sa.Column("replaces", WIDE, nullable=True),
    sa.Column("versions", sa.Text, nullable=False),
    sa.Column("previous_hash", sa.String(64), nullable=False),
    sa.Column("hash", sa.String(64), nullable=False),
    sa.ForeignKeyConstraint(["site", "replaces"], ["entry.site", "entry.number"], name="fk_entry_replaces"),
    sa.UniqueConstraint("site", "replaces", name="uq_entry_replaces"),
    sa.UniqueConstraint("site", "hash", name="uq_entry_hash"),
    sa.Index("ix_entry_happened_at", "site", "happened_at"),
    sa.Index("ix_entry_kind_number", "site", "kind", "number"),
    sa.Index("ix_entry_kind_happened", "site", "kind", "happened_at"),
)
"""Entries of every kitchen: ``site`` is the kitchen's key, and numbers and chain begin anew in each."""

ACCOUNT = sa.Table(
    "account",
    METADATA,
    sa.Column("name", sa.String(80), primary_key=True),
    sa.Column("role", sa.String(20), nullable=False),
    sa.Column("password_hash", sa.String(200), nullable=False),
    sa.Column("pin_hash", sa.String(200), nullable=False),
    sa.Column("active", sa.Boolean, nullable=False),
)

DEVICE = sa.Table(
    "device",
    METADATA,
    sa.Column("token_hash", sa.String(64), primary_key=True),
    sa.Column("name", sa.String(80), nullable=False),
    sa.Column("role", sa.String(20), nullable=False),
    sa.Column("active", sa.Boolean, nullable=False),
)

SESSION = sa.Table(
    "session",
    METADATA,
    sa.Column("token_hash", sa.String(64), primary_key=True),
    sa.Column("name", sa.String(80), nullable=False),
    sa.Column("device_hash", sa.String(64), nullable=False),
    sa.Column("begun_at", sa.String(27), nullable=False),
    sa.Column("seen_at", sa.String(27), nullable=False),
)

ANSWERED = sa.Table(
    "answered",
    METADATA,
    sa.Column("mark", sa.String(64), primary_key=True),
    sa.Column("body", sa.String(64), nullable=False),
    sa.Column("answer", sa.Text, nullable=False),
)
"""Answers to writes by their idempotency key."""

DRAFT = sa.Table(
    "draft",
    METADATA,
    sa.Column("site", sa.String(40), primary_key=True),
    sa.Column("name", sa.String(40), primary_key=True),
    sa.Column("revision", sa.Integer, nullable=False),
    sa.Column("body", sa.Text, nullable=False),
)
"""What somebody is still filling in; it may change, and what it becomes is an entry."""

PRIVATE = sa.Table(
    "private",
    METADATA,
    sa.Column("ref", sa.String(64), primary_key=True),
    sa.Column("salt", sa.String(32), nullable=False),
    sa.Column("value", sa.String(200), nullable=False),
)
"""What is private of people, by the reference that the chain holds; it may be erased."""

PERSON = sa.Table(
    "person",
    METADATA,
    sa.Column("ref", sa.String(64), primary_key=True),
    sa.Column("salt", sa.String(32), nullable=False),
    sa.Column("name", sa.String(200), nullable=False),
    sa.Column("removed_on", sa.String(10), nullable=False),
    sa.Index("ix_person_name", "name"),
)
"""Names of people, by the reference that entries hold; one may be removed."""

HANDED_IN = sa.Table(
    "handed_in",
    METADATA,
    sa.Column("site", sa.String(40), primary_key=True),
    sa.Column("day", sa.String(10), primary_key=True),
    sa.Column("who", sa.String(80), primary_key=True),
    sa.Column("files_count", sa.Integer, nullable=False),
    sa.Column("size_bytes", WIDE, nullable=False),
)
"""Files that people handed in, by kitchen, day and person (by reference)."""
