import type { EntryBodies } from "../../../logbook/entries/entry.ts";
import type { Standing } from "../../../logbook/piece/standing.ts";
import {
  asGiven,
  chosen,
  figureOrNone,
  oneOf,
  photoIds,
  wordsOrNone,
  type ReadOf,
} from "../../base/forms/formFields.ts";

export const coatDippedFields = {
  place: asGiven<"next" | "beside">("next"),
  kind: oneOf(["prime", "intermediate", "backup", "seal"], "the kind of coat"),
  stuccoId: chosen("Nothing chosen for the stucco. Tap one, or None."),
  bucketId: asGiven<string | null>(null),
  prewet: asGiven<"yes" | "no">("no"),
  drainS: figureOrNone("drainS", { what: "drain time", remedy: "Correct it, or leave it empty." }),
  note: wordsOrNone,
  photos: photoIds,
};

/** The coat beneath when it is not known to be dry; null when it is, or when there is none. */
export function dampUnder({ cover }: Standing): { readonly number: number; readonly words: string } | null {
  if (cover === null || cover.state === "dry") return null;
  const words = { drying: "not dry", check: "may not be dry", unknown: "not known to be dry" }[cover.state];
  return { number: cover.coat.number, words };
}

/**
 * Form to body. The number and the room come from the log, and so does what was accepted damp. A coat that is logged
 * for an earlier time keeps nothing of what is said now: nothing was said at its dip.
 */
export function coatDippedBody(
  read: ReadOf<typeof coatDippedFields>,
  standing: Standing,
  at: number | null,
): EntryBodies["coat-dipped"] {
  const { next, outer, cover, piece } = standing;
  const damp = dampUnder(standing);
  return {
    number: standing.piece.coats.length + 1,
    step: read.place === "next" ? (next?.step ?? null) : null,
    kind: read.kind,
    stuccoId: read.stuccoId === "none" ? null : read.stuccoId,
    bucketId: read.bucketId,
    roomId: piece.rooms.at(-1)?.roomId ?? "room/first",
    prewet: read.prewet === "yes",
    drainS: read.drainS,
    acceptedDamp:
      damp === null || outer === null || cover?.state === "unknown"
        ? undefined
        : { coatId: outer.coat.id, leftShare: outer.leftShare },
    said: at === null ? (standing.saying ?? undefined) : undefined,
    note: read.note,
    photos: read.photos,
  };
}
