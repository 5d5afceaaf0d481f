// The languages: choosing one, its numbers, nothing left in another, room for its longer words.

import assert from 'node:assert/strict';
import { after, before } from 'node:test';
import { sizes } from './helper/browser.mjs';
import { core } from './helper/core.mjs';
import { looksRight } from './helper/fits.mjs';
import {
  english, listener, openAll, reader, rootLanguage, texts, tongues, toStageOf,
} from './helper/languages.mjs';
import { clipboard, hashOf, putInAddress } from './helper/sharing.mjs';
import {
  button, changeUnits, dialog, eventually, examples, field, openExample, openMenu, pageTests, plain, stages, toStage, withoutPrintDialog,
} from './helper/steps.mjs';

const languageTest = pageTests({ before, after }, {
  size: sizes.smallPhone, permissions: ['clipboard-read', 'clipboard-write'],
});

const german = tongues.de;

const language = (page, label, name) => page.getByRole('group', { name: label })
  .getByRole('button', { name, exact: true });

async function chooseGerman(page) {
  await openMenu(page);
  await language(page, 'Language', 'Deutsch').click();
  await eventually(async () => assert.equal(
    await language(page, german.languages, 'Deutsch').getAttribute('aria-pressed'),
    'true',
  ));
  await button(dialog(page, german.menu), german.close).click();
}

languageTest('a chosen language stays, with its numbers, and is told to readers', async ({ open }) => {
  const { page } = await open();
  assert.equal(await rootLanguage(page), 'en');
  await openExample(page, 0);
  await chooseGerman(page);
  assert.equal(await rootLanguage(page), 'de');
  await page.reload();
  await page.getByRole('navigation').getByRole('button', { name: 'Soll' }).waitFor();
  assert.equal(await rootLanguage(page), 'de');
  await toStage(page, 'Plan');
  const lead = page.getByText('Vom freien Ende fällt ein Stück');
  // 71.5 − 56 − 1 − 1.6 falls off.
  assert.match(plain(await lead.textContent()), /ein Stück von 12,90 mm ab\. Ein Schaft von 56,00 mm/);
  // A number is read with either mark, and shown with that of the language.
  await toStage(page, 'Soll');
  for (const typed of ['25,0', '25.0']) {
    await field(page, 'Fertigdurchmesser').fill(typed);
    await toStage(page, 'Plan');
    await page.getByText(/wird auf ⌀25,0\smm gedreht/).waitFor();
    await toStage(page, 'Soll');
    await eventually(async () => assert.equal(await field(page, 'Fertigdurchmesser').inputValue(), '25,0'));
    await field(page, 'Fertigdurchmesser').fill('24');
  }
  // And back again, found by whoever reads no German.
  await button(page, german.menu).click();
  await language(page, german.languages, 'English').click();
  await dialog(page, 'Menu').waitFor();
  assert.equal(await rootLanguage(page), 'en');
});

for (const [locale, code, name] of [['de-AT', 'de', 'Soll'], ['es-MX', 'es', ''], ['fr-FR', 'en', 'Wanted']]) {
  languageTest(`the first visit with ${locale} is in ${code}`, async ({ open }) => {
    const { page } = await open('', { locale });
    assert.equal(await rootLanguage(page), code);
    await page.getByRole('navigation').getByRole('button', { name }).first().waitFor();
  });
}

languageTest('a view kept before there were languages is still read', async ({ open }) => {
  const { page } = await open();
  await page.evaluate(() => localStorage.setItem('skimwright.view', 'idp'));
  await page.reload();
  await page.getByRole('navigation').locator('[aria-current=page]', { hasText: 'Plan' }).waitFor();
  assert.equal(await page.evaluate(() => document.documentElement.dataset.theme), 'dark');
  assert.equal(await rootLanguage(page), 'en');
});

languageTest('what counts one takes the singular', async ({ open }) => {
  const { page } = await open();
  await chooseGerman(page);
  await toStage(page, 'Soll');
  await field(page, 'Fertigdurchmesser').fill('60');
  await page.getByText(/\b1 Hindernis\b|\b\d+ Hindernisse\b/).first().waitFor();
});

