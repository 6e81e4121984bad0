import { Link, useParams } from "wouter";
import { useFigures, useRecipes } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { Empty } from "../../base/parts/Empty.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { notAnsweredWords } from "./fileWords.ts";
import { HollowCard } from "./HollowCard.tsx";
import { hollowsOf } from "./studyHollows.ts";
import { KeepPatternCard } from "./KeepPatternCard.tsx";
import { MeshCard } from "./MeshCard.tsx";
import { MetalCard } from "./MetalCard.tsx";
import sheet from "../../base/styles/sheet.module.css";
import css from "./pattern.module.css";
import { PatternScene } from "./PatternScene.tsx";
import { RecessCard } from "./RecessCard.tsx";
import { ShellCard } from "./ShellCard.tsx";
import { SizeCard } from "./SizeCard.tsx";
import { UseCard } from "./UseCard.tsx";
import { usePatternController, type PatternController } from "./usePatternController.ts";
import { WallCard } from "./WallCard.tsx";
import { needsOf } from "./wallFigures.ts";
import { WhatCard } from "./WhatCard.tsx";

/** One pattern: what its mesh tells of metal, shell, air and plastic. */
export function PatternPage() {
  const { id } = useParams<{ id: string }>();
  const door = usePatternController(id);
  if (door === undefined) return <Page title="Pattern">{null}</Page>;
  if (door === null)
    return (
      <Page title="Pattern" back={paths.patterns}>
        <Empty title="This pattern is not kept here">
          <p>
            It was removed, or it was opened on another device.{" "}
            <Link href={paths.patterns}>Open its file</Link>
          </p>
        </Empty>
      </Page>
    );
  return <Opened door={door} />;
}

function Opened({ door }: { readonly door: PatternController }) {
  const shop = useFigures();
  const recipes = useRecipes();
  const { study, trouble } = door;
  const title = study.name === "" ? "Pattern" : study.name;
  if (shop === undefined || recipes === undefined)
    return (
      <Page title={title} back={paths.patterns}>
        {null}
      </Page>
    );
  const recipe = recipes.find(({ id }) => id === study.recipeId) ?? null;
  const need = needsOf(study, { shop, recipe })[0] ?? null;
  const isHollowAsked = door.mmPerUnit !== null && hollowsOf(study, door.mmPerUnit)?.are === null;
  return (
    <Page title={title} back={paths.patterns}>
      {trouble !== null && trouble.why !== "aborted" && (
        <p role="alert" className={`${sheet["refused"]} ${sheet["held"]} ${css["refused"]}`}>
          {notAnsweredWords(trouble)}
        </p>
      )}
      {study.unit === null && <SizeCard door={door} shop={shop} />}
      {isHollowAsked && <HollowCard door={door} />}
      <PatternScene door={door} shop={shop} />
      <div className={`${sheet["stack"]} ${sheet["top"]} ${css["columns"]}`}>
        <div className={sheet["stack"]}>
          <WhatCard door={door} shop={shop} recipes={recipes} />
          {study.unit !== null && <SizeCard door={door} shop={shop} />}
          {!isHollowAsked && <HollowCard door={door} />}
          <MeshCard door={door} />
          <RecessCard door={door} />
        </div>
        <div className={sheet["stack"]}>
          <MetalCard door={door} shop={shop} />
          <ShellCard door={door} shop={shop} recipe={recipe} />
          <WallCard door={door} shop={shop} recipe={recipe} />
          <UseCard door={door} need={need} recipe={recipe} />
          <KeepPatternCard door={door} />
        </div>
      </div>
    </Page>
  );
}
