import type { Piece } from "../../../logbook/piece/piece.ts";
import type { NextAction } from "../../../logbook/piece/action.ts";
import { paths } from "../../base/state/paths.ts";

type Way = { readonly href: string; readonly name: string };
/**
 * The screen on which the next action is done, and beside it the form for what was done without a plan. `isWait`: there
 * is nothing to do but to look how it goes.
 */
type NextMove = Way & { readonly byHand?: Way | undefined; readonly isWait?: true };

/** Where the big key of a piece leads; null once nothing is left to do. `isHeld`: a hold stands against a further coat. */
export function nextMove(
  { id: pieceId, burnouts, outOfKiln }: Piece,
  action: NextAction,
  isHeld: boolean,
): NextMove | null {
  const log = (type: Parameters<typeof paths.logFor>[1]): string => paths.logFor(pieceId, type);
  switch (action.kind) {
    case "dip":
      if (isHeld) return { href: paths.weigh(pieceId), name: "Weigh it", isWait: true };
      return action.readiness === "drying"
        ? { href: log("dryness-seen"), name: "Check how dry it is", isWait: true }
        : { href: paths.dip, name: "Go to the bucket" };
    case "final-dry":
      return { href: paths.finalDry(pieceId), name: "Final dry before burnout", isWait: true };
    case "mend":
      return { href: log("crack-patched"), name: "Log the repair" };
    case "review":
      return { href: paths.review(pieceId), name: "Review before burnout" };
    case "dewax":
      return {
        href: paths.newRunFor(pieceId, "burnout"),
        name: "Plan the dewax",
        byHand: { href: log("dewaxed"), name: "Log the dewax" },
      };
    case "burn-out":
      return {
        href: paths.newRunFor(pieceId, "burnout"),
        name: "Plan the burnout",
        byHand: { href: log("burnout-started"), name: "Start burnout" },
      };
    case "end-burnout": {
      const runId = burnouts.at(-1)?.runId ?? null;
      const byHand = { href: log("burnout-ended"), name: "End burnout" };
      return runId === null ? byHand : { href: paths.run(runId), name: "To the kiln run", byHand };
    }
    case "in-kiln":
      return { href: paths.run(action.runId), name: "To the kiln run" };
    case "fire":
      return {
        href: paths.newRunFor(pieceId, "firing"),
        name: "Plan the firing",
        byHand: { href: log("shell-fired"), name: "Log the firing" },
      };
    case "preheat":
      return {
        href: paths.newRunFor(pieceId, "preheat"),
        name: "Plan the preheat",
        byHand: { href: log("shell-preheated"), name: "Log the preheat" },
      };
    case "pour": {
      const byHand = { href: log("metal-poured"), name: "Log the pour" };
      const pourId = outOfKiln.at(-1)?.pourId ?? null;
      return pourId === null
        ? { href: paths.newPourFor(pieceId), name: "Plan the pour", byHand }
        : { href: paths.pour(pourId), name: "To the pour", byHand };
    }
    case "knock-out":
      return { href: log("shell-knocked-out"), name: "Log the knock-out" };
    case "finish":
      return { href: log("piece-finished"), name: "Log the finishing" };
    case "tell-outcome":
      return { href: log("outcome-told"), name: "Record the result" };
    case "none":
      return null;
  }
}
