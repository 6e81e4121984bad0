import type { ReactNode } from "react";
import { Link } from "wouter";
import type { Finding } from "../../../rules/finding.ts";
import { useFormat } from "../state/useFormat.ts";
import { findingText } from "../format/findingWords.ts";
import { paths } from "../state/paths.ts";
import { Card } from "./Card.tsx";
import sheet from "../styles/sheet.module.css";
import styles from "./FindingCard.module.css";
import { LinkButton } from "./LinkButton.tsx";
import { LevelMark } from "./LevelMark.tsx";

/** A finding in words. `entriesHref` makes a link of an entry it rests on, by the entry's id. */
export function FindingCard(props: {
  readonly finding: Finding;
  readonly entriesHref?: ((entryId: string) => string) | undefined;
}) {
  const { finding, entriesHref } = props;
  const { title, says, remedy } = findingText(finding, useFormat());
  return (
    <article aria-label={title}>
      <Card tone={finding.level}>
        <div className={`${sheet["row13"]} ${sheet["baseline"]} ${styles["head"]}`}>
          <LevelMark level={finding.level} />
          <h3>{title}</h3>
        </div>
        <p>{says}</p>
        {remedy !== "" && (
          <p>
            <strong>What to do: </strong>
            {remedy}
          </p>
        )}
        {finding.rule === "air-reading-old" && (
          <div>
            <LinkButton href={paths.room(finding.texts["roomId"] ?? "")}>
              Log temperature and humidity
            </LinkButton>
          </div>
        )}
        <details className={`${sheet["soft"]} ${styles["more"]}`}>
          <summary>What this rests on</summary>
          <p>{finding.source}</p>
          {entriesHref !== undefined && finding.entries.length > 0 && (
            <ul>
              {finding.entries.map((id, place) => (
                <li key={id}>
                  <EntryLink href={entriesHref(id)}>
                    {finding.entries.length === 1 ? "The entry in the log" : `Entry ${place + 1} in the log`}
                  </EntryLink>
                </li>
              ))}
            </ul>
          )}
        </details>
      </Card>
    </article>
  );
}

/** A place on this same screen is the browser's own business; another screen is the router's. */
function EntryLink({ href, children }: { readonly href: string; readonly children: ReactNode }) {
  return href.startsWith("#") ? <a href={href}>{children}</a> : <Link href={href}>{children}</Link>;
}
