import { describe, expect, test } from 'vitest';
import { resolvePlan } from '../../../src/engine/plan';
import { bikeFrom, mountainBike, townBike } from '../../support/bikes';
import { catalogueOf } from '../../support/catalogues';

const catalogue = catalogueOf({
  steps: [
    { id: 'unpack' },
    { id: 'stem-on-steerer', when: { ask: 'steering.stem', is: 'threadless' } },
    { id: 'stem-in-steerer', when: { ask: 'steering.stem', is: 'quill' } },
    { id: 'front-disc', when: { ask: 'front.brake', is: ['hydraulic-disc', 'cable-disc'] } },
    { id: 'rear-disc', when: { ask: 'rear.brake', is: 'hydraulic-disc' } },
    { id: 'anything-but-a-coaster', when: { not: { ask: 'rear.brake', is: 'coaster' } } },
    { id: 'front-lever', when: { ask: 'front.axle', is: 'quick-release' } },
  ],
});

describe('features without work', () => {
  test.each<[situation: string, changes: Record<string, unknown>, features: object[]]>([
    [
      'a form that the catalogue does not know, where it knows others',
      { steering: { stem: 'integrated' } },
      [{ question: 'steering.stem', answer: 'integrated' }],
    ],
    [
      'to exclude another form is not to build this one',
      { rear: { brake: 'roller' } },
      [{ question: 'rear.brake', answer: 'roller' }],
    ],
    [
      'every feature is named, in one refusal',
      { front: { axle: 'thru-axle', brake: 'drum' }, assist: 'mid-motor' },
      [
        { question: 'front.brake', answer: 'drum' },
        { question: 'front.axle', answer: 'thru-axle' },
        { question: 'assist', answer: 'mid-motor' },
        { question: 'battery', answer: 'removable' },
      ],
    ],
    [
      'a motor, its hub and its battery',
      { assist: 'hub-motor' },
      [
        { question: 'assist', answer: 'hub-motor' },
        { question: 'battery', answer: 'removable' },
        { question: 'rear.hub', answer: 'motor' },
      ],
    ],
    [
      'a cargo bike has a load somewhere',
      { kind: 'cargo', frame: { load: 'long-tail' } },
      [{ question: 'frame.load', answer: 'long-tail' }],
    ],
    [
      'a hose that is not joined yet',
      { front: { hose: 'to-fit' } },
      [{ question: 'front.hose', answer: 'to-fit' }],
    ],
    ['a hinge', { kind: 'folding' }, [{ question: 'kind', answer: 'folding' }]],
    [
      'a rear wheel loose in the box',
      { rear: { fitted: false } },
      [{ question: 'rear.fitted', answer: false }],
    ],
    [
      'cranks loose in the box',
      { cranks: { fitted: false } },
      [{ question: 'cranks.fitted', answer: false }],
    ],
    [
      'electronic gears',
      { gears: { kind: 'electronic-derailleur' } },
      [{ question: 'gears.kind', answer: 'electronic-derailleur' }],
    ],
    [
      'extras that carry or hold up a child',
      { rear: { axle: 'nutted' }, extras: ['bell', 'stabilisers', 'child-seat-mount'] },
      [
        { question: 'extras', answer: 'stabilisers' },
        { question: 'extras', answer: 'child-seat-mount' },
      ],
    ],
    [
      'a seat post that drops',
      { seat: { post: 'dropper-cable' } },
      [{ question: 'seat.post', answer: 'dropper-cable' }],
    ],
  ])('[P8] %s', (_, changes, features) => {
    expect(resolvePlan(bikeFrom(mountainBike, changes), catalogue)).toEqual({
      ok: false,
      refusal: { code: 'bike-outside-catalogue', features },
    });
  });

  test.each<[situation: string, changes: Record<string, unknown>]>([
    ['a known bike', {}],
    ['another known form', { steering: { stem: 'quill' }, front: { brake: 'cable-disc' } }],
    ['an extra that asks for no work', { extras: ['bell', 'lock'] }],
    ['a wheel without a brake asks for no brake work', { front: { brake: 'none' } }],
    ['a question that the catalogue never asks tells no forms apart', { rear: { axle: 'nutted' } }],
  ])('[P8] %s is inside', (_, changes) => {
    expect(resolvePlan(bikeFrom(mountainBike, changes), catalogue).ok).toBe(true);
  });

  test('[P8] a feature with work of its own is inside once the catalogue has that work', () => {
    const more = catalogueOf({
      steps: [
        { id: 'motor', when: { any: [{ ask: 'assist', is: ['mid-motor', 'hub-motor'] }] } },
        { id: 'battery', when: { ask: 'battery', known: true } },
        { id: 'battery-in', when: { ask: 'battery', is: 'removable' } },
        { id: 'hinge', when: { all: [{ ask: 'kind', is: 'folding' }] } },
      ],
    });
    expect(resolvePlan(bikeFrom(townBike, { assist: 'mid-motor', kind: 'folding' }), more).ok).toBe(
      true,
    );
  });

  test('[P8] a form told apart by the joint that a step tightens is built by it', () => {
    const clip = { when: { ask: 'seat.saddleClamp', is: 'clip' }, bit: '13 mm socket' };
    const bike = bikeFrom(townBike, { seat: { saddleClamp: 'clip' } });
    const rails = { id: 'rails', variants: [clip] };
    const tightened = { steps: [{ id: 'saddle', joint: 'rails' }], joints: [rails] };
    const idle = { steps: [{ id: 'saddle' }], joints: [rails] };
    expect(resolvePlan(bike, catalogueOf(tightened)).ok).toBe(true);
    expect(resolvePlan(bike, catalogueOf(idle))).toMatchObject({
      refusal: { features: [{ question: 'seat.saddleClamp', answer: 'clip' }] },
    });
  });
});
