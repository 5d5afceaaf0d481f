// Starts the browser and opens the page in the sizes that are looked at.

import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { chromium } from 'playwright-core';
import { startServer } from './server.mjs';

export const sizes = {
  smallPhone: { viewport: { width: 360, height: 740 }, isMobile: true, hasTouch: true, deviceScaleFactor: 2 },
  phone: { viewport: { width: 412, height: 915 }, isMobile: true, hasTouch: true, deviceScaleFactor: 2 },
  desk: { viewport: { width: 1280, height: 800 } },
};

// No window, and no traffic of the browser's own.
export const quiet = [
  '--headless', '--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run',
  '--disable-background-networking', '--disable-component-update', '--disable-sync',
];

const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'];

export function startBrowser(settings = []) {
  return chromium.launch({
    executablePath: findChromium(),
    args: [...quiet, ...settings],
  });
}

// A fresh profile, as of a person who was never here, and a list of all that went wrong in it.
export async function visit(browser, url, { size = sizes.phone, ...options } = {}) {
  const context = await browser.newContext({ ...size, ...options });
  context.setDefaultTimeout(15_000);
  const page = await context.newPage();
  const troubles = [];
  const requests = [];
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') {
      // Whether there is a newer version is asked by the browser itself, whenever it likes.
      const { url } = message.location();
      const asksForNewer = url.endsWith('/sw.js') && message.text().includes('ERR_CONNECTION_REFUSED');
      if (!asksForNewer) {
        troubles.push(message.type() === 'error' ? `${message.text()} (${url})` : message.text());
      }
    }
  });
  page.on('pageerror', (error) => troubles.push(`${error.name}: ${error.message}`));
  context.on('request', (request) => {
    requests.push({ url: request.url(), byWorker: request.serviceWorker() !== null });
  });
  await page.goto(url);
  await page.getByRole('heading', { level: 1 }).waitFor();
  return { context, page, troubles, requests };
}

// A server of one's own and pages of fresh profiles, all closed again whatever happens.
export async function withPages(browser, { change } = {}, body) {
  const server = await startServer({ change });
  const contexts = [];
  const open = async (url = server.url, options = {}) => {
    const visited = await visit(browser, url, options);
    contexts.push(visited.context);
    return visited;
  };
  try {
    await body({ server, open });
  } finally {
    await Promise.all(contexts.map((context) => context.close()));
    await server.stop();
  }
}

// Waits until the page is kept for use without a network.
export async function waitUntilKept(page) {
  await page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    const worker = registration.active;
    if (worker.state !== 'activated') {
      await new Promise((done) => {
        worker.addEventListener('statechange', () => worker.state === 'activated' && done());
      });
    }
  });
}

export function findChromium() {
  if (process.env.SKIMWRIGHT_CHROMIUM !== undefined) {
    return process.env.SKIMWRIGHT_CHROMIUM;
  }
  const folders = (process.env.PATH ?? '').split(delimiter);
  const found = names.flatMap((name) => folders.map((folder) => join(folder, name))).find(existsSync);
  if (found === undefined) {
    throw new Error('No Chromium was found: install it, or name it in SKIMWRIGHT_CHROMIUM.');
  }
  return found;
}
