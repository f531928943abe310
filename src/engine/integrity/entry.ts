/** A log entry: one event, with who, when (claimed), on which device, and after what. */

import { assert } from '../base';
import { canonicalJson, digestOf } from './canonical-json';
import { entrySchema } from './entry.schema';

export const entryVersion = 1;

/** What every event in a log has; unknown kinds are kept and passed on. */
export interface LoggedEvent {
  readonly kind: string;
  readonly v: number;
}

/** What a clock claimed: never trusted for order, never a reason to refuse. */
export interface ClaimedTime {
  /** ISO 8601 date and time with offset. */
  readonly claimed: string;
  /** IANA time zone name. */
  readonly zone: string;
}

export interface Entry<E extends LoggedEvent = LoggedEvent> {
  /** Lower-case hex SHA-256 of the canonical JSON of all the other members. */
  readonly id: string;
  readonly v: number;
  readonly job: string;
  readonly device: string;
  /** Counts this device's entries in this job from 1, without holes. */
  readonly seq: number;
  /** One more than the greatest of its parents; 1 when it has none. */
  readonly lamport: number;
  /** The ids of the heads its writer had seen, sorted. */
  readonly parents: readonly string[];
  readonly at: ClaimedTime;
  /** The person's id. */
  readonly by: string;
  readonly event: E;
}

export type UnsealedEntry<E extends LoggedEvent = LoggedEvent> = Omit<Entry<E>, 'id'>;

/**
 * Gives an entry its id and freezes it through and through. The answer is a copy: exactly the data that was hashed.
 * Throws when the entry is malformed, because what is sealed stays for ever.
 */
export function seal<E extends LoggedEvent>(unsealed: UnsealedEntry<E>): Entry<E> {
  const content = JSON.parse(canonicalJson(unsealed)) as UnsealedEntry<E>;
  const entry = { ...content, id: digestOf(content) };
  assert(entrySchema.safeParse(entry).success, 'a malformed entry cannot be sealed');
  return deeplyFrozen(entry);
}

/** The id that the content of an entry asks for. */
export function idFromContent(entry: Entry): string {
  const { id: _, ...content } = entry;
  return digestOf(content);
}

function deeplyFrozen<T extends object>(value: T): T {
  for (const member of Object.values(value)) {
    if (typeof member === 'object' && member !== null) deeplyFrozen(member);
  }
  return Object.freeze(value);
}
