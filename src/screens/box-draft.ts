/** What is typed about one box, and the bike it describes once every field makes sense. */

import { type Bike, type BikeKind, bikeSchema } from '../engine/bike';
import { parseTyreMarking } from '../engine/tyres';
import { detailsOf, withDetails } from './bike-details';
import type { BoxDraft } from './box-answers';
import { usualAnswers } from './usual-answers';

/** The bike's own answers, for correcting its description before its job opens. */
export function draftOf(bike: Bike, due: string | undefined): BoxDraft {
  return {
    ...draftLike(bike, emptyDraft),
    frameNumber: bike.frameNumber,
    gtin: bike.gtin ?? '',
    due: due ?? '',
  };
}

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
  frameMaterial: 'aluminium',
  barMaterial: 'aluminium',
  postMaterial: 'aluminium',
  steererMaterial: 'aluminium',
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
  /** The fields to look at again, by the dotted place in the description. */
  | { readonly ok: false; readonly wrong: ReadonlySet<string> };

export function readDraft(draft: BoxDraft): DraftReading {
  const parsed = bikeSchema.safeParse(withDetails(describedBy(draft), draft));
  if (parsed.success) {
    const wrong = unreadTyres(parsed.data);
    return wrong.size === 0 ? { ok: true, bike: parsed.data } : { ok: false, wrong };
  }
  return { ok: false, wrong: new Set(parsed.error.issues.map(({ path }) => path.join('.'))) };
}

/** A tyre size that cannot be read would stop the plan later; here it is still on the side wall in front of us. */
function unreadTyres({ front, rear }: Bike): ReadonlySet<string> {
  return new Set([
    ...(parseTyreMarking(front.tyre).ok ? [] : ['front.tyre']),
    ...(parseTyreMarking(rear.tyre).ok ? [] : ['rear.tyre']),
  ]);
}

function describedBy(draft: BoxDraft): object {
  const some = (text: string) => (text.trim() === '' ? undefined : text.trim());
  const number = (text: string) =>
    text.trim() === '' ? undefined : Number(text.replace(',', '.'));
  const wheel = (axle: string, brake: string, tyre: string) => ({
    axle,
    brake,
    tyre: tyre.trim(),
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
    front: wheel(draft.frontAxle, draft.frontBrake, draft.frontTyre),
    rear: wheel(draft.rearAxle, draft.rearBrake, draft.rearTyre || draft.frontTyre),
    steering: {
      stem: draft.stem,
      bar: draft.bar,
      barMaterial: draft.barMaterial,
      faceplateBolts: draft.stem === 'quill' ? 1 : 4,
    },
    seat: {
      clamp: draft.clamp,
      postMaterial: draft.postMaterial,
      postDiameter: number(draft.post),
    },
    gears: {
      kind: draft.gears,
      speeds: number(draft.speeds),
      ...(draft.kind === 'balance' && { drive: 'none', chainrings: 0 }),
    },
    cranks: {},
    pedals: {},
    extras: draft.extras,
    loadLimit: number(draft.loadLimit),
  };
}
