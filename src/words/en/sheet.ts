/** The customer's sheet, in English. */

export const sheet = {
  title: 'Your bike, handed over',
  draft: 'Draft, not handed over',
  bike: 'Bike',
  frame: 'Frame number',
  record: 'Record',
  load: 'Load limit',
  loadValue: (kg: number | undefined) =>
    kg === undefined ? 'see the maker’s booklet' : `${kg} kg with rider and luggage`,
  tyres: 'Tyres',
  front: 'front',
  rear: 'rear',
  lever: 'Front brake',
  leverValue: { left: 'left-hand lever', right: 'right-hand lever', none: 'none' },
  firstCheck: 'First check',
  by: (date: string) => `by ${date}`,
  bolts: 'Bolts that hold you up',
  joint: 'joint',
  figure: 'figure, N·m',
  source: 'where the figure comes from',
  setTo: 'set to',
  wrench: 'wrench',
  secondEyes: ({ by, confirmedBy }: { by: string; confirmedBy?: string | undefined }) =>
    confirmedBy === undefined
      ? `tightened by ${by}, apprentice; not yet confirmed`
      : `tightened by ${by}, apprentice; confirmed by ${confirmedBy}`,
  read: (values: string) => `read ${values}`,
  nearEnd: (value: string) => `${value} (near its end)`,
  others: (count: number) => `and ${count} lesser joints, kept in the record`,
  measured: 'Measured',
  looked: 'Looked at, front to rear',
  points: (steps: number, points: number) => `${steps} steps done, ${points} points looked at.`,
  adjusted: (what: string) => `Put right on the way: ${what}.`,
  findings: 'For you to know',
  letGo: 'Handed over like this',
  found: (severity: string, text: string) => `${severity}: ${text}`,
  closed: (text: string, how: string) => `${text}; put right: ${how}`,
  allowed: (text: string, by: string, reason: string) =>
    `${text}. Handed over like this on the word of ${by}: ${reason}`,
  everyRide: 'Before every ride',
  axle: {
    'quick-release':
      'Wheel levers closed: hard to push from half-way, and they leave a mark in your palm. Never turn one like a nut.',
    'thru-axle': 'Wheel axles fully in and tight; their levers folded as you were shown.',
    nutted: 'Wheel nuts tight; the wheels sit straight.',
  },
  brakes: 'Pull both brakes and rock the bike: it stays, and nothing knocks.',
  tyresBars: 'Tyres firm; bars, saddle and pedals straight and tight.',
  marks: 'Never raise the saddle or the bars past their marks.',
  bedding:
    'New disc brakes need about twenty firm stops from moderate speed before they bite fully.',
  doubt: 'In doubt, do not ride: bring it in. The makers’ instructions come first.',
  kept: 'Kept for you',
  signatures: { built: 'built', checked: 'checked', received: 'received' },
  electronically: 'signed electronically',
  from: (name: string) => `from ${name}`,
  erased: 'details erased on request',
  seal: (digest: string, entries: number) =>
    `Seal ${digest} · ${entries} entries · scan to check it has not been altered`,
  qr: 'Code of this record',
  amendments: 'Added later',
  drawing: 'Drawn from its description, not to this frame’s measure',
} as const;
