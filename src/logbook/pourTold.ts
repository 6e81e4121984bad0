import type { StuccoFamily } from "../trade/shellThermal.ts";
import { shellThermal } from "../trade/shellThermal.ts";

/** What a person told for a pour that no log has: a plan keeps it, so that every device reckons alike. */
export type PourTold = {
  readonly family: StuccoFamily;
  readonly people: number;
  /** From the kiln's door to metal, min. */
  readonly carryMin: number;
  /** Melted metal at hand where no melt is named; null where nobody said. */
  readonly metalKg: number | null;
  /** Thinnest section of each shell, in the order of the plan's pieces; null where nobody said. */
  readonly thinnestMm: readonly (number | null)[];
};

export const startingTold: PourTold = {
  family: "fused-silica",
  people: 2,
  carryMin: 1.5,
  metalKg: null,
  thinnestMm: [],
};

const opening = "Planned with: ";
const short = (value: number): string => String(Number(value.toPrecision(6)));

/** What was told as the first line of the plan's note, what a person wrote below it. */
export function toldNote(told: PourTold, words = ""): string {
  const parts = [
    `stucco ${told.family}`,
    `people ${short(told.people)}`,
    `carry ${short(told.carryMin)} min`,
    ...(told.metalKg === null ? [] : [`metal ${short(told.metalKg)} kg`]),
    ...(told.thinnestMm.every((mm) => mm === null)
      ? []
      : [`thinnest ${told.thinnestMm.map((mm) => (mm === null ? "?" : short(mm))).join(" / ")} mm`]),
  ];
  return [`${opening}${parts.join("; ")}`, ...(words.trim() === "" ? [] : [words.trim()])].join("\n");
}

/** What a note tells; the starting values where it tells nothing. */
export function readTold(note: string | undefined): PourTold {
  const [line = ""] = (note ?? "").split("\n");
  if (!line.startsWith(opening)) return startingTold;
  const parts = line.slice(opening.length).split("; ");
  const after = (key: string): string | null =>
    parts.find((part) => part.startsWith(`${key} `))?.slice(key.length + 1) ?? null;
  const number = (key: string): number | null => figureOf(after(key));
  const family = after("stucco");
  return {
    family: isFamily(family) ? family : startingTold.family,
    people: Math.min(20, Math.max(1, number("people") ?? startingTold.people)),
    carryMin: Math.min(60, number("carry") ?? startingTold.carryMin),
    metalKg: number("metal"),
    thinnestMm: (after("thinnest") ?? "").split(" / ").map(figureOf),
  };
}

const isFamily = (text: string | null): text is StuccoFamily =>
  text !== null && Object.hasOwn(shellThermal, text);

function figureOf(text: string | null): number | null {
  const value = text === null ? Number.NaN : Number.parseFloat(text);
  return Number.isFinite(value) && value > 0 ? value : null;
}

/** What a person wrote in the plan's note. */
export function pourWords(note: string | undefined): string {
  if (note?.startsWith(opening) !== true) return note ?? "";
  return note.split("\n").slice(1).join("\n");
}
