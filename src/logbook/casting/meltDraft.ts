import { elements, type Contents, type Element } from "../../physics/metal/scrap.ts";
import type { ChargeItem as WeighedIn } from "../entries/fireBodies.ts";
import type { Shop } from "../piece/piece.ts";
import { ownAlloy } from "../shop/ownAlloy.ts";
import { metalContentsOf } from "../../trade/metals/contents.ts";
import { usualChargeKind, type ChargeKind } from "../../trade/metals/losses.ts";
import { symbolOf } from "../../trade/elementSymbols.ts";
import type { Limits } from "./limits.ts";

/** What an assay or a sheet says of one element, shares 0–1; one figure alone is both ends. */
export type AssayLine = {
  readonly element: Element;
  readonly low: number | null;
  readonly high: number | null;
};

export type ItemKind = "alloy" | "pure" | "unknown-copper" | "unknown-aluminium" | "assay";

export type ItemDraft = {
  readonly key: number;
  readonly name: string;
  readonly massKg: number | null;
  readonly kind: ItemKind;
  readonly alloyId: string | null;
  readonly element: Element;
  readonly assay: readonly AssayLine[];
  /** What the assay leaves is this. */
  readonly rest: Element;
  /** Might it hold beryllium: only asked of copper whose make is not known. */
  readonly springy: "yes" | "no" | null;
};

export type MeltDraft = {
  readonly alloyId: string | null;
  readonly furnaceId: string | null;
  readonly pieceIds: readonly string[];
  readonly items: readonly ItemDraft[];
  readonly pourC: number | null;
  readonly start: "hot" | "cold";
  /** Null where it follows from what is weighed in. */
  readonly chargeKind: ChargeKind | null;
  readonly lossShare: number | null;
  readonly note: string;
};

export const itemLimits: Limits<ItemDraft> = { massKg: { low: 0.001, high: 2000 } };
export const meltLimits: Limits<MeltDraft> = {
  pourC: { low: 100, high: 2200 },
  lossShare: { low: 0, high: 0.6 },
};

export const newItem = (key: number, alloyId: string | null, name: string): ItemDraft => ({
  key,
  name,
  massKg: null,
  kind: alloyId === null ? "unknown-copper" : "alloy",
  alloyId,
  element: "cu",
  assay: [],
  rest: "cu",
  springy: null,
});

export const newMelt: MeltDraft = {
  alloyId: null,
  furnaceId: null,
  pieceIds: [],
  items: [],
  pourC: null,
  start: "cold",
  chargeKind: null,
  lossShare: null,
  note: "",
};

/** What a melt is charged with: as it was said, else returns where scrap is weighed in, else clean ingot. */
export function chargeKindOf({ chargeKind, items }: Pick<MeltDraft, "chargeKind" | "items">): ChargeKind {
  if (chargeKind !== null) return chargeKind;
  const isScrap = ({ kind }: ItemDraft): boolean => kind !== "alloy" && kind !== "pure";
  return items.some(isScrap) ? "mixed-returns" : usualChargeKind;
}

/** What may be in copper or aluminium scrap nobody knows: wide enough for what is sold in them. Judgement. */
const unknown: Readonly<Record<"unknown-copper" | "unknown-aluminium", Contents>> = {
  "unknown-copper": {
    cu: { low: 0.5, high: 1 },
    sn: { low: 0, high: 0.15 },
    zn: { low: 0, high: 0.42 },
    pb: { low: 0, high: 0.15 },
    al: { low: 0, high: 0.12 },
    si: { low: 0, high: 0.05 },
    ni: { low: 0, high: 0.3 },
    fe: { low: 0, high: 0.05 },
    mn: { low: 0, high: 0.05 },
    sb: { low: 0, high: 0.01 },
    as: { low: 0, high: 0.005 },
    bi: { low: 0, high: 0.03 },
    p: { low: 0, high: 0.005 },
    s: { low: 0, high: 0.003 },
    other: { low: 0, high: 0.02 },
  },
  "unknown-aluminium": {
    al: { low: 0.75, high: 1 },
    si: { low: 0, high: 0.18 },
    cu: { low: 0, high: 0.07 },
    mg: { low: 0, high: 0.1 },
    zn: { low: 0, high: 0.08 },
    fe: { low: 0, high: 0.02 },
    mn: { low: 0, high: 0.015 },
    ni: { low: 0, high: 0.025 },
    sn: { low: 0, high: 0.01 },
    pb: { low: 0, high: 0.01 },
    ti: { low: 0, high: 0.003 },
    cr: { low: 0, high: 0.004 },
    other: { low: 0, high: 0.01 },
  },
};

/** What an item can hold; null where nothing is said of it yet. */
export function contentsOfItem(item: ItemDraft, shop: Pick<Shop, "alloys">): Contents | null {
  switch (item.kind) {
    case "alloy": {
      const row = item.alloyId === null ? null : ownAlloy(item.alloyId, shop);
      return row === null ? null : metalContentsOf(row.id);
    }
    case "pure":
      return { [item.element]: { low: 1, high: 1 } };
    case "unknown-copper":
    case "unknown-aluminium":
      return unknown[item.kind];
    case "assay":
      return assayContents(item);
  }
}

function assayContents({ assay, rest }: ItemDraft): Contents | null {
  const read = assay.flatMap(({ element, low, high }) => {
    const [from, to] = [low ?? high, high ?? low];
    return from === null || to === null || element === rest
      ? []
      : [[element, { low: Math.min(from, to), high: Math.max(from, to) }] as const];
  });
  return read.length === 0 ? null : { ...Object.fromEntries(read), [rest]: { low: 0, high: 1 } };
}

/** True where it may hold beryllium, or nobody has answered yet. */
export const mayHoldBeryllium = ({ kind, springy }: ItemDraft): boolean =>
  (kind === "unknown-copper" || springy === "yes") && springy !== "no";

export function nameOfItem(item: ItemDraft, alloyNamed: (id: string) => string): string {
  if (item.name.trim() !== "") return item.name.trim();
  switch (item.kind) {
    case "alloy":
      return item.alloyId === null ? "Ingot" : alloyNamed(item.alloyId);
    case "pure":
      return `Pure ${symbolOf(item.element)}`;
    case "unknown-copper":
      return "Copper scrap, not known";
    case "unknown-aluminium":
      return "Aluminium scrap, not known";
    case "assay":
      return "Scrap with an assay";
  }
}

/** As the log keeps it; an item without a weight is left out. */
export const weighedIn = (
  items: readonly ItemDraft[],
  alloyNamed: (id: string) => string,
): readonly WeighedIn[] =>
  items.flatMap((item) =>
    item.massKg === null || !(item.massKg > 0)
      ? []
      : [
          {
            name: nameOfItem(item, alloyNamed),
            massKg: item.massKg,
            alloyId: item.kind === "alloy" ? item.alloyId : null,
          },
        ],
  );

/** Elements to choose from, as a person would look for them. */
export const elementChoices = elements.map((element) => ({ value: element, label: symbolOf(element) }));
