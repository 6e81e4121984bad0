import type { Page } from "@playwright/test";

export type Figures = {
  readonly n: number;
  readonly min: number;
  readonly median: number;
  readonly p95: number;
  readonly max: number;
};

/** Order statistics of some milliseconds; refuses an empty list. */
export function figuresOf(ms: readonly number[]): Figures {
  const sorted = ms.toSorted((a, b) => a - b);
  const at = (share: number): number => {
    const value = sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
    if (value === undefined) throw new RangeError("figuresOf wants at least one time, found none");
    return value;
  };
  return { n: sorted.length, min: at(0), median: at(0.5), p95: at(0.95), max: at(1) };
}

export function show(name: string, { n, min, median, p95, max }: Figures): string {
  const ms = (value: number): string => value.toFixed(1).padStart(7);
  return `${name.padEnd(52)} n ${String(n).padStart(3)}  min ${ms(min)}  median ${ms(median)}  p95 ${ms(p95)}  max ${ms(max)} ms`;
}

/** The floor of a tap: one raw strict add to a store of its own, in the same page. */
export const rawStrictAdds = (page: Page, times: number): Promise<readonly number[]> =>
  page.evaluate(async (count) => {
    const db = await new Promise<IDBDatabase>((done, fail) => {
      const open = indexedDB.open("bench-floor", 1);
      open.addEventListener("upgradeneeded", () =>
        open.result.createObjectStore("rows", { autoIncrement: true }),
      );
      open.addEventListener("success", () => done(open.result));
      open.addEventListener("error", () => fail(open.error ?? new Error("the floor's store did not open")));
    });
    const taken: number[] = [];
    for (let i = 0; i < count; i++) {
      const start = performance.now();
      const write = db.transaction("rows", "readwrite", { durability: "strict" });
      write.objectStore("rows").add({ at: start, text: "coat done" });
      await new Promise<void>((done) => write.addEventListener("complete", () => done()));
      taken.push(performance.now() - start);
    }
    db.close();
    return taken;
  }, times);
