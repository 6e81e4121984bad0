import { Link } from "wouter";
import { useSettings } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { MoveCard } from "../backup/MoveCard.tsx";
import { RestoreBackupCard } from "../backup/RestoreBackupCard.tsx";
import { SaveCard } from "../backup/SaveCard.tsx";
import { DemoOffer } from "../demo/DemoOffer.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { HowToLink } from "../../base/parts/HowToLink.tsx";
import { Choice } from "../../base/forms/Choice.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { BucketHoursFields } from "./BucketHoursFields.tsx";
import { AboutCard } from "./AboutCard.tsx";
import { InstallCard } from "./InstallCard.tsx";
import { KeepCard } from "./KeepCard.tsx";
import { RebuildCard } from "./RebuildCard.tsx";
import { SignName } from "./SignName.tsx";
import { Tick } from "../../base/parts/Tick.tsx";
import { UnreadCard } from "./UnreadCard.tsx";
import sheet from "../../base/styles/sheet.module.css";
import css from "./SettingsPage.module.css";

const units = [
  { value: "metric", label: "Metric", hint: "°C, mm, kg" },
  { value: "us", label: "US", hint: "°F, in, lb" },
  { value: "mixed", label: "Mixed", hint: "°F, mm, lb" },
] as const;
const themes = [
  { value: "system", label: "As the phone" },
  { value: "light", label: "Light" },
  { value: "dark", label: "Dark" },
  { value: "sun", label: "Sunlight", hint: "Black on white, high contrast." },
] as const;

export function SettingsPage() {
  const [settings, change] = useSettings();
  const format = useFormat();
  return (
    <Page title="Settings" back={paths.shop}>
      <div className={`${sheet["stack"]} ${css["cards"]}`}>
        <Card title="Units and look">
          <Choice
            label="Units"
            options={units}
            value={settings.units}
            onChange={(chosen) => void change({ units: chosen })}
          />
          <p className={sheet["soft"]}>
            A shell of {format.show("mm", 7.4)}, a pour at {format.show("temp", 1150)}, {format.show("kg", 4)}{" "}
            of bronze. This only changes what you read and type.
          </p>
          <Choice
            label="Theme"
            options={themes}
            value={settings.theme}
            onChange={(theme) => void change({ theme })}
          />
        </Card>
        <Card title="At the bucket">
          <Tick
            label="Keep the screen awake"
            ticked={settings.keepAwake}
            onChange={(keepAwake) => void change({ keepAwake })}
          />
          <Tick
            label="Tone when a piece is due"
            ticked={settings.tone}
            onChange={(tone) => void change({ tone })}
          />
          <Tick
            label="Say its name aloud"
            ticked={settings.speech}
            onChange={(speech) => void change({ speech })}
          />
          <p>
            <Link href={paths.ring} className={sheet["link"]}>
              Test the alarms on this device
            </Link>
          </p>
          <HowToLink to="phone" />
        </Card>
        <Card title="When you dip">
          <BucketHoursFields />
        </Card>
        <Card title="Signing">
          <SignName />
        </Card>
        <KeepCard />
        <InstallCard />
        <div id="backup">
          <SaveCard />
        </div>
        <div id="restore">
          <RestoreBackupCard />
        </div>
        <MoveCard />
        <div id="demo">
          <DemoOffer />
        </div>
        <UnreadCard />
        <RebuildCard />
        <AboutCard />
      </div>
    </Page>
  );
}
