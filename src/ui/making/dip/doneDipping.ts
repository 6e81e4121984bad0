import { paths } from "../../base/state/paths.ts";

export const doneText = "Done dipping";

/** The way out of the bucket while no visit is under way. */
export const doneDipping = { text: doneText, href: paths.rack };
