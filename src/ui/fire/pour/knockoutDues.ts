import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import type { Melt, Pour } from "../../../logbook/fire/fireStates.ts";
import type { Shop } from "../../../logbook/piece/piece.ts";
import type { Memo } from "../../../logbook/log/memo.ts";
import { shellCourse } from "../../../logbook/pour/pourCourse.ts";
import { readTold } from "../../../logbook/pour/pourTold.ts";
import { usualKnockoutMin } from "../../../trade/knockoutTime.ts";
import type { RackItem } from "../../base/state/live.ts";
import { knockoutOf, type KnockoutTimes } from "../../../logbook/pour/knockoutTimes.ts";
import { bedOf, pourParts } from "./pourParts.ts";

export type KnockoutDue = KnockoutTimes & { readonly name: string };

type From = {
  readonly pours: readonly Pour[];
  readonly melts: readonly Melt[];
  readonly shop: Shop;
  readonly memo: Memo;
};

/** Full shells that are not broken out, and when they may be, earliest first. */
export function knockoutDues(items: readonly RackItem[], from: From): readonly KnockoutDue[] {
  return items
    .flatMap((item): readonly KnockoutDue[] => {
      const { piece } = item.standing;
      const full = piece.pours.at(-1);
      if (piece.archived || piece.phase !== "poured" || full === undefined) return [];
      if (piece.outcome?.result === "lost") return [];
      const pour = from.pours.find(({ id }) => id === full.pourId);
      const times = pour === undefined ? null : timesOf(item, pour, from);
      return [{ ...(times ?? usual(piece.id, full.at)), name: piece.plan.name }];
    })
    .toSorted((a, b) => a.outAt - b.outAt || (a.pieceId < b.pieceId ? -1 : 1));
}

/** Poured without a plan, nobody knows how it stands: then only what is usual. */
const usual = (pieceId: string, fullAt: number): KnockoutTimes => ({
  pieceId,
  fullAt,
  frozenAt: null,
  outAt: fullAt + usualKnockoutMin.value * minuteMs,
  from: "usual",
});

function timesOf(item: RackItem, pour: Pour, { melts, shop, memo }: From): KnockoutTimes | null {
  const { piece } = item.standing;
  const told = readTold(pour.plan);
  const thinnestMm = [told.thinnestMm[pour.pieceIds.indexOf(piece.id)] ?? null];
  const parts = pourParts({
    items: [item],
    run: null,
    melt: melts.find(({ id }) => id === pour.plan.meltId) ?? null,
    melts: [],
    shop,
    told: { metalKg: told.metalKg, thinnestMm },
  });
  return knockoutOf(
    {
      course: shellCourse(piece, pour.id),
      shell: parts.shells[0],
      parts,
      plan: pour.plan,
      place: bedOf(parts, { bed: pour.plan.bed, sandC: pour.plan.sandC, family: told.family }),
    },
    memo,
  );
}
