import { describe, expect, test } from 'vitest';
import { geometryOf, placeOnBike, zoneOnBike } from '../../src/drawing';
import { zones } from '../../src/engine/base';
import { type Bike, type Place, places } from '../../src/engine/bike';
import { hardtail, oneOfEach, road, town } from './bikes';

const named = (bike: Bike) => [bike.kind, bike] as const;
const bikes = [...oneOfEach, hardtail, town, road].map(named);

describe('places', () => {
  test.each(bikes)('every place of a %s, with its circle, lies in the drawing', (_, bike) => {
    const g = geometryOf(bike);
    const outside = places
      .filter((place) => place !== 'whole-bike')
      .filter((place) => !isInside(placeOnBike(g, place), g.box));
    expect(outside).toEqual([]);
  });

  const pairs: readonly [rearward: Place, forward: Place][] = [
    ['rear-hub', 'bottom-bracket'],
    ['bottom-bracket', 'headset'],
    ['headset', 'front-hub'],
    ['saddle', 'bar'],
    ['left-pedal', 'right-pedal'],
    ['rear-light', 'front-light'],
    ['rear-mudguard', 'front-mudguard'],
    ['seat-clamp', 'stem'],
  ];
  test.each(bikes)('places of a %s lie front and rear as they do on the bike', (_, bike) => {
    const g = geometryOf(bike);
    for (const [rearward, forward] of pairs)
      expect(placeOnBike(g, rearward).x, `${rearward} behind ${forward}`).toBeLessThan(
        placeOnBike(g, forward).x,
      );
  });

  test.each(bikes)('places of a %s lie high and low as they do on the bike', (_, bike) => {
    const g = geometryOf(bike);
    const y = (place: Place) => placeOnBike(g, place).y;
    expect(y('saddle')).toBeLessThan(y('seat-clamp'));
    expect(y('seat-clamp')).toBeLessThan(y('bottom-bracket'));
    expect(y('bar')).toBeLessThan(y('headset'));
    expect(y('headset')).toBeLessThan(y('front-hub'));
    expect(y('rear-derailleur')).toBeGreaterThan(y('rear-hub'));
  });

  test('the rim brake is at the rim, the disc brake near the hub', () => {
    const away = (bike: Bike) => {
      const { front, ...g } = geometryOf(bike);
      const { x, y } = placeOnBike({ ...g, front }, 'front-brake');
      return Math.hypot(x - front.centre.x, y - front.centre.y);
    };
    expect(away(road)).toBeGreaterThan(280);
    expect(away(hardtail)).toBeLessThan(130);
  });
});

describe('zones', () => {
  test.each(bikes)('every zone of a %s has its circle in the drawing', (_, bike) => {
    const g = geometryOf(bike);
    const outside = zones.filter((zone) => {
      const { circle } = zoneOnBike(g, zone);
      return circle && !isInside(circle, g.box);
    });
    expect(outside).toEqual([]);
  });

  test('every zone but the whole bike has parts that stand for it, and no part stands for two', () => {
    const g = geometryOf(hardtail);
    const all = zones.flatMap((zone) => zoneOnBike(g, zone).parts);
    expect(new Set(all).size).toBe(all.length);
    for (const zone of zones)
      expect(zoneOnBike(g, zone).parts.length > 0, zone).toBe(zone !== 'whole-bike');
  });
});

interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

function isInside({ x, y, r }: { x: number; y: number; r: number }, box: Box): boolean {
  const across = x - r >= box.x && x + r <= box.x + box.width;
  return across && y - r >= box.y && y + r <= box.y + box.height;
}
