import { expect, test } from 'vitest';
import { jointThread } from '../../../src/engine/plan';
import { seedCatalogue } from '../../support/seed-catalogue';

// Coarse pitches of ISO 261 (from memory; ISO 898-1 tables give the same sizes).
test.each<[text: string, diameter: number, pitch: number]>([
  ['M3', 3, 0.5],
  ['M4', 4, 0.7],
  ['M5', 5, 0.8],
  ['M6', 6, 1],
  ['M8', 8, 1.25],
  ['M10', 10, 1.5],
  ['M8×1', 8, 1],
  ['M10 x 1.25', 10, 1.25],
  [' M30×1 ', 30, 1],
])('[P31] %s is a thread of %d mm with a pitch of %d mm', (text, diameter, pitch) => {
  expect(jointThread(text)).toEqual({ diameter, pitch });
});

test.each([
  ['two sizes', 'M5 or M6'],
  ['a run of sizes', 'M3 to M5'],
  ['an axle whose pitch is not said', 'M12'],
  ['a size that the coarse series does not have', 'M9'],
  ['inches', '9/16 in × 20'],
  ['no size', 'M'],
  ['no pitch worth the name', 'M5×0'],
  ['nothing', ''],
])('[P31] %s names no thread', (_, text) => {
  expect(jointThread(text)).toBeUndefined();
});

test('[P31] the catalogue names one thread for most joints of M10 and below', () => {
  const texts = seedCatalogue().joints.map(({ thread }) => thread);
  const plain = texts.filter((text) => /^M([3-68]|10)$/.test(text));
  expect(plain.length).toBeGreaterThan(15);
  for (const text of plain) expect(jointThread(text), text).toBeDefined();
});
