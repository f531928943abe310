import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { descendants, topologicalOrder } from '../../../src/engine/base';

const graph = (edges: Record<string, readonly string[]>) => new Map(Object.entries(edges));

/** Graphs without a circle: each node may point only to nodes drawn before it. */
const acyclic = fc
  .array(fc.array(fc.nat({ max: 11 }), { maxLength: 4 }), { minLength: 1, maxLength: 12 })
  .map(
    (rows) =>
      new Map(
        rows.map((row, index) => [
          `n${index}`,
          row.filter((other) => other < index).map((other) => `n${other}`),
        ]),
      ),
  );

describe('topological order', () => {
  test.each<[situation: string, edges: Record<string, string[]>, order: string[]]>([
    ['nothing to order', {}, []],
    ['no edges: as given', { b: [], a: [], c: [] }, ['b', 'a', 'c']],
    ['a chain given backwards', { c: ['b'], b: ['a'], a: [] }, ['a', 'b', 'c']],
    [
      'a diamond',
      { top: [], left: ['top'], right: ['top'], foot: ['right', 'left'] },
      ['top', 'left', 'right', 'foot'],
    ],
    ['predecessors outside the graph do not count', { a: ['elsewhere'], b: ['a'] }, ['a', 'b']],
  ])('[B1] %s', (_, edges, order) => {
    expect(topologicalOrder(graph(edges))).toEqual({ ok: true, value: order });
  });

  test('[B1] among free nodes the lowest rank comes first', () => {
    const rank = (node: string) => ({ a: 2, b: 1, c: 0 })[node] ?? 0;
    expect(topologicalOrder(graph({ a: [], b: [], c: ['a'] }), rank)).toEqual({
      ok: true,
      value: ['b', 'a', 'c'],
    });
  });

  test('[B1] every node stands once, after its predecessors, in every graph without a circle', () => {
    fc.assert(
      fc.property(acyclic, fc.array(fc.nat()), (after, ranks) => {
        const order = topologicalOrder(after, (node) => ranks[Number(node.slice(1))] ?? 0);
        if (!order.ok) throw new Error('an order was expected');
        expect([...order.value].sort()).toEqual([...after.keys()].sort());
        for (const [node, before] of after)
          for (const other of before)
            expect(order.value.indexOf(other)).toBeLessThan(order.value.indexOf(node));
      }),
      { seed: 2101 },
    );
  });

  test('[B1] ranks that differ make the order independent of how the graph was written down', () => {
    fc.assert(
      fc.property(
        acyclic.chain((after) =>
          fc.tuple(
            fc.constant(after),
            fc.shuffledSubarray([...after.keys()], { minLength: after.size }),
          ),
        ),
        ([after, shuffled]) => {
          const rank = (node: string) => Number(node.slice(1));
          const rewritten = new Map(shuffled.map((node) => [node, after.get(node) ?? []]));
          expect(topologicalOrder(rewritten, rank)).toEqual(topologicalOrder(after, rank));
        },
      ),
      { seed: 2102 },
    );
  });
});

describe('circles', () => {
  test.each<[situation: string, edges: Record<string, string[]>, members: string[]]>([
    ['a node that waits for itself', { a: ['a'] }, ['a']],
    ['two that wait for each other', { a: ['b'], b: ['a'] }, ['a', 'b']],
    [
      'a circle with a tail: the tail is not in it',
      { tail: ['a'], a: ['b'], b: ['c'], c: ['a'], free: [] },
      ['a', 'b', 'c'],
    ],
  ])('[B2] %s', (_, edges, members) => {
    const refused = topologicalOrder(graph(edges));
    if (refused.ok) throw new Error('a refusal was expected');
    const { code, cycle } = refused.refusal;
    expect(code).toBe('cycle-found');
    expect([...new Set(cycle)].sort()).toEqual(members);
    expect(cycle.at(-1)).toBe(cycle[0]);
    for (const [index, node] of cycle.slice(0, -1).entries())
      expect(edges[node]).toContain(cycle[index + 1]);
  });

  test('[B2] one edge back makes any chain a circle', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 15 }), fc.nat({ max: 14 }), (length, back) => {
        const first = Math.min(back, length - 1);
        const after = new Map(
          Array.from({ length }, (_, index) => [`n${index}`, index > 0 ? [`n${index - 1}`] : []]),
        );
        after.set(`n${first}`, [...(after.get(`n${first}`) ?? []), `n${length - 1}`]);
        expect(topologicalOrder(after).ok).toBe(false);
      }),
      { seed: 2103 },
    );
  });
});

describe('descendants', () => {
  const steps = graph({ a: [], b: ['a'], c: ['b'], d: [], e: ['d', 'c'] });

  test.each<[situation: string, from: string[], reached: string[]]>([
    ['directly and through others', ['a'], ['b', 'c', 'e']],
    ['from several at once', ['c', 'd'], ['e']],
    ['from the end: nothing', ['e'], []],
    ['from what the graph does not have: nothing', ['elsewhere'], []],
    ['a start that stands on another start is not in the answer', ['a', 'b'], ['c', 'e']],
  ])('[B3] %s', (_, from, reached) => {
    expect(descendants(steps, from)).toEqual(reached);
  });

  test('[B3] in a circle the start is still not its own descendant', () => {
    expect(descendants(graph({ a: ['b'], b: ['a'] }), ['a'])).toEqual(['b']);
  });

  test('[B3] agrees with walking every path', () => {
    fc.assert(
      fc.property(acyclic, fc.nat({ max: 11 }), (after, index) => {
        const start = `n${index % after.size}`;
        const standsOn = (node: string): boolean =>
          (after.get(node) ?? []).some((other) => other === start || standsOn(other));
        expect(descendants(after, [start])).toEqual([...after.keys()].filter(standsOn));
      }),
      { seed: 2104 },
    );
  });
});
