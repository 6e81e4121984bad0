import { z } from "zod";
import { unreasoned } from "./bodyFaults.ts";
import {
  energy,
  filled,
  flag,
  id,
  ids,
  label,
  listOf,
  note,
  numberOf,
  short,
  stuccoFamily,
  withRules,
  words,
  type Bodies,
  type Body,
} from "./bodyParts.ts";
import { block, packed, packedSeconds } from "./packedParts.ts";

const purpose = z.enum(["burnout", "firing", "preheat"]);
export type RunPurpose = Body<typeof purpose>;

const reason = words.optional();
const segment = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("ramp"), toC: numberOf("toC"), rateKPerH: numberOf("rateKPerH"), reason }),
  z.strictObject({ kind: z.literal("hold"), atC: numberOf("atC"), minutes: numberOf("segmentMin"), reason }),
  z.strictObject({
    kind: z.literal("instruction"),
    code: filled(id),
    minutes: numberOf("segmentMin").optional(),
    text: words.optional(),
  }),
]);
/** One step of a kiln's plan. `reason` names the limit that set its slope or its length. */
export type RunSegment = Body<typeof segment>;
const segments = listOf("segments", segment);

const basis = z.strictObject({
  route: z.enum(["flash", "staged"]),
  /** What is still inside the shells; null for nothing. */
  pattern: z
    .strictObject({
      material: z.enum(["wax", "pla", "pvb", "resin", "foam", "pu-foam", "other"]),
      massKg: numberOf("patternKg"),
    })
    .nullable(),
  /**
   * Where wax goes that melts in the kiln: through a hole in the floor, onto a tray that is taken out, or nowhere (all
   * of it burns inside). Left out in plans made before this was asked, and for patterns that are not wax.
   */
  waxLeaves: z.enum(["floor", "tray", "no"]).optional(),
  /** The wax is out already and only its film is inside. */
  isFilm: z.boolean().optional(),
  /** The thickest wall of all. */
  wallMm: numberOf("thickestWallMm"),
  family: stuccoFamily,
  shellKg: numberOf("shellKg"),
  damp: z.enum(["dry", "damp", "patched-wet"]),
  firedBefore: z.boolean(),
  seenAbove1100: z.boolean(),
  /** Green strength over a plain, well dried shell's, of the weakest. Left out in plans made before it was asked. */
  greenShare: numberOf("greenShare").optional(),
  blindMm: numberOf("blindMm"),
  kiln: z.strictObject({
    powerKW: numberOf("powerKW"),
    maxC: numberOf("maxC"),
    volumeL: numberOf("volumeL"),
    maxRateKPerH: numberOf("rateKPerH").optional(),
  }),
  after: z.enum(["inspect", "pour"]),
  preheatC: numberOf("preheatC").nullable(),
  fireC: numberOf("fireC").nullable(),
});
/**
 * What a run was planned for: all that its limits rest on, of the pieces together. It is written with the plan, so that
 * a run keeps its limits whatever is logged later.
 */
export type RunBasis = Body<typeof basis>;

export const runBodies = {
  "run-planned": z.strictObject({
    kilnId: id.nullable(),
    purpose,
    pieceIds: ids,
    startC: numberOf("startC"),
    segments,
    /** Left out where the plan does not say what it is for: then only its time can be judged. */
    basis: basis.optional(),
    note,
  }),
  "run-changed": z.strictObject({ segments, note }),
  "run-started": z.strictObject({ kilnC: numberOf("kilnC").nullable() }),
  "run-read": z.strictObject({ kilnC: numberOf("kilnC") }),
  /** The readings of a logger packed: whole seconds after the entry's own time, and the value of each. */
  "run-logged": block(
    z.strictObject({ source: filled(short), afterS: packedSeconds, kilnC: packed("kilnC") }),
    ["kilnC"],
  ),
  /** An instruction of the plan that was carried out, by its place in the segments. */
  "run-step-done": z.strictObject({ segment: numberOf("segment"), note }),
  /** Stopped before it was started: the plan was put away. */
  "run-ended": z.strictObject({ result: z.enum(["done", "stopped"]), ...energy, note }),
};

const chargeItem = z.strictObject({
  name: filled(short),
  massKg: numberOf("chargeKg"),
  /** Null for scrap of unknown make. */
  alloyId: id.nullable(),
});
export type ChargeItem = Body<typeof chargeItem>;

const elementShare = z.strictObject({
  element: filled(id),
  low: numberOf("mayHold"),
  high: numberOf("mayHold"),
});
/** An element and the least and most of it, fractions. */
export type ElementShare = Body<typeof elementShare>;

/** A plan that was put away gave no metal. */
const nothing = { low: 0, high: 0 };

