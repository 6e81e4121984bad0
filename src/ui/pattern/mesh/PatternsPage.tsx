import { useEffect, useEffectEvent } from "react";
import { Link } from "wouter";
import { onOpenedFile } from "../../../device/openedFiles.ts";
import { takeShared } from "../../../device/sharedFile.ts";
import { usePatterns } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { Ago } from "../../base/parts/Ago.tsx";
import { Empty } from "../../base/parts/Empty.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { OpenFile } from "./OpenFile.tsx";
import sheet from "../../base/styles/sheet.module.css";
import css from "./pattern.module.css";
import { useOpenPattern } from "./useOpenPattern.ts";

/** Mesh files kept on this device, and the door for new ones: picker, drop, share sheet, "open with". */
export function PatternsPage() {
  const door = useOpenPattern();
  const patterns = usePatterns();
  const take = useEffectEvent((file: File | null) => {
    if (file !== null) void door.open(file, file.name);
  });
  const tell = useEffectEvent(door.tell);
  useEffect(() => {
    onOpenedFile((file) => take(file));
    const scope = new URL(import.meta.env.BASE_URL, location.origin).href;
    void takeShared({ scope }).then((file) => take(file));
    if (new URLSearchParams(location.search).get("shared") === "none")
      tell("What was shared was not a file. Share the mesh file itself: STL, OBJ, PLY or 3MF.");
  }, []);
  return (
    <Page title="Patterns" back={paths.shop}>
      <p className={`${sheet["pale"]} ${sheet["wideText"]}`}>
        From the mesh of a pattern: how much metal and shell it takes, how high the metal stands over it,
        where air and plastic stay, where it is thin, thick and flat.
      </p>
      <OpenFile door={door} />
      {patterns !== undefined && patterns.length === 0 && (
        <Empty title="No pattern is kept yet">
          <p>A file you open stays here with what was found, until you remove it.</p>
        </Empty>
      )}
      <ul className={css["list"]}>
        {patterns?.map(({ id, name, savedAt }) => (
          <li key={id}>
            <Link href={paths.pattern(id)}>
              <strong>{name}</strong>
              <small>
                Last touched <Ago at={savedAt} />
              </small>
            </Link>
          </li>
        ))}
      </ul>
    </Page>
  );
}
