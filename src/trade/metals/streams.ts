import type { Published } from "../published.ts";

/** What a stream of a metal is like: surface tension N/m, viscosity Pa·s, speed at the gate m/s. */
export type Stream = {
  readonly tensionNM: Published;
  readonly viscosityPaS: Published;
  /** An oxide skin on the front about doubles the head that a slot asks. */
  readonly hasSkin: boolean;
  readonly gateSpeedMS: Published;
};

const guthrie = "from memory of Iida & Guthrie, The Physical Properties of Liquid Metals (1988)";
const filmed: Published = {
  value: 0.5,
  basis: "published",
  source:
    "from memory of J. Campbell, Complete Casting Handbook; Runyoro, Boutorabi & Campbell, Trans. AFS 100 (1992) 225–234",
};
const quiet: Published = {
  value: 1,
  basis: "practice",
  source: "common practice, no source: melts with little film bear about 1 m/s",
};

const bronze: Stream = {
  tensionNM: { value: 1.2, basis: "published", source: guthrie },
  viscosityPaS: { value: 0.0035, basis: "published", source: `${guthrie}, 3–4 mPa·s` },
  hasSkin: false,
  gateSpeedMS: quiet,
};
const aluminium: Stream = {
  tensionNM: { value: 0.9, basis: "published", source: guthrie },
  viscosityPaS: {
    value: 0.0013,
    basis: "published",
    source: guthrie,
    note: "Textbooks take 4 mPa·s for its oxide.",
  },
  hasSkin: true,
  gateSpeedMS: filmed,
};

/** What a stream of each kind of metal is like; filmed bronzes hold silicon, aluminium or manganese (common practice, no source). */
export const streams = {
  bronze,
  filmedBronze: { ...bronze, gateSpeedMS: filmed },
  aluminium,
  copper: {
    tensionNM: { value: 1.3, basis: "published", source: guthrie },
    viscosityPaS: { value: 0.004, basis: "published", source: guthrie },
    hasSkin: false,
    gateSpeedMS: quiet,
  },
  silver: {
    tensionNM: { value: 0.9, basis: "published", source: guthrie },
    viscosityPaS: { value: 0.0039, basis: "published", source: guthrie },
    hasSkin: false,
    gateSpeedMS: quiet,
  },
  tin: {
    tensionNM: { value: 0.55, basis: "published", source: guthrie },
    viscosityPaS: { value: 0.0018, basis: "published", source: guthrie },
    hasSkin: false,
    gateSpeedMS: quiet,
  },
  iron: {
    tensionNM: {
      value: 1.2,
      basis: "judgement",
      source: "from memory, no source; iron with sulphur 1.0–1.4",
    },
    viscosityPaS: { value: 0.006, basis: "published", source: guthrie },
    hasSkin: false,
    gateSpeedMS: quiet,
  },
} as const satisfies Record<string, Stream>;
