// The lathe, the tool, dialling in and pinned passes on Plan, and what is kept of them for other jobs.

import assert from 'node:assert/strict';
import { after, before } from 'node:test';
import { assertAccessible } from './helper/accessibility.mjs';
import { sizes } from './helper/browser.mjs';
import {
  button, dialog, eventually, field, focused, newJob, openedField, pageTests, plain, toStage,
} from './helper/steps.mjs';

const phoneTest = pageTests({ before, after }, { size: sizes.smallPhone });
const keyboardTest = pageTests({ before, after }, { size: sizes.desk });

// The heading of a panel is the button that opens it; its name goes on with what is inside.
const opener = (page, name) => page.getByRole('heading', { name: new RegExp(`^${name}\\b`) }).getByRole('button');

async function openPanel(page, name) {
  if (await opener(page, name).getAttribute('aria-expanded') === 'false') {
    await opener(page, name).click();
  }
  const body = page.getByRole('group', { name: new RegExp(`^${name}\\b`) });
  await body.waitFor();
  return body;
}

const speedKind = (page) => page.getByLabel('Spindle speeds', { exact: true });

const speedList = (page) => field(page, 'List of the speeds');

const chosen = (list) => list.evaluate((select) => select.selectedOptions[0].textContent);

// What a field says back, or what is wrong with it.
const noteOf = (input) => input.evaluate(
  (element) => document.getElementById(element.getAttribute('aria-describedby')).textContent.replaceAll('\u{a0}', ' '),
);

const kept = (page) => page.evaluate(() => localStorage.getItem('skimwright.shop'));

const saved = (page) => page.getByText('saved on this device').waitFor();

async function listSpeeds(page, text) {
  await openPanel(page, 'Lathe');
  await speedKind(page).selectOption({ label: 'Those in a list' });
  await speedList(page).fill(text);
}

phoneTest('a list of speeds is typed as it comes and put in order', async ({ open }) => {
  const { page, troubles } = await open();
  await toStage(page, 'Plan');
  await openPanel(page, 'Lathe');
  assert.equal(await field(page, 'Slowest speed').count(), 1);
  await listSpeeds(page, '800/70; 115, 70\n1600 500');
  assert.equal(await field(page, 'Slowest speed').count(), 0, 'a list has no ends');
  await eventually(async () => assert.equal(await noteOf(speedList(page)), '= 5 speeds, 70 to 1600 rpm'));
  await speedList(page).blur();
  await eventually(async () => assert.equal(await speedList(page).inputValue(), '70 115 500 800 1600'));
  await assertAccessible(page);
  // Off and on again: nothing comes back by itself, undo brings it.
  await speedKind(page).selectOption({ label: 'Any, without steps' });
  await field(page, 'Slowest speed').waitFor();
  await speedKind(page).selectOption({ label: 'Those in a list' });
  assert.equal(await speedList(page).inputValue(), '');
  await button(page, 'Undo').click();
  await button(page, 'Undo').click();
  await eventually(async () => assert.equal(await speedList(page).inputValue(), '70 115 500 800 1600'));
  assert.deepEqual(troubles, []);
});

phoneTest('a bad number is said at the list, and nothing is lost', async ({ open }) => {
  const { page } = await open();
  await toStage(page, 'Plan');
  await listSpeeds(page, '70 115 200');
  await speedList(page).fill('70 1l5 200');
  await eventually(async () => assert.match(await noteOf(speedList(page)), /^“1l5”: .*the last list/));
  assert.equal(await speedList(page).getAttribute('aria-invalid'), 'true');
  await speedList(page).blur();
  assert.equal(await speedList(page).inputValue(), '70 1l5 200');
  await speedList(page).fill('70 115 99999');
  await eventually(async () => assert.match(await noteOf(speedList(page)), /^“99999”: This takes 1 rpm to 50000 rpm/));
  await assertAccessible(page);
  // What stayed in the plan is the last list that was one, as a reload shows.
  await speedList(page).blur();
  await saved(page);
  await page.reload();
  await openPanel(page, 'Lathe');
  assert.equal(await speedList(page).inputValue(), '70 115 200');
});

