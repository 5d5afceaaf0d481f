// Nonsense typed into the fields, and storage that is full, refused or spoilt: a clear word, and nothing lost.

import assert from 'node:assert/strict';
import { after, before } from 'node:test';
import {
  button, changeUnits, eventually, field, figures, jobTitle, pageTests, plain, readFigures, stages, toStage,
} from './helper/steps.mjs';

const badTest = pageTests({ before, after });

// What is typed, and what is said of it at the field.
const unread = [
  ['soft steel', /has no place in a figure|is no unit here|A number is missing/],
  ['NaN', /has no place in a figure|is no unit here|A number is missing/],
  ['1e999', /has no place in a figure|is no unit here/],
  ['1.2.3', /second decimal mark/],
  ['12 34', /second number begins/],
  ['3/0', /needs a number below its bar/],
  ['<img src=x onerror=alert(1)>', /has no place in a figure|A number is missing/],
  ['20 kg', /is no unit here/],
  ['9'.repeat(10_000), /No more than \d+ characters/],
];
const outside = ['-5', '99999999'];

// One field a stage and kind: a diameter, a length, one that may stay empty, a time, a speed.
const fields = {
  Received: ['Head diameter', 'Length'],
  Wanted: ['Finished diameter', 'Countersink diameter, 60°'],
  Plan: ['Facing stock', 'Highest spindle speed', 'Measure'],
};

async function note(page, input) {
  const id = await input.getAttribute('aria-describedby');
  return plain((await page.locator(`[id="${id}"]`).textContent()).trim());
}

async function saysWrong(page, input, message) {
  await eventually(async () => {
    assert.match(await note(page, input), message);
    assert.equal(await input.getAttribute('aria-invalid'), 'true');
  });
}

const isWell = (input) => eventually(async () => assert.equal(await input.getAttribute('aria-invalid'), null));

const noPanic = async (page) => assert.equal(
  await page.getByRole('heading', { name: 'Skimwright has stopped' }).count(),
  0,
);

for (const [stage, names] of Object.entries(fields)) {
  badTest(`text that is no figure is told at its field, and the plan goes on (${stage})`, async ({ open }) => {
    const { page, troubles } = await open();
    page.on('dialog', () => troubles.push('a script ran'));
    await toStage(page, 'Plan');
    const plan = await readFigures(page);
    await toStage(page, stage);
    for (const name of names) {
      const input = field(page, name);
      const before = await input.inputValue();
      for (const [text, message] of unread) {
        await input.fill(text);
        await saysWrong(page, input, message);
        assert.match(await note(page, input), /The plan goes on with/);
        if (stage === 'Plan') {
          assert.deepEqual(await readFigures(page), plan);
        }
      }
      await input.fill(before);
      await isWell(input);
    }
    await toStage(page, 'Plan');
    assert.deepEqual(await readFigures(page), plan);
    await noPanic(page);
    assert.deepEqual(troubles, []);
  });

  badTest(`a figure that cannot be is told at its field and in the findings (${stage})`, async ({ open }) => {
    const { page, troubles } = await open();
    await toStage(page, stage);
    for (const name of names) {
      const input = field(page, name);
      const before = await input.inputValue();
      for (const text of outside) {
        await input.fill(text);
        await saysWrong(page, input, /^This takes .* to .*\.$/);
        await toStage(page, 'Plan');
        const findings = page.getByRole('region', { name: 'Findings' });
        await findings.getByText(/cannot be planned with/).waitFor();
        assert.doesNotMatch(await page.getByRole('main').textContent(), /NaN|Infinity|\binf\b/);
        await toStage(page, stage);
        assert.equal(await input.inputValue(), text, 'what was typed stays');
      }
      await input.fill(before);
      await isWell(input);
    }
    await noPanic(page);
    assert.deepEqual(troubles, []);
  });
}

badTest('what was typed wrongly is still there after other stages and other choices', async ({ open }) => {
  const { page } = await open();
  const head = field(page, 'Head diameter');
  await head.fill('forty');
  await page.getByLabel('Material').selectOption('Brass');
  await button(page, 'Add a hole').click();
  await button(page, 'Plain hole').click();
  for (const stage of ['Wanted', 'Plan', 'Received']) {
    await toStage(page, stage);
  }
  assert.equal(await head.inputValue(), 'forty');
  await saysWrong(page, head, /The plan goes on with 40 mm/);
});

