import { useState } from "react";
import { Link } from "wouter";
import { useArchive } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { endWords } from "../../base/format/phaseWords.ts";
import { Empty } from "../../base/parts/Empty.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { TextField } from "../../base/forms/TextField.tsx";
import { When } from "../../base/parts/When.tsx";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./ArchivePage.module.css";
import { isNamed } from "./rackFilter.ts";

/** Pieces that are through, scrapped or put away, the last touched first. */
export function ArchivePage() {
  const archive = useArchive();
  const [search, setSearch] = useState("");
  const shown = (archive ?? [])
    .filter((piece) => isNamed(piece, search))
    .toSorted((a, b) => b.lastAt - a.lastAt);
  return (
    <Page title="Archive" back={paths.shop}>
      {archive?.length === 0 && (
        <Empty title="Nothing archived yet">
          <p>
            A piece comes here once its result is recorded, when it is scrapped, or when you archive it from
            its page.
          </p>
        </Empty>
      )}
      {archive !== undefined && archive.length > 0 && (
        <>
          <TextField label="Search the archive" value={search} onChange={setSearch} />
          <ul
            className={`${sheet["list"]} ${sheet["closed"]} ${styles["list"]}`}
            aria-label="Archived pieces"
          >
            {shown.map((piece) => (
              <li key={piece.id}>
                <Link href={paths.piece(piece.id)}>
                  <strong>{piece.plan.name}</strong>
                  <span>
                    {endWords(piece)} · <When at={piece.lastAt} />
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
