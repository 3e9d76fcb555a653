// Prints each page of target/print on A4, A5 and Letter in a browser and measures it there, as it is laid out for paper:
// no element may be wider than its box or than the paper; every text of a cell must be in the PDF; a sheet of twelve lines is one page.
// Arguments: the folder of node_modules, the folder of the pages, the browser.
const [modules, folder, browser] = process.argv.slice(2);
const fs = require("fs");
const path = require("path");
const { execFileSync } = require("child_process");
const puppeteer = require(require.resolve("puppeteer-core", { paths: [path.resolve(modules, "..")] }));

const MILLIMETRE = 96 / 25.4;
const MARGIN = 9;
const PAPERS = { A4: [210, 297], A5: [148, 210], Letter: [215.9, 279.4] };
const ONE_PAGE = /^sheet-/;
// The name of a class says how many pages it takes, on A4 and Letter; small paper takes what it takes.
const PAGES = /^class-(\d+)-/;
const CLASSROOM = /^(class|keys)-/;

// Runs in the page.
function tooWide() {
  const found = [];
  for (const element of document.querySelectorAll("body *")) {
    const shown = getComputedStyle(element);
    if (shown.display === "none" || element.closest(".box, colgroup")) continue;
    const box = element.getBoundingClientRect();
    const cut = element.clientWidth > 0 && element.scrollWidth > element.clientWidth + 1;
    const beyond = box.right > document.documentElement.clientWidth + 1 || box.left < -1;
    if (cut || beyond) found.push(`${element.tagName} "${element.textContent.trim().slice(0, 40)}" ${element.scrollWidth}>${element.clientWidth}`);
    // A word at the head of a column stays whole.
    if (element.tagName === "TH" && element.closest("thead")) {
      for (const node of [...element.childNodes].filter(child => child.nodeType === 3)) {
        for (const word of node.textContent.matchAll(/[^\s\u00AD-]+/g)) {
          const range = document.createRange();
          range.setStart(node, word.index);
          range.setEnd(node, word.index + word[0].length);
          if (range.getClientRects().length > 1) found.push(`broken word "${word[0]}"`);
        }
      }
    }
    // A word that its cell broke inside a number: a number never breaks.
    if (/^T[DH]$/.test(element.tagName) && element.classList.contains("number") && element.tagName === "TD") {
      const range = document.createRange();
      range.selectNodeContents(element);
      if (range.getClientRects().length > 1) found.push(`broken number "${element.textContent}"`);
      const text = range.getBoundingClientRect();
      if (text.right > box.right + 1 || text.left < box.left - 1) found.push(`number out of its cell "${element.textContent}"`);
    }
  }
  return found;
}

const cells = () => [...document.querySelectorAll("td:not(.tick), tbody th, dd")]
  .filter(cell => !cell.querySelector("math"))
  .filter(cell => getComputedStyle(cell).display !== "none").map(cell => cell.textContent.trim()).filter(text => text);

(async () => {
  const chrome = await puppeteer.launch({ executablePath: browser, args: ["--no-sandbox", "--disable-gpu"] });
  let wrong = 0;
  for (const file of fs.readdirSync(folder).filter(name => name.endsWith(".html")).sort()) {
    for (const [paper, [width, height]] of Object.entries(PAPERS)) {
      const page = await chrome.newPage();
      await page.setViewport({ width: Math.floor((width - 2 * MARGIN) * MILLIMETRE), height: 1000 });
      await page.emulateMediaType("print");
      await page.goto("file://" + path.resolve(folder, file));
      const found = await page.evaluate(tooWide);
      const texts = await page.evaluate(cells);
      const pdf = path.join(folder, `${file.replace(".html", "")}-${paper}.pdf`);
      fs.writeFileSync(pdf, await page.pdf({ width: width + "mm", height: height + "mm", displayHeaderFooter: false, preferCSSPageSize: false }));
      await page.close();
      const squeezed = text => text.replace(/[\s\u00A0\u00AD]/g, "");
      const printed = squeezed(execFileSync("pdftotext", ["-layout", pdf, "-"], { encoding: "utf8" }));
      const words = squeezed(execFileSync("pdftotext", ["-raw", pdf, "-"], { encoding: "utf8" }));
      // A name may break between words, and then another cell stands between its parts.
      const missing = texts.filter(text => !text.split(/\s/).every(word => printed.includes(word) || words.includes(word)));
      const pages = Number(/Pages: *(\d+)/.exec(execFileSync("pdfinfo", [pdf], { encoding: "utf8" }))[1]);
      const most = ONE_PAGE.test(file) ? 1 : PAGES.test(file) && paper !== "A5" ? Number(PAGES.exec(file)[1]) : Infinity;
      const long = pages > most ? [`${pages} pages instead of ${most}`] : [];
      const numbered = CLASSROOM.test(file) || printed.includes(`1/${pages}`) ? [] : ["no page number"];
      const all = [...found, ...missing.map(text => `not in the PDF: "${text}"`), ...long, ...numbered];
      console.log(`${file} on ${paper}: ${pages} page(s), ${texts.length} cells, ${all.length === 0 ? "nothing cut" : all.join("; ")}`);
      wrong += all.length;
    }
  }
  await chrome.close();
  process.exit(wrong === 0 ? 0 : 1);
})().catch(error => { console.error(error); process.exit(1); });
