import { z } from "zod";
import type { EntryBodies } from "../../../logbook/entries/entry.ts";
import { ranges } from "../../../logbook/entries/ranges.ts";
import type { GeometryClass } from "../../../trade/geometryClasses.ts";
import type { Format } from "../../base/format/units.ts";
import { figure, figureOrNone, oneOf } from "../../base/forms/fieldSchema.ts";

export type Verdict = "dry" | "damp" | "wet";

export type DrynessDraft = {
  readonly method: EntryBodies["dryness-seen"]["method"];
  readonly verdict: Verdict | null;
  readonly massG: number | null;
  readonly moment: "drained" | "stuccoed" | "drying";
  readonly surfaceC: number | null;
  readonly dryShellC: number | null;
  readonly kOhm: number | null;
  readonly reference: "first" | "later";
  readonly shellC: number | null;
  readonly rh: number | null;
  readonly roomRh: number | null;
  readonly minutes: number | null;
  /** Where it was read; null: on the outer face. */
  readonly place: GeometryClass | null;
};

export const emptyDryness: DrynessDraft = {
  method: "touch",
  verdict: null,
  massG: null,
  moment: "drying",
  surfaceC: null,
  dryShellC: null,
  kOhm: null,
  reference: "later",
  shellC: null,
  rh: null,
  roomRh: null,
  minutes: null,
  place: null,
};

/** The outer face goes without saying; a draft kept from before has no place at all. */
const place = z
  .enum(["open", "corner", "recess", "blind"])
  .nullish()
  .transform((value) => (value === "open" ? undefined : (value ?? undefined)));
const isGiven = <T extends { readonly place?: GeometryClass | undefined }>({ place: found, ...body }: T) =>
  found === undefined ? body : { ...body, place: found };

const undefinedIfNull = (value: number | null): number | undefined => value ?? undefined;

/** What a check of a coat must tell, by its method. */
export function drynessSchema(format: Format, coatId: string): z.ZodType<EntryBodies["dryness-seen"]> {
  const ofCoat = { coatId: z.literal(coatId).default(coatId) };
  const felt = oneOf(["dry", "damp", "wet"], "what you found");
  const temperature = (what: string, remedy: string) => ({
    what,
    quantity: "temp" as const,
    range: ranges.surfaceC,
    remedy,
  });
  const humidity = (what: string, remedy: string) =>
    figure(format, { what, quantity: "percent", range: ranges.rh, remedy });
  return z.discriminatedUnion("method", [
    z.object({ method: z.literal("touch"), verdict: felt, ...ofCoat }),
    z.object({ method: z.literal("colour"), verdict: felt, ...ofCoat }),
    z
      .object({
        method: z.literal("weight"),
        massG: figure(format, {
          what: "weight",
          quantity: "g",
          range: ranges.massG,
          remedy: "Weigh the piece as it hangs, always with the same hook.",
        }),
        moment: z.enum(["drained", "stuccoed", "drying"]),
        ...ofCoat,
      })
      .transform(({ moment, ...body }) => (moment === "drying" ? body : { ...body, moment })),
    z
      .object({
        method: z.literal("surface"),
        surfaceC: figure(format, temperature("surface temperature", "Aim at the deepest spot you can see.")),
        dryShellC: figureOrNone(
          format,
          temperature("dry shell's temperature", "Aim at a shell known to be dry, hanging beside it."),
        ).transform(undefinedIfNull),
        place,
        ...ofCoat,
      })
      .transform(isGiven),
    z
      .object({
        method: z.literal("resistance"),
        kOhm: figure(format, {
          what: "resistance in kΩ",
          quantity: "plain",
          range: { low: ranges.ohm.low / 1000, high: ranges.ohm.high / 1000 },
          remedy: "Read it in kilo-ohms: 2.2 MΩ is 2200.",
        }),
        reference: z.enum(["first", "later"]),
        shellC: figureOrNone(
          format,
          temperature("shell's temperature", "Leave it empty: the room's air stands in."),
        ).transform(undefinedIfNull),
        place,
        ...ofCoat,
      })
      .transform(({ kOhm, reference, ...body }) => ({
        ...isGiven(body),
        ohm: kOhm * 1000,
        ...(reference === "first" ? { reference: true } : {}),
      })),
    z.object({
      method: z.literal("bag"),
      rh: humidity("humidity in the bag", "Read it while the bag is still closed."),
      roomRh: humidity("room's humidity", "Read the same hygrometer in the room."),
      minutes: figure(format, {
        what: "time in the bag",
        quantity: "min",
        range: ranges.bagMin,
        remedy: "Twenty minutes or more.",
      }),
      ...ofCoat,
    }),
  ]);
}
