import { useState, type ReactNode } from "react";
import { useSettings } from "../../base/state/live.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useNow } from "../../base/state/useNow.ts";
import { ago } from "../../base/format/time.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { testedWords } from "../../base/alarm/ringLabel.ts";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./due.module.css";

/** One way to ring: what it promises, a try, and the person's own answer, which is kept. */
export function RingTest(props: {
  readonly layer: "tone" | "screen" | "calendar" | "notice";
  readonly title: string;
  readonly promise: string;
  readonly onTry: () => Promise<string>;
  readonly told?: string | null | undefined;
  readonly children: ReactNode;
}) {
  const { layer, title, promise, onTry, told = null, children } = props;
  const { clock } = useShop();
  const now = useNow();
  const [{ ringTested }, changeSettings] = useSettings();
  const [tried, setTried] = useState<string | null>(null);
  const answer = async (rang: boolean): Promise<void> => {
    await changeSettings({ ringTested: { ...ringTested, [layer]: { at: clock(), rang } } });
    setTried(null);
  };
  return (
    <Card title={title}>
      <div className={styles["try"]}>
        <p>
          {promise} <strong>{testedWords(ringTested[layer], (at) => ago(at, now))}</strong>
        </p>
        <Button onPress={async () => setTried(await onTry())}>{children}</Button>
        {tried !== null && (
          <>
            <p role="status">
              {tried} {told}
            </p>
            <div className={sheet["row"]}>
              <Button onPress={() => answer(true)} label={`${title}: it rang`}>
                It rang
              </Button>
              <Button onPress={() => answer(false)} label={`${title}: it did not ring`}>
                It did not
              </Button>
            </div>
          </>
        )}
      </div>
    </Card>
  );
}
