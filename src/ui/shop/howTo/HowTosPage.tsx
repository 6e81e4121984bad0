import { Cable, Droplets, Hammer, HardDriveDownload, Ruler, Scale, Thermometer } from "lucide-react";
import { howToNames } from "../../base/format/howToNames.ts";
import { Page } from "../../base/parts/Page.tsx";
import { PlaceList } from "../../base/parts/PlaceList.tsx";
import { paths } from "../../base/state/paths.ts";

const rows = [
  { id: "weigh", says: "Three weights of a coat, then until it is dry", Icon: Scale },
  { id: "cup", says: "Seconds that can be compared from day to day", Icon: Droplets },
  { id: "hygrometer", says: "Where to read the air of the room", Icon: Thermometer },
  { id: "caliper", says: "The thickness your own coats build", Icon: Ruler },
  { id: "bars", says: "The strength of your own shell", Icon: Hammer },
  { id: "phone", says: "Hands free at the bucket", Icon: Cable },
  { id: "backup", says: "A second copy of the log, in ten minutes", Icon: HardDriveDownload },
] as const;

const places = rows.map(({ id, ...row }) => ({ href: paths.howTo(id), name: howToNames[id], ...row }));

/** Every page of work by hand; the form that needs one leads to it too. */
export function HowTosPage() {
  return (
    <Page title="How to" back={paths.shop}>
      <PlaceList places={places} />
    </Page>
  );
}
