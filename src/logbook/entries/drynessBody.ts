import { z } from "zod";
import { flag, geometry, id, numberOf } from "./bodyParts.ts";

const verdict = z.enum(["dry", "damp", "wet"]);

/** What one look, weighing or reading said of a coat, by how it was taken. */
export const drynessSeen = z.discriminatedUnion("method", [
  z.strictObject({ method: z.literal("touch"), verdict, coatId: id }),
  z.strictObject({ method: z.literal("colour"), verdict, coatId: id }),
  z.strictObject({
    method: z.literal("weight"),
    massG: numberOf("massG"),
    coatId: id,
    /** Just drained of slurry, just stuccoed, or while it dries; left out: while it dries. */
    moment: z.enum(["drained", "stuccoed", "drying"]).optional(),
    /** The scale's step, g; left out: by the digits of the weights. */
    scaleG: numberOf("scaleG").optional(),
  }),
  z.strictObject({
    method: z.literal("surface"),
    surfaceC: numberOf("surfaceC"),
    coatId: id,
    /** The same thermometer on a dry shell hanging beside it. */
    dryShellC: numberOf("dryShellC").optional(),
    /** Where it was read; left out: on the outer face. */
    place: geometry.optional(),
  }),
  z.strictObject({
    method: z.literal("resistance"),
    ohm: numberOf("ohm"),
    coatId: id,
    /** True for the reading just after the coat set, against which later ones are taken. */
    reference: flag,
    shellC: numberOf("hangingShellC").optional(),
    /** Where the contacts sit; left out: on the outer face. */
    place: geometry.optional(),
  }),
  z.strictObject({
    method: z.literal("bag"),
    /** Humidity closed in with the shell, 0–1, and the room's beside it. */
    rh: numberOf("rh"),
    roomRh: numberOf("roomRh"),
    minutes: numberOf("bagMin"),
    coatId: id,
  }),
]);
