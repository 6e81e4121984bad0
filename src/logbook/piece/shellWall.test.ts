import { millisecondsInHour as hourMs } from "date-fns/constants";
import { describe, expect, test } from "vitest";
import { standingOf } from "./buildStanding.ts";
import type { EntryBodies } from "../entries/entry.ts";
import type { PiecePlan } from "../entries/pieceBodies.ts";
import { builtInRecipe, builtInShop } from "./builtIns.ts";
import type { Shop } from "./piece.ts";
import type { WallStanding } from "./standing.ts";
import type { TestLog } from "../../../tests/logs/testLog.ts";
import { givenPiece, knownPlan } from "../../../tests/givenPiece.ts";
import { monday, steadyAir, testLog, testShop } from "../../../tests/logs/testLog.ts";

const at = (hours: number): number => monday + hours * hourMs;
const air = steadyAir({ from: monday, hours: 200 });
/** A silicon bronze with 0.4 m of head on a flat of 100 × 100 mm. */
const plan: Partial<PiecePlan> = {
  alloyId: "c87300",
  headM: 0.4,
  part: { kind: "flat", widthMm: 100, lengthMm: 100 },
  recipeId: "start-general",
};

function wallOf(log: TestLog, shop = builtInShop): WallStanding {
  return standingOf(log.piece(), testShop(air, { shop }), at(150)).wall;
}

/** The general recipe to its end, twelve hours a coat: 2 × 0.32 + 0.62 + 5 × 1.23 + 0.25 mm. */
function generalShell(more: Partial<PiecePlan> = {}): TestLog {
  const log = testLog({ ...plan, ...more });
  const prime = { kind: "prime", stuccoId: "80-120" } as const;
  const rest = [
    prime,
    prime,
    { kind: "intermediate", stuccoId: "30-80" } as const,
    ...Array.from({ length: 5 }, () => ({ kind: "backup", stuccoId: "16-30" }) as const),
    { kind: "seal", stuccoId: null } as const,
  ];
  for (const [i, coat] of rest.entries()) log.coat(at(12 * i), coat);
  return log;
}
const judgedOf = (log: TestLog, shop?: Shop) => {
  const { judged, missing } = wallOf(log, shop);
  if (judged === null) throw new Error(`not judged: ${missing.join(", ")}`);
  return judged;
};

describe("what the coats give", () => {
  test("is the sum of the table's coats until a caliper says otherwise", () => {
    const wall = wallOf(generalShell());
    expect(wall.reachedMm).toBeCloseTo(7.66, 1);
    expect(wall).toMatchObject({ basis: "table", missing: [] });
    expect(wall.perCoatMm).toHaveLength(9);
  });

  test("is the caliper's figure from then on, shared out as the table has it", () => {
    const log = generalShell();
    const table = wallOf(log);
    log.tell("wall-measured", { wallMm: 9 }, at(110));
    const wall = wallOf(log);
    expect(wall.reachedMm).toBeCloseTo(9, 9);
    expect(wall.basis).toBe("measured");
    const shares = wall.perCoatMm.map((mm, i) => mm / (table.perCoatMm[i] ?? NaN));
    for (const share of shares) expect(share).toBeCloseTo(9 / table.reachedMm, 9);
  });

  test("the newest reading wins, and coats put on after it count as it taught, within the table's spread", () => {
    const log = testLog(plan);
    log.coat(at(0));
    log.coat(at(12));
    log.tell("wall-measured", { wallMm: 9 }, at(20));
    log.tell("wall-measured", { wallMm: 2.7 }, at(21));
    log.coat(at(24));
    const learnt = 2.7 / (2 * 1.229);
    expect(wallOf(log).reachedMm).toBeCloseTo(2.7 + 1.229 * learnt, 6);
    log.tell("wall-measured", { wallMm: 9 }, at(23));
    expect(wallOf(log).reachedMm).toBeCloseTo(9 + 1.229 * 1.25, 6);
  });

  test("a reading on a bare pattern, or of an impossible wall, teaches nothing", () => {
    const log = testLog(plan);
    log.tell("wall-measured", { wallMm: 5 }, at(0));
    log.coat(at(1));
    expect(wallOf(log)).toMatchObject({ basis: "table" });
  });
});

