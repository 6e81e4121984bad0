/**
 * After a press was dealt with at pointer-up the browser still sends a click, which may land on whatever the press
 * has brought under the finger. It is stopped here; the next press of its own clears the guard.
 */
export function swallowGhostClick(): void {
  const swallow = (event: MouseEvent): void => {
    if (event.detail === 0) return;
    event.stopPropagation();
    event.preventDefault();
    clear();
  };
  const clear = (): void => {
    clearTimeout(timer);
    window.removeEventListener("click", swallow, true);
    window.removeEventListener("pointerdown", clear, true);
  };
  const timer = setTimeout(clear, 500);
  window.addEventListener("click", swallow, true);
  window.addEventListener("pointerdown", clear, true);
}
