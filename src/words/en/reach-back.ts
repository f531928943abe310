/** The list of bikes that a wrench in doubt may have left with a joint outside its figure, in English. */

import { dateText } from './time';
import { figure, plural } from './writing';

const causes = {
  'found-outside': (date: string) => `was found outside its tolerance on ${date}`,
  dropped: (date: string) => `was dropped on ${date}`,
  overloaded: (date: string) => `was overloaded on ${date}`,
} as const;

type Cause = keyof typeof causes;

const jointsInDoubt = 'Joints in doubt: ';

export const reachBackLabels = {
  title: (id: string) => `Bikes tightened with wrench ${id}`,
  cause: (id: string, cause: Cause, on: string) => `Wrench ${id} ${causes[cause](dateText(on))}.`,
  causeUnknownDay: (id: string, cause: 'dropped' | 'overloaded') =>
    `Wrench ${id} is marked ${cause}.`,
  period: (since: string, until: string | undefined) =>
    until === undefined
      ? `Every joint tightened with it since its last good calibration on ${dateText(since)} is judged again.`
      : `Every joint tightened with it from its good calibration on ${dateText(since)} until ${dateText(until)} is judged again.`,
  measured: 'Judged with what the calibration found:',
  notMeasured:
    'Nothing has been measured since, so nobody knows how far it is out. Enter its calibration: joints that are surely inside then leave this list.',
  working: 'Judging joints again',
  progress: (done: number, of: number) => `Judging joints again, ${done} of ${plural(of, 'bike')}`,
  count: (bikes: number, joints: number, ofBikes: number, ofJoints: number) =>
    `${plural(joints, 'joint')} on ${plural(bikes, 'bike')} may be outside, of ${plural(ofJoints, 'joint')} on ${plural(ofBikes, 'bike')} judged again.`,
  noneUsed: 'No joint was tightened with this wrench in that time, so no bike is concerned.',
  allInside: (bikes: number, joints: number) =>
    `No joint is in doubt any more: ${plural(joints, 'joint')} on ${plural(bikes, 'bike')} judged again, every one inside its figure.`,
  gone: 'Handed over',
  here: 'Still in the shop',
  handedOver: (date: string) => `handed over ${date}`,
  customer: 'Customer',
  noCustomer: 'The customer’s details are not on this device.',
  joint: 'Joint',
  tightened: 'Tightened',
  figure: 'Figure',
  set: 'Set to',
  ended: 'May have ended at',
  chance: 'Chance of being outside',
  endedAt: (low: string, high: string) => (low === high ? `${low} N·m` : `${low}–${high} N·m`),
  endedUnknown: 'not known',
  chanceUnknown: 'not known until it is measured',
  goneOver: (wrench: string, date: string) =>
    `gone over later with wrench ${wrench} on ${date}, without being loosened`,
  classes: {
    A: 'can hurt the rider',
    B: 'can stop the bike working',
    C: 'small matter',
  },
  openRecord: 'Open the record',
  openJob: 'Open the job',
  callBack: 'Note that it is called back',
  reopen: 'Reopen these joints',
  callBackTitle: (frame: string) => `Call back ${frame}`,
  reopenTitle: (frame: string) => `Reopen joints of ${frame}`,
  callBackMeans: 'This is added to the sealed record, with your name and the time.',
  reopenMeans:
    'The steps of these joints are reopened: the bolts are loosened and tightened anew with a good wrench. What relied on them goes stale.',
  callBackText: 'What was agreed with the customer',
  callBackQuick: ['Coming in', 'Told not to ride it until then', 'No answer yet, will try again'],
  callBackSave: 'Add it to the record',
  reopenSave: 'Reopen them',
  /** What stands in the record for ever. */
  recordText: (cause: string, joints: string, said: string) =>
    `Called back. ${cause} ${jointsInDoubt}${joints}. ${said}`,
  /** What was agreed, out of what stands in the record; all of it where it was written otherwise. */
  agreedIn: (text: string) => {
    const said = text.indexOf('. ', text.indexOf(jointsInDoubt));
    return text.includes(jointsInDoubt) && said !== -1 ? text.slice(said + 2) : text;
  },
  reopenReason: (cause: string) => `${cause} To be tightened anew.`,
  calledBack: (name: string, when: string) => `Called back: ${name}, ${when}.`,
  reopenedBy: (name: string, when: string) => `Joints reopened: ${name}, ${when}.`,
  agreed: (said: string) => `Agreed: ${said}`,
  dealtWith: 'Dealt with',
  dealtWithLine: (frame: string, name: string, when: string) =>
    `${frame}: called back by ${name}, ${when}.`,
  reopenedLine: (frame: string, name: string, when: string) =>
    `${frame}: joints reopened by ${name}, ${when}.`,
  print: 'Print the list',
  caution:
    'A chance is worked out from what is known of the wrench and says nothing about the bike’s use since. When in doubt, ask the customer not to ride it and have a qualified mechanic look at it.',
} as const;

/** A probability as a person would say it; never more exact than what is known. */
export function chanceText(probability: number): string {
  if (probability >= 0.995) return 'surely outside';
  if (probability >= 0.95) return 'almost surely outside';
  if (probability < 0.05) return 'small: less than 1 in 20';
  return `about ${figure(Math.min(9, Math.max(1, probability * 10)), 0)} in 10`;
}
