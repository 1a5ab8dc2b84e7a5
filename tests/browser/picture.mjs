// Pictures of screens of the page as a telephone shows them. The task is JSON on stdin:
// modules, chromium, base, out, screens: [{name, path, to}] with `to` the heading to scroll to.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';

const asked = JSON.parse(readFileSync(0, 'utf8'));
const { chromium } = createRequire(join(asked.modules, 'x.js'))('playwright-core');
const browser = await chromium.launch({ executablePath: asked.chromium, args: ['--no-sandbox'] });
const page = await browser.newPage({ viewport: { width: 390, height: 760 }, deviceScaleFactor: 1 });
const heights = {};
for (const { name, path, to } of asked.screens) {
  await page.goto(asked.base + path);
  if (to) {
    const heading = page.getByRole('heading', { name: to }).first();
    await heading.evaluate((e) => e.scrollIntoView({ block: 'start' }));
  }
  heights[name] = await page.evaluate(() => document.documentElement.scrollHeight);
  await page.screenshot({ path: join(asked.out, `${name}.png`) });
}
await browser.close();
console.log(JSON.stringify(heights));
