import { useLiveQuery } from "dexie-react-hooks";
import { z } from "zod";
import type { ShopDb } from "../../../storage/rows.ts";
import { useShop } from "../../base/state/shop.tsx";
import type { DueTime } from "../../base/alarm/dueTimes.ts";

/** Due times by id as the calendar last got them, epoch ms. */
export type CalendarTold = Readonly<Record<string, number>>;

const key = "calendar";
const schema = z.record(z.string(), z.number()).catch({});

const read = async (db: ShopDb): Promise<CalendarTold> =>
  schema.parse((await db.settings.get(key))?.value ?? {});

export function useCalendarTold(): CalendarTold {
  const { db } = useShop();
  return useLiveQuery(() => read(db), [db], {});
}

/** Remembers what was handed to the calendar; coats no longer on the rack are forgotten. */
export function rememberTold(
  db: ShopDb,
  { given, standing }: { given: readonly DueTime[]; standing: readonly DueTime[] },
): Promise<void> {
  return db.transaction("rw", db.settings, async () => {
    const before = await read(db);
    const open = new Set(standing.map(({ id }) => id));
    const kept = Object.entries(before).filter(([id]) => open.has(id));
    const value = Object.fromEntries([...kept, ...given.map(({ id, dueMs }) => [id, dueMs] as const)]);
    await db.settings.put({ key, value });
  });
}
