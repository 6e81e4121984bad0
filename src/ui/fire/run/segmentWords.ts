import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import type { Segment } from "../../../physics/heat/firingSegments.ts";
import { duration } from "../../base/format/time.ts";
import type { Format } from "../../base/format/units.ts";
import { instructionWords } from "./instructionWords.ts";

/** "To 260 °C at 200 °C/h", "Hold 260 °C for 30 min", or what is to be done. */
export function segmentTitle(part: Segment, fromC: number, format: Format): string {
  switch (part.kind) {
    case "ramp":
      return `${part.toC < fromC ? "Down" : "Up"} to ${format.show("temp", part.toC)} at ${format.show("rate", part.rateKPerH)}`;
    case "hold":
      return `Hold ${format.show("temp", part.atC)} for ${minutesWords(part.minutes)}`;
    case "instruction":
      return instructionWords[part.code].title;
  }
}

export const minutesWords = (minutes: number): string =>
  minutes < 1 / 120 ? "no time" : duration(minutes * minuteMs);
