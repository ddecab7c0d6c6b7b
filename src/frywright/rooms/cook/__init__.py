"""Cook: programs, cards, read-backs, probing."""
