import type { Finding } from "../../../rules/finding.ts";
import { findingText } from "../../base/format/findingWords.ts";
import { FindingCard } from "../../base/parts/FindingCard.tsx";
import { LevelMark } from "../../base/parts/LevelMark.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./PiecePage.module.css";

/** What was found on a piece: holds and watches in full, a note behind a line of its own. Nothing where there is none. */
export function FindingList({ findings }: { readonly findings: readonly Finding[] }) {
  if (findings.length === 0) return null;
  const notes = findings.filter(({ level }) => level === "note");
  return (
    <section id="findings" className={`${sheet["stack"]} ${styles["stack"]}`} aria-label="Findings">
      <h2 className={styles["title"]}>Findings</h2>
      {findings
        .filter(({ level }) => level !== "note")
        .map((finding) => (
          <InFull key={keyOf(finding)} finding={finding} />
        ))}
      {notes.length > 0 && (
        <div>
          {notes.map((note) => (
            <FoldedNote key={keyOf(note)} note={note} />
          ))}
        </div>
      )}
    </section>
  );
}

const keyOf = ({ rule, variant, entries }: Finding): string => `${rule} ${variant} ${entries.join(" ")}`;

const InFull = ({ finding }: { readonly finding: Finding }) => (
  <FindingCard finding={finding} entriesHref={(entryId) => `#entry-${entryId}`} />
);

function FoldedNote({ note }: { readonly note: Finding }) {
  const { title } = findingText(note, useFormat());
  return (
    <details className={styles["note"]}>
      <summary>
        <LevelMark level="note" />
        <span>{title}</span>
      </summary>
      <InFull finding={note} />
    </details>
  );
}
