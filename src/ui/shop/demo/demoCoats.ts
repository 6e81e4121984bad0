import { streamOf } from "../../../logbook/entries/entry.ts";
import { startingRecipeOf } from "../../../trade/startingRecipes.ts";
import { demoBackupId, demoPrimeId, demoRoomId } from "./demoIds.ts";
import type { DemoLog } from "./demoLog.ts";

/** Gives a piece the first coats of a starting recipe, one at each of the given hours before now; their ids. */
export function coatByRecipe(
  { log }: DemoLog,
  id: string,
  recipeId: string,
  hoursAgo: readonly number[],
): readonly string[] {
  const coats = startingRecipeOf(recipeId)?.coats ?? [];
  return hoursAgo.map((ago, step) => {
    const coat = coats[step];
    if (coat === undefined)
      throw new RangeError(`recipe ${recipeId} has ${coats.length} coats, asked for ${step + 1}`);
    return log("piece", id, "coat-dipped", ago, {
      number: step + 1,
      step,
      kind: coat.kind,
      stuccoId: coat.stuccoId,
      bucketId: coat.kind === "prime" ? demoPrimeId : demoBackupId,
      roomId: demoRoomId,
      prewet: false,
    });
  });
}

/** A coat beside the recipe, as after a mend. */
export function coatBeside(
  { log }: DemoLog,
  id: string,
  { number, hoursAgo }: { number: number; hoursAgo: number },
) {
  log("piece", id, "coat-dipped", hoursAgo, {
    number,
    step: null,
    kind: "backup",
    stuccoId: "16-30",
    bucketId: demoBackupId,
    roomId: demoRoomId,
    prewet: false,
  });
}

/** The id of a coat that is on a piece of the demo, counted from 1. */
export function coatIdOf({ entries }: DemoLog, piece: string, number: number): string {
  const stream = streamOf("piece", piece);
  const coat = entries().find(
    (entry) => entry.stream === stream && entry.type === "coat-dipped" && entry.body.number === number,
  );
  if (coat === undefined) throw new RangeError(`${piece} has no coat ${number}`);
  return coat.id;
}
