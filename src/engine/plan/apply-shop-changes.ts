/** The catalogue as a shop works by it: what the app was born with, and the shop's versions over it. */

import { ok, type Refusal, type Result, refuse } from '../base';
import type { Figure } from '../torque';
import type { Catalogue, Step } from './catalogue.schema';
import type { CatalogueVersion, ShopChange } from './shop-change.schema';
import type { LookedAt } from './soundness';
import { switchedOff } from './switched-off';
import { countingVersions, nextVersion } from './version-order';

/** What changes are made over: the catalogue, and the points of the walk. */
export interface CatalogueBase<Point extends LookedAt = LookedAt> {
  readonly catalogue: Catalogue;
  readonly points: readonly Point[];
}

export interface ApprovedFigure {
  readonly make: string;
  readonly model: string;
  readonly joint: string;
  readonly figure: Figure;
}

export interface ShopCatalogueNow<Point extends LookedAt = LookedAt> extends CatalogueBase<Point> {
  /** In the order in which they were approved. */
  readonly figures: readonly ApprovedFigure[];
  /** Steps that the shop has switched off, by id; they are in no plan. */
  readonly off: readonly string[];
  /** Steps and joints that are the shop's own, by id. */
  readonly own: readonly string[];
}

interface Bench {
  readonly steps: Step[];
  readonly joints: Catalogue['joints'];
  readonly own: Set<string>;
  readonly off: Set<string>;
  readonly lookedAtBy: Map<string, readonly string[]>;
  readonly figures: ApprovedFigure[];
}

/**
 * Lays the versions over the catalogue, in their order. A step that is switched off keeps its place and is in no plan;
 * what relied on it relies on what it relied on. An own step stands behind what it waits for, or ends its zone.
 * Refuses a change to what is not there, and an own id that is taken.
 */
export function applyShopChanges<Point extends LookedAt>(
  { catalogue, points }: CatalogueBase<Point>,
  versions: readonly CatalogueVersion[],
): Result<ShopCatalogueNow<Point>, ChangeUnmet> {
  const counting = countingVersions(versions);
  const bench: Bench = {
    steps: [...catalogue.steps],
    joints: [...catalogue.joints],
    own: new Set(),
    off: new Set(),
    lookedAtBy: new Map(),
    figures: [],
  };
  for (const version of counting)
    for (const change of version.changes) {
      const unmet = lay(bench, change, version);
      if (unmet !== undefined) return refuse({ ...unmet, version: version.id });
    }
  const off = switchedOff(bench.steps, bench.off);
  const last = versions.length === 0 ? '' : ` + ${nextVersion(versions) - 1}`;
  return ok({
    catalogue: {
      ...catalogue,
      version: `${catalogue.version}${last}`,
      steps: off.steps,
      joints: bench.joints,
    },
    points: points.map((point) => {
      const more = [...bench.lookedAtBy]
        .filter(([, seenBy]) => seenBy.includes(point.id))
        .map(([step]) => step);
      const reliesOn = off.bridged([...point.reliesOn, ...more]);
      return reliesOn.length === point.reliesOn.length ? point : { ...point, reliesOn };
    }),
    figures: bench.figures,
    off: [...bench.off],
    own: [...bench.own],
  });
}

export type ChangeUnmet = Refusal & { readonly version?: string } & (
    | { readonly code: 'change-without-step'; readonly step: string }
    | { readonly code: 'change-without-joint'; readonly joint: string }
    | { readonly code: 'own-id-taken'; readonly id: string }
  );

function lay(
  bench: Bench,
  change: ShopChange,
  { by, at }: CatalogueVersion,
): ChangeUnmet | undefined {
  if (change.kind === 'take-back') return undefined;
  if (change.kind === 'add-step') return addStep(bench, change);
  if (change.kind === 'add-joint') {
    const { id } = change.joint;
    const place = bench.joints.findIndex((joint) => joint.id === id);
    if (place >= 0 && !bench.own.has(id)) return { code: 'own-id-taken', id };
    bench.joints.splice(place < 0 ? bench.joints.length : place, place < 0 ? 0 : 1, {
      ...change.joint,
      variants: [],
    });
    bench.own.add(id);
    return undefined;
  }
  if (change.kind === 'approve-figure') {
    const { make, model, joint } = change;
    if (!bench.joints.some(({ id }) => id === joint))
      return { code: 'change-without-joint', joint };
    const source = { kind: 'approved', by, on: at.claimed.slice(0, 10) } as const;
    bench.figures.push({ make, model, joint, figure: { ...change.figure, source } });
    return undefined;
  }
  const place = bench.steps.findIndex(({ id }) => id === change.step);
  const step = bench.steps[place];
  if (step === undefined) return { code: 'change-without-step', step: change.step };
  if (change.kind === 'switch-off') bench.off.add(step.id);
  if (change.kind === 'switch-on') bench.off.delete(step.id);
  if (change.kind === 'set-effort') bench.steps[place] = { ...step, effort: change.effort };
  if (change.kind === 'change-words') bench.steps[place] = { ...step, ...change.words };
  return undefined;
}

function addStep(
  { steps, joints, own, lookedAtBy }: Bench,
  { step, lookedAtBy: seenBy }: Extract<ShopChange, { readonly kind: 'add-step' }>,
): ChangeUnmet | undefined {
  const held = steps.findIndex(({ id }) => id === step.id);
  if (held >= 0 && !own.has(step.id)) return { code: 'own-id-taken', id: step.id };
  const waitsFor = [...step.after, ...step.reliesOn];
  const missing = waitsFor.find((id) => id !== step.id && !steps.some((one) => one.id === id));
  if (missing !== undefined) return { code: 'change-without-step', step: missing };
  const { joint } = step;
  if (joint !== undefined && !joints.some(({ id }) => id === joint))
    return { code: 'change-without-joint', joint };
  if (held >= 0) steps.splice(held, 1);
  const behind = steps.findLastIndex(({ id }) => waitsFor.includes(id));
  const end = steps.findLastIndex(({ zone }) => zone === step.zone);
  steps.splice((behind < 0 ? end : behind) + 1, 0, { ...step, parts: [], measures: [] });
  own.add(step.id);
  lookedAtBy.set(step.id, seenBy);
  return undefined;
}
