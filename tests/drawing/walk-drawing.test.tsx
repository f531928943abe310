import { render, screen } from '@testing-library/react';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { geometryOf, pointStates, WalkDrawing, type WalkPoint } from '../../src/drawing';
import { spreadMarks } from '../../src/drawing/spread-marks';
import { type Place, places } from '../../src/engine/bike';
import { hardtail, town } from './bikes';

const at = (place: Place, number: number, state: WalkPoint['state']): WalkPoint => ({
  id: `${place}-${number}`,
  place,
  number,
  state,
});

describe('the walk, drawn', () => {
  test('marks every point with its state and names the picture', () => {
    const points = pointStates.map((state, index) => at(places[index * 5] ?? 'bar', index, state));
    const { container } = render(<WalkDrawing bike={town} title="Six points" points={points} />);
    expect(screen.getByRole('img', { name: 'Six points' })).toBeInTheDocument();
    const states = [...container.querySelectorAll('[data-point]')].map((g) =>
      g.getAttribute('data-state'),
    );
    expect([...states].sort()).toEqual([...pointStates].sort());
  });

  test('tells states apart by shape, not by colour', () => {
    const shapeOf = (state: WalkPoint['state']) => {
      const { container } = render(
        <WalkDrawing bike={town} title="One" points={[at('bar', 1, state)]} />,
      );
      const mark = container.querySelector('[data-point]');
      return [...(mark?.querySelectorAll('*') ?? [])]
        .map((e) =>
          [
            e.tagName,
            e.getAttribute('r'),
            e.getAttribute('class'),
            e.getAttribute('d')?.replace(/[-\d. ]+/g, ''),
          ].join(),
        )
        .join('|');
    };
    expect(new Set(pointStates.map(shapeOf)).size).toBe(pointStates.length);
  });

  test('numbers the point that is now, and draws it over the others', () => {
    const points = [at('bar', 7, 'now'), at('stem', 8, 'todo')];
    const { container } = render(<WalkDrawing bike={hardtail} title="Two" points={points} />);
    expect(screen.getByText('7')).toBeInTheDocument();
    expect([...container.querySelectorAll('[data-point]')].at(-1)).toHaveAttribute(
      'data-state',
      'now',
    );
  });

  test('a walk without points is only the bike', () => {
    const { container } = render(<WalkDrawing bike={hardtail} title="None" points={[]} />);
    expect(container.querySelector('[data-point]')).toBeNull();
    expect(container.innerHTML).not.toMatch(/NaN|undefined/);
  });
});

describe('marks that would cover each other', () => {
  const box = geometryOf(hardtail).box;
  const mark = fc.record({
    x: fc.double({ min: box.x, max: box.x + box.width, noNaN: true }),
    y: fc.double({ min: box.y, max: box.y + box.height, noNaN: true }),
    r: fc.constantFrom(20, 50),
  });

  test('move apart, stay in the drawing, and do so the same way each time', () => {
    fc.assert(
      fc.property(fc.array(mark, { maxLength: 40 }), (marks) => {
        const spread = spreadMarks(marks, box);
        expect(spreadMarks(marks, box)).toEqual(spread);
        for (const { x, y, r } of spread) {
          expect(x - r).toBeGreaterThanOrEqual(box.x - 1e-6);
          expect(y + r).toBeLessThanOrEqual(box.y + box.height + 1e-6);
        }
      }),
      { numRuns: 40 },
    );
  });

  test('forty points on one spot end beside each other', () => {
    const marks = Array.from({ length: 40 }, () => ({ x: 500, y: -600, r: 20 }));
    const spread = spreadMarks(marks, box);
    for (const [index, a] of spread.entries())
      for (const b of spread.slice(index + 1))
        expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeGreaterThan(20);
  });

  test('marks that lie apart stay where they are', () => {
    const marks = [
      { x: 100, y: -500, r: 20 },
      { x: 300, y: -500, r: 20 },
    ];
    expect(spreadMarks(marks, box)).toEqual(marks);
  });
});
