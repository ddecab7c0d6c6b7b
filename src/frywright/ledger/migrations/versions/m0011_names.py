"""Names of people lie beside the entries, which hold references: a name may be removed. Files that people
hand in are counted.
"""

import sqlalchemy as sa
from alembic import op

revision = "0011"
down_revision = "0007"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Two tables beside the entries; entries of before stay as they were written."""
    op.create_table(
        "person",
        sa.Column("ref", sa.String(64), primary_key=True),
        sa.Column("salt", sa.String(32), nullable=False),
        sa.Column("name", sa.String(200), nullable=False),
        sa.Column("removed_on", sa.String(10), nullable=False),
    )
    op.create_index("ix_person_name", "person", ["name"])
    op.create_table(
        "handed_in",
        sa.Column("site", sa.String(40), primary_key=True),
        sa.Column("day", sa.String(10), primary_key=True),
        sa.Column("who", sa.String(80), primary_key=True),
        sa.Column("files_count", sa.Integer, nullable=False),
        sa.Column("size_bytes", sa.BigInteger, nullable=False),
    )
