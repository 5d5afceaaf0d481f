// All jobs are kept: the list, the trash, two tabs, an old profile, storage that is full or was cleared.

import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { after, before } from 'node:test';
import { assertAccessible } from './helper/accessibility.mjs';
import { sizes } from './helper/browser.mjs';
import {
  button, closeDialog, dialog, eventually, examples, field, focused, jobTitle, newJob, openExample, openJobs, pageTests,
  saved,
} from './helper/steps.mjs';

const jobsTest = pageTests({ before, after });

const name = (page) => field(page, 'Name of the job');

const list = (page) => dialog(page, 'Jobs');

// The titles in the list, from the top.
const titles = (page) => list(page).locator('.jobs-open .jobs-title').allTextContents();

async function call(page, title) {
  await name(page).fill(title);
  await saved(page);
}

async function makeJobs(page, all) {
  for (const [index, title] of all.entries()) {
    if (index > 0) {
      await newJob(page);
    }
    await call(page, title);
  }
}

// A job of the list, by its title.
const row = (page, title) => list(page).getByRole('listitem').filter({ has: page.getByText(title, { exact: true }) });

const more = (page, title) => row(page, title).getByRole('button', { name: /^More/ });

// The ways of changing a job of the list.
const waysOf = (page, title) => more(page, title).click();

// What the database holds, read past the page.
const records = (page) => page.evaluate(() => new Promise((done, failed) => {
  const opening = indexedDB.open('skimwright');
  opening.onerror = failed;
  opening.onsuccess = () => {
    const asking = opening.result.transaction('jobs').objectStore('jobs').getAll();
    asking.onsuccess = () => {
      opening.result.close();
      done(asking.result);
    };
  };
}));

// Puts records into the database, which the page must have made, and has closed.
const put = (page, all) => page.evaluate((those) => new Promise((done, failed) => {
  const opening = indexedDB.open('skimwright', 1);
  opening.onupgradeneeded = () => opening.result.createObjectStore('jobs', { keyPath: 'id' });
  opening.onerror = failed;
  opening.onsuccess = () => {
    const writing = opening.result.transaction('jobs', 'readwrite');
    those.forEach((one) => writing.objectStore('jobs').put(one));
    writing.oncomplete = () => {
      opening.result.close();
      done();
    };
  };
}), all);

const stored = (file) => readFile(new URL(`stored/${file}`, import.meta.url), 'utf8');

// A page of the same origin on which this program does not run.
const beside = async (context, server) => {
  const page = await context.newPage();
  await page.goto(`${server.url}manifest.webmanifest`);
  return page;
};

jobsTest('nothing entered, nothing kept; then by itself', async ({ open }) => {
  const { page, troubles } = await open();
  await page.getByText('nothing entered yet').waitFor();
  await openJobs(page);
  await page.getByText('No job is kept yet.').waitFor();
  await assertAccessible(page);
  await closeDialog(page, 'Jobs');
  await call(page, 'Arbor');
  const [record] = await records(page);
  assert.equal(record.title, 'Arbor');
  assert.equal(record.form, 1);
  assert.equal(record.state, 'new');
  assert.ok(record.created > 0 && record.changed >= record.created);
  await openJobs(page);
  assert.deepEqual(await titles(page), ['Arbor']);
  await assertAccessible(page);
  assert.deepEqual(troubles, []);
});

