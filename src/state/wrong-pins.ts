/** Each wrong PIN is noted with the person whose it was not: when, and who was at the stand. */

import type { Refusal, Result } from '../engine/base';
import type { PersonNote, Storage } from '../storage/contract';
import type { Clock, Keys } from './ports';

/** Where the note cannot be kept, the answer is still the answer; the count that makes the next try wait is kept elsewhere. */
export function notingWrongPins(
  keys: Keys,
  { storage, clock }: { readonly storage: Pick<Storage, 'people'>; readonly clock: Clock },
  atTheStand: () => string,
): Keys {
  async function noted<T, R extends Refusal>(
    person: string,
    asked: Promise<Result<T, R>>,
  ): Promise<Result<T, R>> {
    const answer = await asked;
    if (!answer.ok && answer.refusal.code === 'pin-wrong')
      await notePerson(storage, person, {
        kind: 'wrong-pin',
        by: atTheStand(),
        at: clock.now(),
      }).catch(() => undefined);
    return answer;
  }
  return {
    ...keys,
    signAs: (person, pin, payload) => noted(person, keys.signAs(person, pin, payload)),
    isPinOf: (person, pin) => noted(person, keys.isPinOf(person, pin)),
  };
}

/** Notes are only ever added. */
export function notePerson(
  { people }: Pick<Storage, 'people'>,
  id: string,
  note: PersonNote,
): Promise<void> {
  return people.change(id, (held) => held && { ...held, history: [...(held.history ?? []), note] });
}
