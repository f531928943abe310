/** What a supervisor does with the shop's own catalogue: a change with its reason, a file out, a file in. */

import { ok, type Result, refuse } from '../engine/base';
import {
  type CatalogueVersion,
  type ChangeForbidden,
  type ChangeUnmet,
  mergeVersions,
  nextVersion,
  type PlanUnsound,
  type ShopChange,
  trialOf,
  unsoundFor,
} from '../engine/plan';
import type { Person, StorageRefusal } from '../storage/contract';
import type { CatalogueRefusal, OnTried } from './catalogue-change';
import type { AppPorts } from './ports';
import type { CatalogueActions, LivingData, NobodyAtTheStand } from './services';
import { attempted } from './storage-refusals';

/** Bikes tried between two breaths of the screen. */
const atOnce = 4;

export function createCatalogueActions(
  ports: AppPorts,
  { shop }: LivingData,
  person: () => Person | undefined,
): CatalogueActions {
  const { storage, clock, newId } = ports;
  const held = () => attempted(() => storage.catalogueVersions.all());

  function supervisor(reason: string): Result<Person, CatalogueRefusal | NobodyAtTheStand> {
    const actor = person();
    if (actor === undefined) return refuse({ code: 'nobody-at-the-stand' });
    if (!actor.roles.includes('supervisor')) return refuse({ code: 'catalogue-for-supervisors' });
    if (reason.trim().length < 3) return refuse({ code: 'catalogue-reason-missing' });
    return ok(actor);
  }

  function versionBy(
    actor: Person,
    seen: readonly CatalogueVersion[],
    reason: string,
    changes: readonly ShopChange[],
  ): CatalogueVersion {
    const version = nextVersion(seen);
    return {
      ...{ id: newId(), version, at: clock.now(), by: actor.name, reason: reason.trim() },
      changes: [...changes],
    };
  }

  /** Tries them on every bike they concern, and keeps all of them or none. */
  async function keepSound(
    standing: readonly CatalogueVersion[],
    added: readonly CatalogueVersion[],
    onTried: OnTried,
  ): Promise<Result<true, StorageRefusal | ChangeForbidden | ChangeUnmet | PlanUnsound>> {
    const [born, bikes] = await Promise.all([ports.loadCatalogue(), ports.loadBikesToTry()]);
    const trial = trialOf(born, standing, added, bikes);
    if (!trial.ok) return trial;
    for (const [index, bike] of trial.value.bikes.entries()) {
      if (index % atOnce === 0) {
        onTried(index, trial.value.bikes.length);
        await breath();
      }
      const unsound = unsoundFor(trial.value.after, bike);
      if (unsound !== undefined) return refuse(unsound);
    }
    const kept = await attempted(() => storage.catalogueVersions.putAll(added));
    return kept.ok ? ok(true) : kept;
  }

  return {
    async changeCatalogue({ reason, changes }, onTried = () => undefined) {
      const actor = supervisor(reason);
      if (!actor.ok) return actor;
      const standing = await held();
      if (!standing.ok) return standing;
      const version = versionBy(actor.value, standing.value, reason, changes);
      const kept = await keepSound(standing.value, [version], onTried);
      return kept.ok ? ok(version) : kept;
    },

    loadBikesToTry: ports.loadBikesToTry,

    async saveCatalogueFile() {
      const versions = await held();
      if (!versions.ok) return versions;
      const { catalogue } = await ports.loadCatalogue();
      const content = await ports.writeCatalogueFile({
        versions: versions.value,
        catalogue: catalogue.version,
        shop: shop.getState().name,
        at: clock.now().claimed,
      });
      const name = `standbook-catalogue-${clock.today()}.json`;
      const sink = ports.filePlaces.download(name, 'application/json');
      await sink.write(new TextEncoder().encode(content));
      await sink.close();
      return ok(true);
    },

    async readCatalogueFile(text) {
      const file = await ports.readCatalogueFile(text);
      if (!file.ok) return file;
      const mine = await held();
      if (!mine.ok) return mine;
      const merged = mergeVersions(mine.value, file.value);
      return merged.ok ? ok({ ...merged.value, versions: file.value }) : merged;
    },

    async takeInCatalogue({ versions, decided, reason }, onTried = () => undefined) {
      const actor = supervisor(reason);
      if (!actor.ok) return actor;
      const mine = await held();
      if (!mine.ok) return mine;
      const merged = mergeVersions(mine.value, versions);
      if (!merged.ok) return merged;
      const { incoming, conflicts } = merged.value;
      if (incoming.length === 0) return refuse({ code: 'catalogue-nothing-new' });
      const subjects = conflicts
        .map(({ subject }) => subject)
        .filter((subject) => decided[subject] === undefined);
      if (subjects.length > 0) return refuse({ code: 'catalogue-undecided', subjects });
      const chosen = conflicts.map(
        ({ subject, mine: own, theirs }) => (decided[subject] === 'mine' ? own : theirs).change,
      );
      // What was decided is a version of its own, so that it stands on the other side too once it has travelled back.
      const seen = [...mine.value, ...incoming];
      const decision = chosen.length > 0 ? [versionBy(actor.value, seen, reason, chosen)] : [];
      const kept = await keepSound(mine.value, [...incoming, ...decision], onTried);
      return kept.ok ? ok(incoming.length) : kept;
    },
  };
}

/** Lets the screen show how far it is. */
function breath(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve));
}
