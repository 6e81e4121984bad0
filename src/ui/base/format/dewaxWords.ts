import type { EntryOf } from "../../../logbook/entries/entry.ts";
import type { DewaxWay, ShellInside } from "../../../logbook/entries/shellFireBodies.ts";
import { figureDetail, entryText, type EntryText } from "./entryText.ts";
import type { Format } from "./units.ts";

export const dewaxWayWords: Readonly<Record<DewaxWay, string>> = {
  flash: "flash fire",
  steam: "steam",
  "hot-water": "hot water",
  staged: "staged in the kiln",
};
export const insideWords: Readonly<Record<ShellInside, string>> = {
  clean: "clean inside",
  residue: "residue inside",
};

/** The lines of a log between the wax and the fire. */
export function dewaxEntryWords(
  entry: EntryOf<"dewaxed"> | EntryOf<"shell-rinsed"> | EntryOf<"shell-inspected">,
  format: Format,
): EntryText {
  switch (entry.type) {
    case "dewaxed": {
      const { way, minutes, waxBackG, rinsed = false, note } = entry.body;
      return entryText(
        `Dewaxed: ${dewaxWayWords[way]}`,
        minutes === null ? null : format.show("min", minutes),
        figureDetail("wax weighed back", waxBackG, (g) => format.show("g", g)),
        rinsed ? "rinsed" : null,
        note,
      );
    }
    case "shell-rinsed":
      return entryText("Shell rinsed with water", entry.body.note);
    case "shell-inspected":
      return entryText(`Looked inside: ${entry.body.inside}`, entry.body.note);
  }
}
