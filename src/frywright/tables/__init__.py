"""Columns of figures out of files that people and loggers write."""
