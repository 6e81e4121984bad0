import type { CorrectCommand } from "../log/command.ts";
import { streamOf } from "../entries/entry.ts";
import type { PourBodies } from "../entries/fireBodies.ts";
import type { Pour } from "../fire/fireStates.ts";

/** The plan put right: the old one is struck with the reason, as a pour is planned once. */
export function correctedPlan(
  { id, plan }: Pick<Pour, "id" | "plan">,
  changes: Partial<PourBodies["pour-planned"]>,
  reason: string,
): CorrectCommand {
  const { id: entryId, at: _at, ...body } = plan;
  return { do: "correct", stream: streamOf("pour", id), entryId, body: { ...body, ...changes }, reason };
}
