// A whole story of two people and two browsers: a job is offered, agreed to, changed, cut and handed back.

import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { after, before } from 'node:test';
import { assertAccessible } from './helper/accessibility.mjs';
import { sizes } from './helper/browser.mjs';
import { core } from './helper/core.mjs';
import { act, cutToSize, workUpTo } from './helper/lathe.mjs';
import {
  answer, assertNoForeignRequests, clipboard, hashOf, isWide, offer, ownerLine, putInAddress, share,
} from './helper/sharing.mjs';
import {
  button, closeDialog, dialog, eventually, examples, field, jobTitle, openExample, pageTests, plain, saved, toStage, withoutPrintDialog,
} from './helper/steps.mjs';

const storyTest = pageTests({ before, after }, {
  size: sizes.smallPhone, permissions: ['clipboard-read', 'clipboard-write'],
});

const agreedHolds = /^Agreed \([^)]*\) by \u{2068}Ada Miller\u{2069}\.$/u;

// All that a browser keeps of jobs.
const keptJobs = (page) => page.evaluate(() => new Promise((done, failed) => {
  const kept = Object.keys(localStorage).filter((key) => /^skimwright\.job/.test(key));
  const opening = indexedDB.open('skimwright');
  opening.onerror = failed;
  opening.onsuccess = () => {
    const database = opening.result;
    if (!database.objectStoreNames.contains('jobs')) {
      database.close();
      done({ kept, jobs: [] });
      return;
    }
    const asking = database.transaction('jobs').objectStore('jobs').getAll();
    asking.onsuccess = () => {
      database.close();
      done({ kept, jobs: asking.result });
    };
  };
}));

// What stands under a heading of the dialog's lists.
const listed = async (page, heading) => plain(
  await share(page).getByRole('heading', { name: heading, exact: true }).locator('..').innerText(),
).split('\n').slice(1).map((line) => line.trim()).filter(Boolean);

async function copyLink(page) {
  await button(share(page), 'Copy the link').click();
  await share(page).getByText('The link is copied.').waitFor();
  const link = await clipboard(page);
  const said = plain(await share(page).getByText(/^The link has \d+ characters/).innerText());
  assert.equal(Number(said.match(/\d+/)[0]), link.length);
  return link;
}

