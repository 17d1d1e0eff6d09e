#!/bin/sh
# Walks through the real window on a display without a screen and prints memory and times, see WindowPath.java.
# Needs a build (./faintwind --version) and Xvfb. Options of Java are taken from the launcher, or given here:
#   src/bench/window.sh                the path, with the launcher's options
#   src/bench/window.sh -Xmx256m ...   the path, with these
#   START=1 src/bench/window.sh        only until the window is shown
set -eu
home=$(cd "$(dirname "$0")/../.." && pwd)
made=$(mktemp -d)
trap 'rm -rf "$made"' EXIT
javac -d "$made" -cp "$home/target/faintwind.jar:$home/target/lib/*" "$home/src/bench/java/faintwind/bench/WindowPath.java"
[ $# -gt 0 ] || set -- $(sed -n 's/^window_options="\(.*\)"$/\1/p' "$home/faintwind")
export MALLOC_ARENA_MAX=1 MALLOC_TRIM_THRESHOLD_=65536 MALLOC_MMAP_THRESHOLD_=65536
[ -z "${START:-}" ] || set -- "$@" -Dbench.start-only=true
mkdir "$made/instruments"
echo "java $*"
xvfb-run -a -s "-screen 0 1366x768x24" java "$@" -Djdk.console=java.base \
  -cp "$home/target/faintwind.jar:$made" faintwind.bench.WindowPath "$made/instruments"
