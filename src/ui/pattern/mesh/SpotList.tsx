import { volumeText } from "../../base/format/figureText.ts";
import { length, minus, type Vec3 } from "../../../geometry/vector.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import type { Format } from "../../base/format/units.ts";
import { Button } from "../../base/parts/Button.tsx";
import type { Spot } from "./patternResults.ts";
import { withoutMark } from "./patternStudy.ts";
import type { NamedSpot } from "./scenePlaces.ts";
import sheet from "../../base/styles/sheet.module.css";
import css from "./scene.module.css";
import { spotWords } from "./spotWords.ts";
import type { SceneController } from "./useSceneController.ts";

/** Each place with where, how high, how much, what happens, and the one thing to do. */
export function SpotList({
  desk,
  spots,
  kind,
}: {
  readonly desk: SceneController;
  readonly spots: readonly NamedSpot[];
  readonly kind: "vent" | "drain";
}) {
  const format = useFormat();
  return (
    <ul
      className={`${css["spots"]} ${desk.areSpotsStale ? css["stale"] : ""}`}
      aria-busy={desk.areSpotsStale}
      aria-label={kind === "vent" ? "Places where air stays" : "Places where plastic stays"}
    >
      {spots.map((named) => (
        <li key={named.label} className={css["spot"]}>
          <span className={css["chip"]} data-kind={kind} data-put={named.isServed}>
            {named.label}
          </span>
          <div>
            <p>
              <strong>
                {whereWords(named.spot, {
                  kind,
                  format,
                  isOneOfMany: desk.study.found.measures.components > 1,
                })}
              </strong>
            </p>
            <p className={sheet["soft"]}>{amountWords(named.spot, kind, format)}</p>
            <p>
              {spotWords({
                spot: named.spot,
                what: kind === "vent" ? "air" : "plastic",
                isOpen: named.isServed,
                material: desk.study.material,
              })}
            </p>
          </div>
          <div className={`${sheet["row"]} ${css["wrap"]}`}>
            <Act desk={desk} named={named} kind={kind} />
          </div>
        </li>
      ))}
    </ul>
  );
}

function Act({
  desk,
  named: { spot, mark, label },
  kind,
}: {
  readonly desk: SceneController;
  readonly named: NamedSpot;
  readonly kind: "vent" | "drain";
}) {
  if (mark === null)
    return (
      <Button
        label={`Put a ${kind} here: ${label}`}
        disabledReason={desk.placesWait}
        onPress={() => desk.put(kind, { point: spot.point, normal: null })}
      >
        Put a {kind} here
      </Button>
    );
  if (mark.kind !== kind) return null;
  return (
    <Button
      kind="quiet"
      label={`Take the ${kind} away: ${label}`}
      onPress={() => desk.act((now) => withoutMark(now, mark.id))}
    >
      Take the {kind} away
    </Button>
  );
}

function whereWords(
  { heightMm, shape, ridge, isLast }: Spot,
  {
    kind,
    format,
    isOneOfMany,
  }: { readonly kind: "vent" | "drain"; readonly format: Format; readonly isOneOfMany: boolean },
): string {
  const height = `${format.show("mm", heightMm)} up`;
  const end = kind === "vent" ? "top" : "bottom";
  const what = isLast
    ? `The ${kind === "vent" ? "highest" : "lowest"} place${isOneOfMany ? " of its body" : ""}`
    : shape === "flat"
      ? `A flat ${end}`
      : shape === "ridge"
        ? `A ridge, ${format.show("mm", runOf(ridge))} long`
        : `A ${end}`;
  return `${what}, ${height}`;
}

function amountWords({ ml, riseMm, isLast }: Spot, kind: "vent" | "drain", format: Format): string {
  if (isLast) return `All of the body drains to it: ${volumeText(ml / 1000, format)}`;
  const way = kind === "vent" ? "above" : "below";
  return `${volumeText(ml / 1000, format)} ${way} the pass to the rest, which lies ${format.show("mm", riseMm)} ${
    kind === "vent" ? "lower" : "higher"
  }`;
}

function runOf(ridge: readonly Vec3[]): number {
  let run = 0;
  for (let n = 1; n < ridge.length; n++) run += length(minus(ridge[n]!, ridge[n - 1]!));
  return run;
}
