// What a person does at the lathe, with the phone on the headstock.

import assert from 'node:assert/strict';
import { button, eventually, plain } from './steps.mjs';

export const stepTitle = (page) => page.getByRole('heading', { level: 2 }).first();

export const acts = (page) => page.getByRole('group', { name: 'What to do with this step' });

export const act = (page, name) => button(acts(page), name);

export const stepName = async (page) => plain(await stepTitle(page).textContent()).replace(/^\d+ of \d+ /, '').replace(/:.*/, '');

// The large figure, as readers hear it.
export const figure = (page) => page.getByRole('img', { name: /\S/ }).first();

export const steps = ['Check what came', 'Hold the part', 'Dial in', 'Cut off', 'Face the end', 'Drill the centre', 'Rough', 'Last cuts', 'Polish', 'Chamfer, deburr', 'Check', 'Clean and oil'];

// Goes on to a step by finishing those before it.
export async function workUpTo(page, name) {
  for (let tries = 0; tries < steps.length && await stepName(page) !== name; tries += 1) {
    const before = await stepName(page);
    await act(page, 'Done').click();
    await eventually(async () => assert.notEqual(await stepName(page), before));
  }
  assert.equal(await stepName(page), name);
}

// Taps a number on the keypad and keeps it.
export async function keyIn(page, text, { place } = {}) {
  await act(page, 'Measure').click();
  const pad = page.getByRole('dialog');
  await pad.waitFor();
  if (place !== undefined) {
    await button(pad, place).click();
  }
  for (const sign of text) {
    await button(pad, sign === '.' ? 'Decimal mark' : sign).click();
  }
  await button(pad, 'Keep').click();
  await pad.waitFor({ state: 'detached' });
}

export const readings = (page) => page.getByRole('group', { name: /^Read since the last cut/ }).getByRole('listitem');

const keptJob = (page) => page.evaluate(() => localStorage.getItem('skimwright.job'));

// A lathe of our own: the tool stands where the dial says, and of the metal before it this share is sprung away.
const SPRUNG = 0.06;

// Cuts the part to size by what the page says, and measures it at three places. Gives how often it cut, and the size.
export async function cutToSize(page) {
  await workUpTo(page, 'Rough');
  let diameter = null;
  let tool = null;
  let cuts = 0;
  for (let turn = 0; turn < 100; turn += 1) {
    const name = await stepName(page);
    if (!['Rough', 'Last cuts', 'Polish'].includes(name)) {
      break;
    }
    const main = await acts(page).getByRole('button').filter({ hasText: /I made this cut|Spring pass made|I polished/ }).count();
    const label = await figure(page).getAttribute('aria-label');
    if (label === 'Measure') {
      if (diameter === null) {
        const about = plain(await page.getByText(/^Expected, about/).locator('..').textContent());
        diameter = Number(about.match(/([\d.]+) mm/)[1]);
        tool = diameter;
      }
      await keyIn(page, diameter.toFixed(3), { place: 'Middle' });
      await eventually(async () => assert.notEqual(await figure(page).getAttribute('aria-label'), 'Measure'));
    } else if (main > 0) {
      const dialled = Number(label.match(/([\d.]+)/)[1]);
      const means = plain(await page.locator('#app').innerText());
      const polish = await act(page, 'I polished').count() > 0;
      const factor = /dial in, on the slide/.test(means) ? 2 : 1;
      if (polish) {
        diameter -= dialled;
      } else {
        tool -= dialled * factor;
        diameter = tool + SPRUNG * (diameter - tool);
      }
      cuts += 1;
      const kept = await keptJob(page);
      await acts(page).getByRole('button', { name: /I made this cut|Spring pass made|I polished/ }).click();
      // The next cut may be as deep: what is kept tells that this one counts.
      await eventually(async () => assert.notEqual(await keptJob(page), kept));
    } else {
      await act(page, 'Done').click();
      await eventually(async () => assert.notEqual(await stepName(page), name));
    }
  }
  assert.ok(cuts > 1, `${cuts} cuts`);
  await workUpTo(page, 'Check');
  for (const place of ['Near the shoulder', 'Middle', 'Free end']) {
    for (let times = 0; times < 3; times += 1) {
      await keyIn(page, diameter.toFixed(3), { place });
    }
  }
  return { cuts, diameter };
}
