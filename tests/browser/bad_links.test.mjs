// Links as mail programs and chats leave them: mended, or said in plain words to be spoilt; one's own jobs stay.

import assert from 'node:assert/strict';
import { after, before } from 'node:test';
import {
  answer, assertNoForeignRequests, hashOf, offer, ownerLine, paste, putInAddress, share,
} from './helper/sharing.mjs';
import {
  button, closeDialog, eventually, examples, field, jobTitle, openExample, pageTests, saved, toStage,
} from './helper/steps.mjs';

const linkTest = pageTests({ before, after }, { permissions: ['clipboard-read', 'clipboard-write'] });

const keptJob = (page) => page.evaluate(() => localStorage.getItem('skimwright.job'));

async function withOwnJob(open, title = 'My own job') {
  const visit = await open();
  await field(visit.page, 'Name of the job').fill(title);
  await saved(visit.page);
  await eventually(async () => assert.ok((await keptJob(visit.page))?.length > 20));
  return visit;
}

// A link of an example as each of its kinds.
async function linksOf(open, index = 0) {
  const shop = await open();
  await openExample(shop.page, index);
  await toStage(shop.page, 'Plan');
  await saved(shop.page);
  const job = `#${await keptJob(shop.page)}`;
  const offered = await offer(shop.page);
  const owner = await open(hashOf(offered));
  const reply = await answer(owner.page, 'I agree: do it so', 'As you say', 'Ada');
  return { shop, owner, job, offered: hashOf(offered), reply: hashOf(reply) };
}

const half = (hash) => Math.floor(hash.length / 2);

// What is done to a link on its way, and must be mended.
const mended = [
  ['wrapped over lines with spaces', (hash) => `${hash.slice(0, half(hash))}\r\n   ${hash.slice(half(hash))}`],
  ['quoted in a mail', (hash) => `${hash.slice(0, half(hash))}\n> ${hash.slice(half(hash))}`],
  ['broken by quoted-printable', (hash) => `${hash.slice(0, half(hash))}=\r\n${hash.slice(half(hash))}`],
  ['percent-encoded', (hash) => `#${[...hash.slice(1)].map((it) => `%${it.charCodeAt(0).toString(16)}`).join('')}`],
  ['with spaces that were percent-encoded', (hash) => `${hash.slice(0, half(hash))}%20%0D%0A${hash.slice(half(hash))}`],
  ['with an equals sign behind it', (hash) => `${hash}=`],
  ['with a coded equals sign behind it', (hash) => `${hash}=3D`],
  ['with a full stop behind it', (hash) => `${hash}.`],
  ['with a bracket and words behind it', (hash) => `${hash}) thanks`],
];

linkTest('what mail does to links is mended, of every kind', async ({ server, open }) => {
  const { shop, owner, job, offered, reply } = await linksOf(open);
  const mine = await withOwnJob(open);
  const own = await keptJob(mine.page);
  const reader = await open(offered);
  for (const [name, spoil] of mended) {
    // A job.
    await putInAddress(mine.page, spoil(job));
    await eventually(async () => assert.equal(await jobTitle(mine.page).textContent(), examples[0], name));
    assert.equal(await keptJob(mine.page), own, name);
    await button(mine.page, 'Back to mine').click();
    await eventually(async () => assert.equal(await jobTitle(mine.page).textContent(), 'My own job', name));
    // An offer.
    await reader.page.goto('about:blank');
    await reader.page.goto(server.url + spoil(offered));
    await reader.page.getByRole('heading', { name: 'Your answer' }).waitFor();
    assert.equal(await jobTitle(reader.page).textContent(), examples[0], name);
    // An answer.
    await putInAddress(shop.page, spoil(reply));
    await shop.page.getByText(/The owner’s answer is taken in|This answer was taken in before/).waitFor();
    await button(shop.page, 'All right').click();
    await shop.page.waitForFunction(() => location.hash.startsWith('#d'));
  }
  await ownerLine(shop.page).getByText(/^Agreed .*Ada/).waitFor();
  assertNoForeignRequests(server, [shop, owner, mine, reader]);
});

const changed = (hash) => hash.slice(0, half(hash)) + (hash[half(hash)] === 'A' ? 'B' : 'A') + hash.slice(half(hash) + 1);
const million = 1_000_000;

