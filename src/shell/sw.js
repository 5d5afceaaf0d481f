// Keeps exactly the files of one build, so that the page works without a network.
//
// The build puts its hash and its list of files in place of the two texts below.

const BUILD = '{build}';
// Pairs of an address relative to this script and the integrity of what stands there.
const FILES = '{files}';

const PREFIX = 'skimwright-';
const CACHE = PREFIX + BUILD;
const HOME = new URL('./', self.location).href;
const KEPT = new Set(FILES.map(([address]) => new URL(address, self.location).href));

self.addEventListener('install', (event) => {
  event.waitUntil(fetchAll());
});

self.addEventListener('activate', (event) => {
  event.waitUntil(dropOldCaches());
});

self.addEventListener('fetch', (event) => {
  const wanted = keptAddress(event.request);
  if (wanted !== null) {
    event.respondWith(fromCache(wanted, event.request));
  }
});

// The old version goes on until the person agrees to the new one.
self.addEventListener('message', (event) => {
  if (event.data === 'skimwright:skip-waiting') {
    self.skipWaiting();
  }
});

async function fetchAll() {
  const cache = await caches.open(CACHE);
  await Promise.all(FILES.map(async ([address, integrity]) => {
    const url = new URL(address, self.location).href;
    // What the page itself has just fetched is at hand; an older file of that name fails the check.
    const response = await fetchChecked(url, integrity, 'default')
      .catch(() => fetchChecked(url, integrity, 'reload'));
    if (!response.ok) {
      throw new Error(`${address} answered ${response.status}`);
    }
    await cache.put(url, response);
  }));
}

function fetchChecked(url, integrity, cache) {
  return fetch(url, { integrity, cache, credentials: 'same-origin' });
}

// Other pages of the same host have caches too: only our own are ours to delete.
async function dropOldCaches() {
  const names = await caches.keys();
  const old = names.filter((name) => name.startsWith(PREFIX) && name !== CACHE);
  await Promise.all(old.map((name) => caches.delete(name)));
}

// The address to answer a request from, or null for a request that is none of ours.
function keptAddress(request) {
  if (request.method !== 'GET') {
    return null;
  }
  const url = new URL(request.url);
  url.hash = '';
  if (request.mode === 'navigate') {
    // Whatever stands behind the question mark, it is the same page.
    url.search = '';
    if (url.href === `${HOME}index.html`) {
      return HOME;
    }
  }
  return KEPT.has(url.href) ? url.href : null;
}

async function fromCache(address, request) {
  const cache = await caches.open(CACHE);
  const kept = await cache.match(address, { ignoreVary: true });
  return kept || fetch(request);
}
