import { hasDeepPlace } from "../../../logbook/drying/coverAnswer.ts";
import { wetPatches } from "../../../logbook/piece/crackStates.ts";
import { coverHold } from "../../../rules/coverHold.ts";
import type { Finding } from "../../../rules/finding.ts";
import { cameOf } from "../../../logbook/piece/pourCame.ts";
import type { Standing } from "../../../logbook/piece/standing.ts";
import { cracksWords } from "./crackStateWords.ts";
import { coatLine } from "./coatWords.ts";
import { coverWhen, dryingLead } from "./coverWords.ts";
import { reviewWhen } from "./fireWords.ts";
import { pouredWords } from "./pourCameWords.ts";
import { duration, soonTime } from "./time.ts";

/** Who has the next move: the maker's hands, the air of the room, the kiln, or no one. */
export type Turn = "hands" | "drying" | "fire" | "rest";
export type ActionWords = { readonly verb: string; readonly when: string | null; readonly turn: Turn };

/** The next thing to do to a piece: a short command, and what is known of when. */
export function actionWords(
  { standing, findings }: { readonly standing: Standing; readonly findings: readonly Finding[] },
  now: number,
  locale: string,
): ActionWords {
  const { action, next, cover, forFire, piece, cracks } = standing;
  const coat =
    next === null ? (piece.coats.length === 0 ? "the first coat" : "the next coat") : coatLine(next);
  const ready = cover === null ? null : coverWhen(cover, now, (at) => soonTime(at, now, locale));
  const isDamp = hasBar(standing, "rinsed") || hasBar(standing, "cold");
  const signed = piece.phase === "reviewed" ? "reviewed and signed" : "pattern still inside";
  switch (action.kind) {
    case "dip":
      return coverHold(findings) === null
        ? (dryingWords(standing, { coat, now, locale }) ?? dipWords(action.readiness, coat, ready))
        : { verb: "Hold: no further coat yet", when: ready, turn: "drying" };
    case "final-dry":
      return {
        verb: "Final dry",
        when: forFire === null ? null : reviewWhen(forFire, now, (at) => soonTime(at, now, locale)),
        turn: "drying",
      };
    case "mend":
      return { verb: "Repair before going on", when: cracksWords(cracks), turn: "hands" };
    case "review":
      return {
        verb: "Review before burnout",
        when: wetPatches(cracks).length === 0 ? null : cracksWords(cracks),
        turn: "hands",
      };
    case "dewax":
      return { verb: "Dewax", when: signed, turn: "hands" };
    case "burn-out":
      return {
        verb: "Burn out",
        when: piece.phase === "dewaxed" ? "wax is out, its film stays" : signed,
        turn: "hands",
      };
    case "end-burnout": {
      const started = piece.burnouts.at(-1)?.startedAt;
      return {
        verb: "In burnout: log its end",
        when: started === undefined ? null : `${duration(Math.max(0, now - started))} in`,
        turn: "fire",
      };
    }
    case "in-kiln":
      return {
        verb: "In the kiln",
        when: action.since === null ? null : `${duration(Math.max(0, now - action.since))} in`,
        turn: "fire",
      };
    case "fire":
      return {
        verb: "Fire the shell",
        when: hasBar(standing, "residue") ? "residue inside" : null,
        turn: "fire",
      };
    case "preheat":
      return { verb: "Preheat for the pour", when: isDamp ? "dry it first" : null, turn: "fire" };
    case "pour":
      return { verb: "Pour", when: "shell is hot", turn: "fire" };
    case "knock-out": {
      const poured = piece.pours.at(-1);
      return {
        verb: "Knock out",
        when:
          poured === undefined
            ? null
            : `${pouredWords[cameOf(poured)]} ${duration(Math.max(0, now - poured.at))} ago`,
        turn: "hands",
      };
    }
    case "finish":
      return { verb: "Cut, chase and finish", when: null, turn: "hands" };
    case "tell-outcome":
      return { verb: "Record the result", when: null, turn: "hands" };
    case "none":
      return { verb: "Nothing left to do", when: null, turn: "rest" };
  }
}

const hasBar = ({ metalBars }: Standing, wanted: Standing["metalBars"][number]["code"]): boolean =>
  metalBars.some(({ code }) => code === wanted);

/** Before the time to check the drying leads, and the coat to come stands behind it. Null from then on. */
function dryingWords(
  { cover, piece }: Standing,
  { coat, now, locale }: { readonly coat: string; readonly now: number; readonly locale: string },
): ActionWords | null {
  const lead = cover === null ? null : dryingLead(cover, { now, locale, isDeep: hasDeepPlace(piece) });
  if (cover === null || lead === null) return null;
  const { dryAt, by, reason } = cover;
  const latest =
    dryAt === null || by === "minimum" ? [] : [`dry ${soonTime(dryAt, now, locale)} at the latest`];
  const unread = reason === "no-readings" ? ["no room reading"] : [];
  return { verb: lead, when: [...unread, ...latest, `then ${coat}`].join("; "), turn: "drying" };
}

function dipWords(
  readiness: Extract<Standing["action"], { kind: "dip" }>["readiness"],
  coat: string,
  ready: string | null,
): ActionWords {
  switch (readiness) {
    case "ready":
      return { verb: `Dip ${coat}`, when: ready ?? "nothing to wait for", turn: "hands" };
    case "maybe":
      return { verb: `Check if dry, then dip ${coat}`, when: ready, turn: "hands" };
    case "drying":
      return { verb: `Drying, then ${coat}`, when: ready, turn: "drying" };
    case "unknown":
      return { verb: `Check if dry, then dip ${coat}`, when: ready ?? "dryness not known", turn: "hands" };
  }
}
