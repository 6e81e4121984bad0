import { z } from "zod";
import { first, number, unreasoned, type Fault } from "./bodyFaults.ts";
import {
  coatKind,
  filled,
  flag,
  geometry,
  id,
  label,
  note,
  numberOf,
  photos,
  short,
  storedNumber,
  withRules,
  words,
  type Body,
} from "./bodyParts.ts";
import { drynessSeen } from "./drynessBody.ts";
import { ranges } from "./ranges.ts";

const spans = { widthMm: numberOf("widthMm"), lengthMm: numberOf("lengthMm") };
const part = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("flat"), ...spans }),
  /** A flat with one edge open. */
  z.strictObject({ kind: z.literal("rim"), ...spans }),
  z.strictObject({ kind: z.literal("round"), diameterMm: numberOf("diameterMm") }),
]);
export type WallPart = Body<typeof part>;

/** What takes load off a flat; a key that is absent is not there. */
const support = z.strictObject({
  ribEveryMm: numberOf("ribEveryMm").optional(),
  /** How far the middle stands out over the short span. */
  crownMm: numberOf("crownMm").optional(),
  /** `vibrated`: in a box with 75 mm and more around the shell. */
  sand: z.enum(["loose", "vibrated"]).optional(),
  /** A thin plate whose two faces are one shell. */
  edges: z.enum(["held"]).optional(),
});

/** A core inside a hollow casting. What is left out is not known, density and strength: the starting value. */
const core = z.strictObject({
  litre: numberOf("coreLitre"),
  densityKgM3: numberOf("coreKgM3").optional(),
  morMPa: numberOf("coreMPa").optional(),
  pins: numberOf("pins").optional(),
  pinMm: numberOf("pinMm").optional(),
  /** Across the opening where core and shell are one, and from there to its far end. */
  mouthMm: numberOf("mouthMm").optional(),
  depthMm: numberOf("coreDepthMm").optional(),
});

const metalKnown = z.enum(["measured", "weighed", "guessed"]);

const name = filled(short);
const planFields = {
  material: z.enum(["wax", "pla", "pvb", "resin", "foam", "other"]),
  alloyId: id,
  metalKg: numberOf("metalKg"),
  metalLitre: numberOf("metalLitre"),
  /** How well the metal is known: off a volume, off the pattern's weight, or as a guess. */
  metalKnown,
  headM: numberOf("headM"),
  part,
  support,
  core,
  areaM2: numberOf("areaM2"),
  recipeId: id,
  geometry,
  /** Further places that dry more slowly than the body of the piece; the slowest decides the final dry. */
  pockets: z.array(geometry).max(20),
  /** The mesh the piece was begun from, by the hash of its file. */
  patternId: id,
  note: words,
};
const plan = z.strictObject({ name, ...z.object(planFields).partial().shape });
/** What is known of a piece beyond its name. A key that is absent is not known; null in a change clears it. */
export type PiecePlan = Body<typeof plan>;

const cleared = <T extends z.ZodType>(field: T) => field.nullable().optional();
const changes = z.strictObject({
  // A name can't be cleared: null is read in old logs and refused as missing.
  name: name.nullable().exactOptional(),
  material: cleared(planFields.material),
  alloyId: cleared(planFields.alloyId),
  metalKg: cleared(planFields.metalKg),
  metalLitre: cleared(planFields.metalLitre),
  metalKnown: cleared(metalKnown),
  headM: cleared(planFields.headM),
  part: cleared(part),
  support: cleared(support),
  core: cleared(core),
  areaM2: cleared(planFields.areaM2),
  recipeId: cleared(planFields.recipeId),
  geometry: cleared(geometry),
  pockets: cleared(planFields.pockets),
  patternId: cleared(planFields.patternId),
  note: cleared(words),
});
export type PlanChanges = Body<typeof changes>;

