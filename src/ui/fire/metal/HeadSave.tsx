import { streamOf } from "../../../logbook/entries/entry.ts";
import type { Piece } from "../../../logbook/piece/piece.ts";
import { ranges, within } from "../../../logbook/entries/ranges.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { Button } from "../../base/parts/Button.tsx";
import type { GatingDraft } from "../../../logbook/casting/gatingDraft.ts";
import { wallHeadMm } from "../../../logbook/casting/gatingSum.ts";
import sheet from "../../base/styles/sheet.module.css";

/** Heads are kept to the millimetre: less than half of one, m, is no other head. */
export const isSameHead = (aM: number, bM: number): boolean => Math.abs(aM - bM) < 0.0005;

/** The head that presses on the wall, into the plan, where the shell is judged by it. */
export function HeadSave({ piece, draft }: { readonly piece: Piece; readonly draft: GatingDraft }) {
  const { log } = useShop();
  const format = useFormat();
  const say = useFleeting((fleeting) => fleeting.say);
  const headMm = wallHeadMm(draft);
  const headM = headMm === null ? null : Math.round(headMm * 10) / 10_000;
  const now = piece.plan.headM;
  if (headM === null || !within(ranges.headM, headM)) return null;
  if (now !== undefined && isSameHead(now, headM)) return null;
  const save = async (): Promise<void> => {
    const result = await log({
      do: "log",
      stream: streamOf("piece", piece.id),
      type: "piece-changed",
      body: { changes: { headM } },
    });
    if (result.ok) say("The plan has the head.");
  };
  return (
    <div className={sheet["stack3"]}>
      <p>
        Metal above the lowest part of the shell: {format.show("mm", headM * 1000)}{" "}
        {now === undefined
          ? "; the plan has no head yet."
          : `; the plan says ${format.show("mm", now * 1000)}.`}
      </p>
      <Button kind="primary" onPress={save}>
        Save this head to the plan
      </Button>
    </div>
  );
}
