/** The catalogue as the shop has it now, live: what the app was born with, the shop's versions over it, and names for all of it. */

import { useEffect, useMemo, useState } from 'react';
import { useStore } from 'zustand';
import type { Point } from '../../engine/inspection';
import {
  applyShopChanges,
  type CatalogueBase,
  type CatalogueVersion,
  type ShopCatalogueNow,
} from '../../engine/plan';
import { type CatalogueNames, catalogueWords } from '../../words/catalogue';
import { useApp } from '../app-context';

export interface ShownCatalogue {
  readonly born: CatalogueBase<Point>;
  readonly now: ShopCatalogueNow<Point>;
  readonly versions: readonly CatalogueVersion[];
  /** Why the versions do not fit the catalogue, where they do not; then `now` is the catalogue as it was born. */
  readonly fault?: string | undefined;
  readonly names: CatalogueNames;
}

export function useCatalogue(): ShownCatalogue | undefined {
  const app = useApp();
  const { rows: versions, loaded } = useStore(app.catalogueVersions);
  const [born, setBorn] = useState<CatalogueBase<Point>>();
  useEffect(() => {
    let isHere = true;
    void app.loadCatalogue().then((catalogue) => isHere && setBorn(catalogue));
    return () => {
      isHere = false;
    };
  }, [app]);
  return useMemo(() => {
    if (born === undefined || !loaded) return undefined;
    const applied = applyShopChanges(born, versions);
    const now = applied.ok ? applied.value : { ...born, figures: [], off: [], own: [] };
    const names = namesIn(born, now);
    const fault = applied.ok ? undefined : catalogueWords.refusal(applied.refusal, names);
    return { born, now, versions, names, ...(fault !== undefined && { fault }) };
  }, [born, loaded, versions]);
}

/** Names of today before names at birth, so that words which were changed are the ones that are read. */
function namesIn(born: CatalogueBase<Point>, now: CatalogueBase<Point>): CatalogueNames {
  const both = [born, now];
  const steps = new Map(both.flatMap((one) => one.catalogue.steps.map((step) => [step.id, step])));
  const joints = new Map(both.flatMap((one) => one.catalogue.joints.map((j) => [j.id, j.name])));
  const parts = new Map(born.catalogue.parts.map((part) => [part.id, part]));
  const points = new Map(born.points.map(({ id, name }) => [id, name]));
  const bornSteps = new Map(born.catalogue.steps.map((step) => [step.id, step]));
  return {
    step: (id) => steps.get(id)?.title ?? id,
    joint: (id) => joints.get(id) ?? id,
    part: (id) => parts.get(id)?.name ?? id,
    point: (id) => points.get(id) ?? id,
    conditionOf: (id) => (bornSteps.get(id) ?? steps.get(id) ?? parts.get(id))?.when,
  };
}

/** Whether who is at the stand may change the catalogue. */
export function maySupervise(roles: readonly string[] | undefined): boolean {
  return roles?.includes('supervisor') ?? false;
}
