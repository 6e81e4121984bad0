import type { Bucket } from "../../../logbook/piece/piece.ts";
import type { CoatDrying, CoverAnswer } from "../../../logbook/piece/standing.ts";
import type { CoatKind } from "../../../trade/coats.ts";
import { kindWords, stuccoWords } from "../../base/format/coatWords.ts";
import { dryBy } from "../../base/format/coverWords.ts";
import { noReadyWords } from "../../base/format/readyWords.ts";
import { atTime, soonTime } from "../../base/format/time.ts";
import type { DipPlan, WantedDip } from "../../../logbook/dip/dipPlan.ts";
import type { DipTile } from "./dipTile.ts";

/** How the tile marks the last coat: a shape and a word each, never a colour alone. */
export type LastState = "first" | "dry" | "maybe" | "wet" | "unknown";

const share = (left: number): string => `about ${Math.max(1, Math.round(left * 100))}\u00a0%`;

export function lastState(cover: CoverAnswer | null): LastState {
  if (cover === null) return "first";
  return ({ dry: "dry", check: "maybe", drying: "wet", unknown: "unknown" } as const)[cover.state];
}

/** The last coat in words, said before the tap: "Coat 4 NOT DRY – about 40 % of its water left". When is in the lead above. */
export function lastWords(
  { last, cover }: Pick<DipTile, "last" | "cover">,
  now: number,
  locale: string,
): string {
  if (last === null || cover === null) return "First coat";
  const coat = `Coat ${last.coat.number}`;
  const { checkAt, dryAt, by, reason } = cover;
  const latest = dryAt === null ? "" : `; dry ${atTime(dryAt, now, locale)} at the latest`;
  const unread = last.basis.readings === 0 ? " (room not logged: average air assumed)" : "";
  switch (cover.state) {
    case "dry":
      return by === "air" || by === "minimum" ? `${coat} is dry${unread}` : `${coat} is dry ${dryBy(by)}`;
    case "check":
      return `${coat} likely dry – check it${latest}${unread}`;
    case "drying": {
      if (by === "minimum" && last.verdict === "dry") return `${coat} is dry by the air, too soon to cover`;
      const water =
        last.evidence?.says === "wet"
          ? seenWords(last)
          : last.leftShare === null || last.verdict === "dry"
            ? "water still in"
            : `${share(last.leftShare)} of its water left`;
      const when = checkAt !== null || reason === null ? "" : `; ${noReadyWords(reason)}`;
      return `${coat} NOT DRY – ${water}${when}`;
    }
    case "unknown":
      return `${coat}: dryness not known${reason === null ? "" : ` – ${noReadyWords(reason)}`}`;
  }
}

function seenWords({ evidence }: CoatDrying): string {
  if (evidence === null) return "";
  const verdict = evidence.says === "dry" ? "dry" : "damp";
  switch (evidence.seen.method) {
    case "touch":
      return evidence.says === "dry" ? "felt dry" : `felt ${evidence.seen.verdict}`;
    case "weight":
      return `${verdict} by its weight`;
    case "surface":
      return `${verdict} by its surface temperature`;
    case "colour":
      return `${verdict} by its colour`;
    case "resistance":
      return `${verdict} by its resistance`;
    case "bag":
      return `${verdict} by the bag`;
  }
}

/** "Coat 5 · backup · 16–30": what the tap logs. */
export function coatTitle({ coat }: Pick<DipTile, "coat">): string {
  const stucco = coat.stuccoId === null ? "no stucco" : stuccoWords(coat.stuccoId).replace(/ mesh$/, "");
  return `Coat ${coat.number} · ${kindWords[coat.kind]} · ${stucco}`;
}

/** What is odd about giving this coat to this piece; null when the recipe agrees. */
export function beyondRecipeWords(tile: Pick<DipTile, "recipeWants" | "beyondRecipe">): string | null {
  if (tile.recipeWants !== null) return `Recipe: ${kindWords[tile.recipeWants]}`;
  return tile.beyondRecipe ? "Recipe is complete – one extra coat" : null;
}

export function doneWords(
  coat: { readonly number: number; readonly dippedAt: number },
  now: number,
  locale: string,
): string {
  return `Coat ${coat.number} done ${soonTime(coat.dippedAt, now, locale)}`;
}

/** "4 pieces ready, 2 still drying, 1 on hold": what a choice of dip would serve. */
export function wantedWords({ ready, drying, held }: Pick<WantedDip, "ready" | "drying" | "held">): string {
  const [first, ...others] = [
    { count: ready, says: "ready" },
    { count: drying, says: "still drying" },
    { count: held, says: "on hold" },
  ].filter(({ count }) => count > 0);
  if (first === undefined) return "no piece ready";
  const lead = `${first.count} ${first.count === 1 ? "piece" : "pieces"} ${first.says}`;
  return [lead, ...others.map(({ count, says }) => `${count} ${says}`)].join(", ");
}

export const kindTitle = (kind: CoatKind): string =>
  kindWords[kind].slice(0, 1).toUpperCase() + kindWords[kind].slice(1);

/** "Backup from “Tall bucket”", or the kind alone where the bucket is called the same. */
export function planTitle(plan: DipPlan, buckets: readonly Bucket[]): string {
  const name = buckets.find((bucket) => bucket.id === plan.bucketId)?.name;
  const title = kindTitle(plan.kind);
  return name === undefined || name.toLowerCase() === title.toLowerCase() ? title : `${title} from “${name}”`;
}
