import type { EntryBodies } from "../../../logbook/entries/entry.ts";
import { ranges } from "../../../logbook/entries/ranges.ts";
import type { GeometryClass } from "../../../trade/geometryClasses.ts";
import type { Format } from "../../base/format/units.ts";
import {
  asGiven,
  checkFields,
  figure,
  figureOrNone,
  oneOf,
  onlyOf,
  type Checked,
  type DraftOf,
  type ReadOf,
} from "../../base/forms/formFields.ts";

type Seen = EntryBodies["dryness-seen"];

export const drynessFields = {
  method: asGiven<Seen["method"]>("touch"),
  verdict: oneOf(["dry", "damp", "wet"], "what you found"),
  massG: figure("massG", {
    what: "weight",
    remedy: "Weigh the piece always with the same hook.",
  }),
  moment: asGiven<"drained" | "stuccoed" | "drying">("drying"),
  surfaceC: figure("surfaceC", {
    what: "surface temperature",
    remedy: "Aim at the deepest spot you can see.",
  }),
  dryShellC: figureOrNone("dryShellC", {
    what: "dry shell's temperature",
    remedy: "Aim at a shell known to be dry, hanging beside it.",
  }),
  kOhm: figure("ohm", {
    what: "resistance in kΩ",
    remedy: "Read it in kilo-ohms: 2.2 MΩ is 2200.",
    own: {
      range: { low: ranges.ohm.low / 1000, high: ranges.ohm.high / 1000 },
      why: "meters show kilo-ohms, the log keeps ohms",
    },
  }),
  reference: asGiven<"first" | "later">("later"),
  shellC: figureOrNone("hangingShellC", {
    what: "shell's temperature",
    remedy: "Leave it empty: the room’s air is used.",
  }),
  rh: figure("rh", {
    what: "humidity in the bag",
    remedy: "Read it while the bag is still closed.",
  }),
  roomRh: figure("roomRh", {
    what: "room's humidity",
    remedy: "Read the same hygrometer in the room.",
  }),
  minutes: figure("bagMin", { what: "time in the bag", remedy: "Twenty minutes or more." }),
  /** Where it was read; null: on the outer face. */
  place: asGiven<GeometryClass | null>(null),
};

type DrynessFields = typeof drynessFields;

/** What is asked of a coat by the method chosen; the rest of the draft is left alone. */
export function readDryness(draft: DraftOf<DrynessFields>, format: Format, coatId: string): Checked<Seen> {
  const { method } = draft;
  const read = <K extends keyof DrynessFields>(
    keys: readonly K[],
    toBody: (read: ReadOf<Pick<DrynessFields, K>>) => Seen,
  ): Checked<Seen> => {
    const found = checkFields(onlyOf(drynessFields, keys), draft, format);
    return found.ok ? { ok: true, value: toBody(found.value) } : found;
  };
  // The outer face goes without saying.
  const at = draft.place === null || draft.place === "open" ? {} : { place: draft.place };
  switch (method) {
    case "touch":
    case "colour":
      return read(["verdict"], (seen) => ({ method, coatId, ...seen }));
    case "weight":
      return read(["massG"], (seen) => ({
        method,
        coatId,
        ...seen,
        ...(draft.moment === "drying" ? {} : { moment: draft.moment }),
      }));
    case "surface":
      return read(["surfaceC", "dryShellC"], (seen) => ({ method, coatId, ...seen, ...at }));
    case "resistance":
      return read(["kOhm", "shellC"], ({ kOhm, shellC }) => ({
        method,
        coatId,
        shellC,
        ...at,
        ohm: kOhm * 1000,
        ...(draft.reference === "first" ? { reference: true } : {}),
      }));
    case "bag":
      return read(["rh", "roomRh", "minutes"], (seen) => ({ method, coatId, ...seen }));
  }
}
