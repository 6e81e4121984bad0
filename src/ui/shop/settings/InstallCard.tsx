import { useSyncExternalStore } from "react";
import { install, installing, watchInstall, type Installing } from "../../../device/install.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { useSettings } from "../../base/state/live.ts";
import { useShop } from "../../base/state/shop.tsx";
import sheet from "../../base/styles/sheet.module.css";

const useInstalling = (): Installing => useSyncExternalStore(watchInstall, installing);

const says: Readonly<Record<Installing, string>> = {
  installed: "Dipbook runs here as an app of its own.",
  offered: "Put Dipbook on this device as an app. Nothing is sent anywhere, and the log stays where it is.",
  "by-hand": "In Safari tap Share, then “Add to Home Screen”. Then open Dipbook from there.",
  none: "This browser makes no offer now. Its menu may have “Install app” or “Add to home screen”.",
};

/** On iOS the log of the home screen's app is its own: said before, for it begins empty. */
const ownLogOnIos =
  "The app on the home screen has a log of its own. Save a backup here first, and restore it there.";

/** What installing gives on this device, and the way to do it. */
export function InstallCard() {
  const state = useInstalling();
  return (
    <Card title="As an app">
      <p role="status">{says[state]}</p>
      {state === "by-hand" && <p>{ownLogOnIos}</p>}
      <ul className={sheet["bullets"]}>
        <li>
          Storage:{" "}
          {state === "by-hand"
            ? "Safari no longer clears the log after seven days without a tap."
            : "the browser keeps the log more readily when room runs out."}
        </li>
        <li>
          Alarms:{" "}
          {state === "by-hand"
            ? "notifications are possible only in the installed app."
            : "the app stays open more easily. A closed app still can't ring; use the calendar file."}
        </li>
        <li>Full screen: no address bar, so more room at the bucket and at the pour.</li>
        <li>
          A long press on the icon leads straight to the dip, the air or the slurry, where the device has
          that.
        </li>
      </ul>
      {state === "offered" && <Button onPress={() => void install()}>Install it</Button>}
    </Card>
  );
}

/** One quiet line on the rack after the first day of the log, until it is answered. */
export function InstallHint() {
  const { clock } = useShop();
  const [{ askedToKeepAt, keepAnswerSeenAt, installHintSeenAt }, change] = useSettings();
  const state = useInstalling();
  // After a day of one's own entries the browser is asked to keep the log; this comes once that answer is read.
  if (askedToKeepAt === 0 || askedToKeepAt > keepAnswerSeenAt) return null;
  if (installHintSeenAt > 0 || state === "installed" || state === "none") return null;
  const seen = (): Promise<unknown> => change({ installHintSeenAt: clock() });
  return (
    <Card title="Dipbook as an app">
      <p>{says[state]}</p>
      {state === "by-hand" && <p>{ownLogOnIos}</p>}
      <div className={sheet["row"]}>
        {state === "offered" && (
          <Button
            onPress={async () => {
              await install();
              await seen();
            }}
          >
            Install it
          </Button>
        )}
        <Button kind="quiet" onPress={seen}>
          {state === "offered" ? "Not now" : "Understood"}
        </Button>
      </div>
    </Card>
  );
}
