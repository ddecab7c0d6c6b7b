"""Forecast, drops and the live day."""
