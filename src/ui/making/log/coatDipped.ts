import { z } from "zod";
import { ranges } from "../../../logbook/entries/ranges.ts";
import type { EntryBodies } from "../../../logbook/entries/entry.ts";
import type { Standing } from "../../../logbook/piece/standing.ts";
import type { CoatKind } from "../../../trade/coats.ts";
import type { Format } from "../../base/format/units.ts";
import { figureOrNone, oneOf, photoIds, wordsOrNone } from "../../base/forms/fieldSchema.ts";

export type CoatDippedDraft = {
  readonly place: "next" | "beside";
  readonly kind: CoatKind | null;
  readonly stuccoId: string | null;
  readonly bucketId: string | null;
  readonly prewet: "yes" | "no";
  readonly drainS: number | null;
  readonly note: string;
  readonly photos: readonly string[];
};

/** The coat beneath when it is not known to be dry; null when it is, or when there is none. */
export function dampUnder({ cover }: Standing): { readonly number: number; readonly words: string } | null {
  if (cover === null || cover.state === "dry") return null;
  const words = { drying: "not dry", check: "perhaps not dry", unknown: "not known to be dry" }[cover.state];
  return { number: cover.coat.number, words };
}

/** Form to body. The number and the room come from the log, and so does what was accepted damp. */
export function coatDippedSchema(format: Format, standing: Standing): z.ZodType<EntryBodies["coat-dipped"]> {
  const { next, outer, cover, piece } = standing;
  const damp = dampUnder(standing);
  return z
    .object({
      place: z.enum(["next", "beside"]),
      kind: oneOf(["prime", "intermediate", "backup", "seal"], "the kind of coat"),
      stuccoId: z.string({ error: "Nothing chosen for the stucco. Tap one, or None." }),
      bucketId: z.string().nullable(),
      prewet: z.enum(["yes", "no"]),
      drainS: figureOrNone(format, {
        what: "drain time",
        quantity: "s",
        range: ranges.drainS,
        remedy: "Correct it, or leave it empty.",
      }),
      note: wordsOrNone,
      photos: photoIds,
    })
    .transform((draft) => ({
      number: standing.piece.coats.length + 1,
      step: draft.place === "next" ? (next?.step ?? null) : null,
      kind: draft.kind,
      stuccoId: draft.stuccoId === "none" ? null : draft.stuccoId,
      bucketId: draft.bucketId,
      roomId: piece.rooms.at(-1)?.roomId ?? "room/first",
      prewet: draft.prewet === "yes",
      drainS: draft.drainS ?? undefined,
      acceptedDamp:
        damp === null || outer === null || cover?.state === "unknown"
          ? undefined
          : { coatId: outer.coat.id, leftShare: outer.leftShare },
      note: draft.note,
      photos: draft.photos,
    }));
}
