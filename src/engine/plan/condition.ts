/** Whether a condition holds for a bike, and which of the bike's own answers made it hold. */

import type { BikeFacts } from '../bike';
import type { Condition } from './condition.schema';

/**
 * Whether the condition holds for these facts. A question without an answer satisfies neither `is` nor `has`
 * (so `not` over it holds), and satisfies `known: false`. `all` of nothing holds, `any` of nothing does not.
 */
export function holds(condition: Condition | undefined, facts: BikeFacts): boolean {
  if (condition === undefined) return true;
  if ('all' in condition) return condition.all.every((part) => holds(part, facts));
  if ('any' in condition) return condition.any.some((part) => holds(part, facts));
  if ('not' in condition) return !holds(condition.not, facts);
  const answer = Object.hasOwn(facts, condition.ask) ? facts[condition.ask] : undefined;
  if ('known' in condition) return (answer !== undefined) === condition.known;
  if ('has' in condition) return Array.isArray(answer) && answer.includes(condition.has);
  const accepted = Array.isArray(condition.is) ? condition.is : [condition.is];
  return accepted.some((one) => one === answer);
}

/** An answer of the bike, as a condition met it: `question` `rear.brake`, `answer` `coaster`. */
export type Ground = { readonly question: string; readonly answer: string | number | boolean };

/** The bike's answers on which a condition that holds stands; what only excludes (`not`, `known`) is no ground. */
export function groundsOf(condition: Condition | undefined, facts: BikeFacts): readonly Ground[] {
  if (condition === undefined || !holds(condition, facts)) return [];
  if ('all' in condition) return condition.all.flatMap((part) => groundsOf(part, facts));
  if ('any' in condition) return condition.any.flatMap((part) => groundsOf(part, facts));
  if ('has' in condition) return [{ question: condition.ask, answer: condition.has }];
  if (!('is' in condition)) return [];
  const answer = facts[condition.ask];
  return answer === undefined || typeof answer === 'object'
    ? []
    : [{ question: condition.ask, answer }];
}

/** Every question that a condition asks, however it is joined. */
export function questionsAsked(condition: Condition | undefined): readonly string[] {
  if (condition === undefined) return [];
  if ('all' in condition) return condition.all.flatMap(questionsAsked);
  if ('any' in condition) return condition.any.flatMap(questionsAsked);
  if ('not' in condition) return questionsAsked(condition.not);
  return [condition.ask];
}
