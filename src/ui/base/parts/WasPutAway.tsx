import { useFleeting } from "../state/fleeting.ts";
import { useShop } from "../state/shop.tsx";
import { useFormat } from "../state/useFormat.ts";
import { useNow } from "../state/useNow.ts";
import { dayTime } from "../format/time.ts";
import { Button } from "./Button.tsx";
import { Card } from "./Card.tsx";

/** A plan that was cancelled before it was started, and the way back: its end is struck. */
export function WasPutAway({
  stream,
  ended,
  because = "it was never started",
}: {
  readonly stream: string;
  readonly ended: { readonly id: string; readonly at: number };
  readonly because?: string | null | undefined;
}) {
  const { log } = useShop();
  const { locale } = useFormat();
  const say = useFleeting((fleeting) => fleeting.say);
  const now = useNow();
  const takeOut = async (): Promise<void> => {
    const done = await log({ do: "strike", stream, entryId: ended.id, reason: "taken out again" });
    if (done.ok) say("The plan is restored.");
  };
  return (
    <Card title="Cancelled">
      <p>
        This plan was cancelled {dayTime(ended.at, now, locale)}
        {because === null ? "" : `; ${because}`}.
      </p>
      <Button onPress={takeOut} debounceMs={700}>
        Restore the plan
      </Button>
    </Card>
  );
}
