// Hostile text in every text of a job, through every link and file: it is shown as text, and nothing else happens.

import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { after, before } from 'node:test';
import { sizes } from './helper/browser.mjs';
import { core } from './helper/core.mjs';
import {
  answer, assertNoForeignRequests, clipboard, hashOf, isWide, ownerLine, putInAddress, share,
} from './helper/sharing.mjs';
import {
  button, closeDialog, field, jobTitle, pageTests, stages, toStage, withoutPrintDialog,
} from './helper/steps.mjs';

const hostileTest = pageTests({ before, after }, {
  size: sizes.smallPhone, permissions: ['clipboard-read', 'clipboard-write'],
});

const texts = [
  ['markup', '<img src=x onerror=alert(1)><b>bold</b></p><script>alert(2)</script>'],
  ['an address of a script', 'javascript:alert(1)//"><svg onload=alert(2)>'],
  ['a formula', '=1+1'],
  ['a formula by another sign', '@SUM(1+9)*cmd|\' /C calc\'!A0'],
  ['letters that turn the line round, and a nought', '\u{202e}\u{2066}evil\u{0}\u{7}\u{202e} end'],
  ['a thousand marks on one letter', `o${'\u{0301}\u{0489}'.repeat(500)}`],
  ['one long word', 'W'.repeat(1000)],
];

const first = (text, most) => [...text].slice(0, most).join('');

// A job with a text in every place that takes one, each as long as the place takes.
function jobWith({ defaultJob }, text) {
  const job = defaultJob();
  const name = first(text, 40);
  const note = first(text.repeat(Math.ceil(400 / text.length)), 400);
  job.title = first(text, 80);
  job.shop.machine.name = name;
  job.shop.edge.name = name;
  job.shop.rates = { currency: first(text, 8), per_hour: '60 ¤', least: '10 ¤', consumables: '1 ¤', postage: '2 ¤' };
  job.shop.instruments = [{ name }];
  const event = (at, what) => ({ at: 1_700_000_000 + at, struck: false, what });
  job.record = {
    by: name,
    events: [
      event(0, { note }),
      event(1, { step: { step: 'dial-in', state: { skipped: note } } }),
      event(2, {
        reading: { of: { diameter: 'middle' }, value: '17.01 mm', instrument: 0, temperature: null, confirmed: true },
      }),
    ],
  };
  return { job, name, note };
}

// Elements that only markup in a text could have made.
const made = (page) => page.locator([
  'body script', 'img[src="x"]', 'b', 'iframe', 'object', 'embed', '[onerror]', '[onload]', '[onclick]',
  'a[href^="javascript" i]',
].join()).count();

async function assertHarmless({ page }, where) {
  assert.equal(await made(page), 0, where);
  assert.equal(await isWide(page), false, `${where} is too wide`);
}

async function link(page, to, { all = false } = {}) {
  await share(page).getByRole('radio', { name: to }).check();
  for (const name of all ? ['Your rates', /^Lathe, tool/] : []) {
    await share(page).getByRole('checkbox', { name }).check();
  }
  await button(share(page), 'Copy the link').click();
  await share(page).getByText('The link is copied.').waitFor();
  return clipboard(page);
}

async function savedAs(page, name) {
  const files = page.getByRole('group', { name: 'Files for other programs' });
  const [download] = await Promise.all([page.waitForEvent('download'), button(files, name).click()]);
  return { name: download.suggestedFilename(), text: await readFile(await download.path(), 'utf8') };
}

// Cells of a table, by RFC 4180.
function cellsOf(text) {
  const cells = [];
  for (const [, quoted, bare] of text.replace(/^\u{feff}/u, '').matchAll(/(?:^|,|\r\n)(?:"((?:[^"]|"")*)"|([^,"\r\n]*))/g)) {
    cells.push(quoted === undefined ? bare : quoted.replaceAll('""', '"'));
  }
  return cells;
}

// Read by a parser on a page that no policy holds.
const elementsOf = (page, svg) => page.evaluate((text) => {
  const read = new DOMParser().parseFromString(text, 'image/svg+xml');
  const elements = [...read.querySelectorAll('*')];
  return {
    broken: read.querySelector('parsererror')?.textContent ?? null,
    names: [...new Set(elements.map(({ localName }) => localName))],
    handlers: elements.flatMap(({ attributes }) => [...attributes].map(({ name }) => name)).filter((it) => /^on|href/i.test(it)),
  };
}, svg);

