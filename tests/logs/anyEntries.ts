import { millisecondsInHour as hourMs } from "date-fns/constants";
import fc from "fast-check";
import { anyFireBodies } from "./anyFireBodies.ts";
import { anyShopBodies } from "./anyShopBodies.ts";
import { aNumber, anId, ids, maybe, orNull, someText } from "./anyValues.ts";
import type { Entry, EntryBodies } from "../../src/logbook/entries/entry.ts";
import type { PieceBodies } from "../../src/logbook/entries/pieceBodies.ts";
import { monday, testStream } from "./testLog.ts";

/** For tests only: logs with well-shaped bodies in any order, most of them making little sense. */
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

const pieceBodies: { readonly [T in keyof PieceBodies]: fc.Arbitrary<PieceBodies[T]> } = {
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
  "pattern-measured": fc.record({
    patternId: anId,
    fileName: someText,
    sumsVersion: aNumber,
    triangles: aNumber,
    watertight: fc.boolean(),
    mmPerUnit: aNumber,
    volumeMm3: orNull(aNumber),
    areaMm2: aNumber,
    boxMm: fc.tuple(aNumber, aNumber, aNumber),
    up: fc.tuple(aNumber, aNumber, aNumber),
    headM: orNull(aNumber),
    tips: aNumber,
    vents: aNumber,
    drains: aNumber,
    trappedMl: orNull(aNumber),
    gatingMm3: orNull(aNumber),
    thinnestMm: orNull(aNumber),
    thickestMm: orNull(aNumber),
  }),
  "piece-weighed": fc.record({ massG: aNumber }),
  "hold-passed": fc.record({ point: fc.constantFrom("cup-rim" as const, "mid-shell" as const) }),
  "coat-skipped": fc.record({ step: fc.integer({ min: -1, max: 12 }), reason: someText }),
  "dryness-seen": fc.oneof(
    fc.record({
      method: fc.constant("touch" as const),
      verdict: fc.constantFrom("dry" as const, "damp" as const, "wet" as const),
      coatId: anId,
    }),
    fc.record({
      method: fc.constant("colour" as const),
      verdict: fc.constantFrom("dry" as const, "wet" as const),
      coatId: anId,
    }),
    fc.record({
      method: fc.constant("weight" as const),
      massG: aNumber,
      coatId: anId,
      moment: maybe(fc.constantFrom("drained" as const, "stuccoed" as const, "drying" as const)),
      scaleG: maybe(fc.constantFrom(0.1, 1, 5)),
    }),
    fc.record({ method: fc.constant("resistance" as const), ohm: aNumber, coatId: anId }),
    fc.record({
      method: fc.constant("bag" as const),
      rh: aNumber,
      roomRh: aNumber,
      minutes: aNumber,
      coatId: anId,
    }),
    fc.record({
      method: fc.constant("surface" as const),
      surfaceC: aNumber,
      coatId: anId,
      place: maybe(fc.constantFrom("open" as const, "recess" as const, "blind" as const)),
    }),
  ),
  "wall-measured": fc.record({ wallMm: aNumber }),
  "crack-found": fc.record({
    kind: fc.constant("open" as const),
    stage: fc.constant("burnout" as const),
    where: someText,
    runId: maybe(anId),
    trimmedOff: maybe(fc.boolean()),
  }),
  "crack-patched": fc.record({ crackId: anId, how: someText }),
  "review-signed": fc.record({
    name: someText,
    verdict: fc.constantFrom("hold" as const, "clear" as const),
    passed: fc.constant([]),
    safety: orNull(aNumber),
  }),
  "burnout-started": fc.record({ runId: maybe(anId) }),
  "burnout-read": fc.record({ kilnC: aNumber }),
  "burnout-ended": fc.record({ result: fc.constantFrom("clean" as const, "stopped" as const) }),
  dewaxed: fc.record({
    way: fc.constantFrom("flash" as const, "steam" as const, "hot-water" as const, "staged" as const),
    minutes: orNull(aNumber),
    waxBackG: maybe(aNumber),
    rinsed: maybe(fc.boolean()),
    runId: maybe(anId),
  }),
  "shell-rinsed": fc.record({ note: maybe(someText) }),
  "shell-inspected": fc.record({ inside: fc.constantFrom("clean" as const, "residue" as const) }),
  "shell-fired": fc.record({
    peakC: aNumber,
    holdMin: aNumber,
    inside: maybe(fc.constantFrom("clean" as const, "residue" as const)),
    runId: maybe(anId),
  }),
  "shell-preheated": fc.record({ shellC: aNumber, heldMin: maybe(aNumber), runId: maybe(anId) }),
  "wire-wrapped": fc.record({ note: someText }),
  "shell-out-of-kiln": fc.record({ shellC: orNull(aNumber), pourId: maybe(anId) }),
  "pour-begun": fc.record({ metalC: orNull(aNumber) }),
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
  "note-written": fc.record({ text: someText }),
};

const struck: { readonly "entry-struck": fc.Arbitrary<EntryBodies["entry-struck"]> } = {
  "entry-struck": fc.record({ struckId: anId, reason: someText, replacedBy: maybe(anId) }),
};

const linesOf = (bodies: Readonly<Record<string, fc.Arbitrary<object>>>): fc.Arbitrary<Omit<Entry, "id">> =>
  fc.oneof(
    ...Object.entries(bodies).map(([type, body]) =>
      fc
        .tuple(fc.integer({ min: -4, max: 40 }), body)
        .map(([hours, told]) => envelope(type, monday + hours * hourMs, told)),
    ),
  );

function envelope(type: string, at: number, body: object): Omit<Entry, "id"> {
  const line = { stream: testStream, type, at, recordedAt: at, zone: "UTC", device: "d", version: 1, body };
  return line as unknown as Omit<Entry, "id">;
}

const anyLine = fc.oneof(
  { weight: 4, arbitrary: linesOf(pieceBodies) },
  { weight: 2, arbitrary: linesOf(anyShopBodies) },
  { weight: 2, arbitrary: linesOf(anyFireBodies) },
  { weight: 1, arbitrary: linesOf(struck) },
);

/** What a piece, a run, a melt and a pour begin with, so that the rest falls on something. */
const starts = fc
  .tuple(
    plan.map((told) => envelope("piece-started", monday, { plan: told, roomId: "first" })),
    anyFireBodies["run-planned"].map((told) => envelope("run-planned", monday, told)),
    anyFireBodies["melt-planned"].map((told) => envelope("melt-planned", monday, told)),
    anyFireBodies["pour-planned"].map((told) => envelope("pour-planned", monday, told)),
  )
  .map((lines) => lines.map((line, i) => ({ ...line, id: i === 0 ? "id0" : `plan${i}` }) as Entry));

/** Most start something. */
export const anyEntries: fc.Arbitrary<readonly Entry[]> = fc
  .tuple(fc.array(anyLine, { maxLength: 14 }), starts, fc.boolean())
  .map(([lines, begun, isBegun]) => {
    const own = lines.map((line, i) => ({ ...line, id: ids[i + 1] ?? `more${i}` }) as Entry);
    return isBegun ? [...begun, ...own] : own;
  });
