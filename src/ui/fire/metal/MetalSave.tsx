import { streamOf } from "../../../logbook/entries/entry.ts";
import type { Piece } from "../../../logbook/piece/piece.ts";
import { paths } from "../../base/state/paths.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { LinkButton } from "../../base/parts/LinkButton.tsx";
import css from "./metal.module.css";

/** Writes casting and gating into the piece's plan, where the charge of a melt and the pour find it. */
export function MetalSave({
  piece,
  metalKg,
  metalKgM3,
}: {
  readonly piece: Piece;
  readonly metalKg: number;
  readonly metalKgM3: number;
}) {
  const { log } = useShop();
  const format = useFormat();
  const say = useFleeting((fleeting) => fleeting.say);
  const rounded = { metalKg: figures(metalKg), metalLitre: figures((metalKg / metalKgM3) * 1000) };
  const isSaved = piece.plan.metalKg === rounded.metalKg && piece.plan.metalLitre === rounded.metalLitre;
  const save = async (): Promise<void> => {
    const result = await log({
      do: "log",
      stream: streamOf("piece", piece.id),
      type: "piece-changed",
      body: { changes: rounded },
    });
    if (result.ok) say("The plan has it.");
  };
  return (
    <Card title="Into the plan">
      <p className={css["big"]}>
        {format.show("kg", rounded.metalKg)} <small>casting and gating</small>
      </p>
      <p>
        {format.show("litre", rounded.metalLitre)} of metal.{" "}
        {piece.plan.metalKg !== undefined &&
          !isSaved &&
          `The plan says ${format.show("kg", piece.plan.metalKg)} now.`}
      </p>
      {isSaved && <LinkButton href={paths.newMeltFor(piece.id)}>Plan its melt</LinkButton>}
      <Button kind="primary" onPress={save} disabledReason={isSaved ? "The plan says so already." : null}>
        Save to the plan
      </Button>
    </Card>
  );
}

/** No better known than to four figures. */
const figures = (value: number): number => Number(value.toPrecision(4));
