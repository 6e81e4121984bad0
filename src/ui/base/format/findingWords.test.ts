import { expect, test } from "vitest";
import { givenCoated, givenPiece, knownPlan } from "../../../../tests/givenPiece.ts";
import { findingsFor, reviewFindingsFor } from "../../../rules/all.ts";
import type { Finding, Figure, RuleId } from "../../../rules/finding.ts";
import { figure } from "../../../rules/finding.ts";
import { lastCoatDamp } from "../../../rules/lastCoatDamp.ts";
import { variants } from "../../../rules/variants.ts";
import { findingText } from "./findingWords.ts";
import { makeFormat } from "./units.ts";

const metric = makeFormat("metric", "en-GB");
const us = makeFormat("us", "en-US");

/** Every figure any rule gives, so that each text finds what it asks for. */
const figures: Readonly<Record<string, Figure>> = {
  coat: figure(3, "count"),
  over: figure(4, "count"),
  last: figure(3, "count"),
  coats: figure(2, "count"),
  count: figure(2, "count"),
  days: figure(8, "count"),
  coatsToAdd: figure(4, "count"),
  litre: figure(1.2, "litre"),
  liftN: figure(73, "N"),
  holdN: figure(40, "N"),
  needN: figure(121, "N"),
  moreCoats: figure(4, "count"),
  ribEveryMm: figure(150, "mm"),
  sandCoats: figure(2, "count"),
  sandCoverMm: figure(75, "mm"),
  headM: figure(0.21, "m"),
  lyingHeadM: figure(0.15, "m"),
  panels: figure(2, "count"),
  panelWidthMm: figure(150, "mm"),
  panelLengthMm: figure(400, "mm"),
  leftShare: figure(0.4, "share"),
  stoodH: figure(1.5, "h"),
  neededH: figure(3.2, "h"),
  likelyInH: figure(1.7, "h"),
  lateInH: figure(4.1, "h"),
  ageH: figure(7, "h"),
  limitH: figure(6, "h"),
  bareH: figure(30, "h"),
  likelyMm: figure(7.6, "mm"),
  lowMm: figure(6.1, "mm"),
  highMm: figure(9.5, "mm"),
  neededMm: figure(12.5, "mm"),
  floorMm: figure(6.5, "mm"),
  grainMm: figure(0.6, "mm"),
  limitMm: figure(0.3, "mm"),
  ratio: figure(5.8, "factor"),
  limit: figure(0.8, "share"),
  pressure: figure(30_600, "Pa"),
  fullMPa: figure(4, "MPa"),
  usedMPa: figure(2, "MPa"),
  rh: figure(0.84, "share"),
  airC: figure(21, "C"),
  fromC: figure(20, "C"),
  toC: figure(24, "C"),
  swingK: figure(4, "K"),
  limitK: figure(1.7, "K"),
  dropK: figure(6.3, "K"),
  peakC: figure(750, "C"),
  holdMin: figure(20, "min"),
  limitC: figure(800, "C"),
  limitMin: figure(30, "min"),
  shellC: figure(350, "C"),
  leastC: figure(400, "C"),
  outMin: figure(8, "min"),
  alloy: figure(null, "count"),
  hours: figure(12, "h"),
  dryAt: figure(Date.UTC(2026, 3, 10, 6), "epoch-ms"),
  now: figure(Date.UTC(2026, 3, 9, 22), "epoch-ms"),
  damp: figure(0.7, "share"),
  head: figure(null, "m"),
  part: figure(null, "mm"),
};
const texts = {
  where: "left ear",
  kind: "open",
  stucco: "16–30 mesh",
  under: "80–120 mesh",
  which: "3, 4",
  accepted: "4",
  damp: "3, 4",
  bucket: "Tall bucket",
  codes: "seconds-out-of-band pH-sinking",
  reason: "one coat to go",
  shell: "Open shell",
  place: "hollow or deep recess",
};

const every = (Object.keys(variants) as RuleId[]).flatMap((rule) =>
  variants[rule].map((variant): Finding => ({
    rule,
    variant,
    level: "watch",
    figures,
    texts,
    entries: [],
    source: "test",
  })),
);
const whole = (finding: Finding, format = metric): string =>
  Object.values(findingText(finding, format)).join(" ");

