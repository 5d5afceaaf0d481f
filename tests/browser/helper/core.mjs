// The core as scripts call it, to prepare what would take long by hand.

import { readFile } from 'node:fs/promises';

export async function core() {
  const folder = new URL('../../../dist/api/', import.meta.url);
  const module = await import(new URL('skimwright.js', folder));
  await module.default({ module_or_path: await readFile(new URL('skimwright_bg.wasm', folder)) });
  return module;
}
