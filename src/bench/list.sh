#!/bin/sh
# How long `faintwind list` takes over many instruments: MANY copies of the demonstration's finished one (500), least of three
# looks, the first of all apart, since it works everything out. Run it from the root of the tree after a build.
set -eu
many=${MANY:-500}
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
i=0
while [ "$i" -lt "$many" ]; do
  cp -r demo-projects/cellar "$folder/rind-$i"
  i=$((i + 1))
done
for look in first again again again; do
  echo "$look:"
  { time -p ./faintwind list "$folder" >/dev/null; } 2>&1 | tr '\n' ' '
  echo
done
