import { useFormat } from "../../base/state/useFormat.ts";
import { findingText } from "../../base/format/findingWords.ts";
import { LevelMark } from "../../base/parts/LevelMark.tsx";
import { BigKey } from "../../base/glove/BigKey.tsx";
import { BucketScreen, type Way } from "../../base/glove/BucketScreen.tsx";
import type { DipTile } from "./dipTile.ts";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./LookScreen.module.css";
import type { SignalMessage } from "../../base/glove/useSignals.ts";

/** Asked before a coat goes on a piece that a finding holds back. */
export function AskHold(props: {
  readonly tile: DipTile & { readonly hold: NonNullable<DipTile["hold"]> };
  readonly told: SignalMessage | null;
  readonly out: Way;
  readonly onGoOn: () => unknown;
  readonly onBack: () => void;
}) {
  const { tile, told, out, onGoOn, onBack } = props;
  const { title, says, remedy } = findingText(tile.hold, useFormat());
  return (
    <BucketScreen
      title={`${tile.name}: coat ${tile.coat.number}?`}
      way={{ text: "Back", onPress: onBack }}
      out={out}
      told={told}
    >
      <div className={`${sheet["stack2"]} ${styles["said"]}`}>
        <LevelMark level="hold" />
        <ul>
          <li>
            <strong>{title}.</strong> {says} {remedy}
          </li>
        </ul>
      </div>
      <BigKey main onPress={onBack} under="Nothing is logged">
        Leave it for now
      </BigKey>
      <BigKey onPress={onGoOn} under="The warning stays in its log">
        Dip it anyway
      </BigKey>
    </BucketScreen>
  );
}
