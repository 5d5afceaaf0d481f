// The shell around the page: start, policy, use without a network, updates, and the rescue screen.

import assert from 'node:assert/strict';
import { createServer } from 'node:http';
import { after, before, test } from 'node:test';
import { assertAccessible } from './helper/accessibility.mjs';
import { sizes, startBrowser, waitUntilKept, withPages } from './helper/browser.mjs';
import { startServer } from './helper/server.mjs';

// Only shown and handed on here: what is in it does not matter.
const JOB = 'aGVsbG8gdHVybmVy';

let browser;
before(async () => {
  browser = await startBrowser();
});
after(() => browser.close());

// One server and one fresh profile for a test, both closed whatever happens.
function shellTest(name, body, { change } = {}) {
  test(name, () => withPages(browser, { change }, body));
}

// A real trap, from a module whose only function is `unreachable`.
function trap(page) {
  return page.evaluate(() => {
    const bytes = new Uint8Array([
      0, 97, 115, 109, 1, 0, 0, 0, 1, 4, 1, 96, 0, 0, 3, 2, 1, 0, 7, 5, 1, 1, 102, 0, 0, 10, 5, 1, 3, 0, 0, 11,
    ]);
    const { f } = new WebAssembly.Instance(new WebAssembly.Module(bytes)).exports;
    setTimeout(f);
  });
}

const rescue = (page) => page.getByRole('heading', { name: 'Skimwright has stopped' });

for (const [name, size] of Object.entries(sizes)) {
  shellTest(`starts without a complaint and keeps to its own origin (${name})`, async ({ server, open }) => {
    const { page, troubles, requests } = await open(server.url, { size });
    await waitUntilKept(page);
    assert.deepEqual(troubles, []);
    const programs = requests.filter(({ url, byWorker }) => url.endsWith('.wasm') && !byWorker);
    assert.equal(programs.length, 1, 'the preload and the start script must share one download');
    assert.deepEqual(requests.filter(({ url }) => !url.startsWith(server.url)), []);
    assert.equal(await page.evaluate(() => document.documentElement.scrollWidth > innerWidth), false);
  });
}

shellTest('works after the server is gone', async ({ server, open }) => {
  const { page, troubles } = await open();
  await waitUntilKept(page);
  await server.stop();
  await page.reload();
  await page.getByRole('heading', { level: 1 }).waitFor();
  await page.goto(`${server.url}index.html?from=elsewhere#${JOB}`);
  await page.getByRole('heading', { level: 1 }).waitFor();
  assert.deepEqual(troubles, []);
});

shellTest('reads and writes files of jobs, loads what that takes only then, and needs no network for it', async ({ server, open }) => {
  const { page, troubles, requests } = await open();
  await waitUntilKept(page);
  const loaded = requests.filter(({ url, byWorker }) => url.includes('/api/') && !byWorker);
  assert.deepEqual(loaded, [], 'nothing of it belongs to the first load');
  const there = await page.evaluate(async () => {
    const { readJobFile, writeJobFile } = await window.skimwright.files();
    const file = '{ "file": "skimwright-jobs", "version": 1, "jobs": [{ "id": "a", "job": { "title": "Arbor" } }, 5] }';
    const [job, wrong] = readJobFile(file).trim().split('\n');
    return { wrong, again: JSON.parse(writeJobFile(job)).jobs[0].job.title };
  });
  assert.match(there.wrong, /^-\t.*an object with a job/);
  assert.equal(there.again, 'Arbor');
  await server.stop();
  await page.reload();
  await page.getByRole('heading', { level: 1 }).waitFor();
  const code = await page.evaluate(async () => {
    const { readJobFile } = await window.skimwright.files();
    try {
      return readJobFile('{}');
    } catch (error) {
      return error.code;
    }
  });
  assert.equal(code, 'not-ours');
  assert.deepEqual(troubles, []);
});