jobsTest('jobs are listed newest first, opened, renamed, duplicated, and each keeps its undo', async ({ open }) => {
  const { page, troubles } = await open();
  await makeJobs(page, ['One', 'Two', 'Three']);
  await openExample(page, 0);
  await openJobs(page);
  assert.deepEqual(await titles(page), [examples[0], 'Three', 'Two', 'One']);
  await list(page).getByText(/^planned · today \d\d:\d\d · open now$/).waitFor();
  await row(page, 'One').getByRole('button').first().click();
  assert.equal(await jobTitle(page).textContent(), 'One');
  await button(page, 'Undo').click();
  assert.equal(await jobTitle(page).textContent(), 'Job without a name');
  await button(page, 'Redo').click();

  await openJobs(page);
  await waysOf(page, 'Two');
  await list(page).getByRole('textbox', { name: 'Name', exact: true }).fill('Second');
  await button(list(page), 'Duplicate').click();
  await list(page).getByText('Duplicated.').waitFor();
  await closeDialog(page, 'Jobs');
  await saved(page);
  await page.reload();
  await jobTitle(page).filter({ hasText: 'One' }).waitFor();
  await openJobs(page);
  assert.deepEqual((await titles(page)).sort(), [examples[0], 'One', 'Second', 'Second (copy)', 'Three'].sort());
  await list(page).getByRole('searchbox', { name: 'Search by name' }).fill('second');
  await eventually(async () => assert.deepEqual((await titles(page)).sort(), ['Second', 'Second (copy)']));
  await list(page).getByRole('searchbox', { name: 'Search by name' }).fill('nowhere');
  await page.getByText('No job has this in its name.').waitFor();
  assert.deepEqual(troubles, []);
});

jobsTest('what goes into the trash comes back; emptying it asks', async ({ open }) => {
  const { page, troubles } = await open('', { size: sizes.smallPhone });
  await makeJobs(page, ['One', 'Two', 'Three']);
  await openJobs(page);
  await waysOf(page, 'One');
  await button(list(page), 'Into the trash').click();
  await list(page).getByText('Put into the trash.').waitFor();
  await focused(list(page).getByRole('status'));
  assert.deepEqual(await titles(page), ['Three', 'Two']);
  await button(list(page), 'Undo').click();
  await eventually(async () => assert.deepEqual((await titles(page)).sort(), ['One', 'Three', 'Two']));
  for (const title of ['One', 'Three']) {
    await waysOf(page, title);
    await button(list(page), 'Into the trash').click();
    await more(page, title).waitFor({ state: 'detached' });
  }
  assert.equal(await jobTitle(page).textContent(), 'Two', 'the open one was put away');
  await button(list(page), 'Trash (2)').click();
  await assertAccessible(page);
  await row(page, 'Three').getByRole('button', { name: /^Restore/ }).click();
  await eventually(async () => assert.deepEqual((await titles(page)).sort(), ['Three', 'Two']));
  await button(list(page), 'Empty the trash').click();
  await button(dialog(page, 'Empty the trash'), 'Keep them').click();
  await button(list(page), 'Empty the trash').click();
  await assertAccessible(page);
  await button(dialog(page, 'Empty the trash'), 'Empty the trash').click();
  await list(page).getByText('1 job was deleted.').waitFor();
  await eventually(async () => assert.deepEqual((await records(page)).map(({ title }) => title).sort(), ['Three', 'Two']));
  assert.equal(await page.evaluate(() => document.documentElement.scrollWidth > innerWidth), false);
  assert.deepEqual(troubles, []);
});

jobsTest('a new job can be gone back from, and loses nothing', async ({ open }) => {
  const { page } = await open();
  await call(page, 'Mine');
  await openExample(page, 1);
  await button(page, 'Back to the one before').click();
  assert.equal(await jobTitle(page).textContent(), 'Mine');
  await openJobs(page);
  assert.deepEqual(await titles(page), ['Mine'], 'an example that was only looked at is not kept');
});

jobsTest('five hundred jobs of any title are listed and searched', async ({ server, open }) => {
  const { context, page, troubles } = await open('', { size: sizes.smallPhone });
  await call(page, 'First');
  const [first] = await records(page);
  const long = 'Spindelwelle '.repeat(6).trim();
  await put(page, Array.from({ length: 499 }, (_, index) => ({
    ...first,
    id: `many-${index}`,
    title: [long, '', `Job ${index}`][index % 3],
    changed: first.changed - 1000 * (index + 1),
  })));
  const again = await context.newPage();
  await again.goto(server.url);
  await saved(again);
  const begun = performance.now();
  await openJobs(again);
  assert.ok(performance.now() - begun < 3000, 'opening the list took too long');
  assert.equal((await titles(again)).length, 40);
  assert.equal(await again.evaluate(() => document.documentElement.scrollWidth > innerWidth), false);
  await button(list(again), 'Show 460 more').click();
  await eventually(async () => assert.equal((await titles(again)).length, 500));
  await list(again).getByRole('searchbox').fill('job 488');
  await eventually(async () => assert.deepEqual(await titles(again), ['Job 488']));
  await assertAccessible(again);
  assert.deepEqual(troubles, []);
});

