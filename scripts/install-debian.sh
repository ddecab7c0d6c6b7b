#!/bin/sh
# Installs what the tests of the Debian package and of time stamps need, if it is not there: dpkg-deb, systemd's own
# checker of units, and OpenSSL.
set -eu
need=""
command -v dpkg-deb >/dev/null 2>&1 || need="$need dpkg"
command -v systemd-analyze >/dev/null 2>&1 || need="$need systemd"
command -v openssl >/dev/null 2>&1 || need="$need openssl"
[ -z "$need" ] && exit 0
sudo=""
[ "$(id -u)" = 0 ] || sudo=sudo
$sudo apt-get update -q
$sudo env DEBIAN_FRONTEND=noninteractive apt-get install -q -y --no-install-recommends $need