shellTest('keeps exactly the files of the build, and touches no cache of a neighbour', async ({ server, open }) => {
  const { page } = await open();
  await page.evaluate(() => caches.open('neighbour-1'));
  await waitUntilKept(page);
  const names = await page.evaluate(() => caches.keys());
  const own = names.filter((name) => name.startsWith('skimwright-'));
  assert.equal(own.length, 1);
  assert.ok(names.includes('neighbour-1'));
  const worker = await (await fetch(`${server.url}sw.js`)).text();
  const listed = [...worker.matchAll(/\['([^']+)', 'sha384-/g)].map(([, address]) => new URL(address, server.url).href);
  const kept = await page.evaluate(
    async (name) => (await (await caches.open(name)).keys()).map(({ url }) => url),
    own[0],
  );
  assert.deepEqual(kept.sort(), listed.sort());
});

{
  let newer = false;
  const change = (path, bytes) => {
    const text = bytes.toString();
    return newer && path === '/sw.js' ? text.replace(/BUILD = '\w+'/, "BUILD = 'newer'") : bytes;
  };
  shellTest('changes to a newer version only when the person agrees', async ({ open }) => {
    const { page } = await open();
    await waitUntilKept(page);
    await page.reload();
    await page.getByRole('heading', { level: 1 }).waitFor();
    newer = true;
    await page.evaluate(async () => {
      window.before = true;
      const told = new Promise((done) => window.addEventListener('skimwright:update', done, { once: true }));
      const registration = await navigator.serviceWorker.ready;
      await registration.update();
      await told;
    });
    assert.equal(await page.evaluate(() => window.skimwright.updateWaits()), true);
    const buildsKept = () => page.evaluate(async () => (await caches.keys()).sort());
    assert.equal((await buildsKept()).length, 2);
    assert.equal(await page.evaluate(() => window.before), true);

    await Promise.all([page.waitForEvent('load'), page.evaluate(() => window.skimwright.applyUpdate())]);
    await page.getByRole('heading', { level: 1 }).waitFor();
    assert.equal(await page.evaluate(() => window.before), undefined);
    assert.equal(await page.evaluate(() => window.skimwright.updateWaits()), false);
    await page.waitForFunction(async () => (await caches.keys()).length === 1);
    assert.deepEqual(await buildsKept(), ['skimwright-newer']);
  }, { change });
}

shellTest('offers the job and ways back when the program stops', async ({ server, open }) => {
  for (const colorScheme of ['light', 'dark']) {
    const { page } = await open(server.url, { size: sizes.smallPhone, colorScheme });
    await page.evaluate((job) => localStorage.setItem('skimwright.job', job), JOB);
    await trap(page);
    await rescue(page).waitFor();
    const field = page.getByLabel('Your job, as last saved');
    assert.equal(await field.inputValue(), `${server.url}#${JOB}`);
    assert.equal(await field.isEditable(), false);
    await page.getByRole('button', { name: 'Reload', exact: true }).waitFor();
    assert.equal(await page.evaluate(() => document.documentElement.scrollWidth > innerWidth), false);
    await assertAccessible(page);
  }
});

shellTest('copies the job from the rescue screen', async ({ server, open }) => {
  const { page } = await open(server.url, { permissions: ['clipboard-read', 'clipboard-write'] });
  await page.evaluate((job) => localStorage.setItem('skimwright.job', job), JOB);
  await trap(page);
  // What the address holds may stand below it.
  await page.getByRole('button', { name: 'Copy' }).first().click();
  await page.getByRole('button', { name: 'Copied' }).waitFor();
  assert.equal(await page.evaluate(() => navigator.clipboard.readText()), `${server.url}#${JOB}`);
});

shellTest('puts the saved job aside on demand', async ({ server, open }) => {
  const { page } = await open();
  await page.evaluate((job) => localStorage.setItem('skimwright.job', job), JOB);
  await page.evaluate(() => history.replaceState(null, '', '#b3BlbmVk'));
  await trap(page);
  assert.equal(await page.getByLabel('The job in the address').inputValue(), `${server.url}#b3BlbmVk`);
  await page.getByRole('button', { name: 'Reload without the saved job' }).click();
  await page.getByRole('heading', { name: 'Job without a name' }).waitFor();
  assert.equal(page.url().includes('b3BlbmVk'), false);
  assert.equal(await page.evaluate(() => localStorage.getItem('skimwright.job.aside')), JOB);
});

