import type { CoatKind } from "../../trade/coats.ts";
import type { EntryBodies } from "../entries/entry.ts";

type Dated<T> = T & { readonly id: string; readonly at: number };

/** A thing of the shop's own under its id, as it was last set; null in a body is null here, a key left out is not known. */
type Thing<T, Id extends keyof T> = Omit<T, Id | "retired"> & {
  readonly id: string;
  readonly retired: boolean;
};

export type Cup = Thing<EntryBodies["cup-set"], "cupId">;
export type Material = Thing<EntryBodies["material-set"], "materialId">;
export type Kiln = Thing<EntryBodies["kiln-set"], "kilnId">;
export type Furnace = Thing<EntryBodies["furnace-set"], "furnaceId">;
export type OwnAlloy = Thing<EntryBodies["alloy-set"], "alloyId">;
export type StockMove = Dated<EntryBodies["stock-moved"]>;
export type ShrinkMeasured = Dated<EntryBodies["shrink-measured"]>;

/** Own figures by kind of coat; a kind that is absent keeps its starting value. */
export type OwnByKind = { readonly [K in CoatKind]?: number | undefined };
