#!/bin/sh
# Installs Debian's Chromium for the browser tests, unless a Chromium is there already.
set -eu
for name in chromium chromium-browser google-chrome; do
    if command -v "$name" >/dev/null 2>&1; then exit 0; fi
done
if ! command -v apt-get >/dev/null 2>&1; then
    echo "The browser tests need Chromium; install it with your system's package manager." >&2
    exit 1
fi
if [ "$(id -u)" = 0 ]; then asroot=""; else asroot="sudo"; fi
$asroot apt-get update -q
$asroot apt-get install -y -q chromium
