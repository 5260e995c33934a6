import { mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';

const pollMs = 200;
const waitLimitMs = 15 * 60_000;

/** Whether a process of this machine is alive. */
function alive(pid) {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return error.code === 'EPERM';
  }
}

/** Takes away a lock whose owner died. The rename lets one waiter win, and the re-read keeps it from taking a fresh lock. */
function removeDead(path, owner) {
  const aside = `${path}.${process.pid}`;
  try {
    renameSync(path, aside);
    if (readFileSync(aside, 'utf8') === owner) rmSync(aside);
    else renameSync(aside, path);
  } catch (error) {
    if (error.code !== 'ENOENT') throw error;
  }
}

/**
 * Runs a piece of work while no other process runs it: two commands started at once must not both install or build.
 * The lock is a file with the owner's process number, so that one left by a killed process is noticed.
 * @template T
 * @param {string} path the lock file; its folder is made
 * @param {() => Promise<T>} work
 * @param {() => void} [onWait] told once, when another process holds the lock
 * @returns {Promise<T>}
 * @throws Error when another live process holds the lock for fifteen minutes
 */
export async function withLock(path, work, onWait = () => {}) {
  mkdirSync(dirname(path), { recursive: true });
  const release = () => rmSync(path, { force: true });
  for (let waitedMs = 0; ; waitedMs += pollMs) {
    try {
      writeFileSync(path, String(process.pid), { flag: 'wx' });
      break;
    } catch (error) {
      if (error.code !== 'EEXIST') throw error;
    }
    if (waitedMs === 0) onWait();
    if (waitedMs > waitLimitMs) throw new Error(`another process has held ${path} for fifteen minutes; stop it first`);
    const owner = readOwner(path);
    if (owner !== '' && !alive(Number(owner))) removeDead(path, owner);
    else await sleep(pollMs);
  }
  process.once('exit', release);
  try {
    return await work();
  } finally {
    process.removeListener('exit', release);
    release();
  }
}

/** The process number in a lock, or nothing when it is just being written or just gone. */
function readOwner(path) {
  try {
    return readFileSync(path, 'utf8');
  } catch {
    return '';
  }
}
