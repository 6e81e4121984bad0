import { cleanup } from "@testing-library/react";
import fc from "fast-check";
import { afterEach, expect, test } from "vitest";
import { millisecondsInHour as hourMs } from "date-fns/constants";
import { v7 } from "uuid";
import { clearDesks, freshDesk, showAt } from "../../../tests/demoDesk.tsx";
import { dayOne, givenPiece, knownPlan, type GivenPiece } from "../../../tests/givenPiece.ts";
import { rebuildProjections } from "../../storage/rebuild.ts";
import { startingSettings } from "../../storage/settings.ts";
import { streamOf } from "../../logbook/entries/entry.ts";
import { paths } from "../base/state/paths.ts";
import { makeShop, type ShopDoor } from "../base/state/shop.tsx";
import { Routes } from "./Routes.tsx";

const pieceId = "piece-of-the-test";

/** What is done to a piece between two looks at its screens. */
const edit = fc.oneof(
  fc.record({ metalKg: fc.double({ min: 0.4, max: 30, noNaN: true }) }).map((changes) => ({ changes })),
  fc
    .record({ metalLitre: fc.double({ min: 0.02, max: 4, noNaN: true }) })
    .map(({ metalLitre }) => ({ changes: { metalLitre, metalKg: null } })),
  fc.record({ headM: fc.double({ min: 0.05, max: 1.4, noNaN: true }) }).map((changes) => ({ changes })),
  fc
    .record({ widthMm: fc.integer({ min: 30, max: 160 }), lengthMm: fc.integer({ min: 160, max: 300 }) })
    .map((flat) => ({ changes: { part: { kind: "flat" as const, ...flat } } })),
  fc.constantFrom("c87300", "c90300", "a356").map((alloyId) => ({ changes: { alloyId } })),
  fc.constantFrom("start-general", "start-fine").map((recipeId) => ({ changes: { recipeId } })),
  fc.double({ min: 0.8, max: 3, noNaN: true }).map((wallMm) => ({ wallMm })),
  fc.constant("coat" as const),
  fc.constant("dry" as const),
);
type Edit = typeof edit extends fc.Arbitrary<infer T> ? T : never;

/** A piece after its edits, an hour apart, one coat on from the start. */
function edited(edits: readonly Edit[]): { readonly piece: GivenPiece; readonly hour: number } {
  const piece = givenPiece({ ...knownPlan, metalLitre: 0.39 });
  piece.air(0.5);
  piece.coat(1);
  let hour = 1;
  for (const one of edits) {
    hour += 1;
    if (one === "coat") piece.coat(hour);
    else if (one === "dry") piece.feel(hour, "dry");
    else if ("wallMm" in one) piece.log(hour, "wall-measured", one);
    else piece.log(hour, "piece-changed", one);
  }
  piece.air(hour + 0.1);
  return { piece, hour: hour + 0.5 };
}

async function shopWith({ piece, hour }: ReturnType<typeof edited>): Promise<ShopDoor> {
  const { db } = freshDesk();
  await db.entries.bulkAdd(piece.entries().map((entry) => ({ ...entry })));
  await rebuildProjections(db);
  const clock = () => dayOne + hour * hourMs;
  return makeShop({ db, clock, newId: () => v7(), opened: startingSettings });
}

/** All that a screen says, once it says `shows`. */
async function read(shop: ShopDoor, path: string, shows: RegExp): Promise<string> {
  showAt(shop, path, { route: "*", screen: Routes });
  const text = (): string => document.body.innerText.replaceAll(/\s+/g, " ");
  await expect.poll(text, { timeout: 30_000 }).toMatch(shows);
  const said = text();
  const typed = [...document.querySelectorAll("input")].map(
    ({ labels, value }) => `[${labels?.[0]?.textContent ?? ""}] ${value}`,
  );
  cleanup();
  return [said, ...typed].join(" ");
}

/** Every figure of a kind on the screens: they must be one. */
const all = (texts: readonly string[], figure: RegExp): readonly string[] => [
  ...new Set(texts.flatMap((text) => [...text.matchAll(figure)].map((match) => match[1] ?? match[2] ?? ""))),
];

afterEach(clearDesks);

test("a piece edited in any order has one metal, one head, one shell it needs and one time on all screens", async () => {
  let wet = 0;
  await fc.assert(
    fc.asyncProperty(fc.array(edit, { maxLength: 7 }), async (edits) => {
      const given = edited(edits);
      const coatId = given.piece.standing(given.hour).outer?.coat.id ?? "";
      const shop = await shopWith(given);
      const onPiece = await read(shop, paths.piece(pieceId), /needs [\d.]+ mm.* Log /);
      const onReview = await read(shop, paths.review(pieceId), /Needed.*Cracks/);
      const onPlan = await read(shop, paths.editPiece(pieceId), /needs [\d.]+ mm/);
      const onMetal = await read(shop, paths.metal(pieceId), /to weigh in/);
      const onMelt = await read(shop, paths.newMeltFor(pieceId), /To weigh in/);
      const onCoat = await read(shop, paths.coat(pieceId, coatId), /Water left/);
      const onRack = await read(shop, paths.rack, /Heron/);
      const onDue = await read(shop, paths.due, /Alarms/);
      await shop.log({
        do: "log",
        stream: streamOf("piece", pieceId),
        type: "shell-fired",
        body: { peakC: 880, holdMin: 60 },
      });
      const onPour = await read(shop, paths.newPourFor(pieceId), /Holds/);

      expect(all([onPiece, onReview, onPlan], /(?:needs|Needed) ([\d.,]+ mm)/g)).toHaveLength(1);
      expect(all([onPiece, onPlan], /([\d]+ more coats?) would reach that/g).length).toBeLessThanOrEqual(1);

      const [left] = all([onPiece], /(?:alone|together)[:,] (\d+%) of its water left/g);
      if (left !== undefined) wet += 1;
      expect(left ?? "0%").toBe(all([onCoat], /(\d+%) of its water left/g)[0] ?? "0%");
      const charge = all([onMelt, onMetal], /([\d.,]+ kg) to weigh in|To weigh in ([\d.,]+ kg)/g);
      expect(charge.length).toBeLessThanOrEqual(1);

      const metal = all([onReview, onMelt, onPour], /(?:·|Heron|Holds) ([\d.,]+ kg)/g);
      expect(metal).toHaveLength(1);
      const [head] = all([onReview], /head ([\d.,]+) mm/g);
      const typed = Number(all([onPlan], /\[Head[^\]]*\] ([\d.]+)/g)[0]);
      expect(head).toBe(new Intl.NumberFormat("en", { maximumFractionDigits: 1 }).format(typed));

      const when =
        /(?:check (?:by touch )?from|perhaps dry since|dry since|minimum runs to|dry) ((?:\w+ )?\d+:\d\d(?:\s[AP]M)?)|(no drying time)/;
      const waits = [onPiece, onRack, onDue].map((text) => {
        const [, time, none] = when.exec(text) ?? [];
        return time ?? none ?? `none in: ${text}`;
      });
      expect(new Set(waits).size, waits.join("\n")).toBe(1);
    }),
    { numRuns: 10 },
  );
  expect(wet, "pieces whose coat was still wet").toBeGreaterThan(0);
}, 240_000);
