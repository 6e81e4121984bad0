import type { Keeping } from "../../../device/persistence.ts";

/** Whether the browser keeps the log, and what that means for the person. */
export const keepWords = (keeping: Keeping, isSecure: boolean): string =>
  keeping === "kept"
    ? "Kept. The browser has promised not to clear this log to make room. A lost or broken device still takes it: save backups."
    : keeping === "may-be-cleared"
      ? "Not promised. The browser may clear this log when the device runs out of room. Save a backup."
      : isSecure
        ? "This browser has no way to promise it. It may clear this log. Save backups."
        : "This browser can't promise anything here (it can only over https). Save backups.";

export const noAnswerHelps =
  "It was asked and said no. Adding the app to the home screen, or using it for some days, often changes that answer.";
