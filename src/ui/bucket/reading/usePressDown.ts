import { useRef, type MouseEvent, type PointerEvent } from "react";

/** A finger that bounces on the glass within this time is one press. */
const bounceMs = 500;

/**
 * A press that counts the moment the finger comes down, as a stopwatch needs it. Only a first finger counts; Space and
 * Enter come in as the button's own click.
 */
export function usePressDown(onDown: () => void) {
  const lastAt = useRef(Number.NEGATIVE_INFINITY);
  const act = (at: number): void => {
    if (at - lastAt.current < bounceMs) return;
    lastAt.current = at;
    onDown();
  };
  return {
    onPointerDown: (event: PointerEvent): void => {
      if (event.isPrimary && event.button === 0) act(event.timeStamp);
    },
    onClick: (event: MouseEvent): void => {
      if (event.detail === 0) act(event.timeStamp);
    },
  };
}
