import ICAL from "ical.js";
import { expect, test } from "vitest";
import { dueCalendar, eventOf } from "./dueCalendar.ts";
import { coverAt } from "../../../../tests/coverAt.ts";
import { givenCoated } from "../../../../tests/givenPiece.ts";
import { coatRing } from "../../making/due/coatRings.ts";
import { dueTimes, type DueTime } from "./dueTimes.ts";

const noon = Date.UTC(2026, 2, 4, 12);
const due = (piece: string, coat: number, dueMs = noon, latest: number | null = null) =>
  coatRing(timeOf(piece, coat, dueMs, latest));
const timeOf = (piece: string, coat: number, dueMs: number, latest: number | null): DueTime => ({
  id: `${piece}-coat-${coat}`,
  pieceId: piece,
  name: "Heron, the second; large",
  coat,
  allows: "next-coat",
  dueMs,
  cover: coverAt({ checkAt: dueMs, dryAt: latest }),
});
const say = (at: number): string => new Date(at).toISOString();

async function readBack(blob: Blob) {
  const calendar = new ICAL.Component(ICAL.parse(await blob.text()));
  return calendar.getAllSubcomponents("vevent").map((part) => {
    const event = new ICAL.Event(part);
    const alarm = part.getFirstSubcomponent("valarm");
    return {
      uid: event.uid,
      sequence: event.sequence,
      at: event.startDate.toJSDate().getTime(),
      summary: event.summary,
      trigger: String(alarm?.getFirstPropertyValue("trigger")),
    };
  });
}

test("a rack's file rings each coat at its own time, under the same name for ever", async () => {
  const blob = dueCalendar([due("p1", 4), due("p2", 7, noon + 60_000)], { now: noon, sequence: 3, say });
  expect(blob.type).toBe("text/calendar;charset=utf-8");
  expect(await readBack(blob)).toEqual([
    {
      uid: "p1-coat-4@dipbook",
      sequence: 3,
      at: noon,
      summary: "Heron, the second; large: check if coat 4 is dry",
      trigger: "PT0S",
    },
    {
      uid: "p2-coat-7@dipbook",
      sequence: 3,
      at: noon + 60_000,
      summary: "Heron, the second; large: check if coat 7 is dry",
      trigger: "PT0S",
    },
  ]);
});

test("a moved time keeps its name and comes with a higher number", async () => {
  const [before] = await readBack(dueCalendar([due("p1", 4)], { now: noon, sequence: 1, say }));
  const [after] = await readBack(
    dueCalendar([due("p1", 4, noon + 7_200_000)], { now: noon, sequence: 2, say }),
  );
  expect(after?.uid).toBe(before?.uid);
  expect(after?.sequence).toBeGreaterThan(before?.sequence ?? Number.NaN);
});

test("the event says how sure its time is", () => {
  expect(eventOf(due("p1", 4), 1, say).description).toContain("No latest time");
  expect(eventOf(due("p1", 4, noon, noon + 1), 1, say).description).toContain("at the latest");
});

test("a finished shell's event is its review, never its last coat", () => {
  const [review] = dueTimes([givenCoated().standing(85)]);
  const { summary, description } = eventOf(coatRing(review!), 1, say);
  expect(summary).toMatch(/^Heron: final dry, review not before 2026-04-10T06:00/);
  expect(description).toContain("Final dry: review not before");
  expect(`${summary} ${description}`).not.toMatch(/coat 9/i);
});
