import { z } from "zod";
import type { EntryBodies } from "../../../logbook/entries/entry.ts";
import type { Shop } from "../../../logbook/piece/piece.ts";
import { ranges } from "../../../logbook/entries/ranges.ts";
import type { CoatKind } from "../../../trade/coats.ts";
import { finalDryH, leastDryH, type FinalDryPlace } from "../../../trade/dryMinimums.ts";
import type { Format } from "../../base/format/units.ts";
import { figureOrNone } from "../../base/forms/fieldSchema.ts";

/** Minimum hours as they are typed; null where the starting value serves. */
export type MinimumsDraft = Readonly<Record<CoatKind | FinalDryPlace, number | null>>;

type Row<K> = { readonly key: K; readonly label: string; readonly startH: number };

export const coatRows: readonly Row<CoatKind>[] = [
  { key: "prime", label: "Prime", startH: leastDryH.prime.value },
  { key: "intermediate", label: "Intermediate", startH: leastDryH.intermediate.value },
  { key: "backup", label: "Backup", startH: leastDryH.backup.value },
  { key: "seal", label: "Seal", startH: leastDryH.seal.value },
];
export const finalRows: readonly Row<FinalDryPlace>[] = [
  { key: "open", label: "Open shell", startH: finalDryH.open.dryAirH.value },
  { key: "deep", label: "Deep or thick shell", startH: finalDryH.deep.dryAirH.value },
  { key: "blind", label: "Blind core", startH: finalDryH.blind.dryAirH.value },
];

export const draftOfMinimums = ({ leastDryH: coat, finalDryH: final }: Shop): MinimumsDraft => ({
  prime: coat?.prime ?? null,
  intermediate: coat?.intermediate ?? null,
  backup: coat?.backup ?? null,
  seal: coat?.seal ?? null,
  open: final?.open ?? null,
  deep: final?.deep ?? null,
  blind: final?.blind ?? null,
});

/** Form to body: all seven are told, an empty one as null, which brings the starting value back. */
export function minimumsSchema(format: Format): z.ZodType<EntryBodies["shop-figures-set"]> {
  const hours = (what: string, range: { readonly low: number; readonly high: number }) =>
    figureOrNone(format, { what, quantity: "h", range, remedy: "Leave it empty for the starting value." });
  const coat = hours("minimum drying time", ranges.leastDryH);
  const final = hours("minimum final dry", ranges.finalDryH);
  return z
    .object({
      prime: coat,
      intermediate: coat,
      backup: coat,
      seal: coat,
      open: final,
      deep: final,
      blind: final,
    })
    .transform(({ open, deep, blind, ...kinds }) => ({ leastDryH: kinds, finalDryH: { open, deep, blind } }));
}
