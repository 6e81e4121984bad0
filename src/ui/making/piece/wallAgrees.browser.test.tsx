import { cleanup, render } from "@testing-library/react";
import fc from "fast-check";
import { expect, test } from "vitest";
import { clearDesks, freshDesk } from "../../../../tests/demoDesk.tsx";
import { givenCoated, type GivenPiece } from "../../../../tests/givenPiece.ts";
import { strengthOverLoad } from "../../../physics/shell/wall.ts";
import { findingsFor } from "../../../rules/all.ts";
import { WallSection } from "../../base/charts/WallSection.tsx";
import { findingText } from "../../base/format/findingWords.ts";
import { sentence } from "../../base/format/sentence.ts";
import { makeFormat } from "../../base/format/units.ts";
import { moreCoats, neededText, wallRange, wallWords } from "../../base/format/wallWords.ts";
import { shopLocale } from "../../base/state/locale.ts";
import { ShopProvider } from "../../base/state/shop.tsx";
import { WallSummary } from "../review/WallSummary.tsx";
import { WallVerdict } from "./WallVerdict.tsx";

const part = fc.oneof(
  fc.record({
    kind: fc.constant("flat" as const),
    widthMm: fc.integer({ min: 90, max: 150 }),
    lengthMm: fc.integer({ min: 90, max: 200 }),
  }),
  fc.record({ kind: fc.constant("round" as const), diameterMm: fc.integer({ min: 200, max: 900 }) }),
);
const anyPiece = fc
  .record({
    part,
    times: fc.double({ min: 1, max: 2.4, noNaN: true }),
    readMm: fc.option(fc.double({ min: 6, max: 10, noNaN: true })),
  })
  .map(({ readMm, times, part: of }): GivenPiece => {
    // The head at which the shell bears about so many times its load, so that every word comes up.
    const at = { morMPa: 4, wallMm: readMm ?? 7.7, part: of };
    const headM = strengthOverLoad({ ...at, pressurePa: 76_518 }) / times;
    const piece = givenCoated({ part: of, headM: Math.min(5, Math.max(0.01, headM)) });
    if (readMm !== null) piece.log(118, "wall-measured", { wallMm: readMm });
    return piece;
  });

const titles = {
  marginal: "Shell borderline for this pour",
  thin: "Shell too thin for this pour",
  fails: "Shell expected to break in this pour",
};

test("drawing, piece page, review and finding say one thing of random pieces", async () => {
  const { shop } = freshDesk();
  const format = makeFormat("metric", shopLocale());
  const words = new Set<string>();
  const asked = new Set<string>();
  await fc.assert(
    fc.asyncProperty(anyPiece, async (piece) => {
      const standing = piece.standing(119);
      const { judged } = standing.wall;
      if (judged === null) throw new Error("a piece with every figure was not judged");
      words.add(judged.word);
      const needed = format.show("mm", judged.neededMm);
      const needs = neededText({ neededMm: judged.neededMm, floorMm: standing.wall.floorMm }, format);
      asked.add(needs.split(" needs ")[0] ?? "");
      const range = wallRange(judged, format);
      const { container } = render(
        <ShopProvider shop={shop}>
          <WallSection standing={standing} />
          <WallVerdict standing={standing} />
          <WallSummary standing={standing} />
        </ShopProvider>,
      );
      await expect.poll(() => container.querySelector("svg[role=img]")).not.toBeNull();
      const drawing = container.querySelector("svg[role=img]")?.getAttribute("aria-label") ?? "";
      expect(drawing).toContain(`${range}. ${sentence(needs)}.`);
      const text = container.textContent.replaceAll(/\s+/g, " ");
      const plain = (said: string): string => said.replaceAll(/\s+/g, " ");
      expect(text).toContain(plain(`${wallWords[judged.word]}. The shell is ${range}; ${needs}.`));
      const review = container.querySelector("section")?.textContent.replaceAll(/\s+/g, " ") ?? "";
      expect(review).toContain(plain(`Needed${needed}`));
      expect(review).toContain(plain(`Verdict${wallWords[judged.word]}`));
      const add = judged.coatsToAdd > 0 ? moreCoats(judged.coatsToAdd) : "more coat";
      expect(text.split(plain(add)).length - 1).toBe(judged.coatsToAdd > 0 ? 2 : 0);
      const found = findingsFor(standing).filter(({ rule }) => rule === "wall-too-thin");
      if (judged.word === "carries") {
        expect(found.map(({ variant }) => variant).filter((one) => one !== "below-floor")).toEqual([]);
      } else {
        expect(found).toHaveLength(1);
        const { title, says } = findingText(found[0]!, format);
        expect(title).toBe(titles[judged.word]);
        expect(says).toContain(`The shell is ${range}. ${sentence(needs)}.`);
      }
      cleanup();
    }),
    { numRuns: 30 },
  );
  // Else the four words were not all put to the test.
  expect([...words].sort()).toEqual(["carries", "fails", "marginal", "thin"]);
  expect([...asked].sort()).toEqual(["handling", "this pour"]);
  await clearDesks();
}, 120_000);
