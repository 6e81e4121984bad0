import fc from "fast-check";
import { aNumber, anId, maybe, orNull, someNumbers, someSeconds, someText } from "./anyValues.ts";
import type {
  MeltBodies,
  PourBodies,
  PourTold,
  RunBasis,
  RunBodies,
} from "../../src/logbook/entries/fireBodies.ts";

type Bodies = RunBodies & MeltBodies & PourBodies;

const segments = fc.array(
  fc.oneof(
    fc.record({ kind: fc.constant("ramp" as const), toC: aNumber, rateKPerH: aNumber }),
    fc.record({ kind: fc.constant("hold" as const), atC: aNumber, minutes: aNumber }),
    fc.record({ kind: fc.constant("instruction" as const), code: someText }),
  ),
  { maxLength: 3 },
);
const pieceIds = fc.array(anId, { maxLength: 2 });
const basis: fc.Arbitrary<RunBasis> = fc.record({
  route: fc.constantFrom("flash" as const, "staged" as const),
  pattern: orNull(
    fc.record({ material: fc.constantFrom("wax" as const, "other" as const), massKg: aNumber }),
  ),
  wallMm: aNumber,
  family: fc.constantFrom("fused-silica" as const, "quartz" as const),
  shellKg: aNumber,
  damp: fc.constantFrom("dry" as const, "patched-wet" as const),
  firedBefore: fc.boolean(),
  seenAbove1100: fc.boolean(),
  blindMm: aNumber,
  kiln: fc.record({ powerKW: aNumber, maxC: aNumber, volumeL: aNumber, maxRateKPerH: maybe(aNumber) }),
  after: fc.constantFrom("inspect" as const, "pour" as const),
  preheatC: orNull(aNumber),
  fireC: orNull(aNumber),
});
const pourTold: fc.Arbitrary<PourTold> = fc.record({
  family: fc.constantFrom("fused-silica" as const, "zircon" as const),
  people: aNumber,
  carryMin: aNumber,
  metalKg: orNull(aNumber),
  thinnestMm: fc.array(orNull(aNumber), { maxLength: 2 }),
});
const ending = { pouredKg: aNumber, piggedKg: aNumber };

/** For tests only: bodies of runs, melts and pours. */
export const anyFireBodies: { readonly [T in keyof Bodies]: fc.Arbitrary<Bodies[T]> } = {
  "run-planned": fc.record({
    kilnId: orNull(anId),
    purpose: fc.constantFrom("burnout" as const, "preheat" as const),
    pieceIds,
    startC: aNumber,
    segments,
    basis: maybe(basis),
  }),
  "run-changed": fc.record({ segments }),
  "run-started": fc.record({ kilnC: orNull(aNumber) }),
  "run-read": fc.record({ kilnC: aNumber }),
  "run-logged": fc.record({ source: someText, afterS: someSeconds, kilnC: someNumbers }),
  "run-step-done": fc.record({ segment: fc.integer({ min: -1, max: 4 }) }),
  "run-ended": fc.record({ result: fc.constantFrom("done" as const, "stopped" as const) }),
  "melt-planned": fc.record({
    furnaceId: orNull(anId),
    alloyId: anId,
    pieceIds,
    items: fc.array(fc.record({ name: someText, massKg: aNumber, alloyId: orNull(anId) }), { maxLength: 2 }),
    pourC: aNumber,
    mayHold: maybe(fc.array(fc.record({ element: anId, low: aNumber, high: aNumber }), { maxLength: 2 })),
  }),
  "melt-started": fc.record({ hotFurnace: fc.boolean(), weighedKg: maybe(aNumber) }),
  "melt-read": fc.record({ metalC: aNumber }),
  "melt-ended": fc.record({ ...ending, dropped: maybe(fc.boolean()) }),
  "pour-planned": fc.record({
    pourAt: aNumber,
    pieceIds,
    bed: fc.constantFrom("air" as const, "hot-sand" as const),
    shellC: aNumber,
    metalC: aNumber,
    steps: fc.array(
      fc.record({
        id: anId,
        track: fc.constantFrom("shell" as const, "metal" as const),
        minutes: aNumber,
        keepsMin: orNull(aNumber),
      }),
      { maxLength: 2 },
    ),
    told: maybe(pourTold),
  }),
  "pour-step-marked": fc.record({
    step: anId,
    state: fc.constantFrom("started" as const, "done" as const),
  }),
  "pour-item-checked": fc.record({ item: anId, ok: fc.boolean() }),
  "pour-decided": fc.record({ go: fc.boolean(), name: someText, passed: fc.constant([]) }),
  "pour-ended": fc.record({ dropped: maybe(fc.boolean()) }),
};
