/** Minimum insertion: which rule limits, and what is refused. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { minimumInsertion, minimumQuillInsertion } from '../../../src/engine/fit';
import { millimetres } from '../../../src/engine/units';

const mm = millimetres;
const post = { diameter: mm(27.2) };

describe('minimumInsertion', () => {
  test.each<[situation: string, asked: Parameters<typeof minimumInsertion>[0], answer: object]>([
    ['a round post', { post }, { minimum: 54.4, limitedBy: 'diameter' }],
    ['a round post that says so', { post: { ...post, circular: true } }, { minimum: 54.4 }],
    [
      'a post that is not round',
      { post: { ...post, circular: false } },
      { minimum: 65, limitedBy: 'shape' },
    ],
    ['a mark further up', { post: { ...post, mark: mm(80) } }, { minimum: 80, limitedBy: 'mark' }],
    [
      'a mark too far down',
      { post: { ...post, mark: mm(40) } },
      { minimum: 54.4, limitedBy: 'diameter' },
    ],
    [
      'a frame that asks for more than the mark',
      { post: { ...post, mark: mm(80) }, frame: { minimum: mm(100) } },
      { minimum: 100, limitedBy: 'frame' },
    ],
    [
      'a frame that asks for less',
      { post, frame: { minimum: mm(50) } },
      { minimum: 54.4, limitedBy: 'diameter' },
    ],
    ['a frame that asks for nothing', { post, frame: {} }, { limitedBy: 'diameter' }],
  ])('[F2] %s', (_, asked, answer) => {
    expect(minimumInsertion(asked)).toMatchObject({ ok: true, value: answer });
  });

  test('[F3] a post shorter than the minimum is refused with both lengths, one of just that length is not', () => {
    const short = { ...post, length: mm(99) };
    const frame = { minimum: mm(100) };
    expect(minimumInsertion({ post: short, frame })).toEqual({
      ok: false,
      refusal: { code: 'post-too-short', length: 99, minimum: 100, limitedBy: 'frame' },
    });
    expect(minimumInsertion({ post: { ...post, length: mm(100) }, frame }).ok).toBe(true);
  });

  test('[F2] no known rule ever asks for more than the answer', () => {
    const length = fc.double({ min: 1, max: 400, noNaN: true });
    fc.assert(
      fc.property(length, length, length, (diameter, mark, minimum) => {
        const answer = minimumInsertion({
          post: { diameter: mm(diameter), mark: mm(mark) },
          frame: { minimum: mm(minimum) },
        });
        const expected = Math.max(2 * diameter, mark, minimum);
        expect(answer.ok && answer.value.minimum).toBe(expected);
      }),
    );
  });
});

test('[F4] a mark further up rules over 2.5 diameters, one further down does not', () => {
  const diameter = mm(22.2);
  expect(minimumQuillInsertion({ diameter, mark: mm(70) })).toEqual({
    minimum: 70,
    limitedBy: 'mark',
  });
  expect(minimumQuillInsertion({ diameter, mark: mm(50) }).limitedBy).toBe('diameter');
});
