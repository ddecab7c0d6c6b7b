#!/bin/sh
# Installs Debian's PostgreSQL server for the record tests, unless one is there already. The tests start their own cluster with it.
set -eu
if command -v initdb >/dev/null 2>&1; then exit 0; fi
for place in /usr/lib/postgresql/*/bin; do
    if [ -x "$place/initdb" ]; then exit 0; fi
done
if ! command -v apt-get >/dev/null 2>&1; then
    echo "The record tests need PostgreSQL's server; install it with your system's package manager." >&2
    exit 1
fi
if [ "$(id -u)" = 0 ]; then asroot=""; else asroot="sudo"; fi
$asroot apt-get update -q
$asroot env DEBIAN_FRONTEND=noninteractive apt-get install -y -q postgresql
