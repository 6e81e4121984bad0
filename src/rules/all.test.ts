import fc from "fast-check";
import { expect, test } from "vitest";
import type { GivenPiece } from "../../tests/givenPiece.ts";
import { givenCoated, givenPiece, knownPlan, told, unhurried } from "../../tests/givenPiece.ts";
import { findingsFor, reviewFindingsFor, reviewVerdict, worstLevel } from "./all.ts";
import type { Finding, Level } from "./finding.ts";

const rulesOf = (findings: readonly Finding[], level?: Level) =>
  findings.filter((one) => level === undefined || one.level === level).map(({ rule }) => rule);

test("a shell with every number known, unhurried and dry, is clear", () => {
  const findings = reviewFindingsFor(givenCoated().standing(119));
  expect(findings).toEqual([]);
  expect(reviewVerdict(findings)).toBe("clear");
  expect(worstLevel(findings)).toBeNull();
});

test("a silent log is never clear", () => {
  expect(reviewVerdict(reviewFindingsFor(givenPiece().standing(1)))).not.toBe("clear");
  const coatsOnly = givenPiece();
  coatsOnly.coats(unhurried);
  expect(reviewVerdict(reviewFindingsFor(coatsOnly.standing(200)))).toBe("hold");
  const noAir = givenPiece(knownPlan);
  noAir.coats(unhurried);
  expect(reviewVerdict(reviewFindingsFor(noAir.standing(200)))).toBe("hold");
});

test("notes alone leave a review clear, one watch doesn't, one hold rules", () => {
  const one = (level: Level): Finding => ({
    rule: "no-seal-coat",
    variant: "left-out",
    level,
    figures: {},
    texts: {},
    entries: [],
    source: "",
  });
  expect(reviewVerdict([one("note"), one("note")])).toBe("clear");
  expect(reviewVerdict([one("note"), one("watch")])).toBe("watch");
  expect(reviewVerdict([one("watch"), one("hold"), one("note")])).toBe("hold");
  expect(worstLevel([one("note"), one("watch")])).toBe("watch");
});

test("half a shell is no clear review, though nothing holds it on the rack", () => {
  const piece = givenPiece(knownPlan);
  for (const hour of unhurried.slice(0, 5)) {
    piece.air(hour - 0.1);
    piece.coat(hour);
  }
  piece.air(46);
  expect(rulesOf(findingsFor(piece.standing(47)), "hold")).toEqual([]);
  expect(rulesOf(reviewFindingsFor(piece.standing(47)), "hold")).toContain("recipe-not-followed");
});

function passed(): GivenPiece {
  const piece = givenCoated({ headM: 1, part: { kind: "round", diameterMm: 320 } });
  piece.log(119, "review-signed", {
    name: "R.",
    verdict: "hold",
    passed: [{ rule: "wall-too-thin", reason: "packed in rammed sand" }],
    safety: 1.6,
  });
  return piece;
}

test("a hold passed in writing is one to watch from then on, and carries the reason", () => {
  const [found] = findingsFor(passed().standing(119.5));
  expect(found).toMatchObject({ rule: "wall-too-thin", level: "watch" });
  expect(found?.texts["passedBecause"]).toBe("packed in rammed sand");
});

test("what was passed doesn't cover what came after", () => {
  const piece = passed();
  piece.log(119.6, "crack-found", { kind: "open", stage: "other", where: "foot" });
  expect(rulesOf(findingsFor(piece.standing(120)), "hold")).toEqual(["open-crack"]);
  const measured = passed();
  measured.log(119.6, "wall-measured", { wallMm: 3 });
  expect(rulesOf(findingsFor(measured.standing(120)), "hold")).toEqual(["wall-too-thin"]);
  const recoated = passed();
  recoated.coat(119.6, { kind: "seal", stuccoId: null });
  expect(rulesOf(findingsFor(recoated.standing(150)), "hold")).toContain("wall-too-thin");
});

