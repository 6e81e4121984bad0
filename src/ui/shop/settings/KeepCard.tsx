import { useEffect, useState } from "react";
import css from "./SettingsPage.module.css";
import { askToKeep, keeping, space, type Keeping, type Space } from "../../../device/persistence.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { useSettings } from "../../base/state/live.ts";
import { useShop } from "../../base/state/shop.tsx";
import { keepWords, noAnswerHelps } from "../../base/format/keepWords.ts";
import { dayTime } from "../../base/format/time.ts";
import sheet from "../../base/styles/sheet.module.css";

export function KeepCard() {
  const format = useFormat();
  const { clock } = useShop();
  const [state, setState] = useState<Keeping | null>(null);
  const [room, setRoom] = useState<Space | null>(null);
  const [{ askedToKeepAt }, change] = useSettings();
  useEffect(() => {
    let gone = false;
    const look = async () => {
      const [kept, free] = [await keeping(), await space()];
      if (gone) return;
      setState(kept);
      setRoom(free);
    };
    void look();
    return () => {
      gone = true;
    };
  }, []);
  const megabytes = (bytes: number) => `${format.number(bytes / 1e6, bytes < 1e7 ? 1 : 0)} MB`;
  return (
    <Card title="Kept on this device">
      <p role="status">{state === null ? "Asking the browser…" : keepWords(state, isSecureContext)}</p>
      {askedToKeepAt > 0 && (
        <p>
          Asked {dayTime(askedToKeepAt, clock(), format.locale)}.{" "}
          {state === "may-be-cleared" && noAnswerHelps}
        </p>
      )}
      {room !== null && (
        <p className={sheet["soft"]}>
          {megabytes(room.usedBytes)} used of about {megabytes(room.quotaBytes)} allowed, by the browser's
          estimate.
        </p>
      )}
      {state === "may-be-cleared" && (
        <Button
          onPress={async () => {
            setState(await askToKeep());
            await change({ askedToKeepAt: clock(), keepAnswerSeenAt: clock() });
          }}
        >
          Ask the browser to keep it
        </Button>
      )}
      <details>
        <summary>If the browser clears the log</summary>
        <p>
          Beside the log Dipbook keeps a note: how many entries there are, when the last was written and when
          the last backup was made. With it an empty log is not taken for a new one. The note lies in the
          page's local storage and in a cookie.
        </p>
        <ul className={css["problems"]}>
          <li>
            Chrome, Edge and others of their kind: the note survives when the log is cleared to make room.
          </li>
          <li>
            Firefox: local storage goes with the log. The cookie stays, unless cookies are cleared when
            Firefox is closed.
          </li>
          <li>
            Safari, and every browser on an iPhone: after seven days of use without a tap in Dipbook, log and
            note can both go. An app on the home screen is spared that.
          </li>
          <li>
            “Clear site data”, by you or by a cleaning program, takes the log and the note in every browser.
          </li>
        </ul>
        <p>Where all is cleared Dipbook can't know that there was a log. Only a backup brings it back.</p>
      </details>
    </Card>
  );
}
