/** Changes of the catalogue in one line each, for the history and for two that contradict each other. */

import type { ShopChange } from '../../engine/plan';
import type { CatalogueNames } from './catalogue-refusals';
import { conditionText } from './conditions';
import { figure, range } from './writing';

const wordNames = {
  title: 'title',
  how: 'how',
  why: 'why',
  right: 'what right looks like',
  wrong: 'how it goes wrong',
  wayRound: 'which way round',
  cautions: 'cautions',
} as const;

export function changeText(
  change: ShopChange,
  names: CatalogueNames,
  versionNumber: (id: string) => number | undefined,
): string {
  switch (change.kind) {
    case 'add-step':
      return `A step of our own, “${change.step.title}”, for ${conditionText(change.step.when)}.`;
    case 'add-joint': {
      const { name, thread, usual, source } = change.joint;
      return `A joint of our own, ${name}, ${thread}, usually ${range(usual)} N·m (${source}).`;
    }
    case 'change-words': {
      const words = Object.entries(change.words).map(
        ([name, text]) =>
          `${wordNames[name as keyof typeof wordNames]} now “${Array.isArray(text) ? text.join(' ') : text}”`, // the schema has no other names
      );
      return `${names.step(change.step)}: ${words.join('; ')}`;
    }
    case 'switch-off':
      return `${names.step(change.step)}: switched off.`;
    case 'switch-on':
      return `${names.step(change.step)}: switched on.`;
    case 'set-effort': {
      const [least, likely, most] = change.effort;
      return `${names.step(change.step)}: ${figure(likely)} minutes likely (${figure(least)} to ${figure(most)}).`;
    }
    case 'approve-figure':
      return `${change.make} ${change.model}, ${names.joint(change.joint)}: ${range(change.figure)} N·m approved.`;
    case 'take-back':
      return `Version ${versionNumber(change.version) ?? ''} taken back.`;
  }
}
