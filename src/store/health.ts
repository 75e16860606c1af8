/** What the browser says of its storage; null where it does not say. */
export type StorageHealth = Readonly<{
  /** Whether the browser promises not to clear it when room runs short. */
  promised: boolean | null;
  usedBytes: number | null;
  quotaBytes: number | null;
}>;

/** Asks the browser about its storage, and changes nothing. */
export async function storageHealth(storage: Partial<StorageManager> | undefined): Promise<StorageHealth> {
  const promised = (await storage?.persisted?.().catch(() => null)) ?? null;
  const estimate = await storage?.estimate?.().catch(() => null);
  return { promised, usedBytes: estimate?.usage ?? null, quotaBytes: estimate?.quota ?? null };
}

/** Asks the browser to promise to keep the data. It may say no: a backup is still needed. */
export const askToKeep = async (storage: Partial<StorageManager> | undefined): Promise<boolean> =>
  (await storage?.persist?.().catch(() => false)) ?? false;
