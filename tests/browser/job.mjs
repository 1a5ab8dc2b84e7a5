// Works on jobs of a running `diagnose serve` in headless Chromium as a person does, by taps and keys,
// and says what it met on each screen; driven by tests/test_serve_in_a_browser.py.
// Standard input: {"modules", "chromium", "base": address, "out": folder, "pictures": bool}; output: JSON.
import { createRequire } from 'node:module';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

const asked = JSON.parse(readFileSync(0, 'utf8'));
const require = createRequire(join(asked.modules, 'here.js'));
const { chromium } = require('playwright-core');
const axe = readFileSync(require.resolve('axe-core/axe.min.js'), 'utf8');
const QUIET = ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run',
  '--disable-background-networking', '--disable-component-update', '--disable-sync'];
const THUMB = 44; // px: the least side of what is tapped

const browser = await chromium.launch({ executablePath: asked.chromium, args: QUIET });
const found = { screens: {}, console: [], outside: [], jobs: {}, judged: {}, gate: {} };

// What is wrong with a screen: sideways scroll, small targets; axe where scripts may run.
const small = (least) => [...document.querySelectorAll(
  'main button, main a.button, main a.line, .links a, .tabs a, .way a, summary, select, textarea, .choice, input')]
  .filter((e) => e.checkVisibility() && !['hidden', 'range'].includes(e.type) && !e.closest('.choice input'))
  .filter((e) => !(e.matches('input') && e.closest('.choice')))
  .map((e) => [e, e.getBoundingClientRect()])
  .filter(([, box]) => box.width > 0 && (box.height < least - 0.5 || box.width < least - 0.5))
  .map(([e, box]) => `${e.tagName}.${e.className} ${Math.round(box.width)} x ${Math.round(box.height)}`);

async function look(page, name, { scripts = true } = {}) {
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

async function context(options) {
  const made = await browser.newContext({ bypassCSP: false, ...options });
  const page = await made.newPage();
  page.on('console', (m) => found.console.push(`${page.url()} ${m.type()}: ${m.text()}`));
  page.on('pageerror', (e) => found.console.push(`${page.url()} error: ${e}`));
  page.on('request', (r) => { if (!r.url().startsWith(asked.base)) found.outside.push(r.url()); });
  return [made, page];
}

const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };
const STORY = 'Harbour launch, petrol V8. Needle wavers at hot idle since the oil change, '
  + '5 psi at hot idle, 45 cold, new sender no change';

// A whole job by taps: from the story to the closed job.
async function wholeJob(name, scripts) {
  const [made, page] = await context({ ...PHONE, javaScriptEnabled: scripts });
  const count = { taps: 0, keys: 0, prompts: 0 };
  const tap = async (what) => { count.taps += 1; await what.tap(); };
  const go = async (what) => {
    const there = page.waitForEvent('framenavigated');
    await tap(what);
    await there;
    await page.waitForLoadState();
  };
  const type = async (what, text) => { count.taps += 1; count.keys += text.length; await what.fill(text); };
  const button = (says) => page.getByRole('button', { name: says });
  const link = (says) => page.getByRole('link', { name: says });
  const see = (screen) => look(page, screen, { scripts });
  await page.goto(asked.base);
  await see('jobs');
  await go(link('New job'));
  await see('new');
  await type(page.getByLabel('What is it, and what does it do?'), STORY);
  await go(button('Read it'));
  await see('understood');
  await go(button('Keep the ticked'));
  for (let i = 0; i < 30 && await page.getByRole('heading', { name: 'Enough asked' }).count() === 0; i += 1) {
    count.prompts += 1;
    if (count.prompts <= 8) await see(`ask-${count.prompts}`);
    const rather = page.locator('button[name="answer"][value="n"], button[name="answer"][value="d"]').first();
    await go(rather);
  }
  await see('asked');
  await go(link('To the next check'));
  found.jobs[name] = { until_check: { ...count }, address: new URL(page.url()).pathname };
  await see('job');
  const job = page.url();
  const kept = page.getByLabel('Recorded, or photographed');
  if (await kept.count()) await tap(kept);
  await tap(page.locator('fieldset .choice', { hasText: /^No$/ }).first());
  await go(button('Save what I answered'));
  await see('job-saved');
  found.jobs[name].saved = await page.locator('.note[role=status]').first().innerText();
  await go(link('Why, and what would change it'));
  await see('why');
  await page.goto(job);
  await go(link(/^Write down/));
  await type(page.getByLabel('What did you find or measure?'), 'no 3 main 4.5 thou');
  await go(button('Save'));
  await see('note');
  found.jobs[name].verdict = await page.locator('.verdict').first().innerText();
  await page.goto(job);
  await go(link(/^Gauge readings/));
  await type(page.getByLabel('Hot, about 2000 rpm'), '22');
  await tap(page.getByText('A trusted test gauge'));
  await go(button('Save'));
  await see('readings');
  await page.goto(job);
  await go(link(/^Take apart/));
  await see('teardown');
  await go(page.locator('ol.list a').first());
  await see('stage');
  await go(page.locator('a.line').first());
  await see('check');
  await page.goto(job);
  await go(link(/^What if/));
  await see('forecast');
  if (scripts) {
    await page.getByLabel('Main bearing clearance').fill('2');
    await page.getByText('hot after').waitFor();
    found.jobs[name].followed = await page.locator('output').first().innerText();
  }
  for (const [says, screen] of [[/^Readings as curves/, 'survey'], [/^Where the pressure went/, 'budget'],
    [/^Photos/, 'photos'], [/^Close the job/, 'close']]) {
    await page.goto(job);
    await go(link(says));
    await see(screen);
  }
  await tap(page.locator('fieldset .choice').first());
  await type(page.getByLabel('How was it confirmed?'), 'seen on the seat');
  await type(page.getByLabel(/^Why it may be closed/), 'the owner does the rest');
  await go(button('Close it'));
  await see('closed');
  found.jobs[name].closed = await page.locator('main').innerText();
  await page.goto(`${asked.base}/shop`);
  await see('shop');
  found.jobs[name].all = count;
  await made.close();
}

