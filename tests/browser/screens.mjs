// Writes pictures of every stage, size and look into `shots/`, for a developer to look at:
// `node tests/browser/screens.mjs [number of the example]`. No test: nothing is compared.

import { mkdir } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { sizes, startBrowser, visit } from './helper/browser.mjs';
import { changeLook, openExample, toStage } from './helper/steps.mjs';
import { startServer } from './helper/server.mjs';

const folder = fileURLToPath(new URL('shots/', import.meta.url));
const looks = { smallPhone: ['light', 'dark', 'sunlight'], phone: ['light', 'dark'], desk: ['light', 'dark'] };
// How far down each picture is taken, in heights of the window.
const places = [0, 0.8, 1.7, 2.6, 3.5, 4.4];

// What is closed on a stage until it is asked for.
const closed = {
  Wanted: [/^What else it could become/, /^⌀/, /^The most that can be had/],
};

async function openAll(page, stage) {
  for (const name of closed[stage] ?? []) {
    const opener = page.getByRole('button', { name, expanded: false }).first();
    if (await opener.count() > 0) {
      await opener.click();
    }
  }
}

const examples = process.argv.length > 2 ? process.argv.slice(2).map(Number) : [1, 2, 3];
await mkdir(folder, { recursive: true });
const server = await startServer();
const browser = await startBrowser();
for (const example of examples) {
  for (const [name, size] of Object.entries(sizes)) {
    const { context, page } = await visit(browser, server.url, { size });
    await openExample(page, example - 1);
    await page.getByRole('button', { name: 'All right' }).click();
    for (const look of looks[name]) {
      await changeLook(page, look);
      for (const stage of ['Received', 'Wanted', 'Plan', 'Cut']) {
        await toStage(page, stage);
        await openAll(page, stage);
        for (const place of look === 'light' ? places : places.slice(0, 1)) {
          const more = await page.evaluate((share) => {
            const top = Math.round(share * innerHeight);
            scrollTo(0, top);
            return scrollY >= top;
          }, place);
          if (!more) {
            break;
          }
          await page.screenshot({ path: `${folder}${example}-${name}-${look}-${stage}-${place}.png` });
        }
      }
    }
    await context.close();
  }
}
await browser.close();
await server.stop();
console.log(`Written to ${folder}`);
