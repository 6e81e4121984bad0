import { Link } from "wouter";
import type { NotifyPermission } from "../../../device/notify.ts";
import type { Settings } from "../../../storage/settings.ts";
import { paths } from "../../base/state/paths.ts";
import { useNow } from "../../base/state/useNow.ts";
import { ago } from "../../base/format/time.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./due.module.css";
import { layerWords, testedWords } from "../../base/alarm/ringLabel.ts";
import type { useScreenAlarm } from "../../base/alarm/useScreenAlarm.ts";

const permissionWords: Record<NotifyPermission, string> = {
  granted: "Notifications are allowed.",
  denied: "Notifications are blocked. Allow them for this app in the browser’s or phone’s settings.",
  "not-asked": "You have not been asked yet.",
  missing: "This browser has none here. On an iPhone, add the app to the Home Screen first.",
};

/** The ways to be told, each with what it can promise and what was found on this device. */
export function RingWays(props: {
  readonly alarm: ReturnType<typeof useScreenAlarm>;
  readonly permission: NotifyPermission;
  readonly onAsk: () => Promise<void>;
  readonly settings: Settings;
}) {
  const { alarm, permission, onAsk, settings } = props;
  const { ringTested: tested, tone, speech } = settings;
  const now = useNow();
  const say = (at: number): string => ago(at, now);
  return (
    <Card title="Alarms">
      <dl className={`${sheet["stack"]} ${styles["ways"]}`}>
        <div>
          <dt>This screen, kept on</dt>
          <dd>
            {layerWords.screen} {testedWords(tested["screen"], say)} {alarm.words}{" "}
            {!tone && !speech && "Tone and voice are both off in Settings: you would hear nothing."}
          </dd>
          <dd>
            <Button pressed={alarm.on} onPress={alarm.on ? alarm.stop : alarm.start}>
              {alarm.on ? "Stop keeping it on" : "Keep it on and sound alarms here"}
            </Button>
          </dd>
        </div>
        <div>
          <dt>Your calendar</dt>
          <dd>
            {layerWords.calendar} {testedWords(tested["calendar"], say)} When a time has moved, add it again:
            it replaces the old one.
          </dd>
        </div>
        <div>
          <dt>Notifications</dt>
          <dd>
            {layerWords.notice} {testedWords(tested["notice"], say)} {permissionWords[permission]}
          </dd>
          {permission === "not-asked" && (
            <dd>
              <Button onPress={onAsk}>Allow notifications</Button>
            </dd>
          )}
        </div>
        <div>
          <dt>The number on the app’s icon</dt>
          <dd>
            Makes no sound, and many phones don’t show it. It counts what was dry when you last opened the
            app.
          </dd>
        </div>
      </dl>
      <p>
        <Link href={paths.ring} className={sheet["link"]}>
          Test the alarms on this device
        </Link>
      </p>
      <p className={sheet["soft"]}>
        Don’t rely on these alarms for kiln or metal: use a controller or a person on watch.
      </p>
    </Card>
  );
}
