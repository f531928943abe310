/** What is typed about one box, and the bike it describes once every field makes sense. */

import { type Bike, type BikeKind, isGtin } from '../engine/bike';
import { detailsOf, withDetails } from './bike-details';
import type { BoxDraft } from './box-answers';
import { type FaultsByPlace, readBox } from './box-faults';
import { usualAnswers } from './usual-answers';

/**
 * The bike's own answers, for correcting its description before its job opens. An article number that is none is left
 * out: goods-in took such numbers once.
 */

export function draftOf(bike: Bike, due: string | undefined): BoxDraft {
  return {
    ...draftLike(bike, emptyDraft),
    frameNumber: bike.frameNumber,
    gtin: bike.gtin !== undefined && isGtin(bike.gtin) ? bike.gtin : '',
    due: due ?? '',
  };
}

/** What nobody has been asked is not known: a material above all. */
export const emptyDraft: BoxDraft = {
  make: '',
  model: '',
  kind: 'mountain-hardtail',
  frameNumber: '',
  gtin: '',
  colour: '',
  size: '',
  due: '',
  cartonDamage: '',
  frontTyre: '',
  rearTyre: '',
  pressure: '',
  frameMaterial: 'unknown',
  barMaterial: 'unknown',
  postMaterial: 'unknown',
  steererMaterial: 'unknown',
  loadLimit: '',
  assist: 'none',
  ...usualAnswers['mountain-hardtail'],
};

/** The draft after another kind was picked: its commonest answers, what was typed stays. */
export function withKind(draft: BoxDraft, kind: BikeKind): BoxDraft {
  return { ...draft, kind, ...usualAnswers[kind] };
}

/** What is known of a bike that came before under the same article number. */
export function draftLike(bike: Bike, draft: BoxDraft): BoxDraft {
  return {
    ...draft,
    make: bike.make,
    model: bike.model,
    kind: bike.kind,
    colour: bike.colour ?? '',
    size: bike.size ?? '',
    fork: bike.fork.kind,
    frontAxle: bike.front.axle,
    rearAxle: bike.rear.axle,
    frontBrake: bike.front.brake,
    rearBrake: bike.rear.brake,
    frontTyre: bike.front.tyre,
    rearTyre: bike.rear.tyre,
    pressure: bike.front.tyrePressure ?? '',
    stem: bike.steering.stem,
    bar: bike.steering.bar,
    gears: bike.gears.kind,
    speeds: String(bike.gears.speeds),
    clamp: bike.seat.clamp,
    post: String(bike.seat.postDiameter),
    frameMaterial: bike.frame.material,
    barMaterial: bike.steering.barMaterial,
    postMaterial: bike.seat.postMaterial,
    steererMaterial: bike.fork.steerer,
    extras: bike.extras,
    loadLimit: bike.loadLimit === undefined ? '' : String(bike.loadLimit),
    assist: bike.assist,
    details: detailsOf(bike),
  };
}

export type DraftReading =
  | { readonly ok: true; readonly bike: Bike }
  /** The fields to look at again, by the dotted place in the description, with what to write there. */
  | { readonly ok: false; readonly wrong: FaultsByPlace };

export function readDraft(draft: BoxDraft): DraftReading {
  const { bike, wrong } = readBox(withDetails(describedBy(draft), draft), {
    gtin: some(draft.gtin),
    numbers: {
      'seat.postDiameter': numberIn(draft.post),
      'gears.speeds': numberIn(draft.speeds),
      loadLimit: numberIn(draft.loadLimit),
    },
    front: { tyre: draft.frontTyre.trim(), tyrePressure: some(draft.pressure) },
    rear: { tyre: rearTyreOf(draft), tyrePressure: some(draft.pressure) },
  });
  return bike === undefined ? { ok: false, wrong } : { ok: true, bike };
}

function some(text: string): string | undefined {
  return text.trim() === '' ? undefined : text.trim();
}

function numberIn(text: string): number | undefined {
  const typed = some(text);
  return typed === undefined ? undefined : Number(typed.replace(',', '.'));
}

/** Left empty, it is like the front one. */
function rearTyreOf({ rearTyre, frontTyre }: BoxDraft): string {
  return some(rearTyre) ?? frontTyre.trim();
}

function describedBy(draft: BoxDraft): object {
  const wheel = (axle: string, brake: string, tyre: string) => ({
    axle,
    brake,
    tyre,
    tyrePressure: some(draft.pressure),
  });
  return {
    make: draft.make,
    model: draft.model,
    kind: draft.kind,
    assist: draft.assist,
    frameNumber: draft.frameNumber,
    gtin: some(draft.gtin),
    colour: some(draft.colour),
    size: some(draft.size),
    frame: { material: draft.frameMaterial },
    fork: { kind: draft.fork, steerer: draft.steererMaterial },
    front: wheel(draft.frontAxle, draft.frontBrake, draft.frontTyre.trim()),
    rear: wheel(draft.rearAxle, draft.rearBrake, rearTyreOf(draft)),
    steering: {
      stem: draft.stem,
      bar: draft.bar,
      barMaterial: draft.barMaterial,
      faceplateBolts: draft.stem === 'quill' ? 1 : 4,
    },
    seat: {
      clamp: draft.clamp,
      postMaterial: draft.postMaterial,
      postDiameter: numberIn(draft.post),
    },
    gears: {
      kind: draft.gears,
      speeds: numberIn(draft.speeds),
      ...(draft.kind === 'balance' && { drive: 'none', chainrings: 0 }),
    },
    cranks: {},
    pedals: {},
    extras: draft.extras,
    loadLimit: numberIn(draft.loadLimit),
  };
}
