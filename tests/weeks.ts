import type { PiecePlan } from "../src/logbook/entries/pieceBodies.ts";
import { firstBackupBucketId, firstPrimeBucketId } from "../src/logbook/piece/builtIns.ts";
import { findingsFor } from "../src/rules/all.ts";
import type { Finding, Level } from "../src/rules/finding.ts";
import type { AirClass } from "../src/trade/airClasses.ts";
import { saturationPressurePa } from "../src/physics/air/air.ts";
import { givenPiece, knownPlan, type GivenPiece } from "./givenPiece.ts";

/** Air of a room at an hour since eight on a Monday morning. */
type AirOf = (hour: number) => { readonly airC: number; readonly rh: number; readonly air: AirClass };

/** One ordinary working week, or two, at the rack: what is logged, and how often someone looks. */
export type Week = {
  readonly name: string;
  readonly plan: Partial<PiecePlan>;
  readonly air: AirOf;
  /** A logger reads every hour, day and night; a hand three times on a working day, or at each dip alone. */
  readonly reads: "logger" | "thrice" | "at-dip";
  readonly coatsADay: 1 | 2;
  /** Whether the cup is timed on each working day. */
  readonly readsBucket: boolean;
};

/** What stood on the piece at one look. */
export type Look = {
  readonly hour: number;
  readonly coats: number;
  readonly findings: readonly Finding[];
};

const dayH = 24;
const coatsInAll = 9;
/** The working day in hours after eight: ten hours, with a look at each full hour of it. */
const looksOfDay = Array.from({ length: 11 }, (_, i) => i);
/** Half past eight and half past five; nine o'clock for one coat a day. */
const dipsOfDay = { 1: [1], 2: [0.5, 9.5] } as const;
/** Eight, one and six o'clock. */
const readingsOfDay = [0, 5, 10] as const;
const looksInAll = { 1: 106, 2: 52 } as const;

/** Hours at which the working days begin: day 5 and 6 are the weekend. */
const workingDays = Array.from({ length: 12 }, (_, day) => day)
  .filter((day) => day % 7 < 5)
  .map((day) => day * dayH);
const hoursOf = (ofDay: readonly number[], count: number): readonly number[] =>
  workingDays.flatMap((start) => ofDay.map((hour) => start + hour)).slice(0, count);

/** A room that never changes. */
const steady =
  (airC: number, rh: number, air: AirClass): AirOf =>
  () => ({ airC, rh, air });

/** Coldest at four in the morning and warmest at four in the afternoon, with the same water in the air all day. */
const dayAndNight =
  ({ lowC, highC, rh, air }: { lowC: number; highC: number; rh: number; air: AirClass }): AirOf =>
  (hour) => {
    const meanC = (lowC + highC) / 2;
    const airC = meanC - ((highC - lowC) / 2) * Math.cos((2 * Math.PI * (hour + 8 - 4)) / dayH);
    return { airC, rh: Math.min(1, (rh * saturationPressurePa(meanC)) / saturationPressurePa(airC)), air };
  };

/** The hours at which the week's nine coats go on. */
export const dipsOf = ({ coatsADay }: Pick<Week, "coatsADay">): readonly number[] =>
  hoursOf(dipsOfDay[coatsADay], coatsInAll);

export const looksOf = ({ coatsADay }: Pick<Week, "coatsADay">): readonly number[] =>
  hoursOf(looksOfDay, looksInAll[coatsADay]);

/** Writes the week down, in the order in which it happens. */
function loggedWeek(week: Week): GivenPiece {
  const piece = givenPiece(week.plan);
  const dips = dipsOf(week);
  const last = looksOf(week).at(-1) ?? 0;
  const readsAt = {
    logger: Array.from({ length: last + 1 }, (_, hour) => hour),
    thrice: hoursOf(readingsOfDay, Infinity),
    "at-dip": dips,
  }[week.reads];
  const lines: readonly (readonly [hour: number, log: () => unknown])[] = [
    ...readsAt.map((hour) => [hour, () => piece.air(hour, week.air(hour))] as const),
    ...(week.readsBucket ? workingDays : []).flatMap((hour) =>
      [firstPrimeBucketId, firstBackupBucketId].map(
        (id) =>
          [
            hour + 0.25,
            () => piece.bucket(hour + 0.25, "bucket-read", { cupId: "zahn-4", cupS: 14 }, id),
          ] as const,
      ),
    ),
    ...dips.map((hour, i) => [hour, () => piece.coat(hour, coatOf(week, i))] as const),
  ];
  for (const [hour, log] of lines.toSorted(([a], [b]) => a - b)) if (hour <= last) log();
  return piece;
}

