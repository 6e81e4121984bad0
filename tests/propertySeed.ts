import fc from "fast-check";

/**
 * Every property starts from this seed, so that a run says of the code what the last one said; another one is given by
 * VITE_DIPBOOK_SEED, and "random" takes a new one each time. A property that names a seed of its own keeps it.
 */
const usualSeed = 20_261_129;

const asked: unknown = import.meta.env["VITE_DIPBOOK_SEED"];
if (asked !== "random")
  fc.configureGlobal({ ...fc.readConfigureGlobal(), seed: Number(asked ?? usualSeed) | 0 });