phoneTest('keys of our own part the numbers of a list', async ({ open }) => {
  const { page } = await open();
  await toStage(page, 'Plan');
  await listSpeeds(page, '70');
  const keys = page.getByRole('group', { name: 'Keys that a phone lacks' });
  await speedList(page).press('End');
  await keys.getByRole('button', { name: 'Semicolon' }).tap();
  await speedList(page).pressSequentially('115');
  await keys.getByRole('button', { name: 'Space' }).tap();
  await speedList(page).pressSequentially('200');
  assert.equal(await speedList(page).inputValue(), '70;115 200');
  await eventually(async () => assert.equal(await noteOf(speedList(page)), '= 3 speeds, 70 to 200 rpm'));
});

phoneTest('a lathe is kept, and taken into another job after a reload', async ({ open }) => {
  const { page, troubles } = await open();
  await toStage(page, 'Plan');
  await listSpeeds(page, '70 115 200');
  const body = await openPanel(page, 'Lathe');
  await body.getByText('Give the lathe a name above').waitFor();
  assert.equal(await button(page, 'Keep this lathe').count(), 0, 'it has no name yet');
  await field(page, 'Name of the lathe').fill('Old faithful');
  await button(page, 'Keep this lathe').click();
  await body.getByText('Kept in this browser as it is here.').waitFor();
  assert.match(await kept(page), /^B/);
  await assertAccessible(page);
  await saved(page);
  await page.reload();
  await newJob(page);
  await toStage(page, 'Plan');
  await openPanel(page, 'Lathe');
  assert.equal(await field(page, 'Name of the lathe').inputValue(), '');
  await button(page, 'Take into this job Old faithful').click();
  await eventually(async () => assert.equal(await speedList(page).inputValue(), '70 115 200'));
  assert.equal(await field(page, 'Name of the lathe').inputValue(), 'Old faithful');
  await button(page, 'Undo').click();
  await eventually(async () => assert.equal(await field(page, 'Name of the lathe').inputValue(), ''));
  assert.deepEqual(troubles, []);
});

phoneTest('the same name is replaced, and a lathe removed, only after asking', async ({ open }) => {
  const { page } = await open();
  await toStage(page, 'Plan');
  await openPanel(page, 'Lathe');
  await field(page, 'Name of the lathe').fill('Old');
  await button(page, 'Keep this lathe').click();
  const first = await eventually(async () => {
    const text = await kept(page);
    assert.notEqual(text, null);
    return text;
  });
  await page.getByLabel('Build of the lathe').selectOption({ label: 'Heavy: a heavy lathe, its gibs close' });
  await button(page, 'Keep this lathe').click();
  await dialog(page, 'Replace?').getByText('“Old” is kept already').waitFor();
  await assertAccessible(page);
  await button(dialog(page, 'Replace?'), 'Leave it as it is').click();
  assert.equal(await kept(page), first);
  await button(page, 'Keep this lathe').click();
  await button(dialog(page, 'Replace?'), 'Replace').click();
  await eventually(async () => assert.notEqual(await kept(page), first));
  await button(page, 'Remove Old').click();
  await button(dialog(page, 'Remove?'), 'Remove').click();
  await focused(opener(page, 'Lathe'));
  assert.equal(await button(page, 'Remove Old').count(), 0);
  // The job has its own copy still.
  assert.equal(await field(page, 'Name of the lathe').inputValue(), 'Old');
});

phoneTest('what is kept and cannot be read is told and left alone', async ({ open }) => {
  const { page, troubles } = await open();
  await page.evaluate(() => localStorage.setItem('skimwright.shop', 'AdamagedText'));
  await page.reload();
  await toStage(page, 'Plan');
  const body = await openPanel(page, 'Lathe');
  await body.getByText('could not be read').waitFor();
  assert.equal(await kept(page), 'AdamagedText');
  await field(page, 'Name of the lathe').fill('New');
  assert.equal(await kept(page), 'AdamagedText');
  await button(page, 'Keep this lathe').click();
  await eventually(async () => assert.notEqual(await kept(page), 'AdamagedText'));
  assert.equal(await body.getByText('could not be read').count(), 0);
  assert.deepEqual(troubles, []);
});

