import { catalogue } from "./catalogue.ts";

export const keepTexts = catalogue("keep", {
  "keep.keptTheBrowserWont":
    "Kept. The browser won't clear this log to make room. A lost or broken device still loses it: save backups.",
  "keep.notPromisedTheBrowser":
    "Not promised. The browser may clear this log when the device runs out of room. Save a backup.",
  "keep.thisBrowserCantPromise": "This browser can't promise to keep the log and may clear it. Save backups.",
  "keep.thisBrowserCanPromise": "This browser can promise to keep the log only over https. Save backups.",
  "noAnswerHelps.theBrowserRefusedAdd":
    "The browser refused. Add the app to the home screen or use it for some days, then ask again.",
});
