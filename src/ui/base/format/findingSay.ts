import type { FigureUnit, Finding } from "../../../rules/finding.ts";
import type { RuleId } from "../../../rules/finding.ts";
import type { VariantOf } from "../../../rules/variants.ts";
import { saidThenWords } from "./saidThenWords.ts";
import { atTime } from "./time.ts";
import type { Format, Quantity } from "./units.ts";
import { counts } from "../words/counts.ts";
import { weighWords } from "./weighWords.ts";

export type FindingText = { readonly title: string; readonly says: string; readonly remedy: string };

/** What words ask of a finding: its figures in the user's units, and its texts. */
export type Say = {
  readonly format: Format;
  /** The figure with its unit; "not known" where there is none. */
  readonly show: (name: string) => string;
  readonly isKnown: (name: string) => boolean;
  readonly has: (name: string) => boolean;
  readonly value: (name: string) => number;
  readonly text: (name: string) => string;
  /** When to weigh so that it can tell, and on what scale. */
  readonly weigh: () => string;
  /** What was said at the dip and what is known since; empty where nothing was kept. */
  readonly saidThen: () => string;
  /** "at 06:00", "tomorrow 06:00": a moment seen from the finding's `now`. */
  readonly time: (name: string) => string;
  /** "1 coat", "3 coats". */
  readonly coats: (name: string) => string;
  /** A text that lists things with commas, taken apart. */
  readonly list: (name: string) => readonly string[];
  /** "Coat 5", "Coats 2, 3 and 5", "Coats 6 to 9". */
  readonly coatsIn: (name: string) => string;
};

export type WordsOf<R extends RuleId> = Readonly<Record<VariantOf<R>, (say: Say) => FindingText>>;

const quantityOf: Readonly<Record<FigureUnit, Quantity>> = {
  share: "percent",
  mm: "mm",
  MPa: "MPa",
  Pa: "kPa",
  C: "temp",
  K: "tempDiff",
  "K/h": "rate",
  m: "m",
  N: "N",
  litre: "litre",
  kg: "kg",
  h: "h",
  min: "min",
  count: "plain",
  factor: "plain",
  "epoch-ms": "plain",
};

const weighAnyhow = "Weigh it twice, as far apart as the weigh page says: the same weight then means dry.";

export function sayOf(
  { figures, texts, weigh, said }: Pick<Finding, "figures" | "texts" | "weigh" | "said">,
  format: Format,
): Say {
  const valueOf = (name: string): number | null => figures[name]?.value ?? null;
  const show = (name: string): string => {
    const found = figures[name];
    if (found === undefined || found.value === null) return "not known";
    const canonical = found.unit === "Pa" ? found.value / 1000 : found.value;
    return format.show(quantityOf[found.unit], canonical);
  };
  const list = (name: string): readonly string[] =>
    (texts[name] ?? "").split(", ").filter((one) => one !== "");
  return {
    format,
    show,
    isKnown: (name) => valueOf(name) !== null,
    has: (name) => name in figures,
    value: (name) => valueOf(name) ?? 0,
    text: (name) => texts[name] ?? "",
    weigh: () => (weigh === undefined ? weighAnyhow : weighWords(weigh.toTell, weigh.now, format)),
    saidThen: () => (said === undefined ? "" : saidThenWords(said.kept, said.now, format)),
    time: (name) => timeOf(valueOf(name), valueOf("now") ?? 0, format.locale),
    coats: (name) => counts.coats(valueOf(name) ?? 0),
    list,
    coatsIn: (name) => `${list(name).length === 1 ? "Coat" : "Coats"} ${joined(inRanges(list(name)))}`,
  };
}

/** Three numbers or more that follow one another as one item, "6 to 9"; the others as they are. */
function inRanges(items: readonly string[]): readonly string[] {
  const runs: string[][] = [];
  for (const item of items) {
    const last = runs.at(-1);
    if (last !== undefined && Number(item) === Number(last.at(-1)) + 1) last.push(item);
    else runs.push([item]);
  }
  return runs.flatMap((run) => (run.length < 3 ? run : [`${run[0]} to ${run.at(-1)}`]));
}

/** "2", "2 and 3", "2, 3 and 5". */
const joined = (items: readonly string[]): string =>
  items.length < 2 ? items.join("") : `${items.slice(0, -1).join(", ")} and ${items.at(-1)}`;
const timeOf = (at: number | null, now: number, locale: string): string =>
  at === null ? "at no known time" : atTime(at, now, locale);
