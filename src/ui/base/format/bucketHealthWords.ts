import type { BucketCheck, BucketHealth } from "../../../physics/slurry/bucketHealth.ts";
import type { HealthCode, HealthReason } from "../../../physics/slurry/bucketJudge.ts";
import type { Format, Quantity } from "./units.ts";

type Level = BucketHealth["level"];

/** The verdict in words; the shape beside it says the same. */
export const healthWords: Readonly<Record<Level, string>> = {
  fit: "Fit to dip",
  watch: "Marginal",
  "do-not-dip": "Do not dip",
  "not-checked": "Not checked today",
};

type CodeWords = {
  /** As part of a sentence: "its seconds were out of the band". */
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
    act: "Let it come to the room; judge the seconds by its own temperature.",
  },
  "temperature-not-its-own": {
    was: "it was not at its usual temperature",
    is: "Not at its usual temperature",
    quantity: "temp",
    act: "Let it come back, or read the seconds as they would be there.",
  },
  "frozen-or-hot": {
    was: "it was close to freezing, or hot",
    is: "Close to freezing, or hot",
    quantity: "temp",
    act: "Frost ruins a silica sol for good. Test it for gelling before anything is dipped.",
  },
  "seconds-out-of-band": {
    was: "its viscosity was out of range",
    is: "Cup seconds out of the band",
    quantity: "s",
    act: "Weigh its density too: the two together tell whether water is the answer.",
  },
  "chart-signal": {
    was: "its chart gave a signal",
    is: "The chart gives a signal, rule",
    quantity: "plain",
    act: "Look at the chart: it says what to check first. Read again before correcting.",
  },
  "density-off": {
    was: "its density was off",
    is: "Density",
    quantity: "density",
    act: "Tap out the air and weigh again; then correct by what seconds and density say together.",
  },
  "pH-off": {
    was: "its pH was off",
    is: "pH",
    quantity: "plain",
    act: "Check the meter with fresh buffers. What to add is the binder maker's to say.",
  },
  "pH-too-low": {
    was: "its pH was too low",
    is: "pH low enough to gel",
    quantity: "plain",
    act: "Stop, do a gel test, and ask the binder maker.",
  },
  "pH-meter": {
    was: "its pH could not be believed",
    is: "pH higher than a sol has",
    quantity: "plain",
    act: "Suspect the meter: clean it and set it with fresh buffers.",
  },
  "pH-sinking": {
    was: "its pH was sinking",
    is: "pH has sunk within a week by",
    quantity: "plain",
    act: "Smell it and look for bacteria; do a gel test.",
  },
  "liquor-silica-off": {
    was: "the silica of its liquor was off",
    is: "Silica in the liquor",
    quantity: "percent",
    act: "Above its start: water was lost. Below: it was watered. Correct by composition.",
  },
  "gels-early": {
    was: "its binder gelled early",
    is: "Binder gelled in the oven after",
    quantity: "h",
    act: "Gelling can't be turned back: thinning hides it. Repeat the test beside fresh sol, then give the bucket up.",
  },
  "gel-test-short": {
    was: "its gel test was broken off early",
    is: "Gel test broken off at",
    quantity: "h",
    act: "Keep the next vial for two days.",
  },
  "plate-off": {
    was: "a plate carried more or less than usual",
    is: "Plate does not carry as usual",
    quantity: null,
    act: "Same plate, same drain? Then look at seconds and density.",
  },
  bacteria: {
    was: "bacteria were growing in it",
    is: "Bacteria a millilitre",
    quantity: "cfu",
    act: "Ask the binder maker what this binder takes; clean paddle and rim.",
  },
  "foul-smell": {
    was: "it smelt foul",
    is: "Foul smell",
    quantity: null,
    act: "Bacteria have eaten of it: do a gel test, and ask the binder maker.",
  },
  "looks-wrong": {
    was: "it had skin, lumps or foam",
    is: "Skin, lumps or foam",
    quantity: null,
    act: "Skim, sieve and let the foam go; look again.",
  },
  old: {
    was: "it was old and little used",
    is: "Old, and little of it replaced",
    quantity: "days",
    act: "Do a gel test; plan a new batch.",
  },
  "not-mixed-enough": {
    was: "it had not been mixed long enough",
    is: "Mixed too short a time",
    quantity: "h",
    act: "Wait, or take three readings an hour apart: if they agree it has settled.",
  },
  "readings-not-steady": {
    was: "its readings had not settled",
    is: "Three readings do not agree yet",
    quantity: null,
    act: "Keep mixing and read again in an hour.",
  },
};

/** "Cup seconds out of the band: 31 s, 20–26 s wanted". */
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
  if (low !== null && high !== null) return `; ${show(low)} to ${show(high)} is its limit`;
  if (low !== null) return `; at least ${show(low)} wanted`;
  return high === null ? "" : `; ${show(high)} is the limit`;
}

/** Codes as a finding passes them on, as one part of a sentence. */
export function wereWords(joined: string): string {
  const were = joined.split(" ").flatMap((code) => (isCode(code) ? [codes[code].was] : []));
  const last = were.at(-1);
  if (last === undefined) return "it was not as it should be";
  return were.length === 1 ? last : `${were.slice(0, -1).join(", ")} and ${last}`;
}

const isCode = (code: string): code is HealthCode => Object.hasOwn(codes, code);

export const checkWords: Readonly<Record<BucketCheck, string>> = {
  temperature: "temperature",
  seconds: "cup seconds",
  density: "density",
  pH: "pH",
  liquor: "liquor density",
  gel: "gel test",
  plate: "plate weight",
  bacteria: "bacteria",
  look: "smell and look",
};