export const meltBodies = {
  "melt-planned": z.strictObject({
    furnaceId: id.nullable(),
    alloyId: filled(id),
    pieceIds: ids,
    items: z.array(chargeItem).max(200),
    pourC: numberOf("pourC"),
    /** What the charge may hold, as calculated from what was weighed in; fractions. Absent in older logs. */
    mayHold: z.array(elementShare).max(50).optional(),
    /** What it is charged with, and the share that was taken to burn off. Left out in older logs. */
    chargeKind: z.enum(["clean-ingot", "mixed-returns", "turnings"]).optional(),
    lossShare: numberOf("meltLoss").optional(),
    note,
  }),
  "melt-started": z.strictObject({
    /** The lining was still hot from the melt before. */
    hotFurnace: z.boolean(),
    /** The charge on the scale; left out where it was not weighed. */
    weighedKg: numberOf("weighedKg").optional(),
  }),
  "melt-read": z.strictObject({ metalC: numberOf("metalC") }),
  "melt-ended": withRules(
    z.strictObject({
      pouredKg: numberOf("pouredKg"),
      piggedKg: numberOf("piggedKg"),
      /** The plan was put away before the fire was lit: nothing was poured, nothing pigged. */
      dropped: flag,
      ...energy,
      note,
    }),
    { limits: ({ dropped }) => (dropped === true ? { pouredKg: nothing, piggedKg: nothing } : {}) },
  ),
};

const track = z.enum(["shell", "sand", "tools", "metal", "people"]);
export type PourTrack = Body<typeof track>;

const pourStep = z.strictObject({
  id: filled(id, "step"),
  track,
  minutes: numberOf("stepMin"),
  /** How long its result keeps; null when it keeps as long as one likes. */
  keepsMin: numberOf("keepsMin").nullable(),
});
export type PourStep = Body<typeof pourStep>;

const pourTold = z.strictObject({
  /** Most of the walls. */
  family: stuccoFamily,
  people: numberOf("people"),
  /** From the kiln's door to metal. */
  carryMin: numberOf("carryMin"),
  /** Melted metal at hand where no melt is named; null where it is not known. */
  metalKg: numberOf("meltedKg").nullable(),
  /** Thinnest section of each shell, in the order of the plan's pieces; null where it is not known. */
  thinnestMm: z.array(numberOf("thinnestMm").nullable()).max(200),
});
/** What a person entered for a pour that no other log has: a plan keeps it, so that every device sums alike. */
export type PourTold = Body<typeof pourTold>;

const goBound = z.strictObject({
  pourAt: numberOf("pourAt"),
  pieceIds: ids,
  shellC: numberOf("shellC"),
  metalC: numberOf("metalC"),
  alloyId: id.nullable(),
  meltId: id.nullable(),
  /** Stop warnings of the pieces that were there and were passed with a reason. */
  holds: z.array(z.strictObject({ pieceId: id, rule: id, variant: id, entries: ids })).max(1000),
  /** Lines that were not OK and were passed with a reason, each with the codes of what stood against it. */
  open: z.array(z.strictObject({ item: id, why: ids })).max(200),
  /** Ticks by hand it rested on, by their entries. */
  ticks: ids,
});
/** What a go was given on. A go holds only while all of it stands; see `rules/pourGo.ts`. */
export type GoBound = Body<typeof goBound>;

export const pourBodies = {
  "pour-planned": z.strictObject({
    pourAt: numberOf("pourAt"),
    /** In the order they are to be poured. */
    pieceIds: ids,
    runId: id.optional(),
    meltId: id.optional(),
    bed: z.enum(["air", "cold-sand", "hot-sand"]),
    sandC: numberOf("sandC").optional(),
    shellC: numberOf("shellC"),
    metalC: numberOf("metalC"),
    steps: z.array(pourStep).max(200),
    /** Left out where nothing was entered: then the starting values hold. */
    told: pourTold.optional(),
    note,
  }),
  "pour-step-marked": z.strictObject({ step: filled(id), state: z.enum(["started", "done"]) }),
  "pour-item-checked": z.strictObject({ item: filled(id), ok: z.boolean(), note }),
  "pour-decided": withRules(
    z.strictObject({
      go: z.boolean(),
      name: filled(label),
      passed: z.array(z.strictObject({ item: id, reason: words })).max(200),
      /** Left out for a no-go, and where an older program wrote it. */
      bound: goBound.optional(),
    }),
    {
      also: ({ go, passed }) =>
        go ? unreasoned(passed.map(({ item, reason }) => ({ name: item, reason }))) : null,
    },
  ),
  /** Dropped: the plan was put away before any shell was poured. */
  "pour-ended": z.strictObject({ dropped: flag, note }),
};
export type PourBodies = Bodies<typeof pourBodies>;
