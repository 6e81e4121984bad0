import { pourGo } from "../../trade/pourGo.ts";

/** What only hands and eyes can tell, in the order of the sheet; `sand-dry` only where there is sand. */
export const linesByHand = [
  "vents-open",
  "sand-dry",
  "face-shield",
  "leathers-gloves-boots",
  "ingot-mould-hot-dry",
  "tools-hot-dry",
  "path-clear",
  "second-person",
  "sand-and-extinguisher",
  "no-water",
  "ventilation",
] as const;

const { heatMin, hotToolsMin, peopleMin, shellLookMin } = pourGo;

const ages: Readonly<Record<string, number>> = {
  "shell-hot": heatMin.value,
  "metal-heat": heatMin.value,
  "ingot-mould-hot-dry": hotToolsMin.value,
  "tools-hot-dry": hotToolsMin.value,
  "shell-sound": shellLookMin.value,
  "shell-dry": shellLookMin.value,
  "wall-carries": shellLookMin.value,
  "vents-noted": shellLookMin.value,
};

/** Minutes a tick by hand on this line holds. */
export const lineAgeMin = (id: string): number => ages[id] ?? peopleMin.value;
