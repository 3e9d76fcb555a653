#!/usr/bin/env bash
# The README's two commands as on a machine where Java has never run: the last commit in a folder of its own (with a space
# in its name, and without git's files), by a user whose home is empty and cannot be written to, without preferences of
# Java, with JAVA_TOOL_OPTIONS set, in another language and with the plainest character set.
#
#   src/build/fresh-machine.sh [option of Maven ...]     the options go to both commands
#   EMPTY_REPOSITORY=1 src/build/fresh-machine.sh        Maven fetches everything anew; else it gets a copy of what is here
#   FRESH_LANGUAGE=de FRESH_COUNTRY=DE src/build/fresh-machine.sh
set -euo pipefail
top=$(git -C "$(dirname "$0")" rev-parse --show-toplevel)
work=$(mktemp -d)
trap 'chmod -R u+w "$work" && rm -rf "$work"' EXIT

clone="$work/a clone"
git clone -q --no-hardlinks "$top" "$clone"
rm -rf "$clone/.git"
mkdir "$work/home" "$work/preferences" "$work/repository" "$work/tmp"
if [ -z "${EMPTY_REPOSITORY:-}" ] && [ -d "$HOME/.m2/repository" ]; then
  cp -r "$HOME/.m2/repository/." "$work/repository"
  rm -rf "$work/repository/io/github/formulationmath"
fi
chmod 755 "$work"
chmod 555 "$work/home"

# To root nothing is read-only.
as=()
if [ "$(id -u)" -eq 0 ]; then
  chown -R 65534:65534 "$clone" "$work/preferences" "$work/repository" "$work/tmp"
  as=(setpriv --reuid=65534 --regid=65534 --clear-groups)
fi

fresh() { # a command of the README
  echo "== $*"
  (cd "$clone" && "${as[@]}" env -i \
    PATH="$PATH" HOME="$work/home" LC_ALL=C TZ=Asia/Kathmandu TMPDIR="$work/tmp" ${JAVA_HOME:+JAVA_HOME="$JAVA_HOME"} \
    JAVA_TOOL_OPTIONS="-Duser.home=$work/home -Djava.util.prefs.userRoot=$work/preferences -Djava.io.tmpdir=$work/tmp \
-Duser.language=${FRESH_LANGUAGE:-tr} -Duser.country=${FRESH_COUNTRY:-TR}" \
    "$@")
}

fresh mvn -q "-Dmaven.repo.local=$work/repository" "$@" test-compile exec:java
fresh mvn -B -ntp "-Dmaven.repo.local=$work/repository" "$@" verify
find "$work/home" -mindepth 1 | { ! grep . || { echo "the build has written into the home of its user" >&2; exit 1; }; }
echo "== a fresh machine passes"
