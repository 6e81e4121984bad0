import type { EntryBodies } from "../../../logbook/entries/entry.ts";
import type { Shop } from "../../../logbook/piece/piece.ts";
import type { CoatKind } from "../../../trade/coats.ts";
import { finalDryH, leastDryH, type FinalDryPlace } from "../../../trade/dryMinimums.ts";
import { figureOrNull, type DraftOf, type ReadOf } from "../../base/forms/formFields.ts";

const remedy = "Leave it empty for the starting value.";
const coat = figureOrNull("leastDryH", { what: "minimum drying time", remedy });
const final = figureOrNull("finalDryH", { what: "minimum final dry", remedy });

/** Minimum hours as they are typed; null where the starting value serves. */
export const minimumsFields = {
  prime: coat,
  intermediate: coat,
  backup: coat,
  seal: coat,
  open: final,
  deep: final,
  blind: final,
} satisfies Record<CoatKind | FinalDryPlace, typeof coat>;
export type MinimumsDraft = DraftOf<typeof minimumsFields>;

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
export const minimumsBody = ({
  open,
  deep,
  blind,
  ...kinds
}: ReadOf<typeof minimumsFields>): EntryBodies["shop-figures-set"] => ({
  leastDryH: kinds,
  finalDryH: { open, deep, blind },
});
