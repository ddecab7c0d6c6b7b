"""Probe logs: events, curves, fits, thermometers, sampling."""
