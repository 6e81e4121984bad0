import type { AirClass } from "../../trade/airClasses.ts";
import type { CoatKind, RecipeBody } from "../../trade/coats.ts";
import type { FinalDryPlace } from "../../trade/dryMinimums.ts";

export type RoomBodies = {
  readonly "room-set": {
    readonly name: string;
    readonly altitudeM: number;
    readonly retired?: boolean | undefined;
  };
  readonly "air-read": {
    readonly airC: number;
    readonly rh: number;
    readonly air: AirClass;
    /** As measured beside it; the room's altitude stands in where it is left out. */
    readonly pressurePa?: number | undefined;
    readonly sensor?: string | undefined;
    readonly note?: string | undefined;
  };
  /**
   * Readings of a logger, packed, spanning no more than a day: whole seconds after the entry's own time, rising,
   * with the values of each. `air` null takes the air movement last logged before each reading.
   */
  readonly "air-logged": {
    readonly source: string;
    readonly air: AirClass | null;
    readonly afterS: readonly number[];
    readonly airC: readonly number[];
    readonly rh: readonly number[];
    readonly pressurePa?: readonly number[] | undefined;
  };
};

export type RecipeBodies = {
  readonly "recipe-set": RecipeBody & {
    readonly copiedFrom?: string | undefined;
    readonly retired?: boolean | undefined;
  };
};

type PerCoatKind = { readonly [K in CoatKind]?: number | null | undefined };

type PerFinalDryPlace = { readonly [P in FinalDryPlace]?: number | null | undefined };

export type MaterialKind = "flour" | "sol" | "stucco" | "water" | "metal" | "other";

/** The shop's own things and figures; each `…-set` replaces the whole of the thing it names. */
export type ShopBodies = {
  readonly "shop-figures-set": {
    /** Own drying factor: real hours divided by the model's. */
    readonly dryingFactor?: number | null | undefined;
    readonly morMPa?: number | null | undefined;
    /** Own figures that stand in for the starting ones, by kind of coat; a kind left out stays. */
    readonly slurryKgM2?: PerCoatKind | undefined;
    readonly stuccoKgM2?: PerCoatKind | undefined;
    readonly buildMm?: PerCoatKind | undefined;
    /** Hours a coat dries at the least before the next one goes on. */
    readonly leastDryH?: PerCoatKind | undefined;
    /** Hours the last coat hangs at the least before fire. */
    readonly finalDryH?: PerFinalDryPlace | undefined;
  };
  /** A pair the drying factor is learned from is left out, or taken in again. */
  readonly "drying-pair-judged": {
    readonly coatId: string;
    readonly leftOut: boolean;
    readonly reason: string;
  };
  /** One cup on the wall: no two give the same seconds. */
  readonly "cup-set": {
    readonly cupId: string;
    readonly name: string;
    /** Its kind in the table of cups. */
    readonly cup: string;
    readonly retired?: boolean | undefined;
  };
  readonly "material-set": {
    readonly materialId: string;
    readonly name: string;
    readonly kind: MaterialKind;
    readonly stuccoId?: string | undefined;
    readonly flourId?: string | undefined;
    readonly pricePerKg?: number | undefined;
    readonly currency?: string | undefined;
    readonly weeksToCome?: number | undefined;
    readonly packKg?: number | undefined;
    readonly keepsMonths?: number | undefined;
    readonly retired?: boolean | undefined;
  };
  readonly "stock-moved": {
    readonly materialId: string;
    readonly how: "received" | "made-up" | "dipped-out" | "lost" | "thrown-away" | "counted";
    /** What moved; for `counted`, what is there. */
    readonly massKg: number;
    readonly bucketId?: string | undefined;
    readonly note?: string | undefined;
  };
  readonly "kiln-set": {
    readonly kilnId: string;
    readonly name: string;
    readonly heat: "electric" | "gas";
    readonly powerKW: number;
    readonly volumeL: number;
    readonly maxC: number;
    readonly maxRampKPerH?: number | undefined;
    readonly pricePerKWh?: number | undefined;
    readonly currency?: string | undefined;
    readonly retired?: boolean | undefined;
  };
  readonly "furnace-set": {
    readonly furnaceId: string;
    readonly name: string;
    readonly heat: "propane" | "natural-gas" | "electric" | "induction";
    readonly powerKW: number;
    /** Share of that power that ends in the metal, 0–1; left out: the starting value for its kind. */
    readonly efficiency?: number | undefined;
    /** Brim volume of the crucible. */
    readonly crucibleL?: number | undefined;
    readonly pricePerKWh?: number | undefined;
    readonly currency?: string | undefined;
    readonly retired?: boolean | undefined;
  };
  /** The shop's own copy of an alloy: what is told stands in for the table's. */
  readonly "alloy-set": {
    readonly alloyId: string;
    readonly copiedFrom: string | null;
    readonly name: string;
    readonly densityKgM3?: number | undefined;
    readonly liquidDensityKgM3?: number | undefined;
    readonly solidusC?: number | undefined;
    readonly liquidusC?: number | undefined;
    readonly pourLowC?: number | undefined;
    readonly pourHighC?: number | undefined;
    readonly shrink?: number | undefined;
    readonly latentJKg?: number | undefined;
    /** Mean from room to liquidus. */
    readonly solidJKgK?: number | undefined;
    readonly liquidJKgK?: number | undefined;
    readonly note?: string | undefined;
    readonly retired?: boolean | undefined;
  };
  readonly "shrink-measured": {
    readonly alloyId: string;
    readonly patternMm: number;
    readonly castingMm: number;
    readonly held: "free" | "restrained";
    readonly pieceId?: string | undefined;
  };
};
