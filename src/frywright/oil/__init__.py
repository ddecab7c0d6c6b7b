"""Ageing, filling and worth of frying oil."""
