// The drawing under the hand: larger and smaller, calm on a phone, its dimensions as the form, its files.

import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { after, before } from 'node:test';
import { assertAccessible } from './helper/accessibility.mjs';
import { sizes } from './helper/browser.mjs';
import {
  button, dimension, drawing, eventually, field, figures, focused, openExample, openedField, pageTests, plain,
  tapDimension, toStage,
} from './helper/steps.mjs';

const drawingTest = pageTests({ before, after }, { size: sizes.smallPhone, acceptDownloads: true });

// Links of parts, as the page makes them. A shank of 20 mm diameter, 3000 mm long:
const LONG = '#bB0xvbmdlc3QBACgAHgAAAQAAFAC4FwAAAAARAAEAxBMBCAABATUODgAOAAICDgABAA4CGQICDg4OANAPAAIADQAJABgAeKgonlE';
// A groove, a keyway and a cross hole, by the name <b>"Q" & 'x':
const CUT = '#bDDxiPiJRIiAmICd4JwEAKAAeAAADAAAgADwABQAaAAQAAAAgACgAAAEADg4ODg4CAQAGASMAFAEAAAoDAAUBAAAtABwAAQAyAQgAAQE1Dg'
  + '4ADgACAg4AAQAOAhkCAg4ODgDQDwACAA0ACQAYAHgMLpvN';
// Twelve sections, eight features and six holes:
const MANY = '#bBE1hbnkBACgAHgAADAAAKAAKAAAAJwALAAAAJgAMAAAAJQANAAAAJAAOAAAAIwAPAAAAIgAQAAAAIQARAAAAIAASAAAAHwATAAAAHgA'
  + 'UAAAAHQAVAAYAAAYAHgEAAAAIABQBAAAACgAKAQAAAAYAGQEBAQ4AAAgAFAEBAQ4AAAwACgEBAQ4BAA4ODg4OCAEABgEjABQBAAAMAwAFAQAALQIABQ'
  + 'AEABABAAA8AAAcAQAMAQAAUAMABAEAAGQDAAQBAAB4AQAFAAMAFAEAAIIBAwAEAQAAqgEAGQABAIwBAQgAAQE1Dg4ADgACAg4AAQAOAhkCAg4ODgDQDw'
  + 'ACAA0ACQAYAHilgRvs';

const drawnWidth = async (page) => (await drawing(page).boundingBox()).width;

const isStill = (page) => page.evaluate(
  () => document.scrollingElement.scrollWidth <= innerWidth && scrollX === 0 && visualViewport.scale === 1,
);

// Waits for a width of the drawing over its first one; the page itself stands still.
const isDrawn = (page, whole, times) => eventually(async () => {
  const width = await drawnWidth(page);
  assert.ok(Math.abs(width / whole - times) < 0.05 * times, `${width} is not ${times} times ${whole}`);
  assert.ok(await isStill(page), 'the page must not move sideways');
});

drawingTest('it is drawn larger, smaller and whole by buttons and by keys', async ({ open }) => {
  const { page } = await open();
  await openExample(page, 0);
  const whole = await drawnWidth(page);
  await button(page, 'Larger').click();
  await isDrawn(page, whole, 1.5);
  await button(page, 'Larger').click();
  await isDrawn(page, whole, 2.25);
  await button(page, 'Smaller').click();
  await isDrawn(page, whole, 1.5);
  await button(page, 'Whole').click();
  await isDrawn(page, whole, 1);
  await button(page, 'Smaller').click();
  await isDrawn(page, whole, 1);
  await dimension(page, /^Head diameter/).focus();
  await page.keyboard.press('+');
  await isDrawn(page, whole, 1.5);
  await page.keyboard.press('-');
  await isDrawn(page, whole, 1);
  await page.keyboard.press('=');
  await page.keyboard.press('0');
  await isDrawn(page, whole, 1);
});

drawingTest('the wheel makes it larger with the control key only', async ({ open }) => {
  const { page } = await open('', { size: sizes.desk });
  await openExample(page, 0);
  const whole = await drawnWidth(page);
  const { x, y } = await drawing(page).boundingBox();
  await page.mouse.move(x + 300, y + 200);
  await page.keyboard.down('Control');
  await page.mouse.wheel(0, -250);
  await isDrawn(page, whole, Math.E);
  await page.mouse.wheel(0, 1000);
  await isDrawn(page, whole, 1);
  await page.keyboard.up('Control');
  await page.mouse.wheel(0, -250);
  await isDrawn(page, whole, 1);
});

