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
import { nextActions as t } from "../words/nextActions.ts";

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
    next === null
      ? piece.coats.length === 0
        ? t["action.theFirstCoat"]
        : t["action.theNextCoat"]
      : coatLine(next);
  const ready = cover === null ? null : coverWhen(cover, now, (at) => soonTime(at, now, locale));
  const isDamp = hasBar(standing, "rinsed") || hasBar(standing, "cold");
  const signed = piece.phase === "reviewed" ? t["action.reviewedAndSigned"] : t["action.patternStillInside"];
  switch (action.kind) {
    case "dip":
      return coverHold(findings) === null
        ? (dryingWords(standing, { coat, now, locale }) ?? dipWords(action.readiness, coat, ready))
        : { verb: t["action.dip.verb"], when: ready, turn: "drying" };
    case "final-dry":
      return {
        verb: t["action.final-dry.verb"],
        when: forFire === null ? null : reviewWhen(forFire, now, (at) => soonTime(at, now, locale)),
        turn: "drying",
      };
    case "mend":
      return { verb: t["action.mend.verb"], when: cracksWords(cracks), turn: "hands" };
    case "review":
      return {
        verb: t["action.review.verb"],
        when: wetPatches(cracks).length === 0 ? null : cracksWords(cracks),
        turn: "hands",
      };
    case "dewax":
      return { verb: "Dewax", when: signed, turn: "hands" };
    case "burn-out":
      return {
        verb: t["action.burn-out.verb"],
        when: piece.phase === "dewaxed" ? t["action.burn-out.when"] : signed,
        turn: "hands",
      };
    case "end-burnout": {
      const started = piece.burnouts.at(-1)?.startedAt;
      return {
        verb: t["action.end-burnout.verb"],
        when:
          started === undefined
            ? null
            : t["action.end-burnout.when"]({ duration: duration(Math.max(0, now - started)) }),
        turn: "fire",
      };
    }
    case "in-kiln":
      return {
        verb: t["action.in-kiln.verb"],
        when:
          action.since === null
            ? null
            : t["action.in-kiln.when"]({ duration: duration(Math.max(0, now - action.since)) }),
        turn: "fire",
      };
    case "fire":
      return {
        verb: t["action.fire.verb"],
        when: hasBar(standing, "residue") ? t["action.fire.when"] : null,
        turn: "fire",
      };
    case "preheat":
      return { verb: t["action.preheat.verb"], when: isDamp ? t["action.preheat.when"] : null, turn: "fire" };
    case "pour":
      return { verb: "Pour", when: t["action.pour.when"], turn: "fire" };
    case "knock-out": {
      const poured = piece.pours.at(-1);
      return {
        verb: t["action.knock-out.verb"],
        when:
          poured === undefined
            ? null
            : t["action.knock-out.when"]({
                part: pouredWords[cameOf(poured)],
                duration: duration(Math.max(0, now - poured.at)),
              }),
        turn: "hands",
      };
    }
    case "finish":
      return { verb: t["action.finish.verb"], when: null, turn: "hands" };
    case "tell-outcome":
      return { verb: t["action.tell-outcome.verb"], when: null, turn: "hands" };
    case "none":
      return { verb: t["action.none.verb"], when: null, turn: "rest" };
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
      return { verb: t["dip.ready.verb"]({ coat }), when: ready ?? t["dip.ready.when"], turn: "hands" };
    case "maybe":
      return { verb: t["dip.maybe.verb"]({ coat }), when: ready, turn: "hands" };
    case "drying":
      return { verb: t["dip.drying.verb"]({ coat }), when: ready, turn: "drying" };
    case "unknown":
      return { verb: t["dip.unknown.verb"]({ coat }), when: ready ?? t["dip.unknown.when"], turn: "hands" };
  }
}
