import { useEffect, useLayoutEffect, useRef, useState } from "react";

/** Long enough to read what a box holds, and short enough to wait for the rest; judgement. */
const turnMs = 12_000;

/**
 * A list longer than its box shows what fits, and turns to the rest by itself. `shown` are the items from the first of
 * this turn on; those from `fits` on are to be hidden without changing their place.
 */
export function useTurning<E extends HTMLElement, T>(items: readonly T[]) {
  const box = useRef<E>(null);
  const [from, setFrom] = useState(0);
  const [room, setRoom] = useState(items.length);
  const start = from < items.length ? from : 0;
  const shown = items.slice(start);
  const fits = Math.min(Math.max(1, room), shown.length);
  // Each time it is drawn: what is in the box has changed then.
  useLayoutEffect(() => {
    const list = box.current;
    if (list === null) return undefined;
    const look = (): void => setRoom(wholeIn(list));
    look();
    const seen = new ResizeObserver(look);
    seen.observe(list);
    return () => seen.disconnect();
  });
  const next = start + fits < items.length ? start + fits : 0;
  useEffect(() => {
    if (next === start) return undefined;
    const timer = setTimeout(() => setFrom(next), turnMs);
    return () => clearTimeout(timer);
  }, [next, start]);
  return { box, shown, fits, part: partWords({ start, fits, count: items.length }) };
}

/** "2–3 of 6"; null where all of it is in sight. */
function partWords({ start, fits, count }: Record<"start" | "fits" | "count", number>): string | null {
  if (fits >= count) return null;
  const first = start + 1;
  const last = start + fits;
  return `${first === last ? first : `${first}–${last}`} of ${count}`;
}

/** How many of its items end within a box. Half a pixel more: boxes end between pixels. */
function wholeIn(list: HTMLElement): number {
  const { bottom } = list.getBoundingClientRect();
  return [...list.children].filter((item) => item.getBoundingClientRect().bottom <= bottom + 0.5).length;
}
