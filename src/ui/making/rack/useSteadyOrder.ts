import { useEffect, useRef, useState } from "react";

const steadyMs = 2_000;

/**
 * The items in the order they had when the screen was last touched, for two seconds after it, so that no row moves
 * from under a finger. New ones go to the end; then the right order comes back.
 */
export function useSteadyOrder<T>(items: readonly T[], idOf: (item: T) => string): readonly T[] {
  const [held, setHeld] = useState<readonly string[] | null>(null);
  const order = useRef<readonly string[]>([]);
  const ids = items.map(idOf);
  useEffect(() => {
    if (held === null) order.current = ids;
  });
  useEffect(() => {
    let timer: ReturnType<typeof setTimeout> | undefined;
    const hold = (): void => {
      clearTimeout(timer);
      setHeld((before) => before ?? order.current);
      timer = setTimeout(() => setHeld(null), steadyMs);
    };
    window.addEventListener("pointerdown", hold, true);
    return () => {
      clearTimeout(timer);
      window.removeEventListener("pointerdown", hold, true);
    };
  }, []);
  if (held === null) return items;
  const place = (item: T): number => {
    const found = held.indexOf(idOf(item));
    return found === -1 ? held.length : found;
  };
  return items.toSorted((a, b) => place(a) - place(b));
}
