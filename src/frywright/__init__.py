"""Frywright, the workbench of the person who runs the fryers.

The matrices here have tens of rows. Threads of the linear algebra wait for each other longer than they
compute, and take the cores from the cooks, so it stays on one thread unless the machine's owner says other.
"""

import os

os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")
