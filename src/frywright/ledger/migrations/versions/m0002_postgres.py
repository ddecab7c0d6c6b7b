"""PostgreSQL refuses changes too; entries of a kind are found in order and by time; numbers may pass two
thousand million.
"""

import sqlalchemy as sa
from alembic import op

revision = "0002"
down_revision = "0001"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Indexes by kind and number and by kind and time in place of the one by kind; on PostgreSQL triggers and
    wide numbers.
    """
    op.create_index("ix_entry_kind_number", "entry", ["kind", "number"])
    op.create_index("ix_entry_kind_happened", "entry", ["kind", "happened_at"])
    op.drop_index("ix_entry_kind", "entry")
    if op.get_bind().dialect.name != "postgresql":
        return
    for column in ("number", "replaces"):
        op.alter_column("entry", column, type_=sa.BigInteger)
    op.execute(
        "CREATE FUNCTION entry_kept() RETURNS trigger LANGUAGE plpgsql AS "
        "$$ BEGIN RAISE EXCEPTION 'entries are never altered, only superseded'; END $$"
    )
    op.execute(
        "CREATE TRIGGER entry_no_change BEFORE UPDATE OR DELETE ON entry FOR EACH ROW EXECUTE FUNCTION"
        " entry_kept()"
    )
    op.execute("CREATE TRIGGER entry_no_truncate BEFORE TRUNCATE ON entry EXECUTE FUNCTION entry_kept()")
