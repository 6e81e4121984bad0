import { streamOf } from "../../../logbook/entries/entry.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { useShop } from "../../base/state/shop.tsx";

export type Felt = "dry" | "damp" | "wet";

/** Logs what a hand feels of a coat at one tap, and says so with a way back. */
export function useTouchLog(): (of: {
  readonly pieceId: string;
  readonly coatId: string;
  readonly verdict: Felt;
  /** What the message says once it is logged. */
  readonly text: string;
}) => Promise<void> {
  const { log } = useShop();
  const say = useFleeting((fleeting) => fleeting.say);
  return async ({ pieceId, coatId, verdict, text }) => {
    const stream = streamOf("piece", pieceId);
    const body = { method: "touch", verdict, coatId } as const;
    const result = await log({ do: "log", stream, type: "dryness-seen", body });
    const entryId = result.ok ? result.entries[0]?.id : undefined;
    if (entryId === undefined) return;
    const takeBack = async (): Promise<void> => {
      const struck = await log({ do: "strike", stream, entryId, reason: "tapped by mistake" });
      if (struck.ok) say("Taken back.");
    };
    say(text, "done", () => void takeBack());
  };
}
