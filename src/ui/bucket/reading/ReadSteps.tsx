import { useLocation } from "wouter";
import { bucketCup } from "../../../logbook/bucket/bucketCups.ts";
import type { BucketStanding } from "../../../logbook/bucket/bucketStanding.ts";
import type { Shop } from "../../../logbook/piece/piece.ts";
import { airBubbleEffect } from "../../../physics/slurry/weighedDensity.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { cupName } from "../../base/format/bucketReadingWords.ts";
import type { Format } from "../../base/format/units.ts";
import type { Form } from "../../base/forms/useForm.ts";
import { CupScreen } from "./CupScreen.tsx";
import { DensityScreen } from "./DensityScreen.tsx";
import { DipScreen } from "./DipScreen.tsx";
import { GelScreen, LooksScreen, MoreScreen, PhotoScreen } from "./MoreScreens.tsx";
import { NumberScreen } from "./NumberScreen.tsx";
import type { DipStep, NumberStep, ReadDraft, ReadStep } from "./readDraft.ts";
import { dipPlace, stepAfter, stepBefore, stepPast } from "./readDraft.ts";
import { SumScreen } from "./SumScreen.tsx";

const dipTitles: Readonly<Record<DipStep, string>> = {
  "dip-1": "First dip",
  "dip-2": "Second dip",
  "dip-3": "Third dip: two differ by more than 8\u00a0%",
};
/** A slurry nobody gave a target: fused silica prime reads so in a Zahn 4 (starting value). */
const usualS = 22;

export function ReadSteps(props: {
  readonly standing: BucketStanding;
  readonly shop: Shop;
  readonly form: Form<ReadDraft>;
  readonly onLogged: (readingId: string) => void;
}) {
  const { standing, shop, form, onLogged } = props;
  const { draft, set } = form;
  const { aim, bucket } = standing;
  const format = useFormat();
  const [, goTo] = useLocation();
  const { step } = draft;
  const go = (next: ReadStep): void => set({ step: next });
  const back = (): void => {
    const to = stepBefore(step);
    if (to === null) goTo(paths.bucket(bucket.id));
    else go(to);
  };
  /** Takes the answer and goes on to what it asks for next. */
  const take = (changes: Partial<ReadDraft>): void =>
    set({ ...changes, step: stepAfter({ ...draft, ...changes }, step) });
  const skip = (changes: Partial<ReadDraft> = {}): void => set({ ...changes, step: stepPast(draft, step) });

  switch (step) {
    case "cup":
      return <CupScreen shop={shop} onCup={(cupId) => take({ cupId, dips: [] })} onBack={back} />;
    case "dip-1":
    case "dip-2":
    case "dip-3": {
      if (draft.cupId === null)
        return <CupScreen shop={shop} onCup={(cupId) => set({ cupId })} onBack={back} />;
      const place = dipPlace(step);
      const before = draft.dips.slice(0, place);
      const cup = bucketCup({ cupId: draft.cupId }, shop);
      const { bandS } = aim;
      return (
        <DipScreen
          key={step}
          title={dipTitles[step]}
          cup={[cup === null ? "" : cupName(cup), bandWords(bandS, format)]
            .filter((part) => part !== "")
            .join(" · ")}
          value={draft.dips[place] ?? null}
          from={before.at(-1) ?? (bandS === null ? usualS : (bandS.lowS + bandS.highS) / 2)}
          onNext={(seconds) => take({ dips: [...before, seconds] })}
          onSkip={() => skip({ dips: before })}
          onCup={() => go("cup")}
          onBack={back}
        />
      );
    }
    case "density":
      return (
        <DensityScreen
          draft={draft}
          airWords={airWords(standing, format)}
          onWeigh={() => set({ how: "weighed", step: "weighedG" })}
          onVolume={() => set({ how: "weighed", step: "weighedMl" })}
          onInstrument={() => set({ how: "instrument", step: "densityGCm3" })}
          onSkip={() => skip({ weighedG: null, densityGCm3: null })}
          onBack={back}
        />
      );
    case "more":
      return <MoreScreen done={doneSteps(draft)} onStep={go} onBack={() => go("sum")} />;
    case "looks":
      return <LooksScreen draft={draft} onNext={(signs) => take({ signs, looked: true })} onBack={back} />;
    case "gel":
      return <GelScreen onGel={(gel) => take({ gel })} onBack={back} />;
    case "photo":
      return <PhotoScreen photos={draft.photos} onPhotos={(photos) => set({ photos })} onBack={back} />;
    case "sum":
      return <SumScreen standing={standing} shop={shop} form={form} onBack={back} onLogged={onLogged} />;
    case "slurryC":
    case "weighedG":
    case "weighedMl":
    case "densityGCm3":
    case "pH":
    case "liquorGCm3":
    case "plateG":
    case "plateCm2":
    case "gelH":
    case "bacteriaPerMl":
    case "ovenSolids":
      return (
        <NumberScreen
          key={step}
          step={step}
          value={draft[step]}
          from={fromOf(step, standing, draft)}
          hint={
            step === "weighedG"
              ? `${draft.weighedMl} mL, brim full and wiped, less the empty cup.`
              : undefined
          }
          onNext={(value) => take({ [step]: value })}
          onSkip={() => skip(step === "plateCm2" || step === "weighedMl" ? {} : { [step]: null })}
          onBack={back}
        />
      );
  }
}

/** Checks that are told already, by the step they begin with. */
function doneSteps(draft: ReadDraft): readonly ReadStep[] {
  const numbers = (["liquorGCm3", "bacteriaPerMl", "ovenSolids"] as const).filter(
    (step) => draft[step] !== null,
  );
  return [
    ...numbers,
    ...(draft.looked ? (["looks"] as const) : []),
    ...(draft.photos.length > 0 ? (["photo"] as const) : []),
    ...(draft.gel !== null && draft.gelH !== null ? (["gel"] as const) : []),
    ...(draft.plateG !== null ? (["plateCm2"] as const) : []),
  ];
}

/** Where the first step of a pad lands: at what the bucket is meant to read. */
function fromOf(step: NumberStep, { aim }: BucketStanding, draft: ReadDraft): number | null {
  const densityGCm3 = aim.densityGCm3?.value ?? null;
  if (step === "slurryC") return aim.slurryC?.value ?? null;
  if (step === "densityGCm3") return densityGCm3;
  if (step === "weighedG") return densityGCm3 === null ? null : densityGCm3 * draft.weighedMl;
  return step === "liquorGCm3" ? aim.solGCm3.value : null;
}

function bandWords(band: BucketStanding["aim"]["bandS"], format: Format): string {
  return band === null ? "" : `target ${format.number(band.lowS, 1)} to ${format.show("s", band.highS)}`;
}

/** What one part of air in a hundred does to this bucket's density. */
function airWords({ aim, volume }: BucketStanding, format: Format): string {
  const densityGCm3 = aim.densityGCm3?.value ?? 1.68;
  const volumeL = volume?.volumeL ?? 20;
  const { dropGCm3, looksLikeWaterL } = airBubbleEffect({ densityGCm3, volumeL, airFraction: 0.01 });
  const water =
    looksLikeWaterL === null
      ? ""
      : `, as if ${format.show("litre", looksLikeWaterL)} too much water were in ${format.show("litre", volumeL)}`;
  return `Let the foam settle and tap the air out first: 1\u00a0% of air reads ${format.show("density", dropGCm3)} too light${water}.`;
}
