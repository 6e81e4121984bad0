import type { Stay } from "./hanging.ts";

type Spell = { readonly from: number; readonly to: number; readonly rh: number };

/** The humidity a piece hung in, or will by the forecast, spell by spell; `visit` says false when it has seen enough. */
function walkHumidity(
  stays: readonly Stay[],
  { from, to }: { readonly from: number; readonly to: number },
  visit: (spell: Spell) => boolean,
): void {
  for (const { from: begin, to: end, air } of stays) {
    if (air === null) continue;
    let at = Math.max(from, begin, air.startsAt);
    const last = Math.min(to, end);
    for (let i = air.indexAt(at); at < last; i += 1) {
      const cut = air.cutAt(i);
      if (cut === null) break;
      const until = Math.min(last, air.cutAt(i + 1)?.at ?? Infinity);
      if (until <= at) continue;
      if (!visit({ from: at, to: until, rh: cut.interval.rh })) return;
      at = until;
    }
  }
}

/** Mean humidity between two times, epoch ms, as a fraction; null where none of it was read. */
export function meanRh(
  stays: readonly Stay[],
  span: { readonly from: number; readonly to: number },
): number | null {
  let weighed = 0;
  let knownMs = 0;
  walkHumidity(stays, span, ({ from, to, rh }) => {
    weighed += rh * (to - from);
    knownMs += to - from;
    return true;
  });
  return knownMs > 0 ? weighed / knownMs : null;
}

/**
 * The first time from `from` on at which the air is no damper than `mostRh`; null when it is not before `to`. Air
 * that was never read keeps nothing waiting.
 */
export function firstDrier(
  stays: readonly Stay[],
  { from, to, mostRh }: { readonly from: number; readonly to: number; readonly mostRh: number },
): number | null {
  let found: number | null = null;
  let isRead = false;
  walkHumidity(stays, { from, to }, (spell) => {
    // Before the first reading, and in a room that was never read, nothing is known to be damp.
    if (!isRead && spell.from > from) {
      found = from;
      return false;
    }
    isRead = true;
    if (spell.rh <= mostRh) found = spell.from;
    return found === null;
  });
  return isRead ? found : from;
}