const acceptedDamp = z.strictObject({
  coatId: id,
  /** Water still to go, as a share of what had to go, 0–1; null when it could not be worked out. */
  leftShare: numberOf("leftShare").nullable(),
});
/** What the maker saw and accepted with the same tap: a coat over one that was not dry. */
export type AcceptedDamp = Body<typeof acceptedDamp>;

const saidOfBeneath = z.strictObject({
  coatId: id,
  /** When it was said, epoch ms. */
  saidAt: numberOf("saidAt"),
  /** May it be covered: yes, perhaps, too early, not known. */
  cover: z.enum(["dry", "check", "drying", "unknown"]),
  /** How dry by air and checks, whatever hours it is to hang at the least. */
  dryness: z.enum(["dry", "maybe", "wet", "unknown"]),
  /** Water still to go, as a share of what had to go, 0–1: likely, and eight in ten lie between the other two. */
  leftShare: numberOf("leftShare").nullable(),
  leftLow: numberOf("leftLow").nullable(),
  leftHigh: numberOf("leftHigh").nullable(),
  /** Hours it was likely to take from its dip; null where no time could be given. */
  neededH: numberOf("neededH").nullable(),
  sumsVersion: numberOf("sumsVersion"),
  /** What was known of its time: how many readings and checks, each with a mark that changes with them. */
  knew: z.strictObject({ air: id, checks: id }),
});
/** What was said of the coat beneath before the tap that covered it, and what it rested on. */
export type SaidOfBeneath = Body<typeof saidOfBeneath>;

/** On the piece before its log began; `dated`: when it went on was entered, `undated`: its entry's time only keeps the order. */
const beforeLog = z.enum(["dated", "undated"]);

const crackKind = z.enum(["hairline", "open", "chip", "lift"]);
export type CrackKind = Body<typeof crackKind>;
const crackStage = z.enum(["coating", "burnout", "firing", "other"]);
export type CrackStage = Body<typeof crackStage>;

const holdPoint = z.enum(["prime-coverage", "after-second-coat", "mid-shell", "before-seal", "cup-rim"]);
/** Where in the life of a shell the procedure stops until someone has looked. */
export type HoldPoint = Body<typeof holdPoint>;

const direction = storedNumber("up");
const boxMm = numberOf("boxMm");
const patternMeasured = withRules(
  z.strictObject({
    patternId: filled(id),
    fileName: z.string().max(300),
    sumsVersion: numberOf("sumsVersion"),
    triangles: numberOf("triangles"),
    watertight: z.boolean(),
    /** Millimetres for one unit of the file, the shrink or fit scale included. */
    mmPerUnit: numberOf("mmPerUnit"),
    /** Null on an open mesh: the range stands instead. */
    volumeMm3: numberOf("volumeMm3").nullable(),
    volumeLowMm3: numberOf("volumeLowMm3").optional(),
    volumeHighMm3: numberOf("volumeHighMm3").optional(),
    areaMm2: numberOf("areaMm2"),
    boxMm: z.tuple([boxMm, boxMm, boxMm]),
    /** Which way is up when metal goes in, a unit vector in the file's axes. */
    up: z.tuple([direction, direction, direction]),
    headM: numberOf("meshHeadM").nullable(),
    tips: numberOf("tips"),
    vents: numberOf("vents"),
    drains: numberOf("drains"),
    trappedMl: numberOf("trappedMl").nullable(),
    gatingMm3: numberOf("gatingMm3").nullable(),
    /** What the tree adds to the skin that is coated. */
    gatingAreaMm2: numberOf("gatingAreaMm2").optional(),
    treeModulusMm: numberOf("treeModulusMm").optional(),
    /** Voids that no slurry reaches: cast solid, or opened for a core. While it is not said there is no one volume. */
    hollows: z.enum(["metal", "core", "unanswered"]).optional(),
    /** What the pattern itself is of, where its hollows make that another volume than the metal's. */
    patternMm3: numberOf("patternMm3").optional(),
    thinnestMm: numberOf("thinnestMm").nullable(),
    thickestMm: numberOf("thickestMm").nullable(),
    photos,
  }),
  { also: ({ up }) => number("up", Math.hypot(...up), ranges.up) },
);
/** What was measured on the mesh, with the version of the sums that measured it. */
export type PatternMeasured = Body<typeof patternMeasured>;

