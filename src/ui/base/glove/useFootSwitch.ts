import { useEffect, useRef } from "react";

/** A second press within this time is the same press of a bouncing switch. */
const bounceMs = 700;

/**
 * Space or Enter, from a keyboard or a foot switch that acts as one, does the screen's primary action. A key that
 * someone has moved to with Tab keeps its own press.
 */
export function useFootSwitch(onPress: () => unknown): void {
  const press = useRef(onPress);
  const lastAt = useRef(Number.NEGATIVE_INFINITY);
  useEffect(() => {
    press.current = onPress;
  });
  useEffect(() => {
    const hear = (event: KeyboardEvent): void => {
      if (event.key !== " " && event.key !== "Enter") return;
      if (
        event.target instanceof Element &&
        event.target.closest("button, a, input, select, textarea") !== null
      )
        return;
      event.preventDefault();
      if (event.repeat || event.timeStamp - lastAt.current < bounceMs) return;
      lastAt.current = event.timeStamp;
      press.current();
    };
    window.addEventListener("keydown", hear);
    return () => window.removeEventListener("keydown", hear);
  }, []);
}
