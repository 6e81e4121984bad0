import { useState } from "react";
import { Link, useLocation } from "wouter";
import { z } from "zod";
import { streamOf } from "../../../logbook/entries/entry.ts";
import { useRecipes, useSettings } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useShop } from "../../base/state/shop.tsx";
import { check, words } from "../../base/forms/fieldSchema.ts";
import { useForm } from "../../base/forms/useForm.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { FromPattern } from "../../pattern/mesh/FromPattern.tsx";
import { useStartPattern } from "../../pattern/mesh/useStartPattern.ts";
import { SelectOf, TextOf } from "../../base/forms/BoundFields.tsx";
import css from "./StartPage.module.css";

const schema = z.object({
  name: words("name", "Give the piece a name you would call across the shop.", 120),
  recipeId: z.string().nullable(),
});
type Draft = {
  readonly name: string;
  readonly recipeId: string | null;
  /** The mesh it is begun from. */
  readonly patternId?: string | null | undefined;
};
const empty: Draft = { name: "", recipeId: null, patternId: null };

/** A new piece: a name is enough, the rest can come when it is known. */
export function StartPage() {
  const shop = useShop();
  const [settings] = useSettings();
  const recipes = (useRecipes() ?? []).filter((recipe) => recipe.retired !== true);
  const [, goTo] = useLocation();
  const form = useForm<Draft>("start", empty);
  const pattern = useStartPattern(form.draft.patternId ?? null, form.draft.recipeId);
  const [refused, setRefused] = useState<string | null>(null);
  const [busy, setBusy] = useState(false);
  const waitsFor = pattern === undefined ? "The pattern is still being read." : null;

  const start = async (after: (id: string) => string) => {
    const read = check(schema, form.draft);
    form.tell(read.ok ? {} : read.errors);
    // A pattern still being read is not left out.
    if (!read.ok || busy || pattern === undefined) return;
    setBusy(true);
    const id = shop.moment().newId();
    const { name, recipeId } = read.value;
    const plan = { ...pattern?.plan, name, ...(recipeId === null ? {} : { recipeId }) };
    const stream = streamOf("piece", id);
    const done = await shop.logAll(
      [
        { do: "log", stream, type: "piece-started", body: { plan, roomId: settings.shopRoomId } },
        ...(pattern?.measured
          ? [{ do: "log", stream, type: "pattern-measured", body: pattern.measured } as const]
          : []),
      ],
      { quiet: true },
    );
    setBusy(false);
    if (!done.ok) return setRefused(done.text);
    await form.drop();
    goTo(after(id), { replace: true });
  };

  return (
    <Page title="New piece" back={paths.rack}>
      <form
        className={css["form"]}
        onSubmit={(event) => {
          event.preventDefault();
          void start(paths.editPiece);
        }}
      >
        <TextOf
          form={form}
          at="name"
          label="Name"
          hint="All it needs. Heron, left wing; door handle 3; medal tree."
        />
        <SelectOf
          form={form}
          at="recipeId"
          label="Recipe"
          options={recipes.map(({ id, name, coats }) => ({
            value: id,
            label: `${name} (${coats.length} coats)`,
          }))}
          hint="The coats it shall get. It can be chosen or changed later."
          empty="None yet"
        />
        {pattern === null || pattern === undefined ? (
          <p className={css["lead"]}>
            There is a mesh of it? <Link href={paths.patterns}>Start from the pattern&apos;s file</Link>, and
            metal, surface, head and wall are read from it.
          </p>
        ) : (
          <FromPattern pattern={pattern} onLeave={() => form.set({ patternId: null })} />
        )}
        {refused !== null && (
          <p role="alert" className={css["refused"]}>
            {refused}
          </p>
        )}
        <Button
          kind="primary"
          size="big"
          disabledReason={waitsFor}
          onPress={() => void start(paths.editPiece)}
        >
          Start and plan it
        </Button>
        <Button kind="secondary" disabledReason={waitsFor} onPress={() => void start(() => paths.rack)}>
          Start, plan later
        </Button>
      </form>
    </Page>
  );
}
