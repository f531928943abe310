/** The drawn bolts are as long as their clamping forces, on one scale with the load they bear. */

import { render, screen } from '@testing-library/react';
import { describe, expect, test } from 'vitest';
import { ClampForce, type ClampForceRow } from '../../src/drawing';
import { greaseEffect } from '../../src/engine/torque';
import { millimetres, newtonMetres } from '../../src/engine/units';

function draw(rows: readonly ClampForceRow[]) {
  const { container } = render(
    <ClampForce rows={rows} limitLabel="stretches for good" title="Dry and greased" />,
  );
  const edge = (selector: string, name: string) =>
    Number(container.querySelector(selector)?.getAttribute(name));
  const boltOf = (label: string) => {
    const of = (part: string, name: string) => edge(`[data-bolt="${label}"] [${part}]`, name);
    const from = of('data-sure', 'x');
    return {
      sure: of('data-sure', 'width'),
      most: of('data-perhaps', 'x') + of('data-perhaps', 'width') - from,
      limit: edge('[data-limit]', 'x1') - from,
    };
  };
  return { boltOf };
}

const half = { label: 'Dry', low: 0.25, high: 0.5 };

describe('the clamping forces, drawn', () => {
  test('each bolt reaches as far as its share, on one scale', () => {
    const { boltOf } = draw([half, { label: 'Greased', low: 0.5, high: 0.75 }]);
    const [dry, greased] = [boltOf('Dry'), boltOf('Greased')];
    expect(dry.sure / dry.limit).toBeCloseTo(0.25, 9);
    expect(dry.most / dry.limit).toBeCloseTo(0.5, 9);
    expect(greased.sure).toBeCloseTo(dry.most, 9);
    expect(greased.most / greased.limit).toBeCloseTo(0.75, 9);
  });

  test('a bolt that is overloaded passes the line and stays in the picture', () => {
    const { boltOf } = draw([half, { label: 'Greased', low: 0.9, high: 1.6 }]);
    const greased = boltOf('Greased');
    expect(greased.most).toBeGreaterThan(greased.limit);
    expect(greased.most / greased.limit).toBeCloseTo(1.6, 9);
    expect(greased.most + 34).toBeLessThan(440);
  });

  test('an M5 of class 8.8 at 5 N·m is drawn longer greased than dry, by what the formula says', () => {
    // VDI 2230 long form, friction ranges from memory.
    const effect = greaseEffect({
      thread: { diameter: millimetres(5), pitch: millimetres(0.8) },
      torque: newtonMetres(5),
      propertyClass: '8.8',
      clamps: ['aluminium'],
    });
    if (!effect.ok) throw new Error(effect.refusal.code);
    const { dry, greased } = effect.value;
    const { boltOf } = draw([
      { label: 'Dry', low: dry.lowShare, high: dry.highShare },
      { label: 'Greased', low: greased.lowShare, high: greased.highShare },
    ]);
    expect(boltOf('Greased').most / boltOf('Dry').most).toBeCloseTo(greased.high / dry.high, 9);
  });

  test('is a named picture with its line and its bolts in words', () => {
    draw([half]);
    expect(screen.getByRole('img', { name: 'Dry and greased' })).toBeVisible();
    expect(screen.getByText('Dry')).toBeInTheDocument();
    expect(screen.getByText('stretches for good')).toBeInTheDocument();
  });
});
