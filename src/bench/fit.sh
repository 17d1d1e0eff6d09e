#!/bin/sh
# Fits the same runs on the command line and in the real window, one after the other, twice, and prints how long each
# took: the command with its start, the window from the press of the button to the drawn formula. Both keep calibration
# and page. Needs a build (./faintwind --version) and Xvfb.
#   src/bench/fit.sh RUNS.csv
set -eu
home=$(cd "$(dirname "$0")/../.." && pwd)
runs=$(realpath "$1")
made=$(mktemp -d)
trap 'rm -rf "$made"' EXIT
javac -d "$made" -cp "$home/target/faintwind.jar:$home/target/lib/*" "$home/src/bench/java/faintwind/bench/WindowPath.java"
options=$(sed -n 's/^window_options="\(.*\)"$/\1/p' "$home/faintwind")
for round in 1 2; do
  for way in command window; do
    folder=$made/$way-$round
    mkdir "$folder"
    "$home/faintwind" new "$folder/rind" --name "Rind 9" --who Ida > /dev/null
    "$home/faintwind" note "$folder/rind" --runs "$runs" --who Ida > /dev/null
  done
  begun=$(date +%s.%N)
  "$home/faintwind" calibrate "$made/command-$round/rind" --who Ida > /dev/null 2>&1 || [ $? -eq 4 ]
  echo "fit by command     $(echo "$(date +%s.%N) - $begun" | bc) s"
  # shellcheck disable=SC2086  # the options are words
  MALLOC_ARENA_MAX=1 xvfb-run -a -s "-screen 0 1366x768x24" java $options -Djdk.console=java.base -Dbench.fit-only=true \
    -cp "$home/target/faintwind.jar:$made" faintwind.bench.WindowPath "$made/window-$round"
done