shellTest('rescues from the address alone where storage is refused', async ({ server, open }) => {
  const { page } = await open();
  await page.evaluate(() => {
    Object.defineProperty(window, 'localStorage', {
      get() {
        throw new DOMException('refused', 'SecurityError');
      },
    });
    history.replaceState(null, '', '#b3BlbmVk');
  });
  await trap(page);
  await rescue(page).waitFor();
  assert.equal(await page.getByLabel('The job in the address').inputValue(), `${server.url}#b3BlbmVk`);
  await page.getByRole('button', { name: 'Reload without the job in the address' }).click();
  await page.getByRole('heading', { name: 'Job without a name' }).waitFor();
  assert.equal(page.url().includes('b3BlbmVk'), false);
});

shellTest('an ordinary script fault does not stop the page', async ({ open }) => {
  const { page } = await open();
  const thrown = page.waitForEvent('pageerror');
  await page.evaluate(() => setTimeout(() => {
    throw new TypeError('a fault elsewhere');
  }));
  await thrown;
  assert.equal(await rescue(page).count(), 0);
});

shellTest('says so when a part of the page is damaged on its way', async ({ open }) => {
  const { page } = await open();
  await page.getByRole('heading', { name: 'Skimwright could not start' }).waitFor();
}, { change: (path, bytes) => (path.endsWith('.wasm') ? bytes.subarray(0, bytes.length - 1) : bytes) });

shellTest('says so where WebAssembly is switched off', async ({ server }) => {
  const context = await browser.newContext();
  await context.addInitScript(() => {
    delete globalThis.WebAssembly;
  });
  const page = await context.newPage();
  await page.goto(server.url);
  await page.getByRole('heading', { name: 'This browser cannot run Skimwright' }).waitFor();
  await context.close();
});

shellTest('the policy stops inline scripts, inline styles and scripts from text', async ({ open }) => {
  const { page } = await open();
  const result = await page.evaluate(async () => {
    const stopped = [];
    const attempt = (act) => {
      try {
        act();
      } catch (error) {
        stopped.push(error.name);
      }
    };
    const styleStopped = new Promise((done) => {
      document.addEventListener('securitypolicyviolation', (event) => {
        stopped.push(event.effectiveDirective);
        if (event.effectiveDirective === 'style-src-attr') {
          done();
        }
      });
    });

    const script = document.createElement('script');
    script.append(document.createTextNode('window.inlineRan = true'));
    document.head.append(script);
    attempt(() => document.body.insertAdjacentHTML('beforeend', '<p>markup from text</p>'));
    attempt(() => window.trustedTypes.createPolicy('another', {}));
    const paragraph = document.createElement('p');
    paragraph.setAttribute('style', 'color: red');
    document.body.append(paragraph);
    await styleStopped;
    return { stopped, ran: window.inlineRan === true };
  });
  assert.equal(result.ran, false);
  assert.equal(result.stopped.filter((name) => name === 'TypeError').length, 2);
  assert.ok(result.stopped.some((name) => name.startsWith('script-src') || name.includes('trusted-types')));
  assert.ok(result.stopped.includes('style-src-attr'));
});