// A job whose name and notes are in no language, with a day at the lathe in its record.
async function jobWithRecord() {
  const { defaultJob, encode } = await core();
  const event = (at, what) => ({ at: 1_700_000_000 + 60 * at, struck: false, what });
  const reading = (at, place, value) => event(at, {
    reading: { of: { diameter: place }, value, instrument: null, temperature: '20.5 °C', confirmed: true },
  });
  const job = defaultJob();
  job.title = 'XK 7';
  job.wanted.tolerance = { upper: '0 mm', lower: '-0.05 mm' };
  const before = ['receive', 'hold', 'dial-in', 'cut-off', 'face', 'centre'];
  job.record = {
    by: 'M. T.',
    events: [
      ...before.map((step, at) => event(at, { step: { step, state: 'done' } })),
      reading(10, 'middle', '17.01 mm'),
      event(11, { cut: { kind: 'rough', dialled: '0.2 mm', reads: 'radius' } }),
      event(12, { note: 'XK 8' }),
      event(13, { step: { step: 'polish', state: { skipped: 'XK 9' } } }),
    ],
  };
  return `#${encode(job)}`;
}

// The ways through the page that are gone in every language. Each looks wherever something new is to be read.
const walks = Object.fromEntries(examples.map((title, index) => [`the stages of “${title}”`, async ({ page, tongue, look }) => {
  await button(page, tongue.menu).click();
  await look(page, 'menu');
  await dialog(page, tongue.menu).locator('.examples button').nth(index).click();
  for (const [at, stage] of stages.entries()) {
    await toStageOf(page, tongue, at);
    await openAll(page);
    await look(page, stage);
  }
}]));

walks['the keypad and the report'] = async ({ page, open, tongue, look }) => {
  await putInAddress(page, await jobWithRecord());
  await page.getByRole('heading', { level: 1, name: 'XK 7' }).waitFor();
  await toStageOf(page, tongue, 3);
  await openAll(page);
  await look(page, 'at the lathe');
  const pad = page.getByRole('dialog');
  const measure = async (signs) => {
    await button(page.getByRole('group', { name: tongue.acts }), tongue.measure).click();
    await pad.waitFor();
    for (const sign of signs) {
      await button(pad, sign === '.' ? tongue.mark : sign).click();
    }
  };
  await measure('');
  await look(page, 'keypad');
  await page.keyboard.press('Escape');
  await measure('99999.');
  await button(pad, tongue.keep).click();
  await look(page, 'keypad, wrong');
  await page.keyboard.press('Escape');
  await measure('16.123');
  assert.match(await pad.innerText(), tongue === tongues.en ? /16\.123/ : /16,123/);
  await button(pad, tongue.keep).click();
  await button(page, tongue.rightReading).waitFor();
  await look(page, 'doubt');
  await button(page, tongue.rightReading).click();
  await toStageOf(page, tongue, 4);
  await openAll(page);
  await look(page, 'report');
  await button(page, tongue.shareReport).click();
  await look(page, 'sharing the report');
  await button(dialog(page, tongue.share), tongue.copyLink).click();
  const link = await eventually(async () => {
    const copied = await clipboard(page);
    assert.match(hashOf(copied), /^#u/);
    return copied;
  });
  const back = await open(hashOf(link));
  await back.page.getByRole('heading', { level: 1, name: 'XK 7' }).waitFor();
  await look(back.page, 'handed back');
};

walks['the job sheet'] = async ({ open, tongue, look }) => {
  for (const index of examples.keys()) {
    const { page, context } = await open();
    await button(page, tongue.menu).click();
    await dialog(page, tongue.menu).locator('.examples button').nth(index).click();
    await toStageOf(page, tongue, 2);
    await withoutPrintDialog(page);
    await button(page, tongue.printSheet).click();
    await page.waitForFunction(() => window.asked);
    const pdf = await page.pdf({ format: 'A4' });
    assert.equal(pdf.toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g).length, 1, `pages of example ${index + 1}`);
    // The paper between its margins.
    await page.setViewportSize({ width: 718, height: 1000 });
    await page.emulateMedia({ media: 'print' });
    await page.getByRole('article', { name: tongue.sheet }).waitFor();
    await look(page, `job sheet ${index + 1}`, { width: 718, accessible: false });
    await context.close();
  }
};

