import { useEffect, useRef, type PointerEvent } from "react";
import { usePress } from "./usePress.ts";

const firstMs = 450;
const nextMs = 110;

/** A press that repeats while the key is held down; the first repeat comes late enough that a tap stays one step. */
export function useRepeat(onStep: () => void) {
  const timer = useRef<ReturnType<typeof setTimeout> | null>(null);
  const repeated = useRef(false);
  const latest = useRef(onStep);
  useEffect(() => {
    latest.current = onStep;
  });
  const stop = (): void => {
    if (timer.current !== null) clearTimeout(timer.current);
    timer.current = null;
  };
  useEffect(() => () => clearTimeout(timer.current ?? undefined), []);
  const press = usePress(() => {
    if (!repeated.current) onStep();
    repeated.current = false;
  });
  const again = (): void => {
    repeated.current = true;
    latest.current();
    timer.current = setTimeout(again, nextMs);
  };
  return {
    ...press,
    onPointerDown: (event: PointerEvent<HTMLElement>): void => {
      press.onPointerDown(event);
      repeated.current = false;
      stop();
      if (event.isPrimary && event.button === 0) timer.current = setTimeout(again, firstMs);
    },
    onPointerUp: (event: PointerEvent<HTMLElement>): void => {
      stop();
      press.onPointerUp(event);
    },
    onPointerLeave: stop,
    onPointerCancel: (event: PointerEvent<HTMLElement>): void => {
      stop();
      press.onPointerCancel(event);
    },
    onContextMenu: (event: { preventDefault: () => void }): void => event.preventDefault(),
  };
}
