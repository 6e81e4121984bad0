import { useState } from "react";
import { ranges, within } from "../../../logbook/entries/ranges.ts";
import type { Cup } from "../../../logbook/shop/shopThings.ts";
import { cupRepeatability } from "../../../trade/cups.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { SelectField } from "../../base/forms/SelectField.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { LevelMark } from "../../base/parts/LevelMark.tsx";
import { NumberField } from "../../base/forms/NumberField.tsx";
import { cupCheck, type CupCheck } from "../../../logbook/bucket/cupCheck.ts";
import sheet from "../../base/styles/sheet.module.css";

const levels = { agrees: "clear", apart: "note", suspect: "watch" } as const;

/** A working cup beside the one that is kept for checking. */
export function CupCheckCard({ cups }: { readonly cups: readonly Cup[] }) {
  const format = useFormat();
  const [cupId, setCupId] = useState(cups[0]?.id ?? null);
  const [referenceS, setReferenceS] = useState<number | null>(null);
  const [workingS, setWorkingS] = useState<number | null>(null);
  const name = cups.find(({ id }) => id === cupId)?.name ?? "The cup";
  const found =
    within(ranges.cupS, referenceS) && within(ranges.cupS, workingS)
      ? cupCheck({ referenceS, workingS })
      : null;
  return (
    <Card title="Check a cup">
      <p className={sheet["pale"]}>
        Keep one cup of each kind as a reference. Time it and the working cup in the same slurry within
        minutes, twice each. Compare the means.
      </p>
      <SelectField
        label="Working cup"
        empty={null}
        options={cups.map((cup) => ({ value: cup.id, label: cup.name }))}
        value={cupId}
        onChange={setCupId}
      />
      <div className={`${sheet["halves"]} ${sheet["top"]}`}>
        <NumberField
          label="The reference reads"
          quantity="s"
          min={0}
          value={referenceS}
          onChange={setReferenceS}
        />
        <NumberField label={`${name} reads`} quantity="s" min={0} value={workingS} onChange={setWorkingS} />
      </div>
      {found !== null && (
        <p role="status">
          <LevelMark level={levels[found.verdict]} />{" "}
          {checkWords(name, found, format.number(Math.abs(found.share) * 100, 1))}
        </p>
      )}
      <details>
        <summary>How it is judged</summary>
        <p>
          The difference divided by the mean of both. One person with one cup scatters by{" "}
          {format.number(cupRepeatability.within.value * 100, 1)}&nbsp;%; two means further apart than{" "}
          {format.number(cupRepeatability.suspect.value * 100, 0)}&nbsp;% are suspect.
        </p>
      </details>
    </Card>
  );
}

function checkWords(name: string, { share, verdict }: CupCheck, percent: string): string {
  const side = share > 0 ? "thick" : "thin";
  switch (verdict) {
    case "agrees":
      return `${name} and the reference agree within ${percent} %.`;
    case "apart":
      return `${name} reads ${percent} % too ${side}: within normal scatter. Clean it and check it again later.`;
    case "suspect":
      return share > 0
        ? `${name} reads ${percent} % too thick: silica has dried in its hole. Soak it, clean it without wire, then check again.`
        : `${name} reads ${percent} % too thin: its hole has worn wider. Check once more, then retire it.`;
  }
}
