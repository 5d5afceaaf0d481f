// The Cut stage: the phone on the headstock. Steps, the large figure, readings, the next cut, the verdict.

import assert from 'node:assert/strict';
import { after, before } from 'node:test';
import { assertAccessible } from './helper/accessibility.mjs';
import { sizes, waitUntilKept } from './helper/browser.mjs';
import { pointsOf } from './helper/picture.mjs';
import {
  act, cutToSize, figure, keyIn, readings, stepName, steps, stepTitle, workUpTo,
} from './helper/lathe.mjs';
import {
  button, changeUnits, dialog, eventually, field, focused, openExample, pageTests, plain, toStage,
} from './helper/steps.mjs';

const phoneTest = pageTests({ before, after }, { size: sizes.smallPhone });
const deskTest = pageTests({ before, after }, { size: sizes.desk });

const onItsSide = { ...sizes.smallPhone, viewport: { width: 740, height: 360 } };

// Where the ink is in a picture, a rim of so many points apart: the points that are not as its first one.
async function inkOf(page, locator, rim = 0) {
  const { width, height, points, ratio } = await pointsOf(page, locator);
  const parts = (x, y) => points.slice((y * width + x) * 4, (y * width + x) * 4 + 3);
  const ground = parts(rim, rim);
  const ink = [];
  for (let y = rim; y < height - rim; y += 1) {
    for (let x = rim; x < width - rim; x += 1) {
      if (parts(x, y).reduce((sum, part, at) => sum + Math.abs(part - ground[at]), 0) > 200) {
        ink.push([x, y]);
      }
    }
  }
  const span = (axis) => {
    const [least, most] = ink.reduce(([low, high], at) => [Math.min(low, at[axis]), Math.max(high, at[axis])], [Infinity, -Infinity]);
    return most - least + 1;
  };
  return { points: ink.length, wide: span(0), high: span(1), ratio };
}

// How high the ink of a figure is on the screen, in CSS pixels.
async function inkHeight(page, locator) {
  const { high, ratio } = await inkOf(page, locator);
  return high / ratio;
}

// How much of the box round the letters is ink: a plain slab is all of it. The rim may have a border.
async function inkShare(page, locator) {
  const { points, wide, high } = await inkOf(page, locator, 8);
  return points / (wide * high);
}

const noSidewaysScroll = async (page) => assert.equal(
  await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth),
  true,
  'nothing must stand out sideways',
);

const inSight = async (page, locator) => {
  const box = await locator.boundingBox();
  const { width, height } = page.viewportSize();
  assert.ok(box.x >= 0 && box.y >= 0 && box.x + box.width <= width + 0.5 && box.y + box.height <= height + 0.5, JSON.stringify(box));
  return box;
};

phoneTest('the figure can be read from two metres, and the buttons found in gloves', async ({ open }) => {
  for (const size of [sizes.smallPhone, onItsSide]) {
    const { page, troubles } = await open('', { size });
    await toStage(page, 'Cut');
    await workUpTo(page, 'Cut off');
    const height = await inkHeight(page, figure(page));
    console.log(`digits ${height} px high at ${size.viewport.width} × ${size.viewport.height}`);
    assert.ok(height >= 104, `digits are ${height} px high`);
    await inSight(page, figure(page));
    for (const name of ['Back', 'Skip', 'Done']) {
      const box = await inSight(page, act(page, name));
      console.log(`${name}: ${box.width} × ${box.height} px`);
      assert.ok(box.width >= 119 && box.height >= 48, `${name}: ${JSON.stringify(box)}`);
    }
    await noSidewaysScroll(page);
    await assertAccessible(page);
    assert.deepEqual(troubles, []);
  }
});

phoneTest('on its side the figure, the facts and the first caution are in sight', async ({ open }) => {
  const { page } = await open('', { size: onItsSide });
  await toStage(page, 'Cut');
  for (let tries = 0; tries < steps.length; tries += 1) {
    const name = await stepName(page);
    const bottom = (await page.getByRole('navigation').boundingBox()).y;
    const lines = [
      ...await page.locator('.cut-step dd').all(),
      ...(await page.getByRole('list', { name: 'Watch' }).getByRole('listitem').all()).slice(0, 1),
    ];
    for (const line of lines) {
      const box = await line.boundingBox();
      assert.ok(box.y + box.height <= bottom, `${name}: ${await line.textContent()} ends at ${box.y + box.height}, ${bottom}`);
    }
    await noSidewaysScroll(page);
    if (tries + 1 < steps.length) {
      await act(page, 'Done').click();
      await eventually(async () => assert.notEqual(await stepName(page), name));
    }
  }
});