shellTest('the policy stops handlers in markup, code from text, and every request to another origin', async ({ server, open }) => {
  const other = await startServer();
  try {
    const { page, requests } = await open();
    await page.evaluate(() => {
      window.violated = [];
      document.addEventListener('securitypolicyviolation', ({ effectiveDirective, blockedURI }) => {
        window.violated.push(`${effectiveDirective} ${blockedURI}`);
      });
    });
    const { trusted, thrown, ran } = await page.evaluate(async (elsewhere) => {
      const thrown = {};
      const attempt = async (name, act) => {
        try {
          await act();
        } catch (error) {
          thrown[name] = error.name;
        }
      };
      const marked = 'window.codeRan = true';
      // Out of the debugger's own turn, which may evaluate text where the page may not.
      await new Promise((done) => {
        setTimeout(done);
      });
      await attempt('eval', () => (0, eval)(marked));
      await attempt('function', () => new Function(marked)());
      await attempt('timer', () => setTimeout(marked));
      await attempt('markup', () => {
        document.createElement('p').innerHTML = '<b>text</b>';
      });
      await attempt('parser', () => new DOMParser().parseFromString('<b>text</b>', 'text/html'));
      await attempt('handler', () => {
        const pressed = document.createElement('button');
        document.body.append(pressed);
        pressed.setAttribute('onclick', marked);
        pressed.click();
      });
      await attempt('address', () => {
        const link = document.createElement('a');
        link.setAttribute('href', `javascript:${marked}`);
        document.body.append(link);
        link.click();
      });
      await attempt('fetch', () => fetch(`${elsewhere}fetch`));
      await attempt('beacon', () => navigator.sendBeacon(`${elsewhere}beacon`));
      await attempt('events', () => new EventSource(`${elsewhere}events`));
      await attempt('socket', () => new WebSocket(`${elsewhere.replace('http', 'ws')}socket`));
      const add = (name, attributes) => {
        const element = Object.assign(document.createElement(name), attributes);
        document.body.append(element);
        return element;
      };
      add('img', { src: `${elsewhere}image` });
      add('link', { rel: 'stylesheet', href: `${elsewhere}style` });
      add('link', { rel: 'prefetch', href: `${elsewhere}prefetch` });
      add('iframe', { src: `${elsewhere}frame` });
      add('video', { src: `${elsewhere}video` });
      await attempt('form', () => add('form', { action: `${elsewhere}form`, method: 'post' }).submit());
      await attempt('script', () => add('script', { src: `${elsewhere}script` }));
      await new Promise((done) => {
        setTimeout(done, 500);
      });
      return { trusted: 'trustedTypes' in window, thrown, ran: window.codeRan === true };
    }, other.url);
    assert.equal(ran, false);
    for (const name of ['eval', 'function', 'fetch']) {
      assert.match(thrown[name] ?? '', /^(EvalError|TypeError)$/, name);
    }
    // Where the browser has them; this one must.
    assert.equal(trusted, true);
    for (const name of ['markup', 'parser', 'script']) {
      assert.equal(thrown[name], 'TypeError', name);
    }
    const violated = await page.evaluate(() => window.violated);
    for (const directive of ['connect-src', 'img-src', 'style-src-elem', 'frame-src', 'media-src', 'form-action']) {
      assert.ok(violated.some((it) => it.startsWith(`${directive} ${other.url.slice(0, -1)}`)), `${directive} in\n${violated.join('\n')}`);
    }
    assert.ok(violated.some((it) => /^script-src(-attr|-elem)? inline/.test(it)), violated.join('\n'));
    assert.deepEqual(other.asked, [], 'nothing reached the other origin');
    assert.ok(requests.length > 0 && server.asked.length > 0);
    const policy = await page.evaluate(
      () => document.querySelector('meta[http-equiv="Content-Security-Policy"]').content,
    );
    assert.match(policy, /default-src 'none'.*require-trusted-types-for 'script'/);
    assert.doesNotMatch(policy, /'unsafe-|\*|https?:/);
  } finally {
    await other.stop();
  }
});

shellTest('another site is not told where one came from', async ({ open }) => {
  const { page } = await open();
  assert.equal(await page.evaluate(() => document.querySelector('meta[name=referrer]').content), 'no-referrer');
  const came = [];
  const other = createServer(({ url, headers }, response) => {
    came.push([url, headers.referer]);
    response.end('Elsewhere.');
  });
  await new Promise((done) => {
    other.listen(0, '127.0.0.1', done);
  });
  try {
    await page.evaluate((url) => {
      const link = document.createElement('a');
      link.href = url;
      document.body.append(link);
      link.click();
    }, `http://127.0.0.1:${other.address().port}/there`);
    await page.waitForURL(/there$/);
    assert.deepEqual(came[0], ['/there', undefined]);
  } finally {
    other.closeAllConnections();
    other.close();
  }
});
