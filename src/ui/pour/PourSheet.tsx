import { useState } from "react";
import { streamOf } from "../../logbook/entry.ts";
import type { Pour } from "../../logbook/fireStates.ts";
import { useDraft, useSettings } from "../app/live.ts";
import { paths } from "../app/paths.ts";
import { useShop } from "../app/shop.tsx";
import { useFormat } from "../app/useFormat.ts";
import { useNow } from "../app/useNow.ts";
import { dayTime } from "../format/time.ts";
import { standingCaution } from "../log/cautions.ts";
import { Button } from "../parts/Button.tsx";
import { Card } from "../parts/Card.tsx";
import { LinkButton } from "../parts/LinkButton.tsx";
import { Page } from "../parts/Page.tsx";
import { TextField } from "../parts/TextField.tsx";
import { SheetLineRow } from "./SheetLineRow.tsx";
import { sheetLines, sheetVerdict } from "./sheetItems.ts";
import { lineName } from "./sheetWords.ts";
import type { PourParts } from "./pourParts.ts";
import styles from "./pour.module.css";

/** What must be true and at hand before metal moves; go or no-go, by name. */
export function PourSheet({ pour, parts }: { readonly pour: Pour; readonly parts: PourParts }) {
  const { log, clock } = useShop();
  const format = useFormat();
  const now = Math.max(useNow(), clock());
  const [settings] = useSettings();
  const [kept, setKept, drop] = useDraft<{
    readonly name: string;
    readonly reasons: Readonly<Record<string, string>>;
  }>(`pour/${pour.id}/sheet`, { name: "", reasons: {} });
  const [refused, setRefused] = useState<string | null>(null);
  const { plan, decided } = pour;
  const lines = sheetLines(pour, parts);
  const verdict = sheetVerdict(lines, kept.reasons);
  const names = parts.items.map(({ standing }) => standing.piece.plan.name);
  const isStale = decided !== null && pour.checks.some(({ at }) => at > decided.at);
  const stream = streamOf("pour", pour.id);
  const check = (item: string, ok: boolean) =>
    log({ do: "log", stream, type: "pour-item-checked", body: { item, ok } });
  const decide = async (go: boolean): Promise<void> => {
    const name = kept.name.trim();
    if (name === "") return setRefused("Whoever decides gives a name.");
    if (go && !verdict.isGo) return setRefused("Lines that are not in order want a written reason each.");
    const done = await log(
      { do: "log", stream, type: "pour-decided", body: { go, name, passed: go ? verdict.passed : [] } },
      { quiet: true },
    );
    if (!done.ok) return setRefused(done.text);
    setRefused(null);
    await drop();
  };
  const bed =
    plan.bed === "air"
      ? "free in air"
      : `in ${plan.bed === "hot-sand" ? "hot" : "cold"} sand${plan.sandC === undefined ? "" : ` at ${format.show("temp", plan.sandC)}`}`;
  const isOpen = pour.ended === null;
  const row = (id: string) => {
    const line = lines.find((one) => one.id === id);
    if (line === undefined) return null;
    return (
      <SheetLineRow
        key={id}
        line={line}
        parts={parts}
        isOpen={isOpen}
        reason={kept.reasons[id] ?? ""}
        onReason={(reason) => setKept({ ...kept, reasons: { ...kept.reasons, [id]: reason } })}
        onCheck={(ok) => check(id, ok)}
      />
    );
  };
  return (
    <Page
      title="Pour sheet"
      back={paths.pour(pour.id)}
      actions={<Button onPress={() => window.print()}>Print</Button>}
    >
      <div className={styles["sheet"]} data-units={settings.units}>
        <p>
          <strong>{names.length === 0 ? "No shell" : names.join(", ")}</strong>. Metal moves{" "}
          {dayTime(plan.pourAt, now, format.locale)}; {parts.alloy?.name ?? "metal not named"} at{" "}
          {format.show("temp", plan.metalC)}, shell {format.show("temp", plan.shellC)}, {bed}
          {parts.metalKg === null ? "" : `, ${format.show("kg", parts.metalKg)} melted`}.
        </p>
        <p className={styles["caution"]}>{standingCaution}</p>
        <div className={`${styles["columns"]} ${styles["lists"]}`}>
          <Card title="From the log and the sums">
            <ul className={styles["list"]}>
              {lines.filter(({ kind }) => kind === "reckoned").map(({ id }) => row(id))}
            </ul>
          </Card>
          <Card title="By eye and hand">
            <ul className={styles["list"]}>
              {lines.filter(({ kind }) => kind === "hand").map(({ id }) => row(id))}
            </ul>
          </Card>
        </div>
        <Card
          title={decided === null ? "Go or no-go" : decided.go ? "Go" : "No go"}
          tone={decided === null ? "plain" : decided.go ? "clear" : "hold"}
        >
          {decided !== null && (
            <>
              <p>
                <strong>{decided.go ? "Go" : "No go"}</strong>, said {decided.name}{" "}
                {dayTime(decided.at, now, format.locale)}.
              </p>
              {decided.passed.length > 0 && (
                <ul>
                  {decided.passed.map(({ item, reason }) => (
                    <li key={item}>
                      {lineName(item)}: passed, “{reason}”
                    </li>
                  ))}
                </ul>
              )}
              {isStale && <p className={styles["warn"]}>Lines have changed since: decide again.</p>}
            </>
          )}
          {isOpen && (
            <div className={`${styles["stack"]} ${styles["screen"]}`}>
              <p role="status">
                {verdict.against.length === 0
                  ? verdict.passed.length === 0
                    ? "Every line is in order."
                    : `${verdict.passed.length} passed with a reason, the rest in order.`
                  : `Against it: ${verdict.against.map(({ id }) => lineName(id).toLowerCase()).join("; ")}.`}
              </p>
              <TextField label="Name" value={kept.name} onChange={(name) => setKept({ ...kept, name })} />
              {refused !== null && (
                <p role="alert" className={styles["stop"]}>
                  {refused}
                </p>
              )}
              <div className={styles["keys"]}>
                <Button
                  kind="primary"
                  size="big"
                  disabledReason={
                    verdict.isGo
                      ? null
                      : "Tick each line, or write a reason under those that are not in order."
                  }
                  onPress={() => decide(true)}
                >
                  Go
                </Button>
              </div>
              <div className={styles["keys"]}>
                <Button kind="danger" onPress={() => decide(false)}>
                  No go
                </Button>
                {decided !== null && <LinkButton href={paths.pour(pour.id)}>Back to the pour</LinkButton>}
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
}
