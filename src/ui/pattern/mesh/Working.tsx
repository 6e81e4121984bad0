import type { PatternProgress } from "../../../workers/patternMessages.ts";
import { stageWords } from "./fileWords.ts";
import sheet from "../../base/styles/sheet.module.css";
import css from "./pattern.module.css";

/** What is being reckoned at the moment, and how far it is. */
export function Working({ progress }: { readonly progress: PatternProgress }) {
  return (
    <div className={`${sheet["stack1"]} ${sheet["soft"]} ${css["working"]}`} role="status">
      <span>{stageWords[progress.stage]}</span>
      <progress aria-label="How far" value={progress.share} />
    </div>
  );
}
