/** Small catalogues for tests, written as data and parsed through the schema like the real one. */

import { type Catalogue, catalogueSchema } from '../../src/engine/plan';

type Row = { readonly id: string; readonly [name: string]: unknown };

/** A catalogue of rows that say only what matters to the test; everything else is filled in. */
export function catalogueOf(rows: {
  readonly steps: readonly Row[];
  readonly joints?: readonly Row[];
  readonly parts?: readonly Row[];
}): Catalogue {
  return catalogueSchema.parse({
    version: 'for a test',
    steps: rows.steps.map(stepFrom),
    joints: (rows.joints ?? []).map(jointFrom),
    parts: (rows.parts ?? []).map((part) => ({ name: `the ${part.id}`, kind: 'part', ...part })),
  });
}

function stepFrom(row: Row): Row {
  return {
    zone: 'frame',
    place: 'whole-bike',
    title: `Do ${row.id}`,
    how: 'Do it with care.',
    why: 'It must be done.',
    right: 'It is done.',
    effort: [1, 2, 3],
    ...row,
  };
}

function jointFrom(row: Row): Row {
  return {
    name: `the ${row.id}`,
    bolts: 1,
    layout: 'line',
    thread: 'M5',
    hand: 'right',
    bit: '4 mm hex',
    preparation: 'grease',
    preparationNote: 'A little on the threads.',
    usual: { min: 4, max: 6 },
    risk: 'A',
    source: 'made up for a test',
    ...row,
  };
}
