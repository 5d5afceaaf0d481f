// In the workshop there is no signal: after the first load everything works without a server.

import assert from 'node:assert/strict';
import { after, before } from 'node:test';
import { waitUntilKept } from './helper/browser.mjs';
import {
  button, closeDialog, dialog, eventually, field, openExample, pageTests, readFigures, toStage,
} from './helper/steps.mjs';

const offlineTest = pageTests({ before, after });

offlineTest('loads, plans, keeps and shares without a server', async ({ server, open }) => {
  const { page, troubles, requests } = await open('', { permissions: ['clipboard-read', 'clipboard-write'] });
  await waitUntilKept(page);
  await openExample(page, 0);
  await page.getByText('saved on this device', { exact: true }).waitFor();
  await server.stop();
  await assert.rejects(fetch(server.url), 'the server must be gone');

  await page.reload();
  await toStage(page, 'Wanted');
  await field(page, 'Finished length').fill('50');
  await toStage(page, 'Plan');
  // 71.5 − 50 − 1.
  await eventually(async () => assert.match((await readFigures(page))[0], /^Cut off \| 20\.50 mm/));

  await page.reload();
  await eventually(async () => assert.match((await readFigures(page))[0], /^Cut off \| 20\.50 mm/));
  await button(page, 'Share').click();
  await button(dialog(page, 'Share'), 'Copy the link').click();
  await page.getByText('The link is copied.').waitFor();
  const link = await page.evaluate(() => navigator.clipboard.readText());
  await closeDialog(page, 'Share');

  // The link opens too: here in the same browser, whose own job has moved on.
  await toStage(page, 'Wanted');
  await field(page, 'Finished length').fill('56');
  await page.waitForFunction((hash) => location.hash !== hash, new URL(link).hash);
  await page.goto('about:blank');
  await page.goto(link);
  await page.getByText('This job came with a link').waitFor();
  await toStage(page, 'Plan');
  await eventually(async () => assert.match((await readFigures(page))[0], /^Cut off \| 20\.50 mm/));
  assert.deepEqual(troubles, []);
  assert.deepEqual(requests.filter(({ url }) => /^https?:/.test(url) && !url.startsWith(server.url)), []);
});
