import { z } from "zod";
import type { ShopDb } from "./rows.ts";

export type Settings = {
  readonly units: "metric" | "us" | "mixed";
  readonly theme: "system" | "light" | "dark" | "sun";
  /** Empty until `ensureDevice` has given this browser its name in the log. */
  readonly deviceId: string;
  readonly signName: string;
  readonly shopRoomId: string;
  readonly keepAwake: boolean;
  readonly tone: boolean;
  readonly speech: boolean;
  /** The dip is led step by step, with timers and looks between. */
  readonly guideDip: boolean;
  /** What was found to ring on this device, by layer, and when it was tried. */
  readonly ringTested: Readonly<Record<string, { readonly at: number; readonly rang: boolean } | undefined>>;
  /** SEQUENCE of the last calendar file, so that the next one replaces it. */
  readonly calendarSequence: number;
  /** When the maker is at the bucket, minutes of the device's own day; an end before its start is over midnight. */
  readonly bucketHours: readonly { readonly fromMin: number; readonly toMin: number }[];
  /** Due times up to here have been shown; later ones came due while the app was closed. */
  readonly lastSeenDueAt: number;
  /** The step of the shop's scale, g; null until someone has said. */
  readonly scaleG: number | null;
  readonly weighUnit: "g" | "kg";
  /** The last backup that was read back and found sound; null before the first. */
  readonly lastBackup: {
    readonly at: number;
    readonly name: string;
    /** All entries of the log then, chosen or not, the demo's left out. */
    readonly logEntries: number;
    readonly entries: number;
    readonly photos: number;
  } | null;
  /** A reminder after so many days or entries since the last backup; 0 for none. */
  readonly remindDays: number;
  readonly remindEntries: number;
  /** When the browser was asked to keep the log; 0 while it was not. */
  readonly askedToKeepAt: number;
  /** When its answer was read on the rack; 0 while it was not. */
  readonly keepAnswerSeenAt: number;
  /** When the hint that the app can be installed was answered; 0 while it was not. */
  readonly installHintSeenAt: number;
  /** Where this log has moved to, as the person wrote it; empty while it lives here. */
  readonly movedTo: string;
};

/** Every field falls back on its own, so that one damaged value does not cost the rest. */
const schema = z.object({
  units: z.enum(["metric", "us", "mixed"]).catch("metric"),
  theme: z.enum(["system", "light", "dark", "sun"]).catch("system"),
  deviceId: z.string().max(64).catch(""),
  signName: z.string().max(200).catch(""),
  shopRoomId: z.string().min(1).max(64).catch("first"),
  keepAwake: z.boolean().catch(true),
  tone: z.boolean().catch(true),
  speech: z.boolean().catch(false),
  guideDip: z.boolean().catch(false),
  ringTested: z.record(z.string(), z.object({ at: z.number(), rang: z.boolean() })).catch({}),
  calendarSequence: z.int().min(0).catch(0),
  bucketHours: z
    .array(z.object({ fromMin: z.int().min(0).max(1439), toMin: z.int().min(0).max(1440) }))
    .max(6)
    .catch([
      { fromMin: 480, toMin: 600 },
      { fromMin: 1020, toMin: 1260 },
    ]),
  lastSeenDueAt: z.number().min(0).catch(0),
  scaleG: z.number().min(0.001).max(10_000).nullable().catch(null),
  weighUnit: z.enum(["g", "kg"]).catch("g"),
  lastBackup: z
    .object({
      at: z.number().min(0),
      name: z.string().max(200),
      logEntries: z.int().min(0),
      entries: z.int().min(0),
      photos: z.int().min(0),
    })
    .nullable()
    .catch(null),
  remindDays: z.int().min(0).max(365).catch(14),
  remindEntries: z.int().min(0).max(100_000).catch(300),
  askedToKeepAt: z.number().min(0).catch(0),
  keepAnswerSeenAt: z.number().min(0).catch(0),
  installHintSeenAt: z.number().min(0).catch(0),
  movedTo: z.string().max(200).catch(""),
}) satisfies z.ZodType<Settings>;

const key = "own";

export const startingSettings: Settings = schema.parse({});

export async function readSettings(db: ShopDb): Promise<Settings> {
  const value = (await db.settings.get(key))?.value;
  return schema.parse(typeof value === "object" && value !== null ? value : {});
}

/** Changes the given settings and leaves the others, also those another tab has just changed. */
export function changeSettings(db: ShopDb, changes: Partial<Settings>): Promise<Settings> {
  return db.transaction("rw", db.settings, async () => {
    const settings: Settings = { ...(await readSettings(db)), ...changes };
    await db.settings.put({ key, value: settings });
    return settings;
  });
}

/** This browser's name in the log, given once: two tabs opened together get the same. */
export function ensureDevice(db: ShopDb, newId: () => string): Promise<string> {
  return db.transaction("rw", db.settings, async () => {
    const { deviceId } = await readSettings(db);
    return deviceId === "" ? (await changeSettings(db, { deviceId: newId() })).deviceId : deviceId;
  });
}