test("once the metal is in, nothing is left to hold", () => {
  const piece = givenCoated({ headM: 1, part: { kind: "round", diameterMm: 350 } });
  piece.log(119, "crack-found", { kind: "open", stage: "other", where: "foot" });
  expect(worstLevel(findingsFor(piece.standing(120)))).toBe("hold");
  piece.log(120, "metal-poured", { metalC: 1150, shellC: 200, massKg: 4, outOfKilnMin: 12 });
  const findings = findingsFor(piece.standing(121));
  expect(rulesOf(findings, "hold")).toEqual([]);
  expect(rulesOf(findings, "watch")).toEqual(["poured-cold-shell", "poured-cold-shell"]);
  expect(findings).toHaveLength(2);
  piece.log(122, "shell-knocked-out", {});
  piece.log(123, "outcome-told", { result: "sound", defects: [] });
  expect(findingsFor(piece.standing(124))).toEqual([]);
});

/** Nine coats, the fifth put on the fourth while it was damp, dried since. */
function hurried(): GivenPiece {
  const piece = givenPiece(knownPlan);
  for (const hour of [1, 6, 12, 24, 24.4, 48, 60, 72, 84]) {
    piece.air(hour - 0.1);
    piece.coat(hour);
  }
  return piece;
}

test("a damp coat that has dried since is told at the review and nowhere else", () => {
  const piece = hurried();
  expect(rulesOf(findingsFor(piece.standing(24.5)), "hold")).toEqual(["recoated-before-dry"]);
  for (const hour of [47, 59, 119])
    expect(rulesOf(findingsFor(piece.standing(hour)))).not.toContain("recoated-before-dry");
  const told = reviewFindingsFor(piece.standing(119)).filter(({ rule }) => rule === "recoated-before-dry");
  expect(told).toMatchObject([{ level: "note", variant: "dried-since", past: true }]);
});

test("a note that stood there when the review was signed is not told again, one that came after is", () => {
  const piece = givenCoated();
  piece.log(118, "crack-found", { kind: "chip", stage: "coating", where: "cup rim", trimmedOff: true });
  expect(rulesOf(findingsFor(piece.standing(118.5)), "note")).toEqual(["open-crack"]);
  piece.log(119, "review-signed", { name: "R.", verdict: "clear", passed: [], safety: 4 });
  expect(findingsFor(piece.standing(119.5))).toEqual([]);
  expect(rulesOf(reviewFindingsFor(piece.standing(119.5)))).toEqual(["open-crack"]);
  piece.log(120, "crack-found", { kind: "chip", stage: "coating", where: "sprue", trimmedOff: true });
  expect(findingsFor(piece.standing(120.5)).map(({ texts }) => texts["where"])).toEqual(["sprue"]);
});

test("what is said of the coats ends with the fire, what bears on the metal does not", () => {
  const piece = givenCoated({ headM: 1, part: { kind: "round", diameterMm: 350 } });
  piece.log(84.5, "coat-redipped", { coatId: piece.standing(84.2).outer?.coat.id ?? "" });
  piece.coat(90, { kind: "backup", stuccoId: "80-120", step: null });
  expect(rulesOf(findingsFor(piece.standing(91)))).toContain("stucco-out-of-order");
  piece.log(92, "burnout-started", {});
  const inFire = rulesOf(findingsFor(piece.standing(92.5)));
  expect(inFire).not.toContain("stucco-out-of-order");
  expect(inFire).toContain("wall-too-thin");
});

test("several damp coats are passed with one reason, and hold anew with a further coat", () => {
  const piece = givenPiece(knownPlan);
  piece.air(0.5);
  piece.coats([1, 1.2, 1.4, 1.6]);
  const isHeld = (hour: number): boolean =>
    rulesOf(findingsFor(piece.standing(hour)), "hold").includes("recoated-before-dry");
  expect(isHeld(1.61)).toBe(true);
  const passed = [{ rule: "recoated-before-dry", reason: "test bar, to be broken" }];
  piece.log(1.62, "review-signed", { name: "R.", verdict: "hold", passed, safety: null });
  expect(isHeld(1.65)).toBe(false);
  piece.coat(1.7);
  expect(isHeld(1.75)).toBe(true);
});

const weight: Record<Level, number> = { hold: 0, watch: 1, note: 2 };

