"""Care: oil, close, cleaning, commissioning, training."""
