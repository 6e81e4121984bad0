import type { Keeping } from "../../../device/persistence.ts";

/** Whether the browser keeps the log, and what that means for the person. */
export const keepWords = (keeping: Keeping, isSecure: boolean): string =>
  keeping === "kept"
    ? "Kept. The browser won't clear this log to make room. A lost or broken device still loses it: save backups."
    : keeping === "may-be-cleared"
      ? "Not promised. The browser may clear this log when the device runs out of room. Save a backup."
      : isSecure
        ? "This browser can't promise to keep the log and may clear it. Save backups."
        : "This browser can promise to keep the log only over https. Save backups.";

export const noAnswerHelps =
  "The browser refused. Add the app to the home screen or use it for some days, then ask again.";
