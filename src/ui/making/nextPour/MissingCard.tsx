import { Link } from "wouter";
import { Card } from "../../base/parts/Card.tsx";
import sheet from "../../base/styles/sheet.module.css";
import type { Missing } from "./missing.ts";

/** What is not known yet, each with the way to where it is given. */
export function MissingCard({ facts }: { readonly facts: readonly Missing[] }) {
  return (
    <Card title="Needed first" tone="note">
      <ul className={`${sheet["stack3"]} ${sheet["list"]}`}>
        {facts.map(({ key, name, says, href, link }) => (
          <li key={key} className={sheet["lines"]}>
            <strong className={sheet["breaks"]}>{name}</strong>
            <span>{says}</span>
            <Link href={href} className={sheet["link"]} aria-label={`${link}: ${name}`}>
              {link}
            </Link>
          </li>
        ))}
      </ul>
    </Card>
  );
}
