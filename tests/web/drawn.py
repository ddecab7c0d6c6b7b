"""Requests drawn from the interface's own description."""

from __future__ import annotations

import schemathesis
from hypothesis import HealthCheck, Phase, given, settings


def broken_by(app, token, most):
    """Answers of 500 and more that are not *not kept*, of so many requests at most to each address."""
    schema = schemathesis.openapi.from_asgi("/api/v1/openapi.json", app)
    headers = {"authorization": f"Bearer {token}", "host": "127.0.0.1"}
    failed = []
    for found in schema.get_all_operations():
        operation = found.ok()

        @settings(
            max_examples=most,
            deadline=None,
            database=None,
            suppress_health_check=list(HealthCheck),
            phases=[Phase.generate],
        )
        def one(case):
            answer = case.call(headers=headers)
            if answer.status_code >= 500:
                failed.append((case.method, case.path, answer.status_code, answer.text[:200]))

        given(case=operation.as_strategy())(one)()
    return failed
