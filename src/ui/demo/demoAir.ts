import type { AirClass } from "../../trade/airClasses.ts";

export type DemoReading = {
  readonly hoursAgo: number;
  readonly airC: number;
  readonly rh: number;
  readonly air: AirClass;
};

const days = 12;
const everyH = 4;

/** An invented room: warmer by day, drier with it, and one wet day six days ago. */
export function demoAir(): readonly DemoReading[] {
  return Array.from({ length: (days * 24) / everyH }, (_, step) => {
    const hoursAgo = days * 24 - step * everyH - 0.5;
    const wave = Math.sin((hoursAgo / 24) * 2 * Math.PI);
    const wet = hoursAgo > 130 && hoursAgo < 154 ? 0.16 : 0;
    return {
      hoursAgo,
      airC: Math.round((21 + 0.7 * wave) * 10) / 10,
      rh: Math.round((0.5 - 0.04 * wave + wet) * 100) / 100,
      air: "room-fan",
    };
  });
}
