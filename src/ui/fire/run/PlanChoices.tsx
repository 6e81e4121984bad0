import { Link } from "wouter";
import type { RackItem } from "../../base/state/live.ts";
import { phaseWords } from "../../base/format/phaseWords.ts";
import { findingText } from "../../base/format/findingWords.ts";
import type { Format } from "../../base/format/units.ts";
import type { Finding } from "../../../rules/finding.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import type { RunBasis } from "../../../logbook/entries/fireBodies.ts";
import { mayEnter } from "../../../logbook/fire/fireFacts.ts";
import type { Kiln } from "../../../logbook/shop/shopThings.ts";
import { TickList } from "../../base/forms/TickList.tsx";
import { SelectField } from "../../base/forms/SelectField.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { Choice } from "../../base/forms/Choice.tsx";
import { LevelMark } from "../../base/parts/LevelMark.tsx";
import { LinkButton } from "../../base/parts/LinkButton.tsx";
import { NumberField } from "../../base/forms/NumberField.tsx";
import { paths } from "../../base/state/paths.ts";
import type { PlanDraft } from "../../../logbook/fire/planDraft.ts";
import { notListed } from "../../../logbook/fire/planDraft.ts";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./run.module.css";

type Props = {
  readonly draft: PlanDraft;
  readonly set: (changes: Partial<PlanDraft>) => void;
};

const purposes = [
  { value: "burnout", label: "Burnout", hint: "Pattern out, shell fired." },
  { value: "firing", label: "Firing", hint: "The shell is empty." },
  { value: "preheat", label: "Preheat", hint: "For the pour." },
] as const;
const routes = [
  {
    value: "flash",
    label: "Flash fire",
    hint: "Into a hot kiln. For wax in a dry, thin fused silica shell.",
  },
  { value: "staged", label: "Staged", hint: "From cold, with a hold to drain. For plastic, foam, thin wax." },
] as const;
const leavings = {
  flash: [
    { value: "yes", label: "Yes", hint: "Through a hole in the floor, into a pan outside." },
    { value: "no", label: "No", hint: "All of it burns in the kiln." },
  ],
  staged: [
    { value: "yes", label: "Yes", hint: "On a tray that is taken out, kiln off." },
    { value: "no", label: "No", hint: "All of it burns in the kiln." },
  ],
} as const;
const afters = [
  { value: "inspect", label: "Cool and look", hint: "Inspect for cracks, pour another day." },
  { value: "pour", label: "Straight to the pour", hint: "Cool to the preheat and hold." },
] as const;

/** What the run is for and what goes in. */
export function PlanChoices({
  draft,
  set,
  items,
  way: { route, waxLeaves },
}: Props & { readonly items: readonly RackItem[]; readonly way: Pick<RunBasis, "route" | "waxLeaves"> }) {
  const { purpose, pieceIds, after } = draft;
  const able = items.filter(({ standing }) => mayEnter(purpose, standing));
  const [first] = pieceIds;
  const change = (to: PlanDraft["purpose"]): void =>
    set({ purpose: to, pieceIds: [], told: {}, segments: null });
  return (
    <Card title="Purpose">
      <Choice label="The run is a" options={purposes} value={purpose} onChange={change} />
      {able.length === 0 ? (
        <p>
          {purpose === "burnout"
            ? "No coated shell with a pattern is on the rack."
            : "No burnt-out shell is on the rack."}
        </p>
      ) : (
        <TickList
          label="Pieces that go in"
          options={able.map(({ standing: { piece, coatsDone } }) => ({
            value: piece.id,
            label: piece.plan.name,
            hint: piece.phase === "coating" ? `${coatsDone} coats on, not reviewed` : phaseWords[piece.phase],
          }))}
          ticked={pieceIds}
          onChange={(ids) => set({ pieceIds: ids, told: {}, segments: null })}
        />
      )}
      {able
        .filter(({ standing }) => pieceIds.includes(standing.piece.id))
        .map((item) => (
          <PieceVerdict key={item.standing.piece.id} item={item} />
        ))}
      {purpose === "burnout" && (
        <Choice
          label="Method"
          options={routes}
          value={route}
          onChange={(to) => set({ route: to, segments: null })}
        />
      )}
      {purpose === "burnout" && waxLeaves !== undefined && (
        <>
          <Choice
            label="Does the wax leave the kiln?"
            options={leavings[route]}
            value={waxLeaves === "no" ? "no" : "yes"}
            onChange={(answer) => set({ waxLeaves: answer === "yes", segments: null })}
          />
          <p className={sheet["soft"]}>
            With steam or hot water the wax is out before the kiln.{" "}
            {first === undefined ? null : <Link href={paths.logFor(first, "dewaxed")}>Log that dewax</Link>}
          </p>
        </>
      )}
      {purpose !== "preheat" && (
        <Choice
          label="Afterwards"
          options={afters}
          value={after}
          onChange={(to) => set({ after: to, segments: null })}
        />
      )}
    </Card>
  );
}

