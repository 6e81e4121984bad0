import { Flame, FlaskRound } from "lucide-react";
import { Link } from "wouter";
import { paths } from "../../base/state/paths.ts";
import { Page } from "../../base/parts/Page.tsx";
import { MeltsSection } from "./MeltsSection.tsx";
import { PoursSection } from "./PoursSection.tsx";
import { RunsSection } from "./RunsSection.tsx";
import sheet from "../../base/styles/sheet.module.css";
import css from "./fire.module.css";

const places = [
  {
    href: paths.kilns,
    name: "Kilns and furnaces",
    says: "Power, limits and what they have shown",
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
      <ul className={`${sheet["stack3"]} ${sheet["list"]} ${css["places"]}`}>
        {places.map(({ href, name, says, Icon }) => (
          <li key={href}>
            <Link href={href}>
              <Icon aria-hidden="true" size={24} />
              <span>
                <strong>{name}</strong>
                <small>{says}</small>
              </span>
            </Link>
          </li>
        ))}
      </ul>
    </Page>
  );
}
