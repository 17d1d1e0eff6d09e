#!/bin/sh
# How long `faintwind list` takes over many instruments: MANY copies of the demonstration's finished one (500), each with a name,
# a journal and a calibration of its own; three looks, the first of all apart, since it works everything out. Run it from the
# root of the tree after a build.
set -eu
many=${MANY:-500}
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
python3 src/bench/python/many.py demo-projects/cellar "$folder" "$many"
for look in first again again again; do
  echo "$look:"
  { time -p ./faintwind list "$folder" >/dev/null; } 2>&1 | tr '\n' ' '
  echo
done
