// What is printed and handed over: the job sheet, the report that goes back, files for other programs.

import assert from 'node:assert/strict';
import { after, before } from 'node:test';
import { readFile } from 'node:fs/promises';
import { assertAccessible } from './helper/accessibility.mjs';
import { sizes } from './helper/browser.mjs';
import { core } from './helper/core.mjs';
import { scan } from './helper/scan.mjs';
import {
  addressOf, button, dialog, eventually, examples, field, focused, openExample, pageTests, plain, toStage, withoutPrintDialog,
} from './helper/steps.mjs';

const deskTest = pageTests({ before, after }, { size: sizes.desk });
const phoneTest = pageTests({ before, after }, { size: sizes.smallPhone });

async function printSheet(page) {
  await withoutPrintDialog(page);
  await button(page, 'Print the job sheet').click();
  await eventually(async () => assert.equal(await page.evaluate(() => window.asked), 1));
}

// Pages of a PDF: its page objects stand in it as plain text.
const pagesOf = (pdf) => pdf.toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g).length;

for (const [index, title] of examples.entries()) {
  deskTest(`the job sheet of “${title}” is one page, and its code leads back to the job`, async ({ open }) => {
    // As fine as a phone's camera sees it.
    const { page, troubles } = await open('', { size: { ...sizes.desk, deviceScaleFactor: 4 } });
    await openExample(page, index);
    await toStage(page, 'Plan');
    await printSheet(page);
    for (const format of ['A4', 'Letter']) {
      assert.equal(pagesOf(await page.pdf({ format })), 1, format);
    }
    await page.emulateMedia({ media: 'print' });
    const code = page.getByRole('img', { name: 'QR code of this job' });
    const link = await scan(page, code);
    assert.match(link, /#\d+$/, 'the link is in digits');
    const sheet = plain(await page.getByRole('article', { name: 'Job sheet' }).textContent());
    for (const words of [title, 'Cut off', 'Passes', 'Watch', 'sizes in mm']) {
      assert.ok(sheet.includes(words), words);
    }
    await page.emulateMedia({ media: 'screen' });
    assert.equal(await page.getByRole('article', { name: 'Job sheet' }).count(), 0, 'only on paper');
    assert.deepEqual(troubles, []);

    const other = await open(new URL(link).hash);
    await other.page.getByRole('heading', { level: 1, name: title }).waitFor();
    assert.deepEqual(other.troubles, []);
  });
}

async function saved(page, name) {
  const [download] = await Promise.all([page.waitForEvent('download'), button(page, name).click()]);
  return { name: download.suggestedFilename(), text: await readFile(await download.path(), 'utf8') };
}

deskTest('files for other programs have their names and begin as they should', async ({ open }) => {
  // English words, for want of French ones, and a decimal comma.
  const { page, troubles } = await open('', { locale: 'fr-FR' });
  await openExample(page, 0);
  await toStage(page, 'Plan');
  await button(page, 'Files for other programs').click();
  const stem = 'milling-arbor-32-mm-to-25-mm';
  const dxf = await saved(page, 'Save as DXF');
  assert.equal(dxf.name, `${stem}-drawing.dxf`);
  assert.match(dxf.text, /^\s*(0|999)\r?\n/);
  const passes = await saved(page, 'Passes as CSV');
  assert.equal(passes.name, `${stem}-passes.csv`);
  assert.match(passes.text.split('\r\n')[1], /^1;.*\d,\d/, 'the decimal mark is that of the browser');
  await button(page, 'Point: 25.4').click();
  assert.match((await saved(page, 'Passes as CSV')).text.split('\r\n')[1], /^1,.*\d\.\d/);
  assert.match((await saved(page, 'Readings as CSV')).text, /event,time \[UTC\],what/);
  const json = await saved(page, 'Job as JSON');
  assert.match(json.name, /\.json$/);
  assert.ok(json.text.startsWith('{'));
  assert.ok(json.text.includes('Milling arbor'));
  await assertAccessible(page);
  assert.deepEqual(troubles, []);
});

// Works at the lathe: readings and cuts by the keypad's own buttons would take long, so the job comes by its link.
const verdict = (page) => page.locator('.report-verdict strong');

deskTest('a report without a record says so, and who measured can be typed', async ({ open }) => {
  const { page, troubles } = await open();
  await openExample(page, 0);
  await toStage(page, 'Hand back');
  await page.getByText('this report proves nothing').waitFor();
  assert.deepEqual([...new Set(await verdict(page).allTextContents())], ['Not measured']);
  await field(page, 'Measured by').fill('<b>M. Turner</b>');
  await page.getByText('<b>M. Turner</b>').waitFor();
  await assertAccessible(page);
  const pages = pagesOf(await page.pdf({ format: 'A4' }));
  assert.ok(pages <= 2, `${pages} pages`);
  assert.deepEqual(troubles, []);
});

deskTest('the link of the report opens for somebody else, with nothing private in it', async ({ open }) => {
  const { page } = await open();
  await openExample(page, 0);
  await toStage(page, 'Hand back');
  await field(page, 'Measured by').fill('M. Turner');
  await page.evaluate(() => {
    navigator.share = async ({ url }) => {
      window.shared = url;
    };
  });
  await button(page, 'Share the report’s link').click();
  const share = dialog(page, 'Share');
  assert.equal(await share.getByRole('radio', { name: 'Whoever gets the part back' }).isChecked(), true);
  assert.match(await share.innerText(), /Not in the link[^]*Your rates/);
  await assertAccessible(page);
  await button(share, 'Share the link').click();
  const url = await eventually(async () => {
    const shared = await page.evaluate(() => window.shared);
    assert.match(shared ?? '', /#u/);
    return shared;
  });
  const owner = await open(new URL(url).hash);
  await owner.page.getByRole('heading', { level: 1, name: examples[0] }).waitFor();
  await owner.page.getByText('This part is handed back to you').waitFor();
  await owner.page.getByText('M. Turner').waitFor();
  assert.equal(await owner.page.getByRole('navigation').count(), 0, 'there is nothing to plan');
  assert.equal(await field(owner.page, 'Measured by').count(), 0, 'nothing can be changed');
  assert.match(await addressOf(owner.page), /^#u/);
  await assertAccessible(owner.page);
  assert.deepEqual(owner.troubles, []);
});

phoneTest('the report has room on a small phone and is worked by keyboard', async ({ open }) => {
  const { page, troubles } = await open();
  await openExample(page, 2);
  await toStage(page, 'Hand back');
  assert.equal(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth), true);
  const files = button(page, 'Files for other programs');
  await files.focus();
  await page.keyboard.press('Enter');
  await page.keyboard.press('Tab');
  await focused(button(page, 'Save as SVG'));
  await assertAccessible(page);
  assert.deepEqual(troubles, []);
});

const event = (at, what) => ({ at: 1_700_000_000 + 60 * at, struck: false, what });

const reading = (at, place, value) => event(at, {
  reading: { of: { diameter: place }, value, instrument: null, temperature: '20 °C', confirmed: true },
});

deskTest('a record shows what is in, what is not proven and what was not measured, and hostile notes as text', async ({ open }) => {
  const { defaultJob, encode } = await core();
  const note = '</p><img src=x onerror=alert(1)>';
  const job = defaultJob();
  job.title = 'A shank';
  job.wanted.tolerance = { upper: '0 mm', lower: '-0.05 mm' };
  job.record = {
    by: 'M. Turner',
    events: [
      reading(0, 'middle', '17.01 mm'),
      event(1, { cut: { kind: 'last', dialled: '0.5 mm', reads: 'radius' } }),
      reading(2, 'near-shoulder', '15.975 mm'),
      reading(3, 'middle', '15.999 mm'),
      event(4, { note }),
      event(5, { step: { step: 'dial-in', state: { skipped: '<script>ran true</script>' } } }),
    ],
  };
  const { page, troubles } = await open(`#${encode(job)}`);
  await page.getByRole('heading', { level: 1, name: 'A shank' }).waitFor();
  await toStage(page, 'Hand back');
  assert.deepEqual(await verdict(page).allTextContents(), ['In', 'Not proven', 'Not measured']);
  await page.getByText(note).waitFor();
  await page.getByText('<script>ran true</script>').waitFor();
  await page.getByText('The work is not finished').waitFor();
  const received = page.getByRole('region', { name: 'As received' });
  await received.getByText('17.01').waitFor();
  await page.getByRole('region', { name: 'As left, drawn to what was wanted' }).getByText('15.975').waitFor();
  await page.getByText(/permissible error ± .*, 3 readings/).waitFor();
  assert.ok(pagesOf(await page.pdf({ format: 'Letter' })) <= 2);
  await assertAccessible(page);
  assert.deepEqual(troubles, []);
});
