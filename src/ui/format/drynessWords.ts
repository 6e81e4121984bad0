import type { EntryBodies } from "../../logbook/entry.ts";
import { figure, told, type EntryText } from "./entryText.ts";
import type { Format } from "./units.ts";

/** What was found of a coat's dryness, and by what. */
export function drynessWords(body: EntryBodies["dryness-seen"], format: Format): EntryText {
  switch (body.method) {
    case "touch":
      return told(`Felt ${body.verdict}`);
    case "colour":
      return told(`Looked ${body.verdict} by its colour`);
    case "weight":
      return told(
        `Weighed: ${format.show("g", body.massG)}`,
        body.moment === "drained" ? "just drained" : body.moment === "stuccoed" ? "just stuccoed" : null,
      );
    case "surface":
      return told(
        `Surface measured: ${format.show("temp", body.surfaceC)}`,
        figure("a dry shell beside it", body.dryShellC, (c) => format.show("temp", c)),
      );
    case "resistance":
      return told(
        `Resistance measured: ${ohmWords(body.ohm, format)}`,
        body.reference === true ? "just after it set, to compare with" : null,
        figure("shell", body.shellC, (c) => format.show("temp", c)),
      );
    case "bag":
      return told(
        `Bag test: ${format.show("percent", body.rh)} after ${format.show("min", body.minutes)}`,
        `room ${format.show("percent", body.roomRh)}`,
      );
  }
}

/** "4.7 kΩ", "2.2 MΩ". */
function ohmWords(ohm: number, format: Format): string {
  const [factor, unit] = ohm >= 1e6 ? [1e6, "MΩ"] : ohm >= 1000 ? [1000, "kΩ"] : [1, "Ω"];
  return `${format.number(ohm / factor, 2)}\u00a0${unit}`;
}
