"""Two sites on one PostgreSQL server, from one script and without a container: python examples/two_sites.py

Each site has its own database and chain. They cook, probe and tell their oil; the office compares them, sees
who runs which version, backs one up and brings it back into a plain file. Everything is invented; the server
is stopped and removed at the end.
"""

from __future__ import annotations

import os
import sys
import tempfile
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent.parent))

from examples.postgres import cluster, new_database

from frywright.ledger.backup import backup, restore
from frywright.ledger.store import FILES_SETTING, Store
from frywright.rooms.care import vat
from frywright.rooms.care.upkeep import today_of
from frywright.rooms.clock import now
from frywright.rooms.fleet import fleet
from frywright.rooms.kitchen import remember_kitchen, remembered_kitchen
from frywright.rooms.readings import tell_probe
from frywright.trial.kitchens import demo_text


def main() -> None:
    """Play it and say what happened."""
    with cluster() as server, tempfile.TemporaryDirectory() as folder:
        os.environ[FILES_SETTING] = str(Path(folder) / "originals")
        shops = []
        for name, altitude, temps in (("juniper", 5420, (176, 178, 181)), ("saltmarsh", 12, (172, 158, 180))):
            store = Store.named(new_database(server, name), now)
            remember_kitchen(
                store, demo_text().replace("altitude_ft = 5420", f"altitude_ft = {altitude}"), f"{name}.toml"
            )
            kitchen = remembered_kitchen(store)
            for temp in temps:
                told = {
                    "fryer": "alder",
                    "product": "bone_in",
                    "temp": str(temp),
                    "thermometer": "T1",
                    "pieces": "32",
                    "who": "Ana",
                }
                _, case = tell_probe(store, kitchen, told)
                if case:
                    print(f"{name}: {temp} °F is below the limit, case {case.number} is open")
            vat.tell_oil(store, kitchen, {"vat": "alder", "what": "top_up", "amount": "5 lb", "who": "Ana"})
            shops.append((name, store, kitchen))
        for row in fleet.compare(shops, today_of(shops[0][2])):
            if row.ratio == "lift_core_c":
                read = f"{row.value:.1f} °C from {row.count} readings, {row.state}"
                print(f"{row.site} ({row.group}): {row.title} {read}")
        print(f"held by read-back: {sorted({row.held for row in fleet.versions(shops)})}")
        copy = Path(folder) / "saltmarsh.zip"
        told = backup(shops[1][1], copy)
        file = Store.file(Path(folder) / "saltmarsh.db", now)
        restore(copy, file)
        assert file.verify() == shops[1][1].verify()
        print(f"saltmarsh: {told.entries_count} entries from PostgreSQL into a plain file, the same chain")
        for _, store, _ in shops:
            store.close()


if __name__ == "__main__":
    main()
