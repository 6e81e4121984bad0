import type { Makings } from "../../../logbook/entries/bucketBodies.ts";
import type { EntryBodies } from "../../../logbook/entries/entry.ts";
import type { EntryIn } from "../../../logbook/entries/entryKinds.ts";
import { figureDetail, retiredWords, entryText, type EntryText } from "./entryText.ts";
import type { Format } from "./units.ts";

/** One line of a bucket's log in words. */
export function bucketEntryWords(entry: EntryIn<"bucket">, format: Format): EntryText {
  switch (entry.type) {
    case "bucket-set":
      return bucketSet(entry.body, format);
    case "bucket-read":
      return bucketRead(entry.body, format);
    case "bucket-mixed":
      return entryText(
        "New batch mixed",
        ...makingsWords(entry.body, format),
        figureDetail("fills to", entry.body.litre, (litre) => format.show("litre", litre)),
        entry.body.note,
      );
    case "bucket-topped":
      return bucketTopped(entry.body, format);
    case "bucket-lost":
      return entryText(
        `${entry.body.how === "lost" ? "Lost" : "Discarded"}: ${format.show("litre", entry.body.litre)}`,
        entry.body.note,
      );
    case "bucket-counted":
      return entryText(`In the bucket: ${format.show("litre", entry.body.litre)}`, entry.body.note);
    case "bucket-passed":
      return entryText(
        passWords[entry.body.verdict],
        entry.body.name === undefined ? null : `by ${entry.body.name}`,
        entry.body.reason,
      );
  }
}

const passWords: Record<EntryBodies["bucket-passed"]["verdict"], string> = {
  fit: "Looked at: OK to dip",
  watch: "Looked at: check it again",
  "do-not-dip": "Looked at: hold, do not dip",
  "not-checked": "Dipped without a check",
};
const topWords: Record<EntryBodies["bucket-topped"]["why"], string> = {
  evaporation: "Topped up for evaporation",
  correction: "Corrected",
  fresh: "Fresh slurry added",
};

function makingsWords({ flourKg, solKg, waterKg }: Makings, format: Format): readonly (string | null)[] {
  const part = (name: string, kg: number): string | null =>
    kg === 0 ? null : `${name} ${format.show("kg", kg)}`;
  return [part("flour", flourKg), part("binder", solKg), part("water", waterKg)];
}

function bucketTopped(body: EntryBodies["bucket-topped"], format: Format): EntryText {
  const { expected } = body;
  return entryText(
    topWords[body.why],
    ...makingsWords(body, format),
    body.lid === undefined ? null : `lid ${body.lid} since the last top-up`,
    figureDetail("expected density", expected?.densityGCm3, (density) => format.show("density", density)),
    figureDetail("expected viscosity", expected?.cupS, (s) => format.show("s", s)),
    body.note,
  );
}

function bucketSet(body: EntryBodies["bucket-set"], format: Format): EntryText {
  const { lowS, highS } = body;
  const band =
    lowS !== undefined && highS !== undefined
      ? `viscosity ${format.show("s", lowS)} to ${format.show("s", highS)}`
      : null;
  return entryText(
    `Bucket: ${body.name}`,
    body.slurry,
    band ?? figureDetail("viscosity at least", lowS, (s) => format.show("s", s)),
    band === null ? figureDetail("viscosity at most", highS, (s) => format.show("s", s)) : null,
    figureDetail("target density", body.densityGCm3, (density) => format.show("density", density)),
    figureDetail("flour to binder", body.ratio, (ratio) => format.number(ratio, 2)),
    figureDetail("full at", body.fullL, (litre) => format.show("litre", litre)),
    figureDetail("minimum drying of a coat", body.leastDryH, (h) => format.show("h", h)),
    retiredWords(body),
  );
}

function bucketRead(body: EntryBodies["bucket-read"], format: Format): EntryText {
  const density = (value: number): string => format.show("density", value);
  const grams = (value: number): string => format.show("g", value);
  const hours = (value: number): string => format.show("h", value);
  const { dipsS = [] } = body;
  return entryText(
    body.asLeft === true ? "Slurry checked after a correction" : "Slurry checked",
    figureDetail(body.cup ?? "cup", body.cupS, (s) => format.show("s", s)),
    dipsS.length > 1 ? `dips of ${dipsS.map((s) => format.number(s, 1)).join(", ")}` : null,
    figureDetail("slurry", body.slurryC, (c) => format.show("temp", c)),
    figureDetail("density", body.densityGCm3, density),
    body.weighedMl === undefined
      ? null
      : figureDetail(`${format.show("litre", body.weighedMl / 1000)} weighs`, body.weighedG, grams),
    figureDetail("pH", body.pH, (value) => format.number(value, 2)),
    figureDetail("binder", body.liquorGCm3, density),
    figureDetail("oven solids", body.ovenSolids, (share) => format.show("percent", share)),
    figureDetail("plate weight", body.plateG, grams),
    figureDetail("gelled after", body.gelledAfterH, hours),
    figureDetail("still liquid after", body.liquidForH, hours),
    figureDetail("bacteria per millilitre", body.bacteriaPerMl, (value) => format.number(value, 0)),
    body.smell === "foul" ? "smells foul" : null,
    body.skin === true ? "skin on top" : null,
    body.lumps === true ? "lumps" : null,
    body.foam === true ? "foam" : null,
    body.name === undefined ? null : `by ${body.name}`,
    body.note,
  );
}
