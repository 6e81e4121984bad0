import type { EntryOf } from "../../../logbook/entries/entry.ts";
import type { DewaxWay, ShellInside } from "../../../logbook/entries/shellFireBodies.ts";
import { figureDetail, entryText, type EntryText } from "./entryText.ts";
import type { Format } from "./units.ts";
import { dewaxTexts as t, dewaxWayTexts, insideTexts } from "../words/dewaxTexts.ts";

export const dewaxWayWords: Readonly<Record<DewaxWay, string>> = dewaxWayTexts;
export const insideWords: Readonly<Record<ShellInside, string>> = insideTexts;

/** The lines of a log between the wax and the fire. */
export function dewaxEntryWords(
  entry: EntryOf<"dewaxed"> | EntryOf<"shell-rinsed"> | EntryOf<"shell-inspected">,
  format: Format,
): EntryText {
  switch (entry.type) {
    case "dewaxed": {
      const { way, minutes, waxBackG, rinsed = false, note } = entry.body;
      return entryText(
        t["dewaxEntry.dewaxed"]({ part: dewaxWayWords[way] }),
        minutes === null ? null : format.show("min", minutes),
        figureDetail(t["dewaxEntry.dewaxed.waxWeighedBack"], waxBackG, (g) => format.show("g", g)),
        rinsed ? "rinsed" : null,
        note,
      );
    }
    case "shell-rinsed":
      return entryText(t["dewaxEntry.shell-rinsed"], entry.body.note);
    case "shell-inspected":
      return entryText(t["dewaxEntry.shell-inspected"]({ inside: entry.body.inside }), entry.body.note);
  }
}
