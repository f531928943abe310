/** The hand-over page as a reader meets it: every joint with its figure and source, every name, every finding. */

import { render, screen, within } from '@testing-library/react';
import { describe, expect, test } from 'vitest';
import type { Sheet, SheetJoint } from '../../src/engine/sheet';
import type { Figure } from '../../src/engine/torque';
import { newtonMetres } from '../../src/engine/units';
import { SheetPage, type SheetPageProps } from '../../src/print';
import { plainNames } from '../../src/words';
import { bikeFrom, mountainBike } from '../support/bikes';

const at = (claimed: string) => ({ claimed, zone: 'Europe/London' });
const seal = '0123abcd'.repeat(8);

const faceplate: SheetJoint = {
  name: 'Stem faceplate',
  bolts: 4,
  thread: 'M5',
  figure: figureOf({ min: 4, max: 6 }, { kind: 'part', printed: '4–6 N·m' }),
  onScale: 5,
  unit: 'N·m',
  wrench: 'W2',
};
const caliper: SheetJoint = {
  name: 'Front caliper mount',
  bolts: 2,
  thread: 'M6',
  figure: figureOf({ max: 8 }, { kind: 'document', reference: 'Brake booklet, page 12' }),
  onScale: 66.5,
  unit: 'lbf·in',
  wrench: 'W5',
  adapter: 'crowfoot 10',
};
const saddle: SheetJoint = {
  name: 'Saddle rails',
  bolts: 1,
  thread: 'M8',
  figure: figureOf({ min: 12, max: 16 }, { kind: 'usual', acceptedBy: 'p-17' }),
  onScale: 14,
  unit: 'N·m',
  wrench: 'W3',
};
const bars: SheetJoint = {
  name: 'Bar clamp',
  bolts: 1,
  thread: 'M6',
  figure: figureOf({ target: 9 }, { kind: 'approved', by: 'p-17', on: '2026-03-02' }),
  onScale: 9,
  unit: 'N·m',
  wrench: 'W3',
};

const nuts: SheetJoint = {
  name: 'Axle nuts',
  bolts: 2,
  thread: 'M9',
  figure: figureOf({ min: 5, max: 6 }, { kind: 'part', printed: '44–53 in·lb' }),
  onScale: 47.5,
  unit: 'lbf·in',
  wrench: 'W5',
};

const sealed: Sheet = {
  shop: 'Two Bridges Cycles',
  date: '2026-11-28T11:05:00+00:00',
  bike: bikeFrom(mountainBike, { loadLimit: 120, colour: 'Slate' }),
  record: 'K7-4Q2M',
  frontBrakeLever: 'right',
  firstCheck: '2027-01-09',
  tyres: { front: 200, rear: 220 },
  joints: [faceplate, caliper, saddle, bars, nuts],
  otherJoints: 6,
  measures: [
    { step: 's1', measure: 'm1', name: 'Seat post inside', value: 98, unit: 'mm', min: 80 },
    { step: 's2', measure: 'm2', name: 'Front pressure', value: 200, unit: 'kPa' },
  ],
  steps: 53,
  points: { looked: 32, adjusted: ['Rear mudguard stay bent clear'] },
  findings: [
    { severity: 'before-hand-over', text: 'Reflector had slipped', closed: 'set square again' },
    { severity: 'tell-customer', text: 'Small paint chip under the chainstay' },
    {
      severity: 'stop-ride',
      text: 'Bell missing',
      allowed: { by: 'Marit Sandell', reason: 'the customer fits their own' },
    },
  ],
  kept: ['Brake spacer', 'Bike box'],
  axles: ['quick-release'],
  hasDisc: true,
  signatures: [
    { meaning: 'built', name: 'Owen Tarrant', at: at('2026-11-27T16:40:00+00:00') },
    { meaning: 'checked', name: 'Lena Holt', at: at('2026-11-28T09:12:00+00:00') },
    { meaning: 'received', name: 'Ottilie Fenwick', at: at('2026-11-28T11:05:00+00:00') },
  ],
  amendments: [],
  seal,
  entries: 214,
  isSealed: true,
};

const names = {
  ...plainNames,
  person: (id: string) => (id === 'p-17' ? 'Marit Sandell' : id),
};

