// The charts of the plan, the time with its steps, the cost, and the layers of the drawing.

import assert from 'node:assert/strict';
import { after, before } from 'node:test';
import { assertAccessible } from './helper/accessibility.mjs';
import { sizes } from './helper/browser.mjs';
import {
  button, closeDialog, dialog, eventually, field, figures, focused, openExample, pageTests, plain, toStage,
} from './helper/steps.mjs';

const phoneTest = pageTests({ before, after }, { size: sizes.smallPhone });

const opener = (page, name) => page.getByRole('button', { name: new RegExp(`^${name}`) });

const body = (page, name) => page.getByRole('group', { name: new RegExp(`^${name}`) });

async function open(page, name) {
  await opener(page, name).click();
  await body(page, name).waitFor();
}

const chart = (page, name) => page.getByRole('img', { name });

// The rows of the table below a chart, unfolded by keyboard.
async function rows(page, name) {
  const inside = body(page, name);
  const fold = inside.getByText('The chart as numbers');
  await fold.focus();
  await page.keyboard.press('Enter');
  await inside.getByRole('table').waitFor();
  const found = await inside.getByRole('row').evaluateAll(
    (all) => all.map((row) => [...row.children].map((cell) => cell.textContent)),
  );
  return found.map((row) => row.map(plain));
}

const noSidewaysScroll = async (page) => assert.equal(
  await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth),
  true,
  'nothing must stand out sideways',
);

async function toPlan(page) {
  await openExample(page, 0);
  await toStage(page, 'Plan');
}

phoneTest('how far it gives is drawn, said and told in numbers', async ({ open: visit }) => {
  const { page, troubles } = await visit();
  await toPlan(page);
  await open(page, 'How far it gives');
  const drawn = chart(page, /^How far it gives The last cut leaves the shank .* More than set: at most /);
  await drawn.waitFor();
  const [head, ...points] = await rows(page, 'How far it gives');
  assert.deepEqual(head, ['From the shoulder', 'Larger by']);
  assert.ok(points.length >= 5, 'places all along');
  const errors = points.map(([, error]) => Number.parseFloat(error));
  const most = await drawn.getByText(/µm$/).allTextContents();
  const [greatest, least] = most.map((text) => Number.parseFloat(text));
  assert.ok(errors.every((error) => least - 1 <= error && error <= greatest + 1), `${errors} in ${least} to ${greatest}`);
  await noSidewaysScroll(page);
  await assertAccessible(page);
  assert.deepEqual(troubles, []);
});

phoneTest('numbers of passes are compared by time, and by cost once there is a rate', async ({ open: visit }) => {
  const { page, troubles } = await visit();
  await toPlan(page);
  await open(page, 'How many passes');
  const passes = await page.getByRole('table', { name: 'Passes' }).getByRole('rowheader').allTextContents();
  const cuts = passes.filter((name) => /rough|last/.test(name)).length;
  await chart(page, new RegExp(`^How many passes planned ${cuts} pass`)).waitFor();
  const [head, ...counts] = await rows(page, 'How many passes');
  assert.deepEqual(head, ['Passes', 'Time']);
  assert.deepEqual(counts.filter(([name]) => name.includes('planned')).map(([name]) => name), [`${cuts} planned`]);
  assert.equal(await button(body(page, 'How many passes'), 'Cost').count(), 0, 'no cost without a rate');

  await button(page, 'Enter what an hour costs').click();
  const rate = page.getByRole('textbox', { name: /hour/ }).first();
  await focused(rate);
  await page.keyboard.type('60');
  await field(page, 'Currency').fill('EUR');
  const inside = body(page, 'How many passes');
  await button(inside, 'Cost').click();
  await inside.getByText('Cost, EUR').waitFor();
  const cells = await inside.getByRole('row').nth(1).getByRole('cell').allTextContents();
  const [, minutes, cost] = cells.map(plain);
  // At 60 an hour a minute costs 1, and this tool's edges have no price.
  assert.match(minutes, / min$/);
  assert.match(cost, / EUR$/);
  assert.ok(Math.abs(Number.parseFloat(cost) - Number.parseFloat(minutes)) <= 0.51, `${cost} for ${minutes}`);
  await noSidewaysScroll(page);
  await assertAccessible(page);
  assert.deepEqual(troubles, []);
});

phoneTest('time and cost show their parts and their working', async ({ open: visit }) => {
  const { page, troubles } = await visit();
  await toPlan(page);
  const total = button(page, /^Whole time/).last();
  const card = figures(page).getByRole('button', { name: /^Whole time/ });
  const minutes = (text) => plain(text).match(/\d+ min/)[0];
  assert.equal(minutes(await total.textContent()), minutes(await card.textContent()), 'one time on the page');
  await open(page, 'Where the time goes');
  const steps = await body(page, 'Where the time goes').getByRole('listitem').allTextContents();
  const shares = steps.map((text) => Number.parseFloat(plain(text).match(/([\d.]+) %/)[1]));
  const sum = shares.reduce((all, share) => all + share, 0);
  assert.ok(Math.abs(sum - 100) < 3, `the shares add up: ${sum}`);
  assert.ok(steps.some((text) => /^Measure.*\d+ × /.test(plain(text))), 'how often and how long each');

  await button(page, 'Enter what an hour costs').click();
  await page.keyboard.type('60');
  await field(page, 'Currency').fill('EUR');
  const cost = page.getByRole('button', { name: /^Whole cost/ });
  await cost.click();
  await dialog(page, 'Whole cost').getByText(/EUR$/).first().waitFor();
  await closeDialog(page, 'Whole cost');
  // The least charge lifts it and is said.
  await page.getByRole('textbox', { name: 'Least charged for a job' }).fill('500');
  await page.getByText('The least charge applies').waitFor();
  await eventually(async () => assert.match(plain(await cost.textContent()), /500\.00 EUR/));
  await noSidewaysScroll(page);
  await assertAccessible(page);
  assert.deepEqual(troubles, []);
});

phoneTest('the picked pass stands out on the drawing', async ({ open: visit }) => {
  const { page, troubles } = await visit();
  await toPlan(page);
  const key = page.getByText('after the picked pass');
  assert.equal(await key.count(), 0);
  await page.getByRole('table', { name: 'Passes' }).getByRole('button').nth(1).click();
  await key.waitFor();
  await toStage(page, 'Wanted');
  assert.equal(await key.count(), 0, 'passes are drawn on Plan alone');
  assert.deepEqual(troubles, []);
});
