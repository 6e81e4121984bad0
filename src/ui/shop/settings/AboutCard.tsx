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
          ? "New versions download by themselves and wait until you install them."
          : "A new version is ready."}
      </p>
      {takeUpdate !== null && <Button onPress={takeUpdate}>Use the new version</Button>}
      <p>
        Everything stays on this device, and it works offline after the first visit. There is no other copy,
        so save backups.
      </p>
      <p>{standingCaution}</p>
    </Card>
  );
}
