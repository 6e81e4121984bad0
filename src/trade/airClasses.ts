import type { Basis } from "./published.ts";

export type AirClass = "still" | "draught" | "room-fan" | "rack-fan" | "strong" | "tunnel";

/** How the air moves about the pieces: film coefficient W/m²K with its range, and the speed it stands for. */
export type AirMovement = {
  readonly label: string;
  readonly filmWM2K: number;
  readonly low: number;
  readonly high: number;
  readonly speedMS: number;
  readonly basis: Basis;
  readonly source: string;
};

const source =
  "from memory of Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, ch. 7 and 9, for parts of 5–10 cm; fan turbulence is an estimate";

/** From still to strongest. */
export const airClasses: Readonly<Record<AirClass, AirMovement>> = {
  still: { label: "Still room", filmWM2K: 4, low: 3, high: 5, speedMS: 0.05, basis: "published", source },
  draught: {
    label: "Slight draught",
    filmWM2K: 7,
    low: 5,
    high: 9,
    speedMS: 0.3,
    basis: "published",
    source,
  },
  "room-fan": {
    label: "Fan on the room",
    filmWM2K: 10,
    low: 8,
    high: 14,
    speedMS: 0.6,
    basis: "published",
    source,
  },
  "rack-fan": {
    label: "Fan on the rack",
    filmWM2K: 15,
    low: 11,
    high: 22,
    speedMS: 1.25,
    basis: "published",
    source,
  },
  strong: {
    label: "Strong direct air",
    filmWM2K: 25,
    low: 18,
    high: 35,
    speedMS: 3,
    basis: "published",
    source,
  },
  tunnel: { label: "Drying tunnel", filmWM2K: 40, low: 30, high: 55, speedMS: 7, basis: "published", source },
};
