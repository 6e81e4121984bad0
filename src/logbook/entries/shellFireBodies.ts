import { z } from "zod";
import { id, note, numberOf, photos, type Body } from "./bodyParts.ts";

const dewaxWay = z.enum(["flash", "steam", "hot-water", "staged"]);
/** How wax leaves a shell. `staged` is melting it out in the kiln from cold. */
export type DewaxWay = Body<typeof dewaxWay>;

const inside = z.enum(["clean", "residue"]);
/** What an eye or a lamp saw in the shell. */
export type ShellInside = Body<typeof inside>;

const came = z.enum(["full", "short", "leaked", "frozen", "stopped"]);
/** How a pour came to its end: `frozen` is metal that froze in the cup, `stopped` a pour that people broke off. */
export type PourCame = Body<typeof came>;

const metalC = numberOf("metalC").nullable();
const shellC = numberOf("shellC");
const runId = id.optional();
const pourId = id.optional();

/** What fire, water and metal did to one piece's shell. */
export const shellFireBodies = {
  "burnout-started": z.strictObject({ note, runId }),
  "burnout-read": z.strictObject({ kilnC: numberOf("kilnC"), note }),
  "burnout-ended": z.strictObject({ result: z.enum(["clean", "residue", "stopped"]), note }),
  /** The pattern was melted out; a film of it stays until fire has burnt it. */
  dewaxed: z.strictObject({
    way: dewaxWay,
    /** Null where nobody looked at the clock. */
    minutes: numberOf("dewaxMin").nullable(),
    /** What ran out, on the balance. */
    waxBackG: numberOf("waxBackG").optional(),
    /** Water was poured through the shell afterwards. */
    rinsed: z.boolean().optional(),
    note,
    runId,
  }),
  /** Water went through the shell: ash rinsed out, or wax. */
  "shell-rinsed": z.strictObject({ note }),
  /** Someone looked into the shell. */
  "shell-inspected": z.strictObject({ inside, note, photos }),
  "shell-fired": z.strictObject({
    peakC: numberOf("peakC"),
    holdMin: numberOf("holdMin"),
    /** Left out where nobody looked in. */
    inside: inside.optional(),
    runId,
  }),
  "shell-preheated": z.strictObject({
    shellC,
    /** How long it has stood there; left out where it is not known. */
    heldMin: numberOf("heldMin").optional(),
    runId,
    note,
  }),
  "shell-out-of-kiln": z.strictObject({ shellC: shellC.nullable(), pourId }),
  "pour-begun": z.strictObject({ metalC, pourId }),
  /** Metal went in, as far as it went. */
  "metal-poured": z.strictObject({
    /** Left out, also in logs from before it was asked: the shell is full. */
    came: came.optional(),
    /** The melt its metal came from; left out where none is named. */
    meltId: id.optional(),
    metalC,
    shellC: shellC.nullable(),
    massKg: numberOf("shellTookKg").nullable(),
    /** Minutes from leaving the kiln to metal. */
    outOfKilnMin: numberOf("outOfKilnMin").nullable(),
    note,
    pourId,
  }),
  "shell-knocked-out": z.strictObject({ note }),
};
