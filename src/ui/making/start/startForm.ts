import type { MadeBefore } from "../../../logbook/acts/startPiece.ts";
import type { CoatKind } from "../../../trade/coats.ts";
import type { Format } from "../../base/format/units.ts";
import {
  asGiven,
  checkFields,
  figureOrNull,
  words,
  type Checked,
  type DraftOf,
  type ReadOf,
} from "../../base/forms/formFields.ts";

export const startFields = {
  name: words("name", "Give the piece a name.", 120),
  recipeId: asGiven<string | null>(null),
  /** The mesh it is begun from. */
  patternId: asGiven<string | null>(null),
  again: asGiven<MadeBefore | null>(null),
  /** Coats that are on already. */
  coatsOn: figureOrNull("coatNumber", {
    what: "coats on it",
    remedy: "Count them, or leave it empty for a bare pattern.",
  }),
  /** Kinds put right by hand, by their place; the others are the recipe's. */
  kinds: asGiven<Readonly<Record<number, CoatKind>>>({}),
  lastAt: asGiven<number | null>(null),
  startedAt: asGiven<number | null>(null),
};
type StartDraft = DraftOf<typeof startFields>;

/** A whole number of coats, and with it when the last of them went on. */
export const readStart = (draft: StartDraft, format: Format): Checked<ReadOf<typeof startFields>> =>
  checkFields(startFields, draft, format, ({ coatsOn, lastAt }) => {
    if (coatsOn === null) return {};
    if (!Number.isInteger(coatsOn))
      return { coatsOn: `Found ${format.number(coatsOn, 1)} coats, expected a whole number.` };
    return lastAt === null
      ? { lastAt: "Found no time for the last coat. Give the day and the hour; a good guess will do." }
      : {};
  });
