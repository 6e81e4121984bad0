import { useState } from "react";
import type { BarKind } from "../../../geometry/gatingBars.ts";
import { dot, plus, times, type Vec3 } from "../../../geometry/vector.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import type { Format } from "../../base/format/units.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { SelectField } from "../../base/forms/SelectField.tsx";
import { barNames } from "./barNames.ts";
import { withBars } from "./patternStudy.ts";
import { newBar, startingMm, type HangsAt } from "../../../logbook/casting/gatingTree.ts";
import sheet from "../../base/styles/sheet.module.css";
import css from "./scene.module.css";
import type { SceneController } from "./useSceneController.ts";

const kinds = (Object.keys(barNames) as readonly BarKind[]).map((value) => ({
  value,
  label: barNames[value],
}));

/** A bar from one place to another: a mark, an end of a bar, straight up to the cup's level, or a little way out. */
export function AddBar({
  desk,
  at,
  kind,
  setKind,
}: {
  readonly desk: SceneController;
  readonly at: HangsAt;
  readonly kind: BarKind;
  readonly setKind: (kind: BarKind) => void;
}) {
  const format = useFormat();
  const [fromId, setFromId] = useState<string | null>(null);
  const [toId, setToId] = useState<string | null>("up");
  const ends = endsOf(desk);
  const from = ends.find(({ value }) => value === fromId) ?? null;
  const to = from === null ? null : farEnd({ from: from.point, toId, ends, at });
  const why =
    from === null
      ? "Choose where it starts."
      : to === null || Math.hypot(...to.map((value, k) => value - from.point[k]!)) < 1
        ? "Choose another end for it."
        : null;
  const add = (): void => {
    if (from === null || to === null) return;
    const { markId } = from;
    const bar = newBar({ kind, from: from.point, to, markId }, startingMm[kind], desk.newId());
    desk.act((now) => withBars(now, [...now.bars, bar], at.highMm));
  };
  return (
    <Card>
      <details>
        <summary>Add one bar</summary>
        <div className={`${sheet["stack"]} ${css["panel"]}`}>
          <SelectField
            label="What"
            options={kinds}
            value={kind}
            onChange={(value) => setKind(kinds.find((one) => one.value === value)?.value ?? "sprue")}
            empty={null}
          />
          <SelectField
            label="From"
            options={ends}
            value={from?.value ?? null}
            onChange={setFromId}
            hint="To get a new starting place, tap the picture with a gate, vent, drain or feeder."
            empty="Choose a place"
          />
          <SelectField
            label="To"
            options={[...straight(format), ...ends.filter(({ value }) => value !== fromId)]}
            value={toId}
            onChange={setToId}
            empty={null}
          />
          <div className={`${sheet["row"]} ${css["wrap"]}`}>
            <Button onPress={add} disabledReason={why}>
              Add it
            </Button>
          </div>
        </div>
      </details>
    </Card>
  );
}

const shortMm = 40;
const straight = (format: Format) =>
  [
    { value: "up", label: "Straight up to the level in the cup" },
    { value: "out", label: `Straight out, ${format.show("mm", shortMm)}` },
    { value: "down", label: `Straight down, ${format.show("mm", shortMm)}` },
  ] as const;

type End = {
  readonly value: string;
  readonly label: string;
  readonly point: Vec3;
  readonly normal: Vec3 | null;
  readonly markId?: string | undefined;
};

function endsOf({ marks, study }: SceneController): readonly End[] {
  return [
    ...marks.map(({ mark: { id, point, normal }, label }) => ({
      value: id,
      label,
      point,
      normal,
      markId: id,
    })),
    ...study.bars.flatMap((bar, n) =>
      (["from", "to"] as const).map((end) => ({
        value: `${bar.id} ${end}`,
        label: `${barNames[bar.kind]} ${n + 1}, ${end === "from" ? "its beginning" : "its end"}`,
        point: bar[end],
        normal: null,
      })),
    ),
  ];
}

function farEnd({
  from,
  toId,
  ends,
  at,
}: {
  from: Vec3;
  toId: string | null;
  ends: readonly End[];
  at: HangsAt;
}): Vec3 | null {
  const along = (by: number): Vec3 => plus(from, times(at.up, by));
  if (toId === "up") return along(at.cupLevelMm - dot(from, at.up));
  if (toId === "down") return along(-shortMm);
  if (toId !== "out") return ends.find(({ value }) => value === toId)?.point ?? null;
  const normal = ends.find(({ point }) => point === from)?.normal ?? null;
  return normal === null ? along(shortMm) : plus(from, times(normal, shortMm));
}
