/** What a mechanic changes between one step and the next: the place at the bike, the tool in the hand, the side stood on. */

import type { PlanStep } from './plan.schema';

export type Handled = Pick<PlanStep, 'zone' | 'tools' | 'side'>;

export type Changes = {
  readonly zone: number;
  readonly tool: number;
  readonly side: number;
  readonly total: number;
};

/** The tool in the hand: the one a step names first. A step that names none leaves in the hand what is there. */
export function toolOf({ tools }: Pick<Handled, 'tools'>): string | undefined {
  return tools[0];
}

/** The side worked from; a step on both, in the middle or on no side moves nobody. */
export function sideOf({ side }: Pick<Handled, 'side'>): 'left' | 'right' | undefined {
  return side === 'left' || side === 'right' ? side : undefined;
}

/** How often zone, tool and side change over steps done in this order; to take up the first of each is no change. */
export function changesIn(steps: readonly Handled[]): Changes {
  const zone = changesOf(steps.map((step) => step.zone));
  const tool = changesOf(steps.map(toolOf));
  const side = changesOf(steps.map(sideOf));
  return { zone, tool, side, total: zone + tool + side };
}

function changesOf(values: readonly (string | undefined)[]): number {
  const said = values.filter((value) => value !== undefined);
  return said.filter((value, index) => index > 0 && value !== said[index - 1]).length;
}
