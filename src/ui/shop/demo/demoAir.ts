import { demoRoomId, demoShedId } from "./demoIds.ts";
import type { DemoLog } from "./demoLog.ts";
import { noise, rounded } from "./demoNumbers.ts";

const dayH = 24;
/** From here on the drying room has a logger; before, somebody read it by hand. */
const loggerDays = 7;
const handDays = 28;
/** Before two in the afternoon and after it: a quarter past eight, noon, half past four. */
const handAtH = [5.75, 2, -2.5] as const;
const shedDays = 4;
const shedEveryH = 2;
const tenMinutesS = 600;

/** Two invented rooms: one to dry in, with a logger since a week, and an unheated one that is damp at night. */
export function demoRooms(demo: DemoLog): void {
  dryingRoom(demo);
  shed(demo);
}

/** 1 in the middle of the afternoon, −1 twelve hours away from it. */
const warmth = (hourOfDay: number): number => Math.cos(((hourOfDay - 15) / dayH) * 2 * Math.PI);

/** No day is quite like the one before: weather of two and a half days, −1 to 1. */
const weather = (hoursAgo: number): number => Math.sin((hoursAgo / 61) * 2 * Math.PI);

/** Warmer by day, drier with it, and one wet day six days ago. */
function dryingRoom({ log, logged, agoAt, hourOfDay }: DemoLog): void {
  const airOf = (hoursAgo: number) => {
    const wave = warmth(hourOfDay(hoursAgo));
    const wet = hoursAgo > 130 && hoursAgo < 154 ? 0.16 : 0;
    return {
      airC: rounded(21 + 0.7 * wave + 0.1 * weather(hoursAgo) + 0.1 * noise(hoursAgo), 1),
      rh: rounded(0.5 - 0.04 * wave - 0.01 * weather(hoursAgo) + wet + 0.006 * noise(hoursAgo + 7), 3),
    };
  };
  const roomSetH = (handDays + 2) * dayH;
  log("room", demoRoomId, "room-set", roomSetH, { name: "Demo: drying room", altitudeM: 120 });
  for (let day = handDays; day > loggerDays; day -= 1)
    for (const hour of handAtH) {
      const ago = day * dayH + hour;
      log("room", demoRoomId, "air-read", ago, { ...airOf(agoAt(ago)), air: "room-fan" });
    }
  for (let day = loggerDays; day > 0; day -= 1) {
    const afterS = Array.from({ length: (dayH * 3600) / tenMinutesS }, (_, step) => step * tenMinutesS);
    const readings = afterS.map((second) => airOf(day * dayH - second / 3600));
    logged("room", demoRoomId, "air-logged", day * dayH, {
      source: "Demo: logger",
      air: null,
      afterS,
      airC: readings.map(({ airC }) => airC),
      rh: readings.map(({ rh }) => rh),
    });
  }
}

/** No heat and no fan: what dries here by day waits through the night. */
function shed({ logged, hourOfDay }: DemoLog): void {
  const first = shedDays * dayH + 0.4;
  logged("room", demoShedId, "room-set", first + 1, { name: "Demo: unheated shed", altitudeM: 120 });
  for (let ago = first; ago > 0; ago -= shedEveryH) {
    const wave = warmth(hourOfDay(ago));
    logged("room", demoShedId, "air-read", ago, {
      airC: rounded(13 + 4 * wave + 0.8 * weather(ago), 1),
      rh: rounded(0.69 - 0.2 * wave - 0.015 * weather(ago), 2),
      air: "still",
    });
  }
}
