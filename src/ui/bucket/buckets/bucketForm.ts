import type { BucketTargets } from "../../../logbook/entries/bucketBodies.ts";
import type { EntryBodies } from "../../../logbook/entries/entry.ts";
import type { Bucket } from "../../../logbook/piece/piece.ts";
import type { Format } from "../../base/format/units.ts";
import {
  checkFields,
  figureOrNone,
  givenOrNone,
  oneOf,
  shortWords,
  withoutEmpty,
  words,
  type Checked,
  type DraftOf,
} from "../../base/forms/formFields.ts";
import type { EntryForm } from "../../base/forms/useEntryForm.ts";

export type BucketUse = EntryBodies["bucket-set"]["use"];
export const bucketUses = [
  { value: "prime", label: "Prime", hint: "Fine flour, for the face of the casting." },
  { value: "backup", label: "Backup", hint: "Coats that build thickness." },
  { value: "single", label: "Single-slurry system", hint: "One slurry for every coat." },
  { value: "seal", label: "Seal", hint: "The last dip, without stucco." },
] as const satisfies readonly { value: BucketUse; label: string; hint: string }[];

const remedy = "Correct it, or leave it empty if it is not known.";

/** What a bucket should read and what it is made of. */
const aimsFields = {
  flourId: givenOrNone<string>(),
  flourGCm3: figureOrNone("flourGCm3", { what: "flour density", remedy }),
  solGCm3: figureOrNone("solGCm3", { what: "binder density", remedy }),
  solSilica: figureOrNone("solSilica", { what: "silica", remedy }),
  ratio: figureOrNone("ratio", { what: "ratio", remedy }),
  densityGCm3: figureOrNone("densityGCm3", { what: "density", remedy }),
  cupId: givenOrNone<string>(),
  lowS: figureOrNone("lowS", { what: "lower end", remedy }),
  highS: figureOrNone("highS", { what: "upper end", remedy }),
  slurryC: figureOrNone("slurryC", { what: "temperature", remedy }),
  fullL: figureOrNone("fullL", { what: "full mark", remedy }),
  leastL: figureOrNone("leastL", { what: "least", remedy }),
  openM2: figureOrNone("openM2", { what: "open surface", remedy }),
  leastDryH: figureOrNone("leastDryH", {
    what: "minimum drying time",
    remedy: "Leave it empty for the shop's.",
  }),
};
export const bucketFields = {
  name: words("name", "Write what is marked on the bucket.", 120),
  use: oneOf(["prime", "backup", "single", "seal"], "what it is for"),
  slurry: shortWords(200, "Found more than 200 letters, expected fewer. Shorten it."),
  ...aimsFields,
};
export type AimsDraft = DraftOf<typeof aimsFields>;
export type BucketForm = EntryForm<typeof bucketFields, unknown>;
type BucketDraft = DraftOf<typeof bucketFields>;

export function draftOfBucket(bucket: Bucket | null): BucketDraft {
  const targets: BucketTargets = bucket?.targets ?? {};
  return {
    name: bucket?.name ?? "",
    use: bucket?.use ?? null,
    slurry: bucket?.slurry ?? "",
    flourId: targets.flourId ?? null,
    flourGCm3: targets.flourGCm3 ?? null,
    solGCm3: targets.solGCm3 ?? null,
    solSilica: targets.solSilica ?? null,
    ratio: targets.ratio ?? null,
    densityGCm3: targets.densityGCm3 ?? null,
    cupId: targets.cupId ?? null,
    lowS: targets.lowS ?? null,
    highS: targets.highS ?? null,
    slurryC: targets.slurryC ?? null,
    fullL: targets.fullL ?? null,
    leastL: targets.leastL ?? null,
    openM2: targets.openM2 ?? null,
    leastDryH: targets.leastDryH ?? null,
  };
}

export function readBucket(draft: BucketDraft, format: Format): Checked<EntryBodies["bucket-set"]> {
  const read = checkFields(bucketFields, draft, format, ({ lowS, highS, fullL, leastL }) => {
    const errors: { lowS?: string; highS?: string; leastL?: string } = {};
    if (lowS !== undefined && highS !== undefined && highS < lowS)
      errors.highS = `Found ${format.show("s", highS)}, expected ${format.show("s", lowS)} or more.`;
    if ((lowS === undefined) !== (highS === undefined))
      errors[lowS === undefined ? "lowS" : "highS"] = "Enter both ends of the range, or neither.";
    if (fullL !== undefined && leastL !== undefined && leastL > fullL)
      errors.leastL = `Found more than the full ${format.show("litre", fullL)}, expected less.`;
    return errors;
  });
  return read.ok ? { ok: true, value: withoutEmpty(read.value) } : read;
}
