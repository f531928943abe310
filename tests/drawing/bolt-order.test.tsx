import { render, screen } from '@testing-library/react';
import { describe, expect, test } from 'vitest';
import { BoltOrder } from '../../src/drawing';
import { boltPicture, boltRadius } from '../../src/drawing/bolt-places';
import { type Layout, tighteningOrder } from '../../src/engine/torque';

const four: Layout = { shape: 'rectangle', bolts: 4 };

function turnsOf(layout: Layout): readonly string[] {
  const order = tighteningOrder(layout);
  const { container } = render(<BoltOrder layout={layout} order={order} pass={1} title="Order" />);
  return [...container.querySelectorAll('[data-bolt] text')].map((text) => text.textContent ?? '');
}

describe('the order of the bolts, drawn', () => {
  test('each of four bolts round a faceplate shows when its turn is: opposite corners follow each other', () => {
    // bolts clockwise from top left; order 1-3-2-4 after the cross pattern of ASME PCC-1 (from memory)
    expect(turnsOf(four)).toEqual(['1', '3', '2', '4']);
    const { bolts } = boltPicture(four);
    const [topLeft, , bottomRight] = bolts;
    expect(bottomRight?.x).toBeGreaterThan(topLeft?.x ?? 0);
    expect(bottomRight?.y).toBeGreaterThan(topLeft?.y ?? 0);
  });

  test.each([
    ['ring', 6],
    ['ring', 5],
    ['ring', 8],
    ['line', 3],
    ['rectangle', 6],
    ['pair', 2],
    ['opposed', 2],
  ] as const)('every bolt of a %s of %d has one turn, and no two bolts touch', (shape, count) => {
    const turns = turnsOf({ shape, bolts: count });
    expect([...turns].map(Number).sort((a, b) => a - b)).toEqual(
      Array.from({ length: count }, (_, index) => index + 1),
    );
    const { bolts, width, height } = boltPicture({ shape, bolts: count });
    for (const [index, a] of bolts.entries()) {
      expect(a.x - boltRadius).toBeGreaterThan(0);
      expect(a.x + boltRadius).toBeLessThan(width);
      expect(a.y + boltRadius).toBeLessThan(height);
      for (const b of bolts.slice(index + 1))
        expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeGreaterThan(boltRadius * 2);
    }
  });

  test('the way has one leg fewer than bolts, and the pass shows as so many strokes', () => {
    const { container } = render(
      <BoltOrder layout={four} order={[1, 3, 2, 4]} pass={3} title="Third pass" />,
    );
    expect(container.querySelector('[data-way]')?.getAttribute('d')?.match(/M/g)).toHaveLength(3);
    expect(container.querySelectorAll('[data-pass="3"] line')).toHaveLength(3);
    expect(screen.getByRole('img', { name: 'Third pass' })).toBeInTheDocument();
  });

  test.each([
    ['right', 'clockwise'],
    ['left', 'anticlockwise'],
  ] as const)('a single bolt of %s hand tightens %s', (hand, turn) => {
    const { container } = render(
      <BoltOrder
        layout={{ shape: 'line', bolts: 1 }}
        order={[1]}
        pass={1}
        hand={hand}
        title="One"
      />,
    );
    expect(container.querySelectorAll('[data-bolt]')).toHaveLength(1);
    expect(container.querySelector(`[data-turn="${turn}"]`)).not.toBeNull();
    // the arc opens below, so its arrow points at the lower right when it goes clockwise, at the lower left when not
    const [, head] = container.querySelectorAll('[data-turn] path');
    const tip = head?.getAttribute('d')?.split('L')[1]?.split(' ').map(Number) ?? [];
    const bolt = container.querySelector('[data-bolt] circle');
    const [right, below] = ['cx', 'cy'].map(
      (name, axis) => (tip[axis] ?? 0) - Number(bolt?.getAttribute(name)),
    );
    expect(Math.sign(right ?? 0)).toBe(hand === 'right' ? 1 : -1);
    expect(below).toBeGreaterThan(0);
  });

  test('carries no style of its own', () => {
    const { container } = render(
      <BoltOrder layout={four} order={[1, 3, 2, 4]} pass={1} title="Order" />,
    );
    expect(container.querySelectorAll('[style], style')).toHaveLength(0);
  });
});
