/** Facts of a job in English sentences: what it waits for, what is unusual, where a figure comes from. */

import type { Unusual, Waiting } from '../../engine/job';
import type { FigureSource } from '../../engine/torque';
import type { Names } from '../names';
import { holdNames, severities } from './terms';
import { figure, listed, plural, range } from './writing';

export function waitingSentence(waiting: Waiting): string {
  switch (waiting.code) {
    case 'waits-on-hold':
      return waiting.note === ''
        ? `for ${holdNames[waiting.for]}`
        : `for ${holdNames[waiting.for]}: ${waiting.note}`;
    case 'waits-for-part':
      return `${waiting.part} ${waiting.state}`;
    case 'waits-for-finding':
      return `${severities[waiting.severity]}: ${waiting.text}`;
    case 'waits-for-set-aside':
      return `set aside: ${waiting.step} (${waiting.reason})`;
    case 'waits-for-rework':
      return `${plural(waiting.steps, 'step')} to show good again`;
    case 'waits-for-second-check':
      return 'for the second check';
    case 'waits-for-customer':
      return 'for the customer';
  }
}

/** Who let a bike go with a finding, and why. */
export function letGoSentence(reason: string, by?: string): string {
  return by === undefined ? `let go by a supervisor: ${reason}` : `let go by ${by}: ${reason}`;
}

export function unusualSentence(unusual: Unusual, names: Names): string {
  switch (unusual.code) {
    case 'unusual-finding': {
      const end = unusual.closed
        ? `put right: ${unusual.closed}`
        : unusual.allowed
          ? letGoSentence(unusual.allowed, unusual.allowedBy && names.person(unusual.allowedBy))
          : 'open';
      return `${severities[unusual.severity]}: ${unusual.text} (${end})`;
    }
    case 'unusual-usual-range':
      return `${names.joint(unusual.joint)}: tightened to a usual range, accepted by ${names.person(unusual.acceptedBy)}`;
    case 'unusual-figure-far':
      return `${names.joint(unusual.joint)}: its figure, ${range(unusual.figure, 2)} N·m, is far from what such a joint usually takes`;
    case 'unusual-reopened':
      return `${names.step(unusual.step)}: done ${unusual.times} times${unusual.reason === '' ? '' : ` (${unusual.reason})`}`;
    case 'unusual-learner-joint':
      return unusual.confirmedBy === undefined
        ? `${names.joint(unusual.joint)}: tightened by ${names.person(unusual.by)}, who is still learning; nobody has confirmed it yet`
        : `${names.joint(unusual.joint)}: tightened by ${names.person(unusual.by)}, who is still learning; confirmed by ${names.person(unusual.confirmedBy)}`;
    case 'unusual-point-adjusted':
      return `${names.point(unusual.point)}: adjusted on the walk${unusual.note ? ` (${unusual.note})` : ''}`;
    case 'unusual-part-damaged':
      return `${names.part(unusual.part)}: came damaged${unusual.note ? ` (${unusual.note})` : ''}`;
    case 'unusual-measure-undecided':
      return `${names.step(unusual.at)}: ${figure(unusual.value)} is too near its limit to tell`;
    case 'unusual-readings': {
      const near = unusual.undecided.map(
        (bolt) => `bolt ${bolt} read too near the end of its figure to tell`,
      );
      const above = unusual.above.map((bolt) => `bolt ${bolt} was once read above its figure`);
      return `${names.joint(unusual.joint)}: ${listed([...near, ...above])}`;
    }
    case 'unusual-carton':
      return `The carton came damaged: ${unusual.damage}`;
  }
}

/** `N·m`, `Nm`, `N.m` or `newton metres`, as it may be printed; the end of `min max` is none. */
const saysNewtonMetres = /(?<!\p{L})(?:n(?:ewtons?)?|н)[\s\-‐‑–·•∙⋅・.×*]*[mм]/iu;

/** Where a torque figure comes from is part of the figure; a marking in another unit is said as it is printed. */
export function sourceSentence(source: FigureSource, names: Names): string {
  switch (source.kind) {
    case 'part':
      return saysNewtonMetres.test(source.printed)
        ? 'marked on the part'
        : `marked on the part: ${source.printed}`;
    case 'document':
      return source.reference;
    case 'approved':
      return `approved by ${names.person(source.by)}, ${source.on}`;
    case 'usual':
      return source.acceptedBy === undefined
        ? 'usual range, no specification'
        : `usual range, accepted by ${names.person(source.acceptedBy)}`;
  }
}