/** Which coat a piece without a recipe gets; one with a recipe gets what its recipe asks for. */
function coatOf({ plan }: Week, i: number): Parameters<GivenPiece["coat"]>[1] {
  const bucketId = i < 2 ? firstPrimeBucketId : firstBackupBucketId;
  if (plan.recipeId !== undefined) return { bucketId };
  if (i < 2) return { bucketId, kind: "prime", stuccoId: "80-120" };
  if (i === 2) return { bucketId, kind: "intermediate", stuccoId: "30-80" };
  return i === coatsInAll - 1
    ? { bucketId, kind: "seal", stuccoId: null }
    : { bucketId, kind: "backup", stuccoId: "16-30" };
}

/** All looks of a week. */
export function lookThrough(week: Week): readonly Look[] {
  const piece = loggedWeek(week);
  return looksOf(week).map((hour) => {
    const standing = piece.standing(hour);
    return { hour, coats: standing.coatsDone, findings: findingsFor(standing) };
  });
}

export const looksAt = (looks: readonly Look[], level: Level): readonly Look[] =>
  looks.filter(({ findings }) => findings.some((finding) => finding.level === level));

/** "hour 53, 4 on: watch recoated-before-dry maybe": what a week says beyond notes, for the message of a test. */
export const heavier = (looks: readonly Look[]): readonly string[] =>
  looks.flatMap(({ hour, coats, findings }) =>
    findings
      .filter(({ level }) => level !== "note")
      .map(({ level, rule, variant }) => `hour ${hour}, ${coats} on: ${level} ${rule} ${variant}`),
  );

/** The air of a week's room at an hour since eight on its Monday. */
export const airOfWeek = ({ air }: Week, hour: number): ReturnType<AirOf> => air(hour);

/** True at a full hour of a working day. */
export const isWorkingHour = (hour: number): boolean =>
  Number.isInteger(hour) && hour % dayH <= 10 && Math.floor(hour / dayH) % 7 < 5;

const wax: Partial<PiecePlan> = knownPlan;
const pla: Partial<PiecePlan> = { ...knownPlan, material: "pla" };
const room = steady(21, 0.5, "room-fan");
const swinging = dayAndNight({ lowC: 17.5, highC: 23.5, rh: 0.5, air: "room-fan" });
const handRead = { reads: "thrice", readsBucket: true } as const;

/** Ten weeks in which nothing goes wrong; the first two get two coats a day, the rest one with the weekend off. */
export const quietWeeks: readonly Week[] = [
  { name: "wax, steady air, logger", plan: wax, air: room, reads: "logger", coatsADay: 2, readsBucket: true },
  { name: "wax, day and night", plan: wax, air: swinging, coatsADay: 2, ...handRead },
  { name: "wax, a coat a day", plan: wax, air: swinging, coatsADay: 1, ...handRead },
  { name: "PLA, a coat a day", plan: pla, air: swinging, coatsADay: 1, ...handRead },
  {
    name: "PLA, read only at the dip",
    plan: pla,
    air: swinging,
    reads: "at-dip",
    coatsADay: 1,
    readsBucket: false,
  },
  { name: "wax, fan on the rack", plan: wax, air: steady(21, 0.5, "rack-fan"), coatsADay: 1, ...handRead },
  {
    name: "wax, summer",
    plan: wax,
    air: dayAndNight({ lowC: 21, highC: 29, rh: 0.55, air: "room-fan" }),
    coatsADay: 1,
    ...handRead,
  },
  {
    name: "wax, winter",
    plan: wax,
    air: dayAndNight({ lowC: 13.5, highC: 18.5, rh: 0.45, air: "draught" }),
    coatsADay: 1,
    ...handRead,
  },
  { name: "name only", plan: {}, air: room, coatsADay: 1, ...handRead, readsBucket: false },
  {
    name: "name and recipe",
    plan: { recipeId: "start-general" },
    air: room,
    coatsADay: 1,
    ...handRead,
    readsBucket: false,
  },
];