walks['the owner’s page'] = async ({ page, open, tongue, look }) => {
  await button(page, tongue.menu).click();
  await dialog(page, tongue.menu).locator('.examples button').first().click();
  await toStageOf(page, tongue, 2);
  await button(page, tongue.share).click();
  const sharing = dialog(page, tongue.share);
  await look(page, 'sharing');
  await sharing.getByRole('radio', { name: tongue.owner }).check();
  await sharing.getByRole('checkbox', { name: tongue.rates }).check();
  await look(page, 'sharing with the owner');
  await button(sharing, tongue.copyLink).click();
  const [offered, answered] = [/^#o/, /^#r/];
  const copied = (from, kind) => eventually(async () => {
    const link = hashOf(await clipboard(from));
    assert.match(link, kind);
    return link;
  });
  const owner = (await open(await copied(page, offered))).page;
  await owner.getByRole('radio', { name: tongue.agreeWithChange }).waitFor();
  await look(owner, 'owner');
  await owner.getByRole('radio', { name: tongue.agreeWithChange }).check();
  await look(owner, 'owner, words asked for');
  await owner.getByRole('textbox', { name: tongue.change }).fill('XK 10');
  await owner.getByRole('textbox', { name: tongue.name }).fill('XK 11');
  await button(owner, tongue.copyAnswer).click();
  const answer = await copied(owner, answered);
  await look(owner, 'owner, answered');
  await owner.reload();
  await owner.getByRole('radio', { name: tongue.agreeWithChange }).waitFor();
  await look(owner, 'owner, answered before');
  await button(sharing, tongue.close).click();
  await putInAddress(page, answer);
  await page.getByText('XK 10').first().waitFor();
  await look(page, 'answer taken in');
};

// What English says on each way, heard once for all other languages.
const inEnglish = new Map();

async function heardOn(name, open) {
  if (!inEnglish.has(name)) {
    const { heard, look } = listener();
    const openHere = (address = '') => open(address, { locale: tongues.en.locale });
    await walks[name]({ ...await openHere(), open: openHere, tongue: tongues.en, look });
    inEnglish.set(name, heard);
  }
  return inEnglish.get(name);
}

// The stages of one example in each language are enough day by day: `SKIMWRIGHT_WALKS=all` walks through all of them.
const walked = { de: examples[0], es: examples[1] };
const isSpared = (name, code) => process.env.SKIMWRIGHT_WALKS !== 'all'
  && name.startsWith('the stages of') && !name.includes(walked[code]);

for (const name of Object.keys(walks)) {
  for (const code of ['de', 'es'].filter((each) => !isSpared(name, each))) {
    languageTest(`no English is left in ${tongues[code].own}, and it fits: ${name}`, async ({ open }) => {
      const heard = await heardOn(name, open);
      const { seen, wrong, look } = reader(code, heard);
      const openHere = (address = '') => open(address, { locale: tongues[code].locale });
      const here = await openHere();
      await walks[name]({ ...here, open: openHere, tongue: tongues[code], look });
      assert.deepEqual(wrong, []);
      assert.deepEqual(seen, [...heard.keys()], 'all was looked at');
      assert.deepEqual(here.troubles, []);
    });
  }
}

languageTest('the search for English finds it', async ({ open }) => {
  const { page } = await open();
  await openExample(page, 0);
  for (const stage of stages) {
    await toStage(page, stage);
    const found = (await texts(page)).filter((text) => english.test(text));
    assert.ok(found.length > 20, `${stage}: ${found.length}`);
  }
});

// Every word two fifths longer, as another language may have it: the page is changed, not what it says.
const lengthen = (page) => page.evaluate(() => {
  const longer = (text) => text.replace(/\p{L}{2,}/gu, (word) => word + word.slice(0, Math.ceil(word.length * 0.4)));
  window.longTexts ??= new WeakMap();
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  let count = 0;
  while (walker.nextNode()) {
    const node = walker.currentNode;
    const unit = node.parentElement.closest('svg, small, .field-unit, .formula');
    if (unit === null && window.longTexts.get(node) !== node.data && /\p{L}{2}/u.test(node.data)) {
      node.data = longer(node.data);
      window.longTexts.set(node, node.data);
      count += 1;
    }
  }
  return count;
});

languageTest('words two fifths longer fit a narrow phone', async ({ open }) => {
  const { page } = await open();
  await openMenu(page);
  await lengthen(page);
  await looksRight(page, 360, 'menu');
  await page.reload();
  await openExample(page, 0);
  for (const units of ['mm', 'inch, decimal']) {
    await page.reload();
    await changeUnits(page, units);
    for (const stage of stages) {
      await page.reload();
      await toStage(page, stage);
      await openAll(page);
      assert.ok(await lengthen(page) > 50);
      await looksRight(page, 360, `${stage}, ${units}`);
    }
  }
});
