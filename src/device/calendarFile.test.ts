import * as fc from "fast-check";
import ICAL from "ical.js";
import { describe, expect, test } from "vitest";
import { calendarFile } from "./calendarFile.ts";
import type { CalendarEvent } from "./calendarFile.ts";

const now = Date.parse("2026-03-07T09:00:00Z");
const prodId = "-//Dipbook//Dipbook//EN";
const event = {
  uid: "dry-0195-3@dipbook",
  sequence: 0,
  startMs: Date.parse("2026-03-07T18:30:00Z"),
  durationMin: 15,
  summary: "Heron: coat 3 dry",
  description: "Likely dry. Look before you dip.",
} satisfies CalendarEvent;

const fileOf = (...events: readonly CalendarEvent[]): string => calendarFile({ events, now, prodId });

/** The events of a file as an independent reader finds them. */
function read(file: string) {
  const calendar = new ICAL.Component(ICAL.parse(file));
  return calendar.getAllSubcomponents("vevent").map((part) => {
    const found = new ICAL.Event(part);
    return {
      uid: found.uid,
      sequence: found.sequence,
      startMs: found.startDate.toJSDate().getTime(),
      endMs: found.endDate.toJSDate().getTime(),
      zone: found.startDate.zone.tzid,
      summary: found.summary,
      description: found.description,
      stamp: String(part.getFirstPropertyValue("dtstamp")),
      alarms: part.getAllSubcomponents("valarm").map((alarm) => ({
        action: alarm.getFirstPropertyValue("action"),
        trigger: String(alarm.getFirstPropertyValue("trigger")),
        description: alarm.getFirstPropertyValue("description"),
      })),
    };
  });
}

/** What a text may look like after the journey: line breaks are one kind, control characters are gone. */
const kept = (text: string): string =>
  text
    .replaceAll(/\r\n|[\r\n\u0085\u2028\u2029]/g, "\n")
    .replaceAll(/\p{Cs}/gu, "\uFFFD")
    .replaceAll(/(?![\t\n])\p{Cc}/gu, "");

const nasty = fc
  .array(
    fc.oneof(
      fc.constantFrom(
        ",",
        ";",
        "\\",
        "\n",
        "\r\n",
        "\r",
        "\\n",
        ":",
        '"',
        "\t",
        " ",
        "BEGIN:VEVENT",
        "END:VCALENDAR\r\n",
      ),
      fc.constantFrom("é", "–", "80–120 mesh", "🔥", "👩🏽‍🏭", "ß", "陶", "\u0000", "\u2028", "\uD800"),
      fc.string({ unit: "grapheme", maxLength: 40 }),
      fc.string({ unit: "binary", maxLength: 10 }),
    ),
    { maxLength: 30 },
  )
  .map((parts) => parts.join(""));

describe("a calendar reads the file back", () => {
  test("one event rings at its start, in UTC", () => {
    expect(read(fileOf(event))).toEqual([
      {
        uid: event.uid,
        sequence: 0,
        startMs: event.startMs,
        endMs: event.startMs + 15 * 60_000,
        zone: "UTC",
        summary: event.summary,
        description: event.description,
        stamp: "2026-03-07T09:00:00Z",
        alarms: [{ action: "DISPLAY", trigger: "PT0S", description: event.summary }],
      },
    ]);
  });

  test("a whole rack is one file, and an empty rack is still a calendar", () => {
    const rack = Array.from({ length: 30 }, (_, i) => ({
      ...event,
      uid: `dry-${i}`,
      startMs: event.startMs + i * 60_000,
    }));
    expect(read(fileOf(...rack)).map(({ uid }) => uid)).toEqual(rack.map(({ uid }) => uid));
    expect(read(fileOf())).toEqual([]);
  });

  test("a second export of the same due time keeps its name and outranks the first", () => {
    const [first] = read(fileOf(event));
    const [second] = read(fileOf({ ...event, sequence: 1, startMs: event.startMs + 3_600_000 }));
    expect(second?.uid).toBe(first?.uid);
    expect(second?.sequence).toBe(1);
    expect(second?.startMs).toBe(event.startMs + 3_600_000);
  });

  test("whatever a maker writes comes back, and makes no event or alarm of its own", () =>
    fc.assert(
      fc.property(nasty, nasty, nasty, (uid, summary, description) => {
        const file = fileOf({ ...event, uid: `u${uid}`, summary, description }, { ...event, uid: "after" });
        const [found, after, more] = read(file);
        expect(found?.uid).toBe(kept(`u${uid}`));
        expect(found?.summary).toBe(kept(summary));
        expect(found?.description).toBe(kept(description));
        expect(found?.alarms).toHaveLength(1);
        expect(after?.uid).toBe("after");
        expect(more).toBeUndefined();
      }),
      { numRuns: 300 },
    ));

  test("any due time is kept to the second, and never rings early", () =>
    fc.assert(
      fc.property(fc.integer({ min: 0, max: Date.parse("2100-01-01T00:00:00Z") }), (startMs) => {
        const [found] = read(fileOf({ ...event, startMs }));
        const late = (found?.startMs ?? Number.NaN) - startMs;
        expect(late).toBeGreaterThanOrEqual(0);
        expect(late).toBeLessThan(1000);
      }),
    ));
});

describe("the file on the wire", () => {
  test("no line is over 75 octets, all end in CRLF, and none breaks a character", () =>
    fc.assert(
      fc.property(nasty, (description) => {
        const octets = new TextEncoder().encode(fileOf({ ...event, description }));
        const lines = splitAtCrlf(octets);
        const strict = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true });
        for (const line of lines) {
          expect(line.length).toBeLessThanOrEqual(75);
          expect(line.includes(0x0a) || line.includes(0x0d)).toBe(false);
          expect(() => strict.decode(line)).not.toThrow();
        }
      }),
    ));

  test("a 75-octet line stays whole and a 76-octet one is folded", () => {
    const lineOf = (letters: number): readonly string[] =>
      fileOf({ ...event, description: "x".repeat(letters) })
        .split("\r\n")
        .filter((line) => /^(DESCRIPTION:x| x)/.test(line));
    expect(lineOf(63).map((line) => line.length)).toEqual([75]);
    expect(lineOf(64).map((line) => line.length)).toEqual([75, 2]);
  });

  test("commas, semicolons, backslashes and line breaks are escaped as the standard has it", () => {
    const lines = fileOf({ ...event, summary: "a,b;c\\d\ne\u0007" }).split("\r\n");
    expect(lines).toContain(String.raw`SUMMARY:a\,b\;c\\d\ne`);
  });
});

describe("refusals", () => {
  test.each([
    ["an empty uid", { uid: "" }, /uid must not be empty/],
    ["a falling sequence", { sequence: -1 }, /found -1/],
    ["half a sequence", { sequence: 0.5 }, /found 0.5/],
    ["no duration", { durationMin: 0 }, /found 0/],
    ["a time that is no time", { startMs: Number.NaN }, /found NaN/],
    ["a year past 9999", { startMs: 8e15 }, /years 1 to 9999/],
  ])("%s is refused", (_, change, says) => {
    expect(() => fileOf({ ...event, ...change })).toThrow(says);
  });
});

function splitAtCrlf(octets: Uint8Array): readonly Uint8Array[] {
  const lines: Uint8Array[] = [];
  let from = 0;
  for (let i = 0; i + 1 < octets.length; i++) {
    if (octets[i] !== 0x0d || octets[i + 1] !== 0x0a) continue;
    lines.push(octets.subarray(from, i));
    from = i + 2;
  }
  expect(from).toBe(octets.length);
  return lines;
}
