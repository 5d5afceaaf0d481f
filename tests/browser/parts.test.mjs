// The whole part, built by hand: sections, cuts, holes and pieces of the head, added, moved, copied, taken out.

import assert from 'node:assert/strict';
import { after, before } from 'node:test';
import { assertAccessible } from './helper/accessibility.mjs';
import { sizes } from './helper/browser.mjs';
import {
  button, eventually, field, focused, isFocused, openedField, pageTests, plain, toStage,
} from './helper/steps.mjs';

const partTest = pageTests({ before, after }, { size: sizes.smallPhone });
const keyboardTest = pageTests({ before, after }, { size: sizes.desk });

const adders = {
  sections: 'Add a section, groove or thread',
  cuts: 'Add a flat, keyway, cross hole or tang',
  holes: 'Add a hole',
};

const sectionKinds = [
  'Cylinder', 'Taper, two diameters', 'Standard taper', 'Taper by ratio', 'Taper by angle', 'Groove', 'Thread', 'Relief',
];
const cutKinds = ['Flat', 'Keyway', 'Woodruff keyway', 'Cross hole', 'Tang'];
const holeKinds = ['Plain hole', 'Stepped hole', 'Tapped hole', 'Reamed hole', 'Hole right through', 'Centre hole'];

// The heading of a row is the button that opens it; its name goes on with what the row is.
const row = (page, name) => page.getByRole('heading', { name: new RegExp(`^${name}\\b`) }).getByRole('button');

const rowBody = (page, name) => page.getByRole('group', { name: new RegExp(`^${name}\\b`) });

const isOpen = async (page, name) => await row(page, name).getAttribute('aria-expanded') === 'true';

async function openRow(page, name) {
  if (!await isOpen(page, name)) {
    await row(page, name).click();
  }
  await rowBody(page, name).waitFor();
  return rowBody(page, name);
}

const rowLine = async (page, name) => plain((await row(page, name).textContent()).replace(/^.*?: /, ''));

async function add(page, list, kind) {
  await button(page, adders[list]).click();
  await button(page, kind).click();
}

const rows = (page, start) => page.getByRole('heading', { name: new RegExp(`^${start}`) });

partTest('a part is built with one of each kind, and every one has its fields', async ({ open }) => {
  const { page, troubles } = await open();
  for (const [index, kind] of sectionKinds.entries()) {
    await add(page, 'sections', kind);
    const name = `Section ${index + 2}`;
    await focused(row(page, name));
    const body = rowBody(page, name);
    assert.equal(await body.getByLabel('Kind', { exact: true }).evaluate((list) => list.selectedOptions[0].textContent), kind);
    assert.ok(await body.getByRole('textbox').count() >= 1, `${kind} has figures`);
  }
  for (const [index, kind] of cutKinds.entries()) {
    await add(page, 'cuts', kind);
    await focused(row(page, `${kind} ${index + 1}`));
    assert.equal(await rowBody(page, `${kind} ${index + 1}`).getByLabel('Place').count(), kind === 'Tang' ? 0 : 1);
  }
  for (const [index, kind] of holeKinds.entries()) {
    await add(page, 'holes', kind);
    await focused(row(page, `Hole ${index + 1}`));
  }
  assert.equal(await button(page, adders.holes).count(), 0, 'six holes are the most');
  await button(page, 'Add a piece of the head').click();
  await focused(row(page, 'Head piece 2'));
  await assertAccessible(page);
  // What was never opened by hand is one line.
  assert.equal(await isOpen(page, 'Section 1'), false);
  assert.equal(await rowLine(page, 'Section 1'), 'cylinder ⌀20 mm, 80 mm long');
  assert.deepEqual(troubles, []);
});

partTest('a row says what it is in one line, in the units in use', async ({ open }) => {
  const { page } = await open();
  await add(page, 'cuts', 'Keyway');
  // For 20 mm: 20/4 wide, half of that deep, as long as thick, half of that from the end.
  assert.equal(await rowLine(page, 'Keyway 1'), '5 mm wide, 2.5 mm deep, 20 mm long, 10 mm from the free end');
  await rowBody(page, 'Keyway 1').getByLabel('Place').selectOption('From the shoulder');
  // 80 − 10 − 20.
  await eventually(async () => assert.match(await rowLine(page, 'Keyway 1'), /50 mm from the shoulder$/));
  assert.equal(await rowBody(page, 'Keyway 1').getByRole('textbox', { name: 'Distance' }).inputValue(), '50');
});

