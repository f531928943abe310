import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { axles, brakes, extras, factsOf, questions, stems } from '../../../src/engine/bike';
import { bikeFrom, mountainBike, townBike } from '../../support/bikes';

describe('answers', () => {
  const facts = factsOf(bikeFrom(townBike));

  test.each<[question: string, answer: unknown]>([
    ['kind', 'town'],
    ['front.brake', 'linear-pull'],
    ['rear.fitted', true],
    ['front.fitted', false],
    ['seat.postDiameter', 27.2],
    ['steering.faceplateBolts', 1],
    ['gears.speeds', 7],
    ['extras', ['mudguards', 'rack', 'stand', 'bell', 'reflectors', 'dynamo-lights', 'chainguard']],
  ])('[K2] %s', (question, answer) => {
    expect(facts[question]).toEqual(answer);
  });

  test('[K2] what the description leaves open has no answer', () => {
    for (const open of ['front.tyrePressure', 'frame.minimumInsertion', 'gtin', 'loadLimit'])
      expect(Object.hasOwn(facts, open)).toBe(false);
  });
});

describe('questions', () => {
  test('[K2] each names one place of the description, and none is a whole part', () => {
    expect(new Set(questions).size).toBe(questions.length);
    expect(questions).toContain('front.discMount');
    expect(questions).toContain('frame.minimumInsertion');
    expect(questions).toContain('extras');
    expect(questions).not.toContain('front');
    expect(questions).not.toContain('');
  });

  test('[K2] bikes that say everything answer every question between them, and no other', () => {
    const wheel = {
      tyrePressure: '40-65 psi',
      rimMaxKpa: 400,
      rimInnerWidth: 25,
      axle: 'thru-axle',
      axleThread: 'M12×1.5',
    };
    const told = bikeFrom(mountainBike, {
      gtin: '2900000000018',
      colour: 'slate',
      size: 'M',
      loadLimit: 120,
      frame: { minimumInsertion: 80, shock: 'air' },
      front: wheel,
      rear: wheel,
      assist: 'hub-motor',
    });
    const cargo = bikeFrom(townBike, { kind: 'cargo' });
    const answered = [...Object.keys(factsOf(told)), ...Object.keys(factsOf(cargo))];
    expect([...new Set(answered)].sort()).toEqual([...questions].sort());
  });

  test('[K2] no bike answers a question that does not exist', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...axles),
        fc.constantFrom(...brakes),
        fc.constantFrom(...stems),
        fc.subarray([...extras]),
        fc.boolean(),
        (axle, brake, stem, carried, hookless) => {
          const bike = bikeFrom(mountainBike, {
            front: { axle, brake, hookless },
            steering: { stem },
            extras: carried,
          });
          for (const question of Object.keys(factsOf(bike))) expect(questions).toContain(question);
        },
      ),
      { seed: 2203 },
    );
  });
});
