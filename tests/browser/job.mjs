// Works on one whole job of a running `diagnose serve` in headless Chromium as a person does, by taps
// or by keys alone, and says what it met on each screen; driven by tests/serve/test_serve_in_a_browser.py.
// Standard input: as serve.mjs has it, with "job": {"story", "found", "cause"}, "width", "scripts": bool,
// "keys": bool, "brief": bool: only to the first check, "picture": path of a photo.
import { asked, context, finished, found, look } from './serve.mjs';

const touch = asked.width < 1000 && !asked.keys;
const [made, page] = await context({ viewport: { width: asked.width, height: 844 }, hasTouch: touch,
  isMobile: touch, javaScriptEnabled: asked.scripts });
const count = { taps: 0, keys: 0, prompts: 0 };
found.rings = []; // of what was reached by keys: whether one sees where one is

// By keys: press Tab until what is wanted has the focus; arrows within a group of choices.
async function reach(what) {
  const wanted = await what.elementHandle();
  for (let i = 0; i < 400; i += 1) {
    const at = await wanted.evaluate((e) => {
      const now = document.activeElement;
      return { there: now === e, group: now !== e && e.type === 'radio' && now.type === 'radio' && now.name === e.name };
    });
    if (at.there) break;
    await page.keyboard.press(at.group ? 'ArrowDown' : 'Tab');
    count.keys += 1;
  }
  found.rings.push(await wanted.evaluate((e) => {
    if (document.activeElement !== e) return `no way to ${e.outerHTML.slice(0, 120)}`;
    const ringed = (x) => x && getComputedStyle(x).outlineStyle !== 'none';
    return ringed(e) || ringed(e.closest('.choice')) ? '' : `not seen: ${e.outerHTML.slice(0, 120)}`;
  }));
}
async function press(what, key) {
  await reach(what);
  await page.keyboard.press(key);
  count.keys += 1;
}
async function tap(what) {
  if (asked.keys) { await press(what, 'Enter'); return; }
  count.taps += 1;
  if (touch) await what.tap(); else await what.click();
}
async function tick(label) {
  const input = label.locator('input');
  if (!asked.keys) { if (!await input.isChecked()) await tap(label); return; }
  await reach(input);
  if (!await input.isChecked()) { await page.keyboard.press('Space'); count.keys += 1; }
}
async function go(what) {
  const there = page.waitForEvent('framenavigated');
  await tap(what);
  await there;
  await page.waitForLoadState();
}
async function type(what, text) {
  if (asked.keys) { await reach(what); await page.keyboard.type(text); } else { count.taps += 1; await what.fill(text); }
  count.keys += text.length;
}
const button = (says) => page.getByRole('button', { name: says }).first();
const link = (says) => page.getByRole('link', { name: says }).first();
const choice = (says) => page.locator('main label.choice', { hasText: says }).first();
const unfold = async (says) => {
  const part = page.locator('summary', { hasText: says }).first();
  if (await part.count() && !await part.evaluate((e) => e.parentElement.open)) await tap(part);
};
const see = (screen) => look(page, screen, asked.scripts);

// The story, what was understood of it, the questions, the first check.
await page.goto(asked.base);
await see('jobs');
await go(link('New job'));
await see('new');
await type(page.getByLabel('What is it, and what does it do?'), asked.job.story);
await go(button('Read it'));
await see('understood');
await go(button('Keep the ticked'));
for (let i = 0; i < (asked.brief ? 3 : 30) && await page.getByRole('heading', { name: 'Enough asked' }).count() === 0; i += 1) {
  count.prompts += 1;
  if (count.prompts <= (asked.brief ? 3 : 8)) await see(`ask-${count.prompts}`);
  await go(page.locator('button[name="answer"][value="n"], button[name="answer"][value="d"]').first());
}
if (asked.brief) {
  await go(link('The job so far'));
} else {
  await see('asked');
  await go(link('To the next check'));
}
await see('job');
found.untilCheck = { ...count };
const job = page.url();
const kept = choice('Recorded, or photographed');
if (await kept.count()) await tick(kept);
await tick(page.locator('fieldset label.choice', { hasText: /^\s*No\s*$/ }).first());
await go(button('Save what I answered'));
await see('job-saved');
found.saved = await page.locator('.note[role=status]').first().innerText();

// From there to the closed job.
async function onwards() {
  await go(link('Why, and what would change it'));
  await see('why');
  await page.goto(job);
  await go(link(/^Write down/));
  await type(page.getByLabel('What did you find or measure?'), asked.job.found);
  await go(button('Save'));
  if (await page.getByText('Which do you mean?').count()) {
    await see('note-choice');
    await tick(page.locator('fieldset label.choice').first());
    await go(button('Save'));
  }
  await see('note');
  found.noted = await page.locator('.note[role=status]').first().innerText();
  await page.goto(job);
  await go(link(/^Gauge readings/));
  await type(page.getByLabel('Hot, about 2000 rpm'), '22');
  await unfold(/gauge/i);
  await tick(choice('A trusted test gauge'));
  await go(button('Save'));
  await see('readings');
  found.read = await page.locator('main').innerText();
  await page.goto(job);
  await go(link(/^Take apart/));
  await see('teardown');
  await go(page.locator('ol.list a').first());
  await see('stage');
  await go(page.locator('main a.line').first());
  await see('check');
  await page.goto(job);
  await go(link(/^What if/));
  await see('forecast');
  const slider = page.getByLabel('Main bearing clearance');
  if (await slider.count()) {
    const before = await page.locator('#predicted, [id]').first().innerText();
    if (asked.scripts) {
      if (asked.keys) { await reach(slider); await page.keyboard.press('Home'); } else {
        await slider.fill(await slider.getAttribute('min'));
      }
      await page.getByText('hot after').first().waitFor();
    } else {
      await slider.fill(await slider.getAttribute('min'));
      await go(page.locator('form[data-live] button').first());
      await page.getByText('hot after').first().waitFor();
    }
    found.followed = before !== await page.locator('main').innerText();
    await see('forecast-moved');
  }
  for (const [says, screen] of [[/^Readings as curves/, 'survey'], [/^Where the pressure went/, 'budget'],
    [/^Put together/, 'signoff'], [/^Bearings/, 'bearings']]) {
    await page.goto(job);
    if (await link(says).count()) { await go(link(says)); await see(screen); }
  }
  await page.goto(job);
  await go(link(/^Photos/));
  await page.locator('input[type=file]').first().setInputFiles(asked.picture);
  await go(page.getByRole('button', { name: 'Keep it' }).first());
  await see('photos');
  found.photos = await page.locator('main img').count();
  await page.goto(job);
  await go(link(/^Close the job/));
  await see('close');
  const cause = page.locator(`label.choice:has(input[name=cause][value="${asked.job.cause}"])`);
  await tick(await cause.count() ? cause : page.locator('label.choice:has(input[name=cause])').first());
  await type(page.getByLabel('How was it confirmed?'), 'seen and put right');
  const reason = page.getByLabel(/^Why it may be closed/);
  if (await reason.count()) await type(reason, 'the owner does the rest');
  await go(button('Close it'));
  await see('closed');
  found.closed = await page.locator('main').innerText();
  await page.goto(`${job}/report`);
  await see('report');
  await page.goto(`${asked.base}/shop`);
  await see('shop');
}
if (!asked.brief) await onwards();
found.all = count;
await made.close();
await finished();
