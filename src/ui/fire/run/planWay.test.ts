import { describe, expect, test } from "vitest";
import type { FireFacts } from "../../../logbook/fire/fireFacts.ts";
import { firingForOf } from "../../../logbook/fire/runBasis.ts";
import { planFiring } from "../../../physics/heat/firingSchedule.ts";
import { makeFormat } from "../../base/format/units.ts";
import { instructionWords } from "./instructionWords.ts";
import { askedOf, startingDraft, type PlanDraft } from "../../../logbook/fire/planDraft.ts";
import { noteText, scheduleFindingText } from "./scheduleWords.ts";

const hook: FireFacts = {
  pieceId: "hook",
  name: "Coat hook",
  hasPattern: true,
  isFilm: false,
  material: "wax",
  pattern: { massKg: 0.5, source: "weighed" },
  wallMm: 8,
  wallBasis: "table",
  shell: { massKg: 3, source: "starting" },
  damp: { state: "dry", source: "drying" },
  firedBefore: false,
  seenAbove1100: false,
  greenShare: 1,
};
const kiln = { powerKW: 3.6, maxC: 1200, volumeL: 60 };
const basisOf = (draft: Partial<PlanDraft>, facts: Partial<FireFacts> = {}) => {
  const asked = askedOf(
    { ...startingDraft("burnout", ["hook"]), ...draft },
    { facts: [{ ...hook, ...facts }], kiln, preheatC: 600 },
  );
  if (!asked.ok) throw new Error(`gaps: ${asked.gaps.join()}`);
  return asked.basis;
};
const codesOf = (draft: Partial<PlanDraft>, facts: Partial<FireFacts> = {}): readonly string[] => {
  const asked = firingForOf("burnout", { basis: basisOf(draft, facts), startC: 20 });
  const made = asked && planFiring(asked);
  if (made?.kind !== "plan") throw new Error("no plan");
  return made.segments.flatMap((part) => (part.kind === "instruction" ? [part.code] : []));
};

describe("how a kiln takes a pattern out", () => {
  test("wax by flash fire through the floor, everything else from cold, unless a person chooses", () => {
    expect(basisOf({})).toMatchObject({ route: "flash", waxLeaves: "floor" });
    expect(basisOf({ route: "staged" })).toMatchObject({ route: "staged", waxLeaves: "tray" });
    for (const material of ["pla", "pvb", "resin", "foam"] as const) {
      expect(basisOf({}, { material }).route).toBe("staged");
      expect(basisOf({}, { material })).not.toHaveProperty("waxLeaves");
      expect(basisOf({ route: "flash" }, { material }).route).toBe("flash");
    }
  });

  test("wax that does not leave is written down as burning inside", () => {
    expect(basisOf({ waxLeaves: false })).toMatchObject({ waxLeaves: "no" });
    expect(basisOf({ waxLeaves: false, route: "staged" })).toMatchObject({ waxLeaves: "no" });
  });

  test("a film of wax is burnt off from cold, with no tray and nothing to run out, damp or dry", () => {
    const film = { isFilm: true, pattern: { massKg: 0.05, source: "film" } } as const;
    expect(basisOf({}, film)).toMatchObject({ route: "staged", isFilm: true });
    expect(basisOf({}, film)).not.toHaveProperty("waxLeaves");
    for (const state of ["dry", "patched-wet"] as const) {
      const codes = codesOf({}, { ...film, damp: { state, source: "rinsed" } });
      expect(codes).not.toContain("tray-in");
      expect(codes).not.toContain("drain-watched");
      expect(codes).toContain("vents-open");
    }
  });

  test("a tray only where wax is staged, a pan outside only where wax is flashed", () => {
    expect(codesOf({})).toContain("pan-outside");
    expect(codesOf({})).not.toContain("tray-in");
    expect(codesOf({ route: "staged" })).toEqual(expect.arrayContaining(["tray-in", "tray-out"]));
    for (const route of ["flash", "staged"] as const) {
      const codes = codesOf({ route }, { material: "pla" });
      for (const wax of ["pan-outside", "tray-in", "tray-out"]) expect(codes).not.toContain(wax);
    }
  });
});

describe("the words at the kiln", () => {
  test("the tray comes out with the kiln off, and burning wax is not spoken of where no wax is", () => {
    expect(instructionWords["tray-out"].title).toBe("Kiln off. Take the tray out. Shut the door.");
    for (const code of codesOf({ route: "flash" }, { material: "pla" })) {
      const words = instructionWords[code as keyof typeof instructionWords];
      expect(`${words.title} ${words.says}`).not.toMatch(/wax/i);
    }
  });

  test.each([
    [0.1, "thin wax up to about"],
    [0.101, "is a lot for staged"],
  ])("%d kg of wax staged: %s", (massKg, words) => {
    const format = makeFormat("metric", "en-GB");
    expect(noteText({ code: "wax-melts-slowly", figures: { massKg } }, format)).toContain(words);
  });

  test("a plan with the tray left in is refused with both temperatures", () => {
    const found = {
      code: "tray-in-too-hot",
      level: "hold",
      segment: 3,
      limit: "wax-flash-point",
      figures: { hottestC: 430, mostC: 170 },
    } as const;
    const { says, remedy } = scheduleFindingText(found, makeFormat("metric", "en-GB"));
    expect(says.replaceAll("\u00a0", " ")).toContain("430 °C");
    expect(says.replaceAll("\u00a0", " ")).toContain("170 °C");
    expect(remedy).toContain("Take the tray out");
  });
});
