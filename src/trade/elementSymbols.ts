import type { Element } from "../physics/metal/scrap.ts";

/** As chemists write it; what has no name of its own is said so. */
export const symbolOf = (element: Element): string =>
  element === "other" ? "all others" : element.charAt(0).toUpperCase() + element.slice(1);