const reviewSigned = withRules(
  z.strictObject({
    name: filled(label),
    verdict: z.enum(["hold", "watch", "clear"]),
    /** Rules at hold that were passed, each with the written reason. */
    passed: z.array(z.strictObject({ rule: id, reason: words })).max(100),
    safety: numberOf("safety").nullable(),
  }),
  {
    also: ({ verdict, passed }) => {
      if (verdict !== "hold") return null;
      const bare: Fault = passed.length === 0 ? { code: "hold-without-reason", rules: [] } : null;
      return first(bare, unreasoned(passed.map(({ rule, reason }) => ({ name: rule, reason }))));
    },
  },
);

/** From the pattern to the last coat, and how it ended. What fire and metal do to it is in `shellFireBodies`. */
export const pieceBodies = {
  "piece-started": z.strictObject({ plan, roomId: filled(id, "room") }),
  "piece-changed": z.strictObject({ changes }),
  "piece-moved": z.strictObject({ roomId: filled(id, "room") }),
  "pattern-measured": patternMeasured,
  "coat-dipped": z.strictObject({
    /** 1 for the first coat on the piece, counting every coat that stands. */
    number: numberOf("coatNumber"),
    /** Place in the recipe, 0-based; null for a coat beyond or beside the recipe. */
    step: numberOf("step").nullable(),
    kind: coatKind,
    stuccoId: id.nullable(),
    bucketId: id.nullable(),
    roomId: filled(id, "room"),
    prewet: z.boolean(),
    drainS: numberOf("drainS").optional(),
    dipId: id.optional(),
    acceptedDamp: acceptedDamp.optional(),
    said: saidOfBeneath.optional(),
    beforeLog: beforeLog.optional(),
    note,
    photos,
  }),
  /** A second dip of the coat that is outermost: more water, no new layer. */
  "coat-redipped": z.strictObject({ coatId: id, note }),
  "coat-skipped": z.strictObject({ step: numberOf("step"), reason: words }),
  /** Put on the balance before a dip: the bare pattern, or the shell as it hangs dry. */
  "piece-weighed": z.strictObject({ massG: numberOf("massG"), note }),
  "dryness-seen": drynessSeen,
  "hold-passed": z.strictObject({ point: holdPoint, name: label.optional() }),
  "wall-measured": z.strictObject({ wallMm: numberOf("wallMm"), where: words.optional() }),
  "crack-found": z.strictObject({
    kind: crackKind,
    stage: crackStage,
    where: words,
    photos,
    /** The run it was found in. */
    runId: id.optional(),
    /** True when it lies in what is trimmed away before metal goes in, such as the rim of the cup. */
    trimmedOff: flag,
  }),
  "crack-patched": z.strictObject({ crackId: id, how: words }),
  /** The patch itself was found dry; what is felt of a coat says nothing of it. */
  "patch-dried": z.strictObject({ crackId: id, note }),
  "wire-wrapped": z.strictObject({ note: words }),
  "review-signed": reviewSigned,
  "piece-finished": z.strictObject({ note: words }),
  "outcome-told": z.strictObject({
    result: z.enum(["sound", "flawed", "lost"]),
    defects: z.array(label).max(100),
    note,
    photos,
  }),
  "piece-scrapped": z.strictObject({ reason: filled(words) }),
  "piece-archived": z.strictObject({ archived: z.boolean() }),
  "note-written": withRules(z.strictObject({ text: words, photos }), {
    also: ({ text, photos: shown = [] }) =>
      shown.length === 0 && text.trim() === "" ? { code: "missing", field: "text" } : null,
  }),
};
