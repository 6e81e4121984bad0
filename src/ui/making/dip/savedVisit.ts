import { useCallback, useEffect, useState } from "react";
import { z } from "zod";
import { dropDraft, readDraft, writeDraft } from "../../../storage/drafts.ts";
import { useShop } from "../../base/state/shop.tsx";
import type { DipSession } from "../../../logbook/dip/dipSession.ts";

/** The last thing done, for the undo bar; `backTo` is the time to go back to when a time was changed. */
export type LastAct = {
  readonly pieceId: string;
  readonly entryId: string;
  readonly says: string;
  readonly backTo: number | null;
};
export type SavedVisit = { readonly session: DipSession; readonly last: LastAct | null };

const schema = z.object({
  session: z.object({
    bucketId: z.string(),
    kind: z.enum(["prime", "intermediate", "backup", "seal"]),
    dipId: z.string(),
    startedAt: z.number(),
    prewet: z.boolean(),
    order: z.array(z.object({ pieceId: z.string(), coats: z.int().min(0) })),
    leftOut: z.array(z.string()),
  }),
  last: z
    .object({ pieceId: z.string(), entryId: z.string(), says: z.string(), backTo: z.number().nullable() })
    .nullable(),
}) satisfies z.ZodType<SavedVisit>;

const key = "dip";

/** A visit that a reload cut off; null when there is none, undefined while it is looked for. */
export function useSavedVisit() {
  const { db } = useShop();
  const [kept, setKept] = useState<SavedVisit | null>();
  useEffect(() => {
    let gone = false;
    const look = async (): Promise<void> => {
      const read = schema.safeParse(await readDraft(db, key));
      if (!gone) setKept(read.success ? read.data : null);
    };
    void look();
    return () => {
      gone = true;
    };
  }, [db]);
  const keep = useCallback((visit: SavedVisit) => void writeDraft(db, key, visit), [db]);
  const drop = useCallback(() => dropDraft(db, key), [db]);
  return { kept, keep, drop };
}