await wholeJob('taps', true);
await wholeJob('without scripts', false);

// The same screens on a tablet and a desk, light and dark; putting together has its own job.
const OTHERS = { jobs: '/', new: '/new', job: '/job/petrel.toml', ask: '/job/dunlin.toml/ask',
  phases: '/job/dunlin.toml/signoff', phase: '/job/dunlin.toml/signoff/2', stage: '/job/petrel.toml/teardown/1',
  forecast: '/job/dunlin.toml/forecast?main_clearance=2.5', budget: '/job/dunlin.toml/budget',
  survey: '/job/dunlin.toml/survey', readings: '/job/petrel.toml/readings', why: '/job/dunlin.toml/why',
  start: '/job/dunlin.toml/start', bearings: '/job/dunlin.toml/bearings', card: '/job/turnstone.toml/card',
  figures: '/job/turnstone.toml/card/clearances', name: '/job/petrel.toml/card',
  gate: '/job/petrel.toml/teardown/3', step: '/job/petrel.toml/check/pull_the_relief_valve', album: '/job/petrel.toml/photos', missing: '/job/none.toml', code: '/code' };
for (const [width, dark] of [[390, true], [768, false], [1280, true]]) {
  const [made, page] = await context({ viewport: { width, height: 900 }, colorScheme: dark ? 'dark' : 'light' });
  for (const [name, path] of Object.entries(OTHERS)) {
    await page.goto(asked.base + path);
    await look(page, `${name}-other`, { scripts: width !== 768 });
  }
  await made.close();
}

// A value is judged as it is typed; nothing is opened before what to record is ticked.
for (const scripts of [true, false]) {
  const [made, page] = await context({ ...PHONE, javaScriptEnabled: scripts });
  const name = scripts ? 'with' : 'without';
  await page.goto(`${asked.base}/job/turnstone.toml/check/lay_plastic_thread`);
  const value = page.locator('input[name="m:main_clearance"]');
  await value.fill('4.5');
  await page.locator('select[name="u:main_clearance"]').selectOption('thou');
  const judged = page.locator('.judged[data-of="m:main_clearance"]');
  if (scripts) await judged.locator('.verdict').waitFor();
  found.judged[name] = (await judged.innerText()).trim();
  await page.goto(`${asked.base}/job/petrel.toml/teardown/3`);
  const steps = page.locator('.opens .choice').first();
  const before = await steps.isVisible();
  for (const box of await page.locator('.first .choice').all()) await box.tap();
  found.gate[name] = [before, await steps.isVisible()];
  await made.close();
}

// With the keyboard alone: from the list to a story that is read.
{
  const [made, page] = await context({ viewport: { width: 1280, height: 900 } });
  const until = async (wanted) => {
    for (let i = 0; i < 60; i += 1) {
      await page.keyboard.press('Tab');
      const at = await page.evaluate(() => {
        const e = document.activeElement;
        const ring = getComputedStyle(e).outlineStyle !== 'none'
          || (e.closest('.choice') && getComputedStyle(e.closest('.choice')).outlineStyle !== 'none');
        return [(e.textContent || e.id || '').trim(), Boolean(ring)];
      });
      if (at[0].startsWith(wanted)) return at[1];
    }
    throw new Error(`no way to ${wanted} by keys`);
  };
  await page.goto(asked.base);
  const rings = [await until('New job')];
  await page.keyboard.press('Enter');
  await page.waitForURL('**/new');
  rings.push(await until('story'));
  await page.keyboard.type('petrol V8, low when hot');
  rings.push(await until('Read it'));
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { name: 'Understood so far' }).waitFor();
  found.keyboard = rings;
  await made.close();
}

// On paper.
{
  const [made, page] = await context({ viewport: { width: 700, height: 900 } });
  found.paper = {};
  for (const path of ['/job/dunlin.toml', '/job/dunlin.toml/report', '/job/petrel.toml/teardown/sheet',
    '/job/dunlin.toml/signoff/sheet', '/job/dunlin.toml/signoff/2']) {
    await page.goto(asked.base + path);
    await page.emulateMedia({ media: 'print' });
    const wide = await page.evaluate(() => document.documentElement.scrollWidth);
    const pdf = await page.pdf({ format: 'A4', path: join(asked.out, `${path.replaceAll('/', '-')}.pdf`) });
    const buttons = await page.evaluate(() => [...document.querySelectorAll('button')]
      .filter((e) => e.checkVisibility()).length);
    found.paper[path] = { wide, pdf: pdf.length, buttons };
  }
  await made.close();
}
await browser.close();
console.log(JSON.stringify(found));
