import { millisecondsInHour as hourMs } from "date-fns/constants";
import { describe, expect, test } from "vitest";
import { standingOf } from "../piece/buildStanding.ts";
import { coatAdvice, placesOfPiece } from "./coatAdvice.ts";
import type { AirReading } from "../piece/piece.ts";
import type { PiecePlan } from "../entries/pieceBodies.ts";
import type { TestLog } from "../../../tests/logs/testLog.ts";
import { monday, steadyAir, testLog, testShop } from "../../../tests/logs/testLog.ts";

const at = (hours: number): number => monday + hours * hourMs;
const withAir = (air: Partial<AirReading> = {}) => testShop(steadyAir({ from: monday, hours: 90 }, air));

function ask(log: TestLog, hours: number, shop = withAir({ air: "still" })) {
  const standing = standingOf(log.piece(), shop, at(hours));
  const said = coatAdvice(standing, placesOfPiece(standing)[0] ?? null);
  return { standing, said };
}
function advice(log: TestLog, hours: number, shop = withAir({ air: "still" })) {
  const { standing, said } = ask(log, hours, shop);
  if (said.kind !== "advice") throw new Error(`none: ${said.why}`);
  return { standing, said };
}
const backups = (plan: Partial<PiecePlan> = {}) => {
  const log = testLog(plan);
  for (const hours of [0, 24, 48, 72]) log.coat(at(hours));
  return log;
};

describe("what would help a piece", () => {
  test("the hours as it stands are those its own ready time tells, in steady air", () => {
    const { standing, said } = advice(backups(), 72.5);
    const likelyH = ((standing.outer?.readyAt.likely ?? NaN) - at(72.5)) / hourMs;
    expect(said.hoursNow).toBeCloseTo(likelyH, 1);
    expect(said.advice[0]?.remedy).toMatchObject({ kind: "air-class", id: "tunnel" });
    expect(said.readingAgeMs).toBe(0.5 * hourMs);
  });

  test("what was seen of the coat moves the hours as it moves the ready time", () => {
    const log = backups();
    const coatId = log.piece().coats.at(-1)?.id ?? "";
    log.tell("dryness-seen", { method: "touch", verdict: "wet", coatId }, at(75.5));
    const { standing, said } = advice(log, 76);
    const likelyH = ((standing.outer?.readyAt.likely ?? NaN) - at(76)) / hourMs;
    expect(said.hoursNow).toBeCloseTo(likelyH, 1);
  });

  test("a recess is helped by air led in and by turning it down, an open piece by neither", () => {
    const kinds = (plan: Partial<PiecePlan>) =>
      advice(backups(plan), 72.5).said.advice.map(({ remedy }) => remedy.kind);
    expect(kinds({ geometry: "recess" }).slice(0, 2)).toEqual(["air-into-pocket", "opened-downwards"]);
    expect(kinds({ geometry: "open" })).not.toContain("air-into-pocket");
  });

  test("only a prime coat on wax is warned of the cold and of warmth", () => {
    const prime = (material: PiecePlan["material"]) => {
      const log = testLog({ ...(material && { material }) });
      log.coat(at(0), { kind: "prime", stuccoId: "80-120" });
      return advice(log, 0.2, withAir({ rh: 0.4 })).said.advice.flatMap(({ cautions }) =>
        cautions.map(({ code }) => code),
      );
    };
    expect(prime("wax")).toContain("wax-moves");
    expect(prime("wax")).toContain("wet-coat-cools");
    expect(prime(undefined)).toContain("wax-moves");
    expect(prime("pla")).not.toContain("wax-moves");
    expect(
      advice(backups({ material: "wax" }), 72.5).said.advice.every(({ cautions }) => cautions.length === 0),
    ).toBe(true);
  });

  test("in air over 80 % there are no hours now, and drier air makes some", () => {
    const { said } = advice(backups(), 72.5, withAir({ rh: 0.88, air: "room-fan" }));
    expect(said.hoursNow).toBeNull();
    expect(said.advice.length).toBeGreaterThan(0);
    expect(said.advice.every(({ hours }) => hours !== null)).toBe(true);
  });

  test("no coat, a dry coat and an unread room get no advice, each for its reason", () => {
    expect(ask(testLog(), 1).said).toEqual({ kind: "none", why: "no-coat" });
    expect(ask(backups(), 89).said).toEqual({ kind: "none", why: "dry" });
    expect(ask(backups(), 73, testShop([])).said).toEqual({ kind: "none", why: "no-readings" });
  });
});
