import { describe, expect, test } from "vitest";
import { fillFromGate } from "../../../../tests/meshes/atOnce.ts";
import { ball } from "../../../../tests/meshes/testShapes.ts";
import { boxes, moved, together, turnedInsideOut, volumeOf } from "../../../../tests/meshes/testSolids.ts";
import { block, studyOfMesh } from "../../../../tests/meshes/testStudy.ts";
import { massByRoutes } from "../../../logbook/casting/massRoutes.ts";
import { massDraftOf } from "../../../logbook/casting/massDraft.ts";
import { bodyFault } from "../../../logbook/entries/checkBody.ts";
import { alloyOf } from "../../../trade/metals/alloys.ts";
import { chainOfStudy } from "./chainOfStudy.ts";
import { sizeOf } from "./patternSize.ts";
import { displayInMm, type PatternStudy } from "./patternStudy.ts";
import { measuredOf, planOfStudy } from "./planOfStudy.ts";
import { readStudy } from "./readStudy.ts";
import { whatFirst } from "./whatFirst.ts";

/** A closed sphere of 60 mm radius with a void of 55 mm: 4/3·π·r³ and 4·π·r² by hand. */
const sphere = (r: number): number => (4 / 3) * Math.PI * r ** 3;
const skin = (r: number): number => 4 * Math.PI * r ** 2;
const asked = studyOfMesh(together(ball(60, 128), turnedInsideOut(ball(55, 128))));
const metal: PatternStudy = { ...asked, hollowsAre: "metal" };
const core: PatternStudy = { ...asked, hollowsAre: "core" };

describe("a closed sphere of 60 mm with a void of 55 mm", () => {
  test("not answered: metal between 0.21 L and 0.90 L, surface between 0.045 and 0.083 m²; nothing goes into a plan", () => {
    const size = sizeOf(asked, 1);
    expect(size.volumeMm3).toBeNull();
    expect(size.lowMm3! / (sphere(60) - sphere(55))).toBeCloseTo(1, 2);
    expect(size.highMm3! / sphere(60)).toBeCloseTo(1, 2);
    expect(size.outerMm2 / skin(60)).toBeCloseTo(1, 2);
    expect(size.areaMm2 / (skin(60) + skin(55))).toBeCloseTo(1, 2);
    expect(planOfStudy(asked, null)).toEqual({ patternId: asked.id });
    expect(whatFirst(asked)).toMatch(/closed void/);
    expect(chainOfStudy(asked)).toBeNull();
  });

  test("cast solid: 0.90 L, coated outside only, and the fill runs through all of it", () => {
    const size = sizeOf(metal, 1);
    expect(size.volumeMm3! / sphere(60)).toBeCloseTo(1, 2);
    expect(size.areaMm2 / skin(60)).toBeCloseTo(1, 2);
    const plan = planOfStudy(metal, null);
    expect(plan.metalLitre).toBeCloseTo(0.904, 2);
    expect(plan.areaM2).toBeCloseTo(0.0452, 3);
    expect(whatFirst(metal)).toBeNull();
    const mesh = displayInMm(metal, 1);
    const fill = fillFromGate({ mesh, up: [0, 0, 1], gate: [0, 0, -60], vents: [[0, 0, 60]], cells: 96 });
    expect(fill.solidVolume / sphere(60)).toBeCloseTo(1, 1);
    expect(fill.unreached).toBe(0);
  });

  test("core and shell: 0.21 L, both skins coated, and the opened void dries last", () => {
    const size = sizeOf(core, 1);
    expect(size.volumeMm3! / (sphere(60) - sphere(55))).toBeCloseTo(1, 2);
    expect(size.areaMm2 / (skin(60) + skin(55))).toBeCloseTo(1, 2);
    expect(planOfStudy(core, null)).toMatchObject({ pockets: ["blind"] });
    expect(volumeOf(displayInMm(core, 1))).toBeCloseTo(volumeOf(asked.found.display), 3);
  });

  test("the metal page takes what was answered, and the pattern itself never weighs more than its wall", () => {
    const { solidKgM3 } = alloyOf("c87300")!;
    const routes = (study: PatternStudy) =>
      massByRoutes({
        draft: massDraftOf({ name: "ball" }),
        mesh: measuredOf(study),
        metalKgM3: solidKgM3.value,
      }).lines.find(({ route }) => route === "mesh");
    expect(routes(asked)?.volume).toMatchObject({ ok: false, code: "hollow-unanswered" });
    expect(routes(metal)?.mass?.likelyKg).toBeCloseTo((sphere(60) / 1e9) * solidKgM3.value, 1);
    expect(routes(core)?.mass?.likelyKg).toBeCloseTo(((sphere(60) - sphere(55)) / 1e9) * solidKgM3.value, 1);
    for (const study of [asked, metal, core]) {
      const measured = measuredOf(study)!;
      expect(measured.patternMm3! / (sphere(60) - sphere(55))).toBeCloseTo(1, 2);
      expect(bodyFault("pattern-measured", measured)).toBeNull();
    }
  });

  test("the chain begins with the metal that was answered; a bare piece is not all that goes through a sprue", () => {
    expect(chainOfStudy(metal)!.links[0]!.volumeCm3! / (sphere(60) / 1000)).toBeCloseTo(1, 2);
    expect(chainOfStudy(core)!.links[0]!.volumeCm3! / ((sphere(60) - sphere(55)) / 1000)).toBeCloseTo(1, 2);
    expect(chainOfStudy(metal, 8000)?.massKg).toBeUndefined();
  });

  test("in a file of centimetres a thousand times the volume is held", () => {
    expect(sizeOf({ ...metal, unit: "cm" }, 10).volumeMm3! / sphere(600)).toBeCloseTo(1, 2);
  });

  test("kept by an older app it is asked as well", () => {
    const { hollows: _, ...found } = asked.found;
    const old = readStudy(structuredClone({ ...asked, found }))!;
    expect(sizeOf(old, 1).hollows).toMatchObject({ count: 1, are: null });
  });
});

