#!/usr/bin/env bash
# Mutation tests of the numerical core, one package after the other, each by the tests of its own package only: a fault in
# "weighing" must be noticed by the tests of "weighing", not by chance through a sheet three packages above. Properties with random
# cases and tests tagged "long" do not take part, so the score can be repeated. Fails below the threshold.
#   src/build/mutation.sh                    all of them   
#   src/build/mutation.sh number quantity    these
# Run it on a machine that does nothing else: a mutant that only runs out of time counts as noticed.
set -euo pipefail
cd "$(dirname "$0")/../.."

root=io.github.formulationmath
if [ $# -eq 0 ]; then
  set -- number quantity reckoning document exercise weighing simulation plan size choice
fi
mvn -B -ntp -q -Pmutation test-compile
rm -rf target/mutation
mkdir -p target/mutation
status=0
for package in "$@"; do
  mvn -B -ntp -q -Pmutation org.pitest:pitest-maven:mutationCoverage \
    -DtargetClasses="$root.$package.*" -Dmutation.tests="$root.$package.*" > "target/mutation/$package.log" 2>&1 || status=1
  cp -r target/pit-reports "target/mutation/$package"
  rm -rf target/pit-reports
done

printf '%-10s %8s %8s %9s %9s %7s\n' package mutants killed timed-out survived score
for package in "$@"; do
  awk -F, -v name="$package" '
    { all++; if ($6 == "KILLED") killed++; else if ($6 == "TIMED_OUT" || $6 == "MEMORY_ERROR") late++ }
    END { printf "%-10s %8d %8d %9d %9d %6.1f%%\n", name, all, killed, late, all - killed - late, 100 * (killed + late) / all }
  ' "target/mutation/$package/mutations.csv"
done
exit $status
