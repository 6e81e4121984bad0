import { useEffect, useRef, type RefObject } from "react";

/** A second press within this time is the same press of a bouncing switch. */
const bounceMs = 700;
const presses = [" ", "Enter", "PageDown"];
const moves: Readonly<Record<string, 1 | -1 | undefined>> = {
  PageUp: 1,
  ArrowRight: 1,
  ArrowDown: 1,
  ArrowLeft: -1,
  ArrowUp: -1,
};

// A switch bounces over a change of screen, so the last press is not a screen's own.
let lastPressAt = Number.NEGATIVE_INFINITY;

/**
 * A screen worked by a keyboard, or by a foot switch that acts as one. Enter, Space and PageDown press the key that has
 * the focus, else the screen's main key: `onMain`, or the one key marked `data-main`. Where several keys are offered
 * alike, or none leads, the first press only marks the first of them. PageUp and the arrows go from key to key; the
 * arrows stay with a number pad where there is one.
 */
export function useFootKeys(screen: RefObject<HTMLElement | null>, onMain?: () => unknown): void {
  const main = useRef(onMain);
  useEffect(() => {
    main.current = onMain;
  });
  useEffect(() => {
    const hear = (event: KeyboardEvent): void => {
      const { key, target } = event;
      if (event.ctrlKey || event.metaKey || event.altKey) return;
      if (target instanceof Element && target.closest("input, select, textarea") !== null) return;
      if (event.defaultPrevented) {
        if (presses.includes(key)) lastPressAt = event.timeStamp;
        return;
      }
      const keys = keysOf(screen.current);
      const held = keys.find((one) => one === document.activeElement);
      const way = moves[key];
      if (way !== undefined) {
        event.preventDefault();
        const from = held ?? keys.find(isMain);
        const place = from === undefined ? (way === 1 ? -1 : keys.length) : keys.indexOf(from);
        keys[(place + way + keys.length) % keys.length]?.focus();
        return;
      }
      if (!presses.includes(key)) return;
      const isNative =
        key !== "PageDown" && target instanceof Element && target.closest("button, a") !== null;
      const isBounce = event.repeat || event.timeStamp - lastPressAt < bounceMs;
      if (isNative) {
        if (!event.repeat) lastPressAt = event.timeStamp;
        return;
      }
      event.preventDefault();
      if (isBounce) return;
      lastPressAt = event.timeStamp;
      if (held !== undefined) held.click();
      else if (main.current !== undefined) main.current();
      else pressMain(keys);
    };
    window.addEventListener("keydown", hear);
    return () => window.removeEventListener("keydown", hear);
  }, [screen]);
}

const isMain = (key: HTMLElement): boolean => key.dataset["main"] !== undefined;

function pressMain(keys: readonly HTMLElement[]): void {
  const [first, ...others] = keys.filter(isMain);
  if (first !== undefined && others.length === 0) first.click();
  else (first ?? keys[0])?.focus();
}

/** What can be pressed on a screen, in its order; a number pad has keys of its own on any keyboard. */
const keysOf = (screen: HTMLElement | null): readonly HTMLElement[] =>
  [...(screen?.querySelectorAll<HTMLElement>("button, a[href]") ?? [])].filter(
    (key) => key.getAttribute("aria-disabled") !== "true" && key.closest("[data-pad]") === null,
  );
