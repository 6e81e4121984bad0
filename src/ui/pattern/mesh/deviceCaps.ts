import { capsOf, type PatternCaps } from "../../../workers/patternCaps.ts";

/** What this device is asked to carry. */
export function deviceCaps(): PatternCaps {
  const memoryGb: unknown = Reflect.get(navigator, "deviceMemory");
  return capsOf({
    memoryGb: typeof memoryGb === "number" ? memoryGb : undefined,
    isTouch: matchMedia("(pointer: coarse)").matches,
  });
}
