"""Timings and accuracy of the program as it runs: its own settings hold before NumPy is loaded."""

import frywright  # noqa: F401
