import type { Standing } from "../../../logbook/piece/standing.ts";
import { dateFormat } from "../../base/format/formatters.ts";
import { coatWords } from "../../base/format/coatWords.ts";
import type { Format } from "../../base/format/units.ts";
import { evidenceWords } from "./evidenceWords.ts";

export type CoatLine = {
  readonly id: string;
  readonly number: number;
  readonly coat: string;
  /** How it departs from the recipe; null where it does not. */
  readonly departs: string | null;
  /** Null where it is not known: on before the log began. */
  readonly dippedAt: number | null;
  readonly mm: number | null;
  readonly isBeforeLog: boolean;
  readonly evidence: string;
};

/** The coats as a review lists them: what went on, against what the recipe asks, and how dry each was. */
export function coatLines(
  { piece, recipe, drying, wall, now }: Standing,
  format: Format,
): readonly CoatLine[] {
  return piece.coats.map((coat, at) => {
    const over = piece.coats[at + 1] ?? null;
    const dried = drying.find((one) => one.coat.id === coat.id) ?? null;
    const asked = coat.step === null ? null : (recipe?.coats[coat.step] ?? null);
    const same = asked !== null && asked.kind === coat.kind && asked.stuccoId === coat.stuccoId;
    return {
      id: coat.id,
      number: coat.number,
      coat: coatWords(coat) + (coat.redips.length > 0 ? ", dipped again" : ""),
      departs:
        recipe === null || same
          ? null
          : asked === null
            ? "extra coat"
            : `the recipe says ${coatWords(asked)}`,
      dippedAt: coat.beforeLog === "undated" ? null : coat.dippedAt,
      isBeforeLog: coat.beforeLog !== undefined,
      mm: wall.perCoatMm[at] ?? null,
      evidence:
        dried === null
          ? "not known"
          : evidenceWords(dried, {
              format,
              now,
              accepted: over?.acceptedDamp?.coatId === coat.id,
            }),
    };
  });
}

/** "13 Nov 18:40": a sheet of paper knows no yesterday. */
export function shortDateTime(at: number, locale: string, { year = false } = {}): string {
  return dateFormat(locale, {
    ...(year ? { year: "numeric" } : {}),
    day: "numeric",
    month: "short",
    hour: "2-digit",
    minute: "2-digit",
  })
    .format(at)
    .replaceAll(",", "");
}
