"""``frywright care`` as people run it."""

from __future__ import annotations

import json

from tests.cli.test_commands import frywright


def test_site_and_energy_by_command():
    """A 240 V unit on 208 V is a no-go with its three quarters; a day's energy adds up; exit codes tell go from no-go."""
    plate = ("care", "site", "--kw", "13.5", "--volts", "240", "--phases", "3")
    bad = frywright(
        *plate,
        "--measured-volts",
        "208",
        "--measured-phases",
        "3",
        "--breaker",
        "50",
        "--hood",
        "yes",
        "--suppression",
        "yes",
        "--flame-in",
        "20",
        "--json",
    )
    told = json.loads(bad.stdout)
    assert bad.returncode == 1
    assert told["outcome"] == "fails"
    assert "75.1 %" in told["points"][0]["text"]
    good = frywright(
        *plate,
        "--measured-volts",
        "238",
        "--measured-phases",
        "3",
        "--breaker",
        "50",
        "--hood",
        "yes",
        "--suppression",
        "yes",
        "--flame-in",
        "20",
    )
    assert good.returncode == 0
    assert "20.96 kWh" in frywright("care", "energy", "13", "80", "40").stdout
    assert frywright("care", "site", "--hood", "maybe").returncode == 2