storyTest('a job is offered, agreed to, changed and changed back, cut, and handed back', async ({ server, open }) => {
  const shop = await open();
  await openExample(shop.page, 0);
  await button(shop.page, 'All right').click();
  await toStage(shop.page, 'Wanted');
  await field(shop.page, 'Finished length').fill('52');
  await toStage(shop.page, 'Plan');
  await saved(shop.page);

  // The machinist sees what goes into the link before he gives it away.
  await button(shop.page, 'Share').click();
  await share(shop.page).getByRole('radio', { name: 'The part’s owner' }).check();
  const inside = await listed(shop.page, 'In the link');
  const outside = await listed(shop.page, 'Not in the link');
  assert.ok(inside.includes('The part, and what is wanted of it') && inside.includes('Time and cost from low to high'), inside.join());
  assert.ok(outside.includes('Your rates') && outside.includes('Your other jobs'), outside.join());
  const link = await copyLink(shop.page);
  await closeDialog(shop.page, 'Share');
  await ownerLine(shop.page).getByText(/^Shown to the owner .* No answer was taken in yet\.$/).waitFor();

  // The owner reads it on his phone.
  const owner = await open(link.slice(server.url.length));
  assert.equal(await jobTitle(owner.page).textContent(), examples[0]);
  for (const name of ['Your part as it is now', 'Your part afterwards']) {
    await owner.page.getByRole('img', { name }).waitFor();
  }
  const told = async (heading) => plain(
    await owner.page.getByRole('heading', { name: heading }).locator('..').innerText(),
  );
  assert.match(await told('What is gone for good'), /is cut off[^]*None of this can be put back/);
  assert.match(await told('What stays'), /⌀25(\.0+)? mm and 52(\.0+)? mm long/);
  assert.match(await told('How strong it is afterwards'), /About \d+ % of the strength against bending is kept/);
  assert.match(await told('What to know before you agree'), /\w{10}|[^]{60}/);
  assert.match(await told('Time and cost'), /Time on the machine[^]*\d+ min[^]*Cost/);
  await owner.page.getByText('All figures here are estimates').waitFor();
  assert.equal(await isWide(owner.page), false);
  await assertAccessible(owner.page);
  const reply = await answer(owner.page, 'I agree: do it so', 'Mind the bore', 'Ada Miller');

  // The machinist sees which version was agreed to.
  await putInAddress(shop.page, hashOf(reply));
  await ownerLine(shop.page).getByText(agreedHolds).waitFor();
  await ownerLine(shop.page).getByText('Mind the bore').waitFor();
  await button(ownerLine(shop.page), 'Show what was offered').click();
  const version = dialog(shop.page, 'What the owner was shown');
  await version.getByText(/52(\.0+)?\u{a0}mm long/u).waitFor();
  await closeDialog(shop.page, 'What the owner was shown');

  // A change is warned of, and no longer once it is taken back.
  await toStage(shop.page, 'Wanted');
  await field(shop.page, 'Finished length').fill('51');
  for (const stage of ['Plan', 'Cut']) {
    await toStage(shop.page, stage);
    await ownerLine(shop.page).getByText(/^Agreed .*, but the job was changed since: offer it again\.$/).waitFor();
  }
  await button(ownerLine(shop.page), 'Offer it again').waitFor();
  await toStage(shop.page, 'Plan');
  await button(shop.page, 'Undo').click();
  await ownerLine(shop.page).getByText(agreedHolds).waitFor();
  assert.equal(await button(ownerLine(shop.page), 'Offer it again').count(), 0);

  // The part is cut. What is entered at the lathe is no change of the job.
  await toStage(shop.page, 'Cut');
  await ownerLine(shop.page).getByText(agreedHolds).waitFor();
  const { cuts, diameter } = await cutToSize(shop.page);
  assert.ok(cuts > 1);
  await workUpTo(shop.page, 'Clean and oil');
  await act(shop.page, 'Done').click();
  await shop.page.getByText('All steps are done or left out.').waitFor();
  await ownerLine(shop.page).getByText(agreedHolds).waitFor();

  // It goes back with its report.
  await toStage(shop.page, 'Hand back');
  const line = /^Agreed by \u{2068}Ada Miller\u{2069}, .*, to what was shown on .*; in the owner’s words: \u{2068}Mind the bore\u{2069}\./u;
  const report = (page) => page.getByRole('region', { name: 'The owner’s answer' }).getByText(line);
  await report(shop.page).waitFor();
  await assertAccessible(shop.page);
  await button(shop.page, 'Share the report’s link').click();
  assert.equal(await share(shop.page).getByRole('radio', { name: 'Whoever gets the part back' }).isChecked(), true);
  const goesBack = await listed(shop.page, 'In the link');
  assert.ok(goesBack.some((it) => /^The record at the lathe, with times: \d+ entries$/.test(it)), goesBack.join());
  assert.ok(goesBack.some((it) => /The owner’s answers/.test(it)), goesBack.join());
  const back = await copyLink(shop.page);
  console.log(`link of a whole record handed back: ${hashOf(back).length - 1} characters, ${cuts} cuts`);
  await closeDialog(shop.page, 'Share');

  // The owner opens it in the browser that he answered in.
  const before = await keptJobs(owner.page);
  await owner.page.goto('about:blank');
  await owner.page.goto(back);
  await owner.page.getByText('This part is handed back to you').waitFor();
  assert.equal(await jobTitle(owner.page).textContent(), examples[0]);
  const verdicts = owner.page.getByRole('region', { name: 'In tolerance?' });
  const proven = verdicts.getByRole('listitem').filter({ hasText: /^InDiameter/ }).filter({ hasText: diameter.toFixed(3) });
  await eventually(async () => assert.equal(await proven.count(), 3, 'near the shoulder, in the middle, at the free end'));
  await report(owner.page).waitFor();
  assert.match(await report(owner.page).textContent(), /cannot be told from this report\.$/);
  assert.equal(await isWide(owner.page), false);
  await assertAccessible(owner.page);
  await owner.page.waitForTimeout(1500);
  assert.deepEqual(await keptJobs(owner.page), before, 'nothing of it was kept');
  assert.deepEqual(before.jobs, []);
  await owner.page.goto(server.url);
  await eventually(async () => assert.equal(await jobTitle(owner.page).textContent(), 'Job without a name'));
  assertNoForeignRequests(server, [shop, owner]);
});

