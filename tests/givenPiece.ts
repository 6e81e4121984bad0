import { millisecondsInHour as hourMs } from "date-fns/constants";
import { standingOf } from "../src/logbook/piece/buildStanding.ts";
import {
  builtInBucketIds,
  builtInRecipe,
  builtInRoom,
  builtInShop,
  firstBackupBucketId,
  firstRoomId,
} from "../src/logbook/piece/builtIns.ts";
import { decide } from "../src/logbook/log/decide.ts";
import type { Entry, EntryBodies, EntryType } from "../src/logbook/entries/entry.ts";
import type { PiecePlan } from "../src/logbook/entries/pieceBodies.ts";
import { streamOf } from "../src/logbook/entries/entry.ts";
import { readingsOf } from "../src/logbook/air/airLog.ts";
import { foldPiece, foldRoom } from "../src/logbook/log/fold.ts";
import { foldBucket } from "../src/logbook/bucket/foldBucket.ts";
import type { Run } from "../src/logbook/fire/fireStates.ts";
import type { Recipe } from "../src/logbook/piece/piece.ts";
import type { Standing } from "../src/logbook/piece/standing.ts";
import type { Surroundings } from "../src/logbook/piece/surroundings.ts";
import type { Finding } from "../src/rules/finding.ts";
import type { AirClass } from "../src/trade/airClasses.ts";
import type { CoatKind } from "../src/trade/coats.ts";
import { startingRecipes } from "../src/trade/startingRecipes.ts";

/** Level and variant of each finding, such as "hold wet". */
export const told = (findings: readonly Finding[]): readonly string[] =>
  findings.map(({ level, variant }) => `${level} ${variant}`);

export const dayOne = Date.UTC(2026, 3, 6, 6, 0);

export type CoatGiven = {
  readonly kind: CoatKind;
  readonly stuccoId: string | null;
  readonly step: number | null;
  readonly acceptedDamp: EntryBodies["coat-dipped"]["acceptedDamp"];
  readonly said: EntryBodies["coat-dipped"]["said"];
  readonly bucketId: string | null;
  readonly beforeLog: EntryBodies["coat-dipped"]["beforeLog"];
};

/**
 * A piece told by its log, for tests: every line goes through `decide`, a refused one throws. Times are hours
 * since `dayOne` and run forward.
 */
export type GivenPiece = {
  readonly log: <T extends EntryType>(hour: number, type: T, body: EntryBodies[T]) => string;
  /** The recipe's next coat, or what is given; tells the coat's id. */
  readonly coat: (hour: number, coat?: Partial<CoatGiven>) => string;
  readonly coats: (hours: readonly number[]) => void;
  readonly air: (hour: number, air?: { airC?: number; rh?: number; air?: AirClass }) => string;
  /** A line in the log of a built-in bucket. */
  readonly bucket: <T extends EntryType>(hour: number, type: T, body: EntryBodies[T], id?: string) => string;
  readonly feel: (hour: number, verdict: "dry" | "damp" | "wet") => string;
  /** `runs`: kiln runs it was in, as they are known by then. */
  readonly standing: (hour: number, runs?: readonly Run[]) => Standing;
  readonly entries: () => readonly Entry[];
};

