import { Archive, BellRing, BookOpen, FlaskConical, Settings, Sigma } from "lucide-react";
import { Link } from "wouter";
import { paths } from "../app/paths.ts";
import { Page } from "../parts/Page.tsx";
import styles from "./ShopPage.module.css";

const places = [
  {
    href: paths.recipes,
    name: "Recipes",
    says: "Coats, their stucco and how dry each must be",
    Icon: BookOpen,
  },
  { href: paths.buckets, name: "Buckets", says: "Slurries and their readings", Icon: FlaskConical },
  {
    href: paths.due,
    name: "What is due",
    says: "Ready times, and what on this device can ring",
    Icon: BellRing,
  },
  { href: paths.archive, name: "Archive", says: "Pieces that are through", Icon: Archive },
  {
    href: paths.figures,
    name: "Own figures",
    says: "Drying factor and strength, learned or set",
    Icon: Sigma,
  },
  { href: paths.settings, name: "Settings", says: "Units, look, backup, demo shop", Icon: Settings },
] as const;

export function ShopPage() {
  return (
    <Page title="Shop">
      <ul className={styles["list"]}>
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