for (const [what, text] of texts) {
  hostileTest(`${what} is text on every page, in every link and file`, async ({ server, open }) => {
    const module = await core();
    const { job, name, note } = jobWith(module, text);
    const visits = [];
    const visit = async (address) => {
      const opened = await open(address);
      opened.page.on('dialog', (shown) => {
        opened.troubles.push(`a dialog: ${shown.message()}`);
        shown.dismiss();
      });
      visits.push(opened);
      return opened;
    };
    const shop = await visit(`#${module.encode(job)}`);
    const { page } = shop;
    assert.equal(await jobTitle(page).textContent(), job.title);
    for (const stage of stages) {
      await toStage(page, stage);
      await assertHarmless(shop, stage);
    }
    await page.getByText(note, { exact: false }).first().waitFor();
    await toStage(page, 'Received');
    assert.equal(await field(page, 'Name of the job').inputValue(), job.title);
    await toStage(page, 'Plan');

    // To the owner with all that can be shown, and back.
    await button(page, 'Share').click();
    const offered = await link(page, 'The part’s owner', { all: true });
    await assertHarmless(shop, 'the dialog');
    await closeDialog(page, 'Share');
    const owner = await visit(hashOf(offered));
    assert.equal(await jobTitle(owner.page).textContent(), job.title);
    await owner.page.getByText(name, { exact: false }).first().waitFor();
    await assertHarmless(owner, 'the owner’s page');
    const reply = await answer(owner.page, 'I agree, with a change', note, name);
    await assertHarmless(owner, 'the answer');
    await putInAddress(page, hashOf(reply));
    await ownerLine(page).getByText(/^Agreed with a change/).waitFor();
    await assertHarmless(shop, 'the answer taken in');
    await button(page, 'Jobs').click();
    await assertHarmless(shop, 'the list of jobs');
    await closeDialog(page, 'Jobs');

    // The report.
    await toStage(page, 'Hand back');
    await assertHarmless(shop, 'the report');
    await button(page, 'Share the report’s link').click();
    const back = await link(page, 'Whoever gets the part back');
    await closeDialog(page, 'Share');
    const getter = await visit(hashOf(back));
    await getter.page.getByText('This part is handed back to you').waitFor();
    await assertHarmless(getter, 'the report that was handed back');

    // Files.
    await toStage(page, 'Plan');
    await button(page, 'Files for other programs').click();
    await button(page, 'Point: 25.4').click();
    const free = await shop.context.newPage();
    const svg = await savedAs(page, 'Save as SVG');
    const read = await elementsOf(free, svg.text);
    assert.equal(read.broken, null);
    assert.deepEqual(read.handlers, []);
    assert.deepEqual(read.names.filter((it) => /script|img|image|foreign|^a$|^b$|style/i.test(it)), []);
    const dxf = await savedAs(page, 'Save as DXF');
    const lines = dxf.text.split(/\r?\n/);
    lines.filter((_, at) => at % 2 === 0).slice(0, -1).forEach((code) => assert.match(code, /^\s*\d+$/));
    for (const table of ['Passes as CSV', 'Readings as CSV', 'Cuts and notes as CSV']) {
      const csv = await savedAs(page, table);
      for (const cell of cellsOf(csv.text)) {
        assert.ok(!/^\s*[=+@\u{ff1d}\u{ff0b}\u{ff20}]/u.test(cell) && !/^\s*-(?!\d+(\.\d+)?$)/.test(cell), `${table}: ${cell}`);
        assert.doesNotMatch(cell, /[\u{0}-\u{1f}\u{7f}]/u);
      }
      assert.match(csv.name, /^[\p{L}\p{M}\d-]+\.csv$/u);
    }
    for (const { name: file } of [svg, dxf]) {
      assert.match(file, /^[\p{L}\p{M}\d-]+\.(svg|dxf)$/u);
    }

    // The job sheet.
    await withoutPrintDialog(page);
    await button(page, 'Print the job sheet').click();
    await page.emulateMedia({ media: 'print' });
    const sheet = page.getByRole('article', { name: 'Job sheet' });
    assert.ok((await sheet.textContent()).includes(job.title.trim()));
    assert.equal(await made(page), 0, 'the job sheet');
    await page.setViewportSize({ width: 720, height: 1000 });
    assert.equal(await isWide(page), false, 'the job sheet is too wide');
    await free.close();
    for (const { troubles } of visits) {
      assert.deepEqual(troubles, []);
    }
    assertNoForeignRequests(server, visits);
  });
}
