import type { Entry, EntryBodies } from "../../logbook/entry.ts";
import { coatWords } from "./coatWords.ts";
import { planWords } from "./planWords.ts";
import type { Format } from "./units.ts";

export type EntryNames = {
  readonly format: Format;
  readonly room: (id: string) => string;
  readonly bucket: (id: string) => string;
  readonly recipe: (id: string) => string;
};
export type EntryText = { readonly title: string; readonly detail: string | null };

/** One line of the log in words: what happened, and the numbers and remarks it carries. */
export function entryWords(entry: Entry, names: EntryNames): EntryText {
  const { format, room } = names;
  switch (entry.type) {
    case "piece-started":
      return told(
        "Piece started",
        `hung in ${room(entry.body.roomId)}`,
        ...planWords(entry.body.plan, names),
      );
    case "piece-changed":
      return told("Plan changed", ...planWords(entry.body.changes, names));
    case "piece-moved":
      return told(`Moved to ${room(entry.body.roomId)}`);
    case "coat-dipped":
      return coatDipped(entry.body, names);
    case "coat-redipped":
      return told("Same coat dipped again", entry.body.note);
    case "coat-skipped":
      return told(`Coat ${entry.body.step + 1} of the recipe left out`, entry.body.reason);
    case "dryness-seen":
      return dryness(entry.body, format);
    case "wall-measured":
      return told(`Wall measured: ${format.show("mm", entry.body.wallMm)}`, entry.body.where);
    case "crack-found":
      return told(crackWords[entry.body.kind], entry.body.where, stageWords[entry.body.stage]);
    case "crack-patched":
      return told("Crack mended", entry.body.how);
    case "wire-wrapped":
      return told("Wire wrapped", entry.body.note);
    case "review-signed":
      return told(
        `Review signed: ${entry.body.verdict}`,
        `by ${entry.body.name}`,
        entry.body.safety === null ? null : `safety factor ${format.number(entry.body.safety, 1)}`,
        ...entry.body.passed.map(({ reason }) => `hold passed: ${reason}`),
      );
    case "burnout-started":
      return told("Burnout started", entry.body.note);
    case "burnout-read":
      return told(`Kiln read: ${format.show("temp", entry.body.kilnC)}`, entry.body.note);
    case "burnout-ended":
      return told(burnoutWords[entry.body.result], entry.body.note);
    case "shell-fired":
      return told(
        `Fired to ${format.show("temp", entry.body.peakC)}`,
        `held ${format.show("min", entry.body.holdMin)}`,
      );
    case "shell-preheated":
      return told(`Preheated to ${format.show("temp", entry.body.shellC)}`, entry.body.note);
    case "metal-poured":
      return poured(entry.body, format);
    case "shell-knocked-out":
      return told("Knocked out", entry.body.note);
    case "piece-finished":
      return told("Finished", entry.body.note);
    case "outcome-told":
      return told(`Came out ${entry.body.result}`, ...entry.body.defects, entry.body.note);
    case "piece-scrapped":
      return told("Scrapped", entry.body.reason);
    case "piece-archived":
      return told(entry.body.archived ? "Put in the archive" : "Taken out of the archive");
    case "note-written":
      return told("Note", entry.body.text);
    case "room-set":
      return told(
        `Room: ${entry.body.name}`,
        `altitude ${format.show("m", entry.body.altitudeM)}`,
        entry.body.retired === true ? "no longer used" : null,
      );
    case "air-read":
      return told(
        `Air read: ${format.show("temp", entry.body.airC)}, ${format.show("percent", entry.body.rh)} humidity`,
        entry.body.note,
      );
    case "bucket-set":
      return told(
        `Bucket: ${entry.body.name}`,
        entry.body.slurry,
        entry.body.retired === true ? "no longer used" : null,
      );
    case "bucket-read":
      return bucketRead(entry.body, format);
    case "recipe-set":
      return told(`Recipe: ${entry.body.name}`, `${entry.body.coats.length} coats`, entry.body.note);
    case "shop-figures-set":
      return told(
        "Own figures set",
        figure("drying factor", entry.body.dryingFactor, (value) => format.number(value, 2)),
        figure("fired strength", entry.body.morMPa, (value) => format.show("MPa", value)),
      );
    case "entry-struck":
      return told(
        entry.body.replacedBy === undefined ? "Entry struck" : "Entry corrected",
        entry.body.reason,
      );
  }
}

const told = (title: string, ...details: readonly (string | null | undefined)[]): EntryText => {
  const said = details.filter((detail) => detail !== null && detail !== undefined && detail.trim() !== "");
  return { title, detail: said.length === 0 ? null : said.join(" · ") };
};

function coatDipped(body: EntryBodies["coat-dipped"], { format, bucket }: EntryNames): EntryText {
  return told(
    `Coat ${body.number}: ${coatWords(body)}`,
    body.bucketId === null ? null : `from ${bucket(body.bucketId)}`,
    body.prewet ? "prewetted" : null,
    body.drainS === undefined ? null : `drained ${format.show("s", body.drainS)}`,
    body.acceptedDamp === undefined ? null : dampWords(body.acceptedDamp.leftShare, format),
    body.note,
  );
}

const dampWords = (leftShare: number | null, format: Format): string =>
  leftShare === null
    ? "over a coat not known to be dry"
    : leftShare < 0.01
      ? "over a coat likely dry, not surely"
      : `over a damp coat, ${format.show("percent", leftShare)} of its water still to go`;

function dryness(body: EntryBodies["dryness-seen"], format: Format): EntryText {
  switch (body.method) {
    case "touch":
      return told(`Felt ${body.verdict}`);
    case "weight":
      return told(`Weighed: ${format.show("g", body.massG)}`);
    case "surface":
      return told(`Surface measured: ${format.show("temp", body.surfaceC)}`);
  }
}

function poured(body: EntryBodies["metal-poured"], format: Format): EntryText {
  return told(
    body.massKg === null ? "Metal poured" : `Metal poured: ${format.show("kg", body.massKg)}`,
    figure("metal", body.metalC, (value) => format.show("temp", value)),
    figure("shell", body.shellC, (value) => format.show("temp", value)),
    figure("out of the kiln", body.outOfKilnMin, (value) => format.show("min", value)),
    body.note,
  );
}

function bucketRead(body: EntryBodies["bucket-read"], format: Format): EntryText {
  return told(
    "Bucket read",
    figure(body.cup ?? "cup", body.cupS, (value) => format.show("s", value)),
    figure("slurry", body.slurryC, (value) => format.show("temp", value)),
    figure("density", body.densityGCm3, (value) => format.show("density", value)),
    figure("pH", body.pH, (value) => format.number(value, 2)),
    body.note,
  );
}

/** "drying factor 1.2"; says so when it was cleared, and nothing when it was not spoken of. */
function figure(
  name: string,
  value: number | null | undefined,
  show: (value: number) => string,
): string | null {
  if (value === undefined) return null;
  return value === null ? `${name} not known` : `${name} ${show(value)}`;
}

const crackWords: Record<EntryBodies["crack-found"]["kind"], string> = {
  hairline: "Hairline crack found",
  open: "Open crack found",
  chip: "Chip found",
  lift: "Lifted coat found",
};
const stageWords: Record<EntryBodies["crack-found"]["stage"], string | null> = {
  coating: "while coating",
  burnout: "in burnout",
  firing: "in firing",
  other: null,
};
const burnoutWords: Record<EntryBodies["burnout-ended"]["result"], string> = {
  clean: "Burnout ended, clean",
  residue: "Burnout ended, residue left",
  stopped: "Burnout stopped",
};
