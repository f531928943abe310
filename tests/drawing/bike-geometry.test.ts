import { describe, expect, test } from 'vitest';
import { geometryOf } from '../../src/drawing';
import { distanceToLine } from '../../src/drawing/geometry/vector';
import type { Bike } from '../../src/engine/bike';
import { bikeOf, hardtail, oneOfEach, road, town } from './bikes';

describe('wheels', () => {
  const rows: readonly [situation: string, tyre: string, radius: number, source: string][] = [
    ['a wide mountain tyre', '57-622', 368, 'ISO 5775-1: 622 / 2 + 57'],
    ['a narrow road tyre', '28-622', 339, 'ISO 5775-1: 622 / 2 + 28'],
    ['a child’s tyre', '47-406', 250, 'ISO 5775-1: 406 / 2 + 47'],
    [
      'a size in inches',
      '20 x 1.75',
      247,
      '406 / 2 + 1.75 in, in whole mm; table: ETRTO, from memory',
    ],
    ['a French size', '700 x 38C', 349, '622 / 2 + 38'],
  ];
  test.each(rows)('%s, %s, has a radius of %d mm', (_, tyre, radius) => {
    const { front } = geometryOf(bikeOf({ front: { ...hardtail.front, tyre } }));
    expect(front.radius).toBeCloseTo(radius, 0);
  });

  test('a tyre whose print names no size is drawn in the size usual for the kind', () => {
    const { rear } = geometryOf(bikeOf({ rear: { ...hardtail.rear, tyre: 'worn away' } }));
    expect(rear.radius).toBe(622 / 2 + 57);
  });

  test.each(oneOfEach.map((bike) => [bike.kind, bike] as const))(
    'both wheels of a %s stand on the ground',
    (_, bike) => {
      const { front, rear } = geometryOf(bike);
      expect(front.centre.y + front.radius).toBeCloseTo(0, 6);
      expect(rear.centre.y + rear.radius).toBeCloseTo(0, 6);
    },
  );

  test('wheels of two sizes stand on one ground', () => {
    const { front, rear } = geometryOf(bikeOf({ rear: { ...hardtail.rear, tyre: '61-584' } }));
    expect(rear.radius).toBeLessThan(front.radius);
    expect(front.centre.y + front.radius).toBeCloseTo(rear.centre.y + rear.radius, 6);
  });
});

describe('clearances', () => {
  test.each(oneOfEach.map((bike) => [bike.kind, bike] as const))(
    'tyres of a %s clear the frame by the 6 mm of ISO 4210-2, or 4 mm when racing',
    (_, bike) => {
      const g = geometryOf(bike);
      const racing = bike.kind === 'road' ? 4 : 6;
      const bracket = g.rearBottomBracket ?? g.bottomBracket;
      const up = { x: bracket.x + g.seatUp.x, y: bracket.y + g.seatUp.y };
      const toSeatTube = distanceToLine(g.rear.centre, bracket, up) - g.usual.tubes.seat / 2;
      expect(toSeatTube - g.rear.radius).toBeGreaterThanOrEqual(racing);
      const [high, low] = g.frame.downTube.line;
      if (!high || !low) throw new Error('a down tube has two ends');
      const toDownTube = distanceToLine(g.front.centre, high, low) - g.frame.downTube.width / 2;
      expect(toDownTube - g.front.radius).toBeGreaterThanOrEqual(racing);
      const toCrown = Math.hypot(g.crown.x - g.front.centre.x, g.crown.y - g.front.centre.y);
      expect(toCrown - g.front.radius).toBeGreaterThanOrEqual(racing);
    },
  );

  test.each([
    ['a fat tyre', { rear: { ...hardtail.rear, tyre: '76-622' } }, 6],
    ['a mudguard over a wide tyre', { extras: ['mudguards'] }, 25],
  ])('%s pushes the rear wheel back rather than into the seat tube', (_, changes, room) => {
    const g = geometryOf(bikeOf(changes));
    const up = { x: g.bottomBracket.x + g.seatUp.x, y: g.bottomBracket.y + g.seatUp.y };
    const gap = distanceToLine(g.rear.centre, g.bottomBracket, up) - g.usual.tubes.seat / 2;
    expect(gap - g.rear.radius).toBeGreaterThanOrEqual(room);
  });
});