jobsTest('the list is worked by keyboard alone', async ({ open }) => {
  const { page } = await open('', { size: sizes.desk });
  await makeJobs(page, ['One', 'Two']);
  await button(page, 'Jobs').focus();
  await page.keyboard.press('Enter');
  const one = row(page, 'One').getByRole('button').first();
  for (let presses = 0; presses < 12 && !(await one.evaluate((it) => it === document.activeElement)); presses += 1) {
    await page.keyboard.press('Tab');
  }
  await focused(one);
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await page.keyboard.press('Tab');
  await focused(list(page).getByRole('textbox', { name: 'Name', exact: true }));
  await page.keyboard.type('!');
  await eventually(async () => assert.ok((await titles(page)).some((title) => title.includes('!'))));
  await page.keyboard.press('Escape');
  await list(page).waitFor({ state: 'detached' });
  await focused(button(page, 'Jobs'));
});

jobsTest('a second tab is told, and sees changes as they are made', async ({ server, open }) => {
  const { context, page, troubles } = await open();
  await call(page, 'Shared');
  const second = await context.newPage();
  await second.goto(server.url);
  await second.getByText('This job is open in another tab too.').waitFor();
  await name(page).fill('Shared, changed');
  await saved(page);
  await jobTitle(second).filter({ hasText: 'Shared, changed' }).waitFor();
  await second.getByText('saved on this device', { exact: true }).waitFor();
  // And the other way about.
  await name(second).fill('Changed back');
  await jobTitle(page).filter({ hasText: 'Changed back' }).waitFor();
  assert.equal((await records(page)).length, 1);
  await page.close();
  await second.getByText('This job is open in another tab too.').waitFor({ state: 'detached' });
  assert.deepEqual(troubles, []);
});

jobsTest('two tabs that change one job at the same time lose neither', async ({ server, open }) => {
  const { context, page } = await open();
  await call(page, 'Shared');
  const second = await context.newPage();
  // It hears nothing of the others.
  await second.addInitScript(() => {
    delete window.BroadcastChannel;
  });
  await second.goto(server.url);
  await saved(second);
  await name(page).fill('First tab');
  await saved(page);
  await name(second).fill('Second tab');
  await second.getByText('Another tab changed this job at the same time.').waitFor();
  await jobTitle(second).filter({ hasText: 'Second tab (other tab)' }).waitFor();
  await eventually(async () => assert.deepEqual(
    (await records(page)).map(({ title }) => title).sort(),
    ['First tab', 'Second tab (other tab)'],
  ));
  // The copy goes on as a job of its own.
  await name(second).fill('Second tab, on');
  await saved(second);
  await eventually(async () => assert.deepEqual(
    (await records(page)).map(({ title }) => title).sort(),
    ['First tab', 'Second tab, on'],
  ));
});

jobsTest('two tabs with two jobs each come back to their own', async ({ server, open }) => {
  const { context, page } = await open();
  await call(page, 'One');
  await page.waitForFunction(() => location.hash === `#${localStorage.getItem('skimwright.job')}`);
  const address = await page.evaluate(() => location.hash);
  const second = await context.newPage();
  await second.goto(server.url);
  await newJob(second);
  await call(second, 'Two');
  await page.waitForTimeout(1000);
  await page.goto('about:blank');
  await page.goto(`${server.url}${address}`);
  await eventually(async () => assert.equal(await jobTitle(page).textContent(), 'One'));
  // Until the database is read, nothing says whose it is.
  await eventually(async () => assert.equal(await button(page, 'Make it my job').count(), 0));
});

jobsTest('what is typed as the page is hidden is kept', async ({ server, open }) => {
  const { context, page } = await open();
  await call(page, 'Seen');
  await name(page).fill('Typed last');
  await page.evaluate(() => {
    Object.defineProperty(document, 'hidden', { value: true, configurable: true });
    document.dispatchEvent(new Event('visibilitychange'));
  });
  await page.close({ runBeforeUnload: false });
  const again = await context.newPage();
  await again.goto(server.url);
  await jobTitle(again).filter({ hasText: 'Typed last' }).waitFor();
  await saved(again);
  assert.deepEqual((await records(again)).map(({ title }) => title), ['Typed last']);
});

