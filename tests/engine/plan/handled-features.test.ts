import { expect, test } from 'vitest';
import { factsOf, questions } from '../../../src/engine/bike';
import { featuresToHandle } from '../../../src/engine/plan';
import { bikeFrom, mountainBike, townBike } from '../../support/bikes';

// Source of all rows: common practice, no source.
test.each<
  [situation: string, changes: Record<string, unknown>, feature: string, isHandled: boolean]
>([
  ['a hydraulic brake', {}, 'front.brake=hydraulic-disc', true],
  ['no brake', { front: { brake: 'none' } }, 'front.brake=none', false],
  ['a carbon bar', { steering: { barMaterial: 'carbon' } }, 'steering.barMaterial=carbon', true],
  ['an aluminium bar', {}, 'steering.barMaterial=aluminium', false],
  ['an extra', { extras: ['lock'] }, 'extras=lock', true],
  ['a motor', { assist: 'mid-motor' }, 'assist=mid-motor', true],
  ['a hinge', { kind: 'folding' }, 'kind=folding', true],
  ['a kind that is only a name', {}, 'kind=mountain-hardtail', false],
  ['a hose to fit', { rear: { hose: 'to-fit' } }, 'rear.hose=to-fit', true],
  ['a hose that is fitted', {}, 'rear.hose=fitted', false],
])('[P18] %s: %s asks for work or a look: %s', (_, changes, feature, isHandled) => {
  const features = featuresToHandle(factsOf(bikeFrom(mountainBike, changes)));
  const named = features.map(({ question, answer }) => `${question}=${String(answer)}`);
  expect(named.includes(feature)).toBe(isHandled);
});

test('[P18] nothing is asked of a bike that its description cannot say', () => {
  for (const { question } of featuresToHandle(factsOf(bikeFrom(townBike))))
    expect(questions).toContain(question);
});
