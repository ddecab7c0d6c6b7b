"""Day: sales, forecast, drops, the live board."""
