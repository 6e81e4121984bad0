import type { Finding } from "../../../rules/finding.ts";
import { FindingCard } from "../../base/parts/FindingCard.tsx";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./PiecePage.module.css";

/** What was found on a piece: holds and watches in full, notes behind one line. Nothing where there is none. */
export function FindingList({ findings }: { readonly findings: readonly Finding[] }) {
  if (findings.length === 0) return null;
  const notes = findings.filter(({ level }) => level === "note");
  return (
    <section id="findings" className={`${sheet["stack"]} ${styles["stack"]}`} aria-label="Findings">
      <h2 className={styles["title"]}>Findings</h2>
      <Cards findings={findings.filter(({ level }) => level !== "note")} />
      {notes.length > 0 && (
        <details className={styles["notes"]}>
          <summary>{notes.length === 1 ? "1 note" : `${notes.length} notes`}</summary>
          <div className={`${sheet["stack"]} ${styles["stack"]}`}>
            <Cards findings={notes} />
          </div>
        </details>
      )}
    </section>
  );
}

function Cards({ findings }: { readonly findings: readonly Finding[] }) {
  return findings.map((finding) => (
    <FindingCard
      key={`${finding.rule} ${finding.variant} ${finding.entries.join(" ")}`}
      finding={finding}
      entriesHref={(entryId) => `#entry-${entryId}`}
    />
  ));
}
