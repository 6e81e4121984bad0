import { useNow } from "../../base/state/useNow.ts";
import { usePours } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { dayTime } from "../../base/format/time.ts";
import { FireSection } from "./FireSection.tsx";
import { pourLine } from "./pourLine.ts";

export function PoursSection() {
  const { locale } = useFormat();
  const now = useNow();
  const pours = usePours();
  return (
    <FireSection
      title="Pours"
      none="No pour yet. A plan counts back from the pour time."
      plan={{ href: paths.newPour, label: "Plan a pour" }}
      lines={pours?.map((pour) => pourLine(pour, dayTime(pour.ended?.at ?? pour.plan.pourAt, now, locale)))}
    />
  );
}
