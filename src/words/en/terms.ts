/** The trade's words in English, one for each code of the engine. */

import type { Zone } from '../../engine/base';
import type { Severity, Verdict } from '../../engine/inspection';
import type {
  HoldReason,
  JobStatus,
  Meaning,
  PartState,
  Role,
  Standing,
  Topic,
} from '../../engine/job';
import type { Preparation } from '../../engine/plan';

type Terms<Code extends string> = { readonly [C in Code]: string };

export const zoneNames: Terms<Zone> = {
  'whole-bike': 'Whole bike',
  frame: 'Frame and fittings',
  'fork-and-front-brake': 'Fork and front brake',
  cockpit: 'Cockpit',
  'front-wheel': 'Front wheel',
  'rear-wheel': 'Rear wheel',
  drivetrain: 'Drivetrain',
  seat: 'Seat',
};

export const statusNames: Terms<JobStatus> = {
  boxed: 'boxed',
  'on-the-stand': 'on the stand',
  'on-hold': 'on hold',
  'to-be-checked': 'to be checked',
  ready: 'ready',
  'handed-over': 'handed over',
};

export const standings: Terms<Standing> = {
  'to-do': 'to do',
  done: 'done',
  stale: 'stale',
  reopened: 'reopened',
  'set-aside': 'set aside',
};

export const severities: Terms<Severity> = {
  'stop-ride': 'Stop-ride',
  'before-hand-over': 'Before hand-over',
  'tell-customer': 'Tell the customer',
};

export const severityDetails: Terms<Severity> = {
  'stop-ride': 'Nobody may ride it like this',
  'before-hand-over': 'Put right before it leaves the shop',
  'tell-customer': 'Safe, but the customer should know',
};

export const verdicts: Terms<Verdict> = { good: 'good', adjusted: 'adjusted', wrong: 'wrong' };

export const partStates: Terms<PartState | 'unchecked'> = {
  present: 'present',
  missing: 'missing',
  damaged: 'damaged',
  unchecked: 'not checked yet',
};

export const holdNames: Terms<HoldReason> = {
  part: 'a part',
  decision: 'a decision',
  customer: 'the customer',
  tool: 'a tool',
  other: 'something else',
};

export const meanings: Terms<Meaning> = {
  built: 'built',
  checked: 'checked',
  received: 'received',
};

export const roleNames: Terms<Role> = {
  mechanic: 'mechanic',
  apprentice: 'apprentice',
  supervisor: 'supervisor',
};

export const preparations: Terms<Preparation> = {
  grease: 'Grease',
  threadlocker: 'Threadlocker',
  'assembly-compound': 'Assembly compound',
  oil: 'Light oil',
  dry: 'Dry',
};

export const topicNames: Terms<Topic> = {
  fit: 'the fit',
  'load-limit': 'the load limit',
  'brake-levers': 'which lever works which brake',
  axles: 'how the wheels are held',
  'before-every-ride': 'what to check before every ride',
  'bedding-in': 'bedding in the brakes',
  'first-check': 'the first check',
  'insertion-marks': 'the insertion marks',
  findings: 'what was found',
};
