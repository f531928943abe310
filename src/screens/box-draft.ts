/** What is typed about one box, and the bike it describes once every field makes sense. */

import { type Bike, type BikeKind, type Extra, isGtin } from '../engine/bike';
import { type FaultsByPlace, readBox } from './box-faults';

export interface BoxDraft {
  readonly make: string;
  readonly model: string;
  readonly kind: BikeKind;
  readonly frameNumber: string;
  readonly gtin: string;
  readonly colour: string;
  readonly size: string;
  readonly due: string;
  readonly cartonDamage: string;
  readonly fork: Bike['fork']['kind'];
  readonly frontAxle: Bike['front']['axle'];
  readonly rearAxle: Bike['rear']['axle'];
  readonly frontBrake: Bike['front']['brake'];
  readonly rearBrake: Bike['rear']['brake'];
  readonly frontTyre: string;
  readonly rearTyre: string;
  readonly pressure: string;
  readonly stem: Bike['steering']['stem'];
  readonly bar: Bike['steering']['bar'];
  readonly gears: Bike['gears']['kind'];
  readonly speeds: string;
  readonly clamp: Bike['seat']['clamp'];
  readonly post: string;
  readonly frameMaterial: Bike['frame']['material'];
  readonly barMaterial: Bike['frame']['material'];
  readonly postMaterial: Bike['frame']['material'];
  readonly steererMaterial: Bike['frame']['material'];
  readonly extras: readonly Extra[];
  readonly loadLimit: string;
}

/** The commonest answers for the two kinds a general shop sees most; every one can be changed. */
const mountain = {
  fork: 'suspension',
  frontAxle: 'quick-release',
  rearAxle: 'quick-release',
  frontBrake: 'hydraulic-disc',
  rearBrake: 'hydraulic-disc',
  stem: 'threadless',
  bar: 'riser',
  gears: 'derailleur',
  speeds: '12',
  clamp: 'bolt',
  post: '30.9',
  extras: ['reflectors', 'bell', 'spoke-guard'],
} as const satisfies Partial<BoxDraft>;

const town = {
  fork: 'rigid',
  frontAxle: 'nutted',
  rearAxle: 'nutted',
  frontBrake: 'linear-pull',
  rearBrake: 'linear-pull',
  stem: 'quill',
  bar: 'swept',
  gears: 'hub',
  speeds: '7',
  clamp: 'bolt',
  post: '27.2',
  extras: ['mudguards', 'rack', 'stand', 'bell', 'reflectors', 'chainguard'],
} as const satisfies Partial<BoxDraft>;

const likeTown: readonly BikeKind[] = ['town', 'trekking', 'child', 'folding', 'cargo'];

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
  ...mountain,
};

/** The draft after another kind was picked: its commonest answers, what was typed stays. */
export function withKind(draft: BoxDraft, kind: BikeKind): BoxDraft {
  return { ...draft, kind, ...(likeTown.includes(kind) ? town : mountain) };
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
  };
}

export type DraftReading =
  | { readonly ok: true; readonly bike: Bike }
  /** The fields to look at again, by the dotted place in the description, with what to write there. */
  | { readonly ok: false; readonly wrong: FaultsByPlace };

export function readDraft(draft: BoxDraft): DraftReading {
  const { bike, wrong } = readBox(describedBy(draft), {
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

function describedBy(draft: BoxDraft): unknown {
  const wheel = (axle: string, brake: string, tyre: string) => ({
    axle,
    brake,
    tyre,
    tyrePressure: some(draft.pressure),
    ...(brake.endsWith('-disc') && { discMount: 'post', rotor: 'six-bolt' }),
  });
  return {
    make: draft.make,
    model: draft.model,
    kind: draft.kind,
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
    gears: { kind: draft.gears, speeds: numberIn(draft.speeds) },
    cranks: {},
    pedals: {},
    extras: draft.extras,
    loadLimit: numberIn(draft.loadLimit),
  };
}
