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
      tell("That was not a 3D file. Share the file itself: STL, OBJ, PLY or 3MF.");
  }, []);
  return (
    <Page title="Patterns" back={paths.shop}>
      <p className={`${sheet["pale"]} ${sheet["wideText"]}`}>
        From a 3D file: metal, shell, head, trapped air and plastic, and where it is thin, thick or flat.
      </p>
      <OpenFile door={door} />
      {patterns !== undefined && patterns.length === 0 && (
        <Empty title="No pattern yet">
          <p>Files you open stay here with their results until you remove them.</p>
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
