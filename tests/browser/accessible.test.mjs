// For every eye, finger and reader: axe, sizes of targets and text, no scrolling sideways.

import assert from 'node:assert/strict';
import { after, before } from 'node:test';
import { assertAccessible } from './helper/accessibility.mjs';
import { sizes } from './helper/browser.mjs';
import { looksRight } from './helper/fits.mjs';
import {
  button, changeLook, changeUnits, closeDialog, dialog, examples, field, figures, openExample, openJobs, openMenu,
  pageTests, stages, tapDimension, toStage,
} from './helper/steps.mjs';

const eyeTest = pageTests({ before, after }, { size: sizes.smallPhone });

for (const look of ['light', 'dark', 'sunlight']) {
  eyeTest(`axe finds nothing on any stage, dialog or open field (${look})`, async ({ open }) => {
    const { page } = await open();
    await changeLook(page, look);
    await openExample(page, 0);
    for (const stage of stages) {
      await toStage(page, stage);
      await assertAccessible(page);
    }
    await toStage(page, 'Plan');
    await figures(page).getByRole('button', { name: 'Whole time' }).click();
    await dialog(page, 'Whole time').waitFor();
    await assertAccessible(page);
    await closeDialog(page, 'Whole time');
    await openMenu(page);
    await assertAccessible(page);
    await closeDialog(page, 'Menu');
    await openJobs(page);
    await button(page, 'More about Milling arbor, 32 mm to 25 mm').click();
    await assertAccessible(page);
    await closeDialog(page, 'Jobs');

    await toStage(page, 'Wanted');
    await field(page, 'Finished length').fill('nonsense');
    await field(page, 'Finished diameter').fill('60');
    await assertAccessible(page);
    await tapDimension(page, /^Fillet radius/);
    await button(page, 'Done').waitFor();
    await assertAccessible(page);
    await toStage(page, 'Plan');
    await page.getByText(/^Stop: /).first().waitFor();
    await assertAccessible(page);
  });
}

// What can be tapped, with its size; a dimension is tapped on its own area, not on its long lines.
const smallTargets = (page) => page.evaluate(() => [...document.querySelectorAll(
  'button, input, select, textarea, a, [role=button]',
)].map((element) => {
  const { width, height } = (element.querySelector(':scope > rect') ?? element).getBoundingClientRect();
  return { width, height, name: element.getAttribute('aria-label') ?? element.id + element.textContent.slice(0, 40) };
}).filter(({ width, height }) => width > 0 && (width < 47.99 || height < 47.99))
  .map(({ width, height, name }) => `${name}: ${width} × ${height}`));

const smallTexts = (page) => page.evaluate(() => {
  const found = new Set();
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  while (walker.nextNode()) {
    const element = walker.currentNode.parentElement;
    if (walker.currentNode.data.trim() !== '' && element.checkVisibility()) {
      const size = parseFloat(getComputedStyle(element).fontSize);
      if (size < 16) {
        found.add(`${size}: ${walker.currentNode.data}`);
      }
    }
  }
  return [...found];
});

for (const [index, example] of examples.entries()) {
  eyeTest(`everything fits a narrow phone and a finger (${example})`, async ({ open }) => {
    const { page } = await open();
    await openExample(page, index);
    for (const units of ['mm', 'inch, decimal', 'inch, 1/64']) {
      await changeUnits(page, units);
      for (const stage of stages) {
        await toStage(page, stage);
        await looksRight(page, 360, `${stage}, ${units}`);
        assert.deepEqual(await smallTargets(page), [], `${stage}, ${units}`);
        assert.deepEqual(await smallTexts(page), [], `${stage}, ${units}`);
      }
      await toStage(page, 'Plan');
      const { height } = await figures(page).boundingBox();
      // A quarter of the screen: they are what is read at arm's length, in bad light.
      assert.ok(height <= 185, `the five figures take ${height} of the screen in ${units}`);
    }
  });
}

eyeTest('the open field, its keys and the dialogs fit a narrow phone and a finger', async ({ open }) => {
  const { page } = await open();
  await tapDimension(page, /^Section 1: diameter/);
  const keys = page.getByRole('group', { name: 'Keys that a phone lacks' });
  await keys.waitFor();
  assert.equal((await keys.boundingBox()).height, 48, 'the keys stand in one row');
  await looksRight(page, 360, 'open field');
  assert.deepEqual(await smallTargets(page), []);
  await openMenu(page);
  await looksRight(page, 360, 'menu');
  assert.deepEqual(await smallTargets(page), []);
  assert.deepEqual(await smallTexts(page), []);
  await closeDialog(page, 'Menu');
  await toStage(page, 'Plan');
  for (const card of ['Cut off', 'Infeed per pass', 'Whole time']) {
    await figures(page).getByRole('button', { name: card }).click();
    await page.getByRole('dialog').waitFor();
    await looksRight(page, 360, card);
    assert.deepEqual(await smallTargets(page), []);
    await button(page, 'Close').click();
    await page.getByRole('dialog').waitFor({ state: 'detached' });
  }
});

// As the browser's own setting for the size of text has it.
const largeTextTest = pageTests({ before, after }, { size: sizes.phone }, ['--blink-settings=defaultFontSize=32']);

largeTextTest('text twice as large is cut off nowhere', async ({ open }) => {
  const { page } = await open();
  assert.equal(await page.evaluate(() => getComputedStyle(document.documentElement).fontSize), '32px');
  await openExample(page, 0);
  for (const stage of stages) {
    await toStage(page, stage);
    await looksRight(page, 412, stage);
  }
  await toStage(page, 'Plan');
  await figures(page).getByRole('button', { name: 'Whole time' }).click();
  await dialog(page, 'Whole time').waitFor();
  await looksRight(page, 412, 'working');
  await closeDialog(page, 'Whole time');
  await toStage(page, 'Received');
  await tapDimension(page, /^Section 1: diameter/);
  await page.getByRole('group', { name: 'Keys that a phone lacks' }).waitFor();
  await looksRight(page, 412, 'open field');
});
