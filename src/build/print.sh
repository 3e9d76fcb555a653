#!/usr/bin/env bash
# The sheets to work with and those of a class, in English, German and French, printed to PDF by a browser on A4, A5 and Letter,
# and measured: nothing is cut, no element is wider than its box, no number breaks, a batch sheet of twelve lines is one page, a
# class of 24 takes 72 pages. The PDFs stay in target/print to be looked at.
# Fails if a tool is missing. With --tested it takes what the tests have just written, as the Maven profile print does.
# Debian: chromium nodejs npm poppler-utils maven.
set -euo pipefail
cd "$(dirname "$0")/../.."

for tool in node npm chromium pdftotext pdfinfo mvn; do
  command -v "$tool" >/dev/null || { echo "missing: $tool"; exit 1; }
done
[ "${1:-}" = --tested ] || rm -rf target/print
[ "${1:-}" = --tested ] || mvn -q -B -ntp -Pquick test -Dtest=SheetsToPrintTest,ClassSetTest
npm install --silent --no-audit --no-fund --prefix target/print/tools puppeteer-core@24
node src/build/print.js target/print/tools/node_modules target/print "$(command -v chromium)"
echo "everything fits"
