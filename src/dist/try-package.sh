#!/usr/bin/env bash
# Installs the package in a clean Debian root, runs the demo and the window there, removes it, and says what is left.
# Run as root, with debootstrap installed: src/dist/try-package.sh target/dist/faintwind_*.deb [FOLDER]
set -euo pipefail
deb=$(realpath "$1")
root=${2:-$(mktemp -d)}
mirror=$(cat /etc/apt/sources.list /etc/apt/sources.list.d/*.sources 2>/dev/null | sed -n 's/^URIs: //p;s/^deb [^h]*\(http[^ ]*\).*/\1/p' | head -n 1 || true)

[ -d "$root/usr/bin" ] || debootstrap --variant=minbase bookworm "$root" "${mirror:-http://deb.debian.org/debian}"
cp /etc/resolv.conf "$root/etc/" 2>/dev/null || true
cp /etc/apt/apt.conf.d/99*  "$root/etc/apt/apt.conf.d/" 2>/dev/null || true
cp "$deb" "$root/tmp/faintwind.deb"
inside() { chroot "$root" /usr/bin/env -i PATH=/usr/bin:/bin:/usr/sbin:/sbin HOME=/root DEBIAN_FRONTEND=noninteractive LANG=C.UTF-8 "$@"; }

mountpoint -q "$root/proc" || mount -t proc proc "$root/proc"
trap 'umount "$root/proc"' EXIT
inside apt-get update -q
inside apt-get install --reinstall -y -q --no-install-recommends /tmp/faintwind.deb xvfb xauth

inside sh -c 'cd /root && faintwind demo'
inside sh -c 'faintwind; true' # without a display: says so
inside sh -c 'xvfb-run -a sh -c "faintwind & sleep 12; kill -0 \$! && echo window is up; kill \$!; true"' || echo "the display ended with $?"
inside sh -c 'test -s /usr/lib/faintwind/faintwind.jsa && test -s /usr/share/man/man1/faintwind-convert.1.gz && echo prepared'
inside apt-get purge -y -q faintwind
left=$(inside sh -c 'ls -d /usr/lib/faintwind /usr/bin/faintwind /usr/share/man/man1/faintwind* /usr/share/applications/faintwind* 2>/dev/null' || true)
echo "left after removal: ${left:-nothing}"