phoneTest('the first step has the size to check, and it is read from afar', async ({ open }) => {
  const { page } = await open();
  await openExample(page, 0);
  await toStage(page, 'Cut');
  assert.equal(await figure(page).getAttribute('aria-label'), '32.00 mm');
  await inSight(page, figure(page));
});

phoneTest('with the colours of the system the buttons can be read', async ({ open }) => {
  for (const colorScheme of ['light', 'dark']) {
    const { page } = await open();
    await page.emulateMedia({ forcedColors: 'active', colorScheme });
    await toStage(page, 'Cut');
    for (const name of ['Done', 'Skip']) {
      const share = await inkShare(page, act(page, name));
      assert.ok(share > 0.1 && share < 0.7, `${name}, ${colorScheme}: ${share}`);
    }
    await noSidewaysScroll(page);
  }
});

phoneTest('whether the screen stays on is said, also where the browser refuses or cannot', async ({ open }) => {
  const { page } = await open();
  const cases = [
    ['granted', /The screen stays on/],
    ['refused', /The browser will not keep the screen on now/],
    ['unknown', /This browser cannot keep the screen on/],
  ];
  for (const [how, says] of cases) {
    await page.addInitScript((answer) => {
      const locks = {
        granted: { request: async () => ({ released: false, release: async () => {} }) },
        refused: { request: () => Promise.reject(new DOMException('no', 'NotAllowedError')) },
        unknown: undefined,
      };
      Object.defineProperty(Navigator.prototype, 'wakeLock', { configurable: true, get: () => locks[answer] });
    }, how);
    await page.reload();
    await toStage(page, 'Cut');
    await page.getByText(says).first().waitFor();
  }
});

phoneTest('it calls out only where that was asked for, and only once', async ({ open }) => {
  const { page, troubles } = await open();
  await page.clock.install({ time: new Date('2026-03-02T08:00:00Z') });
  await page.addInitScript(() => {
    window.shakes = 0;
    Object.defineProperty(Navigator.prototype, 'vibrate', { configurable: true, value: () => { window.shakes += 1; return true; } });
  });
  await page.reload();
  await toStage(page, 'Cut');
  const shakes = () => page.evaluate(() => window.shakes);
  const runOver = async () => {
    // The next step's clock runs on by itself.
    if (await button(page, 'Pause').count() === 0) {
      await button(page, 'Start').click();
    }
    await page.clock.fastForward(3 * 3600_000);
    await page.getByText('The planned time is over.').waitFor();
    await page.clock.runFor(5000);
  };
  await runOver();
  assert.equal(await shakes(), 0, 'nobody asked for it');
  await act(page, 'Done').click();
  await page.getByRole('button', { name: /^This screen/ }).click();
  await button(page, 'Sound and shake').click();
  await runOver();
  await eventually(async () => assert.equal(await shakes(), 1));
  assert.deepEqual(troubles, []);
});

phoneTest('a long figure is made narrower and lower, never cut off', async ({ open }) => {
  const { page } = await open();
  await changeUnits(page, 'inch, 1/64');
  await toStage(page, 'Wanted');
  await field(page, 'Finished length').fill('1 31/64 in');
  await toStage(page, 'Cut');
  await workUpTo(page, 'Cut off');
  assert.match(await figure(page).getAttribute('aria-label'), /\d\/\d+ in$/);
  const box = await inSight(page, figure(page));
  const height = await inkHeight(page, figure(page));
  console.log(`long figure ${await figure(page).getAttribute('aria-label')}: ${box.width} px wide, digits ${height} px high`);
  assert.ok(height >= 60, `${height} px high`);
  await noSidewaysScroll(page);
});

phoneTest('the keypad has large keys, all in sight, and last digits are enough', async ({ open }) => {
  const { page, troubles } = await open();
  await toStage(page, 'Cut');
  await workUpTo(page, 'Rough');
  await act(page, 'Measure').click();
  const pad = dialog(page, 'Diameter');
  for (const name of ['7', '0', 'Decimal mark', 'Erase', 'Keep']) {
    const box = await inSight(page, button(pad, name));
    console.log(`key ${name}: ${box.width} × ${box.height} px`);
    assert.ok(box.width >= 118 && box.height >= 64, `${name}: ${JSON.stringify(box)}`);
  }
  await assertAccessible(page);
  for (const sign of ['2', '0', 'Decimal mark', '0', '1', '2']) {
    await button(pad, sign).click();
  }
  await button(pad, 'Keep').click();
  await eventually(async () => assert.equal(await readings(page).count(), 1));
  await act(page, 'Measure').click();
  await button(pad, '0').click();
  await button(pad, '8').click();
  assert.match(plain(await pad.getByRole('status').first().textContent()), /^20\.008 mm$/);
  await button(pad, 'Middle').click();
  await button(pad, 'Keep').click();
  await eventually(async () => assert.match(plain((await readings(page).allTextContents()).join()), /⌀20\.008 mm in the middle/));
  await noSidewaysScroll(page);
  assert.deepEqual(troubles, []);
});

