// Opens pages in headless Chromium and says what a reader would meet; driven by tests/output/test_in_a_browser.py.
// Standard input: {"modules": folder, "chromium": path, "pages": [files], "out": folder}; output: JSON.
import { createRequire } from 'node:module';
import { readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { pathToFileURL } from 'node:url';

const asked = JSON.parse(readFileSync(0, 'utf8'));
const require = createRequire(join(asked.modules, 'here.js'));
const { chromium } = require('playwright-core');
const axe = readFileSync(require.resolve('axe-core/axe.min.js'), 'utf8');

const QUIET = ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run',
  '--disable-background-networking', '--disable-component-update', '--disable-sync'];
const WIDTHS = [360, 768, 1280];
const PX = 96 / 25.4;
// paper in millimetres, less the margins of the style sheet
const PAPER = { A4: [210 - 26, 297 - 30], Letter: [215.9 - 26, 279.4 - 30] };
const WHOLE = 'tr, figure, .blank, .item > h3, .caution, .alarm, .first, .account, .ticks > li';

const cut = ([wide, tall, whole]) => [...document.querySelectorAll(whole)].flatMap((e) => {
  const turned = e.closest('.turned') !== null;
  const most = turned ? wide : tall;
  const box = e.getBoundingClientRect();
  const kept = getComputedStyle(e).breakInside === 'avoid' || e.matches('h3');
  return box.height > most || !kept
    ? [`${e.tagName}.${e.className} ${Math.round(box.height)} of ${Math.round(most)}`] : [];
});

const browser = await chromium.launch({ executablePath: asked.chromium, args: QUIET });
const found = {};
for (const file of asked.pages) {
  const name = basename(file, '.html');
  const told = { console: [], requests: [], widths: {}, cut: {}, pdf: {}, axe: [] };
  const context = await browser.newContext();
  const page = await context.newPage();
  page.on('console', (m) => told.console.push(`${m.type()}: ${m.text()}`));
  page.on('pageerror', (e) => told.console.push(`error: ${e}`));
  const address = pathToFileURL(file).href;
  page.on('request', (r) => { if (r.url() !== address) told.requests.push(r.url()); });
  await page.goto(address);
  for (const wide of WIDTHS) {
    await page.setViewportSize({ width: wide, height: 900 });
    told.widths[wide] = await page.evaluate(() => document.documentElement.scrollWidth);
    if (asked.pictures) await page.screenshot({ path: join(asked.out, `${name}-${wide}.png`), fullPage: true });
  }
  await page.setViewportSize({ width: 1280, height: 900 });
  const heard = told.console.length;
  await page.evaluate(axe);
  const result = await page.evaluate(() => axe.run(document, {
    runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa'] }));
  told.axe = result.violations.map((v) => `${v.id}: ${v.nodes.length} x ${v.nodes[0].html.slice(0, 120)}`);
  told.axe_passed = result.passes.length;
  told.console.length = heard;
  await page.emulateMedia({ media: 'print' });
  for (const [paper, [wide, tall]] of Object.entries(PAPER)) {
    await page.setViewportSize({ width: Math.floor(wide * PX), height: 900 });
    told.cut[paper] = await page.evaluate(cut, [wide * PX, tall * PX, WHOLE]);
    const pdf = await page.pdf({ format: paper, printBackground: true, path: join(asked.out, `${name}-${paper}.pdf`) });
    told.pdf[paper] = pdf.length;
  }
  await context.close();
  found[name] = told;
}
await browser.close();
console.log(JSON.stringify(found));
