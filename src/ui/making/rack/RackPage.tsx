import { Plus } from "lucide-react";
import { useState } from "react";
import { Link } from "wouter";
import { useArchive, useWholeRack } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { LogNotices, useClearedLog } from "../../shop/backup/LogNotices.tsx";
import { InstallHint } from "../../shop/settings/InstallCard.tsx";
import { Button } from "../../base/parts/Button.tsx";
import { LinkButton } from "../../base/parts/LinkButton.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { FirstScreen } from "../first/FirstScreen.tsx";
import { CameDue } from "./CameDue.tsx";
import { FaultCards } from "./FaultCards.tsx";
import { rackFilter, rackTurn, type RackFilter } from "./rackFilter.ts";
import { RackCard } from "./RackCard.tsx";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./RackPage.module.css";
import { useSteadyOrder } from "./useSteadyOrder.ts";

const filters: readonly { readonly filter: RackFilter; readonly name: string }[] = [
  { filter: "all", name: "All" },
  { filter: "hands", name: "To do" },
  { filter: "drying", name: "Drying" },
  { filter: "fire", name: "In fire" },
];

export function RackPage() {
  const whole = useWholeRack();
  const rack = whole?.items;
  const [filter, setFilter] = useState<RackFilter>("all");
  const [search, setSearch] = useState("");
  const steady = useSteadyOrder(rack ?? [], (item) => item.standing.piece.id);
  const shown = rackFilter(steady, { filter, search });
  if (rack?.length === 0 && whole?.faults.length === 0) return <EmptyRack />;
  return (
    <Page title="Rack" actions={<StartKey />}>
      {whole !== undefined && <FaultCards faults={whole.faults} />}
      {rack !== undefined && rack.length > 0 && (
        <>
          <LogNotices />
          <InstallHint />
          <CameDue items={rack} />
          <div className={`${sheet["stack2"]} ${styles["sieve"]}`}>
            <div className={styles["filters"]} role="group" aria-label="Show">
              {filters.map(({ filter: value, name }) => (
                <Button key={value} pressed={filter === value} onPress={() => setFilter(value)}>
                  {name}{" "}
                  {value === "all" ? rack.length : rack.filter((item) => rackTurn(item) === value).length}
                </Button>
              ))}
            </div>
            <input
              type="search"
              className={`${sheet["frame"]} ${styles["search"]}`}
              aria-label="Search the rack"
              placeholder="Search"
              value={search}
              onChange={(event) => setSearch(event.target.value)}
            />
          </div>
          <ul className={`${sheet["stack3"]} ${sheet["list"]} ${styles["list"]}`} aria-label="Pieces in work">
            {shown.map((item) => (
              <RackCard key={item.standing.piece.id} item={item} />
            ))}
          </ul>
          {shown.length === 0 && <p className={sheet["pale"]}>No piece matches.</p>}
        </>
      )}
      {rack !== undefined && <RackFoot />}
    </Page>
  );
}

const StartKey = () => (
  <LinkButton kind="primary" href={paths.newPiece}>
    <Plus aria-hidden="true" size={20} /> Start a piece
  </LinkButton>
);

const RackFoot = () => (
  <p className={styles["foot"]}>
    <Link href={paths.timeline}>The next 48 hours</Link>
    <Link href={paths.nextPour}>Next pour day</Link>
    <Link href={paths.due}>Due and alarms</Link>
    <Link href={paths.archive}>Archive</Link>
  </p>
);

/** Nothing in work: the first screen where there never was a piece, else the rack with what can be said of it. */
function EmptyRack() {
  const cleared = useClearedLog();
  const archive = useArchive();
  if (archive === undefined) return <Page title="Rack">{null}</Page>;
  if (cleared === null && archive.length === 0) return <FirstScreen />;
  return (
    <Page title="Rack" actions={<StartKey />}>
      {cleared?.notice ?? <p>No piece is on the rack.</p>}
      <RackFoot />
    </Page>
  );
}
