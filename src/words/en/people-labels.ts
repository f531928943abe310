/** Labels of people, PINs and second pairs of eyes, in English; fetched with the screens that need them. */

import { dateText, timeText } from './time';

const when = (claimed: string) => `${dateText(claimed)}, ${timeText(claimed)}`;

export const peopleLabels = {
  comePin: 'To come to the stand.',
  lock: 'The stand asks again who is there after',
  lockTexts: { '0': 'never', '5': '5 minutes', '10': '10 minutes', '30': '30 minutes' },
  askPin: 'Changing hands asks for the PIN',
  yes: 'yes',
  no: 'no',
  newPin: 'New PIN',
  newPinTitle: (name: string) => `A new PIN for ${name}`,
  newPinText:
    'For a PIN that is lost or known to others. Everything signed before stays good, and who gave the new one stands in the history with the reason.',
  newPinReason: 'Why',
  newPinSix: 'New PIN of six digits, chosen by its owner',
  newPinBy: (name: string) => `${name} gives it`,
  newPinMeans: (name: string) => `I give ${name} a new PIN and a new key.`,
  addBy: (name: string) => `${name} adds them`,
  addMeans: (name: string) => `I stand for it that ${name} works here, and for what they may do.`,
  retireTitle: (name: string) => `${name} has left`,
  retireText:
    'They leave the list at the stand. Everything they did and signed stays in every record, and stays good.',
  retireBy: (name: string) => `${name} says so`,
  retireMeans: (name: string) => `${name} no longer works here.`,
  noSupervisor: 'Only a supervisor may do this, and this shop has none who works here.',
  lostBook: 'This browser has cleared the book',
  lostBookText: (day: string) =>
    `A shop was kept here, last opened on ${day}, and its data is gone. A browser may do this when the device runs out of room, or when somebody clears its data; Standbook itself deletes nothing.`,
  lostBookWay:
    'Restore the latest backup: records, people and tools come back, and each person chooses a PIN. Then install the app and ask the browser to keep it, under Shop.',
  lostBookAnew: 'Begin with the demo instead',
  history: 'History',
  historyOf: (name: string) => `History of ${name}`,
  historyEmpty: 'Nothing has been noted.',
  notes: {
    joined: 'joined the shop',
    left: 'left the shop; what they signed stays good',
    'new-pin': 'was given a new PIN and key',
    'pin-here': 'chose a PIN on this device',
    'wrong-pin': 'a wrong PIN was typed for them',
  },
  noteBy: (claimed: string, by: string) => (by === '' ? when(claimed) : `${when(claimed)}, ${by}`),
  keysAsData: 'Signing keys are kept less well here',
  keysAsDataText:
    'This browser refuses to keep signing keys as keys, as browsers do in private windows. Each key is kept as data instead, encrypted with its owner’s PIN. Signatures hold as before, but whoever copies this browser’s data could try PINs elsewhere, and a private window forgets the book when it closes. Use an ordinary window for real work.',
  keysRefused: 'Nobody can sign in this browser',
  eyes: 'Joints an apprentice tightened',
  eyesText:
    'A mechanic or supervisor who did not tighten them looks at each one, puts a hand or a wrench on it, and confirms it here.',
  eyesLooked: 'Looked at and right',
  eyesBy: (name: string) => `${name} confirms`,
  eyesMeans: (count: number) =>
    count === 1
      ? 'I looked at this joint, and it is right.'
      : `I looked at these ${count} joints, and each is right.`,
  eyesNobody: 'Nobody who works here may confirm these. Add a mechanic or supervisor under Shop.',
  eyesTick: 'Tick what was looked at first.',
} as const;