describe("what the head asks for", () => {
  test("a flat of 100 mm under 0.4 m of silicon bronze needs 7 mm, and 7.7 mm carries it", () => {
    const judged = judgedOf(generalShell());
    // By hand: 0.3078·0.0306 MPa·100² / 7.7² = 1.589 MPa against 4; the index 1.2 is reached at 6.57 mm.
    expect(judged.ratio).toBeCloseTo(4 / 1.589, 2);
    expect(judged.index).toBeCloseTo(Math.log(4 / 1.589) / 0.5045, 2);
    expect(judged).toMatchObject({ likelyMm: 7.7, neededMm: 7, coatsToAdd: 0, word: "carries" });
    expect(judged.headPressurePa).toBeGreaterThan(30_000);
  });

  test("a recipe's own factor asks for as much more as it stands to 3", () => {
    const asking = (safetyFactor: number) => {
      const recipes = new Map([["own", { ...builtInRecipe("start-general")!, id: "own", safetyFactor }]]);
      const log = generalShell({ recipeId: "own" });
      return standingOf(log.piece(), { ...testShop(air), recipes }, at(150)).wall.judged;
    };
    expect(asking(3)).toMatchObject({ word: "carries", neededMm: 7 });
    // 6.57 mm times the root of 4/3 and of 5/3.
    expect(asking(4)).toMatchObject({ word: "marginal", neededMm: 8 });
    expect(asking(5)).toMatchObject({ word: "marginal", neededMm: 8.5 });
  });

  test("a caliper reading of the same thickness needs less of it", () => {
    const log = generalShell({ headM: 0.55 });
    const byTable = judgedOf(log);
    log.tell("wall-measured", { wallMm: byTable.likelyMm }, at(110));
    const byCaliper = judgedOf(log);
    expect(byTable).toMatchObject({ likelyMm: 7.7, word: "marginal", neededMm: 8 });
    expect(byCaliper).toMatchObject({ likelyMm: 7.7, word: "carries", neededMm: 7.5 });
    expect([byCaliper.lowMm, byCaliper.highMm]).toEqual([7.7 / 1.1, 7.7 * 1.1]);
  });

  test("test bars of the same strength need less of it", () => {
    const bars = judgedOf(generalShell({ headM: 0.55 }), { ...builtInShop, morMPa: 4 });
    expect(bars).toMatchObject({ strengthFrom: "bars", strengthSpread: 1.5, word: "carries" });
  });

  test("coats put on after a caliper reading are known by the table alone", () => {
    const spread = (log: TestLog): number => {
      const { highMm, likelyMm } = wallOf(log);
      return highMm / likelyMm;
    };
    const log = generalShell();
    log.tell("wall-measured", { wallMm: 7.7 }, at(110));
    expect(spread(log)).toBeCloseTo(1.1, 9);
    log.coat(at(120), { step: null });
    expect(spread(log)).toBeGreaterThan(1.1);
    expect(spread(log)).toBeLessThan(1.25);
  });

  test("the floor holds where the head asks for little", () => {
    const judged = judgedOf(generalShell({ headM: 0.02 }));
    expect(judged).toMatchObject({ neededMm: 6.5, coatsToAdd: 0, word: "carries" });
  });

  test("the shop's own strength stands before the recipe's", () => {
    expect(judgedOf(generalShell()).morMPa).toBe(4);
    expect(judgedOf(generalShell(), { ...builtInShop, morMPa: 6 }).morMPa).toBe(6);
    expect(judgedOf(generalShell({ recipeId: undefined })).morMPa).toBe(4);
  });
});

