#!/bin/sh
# Measures the kernels of fit and conversion with JMH and prints a table of ratios for docs/performance.md. Needs a build
# (./faintwind --version); JMH comes by the profile "kernels" alone, into target/jmh.
#   src/bench/kernels.sh               all, some three minutes
#   src/bench/kernels.sh OPTIONS...    with JMH's options, such as -f 1 -wi 2 -w 1 -i 2 -r 1, and a kernel's name
set -eu
home=$(cd "$(dirname "$0")/../.." && pwd)
cd "$home"
[ -d target/jmh ] || mvn -q -B -Pkernels dependency:copy-dependencies -DincludeScope=provided -DoutputDirectory=target/jmh
[ $# -gt 0 ] || set -- -f 2 -wi 4 -w 1 -i 4 -r 1
made=$(mktemp -d)
trap 'rm -rf "$made"' EXIT
# shellcheck disable=SC2046  # names without blanks
javac -d "$made" -cp "target/faintwind.jar:target/lib/*:target/jmh/*" -processorpath "$(echo target/jmh/*.jar | tr ' ' ':')" \
  $(find src/bench/jmh -name '*.java')
java -cp "target/faintwind.jar:target/lib/*:target/jmh/*:$made" org.openjdk.jmh.Main "$@" | tee "$made/said"
# the least processor time of an iteration after the warm-up, in units of FastCSV's reading of one row
awk '
  /^# Benchmark: / { sub(".*\\.", "", $3); name = $3 }
  /^processor /    { last = $2 }
  /^Iteration /    { counts = 1 }
  /^# Warmup/      { counts = 0 }
  /^processor / && counts { if (!(name in least) || last < least[name]) least[name] = last }
  END {
    if ("rowReadByFastCsv" in least) unit = least["rowReadByFastCsv"]
    print "| kernel | µs of a processor | times FastCSV'"'"'s reading of a row |"
    print "| --- | --- | --- |"
    for (name in least) printf "| %s | %.3g | %s |\n", name, least[name], unit ? sprintf("%.3g", least[name] / unit) : "–" | "sort"
  }' "$made/said"