phoneTest('a finding opens the panel that its field stands in', async ({ open }) => {
  const { page } = await open();
  await toStage(page, 'Plan');
  await openPanel(page, 'Lathe');
  await field(page, 'Motor power').fill('0.001');
  await field(page, 'Motor power').blur();
  await opener(page, 'Lathe').click();
  assert.equal(await field(page, 'Motor power').count(), 0, 'the panel is closed');
  await page.getByRole('button', { name: /^Change ?: Motor power/ }).click();
  await focused(openedField(page, 'Motor power'));
  assert.equal(await opener(page, 'Lathe').getAttribute('aria-expanded'), 'true');
});

phoneTest('the part is dialled in at two places', async ({ open }) => {
  const { page, troubles } = await open();
  await toStage(page, 'Plan');
  await openPanel(page, 'Dialling in');
  for (const [plane, readings] of [['Near the chuck', ['0', '0,05', '0.08', '0.03']], ['Further out', ['0', '-0.1', '', '']]]) {
    const group = page.getByRole('group', { name: plane, exact: true });
    const quarters = ['At jaw 1', 'A quarter turn on', 'Half a turn on', 'Three quarters on'];
    for (const [index, name] of quarters.entries()) {
      await field(group, name).fill(readings[index]);
    }
    const boxes = await Promise.all(quarters.map((name) => field(group, name).boundingBox()));
    assert.ok(Math.abs(boxes[0].y - boxes[1].y) < 1 && boxes[1].x > boxes[0].x, 'two beside one another');
    assert.ok(boxes.every((box) => box.height >= 48 && box.width >= 80), 'wide and high enough to be hit');
  }
  const width = await page.evaluate(() => document.documentElement.scrollWidth);
  assert.ok(width <= 360, `nothing sticks out: ${width}`);
  await assertAccessible(page);
  assert.deepEqual(troubles, []);
});

phoneTest('a planned pass is pinned, changed and taken out again', async ({ open }) => {
  const { page } = await open();
  await toStage(page, 'Plan');
  await openPanel(page, 'Pinned passes');
  const planned = await openPanel(page, 'Pin a planned pass');
  const first = planned.getByRole('button').first();
  const said = plain(await first.textContent());
  const [, size] = said.match(/^Pass 1, to ⌀([\d.]+) mm$/);
  await first.click();
  await focused(opener(page, 'Pinned pass 1'));
  const pin = await openPanel(page, 'Pinned pass 1');
  assert.equal(Number(await field(pin, 'Diameter after it').inputValue()), Number(size));
  assert.notEqual(await field(pin, 'Spindle speed').inputValue(), '');
  await assertAccessible(page);
  await button(page, 'Pin a pass of my own').click();
  await focused(opener(page, 'Pinned pass 2'));
  await button(page, 'Remove Pinned pass 1').click();
  await focused(opener(page, 'Pinned passes'));
  assert.equal(await opener(page, 'Pinned pass 2').count(), 0);
  await button(page, 'Undo').click();
  await opener(page, 'Pinned pass 2').waitFor();
});

keyboardTest('a lathe is entered and kept by keyboard alone', async ({ open }) => {
  const { page } = await open();
  await toStage(page, 'Plan');
  await opener(page, 'Lathe').focus();
  await page.keyboard.press('Enter');
  await page.keyboard.press('Tab');
  await focused(field(page, 'Name of the lathe'));
  await page.keyboard.type('Old faithful');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Tab');
  await focused(speedKind(page));
  await page.keyboard.press('ArrowDown');
  await eventually(async () => assert.equal(await chosen(speedKind(page)), 'Those in a list'));
  await focused(speedKind(page));
  await page.keyboard.press('Tab');
  await focused(speedList(page));
  await page.keyboard.type('70 115');
  await page.keyboard.press('Enter');
  await page.keyboard.type('200');
  await page.keyboard.press('Tab');
  await eventually(async () => assert.equal(await speedList(page).inputValue(), '70 115 200'));
  await button(page, 'Keep this lathe').focus();
  await page.keyboard.press('Enter');
  await button(page, 'Take into this job Old faithful').waitFor();
  await assertAccessible(page);
});
