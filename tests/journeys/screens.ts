import { readFileSync } from "node:fs";
import { paths } from "../../src/ui/base/state/paths.ts";
import { howToNames, type HowToId } from "../../src/ui/base/format/howToNames.ts";
import type { LoggedByHand } from "../../src/ui/base/format/logWords.ts";

export type Screen = readonly [path: string, title: string | RegExp];
/** A room and a bucket by id, and the names they go by on the screen. */
export type Things = {
  readonly room: readonly [id: string, name: string];
  readonly bucket: readonly [id: string, name: string];
  /** What the rack's address shows. */
  readonly rack: string;
  /** What the screen to read the bucket at asks for first. */
  readonly readsFirst: string;
};

export const newShop: Things = {
  rack: "Dipbook",
  room: ["first", "Drying room"],
  bucket: ["first-prime", "Prime"],
  readsFirst: "Which cup?",
};
export const demoShop: Things = {
  rack: "Rack",
  room: ["demo-room", "Demo: drying room"],
  bucket: ["demo-prime", "Demo: prime"],
  readsFirst: "First dip",
};

/** Pages that show a piece of work by hand; no shop changes them. */
export const howToScreens: readonly Screen[] = [
  [paths.howTos, "How to"],
  ...Object.entries(howToNames).map(([id, name]): Screen => [paths.howTo(id as HowToId), name]),
];

/** Screens that show the same in a new shop as in one at work. */
export const sameInAnyShop: readonly Screen[] = [
  [paths.newPiece, "New piece"],
  [paths.ring, "Alarms on this device"],
  [paths.bucket("new"), "New bucket"],
  [paths.recipes, "Recipes"],
  [paths.recipe("new"), "New recipe"],
  [paths.recipe("start-general"), "General bronze"],
  [paths.alloys, "Alloys"],
  [paths.alloy("c87300"), "C87300 silicon bronze"],
  [paths.pattern("open"), "Pattern"],
  [paths.settings, "Settings"],
  [paths.figures, "Figures"],
  [paths.piece("none-such"), "Piece"],
  ["/nowhere", "Nothing here"],
];

/** The other screens every shop has, by address and heading. */
export function screensOf({ rack, room, bucket, readsFirst }: Things): readonly Screen[] {
  const [roomId, roomName] = room;
  const [bucketId, bucketName] = bucket;
  return [
    [paths.rack, rack],
    [paths.dip, /^(Which bucket|What are you dipping)\?$/],
    [paths.timeline, "The next 48 hours"],
    [paths.board, "Wall board"],
    [paths.due, "Due"],
    [paths.nextPour, "Next pour day"],
    [paths.rooms, "Rooms"],
    [paths.room(roomId), roomName],
    [paths.roomDay(roomId), `${roomName}: today`],
    [paths.roomImport(roomId), "A logger’s file"],
    [paths.roomSensor(roomId), `Sensor in ${roomName}`],
    [paths.buckets, "Buckets"],
    [paths.bucket(bucketId), bucketName],
    [paths.bucketRead(bucketId), readsFirst],
    [paths.bucketChart(bucketId), `${bucketName}: chart`],
    [paths.bucketMakeUp(bucketId), `${bucketName}: make up`],
    [paths.bucketCard(bucketId), "Bucket card"],
    [paths.bucketAims(bucketId), `${bucketName}: targets`],
    [paths.fire, "Fire"],
    [paths.kilns, "Kilns and furnaces"],
    [paths.newRun, "Plan a kiln run"],
    [paths.newMelt, "Plan a melt"],
    [paths.newPour, "Plan a pour"],
    [paths.patterns, "Patterns"],
    [paths.shop, "Shop"],
    [paths.learned, "What the shop has learned"],
    [paths.stock, "Stock"],
    [paths.materials, "Materials"],
    [paths.bucketLimits, "Slurry limits"],
    [paths.cups, "Cups"],
    [paths.archive, "Archive"],
  ];
}

/** What only a shop at work has: things on the fire, through it, and waiting for it. */
export const demoFire: readonly Screen[] = [
  [paths.run("demo-burnout"), /^Burnout, .*: over$/],
  [paths.run("demo-preheat"), /^Preheat, /],
  [paths.melt("demo-melt"), /^Melt: A356/],
  [paths.melt("demo-melt-1"), "Melt: Demo: studio bronze"],
  [paths.pour("demo-pour"), /^Pour: /],
  [paths.pourSheet("demo-pour"), "Pour sheet"],
  [paths.alloy("demo-studio-bronze"), "Demo: studio bronze"],
];

/** The screens beside a piece's own. */
export const screensOfPiece = (id: string): readonly Screen[] => [
  [paths.editPiece(id), "Plan"],
  [paths.metal(id), "Metal"],
  [paths.gating(id), "Gating and feeding"],
  [paths.advice(id), "What would help"],
  [paths.finalDry(id), "Final dry before burnout"],
  [paths.weigh(id), "Weigh"],
  [paths.review(id), "Review before burnout"],
];

/** Every form of the log by its heading; one more type that can be logged does not compile until it is here. */
const formTitles: Readonly<Record<LoggedByHand, string | RegExp>> = {
  "coat-dipped": /^Coat \d+$/,
  "coat-redipped": "Dip the same coat again",
  "coat-skipped": "Skip a coat",
  "dryness-seen": "How dry is it?",
  "wall-measured": "Caliper reading",
  "crack-found": "A crack",
  "crack-patched": "Crack repaired",
  "patch-dried": "Repair is dry",
  "wire-wrapped": "Wire wrapped",
  dewaxed: "Dewaxed",
  "burnout-started": "Burnout begins",
  "burnout-read": "Kiln reading",
  "burnout-ended": "Burnout ends",
  "shell-inspected": "Looked inside",
  "shell-rinsed": "Shell rinsed with water",
  "shell-fired": "Shell fired",
  "shell-preheated": "Shell preheated",
  "metal-poured": "Metal poured",
  "shell-knocked-out": "Shell knocked out",
  "piece-finished": "Piece finished",
  "outcome-told": "Result",
  "note-written": "Note",
  "piece-moved": "Move to another room",
  "piece-scrapped": "Scrap the piece",
};

export const formsOf = (id: string): readonly Screen[] =>
  (Object.keys(formTitles) as LoggedByHand[]).map((type) => [paths.logFor(id, type), formTitles[type]]);

/** The patterns of the app's routes, read where they are told. */
export function routesOfApp(): readonly string[] {
  const told = readFileSync("src/ui/shell/Routes.tsx", "utf8");
  const named: Readonly<Record<string, unknown>> = paths;
  return [...told.matchAll(/\[(?:paths\.(\w+)|"([^"]+)"), \w+\],/g)].map(([, name, pattern]) => {
    const route = pattern ?? named[name ?? ""];
    if (typeof route !== "string") throw new Error(`a route that is not an address: ${String(name)}`);
    return route;
  });
}