const spoilt = [
  ['cut', (hash) => hash.slice(0, -7), /cut short or changed on its way/],
  ['cut in the middle', (hash) => hash.slice(0, half(hash)), /cut short or changed on its way/],
  ['changed', changed, /cut short or changed on its way/],
  ['of a million characters', (hash) => hash + 'A'.repeat(million), /more than a job of this page can have/],
];

linkTest('what cannot be mended is said, and one’s own job stays', async ({ server, open }) => {
  const { job, offered, reply } = await linksOf(open);
  const mine = await withOwnJob(open);
  const own = await keptJob(mine.page);
  for (const [name, spoil, says] of spoilt) {
    for (const hash of [job, reply]) {
      await putInAddress(mine.page, spoil(hash));
      await mine.page.getByText(says).waitFor();
      assert.equal(await jobTitle(mine.page).textContent(), 'My own job', name);
      assert.equal(await keptJob(mine.page), own, name);
      await button(mine.page, 'All right').click();
      await mine.page.waitForFunction((hash_) => location.hash === hash_, `#${own}`);
    }
    // Links that go to somebody who plans nothing have a page that says so, and leave what is kept alone.
    for (const hash of [offered, offered.replace('#o', '#u')]) {
      await putInAddress(mine.page, spoil(hash));
      await mine.page.getByRole('heading', { name: 'This link cannot be opened' }).waitFor({ timeout: 30_000 });
      await mine.page.getByText(/It was cut or changed on its way/).waitFor();
      assert.equal(await keptJob(mine.page), own, name);
      await mine.page.goto(server.url);
      await eventually(async () => assert.equal(await jobTitle(mine.page).textContent(), 'My own job', name));
    }
  }
  assertNoForeignRequests(server, [mine]);
});

linkTest('answers to other jobs, old ones and tampered ones are told apart', async ({ server, open }) => {
  const one = await linksOf(open, 0);
  const other = await linksOf(open, 2);
  const mine = await withOwnJob(open);
  const own = await keptJob(mine.page);
  // To a job that is not here.
  await putInAddress(mine.page, one.reply);
  await mine.page.getByText('This answer belongs to no job on this device.').waitFor();
  assert.equal(await keptJob(mine.page), own);
  await putInAddress(one.shop.page, other.reply);
  await one.shop.page.getByText('This answer belongs to no job on this device.').waitFor();
  assert.equal(await jobTitle(one.shop.page).textContent(), examples[0]);
  assert.equal(await ownerLine(one.shop.page).getByText(/^Agreed/).count(), 0);

  // An answer that came late, after a newer one.
  const { page } = one.shop;
  await one.owner.page.waitForTimeout(1100);
  const newer = hashOf(await answer(one.owner.page, 'I decline: do not do it', 'Rather not', 'Ada'));
  await putInAddress(page, newer);
  await ownerLine(page).getByText(/^Declined/).waitFor();
  await putInAddress(page, one.reply);
  await page.getByText('A later answer was taken in before. This one is left aside.').waitFor();
  await ownerLine(page).getByText(/^Declined/).waitFor();

  // An answer to an offer that was replaced.
  await toStage(page, 'Wanted');
  await field(page, 'Finished length').fill('51');
  await toStage(page, 'Plan');
  await offer(page);
  await one.owner.page.waitForTimeout(1100);
  const toOld = hashOf(await answer(one.owner.page, 'I agree: do it so', 'After all', 'Ada'));
  await putInAddress(page, toOld);
  await ownerLine(page).getByText(/^Agreed .*, to an older offer: a newer one waits for an answer\.$/).waitFor();

  // Whatever character of an answer is changed, it is none.
  for (let at = 1; at < toOld.length; at += Math.ceil(toOld.length / 12)) {
    const tampered = toOld.slice(0, at) + (toOld[at] === 'Q' ? 'R' : 'Q') + toOld.slice(at + 1);
    await paste(page, tampered);
    await share(page).getByText(/cut or changed on its way|from a newer version|There is no answer in this text/).waitFor();
    await closeDialog(page, 'Share');
  }
  assertNoForeignRequests(server, [one.shop, one.owner, other.shop, mine]);
});
