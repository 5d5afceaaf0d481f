// What a person does on the page, in his words. Everything is found by role and label.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import { startBrowser, withPages } from './browser.mjs';

export const stages = ['Received', 'Wanted', 'Plan', 'Cut', 'Hand back'];

export const examples = [
  'Milling arbor, 32 mm to 25 mm',
  'Saw arbor, taper no. 9 to 3/4 in',
  'Roller stub for a 17 mm bearing',
];

export const button = (page, name) => page.getByRole('button', { name, exact: true });

export const dialog = (page, name) => page.getByRole('dialog', { name, exact: true });

// A field of numbers in the list, while none is open at the drawing.
export const field = (page, name) => page.getByRole('textbox', { name, exact: true });

// The field that was opened from the drawing; its name says where it belongs.
export const openedField = (page, name) => page
  .getByRole('region', { name: 'Drawing of the part, to scale' })
  .getByRole('textbox', { name, exact: true });

export const isFocused = (locator) => locator.evaluate((element) => element === document.activeElement);

export const focused = (locator) => eventually(
  async () => assert.equal(await isFocused(locator), true, 'it must have the focus'),
);

// A dimension on the drawing, by its name without its size.
export const dimension = (page, name) => drawing(page).getByRole('button', { name });

// A finger on the text of a dimension; its extension lines make the whole of it far larger than what is tapped.
export async function tapDimension(page, name) {
  const text = dimension(page, name).locator('text');
  await text.scrollIntoViewIfNeeded();
  const { x, y, width, height } = await text.boundingBox();
  await page.touchscreen.tap(x + width / 2, y + height / 2);
}

export const drawing = (page) => page.getByRole('group', { name: 'Drawing of the part, to scale' });

export const figures = (page) => page.getByRole('region', { name: 'The five figures' });

export const jobTitle = (page) => page.getByRole('heading', { level: 1 });

export async function toStage(page, name) {
  await page.getByRole('navigation').getByRole('button', { name }).click();
  await page.getByRole('navigation').locator('[aria-current=page]', { hasText: name }).waitFor();
}

export async function openMenu(page) {
  await button(page, 'Menu').click();
  await dialog(page, 'Menu').waitFor();
}

export async function closeDialog(page, name) {
  await button(dialog(page, name), 'Close').click();
  await dialog(page, name).waitFor({ state: 'detached' });
}

export async function openExample(page, index) {
  await openMenu(page);
  await button(page, examples[index]).click();
  await page.getByRole('heading', { level: 1, name: examples[index] }).waitFor();
}

export async function openJobs(page) {
  await button(page, 'Jobs').click();
  await dialog(page, 'Jobs').waitFor();
}

// A plain new job beside the others, whose title stays empty.
export async function newJob(page) {
  await openJobs(page);
  await button(dialog(page, 'Jobs'), 'New job').click();
  await dialog(page, 'Jobs').waitFor({ state: 'detached' });
}

// A browser without windows cannot open its print dialog: asked for it, it counts in `window.asked`.
export const withoutPrintDialog = (page) => page.evaluate(() => {
  window.asked = 0;
  window.print = () => {
    window.asked += 1;
  };
});

export const saved = (page) => page.getByText('saved on this device', { exact: true }).waitFor();

async function chooseInMenu(page, group, name) {
  await openMenu(page);
  const choice = page.getByRole('group', { name: group }).getByRole('button', { name, exact: true });
  await choice.click();
  assert.equal(await choice.getAttribute('aria-pressed'), 'true');
  await closeDialog(page, 'Menu');
}

export const changeLook = (page, look) => chooseInMenu(page, 'Look', look);

export const changeUnits = (page, units) => chooseInMenu(page, 'Units', units);

// What the five figures say, as one text each with plain spaces.
export async function readFigures(page) {
  const texts = await figures(page).getByRole('button').evaluateAll((cards) => cards.map(
    (card) => [...card.children].map((part) => part.textContent).filter(Boolean).join(' | '),
  ));
  return texts.map(plain);
}

export const plain = (text) => text.replaceAll('\u{a0}', ' ');

// Waits until something about the page is true; the assertion of the last look is what fails.
export async function eventually(look) {
  const end = performance.now() + 10_000;
  for (;;) {
    try {
      return await look();
    } catch (error) {
      if (performance.now() > end) {
        throw error;
      }
      await new Promise((done) => {
        setTimeout(done, 50);
      });
    }
  }
}

// The address holds the job a moment after the last change.
export async function addressOf(page, before = '') {
  await page.waitForFunction(
    (old) => location.hash.length > 20 && location.hash !== old,
    before,
  );
  return page.evaluate(() => location.hash);
}

// Tests with one browser for the file, and a server and fresh profiles for each test.
export function pageTests({ before, after }, visitOptions = {}, settings = []) {
  let browser;
  before(async () => {
    browser = await startBrowser(settings);
  });
  after(() => browser.close());

  return (name, body) => test(name, () => withPages(browser, {}, ({ server, open }) => body({
    server,
    open: (address = '', options = {}) => open(`${server.url}${address}`, { ...visitOptions, ...options }),
  })));
}
