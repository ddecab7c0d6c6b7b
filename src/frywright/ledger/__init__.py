"""The append-only store, its facts, accounts, originals and backups."""