describe('the table of joints', () => {
  test.each([
    // [joint, figure, where it comes from, set to, wrench]
    ['Stem faceplate, 4 × M5', '4–6', 'marked on the part', '5', 'W2'],
    [
      'Front caliper mount, 2 × M6',
      'at most 8',
      'Brake booklet, page 12',
      '66.5 lbf·in',
      'W5, crowfoot 10',
    ],
    ['Saddle rails, 1 × M8', '12–16', 'usual range, accepted by Marit Sandell', '14', 'W3'],
    ['Axle nuts, 2 × M9', '5–6', 'marked on the part: 44–53 in·lb', '47.5 lbf·in', 'W5'],
    ['Bar clamp, 1 × M6', '9', 'approved by Marit Sandell, 2026-03-02', '9', 'W3'],
  ])('%s: its figure, its source, its set point and its wrench', (joint, ...cells) => {
    show(sealed);
    const row = screen.getByRole('row', { name: new RegExp(`^${joint.replaceAll(' ', '\\s')}`) });
    expect(
      within(row)
        .getAllByRole('cell')
        .map((cell) => cell.textContent.replaceAll('\u00a0', ' ')),
    ).toEqual(cells);
  });

  test('has a row for every joint, a head for every column, and counts the rest', () => {
    show(sealed);
    expect(screen.getAllByRole('columnheader')).toHaveLength(5);
    expect(screen.getAllByRole('rowheader')).toHaveLength(sealed.joints.length);
    expect(screen.getByText(/6 lesser joints/)).toBeVisible();
  });

  test('what an indicating wrench showed stands under what it was set to, and a doubtful one says so', () => {
    const readings = [
      { bolt: 1, onScale: 5.02, judged: 'inside' },
      { bolt: 2, onScale: 5.864, judged: 'undecided' },
    ] as const;
    show({ ...sealed, joints: [{ ...faceplate, readings }] });
    expect(screen.getByText('read 5.02, 5.86 (near its end)')).toBeVisible();
    expect(screen.getByRole('cell', { name: /^5 ?read/ })).toBeVisible();
  });

  test('a joint an apprentice tightened names both pairs of eyes', () => {
    const secondEyes = { by: 'Ines Calloway', confirmedBy: 'Petra Lindqvist' };
    show({ ...sealed, joints: [{ ...faceplate, secondEyes }] });
    const said = 'tightened by Ines Calloway, apprentice; confirmed by Petra Lindqvist';
    expect(screen.getByText(said)).toBeVisible();
  });

  test('a usual range that nobody has accepted is no specification, and the sheet says so', () => {
    const nobody = figureOf({ min: 12, max: 16 }, { kind: 'usual' });
    show({ ...sealed, joints: [{ ...saddle, figure: nobody }] });
    expect(screen.getByRole('cell', { name: 'usual range, no specification' })).toBeVisible();
  });
});

describe('who stands for it', () => {
  test('everybody who signed is named, with what it means and when', () => {
    show(sealed);
    for (const [name, meaning] of [
      ['Owen Tarrant', 'built, signed electronically27 November 2026 16:40'],
      ['Lena Holt', 'checked, signed electronically28 November 2026 09:12'],
      ['Ottilie Fenwick', ', received28 November 2026 11:05'],
    ] as const)
      expect(screen.getByText(name).closest('div')).toHaveTextContent(`${name}${meaning}`);
  });

  test('a customer who was forgotten on request leaves the signature, not the name', () => {
    const signatures = sealed.signatures.map((one) =>
      one.meaning === 'received' ? { ...one, name: undefined } : one,
    );
    show({ ...sealed, signatures });
    expect(screen.queryByText('Ottilie Fenwick')).toBeNull();
    expect(screen.getByText('details erased on request').closest('p')).toHaveTextContent(
      'received28 November 2026 11:05',
    );
  });

  test('the drawn signature stands with the customer’s name, and only there', () => {
    const { getAllByRole } = show(sealed, { drawn: 'data:image/svg+xml,%3Csvg/%3E' });
    const drawn = getAllByRole('img').filter((image) => image.tagName === 'IMG');
    expect(drawn).toHaveLength(1);
    expect(drawn[0]?.closest('div')).toHaveTextContent('Ottilie Fenwick');
  });
});

describe('what it is', () => {
  test('sealed, it says that the bike is handed over', () => {
    show(sealed);
    expect(screen.getByRole('heading', { level: 1 })).toHaveTextContent('Your bike, handed over');
  });

  test('before that it is a draft, and never looks like the real one', () => {
    show({ ...sealed, isSealed: false, signatures: [], firstCheck: undefined });
    const title = screen.getByRole('heading', { level: 1 });
    expect(title).toHaveTextContent('Draft, not handed over');
    expect(screen.queryByText('Your bike, handed over')).toBeNull();
    expect(screen.queryByText('First check')).toBeNull();
  });

  test('the bike can be found again: frame number, record code, seal in groups, entries', () => {
    const { container } = show(sealed);
    expect(screen.getByText('HW24-00417')).toBeVisible();
    expect(screen.getByText('K7-4Q2M')).toBeVisible();
    expect(container).toHaveTextContent(`Seal ${seal.match(/.{8}/g)?.join(' ')} · 214 entries`);
  });

  test('its code is drawn once it is made, and a sheet without one still prints', () => {
    const { rerender } = show(sealed, { code: 'eyJ.abc.def' });
    expect(screen.getByRole('img', { name: 'Code of this record' })).toBeVisible();
    rerender(<SheetPage sheet={sealed} names={names} />);
    expect(screen.queryByRole('img', { name: 'Code of this record' })).toBeNull();
    expect(screen.getByRole('table')).toBeVisible();
  });
});

