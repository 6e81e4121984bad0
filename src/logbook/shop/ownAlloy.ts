import type { MeltHeat } from "../../physics/metal/melt.ts";
import { alloyOf, alloys } from "../../trade/metals/alloys.ts";
import type { Alloy, MeltFigures } from "../../trade/metals/alloy.ts";
import type { Published } from "../../trade/published.ts";
import type { Shop } from "../piece/piece.ts";
import type { OwnAlloy } from "./shopThings.ts";

type OwnAlloys = Pick<Shop, "alloys">;

const ownSource = "the shop's own copy";

/**
 * An alloy as this shop knows it: the table's row with what the shop's own copy says in place of it. Its `id` is the
 * table's, so that every other table finds it; null where neither knows it, or a copy names no row it stands on.
 */
export function ownAlloy(alloyId: string, shop: OwnAlloys): Alloy | null {
  const own = copyOf(alloyId, shop);
  const row = alloyOf(own?.copiedFrom ?? alloyId);
  if (own === null || row === null) return row;
  const [solidusC, liquidusC] = inOrder(
    [stand(row.solidusC, own.solidusC), stand(row.liquidusC, own.liquidusC)],
    [row.solidusC, row.liquidusC],
  );
  const [pourLowC, pourHighC] = inOrder(
    [stand(row.pourLowC, own.pourLowC), stand(row.pourHighC, own.pourHighC)],
    [row.pourLowC, row.pourHighC],
  );
  return {
    ...row,
    name: own.name,
    solidKgM3: stand(row.solidKgM3, own.densityKgM3),
    liquidKgM3: stand(row.liquidKgM3, own.liquidDensityKgM3),
    solidusC,
    liquidusC,
    pourLowC,
    pourHighC,
  };
}

/** What melting and freezing sums need of it, the shop's own figures in their places. */
export function ownMeltFigures(alloyId: string, shop: OwnAlloys): MeltFigures | null {
  const own = copyOf(alloyId, shop);
  const row = alloyOf(own?.copiedFrom ?? alloyId);
  if (own === null || row === null) return row;
  return {
    ...row,
    crucibleKgM3: stand(row.crucibleKgM3, own.liquidDensityKgM3),
    shrinkLow: stand(row.shrinkLow, own.shrink),
    shrinkHigh: stand(row.shrinkHigh, own.shrink),
    latentJKg: stand(row.latentJKg, own.latentJKg),
    solidHeatJKgK: stand(row.solidHeatJKgK, own.solidJKgK),
    liquidHeatJKgK: stand(row.liquidHeatJKgK, own.liquidJKgK),
    // The shop's own range is its own for heavy work too: it has no second pair of fields.
    ...ownHeavy(row, own),
  };
}

function ownHeavy(row: MeltFigures, { pourLowC, pourHighC }: OwnAlloy) {
  const [heavyLowC, heavyHighC] = inOrder(
    [stand(row.heavyLowC, pourLowC), stand(row.heavyHighC, pourHighC)],
    [row.heavyLowC, row.heavyHighC],
  );
  return { heavyLowC, heavyHighC };
}

/** What the sum for a melt's heat asks of it; null where it isn't known. */
export function ownMeltHeat(alloyId: string, shop: OwnAlloys): MeltHeat | null {
  const [alloy, row] = [ownAlloy(alloyId, shop), ownMeltFigures(alloyId, shop)];
  if (alloy === null || row === null) return null;
  return {
    liquidusC: alloy.liquidusC.value,
    solidJKgK: row.solidHeatJKgK.value,
    latentJKg: row.latentJKg.value,
    liquidJKgK: row.liquidHeatJKgK.value,
  };
}

/** Its name in this shop; the id itself where nobody knows it. */
export const alloyName = (alloyId: string, shop: OwnAlloys): string =>
  ownAlloy(alloyId, shop)?.name ?? copyOf(alloyId, shop)?.name ?? alloyId;

export type AlloyChoice = {
  readonly id: string;
  readonly name: string;
  /** What other standards and old trades call it, or near it. */
  readonly otherNames: readonly string[];
  readonly isOwn: boolean;
};

/** What can be chosen: the table, and the shop's own copies that are in use. `kept` stays in though it be retired. */
export function alloyChoices(shop: OwnAlloys, kept: string | null = null): readonly AlloyChoice[] {
  const table = alloys.map(({ id, otherNames }) => ({
    id,
    name: alloyName(id, shop),
    otherNames: otherNames.value,
    isOwn: copyOf(id, shop) !== null,
  }));
  const own = shop.alloys
    .filter(({ id, retired }) => alloyOf(id) === null && (!retired || id === kept))
    .filter(({ id }) => ownAlloy(id, shop) !== null)
    .map(({ id, name }) => ({
      id,
      name,
      otherNames: ownAlloy(id, shop)?.otherNames.value ?? [],
      isOwn: true,
    }));
  return [...own, ...table];
}

/** A choice that a word finds, with the other names it was found by: none where its own name holds the word. */
type FoundAlloy = AlloyChoice & { readonly foundBy: readonly string[] };

/** The choices a word is in, by name or by another standard's; capitals, spaces and hyphens don't count. */
export function findAlloys(choices: readonly AlloyChoice[], word: string): readonly FoundAlloy[] {
  const holds = (name: string): boolean => bare(name).includes(bare(word));
  return choices.flatMap((choice) => {
    if (holds(choice.name)) return [{ ...choice, foundBy: [] }];
    const foundBy = choice.otherNames.filter(holds);
    return foundBy.length === 0 ? [] : [{ ...choice, foundBy }];
  });
}

const bare = (name: string): string => name.toLowerCase().replace(/[\s-]/g, "");

/** The shop's copy of that id. A retired copy of a row under the row's own id gives the row back; one of its own id stays known. */
function copyOf(alloyId: string, shop: OwnAlloys): OwnAlloy | null {
  const own = shop.alloys.find(({ id }) => id === alloyId) ?? null;
  return own !== null && own.retired && alloyOf(alloyId) !== null ? null : own;
}

function stand(row: Published, own: number | undefined): Published {
  return own === undefined ? row : { value: own, basis: "own", source: ownSource };
}

/** A pair that two devices have set across each other falls back to the table's. */
function inOrder(
  pair: readonly [Published, Published],
  row: readonly [Published, Published],
): readonly [Published, Published] {
  return pair[0].value <= pair[1].value ? pair : row;
}
