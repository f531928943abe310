/** What a browser's storage error means for the person at the stand. */

import type { StorageRefusal } from '../contract';

interface BrowserError {
  readonly name: string;
  readonly message: string;
  readonly inner?: unknown;
}

/** Quota arrives as the inner error of an aborted transaction, so the whole chain of causes is looked at. */
export function refusalOfError(error: unknown): StorageRefusal {
  const chain = causesOf(error);
  if (chain.some(({ name }) => name === 'QuotaExceededError')) return { code: 'storage-full' };
  if (chain.some(({ name }) => name === 'VersionError')) return { code: 'storage-outdated' };
  const [first] = chain;
  const cause = first === undefined ? String(error) : `${first.name}: ${first.message}`;
  return { code: 'storage-failed', cause };
}

const lostConnection = ['DatabaseClosedError', 'InvalidStateError', 'UnknownError'];

/** Whether closing and opening again may help: iOS drops the connection of an app that was in the background. */
export function isConnectionLost(error: unknown): boolean {
  return causesOf(error).some(({ name }) => lostConnection.includes(name));
}

function causesOf(error: unknown): readonly BrowserError[] {
  const causes: BrowserError[] = [];
  let next = error;
  while (isBrowserError(next) && !causes.includes(next)) {
    causes.push(next);
    next = next.inner;
  }
  return causes;
}

function isBrowserError(error: unknown): error is BrowserError {
  return typeof error === 'object' && error !== null && 'name' in error && 'message' in error;
}
