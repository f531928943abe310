/** What a shop may not change, whatever bike comes: safety first, and nothing that says nothing. */

import type { Refusal } from '../base';
import { unaskable } from './answers-by-question';
import type { CatalogueBase, ShopCatalogueNow } from './apply-shop-changes';
import type { Joint, Step } from './catalogue.schema';
import type { ShopChange } from './shop-change.schema';

/** A figure further than this from the usual range, as a factor, is more likely a slip of the pen than a find. */
const farFromUsual = 2;

export type ChangeForbidden = Refusal &
  (
    | { readonly code: 'tightening-stays'; readonly step: string; readonly joint: string }
    | { readonly code: 'caution-stays'; readonly step: string; readonly caution: string }
    | { readonly code: 'change-says-nothing' }
    | { readonly code: 'effort-out-of-order'; readonly step: string }
    | { readonly code: 'range-out-of-order'; readonly joint: string }
    | {
        readonly code: 'figure-far-from-usual';
        readonly joint: string;
        readonly usual: Joint['usual'];
      }
    | { readonly code: 'own-point-unknown'; readonly step: string; readonly point: string }
    | { readonly code: 'own-question-unknown'; readonly question: string; readonly answer?: string }
    | { readonly code: 'version-to-take-back-unknown' }
  );

/**
 * Whether one change may be made to the catalogue as the shop has it `now`, over what the app was born with.
 * A class A joint keeps its tightening step, and a step every caution it was born with. Figures and ranges in N·m,
 * efforts in minutes.
 */
export function forbiddenChange(
  born: CatalogueBase,
  now: ShopCatalogueNow,
  change: ShopChange,
): ChangeForbidden | undefined {
  const stepOf = (id: string): Step | undefined => now.catalogue.steps.find((one) => one.id === id);
  const jointOf = (id: string | undefined) => now.catalogue.joints.find((one) => one.id === id);
  switch (change.kind) {
    case 'switch-off': {
      const joint = jointOf(stepOf(change.step)?.joint);
      if (joint?.risk !== 'A') return undefined;
      return { code: 'tightening-stays', step: change.step, joint: joint.id };
    }
    case 'change-words': {
      if (Object.keys(change.words).length === 0) return { code: 'change-says-nothing' };
      const { cautions } = change.words;
      const first = born.catalogue.steps.find(({ id }) => id === change.step);
      const gone = cautions && first?.cautions.find((caution) => !cautions.includes(caution));
      return gone === undefined
        ? undefined
        : { code: 'caution-stays', step: change.step, caution: gone };
    }
    case 'set-effort':
      return effortFault(change.step, change.effort);
    case 'add-step':
      return ownStepFault(now, change);
    case 'add-joint': {
      const { id, usual } = change.joint;
      return usual.min < usual.max ? undefined : { code: 'range-out-of-order', joint: id };
    }
    case 'approve-figure':
      return figureFault(jointOf(change.joint), change);
    case 'take-back':
      return undefined;
  }
}

function effortFault(
  step: string,
  [least, likely, most]: Step['effort'],
): ChangeForbidden | undefined {
  const isInOrder = least <= likely && likely <= most;
  return isInOrder ? undefined : { code: 'effort-out-of-order', step };
}

function ownStepFault(
  { points }: CatalogueBase,
  { step, lookedAtBy }: Extract<ShopChange, { readonly kind: 'add-step' }>,
): ChangeForbidden | undefined {
  const wrong = unaskable(step.when);
  if (wrong !== undefined)
    return {
      code: 'own-question-unknown',
      question: wrong.question,
      ...(wrong.answer !== undefined && { answer: String(wrong.answer) }),
    };
  const point = lookedAtBy.find((id) => !points.some((one) => one.id === id));
  if (point !== undefined) return { code: 'own-point-unknown', step: step.id, point };
  return effortFault(step.id, step.effort);
}

function figureFault(
  joint: Joint | undefined,
  { joint: id, figure }: Extract<ShopChange, { readonly kind: 'approve-figure' }>,
): ChangeForbidden | undefined {
  const { min, max, target } = figure;
  const inOrder = [min, target, max].filter((value) => value !== undefined);
  if (inOrder.length === 0) return { code: 'change-says-nothing' };
  if (inOrder.some((value, index) => value < (inOrder[index - 1] ?? 0)))
    return { code: 'range-out-of-order', joint: id };
  if (joint === undefined) return undefined;
  const usuals = [joint, ...joint.variants].flatMap(({ usual }) => usual ?? []);
  const usual = {
    min: Math.min(...usuals.map((one) => one.min)),
    max: Math.max(...usuals.map((one) => one.max)),
  };
  const isFar = inOrder.some(
    (value) => value > usual.max * farFromUsual || value < usual.min / farFromUsual,
  );
  return isFar ? { code: 'figure-far-from-usual', joint: id, usual } : undefined;
}