/** A piece that a rule or its review holds back, told before it goes in. */
function PieceVerdict({ item }: { readonly item: RackItem }) {
  const format = useFormat();
  const { piece } = item.standing;
  const open = item.findings.filter(({ level }) => level !== "note");
  const last = piece.reviews.at(-1);
  const isReviewed = piece.phase !== "coating" && last !== undefined;
  if (open.length === 0 && isReviewed) return null;
  return (
    <div className={styles["verdict"]}>
      <p>
        <LevelMark level={open.some(({ level }) => level === "hold") ? "hold" : "watch"} />{" "}
        <strong>{piece.plan.name}</strong>
      </p>
      <ul>
        {!isReviewed && <li>It has not been reviewed since its last coat.</li>}
        {isReviewed && last.verdict !== "clear" && <li>Its review was signed as {last.verdict}.</li>}
        {open.slice(0, 4).map((finding) => (
          <li key={`${finding.rule} ${finding.variant} ${finding.entries.join()}`}>
            {oneLine(finding, format)}
          </li>
        ))}
        {open.length > 4 && <li>and {open.length - 4} more</li>}
      </ul>
      <LinkButton kind="quiet" href={paths.review(piece.id)}>
        Review {piece.plan.name}
      </LinkButton>
    </div>
  );
}

/** A damp shell is told with its moment, the same as at its review; the rest by name. */
function oneLine(finding: Finding, format: Format): string {
  const { title, says } = findingText(finding, format);
  return finding.rule === "last-coat-damp" ? `${title}. ${says}` : title;
}

/** The kiln: one of the shop's, or its figures. */
export function PlanKiln({ draft, set, kilns }: Props & { readonly kilns: readonly Kiln[] }) {
  const { kilnId, ownKiln, startC } = draft;
  const own = (changes: Partial<PlanDraft["ownKiln"]>): void =>
    set({ ownKiln: { ...ownKiln, ...changes }, segments: null });
  const value = kilnId ?? kilns[0]?.id ?? notListed;
  return (
    <Card title="Kiln">
      {kilns.length > 0 && (
        <SelectField
          label="Which"
          empty={null}
          options={[
            ...kilns.map(({ id, name }) => ({ value: id, label: name })),
            { value: notListed, label: "Another one, not listed" },
          ]}
          value={value}
          onChange={(id) => set({ kilnId: id, segments: null })}
        />
      )}
      {value === notListed && (
        <div className={styles["grid"]}>
          <NumberField
            label="Highest temperature"
            quantity="temp"
            value={ownKiln.maxC}
            min={100}
            max={1800}
            onChange={(maxC) => own({ maxC })}
          />
          <NumberField
            label="Power"
            quantity="kW"
            value={ownKiln.powerKW}
            min={0.05}
            max={1000}
            hint="From the rating plate. Starting value 3.6 kW."
            onChange={(powerKW) => own({ powerKW })}
          />
          <NumberField
            label="Chamber"
            quantity="kilnL"
            value={ownKiln.volumeL}
            min={1}
            max={100_000}
            hint="Inside: width × depth × height. Starting value: a small kiln."
            onChange={(volumeL) => own({ volumeL })}
          />
        </div>
      )}
      <NumberField
        label="Kiln at the start"
        quantity="temp"
        value={startC}
        min={-30}
        max={1400}
        hint="Cold, unless it is still warm."
        onChange={(next) =>
          next !== null && next >= -30 && next <= 1400 && set({ startC: next, segments: null })
        }
      />
    </Card>
  );
}
