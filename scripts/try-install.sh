#!/bin/sh
# Installs the Debian package for real, as root, on a copy of this system that is gone afterwards: dependencies by the
# lock file from the registry, the service's user, the unit's own command with two processes under that user with its
# limits and no capability, an update, a removal. Needs root, overlayfs and the program's own Python. Takes minutes.
#
#     sh scripts/try-install.sh PYTHON
set -eu
here=$(cd "$(dirname "$0")/.." && pwd)
python=${1:-python3}
[ "$(id -u)" = 0 ] || { echo "try-install.sh: run it as root" >&2; exit 1; }
if [ -z "${FRYWRIGHT_TRYING:-}" ]; then
    place=$(mktemp -d)
    trap 'rm -rf "$place"' EXIT
    for version in 0.0.9 0.1.0; do "$python" "$here/scripts/build_deb.py" "$place/$version.deb" --version "$version"; done
    mkdir "$place/over" "$place/root"
    FRYWRIGHT_TRYING=$place unshare --mount sh "$0"
    exit
fi
place=$FRYWRIGHT_TRYING
if [ -z "${FRYWRIGHT_INSIDE:-}" ]; then
    mount -t tmpfs -o size=6g tmpfs "$place/over"
    mkdir "$place/over/up" "$place/over/work"
    mount -t overlay overlay -o "lowerdir=/,upperdir=$place/over/up,workdir=$place/over/work" "$place/root"
    mount --bind /proc "$place/root/proc"
    mount --bind /dev "$place/root/dev"
    cp "$place"/*.deb "$0" "$place/root/mnt/"
    FRYWRIGHT_INSIDE=1 exec chroot "$place/root" /bin/sh "/mnt/$(basename "$0")"
fi

unset PYTHONPATH
as="setpriv --reuid frywright --regid frywright --clear-groups --no-new-privs --bounding-set -all --inh-caps -all"
serves() {
    line=$(sed -n 's/^ExecStart=//p' /usr/lib/systemd/system/frywright.service | sed 's/[$]{\([A-Z_]*\)}/$\1/g')
    : >/tmp/said
    # shellcheck disable=SC2086
    $as prlimit --nofile=4096 --nproc=512 sh -c "umask 077; exec $line" >/tmp/said 2>/tmp/log &
    server=$!
    for _ in $(seq 240); do grep -q " is at " /tmp/said && break; sleep 0.5; done
    at=$(sed -n 's/^Frywright is at \(.*\/\) .*/\1/p' /tmp/said)
    python3 -c "import sys, urllib.request; urllib.request.urlopen(sys.argv[1] + 'health/ready', timeout=90)" "$at"
    ps -o user:12,args --ppid "$server" | grep -c '^frywright.*spawn_main' | grep -qx "$FRYWRIGHT_PROCESSES"
    kill -TERM "$server"
    wait "$server"
    echo "$1: ready with $FRYWRIGHT_PROCESSES processes, stopped by itself"
}
dpkg -i /mnt/0.0.9.deb
set -a
. /etc/frywright/frywright.conf
FRYWRIGHT_CACHE=/var/cache/frywright FRYWRIGHT_PORT=0
set +a
serves installed
dpkg -i /mnt/0.1.0.deb
[ "$(stat -c '%U %a' /var/lib/frywright/backups/before-0.1.0.zip)" = "frywright 600" ]
serves updated
dpkg --purge frywright
[ -e /var/lib/frywright/frywright.db ] && [ ! -e /opt/frywright ] && [ ! -e /etc/frywright ]
echo "removed: what was recorded stays"
