import { levelWords } from "./levelWords.ts";
import type { Entry, EntryBodies } from "../../../logbook/entries/entry.ts";
import { cameOf } from "../../../logbook/piece/pourCame.ts";
import { bucketEntryWords } from "./bucketEntryWords.ts";
import { coatWords } from "./coatWords.ts";
import { dewaxEntryWords, insideWords } from "./dewaxWords.ts";
import { drynessWords } from "./drynessWords.ts";
import type { RunHeat } from "../../../logbook/fire/runHeat.ts";
import type { EntryNames } from "./entryNames.ts";
import { figureDetail, entryText, type EntryText } from "./entryText.ts";
import { headText, volumeText } from "./figureText.ts";
import { meltEntryWords, pourEntryWords, runEntryWords } from "./fireEntryWords.ts";
import { planWords } from "./planWords.ts";
import { cameTitles } from "./pourCameWords.ts";
import { roomAndRecipeWords, shopEntryWords } from "./shopEntryWords.ts";
import type { Format } from "./units.ts";

/** One line of the log in words: what happened, and the numbers and remarks it carries. */
export function entryWords(entry: Entry, names: EntryNames): EntryText {
  const { format, room } = names;
  switch (entry.type) {
    case "piece-started":
      return entryText(
        "Piece started",
        `on the rack in ${room(entry.body.roomId)}`,
        ...planWords(entry.body.plan, names),
      );
    case "piece-changed":
      return entryText("Plan changed", ...planWords(entry.body.changes, names));
    case "piece-moved":
      return entryText(`Moved to ${room(entry.body.roomId)}`);
    case "pattern-measured":
      return patternMeasured(entry.body, format);
    case "coat-dipped":
      return coatDipped(entry.body, names);
    case "coat-redipped":
      return entryText("Same coat dipped again", entry.body.note);
    case "coat-skipped":
      return entryText(`Coat ${entry.body.step + 1} of the recipe skipped`, entry.body.reason);
    case "piece-weighed":
      return entryText(`Weighed: ${format.show("g", entry.body.massG)}`, "before a dip", entry.body.note);
    case "dryness-seen":
      return drynessWords(entry.body, format);
    case "hold-passed":
      return entryText(
        `Hold passed: ${holdWords[entry.body.point]}`,
        entry.body.name === undefined ? null : `by ${entry.body.name}`,
      );
    case "wall-measured":
      return entryText(`Shell measured: ${format.show("mm", entry.body.wallMm)}`, entry.body.where);
    case "crack-found":
      return entryText(
        crackWords[entry.body.kind],
        entry.body.where,
        stageWords[entry.body.stage],
        entry.body.trimmedOff === true ? "in the part that is trimmed off" : null,
      );
    case "crack-patched":
      return entryText("Crack repaired", entry.body.how);
    case "patch-dried":
      return entryText("Repair is dry", entry.body.note);
    case "wire-wrapped":
      return entryText("Wire wrapped", entry.body.note);
    case "review-signed":
      return entryText(
        `Review signed: ${levelWords[entry.body.verdict]}`,
        `by ${entry.body.name}`,
        entry.body.safety === null ? null : `strength ${format.number(entry.body.safety, 1)} times the load`,
        ...entry.body.passed.map(({ reason }) => `hold overridden: ${reason}`),
      );
    case "burnout-started":
      return entryText("Burnout started", entry.body.note);
    case "burnout-read":
      return entryText(`Kiln reading: ${format.show("temp", entry.body.kilnC)}`, entry.body.note);
    case "burnout-ended":
      return entryText(burnoutWords[entry.body.result], entry.body.note);
    case "dewaxed":
    case "shell-rinsed":
    case "shell-inspected":
      return dewaxEntryWords(entry, format);
    case "shell-fired":
      return shellFired(entry.body, names);
    case "shell-preheated":
      return entryText(
        `Preheated to ${format.show("temp", entry.body.shellC)}`,
        figureDetail("held", entry.body.heldMin, (min) => format.show("min", min)),
        entry.body.note,
      );
    case "shell-out-of-kiln":
      return entryText(
        "Out of the kiln",
        figureDetail("shell", entry.body.shellC, (c) => format.show("temp", c)),
      );
    case "pour-begun":
      return entryText(
        "Pour started",
        figureDetail("metal", entry.body.metalC, (c) => format.show("temp", c)),
      );
    case "metal-poured":
      return poured(entry.body, format);
    case "shell-knocked-out":
      return entryText("Knocked out", entry.body.note);
    case "piece-finished":
      return entryText("Finished", entry.body.note);
    case "outcome-told":
      return entryText(`Result: ${entry.body.result}`, ...entry.body.defects, entry.body.note);
    case "piece-scrapped":
      return entryText("Scrapped", entry.body.reason);
    case "piece-archived":
      return entryText(entry.body.archived ? "Put in the archive" : "Taken out of the archive");
    case "note-written":
      return entryText("Note", entry.body.text);
    case "bucket-set":
    case "bucket-read":
    case "bucket-mixed":
    case "bucket-topped":
    case "bucket-lost":
    case "bucket-counted":
    case "bucket-passed":
      return bucketEntryWords(entry, format);
    case "room-set":
    case "air-read":
    case "air-logged":
    case "recipe-set":
      return roomAndRecipeWords(entry, format);
    case "shop-figures-set":
    case "drying-pair-judged":
    case "cup-set":
    case "material-set":
    case "stock-moved":
    case "kiln-set":
    case "furnace-set":
    case "alloy-set":
    case "shrink-measured":
      return shopEntryWords(entry, format);
    case "run-planned":
    case "run-changed":
    case "run-started":
    case "run-read":
    case "run-logged":
    case "run-step-done":
    case "run-ended":
      return runEntryWords(entry, format);
    case "melt-planned":
    case "melt-started":
    case "melt-read":
    case "melt-ended":
      return meltEntryWords(entry, names);
    case "pour-planned":
    case "pour-step-marked":
    case "pour-item-checked":
    case "pour-decided":
    case "pour-ended":
      return pourEntryWords(entry, format);
    case "entry-struck":
      return entryText(
        entry.body.replacedBy === undefined ? "Entry deleted" : "Entry corrected",
        entry.body.reason,
      );
  }
}

