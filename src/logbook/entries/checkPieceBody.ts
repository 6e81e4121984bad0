import type { Check, Fault } from "./bodyFaults.ts";
import { fine, first, number, numbers, text, unreasoned } from "./bodyFaults.ts";
import type { EntryBodies } from "./entry.ts";
import type { PatternMeasured, PieceBodies, PiecePlan, WallPart } from "./pieceBodies.ts";
import { ranges } from "./ranges.ts";

type Told<T> = { readonly [K in keyof T]?: T[K] | null | undefined };

export const pieceChecks: { readonly [T in keyof PieceBodies]: Check<T> } = {
  "piece-started": ({ plan, roomId }) =>
    first(planFault(plan), text("name", plan.name), text("room", roomId)),
  "piece-changed": ({ changes }) =>
    first(
      changes.name === null ? { code: "missing", field: "name" } : text("name", changes.name ?? "kept"),
      planFault(changes),
    ),
  "piece-moved": ({ roomId }) => text("room", roomId),
  "pattern-measured": (pattern) => patternFault(pattern),
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
  "piece-weighed": ({ massG }) => number("massG", massG, ranges.massG),
  "dryness-seen": (seen) => drynessFault(seen),
  "hold-passed": fine,
  "wall-measured": ({ wallMm }) => number("wallMm", wallMm, ranges.wallMm),
  "crack-found": fine,
  "crack-patched": fine,
  "wire-wrapped": fine,
  "review-signed": ({ name, verdict, passed, safety }) => {
    const unsaid = unreasoned(passed.map(({ rule, reason }) => ({ name: rule, reason })));
    const bare: Fault = passed.length === 0 ? { code: "hold-without-reason", rules: [] } : null;
    return first(
      text("name", name),
      number("safety", safety, ranges.safety),
      verdict === "hold" ? (bare ?? unsaid) : null,
    );
  },
  "burnout-started": fine,
  "burnout-read": ({ kilnC }) => number("kilnC", kilnC, ranges.kilnC),
  "burnout-ended": fine,
  dewaxed: ({ minutes, waxBackG }) =>
    first(number("minutes", minutes, ranges.dewaxMin), number("waxBackG", waxBackG, ranges.massG)),
  "shell-rinsed": fine,
  "shell-inspected": fine,
  "shell-fired": ({ peakC, holdMin }) =>
    first(number("peakC", peakC, ranges.peakC), number("holdMin", holdMin, ranges.holdMin)),
  "shell-preheated": ({ shellC, heldMin }) =>
    first(number("shellC", shellC, ranges.shellC), number("heldMin", heldMin, ranges.holdMin)),
  "shell-out-of-kiln": ({ shellC }) => number("shellC", shellC, ranges.shellC),
  "pour-begun": ({ metalC }) => number("metalC", metalC, ranges.metalC),
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
};

function drynessFault(seen: EntryBodies["dryness-seen"]): Fault {
  switch (seen.method) {
    case "touch":
    case "colour":
      return null;
    case "weight":
      return first(number("massG", seen.massG, ranges.massG), number("scaleG", seen.scaleG, ranges.scaleG));
    case "surface":
      return first(
        number("surfaceC", seen.surfaceC, ranges.surfaceC),
        number("dryShellC", seen.dryShellC, ranges.surfaceC),
      );
    case "resistance":
      return first(number("ohm", seen.ohm, ranges.ohm), number("shellC", seen.shellC, ranges.surfaceC));
    case "bag":
      return first(
        number("rh", seen.rh, ranges.rh),
        number("roomRh", seen.roomRh, ranges.rh),
        number("minutes", seen.minutes, ranges.bagMin),
      );
  }
}

function patternFault(body: PatternMeasured): Fault {
  const upLength = Math.hypot(...body.up);
  return first(
    text("patternId", body.patternId),
    number("sumsVersion", body.sumsVersion, ranges.sumsVersion),
    number("triangles", body.triangles, ranges.triangles),
    number("mmPerUnit", body.mmPerUnit, ranges.mmPerUnit),
    number("volumeMm3", body.volumeMm3, ranges.volumeMm3),
    number("volumeLowMm3", body.volumeLowMm3, ranges.volumeMm3),
    number("volumeHighMm3", body.volumeHighMm3, ranges.volumeMm3),
    number("areaMm2", body.areaMm2, ranges.areaMm2),
    numbers("boxMm", body.boxMm, ranges.boxMm),
    // A direction: its length is 1 but for rounding.
    number("up", upLength, { low: 0.99, high: 1.01 }),
    number("headM", body.headM, { low: 0, high: ranges.headM.high }),
    number("tips", body.tips, ranges.spots),
    number("vents", body.vents, ranges.spots),
    number("drains", body.drains, ranges.spots),
    number("trappedMl", body.trappedMl, ranges.trappedMl),
    number("gatingMm3", body.gatingMm3, ranges.volumeMm3),
    number("thinnestMm", body.thinnestMm, ranges.thickMm),
    number("thickestMm", body.thickestMm, ranges.thickMm),
  );
}

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