describe('what the customer reads', () => {
  test('every finding with how bad it is: put right, left as it is, or let go on somebody’s word', () => {
    show(sealed);
    const said = screen.getAllByRole('listitem').map((item) => item.textContent);
    expect(said).toEqual(
      expect.arrayContaining([
        'Before hand-over: Reflector had slipped; put right: set square again',
        'Tell the customer: Small paint chip under the chainstay',
      ]),
    );
  });

  test('what was let go stands first and apart, with how bad it is, on whose word and why', () => {
    show(sealed);
    const apart = screen.getByRole('list', { name: 'Handed over like this' });
    expect(within(apart).getAllByRole('listitem')).toHaveLength(1);
    expect(apart).toHaveTextContent(
      'Stop-ride: Bell missing. Handed over like this on the word of Marit Sandell: the customer fits their own',
    );
    const [heading] = screen.getAllByRole('heading', { name: 'For you to know' });
    expect(heading?.nextElementSibling).toBe(apart);
  });

  test('no number is parted from its unit', () => {
    const { container } = show(sealed);
    const text = container.textContent;
    for (const whole of ['98 mm', '2.0 bar', '29 psi', '66.5 lbf·in', '120 kg', '4 × M5'])
      expect(text).toContain(whole.replaceAll(' ', '\u00a0'));
  });

  test.each([
    // [fact, what it says]; 200 kPa is 2.0 bar and 29 psi, 220 kPa 2.2 bar and 32 psi (NIST SP 811)
    ['Tyres', 'front 2.0 bar (29 psi), rear 2.2 bar (32 psi)'],
    ['Front brake', 'right-hand lever'],
    ['Load limit', '120 kg with rider and luggage'],
    ['First check', 'by 9 January 2027'],
  ])('%s: %s', (label, value) => {
    show(sealed);
    expect(screen.getByText(label).parentElement).toHaveTextContent(`${label}${value}`);
  });

  test('a load limit nobody knows is looked up, never made up', () => {
    show({ ...sealed, bike: bikeFrom(mountainBike) });
    expect(screen.getByText('see the maker’s booklet')).toBeVisible();
  });

  test('other measures, what was put right, and what was kept', () => {
    const { container } = show(sealed);
    expect(container).toHaveTextContent('seat post inside 98 mm');
    expect(container).toHaveTextContent('Put right on the way: Rear mudguard stay bent clear.');
    expect(container).toHaveTextContent('brake spacer, bike box');
  });

  test('what was put right about a finding is said once, with the finding', () => {
    const points = { looked: 32, adjusted: ['Set square again.', 'Bell turned'] };
    const findings = [
      { severity: 'stop-ride', text: 'Reflector slipped', closed: 'Set square again.' },
    ] as const;
    const { container } = show({ ...sealed, points, findings });
    expect(container).toHaveTextContent('Put right on the way: Bell turned.');
    expect(container.textContent.match(/Set square again/g)).toHaveLength(1);
  });

  test('how this bike’s own wheels are held, and no other way', () => {
    show({ ...sealed, axles: ['nutted'] });
    expect(screen.getByText(/Wheel nuts tight/)).toBeVisible();
    expect(screen.queryByText(/Wheel levers closed/)).toBeNull();
  });

  test('in doubt, not to ride', () => {
    show(sealed);
    expect(screen.getByText(/In doubt, do not ride/)).toBeVisible();
  });

  test('what was added after the seal, with who and when', () => {
    const added = {
      text: 'Came for its first check',
      by: 'Lena Holt',
      at: at('2027-01-09T10:00:00+00:00'),
    };
    const { container } = show({ ...sealed, amendments: [added] });
    expect(container).toHaveTextContent('Came for its first check (Lena Holt, 9 January 2027)');
  });
});

function show(sheet: Sheet, extras: Partial<SheetPageProps> = {}) {
  return render(<SheetPage sheet={sheet} names={names} {...extras} />);
}

function figureOf(
  range: { min?: number; max?: number; target?: number },
  source: Figure['source'],
): Figure {
  const { min, max, target } = range;
  return {
    ...(min !== undefined && { min: newtonMetres(min) }),
    ...(max !== undefined && { max: newtonMetres(max) }),
    ...(target !== undefined && { target: newtonMetres(target) }),
    source,
  };
}