describe("what takes load off a flat", () => {
  const panel: Partial<PiecePlan> = { part: { kind: "flat", widthMm: 150, lengthMm: 300 } };

  test("is in the verdict as the plan has it", () => {
    const bare = judgedOf(generalShell(panel));
    expect(bare).toMatchObject({ word: "fails", neededMm: 14 });
    // Ribs every 100 mm: 100 × 150 of 0.4872 in place of 150 × 300 of 0.6102: 8.3 mm.
    const ribbed = judgedOf(generalShell({ ...panel, support: { ribEveryMm: 100 } }));
    expect(ribbed.neededMm).toBe(8.5);
    expect(judgedOf(generalShell({ ...panel, support: { sand: "loose" } })).neededMm).toBe(14);
    expect(judgedOf(generalShell({ ...panel, support: { sand: "vibrated" } })).neededMm).toBeLessThan(14);
    expect(judgedOf(generalShell({ ...panel, support: { crownMm: 20 } })).word).toBe("carries");
    // 0.4974·0.0306 MPa·150²·1.832/4, its root 12.52 mm.
    expect(judgedOf(generalShell({ ...panel, support: { edges: "held" } })).neededMm).toBe(13);
    const rim = judgedOf(generalShell({ part: { kind: "rim", widthMm: 150, lengthMm: 300 } }));
    // 13.86 mm times the root of two.
    expect(rim.neededMm).toBe(20);
  });

  test("gives ways to carry, and the plan that takes one of them does", () => {
    const { ways } = judgedOf(generalShell(panel));
    if (ways?.ribEveryMm == null || ways.headM === null) throw new Error("no way was found");
    const { ribEveryMm, headM } = ways;
    expect(judgedOf(generalShell({ ...panel, support: { ribEveryMm } })).word).toBe("carries");
    expect(judgedOf(generalShell({ ...panel, headM })).word).toBe("carries");
    expect(judgedOf(generalShell({ ...panel, headM })).ways).toBeNull();
  });
});

describe("when it can't be judged", () => {
  test.each<[string, Partial<PiecePlan>, readonly string[]]>([
    ["no alloy", { alloyId: undefined }, ["alloy"]],
    ["an alloy nobody knows", { alloyId: "unobtainium" }, ["alloy"]],
    ["no head and no part", { headM: undefined, part: undefined }, ["head", "part"]],
  ])("%s: the wall is told, the verdict is missing by name", (_, more, missing) => {
    expect(wallOf(generalShell(more))).toMatchObject({ judged: null, missing });
  });

  test("a flat without width, come in from another log, is no part to judge by", () => {
    const piece = generalShell().piece();
    const bare = {
      ...piece,
      plan: { ...piece.plan, part: { kind: "flat", widthMm: 0, lengthMm: 5 } as const },
    };
    const { wall } = standingOf(bare, testShop(air), at(150));
    expect(wall).toMatchObject({ judged: null, missing: ["part"] });
  });

  test("no coats in the log is not a thin wall", () => {
    expect(wallOf(testLog(plan))).toMatchObject({ judged: null, missing: ["coats"], reachedMm: 0 });
  });
});