storyTest('every other answer is taken in as what it is, and stands on the job sheet', async ({ server, open }) => {
  const shop = await open('', { size: sizes.desk });
  await openExample(shop.page, 1);
  await toStage(shop.page, 'Plan');
  const link = await offer(shop.page);
  const owner = await open(link.slice(server.url.length));
  await withoutPrintDialog(shop.page);
  for (const [choice, words, line, sheet] of [
    ['I have a question first', 'Will the thread stay?', /^A question was asked \(/, /asked: .*Will the thread stay/],
    ['I agree, with a change', 'A larger radius', /^Agreed with a change \(.*offer it again\.$/, /change asked: .*A larger radius/],
    ['I decline: do not do it', 'Too dear', /^Declined \(/, /Declined by .*Ada.*Too dear/],
  ]) {
    // Answers are told apart by their second.
    await owner.page.waitForTimeout(1100);
    const reply = await answer(owner.page, choice, words, 'Ada');
    await putInAddress(shop.page, hashOf(reply));
    await ownerLine(shop.page).getByText(line).waitFor();
    await ownerLine(shop.page).getByText(words).waitFor();
    await button(shop.page, 'Print the job sheet').click();
    await shop.page.emulateMedia({ media: 'print' });
    assert.match(plain(await shop.page.getByRole('article', { name: 'Job sheet' }).textContent()), sheet);
    await shop.page.emulateMedia({ media: 'screen' });
  }
  assertNoForeignRequests(server, [shop, owner]);
});

storyTest('what the machinist ticks the owner sees, on the screen and on paper', async ({ server, open }) => {
  const { defaultJob, encode } = await core();
  const job = defaultJob();
  job.title = 'A shank';
  job.shop.machine.name = 'The old one';
  job.shop.edge.name = 'Right-hand knife';
  job.shop.rates = { currency: 'EUR', per_hour: '60 ¤', least: null, consumables: '2.5 ¤', postage: null };
  job.shop.instruments = [{ name: 'Micrometer of grandfather' }];
  const shop = await open(`#${encode(job)}`, { size: sizes.desk });
  await button(shop.page, 'Share').click();
  await share(shop.page).getByRole('radio', { name: 'The part’s owner' }).check();
  const bare = await copyLink(shop.page);
  await share(shop.page).getByRole('checkbox', { name: 'Your rates' }).check();
  await share(shop.page).getByRole('checkbox', { name: /^Lathe, tool/ }).check();
  const ticked = await copyLink(shop.page);
  const rates = /What the cost is reckoned with[^]*60[^]*EUR[^]*2\.50?[^]*EUR/;
  const with_ = /What it is done with[^]*The old one[^]*Right-hand knife[^]*Micrometer of grandfather/;
  for (const [link, is] of [[bare, false], [ticked, true]]) {
    const owner = await open(link.slice(server.url.length));
    await owner.page.getByRole('heading', { name: 'Time and cost' }).waitFor();
    for (const media of ['screen', 'print']) {
      await owner.page.emulateMedia({ media });
      const text = plain(await owner.page.locator('main').innerText());
      assert.equal(rates.test(text), is, text);
      assert.equal(with_.test(text), is, text);
    }
    await owner.page.emulateMedia({ media: 'screen' });
    await assertAccessible(owner.page);
    assert.equal(await isWide(owner.page), false);
    assert.deepEqual(owner.troubles, []);
  }
});

storyTest('the links of the examples are short', async ({ server, open }) => {
  const shop = await open('', { size: sizes.desk });
  for (const [index, title] of examples.entries()) {
    await openExample(shop.page, index);
    await toStage(shop.page, 'Plan');
    await button(shop.page, 'Share').click();
    const plainLink = await copyLink(shop.page);
    await closeDialog(shop.page, 'Share');
    const offered = await offer(shop.page);
    const owner = await open(offered.slice(server.url.length));
    const reply = await answer(owner.page, 'I agree: do it so', 'Mind the bore', 'Ada');
    await owner.context.close();
    await putInAddress(shop.page, hashOf(reply));
    await ownerLine(shop.page).getByText(/^Agreed/).waitFor();
    await toStage(shop.page, 'Hand back');
    await button(shop.page, 'Share the report’s link').click();
    const back = await copyLink(shop.page);
    await closeDialog(shop.page, 'Share');
    await toStage(shop.page, 'Plan');
    const lengths = [plainLink, offered, reply, back].map((it) => hashOf(it).length - 1);
    console.log(`${title}: plain ${lengths[0]}, offer ${lengths[1]}, answer ${lengths[2]}, handed back ${lengths[3]} characters`);
    // What chats leave whole: common practice, no source.
    assert.ok(lengths.every((it) => it < 2000), lengths.join());
  }
  assertNoForeignRequests(server, [shop]);
});

storyTest('a record that is too long for a link goes without it, or as a file', async ({ server, open }) => {
  const { defaultJob } = await core();
  const job = defaultJob();
  job.title = 'A long story';
  job.record.events = Array.from({ length: 250 }, (_, at) => ({
    at: 1_700_000_000 + at, struck: false, what: { note: `${at} ${'x'.repeat(390)}` },
  }));
  const shop = await open('', { size: sizes.desk });
  const file = JSON.stringify({ file: 'skimwright-jobs', version: 1, jobs: [{ id: 'long', job }] });
  await button(shop.page, 'Jobs').click();
  const list = dialog(shop.page, 'Jobs');
  await list.getByLabel('Open a file').setInputFiles({ name: 'jobs.json', mimeType: 'application/json', buffer: Buffer.from(file) });
  await list.getByText('A long story: taken in.').waitFor();
  await list.getByRole('button', { name: /^A long story/ }).first().click();
  await eventually(async () => assert.equal(await jobTitle(shop.page).textContent(), 'A long story'));
  if (await list.count() > 0) {
    await closeDialog(shop.page, 'Jobs');
  }
  await button(shop.page, 'Share').click();
  await share(shop.page).getByText(/The record at the lathe is too long for a link/).waitFor();
  assert.ok((await listed(shop.page, 'Not in the link')).some((it) => /record/.test(it)));
  assert.ok(!(await listed(shop.page, 'In the link')).some((it) => /record/.test(it)));
  const link = await copyLink(shop.page);
  assert.ok(link.length < 1000, `${link.length}`);
  const savedFile = async () => {
    const [download] = await Promise.all([
      shop.page.waitForEvent('download'), button(share(shop.page), 'Save as a file').click(),
    ]);
    return { name: download.suggestedFilename(), jobs: JSON.parse(await readFile(await download.path(), 'utf8')).jobs };
  };
  const whole = await savedFile();
  assert.equal(whole.name, 'a-long-story-job.json');
  assert.equal(whole.jobs[0].job.record.events.length, 250);
  await assertAccessible(shop.page);
  await share(shop.page).getByRole('radio', { name: 'Whoever gets the part back' }).check();
  await share(shop.page).getByText(/it is too long for a link\. Save it as a file instead/).waitFor();
  assert.equal(await button(share(shop.page), 'Copy the link').count(), 0);
  const back = await savedFile();
  assert.equal(back.name, 'a-long-story-handed-back.json');
  assert.equal(back.jobs[0].job.record.events.length, 250);
  const colleague = await open(link.slice(server.url.length));
  assert.equal(await jobTitle(colleague.page).textContent(), 'A long story');
  assert.deepEqual(shop.troubles, []);
});
