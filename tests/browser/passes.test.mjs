// The passes: what to dial in, the detail of one, and pinning it; what would help; by touch and by keyboard alone.

import assert from 'node:assert/strict';
import { after, before } from 'node:test';
import { assertAccessible } from './helper/accessibility.mjs';
import { sizes } from './helper/browser.mjs';
import { button, closeDialog, dialog, eventually, field, focused, pageTests, plain, toStage } from './helper/steps.mjs';

const phoneTest = pageTests({ before, after }, { size: sizes.smallPhone });
const deskTest = pageTests({ before, after }, { size: sizes.desk });

const table = (page) => page.getByRole('table', { name: 'Passes' });

// The rows without the heading, each as the texts of its cells.
async function rows(page) {
  const all = await table(page).getByRole('row').evaluateAll((found) => found.map(
    (row) => [...row.children].map((cell) => cell.textContent.trim()),
  ));
  return all.slice(1).map((row) => row.map(plain));
}

const passButton = (page, number) => table(page).getByRole('button', { name: new RegExp(`^${number} `) });

const detail = (page, number) => page.getByRole('region', { name: new RegExp(`^Pass ${number},`) });

// The loads of the open detail, name by share in per cent.
async function loads(page, number) {
  const items = await detail(page, number).getByRole('listitem').allTextContents();
  const read = items.map(plain).map((text) => text.match(/^(\D+) (\d+(?:\.\d+)?) %$/)).filter(Boolean);
  return Object.fromEntries(read.map(([, name, share]) => [name, Number(share)]));
}

const noSidewaysScroll = async (page) => assert.equal(
  await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth),
  true,
  'nothing must stand out sideways',
);

phoneTest('a pass is picked, read, pinned and unpinned', async ({ open }) => {
  const { page, troubles } = await open();
  await toStage(page, 'Plan');
  const planned = await rows(page);
  assert.ok(planned.length > 3, 'two last cuts and some roughing');
  // The dial of a new job reads diameters: what is dialled is twice the infeed beside it.
  for (const [name, dialled, infeed] of planned) {
    if (!name.endsWith('polish')) {
      assert.ok(Math.abs(Number(dialled) - 2 * Number(infeed)) <= 0.0011, `${name}: ${dialled} and ${infeed}`);
    }
  }

  await passButton(page, 2).click();
  await focused(page.getByRole('heading', { name: /^Pass 2,/ }));
  assert.equal(await passButton(page, 2).getAttribute('aria-expanded'), 'true');
  assert.match(await detail(page, 2).innerText(), /Held back by/);
  const used = await loads(page, 2);
  assert.ok(Object.keys(used).length > 4, JSON.stringify(used));
  for (const [name, share] of Object.entries(used)) {
    assert.ok(share >= 0 && share <= 100, `${name}: ${share} %`);
  }
  await noSidewaysScroll(page);
  await assertAccessible(page);

  // The force opens its working.
  await detail(page, 2).getByRole('button', { name: /^Force down onto the tool/ }).click();
  await dialog(page, 'Force down onto the tool').getByText('What went in').waitFor();
  await closeDialog(page, 'Force down onto the tool');

  await button(detail(page, 2), 'Pin this pass').click();
  await button(detail(page, 2), 'Unpin').waitFor();
  await eventually(async () => assert.match((await rows(page))[1].at(-1), /pinned/));
  // A pin stays while the rest is planned anew.
  const [, , , diameter, , speed] = (await rows(page))[1];
  await field(page, 'Each last cut, off diameter').fill('0.1');
  await eventually(async () => {
    const now = await rows(page);
    assert.notDeepEqual(now, planned);
    const pinned = now.find((row) => /pinned/.test(row.at(-1)));
    assert.equal(pinned[5], speed);
    // It stands on the nearest place of the depths that are planned with.
    assert.ok(Math.abs(Number(pinned[3]) - Number(diameter)) < 0.01, `${pinned[3]} for ${diameter}`);
  });
  await field(page, 'Each last cut, off diameter').fill('0.25');
  await button(page, 'Unpin').click();
  await eventually(async () => assert.deepEqual(await rows(page), planned));
  await button(page.getByRole('region', { name: /^Pass \d+,/ }), 'Close').click();
  await page.getByRole('region', { name: /^Pass \d+,/ }).waitFor({ state: 'detached' });
  assert.deepEqual(troubles, []);
});

deskTest('a pass is picked and pinned by keyboard alone', async ({ open }) => {
  const { page, troubles } = await open();
  await toStage(page, 'Plan');
  const planned = await rows(page);
  await passButton(page, 1).focus();
  await page.keyboard.press('Enter');
  await focused(page.getByRole('heading', { name: /^Pass 1,/ }));
  // Past the figures with their workings to the buttons.
  const pin = button(detail(page, 1), 'Pin this pass');
  for (let step = 0; step < 8 && !(await pin.evaluate((it) => it === document.activeElement)); step += 1) {
    await page.keyboard.press('Tab');
  }
  await focused(pin);
  await page.keyboard.press('Enter');
  const unpin = button(detail(page, 1), 'Unpin');
  await focused(unpin);
  await eventually(async () => assert.match((await rows(page))[0].at(-1), /pinned/));
  await page.keyboard.press('Enter');
  await focused(pin);
  await eventually(async () => assert.deepEqual(await rows(page), planned));
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await focused(passButton(page, 1));
  assert.equal(await passButton(page, 1).getAttribute('aria-expanded'), 'false');
  assert.deepEqual(troubles, []);
});

phoneTest('what would help is worked out when it is opened', async ({ open }) => {
  const { page, troubles } = await open();
  await toStage(page, 'Plan');
  const opener = page.getByRole('button', { name: 'What would help' });
  assert.equal(await opener.getAttribute('aria-expanded'), 'false');
  await opener.click();
  const body = page.getByRole('group', { name: 'What would help' });
  await body.waitFor();
  const savings = (await body.getByRole('definition').allTextContents()).map(plain);
  assert.ok(savings.length > 0, 'something holds the passes of a new job back');
  for (const text of savings) {
    assert.match(text, /^saves \d/);
  }
  await noSidewaysScroll(page);
  await assertAccessible(page);
  assert.deepEqual(troubles, []);
});

phoneTest('the machine’s dial says what to dial in', async ({ open }) => {
  const { page, troubles } = await open();
  await toStage(page, 'Plan');
  const [, dialled, infeed] = (await rows(page))[0];
  await page.getByRole('button', { name: /^Lathe/ }).click();
  await page.getByLabel('The cross-slide\'s dial reads', { exact: true }).selectOption({ label: 'Radius: what the slide moves' });
  await eventually(async () => {
    const [, now, off] = (await rows(page))[0];
    assert.deepEqual([now, off], [infeed, dialled]);
  });
  assert.deepEqual(troubles, []);
});

phoneTest('holding, shoulder and end are said with their cautions', async ({ open }) => {
  const { page, troubles } = await open();
  await toStage(page, 'Plan');
  for (const title of ['Holding under the cut', 'Shoulder, end and surface']) {
    await page.getByRole('heading', { name: title }).waitFor();
  }
  const text = plain(await page.locator('main, #app').first().innerText());
  assert.match(text, /Take the chuck key out/);
  assert.match(text, /The last cut leaves the shank/);
  assert.match(text, /makes the fillet|leaves more in the corner/);
  await page.getByRole('button', { name: /^Compound slide, from/ }).click();
  await dialog(page, 'Compound slide, from the lathe\'s axis').getByText('arcsin(i/g)').waitFor();
  assert.deepEqual(troubles, []);
});
