#!/bin/sh
# Installs Debian's Tesseract for the test that reads a plate from a picture, unless one is there already. The program runs without it.
set -eu
if command -v tesseract >/dev/null 2>&1; then exit 0; fi
if ! command -v apt-get >/dev/null 2>&1; then
    echo "The test that reads a plate needs Tesseract; install it with your system's package manager." >&2
    exit 1
fi
if [ "$(id -u)" = 0 ]; then asroot=""; else asroot="sudo"; fi
$asroot apt-get update -q
$asroot env DEBIAN_FRONTEND=noninteractive apt-get install -y -q tesseract-ocr
