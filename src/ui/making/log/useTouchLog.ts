import { streamOf } from "../../../logbook/entries/entry.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useUndoing } from "../../base/state/useUndoing.ts";

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
  const undoing = useUndoing();
  const say = useFleeting((fleeting) => fleeting.say);
  return async ({ pieceId, coatId, verdict, text }) => {
    const stream = streamOf("piece", pieceId);
    const body = { method: "touch", verdict, coatId } as const;
    const result = await log({ do: "log", stream, type: "dryness-seen", body });
    if (result.ok) say(text, "done", undoing(result));
  };
}
