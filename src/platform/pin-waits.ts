/** Wrong PINs slow down: after the third, each one makes the next try wait longer, and the count outlasts a reload. */

import type { KeyShelf } from './key-shelf';

export interface WrongPins {
  /** In a row, since the last right one. */
  readonly wrong: number;
  /** Milliseconds since 1970, when the last try began. */
  readonly last: number;
}

const freeTries = 3;
const firstWait = 30_000;
/** Nobody is locked out for good: a quarter of an hour is the longest wait there is. */
const longestWait = 900_000;

/** Milliseconds to wait after so many wrong PINs in a row: none, then 30 s, doubling, at most a quarter of an hour. */
export function waitAfter(wrong: number): number {
  if (wrong < freeTries) return 0;
  return Math.min(firstWait * 2 ** (wrong - freeTries), longestWait);
}

/** What is left of it. A clock that was set back makes nobody wait longer than the whole wait. */
export function waitLeft({ wrong, last }: WrongPins, now: number): number {
  const elapsed = now - last;
  const wait = waitAfter(wrong);
  return elapsed < 0 ? wait : Math.max(wait - elapsed, 0);
}

export interface PinWaits {
  /** Seconds still to wait; none when the try may be made. A try counts as wrong until it is known to be right. */
  begin(person: string): Promise<number>;
  /** It was the right one. */
  succeed(person: string): Promise<void>;
  /** Seconds to wait after the wrong one that was just tried. */
  fail(person: string): Promise<number>;
  /** It could not be tried at all: as if it had not begun. */
  takeBack(person: string): Promise<void>;
}

/** Counted before the PIN is looked at, so that closing the page in the middle gains nothing. */
export function createPinWaits(shelf: KeyShelf, now: () => number): PinWaits {
  const change = (person: string, work: (held: WrongPins) => WrongPins) => {
    const id = `pin-waits:${person}`;
    return shelf.change(id, (row) => ({ id, value: work(wrongPinsIn(row?.value)) }));
  };
  return {
    async begin(person) {
      let left = 0;
      await change(person, (held) => {
        left = waitLeft(held, now());
        // Set back: the wait begins anew by the clock as it is now, and so it ends.
        if (left > 0) return { ...held, last: Math.min(held.last, now()) };
        return { wrong: held.wrong + 1, last: now() };
      });
      return Math.ceil(left / 1000);
    },
    succeed: (person) => change(person, () => ({ wrong: 0, last: now() })),
    async fail(person) {
      const { wrong } = wrongPinsIn((await shelf.get(`pin-waits:${person}`))?.value);
      return waitAfter(wrong) / 1000;
    },
    takeBack: (person) => change(person, ({ wrong, last }) => ({ wrong: wrong - 1, last })),
  };
}

function wrongPinsIn(value: unknown): WrongPins {
  if (typeof value !== 'object' || value === null) return { wrong: 0, last: 0 };
  const { wrong, last } = value as Partial<WrongPins>; // written above and nowhere else
  return { wrong: wrong ?? 0, last: last ?? 0 };
}
