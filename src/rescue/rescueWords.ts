import type { Offer, StartProblem } from "./startProblem.ts";

export type RescueText = { readonly title: string; readonly lines: readonly string[] };

const logIsSafe = "Your log is not changed by this.";

/** What happened and what to do, in words for the person in front of it. */
export function rescueText(problem: StartProblem): RescueText {
  switch (problem.kind) {
    case "no-store":
      return {
        title: "This browser gives Dipbook no place to keep a log",
        lines: [
          "Dipbook keeps everything on this device, and needs the browser's storage for it.",
          "A private window often has none. Open Dipbook in a normal window, or in another browser.",
        ],
      };
    case "store-refused":
      return {
        title: "The browser does not let Dipbook open its log",
        lines: [
          "Storage is switched off for this page. Allow cookies and site data for it in the browser's settings, then try again.",
          logIsSafe,
          `The browser says: ${problem.detail}`,
        ],
      };
    case "store-failed":
      return {
        title: "The log could not be opened",
        lines: [
          "Dipbook keeps trying. Close its other tabs. Restarting the browser often helps.",
          "Do not clear the site's data: that deletes the log.",
          `The browser says: ${problem.detail}`,
        ],
      };
    case "no-answer":
      return {
        title: "The browser's storage does not answer",
        lines: [
          `Nothing came back in ${problem.afterS} seconds. It may still: this page goes away by itself when it does.`,
          "Close other tabs of Dipbook. Restarting the browser often helps.",
          logIsSafe,
        ],
      };
    case "older-tab":
      return {
        title: "Another tab has an older Dipbook open",
        lines: [
          "Close it. Then this one goes on by itself.",
          "If you can't find it, close the browser and open it again.",
          logIsSafe,
        ],
      };
    case "upgrading":
      return {
        title: "Getting the log ready for this version",
        lines: [
          problem.of === null
            ? "Reading the log…"
            : `${problem.done} of ${problem.of} pieces, rooms and runs.`,
          "Leave this page open. It takes a while with a long log.",
        ],
      };
    case "newer-store":
      return {
        title: "This log was written by a newer Dipbook",
        lines: [
          `The log has version ${problem.found}; this program knows up to ${problem.known}. It would not read all of it, so it does not open it.`,
          "Look for an update. You need a connection for that.",
          logIsSafe,
        ],
      };
    case "store-gone":
      return {
        title: "The log was cleared while Dipbook was open",
        lines: [
          "The browser or another tab has removed this site's data. Nothing more is logged here until the page is loaded again.",
          "Load it again, then restore your last backup.",
        ],
      };
    case "app-failed":
      return {
        title: "Dipbook could not be shown",
        lines: [
          "Your log is kept. Try again first.",
          "If it happens again, make the summaries again: the lists are made anew from the log. Save a backup before anything else you try.",
          `What went wrong: ${problem.detail}`,
        ],
      };
  }
}

export const offerNames: { readonly [K in Offer]: string } = {
  "try-again": "Try again",
  "save-backup": "Save a backup",
  "remake-summaries": "Rebuild the summaries",
  "look-for-update": "Look for an update",
};
