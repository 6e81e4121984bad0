import type { Refusal } from "./command.ts";
import type { EntryBodies, EntryType, PiecePlan, WallPart } from "./entry.ts";
import type { NumberRange } from "./ranges.ts";
import { ranges, within } from "./ranges.ts";

type Fault = Refusal | null;
type Told<T> = { readonly [K in keyof T]?: T[K] | null | undefined };
type Check<T extends EntryType> = (body: EntryBodies[T]) => Fault;

/** What is wrong with a body by itself, whatever came before: a blank name, a number out of range. */
export function bodyFault<T extends EntryType>(type: T, body: EntryBodies[T]): Fault {
  const check: Check<T> = checks[type];
  return check(body);
}

const number = (field: string, value: number | null | undefined, { low, high }: NumberRange): Fault =>
  value === null || value === undefined || within({ low, high }, value)
    ? null
    : { code: "out-of-range", field, found: value, low, high };

const text = (field: string, value: string): Fault =>
  value.trim() === "" ? { code: "missing", field } : null;

const first = (...faults: readonly Fault[]): Fault => faults.find((fault) => fault !== null) ?? null;

const fine = (): Fault => null;

const checks: { readonly [T in EntryType]: Check<T> } = {
  "piece-started": ({ plan, roomId }) =>
    first(planFault(plan), text("name", plan.name), text("room", roomId)),
  "piece-changed": ({ changes }) =>
    first(
      changes.name === null ? { code: "missing", field: "name" } : text("name", changes.name ?? "kept"),
      planFault(changes),
    ),
  "piece-moved": ({ roomId }) => text("room", roomId),
  "coat-dipped": ({ number: count, step, drainS, acceptedDamp, roomId }) =>
    first(
      number("number", count, ranges.coatNumber),
      number("step", step, ranges.step),
      number("drainS", drainS, ranges.drainS),
      number("leftShare", acceptedDamp?.leftShare, ranges.leftShare),
      text("room", roomId),
    ),
  "coat-redipped": fine,
  "coat-skipped": ({ step }) => number("step", step, ranges.step),
  "dryness-seen": (seen) => {
    switch (seen.method) {
      case "touch":
        return null;
      case "weight":
        return number("massG", seen.massG, ranges.massG);
      case "surface":
        return number("surfaceC", seen.surfaceC, ranges.surfaceC);
    }
  },
  "wall-measured": ({ wallMm }) => number("wallMm", wallMm, ranges.wallMm),
  "crack-found": fine,
  "crack-patched": fine,
  "wire-wrapped": fine,
  "review-signed": ({ name, verdict, passed }) => {
    const unsaid = passed.filter(({ reason }) => reason.trim() === "").map(({ rule }) => rule);
    const held = verdict === "hold" && (passed.length === 0 || unsaid.length > 0);
    return first(text("name", name), held ? { code: "hold-without-reason", rules: unsaid } : null);
  },
  "burnout-started": fine,
  "burnout-read": ({ kilnC }) => number("kilnC", kilnC, ranges.kilnC),
  "burnout-ended": fine,
  "shell-fired": ({ peakC, holdMin }) =>
    first(number("peakC", peakC, ranges.peakC), number("holdMin", holdMin, ranges.holdMin)),
  "shell-preheated": ({ shellC }) => number("shellC", shellC, ranges.shellC),
  "metal-poured": ({ metalC, shellC, massKg, outOfKilnMin }) =>
    first(
      number("metalC", metalC, ranges.metalC),
      number("shellC", shellC, ranges.shellC),
      number("massKg", massKg, ranges.metalKg),
      number("outOfKilnMin", outOfKilnMin, ranges.outOfKilnMin),
    ),
  "shell-knocked-out": fine,
  "piece-finished": fine,
  "outcome-told": fine,
  "piece-scrapped": ({ reason }) => text("reason", reason),
  "piece-archived": fine,
  "note-written": ({ text: written, photos = [] }) => (photos.length > 0 ? null : text("text", written)),
  "room-set": ({ name, altitudeM }) =>
    first(text("name", name), number("altitudeM", altitudeM, ranges.altitudeM)),
  "air-read": ({ airC, rh }) => first(number("airC", airC, ranges.airC), number("rh", rh, ranges.rh)),
  "bucket-set": ({ name }) => text("name", name),
  "bucket-read": ({ cupS, slurryC, densityGCm3, pH }) =>
    first(
      number("cupS", cupS, ranges.cupS),
      number("slurryC", slurryC, ranges.slurryC),
      number("densityGCm3", densityGCm3, ranges.densityGCm3),
      number("pH", pH, ranges.pH),
    ),
  "recipe-set": ({ name, coats, morMPa, safetyFactor, floorMm }) =>
    first(
      text("name", name),
      number("coats", coats.length, ranges.recipeCoats),
      ...coats.map(({ targetDryness }) => number("targetDryness", targetDryness, ranges.targetDryness)),
      number("morMPa", morMPa, ranges.morMPa),
      number("safetyFactor", safetyFactor, ranges.safetyFactor),
      number("floorMm", floorMm, ranges.floorMm),
    ),
  "shop-figures-set": ({ dryingFactor, morMPa }) =>
    first(number("dryingFactor", dryingFactor, ranges.dryingFactor), number("morMPa", morMPa, ranges.morMPa)),
  "entry-struck": fine,
};

function planFault({ metalKg, metalLitre, headM, areaM2, part }: Told<PiecePlan>): Fault {
  return first(
    number("metalKg", metalKg, ranges.metalKg),
    number("metalLitre", metalLitre, ranges.metalLitre),
    number("headM", headM, ranges.headM),
    number("areaM2", areaM2, ranges.areaM2),
    part ? partFault(part) : null,
  );
}

function partFault(part: WallPart): Fault {
  if (part.kind === "round") return number("diameterMm", part.diameterMm, ranges.spanMm);
  return first(
    number("widthMm", part.widthMm, ranges.spanMm),
    number("lengthMm", part.lengthMm, ranges.spanMm),
  );
}
