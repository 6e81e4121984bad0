import { useRef, useState } from "react";
import { dot, unit, type Vec3 } from "../../../geometry/vector.ts";
import type { NotAnswered } from "../../../workers/patternClient.ts";
import type { PatternProgress } from "../../../workers/patternMessages.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Rows } from "../../base/parts/Reckoned.tsx";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { NumberField } from "../../base/forms/NumberField.tsx";
import { notAnsweredWords } from "./fileWords.ts";
import sheet from "../../base/styles/sheet.module.css";
import css from "./pattern.module.css";
import { cupLevelOf, resultsFor, startingCupMm, tipLimits, turned, withCup } from "./patternStudy.ts";
import type { PatternController } from "./usePatternController.ts";
import { Working } from "./Working.tsx";

const faces: readonly { readonly name: string; readonly up: Vec3 }[] = [
  { name: "Z up", up: [0, 0, 1] },
  { name: "Z down", up: [0, 0, -1] },
  { name: "Y up", up: [0, 1, 0] },
  { name: "Y down", up: [0, -1, 0] },
  { name: "X up", up: [1, 0, 0] },
  { name: "X down", up: [-1, 0, 0] },
];
const isSame = (a: Vec3, b: Vec3): boolean => dot(unit(a), unit(b)) > 1 - 1e-6;

/** What adding and taking away heights has left behind is no millimetre anyone typed. */
const tidy = (mm: number): number => Number(mm.toFixed(3));

/** Which way the piece hangs when the metal comes, and how high the metal stands over it. */
export function HangCard({ door }: { readonly door: PatternController }) {
  const { study, mmPerUnit, change, act, ask } = door;
  const format = useFormat();
  const stop = useRef<AbortController>(undefined);
  const [search, setSearch] = useState<PatternProgress | null>(null);
  const [fault, setFault] = useState<NotAnswered | null>(null);
  if (mmPerUnit === null) return null;
  const results = resultsFor(study);
  const tall = results === null ? null : results.highMm - results.lowMm;
  const find = async (): Promise<void> => {
    const mine = new AbortController();
    stop.current = mine;
    setFault(null);
    setSearch({ stage: "attitudes", share: 0 });
    const found = await ask(
      "attitudes",
      { mmPerUnit, ...tipLimits },
      { signal: mine.signal, onProgress: setSearch },
    );
    setSearch(null);
    if (found.ok) change((now) => ({ ...now, attitudes: found.answer }));
    else if (found.why !== "aborted") setFault(found);
  };
  return (
    <Card title="Pour position">
      <div className={sheet["row"]}>
        {faces.map(({ name, up }) => (
          <Button key={name} pressed={isSame(up, study.up)} onPress={() => act((now) => turned(now, up))}>
            {name}
          </Button>
        ))}
      </div>
      <NumberField
        label="Cup above the highest place"
        quantity="mm"
        min={0}
        max={2000}
        value={results === null ? study.cupMm : tidy(cupLevelOf(study, results.highMm) - results.highMm)}
        onChange={(cupMm) => {
          if (cupMm !== null && cupMm >= 0 && cupMm <= 2000) act((now) => withCup(now, cupMm), "cup");
        }}
        hint={`From the top of the piece to the level of metal in the cup. ${format.show("mm", startingCupMm)} is a starting value.`}
      />
      {tall !== null && results !== null && (
        <Rows
          rows={[
            ["Height of the piece", format.show("mm", tall)],
            [
              "Head over its lowest place",
              format.show("mm", cupLevelOf(study, results.highMm) - results.lowMm),
            ],
            ["Places that need a vent", format.number(results.tips.length, 0)],
            ["Places that need a drain", format.number(results.drains.length, 0)],
          ]}
        />
      )}
      {search === null ? (
        <Button onPress={find}>Find better positions</Button>
      ) : (
        <>
          <Working progress={search} />
          <Button onPress={() => stop.current?.abort()}>Stop</Button>
        </>
      )}
      {fault !== null && (
        <p role="alert" className={`${sheet["refused"]} ${sheet["held"]} ${css["refused"]}`}>
          {notAnsweredWords(fault)}
        </p>
      )}
      {study.attitudes !== null && <Attitudes door={door} />}
    </Card>
  );
}

function Attitudes({ door: { study, act } }: { readonly door: PatternController }) {
  const format = useFormat();
  return (
    <div className={`${sheet["scroll"]} ${css["wide"]}`}>
      <table>
        <caption className={sheet["soft"]}>
          Fewest openings first. Fewer openings mean less cutting and grinding. Less height means less
          pressure on the shell.
        </caption>
        <thead>
          <tr>
            <th scope="col">Vents</th>
            <th scope="col">Drains</th>
            <th scope="col">High</th>
            <th scope="col">
              <span>Use this</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {study.attitudes?.map(({ up, vents, drains, head }) => (
            <tr key={up.join(" ")}>
              <td>{vents}</td>
              <td>{drains}</td>
              <td>{format.show("mm", head)}</td>
              <td>
                <Button
                  kind="quiet"
                  pressed={isSame(up, study.up)}
                  onPress={() => act((now) => turned(now, up))}
                >
                  {isSame(up, study.up) ? "In use" : "Use this"}
                </Button>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
