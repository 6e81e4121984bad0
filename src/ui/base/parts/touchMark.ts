/** How long a key shows that it was touched, ms: long enough to be seen after the finger has gone. */
const takenMs = 160;
const tooShortMs = 900;

const clearing = new WeakMap<HTMLElement, ReturnType<typeof setTimeout>>();

/**
 * A key shows every touch, also one that it drops: "down" while a finger is on it, then "taken", or "dropped" for one
 * that was too short for a finger, slid away or came with a second one. Set on the element itself, for a touch may be
 * over before the page is drawn again. The look of it is in base.css.
 */
export function markTouch(key: HTMLElement, touch: "down" | "taken" | "dropped"): void {
  clearTimeout(clearing.get(key));
  key.dataset["touch"] = touch;
  if (touch === "down") return;
  const timer = setTimeout(() => unmarkTouch(key), touch === "dropped" ? tooShortMs : takenMs);
  clearing.set(key, timer);
}

export function unmarkTouch(key: HTMLElement): void {
  delete key.dataset["touch"];
}
