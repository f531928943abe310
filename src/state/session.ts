/** Who is at the stand, how they like it, and words typed but not yet saved: kept by this device, not by the shop. */

import { createStore, type StoreApi } from 'zustand/vanilla';
import { type PressureUnit, pressureUnits, type TorqueUnit, torqueUnits } from '../engine/units';
import type { Storage } from '../storage/contract';
import { createDraftKeeper } from './draft-keeper';

export const themes = ['system', 'day', 'night'] as const;

export const lockMinutes = [0, 5, 10, 30] as const;

export interface Preferences {
  readonly theme: (typeof themes)[number];
  readonly torqueUnit: TorqueUnit;
  readonly pressureUnit: PressureUnit;
  /** What this stand is called. */
  readonly stand: string;
  /** Whether changing hands asks for the PIN of whoever comes. */
  readonly askPin: boolean;
  /** Minutes without a tap after which the stand asks again who is there; 0 never asks. */
  readonly lockAfter: (typeof lockMinutes)[number];
  /** Whether somebody has put off the offer to install the app; the shop page still has it. */
  readonly installPutOff: boolean;
}

export interface Session {
  readonly loaded: boolean;
  /** The id of who is at the stand. */
  readonly person?: string | undefined;
  readonly preferences: Preferences;
  readonly drafts: Readonly<Record<string, string>>;
  come(person: string): void;
  leave(): void;
  /** Somebody is here: noted at most once a minute, so that a stand left alone is asked again even after a reload. */
  touch(now: number): void;
  /** Nobody has been here for too long: who it is, is asked at the next tap. The screen stays as it is. */
  lockWhenIdle(now: number): void;
  prefer(change: Partial<Preferences>): void;
  /** An empty text removes the draft. */
  draft(key: string, text: string): void;
}

export type SessionStore = StoreApi<Session>;

const firstPreferences: Preferences = {
  theme: 'system',
  torqueUnit: 'N·m',
  pressureUnit: 'bar',
  stand: 'Stand 1',
  askPin: false,
  lockAfter: 10,
  installPutOff: false,
};

export function createSession(
  settings: Storage['settings'],
  onLeaving: (listener: () => void) => () => void,
): SessionStore {
  const keeper = createDraftKeeper(settings, onLeaving);

  /** Small things of this device: a failure costs one tap, so it is not in anybody's way. */
  function keep(id: string, value: unknown): void {
    void settings.put({ id, value }).catch(() => undefined);
  }

  /** Milliseconds since 1970: the last tap, and the last one that was kept. */
  let latest: number | undefined;
  let touched = 0;

  const store = createStore<Session>((set, get) => ({
    loaded: false,
    preferences: firstPreferences,
    drafts: {},
    come(person) {
      set({ person });
      keep('person', person);
    },
    leave() {
      set({ person: undefined });
      keep('person', '');
    },
    touch(now) {
      const isNoted = Math.abs(now - touched) < 60_000;
      latest = now;
      if (isNoted) return;
      touched = now;
      keep('touched', now);
    },
    lockWhenIdle(now) {
      const { person, preferences } = get();
      // Set back since: counted from now.
      if (latest === undefined || now < latest) latest = now;
      const idle = (now - latest) / 60_000;
      if (person === undefined || preferences.lockAfter === 0) return;
      if (idle >= preferences.lockAfter) get().leave();
    },
    prefer(change) {
      const preferences = { ...get().preferences, ...change };
      set({ preferences });
      keep('preferences', preferences);
    },
    draft(key, text) {
      const { [key]: _, ...others } = get().drafts;
      const drafts = text === '' ? others : { ...others, [key]: text };
      set({ drafts });
      keeper.keepSoon(drafts);
    },
  }));

  void readSession(settings).then(({ touched: at, ...kept }) => {
    latest ??= at;
    // What was typed while the disk was being read is newer.
    const drafts = { ...kept.drafts, ...store.getState().drafts };
    store.setState({ ...kept, drafts, loaded: true });
  });
  return store;
}

async function readSession(
  settings: Storage['settings'],
): Promise<
  Partial<Pick<Session, 'person' | 'preferences' | 'drafts'>> & { readonly touched?: number }
> {
  const read = async (id: string) => (await settings.get(id).catch(() => undefined))?.value;
  const person = await read('person');
  const touched = await read('touched');
  return {
    ...(typeof person === 'string' && person !== '' && { person }),
    ...(typeof touched === 'number' && { touched }),
    preferences: preferencesFrom(await read('preferences')),
    drafts: draftsFrom(await read('drafts')),
  };
}

/** Kept by an older or newer app, so each member is looked at. */
function preferencesFrom(kept: unknown): Preferences {
  const { theme, torqueUnit, pressureUnit, stand, askPin, lockAfter, installPutOff } =
    recordFrom(kept);
  return {
    theme: themes.find((known) => known === theme) ?? firstPreferences.theme,
    torqueUnit: torqueUnits.find((known) => known === torqueUnit) ?? firstPreferences.torqueUnit,
    pressureUnit:
      pressureUnits.find((known) => known === pressureUnit) ?? firstPreferences.pressureUnit,
    stand: typeof stand === 'string' ? stand : firstPreferences.stand,
    askPin: askPin === true,
    lockAfter: lockMinutes.find((known) => known === lockAfter) ?? firstPreferences.lockAfter,
    installPutOff: installPutOff === true,
  };
}

function draftsFrom(kept: unknown): Readonly<Record<string, string>> {
  const texts = Object.entries(recordFrom(kept)).filter(
    (entry): entry is [string, string] => typeof entry[1] === 'string',
  );
  return Object.fromEntries(texts);
}

function recordFrom(kept: unknown): Readonly<Record<string, unknown>> {
  return typeof kept === 'object' && kept !== null ? { ...kept } : {};
}
