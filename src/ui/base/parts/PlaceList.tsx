import type { LucideIcon } from "lucide-react";
import { Link } from "wouter";
import sheet from "../styles/sheet.module.css";
import css from "./PlaceList.module.css";

type Place = {
  readonly href: string;
  readonly name: string;
  readonly says: string;
  readonly Icon: LucideIcon;
};

/** Ways to further screens, each with what is there. */
export function PlaceList({ places }: { readonly places: readonly Place[] }) {
  return (
    <ul className={`${sheet["stack3"]} ${sheet["list"]} ${css["places"]}`}>
      {places.map(({ href, name, says, Icon }) => (
        <li key={href}>
          <Link href={href} className={`${sheet["panel"]} ${css["place"]}`}>
            <Icon aria-hidden="true" size={24} />
            <span className={sheet["cell"]}>
              <strong>{name}</strong>
              <small className={sheet["soft"]}>{says}</small>
            </span>
          </Link>
        </li>
      ))}
    </ul>
  );
}
