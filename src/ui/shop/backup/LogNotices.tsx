import { useLiveQuery } from "dexie-react-hooks";
import { useEffect, useState } from "react";
import css from "./backup.module.css";
import { forgetNote, readNote } from "../../../device/outsideNote.ts";
import { space, type Space, keeping, type Keeping } from "../../../device/persistence.ts";
import { useSettings } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { dayName } from "../../base/format/time.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { LinkButton } from "../../base/parts/LinkButton.tsx";
import { readOwnCount } from "../../../storage/demo.ts";
import { keepWords, noAnswerHelps } from "../../base/format/keepWords.ts";
import { backupDue } from "./backupDue.ts";
import { entriesWords } from "./backupWords.ts";

/** From this share of what the browser allows on, room is said to run out. */
const fullShare = 0.8;

/** What the rack says of the log's own safety: a backup that is due, room that runs out. */
export function LogNotices() {
  const { db, clock } = useShop();
  const { locale } = useFormat();
  const [settings] = useSettings();
  const own = useLiveQuery(() => readOwnCount(db), [db]);
  const [room, setRoom] = useState<Space | null>(null);
  useEffect(() => void space().then(setRoom), []);
  const due = own === undefined ? null : backupDue(settings, { now: clock(), ...own });
  const isFull = room !== null && room.quotaBytes > 0 && room.usedBytes >= fullShare * room.quotaBytes;
  if (due === null && !isFull) return <KeepAnswer />;
  return (
    <>
      <KeepAnswer />
      <Card title={isFull ? "Storage is running out" : "Time for a backup"} tone="watch">
        {isFull && (
          <p>
            {Math.round((100 * room.usedBytes) / room.quotaBytes)} % of what the browser allows is used. Save
            a backup, then free some space on this device.
          </p>
        )}
        {due !== null && (
          <p>
            {entriesWords(due.entries, locale)} since{" "}
            {due.days === null ? "you began, and no backup yet" : `the last backup ${due.days} days ago`}.
          </p>
        )}
        <LinkButton href={`${paths.settings}#backup`}>Save a backup</LinkButton>
      </Card>
    </>
  );
}

/** What came of asking the browser to keep the log, which the app does by itself after the first day; until it is read. */
function KeepAnswer() {
  const { clock } = useShop();
  const [{ askedToKeepAt, keepAnswerSeenAt }, change] = useSettings();
  const [state, setState] = useState<Keeping | null>(null);
  const isNew = askedToKeepAt > keepAnswerSeenAt;
  useEffect(() => {
    if (isNew) void keeping().then(setState);
  }, [isNew]);
  if (!isNew || state === null) return null;
  return (
    <Card title="The browser was asked to keep this log" tone={state === "kept" ? "clear" : "watch"}>
      <p>{keepWords(state, isSecureContext)}</p>
      {state === "may-be-cleared" && <p>{noAnswerHelps}</p>}
      {/* A clock that was set back since must not bring it up for ever. */}
      <Button onPress={() => change({ keepAnswerSeenAt: Math.max(clock(), askedToKeepAt) })}>
        Understood
      </Button>
    </Card>
  );
}

/** An empty log where there was one: said in place of the welcome. Null where the note knows of nothing. */
export function useClearedLog(): { readonly notice: React.ReactNode } | null {
  const { clock } = useShop();
  const { locale } = useFormat();
  const [note, setNote] = useState(readNote);
  if (note === null || note.entries === 0) return null;
  const forget = (): void => {
    forgetNote();
    setNote(null);
  };
  return {
    notice: (
      <Card title="The log that was here is gone" tone="hold">
        <p>
          There were {entriesWords(note.entries, locale)} here until {dayName(note.lastAt, clock(), locale)}.
          The browser has cleared them.{" "}
          {note.backupAt === null
            ? "No backup was made here that this device knows of."
            : `The last backup was made ${dayName(note.backupAt, clock(), locale)}.`}
        </p>
        <div className={css["keys"]}>
          <LinkButton kind="primary" href={`${paths.settings}#restore`}>
            Restore a backup
          </LinkButton>
          <Button onPress={forget}>I cleared it myself: start again</Button>
        </div>
      </Card>
    ),
  };
}