partTest('rows move, are copied, go and come back', async ({ open }) => {
  const { page, troubles } = await open();
  await add(page, 'sections', 'Groove');
  await add(page, 'sections', 'Thread');
  const lines = async () => Promise.all(['Section 1', 'Section 2', 'Section 3'].map((name) => rowLine(page, name)));
  const start = await lines();
  // In the middle of the 80 mm, 2 mm wide.
  assert.equal(start[1], 'groove ⌀18 mm, 2 mm wide, 39 mm from the shoulder');
  assert.match(start[2], /^thread M20/);

  await button(await openRow(page, 'Section 3'), 'Move inward Section 3').click();
  await eventually(async () => assert.deepEqual(await lines(), [start[0], start[2], start[1]]));
  // The focus goes with the row, so that the same key moves it on.
  await focused(button(page, 'Move inward Section 2'));
  await page.keyboard.press('Enter');
  await eventually(async () => assert.deepEqual(await lines(), [start[2], start[0], start[1]]));
  await button(page, 'Undo').click();
  await button(page, 'Undo').click();
  await eventually(async () => assert.deepEqual(await lines(), start));

  await button(await openRow(page, 'Section 2'), 'Duplicate Section 2').click();
  await focused(row(page, 'Section 3'));
  // As far behind the first as that is wide.
  assert.equal(await rowLine(page, 'Section 3'), 'groove ⌀18 mm, 2 mm wide, 43 mm from the shoulder');
  assert.equal(await rows(page, 'Section').count(), 4);
  await button(await openRow(page, 'Section 3'), 'Remove Section 3').click();
  await focused(row(page, 'Section 3'));
  assert.deepEqual(await lines(), start);
  await button(page, 'Undo').click();
  await eventually(async () => assert.equal(await rows(page, 'Section').count(), 4));

  await add(page, 'holes', 'Centre hole');
  await button(rowBody(page, 'Hole 1'), 'Same at the other end Hole 1').click();
  assert.match(await rowLine(page, 'Hole 2'), /from the head$/);
  await button(rowBody(page, 'Hole 1'), 'Remove Hole 1').click();
  await button(rowBody(page, 'Hole 1'), 'Remove Hole 1').click();
  await focused(button(page, adders.holes));
  await page.getByText('No holes: both ends are solid.').waitFor();
  await button(page, 'Undo').click();
  await eventually(async () => assert.match(await rowLine(page, 'Hole 1'), /from the head$/));
  assert.deepEqual(troubles, []);
});

partTest('what is open stays open on the way through the stages', async ({ open }) => {
  const { page } = await open();
  for (const kind of ['Cylinder', 'Cylinder', 'Groove']) {
    await add(page, 'sections', kind);
  }
  await openRow(page, 'Section 1');
  await row(page, 'Section 3').click();
  const state = () => Promise.all([1, 2, 3, 4].map((number) => isOpen(page, `Section ${number}`)));
  const before = await state();
  await toStage(page, 'Wanted');
  await toStage(page, 'Received');
  assert.deepEqual(await state(), before);
  assert.deepEqual(before, [true, true, false, true]);
});

// What is wrong, how it is made, what is said, and the field that it leads to.
const faults = [
  {
    name: 'a gap',
    make: async (page) => {
      await add(page, 'sections', 'Cylinder');
      const body = rowBody(page, 'Section 2');
      await body.getByLabel('Place').selectOption('From the shoulder');
      await body.getByRole('textbox', { name: 'Distance' }).fill('85');
    },
    said: /Nothing is said to stand for 5\.000\smm before Section 2\.Make its distance 80\.000\smm/,
    leads: 'Section 2: distance',
    mends: '80',
  },
  {
    name: 'an overlap',
    make: async (page) => {
      await add(page, 'sections', 'Cylinder');
      const body = rowBody(page, 'Section 2');
      await body.getByLabel('Place').selectOption('From the shoulder');
      await body.getByRole('textbox', { name: 'Distance' }).fill('70');
    },
    said: /Section 2 begins 10\.000\smm before the one before it ends\.Make its distance 80\.000\smm/,
    leads: 'Section 2: distance',
    mends: '80',
  },
  {
    name: 'a whole length that disagrees',
    make: async (page) => {
      await button(page, 'More about the part').click();
      await field(page, 'Whole shank length').fill('82');
    },
    said: /The sections end 80\.000\smm from the shoulder, but the whole shank is 82\.000\smm long\./,
    leads: 'Whole shank length',
    mends: '80',
  },
  {
    name: 'a hole wider than the part',
    make: async (page) => {
      await add(page, 'holes', 'Plain hole');
      await rowBody(page, 'Hole 1').getByRole('textbox', { name: 'Diameter' }).fill('25');
    },
    said: /Hole 1 is wider than the part: that is ⌀20\.000\smm there/,
    leads: 'Hole 1: diameter',
    mends: '5',
  },
  {
    name: 'a taper steeper than 90°',
    make: async (page) => {
      await add(page, 'sections', 'Taper by ratio');
      await rowBody(page, 'Section 2').getByRole('textbox', { name: 'Taper ratio' }).fill('0.4');
    },
    said: /Section 2: a taper steeper than 90°.*1 in 1\/2 is the steepest/,
    leads: 'Section 2: taper ratio',
    mends: '20',
  },
  {
    name: 'a keyway through the axis',
    make: async (page) => {
      await add(page, 'cuts', 'Keyway');
      await rowBody(page, 'Keyway 1').getByRole('textbox', { name: 'Depth' }).fill('12');
    },
    said: /Keyway 1 reaches the axis/,
    leads: 'Keyway 1: depth',
    mends: '2',
  },
  {
    name: 'a flat that touches nothing',
    make: async (page) => {
      await add(page, 'cuts', 'Flat');
      await rowBody(page, 'Flat 1').getByRole('textbox', { name: 'Size across' }).fill('21');
    },
    said: /Flat 1 does not touch the metal/,
    leads: 'Flat 1: size across',
    mends: '18',
  },
];

