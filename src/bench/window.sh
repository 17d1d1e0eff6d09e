#!/bin/sh
# Walks through the real window on a display without a screen and prints memory and times, see WindowPath.java.
# Needs a build (./faintwind --version) and Xvfb. Options of Java are taken from the launcher, or given here:
#   src/bench/window.sh                the path, with the launcher's options
#   src/bench/window.sh -Xmx256m ...   the path, with these
#   START=1 src/bench/window.sh        only until the window is shown
#   LIST=src/dist/window.classes src/bench/window.sh
#                                      writes the classes that a window loads anew, for the archive made by a build
set -eu
home=$(cd "$(dirname "$0")/../.." && pwd)
made=$(mktemp -d)
trap 'rm -rf "$made"' EXIT
javac -d "$made" -cp "$home/target/faintwind.jar:$home/target/lib/*" "$home/src/bench/java/faintwind/bench/WindowPath.java"
(cd "$made" && jar --create --file bench.jar faintwind) # no folders where classes are kept
[ $# -gt 0 ] || set -- $(sed -n 's/^window_options="\(.*\)"$/\1/p' "$home/faintwind")
export MALLOC_ARENA_MAX=1 MALLOC_TRIM_THRESHOLD_=65536 MALLOC_MMAP_THRESHOLD_=65536
walk() {
  rm -rf "$made/instruments"
  mkdir "$made/instruments"
  xvfb-run -a -s "-screen 0 1366x768x24" java "$@" -Djdk.console=java.base \
    -cp "$home/target/faintwind.jar:$made/bench.jar" faintwind.bench.WindowPath "$made/instruments"
}

# lambdas of the start alone: those of the whole path would make the list three times as long
if [ -n "${LIST:-}" ]; then
  walk "$@" -XX:DumpLoadedClassList="$made/start" -Xlog:disable -Dbench.start-only=true
  walk "$@" -XX:DumpLoadedClassList="$made/path" -Xlog:disable
  { grep '^@' "$made/start"; grep -v '^[@#]' "$made/path"; } | grep -v faintwind/bench >"$LIST"
  exit
fi
archive=$home/target/faintwind-start.jsa
[ ! -r "$archive" ] || set -- "$@" -XX:SharedArchiveFile="$archive"
[ -z "${START:-}" ] || set -- "$@" -Dbench.start-only=true
echo "java $*"
walk "$@"
