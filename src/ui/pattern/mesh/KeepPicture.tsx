import { useState } from "react";
import { handOver } from "../../../device/share.ts";
import { streamOf } from "../../../logbook/entries/entry.ts";
import { putPhoto } from "../../../storage/photos.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { useRack } from "../../base/state/live.ts";
import { useShop } from "../../base/state/shop.tsx";
import { SelectField } from "../../base/forms/SelectField.tsx";
import { Button } from "../../base/parts/Button.tsx";
import sheet from "../../base/styles/sheet.module.css";
import css from "./scene.module.css";
import type { PatternStudy } from "./patternStudy.ts";

/** The picture as it stands, into the log of a piece, or out as a file. */
export function KeepPicture({
  study,
  picture,
}: {
  readonly study: PatternStudy;
  readonly picture: () => Promise<Blob | null>;
}) {
  const { db, log, moment } = useShop();
  const say = useFleeting((fleeting) => fleeting.say);
  const pieces = (useRack() ?? []).map(({ standing }) => standing.piece);
  const isOf = (piece: (typeof pieces)[number]): boolean =>
    piece.plan.patternId === study.id || piece.patterns.some(({ patternId }) => patternId === study.id);
  const own = pieces.find(isOf);
  const [asked, setAsked] = useState<string | null>(null);
  const piece = pieces.find(({ id }) => id === asked) ?? own ?? null;
  const sorted = [...pieces].sort((a, b) => Number(isOf(b)) - Number(isOf(a)));

  const taken = async (): Promise<Blob | null> => {
    const blob = await picture();
    if (blob === null) say("There is no picture to save.", "refused");
    return blob;
  };
  const keep = async (): Promise<void> => {
    const blob = await taken();
    if (blob === null || piece === null) return;
    const photo = moment().newId();
    try {
      await putPhoto(db, blob, photo);
    } catch {
      say("The picture was not saved: the device may be full.", "refused");
      return;
    }
    const body = { text: `Picture of the pattern ${study.name}`.trim(), photos: [photo] };
    const told = await log({ do: "log", stream: streamOf("piece", piece.id), type: "note-written", body });
    if (told.ok) say(`The picture is in the log of ${piece.plan.name}.`);
  };
  const share = async (): Promise<void> => {
    const blob = await taken();
    if (blob !== null) await handOver({ blob, name: `${study.name || "pattern"}.jpg` });
  };
  return (
    <details>
      <summary>Save this picture</summary>
      <div className={`${sheet["stack"]} ${css["panel"]}`}>
        {pieces.length > 0 && (
          <SelectField
            label="Into the log of"
            options={sorted.map(({ id, plan }) => ({ value: id, label: plan.name }))}
            value={piece?.id ?? null}
            onChange={setAsked}
            empty="Choose a piece"
          />
        )}
        <div className={`${sheet["row"]} ${css["wrap"]}`}>
          {pieces.length > 0 && (
            <Button onPress={keep} disabledReason={piece === null ? "Choose the piece first." : null}>
              Put it into the log
            </Button>
          )}
          <Button onPress={share}>Save or share it</Button>
        </div>
      </div>
    </details>
  );
}