badTest('an emptied field asks for a figure, or takes the usual one', async ({ open }) => {
  const { page } = await open();
  await field(page, 'Head diameter').fill('');
  await saysWrong(page, field(page, 'Head diameter'), /^Type a figure\. The plan goes on with 40 mm\.$/);
  await toStage(page, 'Wanted');
  await field(page, 'Countersink diameter, 60°').fill('');
  await isWell(field(page, 'Countersink diameter, 60°'));
  await toStage(page, 'Plan');
  assert.match((await readFigures(page))[3], /none wanted/);
  await field(page, 'Kerf').fill('5');
  await field(page, 'Kerf').fill('');
  await isWell(field(page, 'Kerf'));
  assert.match(await field(page, 'Kerf').getAttribute('placeholder'), /^usual: 1\.30/);
});

badTest('zero where there must be metal stops that figure and no other', async ({ open }) => {
  const { page } = await open();
  await toStage(page, 'Plan');
  const plan = await readFigures(page);
  await toStage(page, 'Wanted');
  await field(page, 'Finished diameter').fill('0');
  await saysWrong(page, field(page, 'Finished diameter'), /^This takes /);
  await toStage(page, 'Plan');
  const now = await readFigures(page);
  assert.equal(now[0], plan[0], 'where to cut does not depend on the diameter');
  assert.match(now[2], /not yet/);
  assert.equal(await figures(page).getByRole('button', { name: 'Infeed per pass' }).isDisabled(), true);
});

badTest('a name of the job is text and nothing else', async ({ open }) => {
  const { page, troubles } = await open();
  page.on('dialog', () => troubles.push('a script ran'));
  const name = '<script>alert(1)</script>';
  await field(page, 'Name of the job').fill(name);
  await eventually(async () => assert.equal(await jobTitle(page).textContent(), name));
  await page.reload();
  assert.equal(await jobTitle(page).textContent(), name);
  await field(page, 'Name of the job').fill('w'.repeat(10_000));
  await eventually(async () => assert.equal((await jobTitle(page).textContent()).length, 80));
  assert.equal(await page.evaluate(() => document.scrollingElement.scrollWidth > innerWidth), false);
  await changeUnits(page, 'inch, decimal');
  assert.deepEqual(troubles, []);
});

const NOT_SAVED = /NOT saved: this browser keeps nothing/;

const withoutStorage = {
  full: () => {
    const refuse = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
    Storage.prototype.setItem = refuse;
    IDBFactory.prototype.open = refuse;
  },
  'switched off': () => {
    Object.defineProperty(window, 'localStorage', {
      get() {
        throw new DOMException('refused', 'SecurityError');
      },
    });
    IDBFactory.prototype.open = () => {
      throw new DOMException('refused', 'SecurityError');
    };
  },
};

for (const [name, spoil] of Object.entries(withoutStorage)) {
  badTest(`says so where storage is ${name}, and the address still holds the job`, async ({ open }) => {
    const { context, page, troubles } = await open();
    await context.addInitScript(spoil);
    await page.evaluate(() => localStorage.clear());
    await page.goto('about:blank');
    await page.goBack();
    await page.reload();
    await toStage(page, 'Received');
    const before = await page.evaluate(() => location.hash);
    await field(page, 'Head diameter').fill('44');
    await page.waitForFunction((hash) => location.hash !== hash && location.hash.length > 20, before);
    await page.getByText(NOT_SAVED).waitFor();
    await page.reload();
    // Nothing says that the address is this page's own, so it opens as a link does, on Plan.
    await toStage(page, 'Received');
    assert.equal(await field(page, 'Head diameter').inputValue(), '44');
    for (const stage of stages) {
      await toStage(page, stage);
    }
    await noPanic(page);
    assert.deepEqual(troubles, []);
  });
}

badTest('garbage in storage is told and put aside, not deleted', async ({ server, open }) => {
  const { context, page, troubles } = await open();
  await page.goto('about:blank');
  const other = await context.newPage();
  await other.goto(`${server.url}manifest.webmanifest`);
  await other.evaluate(() => localStorage.setItem('skimwright.job', 'garbage \u{1F529}'));
  await page.goto(server.url);
  await page.getByText('The job kept in this browser could not be read.').waitFor();
  assert.equal(await jobTitle(page).textContent(), 'Job without a name');
  assert.equal(await other.evaluate(() => localStorage.getItem('skimwright.job.aside')), 'garbage \u{1F529}');
  await button(page, 'All right').click();
  await field(page, 'Name of the job').fill('Another');
  await page.getByText('saved on this device').waitFor();
  await page.reload();
  await jobTitle(page).filter({ hasText: 'Another' }).waitFor();
  assert.equal(await page.getByText('could not be read').count(), 0);
  assert.deepEqual(troubles, []);
});
