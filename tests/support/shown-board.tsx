/** The tool board's screens over a whole app, at an address of their own, with Petra at the stand. */

import { render } from '@testing-library/react';
import type { ReactNode } from 'react';
import { vi } from 'vitest';
import { Router } from 'wouter';
import { memoryLocation } from 'wouter/memory-location';
import type { Wrench } from '../../src/engine/torque';
import { AppContext } from '../../src/screens/app-context';
import type { App, Keys } from '../../src/state';
import { createTestApp, must, settled } from './test-app';
import { wrench } from './wrenches';

export const today = '2026-11-25';

/** Click wrench 2–14 N·m of class A: within ± 4 % (ISO 6789-1:2017, maximum above 10 N·m). */
export const fit = wrench({
  id: 'B',
  name: 'Click wrench 2–14 N·m',
  lowest: 2,
  highest: 14,
  increment: 0.2,
  calibratedOn: '2026-07-05',
  dueOn: '2027-07-05',
  operations: 2870,
});
export const overdue = wrench({ id: 'G', calibratedOn: '2025-10-30', dueOn: '2026-10-30' });
export const worn = wrench({
  id: 'H',
  calibratedOn: '2026-06-01',
  dueOn: '2027-06-01',
  operations: 5000,
});
export const dropped = wrench({ id: 'E', condition: 'dropped' });

const unused = async () =>
  ({ ok: false, refusal: { code: 'keys-unavailable', cause: '' } }) as const;

/** Nobody signs here, so no PIN is stretched. */
const keys: Keys = {
  createFor: async () => ({ ok: true, value: true }),
  signAs: unused,
  isPinOf: unused,
  holds: async () => false,
  keptAs: unused,
  signAsDevice: unused,
  verify: async () => ({ ok: false, refusal: { code: 'signature-wrong' } }),
  verifyWith: async () => ({ ok: false, refusal: { code: 'signature-wrong' } }),
};

export interface ShownBoard {
  readonly app: App;
  /** Addresses that were gone to, in order. */
  readonly went: readonly string[];
  show(screen: ReactNode): void;
  /** The screen that is shown goes away. */
  leave(): void;
}

export async function showBoard(
  screen: ReactNode,
  wrenches: readonly Wrench[],
  changes: (app: App) => Partial<App> = () => ({}),
): Promise<ShownBoard> {
  openDialogsAsBrowsersDo();
  const { app } = createTestApp({ keys });
  must(await app.startOwnShop({ shop: 'Test', market: 'gb', name: 'Petra', pin: '508236' }));
  await settled();
  for (const one of wrenches) must(await app.addTool({ kind: 'wrench', wrench: one }));
  await settled();
  const shown = { ...app, ...changes(app) };
  const { hook, history } = memoryLocation({ path: '/tool-board', record: true });
  let leave = (): void => undefined;
  const show = (shownScreen: ReactNode) => {
    leave = render(
      <AppContext value={shown}>
        <Router hook={hook}>{shownScreen}</Router>
      </AppContext>,
    ).unmount;
  };
  show(screen);
  return { app: shown, went: history, show, leave: () => leave() };
}

/** jsdom has the element without its two methods: they do what the HTML standard says, as far as it shows. */
function openDialogsAsBrowsersDo(): void {
  Object.assign(HTMLDialogElement.prototype, {
    showModal: vi.fn(function (this: HTMLDialogElement) {
      this.open = true;
    }),
    close(this: HTMLDialogElement) {
      this.open = false;
    },
  });
}