describe('proportions of a kind (common practice, no source)', () => {
  const rows: readonly [
    Bike,
    wheelbase: readonly [number, number],
    head: readonly [number, number],
  ][] = [
    [hardtail, [1130, 1210], [65, 69]],
    [road, [965, 1025], [71.5, 74]],
    [town, [1050, 1140], [67, 71]],
  ];
  test.each(rows.map(([bike, base, head]) => [bike.kind, bike, base, head] as const))(
    'a %s has the wheelbase and head angle such bikes have',
    (_, bike, base, head) => {
      const g = geometryOf(bike);
      expect(g.wheelbase).toBeGreaterThan(base[0]);
      expect(g.wheelbase).toBeLessThan(base[1]);
      expect(g.headAngle).toBeGreaterThanOrEqual(head[0]);
      expect(g.headAngle).toBeLessThanOrEqual(head[1]);
    },
  );

  test('the measures agree with one another', () => {
    const g = geometryOf(hardtail);
    expect(g.front.centre.x - g.rear.centre.x).toBeCloseTo(g.wheelbase, 6);
    const chainstay = Math.hypot(g.bottomBracket.x, g.bottomBracket.y - g.rear.centre.y);
    expect(chainstay).toBeCloseTo(g.usual.chainstay, 6);
    expect(g.bottomBracketDrop).toBeCloseTo(65, 6);
    const rake = distanceToLine(g.front.centre, g.headTop, g.headBottom);
    expect(rake).toBeCloseTo(g.usual.rake, 6);
  });

  test('a smaller child’s bike is smaller in all its lengths, not in its angles', () => {
    const of = (tyre: string) =>
      geometryOf(
        bikeOf({
          kind: 'child',
          front: { ...hardtail.front, tyre },
          rear: { ...hardtail.rear, tyre },
        }),
      );
    const large = of('47-406');
    const small = of('47-305');
    expect(small.wheelbase).toBeLessThan(large.wheelbase);
    expect(small.stack).toBeLessThan(large.stack);
    expect(small.headAngle).toBe(large.headAngle);
  });

  test('a suspension fork of the same bike is longer and lifts the front', () => {
    const rigid = geometryOf(bikeOf({ kind: 'trekking', fork: { kind: 'rigid' } }));
    const sprung = geometryOf(bikeOf({ kind: 'trekking', fork: { kind: 'suspension' } }));
    expect(sprung.stack).toBeGreaterThan(rigid.stack);
    expect(sprung.fork.kind).toBe('telescopic');
    expect(rigid.fork.kind).toBe('bent');
  });

  test('a drop bar reaches forward of the clamp and below it; a swept bar ends behind it', () => {
    const drop = geometryOf(road).cockpit;
    const swept = geometryOf(town).cockpit;
    expect(Math.max(...drop.grip.line.map(({ x }) => x))).toBeGreaterThan(drop.clamp.x + 60);
    expect(Math.max(...drop.grip.line.map(({ y }) => y))).toBeGreaterThan(drop.clamp.y + 100);
    expect(swept.grip.line.at(-1)?.x).toBeLessThan(swept.clamp.x - 120);
  });

  test('a low-step frame is open where a diamond frame has its top tube', () => {
    const low = geometryOf(town).frame.topTube.line.at(-1);
    const diamond = geometryOf(bikeOf({ kind: 'town' })).frame.topTube.line.at(-1);
    expect(low?.y).toBeGreaterThan((diamond?.y ?? 0) + 150);
  });
});
