import { expect, test } from "vitest";
import { isWorkingHour } from "../../tests/weeks.ts";
import { givenCoated, givenPiece, knownPlan, unhurried, type GivenPiece } from "../../tests/givenPiece.ts";
import { findingsFor } from "./all.ts";
import type { RuleId } from "./finding.ts";

/** A fault put into a log that is in order but for it; `atH` is the hour from which it can be known. */
type Planted = { readonly piece: GivenPiece; readonly atH: number };
type Fault = readonly [name: string, rule: RuleId, plant: () => Planted];

/** The first coats of the general recipe, none hurried, the room read before each. */
function coated(count: number): GivenPiece {
  const piece = givenPiece(knownPlan);
  for (const hour of unhurried.slice(0, count)) {
    piece.air(hour - 0.1);
    piece.coat(hour);
  }
  return piece;
}

/** A coated shell that went through the fire without fault. */
function fired(): GivenPiece {
  const piece = givenCoated();
  piece.log(121, "review-signed", { name: "R.", verdict: "clear", passed: [], safety: 4 });
  piece.log(144, "burnout-started", {});
  piece.log(147, "burnout-ended", { result: "clean" });
  piece.log(148, "shell-fired", { peakC: 850, holdMin: 60 });
  return piece;
}

const faults: readonly Fault[] = [
  [
    "a coat on a damp one",
    "recoated-before-dry",
    () => {
      const piece = coated(4);
      piece.coat(24.5);
      return { piece, atH: 24.5 };
    },
  ],
  [
    "a head far too high for the wall",
    "wall-too-thin",
    () => {
      const piece = givenCoated();
      piece.log(120.5, "piece-changed", { changes: { headM: 1, part: { kind: "round", diameterMm: 350 } } });
      return { piece, atH: 120.5 };
    },
  ],
  [
    "a core that nothing holds",
    "core-lift",
    () => {
      const piece = givenCoated();
      piece.log(120.5, "piece-changed", { changes: { core: { litre: 2, pins: 2, pinMm: 2 } } });
      return { piece, atH: 120.5 };
    },
  ],
  [
    "an open crack",
    "open-crack",
    () => {
      const piece = coated(5);
      piece.log(49.5, "crack-found", { kind: "open", stage: "coating", where: "left hind leg" });
      return { piece, atH: 49.5 };
    },
  ],
  [
    "no seal coat",
    "no-seal-coat",
    () => {
      const piece = coated(8);
      piece.log(96.5, "coat-skipped", { step: 8, reason: "forgot to keep slurry" });
      return { piece, atH: 96.5 };
    },
  ],
  [
    "coarse stucco on the first prime",
    "stucco-out-of-order",
    () => {
      const piece = givenPiece(knownPlan);
      piece.air(0.4);
      piece.coat(0.5, { stuccoId: "16-30" });
      return { piece, atH: 0.5 };
    },
  ],
  [
    "a slurry far too thick",
    "dipped-from-unfit-bucket",
    () => {
      const piece = coated(3);
      const aims = { name: "Backup", use: "backup", slurry: "fused silica", cupId: "zahn-4" } as const;
      piece.bucket(24, "bucket-set", { ...aims, lowS: 12, highS: 16 });
      piece.bucket(24.1, "bucket-read", { cupId: "zahn-4", cupS: 30, slurryC: 22 });
      piece.coat(24.5, { bucketId: "first-backup" });
      return { piece, atH: 24.5 };
    },
  ],
  [
    "air too damp for the final drying",
    "air-too-damp",
    () => {
      const piece = coated(9);
      for (const hour of [84.2, 88, 92, 95.5]) piece.air(hour, { rh: 0.86 });
      return { piece, atH: 84.5 };
    },
  ],
  [
    "a prime left bare",
    "prime-left-bare",
    () => {
      const piece = givenPiece(knownPlan);
      piece.air(0.4);
      piece.coat(0.5);
      return { piece, atH: 24.51 };
    },
  ],
  [
    "a shell fired far too cool",
    "fired-too-little",
    () => {
      const piece = givenCoated();
      piece.log(121, "review-signed", { name: "R.", verdict: "clear", passed: [], safety: 4 });
      piece.log(144, "burnout-started", {});
      piece.log(147, "burnout-ended", { result: "clean" });
      piece.log(147.5, "shell-fired", { peakC: 620, holdMin: 60 });
      return { piece, atH: 147.5 };
    },
  ],
  [
    "a coat that froze while wet",
    "frost",
    () => {
      const piece = coated(4);
      for (const hour of [24.6, 25, 26, 27]) piece.air(hour, { airC: -1, rh: 0.7 });
      return { piece, atH: 24.6 };
    },
  ],
  [
    "carbon left in the shell",
    "burnout-residue",
    () => {
      const piece = givenCoated();
      piece.log(121, "review-signed", { name: "R.", verdict: "clear", passed: [], safety: 4 });
      piece.log(144, "burnout-started", {});
      piece.log(147, "burnout-ended", { result: "residue" });
      return { piece, atH: 147 };
    },
  ],
  [
    "a shell poured cold",
    "poured-cold-shell",
    () => {
      const piece = fired();
      piece.log(169.2, "shell-preheated", { shellC: 600 });
      piece.log(169.5, "metal-poured", { metalC: 1150, shellC: 180, massKg: 4, outOfKilnMin: 3 });
      return { piece, atH: 169.5 };
    },
  ],
];

const speaks = (piece: GivenPiece, rule: RuleId, hour: number): boolean =>
  findingsFor(piece.standing(hour)).some((found) => found.rule === rule && found.level !== "note");

test.each(faults)("%s: %s says so at the first look, and not before", (_, rule, plant) => {
  const { piece, atH } = plant();
  const looks = Array.from({ length: 400 }, (_unused, hour) => hour).filter(isWorkingHour);
  const before = looks.findLast((hour) => hour < atH) ?? 0;
  const first = looks.find((hour) => hour >= atH) ?? atH;
  expect(speaks(piece, rule, before)).toBe(false);
  expect(speaks(piece, rule, first)).toBe(true);
});
