/** Whether the browser promises not to clear what is kept when the device runs out of room. */

export interface Durability {
  /** `unknown` where the browser cannot say. */
  readonly answer: 'kept' | 'may-be-cleared' | 'unknown';
  /** Bytes; an estimate of the browser, not the room that is left on the disk. */
  readonly used?: number;
  readonly allowed?: number;
}

type Manager = Partial<Pick<StorageManager, 'persist' | 'persisted' | 'estimate'>>;

/** What holds now, without asking for anything. */
export function readDurability(
  manager: Manager | undefined = navigator.storage,
): Promise<Durability> {
  return answered(manager, () => manager?.persisted?.());
}

/** Asks the browser to keep everything for good; the answer is its own to give. */
export function askToKeep(manager: Manager | undefined = navigator.storage): Promise<Durability> {
  return answered(manager, () => manager?.persist?.());
}

async function answered(
  manager: Manager | undefined,
  ask: () => Promise<boolean> | undefined,
): Promise<Durability> {
  const isKept = await ask()?.catch(() => undefined);
  const estimate = await manager?.estimate?.().catch(() => undefined);
  return {
    answer: isKept === undefined ? 'unknown' : isKept ? 'kept' : 'may-be-cleared',
    ...(estimate?.usage !== undefined && { used: estimate.usage }),
    ...(estimate?.quota !== undefined && { allowed: estimate.quota }),
  };
}
