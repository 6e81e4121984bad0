import fc from "fast-check";
import { expect, test } from "vitest";
import { demoEntries } from "./demoShop.ts";

test("the demo loads at any moment of any year, clock changes included", () =>
  fc.assert(
    fc.property(fc.integer({ min: Date.UTC(2024, 0, 1), max: Date.UTC(2090, 0, 1) }), (now) => {
      expect(demoEntries(now, "Europe/Berlin").length).toBeGreaterThan(100);
    }),
    { numRuns: 20 },
  ));
