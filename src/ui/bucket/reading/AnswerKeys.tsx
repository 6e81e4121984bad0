import { BigKey } from "../../base/glove/BigKey.tsx";
import styles from "./reading.module.css";

/** Leave it out, or go on: the same two keys under every question. */
export function AnswerKeys(props: {
  readonly onSkip: () => void;
  readonly onNext: () => void;
  readonly ready: boolean;
}) {
  const { onSkip, onNext, ready } = props;
  return (
    <div className={styles["answer"]}>
      <BigKey onPress={onSkip}>Skip</BigKey>
      <BigKey main onPress={onNext} disabled={!ready}>
        Next
      </BigKey>
    </div>
  );
}
