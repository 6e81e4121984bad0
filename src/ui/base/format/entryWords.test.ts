import { describe, expect, test } from "vitest";
import first from "../../../../tests/fixtures/log-v1.json" with { type: "json" };
import second from "../../../../tests/fixtures/log-v2.json" with { type: "json" };
import { bodyFault } from "../../../logbook/entries/checkBody.ts";
import type { Refusal } from "../../../logbook/log/command.ts";
import type { Entry, EntryBodies, EntryType } from "../../../logbook/entries/entry.ts";
import { alloyName } from "../../../logbook/shop/ownAlloy.ts";
import { entryWords } from "./entryWords.ts";
import { fieldWords } from "./fieldWords.ts";
import { refusalText } from "./refusalWords.ts";
import { makeFormat } from "./units.ts";

const format = makeFormat("metric", "en-GB");
const ownBronze = {
  id: "019f",
  name: "Yard bronze",
  copiedFrom: "silicon-bronze",
  retired: false,
};
const names = {
  format,
  room: (id: string) => `room ${id}`,
  bucket: (id: string) => `bucket ${id}`,
  recipe: (id: string) => `recipe ${id}`,
  alloy: (id: string) => alloyName(id, { alloys: [ownBronze] }),
};
const lines = [...first.entries, ...second.entries] as unknown as readonly Entry[];
const saying = (type: EntryType): readonly string[] =>
  lines
    .filter((line) => line.type === type && line.version === 2)
    .map((line) => {
      const { title, detail } = entryWords(line, names);
      return (detail === null ? title : `${title} · ${detail}`).replaceAll("\u00a0", " ");
    });

describe("a line of the log", () => {
  test("is told in words whatever it is, with no hole in them", () => {
    for (const line of lines) {
      const { title, detail } = entryWords(line, names);
      expect(title.length).toBeGreaterThan(1);
      expect(`${title} ${detail}`).not.toMatch(/undefined|NaN|\[object|Infinity/);
    }
  });

  test("says of a firing what was written, and beside it what readings added later make of it", () => {
    const body = { peakC: 845, holdMin: 20, runId: "r" };
    const line = { ...lines[0], type: "shell-fired", body } as unknown as Entry;
    const detailBy = (peakC: number, holdMin: number) =>
      entryWords(line, { ...names, runHeat: () => ({ peakC, holdMin }) }).detail?.replaceAll("\u00a0", " ");
    expect(detailBy(845, 20)).toBe("held 20 min");
    expect(detailBy(868.3, 41.6)).toBe("held 20 min · with later readings: 868 °C, held 42 min");
    expect(entryWords(line, names).title.replaceAll("\u00a0", " ")).toBe("Fired to 845 °C");
  });

  test("calls an alloy of the shop's own by its name, in a melt and in a piece's plan", () => {
    const body = { alloyId: ownBronze.id, items: [], pourC: 1150 };
    const melt = { ...lines[0], type: "melt-planned", body } as unknown as Entry;
    expect(entryWords(melt, names).title).toBe("Melt planned: Yard bronze");
    const plan = { name: "Heron", alloyId: ownBronze.id };
    const piece = { ...melt, type: "piece-started", body: { plan, roomId: "first" } } as Entry;
    expect(entryWords(piece, names).detail).toContain("alloy Yard bronze");
  });

  test("says the numbers it carries", () => {
    expect(saying("run-logged")).toEqual([
      "Kiln logged: 4 readings · from kiln.csv · over 2 h · up to 252 °C",
    ]);
    expect(saying("bucket-topped")[0]).toContain("Topped up for evaporation · water 0.15 kg · lid off");
    expect(saying("melt-ended")).toEqual([
      "Melt ended · poured 3.5 kg · into ingots 0.9 kg · energy 9 kWh · fuel 1.1 kg · skimmed once",
      "Plan cancelled · no time",
    ]);
    expect(saying("pour-decided")).toEqual(["Go · by R. · second person overridden: neighbour at the door"]);
    expect(saying("air-logged")[0]).toContain(
      "4 readings · from logger 2, cellar.csv · over 0.3 h · 18.5 °C to",
    );
    expect(saying("shrink-measured")).toEqual([
      "Shrink measured: 1.5% · 160 mm became 157.6 mm · free to shrink",
    ]);
    expect(saying("kiln-set")[0]).toContain(
      "up to 1,200 °C · climbs at most 250 °C an hour · 0.31 EUR a kWh",
    );
    expect(saying("dryness-seen").at(4)).toContain("Resistance measured: 4.7 kΩ · just after it set");
  });
});

/** Every number of a body, one at a time, as it can't be. */
function* spoilt(body: unknown): Generator {
  if (typeof body === "number") yield 9e30;
  else if (Array.isArray(body))
    for (const [i, part] of body.entries())
      for (const other of spoilt(part)) yield body.map((old: unknown, at) => (at === i ? other : old));
  else if (typeof body === "object" && body !== null)
    for (const [key, part] of Object.entries(body))
      for (const other of spoilt(part)) yield Object.assign({}, body, { [key]: other });
}

describe("a refusal", () => {
  test("names every field it can be about in a maker's words", () => {
    const fields = new Set<string>();
    for (const { type, body } of lines)
      for (const other of spoilt(body)) {
        const fault = bodyFault(type, other as EntryBodies[EntryType]);
        if (fault?.code === "out-of-range") fields.add(fault.field);
      }
    expect(fields.size).toBeGreaterThan(70);
    expect([...fields].filter((field) => field !== "pH" && fieldWords(field).name === field)).toEqual([]);
  });

  test.each<[Refusal, string]>([
    [{ code: "not-started" }, "Not logged: it is planned but not started."],
    [
      { code: "uneven-readings", field: "rh", found: 2, expected: 3 },
      "Not logged: there are 3 times and 2 values of humidity. The numbers must match.",
    ],
    [
      { code: "readings-not-rising", place: 3, found: 60, before: 60 },
      "Not logged: reading 3 is timed second 60, the one before it second 60. Times are whole seconds, each later than the last.",
    ],
    [
      { code: "readings-too-long", spanS: 90_000, mostS: 86_400 },
      "Not logged: the readings span 25 h. One entry takes 24 h; log the rest separately.",
    ],
    [{ code: "no-such-step", step: "clear-path" }, "Not logged: the plan has no step “clear path”."],
    [
      { code: "start-carries-entries", kind: "run", entryId: "x", count: 2 },
      "The start can't be deleted: 2 entries follow it. Delete those first, or end it.",
    ],
  ])("%j says what was found and what would be taken", (refusal, text) => {
    expect(refusalText(refusal, format, 0).replaceAll("\u00a0", " ")).toBe(text);
  });
});