describe("half the strength", () => {
  test("for a coat put on over a wet one, and only then", () => {
    const dry = generalShell();
    expect(judgedOf(dry)).toMatchObject({ loadShare: 1, morMPa: 4 });
    const damp = generalShell();
    damp.coat(at(96.5), { step: null });
    expect(judgedOf(damp)).toMatchObject({ loadShare: 0.5, morMPa: 2 });
    expect(judgedOf(damp).ratio / judgedOf(dry).ratio).toBeLessThan(0.7);
  });

  test("of a wall that was measured only the strength is lost: 0.65, not 0.5", () => {
    const damp = generalShell();
    damp.coat(at(96.5), { step: null });
    damp.tell("wall-measured", { wallMm: 7 }, at(110));
    expect(judgedOf(damp)).toMatchObject({ loadShare: 0.65 });
    expect(judgedOf(damp).morMPa).toBeCloseTo(2.6, 9);
  });

  test("with little water left it costs little: 20 % accepted at the dip leaves 0.8 of the load", () => {
    const log = generalShell();
    const acceptedDamp = { coatId: log.piece().coats.at(-1)?.id ?? "", leftShare: 0.2 };
    log.coat(at(97.4), { step: null, acceptedDamp });
    expect(judgedOf(log).loadShare).toBeCloseTo(0.8, 9);
  });

  test("not when the coat beneath was felt dry first", () => {
    const log = generalShell();
    const coatId = log.piece().coats.at(-1)?.id ?? "";
    log.tell("dryness-seen", { method: "touch", verdict: "dry", coatId }, at(96.4));
    log.coat(at(96.5), { step: null });
    expect(judgedOf(log).loadShare).toBe(1);
  });

  test("for one accepted as damp in the doubtful hours, unless the sum has come to call it ready", () => {
    const dipAfter = (hours: number): boolean => {
      const log = generalShell();
      const acceptedDamp = { coatId: log.piece().coats.at(-1)?.id ?? "", leftShare: 0.2 };
      log.coat(at(96 + hours), { step: null, acceptedDamp });
      return judgedOf(log).loadShare < 1;
    };
    expect(dipAfter(1.4)).toBe(true);
    expect(dipAfter(10)).toBe(false);
  });

  test("a recipe with polymer counts with its hot strength, from the shop's own bars too", () => {
    const log = generalShell();
    const asked = testShop(air);
    const standing = (more: object, shop = builtInShop) => {
      const recipes = new Map([...asked.recipes].map(([id, recipe]) => [id, { ...recipe, ...more }]));
      return standingOf(log.piece(), { ...testShop(air, { shop }), recipes }, at(150)).wall.judged?.morMPa;
    };
    expect(standing({})).toBe(4);
    expect(standing({ polymer: false })).toBe(4);
    expect(standing({ polymer: true })).toBeCloseTo(2.6, 9);
    expect(standing({ polymer: true }, { ...builtInShop, morMPa: 5 })).toBeCloseTo(3.25, 9);
  });

  test.each<[string, EntryBodies["shell-fired"], boolean]>([
    ["799 °C", { peakC: 799, holdMin: 60 }, true],
    ["800 °C for 30 min", { peakC: 800, holdMin: 30 }, false],
    ["29 min", { peakC: 900, holdMin: 29 }, true],
  ])("for a firing of %s: %o → %s", (_, fired, halved) => {
    const log = generalShell();
    log.tell("shell-fired", fired, at(120));
    expect(judgedOf(log).loadShare < 1).toBe(halved);
  });

  test("not any more once it is fired well, and not for a fire before the coats that stand outside", () => {
    const log = generalShell();
    log.tell("shell-fired", { peakC: 600, holdMin: 60 }, at(120));
    log.tell("shell-fired", { peakC: 850, holdMin: 60 }, at(125));
    expect(judgedOf(log).loadShare).toBe(1);
    const mended = generalShell();
    mended.tell("shell-fired", { peakC: 600, holdMin: 60 }, at(110));
    mended.coat(at(130), { step: null });
    expect(judgedOf(mended).loadShare).toBe(1);
  });
});

test.each([0.6, 1.1, 2.4])(
  "read as %s mm at three coats, the wall said to come is the wall once the coats are on",
  (wallMm) => {
    const piece = givenPiece({ ...knownPlan, ...plan });
    piece.air(0.5);
    piece.coats([1, 6, 12]);
    piece.log(18, "wall-measured", { wallMm });
    const { planned, basis } = piece.standing(18).wall;
    piece.coats([24, 36, 48, 60, 72, 84]);
    const { wall } = piece.standing(85);
    expect(basis).toBe("measured");
    expect(planned?.likelyMm).toBe(wall.likelyMm);
    expect(planned?.judged?.lowMm).toBeCloseTo(wall.lowMm, 9);
    expect(planned?.judged?.highMm).toBeCloseTo(wall.highMm, 9);
  },
);
