import { useEffect, useRef } from "react";
import type { KeyboardEvent, MouseEvent, PointerEvent } from "react";
import { isPressGood, type PressPoint } from "./pressGood.ts";
import { swallowGhostClick } from "./ghostClick.ts";
import { markTouch, unmarkTouch } from "./touchMark.ts";

export type PressOptions = {
  readonly disabled?: boolean | undefined;
  /** A second press of the same button within this time is taken for a slip; 700 ms at the bucket. */
  readonly debounceMs?: number | undefined;
};

/**
 * Presses for wet hands: acts when the finger lifts, and not when a second one came down, when it drifted, or when the
 * touch was shorter than any finger's; the key shows that it was touched all the same. Space and Enter come in as the button's own click. While a press that
 * returned a promise is under way, further ones are ignored.
 */
export function usePress(onPress: () => unknown, { disabled = false, debounceMs = 0 }: PressOptions = {}) {
  const down = useRef<(PressPoint & { pointerId: number; spoilt: boolean; forget: () => void }) | null>(null);
  const lastAt = useRef(Number.NEGATIVE_INFINITY);
  const underWay = useRef(false);
  useEffect(() => () => down.current?.forget(), []);

  const act = (at: number): void => {
    if (disabled || underWay.current || at - lastAt.current < debounceMs) return;
    lastAt.current = at;
    const result = onPress();
    if (result instanceof Promise) {
      underWay.current = true;
      const over = (): void => {
        underWay.current = false;
      };
      result.then(over, over);
    }
  };

  return {
    onPointerDown: (event: PointerEvent<HTMLElement>): void => {
      if (down.current !== null) {
        down.current.spoilt = true;
        return;
      }
      if (event.button !== 0 || !event.isPrimary) return;
      const { pointerId } = event;
      const spoil = (other: globalThis.PointerEvent): void => {
        if (other.pointerId !== pointerId && down.current !== null) down.current.spoilt = true;
      };
      const key = event.currentTarget;
      // A finger that lifts beside the key is over for the key too.
      const lose = (lifted: globalThis.PointerEvent): void => {
        if (lifted.pointerId !== pointerId || (lifted.target instanceof Node && key.contains(lifted.target)))
          return;
        down.current?.forget();
        down.current = null;
        markTouch(key, "dropped");
      };
      // Heard on the window, so that a second finger anywhere on the glass counts.
      window.addEventListener("pointerdown", spoil, true);
      window.addEventListener("pointerup", lose, true);
      markTouch(key, "down");
      const forget = (): void => {
        window.removeEventListener("pointerdown", spoil, true);
        window.removeEventListener("pointerup", lose, true);
      };
      down.current = {
        x: event.clientX,
        y: event.clientY,
        at: event.timeStamp,
        pointerId,
        spoilt: false,
        forget,
      };
      if (event.currentTarget.hasPointerCapture(pointerId))
        event.currentTarget.releasePointerCapture(pointerId);
    },
    onPointerUp: (event: PointerEvent<HTMLElement>): void => {
      const began = down.current;
      if (began === null || began.pointerId !== event.pointerId) return;
      began.forget();
      down.current = null;
      swallowGhostClick();
      const ended = { x: event.clientX, y: event.clientY, at: event.timeStamp };
      const isGood = !began.spoilt && isPressGood(began, ended, event.pointerType);
      markTouch(event.currentTarget, isGood ? "taken" : "dropped");
      if (isGood) act(event.timeStamp);
    },
    onPointerCancel: (event: PointerEvent<HTMLElement>): void => {
      down.current?.forget();
      down.current = null;
      unmarkTouch(event.currentTarget);
    },
    onKeyDown: (event: KeyboardEvent): void => {
      if (event.repeat && (event.key === "Enter" || event.key === " ")) event.preventDefault();
    },
    // With a pointer the press has been dealt with; what is left comes from a key, a switch or a screen reader.
    onClick: (event: MouseEvent): void => {
      if (event.detail === 0) act(event.timeStamp);
    },
  };
}
