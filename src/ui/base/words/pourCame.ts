import { catalogue } from "./catalogue.ts";

export const cameKeysTexts = catalogue("pour-came/cameKeys", {
  full: "Full",
  short: "Short",
  leaked: "Leaked",
  frozen: "Frozen in the cup",
  stopped: "Stopped",
});

export const cameTexts = catalogue("pour-came/came", {
  full: "full",
  short: "short",
  leaked: "leaked",
  frozen: "frozen in the cup",
  stopped: "stopped",
});

export const pouredTexts = catalogue("pour-came/poured", {
  full: "poured",
  short: "poured short",
  leaked: "leaked at the pour",
  frozen: "froze in the cup at the pour",
  stopped: "pour stopped",
});

export const cameTitlesTexts = catalogue("pour-came/cameTitles", {
  full: "Metal poured",
  short: "Poured short",
  leaked: "Leaked at the pour",
  frozen: "Froze in the cup",
  stopped: "Pour stopped",
});

export const cameToDoTexts = catalogue("pour-came/cameToDo", {
  short: "Stand clear and leave it. Don't top it up: new metal spits on a frozen skin and does not join it.",
  leaked: "Step back and let it run into the sand. Never water. Stay away until the metal is frozen.",
  frozen:
    "Leave the cup alone: metal under its skin can still be liquid. Don't poke it, don't tip the shell.",
  stopped: "Set the crucible down in its dry place. Stand clear: the metal in the shell is still liquid.",
});
