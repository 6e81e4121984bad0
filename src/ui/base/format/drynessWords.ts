import type { EntryBodies } from "../../../logbook/entries/entry.ts";
import { geometryClasses, type GeometryClass } from "../../../trade/geometryClasses.ts";
import { figureDetail, entryText, type EntryText } from "./entryText.ts";
import { balanceWords } from "./saidWords.ts";
import type { Format } from "./units.ts";

/** What was found of a coat's dryness, and by what. */
export function drynessWords(body: EntryBodies["dryness-seen"], format: Format): EntryText {
  switch (body.method) {
    case "touch":
      return entryText(`Felt ${body.verdict}`);
    case "colour":
      return entryText(`Looked ${body.verdict} by its colour`);
    case "weight":
      return entryText(
        `Weighed: ${balanceWords(body.massG, format)}`,
        body.moment === "drained" ? "just drained" : body.moment === "stuccoed" ? "just stuccoed" : null,
      );
    case "surface":
      return entryText(
        `Surface measured: ${format.show("temp", body.surfaceC)}`,
        placeWords(body.place),
        figureDetail("a dry shell beside it", body.dryShellC, (c) => format.show("temp", c)),
      );
    case "resistance":
      return entryText(
        `Resistance measured: ${ohmWords(body.ohm, format)}`,
        placeWords(body.place),
        body.reference === true ? "just after it set, to compare with" : null,
        figureDetail("shell", body.shellC, (c) => format.show("temp", c)),
      );
    case "bag":
      return entryText(
        `Bag test: ${format.show("percent", body.rh)} after ${format.show("min", body.minutes)}`,
        `room ${format.show("percent", body.roomRh)}`,
      );
  }
}

const placeWords = (place: GeometryClass | undefined): string | null =>
  place === undefined ? null : `read at: ${geometryClasses[place].label.toLowerCase()}`;

/** "4.7 kΩ", "2.2 MΩ". */
function ohmWords(ohm: number, format: Format): string {
  const [factor, unit] = ohm >= 1e6 ? [1e6, "MΩ"] : ohm >= 1000 ? [1000, "kΩ"] : [1, "Ω"];
  return `${format.number(ohm / factor, 2)}\u00a0${unit}`;
}
