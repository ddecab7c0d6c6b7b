"""Care of a fryer: counters, gates, commissioning, energy, drills."""
