import { builtInShop } from "../piece/builtIns.ts";
import { effective } from "../log/effective.ts";
import type { Entry, EntryBodies, EntryOf } from "../entries/entry.ts";
import { isOfKind, type EntryIn } from "../entries/entryKinds.ts";
import { dated } from "../log/lastOf.ts";
import type { Shop } from "../piece/piece.ts";

/** The shop's own figures and things. A figure left out of an entry stays, null clears it; a thing set again is replaced whole. */
export const foldShop = (entries: readonly Entry[]): Shop => shopFrom(effective(entries));

/** The same from the entries that stand, in order. */
export const shopFrom = (standing: readonly Entry[]): Shop =>
  standing.filter((entry) => isOfKind(entry, "shop")).reduce<Shop>(evolveShop, builtInShop);

function evolveShop(shop: Shop, entry: EntryIn<"shop">): Shop {
  switch (entry.type) {
    case "shop-figures-set":
      return { ...shop, ...figuresOf(shop, entry.body) };
    case "drying-pair-judged":
      return { ...shop, pairsLeftOut: pairsLeftOut(shop, entry) };
    case "cup-set": {
      const { cupId: id, ...cup } = entry.body;
      return { ...shop, cups: withThing(shop.cups, { ...cup, ...inUse(cup), id }) };
    }
    case "material-set": {
      const { materialId: id, ...material } = entry.body;
      return { ...shop, materials: withThing(shop.materials, { ...material, ...inUse(material), id }) };
    }
    case "kiln-set": {
      const { kilnId: id, ...kiln } = entry.body;
      return { ...shop, kilns: withThing(shop.kilns, { ...kiln, ...inUse(kiln), id }) };
    }
    case "furnace-set": {
      const { furnaceId: id, ...furnace } = entry.body;
      return { ...shop, furnaces: withThing(shop.furnaces, { ...furnace, ...inUse(furnace), id }) };
    }
    case "alloy-set": {
      const { alloyId: id, ...alloy } = entry.body;
      return { ...shop, alloys: withThing(shop.alloys, { ...alloy, ...inUse(alloy), id }) };
    }
    case "stock-moved":
      return { ...shop, stockMoves: [...shop.stockMoves, dated(entry)] };
    case "shrink-measured":
      return { ...shop, shrinks: [...shop.shrinks, dated(entry)] };
  }
}

function figuresOf(shop: Shop, body: EntryBodies["shop-figures-set"]): Partial<Shop> {
  const { dryingFactor = shop.dryingFactor, morMPa = shop.morMPa } = body;
  return {
    dryingFactor,
    morMPa,
    slurryKgM2: changed(shop.slurryKgM2, body.slurryKgM2),
    stuccoKgM2: changed(shop.stuccoKgM2, body.stuccoKgM2),
    buildMm: changed(shop.buildMm, body.buildMm),
    leastDryH: changed(shop.leastDryH ?? {}, body.leastDryH),
    finalDryH: changed(shop.finalDryH ?? {}, body.finalDryH),
    bucketLimits: changed(shop.bucketLimits ?? {}, body.bucketLimits),
  };
}

/** Own figures with what an entry says of them: null takes one out, what is left out stays. */
function changed<K extends string>(
  own: { readonly [P in K]?: number | undefined },
  told: { readonly [P in K]?: number | null | undefined } = {},
): { readonly [P in K]?: number | undefined } {
  const given = Object.entries<number | null | undefined>(told).filter(([, figure]) => figure !== undefined);
  const all = Object.entries<number | null | undefined>({ ...own, ...Object.fromEntries(given) });
  return Object.fromEntries(all.filter(([, figure]) => figure !== null)) as typeof own;
}

function pairsLeftOut(
  { pairsLeftOut: others }: Shop,
  { id, at, body: { coatId, leftOut, reason } }: EntryOf<"drying-pair-judged">,
): Shop["pairsLeftOut"] {
  const rest = others.filter((pair) => pair.coatId !== coatId);
  return leftOut ? [...rest, { id, at, coatId, reason }] : rest;
}

const inUse = ({ retired = false }: { readonly retired?: boolean | undefined }) => ({ retired });

/** The list with this thing in it: in the place it has, or at the end. */
function withThing<T extends { readonly id: string }>(things: readonly T[], thing: T): readonly T[] {
  const known = things.some(({ id }) => id === thing.id);
  return known ? things.map((one) => (one.id === thing.id ? thing : one)) : [...things, thing];
}
