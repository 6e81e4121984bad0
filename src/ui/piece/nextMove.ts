import type { NextAction } from "../../logbook/standing.ts";
import { paths } from "../app/paths.ts";

/** Where the big key of a piece leads: the screen on which its next action is done. */
export function nextMove(
  pieceId: string,
  action: NextAction,
): { readonly href: string; readonly name: string } | null {
  const log = (type: Parameters<typeof paths.logFor>[1]): string => paths.logFor(pieceId, type);
  switch (action.kind) {
    case "dip":
      return action.readiness === "drying" ? null : { href: paths.dip, name: "Go to the bucket" };
    case "final-dry":
      return null;
    case "mend":
      return { href: log("crack-patched"), name: "Log the mending" };
    case "review":
      return { href: paths.review(pieceId), name: "Review before burnout" };
    case "burn-out":
      return { href: log("burnout-started"), name: "Start burnout" };
    case "end-burnout":
      return { href: log("burnout-ended"), name: "End burnout" };
    case "fire":
      return { href: log("shell-fired"), name: "Log the firing" };
    case "preheat":
      return { href: log("shell-preheated"), name: "Log the preheat" };
    case "pour":
      return { href: log("metal-poured"), name: "Log the pour" };
    case "knock-out":
      return { href: log("shell-knocked-out"), name: "Log the knockout" };
    case "finish":
      return { href: log("piece-finished"), name: "Log the finishing" };
    case "tell-outcome":
      return { href: log("outcome-told"), name: "Say how it came out" };
    case "none":
      return null;
  }
}
