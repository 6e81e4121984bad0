import { useRef, useState } from "react";
import { BigKey } from "../../base/glove/BigKey.tsx";
import { BucketScreen, type Way } from "../../base/glove/BucketScreen.tsx";
import type { DipTile } from "./dipTile.ts";
import { pagesOf } from "../../base/glove/pages.ts";
import { TileKey } from "./TileKey.tsx";
import styles from "./DipTiles.module.css";
import type { DipVisit } from "./useDipVisit.ts";
import type { SignalMessage } from "../../base/glove/useSignals.ts";

const isOpen = (tile: DipTile): boolean => tile.given === null && !tile.leftOut;

/** The tiles of a visit, a screenful at a time. Nothing here moves by itself. */
export function DipTiles(props: {
  readonly visit: DipVisit;
  readonly title: string;
  readonly sub: string;
  readonly told: SignalMessage | null;
  readonly out: Way;
  readonly page: number;
  readonly onPage: (page: number) => void;
  readonly onTap: (tile: DipTile) => Promise<unknown>;
  readonly onChange: (tile: DipTile) => void;
  readonly onElse: () => void;
}) {
  const { visit, title, sub, told, out, page, onPage, onTap, onChange, onElse } = props;
  const { tiles, last, trouble } = visit;
  const pages = pagesOf(tiles, { alone: 3, paged: 2 });
  const shown = pages.at(page);
  const done = tiles.filter((tile) => tile.given !== null).length;
  const [busy, setBusy] = useState(false);
  const underWay = useRef(false);

  const primary = async (): Promise<void> => {
    const first = shown.find(isOpen);
    if (first !== undefined) {
      if (underWay.current) return;
      underWay.current = true;
      await onTap(first);
      underWay.current = false;
      return;
    }
    const index = tiles.findIndex(isOpen);
    if (index !== -1) onPage(pages.pageOf(index));
  };
  const isOver = tiles.length > 0 && !tiles.some(isOpen);

  const undo = async (): Promise<void> => {
    setBusy(true);
    await visit.undo();
    setBusy(false);
  };
  return (
    <BucketScreen
      title={title}
      sub={sub}
      way={{ text: "Something else", onPress: onElse }}
      out={"href" in out ? out : { ...out, isMain: isOver }}
      onMain={isOver || tiles.length === 0 ? undefined : primary}
      beside={
        last === null ? (
          <span className={styles["nothing"]}>Nothing to undo</span>
        ) : (
          <BigKey onPress={undo} under={last.says} disabled={busy}>
            Undo
          </BigKey>
        )
      }
      told={told}
    >
      <div className={styles["tiles"]}>
        {tiles.length === 0 && <p className={styles["none"]}>No piece is ready for a coat now.</p>}
        {shown.map((tile) => (
          <TileKey
            key={tile.pieceId}
            tile={tile}
            trouble={trouble?.pieceId === tile.pieceId ? trouble.text : null}
            onTap={() => onTap(tile)}
            onChange={() => onChange(tile)}
            onBringBack={() => visit.bringBack(tile.pieceId)}
          />
        ))}
        {pages.count > 1 && (
          <div className={styles["bar"]}>
            <BigKey
              onPress={() => onPage((page + 1) % pages.count)}
              under={`${done} of ${tiles.length} done`}
            >
              {(page + 1) % pages.count === 0 ? "Back to the first pieces" : "Next pieces"}
            </BigKey>
          </div>
        )}
      </div>
    </BucketScreen>
  );
}
