/** Works timed turn by turn, so that a stall of the machine falls on all alike. */

/** The milliseconds of each round, for each work; the first rounds, until the code is compiled, are left out. */
export function alternately(
  { rounds, warmUp }: { readonly rounds: number; readonly warmUp: number },
  ...works: readonly ((round: number) => unknown)[]
): readonly (readonly number[])[] {
  const times = works.map((): number[] => []);
  for (let round = 0; round < warmUp + rounds; round += 1) {
    for (const [index, work] of works.entries()) {
      const began = performance.now();
      work(round);
      if (round >= warmUp) times[index]?.push(performance.now() - began);
    }
  }
  return times;
}
