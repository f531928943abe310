/** Conditions and bikes in a mechanic's words: which question, which answer, which bike. */

import { type Bike, factsOf } from '../../engine/bike';
import type { Condition } from '../../engine/plan';

type Answer = string | number | boolean;

/** By question of the description. */
export const questionNames: Readonly<Record<string, string>> = {
  make: 'make',
  model: 'model',
  kind: 'kind of bike',
  assist: 'motor',
  frameNumber: 'frame number',
  gtin: 'article number',
  colour: 'colour',
  size: 'size',
  loadLimit: 'load limit',
  battery: 'battery',
  extras: 'also on the bike',
  'frame.material': 'frame material',
  'frame.shape': 'frame shape',
  'frame.minimumInsertion': 'least post insertion the frame asks for',
  'frame.shock': 'rear shock',
  'frame.load': 'load bed',
  'fork.kind': 'fork',
  'fork.steerer': 'steerer material',
  'fork.spring': 'fork spring',
  'steering.stem': 'stem',
  'steering.bar': 'handlebar',
  'steering.barMaterial': 'handlebar material',
  'steering.faceplateBolts': 'faceplate bolts',
  'steering.controlsFitted': 'levers on the bar in the box',
  'steering.headset': 'headset',
  'steering.plug': 'plug in the steerer',
  'steering.stemAngle': 'stem angle',
  'steering.grip': 'grips',
  'steering.routing': 'cables and hoses run',
  'seat.clamp': 'seat clamp',
  'seat.post': 'seat post',
  'seat.postMaterial': 'seat post material',
  'seat.postDiameter': 'seat post diameter',
  'seat.postShape': 'seat post shape',
  'seat.saddleClamp': 'saddle clamp',
  'gears.kind': 'gears',
  'gears.drive': 'drive',
  'gears.chainrings': 'chainrings',
  'gears.speeds': 'sprockets or speeds',
  'gears.shifter': 'shifters',
  'gears.hanger': 'gear hanger',
  'gears.tension': 'chain is tensioned by',
  'gears.join': 'chain comes',
  'cranks.fixing': 'crank fixing',
  'cranks.fitted': 'cranks fitted in the box',
  'cranks.bottomBracket': 'bottom bracket',
  'cranks.chainring': 'chainring fixing',
  'pedals.thread': 'pedal thread',
  'pedals.supplied': 'pedals supplied',
  'pedals.style': 'pedals',
  ...wheelNames('front'),
  ...wheelNames('rear'),
};

function wheelNames(wheel: 'front' | 'rear'): Record<string, string> {
  const names = {
    axle: 'axle',
    axleThread: 'axle thread',
    axleHead: 'axle head',
    hub: 'hub',
    brake: 'brake',
    tyre: 'tyre size',
    tyrePressure: 'tyre pressure on the side wall',
    tyreFit: 'tyre fitted with',
    rimMaxKpa: 'greatest pressure of the rim',
    rimInnerWidth: 'inner width of the rim',
    hookless: 'rim is hookless',
    discMount: 'disc brake mount',
    rotor: 'rotor fixing',
    hose: 'brake hose',
    fitted: 'wheel fitted in the box',
  };
  return Object.fromEntries(
    Object.entries(names).map(([name, text]) => [`${wheel}.${name}`, `${wheel} ${text}`]),
  );
}

/** Answers that do not read well with their hyphens taken out. */
const answerNames: Readonly<Record<string, string>> = {
  'mountain-hardtail': 'mountain hardtail',
  'mountain-full-suspension': 'mountain full-suspension',
  bmx: 'BMX',
  child: 'child’s',
  'linear-pull': 'linear-pull',
  'dual-pivot': 'dual-pivot',
  'quick-release': 'quick-release',
  'thru-axle': 'thru-axle',
  'low-step': 'low-step',
  'press-fit': 'press-fit',
  'one-piece': 'one-piece',
  'star-nut': 'star nut',
  'clip-in': 'clip-in',
  'slip-on': 'slip-on',
  'lock-on': 'lock-on',
};

export function questionName(question: string): string {
  return questionNames[question] ?? question;
}

export function answerName(answer: Answer): string {
  if (typeof answer === 'boolean') return answer ? 'yes' : 'no';
  return answerNames[answer] ?? String(answer).replaceAll('-', ' ');
}

/** `front brake is linear-pull or cantilever`, `no mudguards`, … */
export function conditionText(condition: Condition | undefined): string {
  return condition === undefined ? 'every bike' : textOf(condition, false);
}

function textOf(condition: Condition, isInside: boolean): string {
  if ('all' in condition) return joined(condition.all, ', and ', 'every bike', isInside);
  if ('any' in condition) return joined(condition.any, ', or ', 'no bike', isInside);
  if ('not' in condition) return negated(condition.not);
  if ('has' in condition) return `has ${answerName(condition.has)}`;
  if ('known' in condition)
    return `${questionName(condition.ask)} is ${condition.known ? 'known' : 'not known'}`;
  return `${questionName(condition.ask)} is ${choices([condition.is].flat())}`;
}

function joined(
  parts: readonly Condition[],
  between: string,
  none: string,
  isInside: boolean,
): string {
  if (parts.length === 0) return none;
  const text = parts.map((part) => textOf(part, parts.length > 1)).join(between);
  return isInside && parts.length > 1 ? `(${text})` : text;
}

function negated(condition: Condition): string {
  if ('has' in condition) return `has no ${answerName(condition.has)}`;
  if ('is' in condition)
    return `${questionName(condition.ask)} is not ${choices([condition.is].flat())}`;
  if ('known' in condition) return textOf({ ...condition, known: !condition.known }, true);
  if ('not' in condition) return textOf(condition.not, true);
  return `not (${textOf(condition, false)})`;
}

function choices(answers: readonly Answer[]): string {
  const names = answers.map(answerName);
  const last = names.pop();
  return names.length === 0 ? (last ?? '') : `${names.join(', ')} or ${last}`;
}

/** A kind of bike, with its answers to these questions: `a town bike (front brake: roller; gears: hub)`. */
export function bikeText(bike: Bike, questions: readonly string[]): string {
  const facts = factsOf(bike);
  const told = [...new Set(questions)]
    .filter((question) => question !== 'kind')
    .flatMap((question) => {
      const answer = facts[question];
      if (answer === undefined) return [];
      if (typeof answer !== 'object') return [`${questionName(question)}: ${answerName(answer)}`];
      return answer.length > 0 ? [`with ${answer.map(answerName).join(', ')}`] : [];
    });
  const kind = `a ${answerName(bike.kind)} bike`;
  return told.length === 0 ? kind : `${kind} (${told.join('; ')})`;
}
