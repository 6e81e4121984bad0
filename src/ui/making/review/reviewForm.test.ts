import { expect, test } from "vitest";
import type { Finding, Level, RuleId } from "../../../rules/finding.ts";
import { signedReview } from "./reviewForm.ts";

const finding = (rule: RuleId, level: Level, entry: string): Finding => ({
  rule,
  variant: "plain",
  level,
  figures: {},
  texts: {},
  entries: [entry],
  source: "common practice, no source",
});
const leftEar = finding("open-crack", "hold", "crack-1");
const base = finding("open-crack", "hold", "crack-2");
const old = finding("air-reading-old", "watch", "reading-1");

test("a clear review is signed with a name alone", () =>
  expect(
    signedReview({ name: " Ada ", reasons: {} }, { findings: [], verdict: "clear", safety: 3.4 }),
  ).toEqual({ ok: true, value: { name: "Ada", verdict: "clear", passed: [], safety: 3.4 } }));

test("no one signs without a name", () => {
  const read = signedReview({ name: " ", reasons: {} }, { findings: [], verdict: "clear", safety: null });
  expect(!read.ok && read.errors["name"]).toMatch(/^Found no name/);
});

test("each of two cracks asks for its own reason, and a watch for none", () => {
  const read = signedReview(
    { name: "Ada", reasons: { "open-crack/plain/crack-1": "hairline, ground out" } },
    { findings: [leftEar, base, old], verdict: "hold", safety: 3 },
  );
  expect(!read.ok && Object.keys(read.errors)).toEqual(["reasons.open-crack/plain/crack-2"]);
});

test("a hold passed with its reasons keeps each beside its rule", () => {
  const reasons = { "open-crack/plain/crack-1": "ground out", "open-crack/plain/crack-2": "in the cup only" };
  const read = signedReview(
    { name: "Ada", reasons },
    { findings: [leftEar, base], verdict: "hold", safety: null },
  );
  expect(read.ok && read.value.passed).toEqual([
    { rule: "open-crack", reason: "ground out" },
    { rule: "open-crack", reason: "in the cup only" },
  ]);
});

test("a reason of blanks is no reason", () => {
  const reasons = { "open-crack/plain/crack-1": "   " };
  expect(signedReview({ name: "Ada", reasons }, { findings: [leftEar], verdict: "hold", safety: 3 }).ok).toBe(
    false,
  );
});
