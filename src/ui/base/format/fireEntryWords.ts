import type { EntryBodies } from "../../../logbook/entries/entry.ts";
import type { EntryIn } from "../../../logbook/entries/entryKinds.ts";
import { figureDetail, entryText, type EntryText } from "./entryText.ts";
import type { EntryNames } from "./entryNames.ts";
import type { Format } from "./units.ts";

/** One line of a kiln run's log in words. */
export function runEntryWords(entry: EntryIn<"run">, format: Format): EntryText {
  switch (entry.type) {
    case "run-planned":
      return entryText(
        `${purposeWords[entry.body.purpose]} planned`,
        counted(entry.body.pieceIds.length, "piece"),
        counted(entry.body.segments.length, "step"),
        entry.body.note,
      );
    case "run-changed":
      return entryText("Plan changed", counted(entry.body.segments.length, "step"), entry.body.note);
    case "run-started":
      return entryText(
        "Run started",
        figureDetail("kiln", entry.body.kilnC, (c) => format.show("temp", c)),
      );
    case "run-read":
      return entryText(`Kiln read: ${format.show("temp", entry.body.kilnC)}`);
    case "run-logged": {
      const { source, afterS, kilnC } = entry.body;
      return entryText(
        `Kiln logged: ${counted(afterS.length, "reading") ?? "no reading"}`,
        `from ${source}`,
        `over ${format.show("h", (afterS.at(-1) ?? 0) / 3600)}`,
        `up to ${format.show("temp", Math.max(...kilnC))}`,
      );
    }
    case "run-step-done":
      return entryText(`Step ${entry.body.segment + 1} done`, entry.body.note);
    case "run-ended":
      return entryText(
        entry.body.result === "done" ? "Run ended" : "Run stopped",
        ...spentWords(entry.body, format),
        entry.body.note,
      );
  }
}

/** One line of a melt's log in words. */
export function meltEntryWords(
  entry: EntryIn<"melt">,
  { format, alloy }: Pick<EntryNames, "format" | "alloy">,
): EntryText {
  switch (entry.type) {
    case "melt-planned": {
      const { alloyId, items, pourC, lossShare, note } = entry.body;
      const massKg = items.reduce((sum, item) => sum + item.massKg, 0);
      return entryText(
        `Melt planned: ${alloy(alloyId)}`,
        `charge ${format.show("kg", massKg)}`,
        `to pour at ${format.show("temp", pourC)}`,
        figureDetail("melt loss", lossShare ?? null, (share) => format.show("share", share)),
        note,
      );
    }
    case "melt-started":
      return entryText(
        "Melt started",
        entry.body.hotFurnace ? "furnace still hot" : null,
        figureDetail("charge weighed", entry.body.weighedKg ?? null, (kg) => format.show("kg", kg)),
      );
    case "melt-read":
      return entryText(`Metal temperature: ${format.show("temp", entry.body.metalC)}`);
    case "melt-ended":
      if (entry.body.dropped === true) return entryText("Plan cancelled", entry.body.note);
      return entryText(
        "Melt ended",
        `poured ${format.show("kg", entry.body.pouredKg)}`,
        entry.body.piggedKg === 0 ? null : `into ingots ${format.show("kg", entry.body.piggedKg)}`,
        ...spentWords(entry.body, format),
        entry.body.note,
      );
  }
}

/** One line of a pour's log in words. */
export function pourEntryWords(entry: EntryIn<"pour">, format: Format): EntryText {
  switch (entry.type) {
    case "pour-planned":
      return entryText(
        "Pour planned",
        counted(entry.body.pieceIds.length, "shell"),
        bedWords[entry.body.bed],
        figureDetail("sand", entry.body.sandC, (c) => format.show("temp", c)),
        `shell ${format.show("temp", entry.body.shellC)}`,
        `metal ${format.show("temp", entry.body.metalC)}`,
        entry.body.note,
      );
    case "pour-step-marked":
      return entryText(`${entry.body.state === "done" ? "Done" : "Started"}: ${spoken(entry.body.step)}`);
    case "pour-item-checked":
      return entryText(`${entry.body.ok ? "OK" : "Not OK"}: ${spoken(entry.body.item)}`, entry.body.note);
    case "pour-decided":
      return entryText(
        entry.body.go ? "Go" : "No-go",
        `by ${entry.body.name}`,
        ...entry.body.passed.map(({ item, reason }) => `${spoken(item)} overridden: ${reason}`),
      );
    case "pour-ended":
      return entryText(entry.body.dropped === true ? "Plan cancelled" : "Pour ended", entry.body.note);
  }
}

const purposeWords: Record<EntryBodies["run-planned"]["purpose"], string> = {
  burnout: "Burnout",
  firing: "Firing",
  preheat: "Preheat",
};
const bedWords: Record<EntryBodies["pour-planned"]["bed"], string> = {
  air: "standing free",
  "cold-sand": "in cold sand",
  "hot-sand": "in hot sand",
};

const counted = (count: number, thing: string): string | null =>
  count === 0 ? null : `${count} ${thing}${count === 1 ? "" : "s"}`;

/** The id of a step or an item, as a person would say it: its words are on the page that lists it. */
const spoken = (id: string): string => id.replaceAll("-", " ");

function spentWords(
  { energyKWh, fuelKg }: { readonly energyKWh?: number | undefined; readonly fuelKg?: number | undefined },
  format: Format,
): readonly (string | null)[] {
  return [
    figureDetail("energy", energyKWh, (kWh) => `${format.number(kWh, 1)}\u00a0kWh`),
    figureDetail("fuel", fuelKg, (kg) => format.show("kg", kg)),
  ];
}
