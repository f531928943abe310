/** A mechanic at the stand: does what the screen asks for with the one action, and counts the taps. */

import { readdirSync } from 'node:fs';
import { expect, type Locator, type Page } from '@playwright/test';
import { words } from '../../src/words';
import { type Gesture, readSeed } from './app-in-a-browser';

/** What the stand shows: the place in the plan, the step, and what its one action would record. */
export interface Shown {
  readonly place: string;
  readonly title: string;
  readonly action: string;
}

export class Hand {
  taps = 0;
  /** Of the taps, those that enter a number: its pad opened, its keys, its pad closed. */
  tapsForNumbers = 0;
  readonly #page: Page;
  readonly #gesture: Gesture;

  constructor(page: Page, gesture: Gesture = 'tap') {
    this.#page = page;
    this.#gesture = gesture;
  }

  startCounting(): void {
    this.taps = 0;
    this.tapsForNumbers = 0;
  }

  counted(steps: number): string {
    const without = this.taps - this.tapsForNumbers;
    const each = (taps: number) => `${taps} (${(taps / steps).toFixed(2)} a step)`;
    return `${steps} steps: taps ${each(this.taps)}, without those that enter numbers ${each(without)}`;
  }

  async tap(target: Locator): Promise<void> {
    await target[this.#gesture]();
    this.taps += 1;
  }

  /** The bar's one action stands last on every screen. */
  get action(): Locator {
    return this.#page.getByRole('button').last();
  }

  async shown(): Promise<Shown> {
    return this.#page.evaluate(() => {
      const text = (element: Element | null | undefined) => element?.textContent ?? '';
      const heading = document.querySelector('h1');
      return {
        place: text(heading?.previousElementSibling),
        title: text(heading),
        action: text([...document.querySelectorAll('button')].at(-1)),
      };
    });
  }

  /** Waits until the job has been read from the disk. */
  async settled(): Promise<void> {
    const heading = this.#page.getByRole('heading', { level: 1 }).first();
    await expect(heading).not.toHaveText(words.app.opening);
  }

  /** One tap on the action, and the answer of the screen: only what is on the disk changes it. */
  async act(): Promise<Shown> {
    const before = await this.shown();
    await this.tap(this.action);
    return this.changedFrom(before);
  }

  async changedFrom(before: Shown): Promise<Shown> {
    let after = before;
    await expect
      .poll(
        async () => {
          after = await this.shown();
          return JSON.stringify(after);
        },
        { intervals: [20, 20, 50, 50, 100], timeout: 10_000 },
      )
      .not.toBe(JSON.stringify(before));
    return after;
  }

  /** Does what the shown step asks for next: a figure, a value, a pass, or the step itself. */
  async goOn(): Promise<Shown> {
    const before = await this.shown();
    const taps = this.taps;
    if (before.action.startsWith(words.torque.enter)) {
      const after = await this.#enterFigure(before);
      this.tapsForNumbers += this.taps - taps;
      return after;
    }
    if (before.action.startsWith(words.stand.enterValue)) {
      await this.#enterValue(before);
      this.tapsForNumbers += this.taps - taps;
    }
    return this.act();
  }

  /** Works until a step with this title is shown, or the build is done. Answers the titles that were done. */
  async workUntil(title: string, limit = 300): Promise<readonly string[]> {
    const done: string[] = [];
    for (let count = 0; count < limit; count += 1) {
      const now = await this.shown();
      if (now.title === title) return done;
      const after = await this.goOn();
      if (after.title !== now.title) done.push(now.title);
    }
    throw new Error(`“${title}” did not come in ${limit} actions`);
  }

  /** Confirms what this model's part said before; otherwise types what is printed, on the pad. */
  async #enterFigure(before: Shown): Promise<Shown> {
    const same = this.#page.getByRole('button', { name: words.torque.sameAsBefore });
    if (await same.isVisible()) await this.tap(same);
    else await this.typeMarking(markingOn(before.title));
    return this.changedFrom(before);
  }

  async typeMarking(keys: readonly string[]): Promise<void> {
    await this.tap(this.action);
    const dialog = this.#page.getByRole('dialog', { name: words.torque.enterTitle });
    const pad = dialog.getByRole('group', { name: words.torque.marking });
    for (const key of keys) await this.tap(pad.getByRole('button', { name: key, exact: true }));
    await this.tap(dialog.getByRole('button', { name: words.torque.use }));
    await expect(dialog).toBeHidden();
  }

  /** A value that nobody could suggest: well inside the limit the screen states. */
  async #enterValue(before: Shown): Promise<void> {
    const limit = (await this.#page.getByRole('main').textContent()) ?? '';
    await this.tap(this.action);
    const dialog = this.#page.getByRole('dialog');
    await typeOnPad(this, dialog, insideOf(limit));
    await this.tap(dialog.getByRole('button', { name: words.app.close }));
    await this.changedFrom(before);
  }
}

export async function typeOnPad(hand: Hand, dialog: Locator, value: string): Promise<void> {
  for (const key of value) await hand.tap(dialog.getByRole('button', { name: key, exact: true }));
}

/** The middle of `2–4`, half of `at most 4`, a quarter above `at least 4`. */
export function insideOf(text: string): string {
  const number = '(\\d+(?:\\.\\d+)?)';
  const both = new RegExp(`${words.stand.limit}\\s*${number}–${number}`).exec(text);
  if (both) return String((Number(both[1]) + Number(both[2])) / 2);
  const most = new RegExp(`${words.stand.limit}\\s*at most ${number}`).exec(text);
  if (most) return String(Number(most[1]) / 2);
  const least = new RegExp(`${words.stand.limit}\\s*at least ${number}`).exec(text);
  return least ? String(Number(least[1]) * 1.25) : '10';
}

interface SeedStep {
  readonly title: string;
  readonly joint?: string;
}

/** What the demo's parts have printed on them, as keys of the pad. */
const printed: Readonly<Record<string, readonly string[]>> = {
  faceplate: ['4', '–', '6', 'N·m'],
  'brake-levers': ['4', '4', '–', '5', '3', 'in·lb'],
  'seat-post-clamp': ['max', '6', 'N·m'],
};

function markingOn(title: string): readonly string[] {
  const steps = readdirSync('seeds/steps').flatMap(
    (file) => readSeed<{ steps: readonly SeedStep[] }>(`steps/${file}`).steps,
  );
  const joint = steps.find((step) => step.title === title)?.joint ?? '';
  const keys = printed[joint];
  if (keys === undefined) throw new Error(`nothing is printed on the part of “${title}”`);
  return keys;
}
