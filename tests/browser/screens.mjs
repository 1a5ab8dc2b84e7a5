// Opens screens of a running `diagnose serve` on three widths, light and dark, and prints some.
// Standard input: as serve.mjs has it, with "screens": {name: path}, "papers": [path].
import { join } from 'node:path';
import { asked, context, finished, found, look } from './serve.mjs';

found.judged = {};
found.gate = {};
for (const [width, dark] of [[390, true], [768, false], [1280, true]]) {
  const [made, page] = await context({ viewport: { width, height: 900 }, colorScheme: dark ? 'dark' : 'light' });
  for (const [name, path] of Object.entries(asked.screens)) {
    await page.goto(asked.base + path);
    await look(page, name);
  }
  await made.close();
}
// A value is judged as it is typed; nothing is opened before what to record is ticked.
for (const scripts of [true, false]) {
  const [made, page] = await context({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, javaScriptEnabled: scripts });
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

// What is typed is there again after a look at another page, and gone once it is saved.
{
  const [made, page] = await context({ viewport: { width: 390, height: 844 } });
  const check = `${asked.base}/job/turnstone.toml/check/lay_plastic_thread`;
  const value = page.locator('input[name="m:main_clearance"]');
  const picked = page.locator('select[name="u:main_clearance"]');
  await page.goto(check);
  await value.fill('2.5');
  await picked.selectOption('thou');
  await page.getByRole('link', { name: 'Take a photo of it' }).click();
  await page.getByRole('heading', { name: 'Photos' }).waitFor();
  await page.goBack();
  found.draft = { back: [await value.inputValue(), await picked.inputValue()] };
  await page.goto(check);
  found.draft.again = await value.inputValue();
  await page.getByText('Recorded, or photographed').click();
  await page.getByRole('button', { name: 'Save what I answered' }).click();
  await page.getByText('Saved', { exact: true }).waitFor();
  await page.goto(check);
  found.draft.saved = await value.inputValue();
  await made.close();
}

const [made, page] = await context({ viewport: { width: 700, height: 900 } });
found.paper = {};
for (const path of asked.papers) {
  await page.goto(asked.base + path);
  await page.emulateMedia({ media: 'print' });
  const wide = await page.evaluate(() => document.documentElement.scrollWidth);
  const pdf = await page.pdf({ format: 'A4', path: join(asked.out, `${path.replaceAll('/', '-')}.pdf`) });
  const buttons = await page.evaluate(() => [...document.querySelectorAll('button')]
    .filter((e) => e.checkVisibility()).length);
  found.paper[path] = { wide, pdf: pdf.length, buttons };
}
await made.close();
await finished();