drawingTest('two fingers make it larger, and what lies between them stays there', async ({ open }) => {
  const { page } = await open();
  await openExample(page, 0);
  const whole = await drawnWidth(page);
  const { x, y, width, height } = await drawing(page).boundingBox();
  const [middle, line] = [x + width / 2, y + height / 2];
  const session = await page.context().newCDPSession(page);
  const touch = (type, apart) => session.send('Input.dispatchTouchEvent', {
    type,
    touchPoints: apart === null ? [] : [-1, 1].map((side, id) => ({ x: middle + side * apart, y: line, id })),
  });
  await touch('touchStart', 40);
  for (const apart of [50, 60, 70, 80]) {
    await touch('touchMove', apart);
  }
  await touch('touchEnd', null);
  await isDrawn(page, whole, 2);
  await eventually(async () => {
    const now = await drawing(page).boundingBox();
    assert.ok(Math.abs(now.x + now.width / 2 - middle) < 4, `the middle went to ${now.x + now.width / 2}`);
  });
  await touch('touchStart', 80);
  for (const apart of [70, 50, 30]) {
    await touch('touchMove', apart);
  }
  await touch('touchEnd', null);
  await isDrawn(page, whole, 1);
});

drawingTest('a finger on the dimension of what is cut in opens its field', async ({ open }) => {
  const { page } = await open(CUT);
  await toStage(page, 'Received');
  const cases = [
    [/^Section 2: diameter/, 'Section 2: diameter', '26'],
    [/^Keyway 1: depth/, 'Keyway 1: depth', '3.5'],
    [/^Cross hole 2: diameter/, 'Cross hole 2: diameter', '5'],
  ];
  for (const [name, opened, value] of cases) {
    await tapDimension(page, name);
    const input = openedField(page, opened);
    await focused(input);
    assert.equal(plain(await input.inputValue()), value, opened);
    await button(page, 'Done').click();
    await focused(dimension(page, name));
  }
});

drawingTest('with many dimensions it stays calm: the rest is counted and shown on demand', async ({ open }) => {
  const { page } = await open(MANY);
  await toStage(page, 'Received');
  const shown = () => drawing(page).getByRole('button').count();
  const few = await shown();
  const count = page.getByText(/dimensions are not shown here/);
  const hidden = parseInt(await count.textContent(), 10);
  const { height } = await drawing(page).boundingBox();
  // Three fifths of the window, and one row.
  assert.ok(height <= 0.6 * 740 + 48, `${height} px high`);
  await button(page, 'Show all').click();
  await eventually(async () => assert.equal(await shown(), few + hidden));
  assert.equal(await count.count(), 0);
  assert.ok(await isStill(page));
  await button(page, 'Show fewer').click();
  await eventually(async () => assert.equal(await shown(), few));
});

drawingTest('a long part is broken and its dimensions say the true lengths', async ({ open }) => {
  const { page } = await open(LONG);
  await toStage(page, 'Received');
  await page.getByText('Long plain stretches are left out between break lines').waitFor();
  const texts = (await drawing(page).locator('text').allTextContents()).map(plain);
  assert.ok(texts.includes('3000 mm') && texts.includes('(3030.00 mm)'), texts.join(', '));
});

drawingTest('marked places are numbered on the drawing and said in words below it', async ({ open }) => {
  const { page } = await open();
  await openExample(page, 2);
  await toStage(page, 'Received');
  const words = page.getByRole('listitem').filter({ hasText: /mm from the shoulder/ });
  assert.equal(await words.count(), 0);
  await toStage(page, 'Plan');
  const said = (await words.allTextContents()).map(plain);
  assert.deepEqual(said.map((text) => text.replace(/, [\d.]+ mm from the shoulder$/, '')), [
    'the thinnest wall round a hole',
    'where the stock has least to spare',
    'where the finished shank is weakest in bending',
  ]);
  const texts = await drawing(page).locator('text').allTextContents();
  assert.deepEqual(texts.filter((text) => /^\d$/.test(text)), ['1', '2', '3']);
});

