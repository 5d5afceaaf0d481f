// The main job with the keyboard alone, at a desk.

import assert from 'node:assert/strict';
import { after, before } from 'node:test';
import { sizes } from './helper/browser.mjs';
import {
  button, dialog, dimension, drawing, eventually, field, figures, focused, isFocused, openedField, pageTests,
  readFigures, toStage,
} from './helper/steps.mjs';

const keyboardTest = pageTests({ before, after }, { size: sizes.desk });

// Presses Tab until the element has the focus, and looks at each stop on the way: it must be seen that it has it.
async function tabTo(page, locator, key = 'Tab') {
  for (let presses = 0; presses < 120; presses += 1) {
    if (await locator.count() === 1 && await isFocused(locator)) {
      return;
    }
    await page.keyboard.press(key);
    const ring = await page.evaluate(() => {
      const element = document.activeElement;
      if (element === document.body) {
        return 'on the page as a whole';
      }
      // A dimension draws the ring round its own area.
      const area = element.querySelector(':scope > rect') ?? element;
      const style = getComputedStyle(area);
      const drawn = area === element
        ? style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) >= 2
        : style.stroke !== 'none' && parseFloat(style.strokeWidth) >= 2;
      return drawn ? 'seen' : `not seen on ${element.outerHTML.slice(0, 200)}`;
    });
    assert.ok(ring === 'seen' || ring === 'on the page as a whole', ring);
  }
  assert.fail('the keyboard does not reach it');
}

const stage = (page, name) => page.getByRole('navigation').getByRole('button', { name });

keyboardTest('the whole job is done with the keyboard', async ({ open }) => {
  const { page, troubles } = await open();
  const diameter = dimension(page, /^Section 1: diameter/);
  await tabTo(page, diameter);
  await page.keyboard.press('Enter');
  await focused(openedField(page, 'Section 1: diameter'));
  await page.keyboard.type('1 1/4 in');
  await page.keyboard.press('Enter');
  await focused(diameter);
  assert.match(await diameter.getAttribute('aria-label'), /31\.75/);

  await tabTo(page, dimension(page, /^Section 1: length/), 'Shift+Tab');
  await page.keyboard.press('Space');
  await focused(openedField(page, 'Section 1: length'));
  await page.keyboard.type('70');
  await page.keyboard.press('Escape');
  await focused(dimension(page, /^Section 1: length/));

  await tabTo(page, page.getByLabel('Material'));
  await page.keyboard.type('Bra');
  await eventually(async () => assert.equal(
    await page.getByLabel('Material').evaluate((list) => list.selectedOptions[0].textContent),
    'Brass',
  ));

  await tabTo(page, stage(page, 'Wanted'), 'Shift+Tab');
  await page.keyboard.press('Enter');
  await tabTo(page, field(page, 'Finished diameter'));
  await page.keyboard.type('25');
  await tabTo(page, field(page, 'Finished length'));
  await page.keyboard.type('40');

  await tabTo(page, stage(page, 'Plan'), 'Shift+Tab');
  await page.keyboard.press('Space');
  // 70 − 40 − 1.
  await eventually(async () => assert.match((await readFigures(page))[0], /^Cut off \| 29\.00 mm/));
  const card = figures(page).getByRole('button', { name: 'Cut off' });
  await tabTo(page, card);
  await page.keyboard.press('Enter');
  const working = dialog(page, 'Mark for the cut, from the free end');
  await working.waitFor();
  await page.keyboard.press('Escape');
  await working.waitFor({ state: 'detached' });
  await focused(card);

  await tabTo(page, button(page, 'Undo'), 'Shift+Tab');
  await page.keyboard.press('Enter');
  await eventually(async () => assert.match((await readFigures(page))[0], /^Cut off \| 19\.00 mm/));
  assert.deepEqual(troubles, []);
});

keyboardTest('every dimension of the drawing is reached and opened', async ({ open }) => {
  const { page } = await open();
  for (const name of ['Received', 'Wanted', 'Plan']) {
    await stage(page, name).focus();
    await page.keyboard.press('Enter');
    await eventually(async () => assert.equal(await stage(page, name).getAttribute('aria-current'), 'page'));
    const dimensions = await drawing(page).getByRole('button').all();
    assert.ok(dimensions.length >= 4, `${dimensions.length} dimensions on ${name}`);
    for (const one of dimensions) {
      await tabTo(page, one);
      await page.keyboard.press('Enter');
      const done = button(page, 'Done');
      await done.waitFor();
      await page.keyboard.press('Escape');
      await done.waitFor({ state: 'detached' });
      assert.equal(await page.evaluate(() => document.activeElement.matches('g[role=button], input, select')), true);
      // The first of those that share a field has the focus now; go on from the one that was opened.
      await one.focus();
    }
  }
});

keyboardTest('dialogs keep the focus inside and give it back', async ({ open }) => {
  const { page } = await open();
  const menu = button(page, 'Menu');
  const menuDialog = dialog(page, 'Menu');

  await tabTo(page, menu);
  await page.keyboard.press('Enter');
  await menuDialog.waitFor();
  for (let presses = 0; presses < 20; presses += 1) {
    await page.keyboard.press('Tab');
    const inside = await page.evaluate(() => {
      const { activeElement } = document;
      // The browser's own buttons, outside the page, come after the last one.
      return activeElement === document.body || activeElement.closest('dialog') !== null;
    });
    assert.equal(inside, true);
  }
  await page.keyboard.press('Escape');
  await menuDialog.waitFor({ state: 'detached' });
  await focused(menu);

  await page.keyboard.press('Enter');
  await tabTo(page, button(menuDialog, 'Roller stub for a 17 mm bearing'));
  await page.keyboard.press('Enter');
  await menuDialog.waitFor({ state: 'detached' });
  await focused(menu);
});

keyboardTest('from the summary of the findings to the findings', async ({ open }) => {
  const { page } = await open();
  await tabTo(page, button(page, 'Clear: nothing stands against the plan.'));
  await page.keyboard.press('Enter');
  await focused(page.getByRole('heading', { name: 'Findings' }));
  // On Plan the summary stands where there is something to read, and leads there as often as it is asked.
  assert.equal(await page.locator('.summary').count(), 0);
  await toStage(page, 'Wanted');
  await field(page, 'Finished length').fill('200');
  await toStage(page, 'Plan');
  for (const time of ['first', 'second']) {
    const summary = button(page, /^\d+ stops?.* in the plan\.$/);
    await summary.focus();
    await page.keyboard.press('Enter');
    await focused(page.getByRole('heading', { name: 'Findings' }), time);
  }
});
