/** Finds steps by any of their words: their own, their joint's, their tools', and those of the bikes they are for. */

import type { Joint, Step } from '../../engine/plan';
import { words } from '../../words';
import { catalogueWords } from '../../words/catalogue';

/** Everything that can be read of a step, in lower case. */
export function textOfStep(step: Step, joint: Joint | undefined): string {
  const { title, how, why, right, wrong, wayRound, tools, cautions, preparation, measures } = step;
  return [
    ...[title, how, why, right, wrong, wayRound, preparation?.note],
    ...[...tools, ...cautions],
    ...measures.flatMap((measure) => [measure.name, measure.how]),
    ...(joint ? [joint.name, joint.thread, joint.bit, joint.preparationNote] : []),
    ...[words.terms.zoneNames[step.zone], step.place.replaceAll('-', ' ')],
    catalogueWords.conditionText(step.when),
  ]
    .filter((text) => text !== undefined)
    .join(' ')
    .toLowerCase();
}

/** Whether every word that was typed is in the text, in any order. */
export function hasAllWords(text: string, typed: string): boolean {
  return typed
    .toLowerCase()
    .split(/\s+/)
    .every((word) => text.includes(word));
}
