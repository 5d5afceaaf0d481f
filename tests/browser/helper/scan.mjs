// Reads a QR code as it stands on the screen, by a reader of its own.

import assert from 'node:assert/strict';
import jsqr from 'jsqr';

export async function scan(page, locator) {
  const picture = (await locator.screenshot()).toString('base64');
  const { width, height, points } = await page.evaluate(async (data) => {
    const image = new Image();
    image.src = `data:image/png;base64,${data}`;
    await image.decode();
    const canvas = document.createElement('canvas');
    [canvas.width, canvas.height] = [image.width, image.height];
    const context = canvas.getContext('2d');
    context.drawImage(image, 0, 0);
    const { data: all } = context.getImageData(0, 0, canvas.width, canvas.height);
    return { width: canvas.width, height: canvas.height, points: [...all] };
  }, picture);
  const read = jsqr(Uint8ClampedArray.from(points), width, height);
  assert.ok(read !== null, 'the code must be read');
  return read.data;
}