for (const { name, make, said, leads, mends } of faults) {
  partTest(`${name} is said with its mend and leads to its field`, async ({ open }) => {
    const { page, troubles } = await open();
    await make(page);
    await toStage(page, 'Plan');
    const finding = page.getByRole('region', { name: 'Findings' }).getByRole('listitem').filter({ hasText: said });
    await eventually(async () => assert.match(plain(await page.getByRole('region', { name: 'Findings' }).textContent()), said));
    await finding.getByRole('button', { name: leads }).click();
    const opened = openedField(page, leads);
    await focused(opened);
    await assertAccessible(page);
    await opened.fill(mends);
    await opened.press('Enter');
    await toStage(page, 'Plan');
    await eventually(async () => assert.equal(await finding.count(), 0));
    assert.doesNotMatch(plain(await page.getByRole('region', { name: 'Findings' }).textContent()), said);
    assert.deepEqual(troubles, []);
  });
}

partTest('what is seldom known stays behind its heading until it is filled', async ({ open }) => {
  const { page } = await open();
  const more = button(page, 'More about the part');
  assert.equal(await field(page, 'Hardness outside').count(), 0);
  await more.click();
  await field(page, 'Hardness outside').fill('58');
  await field(page, 'Runout near the free end').fill('0.05');
  await assertAccessible(page);
  await toStage(page, 'Wanted');
  await button(page, 'What it has to carry').click();
  await field(page, 'Torque').fill('40');
  await field(page, 'Power').fill('2,2 kW');
  await assertAccessible(page);
  await page.getByText('saved on this device').waitFor();
  await page.reload();
  await toStage(page, 'Wanted');
  assert.equal(await field(page, 'Torque').inputValue(), '40');
  await toStage(page, 'Received');
  assert.equal(await field(page, 'Hardness outside').inputValue(), '58');
  // Emptied, it stays open under the finger.
  await field(page, 'Hardness outside').fill('');
  await field(page, 'Runout near the free end').fill('');
  assert.equal(await more.getAttribute('aria-expanded'), 'true');
});

keyboardTest('a part is built, changed and mended with the keyboard', async ({ open }) => {
  const { page, troubles } = await open();
  const press = async (locator, key = 'Enter') => {
    for (let presses = 0; presses < 150 && !await isFocused(locator); presses += 1) {
      await page.keyboard.press('Tab');
    }
    await focused(locator);
    await page.keyboard.press(key);
  };
  await press(button(page, adders.cuts));
  await press(button(page, 'Cross hole'));
  await focused(row(page, 'Cross hole 1'));
  const body = rowBody(page, 'Cross hole 1');
  await press(body.getByRole('textbox', { name: 'Diameter' }), 'ControlOrMeta+a');
  await page.keyboard.type('6');
  await press(row(page, 'Cross hole 1').or(button(page, 'Duplicate Cross hole 1')).last(), 'Space');
  await focused(row(page, 'Cross hole 2'));
  assert.match(await rowLine(page, 'Cross hole 2'), /^⌀6 mm/);
  await press(button(page, 'Remove Cross hole 2'));
  await focused(row(page, 'Cross hole 1'));
  await page.keyboard.press('Space');
  assert.equal(await isOpen(page, 'Cross hole 1'), false);
  assert.deepEqual(troubles, []);
});
