"""An entry may be emptied at the end of its time, in the one way that the database lets pass: number,
moments, link and hash stay, it is two years old, and a later entry says that entries were dropped.
"""

from alembic import op

revision = "0013"
down_revision = "0011"
branch_labels = None
depends_on = None

STAYS = ("site", "number", "happened_at", "recorded_at", "replaces", "previous_hash", "hash")
REFUSED = "entries are never altered, only superseded"


def _emptied(old_enough: str) -> str:
    same = " AND ".join(f"NEW.{name} IS NOT DISTINCT FROM OLD.{name}" for name in STAYS)
    return (
        f"{same} AND NEW.kind = 'dropped' AND OLD.kind <> 'dropped' AND NEW.author = ''"
        " AND NEW.versions = '{}' AND NEW.payload = '{\"kind\":\"' || OLD.kind || '\"}'"
        f" AND OLD.recorded_at < {old_enough} AND EXISTS (SELECT 1 FROM entry later WHERE later.site ="
        " OLD.site AND later.kind = 'entries_dropped' AND later.number > OLD.number)"
    )


def upgrade() -> None:
    """Let pass what empties an entry as told above; refuse everything else as before."""
    if op.get_bind().dialect.name == "postgresql":
        old_enough = "to_char(now() AT TIME ZONE 'UTC' - interval '2 years', 'YYYY-MM-DD')"
        op.execute(
            "CREATE OR REPLACE FUNCTION entry_kept() RETURNS trigger LANGUAGE plpgsql AS $$ BEGIN"
            f" IF TG_OP = 'UPDATE' THEN IF {_emptied(old_enough)} THEN RETURN NEW; END IF; END IF;"
            f" RAISE EXCEPTION '{REFUSED}'; END $$"
        )
        return
    fits = _emptied("strftime('%Y-%m-%d', 'now', '-2 years')").replace("IS NOT DISTINCT FROM", "IS")
    op.execute("DROP TRIGGER IF EXISTS entry_no_update")
    op.execute(
        f"CREATE TRIGGER entry_no_update BEFORE UPDATE ON entry WHEN NOT ({fits})"
        f" BEGIN SELECT RAISE(ABORT, '{REFUSED}'); END"
    )
