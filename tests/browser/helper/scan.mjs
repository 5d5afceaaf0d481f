// Reads a QR code as it stands on the screen, by a reader of its own.

import assert from 'node:assert/strict';
import jsqr from 'jsqr';
import { pointsOf } from './picture.mjs';

export async function scan(page, locator) {
  const { width, height, points } = await pointsOf(page, locator);
  const read = jsqr(Uint8ClampedArray.from(points), width, height);
  assert.ok(read !== null, 'the code must be read');
  return read.data;
}
