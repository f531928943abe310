/** Trust between sources, and the usual range that needs a name. */

import { describe, expect, test } from 'vitest';
import { byTrust, type Figure, figureTrust, usableFigure } from '../../../src/engine/torque';
import { newtonMetres } from '../../../src/engine/units';

const limits = { min: newtonMetres(4), max: newtonMetres(6) };
const part: Figure = { ...limits, source: { kind: 'part', printed: '4-6 Nm' } };
const document: Figure = { ...limits, source: { kind: 'document', reference: 'booklet p. 12' } };
const approved: Figure = { ...limits, source: { kind: 'approved', by: 'Ines', on: '2026-01-07' } };
const usual: Figure = { ...limits, source: { kind: 'usual' } };

describe('figureTrust', () => {
  test('[T1] the part stands above the document, the shop and the usual range (brief: safety stance)', () => {
    const trust = [part, document, approved, usual].map((figure) => figureTrust(figure.source));
    expect(trust).toEqual([4, 3, 2, 1]);
  });

  test('[T1] figures side by side stand in order of trust, and their list is left alone', () => {
    const given = [usual, approved, part, document];
    expect(byTrust(given)).toEqual([part, document, approved, usual]);
    expect(given).toEqual([usual, approved, part, document]);
  });
});

describe('usableFigure', () => {
  test('[T2] a usual range needs a named person', () => {
    expect(usableFigure(usual)).toEqual({
      ok: false,
      refusal: { code: 'usual-range-not-accepted' },
    });
    const accepted: Figure = { ...limits, source: { kind: 'usual', acceptedBy: 'Ines' } };
    expect(usableFigure(accepted)).toEqual({ ok: true, value: accepted });
  });

  test('[T2] every other source may be worked to', () => {
    for (const figure of [part, document, approved]) {
      expect(usableFigure(figure)).toEqual({ ok: true, value: figure });
    }
  });
});
