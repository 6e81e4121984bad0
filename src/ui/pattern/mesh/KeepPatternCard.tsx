import { useState } from "react";
import { useLocation } from "wouter";
import { removePattern } from "../../../storage/patterns.ts";
import { paths } from "../../base/state/paths.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import sheet from "../../base/styles/sheet.module.css";
import css from "./pattern.module.css";
import type { PatternController } from "./usePatternController.ts";

/** What is kept of the pattern on this device. */
export function KeepPatternCard({ door }: { readonly door: PatternController }) {
  const { study, forget } = door;
  const { db } = useShop();
  const format = useFormat();
  const [, goTo] = useLocation();
  const [asked, setAsked] = useState(false);
  const { sizeBytes } = study.file;
  const size =
    sizeBytes < 1e5 ? `${format.number(sizeBytes / 1e3, 1)} kB` : `${format.number(sizeBytes / 1e6, 1)} MB`;
  const remove = async (): Promise<void> => {
    forget();
    await removePattern(db, study.id);
    goTo(paths.patterns, { replace: true });
  };
  return (
    <Card title="Kept on this device">
      <p className={sheet["breaks"]}>
        {study.file.name}, {size}. Its results and picture are saved, so it opens at once.
      </p>
      <OriginalTick door={door} size={size} />
      {asked ? (
        <>
          <p>Pieces started from it keep their log. The mesh, its marks and results are deleted.</p>
          <div className={sheet["row"]}>
            <Button kind="danger" onPress={remove}>
              Remove the pattern
            </Button>
            <Button kind="quiet" onPress={() => setAsked(false)}>
              Keep it
            </Button>
          </div>
        </>
      ) : (
        <Button kind="quiet" onPress={() => setAsked(true)}>
          Remove the pattern…
        </Button>
      )}
    </Card>
  );
}

function OriginalTick({
  door: { study, change, file },
  size,
}: {
  readonly door: PatternController;
  readonly size: string;
}) {
  const canKeep = study.original !== null || file() !== null;
  return (
    <>
      <label className={`${sheet["line3"]} ${sheet["tap"]} ${css["tick"]}`}>
        <input
          type="checkbox"
          checked={study.original !== null}
          disabled={!canKeep}
          onChange={(event) => {
            const original = event.target.checked ? file() : null;
            change((now) => ({ ...now, original }));
          }}
        />
        Keep the file itself too, {size}
      </label>
      {!canKeep && <p className={sheet["soft"]}>Open the file again to keep it.</p>}
    </>
  );
}
