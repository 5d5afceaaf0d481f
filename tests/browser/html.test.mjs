// What the page makes is good HTML, by a validator that knows nothing of it: every stage, its dialogs, what is printed.

import assert from 'node:assert/strict';
import { after, before } from 'node:test';
import { readFile } from 'node:fs/promises';
import { HtmlValidate, StaticConfigLoader } from 'html-validate';
import { sizes } from './helper/browser.mjs';
import { answer, offer } from './helper/sharing.mjs';
import {
  button, dialog, examples, openExample, openJobs, openMenu, pageTests, stages, toStage, withoutPrintDialog,
} from './helper/steps.mjs';

const htmlTest = pageTests({ before, after }, { size: sizes.desk, permissions: ['clipboard-read', 'clipboard-write'] });

// The rules of the standard, not those of taste.
const validator = new HtmlValidate(new StaticConfigLoader({ extends: ['html-validate:standard'] }));

async function assertValid(html, where) {
  const { results } = await validator.validateString(html);
  const said = results.flatMap(({ messages }) => messages).map(
    ({ ruleId, message, selector, line, column }) => `${where} ${line}:${column} ${ruleId}: ${message} at ${selector}`,
  );
  assert.deepEqual([...new Set(said)], []);
}

const valid = async (page, where) => assertValid(
  `<!DOCTYPE html>\n${await page.evaluate(() => document.documentElement.outerHTML)}`,
  where,
);

htmlTest('the validator finds what is wrong', async () => {
  await assert.rejects(assertValid('<!DOCTYPE html><html lang="en"><body><p><div>x</p></body></html>', 'a fault'));
});

htmlTest('the file as it is sent', async () => {
  await assertValid(await readFile(new URL('../../dist/index.html', import.meta.url), 'utf8'), 'index.html');
});

for (const [index, title] of examples.entries()) {
  htmlTest(`every stage and what is printed of “${title}”`, async ({ open }) => {
    const { page } = await open();
    await openExample(page, index);
    for (const stage of stages) {
      await toStage(page, stage);
      await page.evaluate(() => {
        document.querySelectorAll('main [aria-expanded=false]').forEach((closed) => closed.click());
      });
      await valid(page, stage);
    }
    await toStage(page, 'Plan');
    await withoutPrintDialog(page);
    await page.evaluate(() => {
      window.sheets = [];
      new MutationObserver(() => {
        const sheet = document.querySelector('[aria-label="Job sheet"]');
        if (sheet !== null) {
          window.sheets.push(sheet.outerHTML);
        }
      }).observe(document.body, { childList: true, subtree: true });
    });
    await button(page, 'Print the job sheet').click();
    await page.waitForFunction(() => window.sheets.length > 0);
    const sheet = await page.evaluate(() => window.sheets.at(-1));
    await assertValid(`<!DOCTYPE html><html lang="en"><head><title>x</title></head><body>${sheet}</body></html>`, 'job sheet');
  });
}

htmlTest('the dialogs', async ({ open }) => {
  const { page } = await open();
  await openExample(page, 0);
  await openMenu(page);
  await valid(page, 'menu');
  await page.keyboard.press('Escape');
  await openJobs(page);
  await valid(page, 'jobs');
  await page.keyboard.press('Escape');
  await button(page, 'Share').click();
  await dialog(page, 'Share').waitFor();
  await valid(page, 'share');
  await page.keyboard.press('Escape');
  await toStage(page, 'Cut');
  await button(page.getByRole('group', { name: 'What to do with this step' }), 'Measure').click();
  await page.getByRole('dialog').waitFor();
  await valid(page, 'keypad');
});

htmlTest('what the owner sees, before his answer and after, and a link that is cut', async ({ server, open }) => {
  const shop = await open();
  await openExample(shop.page, 1);
  await toStage(shop.page, 'Plan');
  const link = (await offer(shop.page)).slice(server.url.length);
  const owner = await open(link);
  await valid(owner.page, 'offer');
  await answer(owner.page, 'I agree: do it so', 'Mind the bore', 'Ada');
  await valid(owner.page, 'answered');
  const cut = await open(link.slice(0, -9));
  await valid(cut.page, 'cut link');
});
