#!/bin/sh
# Installs the OpenID provider that the tests sign in at, by its lock file, with Debian's Node where none is there. The tests start it.
set -eu
folder="$(cd "$(dirname "$0")/../tests/openid" && pwd)"
if [ -d "$folder/node_modules/oidc-provider" ]; then exit 0; fi
if ! command -v npm >/dev/null 2>&1; then
    if ! command -v apt-get >/dev/null 2>&1; then
        echo "The tests of signing in at the company need Node and npm; install them with your system's package manager." >&2
        exit 1
    fi
    if [ "$(id -u)" = 0 ]; then asroot=""; else asroot="sudo"; fi
    $asroot apt-get update -q
    $asroot env DEBIAN_FRONTEND=noninteractive apt-get install -y -q --no-install-recommends nodejs npm
fi
cd "$folder"
npm ci --no-audit --no-fund --ignore-scripts --loglevel=error
