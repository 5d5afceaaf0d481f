// Kills the browser at any moment of typing, again and again in one profile: what the screen has called saved must be
// there afterwards. `SKIMWRIGHT_KILLS` says how often; `SKIMWRIGHT_SEED` draws other moments.

import assert from 'node:assert/strict';
import { spawn } from 'node:child_process';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test } from 'node:test';
import { chromium } from 'playwright-core';
import { findChromium, quiet } from './helper/browser.mjs';
import { button, dialog, newJob } from './helper/steps.mjs';
import { startServer } from './helper/server.mjs';

const KILLS = Number(process.env.SKIMWRIGHT_KILLS ?? 10);
const SEED = Number(process.env.SKIMWRIGHT_SEED ?? 1);

// A generator of Marsaglia's xorshift family, so that the same seed types the same and kills at the same moments.
function random(seed) {
  let state = seed >>> 0 || 1;
  return (below) => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) % below;
  };
}

const pause = (milliseconds) => new Promise((done) => {
  setTimeout(done, milliseconds);
});

async function start(profile) {
  const settings = [...quiet, '--remote-debugging-port=0', `--user-data-dir=${profile}`, '--disable-breakpad'];
  // A group of its own, so that all of its processes can be killed at once.
  const child = spawn(findChromium(), [...settings, 'about:blank'], { detached: true, stdio: 'ignore' });
  const ended = new Promise((done) => {
    child.on('exit', done);
  });
  const port = join(profile, 'DevToolsActivePort');
  for (;;) {
    const text = await readFile(port, 'utf8').catch(() => '');
    const browser = text.includes('\n')
      && await chromium.connectOverCDP(`http://127.0.0.1:${text.split('\n')[0]}`).catch(() => null);
    if (browser) {
      const kill = async () => {
        process.kill(-child.pid, 'SIGKILL');
        await ended;
        await rm(port, { force: true });
      };
      return { browser, kill };
    }
    await pause(20);
  }
}

// Tells every time that the screen says "saved" what stands on it then.
function watch() {
  const look = () => {
    const said = document.querySelector('.saved')?.textContent;
    if (said === 'saved on this device') {
      window.toldSaved(document.querySelector('h1').textContent);
    }
  };
  addEventListener('DOMContentLoaded', () => {
    new MutationObserver(look).observe(document.body, { subtree: true, childList: true, characterData: true });
  });
}

const LETTERS = 'abcdefghijklmnopqrstuvwxyz';

test(`the browser is killed ${KILLS} times while somebody types`, { timeout: 3_600_000 }, async (context) => {
  const draw = random(SEED);
  const profile = await mkdtemp(join(tmpdir(), 'skimwright-kill-'));
  const server = await startServer();
  const tally = { kills: 0, typed: 0, confirmed: 0, lost: 0, unconfirmed: 0, thereAllTheSame: 0 };
  // Every title that the open job had, as it was typed, and the place of the last that the screen called saved.
  let history = ['Job without a name'];
  let safe = -1;
  // The last title of each job that was left, all confirmed.
  const left = [];
  let running = null;
  const begun = performance.now();
  try {
    for (let round = 0; round <= KILLS; round += 1) {
      running = await start(profile);
      const page = await running.browser.contexts()[0].newPage();
      page.setDefaultTimeout(15_000);
      let typing = false;
      await page.exposeFunction('toldSaved', (title) => {
        const at = history.lastIndexOf(title);
        if (typing && at > safe) {
          tally.confirmed += at - safe;
          safe = at;
        }
      });
      await page.addInitScript(watch);
      await page.goto(server.url);
      const title = page.getByRole('heading', { level: 1 });
      if (safe >= 0) {
        // Both copies have been read when something is called saved.
        await page.getByText('saved on this device', { exact: true }).waitFor();
        const shown = await title.textContent();
        const at = history.lastIndexOf(shown);
        tally.lost += Math.max(0, safe - at);
        assert.ok(at >= safe, `round ${round}: “${history[safe]}” was called saved, “${shown}” is there`);
        tally.unconfirmed += history.length - 1 - safe;
        tally.thereAllTheSame += at - safe;
        history = [shown];
        safe = 0;
      }
      if (round === KILLS) {
        break;
      }
      typing = true;
      let begins = false;
      if (safe >= 0 && round % 7 === 6) {
        left.push(history[0]);
        await newJob(page);
        history = ['Job without a name'];
        safe = -1;
        begins = true;
      }
      const input = page.getByRole('textbox', { name: 'Name of the job', exact: true });
      const first = `Kill ${round} `;
      history.push(first.trim(), first);
      await input.fill(first);
      if (begins) {
        // A job that nothing was ever saved of may be gone, and the one before open again.
        await page.getByText('saved on this device', { exact: true }).waitFor();
      }
      const moment = pause(30 + draw(900)).then(() => {
        typing = false;
        return running.kill();
      });
      let text = first;
      while (typing && text.length < 75) {
        const letter = LETTERS[draw(LETTERS.length)];
        text += letter;
        history.push(text);
        tally.typed += 1;
        await page.keyboard.press(letter).catch(() => {});
        await pause(draw(40));
      }
      await moment;
      running = null;
      tally.kills += 1;
    }
    // Every job that was left is in the list with its last title.
    const page = running.browser.contexts()[0].pages().at(-1);
    await button(page, 'Jobs').click();
    const listed = await dialog(page, 'Jobs').locator('.jobs-open .jobs-title').allTextContents();
    for (const title of left) {
      assert.ok(listed.includes(title.trim()) || listed.includes(title), `“${title}” is no longer in the list`);
    }
    tally.jobsLeft = left.length;
    tally.seconds = Math.round((performance.now() - begun) / 1000);
    context.diagnostic(JSON.stringify(tally));
    assert.equal(tally.lost, 0);
    assert.ok(tally.confirmed > KILLS, 'too little was ever called saved for this to say anything');
  } finally {
    await running?.kill();
    await server.stop();
    await rm(profile, { recursive: true, force: true });
  }
});
