"""The tests. Linear algebra takes one thread in each process: two workers have two cores, and threads without
a core spin (ten fits with two threads, while others used the machine, took 2.4 to 2.9 times the processor).
"""

import os

os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")
