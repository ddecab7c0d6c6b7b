#!/bin/sh
# Installs Debian's Mosquitto for the tests of the live probe, unless one is there already. The tests start their own broker with it.
set -eu
for place in /usr/sbin/mosquitto /usr/local/sbin/mosquitto; do
    if [ -x "$place" ]; then exit 0; fi
done
if command -v mosquitto >/dev/null 2>&1; then exit 0; fi
if ! command -v apt-get >/dev/null 2>&1; then
    echo "The tests of the live probe need Mosquitto; install it with your system's package manager." >&2
    exit 1
fi
if [ "$(id -u)" = 0 ]; then asroot=""; else asroot="sudo"; fi
$asroot apt-get update -q
$asroot env DEBIAN_FRONTEND=noninteractive apt-get install -y -q --no-install-recommends mosquitto
