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
  /** Something is on its way, to the disk or from it. */
  readonly isBusy: boolean;
}

export class Hand {
  taps = 0;
  /** By the title of a joint's step, what its figure and its measures took beside the passes. */
  readonly besidePasses = new Map<string, number>();
  readonly #page: Page;
  readonly #gesture: Gesture;

  constructor(page: Page, gesture: Gesture = 'tap') {
    this.#page = page;
    this.#gesture = gesture;
  }

  startCounting(): void {
    this.taps = 0;
  }

  counted(steps: number): string {
    return `${steps} steps: ${this.taps} taps, ${(this.taps / steps).toFixed(2)} a step`;
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
        isBusy: document.querySelector('[aria-busy="true"]') !== null,
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
          // Working is no answer yet: what comes after it is.
          return after.isBusy ? JSON.stringify(before) : JSON.stringify(after);
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
    const after = await this.#goOnFrom(before);
    const isPass = /Pass \d made|[Cc]licked/.test(before.action);
    const beside = this.besidePasses.get(before.title) ?? 0;
    if (jointOf(before.title) !== undefined)
      this.besidePasses.set(before.title, beside + this.taps - taps - (isPass ? 1 : 0));
    return after;
  }

  #goOnFrom(before: Shown): Promise<Shown> {
    if (before.action.startsWith(words.torque.enter)) return this.#enterFigure(before);
    if (before.action.startsWith(words.stand.enterValue)) return this.enterValue(before);
    if (isUntyped(before)) return this.enterValue(before);
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

  /** Taps what is printed on the part where such parts say it; otherwise types it on the pad. */
  async #enterFigure(before: Shown): Promise<Shown> {
    const marking = markingOn(before.title);
    const printed = this.#page.getByRole('button', { name: marking.text, exact: true });
    if (await printed.isVisible()) await this.tap(printed);
    else await this.typeMarking(marking.keys);
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

  /** A value inside the limit: one of those offered, as if it had been measured so; where only the part knows its limit, typed. */
  async enterValue(before: Shown): Promise<Shown> {
    const offered = this.#page.getByRole('main').getByRole('button', {
      name: new RegExp(`^${words.stand.recordValue('')} \\d`),
    });
    const count = await offered.count();
    if (count === 0) return this.#typeValue();
    await this.tap(offered.nth(Math.floor(count / 2)));
    return this.changedFrom(before);
  }

  async #typeValue(): Promise<Shown> {
    await expect(this.#page.getByText(words.stand.unlimited).first()).toBeVisible();
    await typeOnPad(this, this.#page.getByRole('main'), '70');
    return this.act();
  }
}

/** Nothing to record yet: the pad waits in the panel. */
function isUntyped({ action }: Shown): boolean {
  return new RegExp(`^${words.stand.recordValue('')}(?! \\d)`).test(action);
}

export async function typeOnPad(hand: Hand, dialog: Locator, value: string): Promise<void> {
  for (const key of value) await hand.tap(dialog.getByRole('button', { name: key, exact: true }));
}

interface SeedStep {
  readonly title: string;
  readonly joint?: string;
}

interface Marking {
  readonly text: string;
  /** The same on the pad. */
  readonly keys: readonly string[];
}

/** What the demo's parts have printed on them. */
const printed: Readonly<Record<string, Marking>> = {
  faceplate: { text: '4–6 N·m', keys: ['4', '–', '6', 'N·m'] },
  'brake-levers': { text: '44–53 in·lb', keys: ['4', '4', '–', '5', '3', 'in·lb'] },
  'quill-bar-clamp': { text: '16–20 N·m', keys: ['1', '6', '–', '2', '0', 'N·m'] },
  'seat-post-clamp': { text: 'max 6 N·m', keys: ['max', '6', 'N·m'] },
};

const seedSteps = readdirSync('seeds/steps').flatMap(
  (file) => readSeed<{ steps: readonly SeedStep[] }>(`steps/${file}`).steps,
);

function jointOf(title: string): string | undefined {
  return seedSteps.find((step) => step.title === title && step.joint !== undefined)?.joint;
}

function markingOn(title: string): Marking {
  const marking = printed[jointOf(title) ?? ''];
  if (marking === undefined) throw new Error(`nothing is printed on the part of “${title}”`);
  return marking;
}