/** As it was written; what readings that came in later make of it stands beside it. */
function shellFired(
  { peakC, holdMin, inside, runId }: EntryBodies["shell-fired"],
  { format, runHeat }: EntryNames,
): EntryText {
  const words = (heat: RunHeat): string =>
    `${format.show("temp", heat.peakC)}, held ${format.show("min", Math.round(heat.holdMin))}`;
  const now = runId === undefined ? null : (runHeat?.(runId, { peakC, holdMin }) ?? null);
  const isMoved = now !== null && words(now) !== words({ peakC, holdMin });
  return entryText(
    `Fired to ${format.show("temp", peakC)}`,
    `held ${format.show("min", holdMin)}`,
    isMoved ? `with later readings: ${words(now)}` : null,
    inside === undefined ? null : insideWords[inside],
  );
}

function coatDipped(body: EntryBodies["coat-dipped"], { format, bucket }: EntryNames): EntryText {
  return entryText(
    `Coat ${body.number}: ${coatWords(body)}`,
    body.beforeLog === undefined ? null : beforeLogDetail[body.beforeLog],
    body.bucketId === null ? null : `from ${bucket(body.bucketId)}`,
    body.prewet ? "prewetted" : null,
    body.drainS === undefined ? null : `drained ${format.show("s", body.drainS)}`,
    body.acceptedDamp === undefined ? null : dampWords(body.acceptedDamp.leftShare, format),
    body.note,
  );
}

const beforeLogDetail = {
  dated: "on before the log began",
  undated: "on before the log began, day not known",
} as const;

const dampWords = (leftShare: number | null, format: Format): string =>
  leftShare === null
    ? "over a coat not known to be dry"
    : leftShare < 0.01
      ? "over a coat that was probably dry"
      : `over a damp coat, ${format.show("percent", leftShare)} of its water left`;

function poured(body: EntryBodies["metal-poured"], format: Format): EntryText {
  const title = cameTitles[cameOf(body)];
  return entryText(
    body.massKg === null ? title : `${title}: ${format.show("kg", body.massKg)}`,
    figureDetail("metal", body.metalC, (value) => format.show("temp", value)),
    figureDetail("shell", body.shellC, (value) => format.show("temp", value)),
    figureDetail("out of the kiln", body.outOfKilnMin, (value) => format.show("min", value)),
    body.note,
  );
}

function patternMeasured(body: EntryBodies["pattern-measured"], format: Format): EntryText {
  const litre = body.volumeMm3 === null ? null : body.volumeMm3 / 1e6;
  return entryText(
    `Pattern measured: ${body.fileName}`,
    body.watertight ? null : "open mesh",
    figureDetail("volume", litre, (known) => volumeText(known, format)),
    `area ${format.show("m2", body.areaMm2 / 1e6)}`,
    figureDetail("head", body.headM, (m) => headText(m, format)),
    figureDetail("thinnest", body.thinnestMm, (mm) => format.show("mm", mm)),
    body.hollows === undefined ? null : hollowWords[body.hollows],
    counted(body.vents, "vent"),
    counted(body.drains, "drain"),
    figureDetail("air trapped", body.trappedMl, (ml) => volumeText(ml / 1000, format)),
  );
}

const hollowWords: Record<NonNullable<EntryBodies["pattern-measured"]["hollows"]>, string> = {
  metal: "closed void: metal",
  core: "closed void: core and shell",
  unanswered: "closed void: metal or core not entered",
};

const counted = (count: number, thing: string): string | null =>
  count === 0 ? null : `${count} ${thing}${count === 1 ? "" : "s"}`;

const crackWords: Record<EntryBodies["crack-found"]["kind"], string> = {
  hairline: "Hairline crack found",
  open: "Open crack found",
  chip: "Chip found",
  lift: "Lifted coat found",
};
const holdWords: Record<EntryBodies["hold-passed"]["point"], string> = {
  "prime-coverage": "prime covers everything",
  "after-second-coat": "after the second coat",
  "mid-shell": "half the shell",
  "before-seal": "before the seal coat",
  "cup-rim": "cup and rim",
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
