#!/usr/bin/env bash
# What the library prints as LaTeX and MathML, through the programs that people read it with. Every working that the
# documentation asks for or touches (written by WorkingsOutsideTest into target/workings) and a batch sheet of twelve lines:
#   formulas   KaTeX and MathJax take each, MathJax takes the MathML, Chromium draws it
#   documents  pdflatex takes each without an error, and nothing is wider than its line; a sheet fills one page
# Fails if a tool is missing. With --tested it takes what the tests have just written, as the Maven profile tex does.
# Debian: texlive-latex-base texlive-latex-recommended lmodern nodejs npm chromium python3 maven.
set -euo pipefail
cd "$(dirname "$0")/../.."

for tool in pdflatex node npm chromium python3 mvn; do
  command -v "$tool" >/dev/null || { echo "missing: $tool"; exit 1; }
done
work=target/tex
rm -rf "$work"
mkdir -p "$work"

[ "${1:-}" = --tested ] || mvn -q -B -ntp -Pquick test -Dtest=WorkingsOutsideTest -Dformulationmath.tools=required
npm install --silent --no-audit --no-fund --prefix "$work" katex@0.16.22 mathjax-full@3.2.2
node src/build/formulas.js "$work/node_modules" target/workings

drawn=$(chromium --headless --no-sandbox --disable-gpu --dump-dom "file://$PWD/target/workings/all-mathml.html" 2>/dev/null \
  | grep -o 'drawn [0-9]* of [0-9]*.*')
echo "Chromium, MathML: $drawn"
[[ "$drawn" =~ ^drawn\ ([1-9][0-9]*)\ of\ ([0-9]+) && "${BASH_REMATCH[1]}" = "${BASH_REMATCH[2]}" ]]

# All documents have one preamble, so that one run of pdflatex does for all; each starts on a page of its own.
python3 - "$work" <<'PYTHON'
import glob, sys
bodies, preambles = [], set()
for file in sorted(glob.glob("target/workings/*.tex")):
    preamble, body = open(file, encoding="utf-8").read().split("\\begin{document}\n", 1)
    preambles.add(preamble)
    bodies.append("\\typeout{== %s}\n%s\\clearpage\n" % (file.rsplit("/", 1)[1], body.rsplit("\\end{document}", 1)[0]))
assert len(preambles) == 1, preambles
open(sys.argv[1] + "/all.tex", "w", encoding="utf-8").write(
    preambles.pop() + "\\begin{document}\n" + "".join(bodies) + "\\end{document}\n")
print("pdflatex: %d documents" % len(bodies))
PYTHON
typeset() { # a file without its ending, twice as longtable asks for
  pdflatex -interaction=nonstopmode -output-directory="$work" "$1.tex" >/dev/null 2>&1 || true
  pdflatex -interaction=nonstopmode -output-directory="$work" "$1.tex" >/dev/null 2>&1 || true
  local log="$work/$(basename "$1").log"
  if grep -aE '^!|^Overfull|Missing character' "$log"; then
    echo "refused: $1"
    exit 1
  fi
  grep -aoE 'Output written on .*' "$log"
}
typeset "$work/all"
typeset target/workings/sheet
grep -aq '(1 page' "$work/sheet.log" || { echo "the sheet has more than one page"; exit 1; }
echo "everything is taken"
