import { volumeText } from "../../base/format/figureText.ts";
import { useState } from "react";
import { streamOf } from "../../../logbook/entries/entry.ts";
import type { MarginBy } from "../../../logbook/casting/chargeSum.ts";
import { litreOfKg, loweredFrom, metalKnownOf, mostMetalOf } from "../../../logbook/piece/pieceMetal.ts";
import type { Alloy } from "../../../trade/metals/alloy.ts";
import type { Piece } from "../../../logbook/piece/piece.ts";
import { paths } from "../../base/state/paths.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { LinkButton } from "../../base/parts/LinkButton.tsx";
import css from "./metal.module.css";

/**
 * Writes casting and gating into the piece's plan, where the charge of a melt and the pour find it. Where the plan has
 * more, it says from what to what and asks first.
 */
export function MetalSave({
  piece,
  alloy,
  metalKg,
  metalKnown,
  hasGating,
}: {
  readonly piece: Piece;
  readonly alloy: Alloy;
  readonly metalKg: number;
  readonly metalKnown: MarginBy;
  readonly hasGating: boolean;
}) {
  const { log } = useShop();
  const format = useFormat();
  const say = useFleeting((fleeting) => fleeting.say);
  const [asked, setAsked] = useState<number | null>(null);
  const changes = {
    metalKg: figures(metalKg),
    metalLitre: figures(litreOfKg(metalKg, alloy)),
    metalKnown,
  };
  const { plan } = piece;
  const isSaved =
    plan.metalKg === changes.metalKg &&
    plan.metalLitre === changes.metalLitre &&
    metalKnownOf(piece, alloy) === metalKnown;
  const lowered = loweredFrom(piece, alloy, changes.metalKg);
  // Another figure than the one that was asked about is asked about anew.
  const isAsking = lowered !== null && asked === changes.metalKg;
  const both = (kg: number): string =>
    `${format.show("kg", kg)} (${volumeText(litreOfKg(kg, alloy), format)})`;
  const save = async (): Promise<void> => {
    const result = await log({
      do: "log",
      stream: streamOf("piece", piece.id),
      type: "piece-changed",
      body: { changes },
    });
    if (!result.ok) return;
    setAsked(null);
    say("Saved to the plan.");
  };
  return (
    <Card title="Save to the plan">
      <p className={css["big"]}>
        {format.show("kg", changes.metalKg)}{" "}
        <small>{hasGating ? "casting and gating" : "casting, no gating entered"}</small>
      </p>
      <p>
        {volumeText(changes.metalLitre, format)} of metal.{" "}
        {mostMetalOf(piece, alloy) !== null &&
          !isSaved &&
          `The plan says ${both(mostMetalOf(piece, alloy) ?? 0)} now.`}
      </p>
      {isSaved && <LinkButton href={paths.newMeltFor(piece.id)}>Plan its melt</LinkButton>}
      {isAsking ? (
        <div role="group" aria-label="Less metal than the plan has">
          <p role="alert" className={css["warn"]}>
            This lowers the metal from {both(lowered)} to {both(changes.metalKg)}. Is the gating in it: sprue,
            cup, runners and vents? Too little metal is a short pour.
          </p>
          <div className={css["keys"]}>
            <Button onPress={save}>Lower it to {format.show("kg", changes.metalKg)}</Button>
            <Button onPress={() => setAsked(null)}>Keep {format.show("kg", lowered)}</Button>
          </div>
        </div>
      ) : (
        <Button
          kind="primary"
          onPress={lowered === null ? save : () => setAsked(changes.metalKg)}
          disabledReason={isSaved ? "Already in the plan." : null}
        >
          Save to the plan
        </Button>
      )}
    </Card>
  );
}

/** No better known than to four figures. */
const figures = (value: number): number => Number(value.toPrecision(4));