// The file that a button saves.
async function savedBy(page, name) {
  const [download] = await Promise.all([page.waitForEvent('download'), button(page, name).click()]);
  return { name: download.suggestedFilename(), bytes: await readFile(await download.path()) };
}

drawingTest('it is saved as a whole SVG file, whatever the job is called', async ({ open }) => {
  const { page, troubles } = await open(CUT);
  await toStage(page, 'Received');
  const { name, bytes } = await savedBy(page, 'Save as SVG');
  assert.equal(name, 'b-q-x-drawing.svg');
  const text = bytes.toString('utf8');
  assert.ok(text.includes('<title>&lt;b&gt;&quot;Q&quot; &amp; &#39;x&#39;</title>'), text.slice(0, 400));
  // The page itself forbids to read text as a document; an empty one does not.
  const empty = await page.context().newPage();
  const read = await empty.evaluate((source) => {
    const root = new DOMParser().parseFromString(source, 'image/svg+xml').documentElement;
    return {
      tag: root.localName,
      wrong: root.querySelectorAll('parsererror').length,
      title: root.querySelector('title')?.textContent,
      bold: root.getElementsByTagName('b').length,
      texts: [...root.querySelectorAll('text')].map((it) => it.textContent),
    };
  }, text);
  assert.deepEqual([read.tag, read.wrong, read.title, read.bold], ['svg', 0, '<b>"Q" & \'x\'', 0]);
  const texts = read.texts.map(plain);
  assert.ok(texts.includes('\u{2300}26 mm') && texts.includes('(134.00 mm)'), texts.join(', '));
  assert.deepEqual(troubles, []);
});

drawingTest('it is saved as a PNG three times as fine', async ({ open }) => {
  const { page, troubles } = await open(CUT);
  await toStage(page, 'Received');
  const svg = (await savedBy(page, 'Save as SVG')).bytes.toString('utf8');
  // Millimetres at 96 pixels an inch, three of the picture's for each.
  const expected = [...svg.matchAll(/ (?:width|height)="([\d.]+)mm"/g)].map(([, mm]) => 3 * Math.trunc(mm * 96 / 25.4));
  const { name, bytes } = await savedBy(page, 'Save as PNG');
  assert.equal(name, 'b-q-x-drawing.png');
  assert.equal(bytes.subarray(1, 4).toString('latin1'), 'PNG');
  const size = [bytes.readUInt32BE(16), bytes.readUInt32BE(20)];
  size.forEach((found, at) => assert.ok(Math.abs(found - expected[at]) <= 3, `${size} for ${expected}`));
  assert.deepEqual(troubles, []);
});

drawingTest('a dimension that has no room is shown when its field is typed in or picked', async ({ open }) => {
  const { page } = await open('', { viewport: { width: 740, height: 360 } });
  const finished = dimension(page, /^Finished length/);
  await openExample(page, 0);
  await toStage(page, 'Wanted');
  await dimension(page, /^Finished diameter/).waitFor();
  assert.equal(await finished.count(), 0);
  await field(page, 'Finished length').fill('50');
  await finished.waitFor();

  // From a working, with nothing typed before.
  await openExample(page, 1);
  await page.reload();
  await toStage(page, 'Wanted');
  await dimension(page, /^Finished diameter/).waitFor();
  assert.equal(await finished.count(), 0);
  await toStage(page, 'Plan');
  await figures(page).getByRole('button', { name: 'Cut off' }).click();
  await button(page.getByRole('listitem').filter({ hasText: 'Finished length' }), 'Change').click();
  await eventually(async () => assert.equal(await finished.getAttribute('aria-current'), 'true'));
  await button(page, 'Done').click();
  await focused(finished);
});

drawingTest('axe finds nothing on it, whole or larger, with all its dimensions', async ({ open }) => {
  const { page } = await open(MANY);
  for (const stage of ['Received', 'Plan']) {
    await toStage(page, stage);
    await assertAccessible(page);
  }
  await toStage(page, 'Received');
  await button(page, 'Show all').click();
  await button(page, 'Larger').click();
  await assertAccessible(page);
  assert.ok(await isStill(page));
});
