import { schemaVersion } from "../../../logbook/entries/lifts.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { standingCaution } from "../../base/cautions/cautionWords.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { version } from "../../base/state/version.ts";

export function AboutCard() {
  const takeUpdate = useFleeting((fleeting) => fleeting.takeUpdate);
  return (
    <Card title="About">
      <p>
        Dipbook {version}, log format {schemaVersion}.{" "}
        {takeUpdate === null
          ? "A new version is fetched by itself when there is a network, and waits until you let it in."
          : "A new version waits."}
      </p>
      {takeUpdate !== null && <Button onPress={takeUpdate}>Use the new version</Button>}
      <p>
        All of it stays on this device: log, photos, settings, half-written forms. Nothing is sent anywhere,
        and after the first visit no network is needed. So no one else has a copy either: save backups.
      </p>
      <p>{standingCaution}</p>
    </Card>
  );
}
