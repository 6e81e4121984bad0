import { useState } from "react";
import { Link } from "wouter";
import type { ShopPair } from "../../../logbook/drying/dryingPairs.ts";
import { shopStream } from "../../../logbook/entries/entry.ts";
import type { Shop } from "../../../logbook/piece/piece.ts";
import type { Learned } from "../../../storage/learning.ts";
import { useShop } from "../../base/state/shop.tsx";
import { paths } from "../../base/state/paths.ts";
import { duration } from "../../base/format/time.ts";
import { Button } from "../../base/parts/Button.tsx";
import { TextField } from "../../base/forms/TextField.tsx";
import { coatFamilyWords, pairMethodWords, seenWords } from "./learnedWords.ts";
import styles from "./LearnedPage.module.css";

/** The pairs in words, the newest first, each to be left out with a reason or taken in again. */
export function PairList({ learned, figures }: { readonly learned: Learned; readonly figures: Shop }) {
  const [all, setAll] = useState(false);
  const newest = learned.pairs.toSorted((a, b) => b.dippedAt - a.dippedAt);
  const shown = all ? newest : newest.slice(0, 8);
  return (
    <>
      <ul className={styles["pairs"]} aria-label="Coats it was learned from">
        {shown.map((pair) => (
          <PairRow
            key={pair.coatId}
            pair={pair}
            name={learned.pieces.get(pair.pieceId) ?? "A piece"}
            out={figures.pairsLeftOut.find(({ coatId }) => coatId === pair.coatId)?.reason ?? null}
          />
        ))}
      </ul>
      {newest.length > shown.length && <Button onPress={() => setAll(true)}>Show all {newest.length}</Button>}
    </>
  );
}

function PairRow(props: { readonly pair: ShopPair; readonly name: string; readonly out: string | null }) {
  const { pair, name, out } = props;
  const { log } = useShop();
  const [asked, setAsked] = useState(false);
  const [reason, setReason] = useState("");
  const [error, setError] = useState<string | null>(null);
  const judge = async (leftOut: boolean, why: string): Promise<void> => {
    if (why.trim() === "") return setError("Enter why, in a word or two.");
    const body = { coatId: pair.coatId, leftOut, reason: why.trim() };
    const done = await log({ do: "log", stream: shopStream, type: "drying-pair-judged", body });
    if (done.ok) setAsked(false);
  };
  return (
    <li className={out === null ? undefined : styles["out"]}>
      <p>
        <Link href={paths.coat(pair.pieceId, pair.coatId)}>
          {name}, coat {pair.coatNumber}
        </Link>
        : {duration(pair.predictedS * 1000)} calculated; {seenWords(pair)} {pairMethodWords[pair.method]}.
        <small>
          {coatFamilyWords(pair.group)}
          {out !== null && `. Left out: ${out}`}
        </small>
      </p>
      {out !== null ? (
        <Button onPress={() => judge(false, "taken in again")}>Use again</Button>
      ) : asked ? (
        <div className={styles["ask"]}>
          <TextField
            label="Why it is left out"
            value={reason}
            onChange={(next) => {
              setReason(next);
              setError(null);
            }}
            hint="The door stood open; the reading was of another room."
            error={error}
          />
          <Button onPress={() => judge(true, reason)}>Leave it out</Button>
          <Button kind="quiet" onPress={() => setAsked(false)}>
            Keep it
          </Button>
        </div>
      ) : (
        <Button
          kind="quiet"
          label={`Leave out ${name}, coat ${pair.coatNumber}`}
          onPress={() => setAsked(true)}
        >
          Leave out
        </Button>
      )}
    </li>
  );
}