phoneTest('what is no number is said at the keypad, and nothing is lost', async ({ open }) => {
  const { page } = await open();
  await toStage(page, 'Cut');
  await workUpTo(page, 'Rough');
  await act(page, 'Measure').click();
  const pad = dialog(page, 'Diameter');
  await button(pad, 'Keep').click();
  await pad.getByText('Type a figure.').waitFor();
  await pad.getByRole('textbox', { name: 'Value' }).fill('19..9');
  await button(pad, 'Keep').click();
  await pad.getByText(/second decimal mark/).waitFor();
  assert.equal(await pad.getByRole('textbox', { name: 'Value' }).inputValue(), '19..9');
  await assertAccessible(page);
  await pad.getByRole('textbox', { name: 'Value' }).fill('19.95');
  await pad.getByRole('textbox', { name: 'Work temperature' }).fill('900');
  await button(pad, 'Keep').click();
  await pad.getByText(/That cannot be/).waitFor();
  await pad.getByRole('textbox', { name: 'Work temperature' }).fill('24');
  await button(pad, 'Keep').click();
  await eventually(async () => assert.match(plain((await readings(page).allTextContents()).join()), /19\.95 mm.*at 24 °C/));
});

phoneTest('struck out it stays in sight, and comes back', async ({ open }) => {
  const { page, troubles } = await open();
  await toStage(page, 'Cut');
  await workUpTo(page, 'Rough');
  await keyIn(page, '20.01');
  await page.getByRole('button', { name: /^Strike out: ⌀20\.01/ }).click();
  const back = page.getByRole('button', { name: /^Bring back: ⌀20\.01/ });
  await back.waitFor();
  assert.match(await readings(page).first().textContent(), /Struck out/);
  assert.equal(await readings(page).first().getByRole('deletion').count(), 1);
  await assertAccessible(page);
  await back.click();
  await page.getByRole('button', { name: /^Strike out: ⌀20\.01/ }).waitFor();
  await button(page, 'Undo').click();
  await back.waitFor();
  assert.deepEqual(troubles, []);
});

phoneTest('a reading that is one turn off is asked about before it counts', async ({ open }) => {
  const { page, troubles } = await open();
  await toStage(page, 'Cut');
  await workUpTo(page, 'Rough');
  await keyIn(page, '20.000', { place: 'Middle' });
  await act(page, 'I made this cut').click();
  await act(page, 'Measure').waitFor();
  await act(page, 'Measure').click();
  const pad = dialog(page, 'Diameter');
  const expected = Number(plain(await pad.getByText(/^Expected/).textContent()).match(/([\d.]+) mm/)[1]);
  const wrong = (expected + 0.5).toFixed(3);
  await pad.getByRole('textbox', { name: 'Value' }).fill(wrong);
  await button(pad, 'Keep').click();
  const asked = page.getByRole('region', { name: 'Is this reading right?' });
  await asked.waitFor();
  assert.match(await asked.textContent(), /one turn of the thimble/);
  await assertAccessible(page);
  await button(asked, `I meant ${expected.toFixed(3)} mm`).click();
  await asked.waitFor({ state: 'detached' });
  const said = (await readings(page).allTextContents()).map(plain);
  assert.ok(said.some((line) => line.includes(expected.toFixed(3))), said.join());
  assert.ok(said.some((line) => /^Struck out/.test(line) && line.includes(wrong)), said.join());
  assert.deepEqual(troubles, []);
});

phoneTest('a step is left out with a reason, and done again', async ({ open }) => {
  const { page, troubles } = await open();
  await toStage(page, 'Cut');
  const first = await stepName(page);
  await act(page, 'Skip').click();
  await focused(page.getByRole('heading', { name: 'Why is it left out?' }));
  await assertAccessible(page);
  await button(page, 'Was done before').click();
  await eventually(async () => assert.notEqual(await stepName(page), first));
  await act(page, 'Back').click();
  assert.match(plain(await stepTitle(page).textContent()), /left out/);
  await act(page, 'Do again').click();
  await act(page, 'Skip').click();
  await page.getByRole('textbox', { name: 'Another reason' }).fill('The owner did it.');
  await button(page, 'Leave it out').click();
  await eventually(async () => assert.notEqual(await stepName(page), first));
  assert.deepEqual(troubles, []);
});

