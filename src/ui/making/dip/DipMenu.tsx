import { BigKey } from "../../base/glove/BigKey.tsx";
import { BucketScreen, type Way } from "../../base/glove/BucketScreen.tsx";
import type { SignalMessage } from "../../base/glove/useSignals.ts";

/** What is not the next coat: exceptions, timers, prewet, and the way out of the visit. */
export function DipMenu(props: {
  readonly told: SignalMessage | null;
  readonly out: Way;
  readonly prewet: boolean;
  readonly guided: boolean;
  readonly onPieces: () => void;
  readonly onTimers: () => void;
  readonly onPrewet: (prewet: boolean) => void;
  readonly onGuided: (guided: boolean) => void;
  readonly onOver: () => void;
  readonly onBack: () => void;
}) {
  const { told, out, prewet, guided, onPieces, onTimers, onPrewet, onGuided, onOver, onBack } = props;
  return (
    <BucketScreen title="Something else" way={{ text: "Back", onPress: onBack }} out={out} told={told}>
      <BigKey onPress={onPieces} under="Leave out, skip, dip again, damaged, wrong time">
        One piece is different
      </BigKey>
      <BigKey onPress={onTimers} under="Ring only while this screen is on">
        Drain and stucco timers
      </BigKey>
      <BigKey onPress={() => onPrewet(!prewet)} under="Counts for the coats you tap from now on">
        Prewet: {prewet ? "yes" : "no"}
      </BigKey>
      <BigKey onPress={() => onGuided(!guided)} under="Step by step, with timers and checks">
        Guide me through the dip: {guided ? "yes" : "no"}
      </BigKey>
      <BigKey onPress={onOver} under="Ends this session; all of it is logged">
        Another bucket or coat
      </BigKey>
    </BucketScreen>
  );
}
