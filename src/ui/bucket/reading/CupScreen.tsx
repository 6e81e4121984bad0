import { useState } from "react";
import type { Shop } from "../../../logbook/piece/piece.ts";
import { cups } from "../../../trade/cups.ts";
import { BigKey } from "../../base/glove/BigKey.tsx";
import { BucketScreen } from "../../base/glove/BucketScreen.tsx";
import { pagesOf } from "../../base/glove/pages.ts";

/** Which cup is in the hand: those on the wall first, then the kinds of the table, the usual ones in front. */
export function CupScreen(props: {
  readonly shop: Pick<Shop, "cups">;
  readonly onCup: (cupId: string) => void;
  readonly onBack: () => void;
}) {
  const { shop, onCup, onBack } = props;
  const [page, setPage] = useState(0);
  const usual = ["zahn-4", "zahn-5", "ford-4"];
  const kinds = [
    ...cups.filter(({ id }) => usual.includes(id)),
    ...cups.filter(({ id }) => !usual.includes(id)),
  ].map(({ id, label }) => ({ id, name: label, under: "Generic" }));
  const own = shop.cups
    .filter(({ retired }) => !retired)
    .map(({ id, name, cup }) => ({
      id,
      name,
      under: cups.find((kind) => kind.id === cup)?.label ?? cup,
    }));
  const pages = pagesOf([...own, ...kinds], { alone: 4, paged: 3 });
  return (
    <BucketScreen
      title="Which cup?"
      sub="No two cups run alike. Use the same cup for one bucket."
      way={{ text: "Back", onPress: onBack }}
      told={null}
    >
      {pages.at(page).map(({ id, name, under }) => (
        <BigKey key={id} under={under} onPress={() => onCup(id)}>
          {name}
        </BigKey>
      ))}
      {pages.count > 1 && <BigKey onPress={() => setPage(page + 1)}>Other cups</BigKey>}
    </BucketScreen>
  );
}
