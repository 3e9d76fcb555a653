#!/usr/bin/env bash
# Builds and checks the complete signed bundle that a public Maven repository asks for:
#   src/build/bundle.sh 0.1.0            signed with a key made for the occasion and thrown away (a rehearsal)
#   src/build/bundle.sh 0.1.0 KEY-ID     signed with that key of the caller's own key ring (a release)
# The tests do not run here; "mvn verify" does that. Result: target/formulation-math-VERSION-bundle.zip
set -euo pipefail
cd "$(dirname "$0")/../.."

version=${1:?usage: src/build/bundle.sh VERSION [KEY-ID]}
key=${2:-}
work=$PWD/target/release
rm -rf "$work"
mkdir -p "$work/source"
git archive HEAD | tar -x -C "$work/source"

if [ -z "$key" ]; then
  GNUPGHOME=$(mktemp -d)
  export GNUPGHOME
  trap 'gpgconf --kill gpg-agent || true; rm -rf "$GNUPGHOME"' EXIT
  gpg --batch --quiet --pinentry-mode loopback --passphrase '' \
    --quick-generate-key "Throw-away key <nobody@example.org>" rsa3072 sign 1d
  key=$(gpg --list-secret-keys --with-colons | awk -F: '/^fpr/ { print $10; exit }')
fi

cd "$work/source"
mvn -B -ntp -q versions:set -DnewVersion="$version" -DgenerateBackupPoms=false
mvn -B -ntp -q -Prelease deploy -DskipTests -Dgpg.keyname="$key"

cd target/bundle
find . -name 'maven-metadata*' -delete
folder=io/github/formulationmath/formulation-math/$version
name=formulation-math-$version
missing=0
for file in "$name.pom" "$name.jar" "$name-sources.jar" "$name-javadoc.jar"; do
  for extra in "" .asc .md5 .sha1; do
    if [ ! -s "$folder/$file$extra" ]; then
      echo "missing: $file$extra" >&2
      missing=1
    fi
  done
  gpg --batch --quiet --verify "$folder/$file.asc" "$folder/$file" 2>/dev/null || { echo "bad signature: $file" >&2; missing=1; }
  for sum in md5 sha1; do
    [ "$("${sum}sum" < "$folder/$file" | cut -d' ' -f1)" = "$(cut -d' ' -f1 < "$folder/$file.$sum")" ] \
      || { echo "bad checksum: $file.$sum" >&2; missing=1; }
  done
done
for field in name description url licenses developers scm; do
  grep -q "<$field>" "$folder/$name.pom" || { echo "the POM has no <$field>" >&2; missing=1; }
done
grep -q SNAPSHOT "$folder/$name.pom" && { echo "the POM names a snapshot" >&2; missing=1; }
[ "$missing" -eq 0 ]

jar --create --no-manifest --file "$work/../$name-bundle.zip" io
cp ../licences/THIRD-PARTY.txt "$work/../THIRD-PARTY.txt"
find io -type f | sort
echo "Complete, signed and checked: target/$name-bundle.zip"
