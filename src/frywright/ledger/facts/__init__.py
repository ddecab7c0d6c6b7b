"""What may be written into the ledger: one frozen dataclass for each kind of entry."""
