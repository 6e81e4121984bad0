import { millisecondsInSecond as secondMs } from "date-fns/constants";
import type { CoatKind } from "../../trade/coats.ts";
import { startingRecipeOf } from "../../trade/startingRecipes.ts";
import { streamOf } from "../entries/entry.ts";
import type { PatternMeasured, PiecePlan } from "../entries/pieceBodies.ts";
import type { Command } from "../log/command.ts";
import type { Piece, Recipe } from "../piece/piece.ts";

type Coats = Pick<Recipe, "coats"> | null;

/** The kinds that `count` coats are taken to be: the recipe's, else the general starting recipe's, and backups beyond. */
export function usualKinds(count: number, recipe: Coats): readonly CoatKind[] {
  const steps = (recipe ?? startingRecipeOf("start-general"))?.coats ?? [];
  return Array.from({ length: count }, (_, step) => steps[step]?.kind ?? "backup");
}

/**
 * The start of a piece, with what its mesh measured and the coats it came with. `startedAt` and `lastAt`, when the last
 * of those coats went on, are epoch ms; left out, it starts now. Times of the coats beneath are not known: their entries
 * stand a second apart, before the last one, and say so. Their stucco is the recipe's where they are of its kind.
 */
export function startPiece({
  id,
  plan,
  roomId,
  recipe,
  measured = null,
  startedAt = null,
  on = null,
}: {
  readonly id: string;
  readonly plan: PiecePlan;
  readonly roomId: string;
  readonly recipe: Coats;
  readonly measured?: PatternMeasured | null | undefined;
  readonly startedAt?: number | null;
  readonly on?: { readonly kinds: readonly CoatKind[]; readonly lastAt: number } | null;
}): readonly Command[] {
  const stream = streamOf("piece", id);
  const count = on?.kinds.length ?? 0;
  const atOf = (number: number): number => (on?.lastAt ?? 0) - (count - number) * secondMs;
  const start = on === null ? startedAt : Math.min(startedAt ?? Infinity, atOf(0));
  const coats = (on?.kinds ?? []).map((kind, step): Command => {
    const asked = recipe?.coats[step];
    const number = step + 1;
    return {
      do: "log",
      stream,
      type: "coat-dipped",
      at: atOf(number),
      body: {
        number,
        step: asked === undefined ? null : step,
        kind,
        stuccoId: asked?.kind === kind ? asked.stuccoId : null,
        bucketId: null,
        roomId,
        prewet: false,
        beforeLog: number === count ? "dated" : "undated",
      },
    };
  });
  return [
    {
      do: "log",
      stream,
      type: "piece-started",
      body: { plan, roomId },
      ...(start === null ? {} : { at: start }),
    },
    ...(measured === null ? [] : [{ do: "log", stream, type: "pattern-measured", body: measured } as const]),
    ...coats,
  ];
}

/** What a piece that is made again takes over from the one before; its recipe is chosen beside it. */
export type MadeBefore = {
  readonly name: string;
  readonly plan: Omit<PiecePlan, "name">;
  readonly measured: PatternMeasured | null;
};

/** The plan without its note, which was of that one piece, and what was measured of its mesh and tree. */
export function madeBefore({ plan, patterns }: Pick<Piece, "plan" | "patterns">): MadeBefore {
  const { name, recipeId: _recipe, note: _note, ...taken } = plan;
  const last = patterns.at(-1);
  if (last === undefined) return { name, plan: taken, measured: null };
  const { id: _id, at: _at, ...measured } = last;
  return { name, plan: taken, measured };
}
