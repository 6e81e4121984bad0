import fc from "fast-check";
import type { Entry, EntryBodies, EntryType } from "./entry.ts";
import { hourMs, monday, testStream } from "./testLog.ts";

/** For tests only: logs of one piece with well-shaped bodies in any order, most of them making little sense. */
const ids = Array.from({ length: 12 }, (_, i) => `id${i}`);
const anId = fc.constantFrom(...ids);
const someText = fc.constantFrom("", "wing", "cup");
const aNumber = fc.oneof(
  fc.double({ min: -100, max: 2000, noNaN: true }),
  fc.constantFrom(0, 1, 0.5, NaN, Infinity, -1),
);
const maybe = <T>(value: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> =>
  fc.option(value, { nil: undefined });
const orNull = <T>(value: fc.Arbitrary<T>): fc.Arbitrary<T | null> => fc.option(value, { nil: null });
const room = fc.constantFrom("first", "attic");

const part = fc.oneof(
  fc.record({ kind: fc.constant("flat" as const), widthMm: aNumber, lengthMm: aNumber }),
  fc.record({ kind: fc.constant("round" as const), diameterMm: aNumber }),
);
const plan = fc.record({
  name: someText,
  alloyId: maybe(fc.constantFrom("c87300", "unknown")),
  headM: maybe(aNumber),
  areaM2: maybe(aNumber),
  part: maybe(part),
  recipeId: maybe(fc.constantFrom("start-general", "gone")),
  geometry: maybe(fc.constantFrom("open" as const, "recess" as const)),
});

const bodies: { readonly [T in EntryType]?: fc.Arbitrary<EntryBodies[T]> } = {
  "piece-started": fc.record({ plan, roomId: room }),
  "piece-changed": fc.record({ changes: fc.record({ name: orNull(someText), headM: orNull(aNumber) }) }),
  "piece-moved": fc.record({ roomId: room }),
  "coat-dipped": fc.record({
    number: aNumber,
    step: orNull(fc.integer({ min: -1, max: 12 })),
    kind: fc.constantFrom("prime" as const, "backup" as const, "seal" as const),
    stuccoId: fc.constantFrom("16-30", "80-120", null, "unheard"),
    bucketId: fc.constant(null),
    roomId: room,
    prewet: fc.boolean(),
    acceptedDamp: maybe(fc.record({ coatId: anId, leftShare: orNull(aNumber) })),
  }),
  "coat-redipped": fc.record({ coatId: anId }),
  "coat-skipped": fc.record({ step: fc.integer({ min: -1, max: 12 }), reason: someText }),
  "dryness-seen": fc.oneof(
    fc.record({
      method: fc.constant("touch" as const),
      verdict: fc.constantFrom("dry" as const, "damp" as const, "wet" as const),
      coatId: anId,
    }),
    fc.record({ method: fc.constant("weight" as const), massG: aNumber, coatId: anId }),
    fc.record({ method: fc.constant("surface" as const), surfaceC: aNumber, coatId: anId }),
  ),
  "wall-measured": fc.record({ wallMm: aNumber }),
  "crack-found": fc.record({
    kind: fc.constant("open" as const),
    stage: fc.constant("burnout" as const),
    where: someText,
  }),
  "crack-patched": fc.record({ crackId: anId, how: someText }),
  "review-signed": fc.record({
    name: someText,
    verdict: fc.constantFrom("hold" as const, "clear" as const),
    passed: fc.constant([]),
    safety: orNull(aNumber),
  }),
  "burnout-started": fc.record({}),
  "burnout-read": fc.record({ kilnC: aNumber }),
  "burnout-ended": fc.record({ result: fc.constantFrom("clean" as const, "stopped" as const) }),
  "shell-fired": fc.record({ peakC: aNumber, holdMin: aNumber }),
  "shell-preheated": fc.record({ shellC: aNumber }),
  "metal-poured": fc.record({
    metalC: orNull(aNumber),
    shellC: orNull(aNumber),
    massKg: orNull(aNumber),
    outOfKilnMin: orNull(aNumber),
  }),
  "shell-knocked-out": fc.record({}),
  "piece-finished": fc.record({ note: someText }),
  "outcome-told": fc.record({
    result: fc.constantFrom("sound" as const, "lost" as const),
    defects: fc.constant([]),
  }),
  "piece-scrapped": fc.record({ reason: someText }),
  "piece-archived": fc.record({ archived: fc.boolean() }),
  "air-read": fc.record({
    airC: aNumber,
    rh: aNumber,
    air: fc.constantFrom("still" as const, "tunnel" as const),
  }),
  "room-set": fc.record({ name: someText, altitudeM: aNumber }),
  "entry-struck": fc.record({ struckId: anId, reason: someText, replacedBy: maybe(anId) }),
};

const anyLine: fc.Arbitrary<Omit<Entry, "id">> = fc.oneof(
  ...Object.entries(bodies).map(([type, body]) =>
    fc.tuple(fc.integer({ min: -4, max: 40 }), body as fc.Arbitrary<object>).map(([hours, told]) => {
      const at = monday + hours * hourMs;
      const line = {
        stream: testStream,
        type,
        at,
        recordedAt: at,
        zone: "UTC",
        device: "d",
        version: 1,
        body: told,
      };
      return line as unknown as Omit<Entry, "id">;
    }),
  ),
);

/** Most start a piece, so that the rest falls on something. */
export const anyEntries: fc.Arbitrary<readonly Entry[]> = fc
  .tuple(fc.array(anyLine, { maxLength: 11 }), plan, fc.boolean())
  .map(([lines, told, starts]) => {
    const own = lines.map((line, i) => ({ ...line, id: ids[i + 1] ?? `more${i}` }) as Entry);
    const start = {
      id: "id0",
      stream: testStream,
      type: "piece-started",
      at: monday,
      recordedAt: monday,
      zone: "UTC",
      device: "d",
      version: 1,
      body: { plan: told, roomId: "first" },
    } as Entry;
    return starts ? [start, ...own] : own;
  });
