import type { AirClass } from "./airClasses.ts";
import type { Published } from "./published.ts";

/** The air a room is taken to have while nobody has read it: °C, humidity as a fraction, and how it moves. */
export const ordinaryRoom: Published<{ readonly airC: number; readonly rh: number; readonly air: AirClass }> =
  {
    value: { airC: 20, rh: 0.55, air: "still" },
    basis: "judgement",
    source: "judgement, no source: an unheated workshop in the middle of the year, without a fan",
  };

/** An early and a late time in such air are the likely one ÷ and × this. */
export const ordinaryRoomTimes: Published = {
  value: 2.5,
  basis: "judgement",
  source: "judgement, no source: from 25 °C, 40 % and a fan to 15 °C, 65 % and still air",
};
