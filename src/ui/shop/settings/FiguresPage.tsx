import { useState } from "react";
import { Link } from "wouter";
import { useFigures, useRecipes } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { basisAndSource } from "../../base/format/figureBasis.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Page } from "../../base/parts/Page.tsx";
import { TextField } from "../../base/forms/TextField.tsx";
import type { FigureGroup } from "./figure.ts";
import { figureGroups } from "./figureGroups.ts";
import { MinimumsCard } from "./MinimumsCard.tsx";
import { OwnFiguresCard } from "./OwnFiguresCard.tsx";
import sheet from "../../base/styles/sheet.module.css";
import css from "./FiguresPage.module.css";

/** Every figure the sums use: what it is, who printed it, and what the shop has put in its place. */
export function FiguresPage() {
  const format = useFormat();
  const shop = useFigures();
  const recipes = useRecipes();
  const [sought, setSought] = useState("");
  if (shop === undefined || recipes === undefined) return <Page title="Figures">{null}</Page>;
  const groups = figureGroups(format, { shop, recipes: recipes.filter(({ retired }) => retired !== true) })
    .map((group) => ({
      ...group,
      figures: group.figures.filter(({ name }) => has(name, sought) || has(group.title, sought)),
    }))
    .filter(({ figures }) => figures.length > 0);
  return (
    <Page title="Figures" back={paths.shop}>
      <div className={`${sheet["stack"]} ${css["own"]}`}>
        <OwnFiguresCard />
        <MinimumsCard />
      </div>
      <h2>Starting values</h2>
      <p className={css["lead"]}>
        Each shows its source and what it decides. Caliper readings replace the shell thickness. Change a
        recipe’s figures in <Link href={paths.recipes}>Recipes</Link>.
      </p>
      <TextField label="Find" value={sought} onChange={setSought} />
      {groups.length === 0 && <p role="status">No figure of that name.</p>}
      {groups.map((group) => (
        <Group key={group.title} group={group} open={sought.trim() !== ""} />
      ))}
    </Page>
  );
}

const has = (text: string, sought: string): boolean =>
  text.toLowerCase().includes(sought.trim().toLowerCase());

function Group({
  group: { title, about, figures },
  open,
}: {
  readonly group: FigureGroup;
  readonly open: boolean;
}) {
  return (
    <details className={css["group"]} open={open || undefined}>
      <summary>
        {title} ({figures.length})
      </summary>
      <p className={css["lead"]}>{about}</p>
      <dl className={`${sheet["stack3"]} ${css["figures"]}`}>
        {figures.map(({ name, value, basis, source, decides, note, own }) => (
          <div key={name} className={`${sheet["lines"]} ${css["figure"]}`}>
            <dt>{name}</dt>
            <dd className={css["value"]}>
              {own === undefined ? (
                value
              ) : (
                <>
                  {own}, the shop's own <span className={css["soft"]}>(instead of {value})</span>
                </>
              )}
            </dd>
            <dd className={css["soft"]}>
              {basisAndSource(basis, source)}
              {note !== undefined && `. ${note}`}
            </dd>
            <dd className={css["soft"]}>Decides: {decides}</dd>
          </div>
        ))}
      </dl>
    </details>
  );
}
