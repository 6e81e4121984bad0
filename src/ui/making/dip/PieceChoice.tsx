import { useState } from "react";
import { BigKey } from "../../base/glove/BigKey.tsx";
import { BucketScreen, type Way } from "../../base/glove/BucketScreen.tsx";
import type { DipTile } from "./dipTile.ts";
import { coatTitle } from "./dipWords.ts";
import { pagesOf } from "../../base/glove/pages.ts";
import type { SignalMessage } from "../../base/glove/useSignals.ts";

export function PieceChoice(props: {
  readonly tiles: readonly DipTile[];
  readonly told: SignalMessage | null;
  readonly out: Way;
  readonly onPiece: (tile: DipTile) => void;
  readonly onBack: () => void;
}) {
  const { tiles, told, out, onPiece, onBack } = props;
  const [page, setPage] = useState(0);
  const pages = pagesOf(tiles, { alone: 4, paged: 3 });
  return (
    <BucketScreen title="Which piece?" way={{ text: "Back", onPress: onBack }} out={out} told={told}>
      {pages.at(page).map((tile) => (
        <BigKey
          key={tile.pieceId}
          main
          under={tile.given === null ? coatTitle(tile) : `Coat ${tile.given.number} done`}
          onPress={() => onPiece(tile)}
        >
          {tile.name}
        </BigKey>
      ))}
      {pages.count > 1 && <BigKey onPress={() => setPage(page + 1)}>More pieces</BigKey>}
    </BucketScreen>
  );
}
