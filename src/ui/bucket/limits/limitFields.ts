import { countedBucketLimits, startingBucketLimits } from "../../../logbook/bucket/bucketLimits.ts";
import {
  bucketLimitPairs,
  type BucketLimitKey,
  type OwnBucketLimits,
} from "../../../logbook/entries/bucketLimitRules.ts";
import type { EntryBodies } from "../../../logbook/entries/entry.ts";
import { fieldWords } from "../../base/format/fieldWords.ts";
import type { Format } from "../../base/format/units.ts";
import { checkFields, figureOrNull, type Checked, type DraftOf } from "../../base/forms/formFields.ts";

type Row = readonly [key: BucketLimitKey, label: string];
export type LimitGroup = { readonly title: string; readonly rows: readonly Row[] };

/** The limits as they stand on the page, subject by subject. */
export const limitGroups: readonly LimitGroup[] = [
  {
    title: "Temperature",
    rows: [
      ["fitLowC", "OK from"],
      ["fitHighC", "OK up to"],
      ["stopLowC", "Do not dip below"],
      ["stopHighC", "Do not dip above"],
      ["ownOffK", "Off target: check"],
    ],
  },
  {
    title: "Density, off target",
    rows: [
      ["lightFitGCm3", "Light flour: check"],
      ["lightStopGCm3", "Light flour: do not dip"],
      ["heavyFitGCm3", "Zircon: check"],
      ["heavyStopGCm3", "Zircon: do not dip"],
    ],
  },
  {
    title: "pH",
    rows: [
      ["fitLowPH", "OK from"],
      ["fitHighPH", "OK up to"],
      ["stopPH", "Do not dip below"],
      ["meterPH", "Check the meter above"],
      ["weekDropPH", "Drop in a week: check"],
    ],
  },
  {
    title: "Binder",
    rows: [
      ["fitSilica", "Silica off its start: check"],
      ["lowestSilica", "Silica below its start: do not dip"],
      ["highestSilica", "Silica above its start: do not dip"],
      ["fitGelH", "Gel test: OK from"],
      ["stopGelH", "Gel test: do not dip below"],
      ["fitBacteria", "Bacteria per mL: check"],
      ["stopBacteria", "Bacteria per mL: do not dip"],
    ],
  },
  {
    title: "Plate and age",
    rows: [
      ["fitPlateShare", "Plate weight off: check"],
      ["stopPlateShare", "Plate weight off: do not dip"],
      ["oldDays", "Check age after (days)"],
      ["tooOldDays", "Too old after (days)"],
      ["weeklyShare", "Age counts if less than this is replaced a week"],
    ],
  },
  {
    title: "Mixing before dipping",
    rows: [
      ["primeMadeH", "New prime"],
      ["backupMadeH", "New backup"],
      ["flourAddedH", "After flour was added"],
      ["waterAddedH", "After water was added"],
    ],
  },
];

const keys = Object.keys(startingBucketLimits) as BucketLimitKey[];
const field = (key: BucketLimitKey) =>
  figureOrNull(key, { what: fieldWords(key).name, remedy: "Leave it empty for the typical value." });
type Fields = { readonly [K in BucketLimitKey]: ReturnType<typeof field> };

/** Each limit as it is typed; null where the typical value serves. */
export const limitFields = Object.fromEntries(keys.map((key) => [key, field(key)])) as Fields;
export type LimitsDraft = DraftOf<Fields>;

export const draftOfLimits = (own: OwnBucketLimits = {}): LimitsDraft =>
  Object.fromEntries(keys.map((key) => [key, own[key] ?? null])) as LimitsDraft;

/** A limit as the page shows it beside its field. */
export const limitText = (key: BucketLimitKey, value: number, format: Format): string =>
  format.show(fieldWords(key).quantity, value);

/** Form to body: all are told, an empty one as null. Of two that belong together none may pass the other, typed or typical. */
export function readLimits(
  draft: LimitsDraft,
  format: Format,
): Checked<NonNullable<EntryBodies["shop-figures-set"]["bucketLimits"]>> {
  return checkFields(limitFields, draft, format, (typed) => {
    const given = Object.fromEntries(Object.entries(typed).filter(([, value]) => value !== null));
    const counted = countedBucketLimits(given);
    const errors: { [K in BucketLimitKey]?: string } = {};
    for (const [low, high] of bucketLimitPairs) {
      if (counted[low] <= counted[high]) continue;
      // Said at the one that was typed; where both were, at the upper one.
      const at = typed[high] === null ? low : high;
      const [found, bound] = at === high ? [counted[high], counted[low]] : [counted[low], counted[high]];
      errors[at] ??=
        `Found ${limitText(at, found, format)}, expected ${limitText(at, bound, format)} or ${at === high ? "more" : "less"}.`;
    }
    return errors;
  });
}
