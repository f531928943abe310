/** What a hardtail’s sealed record and its sheet say for months. */

import { describe, expect, test } from 'vitest';
import { verifyLog } from '../../src/engine/integrity';
import { stepsOf } from '../../src/engine/job';
import { must } from '../support/test-app';
import type { Journey } from './journey';

export function onRecord(journey: Journey): void {
  describe('given the sealed record', () => {
    test('then it is whole, and its signatures are good', async () => {
      const { shop, job } = journey;
      const { entries } = await shop.storage.log(job);
      const row = await shop.storage.row(job);
      expect(verifyLog(entries, { job, heads: row?.heads ?? [] })).toEqual({
        ok: true,
        value: { heads: row?.heads, count: entries.length, forks: [] },
      });
      expect(must(await shop.app.checkLog(job)).count).toBe(entries.length);
      const checked = await shop.app.checkSignatures(job);
      expect(checked.map(({ meaning, finding }) => [meaning, finding])).toEqual([
        ['built', 'good'],
        ['built', 'good'],
        ['checked', 'good'],
        ['received', 'good'],
      ]);
    });

    test('then the sheet says what was done', async () => {
      const { shop, job, bike } = journey;
      const row = await shop.storage.row(job);
      const { customer } = (await shop.state(job)).handedOver ?? {};
      const named = await shop.app.customerOf(customer ?? '');
      const sheet = await shop.sheet(job, named?.name);
      expect(sheet).toMatchObject({
        shop: 'Two Bridges Cycles',
        bike: { frameNumber: bike.frameNumber },
        frontBrakeLever: 'right', // common practice in Great Britain, no source
        firstCheck: '2027-01-06',
        hasDisc: true,
        axles: ['quick-release'],
        isSealed: true,
        seal: row?.heads[0],
        entries: row?.count,
        steps: stepsOf(await shop.state(job)).length,
        amendments: [{ by: 'Owen Tarrant' }],
      });
      expect(sheet.signatures.map(({ meaning, name }) => [meaning, name])).toEqual([
        ['built', 'Owen Tarrant'],
        ['checked', 'Lena Holt'],
        ['received', 'Ottilie Fenwick'],
      ]);
      expect(sheet.findings).toEqual([
        { severity: 'stop-ride', text: 'Front pads oily.', closed: 'New pads.' },
        {
          severity: 'stop-ride',
          text: 'The bell cannot be reached from the grip.',
          allowed: { by: 'Marit Sandell', reason: 'Customer fits a horn.' },
        },
        { severity: 'stop-ride', text: 'Rear tyre flat.', closed: 'New tube.' },
      ]);
    });

    test('then each joint on the sheet carries its figure, where it comes from, and what was set', async () => {
      const { shop, job } = journey;
      const sheet = await shop.sheet(job);
      const sources = new Map(sheet.joints.map((row) => [row.name, row.figure.source]));
      expect([...sources.values()]).toContainEqual({ kind: 'part', printed: '4–6 N·m' });
      expect([...sources.values()]).toContainEqual({
        kind: 'document',
        reference: 'Larkfell assembly booklet, p. 8',
      });
      expect(sheet.joints.length + sheet.otherJoints).toBe(
        stepsOf(await shop.state(job)).filter(({ joint }) => joint !== undefined).length,
      );
      for (const { name, onScale, wrench } of sheet.joints) {
        expect(onScale, name).toBeGreaterThan(0);
        expect(['A', 'B', 'C', 'D', 'F'], name).toContain(wrench); // E was dropped, G is overdue
      }
      // 30–50 psi stands on the side wall; 1 psi is 6.894757 kPa (NIST SP 811, appendix B.8).
      for (const kpa of [sheet.tyres.front, sheet.tyres.rear]) {
        expect(kpa).toBeGreaterThanOrEqual(30 * 6.894757);
        expect(kpa).toBeLessThanOrEqual(50 * 6.894757);
      }
    });
  });
}
