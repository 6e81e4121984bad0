import { z } from "zod";
import type { BucketTargets } from "../../../logbook/entries/bucketBodies.ts";
import type { EntryBodies } from "../../../logbook/entries/entry.ts";
import type { Bucket } from "../../../logbook/piece/piece.ts";
import { ranges } from "../../../logbook/entries/ranges.ts";
import type { Format } from "../../base/format/units.ts";
import { figureOrNone, oneOf, withoutEmpty, words } from "../../base/forms/fieldSchema.ts";

export type BucketUse = EntryBodies["bucket-set"]["use"];
export const bucketUses = [
  { value: "prime", label: "Prime", hint: "Fine flour, the face of the casting." },
  { value: "backup", label: "Backup", hint: "The coats that carry." },
  { value: "single", label: "One for all", hint: "A single slurry for every coat." },
  { value: "seal", label: "Seal", hint: "The last dip, without stucco." },
] as const satisfies readonly { value: BucketUse; label: string; hint: string }[];

export type AimsDraft = {
  readonly flourId: string | null;
  readonly flourGCm3: number | null;
  readonly solGCm3: number | null;
  readonly solSilica: number | null;
  readonly ratio: number | null;
  readonly densityGCm3: number | null;
  readonly cupId: string | null;
  readonly lowS: number | null;
  readonly highS: number | null;
  readonly slurryC: number | null;
  readonly fullL: number | null;
  readonly leastL: number | null;
  readonly openM2: number | null;
  readonly leastDryH: number | null;
};
export type BucketDraft = AimsDraft & {
  readonly name: string;
  readonly use: BucketUse | null;
  readonly slurry: string;
};

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

const remedy = "Correct it, or leave it empty if it is not known.";

export function bucketSchema(format: Format): z.ZodType<EntryBodies["bucket-set"]> {
  const seconds = (what: string) => figureOrNone(format, { what, quantity: "s", range: ranges.cupS, remedy });
  const litres = (what: string) =>
    figureOrNone(format, { what, quantity: "litre", range: ranges.bucketL, remedy });
  const density = (what: string, range: { readonly low: number; readonly high: number }) =>
    figureOrNone(format, { what, quantity: "density", range, remedy });
  return z
    .object({
      name: words("name", "Write what stands on the bucket.", 120),
      use: oneOf(["prime", "backup", "single", "seal"], "what it is for"),
      slurry: z
        .string()
        .trim()
        .max(200, { error: "Found more than 200 letters, expected fewer. Shorten it." }),
      flourId: z.string().nullable(),
      flourGCm3: density("flour density", ranges.flourGCm3),
      solGCm3: density("binder density", ranges.densityGCm3),
      solSilica: figureOrNone(format, { what: "silica", quantity: "percent", range: ranges.silica, remedy }),
      ratio: figureOrNone(format, { what: "ratio", quantity: "plain", range: ranges.ratio, remedy }),
      densityGCm3: density("density", ranges.densityGCm3),
      cupId: z.string().nullable(),
      lowS: seconds("lower end"),
      highS: seconds("upper end"),
      slurryC: figureOrNone(format, { what: "temperature", quantity: "temp", range: ranges.slurryC, remedy }),
      fullL: litres("full mark"),
      leastL: litres("least"),
      openM2: figureOrNone(format, { what: "open surface", quantity: "m2", range: ranges.openM2, remedy }),
      leastDryH: figureOrNone(format, {
        what: "minimum drying time",
        quantity: "h",
        range: ranges.leastDryH,
        remedy: "Leave it empty for the shop's.",
      }),
    })
    .superRefine(({ lowS, highS, fullL, leastL }, context) => {
      const complain = (path: string, message: string): void =>
        context.addIssue({ code: "custom", path: [path], message });
      if (lowS !== null && highS !== null && highS < lowS)
        complain("highS", `Found ${format.show("s", highS)}, expected ${format.show("s", lowS)} or more.`);
      if ((lowS === null) !== (highS === null))
        complain(lowS === null ? "lowS" : "highS", "Found one end of the band only. Give both, or neither.");
      if (fullL !== null && leastL !== null && leastL > fullL)
        complain("leastL", `Found more than the full ${format.show("litre", fullL)}, expected less.`);
    })
    .transform(({ name, use, slurry, ...aims }) => {
      const told = Object.fromEntries(
        Object.entries(aims).map(([key, value]) => [key, value ?? undefined]),
      ) as Partial<EntryBodies["bucket-set"]>;
      return withoutEmpty({ ...told, name, use, slurry });
    });
}
