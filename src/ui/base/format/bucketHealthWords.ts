import type { BucketCheck, BucketHealth } from "../../../physics/slurry/bucketHealth.ts";
import type { HealthCode, HealthReason } from "../../../physics/slurry/bucketJudge.ts";
import type { Format, Quantity } from "./units.ts";

type Level = BucketHealth["level"];

/** The verdict in words; the shape beside it says the same. */
export const healthWords: Readonly<Record<Level, string>> = {
  fit: "OK to dip",
  watch: "Check",
  "do-not-dip": "Hold: do not dip",
  "not-checked": "Not checked today",
};

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
    was: "it was not checked that day",
    is: "Viscosity not checked in the last 12 hours, or since it was last changed",
    quantity: null,
    act: "Check it before the first dip.",
  },
  "temperature-off": {
    was: "its temperature was off",
    is: "Slurry temperature",
    quantity: "temp",
    act: "Let it come to room temperature, then check the viscosity.",
  },
  "temperature-not-its-own": {
    was: "it was not at its usual temperature",
    is: "Not at its usual temperature",
    quantity: "temp",
    act: "Let it come back, or correct the viscosity for temperature.",
  },
  "frozen-or-hot": {
    was: "it was close to freezing, or hot",
    is: "Close to freezing, or hot",
    quantity: "temp",
    act: "Frost ruins a silica sol for good. Test it for gelling before anything is dipped.",
  },
  "seconds-out-of-band": {
    was: "its viscosity was out of range",
    is: "Viscosity out of range",
    quantity: "s",
    act: "Check its density too: the two together show whether it needs water.",
  },
  "chart-signal": {
    was: "its chart showed a signal",
    is: "The chart shows a signal, rule",
    quantity: "plain",
    act: "Look at the chart for what to check first. Check again before correcting.",
  },
  "density-off": {
    was: "its density was off",
    is: "Density",
    quantity: "density",
    act: "Tap out the air and weigh again. Then correct by viscosity and density together.",
  },
  "pH-off": {
    was: "its pH was off",
    is: "pH",
    quantity: "plain",
    act: "Check the meter with fresh buffers. Ask the binder's maker what to add.",
  },
  "pH-too-low": {
    was: "its pH was too low",
    is: "pH low enough to gel",
    quantity: "plain",
    act: "Stop, do a gel test, and ask the binder's maker.",
  },
  "pH-meter": {
    was: "its pH reading was not plausible",
    is: "pH higher than a sol has",
    quantity: "plain",
    act: "Check the meter: clean it and calibrate it with fresh buffers.",
  },
  "pH-sinking": {
    was: "its pH was falling",
    is: "pH has fallen within a week by",
    quantity: "plain",
    act: "Check for bacteria and do a gel test.",
  },
  "liquor-silica-off": {
    was: "the silica in its binder was off",
    is: "Silica in the binder",
    quantity: "percent",
    act: "Above target: it lost water. Below: too much water. Correct by composition.",
  },
  "gels-early": {
    was: "its binder gelled early",
    is: "Binder gelled in the oven after",
    quantity: "h",
    act: "Gelling can't be reversed, and thinning hides it. Repeat the test beside fresh sol, then discard the slurry.",
  },
  "gel-test-short": {
    was: "its gel test was stopped early",
    is: "Gel test stopped at",
    quantity: "h",
    act: "Run the next one for two days.",
  },
  "plate-off": {
    was: "its plate weight was off",
    is: "Plate weight off",
    quantity: null,
    act: "Same plate, same drain? Then check viscosity and density.",
  },
  bacteria: {
    was: "bacteria were growing in it",
    is: "Bacteria per millilitre",
    quantity: "cfu",
    act: "Ask the binder's maker which biocide suits it. Clean paddle and rim.",
  },
  "foul-smell": {
    was: "it smelt foul",
    is: "Foul smell",
    quantity: null,
    act: "Bacteria have eaten of it: do a gel test, and ask the binder's maker.",
  },
  "looks-wrong": {
    was: "it had skin, lumps or foam",
    is: "Skin, lumps or foam",
    quantity: null,
    act: "Skim and sieve it, let the foam settle, look again.",
  },
  old: {
    was: "it was old and little used",
    is: "Old, with little fresh slurry added",
    quantity: "days",
    act: "Do a gel test; plan a new batch.",
  },
  "not-mixed-enough": {
    was: "it had not been mixed long enough",
    is: "Mixed too short a time",
    quantity: "h",
    act: "Wait, or take three readings an hour apart. If they agree, it is ready.",
  },
  "readings-not-steady": {
    was: "its readings did not agree yet",
    is: "Three readings do not agree yet",
    quantity: null,
    act: "Keep mixing and check again in an hour.",
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
    return quantity === "days" ? `${format.number(value, 0)} days` : format.show(quantity, value);
  };
  const joint = quantity === "plain" || code.startsWith("gel") ? " " : ": ";
  return { says: `${is}${joint}${show(found)}${wantedWords(low, high, show)}.`, act };
}

function wantedWords(low: number | null, high: number | null, show: (value: number) => string): string {
  if (low !== null && high !== null) return `; range ${show(low)} to ${show(high)}`;
  if (low !== null) return `; minimum ${show(low)}`;
  return high === null ? "" : `; maximum ${show(high)}`;
}

/** Codes as a finding passes them on, as one part of a sentence. */
export function wereWords(joined: string): string {
  const were = joined.split(" ").flatMap((code) => (isCode(code) ? [codes[code].was] : []));
  const last = were.at(-1);
  if (last === undefined) return "it was out of range";
  return were.length === 1 ? last : `${were.slice(0, -1).join(", ")} and ${last}`;
}

const isCode = (code: string): code is HealthCode => Object.hasOwn(codes, code);

export const checkWords: Readonly<Record<BucketCheck, string>> = {
  temperature: "temperature",
  seconds: "viscosity",
  density: "density",
  pH: "pH",
  liquor: "binder density",
  gel: "gel test",
  plate: "plate weight",
  bacteria: "bacteria",
  look: "smell and look",
};
