import type { CoverAnswer } from "../src/logbook/piece/standing.ts";

/** For tests of words and lists: an answer with these times, set by the air. */
export const coverAt = ({ checkAt, dryAt }: Pick<CoverAnswer, "checkAt" | "dryAt">): CoverAnswer => ({
  coat: {
    id: "coat",
    number: 4,
    step: 3,
    kind: "backup",
    stuccoId: "16-30",
    bucketId: null,
    roomId: "first",
    prewet: false,
    dippedAt: 0,
    redips: [],
    acceptedDamp: null,
    note: null,
    photos: [],
    afterBurnout: false,
  },
  state: "drying",
  checkAt,
  dryAt,
  by: dryAt === null ? null : "air",
  airAt: dryAt,
  minimum: { hours: 4, until: 0, from: "starting" },
  touch: null,
  reason: null,
});
