#!/usr/bin/env bash
# Builds the program and its package twice, each time from a copy of this project, and says which files differ.
# Left out: the archives of classes (*.jsa), which this Java does not write twice alike; the package makes them where
# it is installed. Some minutes, and not offline, where no list of parts is made: [COMMIT=...] src/dist/compare-builds.sh [MAVEN OPTIONS]
set -euo pipefail
project=$(cd "$(dirname "$0")/../.." && pwd -P)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

for build in first second; do
  mkdir "$work/$build"
  git -C "$project" archive "${COMMIT:-HEAD}" | tar x -C "$work/$build"
  (cd "$work/$build" && mvn -B -ntp -q -Dmaven.test.skip=true -Pdist "$@" package)
  (cd "$work/$build/target" && find faintwind.jar lib dist -type f ! -name '*.jsa' -print0 | sort -z | xargs -0 sha256sum) \
    >"$work/$build.sums"
  find "$work/$build" -type f -path '*/target/dist/*' ! -name '*.jsa' -printf '%P %m %s\n' | sort >>"$work/$build.sums"
done
echo "$(grep -c / "$work/first.sums") lines compared"
if diff "$work/first.sums" "$work/second.sums"; then
  echo "both builds have the same bytes"
else
  echo "the builds differ" >&2
  exit 1
fi
