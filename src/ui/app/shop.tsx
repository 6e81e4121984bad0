import { createContext, use } from "react";
import type { ReactNode } from "react";
import type { Command, Moment } from "../../logbook/command.ts";
import type { Entry } from "../../logbook/entry.ts";
import { runCommand, runCommands, type Ran } from "../../storage/run.ts";
import { readSettings, type Settings } from "../../storage/settings.ts";
import type { ShopDb } from "../../storage/shopDb.ts";
import { refusalText } from "../format/refusalWords.ts";
import { makeFormat } from "../format/units.ts";
import { useFleeting } from "./fleeting.ts";
import { shopLocale } from "./locale.ts";

export type LogResult =
  { readonly ok: true; readonly entries: readonly Entry[] } | { readonly ok: false; readonly text: string };

export type ShopDoor = {
  readonly db: ShopDb;
  /** Resolves ok only after the strict transaction is complete; never throws. Unless quiet, a refusal is also toasted. */
  readonly log: (command: Command, options?: { readonly quiet?: boolean }) => Promise<LogResult>;
  /** The same for many on one stream, all or none: the first refusal is told. */
  readonly logAll: (
    commands: readonly Command[],
    options?: { readonly quiet?: boolean },
  ) => Promise<LogResult>;
  readonly moment: () => Moment;
  readonly clock: () => number;
  /** The settings as they stood when the page opened; `useSettings` follows them. */
  readonly opened: Settings;
};

const ShopContext = createContext<ShopDoor | null>(null);

export function ShopProvider({ shop, children }: { readonly shop: ShopDoor; readonly children: ReactNode }) {
  return <ShopContext value={shop}>{children}</ShopContext>;
}

export function useShop(): ShopDoor {
  const shop = use(ShopContext);
  if (shop === null) throw new Error("useShop is called outside ShopProvider");
  return shop;
}

export type ShopParts = {
  readonly db: ShopDb;
  readonly clock: () => number;
  readonly newId: () => string;
  readonly opened: Settings;
};

export function makeShop({ db, clock, newId, opened }: ShopParts): ShopDoor {
  const moment = (): Moment => ({
    now: clock(),
    zone: Intl.DateTimeFormat().resolvedOptions().timeZone,
    device: opened.deviceId,
    newId,
  });
  const refuse = (text: string, quiet: boolean): LogResult => {
    if (!quiet) useFleeting.getState().say(text, "refused");
    return { ok: false, text };
  };
  const written = async (run: (at: Moment) => Promise<Ran>, quiet: boolean): Promise<LogResult> => {
    // The moment of the tap, not the one when the store has answered.
    const at = moment();
    try {
      const { movedTo } = await readSettings(db);
      if (movedTo !== "")
        return refuse(`Not logged: this log has moved to ${movedTo}. Here it can only be read.`, quiet);
      const result = await run(at);
      if (result.ok) return result;
      if ("failure" in result) return refuse(outOfSpace, quiet);
      const { units } = await readSettings(db);
      return refuse(refusalText(result.refusal, makeFormat(units, shopLocale()), clock()), quiet);
    } catch (error) {
      return refuse(failureText(error), quiet);
    }
  };
  return {
    db,
    clock,
    moment,
    opened,
    log: (command, { quiet = false } = {}) => written((at) => runCommand(db, command, at), quiet),
    logAll: (commands, { quiet = false } = {}) => written((at) => runCommands(db, commands, at), quiet),
  };
}

/** A closed store is one that another tab has made newer, or that was cleared; the page says which. */
function failureText(error: unknown): string {
  const isClosed = error instanceof Error && error.name === "DatabaseClosedError";
  if (isClosed)
    return "Not logged: another tab runs a newer Dipbook. What you wrote here is kept. Load this page again.";
  return `Not logged. ${error instanceof Error ? error.message : String(error)}`;
}

const outOfSpace =
  "Not logged: this device has no room left. Free some space, or save a backup in Settings and remove photos.";
