// Prints the job sheets and reports of the examples to PDF, for `tests/outside/printed.py`:
// `node tests/outside/printed.mjs FOLDER`. The page must be built.

import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { scan } from '../browser/helper/scan.mjs';
import { sizes, startBrowser, visit } from '../browser/helper/browser.mjs';
import { startServer } from '../browser/helper/server.mjs';
import { button, examples, openExample, toStage, withoutPrintDialog } from '../browser/helper/steps.mjs';

const folder = process.argv[2];
await mkdir(folder, { recursive: true });
const server = await startServer();
const browser = await startBrowser();
for (const index of examples.keys()) {
  const { context, page } = await visit(browser, server.url, { size: { ...sizes.desk, deviceScaleFactor: 4 } });
  await openExample(page, index);
  await toStage(page, 'Plan');
  await withoutPrintDialog(page);
  for (const format of ['A4', 'Letter']) {
    await button(page, 'Print the job sheet').click();
    await page.pdf({ path: join(folder, `sheet-${index}-${format}.pdf`), format });
  }
  // What a first reader says of the same code on the screen: that it leads back to the job is held by the page's tests.
  await button(page, 'Print the job sheet').click();
  await page.emulateMedia({ media: 'print' });
  const address = await scan(page, page.getByRole('img', { name: 'QR code of this job' }));
  await page.emulateMedia({ media: null });
  await writeFile(join(folder, `sheet-${index}.json`), JSON.stringify({ address }));
  await toStage(page, 'Hand back');
  for (const format of ['A4', 'Letter']) {
    await page.pdf({ path: join(folder, `report-${index}-${format}.pdf`), format });
  }
  await context.close();
}
await browser.close();
await server.stop();
