import { Session } from "node:inspector";

// One for as long as the tests of a file run: what was made fast before the count began would not be counted again.
const session = new Session();
session.connect();
session.post("Profiler.enable");
session.post("Profiler.startPreciseCoverage", { callCount: true, detailed: true });

function taken(): number {
  let count = 0;
  session.post("Profiler.takePreciseCoverage", (error, coverage) => {
    if (error) throw error;
    for (const { url, functions } of coverage.result)
      if (url.includes("/src/geometry/"))
        for (const { ranges } of functions) for (const range of ranges) count += range.count;
  });
  return count;
}

/**
 * How many blocks of code in src/geometry are run through: loops, branches and functions, each time one is entered, by the
 * engine's own exact count. The same on every machine, whatever else it does. What the engine sorts by itself counts by
 * its comparisons.
 */
export function countWork(run: () => void): number {
  taken();
  run();
  return taken();
}
