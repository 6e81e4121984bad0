import { useId, useState } from "react";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { stageWords } from "./fileWords.ts";
import sheet from "../../base/styles/sheet.module.css";
import css from "./pattern.module.css";
import type { useOpenPattern } from "./useOpenPattern.ts";

/** A file input takes a dropped file by itself. Endings first; the rest is for phones that know files by their kind only. */
const accept = ".stl,.obj,.ply,.3mf,model/*,application/sla,application/octet-stream";

export function OpenFile({
  door: { opening, fault, open, tell, cancel },
}: {
  readonly door: ReturnType<typeof useOpenPattern>;
}) {
  const id = useId();
  const [over, setOver] = useState(false);
  const take = (file: File | undefined): void => {
    if (file !== undefined) void open(file, file.name);
  };
  const sample = async (): Promise<void> => {
    const home = new URL(import.meta.env.BASE_URL, location.origin);
    const got = await fetch(new URL("sample-pattern.stl", home)).catch(() => null);
    if (got?.ok === true) await open(await got.blob(), "sample-pattern.stl");
    else tell("The sample is not on this device yet. Open the app once online.");
  };
  return (
    <Card title="Open a file">
      {opening === null ? (
        <>
          <label htmlFor={id} className={css["drop"]} data-over={over || undefined}>
            <strong>Choose a 3D file</strong>
            <span className={sheet["soft"]}>STL, OBJ, PLY or 3MF. Or drop it here.</span>
            <input
              id={id}
              type="file"
              accept={accept}
              aria-label="3D file"
              onDragEnter={() => setOver(true)}
              onDragLeave={() => setOver(false)}
              onDrop={() => setOver(false)}
              onChange={(event) => {
                take(event.target.files?.[0]);
                // The same file may be chosen again after it has been mended.
                event.target.value = "";
              }}
            />
          </label>
          <Button kind="quiet" onPress={sample}>
            Try the sample
          </Button>
        </>
      ) : (
        <div className={`${sheet["stack3"]} ${sheet["breaks"]} ${css["opening"]}`} role="status">
          <p>
            {stageWords[opening.progress.stage]}: <strong>{opening.name}</strong>
          </p>
          <progress aria-label="Progress" value={opening.progress.share} />
          <Button kind="secondary" onPress={cancel}>
            Stop
          </Button>
        </div>
      )}
      {fault !== null && (
        <p role="alert" className={`${sheet["refused"]} ${sheet["held"]} ${css["refused"]}`}>
          {fault}
        </p>
      )}
      <p className={sheet["soft"]}>The file stays on this device; nothing is sent anywhere.</p>
    </Card>
  );
}