jobsTest('every older stored form opens: version 0, one job as plain text', async ({ server, open }) => {
  const { context } = await open();
  const text = (await stored('v0.txt')).trim();
  const plain = await beside(context, server);
  await plain.evaluate((job) => {
    localStorage.clear();
    localStorage.setItem('skimwright.job', job);
  }, text);
  const page = await context.newPage();
  await page.goto(server.url);
  await jobTitle(page).filter({ hasText: 'Dialled in from two planes' }).waitFor();
  await saved(page);
  await openJobs(page);
  assert.deepEqual(await titles(page), ['Dialled in from two planes']);
});

jobsTest('every older stored form opens: version 1', async ({ server, open }) => {
  const { context } = await open();
  const record = JSON.parse(await stored('v1.json'));
  const plain = await beside(context, server);
  await plain.evaluate(() => localStorage.clear());
  await put(plain, [record]);
  const page = await context.newPage();
  await page.goto(server.url);
  await jobTitle(page).filter({ hasText: record.title }).waitFor();
  await saved(page);
});

jobsTest('a newer stored form is shown and left alone', async ({ server, open }) => {
  const { context, page } = await open();
  await call(page, 'Mine');
  const future = {
    ...JSON.parse(await stored('v1.json')), form: 2, id: 'future', title: 'From tomorrow', more: { unknown: true },
  };
  await put(page, [future]);
  const again = await context.newPage();
  await again.goto(server.url);
  await saved(again);
  await openJobs(again);
  const theirs = row(again, 'From tomorrow').getByRole('button', { name: /from a newer version/ });
  assert.equal(await theirs.isDisabled(), true);
  await closeDialog(again, 'Jobs');
  await call(again, 'Mine still');
  const there = (await records(again)).find(({ id }) => id === 'future');
  assert.deepEqual(there, future);
});

jobsTest('full storage is said, nothing typed is lost, and it is kept as soon as there is room', async ({ open }) => {
  const { page, troubles } = await open();
  await makeJobs(page, ['One', 'Two']);
  await openJobs(page);
  await waysOf(page, 'One');
  await button(list(page), 'Into the trash').click();
  await closeDialog(page, 'Jobs');
  await page.evaluate(() => {
    const real = IDBObjectStore.prototype.put;
    window.makeRoom = () => {
      IDBObjectStore.prototype.put = real;
    };
    IDBObjectStore.prototype.put = function full() {
      throw new DOMException('No room.', 'QuotaExceededError');
    };
  });
  await name(page).fill('Typed into a full store');
  await page.getByText('There is no room left on this device: the last change is NOT saved.').waitFor();
  await page.getByText('NOT saved: no room left').waitFor();
  await assertAccessible(page);
  assert.equal(await name(page).inputValue(), 'Typed into a full store');
  await button(page, 'Empty the trash').click();
  await dialog(page, 'Empty the trash').getByText('One', { exact: true }).waitFor();
  await button(dialog(page, 'Empty the trash'), 'Keep them').click();
  await closeDialog(page, 'Jobs');
  await page.evaluate(() => window.makeRoom());
  await saved(page);
  await page.getByText('There is no room left').waitFor({ state: 'detached' });
  assert.deepEqual(
    (await records(page)).filter(({ trashed }) => !trashed).map(({ title }) => title),
    ['Typed into a full store'],
  );
  assert.deepEqual(troubles, []);
});

jobsTest('storage that the browser has cleared is told, and the last job is there', async ({ server, open }) => {
  const { context, page } = await open();
  await makeJobs(page, ['One', 'Two', 'Three']);
  await page.goto('about:blank');
  const plain = await beside(context, server);
  await plain.evaluate(() => new Promise((done) => {
    indexedDB.deleteDatabase('skimwright').onsuccess = done;
  }));
  await page.goto(server.url);
  await page.getByText(/^3 jobs kept in this browser are gone/).waitFor();
  assert.equal(await jobTitle(page).textContent(), 'Three');
  await saved(page);
  await page.reload();
  await saved(page);
  assert.equal(await page.getByText('are gone').count(), 0, 'told once');
});

