// Measuring instruments on Plan, what is kept of them for other jobs, and what jobs taught of the lathe.

import assert from 'node:assert/strict';
import { after, before } from 'node:test';
import { assertAccessible } from './helper/accessibility.mjs';
import { sizes } from './helper/browser.mjs';
import {
  button, changeUnits, dialog, eventually, field, pageTests, plain, toStage,
} from './helper/steps.mjs';

const phoneTest = pageTests({ before, after }, { size: sizes.smallPhone });

const opener = (page, name) => page.getByRole('heading', { name: new RegExp(`^${name}\\b`) }).getByRole('button');

async function openPanel(page, name) {
  if (await opener(page, name).getAttribute('aria-expanded') === 'false') {
    await opener(page, name).click();
  }
  const body = page.getByRole('group', { name: new RegExp(`^${name}\\b`) });
  await body.first().waitFor();
  return body.first();
}

const noteOf = (input) => input.evaluate(
  (element) => document.getElementById(element.getAttribute('aria-describedby')).textContent.replaceAll('\u{a0}', ' '),
);

const saved = (page) => page.getByText('saved on this device').waitFor();

const name = (page) => field(page, 'Name of the instrument');
const division = (page) => field(page, 'One division, or step of the display');

phoneTest('an instrument is added, kept, and taken into another job', async ({ open }) => {
  const { page, troubles } = await open();
  await toStage(page, 'Plan');
  await openPanel(page, 'Measuring instruments');
  await page.getByText('None yet.').waitFor();
  await button(page, 'Add an indicator').click();
  await name(page).fill('Lever');
  await division(page).fill('0.002');
  await button(page, 'Keep this instrument').click();
  await page.getByText('Kept in this browser as it is here.').waitFor();
  await assertAccessible(page);
  await saved(page);
  // In inches, the same size.
  await changeUnits(page, 'inch, decimal');
  await eventually(async () => assert.equal(plain(await division(page).inputValue()), '0.00008'));
  await changeUnits(page, 'mm');
  await page.getByRole('button', { name: 'Remove Instrument 1' }).click();
  await page.getByText('None yet.').waitFor();
  await page.getByRole('button', { name: 'Take into this job Lever' }).click();
  await eventually(async () => assert.equal(await name(page).inputValue(), 'Lever'));
  assert.equal(plain(await division(page).inputValue()), '0.002');
  assert.deepEqual(troubles, []);
});

phoneTest('a bad figure of an instrument is said at its field', async ({ open }) => {
  const { page } = await open();
  await toStage(page, 'Plan');
  await openPanel(page, 'Measuring instruments');
  await button(page, 'Add a micrometer').click();
  await division(page).fill('5');
  await eventually(async () => assert.match(await noteOf(division(page)), /This takes/));
  await field(page, 'Temperature of the room').fill('hot');
  await eventually(async () => assert.equal(
    await field(page, 'Temperature of the room').getAttribute('aria-invalid'),
    'true',
  ));
  assert.equal(await division(page).inputValue(), '5', 'nothing is lost');
});

// The plain job on a lathe called "Old faithful" that has taught something, and the same with every step done.
const TAUGHT = '#dAAEAKAAeAAABAAAUAFAAAAAAEAABADIBCAABATUODgAOAAICDgABAA4CGQICDg4OANAPAAIADQAJABgAeIgIDE9sZCBmYWl0aGZ1bAAADg4ADg4ODg4ODg4ADg4ODg4DAcUHAAKDAwMEAA4BAJYBAAgAme98';
const WORKED = '#dAAEAKAAeAAABAAAUAFAAAAAAEAABADIBCAABATUODgAOAAICDgABAA4CGQICDg4OANAPAAIADQAJABgAeIggDE9sZCBmYWl0aGZ1bAAADg4ADg4ODg4ODg4ADg4ODg4YBIDuiasNBfABFKABFfABJKABJfABNKABNfABRKABRfABVKABVfABZKABZfABdKABdfABhKABhfABlKABlfABpKABpfABtKABtfABbPpbMQ';

phoneTest('what a lathe has taught is shown, and forgotten after asking', async ({ open }) => {
  const { page, troubles } = await open(TAUGHT);
  await toStage(page, 'Plan');
  const taught = await openPanel(page, 'What this lathe has taught');
  assert.match(plain(await taught.innerText()), /96\.5 % ± 2 % comes off.*From 14 cuts/s);
  assert.match(plain(await taught.innerText()), /Hold the part 150 % of the usual time, from 8 jobs/);
  await assertAccessible(page);
  await page.getByRole('button', { name: 'Forget Hold the part' }).click();
  await button(dialog(page, 'Forget?'), 'Leave it as it is').click();
  await page.getByRole('button', { name: 'Forget Hold the part' }).click();
  await button(dialog(page, 'Forget?'), 'Forget').click();
  await page.getByRole('button', { name: 'Forget Hold the part' }).waitFor({ state: 'detached' });
  await page.getByRole('button', { name: 'Forget What an infeed takes off' }).click();
  await button(dialog(page, 'Forget?'), 'Forget').click();
  await page.getByText('Nothing yet.').waitFor();
  assert.deepEqual(troubles, []);
});

phoneTest('what a finished job taught is kept once', async ({ open }) => {
  const { page } = await open(WORKED);
  await toStage(page, 'Plan');
  const taught = await openPanel(page, 'What this lathe has taught');
  await button(page, 'Keep what this job taught').click();
  await eventually(async () => assert.match(plain(await taught.innerText()), /of the usual time, from 1 job/));
  assert.equal(await button(page, 'Keep what this job taught').count(), 0);
  // Nor in a later visit.
  await saved(page);
  await page.reload();
  await toStage(page, 'Plan');
  const again = await openPanel(page, 'What this lathe has taught');
  assert.match(plain(await again.innerText()), /of the usual time, from 1 job/);
  assert.equal(await button(page, 'Keep what this job taught').count(), 0);
});
