// Lets one process at a time do a thing; the others wait for it, and one that died does not block them.

import { linkSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';

export function alone(lockFile, work) {
  mkdirSync(dirname(lockFile), { recursive: true });
  while (!taken(lockFile)) pause(200);
  try {
    return work();
  } finally {
    rmSync(lockFile, { force: true });
  }
}

/** The lock appears with its holder's number already in it: it is written aside, then linked into place. */
function taken(lockFile) {
  const aside = `${lockFile}.${process.pid}`;
  writeFileSync(aside, String(process.pid));
  try {
    linkSync(aside, lockFile);
    return true;
  } catch (error) {
    if (error.code !== 'EEXIST') throw error;
    if (!holderLives(lockFile)) rmSync(lockFile, { force: true });
    return false;
  } finally {
    rmSync(aside);
  }
}

function holderLives(lockFile) {
  try {
    process.kill(Number(readFileSync(lockFile, 'utf8')), 0); // asks only whether it lives
    return true;
  } catch (error) {
    return error.code === 'EPERM' || error.code === 'ENOENT'; // of another user; or just given back
  }
}

const pause = (milliseconds) => Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, milliseconds);
