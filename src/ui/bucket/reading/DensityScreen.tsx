import type { ReadDraft } from "./readDraft.ts";
import { BigKey } from "../../base/glove/BigKey.tsx";
import { BucketScreen } from "../../base/glove/BucketScreen.tsx";
import styles from "./reading.module.css";

/** How the density is taken; air is the usual lie of a weighed slurry, so it is spoken of first. */
export function DensityScreen(props: {
  readonly draft: ReadDraft;
  readonly airWords: string;
  readonly onWeigh: () => void;
  readonly onVolume: () => void;
  readonly onInstrument: () => void;
  readonly onSkip: () => void;
  readonly onBack: () => void;
}) {
  const { draft, airWords, onWeigh, onVolume, onInstrument, onSkip, onBack } = props;
  const isWeighed = draft.how === "weighed";
  return (
    <BucketScreen title="Density" way={{ text: "Back", onPress: onBack }} told={null}>
      <p className={styles["rule"]}>{airWords}</p>
      <BigKey main={isWeighed} onPress={onWeigh} under={`${draft.weighedMl} mL of slurry on the scale`}>
        Weighed
      </BigKey>
      <BigKey main={!isWeighed} onPress={onInstrument} under="Hydrometer or density meter">
        By an instrument
      </BigKey>
      <BigKey onPress={onVolume}>Another volume</BigKey>
      <BigKey onPress={onSkip}>Skip</BigKey>
    </BucketScreen>
  );
}
