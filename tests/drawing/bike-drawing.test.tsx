import { render, screen } from '@testing-library/react';
import { describe, expect, test } from 'vitest';
import { BikeDrawing } from '../../src/drawing';
import type { Bike } from '../../src/engine/bike';
import { bikeOf, hardtail, oneOfEach, road, town } from './bikes';

function partsOf(bike: Bike): ReadonlySet<string> {
  const { container } = render(<BikeDrawing bike={bike} title="A bike" />);
  const parts = [...container.querySelectorAll('[data-part]')];
  return new Set(parts.map((part) => part.getAttribute('data-part') ?? ''));
}

describe('what is drawn', () => {
  test('is a picture with a name', () => {
    render(<BikeDrawing bike={hardtail} title="The front wheel is lit" />);
    expect(screen.getByRole('img', { name: 'The front wheel is lit' })).toBeInTheDocument();
  });

  test('carries no style of its own, as the page’s security policy asks', () => {
    const { container } = render(<BikeDrawing bike={town} title="A bike" lit={{ zone: 'seat' }} />);
    expect(container.querySelectorAll('[style], style')).toHaveLength(0);
  });

  test.each(oneOfEach.map((bike) => [bike.kind, bike] as const))(
    'has only finite numbers for a %s',
    (_, bike) => {
      const { container } = render(<BikeDrawing bike={bike} title="A bike" />);
      expect(container.innerHTML).not.toMatch(/NaN|Infinity|undefined/);
    },
  );

  const fittings: readonly [extra: string, part: string][] = [
    ['rack', 'rack'],
    ['mudguards', 'front-mudguard'],
    ['mudguards', 'rear-mudguard'],
    ['stand', 'stand'],
    ['bell', 'bell'],
    ['dynamo-lights', 'front-light'],
    ['dynamo-lights', 'rear-light'],
    ['chainguard', 'chainguard'],
    ['basket', 'basket'],
    ['bottle-cage', 'bottle-cage'],
    ['reflectors', 'reflectors'],
    ['lock', 'lock'],
    ['stabilisers', 'stabilisers'],
  ];
  test.each(fittings)('a bike with %s shows its %s, a bike without does not', (extra, part) => {
    expect(partsOf(bikeOf({ extras: [extra] })).has(part)).toBe(true);
    expect(partsOf(bikeOf({ extras: [] })).has(part)).toBe(false);
  });

  test('derailleurs are drawn only on bikes that have them', () => {
    expect(partsOf(road).has('front-derailleur')).toBe(true);
    expect(partsOf(hardtail).has('front-derailleur')).toBe(false);
    expect(partsOf(hardtail).has('rear-derailleur')).toBe(true);
    expect(partsOf(town).has('rear-derailleur')).toBe(false);
  });

  test('a balance bike has neither cranks nor chain nor brakes drawn', () => {
    const bare = { axle: 'nutted', brake: 'none', tyre: '57-203' };
    const gears = { kind: 'single-speed', drive: 'none', chainrings: 0 };
    const parts = partsOf(bikeOf({ kind: 'balance', front: bare, rear: bare, gears }));
    for (const part of ['cranks', 'chain', 'right-pedal', 'front-brake', 'rear-brake'])
      expect(parts.has(part), part).toBe(false);
  });

  test('what has no brake shows none; every brake that is described shows', () => {
    for (const brake of [
      'hydraulic-disc',
      'linear-pull',
      'cantilever',
      'dual-pivot',
      'drum',
      'roller',
    ])
      expect(
        partsOf(bikeOf({ front: { ...hardtail.front, brake } })).has('front-brake'),
        brake,
      ).toBe(true);
    expect(
      partsOf(bikeOf({ front: { ...hardtail.front, brake: 'none' } })).has('front-brake'),
    ).toBe(false);
  });
});

describe('what is lit', () => {
  const litIn = (container: HTMLElement) =>
    new Set([...container.querySelectorAll('[data-lit]')].map((g) => g.getAttribute('data-part')));

  test('is the part of the place and a circle round it', () => {
    const { container } = render(
      <BikeDrawing bike={hardtail} title="Stem" lit={{ place: 'stem' }} />,
    );
    expect(litIn(container)).toEqual(new Set(['stem']));
    expect(container.querySelectorAll('[data-ring]')).toHaveLength(1);
  });

  test('is every part of a zone', () => {
    const { container } = render(
      <BikeDrawing bike={hardtail} title="Seat" lit={{ zone: 'seat' }} />,
    );
    expect(litIn(container)).toEqual(new Set(['saddle', 'seat-post', 'seat-clamp']));
  });

  test('is nothing when the work is at the whole bike, or nowhere', () => {
    const { container, rerender } = render(<BikeDrawing bike={hardtail} title="Bike" />);
    expect(litIn(container).size).toBe(0);
    rerender(<BikeDrawing bike={hardtail} title="Bike" lit={{ zone: 'whole-bike' }} />);
    expect(litIn(container).size).toBe(0);
    expect(container.querySelector('[data-ring]')).toBeNull();
  });

  test('on the left side has its circle behind the bike, on the right in front', () => {
    const firstIsRing = (side: 'left' | 'right') => {
      const { container } = render(
        <BikeDrawing bike={hardtail} title="Lever" lit={{ place: 'cranks', side }} />,
      );
      const marked = [...container.querySelectorAll('[data-ring], [data-part]')];
      return marked[0]?.hasAttribute('data-ring');
    };
    expect(firstIsRing('left')).toBe(true);
    expect(firstIsRing('right')).toBe(false);
  });
});
