// Whether what matters is in sight and can be read: large figures, the drawing beside the fields, paper.

import assert from 'node:assert/strict';
import { after, before } from 'node:test';
import { sizes } from './helper/browser.mjs';
import {
  addressOf, button, changeUnits, drawing, eventually, field, figures, focused, openExample, openedField, pageTests,
  plain, readFigures, toStage,
} from './helper/steps.mjs';

const readingTest = pageTests({ before, after }, { size: sizes.smallPhone });

const textSize = (locator) => locator.evaluate((element) => parseFloat(getComputedStyle(element).fontSize));

readingTest('the five figures are the largest text of the plan, each on one line', async ({ open }) => {
  const { page } = await open();
  await openExample(page, 1);
  await changeUnits(page, 'inch, 1/64');
  // As long as a figure gets: 2 13/64 and what is left.
  await toStage(page, 'Wanted');
  await field(page, 'Finished length').fill('2.14');
  await toStage(page, 'Plan');
  assert.match((await readFigures(page))[0], /^Cut off \| ≈ 2 \d+\/64 in/);
  const values = figures(page).locator('.figure-value');
  assert.equal(await values.count(), 5);
  const others = page.locator('h1, h2, .stage-lead, .figure-name, .dimension-text');
  const largest = Math.max(...await others.evaluateAll((all) => all.map(
    (element) => parseFloat(getComputedStyle(element).fontSize),
  )));
  for (const value of await values.all()) {
    const size = await textSize(value);
    assert.ok(size > largest, `${size} px is not larger than ${largest} px`);
    const { height } = await value.boundingBox();
    assert.ok(height < 1.6 * size, `${await value.textContent()} is ${height} px high`);
  }
});

readingTest('a link opens on the plan, which says in plain words what falls off and what stays', async ({ open }) => {
  const { page } = await open();
  const before = await addressOf(page);
  await openExample(page, 0);
  const link = await addressOf(page, before);
  const owner = await open(link, { colorScheme: 'dark' });
  // 71.5 − 56 − 1 − 1.6 falls off.
  const lead = owner.page.getByText('falls off the free end');
  await lead.waitFor();
  assert.equal(
    plain(await lead.textContent()),
    'A piece of 12.90 mm falls off the free end. A shank of 56.00 mm stays and is turned to ⌀25 mm. '
      + 'What is off cannot be put back.',
  );
  await toStage(owner.page, 'Wanted');
  await field(owner.page, 'Finished diameter').fill('40');
  await toStage(owner.page, 'Plan');
  assert.equal(await lead.count(), 0, 'what cannot be done is not announced');
});

readingTest('a class of tolerance is followed by its limits', async ({ open }) => {
  const { page } = await open();
  await toStage(page, 'Wanted');
  await field(page, 'Finished diameter').fill('20');
  const tolerance = page.locator('.field-choice', { has: page.getByLabel('Tolerance') });
  // ISO 286: h6 over 18 to 30 mm is 0 to −13 µm.
  await eventually(async () => assert.match(plain(await tolerance.innerText()), /19\.987 mm to 20\.000 mm/));
});

readingTest('without a cut there is nothing to mark, and facing alone says how much', async ({ open }) => {
  const { page } = await open();
  await openExample(page, 0);
  await toStage(page, 'Plan');
  await field(page, 'Facing stock').fill('30');
  await eventually(async () => assert.equal((await readFigures(page))[0], 'Face back | 15.50 mm | to face off'));
  await toStage(page, 'Wanted');
  await field(page, 'Finished length').fill('71.5');
  await toStage(page, 'Plan');
  await eventually(async () => assert.equal((await readFigures(page))[0], 'No cut | nothing'));
});

readingTest('what an abrasive disc asks for stands where the part is cut off', async ({ open }) => {
  const { page } = await open();
  await openExample(page, 0);
  await toStage(page, 'Plan');
  const cutting = page.locator('.group', { has: page.getByRole('heading', { name: 'Cutting off, facing, centring' }) });
  await cutting.getByText(/^Abrasive disc: guard on/).waitFor();
  await page.getByLabel('Cut off with').selectOption('Parting tool');
  await eventually(async () => assert.equal(await page.getByText(/^Abrasive disc:/).count(), 0));
  await toStage(page, 'Received');
  await page.getByLabel('Material').selectOption('Titanium alloy');
  await toStage(page, 'Plan');
  await page.getByText(/^Titanium chips can burn/).waitFor();
});

readingTest('from a finding to its field: the field and its keys are in sight', async ({ open }) => {
  const { page } = await open();
  await openExample(page, 0);
  await toStage(page, 'Wanted');
  await field(page, 'Finished diameter').fill('40');
  await toStage(page, 'Plan');
  await page.getByText(/^Take .* diameter or less/).waitFor();
  await page.getByRole('button', { name: /^Change ?: Finished diameter/ }).first().click();
  const input = openedField(page, 'Finished diameter');
  await focused(input);
  const keys = page.getByRole('group', { name: 'Keys that a phone lacks' });
  await eventually(async () => {
    const bar = await page.getByRole('navigation').boundingBox();
    const [top, bottom] = [await input.boundingBox(), await keys.boundingBox()];
    assert.ok(top.y >= 0, `the field begins at ${top.y}`);
    assert.ok(bottom.y + bottom.height <= bar.y, `the keys end at ${bottom.y + bottom.height}, the bar begins at ${bar.y}`);
  });
});

readingTest('at a desk the drawing stays in sight beside the last field', async ({ open }) => {
  const { page } = await open('', { size: sizes.desk });
  await openExample(page, 1);
  for (const [stage, name] of [['Received', 'Add a hole'], ['Plan', 'Mass of the offcut']]) {
    await toStage(page, stage);
    await page.getByRole('button', { name }).scrollIntoViewIfNeeded();
    assert.ok(await page.evaluate(() => scrollY > 100));
    const { y } = await drawing(page).boundingBox();
    assert.ok(y >= 0 && y < 300, `${stage}: the drawing begins at ${y}`);
  }
});

readingTest('a phone on its side has room for the page', async ({ open }) => {
  const { page } = await open('', { viewport: { width: 740, height: 360 } });
  await openExample(page, 0);
  await button(page, 'All right').click();
  const header = await page.getByRole('banner').or(page.locator('.header')).first().boundingBox();
  assert.ok(header.height <= 72, `the header is ${header.height} px high`);
  const { height } = await page.locator('.sheet-frame').boundingBox();
  assert.ok(height < 500, `the drawing is ${height} px high`);
});

readingTest('on paper no controls stand and nothing is cut off', async ({ open }) => {
  const { page } = await open();
  await openExample(page, 0);
  await toStage(page, 'Plan');
  await page.emulateMedia({ media: 'print' });
  await page.setViewportSize({ width: 720, height: 1000 });
  for (const name of ['Menu', /^Change/, 'Done']) {
    const control = page.getByRole('button', { name }).filter({ visible: true });
    assert.equal(await control.count(), 0, String(name));
  }
  assert.equal(await page.getByRole('textbox').filter({ visible: true }).count(), 0);
  assert.equal(await page.evaluate(() => document.scrollingElement.scrollWidth > innerWidth), false);
  const cut = await page.evaluate(() => [...document.querySelectorAll('main *')]
    .filter((it) => getComputedStyle(it).overflowY === 'auto' && it.scrollHeight > it.clientHeight).length);
  assert.equal(cut, 0);
});
