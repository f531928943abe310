/** Every entry of a job's log as a sentence: what, to which value, with what, and how it was judged. */

import {
  type EventOf,
  type JobEvent,
  type JobState,
  lastOfEachBolt,
  measuresAt,
  type PartState,
  type PassMade,
  partStates,
  type Topic,
} from '../../engine/job';
import type { Names } from '../names';
import { sourceSentence } from './facts';
import { holdNames, partStates as partWords, severities, topicNames, verdicts } from './terms';
import { dateText, timeText } from './time';
import { figure, heldTogether, measured, plural, quantity, range } from './writing';

/** What a log refers to by id. */
export interface LogBook {
  readonly names: Names;
  /** The job the log adds up to. */
  readonly state: JobState;
}

type Sentences = {
  readonly [Kind in JobEvent['kind']]: (event: EventOf<Kind>, book: LogBook) => string;
};

/** An entry of a kind that only a later release knows is named as it is. */
export function loggedSentence(event: { readonly kind: string }, book: LogBook): string {
  if (!Object.hasOwn(sentences, event.kind)) return event.kind.replaceAll('-', ' ');
  const known = event as JobEvent; // the table has its kind
  const sentence = sentences[known.kind] as (event: JobEvent, book: LogBook) => string;
  return heldTogether(sentence(known, book));
}

const judged = {
  inside: 'inside its limits',
  outside: 'outside its limits',
  undecided: 'too near its limit to tell',
} as const;

const meanings = {
  built: 'Signed as built',
  checked: 'Signed as checked by somebody else',
  received: 'Signed as received by the customer',
} as const;

const levers = {
  left: 'the left lever works the front brake',
  right: 'the right lever works the front brake',
  none: 'no lever works a front brake',
} as const;

const sentences: Sentences = {
  'box-received': ({ bike, due, delivery, cartonDamage, photos }) =>
    told(
      `Box taken in: ${bike.make} ${bike.model}, frame number ${bike.frameNumber}`,
      delivery && `delivery ${delivery}`,
      due && `promised for ${whenText(due)}`,
      cartonDamage && `carton damaged: ${cartonDamage}`,
      photosText(photos),
    ),
  'bike-described': ({ bike }) =>
    `Bike described anew: ${bike.make} ${bike.model}, frame number ${bike.frameNumber}`,
  'due-set': ({ due }) =>
    due === undefined ? 'No longer promised for a day' : `Promised for ${whenText(due)}`,
  'job-opened': ({ plan, market }) =>
    `Job opened with plan ${plan.slice(0, 12)}, for the market ${market.toUpperCase()}`,
  'contents-checked': ({ parts }, { names }) =>
    `Contents checked; ${partStates.flatMap((state) => contentsText(state, parts, names)).join('; ')}`,
  'step-done': ({ step }, { names }) => `Step done: ${names.step(step)}`,
  'step-reopened': ({ step, reason }, { names }) =>
    `Step reopened: ${names.step(step)}, because: ${reason}`,
  'step-set-aside': ({ step, reason }, { names }) =>
    `Step set aside: ${names.step(step)}, because: ${reason}`,
  'figure-entered': ({ joint, figure: entered }, { names }) =>
    `Figure for ${names.joint(joint)}: ${range(entered, 2)} N·m, ${printedSource(entered.source, names)}`,
  'pass-made': (pass, { names }) =>
    `Pass ${pass.pass} of ${pass.of} made at ${names.joint(pass.joint)}${withWrench(pass)}`,
  'joint-tightened': (made, { names }) =>
    told(
      `${names.joint(made.joint)} tightened, pass ${made.pass} of ${made.of}${withWrench(made)}`,
      `figure ${range(made.figure, 2)} N·m, ${printedSource(made.figure.source, names)}`,
      `each bolt ends between ${figure(made.jointLow, 2)} and ${figure(made.jointHigh, 2)} N·m`,
    ),
  'joint-confirmed': ({ joint }, { names }) =>
    `Looked at by a second pair of eyes: ${names.joint(joint)}`,
  'measure-taken': ({ at, measure, value, unit, judged: how }, { names, state }) => {
    const name = measuresAt(state, at).find(({ id }) => id === measure)?.name ?? measure;
    return `Measured: ${name}, ${measured(value, unit)}, ${judged[how]}; at: ${placeName(at, names)}`;
  },
  'point-looked-at': ({ point, verdict, note }, { names }) =>
    told(`Looked at: ${names.point(point)}, ${verdicts[verdict]}`, note),
  'finding-raised': ({ at, severity, text, photos }, { names }) =>
    told(
      `Finding, ${severities[severity].toLowerCase()}: ${text}`,
      at && `at ${placeName(at, names)}`,
      photosText(photos),
    ),
  'finding-closed': ({ finding, how }, { state }) =>
    `Finding put right: ${findingText(finding, state)}; what was done: ${how}`,
  'finding-allowed': ({ finding, reason }, { state }) =>
    `Finding let go by a supervisor: ${findingText(finding, state)}; the reason: ${reason}`,
  'job-held': ({ for: reason, note }) => told(`Put on hold, waits for ${holdNames[reason]}`, note),
  'job-resumed': () => 'Taken up again',
  signed: ({ meaning, name, customer, strokes }) =>
    told(
      name === undefined
        ? meanings[meaning]
        : `${meanings[meaning]}, ${meaning === 'received' ? 'handed over by' : 'by'} ${name}`,
      customer && `the customer’s details have the digest ${customer.slice(0, 12)}`,
      strokes && 'drawn by hand',
    ),
  'sent-back': ({ steps, points, reason }, { names }) =>
    `Sent back: ${[...steps.map(names.step), ...points.map(names.point)].join(', ')}, because: ${reason}`,
  'handed-over': ({ told: topics, firstCheck, frontBrakeLever }) =>
    told(
      'Handed over',
      topics.length > 0 && `told about ${topics.map(topicText).join(', ')}`,
      firstCheck && `first check by ${dateText(firstCheck)}`,
      levers[frontBrakeLever],
    ),
  'record-amended': ({ text }) => `Added later: ${text}`,
};

