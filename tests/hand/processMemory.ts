import { readdirSync, readFileSync } from "node:fs";

export type Megabytes = { readonly all: number; readonly largest: number };

/** A process and all that descend from it, by Linux's /proc. */
function familyOf(first: number): readonly number[] {
  const parents = new Map<number, number>();
  for (const name of readdirSync("/proc").filter((one) => /^\d+$/.test(one)))
    try {
      const fields = readFileSync(`/proc/${name}/stat`, "utf8").replace(/^.*\) /, "");
      parents.set(Number(name), Number(fields.split(" ")[1]));
    } catch {
      // It ended meanwhile.
    }
  const isOurs = (id: number | undefined): boolean =>
    id !== undefined && (id === first || isOurs(parents.get(id)));
  return [...parents.keys()].filter(isOurs);
}

/**
 * Memory of a process that must be kept, MB: its own pages (scripts, their buffers, what the browser keeps of blobs)
 * and its share of memory it has in common with others. Pages of program files are left out: they are read again from
 * the disk when they are needed, and a process's share of them changes with the other browsers on the machine.
 */
function megabytesOf(id: number): number {
  try {
    const rollup = readFileSync(`/proc/${id}/smaps_rollup`, "utf8");
    const kilobytes = ["Pss_Anon", "Pss_Shmem"].map((name) =>
      Number(new RegExp(`^${name}:\\s+(\\d+) kB`, "m").exec(rollup)?.[1] ?? 0),
    );
    return kilobytes.reduce((sum, kB) => sum + kB, 0) / 1000;
  } catch {
    return 0;
  }
}

/** What a browser takes, all of its processes, and the largest of them. */
export function memoryOf(first: number): Megabytes {
  const each = familyOf(first).map(megabytesOf);
  return { all: each.reduce((sum, mb) => sum + mb, 0), largest: Math.max(...each) };
}

/** Watches a browser's memory until told to stop; gives the most it took at any sample. */
export function watchMemory(first: number, everyMs = 200): { readonly stop: () => Megabytes } {
  let most = memoryOf(first);
  const timer = setInterval(() => {
    const { all, largest } = memoryOf(first);
    most = { all: Math.max(most.all, all), largest: Math.max(most.largest, largest) };
  }, everyMs);
  return {
    stop: () => {
      clearInterval(timer);
      return most;
    },
  };
}
