import type { Keeping } from "../../../device/persistence.ts";
import { keepTexts as t } from "../words/keepTexts.ts";

/** Whether the browser keeps the log, and what that means for the person. */
export const keepWords = (keeping: Keeping, isSecure: boolean): string =>
  keeping === "kept"
    ? t["keep.keptTheBrowserWont"]
    : keeping === "may-be-cleared"
      ? t["keep.notPromisedTheBrowser"]
      : isSecure
        ? t["keep.thisBrowserCantPromise"]
        : t["keep.thisBrowserCanPromise"];

export const noAnswerHelps = t["noAnswerHelps.theBrowserRefusedAdd"];
