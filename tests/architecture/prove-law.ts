/** Proves a law twice: this house keeps it, and a made-up house that breaks it is caught. */

import { describe, expect, test } from 'vitest';
import { type Module, modulesOf, readTree, type Tree } from './source-tree';

export interface Law {
  /** The law as a sentence. */
  readonly law: string;
  /** What is wrong in a house, each with what to do about it. */
  readonly breaches: (house: House) => readonly string[];
  /** Made-up files that break it, one way each, and what the complaint about them must contain. */
  readonly broken: readonly (readonly [says: string, files: Readonly<Record<string, string>>])[];
  /** Made-up files that come close and keep it. */
  readonly kept?: Readonly<Record<string, string>>;
}

export interface House {
  readonly tree: Tree;
  readonly modules: readonly Module[];
  readonly tests: readonly Module[];
}

const thisHouse = houseOf(readTree('src', 'tests', 'scripts', 'seeds'));

export function proveLaw({ law, breaches, broken, kept }: Law): void {
  describe(law, () => {
    test('this house keeps it', () => {
      const found = breaches(thisHouse);
      expect(found, law).toEqual([]);
    });
    test.each(broken)('a breach is found: %s', (says, files) => {
      const found = breaches(houseOf(new Map(Object.entries(files))));
      expect(found).toEqual([expect.stringContaining(says)]);
    });
    if (kept !== undefined) {
      test('what comes close and keeps it is left alone', () => {
        expect(breaches(houseOf(new Map(Object.entries(kept))))).toEqual([]);
      });
    }
  });
}

function houseOf(tree: Tree): House {
  return { tree, modules: modulesOf(tree, 'src/'), tests: modulesOf(tree, 'tests/') };
}
