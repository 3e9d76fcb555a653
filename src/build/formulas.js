// Every formula of the LaTeX and HTML files of a folder through KaTeX and MathJax, and MathML through MathJax:
//   node src/build/formulas.js FOLDER-OF-NODE-MODULES FOLDER
// A formula is refused if a renderer reports an error or a warning, or shows a command of LaTeX as text. Prints how many there
// are and what is refused, writes the MathML of all pages into FOLDER/all-mathml.html for a browser, and ends with status 1 if
// anything was refused.
'use strict';
const fs = require('fs');
const path = require('path');
const [modules, folder] = process.argv.slice(2).map((each) => path.resolve(each));
const from = (name) => require(path.join(modules, name));

const katex = from('katex');
const { mathjax } = from('mathjax-full/js/mathjax.js');
const { TeX } = from('mathjax-full/js/input/tex.js');
const { MathML } = from('mathjax-full/js/input/mathml.js');
const { SVG } = from('mathjax-full/js/output/svg.js');
const { liteAdaptor } = from('mathjax-full/js/adaptors/liteAdaptor.js');
const { RegisterHTMLHandler } = from('mathjax-full/js/handlers/html.js');
const { SerializedMmlVisitor } = from('mathjax-full/js/core/MmlTree/SerializedMmlVisitor.js');
const { STATE } = from('mathjax-full/js/core/MathItem.js');
from('mathjax-full/js/input/tex/base/BaseConfiguration.js');
from('mathjax-full/js/input/tex/ams/AmsConfiguration.js');

const adaptor = liteAdaptor();
RegisterHTMLHandler(adaptor);
const raise = (_, error) => { throw error; };
const tex = mathjax.document('', { InputJax: new TeX({ packages: ['base', 'ams'], formatError: raise }) });
const mml = mathjax.document('', {
  InputJax: new MathML({ verify: { checkArity: true, checkAttributes: true, fullErrors: true, fixMmultiscripts: false } }),
  OutputJax: new SVG({ fontCache: 'none' }),
});
const serialized = new SerializedMmlVisitor();
const refused = new Map();
const counts = { 'KaTeX': 0, 'MathJax, LaTeX': 0, 'MathJax, MathML': 0 };

function check(renderer, file, formula, display) {
  counts[renderer]++;
  try {
    const shown = taken[renderer](formula, display);
    if (/merror|>[^<]*\\[A-Za-z%{}]/.test(shown)) {
      throw new Error('an error or a command is shown: ' + shown.slice(0, 400));
    }
  } catch (error) {
    const key = renderer + ': ' + error.message.split('\n')[0].slice(0, 200);
    refused.set(key, (refused.get(key) || []).concat(path.basename(file) + ': ' + formula.slice(0, 200)));
  }
}

const taken = {
  'KaTeX': (formula, display) => withoutSource(
    katex.renderToString(formula, { displayMode: display, throwOnError: true, strict: 'error', output: 'mathml' })),
  'MathJax, LaTeX': (formula, display) => serialized.visitTree(tex.convert(formula, { display, end: STATE.CONVERT })),
  'MathJax, MathML': (formula) => adaptor.outerHTML(mml.convert(formula, { display: false })),
};

const withoutSource = (html) => html.replace(/<annotation[^]*?<\/annotation>/g, '');
// What must be refused, or this program would take anything.
const WRONG = [
  ['KaTeX', '\\text{\\ensuremath{\\rho}}'], ['KaTeX', 'x^{2'], ['MathJax, LaTeX', '5\\,\\text{\\%}'],
  ['MathJax, LaTeX', '\\begin{align*}a&=b'], ['MathJax, MathML', '<math><mfrac><mn>1</mn></mfrac></math>'],
];
for (const [renderer, formula] of WRONG) {
  check(renderer, 'the wrong ones', formula, true);
}
const unseen = WRONG.length - [...refused.values()].flat().length;
refused.clear();
Object.keys(counts).forEach((renderer) => { counts[renderer] = 0; });
if (unseen !== 0) {
  console.log(`${unseen} of ${WRONG.length} wrong formulas were taken: these renderers check nothing`);
  process.exit(1);
}

const files = fs.readdirSync(folder).filter((each) => /\.(tex|html)$/.test(each) && !each.startsWith('all-')).sort();
const mathml = new Set();
const seen = new Set();
let style = '';
for (const name of files) {
  const file = path.join(folder, name);
  const text = fs.readFileSync(file, 'utf8');
  if (name.endsWith('.tex')) {
    const body = text.slice(text.indexOf('\\begin{document}'));
    for (const found of body.matchAll(/\\begin\{align\*\}[^]*?\\end\{align\*\}|(?<!\\)\$((?:[^$\\]|\\[^])*)\$/g)) {
      const display = found[1] === undefined;
      const formula = display ? found[0] : found[1];
      check('KaTeX', file, formula, display);
      check('MathJax, LaTeX', file, formula, display);
    }
  } else {
    style = style || text.slice(text.indexOf('<style>'), text.indexOf('</style>') + 8);
    for (const [formula] of text.matchAll(/<math[^]*?<\/math>/g)) {
      counts['MathJax, MathML'] += seen.has(formula) ? 1 : 0;
      if (!seen.has(formula)) {
        seen.add(formula);
        check('MathJax, MathML', file, formula, false);
        mathml.add(formula);
      }
    }
  }
}

// A browser draws all of them and says which it does not: no size, an error, or an element that it does not know as MathML.
fs.writeFileSync(path.join(folder, 'all-mathml.html'), `<!DOCTYPE html><html lang="en"><head><meta charset="utf-8">${style}</head><body>
${[...mathml].map((each) => '<p>' + each + '</p>').join('\n')}
<script>
const all = [...document.querySelectorAll('math')];
const bad = all.filter(m => {
  const box = m.getBoundingClientRect();
  return !(box.width > 0 && box.height > 0) || m.querySelector('merror')
    || [...m.querySelectorAll('*')].some(e => !(e instanceof MathMLElement) || e.getBoundingClientRect().right > box.right + 2);
});
document.body.textContent = 'drawn ' + (all.length - bad.length) + ' of ' + all.length + ' '
  + bad.slice(0, 5).map(m => m.outerHTML).join(' ');
</script></body></html>
`);

for (const [renderer, count] of Object.entries(counts)) {
  const wrong = [...refused].filter(([key]) => key.startsWith(renderer + ':'));
  const many = wrong.reduce((sum, [, formulas]) => sum + formulas.length, 0);
  console.log(`${renderer}: ${count - many} of ${count} formulas taken`);
  wrong.forEach(([key, formulas]) => console.log(`  ${formulas.length} × ${key}\n    ${formulas[0]}`));
}
process.exit(refused.size === 0 && Object.values(counts).every((count) => count > 0) ? 0 : 1);
