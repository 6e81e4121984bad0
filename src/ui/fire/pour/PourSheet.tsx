import { useState } from "react";
import { streamOf } from "../../../logbook/entries/entry.ts";
import { sheetVerdict, type SheetVerdict } from "../../../logbook/pour/pourSheet.ts";
import { goBound, goHistory, type GoStanding, type GoState } from "../../../rules/pourGo.ts";
import type { PourLog } from "../../../rules/pourLog.ts";
import { useDraft, useSettings } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { dayTime } from "../../base/format/time.ts";
import { standingCaution } from "../../base/cautions/cautionWords.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { LinkButton } from "../../base/parts/LinkButton.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { TextField } from "../../base/forms/TextField.tsx";
import { GoPast } from "./GoPast.tsx";
import { SheetLineRow } from "./SheetLineRow.tsx";
import { goText } from "./goWords.ts";
import { lineName, lower } from "./sheetWords.ts";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./pour.module.css";

const titles: Readonly<Record<GoState, string>> = {
  none: "Go or no-go",
  "not-open": "Go or no-go",
  open: "Go or no-go",
  go: "Go",
  lapsed: "Go lapsed",
  "no-go": "No-go",
  "under-way": "Under way",
};

/** What must be true and at hand before metal moves; go or no-go, by name. */
export function PourSheet({ log, go, now }: { log: PourLog; go: GoStanding; now: number }) {
  const door = useShop();
  const format = useFormat();
  const [settings] = useSettings();
  const [kept, setKept, drop] = useDraft<{
    readonly name: string;
    readonly reasons: Readonly<Record<string, string>>;
  }>(`pour/${go.known.pour.id}/sheet`, { name: "", reasons: {} });
  const [refused, setRefused] = useState<string | null>(null);
  const { known, state } = go;
  const { pour, lines, shells, supply } = known;
  const { plan } = pour;
  const verdict = sheetVerdict(lines, kept.reasons);
  const stream = streamOf("pour", pour.id);
  const check = (item: string, ok: boolean) =>
    door.log({ do: "log", stream, type: "pour-item-checked", body: { item, ok } });
  const decide = async (isGo: boolean): Promise<void> => {
    const name = kept.name.trim();
    if (name === "") return setRefused("Enter your name.");
    if (isGo && goRefusal(go, verdict, now) !== null) return setRefused(goRefusal(go, verdict, now));
    const body = isGo
      ? { go: true, name, passed: verdict.passed, bound: goBound(known) }
      : { go: false, name, passed: [] };
    const done = await door.log({ do: "log", stream, type: "pour-decided", body }, { quiet: true });
    if (!done.ok) return setRefused(done.text);
    setRefused(null);
    await drop();
  };
  const bed =
    plan.bed === "air"
      ? "free in air"
      : `in ${plan.bed === "hot-sand" ? "hot" : "cold"} sand${plan.sandC === undefined ? "" : ` at ${format.show("temp", plan.sandC)}`}`;
  const names = shells.map(({ standing }) => standing.piece.plan.name);
  const isOpen = pour.ended === null && state !== "under-way";
  const rows = (kind: "log" | "hand") =>
    lines
      .filter((line) => line.kind === kind)
      .map((line) => (
        <SheetLineRow
          key={line.id}
          line={line}
          known={known}
          now={now}
          isOpen={isOpen}
          reason={kept.reasons[line.id] ?? ""}
          onReason={(reason) => setKept({ ...kept, reasons: { ...kept.reasons, [line.id]: reason } })}
          onCheck={(ok) => check(line.id, ok)}
        />
      ));
  return (
    <Page
      title="Pour sheet"
      back={paths.pour(pour.id)}
      actions={<Button onPress={() => window.print()}>Print</Button>}
    >
      <div className={styles["sheet"]} data-units={settings.units}>
        {state === "lapsed" && (
          <p role="alert" className={styles["lapsed"]}>
            {goText(go, { format, now })}
          </p>
        )}
        <p>
          <strong>{names.length === 0 ? "No shell" : names.join(", ")}</strong>. Planned: pour{" "}
          {dayTime(plan.pourAt, now, format.locale)}; {supply.alloy?.name ?? "metal not set"} at{" "}
          {format.show("temp", plan.metalC)}, shell {format.show("temp", plan.shellC)}, {bed}.
        </p>
        <p className={styles["caution"]}>{standingCaution}</p>
        <div className={`${styles["columns"]} ${styles["lists"]}`}>
          <Card title="From the log">
            <ul className={`${sheet["stack3"]} ${sheet["list"]} ${styles["list"]}`}>{rows("log")}</ul>
          </Card>
          <Card title="Check by eye and hand">
            <ul className={`${sheet["stack3"]} ${sheet["list"]} ${styles["list"]}`}>{rows("hand")}</ul>
          </Card>
        </div>
        <Card
          title={titles[state]}
          tone={state === "go" ? "clear" : state === "lapsed" || state === "no-go" ? "hold" : "plain"}
        >
          {state !== "lapsed" && <p>{goText(go, { format, now })}</p>}
          <GoPast past={goHistory(log, now)} known={known} now={now} />
          {isOpen && (
            <div className={`${styles["stack"]} ${styles["screen"]}`}>
              <p role="status">{againstWords(verdict)}</p>
              <TextField label="Name" value={kept.name} onChange={(name) => setKept({ ...kept, name })} />
              {refused !== null && (
                <p role="alert" className={`${sheet["held"]} ${sheet["firm"]} ${sheet["inset"]}`}>
                  {refused}
                </p>
              )}
              <div className={styles["keys"]}>
                <Button
                  kind="primary"
                  size="big"
                  disabledReason={goRefusal(go, verdict, now)}
                  onPress={() => decide(true)}
                >
                  Go
                </Button>
              </div>
              <div className={styles["keys"]}>
                <Button kind="danger" onPress={() => decide(false)}>
                  No-go
                </Button>
                {state === "go" && <LinkButton href={paths.pour(pour.id)}>Back to the pour</LinkButton>}
              </div>
            </div>
          )}
          <div className={`${styles["printOnly"]} ${styles["signLine"]}`}>
            <span>Name</span>
            <span>Time</span>
          </div>
        </Card>
      </div>
    </Page>
  );

  function goRefusal({ opensAt, closesAt }: GoStanding, { isGo }: SheetVerdict, at: number): string | null {
    if (at < opensAt) return "Too early for a go.";
    if (at >= closesAt) return "The planned pour is past. Move the plan first.";
    return isGo ? null : "Check each line, or write a reason under those that are not OK.";
  }
}

function againstWords({ against, passed }: SheetVerdict): string {
  if (against.length > 0) return `Still open: ${against.map(({ id }) => lower(lineName(id))).join("; ")}.`;
  return passed.length === 0
    ? "Every line is OK."
    : `${passed.length} overridden with a reason, the rest OK.`;
}
