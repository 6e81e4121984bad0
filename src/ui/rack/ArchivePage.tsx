import { useState } from "react";
import { Link } from "wouter";
import { useWholeArchive } from "../app/live.ts";
import { paths } from "../app/paths.ts";
import { phaseWords } from "../format/phaseWords.ts";
import { Empty } from "../parts/Empty.tsx";
import { Page } from "../parts/Page.tsx";
import { TextField } from "../parts/TextField.tsx";
import { When } from "../parts/When.tsx";
import styles from "./ArchivePage.module.css";
import { FaultCards } from "./FaultCards.tsx";
import { rackFilter } from "./rackFilter.ts";

/** Pieces that are through, scrapped or put away, the last touched first. */
export function ArchivePage() {
  const whole = useWholeArchive();
  const archive = whole?.items;
  const [search, setSearch] = useState("");
  const shown = rackFilter(archive ?? [], { filter: "all", search }).toSorted(
    (a, b) => b.standing.piece.lastAt - a.standing.piece.lastAt,
  );
  return (
    <Page title="Archive" back={paths.shop}>
      {whole !== undefined && <FaultCards faults={whole.faults} />}
      {archive?.length === 0 && whole?.faults.length === 0 && (
        <Empty title="Nothing put away yet">
          <p>
            A piece comes here once its outcome is told, when it is scrapped, or when you archive it from its
            page.
          </p>
        </Empty>
      )}
      {archive !== undefined && archive.length > 0 && (
        <>
          <TextField label="Search the archive" value={search} onChange={setSearch} />
          <ul className={styles["list"]} aria-label="Archived pieces">
            {shown.map(({ standing: { piece } }) => (
              <li key={piece.id}>
                <Link href={paths.piece(piece.id)}>
                  <strong>{piece.plan.name}</strong>
                  <span>
                    {piece.outcome === null ? phaseWords[piece.phase] : `came out ${piece.outcome.result}`} ·{" "}
                    <When at={piece.lastAt} />
                  </span>
                </Link>
              </li>
            ))}
          </ul>
        </>
      )}
    </Page>
  );
}