test("a void too small to matter for the metal is not asked about, nor is a pattern without one", () => {
  const pinhole = boxes([[19, 21, 19, 21, 19, 21]]);
  const blown = studyOfMesh(together(block(40, 40, 40), turnedInsideOut(pinhole)));
  expect(sizeOf(blown, 1)).toMatchObject({ hollows: null, volumeMm3: 64_000 - 8 });
  const pair = together(
    block(40, 40, 40),
    moved(block(10, 10, 10), ([x, y, z]) => [x + 60, y, z]),
  );
  expect(sizeOf(studyOfMesh(pair), 1)).toMatchObject({ hollows: null, volumeMm3: 65_000, areaMm2: 10_200 });
});

test("a void that only overlapping bodies shut in is asked about once the hollows are found; its skin is not told apart", () => {
  // Six plates of 5 mm round a void of 30³: each overlaps its neighbours at the edges.
  const plates = [
    [0, 40, 0, 40, 0, 5],
    [0.1, 40.1, 0.1, 40.1, 35, 40],
    [0.2, 40.2, -0.2, 5, 0.2, 39.8],
    [0.3, 40.3, 35, 40.3, 0.3, 39.7],
    [-0.4, 5, 0.4, 39.6, 0.4, 39.6],
    [35, 40.5, 0.5, 39.5, 0.5, 39.5],
  ] as const;
  const study = studyOfMesh(together(...plates.map((plate) => boxes([plate]))));
  const shut = {
    point: [20, 20, 5],
    opening: [0, 0, 1],
    volume: 27_000,
    depth: 30,
    mouth: 0,
    kind: "closed",
  } as const;
  const shape = { thickness: null, flats: null, rounds: null, recesses: [shut] };
  expect(sizeOf(study, 1).hollows).toBeNull();
  const known = sizeOf({ ...study, shape, hollowsAre: "metal" }, 1);
  expect(known.hollows).toEqual({ count: 1, volumeMm3: 27_000, areaMm2: null, are: "metal" });
  expect(known.volumeMm3! - known.patternMm3!).toBeCloseTo(27_000, 6);
});
