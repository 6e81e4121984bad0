import { useState } from "react";
import { BigKey } from "../../base/glove/BigKey.tsx";
import { BucketScreen } from "../../base/glove/BucketScreen.tsx";
import { pagesOf } from "../../base/glove/pages.ts";
import { PhotoPicker } from "../../base/parts/PhotoPicker.tsx";
import type { ReadDraft, ReadStep, Sign } from "./readDraft.ts";

const checks = [
  { step: "looks", name: "Smell and look", under: "Skin, lumps, foam" },
  { step: "liquorGCm3", name: "Binder density", under: "Shows the silica in the binder" },
  { step: "plateCm2", name: "Plate weight", under: "What a drained plate carries" },
  { step: "gel", name: "Gel test", under: "A vial of binder in the oven" },
  { step: "bacteriaPerMl", name: "Bacteria", under: "Dip slide" },
  { step: "ovenSolids", name: "Oven solids", under: "Not with fused silica flour" },
  { step: "photo", name: "Photo", under: "" },
] as const satisfies readonly { step: ReadStep; name: string; under: string }[];

/** The checks that come by the week or the month. */
export function MoreScreen(props: {
  readonly done: readonly ReadStep[];
  readonly onStep: (step: ReadStep) => void;
  readonly onBack: () => void;
}) {
  const { done, onStep, onBack } = props;
  const [page, setPage] = useState(0);
  const pages = pagesOf(checks, { alone: 4, paged: 4 });
  return (
    <BucketScreen title="More checks" way={{ text: "Done", onPress: onBack }} told={null}>
      {pages.at(page).map(({ step, name, under }) => (
        <BigKey
          key={step}
          under={done.includes(step) ? "Done" : under === "" ? undefined : under}
          onPress={() => onStep(step)}
        >
          {name}
        </BigKey>
      ))}
      <BigKey onPress={() => setPage(page + 1)}>Other checks</BigKey>
    </BucketScreen>
  );
}

const signs: readonly { readonly sign: Sign; readonly name: string }[] = [
  { sign: "smell", name: "Foul smell" },
  { sign: "skin", name: "Skin on top" },
  { sign: "lumps", name: "Lumps" },
  { sign: "foam", name: "Foam" },
];

/** What nose and eye tell. "Nothing" is told too: it clears what was seen before. */
export function LooksScreen(props: {
  readonly draft: ReadDraft;
  readonly onNext: (signs: readonly Sign[]) => void;
  readonly onBack: () => void;
}) {
  const { draft, onNext, onBack } = props;
  const [found, setFound] = useState(draft.signs);
  const toggle = (sign: Sign): void =>
    setFound(found.includes(sign) ? found.filter((one) => one !== sign) : [...found, sign]);
  return (
    <BucketScreen title="Smell and look" way={{ text: "Back", onPress: onBack }} told={null}>
      {signs.map(({ sign, name }) => (
        <BigKey key={sign} onPress={() => toggle(sign)}>
          {name}: {found.includes(sign) ? "yes" : "no"}
        </BigKey>
      ))}
      <BigKey main={found.length === 0} onPress={() => onNext(found)}>
        {found.length === 0 ? "None of these" : "That is all"}
      </BigKey>
    </BucketScreen>
  );
}

export function GelScreen(props: {
  readonly onGel: (gel: "gelled" | "liquid") => void;
  readonly onBack: () => void;
}) {
  return (
    <BucketScreen
      title="Gel test"
      sub="20 mL of clear binder in a closed vial, kept warm, with fresh sol beside it."
      way={{ text: "Back", onPress: props.onBack }}
      told={null}
    >
      <BigKey main onPress={() => props.onGel("liquid")} under="When last tilted">
        Still liquid
      </BigKey>
      <BigKey main onPress={() => props.onGel("gelled")} under="It no longer runs">
        Gelled
      </BigKey>
    </BucketScreen>
  );
}

export function PhotoScreen(props: {
  readonly photos: readonly string[];
  readonly onPhotos: (photos: readonly string[]) => void;
  readonly onBack: () => void;
}) {
  return (
    <BucketScreen title="Photo" way={{ text: "Done", onPress: props.onBack }} told={null}>
      <PhotoPicker photos={props.photos} onChange={props.onPhotos} />
    </BucketScreen>
  );
}
