import { CalendarClock, Flame, FlaskRound } from "lucide-react";
import { paths } from "../../base/state/paths.ts";
import { Page } from "../../base/parts/Page.tsx";
import { PlaceList } from "../../base/parts/PlaceList.tsx";
import { MeltsSection } from "./MeltsSection.tsx";
import { PoursSection } from "./PoursSection.tsx";
import { RunsSection } from "./RunsSection.tsx";
import css from "./fire.module.css";

const places = [
  {
    href: paths.nextPour,
    name: "Next pour day",
    says: "What fits the crucible and kiln, and which coats to do first",
    Icon: CalendarClock,
  },
  {
    href: paths.kilns,
    name: "Kilns and furnaces",
    says: "Power, limits and past results",
    Icon: Flame,
  },
  { href: paths.alloys, name: "Alloys", says: "Heat, hazards, limits and your own copies", Icon: FlaskRound },
] as const;

/** Everything with fire in it: kiln runs, melts and pours, what is in work first. */
export function FirePage() {
  return (
    <Page title="Fire">
      <div className={css["sections"]}>
        <RunsSection />
        <MeltsSection />
        <PoursSection />
      </div>
      <PlaceList places={places} />
    </Page>
  );
}
