import { useFormat } from "../../base/state/useFormat.ts";
import { Button } from "../../base/parts/Button.tsx";
import type { CutAxis, SceneView, ViewName } from "../scene/sceneView.ts";
import sheet from "../../base/styles/sheet.module.css";
import css from "./scene.module.css";

type Cut = SceneView["cut"];

const views: readonly { readonly name: ViewName; readonly label: string }[] = [
  { name: "front", label: "Front" },
  { name: "side", label: "Side" },
  { name: "top", label: "Top" },
];
const cuts: readonly { readonly axis: CutAxis; readonly label: string; readonly what: string }[] = [
  { axis: "front", label: "Cut front", what: "How far back the cut lies" },
  { axis: "side", label: "Cut side", what: "How far right the cut lies" },
  { axis: "level", label: "Cut level", what: "How high the cut lies" },
];

/** Views, nearer and further, and a section through the piece. */
export function PictureKeys(props: {
  readonly onLook: (view: ViewName) => void;
  readonly onNearer: (by: number) => void;
  readonly cut: Cut;
  readonly setCut: (cut: Cut) => void;
}) {
  const { onLook, onNearer, cut, setCut } = props;
  const format = useFormat();
  return (
    <>
      <div className={`${sheet["row"]} ${css["keys"]}`} role="group" aria-label="The view">
        {views.map(({ name, label }) => (
          <Button key={name} onPress={() => onLook(name)}>
            {label}
          </Button>
        ))}
        <Button label="Nearer" onPress={() => onNearer(0.75)}>
          +
        </Button>
        <Button label="Further away" onPress={() => onNearer(1.33)}>
          −
        </Button>
        {cuts.map(({ axis, label }) => (
          <Button
            key={axis}
            pressed={cut?.axis === axis}
            onPress={() => setCut(cut?.axis === axis ? null : { axis, share: 0.5 })}
          >
            {label}
          </Button>
        ))}
      </div>
      {cut !== null && (
        <label className={`${sheet["stack1"]} ${css["slider"]}`}>
          <span className={sheet["soft"]}>{cuts.find(({ axis }) => axis === cut.axis)?.what}</span>
          <input
            type="range"
            min={0}
            max={100}
            value={Math.round(100 * cut.share)}
            aria-valuetext={format.show("percent", cut.share)}
            onChange={(event) => setCut({ axis: cut.axis, share: Number(event.target.value) / 100 })}
          />
        </label>
      )}
    </>
  );
}
