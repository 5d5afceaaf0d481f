// Whether all that stands on the page fits it.

import assert from 'node:assert/strict';

// How far the page can be pushed sideways, with what sticks out.
const sideways = (page) => page.evaluate(() => {
  const most = document.documentElement.clientWidth;
  const out = [...document.querySelectorAll('body *')]
    .filter((element) => element.getBoundingClientRect().right > most + 1 && element.closest('svg') === null)
    .map((element) => element.outerHTML.slice(0, 120));
  return { wide: document.scrollingElement.scrollWidth > most, most, out };
});

// Text that its own box cuts off; a title that is shortened on purpose stands whole on the other stages.
const cutOff = (page) => page.evaluate(() => [...document.querySelectorAll('button, p, h1, h2, h3, label, th, td, dd, dt')]
  .filter((element) => element.scrollWidth > element.clientWidth + 1 && element.clientWidth > 1)
  .filter((element) => getComputedStyle(element).textOverflow !== 'ellipsis')
  .map((element) => `${element.textContent.slice(0, 60)}: ${element.scrollWidth} in ${element.clientWidth}`));

export async function looksRight(page, width, where) {
  const state = await sideways(page);
  assert.deepEqual(state, { wide: false, most: width, out: [] }, where);
  assert.deepEqual(await cutOff(page), [], where);
}
