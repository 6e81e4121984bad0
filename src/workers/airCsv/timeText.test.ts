import { expect, test } from "vitest";
import type { DateOrder } from "./airCsvPlan.ts";
import { readTimeText } from "./timeText.ts";

const read = (text: string, order: DateOrder = "dmy"): string => {
  const time = readTimeText(text, order);
  if (typeof time === "string") return time;
  const offset = time.offsetMs === null ? "" : ` ${time.offsetMs / 3_600_000}`;
  return new Date(time.localMs).toISOString().slice(0, 19) + offset;
};

test.each([
  ["2025-06-07T08:05:09", "dmy", "2025-06-07T08:05:09"],
  ["2025-06-07 08:05:09.250Z", "mdy", "2025-06-07T08:05:09 0"],
  ["2025-06-07T08:05+05:30", "dmy", "2025-06-07T08:05:00 5.5"],
  ["2025/6/7 8:05", "dmy", "2025-06-07T08:05:00"],
  ["20250607T080509Z".replace("080509", "08:05:09"), "dmy", "2025-06-07T08:05:09 0"],
  ["07.06.2025 08:05", "dmy", "2025-06-07T08:05:00"],
  ["07.06.2025 08.05.30", "dmy", "2025-06-07T08:05:30"],
  ["06/07/2025 08:05", "mdy", "2025-06-07T08:05:00"],
  ["06/07/25, 8:05 PM", "mdy", "2025-06-07T20:05:00"],
  ["06/07/25 12:05 am", "mdy", "2025-06-07T00:05:00"],
  ["06/07/25 12:05 p.m.", "mdy", "2025-06-07T12:05:00"],
  ["25-06-07 08:05", "ymd", "2025-06-07T08:05:00"],
  ["7 Jun 2025 08:05", "mdy", "2025-06-07T08:05:00"],
  ["07-June-25 08:05", "mdy", "2025-06-07T08:05:00"],
  ["Jun 7, 2025 8:05 AM", "dmy", "2025-06-07T08:05:00"],
  ["Saturday, 7 June 2025 08:05", "mdy", "2025-06-07T08:05:00"],
  ["08:05 07.06.2025", "dmy", "2025-06-07T08:05:00"],
  ["07.06.2025", "dmy", "2025-06-07T00:00:00"],
  ["31/12/2024 24:00", "dmy", "2025-01-01T00:00:00"],
] as const)("%s in order %s is %s", (text, order, wanted) => expect(read(text, order)).toBe(wanted));

test.each(["31/02/2025 08:00", "2025-13-01 08:00", "29/02/2025", "00/06/2025"])(
  "%s is no day there is",
  (text) => expect(read(text)).toBe("no-such-date"),
);

test.each([
  "",
  "now",
  "22.5",
  "12:30",
  "07.06.2025 25:00",
  "07.06.2025 08:61",
  "07.06.2025 13:00 pm",
  "07.06.2025 8 o'clock",
  "1,2,3",
])("%j is no time", (text) => expect(read(text)).toBe("not-a-time"));
