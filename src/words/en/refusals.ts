/** Refusals in English: what is in the way, and what to do about it. */

import type { EntryOutOfBounds } from '../../engine/bike';
import type { JobRefusal } from '../../engine/job';
import type { PlanRefusal, TyrePressureUnlikely } from '../../engine/plan';
import type { MarkingNotUnderstood, UnitMissing } from '../../engine/units';
import type { Names } from '../names';
import { featureText } from './bike-places';
import { boundsText } from './goods-in';
import { holdNames, partStates, severities, topicNames } from './terms';
import { dateText } from './time';
import { figure, listed, measured, missedLimit, plural } from './writing';

export type EngineRefusal =
  | JobRefusal
  | PlanRefusal
  | EntryOutOfBounds
  | TyrePressureUnlikely
  | MarkingNotUnderstood
  | UnitMissing;

type Sentences<R extends { readonly code: string }> = {
  readonly [Code in R['code']]: (
    facts: Extract<R, { readonly code: Code }>,
    names: Names,
  ) => string;
};

const adapterReasons = {
  lengths: 'its lengths are missing or impossible',
  'reaches-the-hand': 'it reaches back as far as the hand',
  screwdriver: 'a torque screwdriver takes no adapter',
} as const;

export const refusals: Sentences<EngineRefusal> = {
  'box-not-received': () => 'This box has not been taken in yet. Take it in at goods-in first.',
  'box-already-received': () => 'This box has already been taken in.',
  'job-not-open': () => 'The job is still boxed. Open it first.',
  'job-already-open': () => 'The job is open already; its plan is frozen.',
  'job-on-hold': ({ for: reason, note }) =>
    `The job waits for ${holdNames[reason]}${note === '' ? '' : `: ${note}`}. Resume it first.`,
  'job-not-on-hold': () => 'The job is not on hold.',
  'record-sealed': () =>
    'The bike is handed over and its record sealed. Add an amendment instead; nothing in it changes.',
  'record-not-sealed': () => 'Only a sealed record takes amendments. Change the job itself.',
  'step-waits-for-steps': ({ steps }, names) => `First: ${listed(steps.map(names.step))}.`,
  'step-waits-for-parts': ({ parts }, names) =>
    `Needs ${listed(parts.map(({ part, state }) => `${names.part(part)} (${partStates[state]})`))}. Mark it present when it is here, or set the step aside.`,
  'point-waits-for-steps': ({ steps }, names) =>
    `Look at this once it is done again: ${listed(steps.map(names.step))}.`,
  'contents-unchecked': ({ parts }, names) =>
    `Check the contents first: ${listed(parts.map(names.part))}.`,
  'steps-unfinished': ({ steps }, names) =>
    `${plural(steps.length, 'step')} to finish: ${listed(steps.map(names.step))}.`,
  'points-unsettled': ({ points }, names) =>
    `${plural(points.length, 'point')} to look at: ${listed(points.map(names.point))}.`,
  'findings-open': ({ findings }) =>
    `${plural(findings.length, 'finding')} still open: ${listed(findings.map(({ severity, text }) => `${text} (${severities[severity].toLowerCase()})`))}. Put it right and close it, or let a supervisor decide.`,
  'not-signed-as-built': () => 'Nobody stands for the build yet. The builder signs first.',
  'already-signed-as-built': () => 'The build is signed already.',
  'not-signed-as-checked': () => 'The second check is not signed yet.',
  'already-signed-as-checked': () => 'The second check is signed already.',
  'builder-cannot-check': ({ person }, names) =>
    `${names.person(person)} worked on this bike, so someone else has to check it.`,
  'apprentice-cannot-check': ({ person }, names) =>
    `${names.person(person)} is still learning: the second check is for a mechanic or a supervisor.`,
  'joints-unconfirmed': ({ joints }, names) =>
    `An apprentice tightened ${listed(joints.map(names.joint))}. A mechanic or supervisor looks at ${joints.length === 1 ? 'it' : 'each'} and confirms it first.`,
  'cannot-confirm-joint': ({ person, because }, names) =>
    because === 'own-work'
      ? `${names.person(person)} tightened this joint, so somebody else has to look at it.`
      : `${names.person(person)} is still learning: a mechanic or supervisor confirms this joint.`,
  'supervisor-only': () => 'Only a supervisor may let a bike go with this. Ask one to step up.',
  'joint-needs-no-second-eyes': () =>
    'This joint needs no second pair of eyes now. Look at the list again.',
  'joint-unknown': () => 'This plan has no such joint.',
  'figure-missing': () => 'Enter the torque figure printed on the part first.',
  'usual-range-not-accepted': () =>
    'A usual range is no specification. Somebody has to accept it by name, or find the maker’s figure.',
  'usual-range-needs-own-name': () => 'Accept a usual range in your own name only.',
  'calibration-overdue': ({ wrench, because, dueOn, operations }) =>
    because === 'date'
      ? `Wrench ${wrench} was due for calibration on ${dateText(dueOn)}. Take another, or have it calibrated.`
      : `Wrench ${wrench} has done ${operations} operations since its calibration. Take another, or have it calibrated.`,
  'wrench-not-in-service': ({ wrench, condition }) =>
    `Wrench ${wrench} is marked ${condition}. Take another until it has been calibrated.`,
  'adapter-impossible': ({ because }) =>
    `This adapter cannot be used: ${adapterReasons[because]}. Take it off, or correct its lengths on the tool board.`,
  'figure-empty': () => 'The figure says nothing. Enter what is printed on the part.',
  'figure-contradicts-itself': () =>
    'The figure’s lower end lies above its upper end. Read it again.',
  'figure-outside-wrench-range': ({ wrench, side, lowest, highest, unit }) =>
    `Wrench ${wrench} goes from ${figure(lowest)} to ${figure(highest)} ${unit}; this figure lies ${side} that. Take another.`,
  'wrench-too-coarse': ({ wrench, because, deviation, leastRisky }) =>
    because === 'scale'
      ? `Wrench ${wrench} has no mark where this figure needs one. Take one with a finer scale.`
      : `Wrench ${wrench} may be ${figure(deviation * 100)} % out, which is wider than this figure: a bolt could end between ${figure(leastRisky.jointLow, 2)} and ${figure(leastRisky.jointHigh, 2)} N·m. Take a more accurate one.`,
  'plan-for-another-bike': () => 'The bike’s description changed meanwhile. Open the job again.',
  'part-unknown': ({ part }) => `The list has no part called ${part}.`,
  'step-unknown': ({ step }) => `The plan has no step called ${step}.`,
  'point-needs-value': ({ point }, names) =>
    `${names.point(point)} has a limit: measure it, and enter the value.`,
  'point-unknown': ({ point }) => `The route has no point called ${point}.`,
  'finding-unknown': () => 'There is no such finding.',
  'finding-already-closed': () => 'This finding is closed already.',
  'finding-already-raised': () => 'This finding is written down already.',
  'finding-missing': () => 'Say what is wrong, and how bad it is.',
  'measure-unknown': () => 'Enter the measured value as a number.',
  'step-already-done': ({ step }, names) =>
    `${names.step(step)} is done. Reopen it if it has been disturbed.`,
  'step-not-done': ({ step }, names) =>
    `${names.step(step)} is not done, so there is nothing to reopen.`,
  'step-needs-tightening': () => 'This joint is done by tightening it: take the passes in turn.',
  'step-needs-measures': () => 'Enter what you measured first.',
  'measure-outside-limits': ({ measure, value, unit, min, max }) =>
    `${measure}: ${missedLimit(value, { min, max }, (one) => measured(one, unit)) ?? measured(value, unit)}. Put it right and measure again.`,
  'reason-missing': () => 'Say why, in a few words.',
  'pass-out-of-turn': ({ expected }) => `Pass ${expected} comes next.`,
  'reading-impossible': ({ bolt, text }) =>
    `“${text}” is no reading of bolt ${bolt}. Take it back and read the wrench again.`,
  'reading-outside-figure': ({ joint, turn, text, side }, names) =>
    side === 'above'
      ? `${names.joint(joint)}: bolt ${turn} of the order drawn read ${text}, surely above its figure. Loosen it, look at bolt and part for damage, bring it up again and read it.`
      : `${names.joint(joint)}: bolt ${turn} of the order drawn read ${text}, surely below its figure. Bring it up and read it again.`,
  'nothing-named': () => 'Name at least one.',
  'signature-of-another-meaning': () => 'This signature says something else. Sign again.',
  'signature-name-missing': () => 'A signature needs a printed name.',
  'signature-overtaken': () =>
    'Something was added to the job while you signed. Look at it, then sign again.',
  'customer-missing': () => 'Write the customer’s name first.',
  'customer-not-told': ({ topics }) =>
    `Tell the customer about ${listed(topics.map((topic) => topicNames[topic as keyof typeof topicNames] ?? topic))}.`,
  'first-check-not-after-hand-over': () => 'The first check must lie after today.',
  'plan-cycle': ({ cycle }, names) =>
    `The catalogue goes round in a circle: ${cycle.map(names.step).join(' → ')}. Correct it before opening jobs.`,
  'id-not-unique': ({ id }) => `The catalogue has two entries called ${id}.`,
  'features-at-odds': ({ contradictions }) =>
    `The description says what no bike has together: ${contradictions.map(({ one, other }) => `“${featureText(one)}” with “${featureText(other)}”`).join('; ')}. Look at the bike again and correct it.`,
  'bike-outside-catalogue': ({ features }) =>
    `The catalogue has no steps yet for ${listed(features.map((feature) => `“${featureText(feature)}”`))}. Correct the bike’s description, or build this bike by the maker’s instructions and on paper.`,
  'tyre-not-understood': ({ wheel, marking }) =>
    `The ${wheel} tyre’s size “${marking}” cannot be read. Write it as two numbers from the side wall, for example 37-622.`,
  'tyre-pressure-not-understood': ({ wheel, marking, cause }) =>
    cause.code === 'unit-missing'
      ? `The ${wheel} tyre’s pressure “${marking}” has no unit. Add it as printed: psi, bar or kPa.`
      : `The ${wheel} tyre’s pressure “${marking}” cannot be read. Write it as printed, the lower figure first, for example 40–65 psi or max 4.5 bar.`,
  'tyre-pressure-unlikely': ({ wheel, marking, max, least, greatest }) =>
    `The ${wheel} tyre’s pressure “${marking}” would let it have ${figure(max / 100)} bar; tyres have at most between ${figure(least / 100)} and ${figure(greatest / 100)} bar. Look at the figure and its unit again.`,
  'entry-out-of-bounds': (bounds) => `Write ${boundsText(bounds)}.`,
  'tyre-narrower-than-rim': ({ wheel, width, rimInner }) =>
    `The ${wheel} tyre is ${figure(width)} mm wide and its rim ${figure(rimInner)} mm inside, so the tyre cannot sit on it. Read both again, and fit a tyre and rim that suit each other.`,
  'tyre-window-empty': ({ wheel }) =>
    `The ${wheel} tyre’s lowest pressure lies above what its rim may hold. Do not inflate it: fit a tyre and rim that suit each other.`,
  'marking-not-understood': ({ part }) =>
    `“${part}” cannot be read. Write the figure as printed, for example 4–6 N·m or max 5 N·m.`,
  'unit-missing': () => 'Add the unit as printed: N·m, in·lb, ft·lb or kgf·cm.',
};
