/** What is ticked and typed at a hand-over: kept by this device until the bike is handed over, whatever interrupts. */

import { useState } from 'react';
import { useStore } from 'zustand';
import type { Topic } from '../../engine/job';
import { useApp } from '../app-context';

export interface HandOverDraft {
  readonly name: string;
  readonly contact: string;
  readonly firstCheck: string;
  readonly told: readonly Topic[];
}

export function handOverDraftKey(job: string): string {
  return `hand-over ${job}`;
}

export interface KeptHandOver {
  readonly draft: HandOverDraft;
  readonly change: (part: Partial<HandOverDraft>) => void;
  readonly forget: () => void;
}

/** The draft of one job; only topics this bike still needs count as told. */
export function useHandOverDraft(
  job: string,
  topics: readonly Topic[],
  firstCheck: string,
): KeptHandOver {
  const { session } = useApp();
  const key = handOverDraftKey(job);
  const kept = useStore(session, ({ drafts }) => drafts[key]);
  const [empty] = useState<HandOverDraft>({ name: '', contact: '', firstCheck, told: [] });
  const draft = readHandOverDraft(kept, empty, topics);
  return {
    draft,
    change: (part) => session.getState().draft(key, JSON.stringify({ ...draft, ...part })),
    forget: () => session.getState().draft(key, ''),
  };
}

/** Kept by an older or newer app, so each member is looked at. */
export function readHandOverDraft(
  kept: string | undefined,
  empty: HandOverDraft,
  topics: readonly Topic[],
): HandOverDraft {
  const { name, contact, firstCheck, told } = recordIn(kept);
  const text = (value: unknown, otherwise: string) =>
    typeof value === 'string' ? value : otherwise;
  return {
    name: text(name, empty.name),
    contact: text(contact, empty.contact),
    firstCheck: text(firstCheck, empty.firstCheck),
    told: Array.isArray(told) ? topics.filter((topic) => told.includes(topic)) : empty.told,
  };
}

function recordIn(kept: string | undefined): Readonly<Record<string, unknown>> {
  if (kept === undefined) return {};
  try {
    const read: unknown = JSON.parse(kept);
    return typeof read === 'object' && read !== null ? { ...read } : {};
  } catch {
    return {};
  }
}