test.each(every)("$rule has words for $variant: what, how much, and what to do", (finding) => {
  const text = findingText(finding, metric);
  expect(text.title).toMatch(/^[A-Z][^.]{6,70}$/);
  expect(text.says).toMatch(/^[A-Z\d].*\.$/);
  expect(text.remedy).toMatch(/^[A-Z].*\.$/);
});

test.each(every)("$rule $variant has no hole in its words, with numbers or without", (finding) => {
  const blank = Object.fromEntries(
    Object.entries(figures).map(([name, { unit }]) => [name, figure(null, unit)]),
  );
  for (const one of [finding, { ...finding, figures: blank }])
    for (const format of [metric, us])
      expect(whole(one, format)).not.toMatch(/undefined|null|NaN|\[object|Infinity| {2}|\.\./);
});

const promises =
  /\b(safe|safely|safety is|guarantee\w*|certain\w*|surely will|will hold|will carry|no risk|no danger|approved|permitted|allowed|cleared|free to|good to go|you may|can be poured|ok)\b/i;

test.each(every)("$rule $variant promises nothing", (finding) => {
  expect(whole(finding)).not.toMatch(promises);
});

test("the test of promises would catch one", () => {
  expect("This shell is safe to pour.").toMatch(promises);
  expect("The wall will hold.").toMatch(promises);
  expect("You may pour now.").toMatch(promises);
});

test("every hold says to stop or to wait, and how to find out or to mend", () => {
  const holds: readonly (readonly [RuleId, string])[] = [
    ["recoated-before-dry", "wet"],
    ["wall-too-thin", "fails"],
    ["wall-too-thin", "thin"],
    ["air-too-damp", "final"],
    ["recipe-not-followed", "left-out"],
    ["last-coat-damp", "hours"],
    ["last-coat-damp", "air"],
    ["last-coat-damp", "damp-air"],
    ["last-coat-damp", "unknown"],
    ["open-crack", "open"],
    ["open-crack", "patch-not-dry"],
    ["fired-too-little", "not-bonded"],
  ];
  for (const [rule, variant] of holds) {
    const found = every.find((one) => one.rule === rule && one.variant === variant);
    if (found === undefined) throw new Error(`${rule} ${variant} is not in the list`);
    expect(findingText(found, metric).remedy).toMatch(/\b(weigh|feel|caliper|dry|log|add|mend|fire)\b/i);
  }
});

test("an open shell in its last hours is told how long, until when and what to do", () => {
  const found = lastCoatDamp(givenCoated().standing(90))[0];
  expect(found && findingText(found, metric)).toEqual({
    title: "Last coat not dry for fire",
    says: expect.stringMatching(/^Open shell: 12\sh since the seal dip end (at|tomorrow) \d\d:00\.$/),
    remedy: expect.stringMatching(/^Wait, or weigh it\. /),
  });
});

test("each missing number is named with how to measure it, and one that is known is not", () => {
  const piece = givenPiece({ alloyId: "c87300" });
  const found = findingsFor(piece.standing(1)).find(({ rule }) => rule === "cannot-judge-wall");
  if (found === undefined) throw new Error("the wall was judged without a head");
  const { says, remedy } = findingText(found, metric);
  expect(says).toContain("the head");
  expect(remedy).toContain("lip of the cup");
  expect(remedy).toContain("widest flat");
  expect(says).toMatch(/^Not entered: the head, the weakest part of the shell\.$/);
  expect(remedy).not.toContain("alloy");
});

test("a number nobody knows is said to be not known, never nought", () => {
  const short = every.find(({ rule, variant }) => rule === "fired-too-little" && variant === "short");
  if (short === undefined) throw new Error("no words for a short firing");
  const says = findingText({ ...short, figures: { ...figures, peakC: figure(null, "C") } }, metric).says;
  expect(says).toMatch(/^Fired to not known for 20.min;/);
});

test("numbers come in the units of the user", () => {
  const finding = every.find(({ rule, variant }) => rule === "fired-too-little" && variant === "cool");
  if (finding === undefined) throw new Error("no words for a cool firing");
  expect(whole(finding, metric)).toContain("750 °C".replace(" ", "\u00a0"));
  expect(whole(finding, us)).toContain("1,382 °F".replace(" ", "\u00a0"));
});

test("a hold that was passed tells the reason that was given", () => {
  const [first] = every;
  if (first === undefined) throw new Error("no findings");
  const text = findingText({ ...first, texts: { ...texts, passedBecause: "tested with a bar" } }, metric);
  expect(text.says).toMatch(/Passed at the review: tested with a bar$/);
});

test("a damp recoat reads as a maker would say it", () => {
  const piece = givenPiece(knownPlan);
  piece.air(0.5);
  piece.coat(1);
  piece.coat(1.2);
  const [found] = findingsFor(piece.standing(1.3)).filter(({ rule }) => rule === "recoated-before-dry");
  if (found === undefined) throw new Error("nothing found");
  const { title, says, remedy } = findingText(found, metric);
  expect(title).toBe("Coat 1 was damp when you dipped coat 2");
  expect(says).toMatch(
    /^It hung 0\.2.h and needed about 0\.\d.h; about \d\d% of its water was left\. That weakens it: /,
  );
  expect(remedy).toMatch(/^No more coats and no fire yet\. /);
});

test("several coats are named in one sentence", () => {
  const of = (which: string): string => {
    const found = every.find(({ rule, variant }) => rule === "recoated-before-dry" && variant === "maybe");
    if (found === undefined) throw new Error("no words for a coat that was perhaps damp");
    return findingText({ ...found, texts: { which, accepted: "" } }, metric).title;
  };
  expect(of("3")).toBe("Coat 3 may have been damp when you dipped coat 4");
  expect(of("2, 3")).toBe("Coats 2 and 3 may have been damp under the next coat");
  expect(of("2, 3, 5")).toBe("Coats 2, 3 and 5 may have been damp under the next coat");
});

test("a recipe that falls short says what it gives, what is needed and how many coats to add", () => {
  const piece = givenPiece({ ...knownPlan, headM: 1, part: { kind: "round", diameterMm: 300 } });
  const [found] = findingsFor(piece.standing(1));
  if (found?.variant !== "plan-short") throw new Error("the recipe was long enough");
  const { says, remedy } = findingText(found, metric);
  expect(says).toMatch(
    /^Your recipe gives [\d.]+.mm \([\d.]+.mm to [\d.]+.mm\)\. This pour needs [\d.]+.mm\.$/,
  );
  expect(remedy).toMatch(/^Add \d coats?\. Or bring the head down to \d+.mm or less\.$/);
});

const notTheTrade =
  /\b(reckon\w*|surely|told|foretold|needs? hands|nobody|mend\w*|armpit|seconds were|the wall)\b/i;

test.each(every.filter(({ rule }) => rule !== "last-coat-damp"))(
  "$rule $variant is in the words of the trade",
  (finding) => {
    expect(whole(finding)).not.toMatch(notTheTrade);
  },
);

test("no sentence is long", () => {
  for (const finding of every.filter(({ rule }) => rule !== "last-coat-damp"))
    for (const part of Object.values(findingText(finding, metric)))
      for (const sentence of part.split(/(?<=\.) /)) expect(sentence.length).toBeLessThan(150);
});

test("what the rules really find always has words", () => {
  const thin = givenCoated({ headM: 1, part: { kind: "flat", widthMm: 200, lengthMm: 300 } });
  for (const hour of [2, 30, 84.2, 119])
    for (const found of reviewFindingsFor(thin.standing(hour))) expect(whole(found)).not.toMatch(/not known/);
});

test("a way of speaking that no rule has is a programmer's slip", () => {
  const [first] = every;
  if (first === undefined) throw new Error("no findings");
  expect(() => findingText({ ...first, variant: "no such" }, metric)).toThrow(RangeError);
});

test("coats of the recipe that are missing are named with the seal among them, a run of them by its ends", () => {
  const piece = givenPiece(knownPlan);
  piece.coats([1, 8, 16, 25, 34]);
  const found = reviewFindingsFor(piece.standing(60)).find(({ rule }) => rule === "recipe-not-followed");
  expect(found && findingText(found, metric).says).toBe(
    "Neither dipped nor skipped with a reason: coats 6 to 9 of the recipe.",
  );
});
