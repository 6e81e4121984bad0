import { millisecondsInHour as hourMs } from "date-fns/constants";
import { describe, expect, test } from "vitest";
import { builtInShop } from "./builtIns.ts";
import type { EntryBodies } from "../entries/entry.ts";
import { expectedMassG, guessMoment } from "./expectedMass.ts";
import { coatCaseOf } from "../drying/shellDrying.ts";
import { standingOf } from "./buildStanding.ts";
import type { TestLog } from "../../../tests/logs/testLog.ts";
import { monday, steadyAir, testLog, testShop } from "../../../tests/logs/testLog.ts";

const at = (hours: number): number => monday + hours * hourMs;
const surroundings = testShop(steadyAir({ from: at(-2), hours: 30 }));
const weigh = (log: TestLog, hours: number, massG: number, moment?: "drained" | "stuccoed") =>
  log.tell(
    "dryness-seen",
    {
      method: "weight",
      massG,
      coatId: log.piece().coats.at(-1)?.id ?? "",
      ...(moment ? { moment } : {}),
    } satisfies EntryBodies["dryness-seen"],
    at(hours),
  );
const expected = (log: TestLog, hours: number): number | null => {
  const piece = log.piece();
  const of = coatCaseOf(piece, piece.coats.at(-1)?.id ?? "", { surroundings, recipe: null, now: at(hours) });
  const { outer } = standingOf(piece, surroundings, at(hours));
  return expectedMassG(guessMoment(piece, at(hours)), { piece, of, drying: outer, shop: builtInShop });
};

describe("the moment of a weighing", () => {
  test("goes from before the dip over drained and stuccoed to drying, as the log goes", () => {
    const log = testLog({ areaM2: 0.1 });
    const moment = (hours: number) => guessMoment(log.piece(), at(hours));
    expect(moment(0)).toBe("before-dip");
    log.tell("piece-weighed", { massG: 1180 }, at(0));
    log.coat(at(0.1));
    expect(moment(0.13)).toBe("drained");
    weigh(log, 0.13, 1255, "drained");
    expect(moment(0.14)).toBe("stuccoed");
    weigh(log, 0.16, 1380, "stuccoed");
    expect(moment(0.17)).toBe("drying");
  });

  test("is drying half an hour after the dip, whatever was weighed", () => {
    const log = testLog();
    log.coat(at(0));
    expect(guessMoment(log.piece(), at(0.2))).toBe("stuccoed");
    expect(guessMoment(log.piece(), at(0.6))).toBe("drying");
  });
});

test("each weighing begins near the number the balance will show", () => {
  const log = testLog({ areaM2: 0.1 });
  expect(expected(log, 0)).toBeNull();
  log.tell("piece-weighed", { massG: 1180 }, at(0));
  expect(expected(log, 0.05)).toBe(1180);
  log.coat(at(0.1));
  // 0.75 kg/m² of slurry on 0.1 m², then 1.25 of stucco.
  expect(expected(log, 0.12)).toBeCloseTo(1255, 9);
  weigh(log, 0.13, 1250, "drained");
  expect(expected(log, 0.14)).toBeCloseTo(1375, 9);
  weigh(log, 0.16, 1370, "stuccoed");
  const soon = expected(log, 0.2) ?? NaN;
  const dry = expected(log, 20) ?? NaN;
  expect(soon).toBeGreaterThan(1365);
  // 70 g of slurry carry 18.7 g of water.
  expect(dry).toBeCloseTo(1370 - 70 * (0.2 / 0.75), 0);
});
