import sheet from "../../base/styles/sheet.module.css";
import css from "./metal.module.css";
import type { ChargeJudged, Verdict } from "../../../physics/metal/chargeVerdict.ts";
import type { Alloy } from "../../../trade/metals/alloy.ts";
import { compositionOf } from "../../../trade/metals/contents.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import type { Format } from "../../base/format/units.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import type { SumForm } from "../../base/forms/bound.ts";
import { limitName, limitWords } from "./elementWords.ts";
import { symbolOf } from "../../../trade/elementSymbols.ts";
import { newItem, type MeltDraft } from "../../../logbook/casting/meltDraft.ts";
import type { Fix, MixSum } from "../../../logbook/casting/meltSum.ts";
import { Reckoned } from "../../base/parts/Reckoned.tsx";
import { VerdictMark } from "./VerdictMark.tsx";

const verdictSays: Readonly<Record<Verdict, string>> = {
  pass: "Its whole possible range is inside the limits.",
  assay: "Not certain: have it assayed, or use less unknown scrap.",
  fail: "As weighed it can’t be this alloy.",
};

/** The charge against the alloy's limits, element by element, and what would put it right. */
export function MixVerdict({
  form,
  mix,
  alloy,
}: {
  readonly form: SumForm<MeltDraft>;
  readonly mix: MixSum;
  readonly alloy: Alloy | null;
}) {
  const { judged, fix, unsaid, guessed } = mix;
  const isOpen = judged?.ok === true && judged.verdict !== "pass";
  return (
    <Card title="Is it this alloy?">
      {unsaid.length > 0 && <p className={css["warn"]}>First choose what it is: {unsaid.join(", ")}.</p>}
      {alloy === null ? (
        <p>Choose the alloy to check the charge against its limits.</p>
      ) : judged === null ? (
        <p>
          {mix.mix === null
            ? "Weigh something in to check it against the limits."
            : `No limits are listed for ${alloy.name}.`}
        </p>
      ) : (
        <Judged judged={judged} />
      )}
      {isOpen && mix.isAllNamed && (
        <p>
          All of it is this alloy by name. The table shows its full range less melt losses. For better figures
          enter the assay of your ingots. Returns have lost some elements, zinc first.
        </p>
      )}
      {isOpen && guessed.length > 0 && (
        <p>
          To calculate an addition, you need the assay of {guessed.join(", ")}. Enter it, or keep it out of
          this melt.
        </p>
      )}
      {fix !== null && <FixSays fix={fix} mix={mix} form={form} />}
      {alloy !== null && judged?.ok === true && (
        <Reckoned
          formula="w = Σ mass × share × what comes through ÷ Σ of all that comes through, as the least and the most it can be; an item's shares sum to one"
          given={[["Limits", compositionOf(alloy.id)?.edition ?? "none"]]}
          source={`interval arithmetic, derived here; what comes through a melt: common practice, no source; limits: ${compositionOf(alloy.id)?.source ?? "none"}; scrap that isn't known: judgement`}
        />
      )}
    </Card>
  );
}

function Judged({ judged }: { readonly judged: ChargeJudged }) {
  const format = useFormat();
  if (!judged.ok)
    return (
      <p role="alert" className={`${sheet["held"]} ${sheet["firm"]} ${sheet["inset"]}`}>
        {judged.code === "beryllium-suspect"
          ? `Refused: ${judged.names.join(", ")}. It may contain beryllium.`
          : judged.code === "does-not-add-up"
            ? `The shares of ${judged.names.join(", ")} don’t add up. Check its assay.`
            : "There is nothing to melt."}
      </p>
    );
  const shown = judged.limits.filter(({ share, verdict }) => verdict !== "pass" || share.high > 0.0005);
  return (
    <>
      <p>
        <VerdictMark verdict={judged.verdict} /> {verdictSays[judged.verdict]}
      </p>
      <div className={sheet["scroll"]}>
        <table>
          <thead>
            <tr>
              <th scope="col">Element</th>
              <th scope="col">In the melt</th>
              <th scope="col">May be</th>
              <th scope="col">So</th>
            </tr>
          </thead>
          <tbody>
            {shown.map(({ limit, share, verdict }) => (
              <tr key={limit.of.join()}>
                <td>{limitName(limit)}</td>
                <td>{rangeWords(share, format)}</td>
                <td>{limitWords(limit, format)}</td>
                <td>
                  <VerdictMark verdict={verdict} />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </>
  );
}

/** Thinning a charge by more than this many times itself is no remedy: judgement. */
const thinsAtMost = 10;

function FixSays({
  fix,
  mix,
  form,
}: {
  readonly fix: Fix;
  readonly mix: MixSum;
  readonly form: SumForm<MeltDraft>;
}) {
  const format = useFormat();
  const { raise, targets, dilutions } = fix;
  const { items } = form.draft;
  const add = (): void => {
    if (raise?.kind !== "add") return;
    const key = Math.max(0, ...items.map((item) => item.key)) + 1;
    const more = raise.additions.flatMap(({ name, addKg }, at) => {
      const target = targets.find(({ element }) => symbolOf(element) === name);
      return target === undefined || !(addKg > 0)
        ? []
        : [
            {
              ...newItem(key + at, null, ""),
              kind: "pure" as const,
              element: target.element,
              massKg: gram(addKg),
            },
          ];
    });
    form.set({ items: [...items, ...more] });
  };
  return (
    <section className={sheet["stack3"]} aria-label="Correction">
      <p>
        <strong>Correction</strong>
      </p>
      {raise?.kind === "add" && (
        <>
          <ul>
            {raise.additions.map(({ name, addKg }) => {
              const target = targets.find(({ element }) => symbolOf(element) === name);
              return (
                <li key={name}>
                  {format.number(addKg * 1000, 0)} g ({format.number(addKg, 4)} kg) of {name}
                  {target === undefined
                    ? ""
                    : `, for ${format.show("share", target.share)} of it in the melt`}
                </li>
              );
            })}
          </ul>
          <Button onPress={add}>Add these to the charge</Button>
        </>
      )}
      {raise?.kind === "cannot-reach" && (
        <p>No addition works: {raise.names.join(", ")} would have to be removed.</p>
      )}
      {dilutions.map(({ element, share, most, addition }) => (
        <p key={element}>
          {symbolOf(element)} is likely {format.show("share", share)}, over its {format.number(most * 100, 3)}
          %:{" "}
          {addition.kind === "add"
            ? addition.addKg > thinsAtMost * mix.massKg
              ? "diluting it takes too much metal. Keep its source out of this melt."
              : `dilute it with ${format.show("kg", addition.addKg)} of this alloy free of it.`
            : "it can’t be diluted enough."}
        </p>
      ))}
      {dilutions.length > 0 && (
        <p className={sheet["soft"]}>
          You can’t remove lead, antimony, bismuth, nickel or arsenic from a melt.
        </p>
      )}
    </section>
  );
}

const rangeWords = (
  { low, high }: { readonly low: number; readonly high: number },
  format: Format,
): string => {
  const [from, to] = [format.number(low * 100, 2), format.number(high * 100, 2)];
  return from === to ? `${from}%` : `${from} to ${to}%`;
};

const gram = (kg: number): number => Math.round(kg * 10_000) / 10_000;
