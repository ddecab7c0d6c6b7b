"""Several kitchens in one store: entries and drafts say whose they are. Those of before are the first
kitchen's, unchanged.
"""

import sqlalchemy as sa
from alembic import op

revision = "0005"
down_revision = "0004"
branch_labels = None
depends_on = None

INDEXES = {
    "ix_entry_happened_at": ["site", "happened_at"],
    "ix_entry_kind_number": ["site", "kind", "number"],
    "ix_entry_kind_happened": ["site", "kind", "happened_at"],
}


def upgrade() -> None:
    """Add the kitchen's key to entries and drafts."""
    if op.get_bind().dialect.name == "postgresql":
        _widen_postgres()
    else:
        _copy_sqlite()


def _widen_postgres() -> None:
    for table in ("entry", "draft"):
        op.add_column(table, sa.Column("site", sa.String(40), nullable=False, server_default=""))
        op.alter_column(table, "site", server_default=None)
    for name, kind in (
        ("entry_replaces_fkey", "foreignkey"),
        ("entry_replaces_key", "unique"),
        ("entry_hash_key", "unique"),
        ("entry_pkey", "primary"),
    ):
        op.drop_constraint(name, "entry", type_=kind)
    op.create_primary_key("entry_pkey", "entry", ["site", "number"])
    op.create_unique_constraint("uq_entry_replaces", "entry", ["site", "replaces"])
    op.create_unique_constraint("uq_entry_hash", "entry", ["site", "hash"])
    op.create_foreign_key("fk_entry_replaces", "entry", "entry", ["site", "replaces"], ["site", "number"])
    op.drop_constraint("draft_pkey", "draft", type_="primary")
    op.create_primary_key("draft_pkey", "draft", ["site", "name"])
    for name, columns in INDEXES.items():
        op.drop_index(name, "entry")
        op.create_index(name, "entry", columns)


def _copy_sqlite() -> None:
    """SQLite changes no key of a table: a new one takes every row, in order, and the old one's place."""
    for what in ("update", "delete"):
        op.execute(f"DROP TRIGGER IF EXISTS entry_no_{what}")
    for name in INDEXES:
        op.drop_index(name, "entry")
    op.rename_table("entry", "entry_before")
    op.create_table(
        "entry",
        sa.Column("site", sa.String(40), nullable=False),
        sa.Column("number", sa.Integer, nullable=False),
        sa.Column("kind", sa.String(60), nullable=False),
        sa.Column("happened_at", sa.String(27), nullable=False),
        sa.Column("recorded_at", sa.String(27), nullable=False),
        sa.Column("author", sa.String(120), nullable=False),
        sa.Column("payload", sa.Text, nullable=False),
        sa.Column("replaces", sa.Integer, nullable=True),
        sa.Column("versions", sa.Text, nullable=False),
        sa.Column("previous_hash", sa.String(64), nullable=False),
        sa.Column("hash", sa.String(64), nullable=False),
        sa.PrimaryKeyConstraint("site", "number"),
        sa.ForeignKeyConstraint(
            ["site", "replaces"], ["entry.site", "entry.number"], name="fk_entry_replaces"
        ),
        sa.UniqueConstraint("site", "replaces", name="uq_entry_replaces"),
        sa.UniqueConstraint("site", "hash", name="uq_entry_hash"),
    )
    columns = (
        "number, kind, happened_at, recorded_at, author, payload, replaces, versions, previous_hash, hash"
    )
    op.execute(f"INSERT INTO entry (site, {columns}) SELECT '', {columns} FROM entry_before ORDER BY number")
    op.drop_table("entry_before")
    for name, columns_of in INDEXES.items():
        op.create_index(name, "entry", columns_of)
    for what in ("UPDATE", "DELETE"):
        op.execute(
            f"CREATE TRIGGER entry_no_{what.lower()} BEFORE {what} ON entry "
            "BEGIN SELECT RAISE(ABORT, 'entries are never altered, only superseded'); END"
        )
    op.rename_table("draft", "draft_before")
    op.create_table(
        "draft",
        sa.Column("site", sa.String(40), nullable=False),
        sa.Column("name", sa.String(40), nullable=False),
        sa.Column("revision", sa.Integer, nullable=False),
        sa.Column("body", sa.Text, nullable=False),
        sa.PrimaryKeyConstraint("site", "name"),
    )
    op.execute("INSERT INTO draft SELECT '', name, revision, body FROM draft_before")
    op.drop_table("draft_before")