jobsTest('without local storage the newest job of the database opens', async ({ server, open }) => {
  const { context, page } = await open();
  await makeJobs(page, ['One', 'Two']);
  await page.goto('about:blank');
  const plain = await beside(context, server);
  await plain.evaluate(() => localStorage.clear());
  await page.goto(server.url);
  await jobTitle(page).filter({ hasText: 'Two' }).waitFor();
  await saved(page);
});

jobsTest('without a database one job is kept, and that is said', async ({ server, open }) => {
  const { context } = await open();
  const page = await context.newPage();
  await page.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('Not here.', 'SecurityError');
    };
  });
  await page.goto(server.url);
  await name(page).fill('Only one');
  await page.getByText('saved on this device, this job only').waitFor();
  await openJobs(page);
  await page.getByText('This browser keeps only the job that is open.').waitFor();
  await page.reload();
  await jobTitle(page).filter({ hasText: 'Only one' }).waitFor();
});

jobsTest('storage that lasts is asked for once, after the first real job', async ({ server, open }) => {
  const { context } = await open();
  const page = await context.newPage();
  await page.addInitScript(() => {
    StorageManager.prototype.persist = async () => {
      localStorage.setItem('asked', Number(localStorage.getItem('asked') ?? 0) + 1);
      return true;
    };
    StorageManager.prototype.persisted = async () => true;
  });
  const asked = () => page.evaluate(() => localStorage.getItem('asked'));
  await page.goto(server.url);
  await call(page, 'A name alone');
  assert.equal(await asked(), null);
  await openExample(page, 0);
  await saved(page);
  await eventually(async () => assert.equal(await asked(), '1'));
  await page.reload();
  await saved(page);
  await openJobs(page);
  await page.getByText('This browser has promised not to clear your jobs by itself.').waitFor();
  assert.equal(await asked(), '1');
});

// What the browser would have put among the downloads.
async function downloaded(page, press) {
  const [download] = await Promise.all([page.waitForEvent('download'), press()]);
  const path = await download.path();
  return { name: download.suggestedFilename(), text: await readFile(path, 'utf8') };
}

const openFile = (page, text) => list(page).getByLabel('Open a file').setInputFiles({
  name: 'jobs.json', mimeType: 'application/json', buffer: Buffer.from(text),
});

jobsTest('jobs go into a file and come back, and nothing is overwritten', async ({ open }) => {
  const { page, troubles } = await open();
  await makeJobs(page, ['One', 'Two']);
  await openJobs(page);
  const all = await downloaded(page, () => button(list(page), 'Save all as file').click());
  assert.match(all.name, /^skimwright-jobs-\d{4}-\d\d-\d\d\.json$/);
  assert.deepEqual(JSON.parse(all.text).jobs.map(({ job }) => job.title).sort(), ['One', 'Two']);
  await list(page).getByText('2 jobs are in the file, among your downloads.').waitFor();
  await waysOf(page, 'One');
  const one = await downloaded(page, () => button(list(page), 'Save as file').click());
  assert.equal(one.name, 'One.json');

  await openFile(page, all.text);
  await list(page).getByText('One: kept here already, the same; left out.').waitFor();
  await list(page).getByText('Two: kept here already, the same; left out.').waitFor();
  const changed = JSON.parse(one.text);
  changed.jobs[0].job.title = 'One of yore';
  await openFile(page, JSON.stringify(changed));
  await list(page).getByText(/^One of yore: another state of it is kept here/).waitFor();
  assert.deepEqual((await titles(page)).sort(), ['One', 'One of yore (from a file)', 'Two']);
  await openFile(page, 'no file of ours');
  await list(page).getByText('Nothing was taken in.').waitFor();
  await assertAccessible(page);

  // On another device.
  const other = await open();
  await openJobs(other.page);
  await openFile(other.page, all.text);
  await list(other.page).getByText('One: taken in.').waitFor();
  await eventually(async () => assert.deepEqual(
    (await records(other.page)).map(({ title }) => title).sort(),
    ['One', 'Two'],
  ));
  assert.deepEqual(troubles, []);
});
