/** The shop itself: its name, its market, and whether it is only a demo. */

import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Setting, Storage } from '../storage/contract';

export interface Shop {
  readonly loaded: boolean;
  /** Whether nobody has opened any shop here yet. */
  readonly empty: boolean;
  readonly demo: boolean;
  readonly name: string;
  readonly market: string;
}

export type ShopStore = StoreApi<Shop>;

export function createShopStore(settings: Storage['settings']): ShopStore {
  const store = createStore<Shop>(() => shopFrom(undefined, false));
  settings.watch((rows) =>
    store.setState(
      shopFrom(
        rows.find(({ id }) => id === 'shop'),
        true,
      ),
    ),
  );
  return store;
}

function shopFrom(setting: Setting | undefined, loaded: boolean): Shop {
  const value = setting?.value;
  const kept: Readonly<Record<string, unknown>> =
    typeof value === 'object' && value !== null ? { ...value } : {};
  return {
    loaded,
    empty: setting === undefined,
    demo: kept.demo === true,
    name: typeof kept.name === 'string' ? kept.name : '',
    market: typeof kept.market === 'string' ? kept.market : 'gb',
  };
}
