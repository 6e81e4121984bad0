import type { Page } from "@playwright/test";
import type { Entry } from "../../src/logbook/entries/entry.ts";
import { demoEntries } from "../../src/ui/shop/demo/demoShop.ts";
import { restoreBackup } from "./backups.ts";

const longName = "Überlauf-Regenrinnenkopf mit Akanthusblättern und Ranke, zweite Hälfte";

/** The demo's pieces once more and again, under names as long as a name may well be, in a backup of their own. */
function overfullBackup(now: number, copies: number): string {
  const demo = demoEntries(now, "Europe/Berlin");
  const pieces = demo.filter(({ stream }) => stream.startsWith("piece/demo-"));
  const renamed = (entry: Entry, copy: number): unknown => {
    const tail = (id: string): string => `${id}-x${copy}`;
    const body: unknown =
      entry.type === "piece-started"
        ? { ...entry.body, plan: { ...entry.body.plan, name: `${longName} ${copy}` } }
        : "coatId" in entry.body
          ? { ...entry.body, coatId: tail(entry.body.coatId ?? "") }
          : entry.body;
    return { ...entry, id: tail(entry.id), stream: tail(entry.stream), body };
  };
  const lines = Array.from({ length: copies }, (_, copy) =>
    pieces.map((entry) => renamed(entry, copy)),
  ).flat();
  return JSON.stringify({
    format: "dipbook-log",
    version: 1,
    madeAt: now,
    entries: lines,
    setAside: [],
    photos: [],
  });
}

/** Brings an overfull rack in beside the demo that is loaded, by the way a person would. */
export async function overfill(page: Page, now: number): Promise<void> {
  await page.goto(new URL("/settings", page.url()).href);
  await restoreBackup(page, {
    name: "overfull.json",
    mimeType: "application/json",
    buffer: Buffer.from(overfullBackup(now, 5)),
  });
}
