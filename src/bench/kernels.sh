#!/bin/sh
# Measures the kernels of fit and conversion with JMH and prints a table of ratios for docs/performance.md. Needs a build
# (./faintwind --version); JMH comes by the profile "kernels" alone, into target/jmh.
#   src/bench/kernels.sh               all, some three minutes
#   src/bench/kernels.sh OPTIONS...    with JMH's options, such as -f 1 -wi 2 -w 1 -i 2 -r 1, and a kernel's name
set -eu
home=$(cd "$(dirname "$0")/../.." && pwd)
cd "$home"
[ -d target/jmh ] || mvn -q -B -Pkernels dependency:copy-dependencies -DincludeScope=provided -DoutputDirectory=target/jmh
[ $# -gt 0 ] || set -- -f 2 -wi 3 -w 1 -i 5 -r 1
made=$(mktemp -d)
trap 'rm -rf "$made"' EXIT
# shellcheck disable=SC2046  # names without blanks
javac -d "$made" -cp "target/faintwind.jar:target/lib/*:target/jmh/*" -processorpath "$(echo target/jmh/*.jar | tr ' ' ':')" \
  $(find src/bench/jmh -name '*.java')
java -cp "target/faintwind.jar:target/lib/*:target/jmh/*:$made" org.openjdk.jmh.Main \
  -rf csv -rff "$made/result.csv" "$@"
# a kernel's time in units of FastCSV's reading of one row
awk -F, '
  NR > 1 { gsub("\"", ""); sub(".*\\.", "", $1); time[$1] = $5; error[$1] = $6 }
  END {
    unit = time["rowReadByFastCsv"]
    print "| kernel | µs | ± | times FastCSV'"'"'s reading of a row |"
    print "| --- | --- | --- | --- |"
    for (name in time)
      printf "| %s | %.3g | %.2g | %s |\n", name, time[name], error[name], unit ? sprintf("%.3g", time[name] / unit) : "–"
  }' "$made/result.csv" | { IFS= read -r head; IFS= read -r line; echo "$head"; echo "$line"; sort; }
