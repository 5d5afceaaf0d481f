// Starts the page, keeps its service worker, and stands by with the rescue screen.
//
// Plain JavaScript, since it must go on working when the WebAssembly part is dead.

import { offerUpdate, showCrash, showNotLoaded, showTooOld } from './rescue.js';

const WORKER = 'sw.js';

// Announces to the page that a newer version has been fetched and waits for consent.
const UPDATE_EVENT = 'skimwright:update';

// The module that reads and writes files of jobs: its script and its program.
const FILES = ['api/skimwright.js', 'api/skimwright_bg.wasm'];

let waitingWorker = null;
let loadedFiles = null;

window.skimwright = Object.freeze({
  // Whether a newer version waits: for a page that began to listen after the event.
  updateWaits: () => waitingWorker !== null,
  // Changes to the waiting version. Call it only when the person agreed and the job is saved.
  applyUpdate,
  // Resolves to the functions that write and read files of jobs, loaded when they are asked for the first time.
  files,
});

window.addEventListener('error', (event) => {
  if (isDeadly(event.error)) {
    showCrash(event.error);
  }
});
window.addEventListener('unhandledrejection', (event) => {
  if (isDeadly(event.reason)) {
    showCrash(event.reason);
  }
});

start();

async function start() {
  if (typeof WebAssembly !== 'object') {
    showTooOld();
    return;
  }
  try {
    await startPage();
  } catch (error) {
    if (isDeadly(error)) {
      showCrash(error);
    } else {
      showNotLoaded(error);
    }
  }
  await keepWorker();
}

async function startPage() {
  const { js, wasm, integrity } = document.querySelector('script[data-wasm]').dataset;
  const glue = await import(new URL(js, document.baseURI).href);
  const fetched = fetch(new URL(wasm, document.baseURI), { credentials: 'same-origin', integrity });
  await glue.default({ module_or_path: fetched });
}

function files() {
  loadedFiles ??= loadFiles().catch((error) => {
    // The network may be back the next time.
    loadedFiles = null;
    throw error;
  });
  return loadedFiles;
}

async function loadFiles() {
  const [script, program] = FILES.map((address) => new URL(address, document.baseURI).href);
  const module = await import(script);
  await module.default({ module_or_path: fetch(program, { credentials: 'same-origin' }) });
  const { writeJobFile, readJobFile } = module;
  return Object.freeze({ writeJobFile, readJobFile });
}

// A trap leaves the instance in an unknown state; a stack overflow inside it comes as another type.
function isDeadly(error) {
  if (typeof WebAssembly === 'object' && error instanceof WebAssembly.RuntimeError) {
    return true;
  }
  const overflow = error instanceof RangeError || (error && error.name === 'InternalError');
  return Boolean(overflow && String(error.stack).includes('wasm'));
}

async function keepWorker() {
  if (!('serviceWorker' in navigator)) {
    return;
  }
  try {
    const registration = await navigator.serviceWorker.register(trustedWorker());
    announce(registration.waiting);
    announceOnceInstalled(registration);
    registration.addEventListener('updatefound', () => announceOnceInstalled(registration));
  } catch (error) {
    // The page works all the same, only not without a network.
    console.info('Not kept for use without a network:', error.message);
  }
}

function announceOnceInstalled(registration) {
  const worker = registration.installing;
  if (worker === null) {
    return;
  }
  worker.addEventListener('statechange', () => {
    if (worker.state === 'installed') {
      announce(registration.waiting);
    }
  });
}

// The page's policy takes no plain text for the address of a worker.
function trustedWorker() {
  if (!window.trustedTypes) {
    return WORKER;
  }
  const policy = window.trustedTypes.createPolicy('skimwright', {
    createScriptURL: (address) => {
      if (address === WORKER) {
        return address;
      }
      throw new TypeError('Only the own service worker may be started.');
    },
  });
  return policy.createScriptURL(WORKER);
}

function announce(worker) {
  // The very first worker replaces nothing: there is no update to tell of.
  const first = navigator.serviceWorker.controller === null;
  if (worker === null || first) {
    return;
  }
  waitingWorker = worker;
  window.dispatchEvent(new CustomEvent(UPDATE_EVENT));
  // The newer version may mend what stopped the page, which itself can no longer ask.
  offerUpdate(applyUpdate);
}

function applyUpdate() {
  if (waitingWorker === null) {
    return false;
  }
  // Only here, where the person asked, does a change of worker reload the page.
  navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true });
  waitingWorker.postMessage('skimwright:skip-waiting');
  return true;
}
