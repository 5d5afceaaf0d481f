// A job is offered to the part's owner by a link, he answers by a link, and the answer is taken in.

import assert from 'node:assert/strict';
import { after, before } from 'node:test';
import { assertAccessible } from './helper/accessibility.mjs';
import { sizes } from './helper/browser.mjs';
import {
  answer, assertNoForeignRequests, clipboard, hashOf, isWide, offer, ownerLine, paste, putInAddress, share,
} from './helper/sharing.mjs';
import {
  button, closeDialog, dialog, eventually, examples, field, jobTitle, openExample, pageTests, plain, saved, toStage,
} from './helper/steps.mjs';

const ownerTest = pageTests({ before, after }, { permissions: ['clipboard-read', 'clipboard-write'] });

async function makeOffer(open, example = 0) {
  const shop = await open();
  await openExample(shop.page, example);
  await toStage(shop.page, 'Plan');
  const link = await offer(shop.page);
  return { shop, link };
}

ownerTest('offered, agreed, taken in, and warned of once the job is changed', async ({ server, open }) => {
  const { shop, link } = await makeOffer(open);
  await ownerLine(shop.page).getByText(/^Shown to the owner/).waitFor();

  const owner = await open(link.slice(server.url.length));
  assert.equal(await jobTitle(owner.page).textContent(), examples[0]);
  assert.equal(await owner.page.getByRole('navigation').count(), 0, 'nothing of the planner is shown');
  for (const name of ['Your part as it is now', 'Your part afterwards', 'What is gone for good', 'Time and cost']) {
    await owner.page.getByRole('heading', { name }).waitFor();
  }
  await owner.page.getByRole('img', { name: 'Your part afterwards' }).waitFor();
  assert.match(plain(await owner.page.locator('main').innerText()), /About \d+ % of the strength against bending is kept/);
  const reply = await answer(owner.page, 'I agree: do it so', 'Mind the bore', 'Ada');
  assert.match(hashOf(reply), /^#r/);

  // It is remembered, and the same answer is the same link.
  await owner.page.reload();
  await owner.page.getByText(/^You agreed \(/).waitFor();
  await button(owner.page, 'Copy the answer').click();
  await owner.page.getByText('Copied. Now paste it').waitFor();
  assert.equal(await clipboard(owner.page), reply);

  await putInAddress(shop.page, hashOf(reply));
  await ownerLine(shop.page).getByText(/^Agreed \(.*\) by .*Ada.*\.$/).waitFor();
  await ownerLine(shop.page).getByText('Mind the bore').waitFor();
  await shop.page.getByText('The owner’s answer is taken in').waitFor();
  await putInAddress(shop.page, hashOf(reply));
  await paste(shop.page, reply);
  await shop.page.getByText('This answer was taken in before.').waitFor();
  await assertAccessible(shop.page);

  await toStage(shop.page, 'Wanted');
  await field(shop.page, 'Finished length').fill('47');
  await toStage(shop.page, 'Cut');
  await ownerLine(shop.page).getByText(/but the job was changed since: offer it again/).waitFor();
  await button(ownerLine(shop.page), 'Show what was offered').click();
  const shown = dialog(shop.page, 'What the owner was shown');
  await shown.getByRole('heading', { name: 'What is gone for good' }).waitFor();
  assert.equal(await shown.getByRole('radio').count(), 0, 'it is only looked at');
  await closeDialog(shop.page, 'What the owner was shown');
  await button(ownerLine(shop.page), 'Offer it again').click();
  assert.equal(await share(shop.page).getByRole('radio', { name: 'The part’s owner' }).isChecked(), true);
  assertNoForeignRequests(server, [shop, owner]);
});

ownerTest('an answer opened anew finds its job among the kept ones', async ({ server, open }) => {
  const { shop, link } = await makeOffer(open);
  await saved(shop.page);
  const owner = await open(link.slice(server.url.length));
  const reply = await answer(owner.page, 'I decline: do not do it');
  await openExample(shop.page, 2);
  await saved(shop.page);
  await shop.page.goto('about:blank');
  await shop.page.goto(reply);
  await ownerLine(shop.page).getByText(/^Declined/).waitFor();
  assert.equal(await jobTitle(shop.page).textContent(), examples[0]);
  // On a device that knows nothing of it.
  const stranger = await open(reply.slice(server.url.length));
  await stranger.page.getByText('This answer belongs to no job on this device.').waitFor();
});

ownerTest('the dialog says what is in the link, and what is not', async ({ server, open }) => {
  const shop = await open();
  await openExample(shop.page, 0);
  await button(shop.page, 'Share').click();
  const lists = () => share(shop.page).innerText();
  assert.match(await lists(), /In the link[^]*rates[^]*Not in the link/);
  await share(shop.page).getByRole('radio', { name: 'The part’s owner' }).check();
  assert.match(await lists(), /Not in the link[^]*Your rates/);
  await share(shop.page).getByRole('checkbox', { name: 'Your rates' }).check();
  assert.doesNotMatch(await lists(), /Not in the link[^]*Your rates/);
  await assertAccessible(shop.page);
  await button(share(shop.page), 'Show as QR code').click();
  const code = share(shop.page).getByRole('img', { name: 'QR code of the link' });
  await code.waitFor();
  const { width } = await code.boundingBox();
  assert.ok(width > 280, `${width}`);
  await closeDialog(shop.page, 'Share');
  await shop.page.setViewportSize(sizes.smallPhone.viewport);
  await button(shop.page, 'Share').click();
  assert.equal(await isWide(shop.page), false);
  assertNoForeignRequests(server, [shop]);
});

ownerTest('bad answers change nothing and say why', async ({ open }) => {
  const { shop, link } = await makeOffer(open);
  const owner = await open(`#${hashOf(link).slice(1)}`);
  const reply = await answer(owner.page, 'I agree, with a change', 'Rather 1 mm longer');
  const other = await makeOffer(open, 2);
  const stranger = await open(`#${hashOf(other.link).slice(1)}`);
  const foreign = await answer(stranger.page, 'I agree: do it so');
  const told = (text) => share(shop.page).getByText(text).waitFor();
  for (const [text, says] of [
    ['', 'There is nothing to take in yet.'],
    ['hello there', 'There is no answer in this text.'],
    [reply.slice(0, -6), 'The answer was cut or changed on its way.'],
    [`${reply.slice(0, -6)}AAAAAA`, 'The answer was cut or changed on its way.'],
    [foreign, 'This answer belongs to no job on this device.'],
    [link, 'This is no answer but another link.'],
    ['x '.repeat(500_000), 'This is far longer than any answer.'],
  ]) {
    await paste(shop.page, text);
    await told(says);
    await closeDialog(shop.page, 'Share');
  }
  const { href, hash } = new URL(reply);
  const at = href.length - Math.floor(hash.length / 2);
  await paste(shop.page, `> He wrote:\n> <${encodeURI(href.slice(0, at))}=\n>  ${href.slice(at)}> thanks`);
  await ownerLine(shop.page).getByText(/^Agreed with a change/).waitFor();
  await ownerLine(shop.page).getByText('Rather 1 mm longer').waitFor();
});

const hostile = [
  '<img src=x onerror=alert(1)><b>bold</b>',
  `\u{202e}evil\u{202c} ${'W'.repeat(60)}`,
  `${'🛠️'.repeat(8)}\u{200b}\u{200d}\u{feff}`,
  '"\'&lt;script&gt;</textarea><script>x()</script>',
];

ownerTest('hostile words are words, and break nothing', async ({ server, open }) => {
  const shop = await open('', { size: sizes.smallPhone });
  for (const text of hostile) {
    await toStage(shop.page, 'Received');
    await field(shop.page, 'Name of the job').fill(text);
    await toStage(shop.page, 'Plan');
    const link = await offer(shop.page);
    const owner = await open(link.slice(server.url.length), { size: sizes.smallPhone });
    assert.equal(await isWide(owner.page), false, text);
    const reply = await answer(owner.page, 'I have a question first', text.repeat(3), text);
    assert.equal(await isWide(owner.page), false, text);
    await putInAddress(shop.page, hashOf(reply));
    await ownerLine(shop.page).getByText(/^A question was asked/).waitFor();
    assert.equal(await isWide(shop.page), false, text);
    assert.equal(await shop.page.locator('main script, main img[src=x], main b').count(), 0);
    assert.equal(await owner.page.locator('main script, main img[src=x], main b').count(), 0);
    assert.deepEqual(owner.troubles, []);
  }
  assert.deepEqual(shop.troubles, []);
});

ownerTest('the owner’s page is read by everyone, by keys alone, on a small phone', async ({ server, open }) => {
  const { link } = await makeOffer(open);
  for (const size of [sizes.smallPhone, sizes.desk]) {
    for (const colorScheme of ['light', 'dark']) {
      const owner = await open(link.slice(server.url.length), { size, colorScheme });
      await owner.page.getByRole('img', { name: 'Your part afterwards' }).waitFor();
      await assertAccessible(owner.page);
      assert.equal(await isWide(owner.page), false);
      await owner.context.close();
    }
  }
  const owner = await open(link.slice(server.url.length), { size: sizes.smallPhone });
  const keys = async (...names) => {
    for (const name of names) {
      await owner.page.keyboard.press(name);
    }
  };
  // Print, the choices, the words, the name, the ways.
  await keys('Tab', 'Tab', 'Space', 'ArrowDown');
  assert.equal(await owner.page.getByRole('radio', { name: 'I agree, with a change' }).isChecked(), true);
  await owner.page.getByText('Write down what you want changed').waitFor();
  await keys('Tab');
  await owner.page.keyboard.type('Longer');
  await keys('Tab', 'Tab', 'Tab', 'Enter');
  await owner.page.getByText('Copied. Now paste it').waitFor();
  const mail = await owner.page.getByRole('link', { name: 'Answer by mail' }).getAttribute('href');
  assert.equal(decodeURIComponent(mail.split('body=')[1]), await clipboard(owner.page));
  assert.deepEqual(owner.troubles, []);
});

ownerTest('a cut link says so in plain words', async ({ server, open }) => {
  const { link } = await makeOffer(open);
  const owner = await open(link.slice(server.url.length, -9));
  assert.equal(await jobTitle(owner.page).textContent(), 'This link cannot be opened');
  await putInAddress(owner.page, hashOf(link));
  await eventually(async () => assert.equal(await jobTitle(owner.page).textContent(), examples[0]));
});
