/** One open job: its state as it is on the disk, what somebody asks of it, and what went wrong with that. */

import { createStore, type StoreApi } from 'zustand/vanilla';
import { type Asked, emptyJob } from '../engine/job';
import type { JobRow, Storage } from '../storage/contract';
import { followJob } from './follow-job';
import { loadJob } from './load-job';
import type { OpenJob } from './open-job';
import type { Actor, Extras, Perform } from './perform';
import type { RowsStore } from './rows-store';
import { refusalIn } from './storage-refusals';

export interface JobStore extends StoreApi<OpenJob> {
  /** True once it is on the disk and shown; false when `problem` says why not. Waits for a write that is on its way; asked twice at once, it is done once. */
  act(asked: Asked, extras?: Extras): Promise<boolean>;
  /** Asks once more what could not be done. */
  retry(): Promise<boolean>;
  dismiss(): void;
  /** Reads again what is on the disk. */
  reload(): Promise<void>;
  close(): void;
}

export interface JobStorePorts {
  readonly storage: Pick<Storage, 'log'>;
  readonly perform: Perform;
  readonly rack: RowsStore<JobRow>;
  /** Who is at the stand. */
  readonly person: () => Actor | undefined;
  /** Whether this window wrote the entry, for example with a signature. */
  readonly isOwn?: (entry: string) => boolean;
}

export function createJobStore(ports: JobStorePorts, job: string): JobStore {
  const { storage, perform, rack, person } = ports;
  const store = createStore<OpenJob>(() => ({
    job,
    status: 'loading',
    state: emptyJob(),
    heads: [],
    entries: [],
    busy: false,
    changedElsewhere: 0,
  }));

  async function reload(): Promise<void> {
    try {
      const loaded = await loadJob(storage, job);
      store.setState(
        loaded === undefined
          ? { status: 'missing' }
          : { status: 'ready', failure: undefined, ...loaded },
      );
    } catch (error) {
      store.setState({ status: 'failed', failure: refusalIn(error) });
    }
  }

  let underway: { readonly asked: string; readonly done: Promise<boolean> } | undefined;

  /** One write after the other; the same thing asked again while it is on its way is the same tap. */
  function act(asked: Asked, extras?: Extras): Promise<boolean> {
    const same = JSON.stringify(asked);
    if (underway?.asked === same) return underway.done;
    const done =
      underway === undefined
        ? write(asked, extras)
        : underway.done.then(() => write(asked, extras));
    const mine = { asked: same, done };
    underway = mine;
    void mine.done.finally(() => {
      if (underway === mine) underway = undefined;
    });
    return mine.done;
  }

  async function write(asked: Asked, extras?: Extras): Promise<boolean> {
    const actor = person();
    if (actor === undefined) {
      store.setState({ problem: { asked, extras, refusal: { code: 'nobody-at-the-stand' } } });
      return false;
    }
    store.setState({ busy: true });
    const done = await perform(job, asked, actor, extras);
    if (!done.ok) {
      store.setState({ busy: false, problem: { asked, extras, refusal: done.refusal } });
      return false;
    }
    const { state, entries: added } = done.value;
    const { entries, heads } = store.getState();
    const isNext = added[0]?.parents.join() === heads.join();
    const last = added.at(-1);
    store.setState({
      busy: false,
      problem: undefined,
      status: 'ready',
      state,
      ...(last && { heads: [last.id] }),
      ...(isNext && { entries: [...entries, ...added] }),
    });
    if (!isNext) await reload();
    return true;
  }

  const stopFollowing = followJob(store, rack, reload, ports.isOwn ?? (() => false));
  void reload();

  return Object.assign(store, {
    act,
    async retry() {
      const { problem } = store.getState();
      return problem === undefined ? false : act(problem.asked, problem.extras);
    },
    dismiss: () => store.setState({ problem: undefined }),
    reload,
    close: stopFollowing,
  });
}
