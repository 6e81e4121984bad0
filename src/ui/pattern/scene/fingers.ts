import type { ScreenPoint } from "./ringTurn.ts";

/** What one finger on the picture comes to: a tap that did not drift, or a drag of what it took hold of. */
export type Fingers = {
  /** Takes hold of something under the finger, so that the view stays still; null to let it turn the view. */
  readonly take: (at: ScreenPoint) => HeldMark | null;
  readonly tap: (at: ScreenPoint) => void;
};
export type HeldMark = {
  readonly drag: (to: ScreenPoint, by: ScreenPoint) => void;
  readonly drop: (isKept: boolean) => void;
};

const driftPx = 8;

/** Listens on a canvas before the camera's own hands do; a second finger lets go of what was held. */
export function onFingers(
  canvas: HTMLCanvasElement,
  { take, tap }: Fingers,
  hold: (isHeld: boolean) => void,
): () => void {
  let down: { readonly id: number; readonly at: ScreenPoint; held: HeldMark | null; isTap: boolean } | null =
    null;
  const placeOf = (event: PointerEvent): ScreenPoint => {
    const box = canvas.getBoundingClientRect();
    return { x: event.clientX - box.left, y: event.clientY - box.top };
  };
  const letGo = (isKept: boolean): void => {
    if (down?.held) {
      down.held.drop(isKept);
      hold(false);
    }
    down = null;
  };
  const begin = (event: PointerEvent): void => {
    if (down !== null || !event.isPrimary || event.button !== 0) {
      letGo(false);
      return;
    }
    const at = placeOf(event);
    const held = take(at);
    down = { id: event.pointerId, at, held, isTap: true };
    if (held === null) return;
    hold(true);
    canvas.setPointerCapture(event.pointerId);
  };
  const move = (event: PointerEvent): void => {
    if (down === null || event.pointerId !== down.id) return;
    const to = placeOf(event);
    const by = { x: to.x - down.at.x, y: to.y - down.at.y };
    if (down.isTap && Math.hypot(by.x, by.y) <= driftPx) return;
    down.isTap = false;
    down.held?.drag(to, by);
  };
  const end = (event: PointerEvent): void => {
    if (down === null || event.pointerId !== down.id) return;
    const { isTap, at } = down;
    letGo(!isTap);
    if (isTap) tap(at);
  };
  const cancel = (): void => letGo(false);
  canvas.addEventListener("pointerdown", begin, true);
  canvas.addEventListener("pointermove", move, true);
  canvas.addEventListener("pointerup", end, true);
  canvas.addEventListener("pointercancel", cancel, true);
  return () => {
    canvas.removeEventListener("pointerdown", begin, true);
    canvas.removeEventListener("pointermove", move, true);
    canvas.removeEventListener("pointerup", end, true);
    canvas.removeEventListener("pointercancel", cancel, true);
  };
}
