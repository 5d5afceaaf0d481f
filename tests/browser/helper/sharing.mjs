// What is done with links: giving them away, answering, taking answers in.

import assert from 'node:assert/strict';
import { button, closeDialog, dialog } from './steps.mjs';

export const share = (page) => dialog(page, 'Share');

export const clipboard = (page) => page.evaluate(() => navigator.clipboard.readText());

export const ownerLine = (page) => page.getByRole('region', { name: 'The owner', exact: true });

// Chooses the owner in the dialog, and copies the link.
export async function offer(page, { rates = false } = {}) {
  await button(page, 'Share').click();
  await share(page).getByRole('radio', { name: 'The part’s owner' }).check();
  if (rates) {
    await share(page).getByRole('checkbox', { name: 'Your rates' }).check();
  }
  await button(share(page), 'Copy the link').click();
  await share(page).getByText('The link is copied.').waitFor();
  const link = await clipboard(page);
  await closeDialog(page, 'Share');
  return link;
}

export async function answer(page, choice, words, name) {
  await page.getByRole('radio', { name: choice }).check();
  if (words !== undefined) {
    await page.getByRole('textbox', { name: /own words|changed|question/ }).fill(words);
  }
  if (name !== undefined) {
    await page.getByRole('textbox', { name: /^Your name/ }).fill(name);
  }
  await button(page, 'Copy the answer').click();
  await page.getByText('Copied. Now paste it').waitFor();
  return clipboard(page);
}

export async function paste(page, text) {
  await button(page, 'Share').click();
  await share(page).getByRole('textbox', { name: 'The owner’s answer' }).fill(text);
  await button(share(page), 'Take the answer').click();
}

export const hashOf = (link) => new URL(link).hash;

export const putInAddress = (page, hash) => page.evaluate((text) => {
  location.hash = text;
}, hash);

export const isWide = (page) => page.evaluate(() => document.documentElement.scrollWidth > innerWidth);

export function assertNoForeignRequests(server, visits) {
  for (const { requests, troubles } of visits) {
    assert.deepEqual(troubles, []);
    const foreign = requests.filter(({ url }) => /^(https?|wss?):/.test(url) && !url.startsWith(server.url));
    assert.deepEqual(foreign, []);
    // A link's text never leaves the device: a browser keeps what is behind # to itself, and no other part has it.
    assert.deepEqual(requests.filter(({ url }) => url.length > server.url.length + 120 && !url.startsWith('data:')), []);
  }
}
