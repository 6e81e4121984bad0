import { useFormat } from "../../base/state/useFormat.ts";
import { Card } from "../../base/parts/Card.tsx";
import type { SumForm } from "../../base/forms/bound.ts";
import type { FillTime, FillTimes } from "../../../logbook/casting/fillTimes.ts";
import { type GatingDraft } from "../../../logbook/casting/gatingDraft.ts";
import type { GatingSum } from "../../../logbook/casting/gatingSum.ts";
import { shortSpan } from "./heatWords.ts";
import { Reckoned, Rows, type Given } from "../../base/parts/Reckoned.tsx";
import { NumberOf } from "../../base/forms/BoundFields.tsx";
import css from "./metal.module.css";

const byWords: Readonly<Record<FillTime["by"], string>> = {
  wall: "From thickness and mass",
  gate: "From gate and mass",
  metal: "From metal and mass",
  freezing: "At most, for the thinnest section",
  ladle: "Hand ladle",
  shank: "Shank",
  hoist: "Hoist",
};

const wayNames = { ladle: "hand ladle", shank: "shank", hoist: "hoist" } as const;

/** How long the fill should take, and the choke, gates and vents that make it so. */
export function FillCard({
  form,
  times,
  timeS,
  sum,
}: {
  readonly form: SumForm<GatingDraft>;
  readonly times: FillTimes | null;
  readonly timeS: number | null;
  readonly sum: GatingSum;
}) {
  const rows = times?.rows ?? [];
  const freezing = rows.find(({ by }) => by === "freezing");
  return (
    <Card title="Fill time and choke">
      <NumberOf
        form={form}
        at="massKg"
        label="Metal through the sprue"
        quantity="kg"
        hint="Casting, gates and risers. Taken from the plan if set."
      />
      {rows.length > 0 && (
        <Rows
          rows={rows.map(({ by, lowS, highS }): Given => [
            byWords[by],
            lowS === highS ? shortSpan(lowS) : `${shortSpan(lowS)} to ${shortSpan(highS)}`,
          ])}
        />
      )}
      <NumberOf
        form={form}
        at="fillS"
        label="Planned fill"
        quantity="s"
        hint={
          times === null
            ? "Enter the metal first."
            : `Empty: ${shortSpan(times.plannedS)}, the usual limit of a ${wayNames[times.way]}.`
        }
      />
      {timeS !== null && freezing !== undefined && timeS > freezing.lowS * 1.001 && (
        <p role="alert" className={css["warn"]}>
          Longer than the {shortSpan(freezing.lowS)} the thinnest section allows. It may stop before it is
          full.
        </p>
      )}
      {timeS !== null && times !== null && timeS < times.leastS * 0.999 && (
        <p className={css["warn"]}>
          Faster than a {wayNames[times.way]} can pour: {shortSpan(times.leastS)} at best.
        </p>
      )}
      {sum.choke === null ? (
        <p>Enter head, metal and time to see choke and gates.</p>
      ) : (
        <Choke choke={sum.choke} limitMS={sum.limitMS} criticalMS={sum.criticalMS} />
      )}
      <NumberOf
        form={form}
        at="gateMm2"
        label="Total gate area"
        quantity="mm2"
        hint="All cross-sections added up."
      />
      {sum.throughGates !== null && <Through through={sum.throughGates} limitMS={sum.limitMS} />}
      <Reckoned
        formula="choke = mass ÷ (liquid density × time × Cd × √(2·g·H)); gates = mass ÷ (density × time × speed limit); vents ≥ ½ choke; critical speed = 2·(γ·g/ρ)^¼"
        given={rows.map(({ by, source }): Given => [byWords[by], source])}
        source="P. N. Rao, gating (from memory); gate speed: J. Campbell, Complete Casting Handbook (from memory), Runyoro, Boutorabi & Campbell, Trans. AFS 100 (1992) 225–234; exact fill from below: Ghosh & Mallik, Manufacturing Science ch. 2 (from memory); vents: common practice, no source"
      />
    </Card>
  );
}

function Choke({
  choke,
  limitMS,
  criticalMS,
}: {
  readonly choke: NonNullable<GatingSum["choke"]>;
  readonly limitMS: number;
  readonly criticalMS: number;
}) {
  const format = useFormat();
  return (
    <>
      <p className={css["big"]}>
        {format.show("mm2", choke.areaMm2)}{" "}
        <small>choke at the sprue's foot, ⌀ {format.show("mm", choke.roundMm)}</small>
      </p>
      <Rows
        rows={[
          ["Speed at the sprue's foot", format.show("speed", choke.speedMS)],
          [
            `All gates, to stay below ${format.show("speed", limitMS)}`,
            `${format.show("mm2", choke.gatesMm2)} or more`,
          ],
          ["Gates to choke", `${format.number(choke.gateToChoke, 1)} to 1`],
          ["All vents", `${format.show("mm2", choke.ventsMm2)} or more, one at every high pocket`],
          ["Critical gate speed", format.show("speed", criticalMS)],
          ["Reynolds number in the sprue", `${format.number(choke.reynolds, 0)}, always turbulent inside`],
        ]}
      />
    </>
  );
}

function Through({
  through: { speedMS, isTooFast, fillS },
  limitMS,
}: {
  readonly through: NonNullable<GatingSum["throughGates"]>;
  readonly limitMS: number;
}) {
  const format = useFormat();
  return (
    <p role={isTooFast ? "alert" : undefined} className={isTooFast ? css["warn"] : undefined}>
      Through these gates the metal comes in at {format.show("speed", speedMS)}
      {isTooFast
        ? `, faster than the ${format.show("speed", limitMS)} limit of this metal: widen them, or fill more slowly.`
        : `, below the ${format.show("speed", limitMS)} limit of this metal.`}{" "}
      {fillS === null
        ? "They would never fill it from below."
        : `Through these gates alone the cavity is full after ${shortSpan(fillS)}.`}
    </p>
  );
}
