# Two commands do everything on a fresh machine: make run, make test.
PYTHON ?= python3
VENV := .venv
BIN := $(VENV)/bin
STORE ?= var/demo.db
unexport PYTHONDONTWRITEBYTECODE  # read once: every process of the tests would compile all of the program anew

# Where memory is plenty, tests keep their stores there: each waits for the disk at every entry, and there are thousands.
ROOMY := $(shell df -Pk /dev/shm 2>/dev/null | awk 'NR == 2 && $$4 > 4000000 {print "/dev/shm"}')
export PYTEST_DEBUG_TEMPROOT := $(ROOMY)

.PHONY: run test check types quick slow browser bench mutants validation lock clean

run: $(VENV)/.runtime  ## play the invented demo into a new store, serve on loopback, open the page, print its address
	$(BIN)/frywright serve --demo --store $(STORE)

test: $(VENV)/.dev check  ## everything, installing what the tests need
	sh scripts/install-browser.sh
	sh scripts/install-postgres.sh
	sh scripts/install-mosquitto.sh
	sh scripts/install-openid.sh
	sh scripts/install-tesseract.sh
	sh scripts/install-debian.sh
	$(MAKE) --no-print-directory -j 2 slow browser

slow: $(VENV)/.dev
	$(BIN)/python -m pytest -q -n 3 --dist worksteal -m "slow and not browser"

browser: $(VENV)/.dev  ## beside the slow ones, which compute while its pages wait for clocks
	$(BIN)/python -m pytest -q -n 2 --dist loadfile --no-loadscope-reorder -m browser

check: $(VENV)/.dev  ## lint, types, contracts, quick tests; contracts and types beside the tests
	$(BIN)/ruff format --check src tests benchmarks scripts examples
	$(BIN)/ruff check src tests benchmarks scripts examples
	$(MAKE) --no-print-directory -j 2 types quick

types: $(VENV)/.dev
	$(BIN)/lint-imports
	$(BIN)/mypy

quick: $(VENV)/.dev
	$(BIN)/python -m pytest -q -n 3 --dist worksteal -m "not slow and not browser"

bench: $(VENV)/.dev  ## what fell in speed, timings, and accuracy against SciPy and FiPy in the same run
	$(BIN)/python -m benchmarks.engine
	$(BIN)/python -m benchmarks.desk
	$(BIN)/python -m benchmarks.evidence
	$(BIN)/python -m benchmarks.live
	$(BIN)/python -m benchmarks.day
	$(BIN)/python -m benchmarks.oil
	$(BIN)/python -m benchmarks.records
	$(BIN)/python -m benchmarks.hosting
	$(BIN)/python -m benchmarks.kitchens
	$(BIN)/python -m benchmarks.sites
	sh scripts/install-browser.sh
	$(BIN)/python -m benchmarks.page
	$(BIN)/python -m benchmarks.history

mutants: $(VENV)/.dev  ## break the program in 60 places and see whether a test fails; its table goes into docs/reference/quality.md
	$(BIN)/python scripts/mutants.py $(MUTANTS)

validation: $(VENV)/.dev  ## rewrite docs/theory/validation.md from the engine
	$(BIN)/python -m benchmarks.validation_table > docs/theory/validation.md

$(VENV)/bin/python:
	$(PYTHON) -m venv $(VENV)

$(VENV)/.runtime: $(VENV)/bin/python requirements.lock pyproject.toml
	$(BIN)/python -m pip install -q --require-hashes -r requirements.lock
	$(BIN)/python -m pip install -q --no-deps -e .
	$(BIN)/frywright prepare
	touch $@

$(VENV)/.dev: $(VENV)/.runtime requirements-dev.lock
	$(BIN)/python -m pip install -q --require-hashes -r requirements-dev.lock
	touch $@

lock:  ## needs uv; hashes only, no addresses
	uv pip compile --universal --generate-hashes --python-version 3.11 -q pyproject.toml -o requirements.lock
	uv pip compile --universal --generate-hashes --python-version 3.11 -q --extra dev pyproject.toml -o requirements-dev.lock
	sed -i 's/^#    uv .*/#    make lock/' requirements.lock requirements-dev.lock

clean:
	rm -rf $(VENV) var build src/*.egg-info
