/** A change on its way: its reason, how far it has been tried, and why it was refused. */

import { useState } from 'react';
import type { ShopChange } from '../../engine/plan';
import { words } from '../../words';
import { type CatalogueNames, catalogueWords } from '../../words/catalogue';
import { useApp } from '../app-context';

export interface Change {
  readonly reason: string;
  readonly setReason: (reason: string) => void;
  readonly isBusy: boolean;
  readonly tried: readonly [done: number, of: number] | undefined;
  readonly problem: string | undefined;
  /** Answers the number of the version that was kept, or nothing. */
  make(changes: readonly ShopChange[]): Promise<number | undefined>;
}

export function useChange(names: CatalogueNames): Change {
  const app = useApp();
  const [reason, setReason] = useState('');
  const [isBusy, setBusy] = useState(false);
  const [tried, setTried] = useState<readonly [number, number]>();
  const [problem, setProblem] = useState<string>();
  return {
    ...{ reason, setReason, isBusy, tried, problem },
    async make(changes) {
      setBusy(true);
      setProblem(undefined);
      const kept = await app.changeCatalogue({ reason, changes }, (done, of) =>
        setTried([done, of]),
      );
      setBusy(false);
      setTried(undefined);
      if (kept.ok) return kept.value.version;
      setProblem(refusalText(kept.refusal, names));
      return undefined;
    },
  };
}

export function refusalText(refusal: { readonly code: string }, names: CatalogueNames): string {
  return catalogueWords.refusal(refusal, names) ?? words.refusal({ ...refusal });
}