/** What there is to say, one thing after the other. */
function told(...parts: readonly (string | false | undefined)[]): string {
  return parts
    .filter((part) => typeof part === 'string' && part.trim() !== '')
    .map((part) => withoutStop(String(part)))
    .join('; ');
}

/** What was typed may end in a full stop; the sentence round it has none. */
function withoutStop(text: string): string {
  return text.trim().replace(/\.$/, '');
}

function whenText(iso: string): string {
  return `${dateText(iso)} ${timeText(iso)}`.trimEnd();
}

function photosText(photos: readonly string[]): string | false {
  return photos.length > 0 && plural(photos.length, 'photo');
}

function topicText(topic: string): string {
  return topicNames[topic as Topic] ?? topic; // a later release may know more topics
}

function contentsText(
  wanted: PartState,
  parts: EventOf<'contents-checked'>['parts'],
  names: Names,
): readonly string[] {
  const found = parts.filter(({ state }) => state === wanted);
  const noted = found.map(
    ({ part, note }) => `${names.part(part)}${note === undefined ? '' : ` (${note})`}`,
  );
  return found.length === 0 ? [] : [`${partWords[wanted]}: ${noted.join(', ')}`];
}

function findingText(id: string, { findings }: JobState): string {
  const found = findings.find((finding) => finding.id === id);
  return found === undefined
    ? id
    : `${withoutStop(found.text)} (${severities[found.severity].toLowerCase()})`;
}

/** A step, a joint or a point: the one of them whose name is known. */
function placeName(at: string, names: Names): string {
  return (
    [names.step, names.joint, names.point].map((name) => name(at)).find((name) => name !== at) ?? at
  );
}

function withWrench({ wrench, adapter, setPoint, onScale, readings = [] }: PassMade): string {
  const set = `, wrench ${wrench.id} (${wrench.name}) set to ${quantity(figure(onScale, 2), wrench.unit)}`;
  const also = wrench.unit === 'N·m' ? '' : ` (${quantity(figure(setPoint, 2), 'N·m')})`;
  const through = adapter === undefined ? '' : `, with ${adapter.name}`;
  const read = [...lastOfEachBolt(readings)]
    .sort((a, b) => a.bolt - b.bolt)
    .map(({ bolt, text, judged: how }) => `bolt ${bolt} ${text}, ${readingJudged[how]}`);
  return `${set}${also}${through}${read.length === 0 ? '' : `; read: ${read.join('; ')}`}`;
}

const readingJudged = {
  inside: 'inside its figure',
  outside: 'outside its figure',
  undecided: 'too near its end to tell',
} as const;

/** In the record the marking stands as it was printed, whatever its unit. */
function printedSource(
  source: EventOf<'figure-entered'>['figure']['source'],
  names: Names,
): string {
  return source.kind === 'part'
    ? `marked on the part as “${source.printed}”`
    : sourceSentence(source, names);
}
