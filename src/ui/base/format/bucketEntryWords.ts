import type { Makings } from "../../../logbook/entries/bucketBodies.ts";
import type { EntryBodies } from "../../../logbook/entries/entry.ts";
import type { EntryIn } from "../../../logbook/entries/entryKinds.ts";
import { figure, retiredWords, entryText, type EntryText } from "./entryText.ts";
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
        figure("fills to", entry.body.litre, (litre) => format.show("litre", litre)),
        entry.body.note,
      );
    case "bucket-topped":
      return bucketTopped(entry.body, format);
    case "bucket-lost":
      return entryText(
        `${entry.body.how === "lost" ? "Lost" : "Thrown away"}: ${format.show("litre", entry.body.litre)}`,
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
  fit: "Looked at: fit to dip",
  watch: "Looked at: to be watched",
  "do-not-dip": "Looked at: do not dip",
  "not-checked": "Dipped without a look",
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
    figure("density to be expected", expected?.densityGCm3, (density) => format.show("density", density)),
    figure("cup to be expected", expected?.cupS, (s) => format.show("s", s)),
    body.note,
  );
}

function bucketSet(body: EntryBodies["bucket-set"], format: Format): EntryText {
  const { lowS, highS } = body;
  const band =
    lowS !== undefined && highS !== undefined
      ? `kept between ${format.show("s", lowS)} and ${format.show("s", highS)}`
      : null;
  return entryText(
    `Bucket: ${body.name}`,
    body.slurry,
    band ?? figure("cup at least", lowS, (s) => format.show("s", s)),
    band === null ? figure("cup at most", highS, (s) => format.show("s", s)) : null,
    figure("density aimed at", body.densityGCm3, (density) => format.show("density", density)),
    figure("flour to binder", body.ratio, (ratio) => format.number(ratio, 2)),
    figure("full at", body.fullL, (litre) => format.show("litre", litre)),
    figure("a coat dries at least", body.leastDryH, (h) => format.show("h", h)),
    retiredWords(body),
  );
}

function bucketRead(body: EntryBodies["bucket-read"], format: Format): EntryText {
  const density = (value: number): string => format.show("density", value);
  const grams = (value: number): string => format.show("g", value);
  const hours = (value: number): string => format.show("h", value);
  const { dipsS = [] } = body;
  return entryText(
    body.asLeft === true ? "Bucket read after a correction" : "Bucket read",
    figure(body.cup ?? "cup", body.cupS, (s) => format.show("s", s)),
    dipsS.length > 1 ? `dips of ${dipsS.map((s) => format.number(s, 1)).join(", ")}` : null,
    figure("slurry", body.slurryC, (c) => format.show("temp", c)),
    figure("density", body.densityGCm3, density),
    body.weighedMl === undefined
      ? null
      : figure(`${format.show("litre", body.weighedMl / 1000)} weighs`, body.weighedG, grams),
    figure("pH", body.pH, (value) => format.number(value, 2)),
    figure("liquor", body.liquorGCm3, density),
    figure("solids by the oven", body.ovenSolids, (share) => format.show("percent", share)),
    figure("plate carries", body.plateG, grams),
    figure("gelled after", body.gelledAfterH, hours),
    figure("still liquid after", body.liquidForH, hours),
    figure("bacteria a millilitre", body.bacteriaPerMl, (value) => format.number(value, 0)),
    body.smell === "foul" ? "smells foul" : null,
    body.skin === true ? "skin on top" : null,
    body.lumps === true ? "lumps" : null,
    body.foam === true ? "foam" : null,
    body.name === undefined ? null : `by ${body.name}`,
    body.note,
  );
}
