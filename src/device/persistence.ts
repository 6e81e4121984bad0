/** "kept": the browser won't clear the log to make room. "may-be-cleared": it could, when the disk fills up. */
export type Keeping = "kept" | "may-be-cleared" | "missing";

export type Space = { readonly usedBytes: number; readonly quotaBytes: number };

/** Asks the browser to keep the log. Some ask the person, some decide by themselves; the answer can be no. */
export async function askToKeep(): Promise<Keeping> {
  return answer(() => navigator.storage.persist());
}

/** Whether the log is kept, without asking. */
export async function keeping(): Promise<Keeping> {
  return answer(() => navigator.storage.persisted());
}

/** The browser's estimate of what is used and allowed, bytes, or null where it gives none. */
export async function space(): Promise<Space | null> {
  try {
    const { usage, quota } = await navigator.storage.estimate();
    return usage === undefined || quota === undefined ? null : { usedBytes: usage, quotaBytes: quota };
  } catch {
    return null;
  }
}

/** Outside https `navigator.storage` is not there at all, and asking throws. */
async function answer(ask: () => Promise<boolean>): Promise<Keeping> {
  try {
    return (await ask()) ? "kept" : "may-be-cleared";
  } catch {
    return "missing";
  }
}