phoneTest('the clock goes on through a reload and a night in the pocket', async ({ open }) => {
  const { page, troubles } = await open();
  await page.clock.install({ time: new Date('2026-03-02T08:00:00Z') });
  await page.reload();
  await toStage(page, 'Cut');
  await button(page, 'Start').click();
  await page.clock.runFor(65_000);
  await eventually(async () => assert.match(await page.getByRole('timer').textContent(), /^1:0[4-6]$/));
  await page.getByText('saved on this device', { exact: true }).waitFor();
  await page.reload();
  await eventually(async () => assert.match(await page.getByRole('timer').textContent(), /^1:0[4-9]$/));
  await page.clock.fastForward(10 * 60_000);
  await eventually(async () => assert.match(await page.getByRole('timer').textContent(), /^11:/));
  await page.getByText('The planned time is over.').waitFor();
  await button(page, 'Pause').click();
  await button(page, 'Go on').waitFor();
  // The device's clock set back.
  await button(page, 'Go on').click();
  await page.clock.setSystemTime(new Date('2026-03-01T08:00:00Z'));
  await page.clock.runFor(1000);
  await page.getByText(/clock was set back/).waitFor();
  await act(page, 'Done').click();
  await act(page, 'Back').click();
  await page.getByText(/its time does not count/).waitFor();
  assert.deepEqual(troubles, []);
});

deskTest('by keyboard alone through all steps', async ({ open }) => {
  const { page, troubles } = await open();
  await toStage(page, 'Cut');
  const seen = [];
  for (let tries = 0; tries < steps.length; tries += 1) {
    seen.push(await stepName(page));
    await act(page, 'Done').focus();
    await page.keyboard.press('Enter');
    if (await page.getByText('All steps are done or left out.').count() > 0) {
      break;
    }
    await focused(stepTitle(page));
  }
  await page.getByText('All steps are done or left out.').waitFor();
  assert.deepEqual(seen, steps.filter((name) => seen.includes(name)), 'in working order');
  assert.ok(seen.length >= 9, seen.join());
  // The focus is at the step: from there the tab key leads to the buttons.
  const list = page.getByRole('region', { name: 'Steps' });
  await list.getByRole('button', { name: /^Rough/ }).focus();
  await page.keyboard.press('Enter');
  await eventually(async () => assert.equal(await stepName(page), 'Rough'));
  await act(page, 'Do again').focus();
  await page.keyboard.press('Enter');
  await act(page, 'Measure').focus();
  await page.keyboard.press('Enter');
  const value = dialog(page, 'Diameter').getByRole('textbox', { name: 'Value' });
  await focused(value);
  await page.keyboard.type('20.002');
  await page.keyboard.press('Enter');
  await focused(act(page, 'Measure'));
  await page.keyboard.press('Enter');
  await page.keyboard.press('Escape');
  await dialog(page, 'Diameter').waitFor({ state: 'detached' });
  await assertAccessible(page);
  assert.deepEqual(troubles, []);
});

phoneTest('the buttons change to the other thumb and stay there', async ({ open }) => {
  const { page } = await open();
  await toStage(page, 'Cut');
  const left = async () => (await act(page, 'Done').boundingBox()).x;
  assert.ok(await left() > 180);
  await page.getByRole('button', { name: /^This screen/ }).click();
  await button(page, 'Left thumb').click();
  await eventually(async () => assert.ok(await left() < 180));
  await page.reload();
  await eventually(async () => assert.ok(await left() < 180));
});

phoneTest('a whole job without a server, from received to the verdict', async ({ server, open }) => {
  const { page, troubles } = await open();
  await waitUntilKept(page);
  await openExample(page, 0);
  await button(page, 'All right').click();
  await page.getByText('saved on this device', { exact: true }).waitFor();
  await server.stop();
  await page.reload();
  await toStage(page, 'Cut');
  await button(page, 'Start').click();
  const { cuts, diameter } = await cutToSize(page);
  const verdict = page.getByRole('region', { name: 'In tolerance?' });
  await verdict.waitFor();
  const said = (await verdict.getByRole('listitem').allTextContents()).map(plain);
  console.log(cuts, diameter, said);
  assert.ok(said.some((line) => /Diameter.*In\d/.test(line)), said.join('\n'));
  await assertAccessible(page);
  await workUpTo(page, 'Clean and oil');
  await act(page, 'Done').click();
  await page.getByText('All steps are done or left out.').waitFor();
  // And all of it is there again.
  await page.getByText('saved on this device', { exact: true }).waitFor();
  await page.reload();
  await page.getByText('All steps are done or left out.').waitFor();
  assert.deepEqual(troubles, []);
});
