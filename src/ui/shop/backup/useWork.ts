import { useRef, useState } from "react";

/** Something that takes a while: how far it is, 0–1, in what step, and a way to stop it. */
export type WorkProgress = { readonly step: string; readonly share: number };

/** Runs one long piece of work at a time; a second is not begun, and a cancelled one is no failure. */
export function useWork() {
  const [work, setWork] = useState<WorkProgress | null>(null);
  const abort = useRef<AbortController | null>(null);
  const run = async (
    doIt: (signal: AbortSignal, tell: (work: WorkProgress) => void) => Promise<void>,
    onFailed: (message: string) => void,
  ): Promise<void> => {
    if (abort.current !== null) return;
    const own = new AbortController();
    abort.current = own;
    setWork({ step: "Starting", share: 0 });
    try {
      await doIt(own.signal, setWork);
    } catch (error) {
      if (own.signal.aborted) onFailed("Cancelled.");
      else onFailed(error instanceof Error ? error.message : String(error));
    }
    abort.current = null;
    setWork(null);
  };
  return { work, run, cancel: () => abort.current?.abort(new Error("cancelled")) };
}
