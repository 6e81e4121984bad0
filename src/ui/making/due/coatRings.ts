import type { DueTime } from "../../base/alarm/dueTimes.ts";
import type { RingDue } from "../../base/alarm/ringDue.ts";
import { paths } from "../../base/state/paths.ts";
import { dueWords } from "./dueWords.ts";

const lastsMin = 15;

/** What rings, and goes into the calendar, as a coat may be checked or a shell reviewed. */
export function coatRing(due: DueTime): RingDue {
  const { id, dueMs, name, pieceId } = due;
  const words = dueWords(due);
  return {
    id,
    dueMs,
    words,
    name,
    notice: { title: name, body: words },
    path: paths.piece(pieceId),
    calendar: (say) => ({ durationMin: lastsMin, ...eventWords(due, say) }),
  };
}

function eventWords(
  due: DueTime,
  say: (at: number) => string,
): { readonly summary: string; readonly description: string } {
  const { name, coat, dueMs } = due;
  if (due.allows === "review")
    return {
      summary: `${name}: final dry, review not before ${say(dueMs)}`,
      description: `${name}: all coats on. Final dry: review not before ${say(dueMs)}. Review it before burnout.`,
    };
  if (due.isHeld === true)
    return {
      summary: `${name}: check coat ${coat}`,
      description: `${name}: check coat ${coat} from ${say(dueMs)}. Hold: no further coat yet.`,
    };
  const { dryAt } = due.cover;
  const latest = dryAt === null ? "No latest time can be given." : `Dry ${say(dryAt)} at the latest.`;
  return {
    summary: `${name}: check if coat ${coat} is dry`,
    description: `${name}: check coat ${coat} from ${say(dueMs)}. ${latest} Check it before you dip.`,
  };
}
