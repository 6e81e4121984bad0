import type { BucketCheck, BucketHealth } from "../../../physics/slurry/bucketHealth.ts";
import type { HealthCode, HealthReason } from "../../../physics/slurry/bucketJudge.ts";
import type { Format, Quantity } from "./units.ts";
import { slurryHealth as t, healthTexts, checkTexts } from "../words/slurryHealth.ts";

type Level = BucketHealth["level"];

/** The verdict in words; the shape beside it says the same. */
export const healthWords: Readonly<Record<Level, string>> = healthTexts;

type CodeWords = {
  /** As part of a sentence: "its viscosity was out of range". */
  readonly was: string;
  /** In a list of reasons, without figures. */
  readonly is: string;
  readonly quantity: Quantity | "cfu" | "days" | null;
  readonly act: string;
};

const codes: Readonly<Record<HealthCode, CodeWords>> = {
  "not-checked-today": {
    was: t["codes.not-checked-today.was"],
    is: t["codes.not-checked-today.is"],
    quantity: null,
    act: t["codes.not-checked-today.act"],
  },
  "temperature-off": {
    was: t["codes.temperature-off.was"],
    is: t["codes.temperature-off.is"],
    quantity: "temp",
    act: t["codes.temperature-off.act"],
  },
  "temperature-not-its-own": {
    was: t["codes.temperature-not-its-own.was"],
    is: t["codes.temperature-not-its-own.is"],
    quantity: "temp",
    act: t["codes.temperature-not-its-own.act"],
  },
  "frozen-or-hot": {
    was: t["codes.frozen-or-hot.was"],
    is: t["codes.frozen-or-hot.is"],
    quantity: "temp",
    act: t["codes.frozen-or-hot.act"],
  },
  "seconds-out-of-band": {
    was: t["codes.seconds-out-of-band.was"],
    is: t["codes.seconds-out-of-band.is"],
    quantity: "s",
    act: t["codes.seconds-out-of-band.act"],
  },
  "chart-signal": {
    was: t["codes.chart-signal.was"],
    is: t["codes.chart-signal.is"],
    quantity: "plain",
    act: t["codes.chart-signal.act"],
  },
  "density-off": {
    was: t["codes.density-off.was"],
    is: "Density",
    quantity: "density",
    act: t["codes.density-off.act"],
  },
  "pH-off": {
    was: t["codes.pH-off.was"],
    is: "pH",
    quantity: "plain",
    act: t["codes.pH-off.act"],
  },
  "pH-too-low": {
    was: t["codes.pH-too-low.was"],
    is: t["codes.pH-too-low.is"],
    quantity: "plain",
    act: t["codes.pH-too-low.act"],
  },
  "pH-meter": {
    was: t["codes.pH-meter.was"],
    is: t["codes.pH-meter.is"],
    quantity: "plain",
    act: t["codes.pH-meter.act"],
  },
  "pH-sinking": {
    was: t["codes.pH-sinking.was"],
    is: t["codes.pH-sinking.is"],
    quantity: "plain",
    act: t["codes.pH-sinking.act"],
  },
  "liquor-silica-off": {
    was: t["codes.liquor-silica-off.was"],
    is: t["codes.liquor-silica-off.is"],
    quantity: "percent",
    act: t["codes.liquor-silica-off.act"],
  },
  "gels-early": {
    was: t["codes.gels-early.was"],
    is: t["codes.gels-early.is"],
    quantity: "h",
    act: t["codes.gels-early.act"],
  },
  "gel-test-short": {
    was: t["codes.gel-test-short.was"],
    is: t["codes.gel-test-short.is"],
    quantity: "h",
    act: t["codes.gel-test-short.act"],
  },
  "plate-off": {
    was: t["codes.plate-off.was"],
    is: t["codes.plate-off.is"],
    quantity: null,
    act: t["codes.plate-off.act"],
  },
  bacteria: {
    was: t["codes.bacteria.was"],
    is: t["codes.bacteria.is"],
    quantity: "cfu",
    act: t["codes.bacteria.act"],
  },
  "foul-smell": {
    was: t["codes.foul-smell.was"],
    is: t["codes.foul-smell.is"],
    quantity: null,
    act: t["codes.foul-smell.act"],
  },
  "looks-wrong": {
    was: t["codes.looks-wrong.was"],
    is: t["codes.looks-wrong.is"],
    quantity: null,
    act: t["codes.looks-wrong.act"],
  },
  old: {
    was: t["codes.old.was"],
    is: t["codes.old.is"],
    quantity: "days",
    act: t["codes.old.act"],
  },
  "not-mixed-enough": {
    was: t["codes.not-mixed-enough.was"],
    is: t["codes.not-mixed-enough.is"],
    quantity: "h",
    act: t["codes.not-mixed-enough.act"],
  },
  "readings-not-steady": {
    was: t["codes.readings-not-steady.was"],
    is: t["codes.readings-not-steady.is"],
    quantity: null,
    act: t["codes.readings-not-steady.act"],
  },
};

/** "Viscosity out of range: 31 s, 20–26 s wanted". */
export function reasonWords(
  { code, found, low, high }: HealthReason,
  format: Pick<Format, "show" | "number">,
): { readonly says: string; readonly act: string } {
  const { is, quantity, act } = codes[code];
  if (quantity === null || found === null) return { says: `${is}.`, act };
  const show = (value: number): string => {
    if (quantity === "cfu") return format.number(value, 0);
    return quantity === "days"
      ? t["reason.says"]({ part: format.number(value, 0) })
      : format.show(quantity, value);
  };
  const joint = quantity === "plain" || code.startsWith("gel") ? " " : ": ";
  return { says: `${is}${joint}${show(found)}${wantedWords(low, high, show)}.`, act };
}

function wantedWords(low: number | null, high: number | null, show: (value: number) => string): string {
  if (low !== null && high !== null)
    return t["wanted.rangeShowToShow"]({ show: show(low), show2: show(high) });
  if (low !== null) return t["wanted.minimumShow"]({ show: show(low) });
  return high === null ? "" : t["wanted.maximumShow"]({ show: show(high) });
}

/** Codes as a finding passes them on, as one part of a sentence. */
export function wereWords(joined: string): string {
  const were = joined.split(" ").flatMap((code) => (isCode(code) ? [codes[code].was] : []));
  const last = were.at(-1);
  if (last === undefined) return t["were.itWasOutOf"];
  return were.length === 1 ? last : t["were.listAndLast"]({ list: were.slice(0, -1).join(", "), last });
}

const isCode = (code: string): code is HealthCode => Object.hasOwn(codes, code);

export const checkWords: Readonly<Record<BucketCheck, string>> = checkTexts;
