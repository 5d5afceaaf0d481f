// Checks what is on the screen with axe.

import assert from 'node:assert/strict';
import axe from 'axe-core';

// Fails with the rule, the place and the advice for everything that axe finds.
export async function assertAccessible(page) {
  // Through the debugger and not as a script element, which the page's policy forbids.
  await page.evaluate(axe.source);
  const violations = await page.evaluate(async () => (await window.axe.run(document)).violations);
  const told = violations.flatMap(({ id, help, nodes }) => nodes.map(({ target }) => `${id}: ${help} (${target})`));
  assert.deepEqual(told, []);
}
