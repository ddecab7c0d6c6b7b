"""A PostgreSQL server for the tests that run on both databases; without it they fail."""

from __future__ import annotations

import pytest
from examples.postgres import cluster


@pytest.fixture(scope="session")
def postgres():
    with cluster() as server:
        yield server