/** Any log a shop could write: whatever is refused is left out. */
const anyLog = fc.array(
  fc.record({
    afterH: fc.double({ min: 0.05, max: 30, noNaN: true }),
    what: fc.constantFrom(
      "coat",
      "odd-coat",
      "air",
      "feel",
      "crack",
      "patch",
      "wire",
      "burnout",
      "read",
      "end",
      "fire",
      "preheat",
      "pour",
      "review",
      "skip",
      "wall",
    ),
    x: fc.double({ min: 0, max: 1, noNaN: true }),
  }),
  { maxLength: 30 },
);

test(
  "whatever a log holds, findings come sorted, rest on entries of the log, and have no broken number",
  {
    timeout: 30_000,
  },
  () => {
    fc.assert(
      fc.property(anyLog, fc.boolean(), (steps, isKnown) => {
        const piece = givenPiece(isKnown ? knownPlan : {});
        let hour = 0.1;
        for (const { afterH, what, x } of steps) {
          hour += afterH;
          try {
            act(piece, { hour, what, x });
          } catch (error) {
            if (!(error instanceof Error) || !error.message.includes("refused")) throw error;
          }
        }
        const standing = piece.standing(hour + 0.1);
        const ids = new Set(piece.entries().map(({ id }) => id));
        for (const findings of [findingsFor(standing), reviewFindingsFor(standing)]) {
          const weights = findings.map(({ level }) => weight[level]);
          expect(weights).toEqual(weights.toSorted((a, b) => a - b));
          for (const { entries, figures, source } of findings) {
            expect(entries.every((id) => ids.has(id))).toBe(true);
            expect(
              Object.values(figures).some(({ value }) => value !== null && !Number.isFinite(value)),
            ).toBe(false);
            expect(source).not.toBe("");
          }
          if (standing.piece.pours.length > 0) expect(worstLevel(findings)).not.toBe("hold");
        }
        const isOpen = standing.piece.cracks.some(({ patched }) => patched === null);
        const isFilled = standing.piece.pours.length > 0;
        if (isOpen && !isFilled) expect(rulesOf(findingsFor(standing))).toContain("open-crack");
        if (!isKnown && !isFilled) expect(reviewVerdict(reviewFindingsFor(standing))).not.toBe("clear");
      }),
      { numRuns: 150 },
    );
  },
);

function act(piece: GivenPiece, { hour, what, x }: { hour: number; what: string; x: number }): void {
  const crackId = piece.standing(hour).piece.cracks.at(-1)?.id ?? "none";
  const actions: Readonly<Record<string, () => unknown>> = {
    coat: () => piece.coat(hour),
    "odd-coat": () => piece.coat(hour, { kind: "backup", stuccoId: x < 0.5 ? "10-20" : null, step: null }),
    air: () => piece.air(hour, { airC: 5 + 30 * x, rh: x, air: x < 0.5 ? "still" : "rack-fan" }),
    feel: () => piece.feel(hour, x < 0.5 ? "dry" : "damp"),
    crack: () => piece.log(hour, "crack-found", { kind: "open", stage: "other", where: "edge" }),
    patch: () => piece.log(hour, "crack-patched", { crackId, how: "slurry" }),
    wire: () => piece.log(hour, "wire-wrapped", { note: "" }),
    burnout: () => piece.log(hour, "burnout-started", {}),
    read: () => piece.log(hour, "burnout-read", { kilnC: 1000 * x }),
    end: () => piece.log(hour, "burnout-ended", { result: x < 0.5 ? "clean" : "stopped" }),
    fire: () => piece.log(hour, "shell-fired", { peakC: 500 + 500 * x, holdMin: 60 * x }),
    preheat: () => piece.log(hour, "shell-preheated", { shellC: 900 * x }),
    pour: () =>
      piece.log(hour, "metal-poured", { metalC: 1150, shellC: 800 * x, massKg: null, outOfKilnMin: 10 * x }),
    review: () =>
      piece.log(hour, "review-signed", { name: "R.", verdict: "watch", passed: [], safety: null }),
    skip: () => piece.log(hour, "coat-skipped", { step: Math.floor(9 * x), reason: "none left" }),
    wall: () => piece.log(hour, "wall-measured", { wallMm: 1 + 12 * x }),
  };
  actions[what]?.();
}

test("findings read the same twice", () => {
  const standing = passed().standing(130);
  expect(told(findingsFor(standing))).toEqual(told(findingsFor(standing)));
});
