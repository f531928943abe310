/** A job starts: the plan for this very bike is resolved and frozen. */

import { type Result, refuse } from '../engine/base';
import { freezePlan } from '../engine/job';
import { applyShopChanges, type PlanRefusal } from '../engine/plan';
import type { KnownFigure, Storage } from '../storage/contract';
import { knownFigures } from './figure-book';
import { loadJob } from './load-job';
import type { Actor, Perform, Performed, PerformRefusal } from './perform';
import type { ShopCatalogue } from './ports';

export type StartRefusal =
  | PerformRefusal
  | PlanRefusal
  | { readonly code: 'job-missing' }
  | { readonly code: 'shop-catalogue-faulty' }
  | { readonly code: 'market-unknown'; readonly market: string };

export interface StartPorts {
  readonly storage: Pick<Storage, 'log' | 'catalogueVersions'>;
  readonly perform: Perform;
  readonly loadCatalogue: () => Promise<ShopCatalogue>;
  readonly figures: () => readonly KnownFigure[];
  readonly market: () => string;
}

export async function startJob(
  ports: StartPorts,
  job: string,
  person: Actor,
): Promise<Result<Performed, StartRefusal>> {
  const bike = (await loadJob(ports.storage, job))?.state.bike;
  if (bike === undefined) return refuse({ code: 'job-missing' });
  const { markets, ...born } = await ports.loadCatalogue();
  const now = applyShopChanges(born, await ports.storage.catalogueVersions.all());
  if (!now.ok) return refuse({ code: 'shop-catalogue-faulty' });
  const { catalogue, points, figures: approved } = now.value;
  const market = markets.find(({ id }) => id === ports.market());
  if (market === undefined) return refuse({ code: 'market-unknown', market: ports.market() });
  // Of figures that are trusted alike the first counts: the shop's latest approval.
  const figures = knownFigures([...[...approved].reverse(), ...ports.figures()], bike);
  const plan = freezePlan({ bike, catalogue, points, market, figures });
  if (!plan.ok) return plan;
  return ports.perform(job, { kind: 'open-job', plan: plan.value }, person);
}
