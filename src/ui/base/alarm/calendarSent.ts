import { useLiveQuery } from "dexie-react-hooks";
import { z } from "zod";
import type { ShopDb } from "../../../storage/rows.ts";
import { useShop } from "../state/shop.tsx";

/** Due times by id as the calendar last got them, epoch ms. */
type CalendarTold = Readonly<Record<string, number>>;
type Told = { readonly id: string; readonly dueMs: number };

const key = "calendar";
const schema = z.record(z.string(), z.number()).catch({});

const read = async (db: ShopDb): Promise<CalendarTold> =>
  schema.parse((await db.settings.get(key))?.value ?? {});

export function useCalendarSent(): CalendarTold {
  const { db } = useShop();
  return useLiveQuery(() => read(db), [db], {});
}

/** What a calendar has with these times given to it now: those no longer waited for are forgotten once they are past. */
export function sentWith(
  before: CalendarTold,
  { given, standing, now }: { given: readonly Told[]; standing: readonly Told[]; now: number },
): CalendarTold {
  const open = new Set(standing.map(({ id }) => id));
  const kept = Object.entries(before).filter(([id, dueMs]) => open.has(id) || dueMs > now);
  return Object.fromEntries([...kept, ...given.map(({ id, dueMs }) => [id, dueMs] as const)]);
}

/** Remembers what was handed to the calendar, of every source. */
export function rememberSent(db: ShopDb, told: Parameters<typeof sentWith>[1]): Promise<void> {
  return db.transaction("rw", db.settings, async () => {
    await db.settings.put({ key, value: sentWith(await read(db), told) });
  });
}
