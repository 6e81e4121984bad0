import type { ComponentType } from "react";
import { Link, useParams } from "wouter";
import { usePiece } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import type { LoggedByHand } from "../../base/format/logWords.ts";
import { Empty } from "../../base/parts/Empty.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { FinishedForm, KnockedOutForm, NoteForm, ScrapForm, WireForm } from "./AfterForms.tsx";
import { BurnoutEndedForm, BurnoutReadForm, BurnoutStartedForm } from "./BurnoutForms.tsx";
import { CoatDippedForm } from "./CoatDippedForm.tsx";
import { CoatRedippedForm, CoatSkippedForm } from "./CoatForms.tsx";
import { CrackFoundForm } from "./CrackFoundForm.tsx";
import { CrackPatchedForm } from "./CrackPatchedForm.tsx";
import { DewaxedForm, InspectedForm, RinsedForm } from "./DewaxForms.tsx";
import { DrynessForm } from "./DrynessForm.tsx";
import { FiredForm, PreheatedForm } from "./FiringForms.tsx";
import type { LogFormProps } from "./LogForm.tsx";
import { MoveForm } from "./MoveForm.tsx";
import { OutcomeForm } from "./OutcomeForm.tsx";
import { PatchDriedForm } from "./PatchDriedForm.tsx";
import { PourForm } from "./PourForm.tsx";
import { WallForm } from "./WallForm.tsx";

const forms: Readonly<Record<LoggedByHand, ComponentType<LogFormProps>>> = {
  "coat-dipped": CoatDippedForm,
  "coat-redipped": CoatRedippedForm,
  "coat-skipped": CoatSkippedForm,
  "dryness-seen": DrynessForm,
  "wall-measured": WallForm,
  "crack-found": CrackFoundForm,
  "crack-patched": CrackPatchedForm,
  "patch-dried": PatchDriedForm,
  "wire-wrapped": WireForm,
  dewaxed: DewaxedForm,
  "shell-rinsed": RinsedForm,
  "shell-inspected": InspectedForm,
  "burnout-started": BurnoutStartedForm,
  "burnout-read": BurnoutReadForm,
  "burnout-ended": BurnoutEndedForm,
  "shell-fired": FiredForm,
  "shell-preheated": PreheatedForm,
  "metal-poured": PourForm,
  "shell-knocked-out": KnockedOutForm,
  "piece-finished": FinishedForm,
  "outcome-told": OutcomeForm,
  "piece-scrapped": ScrapForm,
  "note-written": NoteForm,
  "piece-moved": MoveForm,
};

const isLoggedByHand = (type: string): type is LoggedByHand => Object.hasOwn(forms, type);

/** The form of one entry type for one piece. */
export function LogPage() {
  const { id, type } = useParams<{ id: string; type: string }>();
  const found = usePiece(id);
  const Form = isLoggedByHand(type) ? forms[type] : undefined;
  if (found === undefined) return <Page title="Log">{null}</Page>;
  if (found === null)
    return (
      <Page title="Log" back={paths.rack}>
        <Empty title="No such piece">
          <p>It is not in this device's log.</p>
        </Empty>
      </Page>
    );
  if (Form === undefined)
    return (
      <Page title="Log" back={paths.piece(id)}>
        <Empty title="No such entry">
          <p>
            Nothing to log under “{type}”. <Link href={paths.piece(id)}>Back to the piece</Link>.
          </p>
        </Empty>
      </Page>
    );
  // A form belongs to its piece and type: another one starts anew.
  return <Form key={`${id}/${type}`} item={found.item} />;
}
