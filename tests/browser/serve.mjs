// What the scripts share that work on a running `diagnose serve` in headless Chromium.
// Standard input: {"modules", "chromium", "base": address, "out": folder, "pictures": bool, ...}.
import { createRequire } from 'node:module';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

export const asked = JSON.parse(readFileSync(0, 'utf8'));
const require = createRequire(join(asked.modules, 'here.js'));
const { chromium } = require('playwright-core');
const axe = readFileSync(require.resolve('axe-core/axe.min.js'), 'utf8');
const QUIET = ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run',
  '--disable-background-networking', '--disable-component-update', '--disable-sync'];
const THUMB = 44; // px: the least side of what is tapped

const browser = await chromium.launch({ executablePath: asked.chromium, args: QUIET });
export const found = { screens: {}, console: [], outside: [] };

export async function finished() {
  await browser.close();
  console.log(JSON.stringify(found));
}

// What is wrong with a screen: sideways scroll, small targets; axe where scripts may run.
const small = (least) => [...document.querySelectorAll(
  'main button, main a.button, main a.line, .links a, .tabs a, .way a, summary, select, textarea, .choice, input')]
  .filter((e) => e.checkVisibility() && !['hidden', 'range'].includes(e.type) && !e.closest('.choice input'))
  .filter((e) => !(e.matches('input') && e.closest('.choice')))
  .map((e) => [e, e.getBoundingClientRect()])
  .filter(([, box]) => box.width > 0 && (box.height < least - 0.5 || box.width < least - 0.5))
  .map(([e, box]) => `${e.tagName}.${e.className} ${Math.round(box.width)} x ${Math.round(box.height)}`);

export async function look(page, name, scripts = true) {
  const seen = found.screens[name] ?? (found.screens[name] = { axe: [], small: [], wide: {} });
  const size = page.viewportSize();
  seen.wide[size.width] = await page.evaluate(() => document.documentElement.scrollWidth);
  if (size.width < 500) seen.small.push(...await page.evaluate(small, THUMB));
  if (scripts) {
    await page.evaluate(axe);
    const result = await page.evaluate(() => axe.run(document, {
      runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa'] }));
    seen.axe.push(...result.violations.map(
      (v) => `${v.id}: ${v.nodes.length} x ${v.nodes[0].html.slice(0, 140)}`));
    seen.passed = result.passes.length;
  }
  if (asked.pictures) {
    await page.screenshot({ path: join(asked.out, `${name}-${size.width}.png`), fullPage: true });
  }
}

export async function context(options) {
  const made = await browser.newContext({ bypassCSP: false, ...options });
  const page = await made.newPage();
  page.on('console', (m) => found.console.push(`${page.url()} ${m.type()}: ${m.text()}`));
  page.on('pageerror', (e) => found.console.push(`${page.url()} error: ${e}`));
  page.on('request', (r) => { if (!r.url().startsWith(asked.base)) found.outside.push(r.url()); });
  return [made, page];
}
