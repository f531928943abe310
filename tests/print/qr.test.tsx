/** What is drawn is read back by a reader that knows nothing of how it was drawn. */

import { render } from '@testing-library/react';
import jsqr from 'jsqr';
import { describe, expect, test } from 'vitest';
import { Qr } from '../../src/print/qr';

/** Pixels for one square of the code: a reader needs more than one. */
const scale = 4;

/** A compact JWS over a P-256 key is about this long and uses this alphabet (RFC 7515, RFC 4648 §5). */
const jws = `${'eyJhbGciOiJFUzI1NiJ9'}.${'abcXYZ019-_'.repeat(22)}.${'0Qz-_k9'.repeat(12)}rT`;

describe('a QR code', () => {
  test.each([
    ['a record code', 'K7-4Q2M'],
    ['an address with capitals and signs', 'https://example.org/#/record/Ab-9_z?x=1&y=2'],
    ['letters beyond ASCII, as UTF-8', 'Grüße aus Łódź, 工具'],
    ['a compact JWS as on the sheet', jws],
  ])('of %s decodes to its text', (_, text) => {
    expect(decoded(drawn(text))).toBe(text);
  });

  test('has a quiet edge, so that ink beside it does not spoil it', () => {
    const { squares } = squaresOf(drawn('edge'));
    expect(Math.min(...squares.flat())).toBeGreaterThanOrEqual(2);
  });

  test('is an image with a name', () => {
    const { getByRole } = render(<Qr text="K7" title="Code of this record" />);
    expect(getByRole('img', { name: 'Code of this record' })).toBeVisible();
  });
});

function drawn(text: string): SVGSVGElement {
  const { container } = render(<Qr text={text} title="code" />);
  const svg = container.querySelector('svg');
  if (svg === null) throw new Error('nothing was drawn');
  return svg;
}

/** The places of the dark squares, out of the path as drawn. */
function squaresOf(svg: SVGSVGElement) {
  const size = Number(svg.getAttribute('viewBox')?.split(' ')[2]);
  const path = svg.querySelector('path')?.getAttribute('d') ?? '';
  const squares = [...path.matchAll(/M(\d+) (\d+)h1v1h-1z/g)].map(([, x, y]) => [
    Number(x),
    Number(y),
  ]);
  return { size, squares };
}

function decoded(svg: SVGSVGElement): string | undefined {
  const { size, squares } = squaresOf(svg);
  const width = size * scale;
  const pixels = new Uint8ClampedArray(width * width * 4).fill(255);
  for (const [x = 0, y = 0] of squares)
    for (let dy = 0; dy < scale; dy += 1)
      for (let dx = 0; dx < scale; dx += 1)
        pixels.fill(
          0,
          ((y * scale + dy) * width + x * scale + dx) * 4,
          ((y * scale + dy) * width + x * scale + dx) * 4 + 3,
        );
  return jsqr(pixels, width, width)?.data;
}
