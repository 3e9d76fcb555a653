#!/usr/bin/env bash
# Shows that the comparison of bytecode (profile "api") guards anything: it accepts the last commit against itself, and rejects it
# when a public method has another name and when it is no longer public.
set -euo pipefail
cd "$(dirname "$0")/../.."

baseline=0.0.0-guard
work=$PWD/target/api-guard
rm -rf "$work"
mkdir -p "$work"
git archive HEAD | tar -x -C "$work"
cd "$work"

pinned="-B -ntp -q -Pquick -Dmaven.test.skip=true"
mvn -B -ntp -q versions:set -DnewVersion="$baseline" -DgenerateBackupPoms=false
mvn $pinned install
mvn -B -ntp -q versions:set -DnewVersion=0.0.1-SNAPSHOT -DgenerateBackupPoms=false

compare() { # what is expected: "accepted" or "rejected"; why
  local seen=accepted
  mvn $pinned -Papi verify -Dapi.baseline="$baseline" > "$work/compare.log" 2>&1 || seen=rejected
  if [ "$seen" = rejected ] && ! grep -q 'There is at least one incompatibility' "$work/compare.log"; then
    tail -20 "$work/compare.log" >&2
    echo "the build failed for another reason: $2" >&2
    exit 1
  fi
  echo "$seen: $2"
  [ "$seen" = "$1" ]
}

class=src/main/java/io/github/formulationmath/number/NumberTextException.java
break_and_compare() { # what was written, what is written now, why it is a break
  cp "$class" kept.java
  sed -i "s/$1/$2/" "$class"
  ! cmp -s kept.java "$class"
  compare rejected "$3"
  cp kept.java "$class"
}

compare accepted "the same code"
break_and_compare 'public String text()' 'public String wholeText()' "a public method has another name"
break_and_compare 'public String text()' 'String text()' "a public method is no longer public"
