import { coatMm } from "../../../logbook/drying/coatMm.ts";
import type { Coat } from "../../../logbook/piece/piece.ts";
import type { CoatDrying, CoverAnswer, Standing } from "../../../logbook/piece/standing.ts";
import type { CoatKind } from "../../../trade/coats.ts";
import { stuccoOf } from "../../../trade/stuccos.ts";

/** The outer coat by its drying now; a covered one by what it was when the next went on. */
export type Wetness = CoatDrying["verdict"] | "covered-damp" | "covered-maybe" | "covered-unknown";

export type WallBand = {
  readonly coat: Coat;
  readonly fromMm: number;
  readonly toMm: number;
  readonly wetness: Wetness;
  readonly grainMm: { readonly fine: number; readonly coarse: number } | null;
};

/** The coats as bands, from the pattern outward, each as thick as it is calculated to be. */
export function wallBands({ piece, wall, drying, cover }: Standing): readonly WallBand[] {
  let fromMm = 0;
  return piece.coats.map((coat, place) => {
    const toMm = fromMm + (wall.perCoatMm[place] ?? 0);
    const stucco = coat.stuccoId === null ? null : stuccoOf(coat.stuccoId);
    const band: WallBand = {
      coat,
      fromMm,
      toMm,
      wetness: wetnessOf(
        drying.find((each) => each.coat.id === coat.id),
        place === piece.coats.length - 1 ? cover : null,
      ),
      grainMm: stucco === null ? null : { fine: stucco.fineMm, coarse: stucco.coarseMm },
    };
    fromMm = toMm;
    return band;
  });
}

function wetnessOf(drying: CoatDrying | undefined, cover: CoverAnswer | null): Wetness {
  if (cover !== null) return outerAs[cover.state];
  return drying === undefined ? "covered-unknown" : coveredAs[drying.verdict];
}

const outerAs: Record<CoverAnswer["state"], Wetness> = {
  dry: "dry",
  check: "maybe",
  drying: "wet",
  unknown: "unknown",
};

const coveredAs: Record<CoatDrying["verdict"], Wetness> = {
  dry: "dry",
  maybe: "covered-maybe",
  wet: "covered-damp",
  unknown: "covered-unknown",
};

export const wetnessWords: Record<Wetness, string> = {
  dry: "dry",
  maybe: "perhaps dry",
  wet: "wet",
  unknown: "dryness not known",
  "covered-damp": "covered while damp",
  "covered-maybe": "perhaps dry when covered",
  "covered-unknown": "not known when covered",
};

export type ComingBand = {
  readonly step: number;
  readonly kind: CoatKind;
  readonly fromMm: number;
  readonly toMm: number;
};

/** The coats the recipe still asks for, as thick as the shop's own figures or the table say; none once the shell has been to the fire. */
export function comingBands({ piece, next, recipe, wall, shop }: Standing): readonly ComingBand[] {
  if (next === null || recipe === null || piece.phase !== "coating") return [];
  let fromMm = wall.perCoatMm.reduce((sum, mm) => sum + mm, 0);
  return recipe.coats.slice(next.step).map((coat, place) => {
    const toMm = fromMm + coatMm(coat, shop.buildMm);
    const band = { step: next.step + place, kind: coat.kind, fromMm, toMm };
    fromMm = toMm;
    return band;
  });
}

/** What lies behind the first coat. */
export function coreOf({ piece }: Standing): "pattern" | "hollow" | "metal" {
  if (piece.pours.length > 0) return "metal";
  const { phase } = piece;
  const burnt = phase === "dewaxed" || phase === "burnt-out" || phase === "fired" || phase === "preheated";
  return burnt || piece.coats.at(-1)?.afterBurnout === true ? "hollow" : "pattern";
}
