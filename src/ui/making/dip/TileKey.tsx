import { useRef, useState, type ReactNode } from "react";
import { useFormat } from "../../base/state/useFormat.ts";
import { useNow } from "../../base/state/useNow.ts";
import { useShop } from "../../base/state/shop.tsx";
import { findingText } from "../../base/format/findingWords.ts";
import { dryingLead } from "../../base/format/coverWords.ts";
import { usePress } from "../../base/parts/usePress.ts";
import type { DipTile } from "./dipTile.ts";
import { coatTitle, doneWords, lastState, lastWords, beyondRecipeWords } from "./dipWords.ts";
import { LastMark } from "./LastMark.tsx";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./TileKey.module.css";

/** One piece at the bucket. A tap says the coat is on; afterwards the tile stays where it is and says when. */
export function TileKey(props: {
  readonly tile: DipTile;
  readonly trouble: string | null;
  readonly onTap: () => Promise<unknown>;
  readonly onChange: () => void;
  readonly onBringBack: () => void;
}) {
  const { tile, trouble, onTap, onChange, onBringBack } = props;
  const format = useFormat();
  const { locale } = format;
  const now = useNow();
  const box = useRef<HTMLButtonElement>(null);
  // A tile keeps its height when it is done, so that the ones below stay where they are.
  const [heldPx, setHeldPx] = useState(0);
  const tap = (): Promise<unknown> => {
    setHeldPx(box.current?.offsetHeight ?? 0);
    return onTap();
  };
  const press = usePress(tap, { debounceMs: 700 });
  if (tile.given !== null)
    return (
      <Settled
        name={tile.name}
        words={doneWords(tile.given, now, locale)}
        trouble={trouble}
        heldPx={heldPx}
        done
      >
        <SideKey label={`Change the time of ${tile.name}`} onPress={onChange}>
          Change
        </SideKey>
      </Settled>
    );
  if (tile.leftOut)
    return (
      <Settled name={tile.name} words="Left out this time" trouble={trouble}>
        <SideKey label={`Bring back ${tile.name}`} onPress={onBringBack}>
          Bring back
        </SideKey>
      </Settled>
    );
  const state = lastState(tile.cover);
  const odd = beyondRecipeWords(tile);
  const lead = tile.cover === null ? null : dryingLead(tile.cover, { now, locale, isDeep: tile.isDeep });
  return (
    <button
      ref={box}
      type="button"
      className={`${styles["tile"]} ${sheet["press"]} ${styles["waiting"]}`}
      data-main
      data-state={state}
      data-other={tile.recipeWants !== null || tile.beyondRecipe || undefined}
      {...press}
    >
      <span className={styles["name"]}>{tile.name}</span>
      {tile.hold !== null && (
        <span className={styles["odd"]}>Hold: {findingText(tile.hold, format).title}. Asks first.</span>
      )}
      {lead !== null && <span className={styles["odd"]}>{lead}</span>}
      <span className={styles["coat"]}>{coatTitle(tile)}</span>
      <span className={`${sheet["line2"]} ${styles["last"]}`}>
        <LastMark state={state} />
        <span>{lastWords(tile, now, locale)}</span>
      </span>
      {odd !== null && <span className={styles["odd"]}>{odd}</span>}
      {trouble !== null && <span className={styles["odd"]}>{trouble}</span>}
    </button>
  );
}

function Settled(props: {
  readonly name: string;
  readonly words: string;
  readonly trouble: string | null;
  readonly done?: boolean;
  readonly heldPx?: number;
  readonly children: ReactNode;
}) {
  const { name, words, trouble, done = false, heldPx = 0, children } = props;
  return (
    <div
      className={`${styles["tile"]} ${styles["settled"]}`}
      style={{ minHeight: heldPx > 0 ? heldPx : undefined }}
      role="group"
      aria-label={name}
    >
      <span className={sheet["lines"]}>
        <span className={styles["name"]}>{name}</span>
        <span className={`${sheet["line2"]} ${styles["last"]}`}>
          {done && <LastMark state="dry" />}
          <span>{words}</span>
        </span>
        {trouble !== null && <span className={styles["odd"]}>{trouble}</span>}
      </span>
      {children}
    </div>
  );
}

/** Long enough for a hand that still taps the tile not to fall on the key that has come up in it. */
const settleMs = 1500;

function SideKey(props: { readonly label: string; readonly onPress: () => void; readonly children: string }) {
  const { clock } = useShop();
  const shownAt = useRef<number | null>(null);
  const press = usePress(
    () => {
      if (shownAt.current === null || clock() - shownAt.current >= settleMs) props.onPress();
    },
    { debounceMs: 700 },
  );
  const noteShown = (): void => {
    shownAt.current ??= clock();
  };
  return (
    <button
      ref={noteShown}
      type="button"
      className={`${sheet["press"]} ${sheet["title"]} ${styles["side"]}`}
      aria-label={props.label}
      {...press}
    >
      {props.children}
    </button>
  );
}