export function givenPiece(
  plan: Partial<PiecePlan> = {},
  { recipe = null }: { recipe?: Recipe | null } = {},
): GivenPiece {
  const id = "piece-of-the-test";
  const stream = streamOf("piece", id);
  const roomStream = streamOf("room", firstRoomId);
  const entries: Entry[] = [];
  let made = 0;
  const tell = <T extends EntryType>(on: string, hour: number, type: T, body: EntryBodies[T]): string => {
    const now = dayOne + hour * hourMs;
    const moment = {
      now,
      zone: "Europe/Rome",
      device: "d-test",
      newId: () => `e${String(++made).padStart(4, "0")}`,
    };
    const command = { do: "log", stream: on, type, body } as Parameters<typeof decide>[1];
    const decision = decide(entries, command, moment);
    if (!decision.ok) throw new Error(`${type} at hour ${hour} refused: ${JSON.stringify(decision.refusal)}`);
    entries.push(...decision.entries);
    return decision.entries.at(-1)?.id ?? "";
  };
  const recipes = [...startingRecipes.map((one) => builtInRecipe(one.id)), recipe].filter(
    (one) => one !== null,
  );
  const standing = (hour: number, runs: readonly Run[] = []): Standing => {
    const now = dayOne + hour * hourMs;
    const until = entries.filter(({ at }) => at <= now);
    const piece = foldPiece(
      id,
      until.filter((entry) => entry.stream === stream),
    );
    const ofRoom = until.filter((entry) => entry.stream === roomStream);
    const room = foldRoom(firstRoomId, ofRoom) ?? builtInRoom(firstRoomId);
    if (piece === null || room === null) throw new Error("the piece has not been started");
    const surroundings: Surroundings = {
      rooms: new Map([[firstRoomId, room]]),
      readings: new Map([[firstRoomId, readingsOf(ofRoom)]]),
      recipes: new Map(recipes.map((one) => [one.id, one])),
      buckets: new Map(
        builtInBucketIds.flatMap((bucketId) => {
          const ofBucket = until.filter((entry) => entry.stream === streamOf("bucket", bucketId));
          const bucket = foldBucket(bucketId, ofBucket);
          return bucket === null ? [] : [[bucketId, bucket]];
        }),
      ),
      runs: new Map(runs.map((run) => [run.id, run])),
      shop: builtInShop,
    };
    return standingOf(piece, surroundings, now);
  };
  const log: GivenPiece["log"] = (hour, type, body) => tell(stream, hour, type, body);
  const coat: GivenPiece["coat"] = (hour, given = {}) => {
    const { next, coatsDone } = standing(hour);
    return log(hour, "coat-dipped", {
      number: coatsDone + 1,
      step: next?.step ?? null,
      kind: next?.kind ?? "backup",
      stuccoId: next === null ? "16-30" : next.stuccoId,
      bucketId: null,
      roomId: firstRoomId,
      prewet: false,
      ...given,
    });
  };
  log(0, "piece-started", {
    plan: { name: "Heron", ...plan, ...(recipe === null ? {} : { recipeId: recipe.id }) },
    roomId: firstRoomId,
  });
  return {
    log,
    coat,
    coats: (hours) => hours.forEach((hour) => coat(hour)),
    air: (hour, { airC = 22, rh = 0.5, air = "room-fan" } = {}) =>
      tell(roomStream, hour, "air-read", { airC, rh, air }),
    bucket: (hour, type, body, bucketId = firstBackupBucketId) =>
      tell(streamOf("bucket", bucketId), hour, type, body),
    feel: (hour, verdict) =>
      log(hour, "dryness-seen", {
        method: "touch",
        verdict,
        coatId: standing(hour).outer?.coat.id ?? "",
      }),
    standing,
    entries: () => entries,
  };
}

/** A wax piece with every number the wall needs: a round that its recipe carries with ease. */
export const knownPlan = {
  material: "wax",
  alloyId: "c87300",
  headM: 0.3,
  part: { kind: "round", diameterMm: 120 },
  recipeId: "start-general",
} as const satisfies Partial<PiecePlan>;

/** Hours of nine coats, each with time to dry in the steady air of the tests. */
export const unhurried = [1, 6, 12, 24, 36, 48, 60, 72, 84] as const;

/** A piece with all nine coats of the general recipe on it, none hurried, in steady air read three times a day. */
export function givenCoated(plan: Partial<PiecePlan> = {}): GivenPiece {
  const piece = givenPiece({ ...knownPlan, ...plan });
  const hours = [...unhurried];
  for (let hour = 1; hour <= 120; hour += 1) {
    if (hour % 5 === 1) piece.air(hour);
    if (hour === hours[0]) piece.coat(hours.shift() ?? hour);
  }
  return piece;
}
