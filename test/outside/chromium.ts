// The browser that tests drive: where it is installed, and how it is started so that it stays by itself.

import assert from 'node:assert/strict';
import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';

export const browserFlags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** CHROMIUM_PATH, or the first Chromium on the path. */
export const browserPath = (): string => {
  const named = process.env.CHROMIUM_PATH;
  const folders = (process.env.PATH ?? '').split(delimiter);
  const places = folders.flatMap((folder) =>
    ['chromium', 'chromium-browser', 'google-chrome'].map((name) => join(folder, name)),
  );
  const found = [...(named ? [named] : []), ...places].find((path) => {
    try {
      accessSync(path, constants.X_OK);
      return true;
    } catch {
      return false;
    }
  });
  assert.ok(found, 'a Chromium is installed');
  return found;
};
